namespace BoxHeights.Tests.Planning;

/// <summary>A narrow row house as its framer leaves it, in millimeters: three storeys, two rooms on each with the stair between them. Doors are described on one face each.</summary>
internal static class RowHouse
{
    /// <summary>The house without a box.</summary>
    public static Dwelling Bare => Drawing.Build(Storey("ground").WithGradeBelowSubfloor(Mm(150)), Storey("first").WithAboveBelow(Mm(2800)), Storey("second").WithAboveBelow(Mm(2800)))
        .WithUnits(LengthUnits.Millimeters).WithOccupancy(Occupancy.OneFamily)
        .WithFlights(new[]
        {
            new StairFlight("lower", "ground", "first", 16).WithTread(Mm(220)).WithWall("stair-0/south").WithFirstNosing(Mm(1300)).WithClimbs(WallEnd.Right),
            new StairFlight("upper", "first", "second", 16).WithTread(Mm(220)).WithWall("stair-1/south").WithFirstNosing(Mm(1300)).WithClimbs(WallEnd.Right),
        });

    private static RectangleHouse Drawing => new RectangleHouse("row house", Mm, 200)
        .Add("kitchen", RoomKind.Kitchen, "ground", 0, 0, 4800, 3600, On("north", "cold", FixtureKind.Refrigerator, 20, 720, 650), On("north", "washes", FixtureKind.Dishwasher, 2420, 3020, 600), On("west", "board", FixtureKind.Table, 1200, 2400, 800))
        .Add("stair-0", RoomKind.Stair, "ground", 0, 3700, 4800, 5900)
        .Add("living", RoomKind.LivingRoom, "ground", 0, 6000, 4800, 10800, On("east", "screen", FixtureKind.Television, 1800, 3200, 100), On("west", "couch", FixtureKind.Sofa, 1600, 3800, 900))
        .Add("bed-1", RoomKind.Bedroom, "first", 0, 6000, 4800, 10800, On("west", "bed-a", FixtureKind.Bed, 1500, 3100, 2000), On("south", "writing", FixtureKind.Desk, 300, 1500, 600))
        .Add("stair-1", RoomKind.Hall, "first", 0, 3700, 4800, 5900)
        .Add("bath", RoomKind.Bathroom, "first", 0, 0, 2300, 3600, On("north", "tub", FixtureKind.Tub, 0, 1700, 750).WithScreen("none"), On("west", "toilet", FixtureKind.Toilet, 1200, 1600, 700))
        .Add("office", RoomKind.Office, "first", 2400, 0, 4800, 3600, On("north", "table", FixtureKind.Desk, 500, 1900, 700))
        .Add("bed-2", RoomKind.Bedroom, "second", 0, 6000, 4800, 10800, On("east", "bed-b", FixtureKind.Bed, 1700, 3300, 2000))
        .Add("stair-2", RoomKind.Hall, "second", 0, 3700, 4800, 5900)
        .Add("bed-3", RoomKind.Bedroom, "second", 0, 0, 4800, 3600, On("west", "cot", FixtureKind.Bed, 900, 1800, 2000))
        .Outside("front", "ground", "south", 10950, 0, 4800)
        .Outside("back", "ground", "north", -150, 0, 4800)
        .Change("kitchen/north", wall => wall.WithExterior(true).WithCounters(new[] { Counters }))
        .Change("bath/east", wall => wall.WithCounters(new[] { Vanity }))
        .Open("kitchen/north", Window("over-sink", 1100), 1700, 2500)
        .Open("kitchen/east", Window("side-light", 1100), 2000, 2800)
        .Open("kitchen/north", Door("garden-door", WallEnd.Right, DoorSwing.Into).WithEntrance(EntranceSide.Inside), 3880, 4720)
        .Open("stair-0/north", Door("kitchen-door", WallEnd.Left, DoorSwing.Away), 3700, 4540)
        .Open("living/north", Door("living-door", WallEnd.Left, DoorSwing.Into), 3780, 4620)
        .Open("living/south", Door("front-door", WallEnd.Left, DoorSwing.Into).WithEntrance(EntranceSide.Inside), 400, 1300)
        .Open("living/south", Window("front-window", 800), 2200, 3800)
        .Open("stair-1/north", Door("bath-door", WallEnd.Right, DoorSwing.Away), 1300, 2100)
        .Open("stair-1/north", Door("office-door", WallEnd.Left, DoorSwing.Away), 2600, 3440)
        .Open("bed-1/north", Door("bed-1-door", WallEnd.Left, DoorSwing.Into), 3780, 4620)
        .Open("bed-1/south", Window("bed-1-window", 900), 1800, 3200)
        .Open("office/north", Window("office-window", 900), 3000, 4200)
        .Open("stair-2/north", Door("bed-3-door", WallEnd.Left, DoorSwing.Away), 2200, 3040)
        .Open("bed-2/north", Door("bed-2-door", WallEnd.Left, DoorSwing.Into), 3780, 4620)
        .Open("bed-2/south", Window("bed-2-window", 900), 1800, 3200)
        .Open("bed-3/north", Window("bed-3-window", 900), 1800, 3200);

    private static Counter Counters => new Counter("run", CounterKind.Kitchen, Mm(740), Mm(3780)).WithDepth(Mm(640)).WithTop(new Level(Mm(910), Datum.FinishedFloor)).WithInterruptions(new[]
    {
        new CounterInterruption(InterruptionKind.Range, Mm(1000), Mm(1600)), new CounterInterruption(InterruptionKind.Sink, Mm(1750), Mm(2350)).WithBehind(Mm(80)),
    });

    private static Counter Vanity => new Counter("vanity", CounterKind.Bath, Mm(1500), Mm(2300)).WithDepth(Mm(500)).WithTop(new Level(Mm(860), Datum.FinishedFloor))
        .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, Mm(1650), Mm(2150)).WithBehind(Mm(50)) });

    private static Storey Storey(string id) => new Storey(id).WithCeiling(new Ceiling().WithFraming(Mm(2500)).WithBoard(Mm(12.5m)).WithStrapping(Distance.Zero))
        .WithStuds(new StudLayout().WithSpacing(Mm(400)).WithFirstFace(Mm(381)).WithThickness(Mm(38)).WithKnown(StudKnowledge.Declared)).WithBoards(new BoardLayout().WithThickness(Mm(12.5m)));

    private static Level Head => new(Mm(2080), Datum.Subfloor);

    private static Opening Door(string id, WallEnd hinge, DoorSwing swing) =>
        new Opening(id, OpeningKind.Door, Mm(0), Mm(1)).WithLeaf(Mm(760)).WithHinge(hinge).WithSwing(swing).WithHead(Head).WithCasing(Mm(60)).WithReveal(Mm(5));

    private static Opening Window(string id, int sill) => new Opening(id, OpeningKind.Window, Mm(0), Mm(1)).WithSill(new Level(Mm(sill), Datum.Subfloor)).WithHead(Head).WithCasing(Mm(60)).WithReveal(Mm(5)).WithStool(Mm(20));

    private static Fixture On(string wall, string id, FixtureKind kind, int left, int right, int depth) =>
        new Fixture(id, kind).WithWall(wall).WithLeft(Mm(left)).WithRight(Mm(right)).WithDepth(Mm(depth));
}
