using System;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Boxes;

public sealed class LooseConductorsTests
{
    [Theory]
    [InlineData("3 x 12 AWG", 3, 12, ConductorUse.Ordinary, "3 x 12 AWG")]
    [InlineData(" 1 X 14 awg loop ", 1, 14, ConductorUse.Loop, "1 x 14 AWG loop")]
    [InlineData("100 x 6 AWG Ground", 100, 6, ConductorUse.Ground, "100 x 6 AWG ground")]
    [InlineData("2 x 12 AWG isolated ground", 2, 12, ConductorUse.IsolatedGround, "2 x 12 AWG isolated ground")]
    public void Parse_Conductors_ReadsCountSizeAndUse(string text, int count, int awg, ConductorUse use, string printed)
    {
        LooseConductors conductors = LooseConductors.Parse(text);
        Assert.Equal((count, awg, use), (conductors.Count, conductors.Size.Awg, conductors.Use));
        Assert.Equal(use is ConductorUse.Ground or ConductorUse.IsolatedGround, conductors.IsGround);
        Assert.Equal(printed, conductors.ToString());
        Assert.True(conductors == new LooseConductors(count, ConductorSize.FromAwg(awg), use));
        Assert.True(conductors != new LooseConductors(count == 1 ? 2 : 1, ConductorSize.FromAwg(awg), use));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("12 AWG")]
    [InlineData("x 12 AWG")]
    [InlineData("3 12 AWG")]
    [InlineData("3 x 12")]
    [InlineData("0 x 12 AWG")]
    [InlineData("-1 x 12 AWG")]
    [InlineData("101 x 12 AWG")]
    [InlineData("3 x 13 AWG")]
    [InlineData("3 x 12 AWG coil")]
    [InlineData("3 x 12 AWG ground loop")]
    [InlineData("3  x 12 AWG")]
    [InlineData("99999999999999999999 x 12 AWG")]
    public void TryParse_NoConductors_IsFalse(string? text)
    {
        Assert.False(LooseConductors.TryParse(text, out LooseConductors conductors));
        Assert.Equal(default, conductors);
        if (text is not null)
        {
            Assert.Contains("3 x 12 AWG", Assert.Throws<FormatException>(() => LooseConductors.Parse(text)).Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("14 AWG", 14)]
    [InlineData(" 6 awg ", 6)]
    [InlineData("14", null)]
    [InlineData("4 AWG", null)]
    [InlineData("AWG 14", null)]
    [InlineData("14 AWG loop", null)]
    [InlineData("", null)]
    public void TryParse_ConductorSize_ReadsGaugeAndUnit(string text, int? awg)
    {
        Assert.Equal(awg is not null, ConductorSize.TryParse(text, out ConductorSize size));
        Assert.Equal(awg ?? 0, size.Awg);
        if (awg is null)
        {
            Assert.Throws<FormatException>(() => ConductorSize.Parse(text));
        }
    }

    [Fact]
    public void Constructor_OutOfRange_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LooseConductors(0, ConductorSize.Awg12));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LooseConductors(101, ConductorSize.Awg12));
        Assert.Throws<ArgumentException>(() => new LooseConductors(1, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LooseConductors(1, ConductorSize.Awg12, (ConductorUse)4));
        Assert.Equal("not stated", default(LooseConductors).ToString());
    }

    [Fact]
    public void Parse_OfToString_IsTheSame()
    {
        Gen<LooseConductors> all =
            from count in Gen.Choose(1, 100)
            from awg in Gen.Elements(18, 16, 14, 12, 10, 8, 6)
            from use in Gen.Elements(Enum.GetValues<ConductorUse>())
            select new LooseConductors(count, ConductorSize.FromAwg(awg), use);
        Prop.ForAll(Arb.From(all), one => LooseConductors.Parse(one.ToString()) == one).Check(Tries.Always(100));
    }
}
