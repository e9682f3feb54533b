using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Ways into a small room that go by each other's switch: in a foyer of a few steps one light isn't given three.</summary>
internal static class NearWays
{
    private const int Least = 2;

    /// <summary>The ways in that get a switch: a way that is within a few steps of another goes by that one's, as long as two are left. One that leads outdoors keeps its own.</summary>
    /// <param name="room">The room.</param>
    /// <param name="ways">Its ways in, those that come first of most weight.</param>
    /// <param name="habit">What is done at entrances.</param>
    public static List<RoomOpening> WithoutThose(Room room, List<RoomOpening> ways, SwitchesAtEntrances habit)
    {
        if (habit.FewSteps is not { } near || ways.Count <= Least)
        {
            return ways;
        }

        WallPlan plan = new(room);
        decimal most = (decimal)near.Ticks * near.Ticks;
        List<RoomOpening> kept = [.. ways];
        while (kept.Count > Least && Dispensable() is >= 0 and var one)
        {
            kept.RemoveAt(one);
        }

        return kept;

        // Of several the one that is nearest to another, and of those the last.
        int Dispensable()
        {
            int found = -1;
            decimal least = most;
            for (int i = kept.Count - 1; i >= 0 && !plan.IsTooLarge; i--)
            {
                for (int other = 0; other < kept.Count && kept[i].Opening.Entrance is null; other++)
                {
                    if (other != i && WaysIn.Apart(plan, kept[i], kept[other]) is var apart && (apart < least || (apart == least && found < 0)))
                    {
                        (found, least) = (i, apart);
                    }
                }
            }

            return found;
        }
    }
}
