using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using static BoxHeights.Tests.Interop.Json.RandomParts;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>Dwellings at random: every record, each valid on its own, with any member stated or not. They make no sensible houses: ids repeat and ends cross.</summary>
internal static class RandomDwelling
{
    /// <summary>Tape readings, whole millimeters and odd ticks; zero or more.</summary>
    public static Gen<Distance> Sizes { get; } = Gen.OneOf(
        Gen.Choose(0, 64 * 300).Select(n => Distance.FromInches(0, n, 64)),
        Gen.Choose(0, 9000).Select(n => Distance.FromMillimeters(n)),
        Gen.Choose(0, int.MaxValue).Select(n => Distance.FromTicks(n)));

    public static Gen<Distance> Lengths { get; } = Sizes.Where(size => size > Distance.Zero);

    public static Gen<Distance> Offsets { get; } = from size in Sizes from up in Gen.Elements(true, false) select up ? size : -size;

    public static Gen<DistanceRange> Ranges { get; } = Gen.OneOf(
        Sizes.Select(size => (DistanceRange)size),
        from low in Sizes from width in Sizes select new DistanceRange(low, low + width));

    /// <summary>Ids, addresses and names, also with marks that JSON has to escape.</summary>
    public static Gen<string> Texts { get; } = Words(["a", "Z", "7", " ", "-", "\"", "\\", "\n", "\u0001", "é", "½", "″", "\U0001F3E0", "</b>", "'", "&"]);

    public static Gen<string> Ids { get; } = Words(["a", "b", "north", "7", "-", "_", "é"]);

    public static Gen<string> Addresses { get; } = from room in Ids from wall in Ids select room + "/" + wall;

    public static Gen<Level> Levels { get; } = from offset in Offsets from datum in OneOf<Datum>() select new Level(offset, datum);

    public static Gen<BoxHeight> Heights { get; } =
        from value in Offsets
        from datum in OneOf<Datum>()
        from edge in Gen.Elements<Edge?>(null, Edge.Bottom, Edge.Center, Edge.Top)
        select edge is { } stated ? BoxHeight.To(stated, value, datum) : BoxHeight.EdgeUnstated(value, datum);

    /// <summary>Corners that are somewhere else each, or none.</summary>
    private static Gen<Items<PlanPoint>> Outlines(int least) =>
        from count in Gen.Elements(0, least, least + 1)
        from first in Points
        from apart in Sizes
        select new Items<PlanPoint>(Enumerable.Range(0, count).Select(i => new PlanPoint(first.Right + (apart * i), first.Into + (apart * (i * i)))));

    public static Gen<PlanPoint> Points { get; } = from right in Offsets from away in Offsets select new PlanPoint(right, away);

    public static Gen<Volume> Volumes { get; } = Gen.OneOf(
        Gen.Choose(1, 100_000).Select(n => Volume.FromCubicInches(n / 1000m)),
        Gen.Choose(1, int.MaxValue).Select(n => Volume.FromPicoliters(n * 997L)));

    public static Gen<Ratio> Ratios { get; } = from above in Gen.Choose(-9, 99) from below in Gen.Choose(1, 64) select new Ratio(above, below);

    public static Gen<CableType> Cables { get; } =
        from text in Gen.Elements("14-2", "12-3", "14-2-2", "10-3", "8-2", "6-3")
        from ground in Gen.Elements("", " without ground")
        select CableType.Parse(text + ground);

    public static Gen<BoxSize> BoxSizes { get; } =
        from width in Gen.Choose(1, 64 * 8).Select(n => Distance.FromInches(0, n, 64))
        from height in Gen.Choose(1, 64 * 8).Select(n => Distance.FromInches(0, n, 64))
        from depth in Maybe(Lengths)
        from more in Gen.Choose(0, 1)
        let spread = Distance.FromInches(0, more, 32)
        select new BoxSize(width, height, depth).Ranging(new(width, width + spread), new(height, height + spread));

    public static Gen<FloorBuildup> Floors { get; } = Few(from material in Texts from thickness in Ranges select new FloorLayer(material, thickness))
        .Select(layers => new FloorBuildup(layers));

    public static Gen<Ceiling> Ceilings { get; } = Gen.Constant(new Ceiling())
        .With((x, v) => x.WithFraming(v), Maybe(Ranges))
        .With((x, v) => x.WithFrom(v), Maybe(OneOf<CeilingOrigin>()))
        .With((x, v) => x.WithStrapping(v), Maybe(Gen.OneOf(Ranges, Gen.Constant(default(DistanceRange)))))
        .With((x, v) => x.WithBoard(v), Maybe(Ranges));

    public static Gen<StudLayout> Studs { get; } = Gen.Constant(new StudLayout())
        .With((x, v) => x.WithSpacing(v), Maybe(Lengths))
        .With((x, v) => x.WithFirstFace(v), Maybe(Sizes))
        .With((x, v) => x.WithFrom(v), OneOf<WallEnd>())
        .With((x, v) => x.WithThickness(v), Maybe(Lengths))
        .With((x, v) => x.WithFaces(v), Few(Offsets))
        .With((x, v) => x.WithKnown(v), OneOf<StudKnowledge>())
        .With((x, v) => x.WithOpenSide(v), Maybe(OneOf<StudSide>()));

    public static Gen<BoardLayout> Boards { get; } = Gen.Constant(new BoardLayout())
        .With((x, v) => x.WithHung(v), OneOf<BoardDirection>())
        .With((x, v) => x.WithWidths(v), Few(Lengths))
        .With((x, v) => x.WithFrom(v), OneOf<BoardOrigin>())
        .With((x, v) => x.WithThickness(v), Maybe(Lengths))
        .With((x, v) => x.WithFloorGap(v), Maybe(Sizes))
        .With((x, v) => x.WithButtJoints(v), Few(from course in Gen.Choose(1, 4) from along in Sizes select new ButtJoint(course, along)));

    public static Gen<Opening> Openings { get; } = Placed((id, left, right) => new Opening(id, OpeningKind.Door, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new OpeningKind(name)))
        .With((x, v) => x.WithSill(v), Maybe(Levels))
        .With((x, v) => x.WithHead(v), Maybe(Levels))
        .With((x, v) => x.WithLeaf(v), Maybe(Lengths))
        .With((x, v) => x.WithHinge(v), Maybe(OneOf<WallEnd>()))
        .With((x, v) => x.WithSwing(v), Maybe(OneOf<DoorSwing>()))
        .With((x, v) => x.WithCasing(v), Maybe(Sizes))
        .With((x, v) => x.WithReveal(v), Maybe(Sizes))
        .With((x, v) => x.WithStool(v), Maybe(Sizes))
        .With((x, v) => x.WithPocketOn(v), Maybe(OneOf<WallEnd>()))
        .With((x, v) => x.WithEntrance(v), Maybe(OneOf<EntranceSide>()));

    public static Gen<CounterInterruption> Interruptions { get; } = Placed((_, left, right) => new CounterInterruption(InterruptionKind.Sink, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new InterruptionKind(name)))
        .With((x, v) => x.WithBehind(v), Maybe(Sizes));

    public static Gen<Counter> Counters { get; } = Placed((id, left, right) => new Counter(id, CounterKind.Kitchen, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new CounterKind(name)))
        .With((x, v) => x.WithTop(v), Maybe(Levels))
        .With((x, v) => x.WithDepth(v), Maybe(Lengths))
        .With((x, v) => x.WithOverhang(v), Maybe(Sizes))
        .With((x, v) => x.WithKneeSpace(v), Maybe(Gen.OneOf(Sizes, Gen.Constant(Distance.Zero))))
        .With((x, v) => x.WithThickness(v), Maybe(Lengths))
        .With((x, v) => x.WithBaseStandsOn(v), Maybe(OneOf<Datum>()))
        .With((x, v) => x.WithInterruptions(v), Few(Interruptions));

    public static Gen<Finish> Finishes { get; } = Placed((id, left, right) => new Finish(id, FinishKind.Tile, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new FinishKind(name)))
        .With((x, v) => x.WithBottom(v), Maybe(Levels))
        .With((x, v) => x.WithTop(v), Maybe(Levels))
        .With((x, v) => x.WithThickness(v), Maybe(Ranges))
        .With((x, v) => x.WithBed(v), Maybe(Ranges))
        .With((x, v) => x.WithCombustible(v), Maybe(Gen.Elements(true, false)));

    public static Gen<Covering> Coverings { get; } = Placed((id, left, right) => new Covering(id, CoveringKind.Mirror, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new CoveringKind(name)))
        .With((x, v) => x.WithBottom(v), Maybe(Levels))
        .With((x, v) => x.WithTop(v), Maybe(Levels))
        .With((x, v) => x.WithOpenInside(v), Maybe(Gen.Elements(true, false)))
        .With((x, v) => x.WithLightRail(v), Maybe(Sizes))
        .With((x, v) => x.WithDepth(v), Maybe(Lengths));

    public static Gen<NoCavity> NoCavities { get; } = Placed((_, left, right) => new NoCavity(NoCavityKind.Duct, left, right))
        .With((x, v) => x.WithKind(v), Kind(name => new NoCavityKind(name)))
        .With((x, v) => x.WithBottom(v), Maybe(Levels))
        .With((x, v) => x.WithTop(v), Maybe(Levels));

    public static Gen<ConductorSize> Conductors { get; } = Gen.Elements(18, 16, 14, 12, 10, 8, 6).Select(ConductorSize.FromAwg);

    public static Gen<BoxCompartment> Compartments { get; } = Gen.Constant(new BoxCompartment())
        .With((x, v) => x.WithDevices(v), Maybe(Counts))
        .With((x, v) => x.WithCables(v), Maybe(Counts))
        .With((x, v) => x.WithConductors(v), Maybe(Counts))
        .With((x, v) => x.WithVolume(v), Maybe(Volumes));

    public static Gen<DeviceBox> Boxes { get; } = Ids.Select(id => new DeviceBox(id, BoxPurpose.General))
        .With((x, v) => x.WithPurpose(v), Kind(name => new BoxPurpose(name)))
        .With((x, v) => x.WithDevices(v), Few(Kind(name => new DeviceKind(name))))
        .With((x, v) => x.WithGangs(v), Maybe(Counts))
        .With((x, v) => x.WithKind(v), Maybe(Kind(name => new BoxKind(name))))
        .With((x, v) => x.WithSize(v), Maybe(BoxSizes))
        .With((x, v) => x.WithVolume(v), Maybe(Volumes))
        .With((x, v) => x.WithPlate(v), Maybe(Kind(name => new PlateKind(name))))
        .With((x, v) => x.WithOnItsSide(v), Gen.Elements(true, false))
        .With((x, v) => x.WithSurface(v), Maybe(OneOf<BoxSurface>()))
        .With((x, v) => x.WithMounting(v), Perhaps(OneOf<MountingMethod>().Select(how => new Mounting(how))
            .With((x, v) => x.WithStud(v), Maybe(Counts))
            .With((x, v) => x.WithSide(v), Maybe(OneOf<StudSide>()))
            .With((x, v) => x.WithSpan(v), Maybe(from least in Lengths from more in Sizes select new DistanceRange(least, least + more)))))
        .With((x, v) => x.WithAt(v), Maybe(Sizes))
        .With((x, v) => x.WithPlan(v), Maybe(Points))
        .With((x, v) => x.WithHeight(v), Maybe(Heights))
        .With((x, v) => x.WithSpecified(v), Maybe(Heights))
        .With((x, v) => x.WithMeasured(v), Perhaps(Heights.Select(height => new MeasuredHeight(height)).With((x, v) => x.WithWithin(v), Maybe(Sizes))))
        .With((x, v) => x.WithExisting(v), Gen.Elements(true, false))
        .With((x, v) => x.WithUntouched(v), Gen.Elements<bool?>(true, false, null))
        .With((x, v) => x.WithPinned(v), Gen.Elements(true, false))
        .With((x, v) => x.WithApproach(v), Maybe(OneOf<Approach>()))
        .With((x, v) => x.WithCables(v), Few(Cables))
        .With((x, v) => x.WithClamps(v), Maybe(OneOf<CableClamps>()))
        .With((x, v) => x.WithConductors(v), Few(from count in Gen.Choose(1, 100) from size in Conductors from use in OneOf<ConductorUse>() select new LooseConductors(count, size, use)))
        .With((x, v) => x.WithConnected(v), Few(Conductors))
        .With((x, v) => x.WithFittings(v), Few(OneOf<BoxFitting>()))
        .With((x, v) => x.WithFireProtection(v), OneOf<FireProtection>().Select(one => (FireProtection?)one))
        .With((x, v) => x.WithBoardGap(v), Maybe(Sizes))
        .With((x, v) => x.WithDeviceDepths(v), Few(Sizes))
        .With((x, v) => x.WithDeviceGangs(v), Few(Counts))
        .With((x, v) => x.WithBackEntry(v), Gen.Elements(true, false))
        .With((x, v) => x.WithCompartments(v), Few(Compartments))
        .With((x, v) => x.WithLuminaire(v), Maybe(OneOf<LuminaireBuild>()))
        .With((x, v) => x.WithExtension(v), Maybe(Volumes))
        .With((x, v) => x.WithSetFor(v), Maybe(Sizes))
        .With((x, v) => x.WithRating(v), Perhaps(Texts))
        .With((x, v) => x.WithDedicated(v), Perhaps(Texts))
        .With((x, v) => x.WithSwitched(v), Maybe(OneOf<SwitchedPart>()))
        .With((x, v) => x.WithControls(v), Few(Ids))
        .With((x, v) => x.WithFanRated(v), Gen.Elements(true, false));

    public static Gen<Wall> Walls { get; } = (from id in Ids from length in Lengths select new Wall(id, length))
        .With((x, v) => x.WithTurnDegrees(v), Gen.Elements(90m, -90m, 0m, 45m, 22.5m, -30.25m))
        .With((x, v) => x.WithOpen(v), Gen.Elements(true, false))
        .With((x, v) => x.WithExterior(v), Gen.Elements(true, false))
        .With((x, v) => x.WithBearing(v), Gen.Elements(true, false))
        .With((x, v) => x.WithRated(v), Gen.Elements(true, false))
        .With((x, v) => x.WithCavityFilled(v), Gen.Elements(true, false))
        .With((x, v) => x.WithBackOf(v), Perhaps(Addresses))
        .With((x, v) => x.WithBackOffset(v), Maybe(Offsets))
        .With((x, v) => x.WithCavity(v), Maybe(Lengths))
        .With((x, v) => x.WithTop(v), Few(from along in Sizes from up in Sizes select new WallTopPoint(along, up)))
        .With((x, v) => x.WithStuds(v), Perhaps(Studs))
        .With((x, v) => x.WithBoards(v), Perhaps(Boards))
        .With((x, v) => x.WithOpenings(v), Few(Openings))
        .With((x, v) => x.WithCounters(v), Few(Counters))
        .With((x, v) => x.WithFinishes(v), Few(Finishes))
        .With((x, v) => x.WithCoverings(v), Few(Coverings))
        .With((x, v) => x.WithNoCavity(v), Few(NoCavities))
        .With((x, v) => x.WithBoxes(v), Few(Boxes));

    public static Gen<Fixture> Fixtures { get; } = Ids.Select(id => new Fixture(id, FixtureKind.Tub))
        .With((x, v) => x.WithKind(v), Kind(name => new FixtureKind(name)))
        .With((x, v) => x.WithWall(v), Perhaps(Ids))
        .With((x, v) => x.WithLeft(v), Maybe(Sizes))
        .With((x, v) => x.WithRight(v), Maybe(Sizes))
        .With((x, v) => x.WithDepth(v), Maybe(Lengths))
        .With((x, v) => x.WithPlan(v), Outlines(2))
        .With((x, v) => x.WithTop(v), Maybe(Levels))
        .With((x, v) => x.WithRim(v), Maybe(Levels))
        .With((x, v) => x.WithScreen(v), Perhaps(Texts));

    public static Gen<Freestanding> Freestandings { get; } = Ids.Select(id => new Freestanding(id, FreestandingKind.Island))
        .With((x, v) => x.WithKind(v), Kind(name => new FreestandingKind(name)))
        .With((x, v) => x.WithCorners(v), Outlines(3))
        .With((x, v) => x.WithLine(v), Few(Points))
        .With((x, v) => x.WithTop(v), Maybe(Levels))
        .With((x, v) => x.WithOverhang(v), Maybe(Sizes));

    public static Gen<Room> Rooms { get; } = (from id in Ids from storey in Ids select new Room(id, RoomKind.Kitchen, storey))
        .With((x, v) => x.WithKind(v), Kind(name => new RoomKind(name)))
        .With((x, v) => x.WithSubfloorOffset(v), Maybe(Offsets))
        .With((x, v) => x.WithPlace(v), Perhaps(from corner in Points from turn in Gen.Elements(0m, 90m, -45m, 33.75m) select new RoomPlace(corner).WithTurnDegrees(turn)))
        .With((x, v) => x.WithJoists(v), Perhaps(from spacing in Lengths from first in Maybe(Sizes) from runs in OneOf<JoistRun>() select new JoistLayout(spacing).WithFirst(first).WithRuns(runs)))
        .With((x, v) => x.WithUntouched(v), Gen.Elements(true, false))
        .With((x, v) => x.WithFloor(v), Perhaps(Floors))
        .With((x, v) => x.WithCeiling(v), Perhaps(Ceilings))
        .With((x, v) => x.WithWalls(v), Few(Walls))
        .With((x, v) => x.WithFreestanding(v), Few(Freestandings))
        .With((x, v) => x.WithFixtures(v), Few(Fixtures))
        .With((x, v) => x.WithOverhead(v), Few(Boxes))
        .With((x, v) => x.WithInFloor(v), Few(Boxes));

    public static Gen<Storey> Storeys { get; } = Ids.Select(id => new Storey(id))
        .With((x, v) => x.WithLevelLine(v), Maybe(Levels))
        .With((x, v) => x.WithGradeBelowSubfloor(v), Maybe(Ranges))
        .With((x, v) => x.WithAboveBelow(v), Maybe(Sizes))
        .With((x, v) => x.WithCeiling(v), Perhaps(Ceilings))
        .With((x, v) => x.WithStuds(v), Perhaps(Studs))
        .With((x, v) => x.WithBoards(v), Perhaps(Boards));

    public static Gen<OutsideFace> Outside { get; } = Ids.Select(id => new OutsideFace(id))
        .With((x, v) => x.WithStorey(v), Perhaps(Ids))
        .With((x, v) => x.WithWalls(v), Few(Walls, 1))
        .With((x, v) => x.WithUntouched(v), Gen.Elements(true, false))
        .With((x, v) => x.WithPlatforms(v), Few(Placed((id, left, right) => new Platform(id, PlatformKind.Deck, left, right))
            .With((x, v) => x.WithKind(v), Kind(name => new PlatformKind(name)))
            .With((x, v) => x.WithGap(v), Maybe(Sizes))
            .With((x, v) => x.WithSurface(v), Maybe(Levels))))
        .With((x, v) => x.WithFixtures(v), Few(Fixtures));

    public static Gen<StairFlight> Flights { get; } = (from id in Ids from low in Ids from high in Ids from risers in Counts select new StairFlight(id, low, high, risers))
        .With((x, v) => x.WithTread(v), Maybe(Lengths))
        .With((x, v) => x.WithRun(v), Maybe(Lengths))
        .With((x, v) => x.WithNosing(v), Maybe(Sizes))
        .With((x, v) => x.WithTreadFinish(v), Maybe(Sizes))
        .With((x, v) => x.WithCutForFloorBelow(v), Maybe(Sizes))
        .With((x, v) => x.WithCutForFloorAbove(v), Maybe(Sizes))
        .With((x, v) => x.WithWall(v), Perhaps(Addresses))
        .With((x, v) => x.WithFirstNosing(v), Maybe(Sizes))
        .With((x, v) => x.WithClimbs(v), Maybe(OneOf<WallEnd>()))
        .With((x, v) => x.WithLights(v), Perhaps(Counts.Select(every => new StairLights(every))
            .With((x, v) => x.WithStartTread(v), Maybe(Counts))
            .With((x, v) => x.WithPhase(v), Maybe(Ratios))
            .With((x, v) => x.WithAboveTread(v), Maybe(Sizes))
            .With((x, v) => x.WithGangs(v), Maybe(Counts))));

    public static Gen<Dwelling> Dwellings { get; } = Gen.Sized(size =>
        Texts.Select(name => new Dwelling(name))
            .With((x, v) => x.WithUnits(v), OneOf<LengthUnits>())
            .With((x, v) => x.WithOccupancy(v), Maybe(Kind(name => new Occupancy(name))))
            .With((x, v) => x.WithStoreys(v), Few(Storeys))
            .With((x, v) => x.WithRooms(v), Few(Rooms, Math.Min(3, size / 15)))
            .With((x, v) => x.WithOutside(v), Few(Outside, Math.Min(2, size / 25)))
            .With((x, v) => x.WithFlights(v), Few(Flights)));

    /// <summary>For properties: dwellings, and how a failing one is made smaller.</summary>
    public static Arbitrary<Dwelling> Arbitrary { get; } = Arb.From(Dwellings, Smaller);

    private static Gen<T> Placed<T>(Func<string, Distance, Distance, T> make) =>
        from id in Ids from left in Sizes from right in Sizes select make(id, left, right);

    private static IEnumerable<Dwelling> Smaller(Dwelling dwelling) =>
        dwelling.Storeys.Without().Select(dwelling.WithStoreys)
        .Concat(dwelling.Flights.Without().Select(dwelling.WithFlights))
        .Concat(dwelling.Outside.Without().Select(dwelling.WithOutside))
        .Concat(dwelling.Rooms.Without().Select(dwelling.WithRooms))
        .Concat(dwelling.Rooms.Smaller(Smaller).Select(dwelling.WithRooms));

    private static IEnumerable<Room> Smaller(Room room) =>
        room.Overhead.Without().Select(room.WithOverhead)
        .Concat(room.InFloor.Without().Select(room.WithInFloor))
        .Concat(room.Fixtures.Without().Select(room.WithFixtures))
        .Concat(room.Freestanding.Without().Select(room.WithFreestanding))
        .Concat(room.Walls.Without().Select(room.WithWalls))
        .Concat(room.Walls.Smaller(Smaller).Select(room.WithWalls));

    private static IEnumerable<Wall> Smaller(Wall wall) =>
        wall.Boxes.Without().Select(wall.WithBoxes)
        .Concat(wall.Openings.Without().Select(wall.WithOpenings))
        .Concat(wall.Counters.Without().Select(wall.WithCounters))
        .Concat(wall.Finishes.Without().Select(wall.WithFinishes))
        .Concat(wall.Coverings.Without().Select(wall.WithCoverings))
        .Concat(wall.NoCavity.Without().Select(wall.WithNoCavity));
}
