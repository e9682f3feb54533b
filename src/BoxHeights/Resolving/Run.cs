using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A straight piece of a run: part of a wall face, or of one side of something that stands free.</summary>
internal sealed class RunStretch
{
    public RunStretch(string address, int wall, PlanLine line, Distance from, Distance to, Distance around)
    {
        Address = address;
        Wall = wall;
        Line = line;
        From = from;
        To = to;
        Around = around;
    }

    /// <summary>The address of the wall, or of what stands free.</summary>
    public string Address { get; }

    /// <summary>The wall's place in its room; −1 where it is no wall.</summary>
    public int Wall { get; }

    /// <summary>The line in plan that <see cref="From"/> and <see cref="To"/> are along.</summary>
    public PlanLine Line { get; }

    public Distance From { get; }

    public Distance To { get; }

    public Distance Length => To - From;

    /// <summary>Where it starts in the order of everything around the room, gaps counted: the same for a place whatever the runs are.</summary>
    public Distance Around { get; }

    /// <summary>Where it starts in its run.</summary>
    public Distance Start { get; set; }
}

/// <summary>Stretches that follow each other without a break, unfolded round their corners into one length.</summary>
internal sealed class Run
{
    public Run(IReadOnlyList<RunStretch> stretches, bool isLoop, bool isOpenLeft, bool isOpenRight)
    {
        Stretches = stretches;
        IsLoop = isLoop;
        IsOpenLeft = isOpenLeft;
        IsOpenRight = isOpenRight;
        Distance length = Distance.Zero;
        foreach (RunStretch stretch in stretches)
        {
            stretch.Start = length;
            length += stretch.Length;
        }

        Length = length;
    }

    public IReadOnlyList<RunStretch> Stretches { get; }

    public Distance Length { get; }

    /// <summary>Whether its end meets its start.</summary>
    public bool IsLoop { get; }

    /// <summary>Whether nothing is described beyond its left end, so that it may go on there.</summary>
    public bool IsOpenLeft { get; }

    /// <summary>Whether nothing is described beyond its right end, so that it may go on there.</summary>
    public bool IsOpenRight { get; }

    /// <summary>The place in the run of a place along a wall.</summary>
    public bool TryFind(int wall, Distance along, out Distance at)
    {
        foreach (RunStretch stretch in Stretches)
        {
            if (stretch.Wall == wall && stretch.From <= along && along <= stretch.To)
            {
                at = stretch.Start + along - stretch.From;
                return true;
            }
        }

        at = default;
        return false;
    }

    /// <summary>The stretch that a place in the run is on, and the place along it.</summary>
    public RunStretch At(Distance at, out Distance along)
    {
        RunStretch found = Stretches[0];
        foreach (RunStretch stretch in Stretches)
        {
            found = stretch.Start <= at ? stretch : found;
        }

        along = found.From + at - found.Start;
        return found;
    }

    /// <summary>The parts of its stretches between two places in the run.</summary>
    public IEnumerable<(RunStretch Stretch, Distance From, Distance To)> Between(Distance from, Distance to)
    {
        foreach (RunStretch stretch in Stretches)
        {
            Distance low = from > stretch.Start ? from : stretch.Start;
            Distance high = to < stretch.Start + stretch.Length ? to : stretch.Start + stretch.Length;
            if (low < high)
            {
                yield return (stretch, stretch.From + low - stretch.Start, stretch.From + high - stretch.Start);
            }
        }
    }

    /// <summary>A part of the run in the order of everything around the room.</summary>
    public DistanceSet Around(Distance from, Distance to)
    {
        DistanceSet around = DistanceSet.Empty;
        foreach ((RunStretch stretch, Distance low, Distance high) in Between(from, to))
        {
            around |= DistanceSet.Between(stretch.Around + low - stretch.From, stretch.Around + high - stretch.From);
        }

        return around;
    }
}

/// <summary>Joins stretches into runs.</summary>
internal sealed class RunJoiner
{
    private readonly List<RunStretch> stretches = [];
    private readonly Dictionary<RunStretch, RunStretch> next = [];
    private readonly Dictionary<RunStretch, RunStretch> previous = [];
    private readonly HashSet<RunStretch> openLeft = [];
    private readonly HashSet<RunStretch> openRight = [];

    public void Add(RunStretch stretch) => stretches.Add(stretch);

    public void Join(RunStretch left, RunStretch right)
    {
        if (next.TryGetValue(left, out RunStretch? after))
        {
            previous.Remove(after);
        }

        if (previous.TryGetValue(right, out RunStretch? before))
        {
            next.Remove(before);
        }

        next[left] = right;
        previous[right] = left;
    }

    /// <summary>What is described ends at the left end of the first wall and at the right end of the last, unless the walls close.</summary>
    public void EndsAt(RunStretch stretch, FloorPlan plan)
    {
        if (!plan.Closes && stretch.Wall == 0 && stretch.From == Distance.Zero)
        {
            openLeft.Add(stretch);
        }

        if (!plan.Closes && stretch.Wall == plan.Count - 1 && stretch.To == plan[stretch.Wall].Length)
        {
            openRight.Add(stretch);
        }
    }

    public List<Run> Runs()
    {
        List<Run> runs = [];
        HashSet<RunStretch> taken = [];
        foreach (RunStretch stretch in stretches)
        {
            if (!previous.ContainsKey(stretch))
            {
                runs.Add(From(stretch, taken, false));
            }
        }

        foreach (RunStretch stretch in stretches)
        {
            if (!taken.Contains(stretch))
            {
                runs.Add(From(stretch, taken, true));
            }
        }

        return runs;
    }

    private Run From(RunStretch first, HashSet<RunStretch> taken, bool isLoop)
    {
        List<RunStretch> run = [];
        for (RunStretch? stretch = first; stretch is not null && taken.Add(stretch); stretch = next.TryGetValue(stretch, out RunStretch? after) ? after : null)
        {
            run.Add(stretch);
        }

        return new(run, isLoop, openLeft.Contains(run[0]), openRight.Contains(run[run.Count - 1]));
    }
}
