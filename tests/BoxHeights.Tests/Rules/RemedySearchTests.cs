using System;
using System.Linq;
using System.Threading;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>How remedies are looked for, and how they are told.</summary>
public sealed class RemedySearchTests
{
    private static int statements;

    /// <summary>No center over a limit, and a count of how often that is asked.</summary>
    private sealed record Counted(Distance Limit) : PlacementRule("counted", "low", Severity.Violation, new("House rules"))
    {
        public override string Numbers => "at most " + Limit;

        public override void State(PlacementSite site, PlacementStatement statement)
        {
            Interlocked.Increment(ref statements);
            statement.Everywhere(site.AtMost(TargetLine.Center, Limit, Datum.Subfloor));
        }
    }

    // Each box is a cause with a stick of its own. Trying each remedy in the whole house anew would ask 300 times 300 times. A box that misses something is asked of its
    // place, asked which rule it misses, and stated; so is the one that is tried.
    [Fact]
    public void Remedies_OfManyCauses_StateEachWallOnlyAFewTimes()
    {
        const int Boxes = 300;
        DwellingBuilder house = new("long house");
        house.Add(new Storey("first"));
        for (int i = 0; i < Boxes; i++)
        {
            house.Room("room" + i, RoomKind.Hall, "first").Wall("north", Inches(144))
                .Add(new DeviceBox("b" + i, BoxPurpose.General).WithAt(Inches(60)).WithHeight(BoxHeight.ToCenter(Inches(50) + Distance.FromInches(0, i, 16), Datum.Subfloor)));
        }

        statements = 0;
        Evaluation evaluation = new LayoutEvaluator(new RuleSet([new Counted(Inches(40))])).Evaluate(house.Build());
        Assert.Equal(Boxes, evaluation.Causes.Sum(cause => cause.Remedies.OfType<MoveBoxes>().Count()));
        Assert.InRange(statements, Boxes, 8 * Boxes);
    }

    // A caller's own rule may part boxes by the datum of their height, which a remedy changes.
    private sealed record ByDatum() : ProvisionRule("by-datum", "not alone above the finished floor", Severity.Violation, new("House rules"))
    {
        public override string Numbers => "one";

        public override string? GroupOf(BoxTraits box, GroupPlace place) => box.Datum == Datum.Subfloor ? null : "others";

        public override void Judge(ProvisionGroup group, ProvisionStatement statement)
        {
            for (int i = 0; i < group.Count; i++)
            {
                statement.Finds(i, Verdict.Fails, Distance.Zero, DistanceSet.Empty);
            }
        }
    }

    [Fact]
    public void Remedy_ThatBringsABoxToAnotherGroup_IsTriedThere()
    {
        HeightBand low = new("low", "low", Severity.Violation, new("House rules"), Datum.Subfloor) { High = Inches(40), Preferred = BoxHeight.ToCenter(Inches(30), Datum.FinishedFloor) };
        OneBox one = new OneBox { Rules = new([low, new ByDatum()]), Room = room => room.WithFloor(OneBox.Floor(Inches(1))) }.At(BoxHeight.ToCenter(Inches(50), Datum.Subfloor));
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(one.Evaluate().Causes).Remedies));
        Assert.Equal(Datum.Subfloor, move.Height.Datum);
        Assert.True(new LayoutEvaluator(one.Rules).Evaluate(move.ApplyTo(one.Build())).IsClean);
    }

    [Fact]
    public void NoneFound_ForAWholeStick_IsOneLine()
    {
        Cause cause = Assert.Single(new LayoutEvaluator(new RuleSet([new Nowhere()])).Evaluate(Three("16 in to center above subfloor")).Causes);
        NoneFound none = Assert.IsType<NoneFound>(Assert.Single(cause.Remedies));
        Assert.Equal(["a", "b", "c"], none.Ids);
        Assert.Equal(["nowhere"], none.Conflicting);
        Assert.StartsWith("no place for a, b, c was found", none.Text, StringComparison.Ordinal);
    }

    // Two firm rows that leave nothing between them: the habit between isn't why.
    [Fact]
    public void NoneFound_WhereFirmRulesAloneLeaveNone_BlamesNoHabit()
    {
        HeightBand Firm(string id, Distance? low, Distance? high) => new(id, id, Severity.Violation, new("House rules"), Datum.Subfloor) { Low = low, High = high };
        HeightBand habit = Firm("a-habit", Inches(40), Inches(50)) with { YieldsWhenForced = true, Severity = Severity.Note };
        RuleSet rules = new([Firm("m-low", null, Inches(30)), habit, Firm("z-high", Inches(60), null)]);
        Evaluation evaluation = new LayoutEvaluator(rules).Evaluate(Three("20 in to center above subfloor"));
        Assert.All(evaluation.Causes.SelectMany(cause => cause.Remedies).OfType<NoneFound>(), none => Assert.DoesNotContain("a-habit", none.Conflicting));
        Assert.Contains(evaluation.Causes.SelectMany(cause => cause.Remedies), remedy => remedy is NoneFound { Conflicting.Count: 2 });
    }

    // 1219.2 mm is 48 in: a metric house gets what can be marked there, in millimeters.
    [Fact]
    public void Text_InAMetricHouse_HasNoInchesOfOurs()
    {
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "switch-height")).Evaluate(Three("60 in to top above subfloor", BoxPurpose.Switch).WithUnits(LengthUnits.Millimeters));
        Assert.Equal("set the stick 1219 mm to top above subfloor for 3 boxes: a, b, c", Assert.Single(Assert.Single(evaluation.Causes).Remedies).Text);
        Finding finding = evaluation.Findings[0];
        Assert.Contains("set 1524 mm to top above subfloor", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(" in", finding.Message.Split('[')[0].Replace("boxes are usually set", "", StringComparison.Ordinal).Split(':')[1], StringComparison.Ordinal);
        Assert.Equal("1066.8 mm to 1320.8 mm", finding.Allowed.ToString(LengthUnits.Millimeters));
        Assert.Equal("42 in to 52 in", finding.Allowed.ToString());
    }

    [Fact]
    public void ToText_TheSameRemedyTwice_RefersBack()
    {
        HeightBand first = new("first", "low", Severity.Violation, new("House rules"), Datum.Subfloor) { High = Inches(40), Preferred = BoxHeight.ToCenter(Inches(20), Datum.Subfloor) };
        RuleSet rules = new([first, first with { Id = "second", High = Inches(45) }]);
        string text = new LayoutEvaluator(rules).Evaluate(Three("50 in to center above subfloor")).ToText();
        Assert.Single(text.Split('\n'), line => line.StartsWith("   do: set the stick 20 in to center above subfloor", StringComparison.Ordinal));
        Assert.Contains("   do: as said under 1\n", text, StringComparison.Ordinal);
    }

    private static Distance Inches(int count) => Distance.FromInches(count, 0, 1);

    private static Dwelling Three(string height, BoxPurpose? purpose = null)
    {
        DwellingBuilder house = new("three");
        house.Add(new Storey("first"));
        WallBuilder wall = house.Room("room", RoomKind.Hall, "first").Wall("north", CaseFile.Inches("144"));
        foreach ((string id, int at) in new[] { ("a", 30), ("b", 60), ("c", 90) })
        {
            wall.Add(new DeviceBox(id, purpose ?? BoxPurpose.General).WithDevices(new[] { DeviceKind.Switch }).WithAt(Inches(at)).WithHeight(BoxHeight.Parse(height)));
        }

        return house.Build();
    }

    private sealed record Nowhere : PlacementRule
    {
        public Nowhere()
            : base("nowhere", "nowhere", Severity.Violation, new("House rules"))
        {
        }

        public override string Numbers => "no height";

        public override void State(PlacementSite site, PlacementStatement statement) => statement.Everywhere(AllowedHeights.Nothing);
    }
}
