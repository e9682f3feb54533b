using Xunit;
using static BoxHeights.Tests.Rules.RequiredOutletSketch;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.27(C): boxes that may come to hold a ceiling fan.</summary>
public sealed class FanReadyTests
{
    // From 2020 every ceiling box in a place fit for a fan; which places are isn't said, and a description that marks none says nothing of them.
    [Fact]
    public void FanBox_IsAskedOfALoneLightOnlyWhereBoxesAreMarked()
    {
        DeviceBox light = SquareRoom.Box("luminaire", "light", null, In("0")).WithHeight(null).WithPlan(new PlanPoint(In("60"), In("60")));
        SquareRoom bedroom = new() { Kind = RoomKind.Bedroom, Overhead = [light] };
        Room marked = new SquareRoom { Kind = RoomKind.Bedroom, Overhead = [light.WithId("fan").WithFanRated(true)] }.Build().WithId("marked");
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", bedroom.House()).IsClean);
        Assert.Equal(OneBox.Id, Assert.Single(Evaluate(NecEdition.Nec2023, "fan-box", bedroom.House(marked)).Findings).Subject);
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", (bedroom with { Overhead = [light.WithKind(BoxKind.FanRated)] }).House(marked)).IsClean, "it is made for a fan");
        Assert.True(Evaluate(NecEdition.Nec2023, "fan-box", (bedroom with { Overhead = [light, light.WithId("second")] }).House(marked)).IsClean);
        Assert.DoesNotContain(RuleSets.UnitedStatesOutlets(NecEdition.Nec2017).Rows, rule => rule.Id == "fan-box");
    }
}
