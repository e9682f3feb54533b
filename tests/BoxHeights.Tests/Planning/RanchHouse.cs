namespace BoxHeights.Tests.Planning;

/// <summary>A ranch house as its framer leaves it: one storey, a kitchen with an island that is open to the living room, an attached garage. Doors are described on one face each.</summary>
internal static class RanchHouse
{
    private const string Main = "main";

    /// <summary>The house without a box.</summary>
    public static Dwelling Bare => Drawing.Build(
            new Storey(Main).WithCeiling(new Ceiling().WithFraming(In(97.125m)).WithBoard(In(0.5m)).WithStrapping(Distance.Zero)).WithGradeBelowSubfloor(In(14))
                .WithStuds(new StudLayout().WithSpacing(In(16)).WithFirstFace(In(15.25m)).WithKnown(StudKnowledge.Declared)).WithBoards(new BoardLayout().WithThickness(In(0.5m))))
        .WithOccupancy(Occupancy.OneFamily);

    private static RectangleHouse Drawing => new RectangleHouse("ranch", In, 7)
        .Add("kitchen", RoomKind.Kitchen, Main, 0, 0, 264, 180, On("north", "cold", FixtureKind.Refrigerator, 1, 37, 30), On("north", "washes", FixtureKind.Dishwasher, 102, 126, 24), On("north", "grinds", FixtureKind.Disposal, 76, 86, 12))
        .Add("living", RoomKind.LivingRoom, Main, 0, 180, 264, 336, On("west", "screen", FixtureKind.Television, 50, 105, 4), On("south", "couch", FixtureKind.Sofa, 150, 234, 36))
        .Add("foyer", RoomKind.Foyer, Main, 267.5m, 232, 331.5m, 336)
        .Add("hall", RoomKind.Hall, Main, 267.5m, 180, 579.5m, 228.5m)
        .Add("laundry", RoomKind.Laundry, Main, 267.5m, 88, 351.5m, 176.5m, On("east", "washer", FixtureKind.Washer, 4, 32, 28), On("east", "dryer", FixtureKind.Dryer, 33, 61, 28))
        .Add("pantry", RoomKind.Pantry, Main, 267.5m, 0, 351.5m, 84.5m)
        .Add("bath", RoomKind.Bathroom, Main, 355, 0, 451, 176.5m, On("north", "tub", FixtureKind.Tub, 0, 60, 32).WithScreen("none"), On("east", "toilet", FixtureKind.Toilet, 96, 116, 28))
        .Add("bed-3", RoomKind.Bedroom, Main, 454.5m, 0, 636, 176.5m, On("north", "bed-a", FixtureKind.Bed, 52, 106, 75), On("west", "writing", FixtureKind.Desk, 90, 140, 26))
        .Add("bed-2", RoomKind.Bedroom, Main, 335, 232, 483.5m, 336, On("east", "bed-b", FixtureKind.Bed, 26, 80, 75))
        .Add("bed-1", RoomKind.Bedroom, Main, 487, 232, 636, 336, On("east", "bed-c", FixtureKind.Bed, 22, 82, 80))
        .Add("closet", RoomKind.Closet, Main, 583, 180, 636, 228.5m)
        .Add("garage", RoomKind.Garage, Main, -246, 72, -5.5m, 336, On("north", "furnace", FixtureKind.Furnace, 20, 44, 30))
        .Outside("front", Main, "south", 341.5m, -246, 636)
        .Outside("back", Main, "north", -5.5m, 0, 636, On("wall", "condenser", FixtureKind.Condenser, 60, 96, 36))
        .Change("kitchen/south", wall => wall.WithOpen(true)).Change("living/north", wall => wall.WithOpen(true))
        .Change("kitchen/north", wall => wall.WithCounters(new[] { Counters }).WithExterior(true))
        .Change("bath/west", wall => wall.WithCounters(new[] { Vanity }))
        .ChangeRoom("kitchen", room => room.WithFreestanding(new[] { Island }))
        .Open("kitchen/north", Window("over-sink", 38), 66, 104)
        .Open("kitchen/north", new Opening("patio", OpeningKind.SlidingDoor, In(0), In(1)).WithLeaf(In(30)).WithPocketOn(WallEnd.Left).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m)).WithEntrance(EntranceSide.Inside), 190, 252)
        .Open("kitchen/east", Door("pantry-door", WallEnd.Left, DoorSwing.Away), 44, 74)
        .Open("garage/east", Door("house-door", WallEnd.Right, DoorSwing.Away), 132, 166)
        .Open("garage/south", new Opening("cars", OpeningKind.OverheadDoor, In(0), In(1)).WithHead(Head), -222, -30)
        .Open("living/south", Window("front-window", 24), 60, 132)
        .Open("living/east", Cased("to-foyer"), 250, 290)
        .Open("living/east", Cased("to-hall"), 186, 222)
        .Open("foyer/south", Door("front-door", WallEnd.Left, DoorSwing.Into).WithEntrance(EntranceSide.Inside), 281, 319)
        .Open("foyer/north", Cased("foyer-hall"), 278, 320)
        .Open("hall/north", Door("laundry-door", WallEnd.Left, DoorSwing.Away), 296, 328)
        .Open("hall/north", Door("bath-door", WallEnd.Right, DoorSwing.Away), 400, 430)
        .Open("hall/north", Door("bed-3-door", WallEnd.Right, DoorSwing.Away), 500, 532)
        .Open("bed-2/north", Door("bed-2-door", WallEnd.Left, DoorSwing.Into), 395, 427)
        .Open("bed-1/north", Door("bed-1-door", WallEnd.Right, DoorSwing.Into), 500, 532)
        .Open("bed-1/north", Door("closet-door", WallEnd.Left, DoorSwing.Into), 592, 620)
        .Open("bed-3/north", Window("north-window", 36), 570, 606)
        .Open("bed-2/south", Window("south-window", 36), 390, 438)
        .Open("bed-1/south", Window("bed-1-window", 36), 540, 588);

    private static Counter Counters => new Counter("run", CounterKind.Kitchen, In(38), In(182)).WithDepth(In(25.5m)).WithTop(new Level(In(36), Datum.FinishedFloor)).WithInterruptions(new[]
    {
        new CounterInterruption(InterruptionKind.Sink, In(70), In(100)).WithBehind(In(3)), new CounterInterruption(InterruptionKind.Range, In(140), In(170)),
    });

    private static Counter Vanity => new Counter("vanity", CounterKind.Bath, In(100), In(148)).WithDepth(In(22)).WithTop(new Level(In(34), Datum.FinishedFloor))
        .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, In(114), In(134)).WithBehind(In(2)) });

    private static Freestanding Island => new Freestanding("island", FreestandingKind.Island).WithTop(new Level(In(36), Datum.FinishedFloor)).WithOverhang(In(1))
        .WithCorners(new[] { new PlanPoint(In(66), In(84)), new PlanPoint(In(150), In(84)), new PlanPoint(In(150), In(120)), new PlanPoint(In(66), In(120)) });

    private static Level Head => new(In(82.5m), Datum.Subfloor);

    private static Opening Cased(string id) => new Opening(id, OpeningKind.Cased, In(0), In(1)).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m));

    private static Opening Door(string id, WallEnd hinge, DoorSwing swing) =>
        new Opening(id, OpeningKind.Door, In(0), In(1)).WithLeaf(In(28)).WithHinge(hinge).WithSwing(swing).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m));

    private static Opening Window(string id, int sill) => new Opening(id, OpeningKind.Window, In(0), In(1)).WithSill(new Level(In(sill), Datum.Subfloor)).WithHead(Head).WithCasing(In(2.25m)).WithReveal(In(0.1875m)).WithStool(In(0.75m));

    private static Fixture On(string wall, string id, FixtureKind kind, int left, int right, int depth) =>
        new Fixture(id, kind).WithWall(wall).WithLeft(In(left)).WithRight(In(right)).WithDepth(In(depth));
}
