using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Standards;

/// <summary>
/// Houses in which nothing is wrong: one or two storeys, 4 to 14 rooms, 40 to 150 boxes, set by good crews and written down as well or as badly as houses
/// are. Whatever a rule set for such houses reports on one of them is a false alarm.
/// </summary>
internal static class OrdinaryHouses
{
    private const int FewestBoxes = 40;
    private const int MostBoxes = 150;

    private static readonly RoomKind[] First = [RoomKind.Kitchen, RoomKind.LivingRoom, RoomKind.Bathroom, RoomKind.Bedroom];

    private static readonly RoomKind[] Landings = [RoomKind.Hall, RoomKind.Stair, RoomKind.Foyer];

    private static readonly RoomKind[] More =
    [
        RoomKind.Bedroom, RoomKind.Bathroom, RoomKind.Hall, RoomKind.Garage, RoomKind.Laundry, RoomKind.DiningRoom, RoomKind.FamilyRoom, RoomKind.Foyer,
        RoomKind.Closet, RoomKind.Office, RoomKind.Basement, RoomKind.Attic, RoomKind.Stair, RoomKind.Utility, new("pantry"),
    ];

    /// <summary>Seeds of houses with a number of rooms to aim at; shrinks to fewer rooms.</summary>
    public static Arbitrary<(int Seed, int Rooms)> Seeds { get; } = Arb.From(
        from seed in Gen.Choose(1, int.MaxValue) from rooms in Gen.Choose(4, 14) select (seed, rooms),
        one => Enumerable.Range(4, Math.Max(0, one.Item2 - 4)).Select(fewer => (one.Item1, fewer)));

    /// <summary>The house of a seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="rooms">How many rooms to aim at, 4 to 14; small ones get more of them until there are 40 boxes.</param>
    /// <param name="plain">Whether the first storey is 8 ft under 5/8 in board, hung with 48s, with 3/4 in of floor everywhere.</param>
    public static Dwelling Make(int seed, int rooms, bool plain = false) => Made(seed, rooms, plain, true).House;

    /// <summary>The house of a seed as a drawing has it, which tells nothing of studs, of which way doors go, of other faces and of stairs.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="rooms">How many rooms to aim at, 4 to 14.</param>
    public static Dwelling Drawn(int seed, int rooms) => Made(seed, rooms, false, false).House;

    /// <summary>The house of a seed, and its walls as they really are.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="rooms">How many rooms to aim at, 4 to 14.</param>
    public static (Dwelling House, IReadOnlyList<SetWall> Walls) Framed(int seed, int rooms) => Made(seed, rooms, false, true);

    /// <summary>Three-way switches are bought in pairs: an odd one is a plain switch after all.</summary>
    private static Dwelling WithMates(Dwelling house)
    {
        int threeWays = house.PlacedBoxes().Sum(placed => placed.Box.Devices.Count(device => device == DeviceKind.ThreeWaySwitch));
        bool isOdd = threeWays % 2 == 1;
        return house.WithBoxes(box =>
        {
            int odd = isOdd ? box.Devices.ToList().IndexOf(DeviceKind.ThreeWaySwitch) : -1;
            isOdd &= odd < 0;
            return odd < 0 && threeWays > 1 ? box
                : box.WithDevices(box.Devices.Select((device, i) => i == odd || (threeWays < 2 && device == DeviceKind.FourWaySwitch) ? DeviceKind.Switch : device).ToArray());
        });
    }

    private static (Dwelling House, IReadOnlyList<SetWall> Walls) Made(int seed, int rooms, bool plain, bool isFramed)
    {
        Draw draw = new(seed);
        StoreyDraft first = new(draw, "first", plain, isFramed);
        StoreyDraft second = new(draw, "second", false, isFramed);
        OrdinaryRooms firstRooms = new(first);
        OrdinaryRooms secondRooms = new(second);
        bool two = draw.Chance(50);
        List<Room> made = [];
        for (int i = 0; i < 14 && (i < rooms || Boxes() < FewestBoxes) && Boxes() < MostBoxes - 50; i++)
        {
            RoomKind kind = i < First.Length ? First[i] : draw.OneOf(More);
            made.Add((two && i >= First.Length && kind != RoomKind.Garage && draw.Chance(50) ? secondRooms : firstRooms).Make(kind));
        }

        Distance between = Distance.FromFeet(first.Storey.Ceiling?.Framing is { } framing && framing.To > Distance.FromFeet(9) ? 11 : 10);
        List<StairFlight> flights = [];
        if (two && !plain && made.Count < 13 && first.Says(60))
        {
            // A flight from a well of its own to the hall above.
            made.Add(secondRooms.Make(RoomKind.Hall));
            FloorBuildup?[] above = made.Where(room => room.Storey == "second" && Landings.Contains(room.Kind)).Select(room => room.Floor).Distinct().ToArray();
            (Room well, StairFlight flight) = firstRooms.Stairwell("second", between, above is [{ Thickness.IsExact: true } one] ? one.Thickness.From : null);
            made.Add(well);
            flights.Add(flight);
        }

        Dwelling house = new Dwelling("house " + seed).WithStoreys(two ? new[] { first.Storey, second.Storey.WithAboveBelow(between) } : new[] { first.Storey }).WithRooms(made.ToArray()).WithFlights(flights.ToArray())
            .WithOutside(new[] { new OutsideFace("front").WithWalls(new[] { firstRooms.OutsideWall("porch"), firstRooms.OutsideWall("yard") }) });
        return (WithMates(house), [.. firstRooms.Framed, .. secondRooms.Framed]);

        int Boxes() => first.BoxCount + second.BoxCount + 6;
    }
}
