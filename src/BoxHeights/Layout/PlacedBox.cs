using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A box and the address of the surface it is listed under.</summary>
public sealed record PlacedBox
{
    /// <summary>Puts a box on a surface.</summary>
    /// <param name="address">"room/wall", "room/ceiling" or "room/floor", where the room may be an outside face.</param>
    /// <param name="box">The box.</param>
    public PlacedBox(string address, DeviceBox box)
    {
        Address = address ?? throw new ArgumentNullException(nameof(address));
        Box = box ?? throw new ArgumentNullException(nameof(box));
    }

    /// <summary>"room/wall", "room/ceiling" or "room/floor".</summary>
    public string Address { get; init; }

    /// <summary>The box.</summary>
    public DeviceBox Box { get; init; }

    /// <summary>The surface and the box.</summary>
    public override string ToString() => Address + ", " + Box;
}

/// <summary>Finds and changes the boxes of a dwelling by id, wherever they are listed.</summary>
public static class DwellingBoxes
{
    internal const string Ceiling = "ceiling";
    internal const string Floor = "floor";

    /// <summary>Every box with its address: room by room, walls from left to right, then ceiling and floor; outside faces last.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public static IReadOnlyList<PlacedBox> PlacedBoxes(this Dwelling dwelling)
    {
        List<PlacedBox> found = [];
        _ = Map(dwelling, (address, boxes) =>
        {
            foreach (DeviceBox box in boxes)
            {
                found.Add(new(address, box));
            }

            return boxes;
        });
        return found;
    }

    /// <summary>The box of an id.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="id">The id.</param>
    /// <returns>Null when there is none; the first one when several share the id.</returns>
    public static PlacedBox? FindBox(this Dwelling dwelling, string id)
    {
        foreach (PlacedBox placed in PlacedBoxes(dwelling))
        {
            if (placed.Box.Id == id)
            {
                return placed;
            }
        }

        return null;
    }

    /// <summary>The dwelling with some of its boxes changed.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="change">Gives the new box for an old one; the old one itself to leave it.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Dwelling WithBoxes(this Dwelling dwelling, Func<DeviceBox, DeviceBox> change) =>
        change is null ? throw new ArgumentNullException(nameof(change)) : Map(dwelling, (_, boxes) => boxes.Select(change));

    /// <summary>The dwelling with a box more.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="placed">The box and the surface it goes on.</param>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public static Dwelling WithBox(this Dwelling dwelling, PlacedBox placed)
    {
        Guard.NotNull(placed, nameof(placed));

        bool done = false;
        Dwelling changed = Map(dwelling, (address, boxes) =>
        {
            if (done || address != placed.Address)
            {
                return boxes;
            }

            done = true;
            return boxes.With(placed.Box);
        });
        return done ? changed : throw DwellingAddresses.NoSuch(dwelling, "surface", placed.Address, nameof(placed));
    }

    /// <summary>The dwelling with some of its boxes changed, and without those for which nothing is given.</summary>
    internal static Dwelling WithBoxesLeft(this Dwelling dwelling, Func<DeviceBox, DeviceBox?> change) =>
        Map(dwelling, (_, boxes) =>
        {
            List<DeviceBox> left = [];
            foreach (DeviceBox box in boxes)
            {
                if (change(box) is { } kept)
                {
                    left.Add(kept);
                }
            }

            return new(left);
        });

    /// <summary>The dwelling with boxes more, each behind those of its surface; the first of several surfaces of one address.</summary>
    internal static Dwelling WithBoxes(this Dwelling dwelling, List<PlacedBox> added)
    {
        Dictionary<string, List<DeviceBox>> more = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in added)
        {
            more.ListOf(placed.Address).Add(placed.Box);
        }

        return Map(dwelling, (address, boxes) =>
        {
            if (!more.TryGetValue(address, out List<DeviceBox>? here))
            {
                return boxes;
            }

            more.Remove(address);
            return new Items<DeviceBox>([.. boxes, .. here]);
        });
    }

    /// <summary>The dwelling without a box.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="id">The box's id.</param>
    /// <exception cref="ArgumentException">The dwelling has no such box.</exception>
    public static Dwelling WithoutBox(this Dwelling dwelling, string id)
    {
        bool done = false;
        Dwelling changed = Map(dwelling, (_, boxes) =>
        {
            List<DeviceBox> kept = [];
            foreach (DeviceBox box in boxes)
            {
                if (box.Id == id)
                {
                    done = true;
                }
                else
                {
                    kept.Add(box);
                }
            }

            return kept.Count == boxes.Count ? boxes : new Items<DeviceBox>(kept);
        });
        return done ? changed : throw DwellingAddresses.NoSuch(dwelling, "box", id, nameof(id));
    }

    private static Dwelling Map(Dwelling dwelling, Func<string, Items<DeviceBox>, Items<DeviceBox>> change)
    {
        Guard.NotNull(dwelling, nameof(dwelling));

        Items<Wall> Walls(string owner, Items<Wall> walls) => walls.Select(wall => wall.WithBoxes(change(SurfaceAddress.Of(owner, wall.Id), wall.Boxes)));
        return dwelling with
        {
            Rooms = dwelling.Rooms.Select(room => room with
            {
                Walls = Walls(room.Id, room.Walls),
                Overhead = change(SurfaceAddress.Of(room.Id, Ceiling), room.Overhead),
                InFloor = change(SurfaceAddress.Of(room.Id, Floor), room.InFloor),
            }),
            Outside = dwelling.Outside.Select(face => face.WithWalls(Walls(face.Id, face.Walls))),
        };
    }
}
