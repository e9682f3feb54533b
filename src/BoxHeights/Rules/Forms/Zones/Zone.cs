using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box on a wall or in a ceiling is outside a zone round something in its room. The reach is taken straight in plan, round a corner of the room too; right at it is outside.</summary>
/// <remarks>
/// Without reach the zone is what lies within and over the thing itself: on a wall that it touches, the stretch between its ends. A box behind a wall that
/// turns away from the thing, or that is cut off from it by another wall of the room, is never in its zone. A ceiling above where the zone ends, or below where
/// it begins, is outside it.
/// </remarks>
[Row(nameof(Around), nameof(Reach))]
public sealed partial record Zone : PlacementRule
{
    private static readonly Wording MayBeLarger = $"its walls don't close, so that it may be larger than the zone";

    /// <summary>What the zone is tied to.</summary>
    public RoomAnchor Around { get; init => field = Guard.NotNull(value, nameof(Around)); }

    /// <summary>How far it reaches, straight in plan.</summary>
    public Distance Reach { get; init => field = RoomAnchor.CheckReach(value, nameof(Reach)); }

    /// <summary>The height that it begins at, above a datum or the fixture's own rim; null where it reaches down without end.</summary>
    public Level? Bottom { get; init; }

    /// <summary>The height that it ends at, above a datum or the fixture's own rim; null where it reaches up without end.</summary>
    public Level? Top { get; init; }

    /// <summary>Coverings over the thing, by kind, at whose bottom the zone ends where that is lower than <see cref="Top"/>: a hood over a cooktop.</summary>
    public Items<CoveringKind> EndsBelow { get; init; }

    /// <summary>The line of the box that has to be outside it.</summary>
    public TargetLine Line { get; init; } = TargetLine.Center;

    /// <summary>Whether it ends at a fixture's screen and at whatever wall stands between.</summary>
    public bool EndsAtBarriers { get; init; }

    /// <summary>Whether, in a room that lies in the zone altogether, the wall that is furthest off is allowed.</summary>
    public bool AllowsFurthestWall { get; init; }

    /// <summary>Boxes that the furthest wall is allowed for; every box where none is named.</summary>
    public Items<BoxPurpose> FurthestWallFor { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Around.KindsNamed, EndsBelow.Select(kind => kind.Name));

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        foreach (string mistake in MistakesOf(Around, Bottom, Top))
        {
            yield return mistake;
        }
    }

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "tub and shower zones";

    /// <inheritdoc/>
    public override string Numbers => "outside " + Words(Around, Reach) + (Bottom is { } low ? ", from " + low : "") + (Top is { } high ? ", up to " + high : "") + (EndsBelow.Count == 0 ? "" : ", no further up than the bottom of a " + EndsBelow + " over it")
        + (Bottom is null && Top is null ? "" : ", to its " + Line.Words()) + (EndsAtBarriers ? ", ended by fixed barriers" : "")
        + (AllowsFurthestWall ? "; in a room that lies in it altogether, on the furthest wall" + (FurthestWallFor.Count == 0 ? "" : " for " + FurthestWallFor) : "");

    /// <inheritdoc/>
    internal override SpaceRule? Overhead => Scope.Surfaces.Count == 0 || Scope.Surfaces.Contains(BoxSurface.Ceiling) ? new OverheadZone(this) : null;

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Surface.Space is not { Room: { } room, Plan: { } plan } space || site.Surface.Wall is not { } wall)
        {
            return;
        }

        if (Around == RoomAnchor.WholeRoom)
        {
            statement.Everywhere(AllowedHeights.Nothing);
            return;
        }

        List<ThingInPlan> things = ThingInPlan.Of(Around, room, plan, space.Backs, site.Usual);
        int face = plan.IndexOf(wall.Id);
        if (things.Count == 0 || face < 0)
        {
            return;
        }

        if (plan.IsTooLarge || things.Exists(thing => !thing.HasPlace))
        {
            statement.NotJudged(UnplacedThings.NoPlace);
            return;
        }

        if (AllowsFurthestWall && (FurthestWallFor.Count == 0 || FurthestWallFor.Contains(site.Box.Purpose)) && IsWhollyInside(plan, things))
        {
            if (!plan.Closes)
            {
                statement.NotJudged(MayBeLarger);
                return;
            }

            if (IsFurthest(plan, things, face))
            {
                return;
            }
        }

        foreach (ThingInPlan thing in things)
        {
            State(site, statement, plan, face, thing);
        }
    }

    /// <summary>What can't be meant of the heights between which a zone lies.</summary>
    internal static IEnumerable<string> MistakesOf(RoomAnchor around, Level? bottom, Level? top)
    {
        foreach (Level? line in new[] { bottom, top })
        {
            if (line is { Datum: not Datum.Rim } level && !(level.Datum == Datum.Countertop && around.Interruptions.Count > 0) && ResolvedSurface.IsOfAThing(level.Datum))
            {
                yield return "it is measured " + DatumText.Print(level.Datum, false) + ", which isn't the same all over a zone; only the rim of what it is tied to is, or the top that it is set into";
            }
        }

        if (bottom is { } low && top is { } high && low.Datum == high.Datum && low.Offset >= high.Offset)
        {
            yield return "its Bottom, " + low + ", isn't below its Top, " + high;
        }
    }

    internal static string Words(RoomAnchor around, Distance reach) =>
        around == RoomAnchor.WholeRoom ? "the whole room" : reach == Distance.Zero ? "the space within and over " + around : reach + " in plan of " + around;

    private void State(PlacementSite site, PlacementStatement statement, WallPlan plan, int face, ThingInPlan thing)
    {
        // Within the fixture a screen protects nothing.
        State(statement, plan, face, thing, EndsAtBarriers && IsClosedOff(thing) ? Distance.Zero : Reach, Outside(site, face, thing));
    }

    /// <summary>Whether it is stated that something fixed closes a fixture off: a curtain doesn't, and where nothing is stated nothing does.</summary>
    internal static bool IsClosedOff(ThingInPlan thing) =>
        thing.Fixture?.Screen is { } screen && screen != "none" && screen.IndexOf("curtain", StringComparison.OrdinalIgnoreCase) < 0;

    private static void State(PlacementStatement statement, WallPlan plan, int face, ThingInPlan thing, Distance reach, in AllowedHeights outside)
    {
        if (!plan.TryNear(face, thing.Possible, reach, true, out long from, out long to) || plan.IsWalledOff(face, from, to, thing.Possible))
        {
            return;
        }

        bool isClear = plan.IsClearBetween(face, from, to, thing.Possible);
        bool surely = plan.TryNear(face, thing.Sure, reach, false, out long sureFrom, out long sureTo);
        if (surely && isClear)
        {
            statement.Within(Distance.FromTicks(sureFrom), Distance.FromTicks(sureTo), outside);
        }

        if (!surely || !isClear || sureFrom != from || sureTo != to)
        {
            statement.Within(
                Distance.FromTicks(from), Distance.FromTicks(to),
                AllowedHeights.OneOf(outside, AllowedHeights.Anything, isClear ? MissingFacts.PlanPlace : MissingFacts.Barrier));
        }
    }

    /// <summary>The heights below where the zone begins and above where it ends.</summary>
    private AllowedHeights Outside(PlacementSite site, int face, ThingInPlan thing)
    {
        AllowedHeights over = AllowedHeights.Nothing;
        AllowedHeights under = AllowedHeights.Nothing;
        if (Top is { } top)
        {
            over = Anchored(top, thing, site.Usual) is var (offset, datum, needs) ? With(site.AtLeast(Line, offset, datum), needs) : AllowedHeights.DependsOn(MissingFacts.ObstructionHeight);
        }

        foreach (Covering hood in HoodsOver(thing, site.Surface.Wall!, face))
        {
            over |= hood.Bottom is { } end ? site.AtLeast(Line, end, hood.Left, hood.Right) : AllowedHeights.DependsOn(MissingFacts.ObstructionHeight);
        }

        if (Bottom is { } bottom)
        {
            under = Anchored(bottom, thing, site.Usual) is var (offset, datum, needs) ? With(site.AtMost(Line, offset, datum), needs) : AllowedHeights.DependsOn(MissingFacts.ObstructionHeight);
        }

        return over | under;

        static AllowedHeights With(in AllowedHeights allowed, MissingFacts needs) => new(allowed.Sure, allowed.Possible, allowed.Needs | needs);
    }

    /// <summary>The coverings of a wall under which the zone of a thing ends.</summary>
    internal Items<Covering> HoodsOver(ThingInPlan thing, Wall wall, int face) => EndsBelow.Count == 0 || face != thing.Possible.Frame ? default
        : wall.Coverings.Where(hood => EndsBelow.Contains(hood.Kind) && hood.Left.Ticks < thing.Possible.Right && thing.Possible.Left < hood.Right.Ticks);

    /// <summary>A line above the rim, or above a thing's own top, is one above whatever that is taken from; null where the top isn't stated.</summary>
    internal static (DistanceRange Offset, Datum Datum, MissingFacts Needs)? Anchored(Level line, ThingInPlan thing, UsualMeasures usual) =>
        line.Datum == Datum.Countertop ? (thing.Top is { Datum: not Datum.Countertop } own ? (own.Offset + line.Offset, own.Datum, MissingFacts.None) : null)
        : line.Datum != Datum.Rim ? (line.Offset, line.Datum, MissingFacts.None)
        : thing.Fixture?.Rim is { } rim && rim.Datum != Datum.Rim ? (rim.Offset + line.Offset, rim.Datum, MissingFacts.None)
        : (usual.Rim + line.Offset, Datum.FinishedFloor, MissingFacts.Rim);

    /// <summary>Whether no point of any wall is surely outside the zone.</summary>
    private bool IsWhollyInside(WallPlan plan, List<ThingInPlan> things)
    {
        for (int face = 0; face < plan.Count; face++)
        {
            DistanceSet inside = DistanceSet.Empty;
            foreach (ThingInPlan thing in things)
            {
                if (plan.TryNear(face, thing.Possible, Reach, true, out long from, out long to))
                {
                    inside |= DistanceSet.Between(Distance.FromTicks(from), Distance.FromTicks(to));
                }
            }

            if (!plan.WallOf(face).Open && !inside.ContainsRange(new(Distance.Zero, plan.WallOf(face).Length)))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsFurthest(WallPlan plan, List<ThingInPlan> things, int face)
    {
        decimal here = Nearest(face);
        for (int other = 0; other < plan.Count; other++)
        {
            if (!plan.WallOf(other).Open && Nearest(other) > here)
            {
                return false;
            }
        }

        return true;

        // A wall that is described in pieces is one wall.
        decimal Nearest(int wall)
        {
            decimal least = decimal.MaxValue;
            for (int piece = 0; piece < plan.Count; piece++)
            {
                foreach (ThingInPlan thing in plan.SideOf(piece) == plan.SideOf(wall) && !plan.WallOf(piece).Open ? things : [])
                {
                    least = Math.Min(least, plan.SquareBetween(piece, thing.Possible));
                }
            }

            return least;
        }
    }
}
