using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A caller's own rule says about itself what the library's rules do, and is treated like one of them.</summary>
public sealed class OwnRuleTests
{
    private static readonly Citation House = new("House rules");

    /// <summary>Boxes stand in the left half of the wall, or are held by blocking where they are.</summary>
    private sealed record LeftHalf() : PlacementRule("left-half", "in the left half", Severity.Advice, House)
    {
        public override string Numbers => "the left half";

        public override string? Covers { get; init; } = "sink zones";

        public override HeldInstead HeldInstead => HeldInstead.Blocking;

        public override Wording? AskedOf(PlacementSite site) => $"the wall being {new PrintedQuantity(site.Wall!.Length, site.Units, Rounding.None):length}";

        public override Wording? Assumes(PlacementSite site, DistanceRange along) => along.Overlaps(CaseFile.Inches("100")) ? (Wording)$"the cord assumed short" : null;

        public override void State(PlacementSite site, PlacementStatement statement) => statement.Within(CaseFile.Inches("72"), Distance.MaxValue, AllowedHeights.Nothing);
    }

    /// <summary>A room wants a box with a thermostat in the right half of a wall, and offers one place for it.</summary>
    private sealed record Sensor() : SpaceRule("sensor", "with a sensor", Severity.Violation, House)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "one";

        public override bool LooksAtOwnBoxesOnly => true;

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Boxes.Any(box => box.Traits.Devices.Contains(DeviceKind.Thermostat)))
            {
                statement.Meets(space.Id, space.Id);
                return;
            }

            DeviceBox box = new DeviceBox("sensor", BoxPurpose.Thermostat).WithDevices(new[] { DeviceKind.Thermostat }).WithAt(CaseFile.Inches("72")).WithHeight(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.Subfloor));
            statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => $"no sensor", Facts.None, new[] { new PlacedBox("room/wall", box) });
        }

        public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => lacking == "room" && box.Along > offered && box.Traits.Devices.Contains(DeviceKind.Thermostat);
    }

    [Fact]
    public void Covers_LeavesTheListOfWhatIsntLookedAt()
    {
        Assert.Contains("sink zones", (new OneBox { Rules = RuleSets.RoughInPractice }).Evaluate().NotChecked);
        Assert.DoesNotContain("sink zones", (new OneBox { Rules = RuleSets.RoughInPractice + new RuleSet([new LeftHalf()]) }).Evaluate().NotChecked);
    }

    [Fact]
    public void HeldInstead_OffersBlockingWhereTheRuleAllowsIt()
    {
        OneBox box = new() { Rules = new([new LeftHalf()]), Wall = wall => wall.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithKnown(StudKnowledge.Declared)) };
        box = box with { Box = box.Box.WithAt(CaseFile.Inches("100")).WithMounting(new Mounting(MountingMethod.Stud)).WithHeight(BoxHeight.ToCenter(CaseFile.Inches("16"), Datum.Subfloor)) };
        Cause cause = Assert.Single(box.Evaluate().Causes);
        Assert.IsType<MoveBoxes>(cause.Remedies[0]);
        Assert.Contains("must be in the left half, the wall being 144 in", cause.Title);
        Assert.Contains("(the cord assumed short)", cause.Title);
    }

    // The place that is offered is taken: the planner goes on to the next one that the rule says serves as well.
    [Fact]
    public void ServesFrom_GivesThePlannerOtherPlaces()
    {
        OneBox box = new OneBox { Rules = new RuleSet([new Sensor()]) + RuleSets.RoughInPractice }.At(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.Subfloor));
        RoomPlan plan = new RoughInPlanner(box.Rules).Plan(box.Build());
        PlacedBox placed = Assert.Single(plan.Dwelling.PlacedBoxes(), one => one.Box.Devices.Contains(DeviceKind.Thermostat));
        Assert.True(placed.Box.At > OneBox.Middle, placed.Box.At.ToString());
    }
}
