using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Along every run of a room's walls or counters, no point is further than a reach from an outlet that counts and that stands on the same run.</summary>
/// <remarks>
/// A finding measures how much of its run isn't reached. Where a room's walls don't close, what lies beyond them may reach back along their ends: that much is
/// not judged. An outlet whose place or kind isn't stated, and what may or may not break the floor line, make it unknown where they decide.
/// </remarks>
[Row(nameof(Spaces), nameof(Outlets), nameof(Shortest), nameof(Reach), nameof(Usual))]
public sealed partial record Coverage : SpaceRule, IServesRuns
{
    private static readonly Wording LooseEnds = $"its walls don't go once round it, so that what is near their ends isn't known";
    private static readonly Wording NoFloorArea = $"its walls don't close, so that its floor isn't known";
    private static readonly Wording NoWalls = $"its walls aren't described";

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    internal override bool LooksAt(BoxTraits box, DwellingMemo whole) => Outlets.MayBe(box);

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <summary>What has to be served, and what breaks it.</summary>
    public RunSpaces Spaces { get; init; }

    /// <summary>What counts as an outlet.</summary>
    public CountedOutlet Outlets { get; init; }

    /// <summary>The shortest run that has to be served, itself included.</summary>
    public Distance Shortest { get; init; }

    /// <summary>How far an outlet serves along its run, itself allowed; null where one anywhere on it serves all of it.</summary>
    public Distance? Reach { get; init; }

    /// <summary>The box that a remedy adds.</summary>
    public DeviceBox Usual { get; init; }

    /// <summary>Kinds of room that it doesn't speak of, where its scope names none.</summary>
    public Items<RoomKind> ExceptRooms { get; init; }

    /// <summary>It speaks only of rooms with more floor than this area; null where that doesn't matter.</summary>
    public Quantity? FloorOver { get; init; }

    /// <summary>Where it is planned, a straight part of a run that is this long gets an outlet of its own, as custom has it; null where custom has nothing of the kind.</summary>
    public Distance? OneToEach { get; init; }

    /// <summary>Whether an outlet serves round a corner.</summary>
    public bool AroundCorners { get; init; } = true;

    /// <summary>Whether an outlet serves the next run too, measured along the wall line across what breaks them.</summary>
    public bool NextSpacesToo { get; init; }

    /// <summary>Whether it is met where no place on the wall reaches the rest and the run has as many outlets as its length asks for.</summary>
    public bool ExceptWhereTheWallIsBlocked { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Spaces.KindsNamed, ExceptRooms.Select(kind => kind.Name));

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Shortest < Distance.Zero)
        {
            yield return "its Shortest, " + Shortest + ", is negative";
        }

        if (Reach <= Distance.Zero)
        {
            yield return "its Reach, " + Reach + ", reaches nothing";
        }
    }

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "receptacle spacing";

    /// <inheritdoc/>
    public override string Numbers => (Reach is { } reach ? "reach " + reach : "one outlet to a run") + ", runs of " + Shortest + " or more; " + Spaces.Numbers
        + "; outlets: " + Outlets.Numbers
        + (FloorOver is { } floor ? "; floors over " + floor : "")
        + (ExceptRooms.Count == 0 ? "" : "; not in " + ExceptRooms)
        + (OneToEach is { } each ? "; planned with one to each wall of " + each : "") + (AroundCorners ? "" : "; not round corners") + (NextSpacesToo ? "; from the next run too" : "")
        + (ExceptWhereTheWallIsBlocked ? "; but for walls that are blocked" : "");

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room || ExceptRooms.Contains(room.Kind))
        {
            return;
        }

        if (Spaces.Of(space) is not { } runs)
        {
            statement.NotJudged(NoWalls);
            return;
        }

        if (FloorOver is { } floor)
        {
            if (runs.Plan.Area is not { } area)
            {
                statement.LeavesOpen(NoFloorArea);
                return;
            }

            if (area <= floor.Raw)
            {
                return;
            }
        }

        Judge(space, runs, statement);
    }

    private void Judge(SpaceView space, RoomRuns runs, SpaceStatement statement)
    {
        Work work = space.Prepared(static _ => new Work());
        work.Outlets.Take(space, Outlets, runs, NextSpacesToo);
        DistanceSet failsBroken = DistanceSet.All;
        DistanceSet maybeBroken = DistanceSet.Empty;
        if (runs.AtMost is { } broken)
        {
            List<DistanceRange> fails = [];
            List<DistanceRange> maybe = [];
            foreach (Run run in broken)
            {
                _ = Find(run, broken, work);
                run.Around(work.Gaps, fails);
                run.Around(work.Open, maybe);
            }

            failsBroken = DistanceSet.UnionOf(fails);
            maybeBroken = DistanceSet.UnionOf(maybe);
        }

        foreach (Run run in Asked(space, runs, statement))
        {
            if (run.Length < Shortest)
            {
                continue;
            }

            MissingFacts needs = Find(run, runs.Sure, work);
            if (run.OpenAt.Count > 0 && Width(work.Beyond) > Width(work.Open))
            {
                // Where they are meant to, that they don't is a fault; else a part of a room is described, of which the rest is judged.
                statement.LeavesOpen(LooseEnds, run.NameIn(space.Dwelling.Units));
            }

            if (work.Open.Count == 0 && maybeBroken.IsEmpty)
            {
                if (Width(work.Beyond) == Distance.Zero)
                {
                    statement.Meets(run, space.Dwelling.Units);
                }

                continue;
            }

            Distance lacking = Width(AsAround(run, work.Gaps) & failsBroken);
            if (lacking > Distance.Zero)
            {
                if (IsExcused(space, run, work))
                {
                    statement.LetsOff(run, space.Dwelling.Units, $"no place on the wall reaches the rest of it, and it has as many outlets as its length asks for");
                }
                else
                {
                    Finding(space, run, Verdict.Fails, lacking, [.. work.Gaps], [.. work.May], MissingFacts.None, statement);
                }
            }
            else if (Width((AsAround(run, work.Open) | maybeBroken) & AsAround(run, [new(Distance.Zero, run.Length)])) is var perhaps && perhaps > Distance.Zero)
            {
                Finding(space, run, Verdict.Unknown, perhaps, [.. work.Open], [.. work.Sure], needs | (runs.AtMost is null ? MissingFacts.None : MissingFacts.FloorLine), statement);
            }
            else if (Width(work.Beyond) == Distance.Zero)
            {
                statement.Meets(run, space.Dwelling.Units);
            }
        }
    }

    /// <summary>
    /// Finds what isn't reached of a run: whatever isn't known of outlets (Gaps), and for some of it (Open). Where something that isn't described may join
    /// the run, an outlet may stand right there; Beyond is what is open without that.
    /// </summary>
    private MissingFacts Find(Run run, List<Run> all, Work work)
    {
        MissingFacts needs = work.Outlets.On(run, all, work.May, work.Sure);
        Gaps(run, work.Sure, work, work.Beyond);
        foreach (Distance open in run.OpenAt)
        {
            work.May.Add(open);
            work.Sure.Add(open);
        }

        Gaps(run, work.May, work, work.Gaps);
        Gaps(run, work.Sure, work, work.Open);

        // What may stand beyond is no outlet to measure from.
        work.May.RemoveRange(work.May.Count - run.OpenAt.Count, run.OpenAt.Count);
        work.Sure.RemoveRange(work.Sure.Count - run.OpenAt.Count, run.OpenAt.Count);
        return needs;
    }

    private void Gaps(Run run, List<DistanceRange> outlets, Work work, List<DistanceRange> gaps)
    {
        if (run.Length < Shortest)
        {
            gaps.Clear();
        }
        else if (AroundCorners)
        {
            RunCover.Gaps(run, outlets, Reach, work.Reached, gaps);
        }
        else
        {
            RunCover.GapsByLeg(run, outlets, Reach, Shortest, gaps);
        }
    }

    /// <summary>Lists that are used again each time a room is judged.</summary>
    private sealed class Work
    {
        public RunOutlets Outlets { get; } = new();

        public List<DistanceRange> May { get; } = [];

        public List<DistanceRange> Sure { get; } = [];

        public List<DistanceRange> Gaps { get; } = [];

        public List<DistanceRange> Open { get; } = [];

        public List<DistanceRange> Beyond { get; } = [];

        public List<DistanceRange> Reached { get; } = [];
    }

    private bool IsExcused(SpaceView space, Run run, Work work)
    {
        // Asked to the tick: how marks are rounded decides no verdict.
        if (!ExceptWhereTheWallIsBlocked || Reach is not { } reach || RunPlaces.Find(space, run, work.Gaps, reach, Spaces.ClearBelow, Distance.FromTicks(1)).Count > 0)
        {
            return false;
        }

        long each = 2 * reach.Ticks;
        return work.Outlets.SureOn(run) >= (run.Length.Ticks + each - 1) / each;
    }

    private void Finding(SpaceView space, Run run, Verdict verdict, Distance lacking, List<DistanceRange> gaps, List<DistanceRange> outlets, MissingFacts needs, SpaceStatement statement)
    {
        LengthUnits units = space.Units;
        Lazy<RunGap> gap = new(() => RunWords.GapOf(run, gaps, outlets));
        statement.Finds(
            run.NameIn(space.Dwelling.Units),
            () => new SeenAlong(space.Room!, units).Run(run),
            run.Stretches[0].Address,
            verdict,
            lacking,
            DistanceSet.AtMost(Distance.Zero),
            () => RunWords.Lacks(space.Room!, run, gap.Value, Reach, lacking, units),
            needs,
            () => gap.Value,
            () => verdict == Verdict.Fails ? RunPlaces.Boxes(space, run, gaps, Reach, Spaces.ClearBelow, Usual, Outlets) : default,
            () => RunPlaces.FreeId(space, Usual),
            isApart: !NextSpacesToo);
    }

    private static DistanceSet AsAround(Run run, List<DistanceRange> gaps)
    {
        List<DistanceRange> around = [];
        run.Around(gaps, around);
        return DistanceSet.UnionOf(around);
    }

    private static Distance Width(List<DistanceRange> gaps)
    {
        Distance width = Distance.Zero;
        foreach (DistanceRange gap in gaps)
        {
            width += gap.Width;
        }

        return width;
    }

    private static Distance Width(DistanceSet set)
    {
        Distance width = Distance.Zero;
        for (int i = 0; i < set.Count; i++)
        {
            width += set[i].Width;
        }

        return width;
    }
}
