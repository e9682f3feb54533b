using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Two houses of different kind, planned from bare framing to papers: a ranch in inches, a narrow row house of three storeys in millimeters.</summary>
public sealed class TwoHousesTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly LayoutEvaluator Evaluator = new(Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    private static readonly Dictionary<string, Lazy<RoomPlan>> Plans = new(StringComparer.Ordinal)
    {
        ["ranch"] = new(() => new RoughInPlanner(Rules).Plan(RanchHouse.Bare)),
        ["row"] = new(() => new RoughInPlanner(Rules).Plan(RowHouse.Bare)),
    };

    private static Dwelling Bare(string house) => house == "ranch" ? RanchHouse.Bare : RowHouse.Bare;

    [Theory]
    [InlineData("ranch", 80)]
    [InlineData("row", 75)]
    public void Plan_OfAHouse_LeavesNothingToFind_AndNothingUnplanned(string house, int least)
    {
        RoomPlan plan = Plans[house].Value;
        Assert.DoesNotContain(Evaluator.Evaluate(Bare(house)).Findings, finding => finding.Fault is not null);
        Assert.True(plan.Reasons.Count >= least, plan.Reasons.Count + " boxes");
        Assert.Empty(plan.Obstacles);
        Assert.Empty(Evaluator.Evaluate(plan.Dwelling).Findings);
        Assert.Empty(new RoughInPlanner(Rules).Plan(plan.Dwelling).Reasons);
    }

    // Nothing is to be mended, so that the house that papers are cut from is the planned one.
    [Theory]
    [InlineData("ranch")]
    [InlineData("row")]
    public void Plan_OfAHouse_IsPrintedAsItIs(string house)
    {
        Evaluation evaluation = Evaluator.Evaluate(Plans[house].Value.Dwelling);
        Assert.Equal(evaluation.Dwelling, evaluation.Mend().Dwelling);
        MarkSheet marks = MarkSheet.For(evaluation);
        Assert.Equal(
            Plans[house].Value.Dwelling.PlacedBoxes().Where(placed => placed.Box.At is not null).Select(placed => placed.Box.Id).Order(StringComparer.Ordinal),
            marks.Rows.Select(row => row.BoxId).Order(StringComparer.Ordinal));
        Assert.Empty(marks.LeftOut);
        Assert.All(marks.Rows, row => Assert.Equal("", row.Stop));
        Assert.Equal(Plans[house].Value.Dwelling.PlacedBoxes().Count(placed => placed.Address.EndsWith("/floor", StringComparison.Ordinal)), marks.InFloor.Count);
        Assert.Empty(Evaluator.Evaluate(marks.ToDwelling()).Findings);
        Assert.NotEmpty(OrderList.For(evaluation).ToCsv());
        Assert.NotEmpty(StoryPole.For(evaluation).Rows);
    }

    // Where the planner put a box there is a place for one: whichever is taken away, mending leaves no violation. A switch may be missed for what another may serve, which has to be
    // found out first.
    [Theory]
    [InlineData("ranch")]
    [InlineData("row")]
    public void Box_TakenFromThePlan_IsMadeUpForByMending(string house)
    {
        Dwelling planned = Plans[house].Value.Dwelling;
        int lacking = 0;
        foreach (PlacedBox placed in planned.PlacedBoxes().Where(placed => placed.Box.Purpose != BoxPurpose.Switch))
        {
            Evaluation without = Evaluator.Evaluate(planned.WithoutBox(placed.Box.Id));
            lacking += without.HasViolations ? 1 : 0;
            Assert.True(!without.Mend().Evaluation.HasViolations, placed.Box.Id + ": " + without.ToText());
        }

        Assert.True(lacking > 20, lacking + " boxes were lacking");
    }

    // A quarter into the hall, 1200 mm from its left end and 550 mm from its first wall, the alarm would be 559 mm from the bath's door, which is in that wall from 1300 to 2100 mm; the International
    // Residential Code, R314.3.3, wants 3 ft. It goes where that is kept, as in the plan, and the remedy says where.
    [Fact]
    public void Alarm_TakenFromAHallBesideABath_GoesBackClearOfTheBathsDoor()
    {
        Dwelling planned = Plans["row"].Value.Dwelling;
        PlacedBox alarm = planned.PlacedBoxes().Single(placed => placed.Box.Id == "stair-1-alarm");
        Cause lack = Assert.Single(Evaluator.Evaluate(planned.WithoutBox(alarm.Box.Id)).Causes, cause => cause.RuleId == "bedroom-hall-alarm");
        AddBox added = Assert.IsType<AddBox>(Assert.Single(lack.Remedies));
        Assert.Equal((alarm.Address, alarm.Box.Plan), (Assert.Single(added.Placed).Address, added.Placed[0].Box.Plan));
        Assert.Equal("add alarm box on stair-1/ceiling, 900 mm to the right of the left end of the first wall and 825 mm into the room", added.Text);
        double aside = (Distance.FromMillimeters(1300) - added.Placed[0].Box.Plan!.Value.Right).Inches is var left and > 0 ? (double)left : 0;
        Assert.True(Math.Sqrt((aside * aside) + Math.Pow((double)added.Placed[0].Box.Plan!.Value.Into.Inches, 2)) >= 36);
    }

    // A tape in millimeters has no 1219.2: heights of custom, which are in inches, are planned as it shows them.
    [Fact]
    public void Plan_InMillimeters_HasHeightsThatATapeShows()
    {
        Distance millimeter = Distance.FromMillimeters(1);
        Assert.All(Plans["row"].Value.Dwelling.PlacedBoxes().Where(placed => placed.Box.Height is not null), placed => Assert.Equal(placed.Box.Height!.Value.Value.RoundNearest(millimeter), placed.Box.Height!.Value.Value));
    }

    // A box is nailed to a piece that stands there: its side is on the piece's face to the tick, be it a stud, a king or a corner, and no piece is within it. Worked out from the pieces, and not
    // from the stud that the plan names. A stud's place that a king has taken is no place for a box.
    [Theory]
    [InlineData("ranch")]
    [InlineData("row")]
    public void Plan_NailsEachBoxToWhatStandsThere(string house)
    {
        Evaluation evaluation = Evaluator.Evaluate(Plans[house].Value.Dwelling);
        int nailed = 0;
        foreach (PlacedBox placed in Plans[house].Value.Dwelling.PlacedBoxes().Where(placed => placed.Box.Mounting?.How == MountingMethod.Stud))
        {
            WallView wall = evaluation.Wall(placed.Address);
            BoxSize size = wall.Boxes.Single(box => box.Id == placed.Box.Id).Size;
            (Distance left, Distance right) = (placed.Box.At!.Value - size.HalfWidth, placed.Box.At!.Value + size.HalfWidth);
            StudView[] standing = [.. wall.Studs.Where(stud => stud.Part is FramingPart.Stud or FramingPart.King or FramingPart.Corner && !wall.Studs.Any(other => other.Part is not FramingPart.Stud && stud.Part == FramingPart.Stud && other.Left < stud.Right && stud.Left < other.Right))];
            Assert.True(standing.Any(stud => stud.Right == left || stud.Left == right) || wall.Openings.Any(opening => opening.Area.Left.From < right && left < opening.Area.Right.From), placed.Box.Id + " is at no face");
            Assert.DoesNotContain(standing, stud => stud.Left < right && left < stud.Right);
            nailed++;
        }

        Assert.InRange(nailed, 50, 90);
    }

    // Each light by a set of switches that goes together, each box of switches for something.
    [Theory]
    [InlineData("ranch")]
    [InlineData("row")]
    public void Plan_OfAHouse_IsSwitched(string house)
    {
        DeviceBox[] boxes = [.. Plans[house].Value.Dwelling.PlacedBoxes().Select(placed => placed.Box)];
        foreach (DeviceBox light in boxes.Where(box => box.Devices.Contains(DeviceKind.Luminaire)))
        {
            DeviceBox[] from = [.. boxes.Where(box => box.Controls.Contains(light.Id))];
            int threeWay = from.Count(box => box.Devices.Contains(DeviceKind.ThreeWaySwitch));
            int fourWay = from.Count(box => box.Devices.Contains(DeviceKind.FourWaySwitch));
            Assert.True(from.Length == 1 ? from[0].Devices.Contains(DeviceKind.Switch) : from.Length > 1 && threeWay >= 2 && threeWay + fourWay >= from.Length, light.Id + ": " + string.Join("; ", from.Select(box => box.Devices.ToString())));
        }

        Assert.All(boxes.Where(box => box.Purpose == BoxPurpose.Switch), box => Assert.NotEmpty(box.Controls));
    }

    // The stair is lit from the floor below, from the one above, and from the rooms that open on it.
    [Theory]
    [InlineData("stair-0-light", "stair-1")]
    [InlineData("stair-1-light", "stair-2")]
    public void Plan_OfStairs_SwitchesTheirLightFromTheFloorAboveToo(string light, string above)
    {
        string[] from = [.. Plans["row"].Value.Dwelling.PlacedBoxes().Where(placed => placed.Box.Controls.Contains(light)).Select(placed => SurfaceAddress.Parse(placed.Address).Space)];
        Assert.Contains(above, from);
        Assert.Contains(light.Substring(0, 7), from);
    }

    [Theory]
    [InlineData("ranch", true)]
    [InlineData("ranch", false)]
    [InlineData("row", true)]
    [InlineData("row", false)]
    public void Plan_WithARoomFarAway_IsTheSameHere(string house, bool isFirst)
    {
        Dwelling bare = Bare(house);
        Distance Side(int feet) => Distance.FromFeet(feet);
        Room shed = new Room("shed", RoomKind.Utility, bare.Storeys[0].Id).WithWalls(new[]
        {
            new Wall("north", Side(12)), new Wall("east", Side(9)), new Wall("south", Side(12)).WithOpenings(new[] { new Opening("way", OpeningKind.Cased, Side(4), Side(7)) }), new Wall("west", Side(9)),
        });
        Room[] rooms = isFirst ? [shed, .. bare.Rooms] : [.. bare.Rooms, shed];
        PlacedBox[] here = [.. new RoughInPlanner(Rules).Plan(bare.WithRooms(rooms)).Dwelling.PlacedBoxes().Where(placed => !placed.Address.StartsWith("shed/", StringComparison.Ordinal))];
        Assert.Equal(Plans[house].Value.Dwelling.PlacedBoxes(), here);
    }

    // Box by box: what ties goes to the other side in the mirror.
    [Theory]
    [InlineData("ranch")]
    [InlineData("row")]
    public void Plan_InTheMirror_IsTheMirroredPlan(string house)
    {
        Dwelling here = Plans[house].Value.Dwelling;
        Dwelling there = new RoughInPlanner(Rules).Plan(Mirror.Of(Bare(house))).Dwelling;
        Assert.Equal(PlanMirror.Boxes(here, false), PlanMirror.Boxes(there, true));
        Assert.Equal(PlanMirror.Counts(here), PlanMirror.Counts(there));
        Assert.Equal(PlanMirror.Runs(Evaluator, here), PlanMirror.Runs(Evaluator, there));
        Assert.Empty(Evaluator.Evaluate(there).Findings);
    }
}
