using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Planned boxes say what holds them. The ranch's studs are 1-1/2 in wide and 16 in apart, the first face at 15-1/4 in: where their faces are is added up here, stud after stud.</summary>
public sealed class PlannedMountingTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly PlacedBox[] OnWalls = [.. new RoughInPlanner(Rules).Plan(RanchHouse.Bare).Dwelling.PlacedBoxes().Where(placed => placed.Box.At is not null && !SurfaceAddress.Parse(placed.Address).IsPartOf("front") && !SurfaceAddress.Parse(placed.Address).IsPartOf("back"))];

    private static decimal Inches(Distance distance) => distance.Ticks / 2_032_000m;

    [Fact]
    public void Plan_WhereStudsAreDeclared_NailsEveryBoxToAFaceOfItsStud()
    {
        Assert.All(OnWalls, placed => Assert.NotNull(placed.Box.Mounting));
        PlacedBox[] numbered = [.. OnWalls.Where(placed => placed.Box.Mounting!.Stud is not null)];
        Assert.True(numbered.Length > 30, "most boxes are nailed to studs of the layout");
        foreach (PlacedBox placed in numbered)
        {
            decimal face = 15.25m + (16 * (placed.Box.Mounting!.Stud!.Value - 1)) + (placed.Box.Mounting.Side == StudSide.Right ? 1.5m : 0);
            decimal off = placed.Box.Mounting.Side == StudSide.Right ? Inches(placed.Box.At!.Value) - face : face - Inches(placed.Box.At!.Value);

            // 2-1/4 in wide with one gang, 4 in and a bit with two; a round box is 4 in.
            Assert.True(off == (placed.Box.Kind == BoxKind.Octagon ? 2m : 1.125m) || (placed.Box.Devices.Count == 2 && off > 1.9m && off < 2.1m) || (placed.Box.Devices.Contains(DeviceKind.RangeReceptacle) || placed.Box.Devices.Contains(DeviceKind.DryerReceptacle)), placed + ": " + off);
        }
    }

    // In a house whose walls are closed boxes are cut in: each is held by the board, between studs and 1/2 in or more off them, and a switch is still near its latch.
    [Fact]
    public void Plan_WithACatalogOfCutInBoxes_KeepsThemOffStuds()
    {
        RoughInOptions oldWork = RoughInOptions.Default.WithEvaluation(EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.WithUsualBox(BoxKind.CutIn)));
        RoomPlan plan = new RoughInPlanner(Rules, oldWork).Plan(RanchHouse.Bare, "bed-1");
        PlacedBox[] cutIn = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.At is not null)];
        Assert.True(cutIn.Length > 4);
        foreach (PlacedBox placed in cutIn)
        {
            Assert.Null(placed.Box.Mounting);
            decimal center = Inches(placed.Box.At!.Value) % 16;
            decimal half = placed.Box.Devices.Count == 2 ? 2m : 1.125m;
            Assert.InRange(center, 0.75m + 0.5m + half, 16m - 0.75m - 0.5m - half);
        }

        Assert.DoesNotContain(plan.Reasons, one => one.Reason.Contains("nailed", StringComparison.Ordinal));
        Assert.Empty(plan.Obstacles);
        Assert.Empty(new LayoutEvaluator(Rules, oldWork.Evaluation).Evaluate(plan.Dwelling).Findings.Where(finding => cutIn.Any(placed => placed.Box.Id == finding.Subject)));
    }

    // A catalog that has a box for one switch alone: the bath's two switches don't go together there, and the plan goes on with one.
    [Fact]
    public void Plan_WithoutABoxForTwoSwitches_GoesOnWithOne()
    {
        RoughInOptions handy = RoughInOptions.Default.WithEvaluation(EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.WithUsualBox(BoxKind.Handy)));
        PlacedBox[] Switches(RoughInOptions options) => [.. new RoughInPlanner(Rules, options).Plan(RanchHouse.Bare, "bath").Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Switch)];
        Assert.Equal(2, Assert.Single(Switches(RoughInOptions.Default)).Box.Devices.Count);
        Assert.Single(Assert.Single(Switches(handy)).Box.Devices);
    }

    // Who has listed one stud of a wall has said that studs hold its boxes.
    [Fact]
    public void Plan_WhereOneStudIsListed_SaysWhatHoldsTheBox()
    {
        Room laundry = new Tests.Rules.SquareRoom { Kind = RoomKind.Laundry }.Build();
        laundry = laundry.WithWalls(laundry.Walls.Select(wall => wall.WithStuds(new StudLayout().WithFaces(new[] { Distance.FromInches(20) }).WithKnown(StudKnowledge.Measured))));
        RoomPlan plan = new RoughInPlanner(Rules).Plan(new Dwelling("case").WithStoreys(new[] { Tests.Rules.SquareRoom.Storey }).WithRooms(new[] { laundry }));
        Assert.NotNull(Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Laundry).Box.Mounting);
    }

    [Fact]
    public void Plan_WhereStudsAreDeclared_PutsABoxBetweenThemOnBlockingAlone()
    {
        foreach (PlacedBox placed in OnWalls.Where(placed => placed.Box.Mounting!.How == MountingMethod.Blocking))
        {
            decimal at = Inches(placed.Box.At!.Value);
            Assert.DoesNotContain(Enumerable.Range(0, 20), stud => at + 1.125m > 15.25m + (16 * stud) && at - 1.125m < 16.75m + (16 * stud));
        }

        Assert.True(OnWalls.Count(placed => placed.Box.Mounting!.How == MountingMethod.Blocking) * 10 < OnWalls.Length, "hardly any box needs a block of its own");
    }
}
