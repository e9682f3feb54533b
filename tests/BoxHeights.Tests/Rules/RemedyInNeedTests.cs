using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Advice doesn't hold back what mends a violation: where nothing does so without another finding, the remedy says which it brings.</summary>
public sealed class RemedyInNeedTests
{
    private static readonly LayoutEvaluator Canada = new(RuleSets.CanadaDwelling + RuleSets.RoughInPractice);

    // A tub 1500 mm long in the corner, and a receptacle 200 mm beside it: a wall of 2400 mm has places 500 mm off the tub and none 1 m off it, one of 4 m has both.
    [Theory]
    [InlineData(2400, 500, 1000, "canada-tub-distance")]
    [InlineData(4000, 1000, 2500, "")]
    public void Remedy_NearATub_GoesAsFarAsAViolationAsksAndSaysWhatAdviceIsLeft(int wall, int least, int most, string brings)
    {
        Dwelling bath = Bath(wall);
        Evaluation evaluation = Canada.Evaluate(bath);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(evaluation.Findings, finding => finding.RuleId == "canada-tub-receptacle").Remedies));
        Assert.Equal(brings, string.Join(" ", move.Brings));

        // What goes aside keeps its height, which nothing is against.
        Assert.Equal(BoxHeight.ToCenter(Distance.FromMillimeters(1100), Datum.Subfloor), move.Height);
        Assert.Equal(brings.Length > 0, move.Text.EndsWith(", though " + brings + " will be found then", StringComparison.Ordinal));
        Assert.InRange(move.Along!.Value, Distance.FromMillimeters(1500 + least), Distance.FromMillimeters(1500 + most));
        Assert.Equal(brings, string.Join(" ", Canada.Evaluate(move.ApplyTo(bath)).Findings.Select(finding => finding.RuleId)));

        MendedDwelling mended = evaluation.Mend();
        Assert.Equal(brings, string.Join(" ", mended.Left.Select(cause => cause.RuleId)));
        Assert.Equal(move.Along, mended.Find("R")!.After.Box.At);
    }

    // No center from 40 to 60 in: a box at 55 is nearer to what is above. Each other row leaves one side of that alone.
    [Theory]
    [InlineData("", 60, "")]
    [InlineData("high:Advice", 60, "")]
    [InlineData("low:Advice", 40, "")]
    [InlineData("low:Advice high:Advice", 60, "low")]
    [InlineData("low:Advice high:Note", 40, "high")]
    [InlineData("low:Note high:Advice", 60, "low")]
    [InlineData("low:Violation high:Advice", 40, "high")]
    [InlineData("low:Violation high:Violation", null, "")]
    public void Remedy_OfAViolation_BringsTheLeastThatItCan(string others, int? limit, string brings)
    {
        RuleSet rules = new([new HeightBand("between", "out of the way", Severity.Violation, new("House rules"), Datum.Subfloor) { IsKeepOut = true, Low = CaseFile.Inches("40"), High = CaseFile.Inches("60") },
            .. others.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(one => one.Split(':')).Select(one => one[0] == "low"
                ? new HeightBand("low", "low", Enum.Parse<Severity>(one[1]), new("House rules"), Datum.Subfloor) { High = CaseFile.Inches("58") }
                : new HeightBand("high", "high", Enum.Parse<Severity>(one[1]), new("House rules"), Datum.Subfloor) { Low = CaseFile.Inches("42") })]);
        OneBox one = new OneBox { Rules = rules }.At(BoxHeight.ToCenter(CaseFile.Inches("55"), Datum.Subfloor));
        Remedy remedy = Assert.Single(Assert.Single(one.Evaluate().Findings).Remedies);
        Assert.Equal(brings, string.Join(" ", remedy.Brings));
        if (limit is not { } past)
        {
            Assert.IsType<NoneFound>(remedy);
            return;
        }

        // A quarter of an inch of slack from the limit that is firm, whatever gives way.
        Assert.Equal(CaseFile.Inches(past == 60 ? "60-1/4" : "39-3/4"), Assert.IsType<MoveBoxes>(remedy).Height.Value);
        Assert.Equal(brings, string.Join(" ", new LayoutEvaluator(rules).Evaluate(remedy.ApplyTo(one.Build())).Findings.Select(finding => finding.RuleId)));
    }

    // Advice by itself is mended without another finding, or not at all.
    [Fact]
    public void Remedy_OfAdvice_BringsNothing()
    {
        RuleSet rules = new([new HeightBand("low", "low", Severity.Advice, new("House rules"), Datum.Subfloor) { High = CaseFile.Inches("40") },
            new HeightBand("high", "high", Severity.Note, new("House rules"), Datum.Subfloor) { Low = CaseFile.Inches("42") }]);
        Evaluation evaluation = new OneBox { Rules = rules }.At(BoxHeight.ToCenter(CaseFile.Inches("55"), Datum.Subfloor)).Evaluate();
        Assert.Equal(NoRemedyReason.NothingFound, Assert.IsType<NoneFound>(Assert.Single(Assert.Single(evaluation.Findings).Remedies)).Reason);
    }

    // What stands in the wall is advice too, but no box goes into a duct: not for a violation either.
    [Fact]
    public void Remedy_WhereSomethingStands_IsNone()
    {
        RuleSet rules = new([new HeightBand("low", "low", Severity.Violation, new("House rules"), Datum.Subfloor) { High = CaseFile.Inches("40") }, RuleSets.RoughInPractice.Row("in-cavity")]);
        NoCavity duct = new(new NoCavityKind("duct"), Distance.Zero, CaseFile.Inches("144")) { Top = new Level(CaseFile.Inches("45"), Datum.Subfloor) };
        OneBox one = new OneBox { Rules = rules, Wall = wall => wall.WithNoCavity(new[] { duct }) }.At(BoxHeight.ToCenter(CaseFile.Inches("55"), Datum.Subfloor));
        Assert.IsType<NoneFound>(Assert.Single(Assert.Single(one.Evaluate().Findings).Remedies));
    }

    // Single-pole at the head: with one more at the foot, which the code asks for, both have to be three-way. That the switches don't go together yet is advice.
    [Fact]
    public void Remedy_OfWhatIsLacking_SaysWhichAdviceItBrings()
    {
        Dwelling house = StairMateTests.House("high:switch>L1 high:switch>U1,U2");
        LayoutEvaluator evaluator = new(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(Assert.Single(evaluator.Evaluate(house).Findings, finding => finding.RuleId == "stair-switches").Remedies));
        Assert.Equal(["control-ways", "three-way-mates"], cure.Brings);
        Assert.Contains(evaluator.Evaluate(cure.ApplyTo(house)).Findings, finding => finding.RuleId == "control-ways" && finding.Subject == "L1");
        Assert.Contains("main-foot-switch", evaluator.Evaluate(house).Mend().Boxes.Select(box => box.After.Box.Id));
    }

    // 2100 by 1600 mm, the tub 1500 mm long and the basin beside it: whatever is within 1 m of the basin is nearer than 1 m to the tub.
    [Fact]
    public void Added_WhereAdviceLeavesNoPlace_IsPlannedAndOfferedThere()
    {
        Dwelling bath = Bath(2100).WithBoxes(box => box.WithPurpose(BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }));
        bath = bath.WithRooms(bath.Rooms.Select(room => room.WithWalls(new[]
        {
            room.Walls[0].WithCounters(new[]
            {
                new Counter("vanity", new("bath"), Distance.FromMillimeters(1500), Distance.FromMillimeters(2100)).WithTop(new(Distance.FromMillimeters(860), Datum.FinishedFloor)).WithDepth(Distance.FromMillimeters(540))
                    .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, Distance.FromMillimeters(1650), Distance.FromMillimeters(1950)) }),
            }),
            new Wall("east", Distance.FromMillimeters(1600)), new Wall("south", Distance.FromMillimeters(2100)), new Wall("west", Distance.FromMillimeters(1600)),
        })));
        LayoutEvaluator all = new(RuleSets.CanadaDwelling, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        AddBox offered = Assert.IsType<AddBox>(Assert.Single(Assert.Single(all.Evaluate(bath).Findings, finding => finding.RuleId == "canada-bath-receptacle").Remedies));
        Assert.Equal(["canada-tub-distance"], offered.Brings);
        RoomPlan plan = new RoughInPlanner(RuleSets.CanadaDwelling).Plan(bath);
        Assert.Contains("canada-tub-distance", Assert.Single(plan.Obstacles), StringComparison.Ordinal);
        foreach (Dwelling with in new[] { offered.ApplyTo(bath), plan.Dwelling })
        {
            Assert.Equal("canada-tub-distance:Advice", string.Join(" ", all.Evaluate(with).Findings.Select(finding => finding.RuleId + ":" + finding.Severity)));
        }
    }

    private static Dwelling Bath(int wall)
    {
        DwellingBuilder house = new("bath");
        house.Add(new Storey("main")).With(dwelling => dwelling.WithUnits(LengthUnits.Millimeters));
        RoomBuilder bath = house.Room("bath", RoomKind.Bathroom, "main");
        bath.Wall("north", Distance.FromMillimeters(wall)).Add(new DeviceBox("R", BoxPurpose.Bath).WithDevices(new[] { DeviceKind.GfciReceptacle })
            .WithAt(Distance.FromMillimeters(1700)).WithHeight(BoxHeight.ToCenter(Distance.FromMillimeters(1100), Datum.Subfloor)));
        bath.Add(SquareRoom.Against("tub", FixtureKind.Tub, "north", Distance.Zero, Distance.FromMillimeters(1500), Distance.FromMillimeters(760)));
        return house.Build();
    }
}
