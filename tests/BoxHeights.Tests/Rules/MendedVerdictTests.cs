using System;
using System.Linq;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Cases in which a careful reader found a verdict to be wrong once: each by its own arithmetic.</summary>
public sealed class MendedVerdictTests
{
    private static readonly RuleSet House = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    // A counter 36 in above the subfloor, whatever floor comes: its highest part at 35-15/16 a box is beneath it, and at 36-1/16 over it, and neither is unknown.
    // Reached over, 36 in is too high from the side (2010 ADA 308.3.2: 34 in), beneath it nothing is reached over.
    [Theory]
    [InlineData("35.9", Verdict.Passes)]
    [InlineData("36.1", Verdict.Fails)]
    public void AdaReach_CounterOnTheSubfloor_DoesNotCountTheFloorTwice(string highestPart, Verdict expected)
    {
        DeviceBox box = Box("A", DeviceKind.DuplexReceptacle).WithSize(new BoxSize(In(2.25m), In(3.75m))).WithApproach(Approach.Side)
            .WithHeight(BoxHeight.ToCenter(In(decimal.Parse(highestPart, System.Globalization.CultureInfo.InvariantCulture) - 1.31m), Datum.Subfloor));
        Wall wall = Wall(box).WithCounters(new[] { new Counter("c", CounterKind.Desk, In(0), In(120)).WithTop(Level.Parse("36 in above subfloor")).WithDepth(In(24)).WithKneeSpace(In(0)) });
        Check check = Evaluate(RuleSets.Ada2010, Room(wall).WithFloor(FloorBuildup.Of(new FloorLayer("tile", new DistanceRange(In(0), In(1.25m)))))).Checks.Single(one => one.RuleId == "ada-reach");
        Assert.Equal(expected, check.Verdict);
    }

    // A porch floor 6 in below the subfloor, grade 24 in below it: 60 in above the subfloor is 66 above the porch and 84 above grade. Limit 78: NEC 210.52(E).
    [Theory]
    [InlineData(60, true)]
    [InlineData(200, false)]
    public void OutdoorReceptacle_BeforeAPorch_IsMeasuredFromIt(int at, bool met)
    {
        DeviceBox box = Box("X", DeviceKind.GfciReceptacle).WithPurpose(BoxPurpose.Exterior).WithAt(In(at)).WithHeight(BoxHeight.ToCenter(In(60), Datum.Subfloor));
        Dwelling dwelling = new Dwelling("test").WithStoreys(new[] { new Storey("first").WithGradeBelowSubfloor(In(24)) }).WithOutside(new[]
        {
            new OutsideFace("front").WithWalls(new[] { new Wall("face", In(300)).WithBoxes(new[] { box }) })
                .WithPlatforms(new[] { new Platform("porch", PlatformKind.Porch, In(20), In(120)).WithSurface(Level.Parse("6 in below subfloor")) }),
        });
        Check check = Assert.Single(new LayoutEvaluator(House).Evaluate(dwelling).Checks, one => one.RuleId == "outdoor-receptacle");
        Assert.Equal(met ? Verdict.Passes : Verdict.Fails, check.Verdict);
    }

    // Two switches at 48 in, one at 48 in above a floor of 0 to 3/4 in, as a drawing asks that names no edge: whether that one is level depends on both. That the ceiling
    // isn't known, and so no seam either, of which none is nearer than 11 in, has nothing to do with it.
    [Fact]
    public void UniformLevel_BoxOfWhichTheFloorIsOpen_DoesNotDependOnSeamsFarOff()
    {
        DeviceBox At(string id, int at, string height) => Box(id, DeviceKind.Switch).WithPurpose(BoxPurpose.Switch).WithAt(In(at)).WithHeight(BoxHeight.Parse(height)).WithSize(new BoxSize(In(2.25m), In(3.75m)));
        DeviceBox drawn = At("c", 80, "48 in to top above finished floor").WithSpecified(BoxHeight.EdgeUnstated(In(48), Datum.FinishedFloor));
        Wall wall = Wall(At("a", 20, "48 in to top above subfloor"), At("b", 50, "48 in to top above subfloor"), drawn).WithBoards(new BoardLayout().WithWidths(new[] { In(48), In(12), In(60) }));
        Room room = Room(wall).WithFloor(FloorBuildup.Of(new FloorLayer("wood", new DistanceRange(In(0), In(0.75m))))).WithCeiling(new Ceiling().WithFraming(new DistanceRange(In(120), In(121))).WithBoard(In(0.5m)));
        RuleSet rows = new([House.Row("uniform-level"), House.Row("board-seam"), House.Row("specified-height")]);
        Finding finding = Assert.Single(Evaluate(rows, room).Findings, one => one.RuleId == "uniform-level");
        Assert.Equal((Verdict.Unknown, "c", MissingFacts.FloorFinish | MissingFacts.EdgeMeant), (finding.Verdict, finding.Subject, finding.Needs));
    }

    [Fact]
    public void SwitchReach_BlankBesideASwitch_LooksAtTheSwitch()
    {
        Evaluation evaluation = Evaluate(House, Room(Wall(Box("S", DeviceKind.Switch, DeviceKind.Blank, new DeviceKind("timer")).WithPurpose(BoxPurpose.Switch))));
        Assert.Equal(Verdict.Passes, Assert.Single(evaluation.Checks, check => check.RuleId == "switch-reach").Verdict);
    }

    // On its side a one-gang plate is 4-1/2 in wide and 2-3/4 tall: centered 1-3/8 in under the top of a 4 in splash it lies wholly on it, and 2-1/4 in beside a cabinet it touches that.
    [Fact]
    public void FinishEdge_BoxOnItsSide_HasItsPlateTurned()
    {
        DeviceBox box = Box("A", DeviceKind.DuplexReceptacle).WithOnItsSide(true).WithHeight(BoxHeight.ToCenter(In(38.625m), Datum.Subfloor));
        Wall wall = Wall(box).WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In(0), In(120)).WithBottom(Level.Parse("36 in above subfloor")).WithTop(Level.Parse("40 in above subfloor")) });
        Assert.DoesNotContain(Evaluate(House, Room(wall)).Findings, finding => finding.RuleId == "finish-edge");
        foreach ((decimal left, bool clear) in new[] { (62.25m, true), (62.1875m, false) })
        {
            Wall beside = Wall(box).WithCoverings(new[] { new Covering("c", CoveringKind.Mirror, In(left), In(100)) });
            Assert.Equal(clear, Evaluate(House, Room(beside)).Findings.All(finding => finding.RuleId != "not-buried"));
        }
    }

    [Fact]
    public void NotChecked_BoxWithoutAKnownDevice_IsNamed()
    {
        Evaluation evaluation = Evaluate(House, Room(Wall(Box("bare"), Box("odd", new DeviceKind("timer")).WithAt(In(30)), Box("plain", DeviceKind.DuplexReceptacle).WithAt(In(90)))));
        Assert.Equal(["bare"], evaluation.Judgements.Where(one => one is { State: Judged.NotJudged, Why: "which devices it holds isn't stated" }).Select(one => one.Subject).Distinct());
        Assert.Contains("tub-receptacle: which devices it holds isn't stated (bare)", evaluation.NotJudged);
    }

    [Fact]
    public void UniformLevel_StoreyThatWasOnlyMeasured_HasALevelToo()
    {
        DeviceBox Read(string id, decimal at, decimal top) => Box(id, DeviceKind.DuplexReceptacle).WithAt(In(at)).WithHeight(null).WithMeasured(new MeasuredHeight(BoxHeight.ToTop(In(top), Datum.Subfloor)));
        Evaluation evaluation = Evaluate(House, Room(Wall(Read("a", 20, 16), Read("b", 50, 16), Read("c", 80, 17))));
        Assert.Equal("c", Assert.Single(evaluation.Findings, finding => finding.RuleId == "uniform-level").Subject);
    }

    // Two sticks in a room whose floor isn't chosen: what is good for the one isn't for the other, so they are two causes.
    [Fact]
    public void Causes_TwoSticksOverAnUnknownFloor_AreTwo()
    {
        Wall wall = Wall(
            Box("low", DeviceKind.DuplexReceptacle).WithSize(new BoxSize(In(2.25m), In(3.75m))).WithAt(In(30)).WithHeight(BoxHeight.ToCenter(In(17), Datum.Subfloor)),
            Box("high", DeviceKind.Switch).WithPurpose(BoxPurpose.Switch).WithSize(new BoxSize(In(2.25m), In(3.75m))).WithAt(In(60)).WithHeight(BoxHeight.ToCenter(In(47.25m), Datum.Subfloor)));
        Evaluation evaluation = Evaluate(RuleSets.Ada2010, Room(wall).WithFloor(FloorBuildup.NotChosen));
        Assert.Equal(2, evaluation.Findings.Count);
        Assert.Equal(2, evaluation.Causes.Count);
    }

    // One stud every thousandth of a millimeter would be some forty million.
    [Fact]
    public void Studs_TooManyToCount_AreAFaultAndNoLoop()
    {
        Wall wall = Wall(Box("A", DeviceKind.DuplexReceptacle)).WithLength(Distance.FromFeet(120)).WithStuds(new StudLayout().WithSpacing(Distance.FromMillimeters(0.001m)).WithThickness(Distance.FromMillimeters(0.0005m)));
        Evaluation evaluation = Evaluate(House, Room(wall));
        Assert.Contains(evaluation.Findings, finding => finding.Fault?.Kind == LayoutFaultKind.BeyondMeasure);
        Assert.Contains(evaluation.Checks, check => check.Subject == "A");
    }

    [Fact]
    public void WithReading_AfterWithSeverity_KeepsTheSeverity()
    {
        RuleSet changed = House.WithSeverity("counter-receptacle", Severity.Note);
        Assert.Equal(changed.WithReading("counter-receptacle", "box-top"), House.WithReading("counter-receptacle", "box-top").WithSeverity("counter-receptacle", Severity.Note));
    }

    [Fact]
    public void MarkSheet_BoxAtFault_IsLeftOutByName()
    {
        Dwelling dwelling = Dwelling(Room(Wall(Box("off", DeviceKind.DuplexReceptacle).WithAt(In(400)), Box("on", DeviceKind.DuplexReceptacle))));
        MarkSheet sheet = Sheets.For(dwelling, House);
        Assert.Equal(["on"], sheet.Rows.Select(row => row.BoxId));
        Assert.Equal(["off"], sheet.LeftOut.Select(box => box.BoxId));
        Assert.Contains("- off: its center is at 400 in, but the wall is", sheet.ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void RoughInPracticeWith_NoHeightLeft_Throws() => Assert.Throws<ArgumentException>(() => RuleSets.RoughInPracticeWith(new PracticeTable("x").WithHeights(new[]
    {
        new PracticeHeight(BoxPurpose.Switch, BoxHeight.Parse("48 in to top above subfloor"))
            .WithNoLower(BoxHeight.Parse("52 in to top above subfloor")).WithNoHigher(BoxHeight.Parse("44 in to top above subfloor")),
    })));

    private static DeviceBox Box(string id, params DeviceKind[] devices) => new DeviceBox(id, BoxPurpose.General).WithDevices(devices)
        .WithAt(In(60)).WithHeight(BoxHeight.ToTop(In(16), Datum.Subfloor));

    private static Wall Wall(params DeviceBox[] boxes) => new Wall("n", In(120)).WithBoxes(boxes);

    private static Room Room(Wall wall) => new Room("room", RoomKind.Bedroom, "first").WithFloor(FloorBuildup.Of(new FloorLayer("oak", In(0.75m)))).WithWalls(new[] { wall });

    private static Dwelling Dwelling(Room room) => new Dwelling("test").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room });

    private static Evaluation Evaluate(RuleSet rules, Room room) => new LayoutEvaluator(rules).Evaluate(Dwelling(room));
}
