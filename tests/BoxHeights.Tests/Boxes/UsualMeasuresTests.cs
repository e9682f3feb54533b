using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using BoxHeights.Rules;
using Xunit;
using static BoxHeights.Tests.Standards.InventedCountry;

namespace BoxHeights.Tests.Boxes;

/// <summary>What a description leaves out is as it usually is in the catalog's country: shown for each measure by what is said of a small scene, in the United States and in one that is invented.</summary>
public sealed class UsualMeasuresTests
{
    private static readonly Citation Source = new("case");

    private static readonly StudLayout Studs = new StudLayout().WithSpacing(Mm(600)).WithKnown(StudKnowledge.Declared);

    /// <summary>A scene for each measure: what is looked at, and what it is in either country, worked out by hand.</summary>
    private static readonly Dictionary<string, (Func<UsualMeasures, object> Look, object Here, object There)> Scenes = new(StringComparer.Ordinal)
    {
        [nameof(UsualMeasures.Lumber)] = (usual => (Framed(usual).Build.Studs!.Faces[0].Width, Framed(usual).BottomPlate!.Value.From, Jack(usual)), (In(3), In(3), In(3)), (Mm(45), Mm(45), Mm(45))),
        [nameof(UsualMeasures.LumberName)] = (usual => Held(usual).Split('|')[1].Trim(), "2x block against the stud", "45 mm block against the stud"),

        // 5 mm more than one block is thick.
        [nameof(UsualMeasures.BlockFit)] = (usual => Packed(usual, 5), 1, 0),

        // Under 2507 mm: two of 54 in, or three of 48 and 12; here two of 1250 mm.
        [nameof(UsualMeasures.Courses)] = (usual => string.Join("; ", Bare(usual).CommonBoards.Select(way => way.Seams[0].From)), "1135.4 mm; 1287.8 mm; 1287.8 mm; 2202.2 mm", "1257 mm"),

        // 20 mm are left over.
        [nameof(UsualMeasures.BoardGap)] = (usual => Wall(usual, wall => wall.WithBoards(new BoardLayout().WithWidths(Mm(1200), Mm(1287)))).Boards!.Seams.Count, 1, 2),
        [nameof(UsualMeasures.JambInset)] = (usual => Wall(usual, wall => wall.WithOpenings(new Opening("door", OpeningKind.Door, Mm(700), Mm(1600)))).Openings[0].Trim.JambLeft, Mm(700) + In(2), Mm(730)),
        [nameof(UsualMeasures.PocketTop)] = (usual => DoorPocket.TryOf(Pocket, usual, out DoorPocket pocket) ? pocket.Top.Offset : Distance.Zero, In(169), Mm(2200)),
        [nameof(UsualMeasures.CounterTop)] = (usual => Wall(usual, wall => wall.WithCounters(new Counter("top", CounterKind.Kitchen, Mm(0), Mm(900)).WithBaseStandsOn(Datum.FinishedFloor))).Counters[0].Area.Top!.Value.From, In(72), Mm(910)),
        [nameof(UsualMeasures.LevelStep)] = (usual => new ResolvedSpace(Room.WithSubfloorOffset(Mm(22)), null, BackFaces.None, usual).LevelId == Room.Storey, true, false),

        // 3 mm off what is drawn, with a tape's error on top.
        [nameof(UsualMeasures.TapeError)] = (usual => Judged(usual, new SpecifiedHeight("drawn", "as drawn", Severity.Advice, Source, Mm(0)), Drawn), Verdict.Unknown, Verdict.Fails),
        [nameof(UsualMeasures.Floor)] = (usual => Evaluated(usual, RuleSet.Empty, wall => wall, room => room.WithFloor(null)).Room("room").FinishedFloor!.Value.To, Mm(0) + Eighths(10), Mm(140)),
        [nameof(UsualMeasures.Rim)] = (usual => Zone.Anchored(new(Mm(0), Datum.Rim), ThingInPlan.Of(Tub, Plan, usual), usual)!.Value.Offset.To, In(48), Mm(700)),

        // Board of 13 mm, tile of 8 mm and a box set for both: as far behind as the bed is thick, and 5 mm are allowed.
        [nameof(UsualMeasures.MostBed)] = (usual => Judged(usual, new SetbackLimit("set", "set", Severity.Advice, Source, Mm(5)), Box.WithSetFor(Mm(21)), Tiled), Verdict.Unknown, Verdict.Passes),

        // 90 mm deep in 64 mm of wall, with board of unknown thickness before it.
        [nameof(UsualMeasures.MostBoard)] = (usual => Judged(usual, new CavityDepth("deep", "deep", Severity.Advice, Source), Deep, wall => wall.WithCavity(Mm(64))), "none", Verdict.Fails),
        [nameof(UsualMeasures.MostCounterDepth)] = (usual => IslandTop.Of(Peninsula, WithCounter, Plan, PeninsulaMeasure.ConnectedWall, Mm(10), usual)!.IsJoined, true, false),
        [nameof(UsualMeasures.MostThingDepth)] = (usual => Distance.FromTicks((long)ThingInPlan.Of(Tub, Plan, usual).Possible.Far), In(120), Mm(1700)),
        [nameof(UsualMeasures.MostBehindABasin)] = (usual => Distance.FromTicks((long)Basin(usual).Sure.Near), In(12), Mm(120)),

        // A tall cabinet whose bottom is 170 mm up parts the floor line of a wall in two, or doesn't touch it.
        [nameof(UsualMeasures.MostToeKick)] = (usual => new WallSpaces { Cabinets = new[] { CoveringKind.TallCabinet } }.In(WithCabinet, Plan, usual).Sure.Count, 1, 2),
    };

    public static TheoryData<string> Names() => new(Properties.Select(property => property.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Measure_ThatADescriptionLeavesOut_IsTheCatalogs(string name)
    {
        (Func<UsualMeasures, object> look, object here, object there) = Scenes[name];
        Assert.Equal(here, look(UsualMeasures.Generic));
        Assert.Equal(there, look(Catalog.UsualMeasures));
        Assert.NotEqual(here, there);

        // None but this one decides it, but for the thickness of blocks, which their fit is on top of.
        UsualMeasures one = (UsualMeasures)typeof(UsualMeasures).GetMethods().First(method => method.Name == "With" + name).Invoke(UsualMeasures.Generic, [Property(name).GetValue(Catalog.UsualMeasures)])!;
        Assert.Equal(there, look(one));
    }

    [Fact]
    public void Catalog_OfAnotherCountry_HasNoSheetsUntilTheyAreStated()
    {
        PartsCatalog bare = new(BoxKind.NailOn, PlateKind.Standard, Mm(71));
        Assert.Equal(UsualMeasures.Generic.WithCourses(), bare.UsualMeasures);
        Assert.Equal(Catalog.UsualMeasures, bare.With(Catalog.UsualMeasures).With(new KindPart(BoxKind.NailOn, Source)).UsualMeasures);
        Assert.Throws<ArgumentNullException>(() => bare.With((UsualMeasures)null!));
        Assert.NotEqual(bare.Fingerprint, bare.With(Catalog.UsualMeasures).Fingerprint);
    }

    // Under a ceiling that is stated, what isn't known is how its board is hung.
    [Fact]
    public void Seams_WhereNoSheetsAreKnown_ArentJudged()
    {
        BoardSeam row = new("seam", "on one sheet", Severity.Advice, Source);
        Evaluation evaluation = Evaluated(UsualMeasures.Generic.WithCourses(), new RuleSet([row]), wall => wall.WithBoxes(Box));
        Assert.Empty(evaluation.Findings);
        Assert.StartsWith("seam: how the board is hung isn't stated", Assert.Single(evaluation.NotJudged), StringComparison.Ordinal);
    }

    [Fact]
    public void Courses_AreHungUnderWallsOfTheirHeightAlone()
    {
        UsualMeasures usual = UsualMeasures.Generic.WithCourses(new BoardCourses(new[] { Mm(1000), Mm(1000) }) { Above = Mm(1800), UpTo = Mm(2000) });
        Assert.Equal([0, 1, 1, 0], new[] { Mm(1800), Mm(1800) + Distance.FromTicks(1), Mm(2000), Mm(2000) + Distance.FromTicks(1) }.Select(high => HungBoards.Common(high, usual).Count));
    }

    private static IEnumerable<PropertyInfo> Properties => typeof(UsualMeasures).GetProperties(BindingFlags.Public | BindingFlags.Instance);

    private static PropertyInfo Property(string name) => typeof(UsualMeasures).GetProperty(name)!;

    private static DeviceBox Box => new DeviceBox("box", BoxPurpose.General).WithDevices(new[] { Socket }).WithAt(Mm(1200)).WithSize(new BoxSize(Mm(60), Mm(60))).WithHeight(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor));

    private static DeviceBox Drawn => Box.WithSpecified(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor)).WithMeasured(new MeasuredHeight(BoxHeight.ToCenter(Mm(303), Datum.FinishedFloor)));

    private static DeviceBox Deep => Box.WithSize(new BoxSize(Mm(60), Mm(60), Mm(90)));

    private static Opening Pocket => new Opening("pocket", OpeningKind.PocketDoor, Mm(700), Mm(1600)).WithLeaf(Mm(820)).WithPocketOn(WallEnd.Right);

    private static Fixture Tub => new Fixture("tub", FixtureKind.Tub).WithWall("north").WithLeft(Mm(100)).WithRight(Mm(1800));

    private static Room Room => new Room("room", RoomKind.Bathroom, "ground").WithFloor(FloorBuildup.Of()).WithWalls(new Wall("north", Mm(2400)));

    private static WallPlan Plan => new(Room);

    private static Room WithCounter => Room.WithWalls(new Wall("north", Mm(2400)).WithCounters(new Counter("top", CounterKind.Kitchen, Mm(0), Mm(2400))));

    private static Room WithCabinet => Room.WithWalls(new Wall("north", Mm(2400)).WithCoverings(new Covering("tall", CoveringKind.TallCabinet, Mm(1000), Mm(1600)).WithBottom(new Level(Mm(170), Datum.FinishedFloor))));

    /// <summary>650 mm from the wall, over 600 mm of it.</summary>
    private static Freestanding Peninsula => new Freestanding("bar", FreestandingKind.Peninsula)
        .WithCorners(new PlanPoint(Mm(900), Mm(650)), new PlanPoint(Mm(1500), Mm(650)), new PlanPoint(Mm(1500), Mm(2000)), new PlanPoint(Mm(900), Mm(2000)));

    private static Wall Tiled(Wall wall) => wall.WithBoards(new BoardLayout().WithThickness(Mm(13)))
        .WithFinishes(new Finish("tile", FinishKind.Tile, Mm(0), Mm(2400)).WithThickness(Mm(8)));

    private static WallView Bare(UsualMeasures usual) => Wall(usual, wall => wall);

    private static WallView Framed(UsualMeasures usual) => Wall(usual, wall => wall.WithStuds(Studs));

    private static WallView Wall(UsualMeasures usual, Func<Wall, Wall> of) => Evaluated(usual, RuleSet.Empty, of).Wall("room/north");

    private static Distance Jack(UsualMeasures usual) =>
        Wall(usual, wall => wall.WithStuds(Studs).WithOpenings(new Opening("door", OpeningKind.Door, Mm(700), Mm(1600)))).Studs.First(stud => stud.Part == FramingPart.Jack) is var jack ? jack.Right - jack.Left : default;

    private static int Packed(UsualMeasures usual, int more)
    {
        WallFraming framing = WallFraming.Of(new Wall("north", Mm(2400)), Studs, usual);
        return BlockingNeeded.For(framing, Beside(framing) + usual.Lumber + Mm(more) + Mm(30), new BoxSize(Mm(60), Mm(60))).Packed;
    }

    private static Distance Beside(WallFraming framing) => framing.Members.First(member => member.Part == FramingPart.Stud).Right;

    /// <summary>The line of the order for what holds a box just a block's thickness off a stud.</summary>
    private static string Held(UsualMeasures usual)
    {
        UsualMeasures named = usual.WithLumber(UsualMeasures.Generic.Lumber);
        Distance at = Beside(WallFraming.Of(new Wall("north", Mm(2400)), Studs, named)) + named.Lumber + Mm(30);
        Evaluation evaluation = Evaluated(named, RuleSet.Empty, wall => wall.WithStuds(Studs).WithBoxes(Box.WithAt(at).WithMounting(new Mounting(MountingMethod.Blocking))));
        return OrderList.For(evaluation).ToMarkdown().Split('\n').Single(line => line.Contains("against the stud", StringComparison.Ordinal));
    }

    private static ThingInPlan Basin(UsualMeasures usual)
    {
        Room room = Room.WithWalls(new Wall("north", Mm(2400)).WithCounters(
            new Counter("top", CounterKind.Kitchen, Mm(0), Mm(2400)).WithDepth(Mm(600)).WithInterruptions(new CounterInterruption(InterruptionKind.Basin, Mm(900), Mm(1300)))));
        return ThingInPlan.Of(new RoomAnchor { Interruptions = new[] { InterruptionKind.Basin } }, room, new WallPlan(room), null, usual).Single();
    }

    private static object Judged(UsualMeasures usual, Rule row, DeviceBox box, Func<Wall, Wall>? of = null) =>
        Evaluated(usual, new RuleSet([row]), wall => (of?.Invoke(wall) ?? wall).WithBoxes(box)).Checks.AsEnumerable().Select(check => (object)check.Verdict).SingleOrDefault() ?? "none";

    private static Evaluation Evaluated(UsualMeasures usual, RuleSet rules, Func<Wall, Wall> of, Func<Room, Room>? with = null)
    {
        Dwelling house = new Dwelling("case").WithUnits(LengthUnits.Millimeters).WithStoreys(new Storey("ground").WithCeiling(new Ceiling().WithFraming(Mm(2520)).WithBoard(Mm(13))));
        Room room = Room.WithWalls(of(new Wall("north", Mm(2400))));
        return new LayoutEvaluator(rules, EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.With(usual))).Evaluate(house.WithRooms(with?.Invoke(room) ?? room));
    }

    /// <summary>So many half inches.</summary>
    private static Distance In(int halves) => Distance.FromInches(0, halves, 2);
}
