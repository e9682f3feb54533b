using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Slips of whoever writes a good house down: a length, a turn, a place, one face of a wall. Each is the one fault that is found, and where it is.</summary>
public sealed class PlantedFaults
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    private static IReadOnlyDictionary<string, Func<Dwelling, (Dwelling House, LayoutFaultKind Kind, string Subject)?>> Slips { get; } = new Dictionary<string, Func<Dwelling, (Dwelling, LayoutFaultKind, string)?>>(StringComparer.Ordinal)
    {
        ["an open side too long by 66 in"] = house => InAWall(house, wall => wall.Open, wall => wall.WithLength(wall.Length + In(66)), LayoutFaultKind.DoesNotClose, ofTheRoom: true),
        ["a turn forgotten"] = house => InAWall(house, wall => wall.Open, wall => wall.WithTurnDegrees(0m), LayoutFaultKind.DoesNotClose, ofTheRoom: true),
        ["a wall called ceiling"] = house => InAWall(house, wall => wall.Open, wall => wall.WithId("ceiling"), LayoutFaultKind.DuplicateId),
        ["a wall of 100 km"] = house => InAWall(house, wall => wall.Open, wall => wall.WithLength(Distance.FromMillimeters(100_000_000)), LayoutFaultKind.BeyondMeasure),
        ["a leaf wider than its door"] = house => InAnOpening(house, one => one is { Leaf: not null, Swing: DoorSwing.Away } && one.Kind == OpeningKind.Door, one => one.WithLeaf(one.Right - one.Left + In(1))),
        ["a sill above its head"] = house => InAnOpening(house, one => one is { Sill: not null, Head: not null } && one.Kind == OpeningKind.Window, one => one.WithSill(one.Head).WithHead(one.Sill)),
        ["a head above the ceiling"] = house => house.Storeys[0].Ceiling?.Framing is { } framing ? InAnOpening(house, one => one.Head?.Datum == Datum.Subfloor, one => one.WithHead(new Level(framing.To + In(12), Datum.Subfloor)), room => room.Ceiling is null && room.Storey == house.Storeys[0].Id) : null,
        ["two counters in one place"] = house => InAWall(house, wall => wall.Counters.Count == 1, wall => wall.WithCounters(wall.Counters.With(wall.Counters[0].WithId("z-again"))), LayoutFaultKind.Contradiction, "{0}/{1}"),
        ["a light a kilometer away"] = house => Overhead(house, box => box.WithPlan(new PlanPoint(Distance.FromMillimeters(1_000_000), In(60))), LayoutFaultKind.OutsideItsRoom),
        ["a light in the next room"] = house => Overhead(house, box => box.WithPlan(new PlanPoint(-In(40), In(60))), LayoutFaultKind.OutsideItsRoom),
        ["a light without a place"] = house => Overhead(house, box => box.WithPlan(null), LayoutFaultKind.NoPlace),
        ["a kind left out"] = house => InAWall(house, wall => wall.Counters.Count == 1, wall => wall.WithCounters(wall.Counters.Select(one => one.WithKind(default))), LayoutFaultKind.MisspelledKind, "{0}/{1}"),
        ["a bedroom spelled wrong"] = house => InARoom(house, RoomKind.Bedroom, room => room.WithKind(new RoomKind("bedrom"))),
        ["a kitchen spelled wrong"] = house => InARoom(house, RoomKind.Kitchen, room => room.WithKind(new RoomKind("kitchn"))),
        ["a switch spelled wrong"] = house => InABox(house, DeviceKind.Switch, new DeviceKind("swich")),
        ["a receptacle spelled wrong"] = house => InABox(house, DeviceKind.DuplexReceptacle, new DeviceKind("duplex-receptacel")),
        ["a door that opens both ways"] = house => OnBothFaces(house, DoorSwing.Into),
        ["a door that opens neither way"] = house => OnBothFaces(house, DoorSwing.Away),
        ["a wall that is its own back"] = house => InAWall(house, wall => wall is { Open: false, BackOf: null }, wall => wall.WithBackOf("{0}"), LayoutFaultKind.Contradiction),
    };

    public static TheoryData<string> Names
    {
        get
        {
            TheoryData<string> names = [];
            foreach (string name in Slips.Keys)
            {
                names.Add(name);
            }

            return names;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Slip_InAnOrdinaryHouse_IsTheOneFaultThatIsFound(string name)
    {
        int planted = 0;
        for (int seed = 1; planted < Tries.Of(40) && seed <= 400; seed++)
        {
            if (Slips[name](OrdinaryHouses.Make(seed, 4 + (seed % 11))) is not { } slip)
            {
                continue;
            }

            planted++;
            LayoutFault[] faults = Evaluator.Evaluate(slip.House).Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Fault!).ToArray();
            Assert.True(faults.Any(fault => fault.Kind == slip.Kind && fault.Subject == slip.Subject), "seed " + seed + ": " + slip.Subject + ": " + string.Join("\n", faults.Select(fault => fault.Subject + ": " + fault.Message)));
            Assert.True(faults.Length == 1, "seed " + seed + ": " + string.Join("\n", faults.Select(fault => fault.Subject + ": " + fault.Message)));
        }

        Assert.True(planted >= 4, "hardly any house offers a place for this slip: " + planted);
    }

    private static (Dwelling, LayoutFaultKind, string)? InAWall(Dwelling house, Func<Wall, bool> which, Func<Wall, Wall> change, LayoutFaultKind kind, string subject = "", bool ofTheRoom = false)
    {
        foreach (Room room in house.Rooms)
        {
            foreach (Wall wall in room.Walls.Where(which))
            {
                string address = room.Id + "/" + wall.Id;
                Wall other = change(wall);
                other = other.BackOf == "{0}" ? other.WithBackOf(address) : other;
                Dwelling changed = Put(house, room, room.WithWalls(room.Walls.Select(one => one.Id == wall.Id ? other : one)));
                return (changed, kind, ofTheRoom ? room.Id : subject.Length == 0 ? room.Id + "/" + other.Id : string.Format(System.Globalization.CultureInfo.InvariantCulture, subject, address, wall.Counters[0].Id));
            }
        }

        return null;
    }

    private static (Dwelling, LayoutFaultKind, string)? InAnOpening(Dwelling house, Func<Opening, bool> which, Func<Opening, Opening> change, Func<Room, bool>? of = null)
    {
        foreach (Room room in house.Rooms.Where(room => of is null || of(room)))
        {
            foreach (Wall wall in room.Walls.Where(wall => wall.Top.Count == 0 && wall.BackOf is null))
            {
                if (wall.Openings.FirstOrDefault(which) is { } opening && !house.Rooms.Any(other => other.Walls.Any(one => one.BackOf == room.Id + "/" + wall.Id)))
                {
                    Wall changed = wall.WithOpenings(wall.Openings.Select(one => one.Id == opening.Id ? change(one) : one));
                    return (Put(house, room, room.WithWalls(room.Walls.Select(one => one.Id == wall.Id ? changed : one))), LayoutFaultKind.Contradiction, room.Id + "/" + wall.Id + "/" + opening.Id);
                }
            }
        }

        return null;
    }

    private static (Dwelling, LayoutFaultKind, string)? InARoom(Dwelling house, RoomKind kind, Func<Room, Room> change) =>
        house.Rooms.FirstOrDefault(room => room.Kind == kind) is { } one ? (Put(house, one, change(one)), LayoutFaultKind.MisspelledKind, one.Id) : null;

    private static (Dwelling, LayoutFaultKind, string)? InABox(Dwelling house, DeviceKind kind, DeviceKind wrong)
    {
        DeviceBox? one = house.PlacedBoxes().Select(placed => placed.Box).FirstOrDefault(box => box.Devices.Count == 1 && box.Devices[0] == kind);
        return one is null ? null : (house.WithBoxes(box => box.Id == one.Id ? box.WithDevices(new[] { wrong }) : box), LayoutFaultKind.MisspelledKind, one.Id);
    }

    /// <summary>A door that is described on both faces of its wall swings alike on both.</summary>
    private static (Dwelling, LayoutFaultKind, string)? OnBothFaces(Dwelling house, DoorSwing swing)
    {
        foreach (Room room in house.Rooms)
        {
            foreach (Wall wall in room.Walls.Where(wall => wall.BackOf is not null))
            {
                Room? other = house.Rooms.FirstOrDefault(one => wall.BackOf!.StartsWith(one.Id + "/", StringComparison.Ordinal));
                Wall? face = other?.Walls.FirstOrDefault(one => other.Id + "/" + one.Id == wall.BackOf);
                Opening? door = wall.Openings.FirstOrDefault(one => one.Kind == OpeningKind.Door && one.Swing is { } said && said != swing);
                if (door is not null && face is not null && face.Openings.Count == wall.Openings.Count)
                {
                    Wall changed = wall.WithOpenings(wall.Openings.Select(one => one.Id == door.Id ? one.WithSwing(swing) : one));
                    return (Put(house, room, room.WithWalls(room.Walls.Select(one => one.Id == wall.Id ? changed : one))), LayoutFaultKind.Contradiction, room.Id + "/" + wall.Id + "/" + door.Id);
                }
            }
        }

        return null;
    }

    private static (Dwelling, LayoutFaultKind, string)? Overhead(Dwelling house, Func<DeviceBox, DeviceBox> change, LayoutFaultKind kind)
    {
        foreach (Room room in house.Rooms.Where(room => room.Overhead.Count > 0 && new WallPlan(room).Closes))
        {
            DeviceBox light = room.Overhead[0];
            return (Put(house, room, room.WithOverhead(room.Overhead.Select(box => box.Id == light.Id ? change(box) : box))), kind, light.Id);
        }

        return null;
    }

    private static Dwelling Put(Dwelling house, Room room, Room changed) => house.WithRooms(house.Rooms.Select(one => one.Id == room.Id ? changed : one));
}
