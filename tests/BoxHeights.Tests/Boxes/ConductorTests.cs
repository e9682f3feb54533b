using System;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Boxes;

public class ConductorTests
{
    // NEC Table 314.16(B) (2017, 2020), Table 314.16(B)(1) (2023): cubic inches for each conductor.
    [Theory]
    [InlineData(18, "1.50")]
    [InlineData(16, "1.75")]
    [InlineData(14, "2.00")]
    [InlineData(12, "2.25")]
    [InlineData(10, "2.50")]
    [InlineData(8, "3.00")]
    [InlineData(6, "5.00")]
    public void Allowance_OfEachGauge_IsThePublishedOne(int awg, string cubicInches)
    {
        ConductorSize size = ConductorSize.FromAwg(awg);
        Assert.Equal(Volume.FromCubicInches(decimal.Parse(cubicInches, CultureInfo.InvariantCulture)), RuleSets.FillCounting(NecEdition.Nec2023).AllowanceOf(size));
        Assert.Equal(awg, size.Awg);
        Assert.Equal(awg + " AWG", size.ToString());
    }

    [Fact]
    public void CompareTo_SmallerGaugeNumber_IsThicker()
    {
        ConductorSize[] thinToThick =
        [
            default, ConductorSize.Awg18, ConductorSize.Awg16, ConductorSize.Awg14, ConductorSize.Awg12, ConductorSize.Awg10, ConductorSize.Awg8, ConductorSize.Awg6,
        ];
        Assert.Equal(thinToThick, Enumerable.Reverse(thinToThick).OrderBy(size => size));
        Assert.True(ConductorSize.Awg12 > ConductorSize.Awg14);
        Assert.True(ConductorSize.Awg14 < ConductorSize.Awg12);
        Assert.True(ConductorSize.FromAwg(12) >= ConductorSize.Awg12 && ConductorSize.FromAwg(12) <= ConductorSize.Awg12);
        Assert.True(ConductorSize.Awg12 != ConductorSize.Awg10);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-14)]
    [InlineData(4)]
    [InlineData(13)]
    [InlineData(270)] // 14 + 256
    public void FromAwg_AnotherGauge_Throws(int awg) => Assert.Throws<ArgumentOutOfRangeException>(() => ConductorSize.FromAwg(awg));

    [Fact]
    public void Default_IsNotStatedAndTakesNoRoom()
    {
        Assert.Equal("not stated", default(ConductorSize).ToString());
        Assert.Equal(Volume.Zero, RuleSets.FillCounting(NecEdition.Nec2023).AllowanceOf(default));
        Assert.Equal("not stated", default(CableType).ToString());
        Assert.Equal(0, default(CableType).InsulatedConductors);
        Assert.False(default(CableType).HasGround);
    }

    [Theory]
    [InlineData("14-2", 14, 2, true, "14-2")]
    [InlineData("12-3", 12, 3, true, "12-3")]
    [InlineData("14-2-2", 14, 4, true, "14-2-2")]
    [InlineData(" 12/2 ", 12, 2, true, "12-2")]
    [InlineData("10-3 without ground", 10, 3, false, "10-3 without ground")]
    [InlineData("6-3 WITHOUT GROUND", 6, 3, false, "6-3 without ground")]
    public void Parse_Cable_ReadsSizeConductorsAndGround(string text, int awg, int insulated, bool ground, string printed)
    {
        CableType cable = CableType.Parse(text);
        Assert.Equal(awg, cable.Size.Awg);
        Assert.Equal(insulated, cable.InsulatedConductors);
        Assert.Equal(ground, cable.HasGround);
        Assert.Equal(printed, cable.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("14")]
    [InlineData("14-")]
    [InlineData("14-1")]
    [InlineData("14-10")]
    [InlineData("14-2-0")]
    [InlineData("14-2-2-2")]
    [InlineData("13-2")]
    [InlineData("-14-2")]
    [InlineData("14--2")]
    [InlineData("14 - 2")]
    [InlineData("+14-2")]
    [InlineData("١٤-٢")]
    [InlineData("14-99999999999999999999")]
    [InlineData("14-2 ground")]
    [InlineData(" without ground")]
    public void TryParse_NoCable_IsFalse(string? text)
    {
        Assert.False(CableType.TryParse(text, out CableType cable));
        Assert.Equal(default, cable);
    }

    [Fact]
    public void Parse_NoCable_SaysWhatToWrite()
    {
        Assert.Contains("14-2", Assert.Throws<FormatException>(() => CableType.Parse("romex")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => CableType.Parse(null!));
    }

    [Fact]
    public void Constructor_OutOfRange_Throws()
    {
        Assert.Throws<ArgumentException>(() => new CableType(default, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CableType(ConductorSize.Awg14, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CableType(ConductorSize.Awg14, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CableType(ConductorSize.Awg14, 2, 1));
    }

    [Fact]
    public void Parse_OfToString_IsTheSameCable()
    {
        Gen<CableType> cables =
            from awg in Gen.Elements(18, 16, 14, 12, 10, 8, 6)
            from first in Gen.Choose(2, 9)
            from second in Gen.Elements(0, 2, 3, 9)
            from ground in Gen.Elements(true, false)
            select new CableType(ConductorSize.FromAwg(awg), first, second, ground);
        Prop.ForAll(Arb.From(cables), cable => CableType.Parse(cable.ToString()) == cable).Check(Tries.Always(100));
    }

    [Theory]
    [InlineData("14-2 NM-B", "14-2")]
    [InlineData("12/3 nm", "12-3")]
    [InlineData("12-2 UF-B", "12-2")]
    [InlineData("14-2-2 NM-B without ground", "14-2-2 without ground")]
    public void Parse_WithItsSheath_IsTheSameCable(string text, string cable) => Assert.Equal(CableType.Parse(cable), CableType.Parse(text));

    [Fact]
    public void Equality_OfCables_CountsGroupsAndGround()
    {
        Assert.True(CableType.Parse("14-2-2") != CableType.Parse("14-4"));
        Assert.True(CableType.Parse("14-2") != CableType.Parse("14-2 without ground"));
        Assert.False(CableType.Parse("14-2").Equals("14-2"));
        Assert.Equal(CableType.Parse("14/2").GetHashCode(), CableType.Parse("14-2").GetHashCode());
    }
}
