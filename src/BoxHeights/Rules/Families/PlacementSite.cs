using System;

namespace BoxHeights.Rules;

/// <summary>A box's traits and everything around it, without its position: what a placement rule may read.</summary>
/// <remarks>
/// Bounds are asked for in a document's own terms (a line of the box, an offset, a datum) and come back as readings of the stick that sets this box.
/// A floor that isn't chosen or a box that may be of several sizes widens the gap between what is sure and what is possible, and only where it matters:
/// a height taken from the finished floor meets a bound on the finished floor whatever the floor will be.
/// </remarks>
public sealed class PlacementSite
{
    internal PlacementSite(ResolvedSurface surface, BoxTraits box, Levels levels)
    {
        Surface = surface;
        Box = box;
        Levels = levels;
    }

    /// <summary>The box.</summary>
    public BoxTraits Box { get; }

    /// <summary>The units in which findings are printed.</summary>
    public LengthUnits Units => Surface.Space.Units;

    /// <summary>The kind of room; the empty kind outside.</summary>
    public RoomKind Room => Surface.RoomKind;

    /// <summary>Whether the surface is seen from outside the building.</summary>
    public bool IsOutside => Surface.Space.IsOutside;

    /// <summary>The wall, without its boxes; null on a ceiling or a floor.</summary>
    public Wall? Wall => Surface.WallWithoutBoxes;

    /// <summary>The fixtures that stand against the wall.</summary>
    public Items<Fixture> Fixtures => Surface.Fixtures;

    /// <summary>The decks, porches and balconies before an outside wall.</summary>
    public Items<Platform> Platforms => Surface.Platforms;

    /// <summary>The wall's openings with what is put round them.</summary>
    internal TrimmedOpening[] TrimmedOpenings => Surface.TrimmedOpenings;

    /// <summary>What the doors of the room take of the wall when they stand open.</summary>
    public Items<DoorCover> DoorCovers => Surface.DoorCovers;

    /// <summary>How the wall's board is hung; null where it isn't stated.</summary>
    public HungBoards? Boards => Surface.Boards;

    /// <summary>From the framing to the bare surface: the wall's board, or a ceiling's strapping and board; null where it isn't stated.</summary>
    public DistanceRange? BoardThickness => Box.Surface switch
    {
        BoxSurface.Wall => Surface.BoardThickness,
        BoxSurface.Ceiling when Surface.Space.Ceiling is { Board: { } board } ceiling => board + (ceiling.Strapping ?? Distance.Zero),
        _ => null,
    };

    /// <summary>What stands upright in the wall; null where nothing is said of its studs.</summary>
    public WallFraming? Framing => Surface.Framing;

    /// <summary>The ways in which board is commonly hung under a ceiling of this height; none where that isn't stated.</summary>
    public Items<HungBoards> CommonBoards => Surface.CommonBoards;

    /// <summary>Where the datums of this room are.</summary>
    public Levels Levels { get; }

    internal ResolvedSurface Surface { get; }

    /// <summary>What measures as it usually does, where the description doesn't say.</summary>
    internal UsualMeasures Usual => Surface.Usual;

    internal PlacementSite WithLevels(Levels levels) => new(Surface, Box, levels);

    /// <summary>Heights at which a line of the box is at least so far above a datum.</summary>
    /// <param name="line">The line.</param>
    /// <param name="offset">The offset above the datum; a range where it isn't known exactly.</param>
    /// <param name="datum">The datum.</param>
    public AllowedHeights AtLeast(TargetLine line, DistanceRange offset, Datum datum) =>
        TryHeight(line, offset, datum, out DistanceRange reading, out MissingFacts needs)
            ? new(DistanceSet.AtLeast(reading.To), DistanceSet.AtLeast(reading.From), needs)
            : AllowedHeights.DependsOn(needs);

    /// <summary>Heights at which a line of the box is at most so far above a datum.</summary>
    /// <param name="line">The line.</param>
    /// <param name="offset">The offset above the datum; a range where it isn't known exactly.</param>
    /// <param name="datum">The datum.</param>
    public AllowedHeights AtMost(TargetLine line, DistanceRange offset, Datum datum) =>
        TryHeight(line, offset, datum, out DistanceRange reading, out MissingFacts needs)
            ? new(DistanceSet.AtMost(reading.From), DistanceSet.AtMost(reading.To), needs)
            : AllowedHeights.DependsOn(needs);

    /// <summary>Heights at which a line of the box is at or above a horizontal line on a stretch of the wall.</summary>
    /// <param name="line">The line of the box.</param>
    /// <param name="level">The horizontal line; above a countertop means the counter that stands on that stretch.</param>
    /// <param name="left">The stretch's left end.</param>
    /// <param name="right">The stretch's right end.</param>
    public AllowedHeights AtLeast(TargetLine line, Level level, Distance left, Distance right) =>
        Surface.TryAnchor(level, left, right, out Level anchored) ? AtLeast(line, anchored.Offset, anchored.Datum) : AllowedHeights.DependsOn(MissingFacts.Datum);

    /// <summary>Heights at which a line of the box is at or below a horizontal line on a stretch of the wall.</summary>
    /// <param name="line">The line of the box.</param>
    /// <param name="level">The horizontal line; above a countertop means the counter that stands on that stretch.</param>
    /// <param name="left">The stretch's left end.</param>
    /// <param name="right">The stretch's right end.</param>
    public AllowedHeights AtMost(TargetLine line, Level level, Distance left, Distance right) =>
        Surface.TryAnchor(level, left, right, out Level anchored) ? AtMost(line, anchored.Offset, anchored.Datum) : AllowedHeights.DependsOn(MissingFacts.Datum);

    /// <summary>How far a horizontal line lies above a datum.</summary>
    /// <param name="level">The line.</param>
    /// <param name="datum">The datum.</param>
    /// <param name="height">The height found.</param>
    /// <returns>False when the line's own datum isn't known here.</returns>
    public bool TryHeightOf(Level level, Datum datum, out DistanceRange height)
    {
        if (!Levels.TryOffset(datum, level.Datum, out DistanceRange between))
        {
            height = default;
            return false;
        }

        height = between + level.Offset;
        return true;
    }

    /// <summary>From the stick's reading up to the center's height above the storey's subfloor; false where that can't be told.</summary>
    internal bool TryCenterAboveHeight(out DistanceRange above)
    {
        bool isKnown = Levels.TryGet(Box.Datum, out DistanceRange datum);
        above = datum + CenterAboveEdge(Box);
        return isKnown;
    }

    /// <summary>From the edge that a box is set by up to its center, by its nominal size: boxes of a kind are of one size, whichever that is.</summary>
    internal static Distance CenterAboveEdge(BoxTraits box) => box.Edge switch
    {
        Edge.Bottom => box.Size.HalfHeight,
        Edge.Top => -box.Size.HalfHeight,
        _ => Distance.Zero,
    };

    /// <summary>The reading of the stick at which a line of the box lies at an offset above a datum.</summary>
    internal bool TryHeight(TargetLine line, DistanceRange offset, Datum datum, out DistanceRange reading, out MissingFacts needs)
    {
        reading = default;
        needs = MissingFacts.None;
        if (!TryLineAboveEdge(line, out DistanceRange above, out needs))
        {
            needs |= line < TargetLine.LowestOperable ? MissingFacts.BoxSize : Box.Devices.Count == 0 ? MissingFacts.Devices : MissingFacts.OperableParts;
            return false;
        }

        if (!Levels.TryOffset(Box.Datum, datum, out DistanceRange between, out Datum? becauseOf))
        {
            needs = MissingFacts.Datum;
            return false;
        }

        needs |= (between.IsExact ? MissingFacts.None : FactOf(becauseOf));
        reading = offset + between - above;
        return true;
    }

    private static MissingFacts FactOf(Datum? notExact) => notExact switch
    {
        Datum.FinishedFloor => MissingFacts.FloorFinish,
        Datum.FinishedCeiling => MissingFacts.Ceiling,
        Datum.Countertop => MissingFacts.ObstructionHeight,
        _ => MissingFacts.Datum,
    };

    /// <summary>How far a line lies above the edge that the box is set by.</summary>
    internal bool TryLineAboveEdge(TargetLine line, out DistanceRange above, out MissingFacts needs)
    {
        needs = MissingFacts.None;
        // Half a box below the top and half above the bottom: counted in halves so that equal edges cancel exactly.
        int halves = (int)Edge.Center - (int)Box.Edge + (line is TargetLine.BoxBottom ? -1 : line is TargetLine.BoxTop ? 1 : 0);
        above = default;
        if (halves != 0)
        {
            if (!Box.Size.IsStated)
            {
                return false;
            }

            DistanceRange tall = Box.Size.HeightRange;
            long low = tall.From.Ticks * halves / 2;
            long high = tall.To.Ticks * halves / 2;
            above = new(Distance.FromTicks(Math.Min(low, high)), Distance.FromTicks(Math.Max(low, high)));
            needs = above.IsExact ? MissingFacts.None : MissingFacts.BoxSize;
        }

        switch (line)
        {
            case TargetLine.PlateBottom or TargetLine.PlateTop:
                if (Box.Plate is not { } plate)
                {
                    return false;
                }

                Distance half = Distance.FromTicks(plate.Height.Ticks / 2);
                above += line == TargetLine.PlateTop ? half : -half;
                return true;
            case TargetLine.LowestOperable or TargetLine.HighestOperable or TargetLine.GripAtHighest:
                if ((line == TargetLine.GripAtHighest ? Box.Operated.Grip : line == TargetLine.HighestOperable ? Box.Operated.Range?.Highest : Box.Operated.Range?.Lowest) is not { } part)
                {
                    return false;
                }

                above += part;
                needs |= part.IsExact ? MissingFacts.None : MissingFacts.OperableParts;
                return true;
            default:
                return true;
        }
    }
}
