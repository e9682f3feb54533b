using System.Linq;

namespace BoxHeights.Tests.Rules;

/// <summary>The same dwelling seen in a mirror: left and right change places, heights stay.</summary>
internal static class Mirror
{
    public static Dwelling Of(Dwelling dwelling) => dwelling.WithStoreys(dwelling.Storeys.Select(storey => storey.WithStuds(Of(storey.Studs, null))))
        .WithRooms(dwelling.Rooms.Select(room => room
            .WithWalls(new Items<Wall>(room.Walls.Select((wall, i) => Of(wall, StudsOf(dwelling, room, wall)).WithTurnDegrees(room.Walls[i > 0 ? i - 1 : room.Walls.Count - 1].TurnDegrees)).Reverse()))
            .WithFixtures(room.Fixtures.Select(fixture => OnWall(room, fixture)))
            .WithFreestanding(room.Freestanding.Select(thing => thing.WithCorners(thing.Corners.Select(InPlan)).WithLine(thing.Line.Select(InPlan))))
            .WithPlace(null)))
        .WithOutside(dwelling.Outside.Select(face => face.WithWalls(new Items<Wall>(face.Walls.Select(wall => Of(wall, 0)).Reverse()))
            .WithFixtures(face.Fixtures.Select(fixture => face.Walls.FirstOrDefault(wall => wall.Id == fixture.Wall) is { } wall && fixture is { Left: { } left, Right: { } right }
                ? fixture.WithLeft(wall.Length - right).WithRight(wall.Length - left) : fixture))))
        .WithFlights(dwelling.Flights.Select(flight => flight.FirstNosing is { } first && flight.Wall is { } on
            ? flight.WithFirstNosing(LengthOf(dwelling, on) - first).WithClimbs(Other(flight.Climbs ?? WallEnd.Right)) : flight))
        is var mirrored ? mirrored
            .WithRooms(mirrored.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => Behind(dwelling, wall)))))
            .WithOutside(mirrored.Outside.Select(face => face.WithWalls(face.Walls.Select(wall => Behind(dwelling, wall))))) : dwelling;

    // In a square corner what was to the right of the first wall's left end is now along the last wall, which comes first.
    private static PlanPoint InPlan(PlanPoint point) => new(point.Into, point.Right);

    private static Wall Behind(Dwelling dwelling, Wall wall) =>
        wall is { BackOf: { } back, BackOffset: { } offset } ? wall.WithBackOffset(wall.Length - offset - LengthOf(dwelling, back)) : wall;

    private static Distance LengthOf(Dwelling dwelling, string address) => dwelling.Rooms.SelectMany(room => room.Walls.Select(wall => (Address: room.Id + "/" + wall.Id, wall.Length)))
        .Concat(dwelling.Outside.SelectMany(face => face.Walls.Select(wall => (Address: face.Id + "/" + wall.Id, wall.Length)))).First(one => one.Address == address).Length;

    private static int StudsOf(Dwelling dwelling, Room room, Wall wall) =>
        (wall.Studs ?? dwelling.Storeys.FirstOrDefault(storey => storey.Id == room.Storey)?.Studs) is { } studs ? StudPositions.Along(studs, wall.Length).Count : 0;

    private static Wall Of(Wall wall, int studs)
    {
        Distance length = wall.Length;
        return wall
            .WithStuds(Of(wall.Studs, length))
            .WithNoCavity(wall.NoCavity.Select(one => one.WithLeft(length - one.Right).WithRight(length - one.Left)))
            .WithCounters(wall.Counters.Select(one => one.WithLeft(length - one.Right).WithRight(length - one.Left)
                .WithInterruptions(one.Interruptions.Select(cut => cut.WithLeft(length - cut.Right).WithRight(length - cut.Left)))))
            .WithCoverings(wall.Coverings.Select(one => one.WithLeft(length - one.Right).WithRight(length - one.Left)))
            .WithFinishes(wall.Finishes.Select(one => one.WithLeft(length - one.Right).WithRight(length - one.Left)))
            .WithOpenings(wall.Openings.Select(one => one.WithLeft(length - one.Right).WithRight(length - one.Left).WithHinge(Other(one.Hinge)).WithPocketOn(Other(one.PocketOn))))
            .WithBoxes(new Items<DeviceBox>(wall.Boxes.Reverse().Select(box => box
                .WithAt(box.At is { } at ? length - at : null)
                .WithMounting(box.Mounting is { Stud: { } stud, Side: { } side } on && stud <= studs
                    ? on.WithStud(studs + 1 - stud).WithSide(Other(side))
                    : box.Mounting))));
    }

    private static WallEnd? Other(WallEnd? end) => end is { } one ? (one == WallEnd.Left ? WallEnd.Right : WallEnd.Left) : null;

    private static StudSide Other(StudSide side) => side == StudSide.Left ? StudSide.Right : StudSide.Left;

    /// <summary>Studs that are listed one by one are a wall's own.</summary>
    private static StudLayout? Of(StudLayout? studs, Distance? length) => studs?
        .WithFrom(studs.From == WallEnd.Left ? WallEnd.Right : WallEnd.Left)
        .WithOpenSide(studs.OpenSide is { } open ? Other(open) : null)
        .WithFaces(length is { } end ? studs.Faces.Select(face => end - face - (studs.Thickness ?? UsualMeasures.Generic.Lumber)) : studs.Faces);

    private static Fixture OnWall(Room room, Fixture fixture) =>
        fixture is { Wall: { } id, Left: { } left, Right: { } right } && room.Walls.FirstOrDefault(wall => wall.Id == id) is { } wall
            ? fixture.WithLeft(wall.Length - right).WithRight(wall.Length - left)
            : fixture;
}
