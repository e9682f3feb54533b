using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Wall spaces: the floor line of a room's walls, unfolded round inside and outside corners, between what breaks it.</summary>
/// <remarks>
/// Measured between rough openings. An open side breaks it, but for a railing that stands along it. A half wall or railing that stands in the room has two sides;
/// one that meets a wall is joined to it round the corner there, and its free end parts its two sides. Of an island, a peninsula or a bar the side counts that is
/// stated as its line. A sliding door whose leaf is narrower than its opening has a fixed panel beside it: a window that reaches to the floor. Where the leaf isn't
/// stated, all of it is taken for the door.
/// </remarks>
public sealed record WallSpaces : RunSpaces
{
    private static readonly Items<CoveringKind> OffTheFloor = new[]
    {
        CoveringKind.WallCabinet, CoveringKind.Mirror, CoveringKind.TubSurround, CoveringKind.Panel, CoveringKind.Shelf,
    };

    /// <summary>Openings that break the floor line whatever their sill. Windows are none of them.</summary>
    public Items<OpeningKind> Doorways { get; init; }

    /// <summary>Whether a window or pass-through that starts at the floor breaks the floor line.</summary>
    public bool FloorWindowsBreak { get; init; }

    /// <summary>Whether the wall behind a leaf that is fully open is left out.</summary>
    public bool OpenLeavesBreak { get; init; }

    /// <summary>Cabinets that break the floor line: those without a top to work on. A base cabinet does where no counter is on it.</summary>
    public Items<CoveringKind> Cabinets { get; init; }

    /// <summary>Fixtures against a wall that break its floor line.</summary>
    public Items<FixtureKind> Fixtures { get; init; }

    /// <summary>Counters that are left out because a rule of their own serves them, in <see cref="CounterRooms"/>.</summary>
    public Items<CounterKind> Counters { get; init; }

    /// <summary>The kinds of room where counters have a rule of their own.</summary>
    public Items<RoomKind> CounterRooms { get; init; }

    /// <summary>What stands in the room and counts as wall on its sides.</summary>
    public Items<FreestandingKind> Dividers { get; init; }

    /// <summary>What stands out into the room on cabinets and breaks the wall where it touches it: its top has a rule of its own.</summary>
    public Items<FreestandingKind> Tops { get; init; }

    /// <summary>How near something ends to a wall that it meets, itself included.</summary>
    public Distance MeetsWithin { get; init => field = Guard.NotNegative(value, nameof(MeetsWithin)); }

    /// <inheritdoc/>
    public override bool AreOfCounters => false;

    /// <inheritdoc/>
    public override string Numbers => "floor line broken by " + Doorways + ", " + Cabinets + (Fixtures.Count == 0 ? "" : ", " + Fixtures)
        + (FloorWindowsBreak ? ", windows to the floor" : "") + (OpenLeavesBreak ? ", leaves fully open" : "")
        + (Counters.Count == 0 ? "" : ", counters (" + Counters + ") in " + CounterRooms) + (Tops.Count == 0 ? "" : ", ends of " + Tops)
        + (Dividers.Count == 0 ? "" : "; sides of " + Dividers + " that face the room, met within " + MeetsWithin);

    internal override Items<string> KindsNamed => KindNames.Joined(
        Doorways.Select(kind => kind.Name), Cabinets.Select(kind => kind.Name), Fixtures.Select(kind => kind.Name),
        Counters.Select(kind => kind.Name), Dividers.Select(kind => kind.Name), Tops.Select(kind => kind.Name));

    internal override RoomRuns In(Room room, WallPlan plan, UsualMeasures usual)
    {
        Breaks[] breaks = new Breaks[plan.Count];
        bool inDoubt = false;
        for (int i = 0; i < breaks.Length; i++)
        {
            breaks[i] = Of(room, room.Walls[i], usual);
        }

        for (int i = 0; OpenLeavesBreak && i < breaks.Length; i++)
        {
            OpenLeaves.Add(room.Walls, i, plan.GoesRound, breaks);
        }

        for (int i = 0; i < breaks.Length; i++)
        {
            int next = i + 1 < breaks.Length ? i + 1 : 0;
            if (next != i && (next > 0 || plan.GoesRound) && room.Walls[i].TurnDegrees > 0m && CounterRooms.Contains(room.Kind))
            {
                InTheCorner(room.Walls[i], room.Walls[next], breaks[i], breaks[next]);
            }
        }

        foreach (Freestanding one in room.Freestanding)
        {
            if (Tops.Contains(one.Kind))
            {
                Touches(one.Corners, plan, breaks);
            }
        }

        foreach (Breaks one in breaks)
        {
            inDoubt |= one.Sure != one.Possible;
        }

        List<Run> sure = Runs(room, plan, breaks, false);
        return new(plan, sure, inDoubt ? Runs(room, plan, breaks, true) : null);
    }

    private Breaks Of(Room room, Wall wall, UsualMeasures usual)
    {
        Breaks breaks = new(wall.Length);
        foreach (Opening opening in wall.Openings)
        {
            Add(breaks, opening);
        }

        DistanceSet tops = DistanceSet.Empty;
        if (wall.Coverings.Count > 0)
        {
            List<DistanceRange> counters = [];
            foreach (Counter counter in wall.Counters)
            {
                if (counter.Left <= counter.Right)
                {
                    counters.Add(new(counter.Left, counter.Right));
                }
            }

            tops = DistanceSet.UnionOf(counters);
        }

        foreach (Covering covering in wall.Coverings)
        {
            // What lies under a counter is that counter's base: it has a top.
            foreach ((Distance from, Distance to) in Breaks.Between(covering.Kind == CoveringKind.BaseCabinet ? tops : DistanceSet.Empty, covering.Left, covering.Right))
            {
                breaks.Add(from, to, Break(covering, usual));
            }
        }

        foreach (Counter counter in wall.Counters)
        {
            breaks.Add(counter.Left, counter.Right, Counters.Contains(counter.Kind) && CounterRooms.Contains(room.Kind) ? Verdict.Passes : Verdict.Fails);
        }

        foreach (Fixture fixture in room.Fixtures)
        {
            if (fixture.Wall == wall.Id && Fixtures.Contains(fixture.Kind))
            {
                bool known = fixture is { Left: not null, Right: not null };
                breaks.Add(fixture.Left ?? Distance.Zero, fixture.Right ?? wall.Length, known ? Verdict.Passes : Verdict.Unknown);
            }
        }

        return breaks;
    }

    /// <summary>A counter that ends in a corner stands before the wall round it, as deep as it is: there is no floor line, whether or not casework there goes on from its front.</summary>
    private void InTheCorner(Wall before, Wall after, Breaks atRight, Breaks atLeft)
    {
        foreach (Counter counter in before.Counters)
        {
            if (Counters.Contains(counter.Kind) && before.Length - counter.Right <= DrawingTolerance.GapAcross && counter.Depth is { } deep)
            {
                atLeft.Add(Distance.Zero, Distance.Min(deep, after.Length), Verdict.Passes);
            }
        }

        foreach (Counter counter in after.Counters)
        {
            if (Counters.Contains(counter.Kind) && counter.Left <= DrawingTolerance.GapAcross && counter.Depth is { } deep)
            {
                atRight.Add(Distance.Max(Distance.Zero, before.Length - deep), before.Length, Verdict.Passes);
            }
        }
    }

    private void Add(Breaks breaks, Opening opening)
    {
        if (FloorWindowsBreak || opening.Kind != OpeningKind.SlidingDoor || opening.Leaf is not { } leaf || leaf >= opening.Right - opening.Left)
        {
            breaks.Add(opening.Left, opening.Right, Break(opening));
            return;
        }

        // Open, the leaf stands before the fixed panel, so that one walks through on the other side.
        Distance from = opening.PocketOn == WallEnd.Right ? opening.Left : opening.Right - leaf;
        Distance to = opening.PocketOn == WallEnd.Left ? opening.Right : opening.Left + leaf;
        breaks.Add(opening.Left, opening.Right, opening.PocketOn is null ? Verdict.Unknown : Verdict.Fails);
        breaks.Add(from, to, from < to ? Break(opening) : Verdict.Fails);
    }

    /// <summary>Breaks the walls that an edge of an outline lies along.</summary>
    private void Touches(Items<PlanPoint> corners, WallPlan plan, Breaks[] breaks)
    {
        for (int wall = 0; wall < breaks.Length; wall++)
        {
            for (int i = 0; i < corners.Count; i++)
            {
                PlanPoint one = corners[i];
                PlanPoint other = corners[(i + 1) % corners.Count];
                if (!WallPlan.IsInAHouse(one) || !WallPlan.IsInAHouse(other))
                {
                    continue;
                }

                plan[wall].Locate(one, out Distance from, out Distance off);
                plan[wall].Locate(other, out Distance to, out Distance away);
                if (Distance.Max(off.Abs(), away.Abs()) <= MeetsWithin && Distance.Max(from, to) > Distance.Zero && Distance.Min(from, to) < plan[wall].Length)
                {
                    breaks[wall].Add(Distance.Min(from, to), Distance.Max(from, to), Verdict.Passes);
                }
            }
        }
    }

    /// <summary>Whether an opening breaks the floor line: passes if it does.</summary>
    private Verdict Break(Opening opening)
    {
        if (Doorways.Contains(opening.Kind))
        {
            return Verdict.Passes;
        }

        bool? atTheFloor = opening.Sill is not { } sill ? null
            : sill.Datum is Datum.Subfloor or Datum.FinishedFloor or Datum.BottomPlate ? sill.Offset <= Distance.Zero : null;
        return atTheFloor == false || (opening.Kind == OpeningKind.Window && !FloorWindowsBreak) ? Verdict.Fails
            : atTheFloor == true && (opening.Kind == OpeningKind.Window || opening.Kind == OpeningKind.PassThrough) ? Verdict.Passes
            : Verdict.Unknown;
    }

    private Verdict Break(Covering covering, UsualMeasures usual)
    {
        bool stands = covering.Bottom is not { } bottom || bottom.Offset <= usual.MostToeKick;
        return !stands || OffTheFloor.Contains(covering.Kind) ? Verdict.Fails
            : Cabinets.Contains(covering.Kind) ? Verdict.Passes
            : Verdict.Unknown;
    }

    private List<Run> Runs(Room room, WallPlan plan, Breaks[] breaks, bool possible)
    {
        DividedWalls walls = new(room, plan, Dividers, MeetsWithin);
        Distance around = Distance.Zero;
        for (int i = 0; i < plan.Count; i++)
        {
            DistanceSet broken = possible ? breaks[i].Possible : breaks[i].Sure;
            foreach ((Distance from, Distance to) in room.Walls[i].Open ? walls.RailsAlong(i) : Breaks.Between(broken, Distance.Zero, plan[i].Length))
            {
                walls.Add(i, from, to, around);
            }

            around += plan[i].Length;
        }

        return walls.Runs(around);
    }
}
