using System;
using Xunit;

namespace BoxHeights.Tests.Boxes;

public class PartsCatalogTests
{
    private static readonly PartsCatalog Generic = PartsCatalog.Generic;

    // Published plate tables. Standard from 3 to 10 gangs as printed by a reference page after ANSI/NEMA WD 6; it prints 4-1/2 for two
    // gangs, another page 4-9/16, and only the latter agrees with the pitch. Midway and jumbo are worked out from the one-gang size.
    [Theory]
    [InlineData(1, "2-3/4 in", "3-1/8 in", "3-1/2 in")]
    [InlineData(2, "4-9/16 in", "4-15/16 in", "5-5/16 in")]
    [InlineData(3, "6-3/8 in", "6-3/4 in", "7-1/8 in")]
    [InlineData(4, "8-3/16 in", "8-9/16 in", "8-15/16 in")]
    [InlineData(5, "10 in", "10-3/8 in", "10-3/4 in")]
    [InlineData(6, "11-13/16 in", "12-3/16 in", "12-9/16 in")]
    [InlineData(7, "13-5/8 in", "14 in", "14-3/8 in")]
    [InlineData(8, "15-7/16 in", "15-13/16 in", "16-3/16 in")]
    [InlineData(9, "17-1/4 in", "17-5/8 in", "18 in")]
    [InlineData(10, "19-1/16 in", "19-7/16 in", "19-13/16 in")]
    public void TryFindPlate_EachNumberOfGangs_HasThePublishedWidth(int gangs, string standard, string midway, string jumbo)
    {
        Assert.Equal(new PlateSize(Distance.Parse(standard), Distance.Parse("4-1/2 in")), Plate(PlateKind.Standard, gangs));
        Assert.Equal(new PlateSize(Distance.Parse(midway), Distance.Parse("4-7/8 in")), Plate(PlateKind.Midway, gangs));
        Assert.Equal(new PlateSize(Distance.Parse(jumbo), Distance.Parse("5-1/4 in")), Plate(PlateKind.Jumbo, gangs));
    }

    [Theory]
    [InlineData("nail-on", 1, "2-1/4 × 3-3/4 in", "2-1/8 in to 2-3/8 in", "3-1/2 in to 4 in")]
    [InlineData("nail-on", 2, "4 × 3-3/4 in", "3-7/8 in to 4-1/8 in", "3-1/2 in to 4 in")]
    [InlineData("nail-on", 3, "5-3/4 × 3-3/4 in", "5-5/8 in to 5-7/8 in", "3-1/2 in to 4 in")]
    [InlineData("nail-on", 4, "7-1/2 × 3-3/4 in", "7-3/8 in to 7-3/4 in", "3-1/2 in to 4 in")]
    [InlineData("low-voltage-bracket", 1, "2-1/4 × 3-3/4 in", "2-1/8 in to 2-1/4 in", "3-5/8 in to 3-3/4 in")]
    [InlineData("four-square", 1, "4 × 4 in", "4 in", "4 in")]
    [InlineData("four-square", 2, "4 × 4 in", "4 in", "4 in")]
    [InlineData("four-eleven-square", 2, "4-11/16 × 4-11/16 in", "4-11/16 in", "4-11/16 in")]
    [InlineData("octagon", 1, "4 × 4 in", "4 in", "4 in")]
    [InlineData("handy", 1, "2-1/8 × 4 in", "2-1/8 in", "4 in")]
    [InlineData("metal-device", 1, "2 × 3 in", "2 in", "3 in")]
    [InlineData("metal-device", 2, "3-13/16 × 3 in", "3-13/16 in", "3 in")]
    [InlineData("masonry", 1, "2 × 3-3/4 in", "2 in", "3-3/4 in")]
    [InlineData("masonry", 3, "5-5/8 × 3-3/4 in", "5-5/8 in", "3-3/4 in")]
    [InlineData("cast", 1, "2-13/16 × 4-9/16 in", "2-3/4 in to 2-7/8 in", "4-1/2 in to 4-5/8 in")]
    [InlineData("cast", 2, "4-5/8 × 4-9/16 in", "4-9/16 in to 4-11/16 in", "4-1/2 in to 4-5/8 in")]
    public void TryFindBox_KnownBox_HasThisSizeAndRange(string kind, int gangs, string size, string widths, string heights)
    {
        Assert.True(Generic.TryFindBox(new BoxKind(kind), gangs, out BoxPart? part));
        Assert.Equal(size, part.Size.ToString());
        Assert.Equal(widths, part.Size.WidthRange.ToString());
        Assert.Equal(heights, part.Size.HeightRange.ToString());
    }

    // The pitch of 1-13/16 in is published; the nominal widths are what a tape finds. They have to agree within the range.
    [Theory]
    [InlineData(2, "4-1/16 in")]
    [InlineData(3, "5-7/8 in")]
    [InlineData(4, "7-11/16 in")]
    public void TryFindBox_NailOnOfMoreGangs_HoldsTheWidthByPitch(int gangs, string byPitch)
    {
        Assert.True(Generic.TryFindBox(BoxKind.NailOn, gangs, out BoxPart? part));
        Assert.True(part.Size.WidthRange.Contains(Distance.Parse(byPitch)));
    }

    [Fact]
    public void GangPitch_InMillimeters_IsThePublishedModels() => Assert.Equal(Distance.FromMillimeters(46.0375m), PartsCatalog.Generic.GangPitch);

    // Limits of 48, 46, 44 and 15 in for every operable part leave these centers for an upright duplex receptacle.
    [Theory]
    [InlineData(48, "46.69 in")]
    [InlineData(46, "44.69 in")]
    [InlineData(44, "42.69 in")]
    public void TryFindDevice_DuplexUnderALimit_LeavesThisCenter(int limit, string highestCenter)
    {
        OperableParts duplex = Operable(DeviceKind.DuplexReceptacle);
        Assert.Equal(Distance.Parse(highestCenter), Distance.FromInches(limit) - duplex.Above);
        Assert.Equal(Distance.Parse("16.31 in"), Distance.FromInches(15) + duplex.Below);
    }

    // On its side the same limits leave centers of 47.33, 45.33 and 43.33 in.
    [Theory]
    [InlineData(48, "47.33 in")]
    [InlineData(46, "45.33 in")]
    [InlineData(44, "43.33 in")]
    public void OnItsSide_DuplexUnderALimit_LeavesThisCenter(int limit, string highestCenter)
    {
        Assert.True(Generic.TryFindDevice(DeviceKind.DuplexReceptacle, out DevicePart? part));
        Assert.Equal(Distance.Parse(highestCenter), Distance.FromInches(limit) - part.OnItsSide!.Value.Above);
        Assert.True(Generic.TryFindDevice(DeviceKind.RangeReceptacle, out DevicePart? range));
        Assert.Null(range.OnItsSide);
    }

    [Fact]
    public void Union_SwitchBesideReceptacle_ReachesAsFarAsBoth()
    {
        OperableParts toggle = Operable(DeviceKind.ToggleSwitch);
        OperableParts duplex = Operable(DeviceKind.DuplexReceptacle);
        Assert.Equal(new OperableParts(duplex.Below, duplex.Above, toggle.GripHigh), toggle.Union(duplex));
        Assert.Equal(toggle.Union(duplex), duplex.Union(toggle));
        Assert.Equal(Operable(DeviceKind.Switch).GripHigh, toggle.Union(Operable(DeviceKind.Switch)).GripHigh);
    }

    [Fact]
    public void TryFindDevice_SwitchOfUnknownStyle_ReachesAsFarAsAnyStyle()
    {
        OperableParts any = Operable(DeviceKind.Switch);
        OperableParts toggle = Operable(DeviceKind.ToggleSwitch);
        Assert.Equal(Distance.Parse("0.47 in"), toggle.Above);
        Assert.True(any.Above >= toggle.Above && any.Below >= toggle.Below && any.GripHigh >= toggle.GripHigh);
    }

    [Fact]
    public void TryFindDevice_EveryKnownSwitchAndReceptacle_IsThere()
    {
        foreach (DeviceKind kind in DeviceKind.Known.Where(kind => kind.IsSwitch || kind.IsReceptacle))
        {
            Assert.True(Generic.TryFindDevice(kind, out DevicePart? part), kind.Name);
            Assert.Equal(kind.IsSwitch, part.Operable.GripHigh is not null);
        }
    }

    [Fact]
    public void TryFind_NoSuchPart_IsFalse()
    {
        Assert.False(Generic.TryFindBox(BoxKind.NailOn, 5, out BoxPart? box));
        Assert.Null(box);
        Assert.False(Generic.TryFindPlate(PlateKind.Standard, 0, out _));
        Assert.False(Generic.TryFindDevice(DeviceKind.Blank, out _));
        Assert.Empty(Generic.StandardVolumes(new BoxKind("floor-box"), 1));
    }

    [Theory]
    [InlineData("nail-on", 1, "14 in3, 16 in3, 18 in3, 20.3 in3, 22.5 in3")]
    [InlineData("metal-device", 2, "15 in3, 20 in3, 21 in3, 25 in3, 28 in3, 36 in3")]
    public void StandardVolumes_KnownBox_AreTheseInOrder(string kind, int gangs, string volumes) =>
        Assert.Equal(volumes, Generic.StandardVolumes(new BoxKind(kind), gangs).ToString());

    [Fact]
    public void With_RowOfAKnownKey_ReplacesItHereOnly()
    {
        BoxPart mine = new(BoxKind.NailOn, 1, new BoxSize(Distance.FromInches(2, 3, 8), Distance.FromInches(3, 7, 8)), null, Citation.CommonPractice);
        PartsCatalog changed = Generic.With(mine);
        Assert.True(changed.TryFindBox(BoxKind.NailOn, 1, out BoxPart? found));
        Assert.Same(mine, found);
        Assert.Equal(Generic.Boxes.Count, changed.Boxes.Count);
        Assert.True(Generic.TryFindBox(BoxKind.NailOn, 1, out BoxPart? before));
        Assert.NotEqual(mine, before);
    }

    [Fact]
    public void With_RowOfANewKey_AddsIt()
    {
        DeviceKind own = new("nurse-call");
        PartsCatalog changed = Generic
            .With(new DevicePart(own, default, Citation.CommonPractice))
            .With(new PlatePart(new PlateKind("screwless"), 1, new PlateSize(Distance.FromInches(3), Distance.FromInches(5)), Citation.CommonPractice))
            .With(new VolumesPart(new BoxKind("floor-box"), 1, new[] { Volume.FromCubicInches(30) }, Citation.CommonPractice));
        Assert.True(changed.TryFindDevice(own, out _));
        Assert.True(changed.TryFindPlate(new PlateKind("screwless"), 1, out _));
        Assert.Single(changed.StandardVolumes(new BoxKind("floor-box"), 1));
        Assert.Equal(Generic.Devices.Count + 1, changed.Devices.Count);
        Assert.Equal(Generic.Plates.Count + 1, changed.Plates.Count);
        Assert.Equal(Generic.Volumes.Count + 1, changed.Volumes.Count);
    }

    [Fact]
    public void Rows_Unstated_Throw()
    {
        BoxSize size = new(Distance.FromInches(2), Distance.FromInches(3));
        Citation from = Citation.CommonPractice;
        Assert.Throws<ArgumentException>(() => new BoxPart(default, 1, size, null, from));
        Assert.Throws<ArgumentException>(() => new BoxPart(BoxKind.Handy, 1, default, null, from));
        Assert.Throws<ArgumentException>(() => new BoxPart(BoxKind.Handy, 1, size, Volume.Zero, from));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BoxPart(BoxKind.Handy, 0, size, null, from));
        Assert.Throws<ArgumentNullException>(() => new BoxPart(BoxKind.Handy, 1, size, null, null!));
        Assert.Throws<ArgumentException>(() => new PlatePart(PlateKind.Jumbo, 1, default, from));
        Assert.Throws<ArgumentException>(() => new DevicePart(default, default, from));
        Assert.Throws<ArgumentException>(() => new VolumesPart(BoxKind.Handy, 1, default, from));
        Assert.Throws<ArgumentException>(() => new VolumesPart(BoxKind.Handy, 1, new[] { Volume.FromCubicInches(2), Volume.FromCubicInches(2) }, from));
        Assert.Throws<ArgumentNullException>(() => Generic.With((BoxPart)null!));
    }

    [Fact]
    public void OperableParts_HighestBelowLowest_Throws()
    {
        Distance inch = Distance.FromInches(1);
        Assert.Equal("above", Assert.Throws<ArgumentException>(() => new OperableParts(inch, -inch - inch)).ParamName);
        Assert.Equal(new OperableParts(inch, -inch), new OperableParts(inch, -inch));
        Assert.Equal("1 in below to 2 in above the center", new OperableParts(inch, inch * 2).ToString());
        Assert.NotEqual(new OperableParts(inch, inch), new OperableParts(inch, inch, inch));
    }

    private static PlateSize Plate(PlateKind kind, int gangs)
    {
        Assert.True(Generic.TryFindPlate(kind, gangs, out PlatePart? part));
        return part.Size;
    }

    private static OperableParts Operable(DeviceKind kind)
    {
        Assert.True(Generic.TryFindDevice(kind, out DevicePart? part));
        return part.Operable;
    }
}
