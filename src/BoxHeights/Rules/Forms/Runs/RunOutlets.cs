using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The outlets of a room that count, or may count, and where they stand in its runs now. Used again for one room after another, so that nothing is allocated.</summary>
internal sealed class RunOutlets
{
    private readonly List<(SpaceBox Box, bool IsSure, Facts Needs)> counting = [];
    private readonly List<DistanceRange> found = [];
    private readonly List<DistanceRange> own = [];
    private RoomRuns runs = null!;
    private Distance? inFloorWithin;
    private bool nextSpaces;

    /// <summary>Takes the outlets of a room.</summary>
    /// <param name="space">The room.</param>
    /// <param name="count">What counts.</param>
    /// <param name="runs">Its runs.</param>
    /// <param name="nextSpaces">Whether an outlet serves beyond what breaks its run, measured along the wall line across the break.</param>
    public void Take(SpaceView space, ServingReceptacles count, RoomRuns runs, bool nextSpaces)
    {
        inFloorWithin = count.InFloorWithin;
        this.runs = runs;
        this.nextSpaces = nextSpaces;
        counting.Clear();
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict verdict = count.Judge(box, out Facts needs);
            if (verdict != Verdict.Fails)
            {
                counting.Add((box, verdict == Verdict.Passes, needs));
            }
        }
    }

    /// <summary>The box that is taken for not there; none unless one is set.</summary>
    public SpaceBox? Without { get; set; }

    /// <summary>Finds where one box stands along a run, if it is an outlet that counts or may.</summary>
    public void Of(SpaceBox box, Run run, List<Run> all, List<DistanceRange> places)
    {
        places.Clear();
        if (counting.Exists(one => one.Box == box))
        {
            found.Clear();
            PlacesOf(box, run, all);
            places.AddRange(found);
        }
    }

    /// <summary>How many outlets surely count and stand on a run.</summary>
    public int SureOn(Run run)
    {
        int sure = 0;
        foreach ((SpaceBox box, bool isSure, _) in counting)
        {
            found.Clear();
            Places(box, run, found);
            sure += isSure && found.Count > 0 && found[0].IsExact ? 1 : 0;
        }

        return sure;
    }

    /// <summary>Finds where outlets stand along a run: exact places, and stretches somewhere in which one may stand.</summary>
    /// <param name="run">The run.</param>
    /// <param name="all">All runs, for outlets that serve beyond theirs.</param>
    /// <param name="may">Takes all places.</param>
    /// <param name="sure">Takes those of outlets that surely count and whose place is known.</param>
    /// <returns>What would have to be known of those that only may.</returns>
    public Facts On(Run run, List<Run> all, List<DistanceRange> may, List<DistanceRange> sure)
    {
        Facts needs = Facts.None;
        may.Clear();
        sure.Clear();
        foreach ((SpaceBox box, bool isSure, Facts missing) in counting)
        {
            if (box == Without)
            {
                continue;
            }

            found.Clear();
            PlacesOf(box, run, all);

            foreach (DistanceRange place in found)
            {
                may.Add(place);
                needs |= missing | (place.IsExact ? Facts.None : Facts.Along);
                if (isSure && place.IsExact)
                {
                    sure.Add(place);
                }
            }
        }

        return needs;
    }

    private void PlacesOf(SpaceBox box, Run run, List<Run> all)
    {
        if (nextSpaces)
        {
            Beyond(box, run, all);
        }
        else
        {
            Places(box, run, found);
        }
    }

    /// <summary>Places of a box on any run, as distances along the wall line from the start of one.</summary>
    private void Beyond(SpaceBox box, Run run, List<Run> all)
    {
        foreach (Run other in all)
        {
            own.Clear();
            Places(box, other, own);
            foreach (DistanceRange place in own)
            {
                RunStretch stretch = other.At(place.From, out Distance along);
                Distance from = stretch.Around + along - stretch.From - run.Stretches[0].Around;
                DistanceRange one = new(from, from + place.Width);
                found.Add(one);
                if (runs.Plan.GoesRound)
                {
                    found.Add(one + runs.Around);
                    found.Add(one - runs.Around);
                }
            }
        }
    }

    private void Places(SpaceBox box, Run run, List<DistanceRange> places)
    {
        foreach (RunStretch stretch in run.Stretches)
        {
            if (box.Traits.IsListedFlat)
            {
                InPlan(box, stretch, places);
            }
            else if (stretch.Wall >= 0 && stretch.Address == box.Address)
            {
                if (box.Along is not { } along)
                {
                    places.Add(new(stretch.Start, stretch.Start + stretch.Length));
                }
                else if (stretch.From <= along && along <= stretch.To)
                {
                    places.Add(stretch.Start + along - stretch.From);
                    return;
                }
            }
        }
    }

    /// <summary>A box in the floor serves the wall before which it lies; one on a half wall or on the side of a bar, the side that it is on.</summary>
    private void InPlan(SpaceBox box, RunStretch stretch, List<DistanceRange> places)
    {
        bool inFloor = box.Traits.Surface == BoxSurface.Floor;
        if (inFloorWithin is not { } within || (!inFloor && stretch.Wall >= 0 && !runs.Plan.WallOf(stretch.Wall).Open))
        {
            return;
        }

        if (box.Plan is not { } plan)
        {
            places.Add(new(stretch.Start, stretch.Start + stretch.Length));
            return;
        }

        if (!WallPlan.IsInAHouse(plan))
        {
            return;
        }

        stretch.Line.Locate(plan, out Distance along, out Distance off);
        bool before = off >= Distance.Zero || (inFloor && stretch.Wall < 0);
        if (before && off.Abs() <= within && stretch.From <= along && along <= stretch.To)
        {
            places.Add(stretch.Start + along - stretch.From);
        }
    }
}
