using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Planning;

/// <summary>What two plans, one of a room and one of the room in the mirror, have to have in common.</summary>
internal static class PlanMirror
{
    /// <summary>The boxes on the walls of a room, as they are or as the mirror shows them.</summary>
    public static string[] Boxes(Dwelling dwelling, bool mirrored) =>
    [
        .. dwelling.Rooms.SelectMany(room => room.Walls.SelectMany(wall => wall.Boxes.Select(box =>
            room.Id + "/" + wall.Id + " " + box.Purpose + " " + box.Devices + " at " + (mirrored ? wall.Length - box.At!.Value : box.At!.Value) + " " + box.Height))).Order(StringComparer.Ordinal),
    ];

    /// <summary>How many boxes of which purpose there are on walls and ceilings, at which heights.</summary>
    public static string[] Counts(Dwelling dwelling) =>
        [.. dwelling.PlacedBoxes().GroupBy(placed => placed.Box.Purpose + " " + placed.Box.Devices + " " + placed.Box.Height).Select(group => group.Key + ": " + group.Count()).Order(StringComparer.Ordinal)];

    /// <summary>How well each run is served: outlets, twice the largest distance of a point from one, and the sum of squared gaps with those at the ends counted as twice their square.</summary>
    public static string[] Runs(LayoutEvaluator evaluator, Dwelling dwelling)
    {
        LayoutState state = evaluator.StateOf(dwelling);
        List<string> found = [];
        for (int i = 0; i < state.Spaces.Count; i++)
        {
            if (state.Spaces[i].Rule is not Coverage rule || state.Spaces[i].View is not { Room: not null } view || rule.Spaces.Of(view) is not { } runs)
            {
                continue;
            }

            foreach (Run run in runs.Sure.Where(run => run.Length >= rule.Shortest))
            {
                RunOutlets outlets = new();
                List<DistanceRange> may = [];
                List<DistanceRange> sure = [];
                outlets.Take(view, rule.Outlets, runs, false);
                outlets.On(run, runs.Sure, may, sure);
                long[] at = [.. sure.Select(one => one.From.Ticks).Distinct().Order()];
                found.Add(rule.Id + " over " + run.Length + ": " + Served(at, run.Length.Ticks, run.IsLoop));
            }
        }

        return [.. found.Order(StringComparer.Ordinal)];
    }

    private static string Served(long[] at, long length, bool isLoop)
    {
        if (at.Length == 0)
        {
            return "nothing";
        }

        List<BigInteger> gaps = [.. at.Zip(at.Skip(1), (one, next) => (BigInteger)(next - one))];
        BigInteger squares = gaps.Aggregate(BigInteger.Zero, (sum, gap) => sum + (gap * gap));
        BigInteger first = at[0];
        BigInteger last = length - at[^1];
        return isLoop
            ? at.Length + " " + BigInteger.Max(gaps.DefaultIfEmpty().Max(), first + last) + " " + (squares + ((first + last) * (first + last)))
            : at.Length + " " + new[] { gaps.DefaultIfEmpty().Max(), 2 * first, 2 * last }.Max() + " " + (squares + (2 * first * first) + (2 * last * last));
    }
}
