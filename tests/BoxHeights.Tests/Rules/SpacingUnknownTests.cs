using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What isn't stated makes spacing unknown where it decides, and is passed over where it doesn't.</summary>
public sealed class SpacingUnknownTests
{
    private static readonly LayoutEvaluator Walls = new(SpacingCaseTests.Only("us", "wall-outlets", 2023));

    [Theory]
    [InlineData("300 door:0:100 box:120 odd-hole:130:160:unstated door:190:300", MissingFacts.FloorLine)]
    [InlineData("300 door:0:100 box:110 odd-thing:130:170 box:175 door:200:300", MissingFacts.None)]
    [InlineData("300 door:0:50 box:60 odd-thing:90:120 box:170 door:180:300", MissingFacts.None)]
    [InlineData("300 door:0:50 box:80 odd-thing:90:110 door:140:300", MissingFacts.FloorLine)]
    [InlineData("300 door:0:100 box:110 pass-through:130:160:40 door:180:300", MissingFacts.None)]
    [InlineData("300 door:0:100 box:120 pass-through:130:160:unstated door:190:300", MissingFacts.FloorLine)]
    [InlineData("300 door:0:100 box:110 window:130:160:unstated door:180:300", MissingFacts.None)]
    [InlineData("300 door:0:50 box:70 sliding-door:110:170:36:unstated door:170:300", MissingFacts.FloorLine)]
    [InlineData("300 door:0:50 box:100 sliding-door:110:160:40:unstated door:160:300", MissingFacts.None)]
    public void Opening_ThatMayBreakTheWall_IsUnknownWhereItDecides(string wall, MissingFacts needs)
    {
        Finding? finding = Walls.Evaluate(RoomSketch.House("bedroom", [wall])).Findings.SingleOrDefault(one => one.Fault is null);
        Assert.Equal(needs, finding?.Needs ?? MissingFacts.None);
        Assert.True(finding is null || finding.Verdict == Verdict.Unknown);
    }

    [Fact]
    public void Opening_ThatMayBreakTheWall_DoesntHideWhatLacksEitherWay()
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 odd-hole:90:100:unstated door:180:300"])).Findings, one => one.Fault is null);
        Assert.Equal((Verdict.Fails, CaseFile.Inches("120")), (finding.Verdict, finding.Measured.AsDistance()));
    }

    [Fact]
    public void BoxWithoutAPlace_IsUnknownWhereItDecides()
    {
        Dwelling house = RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:100:300"]).WithBoxes(box => box.WithAt(null));
        Finding finding = Assert.Single(Walls.Evaluate(house).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.Along), (finding.Verdict, finding.Needs));

        // Wherever it is, nothing else stands between the other two doors.
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("other", CaseFile.Inches("300")).WithOpenings(new[]
        {
            new Opening("a", OpeningKind.Door, CaseFile.Inches("0"), CaseFile.Inches("100")), new Opening("b", OpeningKind.Door, CaseFile.Inches("130"), CaseFile.Inches("300")),
        })))));
        Assert.Contains(Walls.Evaluate(house).Findings, one => one.Verdict == Verdict.Fails && one.Measured == CaseFile.Inches("30"));
    }

    [Theory]
    [InlineData("66", "0", "1", Verdict.Unknown)]
    [InlineData("65", "0", "1/2", null)]
    [InlineData("67-1/2", "0", "1", Verdict.Fails)]
    public void BoxAtALineOverAFloorNotChosen_IsUnknownWhereTheFloorDecides(string center, string least, string most, Verdict? expected)
    {
        // Above the subfloor: the finished floor takes something off.
        Dwelling house = RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:100:300"]).WithBoxes(box => box.WithHeight(BoxHeight.ToCenter(CaseFile.Inches(center) + CaseFile.Inches("1/2"), Datum.Subfloor)));
        house = house.WithRooms(house.Rooms.Select(room => room.WithFloor(OneBox.Floor(new DistanceRange(CaseFile.Inches(least), CaseFile.Inches(most))))));
        Finding? finding = Walls.Evaluate(house).Findings.SingleOrDefault();
        Assert.Equal(expected, finding?.Verdict);
        Assert.Equal(expected == Verdict.Unknown ? MissingFacts.FloorFinish : MissingFacts.None, finding?.Needs ?? MissingFacts.None);
    }

    // 60 in reaches to 132 of 160, and 192 across the doorway back to 120. Beyond 264 of 330 the walls don't go on.
    [Fact]
    public void WallSpace_IsDisputed_ThoughAnotherIsJudgedOnlyInPart()
    {
        Evaluation evaluation = Walls.Evaluate(RoomSketch.House("bedroom", ["330 box:60 door:160:190 box:192"]));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(CaseFile.Inches("28"), finding.Measured.AsDistance());
        Assert.Equal(["next-space"], finding.DisputedBy);
        Assert.Contains(evaluation.NotJudged, line => line.Contains("don't go once round", System.StringComparison.Ordinal));
    }

    // Two rooms of one storey; the floors aren't chosen. What is found of the first room's boxes for that reason is no reason to withhold the second's.
    [Theory]
    [InlineData("16 in to center above finished floor")]
    [InlineData("18 in to bottom above finished floor")]
    [InlineData("12 in to bottom above subfloor")]
    public void BoxesToAdd_AreSetLikeTheirNeighbors_WhateverTheFloorWillBe(string height)
    {
        int ids = 0;
        Room Of(string id, string at) => new Room(id, RoomKind.Bedroom, "ground").WithWalls(Enumerable.Range(0, 4).Select(wall => new Wall("w" + wall, CaseFile.Inches("120")).WithBoxes(at.Length == 0 ? default : new[]
        {
            new DeviceBox("b" + ++ids, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches(at)).WithHeight(BoxHeight.Parse(height)),
        })).ToArray());
        Dwelling house = new Dwelling("case").WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { Of("done", "60"), Of("bare", "") });
        LayoutEvaluator evaluator = new(RuleSets.OfAHouse, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        Finding lacking = Assert.Single(evaluator.Evaluate(house).Findings, finding => finding.RuleId == "wall-outlets");
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(lacking.Remedies));
        Assert.All(cure.Placed, placed => Assert.Equal(BoxHeight.Parse(height), placed.Box.Height));
        Assert.DoesNotContain(evaluator.Evaluate(cure.ApplyTo(house)).Findings, finding => finding.RuleId == "wall-outlets");
    }

    [Fact]
    public void RoomWithoutWalls_IsNotJudged()
    {
        Evaluation evaluation = Walls.Evaluate(RoomSketch.House("bedroom", []));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(("wall-outlets", "room", Verdict.Unknown, "its walls aren't described"), (finding.RuleId, finding.Subject, finding.Verdict, finding.NotJudgedBecause));
    }

    [Fact]
    public void WallsThatDontClose_AreJudgedOnlyAwayFromTheirEnds()
    {
        Evaluation silent = Walls.Evaluate(RoomSketch.House("bedroom", ["72", "72"]));
        Assert.True(silent.IsClean);
        Assert.Contains(silent.NotJudged, line => line.Contains("don't go once round", System.StringComparison.Ordinal));
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["73", "72"])).Findings);
        Assert.Equal(CaseFile.Inches("1"), finding.Measured.AsDistance());
    }

    [Fact]
    public void RoomsOfOtherKinds_AreNotSpokenOf()
    {
        foreach (string kind in new[] { "bathroom", "hall", "closet", "laundry", "garage", "utility" })
        {
            Assert.True(Walls.Evaluate(RoomSketch.House(kind, ["300 door:0:50 door:150:300"])).IsClean);
        }
    }

    [Fact]
    public void SessionMove_OfTheOnlyOutlet_OpensAndClosesTheRun()
    {
        LayoutSession session = Walls.Open(RoomSketch.House("bedroom", ["300 door:0:50 box:122 door:194:300"]));
        string box = session.ToDwelling().PlacedBoxes()[0].Box.Id;
        BoxHeight height = BoxHeight.ToCenter(CaseFile.Inches("16"), Datum.FinishedFloor);
        Assert.Empty(session.Findings);
        Finding appeared = Assert.Single(session.Move(box, CaseFile.Inches("121"), height).Appeared);
        Assert.Equal("room/w0 50 in to 194 in", appeared.Subject);
        Assert.Single(session.Move(box, CaseFile.Inches("122"), height).Cleared);
        Assert.Single(session.Move(box, CaseFile.Inches("122"), BoxHeight.ToCenter(CaseFile.Inches("72"), Datum.FinishedFloor)).Appeared);
    }

    [Fact]
    public void Finding_InWords_NamesStretchWorstPointAndBox()
    {
        Finding finding = Assert.Single(Walls.Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 box:60 door:194:300"])).Findings);
        Assert.StartsWith("room/w0 from door o1 to door o3: 62 in of it is further than 72 in from an outlet that counts (w0 from 132 in to door o3), worst 134 in away at door o3 on w0, must be ",
            finding.Message, System.StringComparison.Ordinal);
        AddBox add = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.Equal(CaseFile.Inches("163"), Assert.Single(add.Placed).Box.At);
    }

    // Where it is measured along isn't known: two passages with an open side between them are one walk.
    [Fact]
    public void HallThatGoesOnWithoutADoorway_IsNotJudgedForItsOwnLengthAlone()
    {
        LayoutEvaluator halls = new(SpacingCaseTests.Only("us", "hall-outlet", 2023));
        Dwelling Two(string length, string kind)
        {
            Dwelling house = RoomSketch.House("hall", [length, "40 open", length, "40"]);
            Room other = RoomSketch.House(kind, ["80", "40 open", "80", "40"]).Rooms[0].WithId("other");
            return house.WithRooms(new[] { house.Rooms[0].WithWalls(house.Rooms[0].Walls.Select(wall => wall.Open ? wall.WithBackOf("other/w1") : wall)), other });
        }

        Evaluation silent = halls.Evaluate(Two("119", "hall"));
        Assert.True(silent.IsClean);
        Assert.Contains(silent.NotJudged, line => line.StartsWith("hall-outlet: it goes on into another passage", System.StringComparison.Ordinal));
        Assert.DoesNotContain(halls.Evaluate(Two("119", "living-room")).NotJudged, line => line.Contains("goes on", System.StringComparison.Ordinal));
        Finding open = Assert.Single(halls.Evaluate(Two("120", "hall")).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.ServedFromOutside), (open.Verdict, open.Needs));
        Assert.Equal(Verdict.Fails, Assert.Single(halls.Evaluate(Two("120", "living-room")).Findings).Verdict);
    }

    [Fact]
    public void HallThatBranches_IsNotJudged()
    {
        string[] walls = ["200", "40", "80 turn:-90", "60", "40", "60 turn:-90", "80", "40"];
        Evaluation evaluation = new LayoutEvaluator(SpacingCaseTests.Only("us", "hall-outlet", 2023)).Evaluate(RoomSketch.House("hall", walls));
        Assert.True(evaluation.IsClean);
        Assert.Contains(evaluation.NotJudged, line => line.StartsWith("hall-outlet: its walls don't describe a passage of one way", System.StringComparison.Ordinal));
    }

    [Fact]
    public void PeninsulaThatJoinsNothing_HasNoOuterEndToJudge()
    {
        LayoutEvaluator islands = new(SpacingCaseTests.Only("us", "island-outlets", 2020));
        Evaluation evaluation = islands.Evaluate(RoomSketch.House("kitchen", ["300"], ["peninsula 20 60 36 120"], ["on-island 28 62 36"]));
        Finding open = Assert.Single(evaluation.Findings);
        Assert.Equal(("room/s1", Verdict.Unknown), (open.Subject, open.Verdict));
        Assert.StartsWith("what s1 joins isn't described", open.NotJudgedBecause, System.StringComparison.Ordinal);
        Finding end = Assert.Single(islands.Evaluate(RoomSketch.House("kitchen", ["300 kitchen:0:100"], ["peninsula 20 26 36 80"], ["on-island 28 40 36"])).Findings);
        Assert.StartsWith("room/s2 outer end: no outlet that serves its top within 24 in of its outer end", end.Message, System.StringComparison.Ordinal);
    }
}
