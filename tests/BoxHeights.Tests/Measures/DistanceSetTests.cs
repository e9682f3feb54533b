using System;
using Xunit;

namespace BoxHeights.Tests.Measures;

public class DistanceSetTests
{
    private static readonly DistanceSet Reach = DistanceSet.Between(In(15), In(48));
    private static readonly DistanceSet Six =
        Piece(0) | Piece(10) | Piece(20) | Piece(30) | Piece(40) | Piece(50);

    [Fact]
    public void Default_IsEmpty()
    {
        Assert.Equal(DistanceSet.Empty, default);
        Assert.True(default(DistanceSet).IsEmpty);
        Assert.Equal(0, DistanceSet.Empty.Count);
        Assert.Throws<ArgumentOutOfRangeException>("index", () => DistanceSet.Empty[0]);
    }

    [Fact]
    public void Between_LowAboveHigh() => Assert.Equal(DistanceSet.Empty, DistanceSet.Between(In(48), In(15)));

    [Fact]
    public void Outside_TouchingIsAllowed()
    {
        DistanceSet outside = DistanceSet.Outside(In(15), In(48));
        Assert.True(outside.Contains(In(15)) && outside.Contains(In(48)));
        Assert.False(outside.Contains(In(15) + Distance.FromTicks(1)) || outside.Contains(In(48) - Distance.FromTicks(1)));
        Assert.Equal(DistanceSet.All, DistanceSet.Outside(In(15), In(15)));
        Assert.Equal(DistanceSet.All, DistanceSet.Outside(In(15), In(15) + Distance.FromTicks(1)));
    }

    [Fact]
    public void Union_OfNeighborsByATick_IsOneStretch()
    {
        DistanceSet joined = DistanceSet.Between(In(1), In(2)) | DistanceSet.Between(In(2) + Distance.FromTicks(1), In(3));
        Assert.Equal(DistanceSet.Between(In(1), In(3)), joined);
        Assert.Equal(2, (DistanceSet.Between(In(1), In(2)) | DistanceSet.Between(In(2) + Distance.FromTicks(2), In(3))).Count);
    }

    [Fact]
    public void Complement_IsExactToTheTick()
    {
        DistanceSet outside = Reach.Complement();
        Assert.Equal(In(15) - Distance.FromTicks(1), outside[0].To);
        Assert.Equal(In(48) + Distance.FromTicks(1), outside[1].From);
        Assert.Equal((DistanceSet.All, DistanceSet.Empty), (DistanceSet.Empty.Complement(), DistanceSet.All.Complement()));
    }

    [Fact]
    public void Margin_InsideOnTheEndAndOutside()
    {
        Assert.Equal(In(3), Reach.Margin(In(45)));
        Assert.Equal(In(1), Reach.Margin(In(16)));
        Assert.Equal(Distance.Zero, Reach.Margin(In(48)));
        Assert.Equal(-In(2), Reach.Margin(In(50)));
        Assert.Equal(-In(2), (Reach | DistanceSet.AtLeast(In(60))).Margin(In(58)));
    }

    [Fact]
    public void Margin_WithoutBounds()
    {
        Assert.Equal(Distance.MaxValue, DistanceSet.All.Margin(Distance.Zero));
        Assert.Equal(Distance.MinValue, DistanceSet.Empty.Margin(Distance.Zero));
        Assert.Equal(In(5), DistanceSet.AtMost(In(48)).Margin(In(43)));
        Assert.Equal(Distance.MaxValue, DistanceSet.AtLeast(-In(1)).Margin(Distance.MaxValue));
        Assert.Equal(-Distance.MaxValue, DistanceSet.Single(Distance.MaxValue - In(1)).Margin(Distance.MinValue));
    }

    [Fact]
    public void TryNearest_OfTwoEquallyNear_IsTheLower()
    {
        DistanceSet set = DistanceSet.Single(In(10)) | DistanceSet.Single(In(20));
        Assert.True(set.TryNearest(In(15), out Distance nearest));
        Assert.Equal(In(10), nearest);
        Assert.False(DistanceSet.Empty.TryNearest(In(15), out nearest));
        Assert.Equal(Distance.Zero, nearest);
    }

    [Fact]
    public void TryNearestSnapped_StaysInside()
    {
        Distance eighth = Distance.FromInches(0, 1, 8);
        DistanceSet set = DistanceSet.Between(In(15) + Distance.FromTicks(1), In(48) - Distance.FromTicks(1));
        Assert.True(set.TryNearestSnapped(In(50), eighth, out Distance nearest));
        Assert.Equal(In(48) - eighth, nearest);
        Assert.False(DistanceSet.Single(Distance.FromTicks(5)).TryNearestSnapped(In(1), eighth, out _));
        Assert.Throws<ArgumentOutOfRangeException>("step", () => Reach.TryNearestSnapped(In(1), Distance.Zero, out _));
    }

    [Fact]
    public void TryNearestSnapped_AtTheEndsOfTheScale()
    {
        Assert.True(DistanceSet.All.TryNearestSnapped(Distance.MaxValue, In(1), out Distance high));
        Assert.True(DistanceSet.All.TryNearestSnapped(Distance.MinValue, In(1), out Distance low));
        Assert.Equal((Distance.MaxValue.RoundDown(In(1)), Distance.MinValue.RoundUp(In(1))), (high, low));
    }

    [Fact]
    public void ShrinkAndShift_LeaveMissingBounds()
    {
        Assert.Equal(DistanceSet.All, DistanceSet.All.Shrink(In(1)));
        Assert.Equal(DistanceSet.AtMost(In(47)), DistanceSet.AtMost(In(48)).Shrink(In(1)));
        Assert.Equal(DistanceSet.AtLeast(In(16)), DistanceSet.AtLeast(In(15)).Shift(In(1)));
        Assert.Equal(DistanceSet.AtLeast(In(17)), DistanceSet.AtLeast(In(15)).ErodeShift(new DistanceRange(In(1), In(2))));
        Assert.Equal(DistanceSet.Empty, Reach.Shrink(In(17)));
        Assert.Equal(DistanceSet.Single(Distance.FromInches(31.5m)), Reach.Shrink(Distance.FromInches(16.5m)));
        Assert.Throws<ArgumentOutOfRangeException>("margin", () => Reach.Shrink(Distance.FromTicks(-1)));
    }

    [Fact]
    public void Shift_BeyondTheScale() => Assert.Throws<OverflowException>(() => Reach.Shift(Distance.MaxValue));

    [Fact]
    public void ErodeAndDilateShift_ForAFloorNotYetKnown()
    {
        // 48 in and 15 in above a finished floor that lies 0 to 1-1/4 in above the subfloor.
        DistanceRange floor = new(Distance.Zero, Distance.FromInches(1.25m));
        Assert.Equal(DistanceSet.Between(Distance.FromInches(16.25m), In(48)), Reach.ErodeShift(floor));
        Assert.Equal(DistanceSet.Between(In(15), Distance.FromInches(49.25m)), Reach.DilateShift(floor));
    }

    [Fact]
    public void SixStretches_GoBeyondTheInlineOnes()
    {
        Assert.Equal(6, Six.Count);
        Assert.Equal(new DistanceRange(In(50), In(51)), Six[5]);
        Assert.Equal(7, Six.Complement().Count);
        Assert.Equal(Six, Six.Complement().Complement());
        Assert.Equal(Six.GetHashCode(), (Piece(50) | Piece(40) | Piece(30) | Piece(20) | Piece(10) | Piece(0)).GetHashCode());
        Assert.NotEqual(Six, Six.Shift(Distance.FromTicks(1)));
        Assert.Equal(2, (Six & DistanceSet.AtLeast(In(35))).Count);
    }

    [Fact]
    public void ToString_InWords()
    {
        Assert.Equal("15 in to 48 in", Reach.ToString());
        Assert.Equal("at most 48 in", DistanceSet.AtMost(In(48)).ToString());
        Assert.Equal("at least 50 in", DistanceSet.AtLeast(In(50)).ToString());
        Assert.Equal("anything", DistanceSet.All.ToString());
        Assert.Equal("nothing", DistanceSet.Empty.ToString());
        Assert.Equal("at most 15 in or 40 in or at least 48 in", (DistanceSet.Outside(In(15), In(48)) | DistanceSet.Single(In(40))).ToString());
        Assert.Equal("1 ft 3 in to 4 ft", Reach.ToString("ft", null));
    }

#if !NETSTANDARD_ASSET
    [Fact]
    public void Algebra_UpToTwoStretches_AllocatesNothing()
    {
        DistanceSet two = DistanceSet.Outside(In(15), In(48));
        DistanceRange floor = new(Distance.Zero, In(1));
        long before = 0;
        bool all = true;
        for (int round = 0; round < 200; round++)
        {
            // The first rounds let the code be compiled.
            before = round == 100 ? GC.GetAllocatedBytesForCurrentThread() : before;
            DistanceSet set = ((two & DistanceSet.AtLeast(In(50))) | Reach | DistanceSet.Between(In(20), In(30))).Complement().Complement() & DistanceSet.Between(In(20), In(30));
            set = set.Shift(In(1)).Shrink(Distance.Zero).ErodeShift(floor).DilateShift(floor);
            all &= set == DistanceSet.Between(In(22), In(32)) && set.Margin(In(3)) == -In(19)
                && set.TryNearestSnapped(In(40), In(5), out Distance nearest) && nearest == In(30);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(all);
    }
#endif

    private static DistanceSet Piece(int inches) => DistanceSet.Between(In(inches), In(inches + 1));
}
