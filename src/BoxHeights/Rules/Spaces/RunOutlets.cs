using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The outlets of a room that count, or may count, and where they stand in its runs now.</summary>
internal sealed class RunOutlets
{
    private readonly List<(SpaceBox Box, bool IsSure, Facts Needs)> counting = [];
    private readonly Distance? inFloorWithin;
    private readonly Distance around;
    private readonly bool closes;
    private readonly bool nextSpaces;

    /// <summary>The outlets of a room.</summary>
    /// <param name="space">The room.</param>
    /// <param name="count">What counts.</param>
    /// <param name="runs">Its runs.</param>
    /// <param name="nextSpaces">Whether an outlet serves beyond what breaks its run, measured along the wall line across the break.</param>
    public RunOutlets(SpaceView space, OutletsThatCount count, RoomRuns runs, bool nextSpaces)
    {
        inFloorWithin = count.InFloorWithin;
        closes = runs.Plan.Closes;
        around = nextSpaces && closes ? runs.Around : Distance.Zero;
        this.nextSpaces = nextSpaces;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict verdict = count.Judge(box, out Facts needs);
            if (verdict != Verdict.Fails)
            {
                counting.Add((box, verdict == Verdict.Passes, needs));
            }
        }
    }

    /// <summary>Whether an outlet surely counts and stands on a run.</summary>
    public int SureOn(Run run)
    {
        int sure = 0;
        foreach ((SpaceBox box, bool isSure, _) in counting)
        {
            List<DistanceRange> on = [];
            Places(box, run, on);
            sure += isSure && on.Count > 0 && on[0].IsExact ? 1 : 0;
        }

        return sure;
    }

    /// <summary>Where outlets stand along a run: exact places, and stretches somewhere in which one may stand.</summary>
    /// <param name="run">The run.</param>
    /// <param name="runs">All runs, for outlets that serve beyond theirs.</param>
    /// <param name="sureOnly">Whether those that only may count, or may stand there, are left out.</param>
    /// <param name="needs">What would have to be known of those that only may.</param>
    public List<DistanceRange> On(Run run, IReadOnlyList<Run> runs, bool sureOnly, ref Facts needs)
    {
        List<DistanceRange> places = [];
        List<DistanceRange> found = [];
        foreach ((SpaceBox box, bool isSure, Facts missing) in counting)
        {
            found.Clear();
            if (nextSpaces)
            {
                Beyond(box, run, runs, found);
            }
            else
            {
                Places(box, run, found);
            }

            foreach (DistanceRange place in found)
            {
                needs |= missing | (place.IsExact ? Facts.None : Facts.Along);
                if (!sureOnly || (isSure && place.IsExact))
                {
                    places.Add(place);
                }
            }
        }

        return places;
    }

    /// <summary>Places of a box on any run, as distances along the wall line from the start of one.</summary>
    private void Beyond(SpaceBox box, Run run, IReadOnlyList<Run> runs, List<DistanceRange> found)
    {
        List<DistanceRange> own = [];
        foreach (Run other in runs)
        {
            own.Clear();
            Places(box, other, own);
            foreach (DistanceRange place in own)
            {
                Distance from = Around(other, place.From) - run.Stretches[0].Around;
                DistanceRange one = new(from, from + place.Width);
                found.Add(one);
                if (closes)
                {
                    found.Add(one + around);
                    found.Add(one - around);
                }
            }
        }
    }

    private static Distance Around(Run run, Distance at)
    {
        RunStretch stretch = run.At(at, out Distance along);
        return stretch.Around + along - stretch.From;
    }

    private void Places(SpaceBox box, Run run, List<DistanceRange> found)
    {
        bool onAWall = box.Address.Length > 0 && box.Along is not null;
        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Wall >= 0 && stretch.Address == box.Address)
            {
                if (!onAWall)
                {
                    found.Add(new(stretch.Start, stretch.Start + stretch.Length));
                }
                else if (box.Along is { } along && stretch.From <= along && along <= stretch.To)
                {
                    found.Add(stretch.Start + along - stretch.From);
                    return;
                }
            }
            else if (box.Traits.IsListedFlat)
            {
                InPlan(box, stretch, found);
            }
        }
    }

    /// <summary>A box in the floor serves the wall before which it lies; one on a half wall, the side that it is on.</summary>
    private void InPlan(SpaceBox box, RunStretch stretch, List<DistanceRange> found)
    {
        bool inFloor = box.Traits.Surface == BoxSurface.Floor;
        if (inFloorWithin is not { } within || (!inFloor && stretch.Wall >= 0))
        {
            return;
        }

        if (box.Plan is not { } plan)
        {
            found.Add(new(stretch.Start, stretch.Start + stretch.Length));
            return;
        }

        if (!FloorPlan.IsWithinReason(plan))
        {
            return;
        }

        stretch.Line.Locate(plan, out Distance along, out Distance off);
        bool before = off >= Distance.Zero || (inFloor && stretch.Wall < 0);
        if (before && off.Abs() <= within && stretch.From <= along && along <= stretch.To)
        {
            found.Add(stretch.Start + along - stretch.From);
        }
    }
}
