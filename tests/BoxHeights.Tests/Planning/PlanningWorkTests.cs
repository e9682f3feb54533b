using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What it takes to plan a house grows with its rooms, not with their square: rules of a caller's own count how often they are asked.</summary>
public sealed class PlanningWorkTests
{
    private static int stated;
    private static int judgedOnWalls;
    private static int judgedRooms;

    private static readonly RuleSet Rules = RuleSets.OfAHouse
        + new RuleSet(new Rule[] { new Statements(), new WallGroups(), new Rooms() });

    [Fact]
    public void Plan_OfTwiceTheRooms_AsksTwiceAsOften()
    {
        (int Stated, int OnWalls, int Rooms) four = Work(4);
        (int Stated, int OnWalls, int Rooms) eight = Work(8);
        (int Stated, int OnWalls, int Rooms) sixteen = Work(16);
        Assert.True(four.Stated > 0 && four.OnWalls > 0 && four.Rooms > 0);

        // Of what grows linearly the second step is exactly twice the first; of what grows with the square it would be four times.
        Assert.InRange(sixteen.Stated - eight.Stated, 1, 2.2 * (eight.Stated - four.Stated));
        Assert.InRange(sixteen.OnWalls - eight.OnWalls, 1, 2.2 * (eight.OnWalls - four.OnWalls));
        Assert.InRange(sixteen.Rooms - eight.Rooms, 1, 2.2 * (eight.Rooms - four.Rooms));
    }

    private static (int Stated, int OnWalls, int Rooms) Work(int rooms)
    {
        stated = judgedOnWalls = judgedRooms = 0;
        RoomPlan plan = new RoughInPlanner(Rules).Plan(House(rooms));
        Assert.True(plan.Reasons.Count >= 5 * rooms);
        return (stated, judgedOnWalls, judgedRooms);
    }

    private static Dwelling House(int rooms) => new Dwelling("house").WithStoreys(new[] { new Storey("first") }).WithRooms(Enumerable.Range(1, rooms).Select(n =>
        new Room("room-" + n, RoomKind.LivingRoom, "first").WithWalls(new[]
        {
            new Wall("north", In(168)), new Wall("east", In(144)), new Wall("west", In(168)).WithOpenings(new[] { new Opening("way", OpeningKind.Cased, In(12), In(44)) }), new Wall("south", In(144)),
        })).ToArray());

    /// <summary>Counts the sites that rules state for.</summary>
    private sealed record Statements() : PlacementRule("count-statements", "anywhere", Severity.Note, Citation.CommonPractice)
    {
        public override string Numbers => "";

        public override void State(PlacementSite site, PlacementStatement statement) => stated++;
    }

    /// <summary>Counts the boxes that are judged together with others of their wall.</summary>
    private sealed record WallGroups() : ProvisionRule("count-walls", "anywhere", Severity.Note, Citation.CommonPractice)
    {
        public override string Numbers => "";

        public override string? GroupOf(BoxTraits box, GroupPlace place) => place.Wall;

        public override void Judge(ProvisionGroup group, ProvisionStatement statement) => judgedOnWalls += group.Count;
    }

    /// <summary>Counts the rooms that are judged.</summary>
    private sealed record Rooms() : SpaceRule("count-rooms", "anything", Severity.Note, Citation.CommonPractice)
    {
        public override string Numbers => "";

        public override SpaceKind Subject => SpaceKind.Room;

        public override void Judge(SpaceView space, SpaceStatement statement) => judgedRooms += space.Boxes.Count + 1;
    }
}
