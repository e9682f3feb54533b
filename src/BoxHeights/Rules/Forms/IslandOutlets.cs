using System;

namespace BoxHeights.Rules;

/// <summary>Islands and peninsulas have a number of outlets that serve their tops, by their sides or by their area.</summary>
/// <remarks>A box on an island is listed under the room's floor, sits on the cabinet, and has its place in plan on the island's outline or within it.</remarks>
public sealed record IslandOutlets : SpaceRule
{
    private const int InchesToTheFoot = 12;

    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="outlets">What counts as an outlet, apart from where it is.</param>
    public IslandOutlets(string id, string summary, Severity severity, Citation citation, ServingReceptacles outlets)
        : base(id, summary, severity, citation) => Outlets = outlets;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <summary>What counts as an outlet, apart from where it is.</summary>
    public ServingReceptacles Outlets { get; init; }

    /// <summary>What it speaks of.</summary>
    public Items<FreestandingKind> Kinds { get; init; } = new[] { FreestandingKind.Island, FreestandingKind.Peninsula };

    /// <summary>The shortest long side that asks for an outlet, itself included.</summary>
    public Distance LongSide { get; init; }

    /// <summary>The shortest short side that asks for an outlet, itself included.</summary>
    public Distance ShortSide { get; init; }

    /// <summary>The area that the first outlet serves, in square feet; null where the area doesn't matter.</summary>
    public decimal? FirstSquareFeet { get; init; }

    /// <summary>The area beyond that for which there is one more each, or for a part of it, in square feet.</summary>
    public decimal EachSquareFeet { get; init; } = 1m;

    /// <summary>How far above its top an outlet may be, itself allowed.</summary>
    public Distance Above { get; init; }

    /// <summary>How far below its top an outlet may be, itself allowed.</summary>
    public Distance Below { get; init; }

    /// <summary>How far its top may reach beyond its base where an outlet is below the top, itself allowed.</summary>
    public Distance OverhangAtMost { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Kinds + " of " + LongSide + " by " + ShortSide + " or more"
        + (FirstSquareFeet is { } first ? FormattableString.Invariant($"; one for {first} ft², one more for each {EachSquareFeet} ft² or part") : "; one")
        + "; up to " + Above + " above the top, " + Below + " below it where it reaches out " + OverhangAtMost + " or less; outlets: " + Outlets.Numbers;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        foreach (Freestanding one in space.Room?.Freestanding ?? default)
        {
            if (!Kinds.Contains(one.Kind))
            {
                continue;
            }

            if (!PlanOutline.TryOf(one.Corners, out PlanOutline? outline))
            {
                statement.NotJudged("the outline of " + one.Id + " isn't described", space.Id + "/" + one.Id);
                continue;
            }

            int needed = Needed(outline);
            int sure = 0;
            int may = 0;
            Facts needs = Facts.None;
            foreach (SpaceBox box in space.Boxes)
            {
                Verdict verdict = Serves(box, one, outline, ref needs);
                sure += verdict == Verdict.Passes ? 1 : 0;
                may += verdict != Verdict.Fails ? 1 : 0;
            }

            if (sure < needed)
            {
                Finding(space.Id + "/" + one.Id, sure, needed, may < needed ? Facts.None : needs | Facts.ObstructionHeight, statement);
            }
        }
    }

    private static void Finding(string subject, int sure, int needed, Facts needs, SpaceStatement statement) =>
        statement.Finds(subject, subject, needs == Facts.None ? Verdict.Fails : Verdict.Unknown, Quantity.Of(sure), QuantitySet.AtLeast(needed),
            () => sure + " of " + needed + " outlets that serve its top", needs);

    private int Needed(PlanOutline outline)
    {
        if (outline.LongSide < LongSide || outline.ShortSide < ShortSide)
        {
            return 0;
        }

        decimal foot = Distance.FromInches(InchesToTheFoot).Ticks;
        decimal over = FirstSquareFeet is { } first ? (outline.Area / foot / foot) - first : 0m;
        return 1 + (over > 0m ? (int)Math.Min(1000m, Math.Ceiling(over / EachSquareFeet)) : 0);
    }

    private Verdict Serves(SpaceBox box, Freestanding island, PlanOutline outline, ref Facts needs)
    {
        if (!box.Traits.IsListedFlat || box.Traits.Surface != BoxSurface.Cabinet || (box.Plan is { } plan && !outline.Holds(plan)))
        {
            return Verdict.Fails;
        }

        Verdict verdict = Outlets.Judge(box, out Facts missing);
        if (verdict == Verdict.Fails)
        {
            return verdict;
        }

        verdict = box.Plan is null ? Verdict.Unknown : verdict;
        needs |= missing | (box.Plan is null ? Facts.Along : Facts.None);
        if (island.Top is not { } top)
        {
            needs |= Facts.ObstructionHeight;
            return Verdict.Unknown;
        }

        // Below the top it serves only where the top doesn't reach out too far; unstated, it doesn't.
        Distance below = island.Overhang is { } out1 && out1 > OverhangAtMost ? Distance.Zero : Below;
        return verdict.And(box.IsWithin(TargetLine.Center, top.Datum, top.Offset - below, top.Offset + Above, ref needs));
    }
}
