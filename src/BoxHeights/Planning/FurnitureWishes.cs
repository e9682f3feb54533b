using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where along a run the furniture before it wants a receptacle.</summary>
internal static class FurnitureWishes
{
    /// <summary>The stretches of a run in each of which one is wanted, with what stands beside it.</summary>
    public static List<(DistanceRange Along, string Beside, Rule By)> Along(RoughInDraft draft, Room room, Run run)
    {
        List<(DistanceRange Along, string Beside, Rule By)> found = [];
        foreach (ReceptaclesBeside habit in draft.State.Rules.HabitsOf<ReceptaclesBeside>())
        {
            foreach (Fixture fixture in room.Fixtures)
            {
                if (!habit.Things.Contains(fixture.Kind) || fixture is not { Wall: { } wall, Left: { } left, Right: { } right } || left > right)
                {
                    continue;
                }

                foreach (RunStretch stretch in run.Stretches)
                {
                    if (stretch.Address == SurfaceAddress.Of(room.Id, wall))
                    {
                        // On one side or the other: a place behind it is the last that a plan takes.
                        Wish(habit, stretch, left - habit.Within, habit.OnBothSides ? left : right + habit.Within, fixture);
                        if (habit.OnBothSides)
                        {
                            Wish(habit, stretch, right, right + habit.Within, fixture);
                        }
                    }
                }
            }
        }

        return found;

        void Wish(ReceptaclesBeside habit, RunStretch stretch, Distance from, Distance to, Fixture fixture)
        {
            Distance start = Distance.Max(from, stretch.From);
            Distance end = Distance.Min(to, stretch.To);
            if (start < end)
            {
                found.Add((new(stretch.Start + start - stretch.From, stretch.Start + end - stretch.From), fixture.Id, habit));
            }
        }
    }
}
