using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What options state holds for every dwelling; what they don't follows each dwelling's units.</summary>
public sealed class EvaluatorOptionsTests
{
    private static readonly RuleSet Usual = OneBox.Only(RuleSets.RoughInPractice, "switch-height");
    private static readonly RuleSet Walls = OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets");

    // The usual height is 48 in, 1219.2 mm: whole millimeters, or eighths of an inch.
    [Theory]
    [InlineData(LengthUnits.Inches, null, "48 in")]
    [InlineData(LengthUnits.Millimeters, null, "1219 mm")]
    [InlineData(LengthUnits.Millimeters, LengthUnits.Inches, "48 in")]
    [InlineData(LengthUnits.Inches, LengthUnits.Millimeters, "1219 mm")]
    public void Units_FollowTheDwellingUnlessStated(LengthUnits dwelling, LengthUnits? stated, string height)
    {
        LayoutEvaluator evaluator = new(Usual, EvaluatorOptions.Default.WithUnits(stated));
        Dwelling house = House(dwelling);
        Assert.Equal("set sw " + height + " to top above subfloor", RemedyOf(evaluator.Evaluate(house)).Text);
        Assert.Equal("set sw " + height + " to top above subfloor", RemedyOf(evaluator.Open(house).Evaluate()).Text);
        string other = height.EndsWith(" in", StringComparison.Ordinal) ? " mm" : " in ";
        Assert.DoesNotContain(other, evaluator.Open(house).Findings.Single().Message.Split('[')[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_Stated_HoldInEveryUnits()
    {
        LayoutEvaluator evaluator = new(Usual, EvaluatorOptions.Default.WithHeightStep(Distance.FromMillimeters(50m)));
        Assert.Equal("set sw 1200 mm to top above subfloor", RemedyOf(evaluator.Evaluate(House(LengthUnits.Millimeters))).Text);
        Assert.Equal(Distance.FromMillimeters(1200m), Assert.IsType<MoveBoxes>(RemedyOf(evaluator.Evaluate(House(LengthUnits.Inches)))).Height.Value);
    }

    // A bare wall of 3,001 mm on one side of a door: the box to add stands on a whole millimeter of its own wall, or on a quarter of an inch.
    [Theory]
    [InlineData(LengthUnits.Millimeters, null, 80_000)]
    [InlineData(LengthUnits.Inches, null, 508_000)]
    [InlineData(LengthUnits.Inches, 5, 400_000)]
    public void AlongStep_OfBoxesToAdd_IsCountedFromTheirWall(LengthUnits units, int? millimeters, long ticks)
    {
        Room room = new Room("room", RoomKind.Bedroom, "ground").WithWalls(new[]
        {
            new Wall("n", Distance.FromMillimeters(3001m)).WithOpenings(new[] { new Opening("d", OpeningKind.Door, Distance.FromMillimeters(33.3m), Distance.FromMillimeters(933.7m)) }),
            new Wall("e", Distance.FromMillimeters(2801m)), new Wall("s", Distance.FromMillimeters(3001m)), new Wall("w", Distance.FromMillimeters(2801m)),
        });
        Dwelling house = new Dwelling("case").WithUnits(units).WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { room });
        EvaluatorOptions options = EvaluatorOptions.Default.WithAlongStep(millimeters is { } step ? Distance.FromMillimeters(step) : null).WithAllBoxesAreDescribed(true);
        Items<PlacedBox> added = Assert.IsType<AddBox>(RemedyOf(new LayoutEvaluator(Walls, options).Evaluate(house))).Placed;
        Assert.True(added.Count >= 3, added.Count + " boxes");
        Assert.All(added, placed => Assert.Equal(0, placed.Box.At!.Value.Ticks % ticks));
    }

    [Fact]
    public void Planner_InAMetricHouse_MarksWholeMillimeters()
    {
        RoughInOptions options = RoughInOptions.Default.WithSwitches(false);
        Dwelling house = House(LengthUnits.Millimeters);
        RoomPlan plan = new RoughInPlanner(Walls, options).Plan(house, "hall");
        Assert.NotEmpty(plan.Reasons);
        Assert.All(plan.Reasons, box => Assert.Equal(0, plan.Dwelling.FindBox(box.Id)!.Box.At!.Value.Ticks % 80_000));
        Assert.Equal(["wall-outlets: must be within 1828.8 mm (6 ft) of an outlet that counts, everywhere along the floor line [NEC 2023 210.52(A)]"], plan.Requirements);
        Assert.Contains("(6 ft)", Assert.Single(new RoughInPlanner(Walls, options.WithEvaluation(EvaluatorOptions.Default.WithUnits(LengthUnits.Millimeters))).Plan(house.WithUnits(LengthUnits.Inches), "hall").Requirements), StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_StatedSteps_AreCheckedAllAtOnce()
    {
        EvaluatorOptions bad = EvaluatorOptions.Default.WithHeightStep(Distance.Zero).WithAlongMargin(-Distance.FromTicks(1)).WithUnits((LengthUnits)7);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new LayoutEvaluator(Usual, bad));
        Assert.Contains("Units is neither inches nor millimeters; AlongMargin is negative; HeightStep isn't more than zero", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new RoughInPlanner(Usual, RoughInOptions.Default.WithEvaluation(bad)));
    }

    private static Remedy RemedyOf(Evaluation evaluation) => Assert.Single(Assert.Single(evaluation.Causes).Remedies);

    private static Dwelling House(LengthUnits units) => new Dwelling("case").WithUnits(units).WithStoreys(new[] { new Storey("ground") }).WithRooms(new[]
    {
        new Room("hall", RoomKind.Bedroom, "ground").WithWalls(new[]
        {
            new Wall("n", CaseFile.Inches("144")).WithBoxes(new[]
            {
                new DeviceBox("sw", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(CaseFile.Inches("60")).WithHeight(BoxHeight.Parse("60 in to top above subfloor")),
            }),
            new Wall("e", CaseFile.Inches("100")), new Wall("s", CaseFile.Inches("144")), new Wall("w", CaseFile.Inches("100")),
        }),
    });
}
