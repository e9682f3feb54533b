using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Outlets that a dwelling has to have, and who isn't asked for them.</summary>
public sealed class RequiredOutletTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    [Fact]
    public void Outlet_OneTickInsideAtAndBeyondItsLimit_TurnsJustPastIt()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("required-outlets.csv"))
        {
            Distance limit = In(row["value"]);
            bool gap = row["expected"] == "lacking at the limit";
            NecEdition edition = (NecEdition)int.Parse(row["edition"], CultureInfo.InvariantCulture);
            foreach ((Distance off, bool beyond) in new[] { (limit - Tick, false), (limit, false), (limit + Tick, true) })
            {
                Evaluation evaluation = Evaluate(edition, row["rule"], House(row["what"], off));
                bool lacks = gap ? !beyond : beyond;
                Assert.True((evaluation.Findings.Count == 1 && evaluation.Findings[0].Verdict == Verdict.Fails) == lacks && evaluation.Findings.Count <= 1,
                    string.Join(",", row.Values) + " at " + off + ": " + string.Join("\n", evaluation.Findings.Select(one => one.Message).Concat(evaluation.NotJudged)));
            }

            Citation citation = RuleSets.UnitedStatesOutlets(edition).Row(row["rule"]).Citation;
            Assert.Equal((row["section"], row["status"] == "memory"), (citation.Section, citation.Confidence == Confidence.FromMemory));
        }
    }

    // 27 in along the wall and 36.. in out: 3-4-5 times 7.2 is 21.6, 28.8, 36.
    [Fact]
    public void BathReceptacle_RoundTheCorner_IsMeasuredStraightInPlan()
    {
        SquareRoom room = Bath(In("21.6"), In("0"));
        Distance at = room.Deep - In("22") - In("28.8");
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { West = [Receptacle(at, "44")] }).House()).IsClean);
        Finding far = Assert.Single(Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { West = [Receptacle(at - Tick, "44")] }).House()).Findings);
        Assert.Equal((Quantity)In("36"), far.Measured);
    }

    // Depth left behind a basin that isn't stated is up to 6 in: sqrt(36² - 6²) is 35.496... in along the wall.
    [Theory]
    [InlineData("35-1/2", true)]
    [InlineData("36", true)]
    [InlineData("35-7/16", false)]
    public void BathReceptacle_BasinOfUnstatedPlace_IsUnknownOnlyWhereThatDecides(string off, bool unknown)
    {
        SquareRoom room = Bath(In("40"), null);
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", (room with { North = [Receptacle(In("58") + In(off), "44")] }).House());
        Assert.Equal(unknown, evaluation.HasUnknowns);
        Assert.All(evaluation.Findings, finding => Assert.Equal(Facts.PlanPlace, finding.Needs));
    }

    // Trade's own example: two basins, and the receptacle 37 in from the second.
    [Fact]
    public void BathReceptacle_ThirtySevenFromTheSecondBasin_IsLackingThereAlone_AndTheCureMendsIt()
    {
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", TwoBasins("67").House());
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal("square basin of vanity at 12 in", finding.Subject);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", cure.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    [Fact]
    public void BathReceptacle_ReachedAcrossABasin_IsDisputed()
    {
        RuleSet strict = RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).WithReading("bath-receptacle", "not-across-a-basin");
        Dwelling house = TwoBasins("65").House();
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", house).IsClean);
        Finding finding = Assert.Single(new LayoutEvaluator(OneBox.Only(strict, "bath-receptacle")).Evaluate(house).Findings);
        Assert.Equal("default", Assert.Single(finding.DisputedBy));

        // Between the two, or on either side of the one that it serves, it isn't.
        Assert.True(new LayoutEvaluator(OneBox.Only(strict, "bath-receptacle")).Evaluate(TwoBasins("38").House()).IsClean);
    }

    [Theory]
    [InlineData("dedicated")]
    [InlineData("switched")]
    [InlineData("240 V")]
    [InlineData("125/250 V")]
    [InlineData("30 A")]
    [InlineData("jack")]
    public void BathReceptacle_OfAnotherSort_DoesntCount(string sort)
    {
        DeviceBox box = Receptacle(In("62"), "44");
        box = sort switch
        {
            "dedicated" => box.WithDedicated("towel warmer"),
            "switched" => box.WithSwitched(SwitchedPart.All),
            "240 V" => box.WithRating("250 V 20 A"),
            "125/250 V" => box.WithRating("125/250 V 50 A"),
            "30 A" => box.WithRating("125 V 30 A"),
            _ => box.WithDevices(new[] { DeviceKind.DataJack }),
        };
        Assert.Single(Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [box, Receptacle(In("130"), "44").WithId("other")] }).House()).Findings);
        Assert.True(Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithSwitched(SwitchedPart.Half)] }).House()).IsClean);
    }

    // The laundry's own receptacle is at the ironing board; the washer is plugged in beside it, wherever what serves it is called.
    [Theory]
    [InlineData("50", "general", true)]
    [InlineData("113", "general", false)]
    [InlineData("50", "range", false)]
    public void Washer_ServedByAnotherBoxNearIt_LacksNothing(string at, string purpose, bool served)
    {
        SquareRoom room = new()
        {
            Kind = RoomKind.Laundry,
            Fixtures = [SquareRoom.Against("washer", FixtureKind.Washer, "north", In("10"), In("40"), In("28"))],
            North = [Receptacle(In("130"), "44").WithPurpose(BoxPurpose.Laundry), Receptacle(In(at), "44").WithId("near").WithPurpose(new BoxPurpose(purpose))],
        };
        Assert.Equal(served, Evaluate(NecEdition.Nec2023, "washer-receptacle", room.House()).IsClean);
    }

    [Theory]
    [InlineData("125 V 20 A", null)]
    [InlineData("120 V", null)]
    [InlineData("5-20R", Facts.Devices)]
    public void BathReceptacle_Rating_CountsAsItDoesAlongAWall(string rating, Facts? needs)
    {
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "bath-receptacle", (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithRating(rating)] }).House());
        Assert.Equal(needs is { } needed ? [needed] : [], evaluation.Findings.Select(finding => finding.Needs));
    }

    // NEC 210.52(G)(1): one in each vehicle bay; a door of 16 ft leads to two.
    [Theory]
    [InlineData(108, 1, true)]
    [InlineData(192, 1, false)]
    [InlineData(192, 2, true)]
    public void Garage_OneReceptacleForEachBay(int door, int receptacles, bool enough)
    {
        SquareRoom garage = new()
        {
            Kind = RoomKind.Garage,
            Wide = In("264"),
            SouthOpenings = [new("door", new OpeningKind("overhead-door"), In("20"), In("20") + Distance.FromInches(door, 0, 1))],
            North = Enumerable.Range(1, receptacles).Select(i => Receptacle(Distance.FromInches((120 * i) - 60, 0, 1), "48").WithId("g" + i).WithPurpose(BoxPurpose.Garage)).ToArray(),
            Overhead = [Receptacle(In("0"), "0").WithId("opener").WithAt(null).WithHeight(null).WithPlan(new PlanPoint(In("100"), In("60"))).WithDedicated("door opener")],
        };
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "garage-bay", garage.House());
        Assert.Equal(enough, evaluation.IsClean);
        if (!enough)
        {
            Assert.Equal("one-bay-a-door", Assert.Single(evaluation.Findings[0].DisputedBy));
            Assert.True(Evaluate(NecEdition.Nec2023, "garage-bay", evaluation.Findings[0].Remedies[0].ApplyTo(evaluation.Dwelling)).IsClean);
        }

        Assert.True(Evaluate(NecEdition.Nec2017, "garage-bay", garage.House().WithOccupancy(Occupancy.CoveredMultifamily)).IsClean);
    }

    [Theory]
    [InlineData("laundry", "laundry-receptacle")]
    [InlineData("basement", "basement-receptacle")]
    public void RoomWithoutItsReceptacle_LacksIt_AndTheCureMendsIt(string kind, string rule)
    {
        SquareRoom room = new() { Kind = new RoomKind(kind), North = [SquareRoom.Box("switch", "switch", In("40"), In("46"))] };
        Room other = new SquareRoom { Kind = RoomKind.Office, North = [Receptacle(In("60"), "14").WithId("far")] }.Build().WithId("other");
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, rule, room.House(other));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(("square", Verdict.Fails), (finding.Subject, finding.Verdict));
        Assert.True(Evaluate(NecEdition.Nec2023, rule, finding.Remedies[0].ApplyTo(evaluation.Dwelling)).IsClean);
    }

    // A room whose boxes aren't described at all, or a dwelling that lists no outlet of the kind, is asked for nothing.
    [Theory]
    [InlineData("bedroom", "room-light")]
    [InlineData("bathroom", "kitchen-bath-light")]
    [InlineData("hall", "passage-light")]
    [InlineData("bedroom", "bedroom-alarm")]
    [InlineData("bedroom", "room-switch")]
    [InlineData("laundry", "laundry-receptacle")]
    public void DwellingOfOtherOutletsAlone_IsNotAskedForThese(string kind, string rule)
    {
        SquareRoom room = new() { Kind = new RoomKind(kind), North = [SquareRoom.Box("thermostat", "thermostat", In("40"), In("60"))] };
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, rule, room.House());
        Assert.True(evaluation.IsClean);
        Assert.Contains(evaluation.NotJudged, one => one.StartsWith(rule + ": no ", StringComparison.Ordinal) && one.EndsWith("is described in the dwelling (square)", StringComparison.Ordinal));
        evaluation = Evaluate(NecEdition.Nec2023, rule, (room with { North = [] }).House());
        Assert.True(evaluation.IsClean);
        Assert.Contains(rule + ": no box is described there (square)", evaluation.NotJudged);
    }

    [Theory]
    [InlineData("bedroom", "room-light", "luminaire", Verdict.Fails)]
    [InlineData("kitchen", "kitchen-bath-light", "luminaire", Verdict.Fails)]
    [InlineData("hall", "passage-light", "luminaire", Verdict.Fails)]
    [InlineData("garage", "passage-light", "luminaire", Verdict.Fails)]
    [InlineData("hall", "passage-switch", "switch", Verdict.Unknown)]
    [InlineData("stair", "passage-switch", "switch", Verdict.Unknown)]
    [InlineData("garage", "passage-switch", "switch", Verdict.Unknown)]
    [InlineData("laundry", "laundry-light", "luminaire", Verdict.Fails)]
    [InlineData("laundry", "laundry-switch", "switch", Verdict.Unknown)]
    [InlineData("basement", "service-light", "luminaire", Verdict.Fails)]
    [InlineData("basement", "service-switch", "switch", Verdict.Unknown)]
    [InlineData("utility", "service-light", "luminaire", Verdict.Fails)]
    [InlineData("bedroom", "bedroom-alarm", "smoke-alarm", Verdict.Fails)]
    [InlineData("bedroom", "room-switch", "switch", Verdict.Unknown)]
    public void RoomThatAloneLacksIt_IsFound(string kind, string rule, string device, Verdict outcome)
    {
        DeviceBox box = SquareRoom.Box(device, device == "switch" ? "switch" : device == "luminaire" ? "light" : "alarm", In("40"), In("46"));
        SquareRoom with = new() { Kind = new RoomKind(kind), North = [box] };
        SquareRoom without = new() { Kind = new RoomKind(kind), North = [SquareRoom.Box("thermostat", "thermostat", In("40"), In("60")).WithId("t")] };
        Assert.True(Evaluate(NecEdition.Nec2023, rule, with.House()).IsClean);
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, rule, without.House(with.Build().WithId("other")));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(("square", outcome), (finding.Subject, finding.Verdict));
        if (outcome == Verdict.Fails)
        {
            Assert.True(Evaluate(NecEdition.Nec2023, rule, finding.Remedies[0].ApplyTo(evaluation.Dwelling)).IsClean);
        }
    }

    // NEC names laundry areas from 2023 on (from memory); before, only as a place with equipment to be serviced.
    [Theory]
    [InlineData(NecEdition.Nec2017, Severity.Advice)]
    [InlineData(NecEdition.Nec2020, Severity.Advice)]
    [InlineData(NecEdition.Nec2023, Severity.Violation)]
    [InlineData(NecEdition.Nec2026, Severity.Violation)]
    public void LaundryWithoutALight_WeighsWhatItsEditionSays(NecEdition edition, Severity severity)
    {
        SquareRoom laundry = new() { Kind = RoomKind.Laundry, North = [Receptacle(In("60"), "44").WithPurpose(BoxPurpose.Laundry)] };
        Room lit = new SquareRoom { Kind = RoomKind.Hall, North = [SquareRoom.Box("luminaire", "light", In("40"), In("80")).WithId("l")] }.Build().WithId("lit");
        Assert.Equal(severity, Assert.Single(Evaluate(edition, "laundry-light", laundry.House(lit)).Findings).Severity);
    }

    // An attic is asked for a light where a furnace stands in it.
    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 0)]
    public void Attic_WithEquipmentToService_IsAskedForALight(bool furnace, int found)
    {
        SquareRoom attic = new()
        {
            Kind = RoomKind.Attic,
            North = [Receptacle(In("60"), "44")],
            Fixtures = furnace ? [SquareRoom.Against("furnace", FixtureKind.Furnace, "north", In("10"), In("40"), In("28"))] : [],
        };
        Room lit = new SquareRoom { Kind = RoomKind.Hall, North = [SquareRoom.Box("luminaire", "light", In("40"), In("80")).WithId("l")] }.Build().WithId("lit");
        Assert.Equal(found, Evaluate(NecEdition.Nec2023, "attic-light", attic.House(lit)).Findings.Count);
    }

    // Which light a switch controls isn't described: any in the room behind the door will do, none makes it a question, and without a room nothing is said.
    [Theory]
    [InlineData("face says", true, 0)]
    [InlineData("face says", false, 1)]
    [InlineData("room says", true, 0)]
    [InlineData("room says", false, 1)]
    [InlineData("nobody says", false, 0)]
    public void LightAtAnEntrance_HasASwitchInTheRoomBehindIt(string who, bool hasSwitch, int found)
    {
        SquareRoom foyer = new()
        {
            Kind = RoomKind.Foyer,
            North = [hasSwitch ? SquareRoom.Box("switch", "switch", In("60"), In("46")) : SquareRoom.Box("thermostat", "thermostat", In("60"), In("60"))],
            NorthIsBackOf = who == "room says" ? "front/face" : null,
        };
        Room switched = new SquareRoom { Kind = RoomKind.Office, North = [SquareRoom.Box("switch", "switch", In("40"), In("46")).WithId("s")] }.Build().WithId("other");
        Wall wall = new Wall("face", In("144")).WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("20"), In("56")) }).WithBackOf(who == "face says" ? "square/north" : null)
            .WithBoxes(new[] { SquareRoom.Box("luminaire", "light", In("70"), In("66")).WithId("l").WithHeight(BoxHeight.ToCenter(In("66"), Datum.Subfloor)) });
        Dwelling house = foyer.House(switched).WithOutside(new[] { new OutsideFace("front").WithWalls(new[] { wall }) });
        Evaluation evaluation = Evaluate(NecEdition.Nec2023, "entrance-switch", house);
        Assert.Equal(found, evaluation.Findings.Count);
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Unknown, Facts.ServedFromOutside, "front"), (finding.Verdict, finding.Needs, finding.Subject)));
        Assert.Equal(who == "nobody says", evaluation.NotJudged.Contains("entrance-switch: it isn't said which room its entrance leads to (front)"));
    }

    // A basement's light is switched at its stair, of which another row asks for the switches.
    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 1)]
    public void BasementWithoutASwitch_WithAStair_IsLeftToTheStairsRow(bool stair, int found)
    {
        SquareRoom basement = new() { Kind = RoomKind.Basement, North = [SquareRoom.Box("luminaire", "light", In("60"), In("80"))] };
        Room switched = new SquareRoom { Kind = RoomKind.Office, North = [SquareRoom.Box("switch", "switch", In("40"), In("46")).WithId("s")] }.Build().WithId("other");
        Dwelling house = basement.House(switched);
        house = stair ? house.WithFlights(new[] { new StairFlight("flight", "ground", "ground", 14).WithWall("square/south") }) : house;
        Assert.Equal(found, Evaluate(NecEdition.Nec2023, "service-switch", house).Findings.Count);
    }

    // A row says what it looks for: none of those that look for lights speaks of a switch that controls them.
    [Fact]
    public void RowsForLights_DontSayThatSwitchesWereLookedAt() => Assert.All(
        new[] { "kitchen-bath-light", "passage-light", "laundry-light", "service-light", "attic-light", "entrance-light" },
        id => Assert.DoesNotContain("switch", RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).Row(id).Summary, StringComparison.Ordinal));

    // NEC 210.70(A)(1): a switched receptacle will do, but not in a kitchen or bath.
    [Theory]
    [InlineData("bedroom", "room-light", true)]
    [InlineData("kitchen", "kitchen-bath-light", false)]
    public void SwitchedReceptacle_StandsInForALight_ButNotInAKitchen(string kind, string rule, bool will)
    {
        SquareRoom room = new() { Kind = new RoomKind(kind), North = [Receptacle(In("60"), "14").WithSwitched(SwitchedPart.Half)] };
        Room lit = new SquareRoom { Kind = RoomKind.Hall, North = [SquareRoom.Box("luminaire", "light", In("40"), In("80")).WithId("l")] }.Build().WithId("lit");
        Assert.Equal(will, Evaluate(NecEdition.Nec2023, rule, room.House(lit)).IsClean);
    }

    [Fact]
    public void Alarms_InABedroomAlone_AreLackingOutsideIt()
    {
        DeviceBox alarm = SquareRoom.Box("smoke-alarm", "alarm", In("40"), In("90"));
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, North = [alarm] }.House(new SquareRoom { Kind = RoomKind.Hall, North = [SquareRoom.Box("switch", "switch", In("40"), In("46")).WithId("s")] }.Build().WithId("hall"));
        Assert.Equal("ground", Assert.Single(Evaluate(NecEdition.Nec2023, "bedroom-hall-alarm", house).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "storey-alarm", house).IsClean);

        // Where no room but the bedroom is described, nothing can be said.
        Assert.True(Evaluate(NecEdition.Nec2023, "bedroom-hall-alarm", house.WithRooms(new[] { house.Rooms[0] })).IsClean);
    }

    // What stands in an alarm's box isn't stated before it is bought.
    [Fact]
    public void AlarmWhoseDeviceIsntStated_CountsAsOne()
    {
        DeviceBox alarm = new DeviceBox("alarm", BoxPurpose.Alarm).WithPlan(new PlanPoint(In("60"), In("60")));
        SquareRoom bedroom = new() { Kind = RoomKind.Bedroom, Overhead = [alarm] };
        Room hall = new SquareRoom { Kind = RoomKind.Hall, Overhead = [alarm.WithId("other").WithDevices(new[] { DeviceKind.SmokeAlarm })] }.Build().WithId("hall");
        Assert.True(Evaluate(NecEdition.Nec2023, "bedroom-alarm", bedroom.House(hall)).IsClean);
        Assert.Single(Evaluate(NecEdition.Nec2023, "bedroom-alarm", (bedroom with { Overhead = [alarm.WithDevices(new[] { DeviceKind.CoAlarm })] }).House(hall)).Findings);
    }

    // From 2020 every ceiling box in a place fit for a fan; which places are isn't said, and a description that marks none says nothing of them.
    [Fact]
    public void FanBox_IsAskedOfALoneLightOnlyWhereBoxesAreMarked()
    {
        DeviceBox light = SquareRoom.Box("luminaire", "light", null, In("0")).WithHeight(null).WithPlan(new PlanPoint(In("60"), In("60")));
        SquareRoom bedroom = new() { Kind = RoomKind.Bedroom, Overhead = [light] };
        Room marked = new SquareRoom { Kind = RoomKind.Bedroom, Overhead = [light.WithId("fan").WithFanRated(true)] }.Build().WithId("marked");
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", bedroom.House()).IsClean);
        Assert.Equal(OneBox.Id, Assert.Single(Evaluate(NecEdition.Nec2023, "fan-box", bedroom.House(marked)).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", (bedroom with { Overhead = [light.WithKind(BoxKind.FanRated)] }).House(marked)).IsClean, "it is made for a fan");
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", (bedroom with { Overhead = [light, light.WithId("second")] }).House(marked)).IsClean);
        Assert.DoesNotContain(RuleSets.UnitedStatesOutlets(NecEdition.Nec2017).Rules, rule => rule.Id == "fan-box");
    }

    [Fact]
    public void FaceOutlets_FrontBackAndEntrance_AreLackingWhereTheyAre()
    {
        DeviceBox Outside(string id, string device, string purpose, int at) => new DeviceBox(id, new BoxPurpose(purpose)).WithDevices(new[] { new DeviceKind(device) })
            .WithAt(Distance.FromInches(at, 0, 1)).WithHeight(BoxHeight.ToCenter(In("20"), Datum.Grade));
        OutsideFace Face(string id, params DeviceBox[] boxes) => new OutsideFace(id).WithWalls(new[] { new Wall("face", In("300")).WithOpenings(new[] { new Opening(id + "-door", OpeningKind.Door, In("100"), In("138")) }).WithBoxes(boxes) });
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) })
            .WithOutside(new[] { Face("front", Outside("x1", "gfci-receptacle", "exterior", 40), Outside("l1", "luminaire", "light", 90)), Face("back", Outside("bell", "doorbell-button", "doorbell", 90)) });
        Finding receptacle = Assert.Single(Evaluate(NecEdition.Nec2023, "front-and-back", house).Findings);
        Assert.Equal("back", receptacle.Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "front-and-back", receptacle.Remedies[0].ApplyTo(house)).IsClean);
        Assert.Equal("back", Assert.Single(Evaluate(NecEdition.Nec2023, "entrance-light", house).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "front-and-back", house.WithOccupancy(Occupancy.CoveredMultifamily)).IsClean);
    }

    // Until 2017 a deck counts that is reached from inside; from 2020 one within 4 in of the house.
    [Fact]
    public void Deck_WithoutADoor_IsAskedForAReceptacleFrom2020()
    {
        Assert.True(Evaluate(NecEdition.Nec2017, "deck-receptacle", Deck(In("1"), null)).IsClean);
        Assert.Single(Evaluate(NecEdition.Nec2020, "deck-receptacle", Deck(In("1"), null)).Findings);
        Finding open = Assert.Single(Evaluate(NecEdition.Nec2023, "deck-receptacle", Deck(null, null)).Findings);
        Assert.Equal((Verdict.Unknown, Facts.PlanPlace), (open.Verdict, open.Needs));
    }

    // From a deck nobody reaches what is under its surface.
    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 0)]
    public void Deck_ReceptacleUnderItsSurface_DoesNotServeIt(int ticks, int lacking)
    {
        Dwelling house = Deck(In("1"), In("20"));
        Level surface = house.Outside[0].Platforms[0].Surface!.Value;
        Dwelling set = house.WithBoxes(box => box.WithHeight(BoxHeight.ToCenter(surface.Offset + Distance.FromTicks(ticks), surface.Datum)));
        Assert.Equal(lacking, Evaluate(NecEdition.Nec2023, "deck-receptacle", set).Findings.Count);
    }

    // 78 in above grade is no more than that above a deck that stands on it; higher up the deck's surface decides.
    [Fact]
    public void Deck_OfUnstatedSurface_IsUnknownOnlyWhereThatDecides()
    {
        Distance limit = In(CaseFile.Table("required-outlets.csv").Single(row => row["what"] == "above the deck")["value"]);
        Finding? Found(BoxHeight height)
        {
            Dwelling house = Deck(In("1"), In("20")).WithBoxes(box => box.WithHeight(height));
            return Evaluate(NecEdition.Nec2023, "deck-receptacle", house.WithOutside(house.Outside.Select(face => face.WithPlatforms(face.Platforms.Select(deck => deck.WithSurface(null)).ToArray())).ToArray())).Findings.SingleOrDefault();
        }

        Assert.Null(Found(BoxHeight.ToCenter(limit - Tick, Datum.Grade)));
        Assert.Null(Found(BoxHeight.ToCenter(limit, Datum.Grade)));
        Finding high = Found(BoxHeight.ToCenter(limit + Tick, Datum.Grade))!;
        Assert.Equal((Verdict.Unknown, Facts.Datum), (high.Verdict, high.Needs));
    }

    private static Dwelling House(string what, Distance off) => what switch
    {
        "off the basin along the wall" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("58") + off, "44")] }).House(),
        "below the basin's top" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithHeight(BoxHeight.ToCenter(In("34") - off, Datum.FinishedFloor))] }).House(),
        "above the floor" => (Bath(In("40"), In("0")) with { North = [Receptacle(In("62"), "44").WithHeight(BoxHeight.ToCenter(off, Datum.FinishedFloor))] }).House(),
        "off the washer along the wall" => OffAppliance(RoomKind.Laundry, "washer", BoxPurpose.Laundry, off),
        "off the dryer along the wall" => OffAppliance(RoomKind.Laundry, "dryer", BoxPurpose.Dryer, off),
        "off the refrigerator along the wall" => OffAppliance(RoomKind.Kitchen, "refrigerator", BoxPurpose.Refrigerator, off),
        "off the dishwasher along the wall" => OffAppliance(RoomKind.Kitchen, "dishwasher", BoxPurpose.Dishwasher, off),
        "off the range along the wall" => OffAppliance(RoomKind.Kitchen, "range", BoxPurpose.Range, off),
        "off the furnace along the wall" => new SquareRoom
        {
            Kind = RoomKind.Utility,
            Wide = In("500"),
            Fixtures = [SquareRoom.Against("furnace", FixtureKind.Furnace, "north", In("10"), In("40"), In("28"))],
            North = [Receptacle(In("40") + off, "44")],
        }.House(),
        "off the outdoor unit along the wall" => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[]
        {
            new OutsideFace("side").WithFixtures(new[] { SquareRoom.Against("unit", FixtureKind.Condenser, "face", In("10"), In("40"), In("30")) })
                .WithWalls(new[] { new Wall("face", In("500")).WithBoxes(new[] { Receptacle(In("40") + off, "30").WithPurpose(BoxPurpose.Exterior) }) }),
        }),
        "above the garage floor" => new SquareRoom { Kind = RoomKind.Garage, North = [Receptacle(In("62"), "44").WithPurpose(BoxPurpose.Garage).WithHeight(BoxHeight.ToCenter(off, Datum.FinishedFloor))] }.House(),
        "above grade" => Front(off),
        "gap to the deck" => Deck(off, null),
        _ => Deck(In("1"), off),
    };

    private static Dwelling OffAppliance(RoomKind room, string appliance, BoxPurpose purpose, Distance off) => new SquareRoom
    {
        Kind = room,
        Fixtures = [SquareRoom.Against(appliance, new FixtureKind(appliance), "north", In("10"), In("40"), In("28"))],
        North = [Receptacle(In("40") + off, "44").WithPurpose(purpose)],
    }.House();

    private static Dwelling Front(Distance center) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[]
    {
        new OutsideFace("front").WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { Receptacle(In("60"), "0").WithPurpose(BoxPurpose.Exterior).WithHeight(BoxHeight.ToCenter(center, Datum.Grade)) }) }),
    });

    /// <summary>A deck 30 in above grade from 100 to 250 in, with a receptacle so high above it, or only one far from it.</summary>
    private static Dwelling Deck(Distance? gap, Distance? aboveDeck) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("36")) }).WithOutside(new[]
    {
        new OutsideFace("side").WithPlatforms(new[] { new Platform("deck", PlatformKind.Deck, In("100"), In("250")).WithGap(gap).WithSurface(new Level(In("30"), Datum.Grade)) }).WithWalls(new[]
        {
            new Wall("face", In("300")).WithBoxes(new[] { Receptacle(aboveDeck is null ? In("20") : In("150"), "0").WithPurpose(BoxPurpose.Exterior).WithHeight(BoxHeight.ToCenter(In("30") + (aboveDeck ?? In("20")), Datum.Grade)) }),
        }),
    });

    /// <summary>A bath whose basin is 18 in wide, its left end so far from the corner, with so much counter left behind it.</summary>
    private static SquareRoom Bath(Distance left, Distance? behind) => new()
    {
        NorthCounters =
        [
            new Counter("vanity", CounterKind.Bath, left, left + In("18")).WithTop(new Level(In("34"), Datum.FinishedFloor)).WithDepth(In("22"))
                .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, left, left + In("18")).WithBehind(behind) }),
        ],
    };

    /// <summary>Basins from 12 to 30 in and from 42 to 60 in, right at the wall, and a receptacle.</summary>
    private static SquareRoom TwoBasins(string at) => new()
    {
        NorthCounters =
        [
            new Counter("vanity", CounterKind.Bath, In("6"), In("90")).WithTop(new Level(In("34"), Datum.FinishedFloor)).WithDepth(In("22")).WithInterruptions(new[]
            {
                new CounterInterruption(InterruptionKind.Basin, In("12"), In("30")).WithBehind(In("0")), new CounterInterruption(InterruptionKind.Basin, In("42"), In("60")).WithBehind(In("0")),
            }),
        ],
        North = [Receptacle(In(at), "44")],
    };

    private static DeviceBox Receptacle(Distance at, string center) => SquareRoom.Box("gfci-receptacle", "bath", at, In(center));

    private static Evaluation Evaluate(NecEdition edition, string rule, Dwelling house) => new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(edition), rule)).Evaluate(house);

    private static Distance In(string inches) => CaseFile.Inches(inches);
}
