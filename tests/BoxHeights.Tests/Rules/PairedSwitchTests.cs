using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Three-way switches have mates, and boxes of a room that have a level of their own keep it.</summary>
public sealed class PairedSwitchTests
{
    private static readonly LayoutEvaluator Mates = new(OneBox.Only(RuleSets.RoughInPractice, "three-way-mates"));
    private static readonly LayoutEvaluator Level = new(OneBox.Only(RuleSets.RoughInPractice, "room-level"));

    [Theory]
    [InlineData("", 0)]
    [InlineData("switch switch", 0)]
    [InlineData("three-way-switch", 1)]
    [InlineData("three-way-switch three-way-switch", 0)]
    [InlineData("three-way-switch three-way-switch three-way-switch", 1)]
    [InlineData("three-way-switch four-way-switch three-way-switch", 0)]
    [InlineData("three-way-switch three-way-rocker-switch", 0)]
    [InlineData("three-way-toggle-switch four-way-toggle-switch", 1)]
    [InlineData("four-way-switch", 1)]
    [InlineData("three-way-switch four-way-switch", 1)]
    public void ThreeWays_AreLackingAMateWhereTheirNumberIsOdd(string devices, int found)
    {
        Evaluation evaluation = Mates.Evaluate(House(devices));
        Assert.Equal(found, evaluation.Findings.Count);
        int there = devices.Split(' ').Count(device => device.StartsWith("three-way-", StringComparison.Ordinal));
        QuantitySet allowed = QuantitySet.AtLeast(there == 0 ? 2 : there + 1);
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Fails, Severity.Note, Quantity.Of(there), allowed), (finding.Verdict, finding.Severity, finding.Measured, finding.Allowed)));
    }

    // Over a floor that isn't chosen its center isn't known; alone it is level with whatever there is.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 2)]
    public void Box_OfUnknownHeight_IsToldOnlyWhereThereAreOthers(int boxes, int told)
    {
        DeviceBox[] all = [.. Enumerable.Range(0, boxes).Select(i => new DeviceBox("s" + i, BoxPurpose.Switch).WithAt(CaseFile.Inches("20") * (i + 1)).WithHeight(BoxHeight.Parse("48 in to top AFF")))];
        Dwelling house = new Dwelling("case").WithStoreys(new Storey("ground")).WithRooms(new Room("hall", RoomKind.Hall, "ground").WithWalls(new Wall("n", CaseFile.Inches("144")).WithBoxes(all)));
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "uniform-level")).Evaluate(house);
        Assert.Equal(told, evaluation.Judgements.Count(one => one.State == Judged.NotJudged));
    }

    [Fact]
    public void ThreeWay_ThatIsTheOnlyOne_IsNamed() => Assert.Equal("s0", Assert.Single(Mates.Evaluate(House("three-way-switch switch")).Findings).Subject);

    // The mate may be an old switch, one whose devices aren't stated, or in a room that isn't described.
    [Theory]
    [InlineData("existing")]
    [InlineData("untouched")]
    [InlineData("unstated")]
    [InlineData("one room")]
    public void ThreeWay_WhoseMateMayNotBeDescribed_IsntFound(string why)
    {
        Dwelling house = House("three-way-switch switch");
        house = why switch
        {
            "existing" => house.WithBoxes(box => box.Id == "s1" ? box.WithExisting(true) : box),
            "untouched" => house.WithBoxes(box => box.Id == "s1" ? box.WithUntouched(true) : box),
            "unstated" => house.WithBoxes(box => box.Id == "s1" ? box.WithDevices(Items<DeviceKind>.None) : box),
            _ => house.WithRooms(new[] { house.Rooms[0] }),
        };
        Evaluation evaluation = Mates.Evaluate(house);
        Assert.Empty(evaluation.Findings);
        Assert.Contains(evaluation.NotJudged, line => line.StartsWith("three-way-mates: ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("garage", "garage", "48")]
    [InlineData("bathroom", "bath", "44")]
    public void BoxesOfARoom_ShareALevelWithinAQuarterInch(string room, string purpose, string center)
    {
        Dwelling House(Distance off) => new SquareRoom
        {
            Kind = new RoomKind(room),
            North = [.. new[] { "30", "60", "90" }.Select(at => SquareRoom.Box("gfci-receptacle", purpose, In(at), In(center) + (at == "90" ? off : Distance.Zero)).WithId("b" + at))],
        }.House();
        Assert.True(Level.Evaluate(House(In("1/4"))).IsClean);
        Finding finding = Assert.Single(Level.Evaluate(House(In("1/4") + Distance.FromTicks(1))).Findings);
        Assert.Equal(("b90", Severity.Note), (finding.Subject, finding.Severity));
    }

    // Of two either may be off. Where one can't be set like the other, behind a mirror, neither is found for it.
    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, 0)]
    public void TwoBoxes_OfWhichOneCannotBeSetLikeTheOther_ArentFound(bool mirror, int found)
    {
        LayoutEvaluator both = new(new RuleSet([RuleSets.RoughInPractice.Row("room-level"), RuleSets.RoughInPractice.Row("not-buried")]));
        DeviceBox[] boxes = [.. new[] { ("30", "44"), ("90", "46") }.Select(one => SquareRoom.Box("gfci-receptacle", "bath", In(one.Item1), In(one.Item2)).WithId("b" + one.Item1))];
        Dwelling house = new SquareRoom { Kind = RoomKind.Bathroom, North = boxes }.House();
        Covering glass = new Covering("mirror", CoveringKind.Mirror, In("20"), In("40")).WithBottom(new Level(In("46.5"), Datum.FinishedFloor)).WithTop(new Level(In("80"), Datum.FinishedFloor));
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => mirror && wall.Id == "north" ? wall.WithCoverings(new[] { glass }) : wall))));
        Assert.Equal(found, both.Evaluate(house).Findings.Count);
    }

    // Two baths with vanities of their own are each level in themselves.
    [Fact]
    public void BoxesOfTwoBaths_NeedntBeLevelWithEachOther()
    {
        SquareRoom Bath(string id, string center) => new() { Kind = RoomKind.Bathroom, North = [SquareRoom.Box("gfci-receptacle", "bath", In("60"), In(center)).WithId(id)] };
        Assert.True(Level.Evaluate(Bath("a", "40").House(Bath("b", "44").Build().WithId("other"))).IsClean);
    }

    private static Dwelling House(string devices) => new SquareRoom
    {
        Kind = RoomKind.Hall,
        North = [.. devices.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select((device, i) => SquareRoom.Box(device, "switch", In("" + (20 + (10 * i))), In("46")).WithId("s" + i))],
    }.House(new Room("other", RoomKind.Bedroom, "ground"));
}
