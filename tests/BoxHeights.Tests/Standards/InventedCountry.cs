using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A country that is none: its document, its boxes and its customs, as somebody outside the package would write them. Every number is made up.</summary>
internal static partial class InventedCountry
{
    public static DeviceKind Socket => new("socket-outlet");

    /// <summary>One of two switches for a light.</summary>
    public static DeviceKind TwoWay => new("two-way-switch");

    private static readonly BoxKind Round = new("round-box");
    private static readonly PlateKind Frame = new("frame");

    /// <summary>Round boxes of 68 mm at centers of 71 mm, under square frames.</summary>
    public static PartsCatalog Catalog { get; } = MakeCatalog();

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

    private static DeviceBox SocketBox => new DeviceBox("socket", BoxPurpose.General).WithDevices(new[] { Socket });

    private static DeviceBox Box(string id, BoxPurpose purpose, DeviceKind device, int at, int height) =>
        new DeviceBox(id, purpose).WithDevices(new[] { device }).WithAt(Mm(at)).WithHeight(BoxHeight.ToCenter(Mm(height), Datum.FinishedFloor));

    private static Opening Door(int left) => new Opening("door", OpeningKind.Door, Mm(left), Mm(left + 900)).WithLeaf(Mm(820)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithCasing(Mm(70)).WithHead(new Level(Mm(2080), Datum.FinishedFloor));

    /// <summary>What its houses measure where nobody says: all of them otherwise than elsewhere.</summary>
    private static UsualMeasures Measures => new()
    {
        Lumber = Mm(45),
        LumberName = "45 mm",
        BlockFit = Mm(4),
        BoardGap = Mm(15),
        Courses = new BoardCourses[] { new(new[] { Mm(1250), Mm(1250) }) { UpTo = Mm(2520) }, new(new[] { Mm(1250), Mm(1250), Mm(400) }) { Above = Mm(2520) } },
        JambInset = Mm(30),
        PocketTop = Mm(2200),
        CounterTop = Mm(910),
        LevelStep = Mm(20),
        TapeError = Mm(2),
        Floor = new(Mm(5), Mm(140)),
        Rim = new(Mm(100), Mm(700)),
        MostBed = Mm(4),
        MostBoard = Mm(20),
        MostCounterDepth = Mm(630),
        MostThingDepth = Mm(1700),
        MostBehindABasin = Mm(120),
        MostToeKick = Mm(180),
    };

    private static PartsCatalog MakeCatalog()
    {
        Citation parts = new("Byland parts list");
        PartsCatalog catalog = new PartsCatalog(Round, Frame, Mm(71)).With(Measures).With(new KindPart(Round, parts).WithIsRound(true).WithMaterial(BoxMaterial.Plastic));
        for (int gangs = 1; gangs <= 4; gangs++)
        {
            catalog = catalog.With(new BoxPart(Round, gangs, new BoxSize(Mm(68 + (71 * (gangs - 1))), Mm(68), Mm(47)), null, parts)).With(new PlatePart(Frame, gangs, new PlateSize(Mm(81 + (71 * (gangs - 1))), Mm(81)), parts));
        }

        return new[] { Socket, DeviceKind.Switch }.Aggregate(catalog, (all, device) => all.With(new DevicePart(device, new OperableParts(Mm(20), Mm(20)), parts)));
    }
}
