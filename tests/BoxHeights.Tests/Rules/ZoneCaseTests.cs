using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Zones after their documents' words, one tick inside, at and outside each limit.</summary>
public sealed class ZoneCaseTests
{
    [Fact]
    public void Zone_OneTickInsideAtAndOutsideItsLimit_TurnsThere() => Assert.All(CaseFile.Table("zones.csv"), Try);

    internal static void Try(Dictionary<string, string> row)
    {
        RuleSet rules = OneBox.Only(PublishedRows.SetWith(row["rule"], row["edition"]), row["rule"]);
        Distance inward = Distance.FromTicks(row["where"] == "up from the rim" ? -1 : row["where"] == "down from the rim" ? 1 : -1);
        Distance limit = In(row["limit"]);
        foreach ((string column, Distance off) in new[] { ("inside", limit + inward), ("at limit", limit), ("outside", limit - inward) })
        {
            Evaluation evaluation = new LayoutEvaluator(rules).Evaluate(House(row, off));
            string said = evaluation.Findings.Count == 0 ? "passes" : evaluation.Findings[0].Verdict == Verdict.Fails ? "fails" : "unknown";
            Assert.True(row[column] == said, string.Join(",", row.Values) + ": " + column + " " + said + " " + string.Join("\n", evaluation.Findings.Select(finding => finding.Message).Concat(evaluation.NotJudged)));
        }
    }

    [Fact]
    public void Zone_OfACase_CitesItsSectionAndSaysWhatIsFromMemory()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("zones.csv").Where(row => row["section"].Length > 0 && row["set"] == "nec"))
        {
            Citation citation = PublishedRows.SetWith(row["rule"], row["edition"]).Row(row["rule"]).Citation;
            Assert.Equal(("NEC " + row["edition"], row["section"], row["status"] == "memory"), (citation.Document, citation.Section, citation.Confidence == Confidence.FromMemory));
        }
    }

    // NEC 406.9(C), 2023: the zone ends at a fixed barrier, where one is stated; 2020 says nothing of it.
    [Theory]
    [InlineData(NecEdition.Nec2020, null, "fails")]
    [InlineData(NecEdition.Nec2023, null, "fails")]
    [InlineData(NecEdition.Nec2023, "none", "fails")]
    [InlineData(NecEdition.Nec2023, "shower curtain", "fails")]
    [InlineData(NecEdition.Nec2023, "glass to ceiling", "passes")]
    [InlineData(NecEdition.Nec2020, "glass to ceiling", "fails")]
    public void Receptacle_TwoFeetFromAShower_DependsOnItsScreenFrom2023(NecEdition edition, string? screen, string expected)
    {
        Fixture shower = SquareRoom.Against("shower", FixtureKind.Shower, "north", In("0"), In("36"), In("36")).WithScreen(screen).WithRim(new Level(In("4"), Datum.FinishedFloor));
        Dwelling house = new SquareRoom { Fixtures = [shower], North = [SquareRoom.Box("gfci-receptacle", "bath", In("60"), In("44"))] }.House();
        Assert.Equal(expected, Said(edition, "tub-receptacle", house));
        Assert.Equal("fails", Said(edition, "tub-receptacle", new SquareRoom { Fixtures = [shower], North = [SquareRoom.Box("gfci-receptacle", "bath", In("20"), In("44"))] }.House()));
    }

    // The same zone overhead: 2020 knows no barrier, 2017 no zone beyond the fixture.
    [Theory]
    [InlineData(NecEdition.Nec2017, null, "passes")]
    [InlineData(NecEdition.Nec2020, "glass to ceiling", "fails")]
    [InlineData(NecEdition.Nec2023, null, "fails")]
    [InlineData(NecEdition.Nec2023, "shower curtain", "fails")]
    [InlineData(NecEdition.Nec2023, "glass to ceiling", "passes")]
    public void ReceptacleOverhead_TwoFeetFromAShower_DependsOnItsScreenFrom2023(NecEdition edition, string? screen, string expected)
    {
        Fixture shower = SquareRoom.Against("shower", FixtureKind.Shower, "north", In("0"), In("36"), In("36")).WithScreen(screen).WithRim(new Level(In("4"), Datum.FinishedFloor));
        DeviceBox box = SquareRoom.Box("single-receptacle", "general", null, In("0")).WithHeight(null);
        Dwelling At(string right) => new SquareRoom { Fixtures = [shower], Overhead = [box.WithPlan(new PlanPoint(In(right), In("18")))] }.House();
        Assert.Equal(expected, Said(edition, "tub-receptacle", At("60")));
        Assert.Equal("fails", Said(edition, "tub-receptacle", At("18")));
    }

    // 8 in beside a tub of which nothing is said but where it stands: in the zone, and the finding says what would end it.
    [Fact]
    public void Receptacle_BesideATubWithoutAScreen_FailsAndSaysWhatWouldEndTheZone()
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", In("0"), In("60"), In("30"));
        Finding finding = Assert.Single(Evaluate(NecEdition.Nec2023, "tub-receptacle", new SquareRoom { Fixtures = [tub], North = [SquareRoom.Box("gfci-receptacle", "bath", In("68"), In("44"))] }.House()).Findings);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("that nothing fixed closes off", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void HalfWallReading_OfAScreen_IsNamedWhereItDecides()
    {
        Fixture shower = SquareRoom.Against("shower", FixtureKind.Shower, "north", In("0"), In("36"), In("36")).WithScreen("half wall").WithRim(new Level(In("4"), Datum.FinishedFloor));
        Dwelling house = new SquareRoom { Fixtures = [shower], North = [SquareRoom.Box("gfci-receptacle", "bath", In("60"), In("44"))] }.House();
        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023);
        Assert.Equal("half-wall-is-no-barrier", Assert.Single(new LayoutEvaluator(OneBox.Only(rules, "tub-receptacle")).Evaluate(house).Checks.Single().DisputedBy));
        Assert.Single(new LayoutEvaluator(OneBox.Only(rules.WithReading("tub-receptacle", "half-wall-is-no-barrier"), "tub-receptacle")).Evaluate(house).Findings);
    }

    // A bath of 5 ft by 5 ft: no wall is 3 ft off a tub of 30 in, and the exception lets the receptacle on the wall opposite.
    [Theory]
    [InlineData(NecEdition.Nec2020, "bath", "passes")]
    [InlineData(NecEdition.Nec2023, "bath", "passes")]
    [InlineData(NecEdition.Nec2020, "general", "passes")]
    [InlineData(NecEdition.Nec2023, "general", "fails")]
    public void SmallBath_OnItsFurthestWall_IsAllowed(NecEdition edition, string purpose, string expected)
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "south", In("0"), In("60"), In("30")).WithScreen("none").WithRim(new Level(In("20"), Datum.FinishedFloor));
        SquareRoom room = new() { Wide = In("60"), Deep = In("60"), Fixtures = [tub] };
        Assert.Equal(expected, Said(edition, "tub-receptacle", (room with { North = [SquareRoom.Box("gfci-receptacle", purpose, In("30"), In("44"))] }).House()));
        Assert.Equal("fails", Said(edition, "tub-receptacle", (room with { West = [SquareRoom.Box("gfci-receptacle", purpose, In("57"), In("44"))] }).House()));
    }

    // The same bath whose end wall isn't described may go on.
    [Fact]
    public void SmallBath_WhoseWallsDontClose_IsNotJudged()
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", In("0"), In("60"), In("30")).WithScreen("none");
        Room room = new SquareRoom { Wide = In("60"), Deep = In("60"), Fixtures = [tub], North = [SquareRoom.Box("gfci-receptacle", "bath", In("30"), In("44"))] }.Build();
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "tub-receptacle", new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room.WithWalls(new[] { room.Walls[0] }) }));
        Assert.Equal(Verdict.Unknown, Assert.Single(evaluation.Findings).Verdict);
        Assert.Contains("tub-receptacle: its walls don't close, so that it may be larger than the zone (square/north)", evaluation.NotJudged);
    }

    [Fact]
    public void TubOfNoPlace_IsListedAsNotJudged()
    {
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "tub-receptacle", new SquareRoom { Fixtures = [new("tub", FixtureKind.Tub)], North = [SquareRoom.Box("gfci-receptacle", "bath", In("30"), In("44"))] }.House());

        // Told once: what follows from it is in the list of what isn't judged.
        Assert.Equal(LayoutFaultKind.NoPlace, Assert.Single(evaluation.Findings).Fault!.Kind);
        Assert.Contains("tub-receptacle: it isn't said where everything stands in plan (square/north)", evaluation.NotJudged);
    }

    // A stub wall as deep as the tub stands between: what is behind it isn't in the zone.
    [Theory]
    [InlineData(NecEdition.Nec2020)]
    [InlineData(NecEdition.Nec2023)]
    public void ReceptacleBehindAStubWall_IsOutOfTheZone(NecEdition edition)
    {
        Room room = new Room("bath", RoomKind.Bathroom, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithFixtures(new[] { SquareRoom.Against("tub", FixtureKind.Tub, "alcove", In("0"), In("60"), In("30")).WithScreen("none") }).WithWalls(new[]
        {
            new Wall("alcove", In("60")), new Wall("stub", In("30")).WithTurnDegrees(-90), new Wall("end", In("4.5")).WithTurnDegrees(-90), new Wall("back", In("30")),
            new Wall("vanity", In("60")).WithBoxes(new[] { SquareRoom.Box("gfci-receptacle", "bath", In("12"), In("44")) }), new Wall("east", In("90")), new Wall("south", In("124.5")), new Wall("west", In("90")),
        });
        Assert.Equal("passes", Said(edition, "tub-receptacle", new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room })));
    }

    [Fact]
    public void BidetAndDisposalReceptacles_ThatServeOneApplianceAlone_AreLeftAlone()
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", In("0"), In("60"), In("30")).WithScreen("none");
        Assert.Equal("passes", Said(NecEdition.Nec2023, "tub-receptacle", new SquareRoom { Fixtures = [tub], North = [SquareRoom.Box("gfci-receptacle", "bidet", In("80"), In("15")).WithDedicated("bidet seat")] }.House()));
    }

    [Fact]
    public void ClosetHangingLight_APendant_Fails()
    {
        DeviceBox light = new DeviceBox(OneBox.Id, BoxPurpose.Light).WithDevices(new[] { new DeviceKind("pendant") }).WithPlan(new PlanPoint(In("36"), In("12")));
        SquareRoom closet = new() { Kind = RoomKind.Closet, Wide = In("72"), Deep = In("28"), Overhead = [light], SouthOpenings = [new("door", OpeningKind.BifoldDoor, In("12"), In("60"))] };
        Assert.Equal("fails", Said(NecEdition.Nec2023, "closet-hanging-light", closet.House()));
    }

    private static Dwelling House(Dictionary<string, string> row, Distance off)
    {
        Distance above = row["above"].Length == 0 ? Distance.Zero : In(row["above"]);
        string rule = row["rule"];
        bool door = rule.StartsWith("alarm-bath-door", StringComparison.Ordinal);
        bool cooking = rule.StartsWith("alarm-cooking", StringComparison.Ordinal);
        Distance left = In("40");
        if (row["where"] == "round the corner")
        {
            left = above;
        }

        // A tub, a range or a door from 40 to 70 in along the north wall; whatever is right of it is off its right end.
        Distance right = left + In("30");
        Distance depth = In("28");
        SquareRoom room = new()
        {
            Kind = door ? RoomKind.Hall : cooking ? RoomKind.Kitchen : RoomKind.Bathroom,
            Wide = In("240"),
            Deep = In("200"),
            Fixtures = door || rule == "alarm-corner" ? []
                : [SquareRoom.Against("thing", cooking ? FixtureKind.Range : FixtureKind.Tub, "north", left, right, depth).WithScreen("none").WithRim(new Level(In("20"), Datum.FinishedFloor))],
            NorthOpenings = door ? [new("door", OpeningKind.Door, left, right)] : [],
            NorthIsBackOf = door ? "bath/wall" : null,
            SouthOpenings = [new("way-in", OpeningKind.Door, In("20"), In("52"))],
        };
        Distance middle = In("44");
        bool height = row["where"].EndsWith("the rim", StringComparison.Ordinal);
        DeviceBox box = SquareRoom.Box(row["device"], row["purpose"], row["where"] switch
        {
            "along the wall" => right + off,
            "round the corner" => room.Deep - depth - off,
            _ => left + In("10"),
        }, height ? above + off : middle);
        if (row["where"] == "in a ceiling over the rim")
        {
            // Over the middle of the tub; the board under the joists is half an inch thick.
            room = room with { Overhead = [box.WithAt(null).WithHeight(null).WithPlan(new(left + In("15"), In("14")))] };
            return room.House().WithStoreys(new[] { new Storey("ground").WithCeiling(new Ceiling().WithFraming(above + off + In("1/2")).WithBoard(In("1/2"))) });
        }

        if (row["where"] == "in the ceiling")
        {
            // Off the thing's right end, or off the east wall.
            PlanPoint point = rule == "alarm-corner" ? new(room.Wide - off, In("100")) : new(right + off, door ? Distance.Zero : In("0.5"));
            room = room with { Overhead = [box.WithAt(null).WithHeight(null).WithPlan(point)] };
        }
        else
        {
            room = row["where"] == "round the corner" ? room with { West = [box] } : room with { North = [box] };
        }

        Room bath = new Room("bath", RoomKind.Bathroom, "ground").WithFixtures(new[] { new Fixture("tub", FixtureKind.Tub) }).WithWalls(new[] { new Wall("wall", In("240")) });
        Dwelling house = room.House(door ? [bath] : []);
        return height ? house.WithStoreys(new[] { new Storey("ground").WithCeiling(new Ceiling().WithFraming(In("140"))) }) : house;
    }

    private static string Said(NecEdition edition, string rule, Dwelling house) =>
        Evaluate(edition, rule, house).Findings switch { { Count: 0 } => "passes", { } found => found[0].Verdict == Verdict.Fails ? "fails" : "unknown" };

    private static Evaluation Evaluate(NecEdition edition, string rule, Dwelling house) => new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesDwelling(edition), rule)).Evaluate(house);

    // A pendant 1 ft from a tub, NEC 410.10(D): it is moved, and no box is added.
    [Fact]
    public void Remedy_OfALightInTheCeilingTooNearATub_SaysHowFarToMoveIt()
    {
        Fixture tub = SquareRoom.Against("tub", FixtureKind.Tub, "north", CaseFile.Inches("0"), CaseFile.Inches("60"), CaseFile.Inches("32")).WithRim(Level.Parse("20 in above finished floor"));
        DeviceBox pendant = new DeviceBox("P", BoxPurpose.Light).WithDevices(new[] { new DeviceKind("pendant") }).WithPlan(new PlanPoint(CaseFile.Inches("72"), CaseFile.Inches("16")));
        Dwelling bath = new SquareRoom { Fixtures = [tub], Overhead = [pendant] }.House();
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "tub-hanging-light")).Evaluate(bath.WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(CaseFile.Inches("12")) }));
        Assert.Equal("move P to where it is 36 in or more in plan from tub", Assert.Single(Assert.Single(evaluation.Findings).Remedies).Text);
    }
}
