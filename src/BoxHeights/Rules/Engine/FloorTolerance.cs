using System;

namespace BoxHeights.Rules;

/// <summary>For which floors a placement holds, as the trade would say it: "good for any floor up to 1 in".</summary>
internal static class FloorTolerance
{
    /// <summary>The floors in words; null where one end of the range doesn't decide it.</summary>
    public static Wording? Of(StatedSite stated, int placement, Place place, LengthUnits units)
    {
        DistanceRange floor = stated.Site.Surface.Space.Floor.Thickness;
        bool thin = Holds(floor.From);
        bool thick = Holds(floor.To);
        if (thin == thick)
        {
            return null;
        }

        // One end holds and the other doesn't: halve the ticks between them.
        long good = (thin ? floor.From : floor.To).Ticks;
        long bad = (thin ? floor.To : floor.From).Ticks;
        while (Math.Abs(good - bad) > 1)
        {
            long middle = good + ((bad - good) / 2);
            if (Holds(Distance.FromTicks(middle)))
            {
                good = middle;
            }
            else
            {
                bad = middle;
            }
        }

        Distance limit = Distance.FromTicks(good);
        return thin ? $"good for any floor up to {Printed.NoMoreThan(limit, units):most}" : (Wording)$"good for any floor of at least {Printed.NoLessThan(limit, units):least}";

        bool Holds(Distance thickness)
        {
            PlacementSite site = stated.Site.WithLevels(stated.Site.Levels.With(Datum.FinishedFloor, thickness, Datum.Subfloor));
            PlacementStatement statement = new();
            stated.Placements[placement].Rule.State(site, statement);
            return SlabJudge.Verdict(statement.Take(), place) == Verdict.Passes;
        }
    }
}
