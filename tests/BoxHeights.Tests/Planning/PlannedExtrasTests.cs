using System;
using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Boxes that practice ties to a thing: where the thing is missing the plan says so, and what was planned for one thing counts for the next.</summary>
public sealed class PlannedExtrasTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    private static Fixture Thing(string id, FixtureKind kind, decimal left, decimal right) => new Fixture(id, kind).WithWall("north").WithLeft(In(left)).WithRight(In(right)).WithDepth(In(80));

    private static RoomPlan Plan(Fixture[] fixtures, params BoxPurpose[] extras) => new RoughInPlanner(Rules, RoughInOptions.Default.WithExtras(extras))
        .Plan(new SquareRoom { Kind = RoomKind.Bedroom, Wide = In(220), Deep = In(140), Fixtures = fixtures }.House(), SquareRoom.Id);

    [Fact]
    public void Television_WithoutAPlaceForOne_IsNoted_WithWhatIsNeeded()
    {
        RoomPlan plan = Plan([Thing("bed", FixtureKind.Bed, 60, 120)], BoxPurpose.Bedside, BoxPurpose.Television);
        string note = Assert.Single(plan.Notes);
        Assert.Equal("no television box is planned: square describes no television with its wall and its left and right end", note);
        Assert.Equal(2, plan.Reasons.Count(one => one.Id.Contains("bedside", StringComparison.Ordinal)));
        Assert.DoesNotContain(plan.Obstacles, obstacle => obstacle.Contains("television", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(null, 60, 120)]
    [InlineData("north", null, 120)]
    [InlineData("north", 60, null)]
    public void Bed_WhosePlaceIsNotAllStated_IsNoted(string? wall, int? left, int? right)
    {
        Fixture bed = new Fixture("bed", FixtureKind.Bed).WithWall(wall).WithLeft(left is { } from ? In(from) : null).WithRight(right is { } to ? In(to) : null);
        Assert.Contains("square/bed: no bedside box is planned for it, since its wall and its left and right end aren't all stated", Plan([bed], BoxPurpose.Bedside).Notes);
    }

    [Fact]
    public void Extra_ThatNoRowTiesToAThing_IsNoted()
    {
        RoomPlan plan = Plan([], BoxPurpose.Thermostat);
        Assert.Equal("no thermostat box is planned: no rule of the set says what such a box is set beside or behind", Assert.Single(plan.Notes));
    }

    [Fact]
    public void Extras_ThatAreAllPlanned_AreNotNoted() =>
        Assert.Empty(Plan([Thing("bed", FixtureKind.Bed, 60, 120), Thing("screen", FixtureKind.Television, 150, 200)], BoxPurpose.Bedside, BoxPurpose.Television).Notes);

    // Boxes go 10 in off each bed: the one at 70 in is 10 in off the second bed too, which counts it: 3 boxes, not 4.
    [Fact]
    public void Bedside_BetweenTwoBeds_ServesBoth()
    {
        RoomPlan plan = Plan([Thing("one", FixtureKind.Bed, 21, 60), Thing("two", FixtureKind.Bed, 80, 119)], BoxPurpose.Bedside);
        Distance[] at = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.Bedside).Select(placed => placed.Box.At!.Value).Order()];
        Assert.Equal(3, at.Length);
        Assert.InRange(at[1], In(62), In(78));
    }

    // In the corner a bed has one side to set a box at. Whoever asked for bedside boxes is told of the other; the room lacks nothing that a document asks for.
    [Fact]
    public void Bed_InACorner_GetsABoxOnOneSide_AndTheOtherIsNoted()
    {
        RoomPlan plan = Plan([Thing("bed", FixtureKind.Bed, 2, 62)], BoxPurpose.Bedside);
        Assert.True(Assert.Single(plan.Dwelling.PlacedBoxes(), placed => placed.Box.Purpose == BoxPurpose.Bedside).Box.At > In(62));
        string note = Assert.Single(plan.Notes);
        Assert.StartsWith("square/north: no place for a bedside box ", note, StringComparison.Ordinal);
        Assert.Contains("(bed)", note, StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Obstacles, obstacle => obstacle.Contains("bedside", StringComparison.Ordinal));
    }

    // A set of its two rows: nothing else has to be in it for its box to be planned.
    [Fact]
    public void Appliance_OfTheLastRow_GetsItsBox()
    {
        RoughInPlanner planner = new(new RuleSet([RuleSets.RoughInPractice.Row("refrigerator-height")!, RuleSets.RoughInPractice.Row("refrigerator-place")!]));
        RoomPlan plan = planner.Plan(new SquareRoom { Kind = RoomKind.Kitchen, Fixtures = [Thing("cold", FixtureKind.Refrigerator, 60, 96)] }.House());
        PlacedBox box = Assert.Single(plan.Dwelling.PlacedBoxes());
        Assert.Equal((SquareRoom.Id + "/north", BoxPurpose.Refrigerator), (box.Address, box.Box.Purpose));
        Assert.InRange(box.Box.At!.Value, In(60), In(96));
    }

    // A window is no fixture: what is tied to it is planned all the same, off its casing of 2-7/16 in by 4 in to 18 in.
    [Fact]
    public void WindowTop_IsTiedToAWindow()
    {
        Opening window = new Opening("window", OpeningKind.Window, In(80), In(120)).WithSill(Level.Parse("36 in above subfloor")).WithHead(Level.Parse("80 in above subfloor")).WithCasing(In(2.25m)).WithReveal(In(0.1875m));
        RoomPlan plan = new RoughInPlanner(Rules, RoughInOptions.Default.WithExtras(new[] { BoxPurpose.WindowTop }))
            .Plan(new SquareRoom { Kind = RoomKind.Bedroom, Wide = In(200), NorthOpenings = [window] }.House());
        Distance[] at = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Box.Purpose == BoxPurpose.WindowTop).Select(placed => placed.Box.At!.Value).Order()];
        Assert.Equal(2, at.Length);
        Assert.InRange(In(80) - at[0], In(6), In(21));
        Assert.InRange(at[1] - In(120), In(6), In(21));
    }

    // Within 2 ft of either side of a bed, of one side of a desk or a dresser; behind none of them. Common practice, no source.
    [Theory]
    [InlineData("bed", "beside-bed", 2)]
    [InlineData("sofa", "beside-furniture", 1)]
    [InlineData("desk", "beside-furniture", 1)]
    [InlineData("dresser", "beside-furniture", 1)]
    [InlineData("crib", "beside-furniture", 1)]
    public void Furniture_HasReceptaclesBesideIt_AndNotBehind(string kind, string row, int sides)
    {
        RuleSet rules = Rules + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023);
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, Wide = In(220), Deep = In(140), Fixtures = [Thing("thing", new FixtureKind(kind), 80, 150)] }.House();
        RoomPlan plan = new RoughInPlanner(rules).Plan(house, SquareRoom.Id);
        Distance[] north = [.. plan.Dwelling.PlacedBoxes().Where(placed => placed.Address == SquareRoom.Id + "/north" && placed.Box.Purpose == BoxPurpose.General).Select(placed => placed.Box.At!.Value)];
        Assert.DoesNotContain(north, at => at > In(80) && at < In(150));
        Assert.True(north.Count(at => at >= In(80 - 24) && at <= In(150 + 24)) >= sides, string.Join(", ", north));
        Assert.Contains(plan.Reasons, one => one.RuleId == row);
        Assert.DoesNotContain(new LayoutEvaluator(rules).Evaluate(plan.Dwelling).Findings, finding => finding.Fault is not null);
    }

    // Behind a sofa there is glass from the floor to 90 in: over that nobody wants a receptacle, and none is asked for. Under a sill of 50 in there is room for it.
    [Theory]
    [InlineData("0", 0)]
    [InlineData("50", 1)]
    public void Extra_WhereWhatIsThereLeavesItNoUsualHeight_IsNotedAndNotPlanned(string sill, int boxes)
    {
        Room room = new SquareRoom { Kind = RoomKind.LivingRoom, Fixtures = [SquareRoom.Against("sofa", FixtureKind.Sofa, "north", Distance.FromInches(40), Distance.FromInches(120), Distance.FromInches(36))] }.Build();
        Opening glass = new Opening("glass", OpeningKind.Window, Distance.FromInches(20), Distance.FromInches(138)).WithSill(Level.Parse(sill + " in above subfloor")).WithHead(Level.Parse("90 in above subfloor"));
        room = room.WithWalls(room.Walls.Select(wall => wall.Id == "north" ? wall.WithOpenings(glass) : wall));
        RoomPlan plan = new RoughInPlanner(RuleSets.OfAHouse, RoughInOptions.Default.WithExtras(BoxPurpose.Sofa)).Plan(new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room }));
        Assert.Equal(boxes, plan.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Sofa));
        Assert.Equal(boxes == 0, plan.Notes.Any(note => note.Contains("no place for a sofa box", StringComparison.Ordinal)));
    }
}
