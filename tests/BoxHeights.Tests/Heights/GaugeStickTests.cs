using System;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Heights;

public class GaugeStickTests
{
    private static readonly BoxSize Box = new(Distance.FromInches(2, 1, 4), Distance.FromInches(3, 5, 8));

    // The hammer check: 13 in to the bottom of a 3-5/8 in box, floor of 3/4 in to come. A handbook's example, worked again by hand:
    // 13 - 3/4 = 12-1/4; + 1-13/16 = 14-1/16. On the bottom plate everything lies 1-1/2 in higher.
    [Theory]
    [InlineData(Datum.Subfloor, "12-1/4 in", "14-1/16 in")]
    [InlineData(Datum.BottomPlate, "13-3/4 in", "15-9/16 in")]
    public void Sets_Hammer_GivesTheseHeightsAboveTheFinishedFloor(Datum standsOn, string bottom, string center)
    {
        FloorBuildup floor = FloorBuildup.Of(new FloorLayer("oak", Distance.FromInches(0, 3, 4)));
        BoxHeight set = new GaugeStick(Distance.FromInches(13), Edge.Bottom, standsOn).Sets().From(Datum.FinishedFloor, floor);
        Assert.Equal(BoxHeight.ToBottom(Distance.Parse(bottom), Datum.FinishedFloor), set);
        Assert.Equal(BoxHeight.ToCenter(Distance.Parse(center), Datum.FinishedFloor), set.AtEdge(Edge.Center, Box));
    }

    // A second crew's hammer of 13-5/8 in on the plate: 1-1/2 + 13-5/8 + 3-5/8 = 18-3/4 in to the top.
    [Fact]
    public void Sets_HammerOnThePlate_IsThatMuchHigherToTheTop() =>
        Assert.Equal(
            BoxHeight.ToTop(Distance.FromInches(18, 3, 4), Datum.Subfloor),
            new GaugeStick(Distance.FromInches(13, 5, 8), Edge.Bottom, Datum.BottomPlate).Sets().AtEdge(Edge.Top, Box).From(Datum.Subfloor, Levels.Default));

    [Fact]
    public void Sets_SameStickOnThePlate_AddsExactlyOneAndAHalf() =>
        Prop.ForAll(Arb.From(Gen.Choose(1, 64 * 100)), Arb.From(Gen.Elements(HeightGen.Edges)), (sixtyFourths, edge) =>
        {
            Distance length = Distance.FromInches(0, sixtyFourths, 64);
            Elevation onSubfloor = new GaugeStick(length, edge, Datum.Subfloor).Sets().Resolve(Levels.Default);
            Elevation onPlate = new GaugeStick(length, edge, Datum.BottomPlate).Sets().Resolve(Levels.Default);
            return onPlate - onSubfloor == Distance.FromInches(1.5m);
        }).Check(Tries.Always(100));

    [Fact]
    public void For_AnyHeight_SetsThatHeight() =>
        Prop.ForAll(Arb.From(HeightGen.HeightsWithEdge), Arb.From(HeightGen.ExactLevels), Arb.From(Gen.Elements(HeightGen.Edges)), (height, levels, touches) =>
        {
            foreach (Datum standsOn in HeightGen.Datums)
            {
                Elevation wanted = height.Resolve(levels);
                bool stands = height.AtEdge(touches, Box).Resolve(levels) > new Level(Distance.Zero, standsOn).Resolve(levels);
                try
                {
                    BoxHeight set = GaugeStick.For(height, touches, Box, standsOn, levels).Sets();
                    if (!stands || set.Datum != standsOn || set.AtEdge(height.Edge!.Value, Box).Resolve(levels) != wanted)
                    {
                        return false;
                    }
                }
                catch (InvalidOperationException)
                {
                    if (stands)
                    {
                        return false;
                    }
                }
            }

            return true;
        }).Check(Tries.Always(100));

    // 48 in to the top above the subfloor, off the bottom plate to the bottom: 48 - 3-5/8 - 1-1/2 = 42-7/8.
    [Fact]
    public void For_BottomOffThePlate_IsShorterByBoxAndPlate() =>
        Assert.Equal(
            new GaugeStick(Distance.FromInches(42, 7, 8), Edge.Bottom, Datum.BottomPlate),
            GaugeStick.For(BoxHeight.ToTop(Distance.FromInches(48), Datum.Subfloor), Edge.Bottom, Box, Datum.BottomPlate, Levels.Default));

    [Fact]
    public void Constructor_NoLengthOrNoSuchEdge_Throws()
    {
        Assert.Equal("length", Assert.Throws<ArgumentException>(() => new GaugeStick(Distance.Zero, Edge.Top, Datum.Subfloor)).ParamName);
        Assert.Equal("touches", Assert.Throws<ArgumentOutOfRangeException>(() => new GaugeStick(Distance.FromInches(1), (Edge)9, Datum.Subfloor)).ParamName);
        Assert.Equal("standsOn", Assert.Throws<ArgumentOutOfRangeException>(() => new GaugeStick(Distance.FromInches(1), Edge.Top, (Datum)99)).ParamName);
    }

    [Fact]
    public void ToString_Stick_SaysWhatItSets()
    {
        GaugeStick stick = new(Distance.FromInches(13), Edge.Bottom, Datum.BottomPlate);
        Assert.Equal("sets 13 in to bottom off the bottom plate", stick.ToString());
        Assert.True(stick == new GaugeStick(Distance.FromInches(13), Edge.Bottom, Datum.BottomPlate));
        Assert.True(stick != new GaugeStick(Distance.FromInches(13), Edge.Bottom, Datum.Subfloor));
        Assert.Equal(stick.GetHashCode(), new GaugeStick(Distance.FromInches(13), Edge.Bottom, Datum.BottomPlate).GetHashCode());
        Assert.False(stick.Equals("13 in"));
    }
}
