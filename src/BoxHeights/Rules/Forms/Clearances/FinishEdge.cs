using System;

namespace BoxHeights.Rules;

/// <summary>What a plate must not lie across.</summary>
[Flags]
public enum EdgesOf
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Finishes on the wall: wainscot, tile, chair rail; not the splash on a counter, which is <see cref="CounterEdge"/>'s. A plate may lie wholly on one.</summary>
    Finishes = 1,

    /// <summary>What hides the wall: cabinets, mirrors, panels. A box may be wholly inside one only if it can be reached there.</summary>
    Coverings = 2,

    /// <summary>Openings with their casing, reveal and stool. No box is inside one.</summary>
    Openings = 4,
}

/// <summary>A plate is wholly on or wholly off a finish or covering: never across its edge, never buried. Touching an edge is fine.</summary>
/// <remarks>An edge that isn't stated is where the wall ends: at the floor, at the ceiling, in the corner.</remarks>
public sealed record FinishEdge : PlacementRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="against">What a plate must not lie across.</param>
    public FinishEdge(string id, string summary, Severity severity, Citation citation, EdgesOf against)
        : base(id, summary, severity, citation) => Against = against;

    /// <summary>What a plate must not lie across.</summary>
    public EdgesOf Against { get; init; }

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override HeldInstead HeldInstead => HeldInstead.PackedStud;

    /// <inheritdoc/>
    public override string Numbers => "the plate across no edge of: " + Against.ToString().ToLowerInvariant();

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Wall is not { } wall)
        {
            return;
        }

        if ((Against & EdgesOf.Finishes) != 0)
        {
            foreach (Finish finish in wall.Finishes)
            {
                if (!CounterEdge.IsSplash(wall, finish))
                {
                    statement.About = finish;
                    Region(site, statement, finish.Left, finish.Right, finish.Bottom, finish.Top, inside => inside);
                }
            }
        }

        if ((Against & EdgesOf.Coverings) != 0)
        {
            foreach (Covering covering in wall.Coverings)
            {
                Level? bottom = covering.Bottom is { } low ? new Level(low.Offset - (covering.LightRail ?? Distance.Zero), low.Datum) : null;
                statement.About = covering;
                Region(site, statement, covering.Left, covering.Right, bottom, covering.Top, inside => IsOpen(covering) switch
                {
                    true => inside,
                    false => AllowedHeights.Nothing,
                    _ => inside.If(Facts.OpenInside),
                });
            }
        }

        if ((Against & EdgesOf.Openings) != 0)
        {
            foreach (Opening opening in wall.Openings)
            {
                TrimmedOpening trimmed = TrimmedOpening.Of(opening);
                statement.About = opening;
                Region(site, statement, trimmed.Left, trimmed.Right, trimmed.Bottom, trimmed.Top, _ => AllowedHeights.Nothing);
            }
        }
    }

    /// <summary>Some coverings never leave a box within reach; of cabinets it has to be said.</summary>
    private static bool? IsOpen(Covering covering) =>
        covering.OpenInside ?? (covering.Kind == CoveringKind.Mirror || covering.Kind == CoveringKind.TubSurround || covering.Kind == CoveringKind.Panel ? false : null);

    internal static void Region(
        PlacementSite site, PlacementStatement statement, Distance left, Distance right, Level? bottom, Level? top, Func<AllowedHeights, AllowedHeights> ifInside)
    {
        if (site.Box.Plate is not { } plate)
        {
            statement.Within(left, right, AllowedHeights.DependsOn(Facts.BoxSize));
            return;
        }

        AllowedHeights over = top is { } high ? site.AtLeast(TargetLine.PlateBottom, high, left, right) : AllowedHeights.Nothing;
        AllowedHeights under = bottom is { } low ? site.AtMost(TargetLine.PlateTop, low, left, right) : AllowedHeights.Nothing;
        AllowedHeights within = AllowedHeights.Anything;
        within = bottom is { } floor ? within & site.AtLeast(TargetLine.PlateBottom, floor, left, right) : within;
        within = top is { } ceiling ? within & site.AtMost(TargetLine.PlateTop, ceiling, left, right) : within;
        AllowedHeights off = over | under;
        AllowedHeights on = off | ifInside(within);

        // Between its edges a plate may be on it; across an edge only over or under it. In a corner there is no edge.
        Distance half = plate.HalfWidth;
        bool leftEdge = left > Distance.Zero;
        bool rightEdge = right < site.Surface.Length;
        Distance from = leftEdge ? left + half : Distance.MinValue;
        Distance to = rightEdge ? right - half : Distance.MaxValue;
        if (from > to)
        {
            Across(left, right);
            return;
        }

        statement.Within(from, to, on);
        if (leftEdge)
        {
            Across(left, left);
        }

        if (rightEdge)
        {
            Across(right, right);
        }

        void Across(Distance first, Distance last) =>
            statement.Within(first - half + Distance.FromTicks(1), last + half - Distance.FromTicks(1), off);
    }
}
