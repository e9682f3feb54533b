using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Rules;

/// <summary>The slow road: whatever isn't known is tried out on a small grid, and each trial is decided by plain arithmetic from the documents' words.</summary>
internal static class PointRoad
{
    private const decimal PlateTall = 4.5m;
    private const decimal PlateWide = 2.75m;

    private static readonly decimal[] Places = [0m, 20m, 50m, 66m, 72m, 80m, 95m, 120m, SiteSketch.WallLength];
    private static readonly decimal[] Tops = [10m, 34m, 36m, 100m];
    private static readonly decimal[] Depths = [10m, 20m, 24m, 25m, 30m];
    private static readonly decimal[] Knees = [0m, 30m];
    private static readonly bool[] EitherWay = [true, false];
    private static readonly Edge[] Edges = [Edge.Bottom, Edge.Center, Edge.Top];
    private static readonly Approach[] Approaches = [Approach.Forward, Approach.Side];

    /// <summary>One trial: everything is known. Heights above the room's subfloor.</summary>
    private readonly record struct Trial(decimal Floor, decimal Rough, decimal Box, Edge Edge, decimal Reading, decimal At, Approach Approach, Edge Asked, bool OpenInside, ThingBefore[] Before);

    public static (bool AnyPasses, bool AnyFails) Try(SiteSketch site)
    {
        bool passes = false;
        bool fails = false;
        foreach (Trial trial in Trials(site))
        {
            bool met = IsMet(site, trial);
            passes |= met;
            fails |= !met;
        }

        return (passes, fails);
    }

    private static bool IsMet(SiteSketch site, Trial trial)
    {
        decimal datum = site.Datum switch
        {
            Datum.FinishedFloor => trial.Floor,
            Datum.BottomPlate => 1.5m,
            Datum.LevelLine => 40m - site.SubfloorOffset,
            _ => 0m,
        };
        decimal center = trial.Reading + datum + (trial.Edge switch { Edge.Bottom => trial.Box / 2m, Edge.Top => -trial.Box / 2m, _ => 0m });
        decimal bottom = center - (trial.Box / 2m);
        decimal top = center + (trial.Box / 2m);
        switch (site.Rule)
        {
            case "ada-reach":
                decimal part = site.IsSwitch ? 0.47m : 1.31m;
                return IsWithinReach(center - part - trial.Floor, center + part - trial.Floor, trial, site.Approach is not null);

            case "switch-reach":
                return center + 0.375m - trial.Floor <= 79m;

            case "board-seam":
                // The storey's ceiling stays where it is. What is left at the floor beyond 1 in is a strip.
                decimal seam = trial.Rough - SiteSketch.Ceiling - site.SubfloorOffset;
                return site.Courses.Select((course, i) => (course, IsLast: i == site.Courses.Length - 1)).All(one =>
                {
                    seam -= one.course;
                    return top <= seam || bottom >= seam || (one.IsLast && seam <= 1m);
                });

            case "specified-height":
                decimal line = trial.Asked switch { Edge.Bottom => bottom, Edge.Top => top, _ => center };
                return Math.Abs(line - trial.Floor - site.Specified) <= 0.25m;

            default:
                return IsClearOf(site.OnWall!, center, trial);
        }
    }

    // 308: 15 to 48 in. Over something: forward to 20 in deep 48 and to 25 in 44, with knee space as deep as the reach; from the side over at most 34 in
    // (a washer's top 36) to 10 in deep 48 and to 24 in 46; 10 in deep may be of any height. Beneath its top nothing is reached over.
    // An approach that isn't stated is from the side where knees find no room.
    private static bool IsWithinReach(decimal lowest, decimal highest, Trial trial, bool approachIsStated)
    {
        if (lowest < 15m || highest > 48m)
        {
            return false;
        }

        return trial.Before.Where(thing => thing.Left <= trial.At && trial.At <= thing.Right).All(thing =>
        {
            decimal height = thing.TopAboveFinish ? thing.Top!.Value : thing.Top!.Value - trial.Floor;
            if (highest <= height)
            {
                return true;
            }

            decimal depth = thing.Depth!.Value;
            bool forward = thing.Knee >= depth && (depth <= 20m || (depth <= 25m && highest <= 44m));
            bool side = depth <= 10m || (height <= (thing.IsLaundry ? 36m : 34m) && depth <= 24m && highest <= 46m);
            Approach approach = !approachIsStated && thing.Knee < depth ? Approach.Side : trial.Approach;
            return (approach.HasFlag(Approach.Forward) && forward) || (approach.HasFlag(Approach.Side) && side);
        });
    }

    // A plate beside, over or under a thing is clear of it; wholly on it is fine on a finish, and in what can be reached into. In a corner, at the floor
    // and at the ceiling there is no edge.
    private static bool IsClearOf(ThingOnWall thing, decimal center, Trial trial)
    {
        decimal left = thing.Left == 0m ? -1000m : thing.Left;
        decimal right = thing.Right == SiteSketch.WallLength ? 1000m : thing.Right;
        decimal low = thing.Bottom ?? -1000m;
        decimal high = thing.Top ?? 1000m;
        (decimal plateLeft, decimal plateRight) = (trial.At - (PlateWide / 2m), trial.At + (PlateWide / 2m));
        (decimal plateLow, decimal plateHigh) = (center - (PlateTall / 2m), center + (PlateTall / 2m));
        if (plateRight <= left || plateLeft >= right || plateHigh <= low || plateLow >= high)
        {
            return true;
        }

        bool wholly = left <= plateLeft && plateRight <= right && low <= plateLow && plateHigh <= high;
        return wholly && (thing.Kind == "finish" || (thing.Kind == "covering" && trial.OpenInside));
    }

    private static IEnumerable<Trial> Trials(SiteSketch site) =>
        from floor in Between(site.FloorLow, site.FloorHigh)
        from rough in Between(site.RoughLow, site.RoughHigh)
        from box in Between(site.BoxLow, site.BoxHigh)
        from edge in site.Edge is { } stated ? [stated] : Edges
        from reading in Between(site.Value - site.TapeError, site.Value + site.TapeError)
        from at in site.At is { } known ? [known] : Places
        from approach in site.Approach is { } one ? [one] : Approaches
        from asked in site.SpecifiedEdge is { } drawn ? [drawn] : Edges
        from open in site.OnWall!.OpenInside is { } told ? [told] : EitherWay
        from before in Things(site.Before)
        select new Trial(floor, rough, box, edge, reading, at, approach, asked, open, before);

    private static IEnumerable<ThingBefore[]> Things(ThingBefore[] things)
    {
        IEnumerable<ThingBefore[]> all = [[]];
        foreach (ThingBefore thing in things)
        {
            ThingBefore[] meant =
            [
                .. from top in thing.Top is { } high ? [high] : Tops
                   from depth in thing.Depth is { } deep ? [deep] : Depths
                   from knee in thing.Knee is { } free ? [free] : Knees
                   select thing with { Top = top, Depth = depth, Knee = knee },
            ];
            all = all.SelectMany(before => meant, (before, one) => before.Append(one).ToArray());
        }

        return all;
    }

    private static decimal[] Between(decimal low, decimal high) => low == high ? [low] : [low, low + ((high - low) / 4m), (low + high) / 2m, high];
}
