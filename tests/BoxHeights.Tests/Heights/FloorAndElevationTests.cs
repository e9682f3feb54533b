using System;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Heights;

public class FloorAndElevationTests
{
    private static readonly FloorLayer Tile = new("tile", Distance.FromInches(0, 3, 8));
    private static readonly FloorLayer Bed = new("mortar and backer", new DistanceRange(Distance.FromInches(0, 3, 8), Distance.FromInches(0, 1, 2)));

    [Fact]
    public void Thickness_OfLayers_IsTheirSum()
    {
        Assert.Equal(new DistanceRange(Distance.FromInches(0, 3, 4), Distance.FromInches(0, 7, 8)), FloorBuildup.Of(Bed, Tile).Thickness);
        Assert.Equal((DistanceRange)Distance.Zero, FloorBuildup.Of().Thickness);
    }

    [Fact]
    public void NotChosen_IsAnythingUpToAnInchAndAQuarter() =>
        Assert.Equal(new DistanceRange(Distance.Zero, Distance.FromInches(1, 1, 4)), FloorBuildup.NotChosen.Thickness);

    [Fact]
    public void FloorLayer_WithoutMaterialOrBelowZero_Throws()
    {
        Assert.Equal("material", Assert.Throws<ArgumentException>(() => new FloorLayer(" ", Distance.Zero)).ParamName);
        Assert.Equal("material", Assert.Throws<ArgumentException>(() => Tile.WithMaterial(null!)).ParamName);
        Assert.Equal("thickness", Assert.Throws<ArgumentException>(() => new FloorLayer("tile", Distance.FromTicks(-1))).ParamName);
        Assert.Throws<ArgumentException>(() => Tile with { Thickness = new DistanceRange(Distance.FromTicks(-1), Distance.Zero) });
    }

    [Fact]
    public void Records_WithAndText_AreByValue()
    {
        Assert.Equal(Tile, Bed.WithMaterial("tile").WithThickness(Distance.FromInches(0, 3, 8)));
        Assert.Equal(FloorBuildup.Of(Bed, Tile), FloorBuildup.NotChosen.WithLayers(new[] { Bed, Tile }));
        Assert.Equal("mortar and backer, 3/8 in to 1/2 in + tile, 3/8 in", FloorBuildup.Of(Bed, Tile).ToString());
        Assert.Equal("bare subfloor", FloorBuildup.Of().ToString());
    }

    [Fact]
    public void Elevation_DifferenceAndSum_Invert() =>
        Prop.ForAll(Arb.From(HeightGen.Distances), Arb.From(HeightGen.Distances), (a, b) =>
        {
            Elevation low = new(a);
            Elevation high = low + b;
            return high - low == b && high - b == low && high.CompareTo(low) == b.CompareTo(Distance.Zero)
                && (high > low) == (b > Distance.Zero) && (high < low) == (b < Distance.Zero)
                && (high >= low) == !(high < low) && (high <= low) == !(high > low) && (high == low) == (b == Distance.Zero) && (high != low) != (high == low);
        }).Check(Tries.Always(100));

    [Theory]
    [InlineData(-1, true, true, false, false)]
    [InlineData(0, false, true, true, false)]
    [InlineData(1, false, false, true, true)]
    public void Elevation_OneTickUnderAtAndOverAnother_IsInItsOrder(int ticks, bool lower, bool notHigher, bool notLower, bool higher)
    {
        Elevation other = new(Distance.FromInches(48));
        Elevation one = other + Distance.FromTicks(ticks);
        Assert.Equal((lower, notHigher, notLower, higher), (one < other, one <= other, one >= other, one > other));
    }

    [Fact]
    public void Elevation_Default_IsTheStoreysSubfloor()
    {
        Assert.Equal(new Elevation(Distance.Zero), default);
        Assert.Equal("0 in above the storey's subfloor", default(Elevation).ToString());
        Assert.False(default(Elevation).Equals("0 in"));
    }

    [Fact]
    public void Resolve_Level_AddsItsOffset()
    {
        Levels levels = Levels.Default.With(Datum.Countertop, Distance.FromInches(36), Datum.FinishedFloor).With(FloorBuildup.Of(Tile));
        Level splash = Level.Parse("4 in above countertop");
        Assert.Equal(new Elevation(Distance.FromInches(40, 3, 8)), splash.Resolve(levels));
        Assert.True(splash.TryResolve(levels.With(FloorBuildup.Of(Bed)), out DistanceRange range));
        Assert.Equal(new DistanceRange(Distance.FromInches(40, 3, 8), Distance.FromInches(40, 1, 2)), range);
        Assert.False(splash.TryResolve(Levels.Default, out _));
        Assert.Throws<InvalidOperationException>(() => splash.Resolve(Levels.Default));
        Assert.True(splash != new Level(Distance.FromInches(4), Datum.Subfloor));
    }
}
