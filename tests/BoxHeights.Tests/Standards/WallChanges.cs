using System;

namespace BoxHeights.Tests.Standards;

/// <summary>Changes all walls of a dwelling.</summary>
internal static class WallChanges
{
    public static Dwelling WithWalls(this Dwelling house, Func<Wall, Wall> change) => house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(change))));

    public static Dwelling WithSills(this Dwelling house, Distance sill) =>
        house.WithWalls(wall => wall.WithOpenings(wall.Openings.Select(opening => opening.WithSill(new Level(sill, Datum.Subfloor)))));
}
