using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Planning;

/// <summary>
/// Rooms without boxes, as a framer leaves them: doors of every kind, windows, counters, appliances, furniture, tall cabinets, ducts, studs that are known, assumed or
/// not spoken of, a closet behind a wall, a flight of stairs. All measures are whole inches, so that the room in the mirror is on the tape's quarter inches too.
/// </summary>
internal sealed class RandomRooms
{
    /// <summary>The room's id.</summary>
    public const string Id = "room";

    /// <summary>Every kind of room that has rows of its own.</summary>
    public static RoomKind[] Kinds { get; } =
    [
        RoomKind.Bedroom, RoomKind.Kitchen, RoomKind.LivingRoom, RoomKind.Bathroom, RoomKind.Office, RoomKind.DiningRoom, RoomKind.Hall, RoomKind.Laundry,
        RoomKind.FamilyRoom, RoomKind.Garage, RoomKind.Basement, RoomKind.Closet, RoomKind.Stair,
    ];

    private readonly Draw draw;
    private readonly RoomKind kind;
    private readonly List<Fixture> fixtures = [];
    private int parts;

    private RandomRooms(Draw draw, RoomKind kind)
    {
        this.draw = draw;
        this.kind = kind;
    }

    /// <summary>Any seed.</summary>
    public static Arbitrary<int> Seeds { get; } = Arb.From(Gen.Choose(1, int.MaxValue));

    /// <summary>The kind of room that a seed makes.</summary>
    public static RoomKind KindOf(int seed) => Kinds[(seed & 0xFFFF) % Kinds.Length];

    /// <summary>The dwelling of a seed: a room, a hall for the storey's alarm, and perhaps a closet behind one of the room's walls.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="counterTop">How high kitchen counters are above the finished floor, in inches.</param>
    /// <param name="counterDepth">How deep they are.</param>
    public static Dwelling Make(int seed, decimal counterTop = 36, decimal counterDepth = 25.5m) => new RandomRooms(new(seed), KindOf(seed)).House(seed, counterTop, counterDepth);

    private Dwelling House(int seed, decimal counterTop, decimal counterDepth)
    {
        int wide = 2 * draw.Between(kind == RoomKind.Closet ? 36 : kind == RoomKind.Bathroom ? 66 : 62, kind == RoomKind.Hall ? 130 : 110);
        int deep = 2 * draw.Between(kind == RoomKind.Closet ? 14 : kind == RoomKind.Hall ? 20 : kind == RoomKind.Stair ? 90 : 58, kind == RoomKind.Closet ? 40 : kind == RoomKind.Hall ? 26 : 104);
        Wall north = kind == RoomKind.Kitchen ? CounterWall("north", wide, counterTop, counterDepth)
            : kind == RoomKind.Bathroom ? VanityWall("north", wide)
            : kind == RoomKind.Laundry ? MachineWall("north", wide)
            : kind == RoomKind.Bedroom ? BedWall("north", wide)
            : kind == RoomKind.LivingRoom || kind == RoomKind.FamilyRoom ? MediaWall("north", wide)
            : Plain("north", wide);
        Wall east = kind == RoomKind.Bathroom ? TubWall("east", deep) : deep < 76 || kind == RoomKind.Closet ? new Wall("east", In(deep)) : WindowWall("east", deep);
        Wall south = DoorWall("south", wide);
        bool hasCloset = (kind == RoomKind.Bedroom || kind == RoomKind.Office) && draw.Chance(50);
        Wall west = hasCloset ? ClosetFront("west", deep) : deep < 60 || kind == RoomKind.Stair ? new Wall("west", In(deep)) : Plain("west", deep);
        Room room = new Room(Id, kind, "first").WithFloor(draw.One<FloorBuildup?>(null, Floor(0.75m, 0.75m), Floor(0.3125m, 0.875m)))
            .WithWalls(new[] { north, east, south, west }.Select(Framed).ToArray()).WithFixtures(fixtures.ToArray());
        Storey first = new Storey("first").WithCeiling(new Ceiling().WithFraming(In(97.125m)).WithBoard(In(0.5m)).WithStrapping(Distance.Zero)).WithStuds(Studs(draw.Below(4)));
        Dwelling house = new Dwelling("room " + seed).WithOccupancy(Occupancy.OneFamily).WithStoreys(new[] { first, new Storey("second").WithAboveBelow(In(108)) })
            .WithRooms(hasCloset ? new[] { Hall, room, ClosetBehind(room.Walls[3]) } : new[] { Hall, room });
        return kind == RoomKind.Stair
            ? house.WithFlights(new[] { new StairFlight("flight", "first", "second", 14).WithTread(In(10)).WithWall(Id + "/west").WithFirstNosing(In(24)).WithClimbs(WallEnd.Right) })
            : house;
    }

    /// <summary>What the framer tells of a wall: its cavity, studs of its own, a duct where nothing else is.</summary>
    private Wall Framed(Wall wall)
    {
        wall = draw.Chance(70) ? wall.WithCavity(In(draw.One(3.5m, 5.5m))) : wall;
        wall = draw.Chance(25) ? wall.WithStuds(Studs(1 + draw.Below(3))) : wall;
        bool isBlank = wall.Openings.Count + wall.Counters.Count + wall.Coverings.Count == 0 && fixtures.TrueForAll(fixture => fixture.Wall != wall.Id);
        if (isBlank && wall.Length >= In(90) && draw.Chance(40))
        {
            Distance left = In(draw.Between(30, 60));
            wall = wall.WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, left, left + In(14)) });
        }

        return wall;
    }

    private StudLayout? Studs(int which) => which == 0 ? null
        : new StudLayout().WithSpacing(In(draw.One(16m, 16m, 24m))).WithFirstFace(In(15.25m)).WithFrom(draw.One(WallEnd.Left, WallEnd.Right)).WithKnown((StudKnowledge)(which - 1));

    private static FloorBuildup Floor(decimal from, decimal to) => FloorBuildup.Of(new FloorLayer("floor", new DistanceRange(In(from), In(to))));

    private string Part(string what) => what + ++parts;

    /// <summary>An entrance of some kind, with room for a switch on its latch side, and perhaps a second one.</summary>
    private Wall DoorWall(string id, int length)
    {
        Wall wall = new(id, In(length));
        if (kind == RoomKind.Garage)
        {
            // The way for cars, and a door beside it.
            return length >= 200
                ? wall.WithOpenings(new[] { new Opening("cars", new OpeningKind("garage-door"), In(12), In(120)).WithHead(Head), Entrance(150, 182, OpeningKind.Door) })
                : wall.WithOpenings(new[] { Entrance(length - 60, length - 28, OpeningKind.Door) });
        }

        // Off the space of a tub that stands at the wall's left end; in a closet there is less to spare.
        int left = kind == RoomKind.Closet ? draw.Between(14, length - 54) : kind == RoomKind.Bathroom ? draw.Between(66, length - 60) : draw.Between(24, length - 84);
        OpeningKind of = kind == RoomKind.Closet ? draw.One(OpeningKind.Door, OpeningKind.BifoldDoor) : kind == RoomKind.Bathroom ? OpeningKind.Door
            : draw.One(OpeningKind.Door, OpeningKind.Door, OpeningKind.PocketDoor, OpeningKind.BarnDoor, OpeningKind.Cased, OpeningKind.DoubleDoor, OpeningKind.SlidingDoor);
        int width = of == OpeningKind.DoubleDoor || of == OpeningKind.SlidingDoor || of == OpeningKind.BifoldDoor ? Math.Min(62, length - left - 16) : 34;
        Opening first = Entrance(left, left + width, of);
        int after = left + width + 50;
        return wall.WithOpenings(length - after > 70 && draw.Chance(40)
            ? new[] { first, Entrance(after, after + 34, OpeningKind.Door) }
            : new[] { first });
    }

    private static Room Hall => new Room("hall", RoomKind.Hall, "first").WithWalls(new[]
    {
        new Wall("north", In(100)), new Wall("east", In(60)),
        new Wall("south", In(100)).WithOpenings(new[] { new Opening("way", OpeningKind.Cased, In(20), In(56)).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m)) }), new Wall("west", In(60)),
    });

    private static Level Head => new(In(82.5m), Datum.Subfloor);

    private Opening Entrance(int left, int right, OpeningKind of) =>
        new Opening(Part("d"), of, In(left), In(right)).WithHead(Head).WithLeaf(In(of == OpeningKind.DoubleDoor ? (right - left - 2) / 2 : right - left - 2))
            .WithHinge(draw.One(WallEnd.Left, WallEnd.Right)).WithSwing(of == OpeningKind.DoubleDoor ? DoorSwing.Away : draw.One(DoorSwing.Into, DoorSwing.Away)).WithPocketOn(left > right - left + 20 ? WallEnd.Left : WallEnd.Right)
            .WithCasing(In(draw.One(2.25m, 2.5m, 3.5m))).WithReveal(In(0.1875m));

    private Opening Window(int left, int width) => new Opening(Part("w"), OpeningKind.Window, In(left), In(left + width))
        .WithSill(new Level(In(draw.One(24m, 36m, 42m)), Datum.Subfloor)).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m)).WithStool(In(0.75m));

    private Wall Plain(string id, int length)
    {
        Wall wall = new(id, In(length));
        if (length >= 100 && kind != RoomKind.Closet && draw.Chance(30))
        {
            int left = draw.Between(8, length - 80);
            return wall.WithCoverings(new[] { new Covering(Part("c"), CoveringKind.TallCabinet, In(left), In(left + draw.Between(24, 60))).WithTop(new Level(In(84), Datum.FinishedFloor)) });
        }

        return kind == RoomKind.Office && length >= 100 && draw.Chance(50) ? WithThing(wall, FixtureKind.Desk, draw.Between(10, length - 76), 60, 30) : wall;
    }

    private Wall WindowWall(string id, int length)
    {
        Wall wall = new(id, In(length));
        int left = draw.Between(12, length - 52);
        return kind == RoomKind.Garage || kind == RoomKind.Basement || draw.Chance(25) ? wall : wall.WithOpenings(new[] { Window(left, draw.Between(24, Math.Min(72, length - left - 12))) });
    }

    private Wall BedWall(string id, int length)
    {
        int wide = draw.One(54, 60);
        return WithThing(new(id, In(length)), FixtureKind.Bed, draw.Between(20, length - wide - 20), wide, 80);
    }

    private Wall MediaWall(string id, int length) => WithThing(new(id, In(length)), draw.One(FixtureKind.Television, FixtureKind.Sofa), draw.Between(10, length - 70), 60, 20);

    private Wall MachineWall(string id, int length)
    {
        int left = draw.Between(4, length - 70);
        return WithThing(WithThing(new(id, In(length)), FixtureKind.Washer, left, 28, 28), FixtureKind.Dryer, left + 29, 28, 28);
    }

    private Wall WithThing(Wall wall, FixtureKind thing, int left, int wide, int deep)
    {
        fixtures.Add(new Fixture(Part("f"), thing).WithWall(wall.Id).WithLeft(In(left)).WithRight(In(left + wide)).WithDepth(In(deep)));
        return wall;
    }

    private Wall CounterWall(string id, int length, decimal top, decimal deep)
    {
        // Refrigerator at one end, then a counter with its sink and range.
        bool coldLeft = draw.Chance(50);
        int from = coldLeft ? 38 : draw.Between(0, 6);
        int to = coldLeft ? length - draw.Between(0, 6) : length - 38;
        Wall wall = WithThing(new(id, In(length)), FixtureKind.Refrigerator, coldLeft ? 1 : length - 37, 36, 30);
        int sink = from + draw.Between(14, Math.Max(14, (to - from) / 3));
        int range = sink + 32 + draw.Between(14, 30);
        List<CounterInterruption> cuts = [new CounterInterruption(InterruptionKind.Sink, In(sink), In(sink + 30)).WithBehind(In(3))];
        if (range + 30 + 12 <= to)
        {
            cuts.Add(new(InterruptionKind.Range, In(range), In(range + 30)));
        }

        return wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, In(from), In(to)).WithDepth(In(deep)).WithTop(new Level(In(top), Datum.FinishedFloor)).WithKneeSpace(Distance.Zero).WithInterruptions(cuts.ToArray()) });
    }

    private Wall VanityWall(string id, int length)
    {
        int right = draw.Between(30, 60);
        CounterInterruption basin = new(InterruptionKind.Basin, In((right / 2) - 9), In((right / 2) + 9));
        Wall wall = new Wall(id, In(length)).WithCounters(new[]
        {
            new Counter("vanity", CounterKind.Bath, Distance.Zero, In(right)).WithDepth(In(22)).WithTop(new Level(In(34), Datum.FinishedFloor)).WithKneeSpace(Distance.Zero).WithInterruptions(new[] { basin.WithBehind(In(2)) }),
        });
        return draw.Chance(50)
            ? wall.WithCoverings(new[] { new Covering("mirror", CoveringKind.Mirror, In(2), In(right - 2)).WithBottom(new Level(In(40), Datum.FinishedFloor)).WithTop(new Level(In(76), Datum.FinishedFloor)) })
            : wall;
    }

    private Wall TubWall(string id, int length) => WithThing(new(id, In(length)), FixtureKind.Tub, length - 60, 60, 30);

    private Wall ClosetFront(string id, int length)
    {
        int left = draw.Between(16, length - 62);
        return new Wall(id, In(length)).WithOpenings(new[] { Entrance(left, left + 34, draw.One(OpeningKind.Door, OpeningKind.PocketDoor, OpeningKind.BifoldDoor)) });
    }

    private static Room ClosetBehind(Wall front)
    {
        Opening door = front.Openings[0];
        Opening inside = new Opening("way", door.Kind, front.Length - door.Right, front.Length - door.Left).WithHead(Head);
        return new Room("closet", RoomKind.Closet, "first").WithWalls(new[]
        {
            new Wall("front", front.Length).WithBackOf(Id + "/" + front.Id).WithOpenings(new[] { inside }), new Wall("right", In(26)), new Wall("rear", front.Length), new Wall("left", In(26)),
        });
    }
}
