using System;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Boxes;

public class BoxSizeTests
{
    private static readonly Distance Wide = Distance.FromInches(2, 1, 4);
    private static readonly Distance High = Distance.FromInches(3, 3, 4);

    [Theory]
    [InlineData(0L)]
    [InlineData(-2L)]
    [InlineData(7_620_001L)] // 3-3/4 in and one tick: its center would lie between two ticks.
    public void Constructor_SizeWithoutExactHalf_ThrowsNamingTheArgument(long ticks)
    {
        Distance bad = Distance.FromTicks(ticks);
        Assert.Equal("height", Assert.Throws<ArgumentException>(() => new BoxSize(Wide, bad)).ParamName);
        Assert.Equal("width", Assert.Throws<ArgumentException>(() => new BoxSize(bad, High)).ParamName);
        Assert.Equal("height", Assert.Throws<ArgumentException>(() => new PlateSize(Wide, bad)).ParamName);
        Assert.Equal("width", Assert.Throws<ArgumentException>(() => new PlateSize(bad, High)).ParamName);
    }

    [Theory]
    [InlineData(0L)]
    [InlineData(-1L)]
    public void Constructor_DepthNotAboveZero_Throws(long ticks) =>
        Assert.Equal("depth", Assert.Throws<ArgumentException>(() => new BoxSize(Wide, High, Distance.FromTicks(ticks))).ParamName);

    [Fact]
    public void HalfHeight_AnySixtyFourth_IsExactlyHalf()
    {
        Gen<int> sixtyFourths = Gen.Choose(1, 64 * 40);
        Prop.ForAll(Arb.From(sixtyFourths), n =>
        {
            Distance size = Distance.FromInches(0, n, 64);
            BoxSize box = new(size, size);
            PlateSize plate = new(size, size);
            return box.HalfHeight + box.HalfHeight == size && box.HalfWidth * 2 == size
                && plate.HalfHeight * 2 == size && plate.HalfWidth * 2 == size;
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void HeightRange_NotRanging_IsTheNominalHeight()
    {
        BoxSize box = new(Wide, High);
        Assert.True(box.IsExact);
        Assert.Equal((DistanceRange)High, box.HeightRange);
        Assert.Equal((DistanceRange)Wide, box.WidthRange);
    }

    [Fact]
    public void Ranging_RangesThatHoldTheNominal_KeepsNominalAndDepth()
    {
        Distance depth = Distance.FromInches(2, 3, 4);
        DistanceRange heights = new(Distance.FromInches(3, 1, 2), Distance.FromInches(4, 0, 1));
        BoxSize box = new BoxSize(Wide, High, depth).Ranging(Wide, heights);
        Assert.False(box.IsExact);
        Assert.Equal(High, box.Height);
        Assert.Equal(heights, box.HeightRange);
        Assert.Equal(depth, box.Depth);
        Assert.NotEqual(new BoxSize(Wide, High, depth), box);
    }

    [Fact]
    public void Ranging_RangeThatMissesTheNominal_Throws()
    {
        DistanceRange tooHigh = new(Distance.FromInches(3, 7, 8), Distance.FromInches(4, 0, 1));
        Assert.Equal("height", Assert.Throws<ArgumentException>(() => new BoxSize(Wide, High).Ranging(Wide, tooHigh)).ParamName);
        Assert.Equal("width", Assert.Throws<ArgumentException>(() => new BoxSize(Wide, High).Ranging(tooHigh, High)).ParamName);
    }

    [Fact]
    public void Ranging_EndThatIsNoSize_Throws() =>
        Assert.Throws<ArgumentException>(() => new BoxSize(Wide, High).Ranging(Wide, new DistanceRange(Distance.Zero, High)));

    [Fact]
    public void Default_HasNoSize()
    {
        Assert.False(default(BoxSize).IsStated);
        Assert.False(default(PlateSize).IsStated);
        Assert.Equal("not stated", default(BoxSize).ToString());
        Assert.Equal("not stated", default(PlateSize).ToString());
        Assert.True(new BoxSize(Wide, High).IsStated);
    }

    [Fact]
    public void ToString_InchesAndMillimeters_NamesTheUnitOnce()
    {
        Assert.Equal("2-1/4 × 3-3/4 in", new BoxSize(Wide, High).ToString());
        Assert.Equal("2-1/4 × 3-3/4 in, 2-3/4 in deep", new BoxSize(Wide, High, Distance.FromInches(2, 3, 4)).ToString());
        Assert.Equal("86 × 86 mm", new PlateSize(Distance.FromMillimeters(86), Distance.FromMillimeters(86)).ToString());
        Assert.Equal("2-1/4 in × 86 mm", new PlateSize(Wide, Distance.FromMillimeters(86)).ToString());
    }

    [Fact]
    public void Equality_OfSizes_CountsEveryMember()
    {
        Assert.True(new BoxSize(Wide, High) == new BoxSize(Wide, High));
        Assert.Equal(new BoxSize(Wide, High).GetHashCode(), new BoxSize(Wide, High).GetHashCode());
        Assert.True(new BoxSize(Wide, High) != new BoxSize(High, Wide));
        Assert.True(new BoxSize(Wide, High) != new BoxSize(Wide, High, High));
        Assert.True(new PlateSize(Wide, High) == new PlateSize(Wide, High));
        Assert.True(new PlateSize(Wide, High) != new PlateSize(High, Wide));
        Assert.False(new BoxSize(Wide, High).Equals("box"));
    }
}
