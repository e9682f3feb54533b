using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

public sealed class EvaluationPropertyTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    // Or nothing below would show anything.
    [Fact]
    public void RandomDwellings_HaveEnoughToFind()
    {
        Finding[] all = Enumerable.Range(1, 100).SelectMany(seed => Evaluator.Evaluate(DwellingGen.Dwelling(seed)).Findings).ToArray();
        foreach (string rule in new[] { "ada-reach", "board-seam", "box-fill", "uniform-level", "specified-height", "finish-edge", "trim-clearance", "general-height", "counter-receptacle" })
        {
            Assert.Contains(all, finding => finding.RuleId == rule);
        }

        Assert.Contains(all, finding => finding.Verdict == Verdict.Unknown);
        Assert.Contains(all, finding => finding.Fault is not null);
    }

    /// <summary>A box that is added may have what is short of a violation in common with one that stands alike: of its purpose, at its height.</summary>
    private static bool IsShared(Remedy remedy, Evaluation before, Finding finding) =>
        remedy is AddBox add && !finding.IsViolation && add.Placed.FirstOrDefault(placed => placed.Box.Id == finding.Subject) is { } added
        && before.Findings.Any(old => old.RuleId == finding.RuleId && old.Verdict >= finding.Verdict && before.Dwelling.FindBox(old.Subject) is { } like
            && like.Box.Purpose == added.Box.Purpose && like.Box.Height == added.Box.Height);

    [Fact]
    public void Findings_RulesInAnyOrder_AreTheSame() => Check(seed =>
    {
        Random random = new(seed);
        RuleSet shuffled = DwellingGen.Rules.Rows.OrderBy(_ => random.Next()).Select(row => new RuleSet([row])).Aggregate((a, b) => a + b);
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        return Evaluator.Evaluate(dwelling).Findings.Select(DwellingGen.Line).SequenceEqual(new LayoutEvaluator(shuffled).Evaluate(dwelling).Findings.Select(DwellingGen.Line));
    });

    // An inch is 25.4 mm exactly, so a house that is described in millimeters is the same house.
    [Fact]
    public void Findings_LengthsGivenInMillimeters_AreTheSame() => Check(seed =>
    {
        Dwelling inches = DwellingGen.Dwelling(seed);
        Dwelling metric = DwellingGen.Dwelling(seed, sixteenths => Distance.FromMillimeters(sixteenths * 25.4m / 16m));
        Dwelling text = DwellingGen.Dwelling(seed, sixteenths => Distance.Parse((sixteenths * 25.4m / 16m).ToString(System.Globalization.CultureInfo.InvariantCulture) + " mm"));
        return inches.Equals(metric) && inches.Equals(text)
            && Said(inches).SequenceEqual(Said(metric.WithUnits(LengthUnits.Millimeters)));
    });

    [Fact]
    public void Findings_DwellingMirrored_AreTheSame() => Check(seed =>
    {
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        Dwelling mirrored = Mirror.Of(dwelling);
        Assert.Equal(Said(dwelling), Said(mirrored));
        return Mirror.Of(mirrored).Equals(dwelling);
    });

    [Fact]
    public void Remedies_CarriedOut_ClearTheirFindingAndAddNoneThatTheyDontName() => Check(60, seed =>
    {
        Evaluation before = Evaluator.Evaluate(DwellingGen.Dwelling(seed));
        Dictionary<string, Finding> known = before.Findings.GroupBy(DwellingGen.Subject).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        foreach (Cause cause in before.Causes)
        {
            foreach (Remedy remedy in cause.Remedies)
            {
                if (remedy is NoneFound)
                {
                    continue;
                }

                Items<string> ids = remedy switch
                {
                    MoveBoxes move => move.Ids,
                    SetProjection outward => outward.Ids,
                    AddBlocking block => new[] { block.Id },
                    ChangeMounting held => new[] { held.Id },
                    AddBox => cause.Subjects,
                    _ => ((ResizeBox)remedy).Ids,
                };
                Evaluation after = Evaluator.Evaluate(remedy.ApplyTo(before.Dwelling));
                bool clears = !after.Findings.Any(finding => finding.RuleId == cause.RuleId && ids.Contains(finding.Subject) && cause.Subjects.Contains(finding.Subject));
                bool addsNone = after.Findings.All(finding => (known.TryGetValue(DwellingGen.Subject(finding), out Finding? old)
                    && finding.Verdict <= old.Verdict && finding.Severity <= old.Severity) || IsShared(remedy, before, finding) || (cause.Severity == Severity.Violation && !finding.IsViolation && remedy.Brings.Contains(finding.RuleId)));
                if (!clears || !addsNone)
                {
                    return false;
                }
            }
        }

        return true;
    });

    // A box that is pinned or was there before stays where it is, whatever would mend.
    [Fact]
    public void Remedies_PinnedBoxes_AreNeverMoved() => Check(40, seed =>
    {
        Evaluation evaluation = Evaluator.Evaluate(DwellingGen.Dwelling(seed));
        HashSet<string> pinned = evaluation.Dwelling.PlacedBoxes().Where(placed => placed.Box.Pinned).Select(placed => placed.Box.Id).ToHashSet(StringComparer.Ordinal);
        return evaluation.Causes.SelectMany(cause => cause.Remedies).OfType<MoveBoxes>().All(move => !move.Ids.Any(pinned.Contains));
    });

    [Fact]
    public void HasViolationsHasUnknowns_AnyDwelling_AgreeWithTheFindings() => Check(seed =>
    {
        Evaluation evaluation = Evaluator.Evaluate(DwellingGen.Dwelling(seed));
        return evaluation.HasViolations == evaluation.Findings.Any(finding => finding.Verdict == Verdict.Fails && finding.Severity == Severity.Violation)
            && evaluation.HasUnknowns == evaluation.Findings.Any(finding => finding.Verdict == Verdict.Unknown)
            && evaluation.IsClean == (evaluation.Findings.Count == 0)
            && evaluation.Causes.Sum(cause => cause.Findings.Count) == evaluation.Findings.Count
            && evaluation.Findings.All(finding => evaluation.For(finding.Subject).Any(one => DwellingGen.Line(one) == DwellingGen.Line(finding)));
    });

    // A finding and a check are two views of one statement.
    [Fact]
    public void Checks_ThatDontPass_AreTheFindingsOfTheBox() => Check(seed =>
    {
        Evaluation evaluation = Evaluator.Evaluate(DwellingGen.Dwelling(seed));
        string[] checks = evaluation.Checks.Where(check => check.Verdict != Verdict.Passes).Select(check => check.RuleId + "|" + check.Subject + "|" + check.Verdict).Order(StringComparer.Ordinal).ToArray();
        string[] findings = evaluation.Findings.Where(finding => finding is { Fault: null, NotJudgedBecause: null } && DwellingGen.Rules.Row(finding.RuleId) is PlacementRule or LimitRule)
            .Select(finding => finding.RuleId + "|" + finding.Subject + "|" + finding.Verdict).Order(StringComparer.Ordinal).ToArray();
        return checks.SequenceEqual(findings);
    });

    // The level is the center that most boxes of a purpose share, the lowest of several; a quarter of an inch is let pass.
    [Fact]
    public void UniformLevel_BoxesAlone_AreThoseOffTheCommonestCenter() => Prop.ForAll(Arb.From(Gen.Choose(0, 9).NonEmptyListOf()), steps =>
    {
        int[] eighths = steps.Take(8).ToArray();
        DwellingBuilder dwelling = new("level");
        dwelling.Add(new Storey("ground"));
        WallBuilder wall = dwelling.Room("room", RoomKind.Hall, "ground").Wall("wall", DwellingGen.Sixteenths(3200));
        for (int i = 0; i < eighths.Length; i++)
        {
            wall.Add(new DeviceBox("box" + i, BoxPurpose.Switch) { At = DwellingGen.Sixteenths(100 * (i + 1)), Height = BoxHeight.ToCenter(DwellingGen.Sixteenths(720 + (2 * eighths[i])), Datum.Subfloor) });
        }

        int level = eighths.GroupBy(one => one).OrderByDescending(group => group.Count()).ThenBy(group => group.Key).First().Key;
        string[] expected = Enumerable.Range(0, eighths.Length).Where(i => Math.Abs(eighths[i] - level) > 2).Select(i => "box" + i).ToArray();
        return new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "uniform-level")).Evaluate(dwelling.Build()).Findings.Select(finding => finding.Subject).SequenceEqual(expected);
    }).Check(Tries.Always(100));

    // A fault's message names its place from the left end, which moves in a mirror, and in the dwelling's own units.
    // A fault's message, and the name of a run, say the place from the left end, which moves.
    private static string[] Said(Dwelling dwelling) => Evaluator.Evaluate(dwelling).Findings
        .Select(finding => finding.Fault is { } fault ? fault.Kind + "|" + fault.Subject
            : DwellingGen.IsOfARun(finding) ? finding.RuleId + "|" + finding.Verdict + "|" + finding.Measured
            : DwellingGen.Line(finding)).Order(StringComparer.Ordinal).ToArray();

    private static void Check(Func<int, bool> holds) => Check(100, holds);

    private static void Check(int times, Func<int, bool> holds) =>
        Prop.ForAll(DwellingGen.Seeds, holds).Check(Tries.Config(times));
}
