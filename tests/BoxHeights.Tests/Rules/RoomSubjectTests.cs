using System;
using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>Rooms that have their outlet, light or switch, and those that aren't asked for one.</summary>
public sealed class RoomSubjectTests
{
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

    // NEC 210.52(F) asks every dwelling, 210.52(E)(1) those of one and two families: what a dwelling says of itself matters to the second alone.
    [Theory]
    [InlineData("one-family", "laundry-receptacle", 1)]
    [InlineData("covered-multifamily", "laundry-receptacle", 1)]
    [InlineData("one-family", "front-and-back", 1)]
    [InlineData("covered-multifamily", "front-and-back", 0)]
    public void DwellingOfAnOccupancy_IsAskedForWhatIsMeantForIt(string occupancy, string rule, int found)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Laundry, North = [SquareRoom.Box("thermostat", "thermostat", In("40"), In("60"))] }.House()
            .WithOutside(new[] { new OutsideFace("front").WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { SquareRoom.Box("luminaire", "light", In("40"), In("60")).WithId("lamp") }) }) })
            .WithOccupancy(new Occupancy(occupancy));
        RuleSet rules = OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), rule);
        Assert.Equal(found, new LayoutEvaluator(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(house).Findings.Count);
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
}
