using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The top of an island or peninsula as a document measures it: along its length from one end to the other, and across.</summary>
/// <remarks>An island's length is its longer side. A peninsula's runs away from the wall, or from the counter on it, that it joins.</remarks>
internal sealed class IslandTop
{
    private readonly PlanOutline outline;
    private readonly PlanLine frame;
    private readonly bool runsAway;
    private readonly Joint? joint;
    private readonly Distance near;
    private readonly Distance far;

    private IslandTop(Items<PlanPoint> corners, PlanOutline outline, PlanLine frame, Joint? joint, PeninsulaMeasure measure, Distance meets)
    {
        this.outline = outline;
        this.frame = frame;
        this.joint = joint;
        (Distance left, Distance right, Distance least, Distance most) = Extent(frame, corners);
        runsAway = joint is not null || most - least > right - left;
        (From, To, near, far) = runsAway ? (least, most, left, right) : (left, right, least, most);
        Area = outline.Area;
        if (joint is not null && measure != PeninsulaMeasure.Outline)
        {
            Distance start = measure == PeninsulaMeasure.ConnectedWall ? Distance.Zero : joint.Front is { } front && From <= meets ? front : From;
            Area += (decimal)(joint.Right - joint.Left).Ticks * (From - start).Ticks;
            From = start;
        }
    }

    /// <summary>Where its length begins.</summary>
    public Distance From { get; }

    /// <summary>Where its length ends: at a peninsula's outer end.</summary>
    public Distance To { get; }

    /// <summary>Its area in square ticks.</summary>
    public decimal Area { get; }

    /// <summary>Whether it is known what it joins, and so which of its ends is the outer one.</summary>
    public bool IsJoined => joint is not null;

    /// <summary>A top by its outline, and how near to a wall or counter it joins that.</summary>
    /// <returns>Null where its outline isn't described.</returns>
    public static IslandTop? Of(Freestanding one, Room room, WallPlan plan, PeninsulaMeasure measure, Distance meets, UsualMeasures usual)
    {
        if (!PlanOutline.TryOf(one.Corners, out PlanOutline? outline))
        {
            return null;
        }

        Joint? joint = one.Kind == FreestandingKind.Peninsula && !plan.IsTooLarge ? JointOf(one.Corners, room, plan, meets, usual) : null;
        return new(one.Corners, outline, joint is null ? PlanLine.Between(one.Corners[0], one.Corners[1]) : plan[joint.Wall], joint, measure, meets);
    }

    /// <summary>How long and how wide a part of its length is, the longer side first.</summary>
    public (Distance Long, Distance Short) Sides(Distance from, Distance to) => (Distance.Max(to - from, far - near), Distance.Min(to - from, far - near));

    /// <summary>The parts of its length that what is set into it leaves, where less than a depth of the top is left behind that; all of it where nothing is.</summary>
    public IEnumerable<(Distance From, Distance To)> Spaces(Items<Fixture> fixtures, Items<FixtureKind> dividing, Distance? leastBehind)
    {
        DistanceSet cuts = DistanceSet.Empty;
        foreach (Fixture fixture in leastBehind is null ? default : fixtures)
        {
            if (dividing.Contains(fixture.Kind) && fixture.Plan.Count >= 2 && IsSetIn(fixture.Plan, out Distance from, out Distance to, out Distance behind) && behind < leastBehind)
            {
                cuts |= DistanceSet.Between(from, to);
            }
        }

        return Breaks.Between(cuts, From, To);
    }

    /// <summary>Where along its length a place in plan is; false off it.</summary>
    public bool TryPlace(PlanPoint plan, out Distance along)
    {
        along = default;
        if (!outline.Holds(plan))
        {
            return false;
        }

        frame.Locate(plan, out Distance right, out Distance away);
        along = runsAway ? away : right;
        return true;
    }

    /// <summary>The place in plan that is so far along its length, halfway across; null where that is off it, or in what is set into it.</summary>
    /// <param name="along">From where its length is measured.</param>
    /// <param name="fixtures">What may be set into it.</param>
    public PlanPoint? At(Distance along, Items<Fixture> fixtures)
    {
        decimal across = (near.Ticks + far.Ticks) / 2;
        (decimal x, decimal y) = runsAway ? frame.InPlan(across, along.Ticks) : frame.InPlan(along.Ticks, across);
        PlanPoint place = new(Distance.FromTicks((long)x), Distance.FromTicks((long)y));
        return outline.Holds(place) && !fixtures.Exists(fixture => fixture.Plan.Count >= 2 && IsSetIn(fixture.Plan, out Distance from, out Distance to, out _) && from <= along && along <= to) ? place : null;
    }

    /// <summary>The place on one of its long sides that is so far along its length: the side with more room before it; null where that is off it, or what is set into it is there.</summary>
    /// <param name="along">From where its length is measured.</param>
    /// <param name="fixtures">What may be set into it.</param>
    /// <param name="walls">The walls of its room.</param>
    public PlanPoint? OnASide(Distance along, Items<Fixture> fixtures, WallPlan walls)
    {
        if (At(along, fixtures) is null)
        {
            return null;
        }

        PlanPoint? best = null;
        Distance most = Distance.MinValue;
        foreach (Distance side in new[] { far, near })
        {
            (decimal x, decimal y) = runsAway ? frame.InPlan(side.Ticks, along.Ticks) : frame.InPlan(along.Ticks, side.Ticks);
            PlanPoint place = new(Distance.FromTicks((long)x), Distance.FromTicks((long)y));
            Distance room = TapedFrom.To(walls, place) is { Count: > 0 } tapes ? tapes[0].Away : Distance.Zero;
            if (outline.Holds(place) && room > most)
            {
                (best, most) = (place, room);
            }
        }

        return best;
    }

    /// <summary>Whether a wall is the one that it joins.</summary>
    public bool Joins(int wall) => joint?.Wall == wall;

    /// <summary>Whether a place along the wall that it joins is between its sides.</summary>
    public bool IsBetweenItsSides(Distance along) => joint is not null && joint.Left <= along && along <= joint.Right;

    /// <summary>Whether something stands in it. Behind is where more of the top is left: someone works at it from the other side.</summary>
    private bool IsSetIn(Items<PlanPoint> plan, out Distance from, out Distance to, out Distance behind)
    {
        (from, to, behind) = (default, default, default);
        foreach (PlanPoint point in plan)
        {
            if (!WallPlan.IsInAHouse(point))
            {
                return false;
            }
        }

        PlanPatch patch = PlanPatch.Around(plan);
        PlanPoint Corner(decimal x, decimal y) => new(Distance.FromTicks((long)x), Distance.FromTicks((long)y));
        (Distance left, Distance right, Distance least, Distance most) = Extent(frame, new[]
        {
            Corner(patch.Left, patch.Near), Corner(patch.Right, patch.Near), Corner(patch.Right, patch.Far), Corner(patch.Left, patch.Far),
        });
        Distance one;
        Distance other;
        (from, to, one, other) = runsAway ? (least, most, left, right) : (left, right, least, most);
        behind = Distance.Max(one - near, far - other);
        return from < To && From < to && one < far && near < other;
    }

    private static (Distance Left, Distance Right, Distance Near, Distance Far) Extent(PlanLine line, Items<PlanPoint> points)
    {
        (Distance left, Distance right, Distance near, Distance far) = (Distance.MaxValue, Distance.MinValue, Distance.MaxValue, Distance.MinValue);
        foreach (PlanPoint point in points)
        {
            line.Locate(point, out Distance along, out Distance off);
            (left, right) = (Distance.Min(left, along), Distance.Max(right, along));
            (near, far) = (Distance.Min(near, off), Distance.Max(far, off));
        }

        return (left, right, near, far);
    }

    /// <summary>What a peninsula joins: the wall that an edge of it touches, or a counter on it; the shorter edge where two do.</summary>
    private static Joint? JointOf(Items<PlanPoint> corners, Room room, WallPlan plan, Distance meets, UsualMeasures usual)
    {
        Joint? best = null;
        for (int wall = 0; wall < plan.Count; wall++)
        {
            if (room.Walls[wall].Open || !TryEdge(plan[wall], corners, meets, out Distance left, out Distance right, out Distance off))
            {
                continue;
            }

            bool joins = off <= meets;
            Distance? front = null;
            foreach (Counter counter in room.Walls[wall].Counters)
            {
                if (counter.Left < right && left < counter.Right)
                {
                    joins |= off <= (counter.Depth ?? usual.MostCounterDepth) + meets;
                    front = counter.Depth ?? front;
                }
            }

            if (joins && (best is null || right - left < best.Right - best.Left))
            {
                best = new(wall, left, right, front);
            }
        }

        return best;
    }

    /// <summary>The edge that an outline turns to a wall, before it and along it.</summary>
    private static bool TryEdge(PlanLine wall, Items<PlanPoint> corners, Distance meets, out Distance left, out Distance right, out Distance off)
    {
        (left, right, off) = (Distance.MaxValue, Distance.MinValue, Extent(wall, corners).Near);
        foreach (PlanPoint corner in corners)
        {
            wall.Locate(corner, out Distance along, out Distance away);

            // On a slant corners of one edge may be a tick apart.
            if (away <= off + Distance.FromTicks(1))
            {
                (left, right) = (Distance.Min(left, along), Distance.Max(right, along));
            }
        }

        return left < right && off >= -meets && right > Distance.Zero && left < wall.Length;
    }

    /// <summary>The wall that a peninsula joins, the stretch of it between its sides, and how far out the counter there reaches.</summary>
    private sealed class Joint(int wall, Distance left, Distance right, Distance? front)
    {
        public int Wall { get; } = wall;

        public Distance Left { get; } = left;

        public Distance Right { get; } = right;

        public Distance? Front { get; } = front;
    }
}
