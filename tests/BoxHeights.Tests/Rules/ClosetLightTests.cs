using System;
using System.Collections.Generic;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 410.16 and the storage space of a clothes closet: lights in its ceiling.</summary>
public sealed class ClosetLightTests
{
    private static RuleSet Rules => OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "closet-light");
    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    [Fact]
    public void Judge_OneTickInsideAtAndOutsideTheLimit_TurnsThere()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("closet-lights.csv"))
        {
            Assert.StartsWith("410.16", row["section"], StringComparison.Ordinal);
            LuminaireBuild? build = row["luminaire"].Length == 0 ? null : Enum.Parse<LuminaireBuild>(row["luminaire"], true);
            foreach (int ticks in new[] { -1, 0, 1 })
            {
                // Off the north wall, far from the sides.
                DeviceBox light = Light(build, In("60"), In(row["limit"]) + Distance.FromTicks(ticks)).WithDevices(new[] { new DeviceKind(row["device"]) });
                Evaluation evaluation = Evaluate(Closet(light, row["shelf"].Length == 0 ? null : In(row["shelf"])));
                Assert.True((ticks < 0 ? 1 : 0) == evaluation.Findings.Count, row["id"]);
                Assert.True(ticks >= 0 || evaluation.Findings[0].Verdict == Verdict.Fails, row["id"]);
            }
        }
    }

    [Theory]
    [InlineData(LuminaireBuild.Open, 1)]
    [InlineData(LuminaireBuild.ForStorage, 0)]
    public void Judge_OpenOrListedForStorage_DoesNotDependOnThePlace(LuminaireBuild build, int findings)
    {
        Assert.Equal(findings, Evaluate(Closet(Light(build, In("60"), In("2")))).Findings.Count);
        Assert.Equal(findings, Evaluate(Closet(Light(build, In("60"), In("40")))).Findings.Count);
    }

    // A recessed luminaire has to be enclosed anyway, and keeps its 6 in from storage 12 in deep: NEC 410.16(C)(4).
    [Theory]
    [InlineData(-1, 1)]
    [InlineData(0, 0)]
    public void Judge_RecessedThatIsSaidToBeEnclosed_IsRecessed(int ticks, int findings) =>
        Assert.Equal(findings, Evaluate(Closet(Light(LuminaireBuild.Enclosed, In("60"), In("18") + Distance.FromTicks(ticks)).WithDevices(new[] { new DeviceKind("recessed-light") }))).Findings.Count);

    // Where nobody says how it is built, a place that is right for every enclosed one passes; any other is told in one line and isn't a finding.
    [Fact]
    public void Judge_BuildNotStated_IsNotCheckedWhereItMatters()
    {
        Evaluation far = Evaluate(Closet(Light(null, In("60"), In("24"))));
        Assert.True(far.IsClean);
        Assert.DoesNotContain(far.NotJudged, line => line.Contains("how the luminaire", StringComparison.Ordinal));
        Evaluation near = Evaluate(Closet(Light(null, In("60"), In("20"))));
        Assert.True(near.IsClean);
        Assert.Contains("closet-light: how the luminaire is enclosed and listed isn't stated (" + near.Dwelling.Rooms[0].Overhead[0].Id + ")", near.NotJudged);
    }

    [Fact]
    public void Judge_WallsThatDontCloseOrNoPlace_IsNotChecked()
    {
        Evaluation nowhere = Evaluate(Closet(Light(LuminaireBuild.Enclosed, In("60"), In("20")).WithPlan(null)));
        Assert.Equal(LayoutFaultKind.NoPlace, Assert.Single(nowhere.Findings, one => one.Fault is not null).Fault!.Kind);
        Assert.DoesNotContain(nowhere.Findings, one => one.Fault is null);
        Assert.Contains(nowhere.NotJudged, line => line.StartsWith("closet-light: it isn't said where everything stands in plan", StringComparison.Ordinal));
        Room open = new SquareRoom { Kind = RoomKind.Closet, Overhead = [Light(LuminaireBuild.Enclosed, In("60"), In("20"))] }.Build();
        Evaluation evaluation = Evaluate(new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { open.WithWalls(new[] { open.Walls[0] }) }));
        Assert.Contains("closet-light: its walls don't close (" + open.Overhead[0].Id + ")", evaluation.NotJudged);
    }

    [Fact]
    public void Finding_NamesTheWallAndTheWayThatIsAsked()
    {
        Finding finding = Assert.Single(Evaluate(Closet(Light(LuminaireBuild.Enclosed, In("60"), In("20")))).Findings);
        Assert.Equal((Quantity)In("8"), finding.Measured);
        Assert.Contains("in plan 8 in from the storage space at north", finding.Message, StringComparison.Ordinal);
    }

    // The same in whole sixteenths: the storage is rectangles along three walls and under one shelf, the way to each the square of two legs.
    [Fact]
    public void Judge_AnyLightInAnyCloset_AgreesWithRectangles() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        (int wide, int deep, int x, int y) = (random.Next(320, 1600), random.Next(320, 1200), 0, 0);
        (x, y) = (random.Next(1, wide), random.Next(1, deep));
        int shelf = random.Next(2) == 0 ? 0 : random.Next(100, 320);
        (int left, int right) = (random.Next(0, wide / 2), (wide / 2) + random.Next(1, wide / 2));
        LuminaireBuild build = new[] { LuminaireBuild.Enclosed, LuminaireBuild.Fluorescent, LuminaireBuild.Recessed }[random.Next(3)];
        long needed = build == LuminaireBuild.Enclosed ? 192 : 96;
        bool clear = Clear(0, wide, 0, 192) && Clear(0, 192, 0, deep) && Clear(wide - 192, wide, 0, deep) && (shelf <= 192 || Clear(left, right, 0, shelf));
        bool Clear(int fromX, int toX, int fromY, int toY)
        {
            long aside = Math.Max(0, Math.Max(fromX - x, x - toX));
            long off = Math.Max(0, Math.Max(fromY - y, y - toY));
            return (aside * aside) + (off * off) >= needed * needed;
        }

        SquareRoom closet = new()
        {
            Kind = RoomKind.Closet,
            Wide = Sixteenths(wide),
            Deep = Sixteenths(deep),
            Overhead = [Light(build, Sixteenths(x), Sixteenths(y))],
            SouthOpenings = [new("door", OpeningKind.Door, Sixteenths(16), Sixteenths(300))],
        };
        return clear == Evaluate(Shelved(closet.House(), Sixteenths(left), Sixteenths(right), shelf == 0 ? null : Sixteenths(shelf))).IsClean;
    }).Check(Tries.Always(300));

    private static DeviceBox Light(LuminaireBuild? build, Distance right, Distance into) =>
        new DeviceBox(OneBox.Id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithLuminaire(build).WithPlan(new PlanPoint(right, into));

    private static Dwelling Closet(DeviceBox light, Distance? shelf = null) => Shelved(
        new SquareRoom { Kind = RoomKind.Closet, Wide = In("120"), Deep = In("60"), Overhead = [light], SouthOpenings = [new("door", OpeningKind.BifoldDoor, In("12"), In("60"))] }.House(), In("40"), In("80"), shelf);

    private static Dwelling Shelved(Dwelling house, Distance left, Distance right, Distance? depth) => depth is null ? house : house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall =>
        wall.Id == "north" ? wall.WithCoverings(new[] { new Covering("shelf", CoveringKind.Shelf, left, right).WithDepth(depth) }) : wall))));

    private static Evaluation Evaluate(Dwelling house) => new LayoutEvaluator(Rules).Evaluate(house);

    private static Distance Sixteenths(int sixteenths) => DwellingGen.Sixteenths(sixteenths);
}
