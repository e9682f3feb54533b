using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>Rooms as a good crew roughs them in.</summary>
internal sealed partial class OrdinaryRooms(StoreyDraft storey)
{
    private static readonly DeviceKind Receptacle = DeviceKind.DuplexReceptacle;
    private static readonly RoomKind[] Unalarmed = [RoomKind.Kitchen, RoomKind.Bathroom, RoomKind.Closet, RoomKind.Garage];

    private readonly Draw draw = storey.Draw;
    private static readonly RoomKind[] Lived = [RoomKind.Kitchen, RoomKind.LivingRoom, RoomKind.FamilyRoom, RoomKind.DiningRoom, RoomKind.Bedroom, RoomKind.Office, RoomKind.Foyer];

    // Walls that another room may have on their other side, and those that one has.
    private readonly List<SetWall> shared = [];
    private readonly HashSet<string> backed = [];

    private readonly List<SetWall> framed = [];
    private int rooms;

    /// <summary>Every wall that was set, as it really is.</summary>
    public IReadOnlyList<SetWall> Framed => framed;

    public Room Make(RoomKind kind)
    {
        string id = storey.Id + "-" + kind + ++rooms;
        FloorBuildup? floor = storey.Floor();

        // A garage's slab lies below the house's subfloor; now and then a sitting room is sunken. Both are set out from their own floor.
        Distance? step = kind == RoomKind.Garage ? draw.One<Distance?>(null, In(-4), In(-8), In(-18))
            : kind == RoomKind.FamilyRoom && !storey.Plain && draw.Chance(15) ? In(-7)
            : null;
        storey.IsOffLevel = step is not null;
        storey.FillsWalls = Lived.Contains(kind);
        List<WallDraft> drafts = [DoorWall("south", kind)];
        drafts.AddRange(
            kind == RoomKind.Kitchen ? [CounterWall("north"), ApplianceWall("west")]
            : kind == RoomKind.Bathroom ? [VanityWall("north")]
            : kind == RoomKind.Bedroom ? [BedWall("north"), WindowWall("west")]
            : kind == RoomKind.LivingRoom || kind == RoomKind.FamilyRoom ? [SeatWall("north"), MediaWall("west"), WindowWall("east")]
            : kind == RoomKind.DiningRoom ? [WainscotWall("north"), WindowWall("west")]
            : kind == RoomKind.Laundry ? [MachineWall("north")]
            : kind == RoomKind.Garage ? [GarageWall("north")]
            : kind == RoomKind.Office ? [DeskWall("north")]
            : kind == RoomKind.Hall || kind == RoomKind.Foyer || kind == RoomKind.Stair ? [HallWall("north")]
            : kind == RoomKind.Basement || kind == RoomKind.Attic || kind == RoomKind.Utility ? [BareWall("north", kind)]
            : [ClosetWall("north")]);
        List<SetWall> set = Squared(drafts, kind).ConvertAll(draft => draft.Build(id));
        List<Wall> walls = Closed(Swung(set.ConvertAll(one => one.Wall)));
        framed.AddRange(set);

        // Furring is a layer of its own before a wall of stone: nothing is behind it.
        shared.AddRange(set.ConvertAll(one => one with { Wall = walls.First(wall => wall.Id == one.Wall.Id) }).Where(one => step is null && one.Timber.Cavity != In(1.5m) && one.Wall.BackOf is null && one.Wall.Top.Count == 0 && !one.Wall.Openings.Any(opening => opening.Kind == OpeningKind.Window)));
        Room room = new Room(id, kind, storey.Id).WithFloor(floor).WithSubfloorOffset(step).WithCeiling(step is null || storey.HangsUpright ? null : storey.Storey.Ceiling).WithWalls(walls.Select(wall => wall.WithBoxes(wall.Boxes.Select(box => storey.Drawn(box, floor)))).ToArray())
            .WithOverhead(new[] { storey.Box(BoxPurpose.Light, DeviceKind.Luminaire).WithKind(BoxKind.Octagon).WithPlan(new PlanPoint(In(60), In(60))) });

        // In the middle, where a room has one.
        room = new WallPlan(room).MiddleOfRectangle is { } middle ? room.WithOverhead(room.Overhead.Select(box => box.WithPlan(middle))) : room;
        if (!Unalarmed.Contains(kind))
        {
            // One in each bedroom, and outside the bedrooms of every storey.
            room = room.WithOverhead(room.Overhead.With(storey.Box(BoxPurpose.Alarm, DeviceKind.SmokeAlarm).WithKind(BoxKind.Octagon).WithPlan(new PlanPoint(In(40), In(40)))));
        }

        if (kind == RoomKind.Laundry)
        {
            room = room.WithFixtures(new[]
            {
                new Fixture("washer", FixtureKind.Washer).WithWall("north").WithLeft(In(8)).WithRight(In(36)).WithDepth(In(27)).WithTop(new Level(In(38), Datum.FinishedFloor)),
                new Fixture("dryer", FixtureKind.Dryer).WithWall("north").WithLeft(In(36)).WithRight(In(64)).WithDepth(In(27)).WithTop(new Level(In(38), Datum.FinishedFloor)),
            });
        }

        // Between the sink and the machine its receptacle is reached through the sink's cabinet.
        if (kind == RoomKind.Kitchen && room.Walls.FirstOrDefault(wall => wall.Counters.Count > 0) is { } worktop && worktop.Counters[0].Interruptions.Count > 0)
        {
            Distance machine = worktop.Counters[0].Left + In(104);
            room = room.WithFixtures(new[] { new Fixture("dishwasher", FixtureKind.Dishwasher).WithWall(worktop.Id).WithLeft(machine).WithRight(machine + In(24)).WithDepth(In(24)) });
        }

        storey.IsOffLevel = false;
        storey.FillsWalls = false;
        return room;
    }

    /// <summary>Three rooms of four are described whole: a rectangle, its walls from left to right as somebody sees them who turns round in it. A foyer never is: whole, each bit of its walls would need an outlet.</summary>
    private List<WallDraft> Squared(List<WallDraft> drafts, RoomKind kind)
    {
        if (storey.Plain || kind == RoomKind.Foyer || !storey.Says(75))
        {
            return drafts;
        }

        string[] order = ["south", "west", "north", "east"];
        List<WallDraft> all = order.Select(id => drafts.Find(draft => draft.Id == id) ?? OtherWall(id, kind)).ToList();
        for (int i = 0; i < 2; i++)
        {
            // A face of another room's wall is as long as that: where it is the shorter one, it can't stand opposite.
            (WallDraft one, WallDraft other) = (all[i], all[i + 2]);
            decimal length = Math.Max(one.Here, other.Here);
            if ((one.IsBack && one.Here < length) || (other.IsBack && other.Here < length))
            {
                return drafts;
            }

            _ = one.Gap(length - one.Here);
            _ = other.Gap(length - other.Here);
        }

        return all;
    }

    /// <summary>Four walls whose opposite sides differ stand in a wider space: beyond the shorter one of two their side is open.</summary>
    private static List<Wall> Closed(List<Wall> walls)
    {
        if (walls.Count != 4)
        {
            return walls;
        }

        List<Wall> order = new[] { "south", "west", "north", "east" }.Select(id => walls.Single(wall => wall.Id == id)).ToList();
        return Enumerable.Range(0, 4).SelectMany(i => order[(i + 2) % 4].Length - order[i].Length is var open && open > Distance.Zero
            ? new[] { order[i].WithTurnDegrees(0m), new Wall(order[i].Id + "-open", open).WithOpen(true) }
            : [order[i]]).ToList();
    }

    /// <summary>A leaf that would stand before a switch or a thermostat round the corner opens the other way.</summary>
    private static List<Wall> Swung(List<Wall> walls)
    {
        for (int i = 0; i < walls.Count; i++)
        {
            Wall before = walls[(i + walls.Count - 1) % walls.Count];
            Wall after = walls[(i + 1) % walls.Count];
            bool Hidden(Opening door) => door.Swing == DoorSwing.Into
                && ((door.Left < In(32) && before.Boxes.Any(box => DoorDraft.IsUsedAtADoor(box) && box.At > before.Length - In(34)))
                    || (walls[i].Length - door.Right < In(32) && after.Boxes.Any(box => DoorDraft.IsUsedAtADoor(box) && box.At < In(34))));

            // A door that is hung the other way is hung so for the room behind it too: of that room's face nothing is said then.
            walls[i] = walls[i].Openings.Any(Hidden) ? walls[i].WithBackOf(null).WithBackOffset(null) : walls[i];
            walls[i] = walls[i].WithOpenings(walls[i].Openings.Select(door => Hidden(door) ? door.WithSwing(DoorSwing.Away) : door).ToArray());
        }

        return walls;
    }

    /// <summary>The well of a flight to the storey above: its wall is as high as both storeys.</summary>
    public (Room Room, StairFlight Flight) Stairwell(string upper, Distance rise, Distance? floorAbove)
    {
        string id = storey.Id + "-stairwell";
        FloorBuildup? floor = storey.Floor();
        StairDraft stairs = new(storey, id, rise);
        SetWall wall = stairs.Build();
        framed.Add(wall);
        Room room = new Room(id, RoomKind.Stair, storey.Id).WithFloor(floor).WithCeiling(new Ceiling().WithFraming(StairDraft.WellHeight(rise)).WithBoard(StairDraft.WellBoard)).WithWalls(new[] { wall.Wall })
            .WithOverhead(new[] { storey.Box(BoxPurpose.Light, DeviceKind.Luminaire).WithKind(BoxKind.Octagon).WithPlan(new PlanPoint(In(30), In(18))) });
        return (room, stairs.Flight(upper).WithCutForFloorBelow(floor is { Thickness.IsExact: true } ? floor.Thickness.From : null).WithCutForFloorAbove(floorAbove));
    }

    /// <summary>A wall seen from outside: a receptacle above grade, a bell button, lights.</summary>
    public Wall OutsideWall(string id) => new WallDraft(id, storey).Gap(20)
        .Put(storey.Box(BoxPurpose.Exterior, DeviceKind.GfciReceptacle).WithAt(In(20)).WithHeight(storey.Crew.Anywhere(BoxPurpose.Exterior).Height))
        .Put(storey.Box(BoxPurpose.Doorbell, DeviceKind.DoorbellButton).WithAt(In(60)).WithHeight(storey.Crew.Anywhere(BoxPurpose.Doorbell).Height))
        .Put(storey.Box(BoxPurpose.Light, DeviceKind.Luminaire).WithKind(BoxKind.Octagon).WithAt(In(80)).WithHeight(BoxHeight.ToCenter(In(66), Datum.Subfloor)))
        .Gap(100).BuildOutside();

    private WallDraft DoorWall(string id, RoomKind kind)
    {
        WallDraft wall = new(id, storey);
        decimal casing = draw.One(2.25m, 2.5m, 3.25m);
        DeviceKind[] switches = draw.Below(5) switch
        {
            0 => [DeviceKind.Switch, DeviceKind.Switch],
            1 => [DeviceKind.ThreeWaySwitch, DeviceKind.Dimmer, DeviceKind.Switch],
            2 => [DeviceKind.ToggleSwitch],
            3 => [DeviceKind.ThreeWaySwitch, DeviceKind.FanControl],
            _ => [DeviceKind.Switch],
        };
        _ = wall.Door(kind, casing, switches);
        if (kind == RoomKind.Garage)
        {
            return Receptacles(wall, BoxPurpose.Garage, 1);
        }

        if (kind == RoomKind.Bedroom || kind == RoomKind.Hall)
        {
            Alarm(wall);
        }

        if (kind != RoomKind.Kitchen && kind != RoomKind.Bathroom && kind != RoomKind.Closet)
        {
            _ = Receptacles(wall, BoxPurpose.General, draw.Between(1, 3));
        }

        if (draw.Chance(10))
        {
            // What an earlier crew left stays where it is.
            _ = wall.Put(storey.Box(BoxPurpose.General, Receptacle).WithExisting(true).WithAt(In(wall.Here + 10)).WithHeight(BoxHeight.ToTop(In(14), Datum.Subfloor))).Gap(24);
        }

        return wall;
    }

    /// <summary>Its top is 4 to 12 in below the ceiling: the cover reaches 2-3/4 in above its center (from memory).</summary>
    private void Alarm(WallDraft wall)
    {
        decimal center = draw.Between(7, 14) + 0.5m;
        if (storey.Seams.Any(seam => center - 2 < storey.BoardWall - seam && storey.BoardWall - seam < center + 2))
        {
            return;
        }

        _ = wall.Put(storey.Box(BoxPurpose.Alarm, DeviceKind.SmokeAlarm).WithAt(In(wall.Here + 10)).WithHeight(BoxHeight.ToCenter(-In(center), Datum.FinishedCeiling))).Gap(24);
    }

    private static WallDraft Receptacles(WallDraft wall, BoxPurpose purpose, int count)
    {
        for (int i = 0; i < count; i++)
        {
            _ = wall.Put(purpose, wall.Here + 10, Receptacle).Gap(72);
        }

        return wall;
    }
}
