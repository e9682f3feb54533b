using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Planning;

/// <summary>Draws a house of rectangular rooms on one sheet a storey, and finds out itself which wall faces are back to back.</summary>
/// <param name="name">The dwelling's name.</param>
/// <param name="unit">Turns a number of the drawing into a distance.</param>
/// <param name="thickest">How thick a wall between two rooms is at most.</param>
internal sealed class RectangleHouse(string name, Func<decimal, Distance> unit, decimal thickest)
{
    private static readonly string[] Sides = ["north", "east", "south", "west"];

    private readonly List<Room> rooms = [];
    private readonly List<OutsideFace> outside = [];
    private readonly Dictionary<string, (string Storey, string Side, decimal Line, decimal From, decimal To)> faces = new(StringComparer.Ordinal);

    /// <summary>A room from its left and upper corner to its right and lower one, north up. Its walls are named after the side that they are on.</summary>
    public RectangleHouse Add(string id, RoomKind kind, string storey, decimal left, decimal top, decimal right, decimal bottom, params Fixture[] fixtures)
    {
        foreach ((string side, decimal line, decimal from, decimal to) in new[] { ("north", top, left, right), ("east", right, top, bottom), ("south", bottom, left, right), ("west", left, top, bottom) })
        {
            faces.Add(id + "/" + side, (storey, side, line, from, to));
        }

        rooms.Add(new Room(id, kind, storey).WithFixtures(fixtures).WithPlace(new(new(unit(left), unit(top))))
            .WithWalls(Sides.Select(side => new Wall(side, unit(faces[id + "/" + side].To - faces[id + "/" + side].From))).ToArray()));
        return this;
    }

    /// <summary>A face seen from outside, on the named side of what is behind it.</summary>
    public RectangleHouse Outside(string id, string storey, string side, decimal line, decimal from, decimal to, params Fixture[] before)
    {
        // Who looks at the south side stands with the face as someone in a room does with its north wall.
        string facing = Sides[(Array.IndexOf(Sides, side) + 2) % 4];
        faces.Add(id + "/wall", (storey, facing, line, from, to));
        outside.Add(new OutsideFace(id).WithStorey(storey).WithWalls(new[] { new Wall("wall", unit(to - from)).WithExterior(true) }).WithFixtures(before));
        return this;
    }

    /// <summary>Changes a wall.</summary>
    public RectangleHouse Change(string address, Func<Wall, Wall> change)
    {
        string[] parts = address.Split('/');
        int room = rooms.FindIndex(one => one.Id == parts[0]);
        if (room >= 0)
        {
            rooms[room] = rooms[room].WithWalls(rooms[room].Walls.Select(wall => wall.Id == parts[1] ? change(wall) : wall));
        }
        else
        {
            int face = outside.FindIndex(one => one.Id == parts[0]);
            outside[face] = outside[face].WithWalls(outside[face].Walls.Select(change));
        }

        return this;
    }

    /// <summary>Changes a room.</summary>
    public RectangleHouse ChangeRoom(string id, Func<Room, Room> change)
    {
        int room = rooms.FindIndex(one => one.Id == id);
        rooms[room] = change(rooms[room]);
        return this;
    }

    /// <summary>An opening in a wall, from one place of the drawing to another. It is described on this face alone.</summary>
    public RectangleHouse Open(string address, Opening opening, decimal from, decimal to)
    {
        (_, string side, _, decimal start, decimal end) = faces[address];
        bool goesUp = side is "north" or "east";
        return Change(address, wall => wall.WithOpenings(wall.Openings.With(opening.WithLeft(unit(goesUp ? from - start : end - to)).WithRight(unit(goesUp ? to - start : end - from)))));
    }

    /// <summary>The house, with everything that two rooms or a room and the outside share.</summary>
    public Dwelling Build(params Storey[] storeys)
    {
        HashSet<string> said = [];
        foreach (string one in faces.Keys.ToArray())
        {
            foreach (string other in faces.Keys.Where(other => string.CompareOrdinal(one, other) < 0 && AreBackToBack(faces[one], faces[other])))
            {
                // A face can name one other; in a house of rooms side by side one of the two is always free to.
                (string from, string to) = said.Add(one) ? (one, other) : said.Add(other) ? (other, one) : throw new InvalidOperationException(one + " and " + other + " both name another.");
                Change(from, wall => wall.WithBackOf(to).WithBackOffset(unit(Offset(faces[from], faces[to]))));
            }
        }

        return new Dwelling(name).WithStoreys(storeys).WithRooms(rooms.ToArray()).WithOutside(outside.ToArray());
    }

    private bool AreBackToBack((string Storey, string Side, decimal Line, decimal From, decimal To) one, (string Storey, string Side, decimal Line, decimal From, decimal To) other) =>
        one.Storey == other.Storey && Sides[(Array.IndexOf(Sides, one.Side) + 2) % 4] == other.Side && one.From < other.To && other.From < one.To
        && (one.Side is "south" or "east" ? other.Line - one.Line : one.Line - other.Line) is >= 0 and var gap && gap <= thickest;

    private static decimal Offset((string Storey, string Side, decimal Line, decimal From, decimal To) one, (string Storey, string Side, decimal Line, decimal From, decimal To) other) =>
        one.Side is "north" or "east" ? other.From - one.From : one.To - other.To;
}
