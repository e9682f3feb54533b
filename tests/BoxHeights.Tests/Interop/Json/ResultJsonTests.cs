using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using BoxHeights.Interop;
using BoxHeights.Tests.Output;
using BoxHeights.Tests.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Json.Schema;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>Evaluations, plans and sheets of marks as JSON: what is written is read back the same, as the schemas say.</summary>
public sealed class ResultJsonTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    private static readonly JsonSchema Evaluations = JsonSchema.FromText(EvaluationJson.Schema);
    private static readonly JsonSchema MarkSheets = JsonSchema.FromText(MarkSheetJson.Schema);
    private static readonly JsonSchema StairPlans = JsonSchema.FromText(StairLightPlanJson.Schema);
    private static readonly JsonSchema Plans = JsonSchema.FromText(RoomPlanJson.Schema);

    [Fact]
    public void Evaluation_RandomDwellings_IsReadBackTheSame() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        EvaluationReport report = EvaluationReport.Of(Evaluator.Evaluate(DwellingGen.Dwelling(seed)), seed % 4 == 0);
        string json = EvaluationJson.Write(report);
        Assert.Equal(report, EvaluationJson.Read(json));
        Assert.Equal(report, EvaluationJson.Read(Encoding.UTF8.GetBytes(json)));
        Assert.True(Accepts(Evaluations, json), json);
        return true;
    }).Check(Tries.Config(60));

    [Fact]
    public void Evaluation_AsData_SaysWhatItsFindingsSay() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Evaluation evaluation = Evaluator.Evaluate(DwellingGen.Dwelling(seed));
        EvaluationReport report = EvaluationJson.Read(EvaluationJson.Write(evaluation));
        Assert.Equal(evaluation.Findings.Select(finding => finding.Message + finding.Needs + finding.Severity), report.Findings.Select(finding => finding.Message + finding.Needs + finding.Severity));
        Assert.Equal(evaluation.Findings.Where(finding => finding is { Fault: null, NotJudgedBecause: null }).Select(finding => (finding.Measured, finding.Allowed, finding.Margin)), report.Findings.Where(finding => finding.Measured is not null).Select(finding => (finding.Measured!.Value, finding.Allowed!.Value, finding.Margin!.Value)));
        Assert.Equal(evaluation.Causes.Select(cause => string.Join(",", cause.Findings.Select(finding => finding.Message))), report.Causes.Select(cause => string.Join(",", cause.Findings.Select(place => report.Findings[place - 1].Message))));
        Assert.Equal(evaluation.Causes.SelectMany(cause => cause.Remedies.Select(remedy => remedy.Text)), report.Causes.SelectMany(cause => cause.Remedies.Select(remedy => remedy.Text)));
        Assert.Equal(evaluation.Causes.SelectMany(cause => cause.Remedies.OfType<NoneFound>()).Select(none => none.Reason), report.Causes.SelectMany(cause => cause.Remedies.Where(remedy => remedy.Kind == RemedyKind.None)).Select(remedy => remedy.Reason!.Value));
        Assert.Equal(evaluation.Causes.SelectMany(cause => cause.Remedies.OfType<MoveInPlan>()).Select(move => move.Plan), report.Causes.SelectMany(cause => cause.Remedies.Where(remedy => remedy.Kind == RemedyKind.Plan)).Select(remedy => remedy.Plan!.Value));
        Assert.Equal(evaluation.Stamp, report.Stamp);
        return true;
    }).Check(Tries.Config(20));

    // A finding is some hundred bytes, and not the ten thousand of one with its whole evaluation in it.
    [Fact]
    public void Evaluation_OfManyFindings_IsInProportion()
    {
        Evaluation evaluation = Enumerable.Range(1, 60).Select(seed => Evaluator.Evaluate(DwellingGen.Dwelling(seed))).MaxBy(one => one.Findings.Count)!;
        Assert.True(evaluation.Findings.Count > 20);
        Assert.InRange(EvaluationJson.Write(evaluation).Length / evaluation.Findings.Count, 200, 2500);
    }

    [Fact]
    public void Plan_OfARoom_IsReadBackTheSame()
    {
        Dwelling house = DwellingJson.Read(File.ReadAllText(Path.Combine(Repository.Root, "src", "BoxHeights", "Interop", "Json", "small-house.json")));
        RoomPlan plan = new RoughInPlanner(DwellingGen.Rules).Plan(house, "hall");
        string json = RoomPlanJson.Write(plan);
        RoomPlan read = RoomPlanJson.Read(json);
        Assert.Equal(plan.Dwelling, read.Dwelling);
        Assert.Equal(plan.ToText(), read.ToText());
        Assert.Equal(plan.Reasons.Select(box => box.RuleId), read.Reasons.Select(box => box.RuleId));
        Assert.NotEmpty(plan.Reasons);
        Assert.Equal(plan.ToText(), RoomPlanJson.Read(Encoding.UTF8.GetBytes(json)).ToText());
        Assert.True(Accepts(Plans, json), json);
    }

    // All that a sheet does, one that was read does too: a part for a room, the dwelling at its marks, the pole.
    [Fact]
    public void MarkSheet_RandomDwellings_IsReadBackTheSame()
    {
        int overhead = 0;
        Prop.ForAll(DwellingGen.Seeds, seed =>
        {
            Dwelling house = seed % 4 == 1 ? OrdinaryHouses.Make(seed, 4) : DwellingGen.Dwelling(seed);
            MarkSheet sheet = MarkSheet.For(Evaluator.Evaluate(house), MarkOptions.Default.WithAsDescribed(seed % 4 > 0));
            string json = MarkSheetJson.Write(sheet);
            MarkSheet read = MarkSheetJson.Read(json);
            overhead += sheet.Overhead.Count;
            Assert.Equal((sheet.Rows, sheet.LeftOut, sheet.SetAlready, sheet.Overhead, sheet.Units, sheet.Title), (read.Rows, read.LeftOut, read.SetAlready, read.Overhead, read.Units, read.Title));
            Assert.Equal(sheet.ToMarkdown(), MarkSheetJson.Read(Encoding.UTF8.GetBytes(json)).ToMarkdown());
            Assert.Equal(sheet.ToDwelling(), read.ToDwelling());
            Assert.Equal(StoryPole.For(sheet).ToMarkdown(), StoryPole.For(read).ToMarkdown());
            Assert.True(Accepts(MarkSheets, json), json);
            return true;
        }).Check(Tries.Config(40));
        Assert.True(overhead > 0);
    }

    [Fact]
    public void MarkSheet_WithABoxInAnIsland_IsReadBack() => Assert.Equal(FloorRowsTests.Sheet.InFloor, MarkSheetJson.Read(MarkSheetJson.Write(FloorRowsTests.Sheet)).InFloor);

    [Fact]
    public void MarkSheet_OfOneRoom_IsReadBackTheSame()
    {
        Dwelling house = DwellingJson.Read(File.ReadAllText(Path.Combine(Repository.Root, "src", "BoxHeights", "Interop", "Json", "small-house.json")));
        MarkSheet hall = MarkSheet.For(Evaluator.Evaluate(house)).ForRoom("hall");
        Assert.Equal(2, hall.Rows.Count);
        MarkSheet read = MarkSheetJson.Read(MarkSheetJson.Write(hall));
        Assert.Equal(hall.ToMarkdown(), read.ToMarkdown());
        Assert.Equal(hall.ForRoom("kitchen").ToCsv(), read.ForRoom("kitchen").ToCsv());
    }

    // Treads of 131 in over 13 aren't on the grid, nor are places at a third of a tread.
    [Theory]
    [InlineData(13, 1, 3)]
    [InlineData(16, 1, 2)]
    [InlineData(15, null, null)]
    public void StairLights_OfAFlight_AreReadBackTheSame(int risers, int? above, int? below)
    {
        StairFlight flight = new StairFlight("s", "a", "b", risers).WithRun(Distance.FromInches(131m)).WithFirstNosing(Distance.FromInches(30m));
        flight = above is { } part ? flight.WithLights(new StairLights(2).WithPhase(new Ratio(part, below!.Value))) : flight;
        StairLightPlan plan = StairLightPlanner.Plan(flight, StudPositions.Along(new StudLayout().WithSpacing(Distance.FromInches(16m)), Distance.FromFeet(20m)));
        string json = StairLightPlanJson.Write(plan);
        StairLightPlan read = StairLightPlanJson.Read(json);
        Assert.Contains(plan.Lights, light => !light.Exact.IsOnGrid);
        Assert.Equal((plan.Flight, plan.Every, plan.StartTread, plan.Phase, plan.PhasesTried, plan.OnStuds, plan.Reasons), (read.Flight, read.Every, read.StartTread, read.Phase, read.PhasesTried, read.OnStuds, read.Reasons));
        Assert.Equal(
            plan.Lights.Select(light => (light.Tread, light.Exact, light.Center, light.Stud, light.Side, light.IsDisplaced, light.Reason)),
            read.Lights.Select(light => (light.Tread, light.Exact, light.Center, light.Stud, light.Side, light.IsDisplaced, light.Reason)));
        Assert.Equal(plan.ToLights(), StairLightPlanJson.Read(Encoding.UTF8.GetBytes(json)).ToLights());
        Assert.True(Accepts(StairPlans, json), json);
    }

    // Whoever adds a fact, a fault or a kind gives it a word.
    [Fact]
    public void Words_EveryValue_HasOne()
    {
        foreach (MissingFacts fact in Enum.GetValues<MissingFacts>().Where(fact => fact != MissingFacts.None))
        {
            AssertRoundTrips(finding => finding with { Needs = fact });
        }

        foreach (LayoutFaultKind fault in Enum.GetValues<LayoutFaultKind>())
        {
            AssertRoundTrips(finding => finding with { Fault = fault });
        }

        foreach (ChangeDirection direction in Enum.GetValues<ChangeDirection>())
        {
            AssertRoundTrips(finding => finding with { LeastChange = new LeastChange(OneBox.Middle, direction) });
        }
    }

    [Fact]
    public void Quantities_OfEveryKindAndBound_RoundTrip()
    {
        foreach (QuantityKind kind in Enum.GetValues<QuantityKind>())
        {
            foreach (long raw in new[] { 0, 1, -7, 12_345_678_901, long.MaxValue, long.MinValue })
            {
                AssertRoundTrips(finding => finding with { Measured = new Quantity(kind, kind == QuantityKind.Volume ? Math.Abs(Math.Max(raw, -1_000_000)) : raw) });
            }

            foreach (DistanceSet set in new[] { DistanceSet.All, DistanceSet.Empty, DistanceSet.AtMost(OneBox.Middle), DistanceSet.Outside(Distance.Zero, OneBox.Middle) })
            {
                AssertRoundTrips(finding => finding with { Allowed = new QuantitySet(kind, set) });
            }
        }
    }

    [Theory]
    [InlineData("""{ "dwelling": "x" }""", "stamp")]
    [InlineData("""{ "dwelling": "x", "stamp": { "rules": "a", "options": "b", "catalog": "c", "library": "d" }, "findings": [ { "rule": "r" } ] }""", "subject")]
    [InlineData("""{ "dwelling": "x", "stamp": { "rules": "a", "options": "b", "catalog": "c", "library": "d" }, "findings": [ { "rule": "r", "subject": "s", "address": "a", "verdict": "maybe", "severity": "note", "message": "m" } ] }""", "fails")]
    public void Read_BadReport_SaysWhatIsWrong(string json, string why)
    {
        Assert.Contains(why, Assert.Throws<BoxHeightsJsonException>(() => EvaluationJson.Read(json)).Message, StringComparison.Ordinal);
        Assert.False(Accepts(Evaluations, json));
    }

    [Theory]
    [InlineData("evaluation")]
    [InlineData("room-plan")]
    [InlineData("mark-sheet")]
    [InlineData("stair-light-plan")]
    [InlineData("practice")]
    public void Schema_FileInTheRepository_IsTheSame(string name)
    {
        string schema = name switch
        {
            "evaluation" => EvaluationJson.Schema,
            "room-plan" => RoomPlanJson.Schema,
            "mark-sheet" => MarkSheetJson.Schema,
            "stair-light-plan" => StairLightPlanJson.Schema,
            _ => PracticeJson.Schema,
        };
        string path = Path.Combine(Repository.Root, "src", "BoxHeights", "Interop", "Json", name + ".schema.json");
        if (Environment.GetEnvironmentVariable("BOXHEIGHTS_WRITE") == "schema")
        {
            File.WriteAllText(path, schema);
        }

        Assert.True(schema == File.ReadAllText(path).ReplaceLineEndings("\n"), name + ".schema.json is out of date: run this test with BOXHEIGHTS_WRITE=schema, and look at what changes.");
    }

    private static void AssertRoundTrips(Func<ReportedFinding, ReportedFinding> change)
    {
        EvaluationReport report = new("x", new("a", "b", "c")) { Findings = new[] { change(new("r", "s", "a", Verdict.Fails, Severity.Note, "m")) } };
        string json = EvaluationJson.Write(report);
        Assert.Equal(report, EvaluationJson.Read(json));
        Assert.True(Accepts(Evaluations, json), json);
    }

    private static bool Accepts(JsonSchema schema, string json) => schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;
}
