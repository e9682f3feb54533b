using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Layout;

/// <summary>Corners on a drawing as walls: either way round, from any origin and in any direction, the room is the same and closes.</summary>
public sealed class RoomOutlineTests
{
    // An L: 12 by 10 ft without a corner of 5 by 4.
    private static readonly PlanPoint[] Ell = [At(0, 0), At(144, 0), At(144, 72), At(84, 72), At(84, 120), At(0, 120)];

    [Fact]
    public void Of_AnEll_HasItsLengthsTurnsAndArea()
    {
        RoomOutline outline = RoomOutline.Of(Ell);
        Assert.Equal(["w1 144 90", "w2 72 90", "w3 60 -90", "w4 48 90", "w5 84 90", "w6 120 90"], outline.Walls.Select(wall => wall.Id + " " + wall.Length.Inches.ToString("0.####", System.Globalization.CultureInfo.InvariantCulture) + " " + wall.TurnDegrees));
        Assert.Equal(100m, outline.SquareFeet, 12);
        Assert.Equal(9.290304m, outline.SquareMeters, 12);
        Assert.Equal(Distance.Zero, outline.ClosureError);
    }

    // Listed the other way round w1 is still the wall between the first two points, and the room is no mirror image.
    [Fact]
    public void Of_TheOtherWayRound_IsTheSameRoom()
    {
        RoomOutline outline = RoomOutline.Of(new Items<PlanPoint>(Ell.Reverse()));
        Assert.Equal("w1 w6 w5 w4 w3 w2", string.Join(" ", outline.Walls.Select(wall => wall.Id)));
        Assert.Equal("84 120 144 72 60 48", string.Join(" ", outline.Walls.Select(wall => wall.Length.Inches.ToString("0", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal(RoomOutline.Of(Ell).SquareFeet, outline.SquareFeet);
        Assert.True(new WallPlan(new Room("r", RoomKind.Kitchen, "s").WithWalls(outline.Walls)).Closes);
    }

    [Theory]
    [InlineData("12", 0, "12 in", 4)]
    [InlineData("12", 1, "0 in", 5)]
    [InlineData("0", 0, "0 in", 4)]
    public void Of_PointsThatComeBack_SaysHowFarTheyMiss(string miss, int ticks, string error, int walls)
    {
        RoomOutline outline = RoomOutline.Of(new[] { At(0, 0), At(144, 0), At(144, 120), At(0, 120), new PlanPoint(Distance.Zero, CaseFile.Inches(miss) + Distance.FromTicks(ticks)) });
        Assert.Equal((error, walls), (outline.ClosureError.ToString(), outline.Walls.Count));
    }

    // Symbols on a drawing: on the line, off it, at a corner and beyond an end; seen from inside, w2 runs down from its left end and w6 up.
    [Theory]
    [InlineData(30, 0, "w1", 30, 0)]
    [InlineData(30, 2, "w1", 30, 2)]
    [InlineData(30, -2, "w1", 30, 2)]
    [InlineData(141, 20, "w2", 20, 3)]
    [InlineData(1, 100, "w6", 20, 1)]
    [InlineData(86, 90, "w4", 18, 2)]
    [InlineData(144, 0, "w1", 144, 0)]
    [InlineData(147, -4, "w1", 144, 5)]
    public void OnWall_APointOfTheDrawing_IsWhereItsNearestWallIs(int right, int into, string wall, int along, int away)
    {
        OutlinePlace place = RoomOutline.Of(Ell).OnWall(At(right, into));
        Assert.Equal((wall, Distance.FromInches(along), Distance.FromInches(away)), (place.Wall, place.Along, place.Away));
    }

    // A way along each wall and a little into the room, on a drawing that is turned by any angle: the point is where it was put.
    [Fact]
    public void OnWall_OfAnEllAnywhere_IsWhereThePointWasPut() => Prop.ForAll(Arb.From(Gen.Choose(0, 35999)), Arb.From(Gen.Choose(10, 90)), (hundredths, percent) =>
    {
        double angle = hundredths * Math.PI / 18000;
        PlanPoint Turned(double x, double y) => new(Distance.FromInchesRounded((x * Math.Cos(angle)) - (y * Math.Sin(angle))), Distance.FromInchesRounded((x * Math.Sin(angle)) + (y * Math.Cos(angle))));
        (double X, double Y)[] corners = [.. Ell.Select(point => ((double)point.Right.Inches, (double)point.Into.Inches))];
        RoomOutline outline = RoomOutline.Of(corners.Select(corner => Turned(corner.X, corner.Y)).ToArray());
        for (int i = 0; i < corners.Length; i++)
        {
            (double X, double Y) a = corners[i];
            (double X, double Y) b = corners[(i + 1) % corners.Length];
            double length = Math.Abs(b.X - a.X) + Math.Abs(b.Y - a.Y);
            (double X, double Y) way = ((b.X - a.X) / length, (b.Y - a.Y) / length);
            double along = length * percent / 100;
            OutlinePlace place = outline.OnWall(Turned(a.X + (way.X * along) - (way.Y * 3), a.Y + (way.Y * along) + (way.X * 3)));
            Assert.Equal("w" + (i + 1), place.Wall);
            Assert.InRange((place.Along - Distance.FromInchesRounded(along)).Abs(), Distance.Zero, Distance.FromTicks(4));
            Assert.InRange((place.Away - Distance.FromInches(3)).Abs(), Distance.Zero, Distance.FromTicks(4));
        }

        return true;
    }).Check(Tries.Config(200));

    [Fact]
    public void OnWall_FurtherThanAnyHouse_Throws() => Assert.Throws<ArgumentException>(() => RoomOutline.Of(Ell).OnWall(new(Distance.MaxValue, Distance.Zero)));

    // Turned by any angle and moved, rounded to ticks: the same lengths within a tick, turns within the tolerance, and the room closes.
    [Fact]
    public void Of_AnEllAnywhere_IsTheSameRoomAndCloses() => Prop.ForAll(Arb.From(Gen.Choose(0, 35999)), Arb.From(Gen.Choose(-900, 900)), (hundredths, off) =>
    {
        double angle = hundredths * Math.PI / 18000;
        PlanPoint[] turned = Ell.Select(point => new PlanPoint(
            Distance.FromTicks((long)Math.Round((point.Right.Ticks * Math.Cos(angle)) - (point.Into.Ticks * Math.Sin(angle)))) + Distance.FromInches(off),
            Distance.FromTicks((long)Math.Round((point.Right.Ticks * Math.Sin(angle)) + (point.Into.Ticks * Math.Cos(angle)))) - Distance.FromInches(off))).ToArray();
        RoomOutline outline = RoomOutline.Of(turned);
        RoomOutline upright = RoomOutline.Of(Ell);
        Assert.All(outline.Walls.Zip(upright.Walls), pair => Assert.True((pair.First.Length - pair.Second.Length).Abs() <= Distance.FromTicks(2) && Math.Abs(pair.First.TurnDegrees - pair.Second.TurnDegrees) < 0.0001m));
        Assert.True(Math.Abs(outline.SquareFeet - upright.SquareFeet) < 0.001m);
        Assert.True(new WallPlan(new Room("r", RoomKind.Kitchen, "s").WithWalls(outline.Walls)).Closes);
        PlanPoint back = outline.InRoom(turned[3]);
        Assert.True((back.Right - Ell[3].Right).Abs() <= Distance.FromTicks(2) && (back.Into - Ell[3].Into).Abs() <= Distance.FromTicks(2));
    }).Check(Tries.Always(100));

    // A half circle of 4 ft: its middle is 24 in off, a chord of an eighth of the circle 1.83 in, of a sixteenth 0.46 in off it. Computed.
    [Theory]
    [InlineData("24", 1)]
    [InlineData("7-1/32", 2)]
    [InlineData("2", 4)]
    [InlineData("1/2", 8)]
    public void Arc_OfATolerance_HasAsManyChordsAsItTakes(string tolerance, int chords)
    {
        Items<PlanPoint> arc = RoomOutline.Arc(At(0, 0), At(24, 24), At(48, 0), CaseFile.Inches(tolerance));
        Assert.Equal(chords + 1, arc.Count);
        Assert.Equal((At(0, 0), At(48, 0)), (arc[0], arc[chords]));
        Assert.All(arc, point => Assert.Equal(24d, Math.Sqrt(Math.Pow((double)point.Right.Inches - 24, 2) + Math.Pow((double)point.Into.Inches, 2)), 6));
        Assert.All(arc, point => Assert.True(point.Into >= Distance.Zero));
    }

    // A bay: the room with it closes, and its area is that of the rectangle and the part of the circle but for the chords.
    [Fact]
    public void Outline_WithAnArc_ClosesAndIsBuilt()
    {
        DwellingBuilder house = new("case");
        RoomBuilder room = house.Add(new Storey("first")).Room("living", RoomKind.LivingRoom, "first");
        Items<PlanPoint> bay = RoomOutline.Arc(At(100, 120), At(70, 150), At(40, 120), Distance.FromInches(0, 1, 4));
        RoomOutline outline = room.Outline([At(0, 0), At(144, 0), At(144, 120), .. bay, At(0, 120)]);
        room.FindWall("w1").Add(new DeviceBox("R1", BoxPurpose.General).WithAt(Distance.FromInches(40)).WithHeight(BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor)));
        Assert.Equal(120d + (Math.PI * 900 / 2 / 144), (double)outline.SquareFeet, 0);
        Assert.True(new WallPlan(house.Build().Rooms[0]).Closes);
        Assert.Equal("living/w1", house.Build().FindBox("R1")!.Address);
        Assert.DoesNotContain(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house.Build()).Findings, finding => finding.Fault is not null);
        Assert.Throws<InvalidOperationException>(() => room.Outline(Ell));
        Assert.Throws<ArgumentException>(() => room.FindWall("w99"));
    }

    [Fact]
    public void Of_WhatIsNoOutline_Throws()
    {
        Assert.Throws<ArgumentException>(() => RoomOutline.Of(new[] { At(0, 0), At(144, 0) }));
        Assert.Throws<ArgumentException>(() => RoomOutline.Of(new[] { At(0, 0), At(144, 0), At(144, 0), At(0, 120) }));
        Assert.Throws<ArgumentException>(() => RoomOutline.Of(new[] { At(0, 0), At(144, 120), At(144, 0), At(0, 120) }));
        Assert.Throws<ArgumentException>(() => RoomOutline.Of(new[] { At(0, 0), new PlanPoint(Distance.MaxValue, Distance.Zero), At(0, 120) }));
        Assert.Throws<ArgumentException>(() => RoomOutline.Arc(At(0, 0), At(24, 0), At(48, 0), Distance.FromInches(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoomOutline.Arc(At(0, 0), At(24, 24), At(48, 0), Distance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => RoomOutline.Arc(At(0, 0), At(24, 24), At(48, 0), Distance.FromTicks(1)));
    }

    private static PlanPoint At(int right, int into) => new(Distance.FromInches(right), Distance.FromInches(into));
}
