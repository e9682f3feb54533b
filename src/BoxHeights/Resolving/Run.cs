using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A straight piece of a run: part of a wall face, or of one side of something that stands free.</summary>
[Told]
internal sealed partial class RunStretch
{
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

    /// <summary>Whether nothing is described beyond its left end, so that more may follow there.</summary>
    public bool IsOpenLeft { get; init; }

    /// <summary>Whether nothing is described beyond its right end, so that more may follow there.</summary>
    public bool IsOpenRight { get; init; }

    /// <summary>Where it starts in its run.</summary>
    public Distance Start { get; set; }
}

/// <summary>Stretches that follow each other without a break, unfolded round their corners into one length.</summary>
internal sealed class Run
{
    private string? name;

    public Run(Items<RunStretch> stretches, bool isLoop)
    {
        Stretches = stretches;
        IsLoop = isLoop;
        Distance length = Distance.Zero;
        List<Distance> open = [];
        foreach (RunStretch stretch in stretches)
        {
            stretch.Start = length;
            length += stretch.Length;
            if (stretch.IsOpenLeft)
            {
                open.Add(stretch.Start);
            }

            if (stretch.IsOpenRight)
            {
                open.Add(length);
            }
        }

        Length = length;
        OpenAt = new(open);
    }

    public Items<RunStretch> Stretches { get; }

    public Distance Length { get; }

    /// <summary>Whether its end meets its start.</summary>
    public bool IsLoop { get; }

    /// <summary>Where something that isn't described may join it: at the loose ends of walls that don't go once round their room.</summary>
    public Items<Distance> OpenAt { get; }

    /// <summary>The run by its ends, exactly: "living/north 32 in to 168 in", "living/north 32 in to living/east 60 in". Made once, in the units of its dwelling, so that it stays.</summary>
    public string NameIn(LengthUnits units)
    {
        RunStretch first = Stretches[0];
        RunStretch last = Stretches[Stretches.Count - 1];
        return name ??= IsLoop ? first.Address + " and all round"
            : first.Address + " " + first.From.Exactly(units) + " to " + (Stretches.Count == 1 ? "" : last.Address + " ") + last.To.Exactly(units);
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

    /// <summary>Parts of the run in the order of everything around the room.</summary>
    public void Around(List<DistanceRange> parts, List<DistanceRange> around)
    {
        foreach (DistanceRange part in parts)
        {
            foreach ((RunStretch stretch, Distance low, Distance high) in Between(part.From, part.To))
            {
                around.Add(new(stretch.Around + low - stretch.From, stretch.Around + high - stretch.From));
            }
        }
    }
}

/// <summary>Joins stretches into runs.</summary>
internal sealed class RunJoiner
{
    private readonly List<RunStretch> stretches = [];
    private readonly Dictionary<RunStretch, RunStretch> next = [];
    private readonly Dictionary<RunStretch, RunStretch> previous = [];

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

        return new(new(run), isLoop);
    }
}
