using System;
using System.Linq;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Standards;

/// <summary>A country that is none: its document, its boxes and its customs, as somebody outside the package would write them. Every number is made up.</summary>
internal static class InventedCountry
{
    public static DeviceKind Socket { get; } = new("socket-outlet");

    private static readonly BoxKind Round = new("round-box");
    private static readonly PlateKind Frame = new("frame");
    private static readonly Citation Rules = new("Byland Wiring Rules", "1");

    /// <summary>Round boxes of 68 mm at centers of 71 mm, under square frames.</summary>
    public static PartsCatalog Catalog { get; } = MakeCatalog();

    public static RuleSet Set { get; } = new(
    [
        new HeightBand("switch-line", "900 to 1100 mm above the floor", Severity.Violation, new("Byland Wiring Rules", "4.1"), Datum.FinishedFloor)
        {
            Low = Mm(900), High = Mm(1100), Preferred = BoxHeight.ToCenter(Mm(1000), Datum.FinishedFloor), Scope = RuleScope.Walls with { Devices = new[] { DeviceKind.Switch } },
        },
        new HeightBand("socket-line", "250 to 1300 mm above the floor", Severity.Violation, new("Byland Wiring Rules", "4.2"), Datum.FinishedFloor)
        {
            Low = Mm(250), High = Mm(1300), Preferred = BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor), Scope = RuleScope.Walls with { Devices = new[] { Socket } },
        },
        new Zone("water-zone", "600 mm or more from a tub or shower", Severity.Violation, new("Byland Wiring Rules", "7.1"), Water, Mm(600)) { Scope = RuleScope.Walls },
        new SocketsByArea("sockets-by-area", "there once for each 4 m2 of floor, or part of it", Severity.Violation, new("Byland Wiring Rules", "5.1"), 4m)
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.Bedroom } },
        },
        new RequiredOutlet("basin-socket", "within 1500 mm of a basin", Severity.Violation, new("Byland Wiring Rules", "5.2"), Counted, new FixtureSubject(new RoomAnchor { Fixtures = new[] { FixtureKind.Basin } }, Mm(1500)))
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.Bathroom } },
            Adds = SocketBox.WithHeight(BoxHeight.ToCenter(Mm(1100), Datum.FinishedFloor)),
        },
        new Coverage("wall-sockets", "within 2500 mm of a socket, all along the wall", Severity.Violation, new("Byland Wiring Rules", "5.3"),
            new WallSpaces { Doorways = new[] { OpeningKind.Door } },
            new CountedOutlet("socket", new[] { Socket }) { UnstatedMayBeOne = true, Surfaces = new[] { BoxSurface.Wall }, LowestVolts = 220, HighestVolts = 240, Amperes = new[] { 16 } }, Mm(1000), Mm(2500), SocketBox.WithHeight(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor)))
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.LivingRoom } },
        },
        new AnchoredPlace("beside-bed", "beside the bed", Severity.Note, Rules, new PlaceAnchor(new[] { "bed" }, Mm(500)).WithBeyond(Mm(100)))
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Bedside } }, Planned = new DeviceBox("planned", BoxPurpose.Bedside).WithDevices(new[] { Socket }), PlannedFor = new[] { FixtureKind.Bed },
        },
        new SpecifiedHeight("as-drawn", "at the height that is drawn", Severity.Advice, Rules, Mm(8)),
        new UniformLevel("one-line", "level with the others of its purpose", Severity.Advice, Rules, Mm(5)) { Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Switch } } },
        new KeepClear("clear-of-frames", "clear of the frames of openings", Severity.Advice, Rules, WallPieces.Openings) { Scope = RuleScope.Walls },
        new BoxAgainstBox("clear-of-boxes", "clear of other boxes", Severity.Advice, Rules, BoxPairs.OnOneFace) { Scope = RuleScope.Walls },
        new KeepClear("behind-leaf", "clear of an open leaf", Severity.Advice, Rules, WallPieces.OpenLeaves) { Scope = RuleScope.Walls },
        new RoomForBoxes("room-for-sockets", "100 mm or more from openings", Rules) { Beside = Mm(100), FromEnds = Mm(150), Aside = Mm(800), BetweenPlates = Mm(10), NextBay = Mm(600) },
        new SwitchesAtEntrances("door-switches", "beside the latch", Rules, new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithHeight(BoxHeight.ToCenter(Mm(1000), Datum.FinishedFloor)))
        {
            WithinReach = Mm(500), CasingGap = Mm(30), BeyondLeaf = Mm(100), StudsBeside = Mm(90), Heights = new(Mm(900), Mm(1100)),
        },
        new InspectionItem("sheath-seen", "10 mm or more of sheath seen in the box", new("Byland Wiring Rules", "9.1"), 1) { Limit = Mm(10) },
    ]);

    /// <summary>A bedroom, a living room and a bathroom, with mistakes that its rules find.</summary>
    public static Dwelling House()
    {
        DwellingBuilder builder = new DwellingBuilder("Byland house").With(d => d.WithUnits(LengthUnits.Millimeters))
            .Add(new Storey("ground").WithLevelLine(new Level(Mm(1000), Datum.Subfloor)).WithCeiling(new Ceiling().WithFraming(Mm(2520)).WithBoard(Mm(13))));
        RoomBuilder bed = builder.Room("bed", RoomKind.Bedroom, "ground").With(r => r.WithFloor(FloorBuildup.Of(new FloorLayer("boards", Mm(20)))));
        bed.Add(new Fixture("bed", FixtureKind.Bed).WithWall("north").WithLeft(Mm(2900)).WithRight(Mm(3800)));
        bed.Wall("south", Mm(4300)).Add(Door(700)).Add(Box("s1", BoxPurpose.Switch, DeviceKind.Switch, 1750, 1400));
        bed.Wall("east", Mm(3100)).Add(Box("p1", BoxPurpose.General, Socket, 1500, 300).WithRating("230 V 16 A").WithMeasured(new MeasuredHeight(BoxHeight.ToCenter(Mm(330), Datum.FinishedFloor)).WithWithin(Mm(2))));
        bed.Wall("north", Mm(4300)).Add(new Opening("window", OpeningKind.Window, Mm(1500), Mm(2700)).WithSill(new Level(Mm(900), Datum.FinishedFloor)).WithHead(new Level(Mm(2100), Datum.FinishedFloor)));
        bed.Wall("west", Mm(3100)).Add(Box("p2", BoxPurpose.General, Socket, 1600, 200).WithDevices(new[] { Socket, Socket }).WithSpecified(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor)));
        RoomBuilder living = builder.Room("living", RoomKind.LivingRoom, "ground").With(r => r.WithFloor(FloorBuildup.Of(new FloorLayer("boards", Mm(20)))));
        living.Wall("south", Mm(5200)).Add(Door(900)).Add(Box("p3", BoxPurpose.General, Socket, 3000, 300).WithRating("230 V 16 A"));
        living.Wall("east", Mm(4100));
        living.Wall("north", Mm(5200));
        living.Wall("west", Mm(4100));
        RoomBuilder bath = builder.Room("bath", RoomKind.Bathroom, "ground").With(r => r.WithFloor(FloorBuildup.Of(new FloorLayer("tile", Mm(15)))))
            .Add(new Fixture("tub", FixtureKind.Tub).WithWall("north").WithLeft(Mm(1500)).WithRight(Mm(3200)).WithDepth(Mm(750)).WithRim(new Level(Mm(560), Datum.FinishedFloor)))
            .Add(new Fixture("basin", FixtureKind.Basin).WithWall("south").WithLeft(Mm(1500)).WithRight(Mm(2100)).WithDepth(Mm(480)).WithTop(new Level(Mm(850), Datum.FinishedFloor)));
        bath.Wall("south", Mm(3200));
        bath.Wall("east", Mm(2400)).Add(Door(300));
        bath.Wall("north", Mm(3200)).Add(Box("p4", BoxPurpose.Bath, Socket, 1100, 1100));
        bath.Wall("west", Mm(2400));
        return builder.Build();
    }

    private static RoomAnchor Water => new() { Fixtures = new[] { FixtureKind.Tub, FixtureKind.Shower } };

    private static CountedOutlet Counted => new("socket", new[] { Socket });

    private static DeviceBox SocketBox => new DeviceBox("socket", BoxPurpose.General).WithDevices(new[] { Socket });

    public static Distance Mm(int millimeters) => Distance.FromMillimeters(millimeters);

    private static DeviceBox Box(string id, BoxPurpose purpose, DeviceKind device, int at, int height) =>
        new DeviceBox(id, purpose).WithDevices(new[] { device }).WithAt(Mm(at)).WithHeight(BoxHeight.ToCenter(Mm(height), Datum.FinishedFloor));

    private static Opening Door(int left) => new Opening("door", OpeningKind.Door, Mm(left), Mm(left + 900)).WithLeaf(Mm(820)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithCasing(Mm(70)).WithHead(new Level(Mm(2080), Datum.FinishedFloor));

    private static PartsCatalog MakeCatalog()
    {
        Citation parts = new("Byland parts list");
        PartsCatalog catalog = new PartsCatalog(Round, Frame, Mm(71)).With(new KindPart(Round, parts).WithIsRound(true).WithMaterial(BoxMaterial.Plastic));
        for (int gangs = 1; gangs <= 4; gangs++)
        {
            catalog = catalog.With(new BoxPart(Round, gangs, new BoxSize(Mm(68 + (71 * (gangs - 1))), Mm(68), Mm(47)), null, parts)).With(new PlatePart(Frame, gangs, new PlateSize(Mm(81 + (71 * (gangs - 1))), Mm(81)), parts));
        }

        return new[] { Socket, DeviceKind.Switch }.Aggregate(catalog, (all, device) => all.With(new DevicePart(device, new OperableParts(Mm(20), Mm(20)), parts)));
    }

    /// <summary>A form of one's own: so many sockets for so much floor. It reads whole rooms with square corners.</summary>
    private sealed record SocketsByArea(string Name, string Asks, Severity Weight, Citation From, decimal SquareMeters) : SpaceRule(Name, Asks, Weight, From)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "one socket for each " + SquareMeters + " m2";

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Room is not { Walls.Count: 4 } room)
            {
                return;
            }

            int needed = (int)Math.Ceiling(room.Walls[0].Length.Millimeters * room.Walls[1].Length.Millimeters / 1_000_000m / SquareMeters);
            int there = space.Boxes.AsEnumerable().Count(box => box.Traits.Devices.Contains(Socket));
            if (there >= needed)
            {
                statement.Meets(space.Id, space.Id);
                return;
            }

            PlacedBox[] added = [.. Enumerable.Range(there + 1, needed - there).Select(number => new PlacedBox(space.Id + "/" + room.Walls[2].Id,
                SocketBox.WithId(space.Id + "-socket-" + number).WithAt(Mm(300 * number)).WithHeight(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor))))];
            statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(there), QuantitySet.AtLeast(needed), () => $"{there} sockets of {needed}", MissingFacts.None, added);
        }

        public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => box.Traits.Devices.Contains(Socket);
    }
}
