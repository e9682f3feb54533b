using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>What of a room's runs is served, for whoever looks at it.</content>
public sealed partial record Coverage
{
    /// <inheritdoc/>
    internal override (List<WallStretch> Served, List<WallStretch> Open) ServedIn(SpaceView space)
    {
        List<WallStretch> served = [];
        List<WallStretch> open = [];
        if (space.Room is not { } room || ExceptRooms.Contains(room.Kind) || FloorOver is not null || Spaces.Of(space) is not { } runs)
        {
            return (served, open);
        }

        Work work = new();
        work.Outlets.Take(space, Outlets, runs, NextSpacesToo);
        foreach (Run run in runs.Sure)
        {
            if (run.Length < Shortest)
            {
                continue;
            }

            _ = Find(run, runs.Sure, work);
            Distance at = Distance.Zero;
            foreach (DistanceRange gap in work.Open)
            {
                Take(run, at, gap.From, served);
                Take(run, gap.From, gap.To, open);
                at = gap.To;
            }

            Take(run, at, run.Length, served);
        }

        return (served, open);

        static void Take(Run run, Distance from, Distance to, List<WallStretch> into)
        {
            foreach ((RunStretch stretch, Distance left, Distance right) in run.Between(from, to))
            {
                into.Add(new(stretch.Address, left, right));
            }
        }
    }
}
