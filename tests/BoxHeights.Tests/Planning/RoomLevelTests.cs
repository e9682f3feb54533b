using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Where all new boxes of a room hang at one height that isn't the usual one, somebody wants them so: what is planned there is level with them.</summary>
public sealed class RoomLevelTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    private const string Usual = "16 in to top above subfloor";

    // Above what is usual, and below it; two boxes or three.
    [Theory]
    [InlineData("24 in to top above subfloor", 2)]
    [InlineData("8 in to center above subfloor", 2)]
    [InlineData("30 in to center above subfloor", 3)]
    public void Plan_OfARoomWhereAllHangOtherwise_IsLevelWithThem(string height, int count)
    {
        RoomPlan plan = Plan(Rules, Room("bed", height, count), Room("guest", "", 0));
        Assert.Equal([height], Heights(plan, "bed"));
        Assert.Equal([Usual], Heights(plan, "guest"));
        Assert.True(plan.Reasons.Count(box => box.Address.StartsWith("bed/", StringComparison.Ordinal) && box.RuleId == "wall-outlets") > 1);
        Assert.All(plan.Reasons, box => Assert.Equal(box.Address.StartsWith("bed/", StringComparison.Ordinal) && box.RuleId == "wall-outlets", box.Reason.Contains(", level with what is described there", StringComparison.Ordinal)));
        Assert.Contains("first: its general boxes aren't all level, since bed has its own level as described", plan.Notes);
        Assert.Empty(plan.Obstacles);

        // Nothing is found of what was added that wasn't found of what was there: where such boxes usually are.
        Assert.All(new LayoutEvaluator(Rules).Evaluate(plan.Dwelling).Causes, cause => Assert.Equal("general-height", cause.RuleId));
    }

    // Where several rooms have the same level and none another, that is the storey's.
    [Fact]
    public void Plan_OfAStoreyWhereAllHangOtherwise_IsLevelWithThem()
    {
        const string High = "24 in to top above subfloor";
        RoomPlan plan = Plan(Rules, Room("bed", High, 2), Room("office", High, 2), Room("guest", "", 0));
        Assert.Equal([High], Heights(plan, "bed"));
        Assert.Equal([High], Heights(plan, "office"));
        Assert.Equal([High], Heights(plan, "guest"));
        Assert.All(plan.Reasons.Where(box => box.Address.StartsWith("guest/", StringComparison.Ordinal) && box.RuleId == "wall-outlets").ToArray(), box =>
            Assert.Contains(", level with what is described in its storey", box.Reason, StringComparison.Ordinal));
        Assert.Empty(plan.Obstacles);
        Assert.DoesNotContain(plan.Notes, note => note.Contains("level", StringComparison.Ordinal));
    }

    // 18 in is usual too, but the rest of the storey hangs lower: the room keeps its level, and those without boxes have the storey's.
    [Fact]
    public void Plan_OfARoomOffItsStoreysLevel_KeepsTheRooms()
    {
        RoomPlan plan = Plan(Rules, Room("bed", "18 in to center above subfloor", 2), Room("office", Usual, 3), Room("guest", "", 0));
        Assert.Equal(["18 in to center above subfloor"], Heights(plan, "bed"));
        Assert.Equal([Usual], Heights(plan, "office"));
        Assert.Equal([Usual], Heights(plan, "guest"));
        Assert.Empty(plan.Obstacles);
    }

    // One may be for a thing that isn't described; two that differ say nothing; a height that a document forbids is no wish.
    [Theory]
    [InlineData("24 in to top above subfloor", 1, "24 in to top above subfloor")]
    [InlineData("24 in to top above subfloor", 2, "26 in to top above subfloor")]
    public void Plan_BesideBoxesThatSayNoLevel_IsUsual(string height, int count, string last)
    {
        Dwelling house = House(Room("bed", height, count)).WithBoxes(box => box.Id == "bed1" ? box.WithHeight(BoxHeight.Parse(last)) : box);
        RoomPlan plan = new RoughInPlanner(Rules).Plan(house);
        Assert.DoesNotContain(plan.Reasons, box => box.Reason.Contains("level with", StringComparison.Ordinal));
        Assert.All(Added(plan, "bed"), box => Assert.InRange(box.Height!.Value.Value, CaseFile.Inches("15-7/8"), CaseFile.Inches("19-7/8")));
    }

    [Fact]
    public void Plan_BesideBoxesThatADocumentForbids_IsWhereItAllowsThem()
    {
        RoomPlan plan = Plan(Rules + RuleSets.Ada2010, Room("bed", "8 in to center above subfloor", 2));
        Assert.DoesNotContain(plan.Reasons, box => box.Reason.Contains("level with", StringComparison.Ordinal));
        Assert.DoesNotContain(new LayoutEvaluator(RuleSets.Ada2010).Evaluate(plan.Dwelling).Findings, finding => Added(plan, "bed").Any(box => box.Id == finding.Subject));
    }

    private static RoomPlan Plan(RuleSet rules, params Room[] rooms) => new RoughInPlanner(rules).Plan(House(rooms));

    private static DeviceBox[] Added(RoomPlan plan, string room) => plan.Dwelling.PlacedBoxes()
        .Where(placed => placed.Address.StartsWith(room + "/", StringComparison.Ordinal) && placed.Box.Purpose == BoxPurpose.General && plan.Reasons.Any(reason => reason.Id == placed.Box.Id)).Select(placed => placed.Box).ToArray();

    private static string[] Heights(RoomPlan plan, string room) => Added(plan, room).Select(box => box.Height!.Value.ToString()).Distinct().ToArray();

    private static Dwelling House(params Room[] rooms) => new Dwelling("case").WithStoreys(new[] { new Storey("first") }).WithRooms(rooms);

    private static Room Room(string id, string height, int count) => new Room(id, RoomKind.Bedroom, "first").WithWalls(new[]
    {
        new Wall("north", Distance.FromFeet(14)).WithBoxes(Enumerable.Range(0, count).Select(n => new DeviceBox(id + n, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
            .WithAt(CaseFile.Inches("30") + (CaseFile.Inches("40") * n)).WithHeight(BoxHeight.Parse(height))).ToArray()),
        new Wall("east", Distance.FromFeet(12)).WithOpenings(new[] { new Opening("window", OpeningKind.Window, Distance.FromFeet(4), Distance.FromFeet(8)).WithSill(Level.Parse("36 in above subfloor")) }),
        new Wall("south", Distance.FromFeet(14)).WithOpenings(new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("12"), CaseFile.Inches("44")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into) }),
        new Wall("west", Distance.FromFeet(12)),
    });
}
