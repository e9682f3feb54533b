using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Puts what is resolved of a room into plan.</summary>
internal sealed class RoomParts(Room room, WallPlan plan, UsualMeasures usual)
{
    public Items<PlanWall> Walls()
    {
        List<PlanWall> walls = [];
        for (int face = 0; face < plan.Count && !plan.IsTooLarge; face++)
        {
            Wall wall = room.Walls[face];
            int on = face;
            walls.Add(new(AddressOf(wall), wall, (along, away) => PlanPoints.At(plan[on], along, away)));
        }

        return new(walls);
    }

    public Items<PlanOpening> Openings()
    {
        List<PlanOpening> openings = [];
        for (int face = 0; face < plan.Count && !plan.IsTooLarge; face++)
        {
            foreach (Opening opening in room.Walls[face].Openings)
            {
                openings.Add(new(SurfaceAddress.Of(AddressOf(room.Walls[face]), opening.Id), opening, At(face, opening.Left), At(face, opening.Right)) { Swings = Swings(face, opening) });
            }
        }

        return new(openings);
    }

    public Items<PlanShape> Shapes()
    {
        List<PlanShape> shapes = [];
        for (int face = 0; face < plan.Count && !plan.IsTooLarge; face++)
        {
            Wall wall = room.Walls[face];
            foreach (Counter counter in wall.Counters)
            {
                Stand(counter.Id, AddressOf(wall), counter.Kind.Name, face, counter.Left, counter.Right, counter.Depth, counter);
            }

            foreach (Covering covering in wall.Coverings)
            {
                Stand(covering.Id, AddressOf(wall), covering.Kind.Name, face, covering.Left, covering.Right, covering.Depth, covering);
            }
        }

        foreach (Fixture fixture in room.Fixtures)
        {
            // As rules take it: what is stated in plan goes before its wall, and is the rectangle round all its corners.
            if (fixture.Plan.Count >= 2)
            {
                PlanPatch around = PlanPatch.Around(fixture.Plan);
                PlanPoint[] corners = [Point(around.Left, around.Near), Point(around.Right, around.Near), Point(around.Right, around.Far), Point(around.Left, around.Far)];
                shapes.Add(new(fixture.Id, SurfaceAddress.Of(room.Id, fixture.Id), fixture.Kind.Name, corners, true, fixture));
            }
            else if (fixture is { Wall: { } wall, Left: { } left, Right: { } right } && !plan.IsTooLarge && plan.IndexOf(wall) is >= 0 and var against)
            {
                Stand(fixture.Id, room.Id, fixture.Kind.Name, against, left, right, fixture.Depth, fixture);
            }
        }

        foreach (Freestanding one in room.Freestanding)
        {
            bool isClosed = one.Corners.Count > 2;
            shapes.Add(new(one.Id, SurfaceAddress.Of(room.Id, one.Id), one.Kind.Name, isClosed ? one.Corners : one.Line, isClosed, one));
        }

        shapes.RemoveAll(shape => shape.Corners.Count == 0 || new List<PlanPoint>(shape.Corners).Exists(corner => !WallPlan.IsInAHouse(corner)));
        return new(shapes);

        static PlanPoint Point(decimal right, decimal into) => new(Distance.FromTicks((long)right), Distance.FromTicks((long)into));

        void Stand(string id, string under, string kind, int face, Distance left, Distance right, Distance? depth, object source) =>
            shapes.Add(new(id, SurfaceAddress.Of(under, id), kind, PlanPoints.Against(plan[face], left, right, depth), depth is not null, source));
    }

    /// <summary>The leaves that the description says swing into the room: as <see cref="DoorCover"/> takes them, a quarter turn from their jamb.</summary>
    private Items<PlanSwing> Swings(int face, Opening opening)
    {
        if (opening is not { Swing: DoorSwing.Into, Leaf: { } leaf } || opening.Right <= opening.Left)
        {
            return default;
        }

        TrimmedOpening trim = TrimmedOpening.Of(opening, usual);
        PlanSwing left = Swing(trim.JambLeft, trim.JambLeft + leaf);
        PlanSwing right = Swing(trim.JambRight, trim.JambRight - leaf);
        return opening.Kind == OpeningKind.DoubleDoor ? new[] { left, right }
            : opening.Kind == OpeningKind.Door && opening.Hinge is { } hinge ? new[] { hinge == WallEnd.Left ? left : right }
            : default(Items<PlanSwing>);

        PlanSwing Swing(Distance hinge, Distance end) => new(At(face, hinge), At(face, end), PlanPoints.At(plan[face], hinge, leaf));
    }

    private PlanPoint At(int face, Distance along) => PlanPoints.At(plan[face], along, Distance.Zero);

    private string AddressOf(Wall wall) => SurfaceAddress.Of(room.Id, wall.Id);
}
