using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Output;

/// <summary>Small houses for the reports: some by hand, some drawn.</summary>
internal static class Houses
{
    /// <summary>What NEC 2023 has looked at before the inspection.</summary>
    public static PreInspection Inspected(Dwelling house) => PreInspection.For(new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023)).Evaluate(house));

    public static readonly Distance Eighth = Inches(0, 1, 8);

    public static Distance Inches(int whole, int numerator = 0, int denominator = 1) => Distance.FromInches(whole, numerator, denominator);

    public static DeviceBox Box(string id, string height, BoxPurpose? purpose = null) =>
        new(id, purpose ?? BoxPurpose.General) { At = Inches(24), Height = BoxHeight.Parse(height) };

    public static DeviceBox Measured(this DeviceBox box, string height, Distance? within = null) =>
        box.WithMeasured(new MeasuredHeight(BoxHeight.Parse(height)).WithWithin(within));

    public static Storey First { get; } = new("first") { LevelLine = new Level(Inches(48), Datum.Subfloor) };

    public static Room Room(string id, params DeviceBox[] boxes) =>
        new(id, RoomKind.Bedroom, "first") { Walls = new[] { new Wall("north", Inches(144)) { Boxes = boxes } } };

    public static FloorBuildup Floor(Distance thickness) => FloorBuildup.Of(new FloorLayer("tile", thickness));

    public static Dwelling Of(params Room[] rooms) => new("house") { Storeys = new[] { First }, Rooms = rooms };

    /// <summary>Every room seen in a mirror: what was from the left is from the right.</summary>
    public static Dwelling Mirrored(Dwelling dwelling) => dwelling with
    {
        Rooms = dwelling.Rooms.Select(room => room with { Walls = new(room.Walls.Reverse().Select(Mirrored)) }),
    };

    /// <summary>Every room under another name.</summary>
    public static Dwelling Renamed(Dwelling dwelling) => dwelling with { Rooms = dwelling.Rooms.Select(room => room with { Id = "new " + room.Id }) };

    private static Wall Mirrored(Wall wall) => wall with
    {
        Boxes = wall.Boxes.Select(box => box with { At = wall.Length - box.At }),
        Counters = wall.Counters.Select(one => one with { Left = wall.Length - one.Right, Right = wall.Length - one.Left }),
        Finishes = wall.Finishes.Select(one => one with { Left = wall.Length - one.Right, Right = wall.Length - one.Left }),
    };

    private static readonly BoxPurpose[] Purposes = [BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Counter];

    private static Gen<BoxHeight> Heights { get; } =
        from sixteenths in Gen.Choose(8, 80 * 16)
        from edge in Gen.Elements(Edge.Bottom, Edge.Center, Edge.Top, (Edge?)null)
        from datum in Gen.Elements(Datum.Subfloor, Datum.Subfloor, Datum.FinishedFloor, Datum.BottomPlate, Datum.Countertop, Datum.Grade)
        let value = Distance.FromInches(0, sixteenths, 16)
        select edge is null ? BoxHeight.EdgeUnstated(value, datum) : BoxHeight.To(edge.Value, value, datum);

    private static Gen<DeviceBox> Boxes { get; } =
        from height in Heights
        from at in Gen.Choose(4, 140)
        from purpose in Gen.Elements(Purposes)
        from gangs in Gen.Choose(1, 3)
        from kind in Gen.Elements((BoxKind?)null, BoxKind.FourSquare, BoxKind.CutIn, new BoxKind("unheard-of"))
        from existing in Gen.Frequency((4, Gen.Constant(false)), (1, Gen.Constant(true)))
        select new DeviceBox("unnamed", purpose) { Height = height, At = Distance.FromInches(at, 0, 1), Gangs = gangs, Kind = kind, Existing = existing };

    private static Gen<Room> Rooms { get; } =
        from walls in Gen.Choose(0, 3).SelectMany(count => Gen.ListOf(Gen.ListOf(Boxes), count))
        from offset in Gen.Elements(0, 0, -6, 3)
        from floor in Gen.Elements((FloorBuildup?)null, Floor(Inches(0, 3, 4)), Floor(Inches(0, 17, 128)))
        from storey in Gen.Elements("first", "second", "nowhere")
        from counter in Gen.Choose(0, 100)
        from burns in Gen.Elements((bool?)null, true, false)
        select new Room("unnamed", RoomKind.Kitchen, storey)
        {
            SubfloorOffset = Distance.FromInches(offset),
            Floor = floor,
            Walls = new(walls.Select((boxes, index) => new Wall("w" + index, Distance.FromInches(144, 0, 1))
            {
                Boxes = new(boxes),
                Counters = new[] { new Counter("c", CounterKind.Kitchen, Distance.FromInches(counter, 0, 1), Distance.FromInches(counter + 40, 0, 1)) { Top = new Level(Inches(36), Datum.FinishedFloor) } },
                Finishes = new[] { new Finish("f", FinishKind.Wainscot, Distance.FromInches(counter, 0, 1), Distance.FromInches(counter + 30, 0, 1)) { Top = new Level(Inches(36), Datum.Subfloor), Combustible = burns } },
            })),
        };

    /// <summary>Houses with all sorts of heights, some of them at fault; no two boxes share an id.</summary>
    public static Gen<Dwelling> Any { get; } =
        from rooms in Gen.Choose(0, 4).SelectMany(count => Gen.ListOf(Rooms, count))
        let house = new Dwelling("drawn") { Storeys = new[] { First, new Storey("second") }, Rooms = new(rooms.Select((room, index) => room with { Id = "room " + index })) }
        select Numbered(house);

    private static Dwelling Numbered(Dwelling dwelling)
    {
        int next = 0;
        return dwelling.WithBoxes(box => box with { Id = "b" + next++ });
    }
}
