using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Rules;

/// <summary>Finds where boxes on a run's own walls would close its gaps, as few and as evenly as they do. <see cref="OutletPlace"/> looks for the one place that a room's own box could have.</summary>
internal static class RunPlaces
{
    private const int MostInOneGap = 12;

    /// <summary>Places along the run for as few boxes as each gap needs, evenly, on the marks that places are rounded to.</summary>
    /// <remarks>Other rows of the set may limit the places of the box at its height, and where those don't do, at any; where it is null any box would do.</remarks>
    /// <returns>None where some part of a gap can't be reached from any place for a box.</returns>
    public static List<Distance> Find(SpaceView space, Run run, IReadOnlyList<DistanceRange> gaps, Distance? reach, Distance? clearBelow, Distance step, DeviceBox? box = null)
    {
        foreach (bool atAnyHeight in box is null ? [false] : new[] { false, true })
        {
            foreach (Distance aside in new[] { space.RoomForBoxes.Beside, space.RoomForBoxes.InNeed })
            {
                DistanceSet places = Places(space, run, aside, clearBelow, box, atAnyHeight);
                List<Distance> found = [];
                if (gaps.All(gap => Close(space, run, gap, reach, places, step, found)))
                {
                    return found;
                }
            }
        }

        return [];
    }

    /// <summary>The boxes that would close the gaps: set like those of their purpose nearby, under ids that the dwelling doesn't have.</summary>
    public static Items<PlacedBox> Boxes(
        SpaceView space, Run run, IReadOnlyList<DistanceRange> gaps, Distance? reach, Distance? clearBelow, DeviceBox usual, CountedOutlet outlets)
    {
        BoxHeight? height = NeighborHeight.Of(space, usual, outlets);
        List<PlacedBox> boxes = [];
        foreach (Distance at in Find(space, run, gaps, reach, clearBelow, space.AlongStep, usual.WithHeight(height)))
        {
            RunStretch stretch = run.At(at, out Distance along);
            boxes.Add(new(stretch.Address, usual.WithId(FreeId(space, usual, boxes)).WithAt(along).WithHeight(height)));
        }

        return new(boxes);
    }

    /// <summary>The id of the next of those boxes.</summary>
    public static string FreeId(SpaceView space, DeviceBox usual, List<PlacedBox>? others = null) => FreePlaces.FreeId(space, space.Id + "-" + usual.Purpose, others);

    private static bool Close(SpaceView space, Run run, DistanceRange gap, Distance? reach, DistanceSet places, Distance step, List<Distance> found)
    {
        for (int parts = 1; parts <= MostInOneGap; parts++)
        {
            List<Distance> some = [];
            Distance at = gap.From;
            foreach (Distance part in gap.Width.Split(parts))
            {
                Distance middle = at + Distance.FromTicks(part.Ticks / 2);
                DistanceSet serving = reach is { } far ? places & DistanceSet.Between(at + part - far, at + far) : places;
                if (!serving.TryNearestSnapped(middle, Distance.FromTicks(1), out Distance nearest))
                {
                    break;
                }

                // Which side ties go to is asked for only where there is one: it takes telling the whole room.
                Distance across = middle + middle - nearest;
                bool isTied = across != nearest && serving.Contains(across);
                if (Marked(run, serving, isTied && nearest < middle == (RoomInPlan.Of(space).Hand == WallEnd.Right) ? across : nearest, step) is not { } place)
                {
                    break;
                }

                some.Add(place);
                at += part;
            }

            if (some.Count == parts)
            {
                found.AddRange(some);
                return true;
            }
        }

        return false;
    }

    /// <summary>The place beside another that can be marked: on the steps from its wall's own left end.</summary>
    private static Distance? Marked(Run run, in DistanceSet serving, Distance place, Distance step)
    {
        run.At(place, out Distance along);
        foreach (Distance marked in new[] { along.RoundNearest(step), along.RoundDown(step), along.RoundUp(step) })
        {
            if (serving.Contains(place + marked - along))
            {
                return place + marked - along;
            }
        }

        return null;
    }

    private static DistanceSet Places(SpaceView space, Run run, Distance aside, Distance? clearBelow, DeviceBox? box, bool atAnyHeight)
    {
        List<DistanceRange> places = [];
        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Wall < 0)
            {
                continue;
            }

            Wall wall = space.Room!.Walls[stretch.Wall];
            DistanceSet free = FreePlaces.OffOpenings(wall, aside, clearBelow, stretch.From, stretch.To) & DistanceSet.Between(aside, wall.Length - aside);
            free = box is null || free.IsEmpty ? free : free & (atAnyHeight ? space.PlacesAtAnyHeight(stretch.Address, box) : space.PlacesFor(stretch.Address, box));
            for (int i = 0; i < free.Count; i++)
            {
                places.Add(free[i] - stretch.From + stretch.Start);
            }
        }

        return DistanceSet.UnionOf(places);
    }
}
