using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>One bad dwelling for each kind of fault: it is named, the box that it touches isn't judged, and the others still are.</summary>
public sealed partial class LayoutFaultTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.Ada2010 + RuleSets.RoughInPractice);

    // "high" fails a reach limit in every house here, so that one sees whether the rest is judged.
    private static readonly DeviceBox High = Box("high", "30").WithHeight(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.FinishedFloor));

    [Fact]
    public void DuplicateId_TwoBoxes_IsNamed() =>
        AssertFinds(House(wall => wall.Add(Box("twin", "40")).Add(Box("twin", "60"))), LayoutFaultKind.DuplicateId, "twin", "id");

    [Fact]
    public void DuplicateId_TwoPartsOfAWall_IsNamed() =>
        AssertFinds(House(wall => wall.Add(Counter("same", "10", "20")).Add(Counter("same", "30", "40"))), LayoutFaultKind.DuplicateId, "room/wall/same", "counter", false);

    [Fact]
    public void DuplicateId_RoomAndStorey_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        AssertFinds(dwelling.WithStoreys(dwelling.Storeys.With(new Storey("room"))), LayoutFaultKind.DuplicateId, "room", "id");
    }

    [Fact]
    public void UnknownReference_NoSuchStorey_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithStorey("attic"))), LayoutFaultKind.UnknownReference, "room", "\"attic\"");
    }

    [Fact]
    public void UnknownReference_NoSuchWallBehind_IsNamed() =>
        AssertFinds(House(wall => wall.With(one => one.WithBackOf("bath/east"))), LayoutFaultKind.UnknownReference, "room/wall", "\"bath/east\"");

    [Fact]
    public void UnknownReference_FixtureOnNoWall_IsNamed()
    {
        Dwelling dwelling = House(_ => { });
        Fixture washer = new("washer", FixtureKind.Washer) { Wall = "west" };
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { washer }))), LayoutFaultKind.UnknownReference, "room/washer", "\"west\"");
    }

    [Fact]
    public void UnknownReference_FlightToNoStorey_IsNamed() =>
        AssertFinds(House(_ => { }).WithFlights(new[] { new StairFlight("stairs", "ground", "attic", 14) }), LayoutFaultKind.UnknownReference, "stairs", "\"attic\"");

    [Fact]
    public void UnknownReference_StudThatIsNotThere_IsNamedAndNotJudged() => AssertNotJudged(
        Box("far", "0").WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(40).WithSide(StudSide.Left)),
        LayoutFaultKind.UnknownReference,
        "stud 40");

    [Theory]
    [InlineData(Datum.Countertop, "no counter")]
    [InlineData(Datum.SplashTop, "no finish")]
    public void UnknownReference_CountertopThatIsNotThere_IsNamedAndNotJudged(Datum datum, string words) =>
        AssertNotJudged(Box("above", "60").WithHeight(BoxHeight.ToBottom(CaseFile.Inches("8"), datum)), LayoutFaultKind.UnknownReference, words);

    // A one-gang box is 2-1/4 in wide and 3-3/4 tall: common practice, no source.
    [Theory]
    [InlineData("1-1/8", "16", true)]
    [InlineData("1-1/16", "16", false)]
    [InlineData("142-7/8", "16", true)]
    [InlineData("142-15/16", "16", false)]
    [InlineData("60", "3-3/4", true)]
    [InlineData("60", "3-11/16", false)]
    public void OutsideItsWall_BoxThatReachesBeyondIt_IsNamed(string at, string top, bool fits)
    {
        Evaluation evaluation = Evaluator.Evaluate(House(wall => wall.Add(Box("edge", at).WithHeight(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)))));
        Assert.Equal(fits, evaluation.For("edge").All(finding => finding.Fault is null));
    }

    // Its place follows from the stud, and there is a counter there.
    [Fact]
    public void UnknownReference_BoxOnAStudBehindACounter_IsNone()
    {
        DeviceBox box = Box("above", "0").WithAt(null).WithHeight(BoxHeight.ToBottom(CaseFile.Inches("8"), Datum.Countertop))
            .WithMounting(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Left));
        Dwelling dwelling = House(wall => wall.Add(box).Add(Counter("counter", "30", "90").WithTop(new Level(CaseFile.Inches("36"), Datum.FinishedFloor))));
        Assert.DoesNotContain(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
    }

    [Fact]
    public void OutsideItsWall_BoxBeyondItsEnd_IsNamedAndNotJudged() => AssertNotJudged(Box("beyond", "144-1/16"), LayoutFaultKind.OutsideItsWall, "144 in");

    // A stud near the left corner, and a box so wide that it would stand in the next wall.
    [Fact]
    public void OutsideItsWall_BoxLeftOfItsStart_IsNamedAndNotJudged() => AssertNotJudged(
        Box("before", "0").WithAt(null).WithSize(new BoxSize(CaseFile.Inches("60"), CaseFile.Inches("4"))).WithMounting(new Mounting(MountingMethod.Stud).WithStud(1).WithSide(StudSide.Left)),
        LayoutFaultKind.OutsideItsWall,
        "before");

    [Fact]
    public void OutsideItsWall_BoxOverTheCeiling_IsNamedAndNotJudged() =>
        AssertNotJudged(Box("up", "60").WithHeight(BoxHeight.ToTop(CaseFile.Inches("98"), Datum.Subfloor)), LayoutFaultKind.OutsideItsWall, "ceiling");

    [Fact]
    public void OutsideItsWall_CounterBeyondItsEnd_IsNamed() => AssertFinds(House(wall => wall.Add(Counter("long", "100", "150"))), LayoutFaultKind.OutsideItsWall, "room/wall/long", "150 in", false);

    [Fact]
    public void OutsideItsWall_WallThatIsOpen_IsNamedAndNotJudged()
    {
        Dwelling dwelling = House(_ => { });
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("side", CaseFile.Inches("144")) { Open = true, Boxes = new[] { Box("nowhere", "20") } }))));
        Evaluation evaluation = AssertFinds(dwelling, LayoutFaultKind.OutsideItsWall, "nowhere", "no wall");
        Assert.DoesNotContain(evaluation.Checks, check => check.Subject == "nowhere");
    }

    [Fact]
    public void NoExtent_CounterFromRightToLeft_IsNamed() => AssertFinds(House(wall => wall.Add(Counter("thin", "40", "40"))), LayoutFaultKind.NoExtent, "room/wall/thin", "40 in", false);

    [Fact]
    public void NoHeight_BoxOnAWall_IsNamedAndNotJudged() => AssertNotJudged(Box("somewhere", "60").WithHeight(null), LayoutFaultKind.NoHeight, "height");

    [Fact]
    public void BeyondMeasure_BoxAsHighAsNoHouse_IsNamedAndNotJudged() =>
        AssertNotJudged(Box("far", "60").WithHeight(BoxHeight.ToTop(Distance.FromTicks(long.MaxValue - 1), Datum.Subfloor)), LayoutFaultKind.BeyondMeasure, "larger than anything in a house");

    // 12 by 10 ft but for the last wall, which is 54 in long; then 12 in short, and a tick more.
    [Theory]
    [InlineData("54", 0, "it doesn't close: it ends 66 in from where it began; say which side is open, or its turn, or which length is wrong")]
    [InlineData("108", 0, null)]
    [InlineData("108", -1, "it doesn't close: it ends 12 in from where it began; say which side is open, or its turn, or which length is wrong")]
    public void DoesNotClose_LengthThatIsWrong_IsNamed(string last, int ticks, string? expected)
    {
        Distance[] lengths = [CaseFile.Inches("144"), CaseFile.Inches("120"), CaseFile.Inches("144"), CaseFile.Inches(last) + Distance.FromTicks(ticks)];
        Assert.Equal(expected is null ? null : "kitchen: " + expected, Closing(lengths.Select(length => (length, 90m))));
    }

    // An L without its outside corner; four walls seen from outside; a side that was left out; and what may be a part of a room.
    [Theory]
    [InlineData("144:90 60:90 72:90 60:90 72:90 120:90", "it doesn't close: it ends 187-1/2 in from where it began and turns 540 degrees in all, not 360; say which side is open, or its turn, or which length is wrong")]
    [InlineData("144:-90 120:-90 144:-90 120:-90", "it doesn't close: its turns are those of walls seen from outside, -360 degrees in all; list its walls from left to right as a person sees them who stands in it, 90 degrees to an inside corner")]
    [InlineData("144:90 120:90 144:90 120:0", "it doesn't close: it ends where it began and turns 270 degrees in all, not 360; say which side is open, or its turn")]
    [InlineData("144:90 120:90 60:0 40:90", "it doesn't close: it ends 127-3/4 in from where it began and turns 270 degrees in all, not 360; say which side is open, or its turn, or which length is wrong")]
    [InlineData("144:90 120:90 144:90", null)]
    [InlineData("144:120 144:120 144:120", null)]
    [InlineData("144:120 144:120 120:120", "it doesn't close: it ends 24 in from where it began; say which side is open, or its turn, or which length is wrong")]
    public void DoesNotClose_TurnOrSideThatIsMissing_IsNamed(string walls, string? expected) =>
        Assert.Equal(expected is null ? null : "kitchen: " + expected, Closing(walls.Split(' ').Select(wall => (CaseFile.Inches(wall.Split(':')[0]), decimal.Parse(wall.Split(':')[1], System.Globalization.CultureInfo.InvariantCulture)))));

    // The cure that it names.
    [Fact]
    public void DoesNotClose_WithTheOpenSideSaid_IsNone()
    {
        Room room = new Room("kitchen", RoomKind.Kitchen, "first").WithWalls(new[]
        {
            new Wall("north", CaseFile.Inches("144")), new Wall("east", CaseFile.Inches("120")), new Wall("south", CaseFile.Inches("144")),
            new Wall("west", CaseFile.Inches("54")).WithTurnDegrees(0m), new Wall("way", CaseFile.Inches("66")).WithOpen(true),
        });
        Assert.Empty(Evaluator.Evaluate(new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room })).Findings);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void NoPlace_BoxOverheadAndFixture_AreNamedWhereTheRoomCloses(bool closes, bool isFault)
    {
        DeviceBox light = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire });
        Dwelling dwelling = Square(room => room.WithOverhead(new[] { light }).WithFixtures(new[] { new Fixture("tub", FixtureKind.Tub) }), closes ? "120" : "100");
        string[] expected = ["light (room/ceiling): it isn't said where it is: give its place in plan", "room/tub: it isn't said where it stands: name its wall with left and right, or give its corners in plan"];
        Assert.Equal(isFault ? expected : [], Evaluator.Evaluate(dwelling).Findings.Where(finding => finding.Fault?.Kind == LayoutFaultKind.NoPlace).Select(finding => finding.Message).Order());
    }

    // The room is 144 by 120 in; a place overhead is taken for one in it up to an inch beyond its walls.
    [Theory]
    [InlineData("0", "0", 0, false)]
    [InlineData("145", "60", 0, false)]
    [InlineData("145", "60", 1, true)]
    [InlineData("72", "200", 0, true)]
    [InlineData("39370", "60", 0, true)]
    [InlineData("120001", "60", 0, true)]
    public void OutsideItsRoom_BoxOverhead_IsNamed(string right, string into, int ticks, bool isFault)
    {
        DeviceBox light = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithPlan(new PlanPoint(CaseFile.Inches(right) + Distance.FromTicks(ticks), CaseFile.Inches(into)));
        Finding? found = Evaluator.Evaluate(Square(room => room.WithOverhead(new[] { light }), "120")).Findings.SingleOrDefault(finding => finding.Fault is not null);
        Assert.Equal(isFault ? (right == "120001" ? LayoutFaultKind.BeyondMeasure : LayoutFaultKind.OutsideItsRoom) : null, found?.Fault!.Kind);
        Assert.Equal(isFault ? "light" : null, found?.Subject);
    }

    [Fact]
    public void OutsideItsRoom_TubAndIsland_AreNamedWhereAllOfThemIs()
    {
        PlanPoint[] At(string left, string near, string right, string far) =>
            [new(CaseFile.Inches(left), CaseFile.Inches(near)), new(CaseFile.Inches(right), CaseFile.Inches(near)), new(CaseFile.Inches(right), CaseFile.Inches(far)), new(CaseFile.Inches(left), CaseFile.Inches(far))];
        Dwelling With(PlanPoint[] tub, PlanPoint[] island) => Square(room => room.WithFixtures(new[] { new Fixture("tub", FixtureKind.Tub).WithPlan(tub) })
            .WithFreestanding(new[] { new Freestanding("island", FreestandingKind.Island).WithCorners(island) }), "120");
        Assert.DoesNotContain(Evaluator.Evaluate(With(At("84", "0", "144", "30"), At("100", "40", "160", "70"))).Findings, finding => finding.Fault is not null);
        Assert.Equal(["room/island", "room/tub"], Evaluator.Evaluate(With(At("184", "0", "244", "30"), At("200", "140", "260", "170"))).Findings
            .Where(finding => finding.Fault?.Kind == LayoutFaultKind.OutsideItsRoom).Select(finding => finding.Subject).Order());
    }

    [Theory]
    [InlineData("ceiling")]
    [InlineData("floor")]
    public void DuplicateId_WallCalledLikeTheCeiling_IsNamed(string id)
    {
        Dwelling dwelling = Square(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "n" ? wall.WithId(id) : wall)), "120");
        Finding finding = Assert.Single(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
        Assert.Equal((LayoutFaultKind.DuplicateId, "room/" + id), (finding.Fault!.Kind, finding.Subject));
    }

    // Ten thousand feet are more than any house has.
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void BeyondMeasure_TenThousandFeet_AreTheMost(int ticks, bool isFault)
    {
        Distance most = Distance.FromFeet(10_000) + Distance.FromTicks(ticks);
        Dwelling dwelling = Square(room => room, "120");
        foreach (Dwelling odd in new[]
        {
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(new[] { new Wall("long", most) }))),
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithSubfloorOffset(most))),
            dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, CaseFile.Inches("60")).WithDepth(most) }))))),
        })
        {
            Assert.Equal(isFault, Evaluator.Evaluate(odd).Findings.Any(finding => finding.Fault?.Kind == LayoutFaultKind.BeyondMeasure));
        }
    }

    private static Dwelling Square(Func<Room, Room> change, string last) => new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
    {
        change(new Room("room", RoomKind.Bathroom, "first").WithWalls(new[]
        {
            new Wall("n", CaseFile.Inches("144")), new Wall("e", CaseFile.Inches("120")), new Wall("s", CaseFile.Inches("144")), new Wall("w", CaseFile.Inches(last)),
        })),
    });

    private static string? Closing(System.Collections.Generic.IEnumerable<(Distance Length, decimal Turn)> walls)
    {
        Room room = new Room("kitchen", RoomKind.Kitchen, "first").WithWalls(walls.Select((wall, i) => new Wall("w" + i, wall.Length).WithTurnDegrees(wall.Turn)).ToArray());
        Finding? found = Evaluator.Evaluate(new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room })).Findings.SingleOrDefault();
        Assert.Equal(found is null ? null : LayoutFaultKind.DoesNotClose, found?.Fault!.Kind);
        return found?.Message;
    }

    [Fact]
    public void OverlappingOpenings_BothWays_IsNamed()
    {
        Opening door = new("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("96")) { Head = new Level(CaseFile.Inches("82"), Datum.Subfloor) };
        Opening window = new("window", OpeningKind.Window, CaseFile.Inches("90"), CaseFile.Inches("110"));
        Opening Sill(string sill) => window.WithSill(new Level(CaseFile.Inches(sill), Datum.Subfloor));
        AssertFinds(House(wall => wall.Add(door).Add(Sill("40"))), LayoutFaultKind.OverlappingOpenings, "room/wall/door", "\"window\"", false);
        Assert.DoesNotContain(Evaluator.Evaluate(House(wall => wall.Add(door).Add(Sill("82")))).Findings, finding => finding.Fault is not null);
        Assert.DoesNotContain(Evaluator.Evaluate(House(wall => wall.Add(door).Add(Sill("40").WithLeft(CaseFile.Inches("96"))))).Findings, finding => finding.Fault is not null);
    }

    // What is wrong with a counter leaves open what it would have changed: reach is unknown on that wall, other rules go on.
    [Fact]
    public void Findings_BrokenCounter_LeavesOnlyRulesThatReadItOpen()
    {
        Evaluation evaluation = Evaluator.Evaluate(House(wall => wall.Add(Counter("thin", "40", "40"))));
        Finding reach = evaluation.For("high").Single(finding => finding.RuleId == "ada-reach");
        Assert.Equal(Verdict.Unknown, reach.Verdict);
        Assert.Equal(Facts.BrokenPart, reach.Needs);
        Assert.Contains(evaluation.Checks, check => check.RuleId == "general-height" && check.Verdict == Verdict.Passes);
    }

    // The first stud's face is at 15-1/4 in, so the third's at 47-1/4: a box 2-1/4 in wide on its left has its center at 46-1/8. A tape is read to 1/8 in,
    // and half of a box 1/4 in wider is another 1/8.
    [Theory]
    [InlineData("46-1/4", StudKnowledge.Declared, true, false)]
    [InlineData("46-5/16", StudKnowledge.Declared, true, true)]
    [InlineData("46", StudKnowledge.Measured, true, false)]
    [InlineData("45-15/16", StudKnowledge.Measured, true, true)]
    [InlineData("46-3/8", StudKnowledge.Declared, false, false)]
    [InlineData("46-7/16", StudKnowledge.Declared, false, true)]
    [InlineData("60", StudKnowledge.Assumed, true, false)]
    public void Contradiction_StudAndPlace_IsNamedWhereStudsAreKnown(string at, StudKnowledge known, bool sized, bool contradicts)
    {
        DeviceBox box = Box("torn", at).WithSize(sized ? new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4")) : null)
            .WithMounting(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Left));
        Dwelling dwelling = House(wall => wall.Add(box));
        dwelling = dwelling.WithStoreys(dwelling.Storeys.Select(storey => storey.WithStuds(storey.Studs!.WithKnown(known))));
        Finding? fault = Evaluator.Evaluate(dwelling).Findings.SingleOrDefault(finding => finding.Fault is not null);
        Assert.Equal(contradicts ? LayoutFaultKind.Contradiction : null, fault?.Fault!.Kind);
        Assert.True(fault is null || fault.Message.Contains("on stud 3, left, which puts its center at 46-1/8 in", StringComparison.Ordinal));
    }

    // Which side isn't said: 46-1/8 or 47-1/4 + 1-1/2 + 1-1/8 = 49-7/8 in.
    [Theory]
    [InlineData("49-7/8", false)]
    [InlineData("48", true)]
    public void Contradiction_StudWithoutSide_IsNamedIfNeitherSideWillDo(string at, bool contradicts)
    {
        Dwelling dwelling = House(wall => wall.Add(Box("torn", at).WithMounting(new Mounting(MountingMethod.Stud).WithStud(3))));
        dwelling = dwelling.WithStoreys(dwelling.Storeys.Select(storey => storey.WithStuds(storey.Studs!.WithKnown(StudKnowledge.Declared))));
        Assert.Equal(contradicts, Evaluator.Evaluate(dwelling).Findings.Any(finding => finding.Fault?.Kind == LayoutFaultKind.Contradiction));
    }

    [Fact]
    public void DuplicateId_BoxesOnTwoWalls_NamesBothPlaces()
    {
        Dwelling dwelling = House(wall => wall.Add(Box("twin", "40")));
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("side", CaseFile.Inches("144")).WithBoxes(new[] { Box("twin", "60") })))));
        Finding fault = Assert.Single(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
        Assert.Equal("twin (room/side): a box on room/wall and a box on room/side have the same id", fault.Message);
        Dwelling parts = House(wall => wall.Add(Counter("same", "10", "20")).Add(Counter("same", "30", "40")));
        Assert.Contains(Evaluator.Evaluate(parts).Findings, finding => finding.Message == "room/wall/same: the counter from 10 in and the counter from 30 in have the same id");
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void OutsideItsWall_FixtureBeyondTheEnd_IsNamedWithItsWall(int ticks, bool isFault)
    {
        Dwelling dwelling = House(_ => { });
        Distance length = dwelling.Rooms[0].Walls[0].Length;
        Fixture tub = new Fixture("tub", FixtureKind.Tub).WithWall("wall").WithLeft(length - CaseFile.Inches("60")).WithRight(length + Distance.FromTicks(ticks));
        dwelling = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { tub })));
        if (!isFault)
        {
            Assert.DoesNotContain(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
            return;
        }

        AssertFinds(dwelling, LayoutFaultKind.OutsideItsWall, "room/tub", "along its wall \"wall\", but the wall is 144 in long", false);
        tub = tub.WithLeft(CaseFile.Inches("150")).WithRight(null);
        AssertFinds(dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithFixtures(new[] { tub }))), LayoutFaultKind.OutsideItsWall, "room/tub", "this fixture begins at 150 in along its wall \"wall\"", false);
    }

    [Fact]
    public void Message_InAMetricHouse_IsInMillimeters()
    {
        Dwelling dwelling = House(wall => wall.Add(Box("beyond", "145"))).WithUnits(LengthUnits.Millimeters);
        Assert.Contains(Evaluator.Evaluate(dwelling).Findings, finding => finding.Message == "beyond (room/wall): its center is at 3683 mm, but the wall is 3657.6 mm long");
    }

    [Fact]
    public void MisspelledKind_OfAPurpose_IsNamedAndTheBoxIsJudged()
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(Box("odd", "60").WithPurpose(new BoxPurpose("swich")))), LayoutFaultKind.MisspelledKind, "odd", "is \"switch\" meant?");
        Assert.Contains(evaluation.Checks, check => check.Subject == "odd");
    }

    [Fact]
    public void UnknownKind_OfAPurpose_IsNamedAndTheBoxIsJudged()
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(Box("odd", "60").WithPurpose(new BoxPurpose("aquarium")))), LayoutFaultKind.UnknownKind, "odd", "isn't known here");
        Assert.Contains(evaluation.Checks, check => check.Subject == "odd");
    }

    [Fact]
    public void Kinds_EachOfThem_HasACaseHere()
    {
        string[] tested = typeof(LayoutFaultTests).GetMethods().Select(method => method.Name.Split('_')[0]).Distinct().ToArray();
        Assert.All(Enum.GetNames<LayoutFaultKind>(), kind => Assert.Contains(kind, tested));
    }

    private static void AssertNotJudged(DeviceBox box, LayoutFaultKind kind, string words)
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(box)), kind, box.Id, words);
        Assert.DoesNotContain(evaluation.Checks, check => check.Subject == box.Id);
        Assert.Contains(evaluation.NotJudged, line => line.Contains("(" + box.Id + ")", StringComparison.Ordinal));
    }

    private static Evaluation AssertFinds(Dwelling dwelling, LayoutFaultKind kind, string subject, string words, bool othersAreJudged = true)
    {
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        Finding finding = evaluation.Findings.Single(one => one.Fault is not null);
        Assert.Equal(kind, finding.Fault!.Kind);
        Assert.Equal(subject, finding.Subject);
        Assert.Equal(Finding.LayoutFaultId, finding.RuleId);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.True(evaluation.HasUnknowns && !evaluation.IsClean);
        Assert.Empty(finding.Remedies);
        Assert.Contains(evaluation.For("high"), other => other.RuleId == "ada-reach" && (!othersAreJudged || other.Verdict == Verdict.Fails));
        return evaluation;
    }

    private static DeviceBox Box(string id, string at) => new(id, BoxPurpose.General)
    {
        Devices = new[] { DeviceKind.DuplexReceptacle },
        At = CaseFile.Inches(at),
        Height = BoxHeight.ToCenter(CaseFile.Inches("16-1/2"), Datum.FinishedFloor),
    };

    private static Counter Counter(string id, string left, string right) => new(id, CounterKind.Kitchen, CaseFile.Inches(left), CaseFile.Inches(right));

    private static Dwelling House(Action<WallBuilder> more)
    {
        DwellingBuilder dwelling = new("house");
        dwelling.Add(new Storey("ground")
        {
            Ceiling = new Ceiling { Framing = CaseFile.Inches("97-1/8"), Board = CaseFile.Inches("1/2") },
            Studs = new StudLayout { Spacing = CaseFile.Inches("16") },
        });
        WallBuilder wall = dwelling.Room("room", RoomKind.Kitchen, "ground").With(room => room.WithFloor(OneBox.Floor(CaseFile.Inches("1/2")))).Wall("wall", CaseFile.Inches("144"));
        wall.Add(High).Add(Box("good", "20"));
        more(wall);
        return dwelling.Build();
    }
}
