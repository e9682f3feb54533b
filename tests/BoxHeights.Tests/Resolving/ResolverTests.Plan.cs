using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>Rooms that don't close, and what has no place in them or stands outside.</content>
public sealed partial class ResolverTests
{
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
        Assert.Equal(expected is null ? null : "kitchen: " + expected, Closing(walls.Split(' ').Select(wall => (CaseFile.Inches(wall.Split(':')[0]), decimal.Parse(wall.Split(':')[1], CultureInfo.InvariantCulture)))));

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

    private static Dwelling Square(Func<Room, Room> change, string last) => new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
    {
        change(new Room("room", RoomKind.Bathroom, "first").WithWalls(new[]
        {
            new Wall("n", CaseFile.Inches("144")), new Wall("e", CaseFile.Inches("120")), new Wall("s", CaseFile.Inches("144")), new Wall("w", CaseFile.Inches(last)),
        })),
    });

    private static string? Closing(IEnumerable<(Distance Length, decimal Turn)> walls)
    {
        Room room = new Room("kitchen", RoomKind.Kitchen, "first").WithWalls(walls.Select((wall, i) => new Wall("w" + i, wall.Length).WithTurnDegrees(wall.Turn)).ToArray());
        Finding? found = Evaluator.Evaluate(new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room })).Findings.SingleOrDefault();
        Assert.Equal(found is null ? null : LayoutFaultKind.DoesNotClose, found?.Fault!.Kind);
        return found?.Message;
    }
}
