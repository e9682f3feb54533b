using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which stretches of a room a document counts as spaces to be served, and what breaks one from the next: row data.</summary>
public abstract record RunSpaces
{
    private protected RunSpaces()
    {
    }

    /// <summary>What counts and what breaks it, in words.</summary>
    public abstract string Numbers { get; }

    /// <summary>Whether what has to be served is a counter, and not the wall itself.</summary>
    public abstract bool AreOfCounters { get; }

    /// <summary>The names of kinds that it speaks of.</summary>
    internal abstract Items<string> KindsNamed { get; }

    /// <summary>An added box may go under an opening whose sill is known to be this high above its floor; null where every opening is in its way.</summary>
    public Distance? ClearBelow { get; init; }

    /// <summary>The runs of a room.</summary>
    internal abstract RoomRuns In(Room room, WallPlan plan, UsualMeasures usual);

    /// <summary>The runs of a room, worked out once while a layout is open; null where its walls aren't described.</summary>
    internal RoomRuns? Of(SpaceView view) => view.Prepared(static _ => new Kept()).Of(view, this);

    /// <summary>What is worked out for one room: its runs by what counts.</summary>
    private sealed class Kept
    {
        private readonly List<(RunSpaces Spaces, RoomRuns? Runs)> kept = [];

        public RoomRuns? Of(SpaceView view, RunSpaces spaces)
        {
            foreach ((RunSpaces same, RoomRuns? known) in kept)
            {
                if (ReferenceEquals(same, spaces))
                {
                    return known;
                }
            }

            RoomRuns? found = view.Room is { Walls.Count: > 0 } room && RoomInPlan.Of(view).Plan is { IsTooLarge: false } plan ? spaces.In(room, plan, view.Usual) : null;
            kept.Add((spaces, found));
            return found;
        }
    }
}

/// <summary>A rule by which runs of a room have to be served: what a planner of runs goes by.</summary>
public interface IServesRuns
{
    /// <summary>What has to be served, and what breaks it.</summary>
    RunSpaces Spaces { get; }

    /// <summary>What counts as an outlet.</summary>
    CountedOutlet Outlets { get; }

    /// <summary>The shortest run that has to be served, itself included.</summary>
    Distance Shortest { get; }

    /// <summary>How far an outlet serves along its run, itself allowed; null where one anywhere on it serves all of it.</summary>
    Distance? Reach { get; }

    /// <summary>Whether an outlet serves round a corner.</summary>
    bool AroundCorners { get; }

    /// <summary>Where it is planned, a straight part of a run that is this long gets an outlet of its own; null where custom has nothing of the kind.</summary>
    Distance? OneToEach { get; }

    /// <summary>The box to add, without id and place; its height where the room has no box of its purpose.</summary>
    DeviceBox Usual { get; }
}

/// <summary>The runs of a room under what is surely a break, and under everything that may be one.</summary>
internal sealed class RoomRuns(WallPlan plan, List<Run> sure, List<Run>? atMost)
{
    public WallPlan Plan { get; } = plan;

    /// <summary>The runs between what surely breaks them.</summary>
    public List<Run> Sure { get; } = sure;

    /// <summary>The runs between everything that may break them; null where there is no doubt.</summary>
    public List<Run>? AtMost { get; } = atMost;

    /// <summary>How long all walls are together.</summary>
    public Distance Around
    {
        get
        {
            Distance around = Distance.Zero;
            for (int i = 0; i < Plan.Count; i++)
            {
                around += Plan[i].Length;
            }

            return around;
        }
    }
}

/// <summary>Collects what breaks one wall.</summary>
internal sealed class Breaks
{
    private readonly Distance length;
    private readonly List<DistanceRange> surely = [];
    private readonly List<DistanceRange> possibly = [];

    public Breaks(Distance length) => this.length = length;

    public DistanceSet Sure => DistanceSet.UnionOf(surely);

    public DistanceSet Possible => DistanceSet.UnionOf(possibly);

    public void Add(Distance left, Distance right, Verdict breaks)
    {
        Distance from = left < Distance.Zero ? Distance.Zero : left;
        Distance to = right > length ? length : right;
        if (from <= to && breaks != Verdict.Fails)
        {
            possibly.Add(new(from, to));
            if (breaks == Verdict.Passes)
            {
                surely.Add(new(from, to));
            }
        }
    }

    /// <summary>What is left of a length between breaks, longer than nothing.</summary>
    public static IEnumerable<(Distance From, Distance To)> Between(DistanceSet breaks, Distance from, Distance to)
    {
        Distance at = from;
        for (int i = 0; i < breaks.Count && at < to; i++)
        {
            Distance end = breaks[i].From < to ? breaks[i].From : to;
            if (end > at)
            {
                yield return (at, end);
            }

            at = breaks[i].To > at ? breaks[i].To : at;
        }

        if (at < to)
        {
            yield return (at, to);
        }
    }
}
