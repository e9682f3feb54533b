using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The largest finished riser of a flight is at most so much higher than the smallest, with the floors that are laid at its foot and head.</summary>
/// <remarks>Judged only where it is stated which floors the carriages are cut for; a floor that isn't described is taken to be the one that they are cut for.</remarks>
[Row(nameof(Most))]
public sealed partial record RiserVariation : SpaceRule
{
    /// <summary>The largest difference, itself allowed.</summary>
    public Distance Most { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Flight;

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Most < Distance.Zero)
        {
            yield return "its limit, " + Most + ", is negative";
        }
    }

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "stairs";

    /// <inheritdoc/>
    public override string Numbers => "largest riser less smallest at most " + Most;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Flight is not { } flight)
        {
            return;
        }

        if (flight.CutForFloorBelow is null && flight.CutForFloorAbove is null)
        {
            statement.LeavesOpen($"it isn't stated which floors the carriages of \"{flight.Id:flight}\" are cut for");
            return;
        }

        if (!StairGeometry.TryRise(space.Dwelling, flight, out Distance rise))
        {
            statement.LeavesOpen($"it isn't stated how far \"{flight.Id:flight}\" climbs");
            return;
        }

        DistanceRange variation = Variation(space, flight, rise);
        if (variation.To > Most)
        {
            bool fails = variation.From > Most;
            statement.Finds(flight.Id, flight.Wall ?? flight.Id, fails ? Verdict.Fails : Verdict.Unknown, fails ? variation.From : variation.To, DistanceSet.AtMost(Most),
                () => $"its finished risers differ by {Printed.OffBy(variation, space.Units):variation}",
                () => $"make its finished risers alike: shim the treads, or cut the stringers anew", fails ? MissingFacts.None : MissingFacts.FloorFinish);
            return;
        }

        statement.Meets(flight.Id, flight.Wall ?? flight.Id);
    }

    /// <summary>The differences that are possible: the extremes lie where floors are thinnest or thickest, as cut for, or as far off at the head as at the foot.</summary>
    private static DistanceRange Variation(SpaceView space, StairFlight flight, Distance rise)
    {
        DistanceRange below = LaidOn(space, flight, flight.From, flight.CutForFloorBelow);
        DistanceRange above = LaidOn(space, flight, flight.To, flight.CutForFloorAbove);
        Distance least = Distance.MaxValue;
        Distance most = Distance.Zero;
        foreach (Distance high in Telling(above, flight.CutForFloorAbove ?? above.From))
        {
            foreach (Distance low in Telling(below, flight.CutForFloorBelow ?? below.From, (flight.CutForFloorBelow ?? below.From) + (flight.CutForFloorAbove ?? high) - high))
            {
                Distance one = new StairGeometry(flight, rise, low, high).RiserVariation.RoundNearest();
                least = Distance.Min(least, one);
                most = Distance.Max(most, one);
            }
        }

        return new(least, most);
    }

    private static List<Distance> Telling(DistanceRange range, params Distance[] within)
    {
        List<Distance> found = [range.From, range.To];
        foreach (Distance one in within)
        {
            if (range.Contains(one))
            {
                found.Add(one);
            }
        }

        return found;
    }

    private static DistanceRange LaidOn(SpaceView space, StairFlight flight, string storey, Distance? cut)
    {
        bool stated = StairGeometry.RoomsAt(space.Dwelling, flight, storey).Exists(room => room.Floor is not null);
        return stated || cut is null ? StairGeometry.FloorOn(space.Dwelling, flight, storey, space.Usual) : cut.Value;
    }
}
