using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The outlets of a room that count, or may count, and where they stand in its runs now. Used again for one room after another, so that nothing is allocated.</summary>
internal sealed class RunOutlets
{
    private readonly List<(SpaceBox Box, bool IsSure, MissingFacts Needs)> counting = [];
    private readonly Dictionary<string, OutletsOnWall> onWalls = new(StringComparer.Ordinal);
    private readonly List<int> flat = [];
    private readonly List<(int Box, int Stretch)> near = [];
    private readonly List<(int Box, DistanceRange Place)> found = [];
    private readonly List<(int Box, DistanceRange Place)> around = [];
    private List<Run>? aroundOf;
    private RoomRuns runs = null!;
    private Distance? inFloorWithin;
    private bool nextSpaces;

    /// <summary>Takes the outlets of a room.</summary>
    /// <param name="space">The room.</param>
    /// <param name="count">What counts.</param>
    /// <param name="runs">Its runs.</param>
    /// <param name="nextSpaces">Whether an outlet serves beyond what breaks its run, measured along the wall line across the break.</param>
    public void Take(SpaceView space, CountedOutlet count, RoomRuns runs, bool nextSpaces)
    {
        inFloorWithin = count.InFloorWithin;
        this.runs = runs;
        this.nextSpaces = nextSpaces;
        aroundOf = null;
        counting.Clear();
        flat.Clear();
        foreach (OutletsOnWall wall in onWalls.Values)
        {
            wall.Clear();
        }

        foreach (SpaceBox box in space.Boxes)
        {
            Verdict verdict = count.Of(box, out MissingFacts needs);
            if (verdict != Verdict.Fails)
            {
                if (box.Traits.IsListedFlat)
                {
                    flat.Add(counting.Count);
                }
                else if (onWalls.TryGetValue(box.Address, out OutletsOnWall? wall))
                {
                    wall.Add(counting.Count);
                }
                else
                {
                    onWalls.Add(box.Address, wall = new());
                    wall.Add(counting.Count);
                }

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
        Places(run, all);
        foreach ((int one, DistanceRange place) in found)
        {
            if (counting[one].Box == box)
            {
                places.Add(place);
            }
        }
    }

    /// <summary>How many outlets surely count and stand on a run.</summary>
    public int SureOn(Run run)
    {
        int sure = 0;
        int last = -1;
        found.Clear();
        PlacesOn(run);
        foreach ((int box, DistanceRange place) in found)
        {
            sure += box != last && counting[box].IsSure && place.IsExact ? 1 : 0;
            last = box;
        }

        return sure;
    }

    /// <summary>Finds where outlets stand along a run: exact places, and stretches somewhere in which one may stand.</summary>
    /// <param name="run">The run.</param>
    /// <param name="all">All runs, for outlets that serve beyond theirs.</param>
    /// <param name="may">Takes all places.</param>
    /// <param name="sure">Takes those of outlets that surely count and whose place is known.</param>
    /// <returns>What would have to be known of those that only may.</returns>
    public MissingFacts On(Run run, List<Run> all, List<DistanceRange> may, List<DistanceRange> sure)
    {
        MissingFacts needs = MissingFacts.None;
        may.Clear();
        sure.Clear();
        Places(run, all);
        foreach ((int box, DistanceRange place) in found)
        {
            if (counting[box].Box != Without)
            {
                may.Add(place);
                needs |= counting[box].Needs | (place.IsExact ? MissingFacts.None : MissingFacts.Along);
                if (counting[box].IsSure && place.IsExact)
                {
                    sure.Add(place);
                }
            }
        }

        return needs;
    }

    /// <summary>Finds all places along a run, of one box after another.</summary>
    private void Places(Run run, List<Run> all)
    {
        found.Clear();
        if (nextSpaces)
        {
            Beyond(run, all);
        }
        else
        {
            PlacesOn(run);
        }
    }

    /// <summary>Places on any run, as distances along the wall line from the start of one.</summary>
    private void Beyond(Run run, List<Run> all)
    {
        if (aroundOf != all)
        {
            FindAround(all);
        }

        Distance start = run.Stretches[0].Around;
        foreach ((int box, DistanceRange place) in around)
        {
            DistanceRange one = place - start;
            found.Add((box, one));
            if (runs.Plan.GoesRound)
            {
                found.Add((box, one + runs.Around));
                found.Add((box, one - runs.Around));
            }
        }
    }

    /// <summary>Finds all places on all runs, along the wall line around the room.</summary>
    private void FindAround(List<Run> all)
    {
        List<(int Box, int Nth, DistanceRange Place)> places = [];
        foreach (Run run in all)
        {
            found.Clear();
            PlacesOn(run);
            foreach ((int box, DistanceRange place) in found)
            {
                RunStretch stretch = run.At(place.From, out Distance along);
                Distance from = stretch.Around + along - stretch.From;
                places.Add((box, places.Count, new(from, from + place.Width)));
            }
        }

        places.Sort(static (one, other) => one.Box != other.Box ? one.Box.CompareTo(other.Box) : one.Nth.CompareTo(other.Nth));
        around.Clear();
        foreach ((int box, _, DistanceRange place) in places)
        {
            around.Add((box, place));
        }

        found.Clear();
        aroundOf = all;
    }

    /// <summary>Finds the places on a run itself.</summary>
    private void PlacesOn(Run run)
    {
        near.Clear();
        for (int i = 0; i < run.Stretches.Count; i++)
        {
            foreach (int box in flat)
            {
                near.Add((box, i));
            }

            if (run.Stretches[i] is { Wall: >= 0 } stretch && onWalls.TryGetValue(stretch.Address, out OutletsOnWall? wall))
            {
                wall.Near(stretch, i, counting, near);
            }
        }

        near.Sort(static (one, other) => one.Box != other.Box ? one.Box.CompareTo(other.Box) : one.Stretch.CompareTo(other.Stretch));
        int placed = -1;
        foreach ((int box, int i) in near)
        {
            RunStretch stretch = run.Stretches[i];
            if (counting[box].Box.Traits.IsListedFlat)
            {
                InPlan(box, stretch);
            }
            else if (counting[box].Box.Along is not { } along)
            {
                found.Add((box, new(stretch.Start, stretch.Start + stretch.Length)));
            }
            else if (box != placed)
            {
                found.Add((box, stretch.Start + along - stretch.From));
                placed = box;
            }
        }
    }

    /// <summary>A box in the floor serves the wall before which it lies; one on a half wall or on the side of a bar, the side that it is on.</summary>
    private void InPlan(int number, RunStretch stretch)
    {
        SpaceBox box = counting[number].Box;
        bool inFloor = box.Traits.Surface == BoxSurface.Floor;
        if (inFloorWithin is not { } within || (!inFloor && stretch.Wall >= 0 && !runs.Plan.WallOf(stretch.Wall).Open))
        {
            return;
        }

        if (box.Plan is not { } plan)
        {
            found.Add((number, new(stretch.Start, stretch.Start + stretch.Length)));
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
            found.Add((number, stretch.Start + along - stretch.From));
        }
    }
}
