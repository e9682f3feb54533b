using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <summary>One bad dwelling for each kind of fault: it is named, the box that it touches isn't judged, and the others still are.</summary>
public sealed partial class ResolverTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.Ada2010 + RuleSets.RoughInPractice);

    // "high" fails a reach limit in every house here, so that one sees whether the rest is judged.
    private static readonly DeviceBox High = Box("high", "30").WithHeight(BoxHeight.ToCenter(CaseFile.Inches("60"), Datum.FinishedFloor));

    [Fact]
    public void Message_InAMetricHouse_IsInMillimeters()
    {
        Dwelling dwelling = House(wall => wall.Add(Box("beyond", "145"))).WithUnits(LengthUnits.Millimeters);
        Assert.Contains(Evaluator.Evaluate(dwelling).Findings, finding => finding.Message == "beyond (room/wall): its center is at 3683 mm, but the wall is 3657.6 mm long");
    }

    [Fact]
    public void Kinds_EachOfThem_HasACaseHere()
    {
        string[] tested = typeof(ResolverTests).GetMethods().Select(method => method.Name.Split('_')[0]).Distinct().ToArray();
        Assert.All(Enum.GetNames<LayoutFaultKind>(), kind => Assert.Contains(kind, tested));
    }

    private static void AssertNotJudged(DeviceBox box, LayoutFaultKind kind, string words)
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(box)), kind, box.Id, words);
        Assert.DoesNotContain(evaluation.Checks, check => check.Subject == box.Id);
        Assert.Contains(evaluation.NotJudged, line => line.Contains("(" + box.Id + ")", StringComparison.Ordinal));
    }

    private static Evaluation AssertFinds(Dwelling dwelling, LayoutFaultKind kind, string subject, string words, bool othersAreJudged = true)
    {
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        Finding finding = evaluation.Findings.Single(one => one.Fault is not null);
        Assert.Equal(kind, finding.Fault!.Kind);
        Assert.Equal(subject, finding.Subject);
        Assert.Equal(Finding.LayoutFaultId, finding.RuleId);
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.True(evaluation.HasUnknowns && !evaluation.IsClean);
        Assert.Empty(finding.Remedies);
        Assert.Contains(evaluation.For("high"), other => other.RuleId == "ada-reach" && (!othersAreJudged || other.Verdict == Verdict.Fails));
        return evaluation;
    }

    private static DeviceBox Box(string id, string at) => new(id, BoxPurpose.General)
    {
        Devices = new[] { DeviceKind.DuplexReceptacle },
        At = CaseFile.Inches(at),
        Height = BoxHeight.ToCenter(CaseFile.Inches("16-1/2"), Datum.FinishedFloor),
    };

    private static Counter Counter(string id, string left, string right) => new(id, CounterKind.Kitchen, CaseFile.Inches(left), CaseFile.Inches(right));

    private static Dwelling House(Action<WallBuilder> more)
    {
        DwellingBuilder dwelling = new("house");
        dwelling.Add(new Storey("ground")
        {
            Ceiling = new Ceiling { Framing = CaseFile.Inches("97-1/8"), Board = CaseFile.Inches("1/2") },
            Studs = new StudLayout { Spacing = CaseFile.Inches("16") },
        });
        WallBuilder wall = dwelling.Room("room", RoomKind.Kitchen, "ground").With(room => room.WithFloor(OneBox.Floor(CaseFile.Inches("1/2")))).Wall("wall", CaseFile.Inches("144"));
        wall.Add(High).Add(Box("good", "20"));
        more(wall);
        return dwelling.Build();
    }
}
