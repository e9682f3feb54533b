using System.Linq;
using System.Xml.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Pictures;

/// <summary>What a picture of a wall shades for a box is where it may really be, however thin.</summary>
public sealed class AllowedBandsTests
{
    // What is shaded for a box is where each placement rule passes it when it is really set there, on a grid over the whole wall.
    [Fact]
    public void AllowedFor_OnAGrid_IsWhereTheBoxPassesWhenSetThere()
    {
        RuleSet rules = RuleSets.Ada2010 + RuleSets.UnitedStatesDwelling(NecEdition.Nec2023);
        OneBox of = new()
        {
            Rules = rules,
            Room = room => room.WithFloor(OneBox.Floor(In("3/4"))),
            Wall = wall => wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, In("40"), In("90")).WithTop(Level.Parse("36 in above finished floor")).WithDepth(In("25")) }),
        };
        OneBox box = of with { Box = of.Box.WithPurpose(BoxPurpose.Counter).WithSize(new BoxSize(In("2-1/4"), In("3-3/4"))).WithHeight(BoxHeight.Parse("44 in to center above subfloor")) };
        Items<BandView> bands = box.Evaluate().AllowedFor(OneBox.Id);
        int inside = 0;
        int outside = 0;
        for (int along = 5; along < 140; along += 9)
        {
            for (int up = 3; up < 92; up += 4)
            {
                (Distance at, Distance center) = (Distance.FromInches(along, 1, 2), Distance.FromInches(up));
                BandView band = Assert.Single(bands, one => one.Left < at && at < one.Right);
                bool passes = (box with { Box = box.Box.WithAt(at).WithHeight(BoxHeight.To(Edge.Center, center, Datum.Subfloor)) }).Evaluate().Checks
                    .Where(check => rules.Row(check.RuleId) is PlacementRule { YieldsWhenForced: false }).All(check => check.Verdict == Verdict.Passes);
                Assert.True(band.Sure.Contains(center) == passes, at + " along, " + center + " up: " + band.Sure + " of " + band.LimitedBy);
                (inside, outside) = passes ? (inside + 1, outside) : (inside, outside + 1);
            }
        }

        Assert.True(inside > 20 && outside > 20);
    }

    // Heights 1/2 in apart are 2 to 3 units high on the page, less than dots are apart; they are dotted all the same, and so is what the legend shows of it.
    [Theory]
    [InlineData("40", "40-1/2")]
    [InlineData("41", "41-1/2")]
    [InlineData("42-1/4", "42-3/4")]
    public void Allowed_OfAThinBand_IsShadedToo(string low, string high)
    {
        OneBox box = new()
        {
            Rules = new RuleSet(new HeightBand("thin", "in a thin band", Severity.Advice, Citation.CommonPractice, Datum.Subfloor) { LowLine = TargetLine.Center, Low = In(low), HighLine = TargetLine.Center, High = In(high) }),
            Wall = wall => wall.WithLength(In("200")),
        };
        string svg = WallElevation.For(box.At(BoxHeight.Parse("40 in to center above subfloor")).Evaluate(), OneBox.WallAddress).ToSvg(PictureOptions.Default.WithAllowedFor(OneBox.Id));
        XElement band = Assert.Single(new SvgReader(svg).All, one => (string?)one.Attribute("class") == "bh-allowed-surely");
        Assert.InRange(SvgReader.Thousandths(band.Attribute("height")!.Value), 1000, 4000);
        Assert.Contains(band.ElementsAfterSelf().Take(1), one => one.Attribute("stroke-dasharray") is not null && one.Attribute("d")!.Value.StartsWith('M'));
    }

    // A switch on a half wall: no firm rule lets it be as high as switches usually are, so that the habit isn't held against it wherever it may be.
    [Fact]
    public void AllowedFor_WhereFirmRulesLeaveNoRoomForAHabit_IsntKeptByIt()
    {
        OneBox of = new()
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "switch-height") + OneBox.Only(RuleSets.RoughInPractice, "in-cavity"),
            Wall = wall => wall.WithNoCavity(new NoCavity(NoCavityKind.Post, In("0"), In("144")).WithBottom(Level.Parse("38 in above subfloor"))),
        };
        OneBox half = of with { Box = of.Box.WithPurpose(BoxPurpose.Switch).WithHeight(BoxHeight.Parse("30 in to center above subfloor")) };
        Items<BandView> bands = half.Evaluate().AllowedFor(OneBox.Id);
        Assert.All(bands, band => Assert.True(band.Sure.Contains(In("30")) && !band.Sure.Contains(In("60")) && band.LimitedBy == new Items<string>(["in-cavity"])));
        Assert.Empty(half.Evaluate().Findings);
        Assert.Contains((half with { Wall = wall => wall }).Evaluate().Findings, finding => finding.RuleId == "switch-height");
    }
}
