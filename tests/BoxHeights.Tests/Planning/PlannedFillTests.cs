using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Planned boxes hold what usually enters them. Counted here after NEC 314.16(B) and its table, from memory: 2.00 in³ for a 14 AWG conductor and 2.25 for a 12, all grounds of up to four as one, a device as two of its largest conductor.</summary>
public sealed class PlannedFillTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    private static decimal FillOf(DeviceBox box)
    {
        decimal largest = box.Cables.Max(AllowanceOf);
        int devices = box.Devices.Count(device => device.IsSwitch || device.IsReceptacle);
        int grounds = box.Cables.Count;
        decimal forGrounds = largest * (1 + (0.25m * System.Math.Max(0, grounds - 4)));
        return box.Cables.Sum(cable => cable.InsulatedConductors * AllowanceOf(cable)) + forGrounds + (2 * largest * devices);

        static decimal AllowanceOf(CableType cable) => cable.ToString().StartsWith("14", System.StringComparison.Ordinal) ? 2.00m : 2.25m;
    }

    [Fact]
    public void Plan_OfAHouse_HasBoxesThatHoldTheirCables()
    {
        RoomPlan plan = new RoughInPlanner(Rules).Plan(RanchHouse.Bare);
        DeviceBox[] wired = [.. plan.Dwelling.PlacedBoxes().Select(placed => placed.Box).Where(box => box.Cables.Count > 0)];
        Assert.True(wired.Length > 70, wired.Length + " boxes are wired");
        Assert.All(wired, box => Assert.True(box.Volume is { } room && room.Picoliters / 16_387_064_000m >= FillOf(box), box.Id + ": " + FillOf(box) + " in " + box.Volume));
    }

    // Among boxes as wide, one that holds more is never smaller; two switches in one box, with a feed and two lights, take 22 in³.
    [Fact]
    public void Box_GrowsWithWhatItSwitches()
    {
        DeviceBox[] switches = [.. new RoughInPlanner(Rules).Plan(RanchHouse.Bare).Dwelling.PlacedBoxes().Select(placed => placed.Box).Where(box => box.Purpose == BoxPurpose.Switch)];
        foreach (IGrouping<int, DeviceBox> asWide in switches.GroupBy(box => box.Devices.Count))
        {
            DeviceBox[] inOrder = [.. asWide.OrderBy(FillOf)];
            Assert.Equal(inOrder.Select(box => box.Volume), inOrder.Select(box => box.Volume).OrderBy(volume => volume));
        }

        Assert.All(switches.Where(box => box.Devices.Count == 2), box => Assert.True(box.Volume >= Volume.FromCubicInches(22)));
        Assert.True(switches.Max(box => box.Volume) > switches.Min(box => box.Volume));
    }

    // Nobody can say how large a box has to be where no row of the set asks.
    [Fact]
    public void Plan_WithoutARowForFill_LeavesSizesOpen()
    {
        RuleSet without = Rules.Without("box-fill");
        Assert.All(new RoughInPlanner(without).Plan(RanchHouse.Bare).Dwelling.PlacedBoxes(), placed => Assert.Null(placed.Box.Volume));
    }

    [Theory]
    [InlineData("wiring-switch")]
    [InlineData("wiring-three-way")]
    [InlineData("wiring-four-way")]
    [InlineData("wiring-receptacle")]
    [InlineData("wiring-receptacle-20a")]
    [InlineData("wiring-light")]
    [InlineData("wiring-alarm")]
    public void Wiring_ThatIsntInTheSet_IsntPlanned(string row)
    {
        int Wired(RuleSet rules) => new RoughInPlanner(rules).Plan(RanchHouse.Bare).Dwelling.PlacedBoxes().Sum(placed => placed.Box.Cables.Count);
        Assert.True(Wired(Rules.Without(row)) < Wired(Rules));
    }
}
