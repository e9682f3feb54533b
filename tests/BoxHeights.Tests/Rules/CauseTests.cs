using System;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What makes several findings one cause.</summary>
public sealed class CauseTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    // 80 in above grade is over the 78 in of NEC 210.52(E), and nobody usually sets one over 48 in.
    [Fact]
    public void Habit_MissedWithAFirmerRule_JoinsItsCause()
    {
        Evaluation evaluation = Evaluator.Evaluate(Outside("80 in to center above grade"));
        Cause cause = Assert.Single(evaluation.Causes);
        Assert.Equal(["outdoor-receptacle", "exterior-height"], cause.Findings.Select(finding => finding.RuleId));
        Assert.Equal("outdoor-receptacle", cause.RuleId);
        Assert.Equal(Severity.Note, cause.Severity);
        Assert.Equal(["X1"], cause.Subjects);
        Assert.Equal(["exterior-height"], cause.AlsoMissed);
        Assert.Equal(cause.Findings[0].Message, cause.Title);
        Assert.True(Evaluator.Evaluate(Assert.Single(cause.Remedies).ApplyTo(evaluation.Dwelling)).IsClean);
    }

    [Fact]
    public void Habit_MissedAlone_IsACauseOfItsOwn()
    {
        Cause cause = Assert.Single(Evaluator.Evaluate(Outside("60 in to bottom above grade")).Causes);
        Assert.Equal(("exterior-height", Severity.Note), (cause.RuleId, cause.Severity));
        Assert.Empty(cause.AlsoMissed);
    }

    [Fact]
    public void ToText_OfASharedCause_ListsItsBoxesByRoom()
    {
        DwellingBuilder house = new DwellingBuilder("test").Add(new Storey("first"));
        foreach (string room in new[] { "den", "hall" })
        {
            house.Room(room, RoomKind.Hall, "first").Wall("north", Distance.FromInches(120m)).Add(Switch(room + "-a", 30)).Add(Switch(room + "-b", 60));
        }

        string text = Evaluator.Evaluate(house.Build()).ToText();
        Assert.Contains("\n   in den: den-a, den-b\n   in hall: hall-a, hall-b\n", text, StringComparison.Ordinal);
    }

    private static DeviceBox Switch(string id, int at) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch })
        .WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse("60 in to top above subfloor"));

    private static Dwelling Outside(string height) => new Dwelling("test")
        .WithStoreys(new[] { new Storey("first") })
        .WithOutside(new[]
        {
            new OutsideFace("side").WithWalls(new[]
            {
                new Wall("face", Distance.FromInches(240m)).WithBoxes(new[]
                {
                    new DeviceBox("X1", BoxPurpose.Exterior).WithDevices(new[] { DeviceKind.GfciReceptacle }).WithAt(Distance.FromInches(60m)).WithHeight(BoxHeight.Parse(height)),
                }),
            }),
        });
}
