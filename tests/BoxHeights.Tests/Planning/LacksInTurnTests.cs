using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>What can't be given doesn't keep what comes after it from being given.</summary>
public class LacksInTurnTests
{
    private static readonly Citation House = new("House rules", "1");

    /// <summary>Each room has a box of a purpose.</summary>
    private sealed record HasOne(string Name, BoxPurpose Purpose, int At) : SpaceRule(Name, "there", Severity.Violation, House)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "one";

        public override bool LooksAtOwnBoxesOnly => true;

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (!space.Boxes.Any(box => box.Traits.Purpose == Purpose))
            {
                string address = space.Id + "/" + space.Room!.Walls[0].Id;
                statement.Finds(space.Id, address, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => $"none", MissingFacts.None,
                    new[] { new PlacedBox(address, new DeviceBox(Name, Purpose).WithAt(Distance.FromInches(At, 0, 1)).WithHeight(BoxHeight.ToCenter(Distance.FromInches(48, 0, 1), Datum.Subfloor))) });
            }
        }
    }

    /// <summary>No box of a purpose may be anywhere.</summary>
    private sealed record Nowhere(BoxPurpose Purpose) : PlacementRule("nowhere", "nowhere", Severity.Violation, House)
    {
        public override string Numbers => "none";

        public override void State(PlacementSite site, PlacementStatement statement) =>
            statement.Everywhere(site.Box.Purpose == Purpose ? AllowedHeights.Nothing : AllowedHeights.Anything);
    }

    [Fact]
    public void Plan_OfALackThatNoPlaceMends_GivesTheNext()
    {
        DwellingBuilder house = new("two lacks");
        house.Add(new Storey("first"));
        house.Room("hall", RoomKind.Hall, "first").Wall("north", Distance.FromInches(144, 0, 1));
        RuleSet rules = new([new HasOne("a-thermostat", BoxPurpose.Thermostat, 30), new HasOne("b-chime", BoxPurpose.DoorbellChime, 100), new Nowhere(BoxPurpose.Thermostat)]);
        RoomPlan plan = new RoughInPlanner(rules).Plan(house.Build(), "hall");
        Assert.Equal([BoxPurpose.DoorbellChime], plan.Dwelling.PlacedBoxes().Select(placed => placed.Box.Purpose));
        Assert.StartsWith("1 box planned", plan.ToString(), System.StringComparison.Ordinal);
    }
}
