using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 210.63, from memory: a receptacle on the level of heating and cooling equipment, within 25 ft of it. How far that is along a wall is in required-outlets.csv.</summary>
public sealed class ServicedEquipmentTests
{
    private static readonly LayoutEvaluator Indoors = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "hvac-receptacle"));
    private static readonly LayoutEvaluator Outdoors = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "outdoor-unit-receptacle"));

    private static Fixture Furnace { get; } = SquareRoom.Against("furnace", FixtureKind.Furnace, "north", In("10"), In("40"), In("28"));

    [Fact]
    public void RoomWithoutEquipment_IsNeitherAskedNorMentioned()
    {
        Evaluation evaluation = Indoors.Evaluate(new SquareRoom { Kind = RoomKind.Utility, North = [Switch] }.House());
        Assert.True(evaluation.IsClean);
        Assert.DoesNotContain(evaluation.NotJudged, line => line.StartsWith("hvac-receptacle:", StringComparison.Ordinal));
    }

    [Fact]
    public void Furnace_WithoutAnyReceptacleOnItsLevel_LacksOne_AndTheCureMendsIt()
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Utility, Fixtures = [Furnace], North = [Switch] }.House(WithReceptacle(RoomKind.Hall, "upper"))
            .WithStoreys(new[] { SquareRoom.Storey, new Storey("upper") });
        Finding finding = Assert.Single(Indoors.Evaluate(house).Findings);
        Assert.Equal(("square furnace", Verdict.Fails, Severity.Violation), (finding.Subject, finding.Verdict, finding.Severity));
        Assert.True(Indoors.Evaluate(Assert.IsType<AddBox>(Assert.Single(finding.Remedies)).ApplyTo(house)).IsClean);
    }

    // How two rooms lie to each other isn't described: one in the hall may be a step away. An attic is no part of the level below it.
    [Theory]
    [InlineData("utility", "hall", true)]
    [InlineData("attic", "hall", false)]
    [InlineData("utility", "attic", false)]
    public void Furnace_WithOneInAnotherRoom_IsNotJudgedOnTheSameLevel(string at, string other, bool silent)
    {
        Dwelling house = new SquareRoom { Kind = new RoomKind(at), Fixtures = [Furnace], North = [Switch] }.House(WithReceptacle(new RoomKind(other), "ground"));
        Evaluation evaluation = Indoors.Evaluate(house);
        Assert.Equal(silent, evaluation.IsClean);
        Assert.Equal(silent, evaluation.NotJudged.Any(line => line.StartsWith("hvac-receptacle: how far", StringComparison.Ordinal)));
    }

    // 25 ft is straight, across the room: 300 in is 180 by 240 (3-4-5), from the corner of the furnace 180 in from the west wall and 28 in out.
    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public void Furnace_AcrossTheRoom_IsMeasuredStraight(int ticks, bool near)
    {
        SquareRoom room = new()
        {
            Kind = RoomKind.Utility,
            Wide = In("220"),
            Deep = In("400"),
            Fixtures = [Furnace.WithLeft(In("180")).WithRight(In("220"))],
            West = [Receptacle.WithAt(In("400") - In("28") - In("240") + Distance.FromTicks(ticks))],
        };
        Assert.Equal(near, Indoors.Evaluate(room.House()).IsClean);
    }

    [Theory]
    [InlineData("250 V 20 A", null, null, false)]
    [InlineData("125 V 20 A", null, null, true)]
    [InlineData(null, "furnace service", null, true)]
    [InlineData(null, null, "data-jack", false)]
    public void Receptacle_OfSomeSort_ServesTheFurnace(string? rating, string? dedicated, string? device, bool serves)
    {
        DeviceBox box = Receptacle.WithAt(In("60")).WithRating(rating).WithDedicated(dedicated).WithDevices(new[] { device is null ? DeviceKind.DuplexReceptacle : new DeviceKind(device) });
        Dwelling house = new SquareRoom { Kind = RoomKind.Utility, Fixtures = [Furnace], North = [box] }.House(WithReceptacle(RoomKind.Hall, "upper"))
            .WithStoreys(new[] { SquareRoom.Storey, new Storey("upper") });
        Assert.Equal(serves, Indoors.Evaluate(house).IsClean);
    }

    [Fact]
    public void OutdoorUnit_WithoutOne_LacksIt_UnlessAnotherFaceMayHaveItNear()
    {
        OutsideFace side = new OutsideFace("side").WithFixtures(new[] { SquareRoom.Against("unit", FixtureKind.HeatPump, "face", In("10"), In("40"), In("30")) })
            .WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { SquareRoom.Box("luminaire", "light", In("90"), In("60")).WithId("l") }) });
        OutsideFace back = new OutsideFace("back").WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { Receptacle.WithId("x").WithPurpose(BoxPurpose.Exterior).WithAt(In("20")) }) });
        OutsideFace above = back.WithId("above").WithStorey("upper");
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")), new Storey("upper") }).WithOutside(new[] { side, above })
            .WithRooms(new[] { WithReceptacle(RoomKind.Hall, "ground") });
        Finding finding = Assert.Single(Outdoors.Evaluate(house).Findings);
        Assert.Equal("side unit", finding.Subject);
        Assert.True(Outdoors.Evaluate(Assert.IsType<AddBox>(Assert.Single(finding.Remedies)).ApplyTo(house)).IsClean);
        Evaluation silent = Outdoors.Evaluate(house.WithOutside(new[] { side, back.WithStorey("ground") }));
        Assert.True(silent.IsClean);
        Assert.Contains(silent.NotJudged, line => line.StartsWith("outdoor-unit-receptacle: how far", StringComparison.Ordinal));
    }

    private static DeviceBox Switch => SquareRoom.Box("switch", "switch", In("100"), In("46")).WithId("switch");

    private static DeviceBox Receptacle => SquareRoom.Box("duplex-receptacle", "general", null, In("44"));

    private static Room WithReceptacle(RoomKind kind, string storey) =>
        new SquareRoom { Kind = kind, North = [Receptacle.WithId("far").WithAt(In("60"))] }.Build().WithId("other").WithStorey(storey);
}
