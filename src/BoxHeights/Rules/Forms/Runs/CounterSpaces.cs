using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Counter spaces: the wall line behind a room's counters, joined where tops meet and cut by sinks, ranges and refrigerators.</summary>
/// <remarks>
/// Behind a sink or range that is cut out, nothing has to be served; how much of the top is left behind it decides that, and where it isn't stated,
/// little is: a counter of the usual depth has no room for more. Its ends are drawn square from its sides back to the wall.
/// </remarks>
public sealed record CounterSpaces : RunSpaces
{
    /// <summary>Counters that count.</summary>
    public Items<CounterKind> Counters { get; init; }

    /// <summary>What cuts a counter.</summary>
    public Items<InterruptionKind> Cuts { get; init; }

    /// <summary>With less than this behind it, on a straight wall, what stands in a counter cuts it; null where it always does.</summary>
    public Distance? StraightBehind { get; init; }

    /// <summary>With less than this to the corner behind it, what stands across a corner cuts the counter; null where it always does.</summary>
    public Distance? CornerBehind { get; init; }

    /// <inheritdoc/>
    public override bool AreOfCounters => true;

    /// <inheritdoc/>
    public override string Numbers => "the wall line behind counters (" + Counters + "), cut by " + Cuts
        + (StraightBehind is { } straight ? " with less than " + straight + " behind" : "") + (CornerBehind is { } corner ? ", " + corner + " to a corner" : "");

    internal override Items<string> KindsNamed => KindNames.Joined(Counters.Select(kind => kind.Name), Cuts.Select(kind => kind.Name));

    internal override RoomRuns In(Room room, WallPlan plan, UsualMeasures usual)
    {
        RunJoiner joiner = new();
        Distance around = Distance.Zero;
        RunStretch? last = null;
        RunStretch? first = null;
        for (int i = 0; i < plan.Count; i++)
        {
            bool atLeft = true;
            foreach ((Distance from, Distance to) in Stretches(room.Walls, i, plan.GoesRound))
            {
                RunStretch stretch = new(SurfaceAddress.Of(room.Id, room.Walls[i].Id), i, plan[i], from, to, around + from)
                {
                    IsOpenLeft = !plan.GoesRound && i == 0 && from == Distance.Zero,
                    IsOpenRight = !plan.GoesRound && i == plan.Count - 1 && to == plan[i].Length,
                };
                joiner.Add(stretch);
                if (atLeft && from == Distance.Zero && last is not null && last.Wall == i - 1 && last.To == plan[i - 1].Length)
                {
                    joiner.Join(last, stretch);
                }

                first ??= stretch;
                last = stretch;
                atLeft = false;
            }

            around += plan[i].Length;
        }

        if (plan.GoesRound && first is { Wall: 0 } && first.From == Distance.Zero && last!.Wall == plan.Count - 1 && last.To == plan[last.Wall].Length)
        {
            joiner.Join(last, first);
        }

        return new(plan, joiner.Runs(), null);
    }

    private IEnumerable<(Distance From, Distance To)> Stretches(Items<Wall> walls, int wall, bool closes)
    {
        Wall face = walls[wall];
        Wall? before = wall > 0 ? walls[wall - 1] : closes && walls.Count > 1 ? walls[walls.Count - 1] : null;
        Wall? after = wall + 1 < walls.Count ? walls[wall + 1] : closes && walls.Count > 1 ? walls[0] : null;
        List<DistanceRange> counters = [];
        List<DistanceRange> cut = [];
        foreach (Counter counter in face.Counters)
        {
            if (!Counters.Contains(counter.Kind))
            {
                continue;
            }

            // A counter that runs up to the front of the one round the corner shares its top.
            Distance left = before is not null && Reaches(before, counter.Left) ? Distance.Zero : counter.Left;
            Distance right = after is not null && Starts(after, face.Length - counter.Right) ? face.Length : counter.Right;
            if (left <= right)
            {
                counters.Add(new(left, right));
            }

            foreach (CounterInterruption one in counter.Interruptions)
            {
                bool across = (after is not null && Starts(after, Distance.Zero) && (one.Right == face.Length || IsAlsoOn(after, one.Kind, face.Length - one.Right, counter.Depth, false)))
                    || (before is not null && Reaches(before, Distance.Zero) && (one.Left == Distance.Zero || IsAlsoOn(before, one.Kind, one.Left, counter.Depth, true)));
                if (one.Left <= one.Right && Cuts.Contains(one.Kind) && !((across ? CornerBehind : StraightBehind) is { } least && one.Behind >= least))
                {
                    cut.Add(new(one.Left, one.Right));
                }
            }
        }

        DistanceSet tops = DistanceSet.UnionOf(counters);
        DistanceSet cuts = DistanceSet.UnionOf(cut);
        for (int i = 0; i < tops.Count; i++)
        {
            foreach ((Distance from, Distance to) in Breaks.Between(cuts, tops[i].From, tops[i].To))
            {
                yield return (from, to);
            }
        }
    }

    /// <summary>Whether what stands in a counter short of a corner is drawn on the other wall too, as one thing across the corner projects on both: two would stand in each other.</summary>
    private static bool IsAlsoOn(Wall other, InterruptionKind kind, Distance gap, Distance? depth, bool atItsRight)
    {
        foreach (Counter counter in other.Counters)
        {
            foreach (CounterInterruption one in counter.Interruptions)
            {
                Distance away = atItsRight ? other.Length - one.Right : one.Left;
                if (one.Kind == kind && gap < counter.Depth && away < depth)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool Reaches(Wall before, Distance gap) =>
        before.Counters.Exists(counter => Counters.Contains(counter.Kind) && counter.Right == before.Length && (gap == Distance.Zero || gap <= counter.Depth));

    private bool Starts(Wall after, Distance gap) =>
        after.Counters.Exists(counter => Counters.Contains(counter.Kind) && counter.Left == Distance.Zero && (gap == Distance.Zero || gap <= counter.Depth));
}
