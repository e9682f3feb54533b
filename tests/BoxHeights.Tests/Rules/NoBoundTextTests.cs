using System;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What stands for "no bound" in arithmetic never reaches a person: nothing on a wall is light-hours long.</summary>
public sealed class NoBoundTextTests
{
    private const string Largest = "11529215046";

    [Fact]
    public void Describe_OfEverySet_PrintsNoBoundAsWords()
    {
        RuleSet[] all =
        [
            RuleSets.OfAHouse, RuleSets.Ada2010, RuleSets.TypeA2009,
            RuleSets.TypeB2009, RuleSets.FairHousing, RuleSets.California, RuleSets.CanadaDwelling, RuleSets.CanadaBarrierFree, RuleSets.OntarioBarrierFree,
        ];
        Assert.All(all, set => Assert.DoesNotContain(Largest, set.Describe(), StringComparison.Ordinal));
        Assert.Contains("center at most 1700 mm above finished floor", RuleSets.CanadaDwelling.Describe(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_OfACheckWithoutBound_SaysSo()
    {
        // A counter 30 in deep is out of every reach from the side: over it no height is allowed, under it the lowest part is 15 in or more up.
        OneBox box = new()
        {
            Rules = OneBox.Only(RuleSets.Ada2010, "ada-reach"),
            Wall = wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, In(144)).WithTop(new Level(In(14), Datum.FinishedFloor)).WithDepth(In(30)).WithKneeSpace(Distance.Zero) }),
        };
        Check check = box.At(BoxHeight.ToCenter(In(42), Datum.FinishedFloor)).Check()!.Value;
        Assert.Equal(OneBox.Id + ": ada-reach: not met, and no height here would", check.ToString());
        Assert.Equal("without a bound", check.Margin.ToString());

        Check met = (box with { Rules = OneBox.Only(RuleSets.Ada2010, "counter-edge"), Wall = wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Desk, Distance.Zero, In(20)) }) }).At(BoxHeight.ToCenter(In(42), Datum.FinishedFloor)).Check()!.Value;
        Assert.Equal(OneBox.Id + ": counter-edge: met everywhere", met.ToString());
        Assert.Equal("without a bound", met.Margin.ToString(LengthUnits.Millimeters));
    }

    [Fact]
    public void ToString_OfMeasuresWithoutBound_IsInWords()
    {
        Assert.Equal("at most 48 in", new DistanceRange(Distance.MinValue, In(48)).ToString());
        Assert.Equal("at least 15 in", new DistanceRange(In(15), Distance.MaxValue).ToString());
        Assert.Equal("anything", new DistanceRange(Distance.MinValue, Distance.MaxValue).ToString());
        Assert.Equal("15 in to 48 in", new DistanceRange(In(15), In(48)).ToString());
        Assert.Equal("at most 10 in or at least 20 in", (DistanceSet.AtMost(In(10)) | DistanceSet.AtLeast(In(20))).ToString());
    }
}
