using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>
/// Receptacles that a reach document lets off because others nearby are within reach: 2010 ADA 205.1 exception 3 (one of two or more over a length of kitchen counter
/// that no sink or appliance interrupts), Fair Housing Guidelines, requirement 5 (a comparable outlet in the same area).
/// </summary>
public sealed class ReliefTests
{
    private static DeviceBox Receptacle(string id, int at, string center, string purpose = "counter") =>
        new DeviceBox(id, new BoxPurpose(purpose)).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches(at + ""))
            .WithApproach(Approach.Side).WithHeight(BoxHeight.Parse(center + " in to center above finished floor"));

    /// <summary>A wall 144 in long with a counter 34 in high and 24 in deep along it, cut in two by a sink from 60 in to 90 in.</summary>
    private static Dwelling Kitchen(CounterKind kind, params DeviceBox[] boxes)
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("main"));
        WallBuilder wall = house.Room("kitchen", RoomKind.Kitchen, "main").Wall("north", CaseFile.Inches("144"));
        wall.Add(new Counter("counter", kind, Distance.Zero, CaseFile.Inches("144")).WithTop(Level.Parse("34 in above finished floor")).WithDepth(CaseFile.Inches("24"))
            .WithKneeSpace(Distance.Zero).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, CaseFile.Inches("60"), CaseFile.Inches("90")) }));
        foreach (DeviceBox box in boxes)
        {
            wall.Add(box);
        }

        return house.Build();
    }

    private static string Missed(RuleSet rules, Dwelling house) => string.Join(" ", new LayoutEvaluator(rules).Evaluate(house).Findings.Select(finding => finding.Subject));

    // Over 24 in of depth the highest part may be 46 in up: a center at 46 in is 1.31 in too high, at 44 in within reach.
    [Theory]
    [InlineData("46", "44", "44", "")]
    [InlineData("46", "46", "44", "a b")]
    [InlineData("46", "44", "46", "")]
    public void OneOfSeveralOverALength_IsLetOff(string a, string b, string c, string missed) =>
        Assert.Equal(missed, Missed(RuleSets.Ada2010, Kitchen(CounterKind.Kitchen, Receptacle("a", 10, a), Receptacle("b", 30, b), Receptacle("c", 50, c == "46" ? "44" : c), Receptacle("d", 120, "44"))));

    [Fact]
    public void OneBeyondTheSink_IsOverAnotherLength() =>
        Assert.Equal("a", Missed(RuleSets.Ada2010, Kitchen(CounterKind.Kitchen, Receptacle("a", 10, "46"), Receptacle("b", 100, "44"), Receptacle("c", 120, "44"))));

    [Fact]
    public void OnlyOneOverALength_IsNotLetOff() =>
        Assert.Equal("a", Missed(RuleSets.Ada2010, Kitchen(CounterKind.Kitchen, Receptacle("a", 10, "46"))));

    [Fact]
    public void OtherCounters_HaveNoSuchRelief() =>
        Assert.Equal("a", Missed(RuleSets.Ada2010, Kitchen(CounterKind.Bath, Receptacle("a", 10, "46"), Receptacle("b", 30, "44"))));

    [Fact]
    public void Switch_IsNeverLetOff()
    {
        DeviceBox high = Receptacle("a", 10, "47", "switch").WithDevices(new[] { DeviceKind.Switch });
        Assert.Equal("a", Missed(RuleSets.Ada2010, Kitchen(CounterKind.Kitchen, high, Receptacle("b", 30, "44"))));
        Assert.Equal("a", Missed(RuleSets.FairHousing, Kitchen(CounterKind.Kitchen, high, Receptacle("b", 30, "44"))));
    }

    // Low under a window, with one of its kind within reach beside it.
    [Theory]
    [InlineData("16-1/2", "general", "")]
    [InlineData("16", "general", "low other")]
    [InlineData("16-1/2", "television", "low")]
    public void ComparableOne_InTheRoom_LetsOff(string other, string purpose, string missed)
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("main"));
        house.Room("living", RoomKind.LivingRoom, "main").Wall("north", CaseFile.Inches("144")).Add(Receptacle("low", 60, "8", "general")).Add(Receptacle("other", 100, other, purpose));
        Assert.Equal(missed, Missed(RuleSets.FairHousing, house.Build()));
    }

    [Fact]
    public void Move_OfOneThatLetsAnotherOff_IsSeen()
    {
        LayoutSession session = new LayoutEvaluator(RuleSets.Ada2010).Open(Kitchen(CounterKind.Kitchen, Receptacle("a", 10, "46"), Receptacle("b", 30, "44")));
        Assert.Empty(session.Findings);
        SessionChange up = session.Move("b", CaseFile.Inches("30"), BoxHeight.Parse("46 in to center above finished floor"));
        Assert.Equal("a b", string.Join(" ", up.Appeared.Select(finding => finding.Subject).Order()));
        SessionChange down = session.Move("a", CaseFile.Inches("10"), BoxHeight.Parse("44 in to center above finished floor"));
        Assert.Equal("a b", string.Join(" ", down.Cleared.Select(finding => finding.Subject).Order()));
        Assert.Empty(new LayoutEvaluator(RuleSets.Ada2010).Evaluate(session.ToDwelling()).Findings);
    }
}
