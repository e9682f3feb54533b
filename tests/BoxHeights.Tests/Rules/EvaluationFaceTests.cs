using System;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What a caller meets at an evaluation: ids that aren't there, faults, an empty house, and words for what lies above and below.</summary>
public sealed class EvaluationFaceTests
{
    [Theory]
    [InlineData("nope")]
    [InlineData("room/nope")]
    [InlineData("roo")]
    [InlineData("room/wall/nope")]
    public void For_NoSuchPart_Throws(string id) =>
        Assert.Equal("id", Assert.Throws<ArgumentException>(() => new OneBox().Evaluate().For(id)).ParamName);

    [Theory]
    [InlineData("the-box")]
    [InlineData("room")]
    [InlineData("room/wall")]
    [InlineData("room/ceiling")]
    [InlineData("ground")]
    [InlineData("case")]
    public void For_PartWithoutFindings_IsEmpty(string id) => Assert.Empty(new OneBox().At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate().For(id));

    [Fact]
    public void For_AStorey_HasWhatIsFoundInItsRooms()
    {
        Evaluation evaluation = new OneBox { Rules = RuleSets.RoughInPractice }.At(BoxHeight.Parse("90 in to top above subfloor")).Evaluate();
        Assert.NotEmpty(evaluation.Findings);
        Assert.Equal(evaluation.Findings, evaluation.For("ground"));
    }

    // A fault weighs as much as a violation, since it may hide one, but it is none.
    [Fact]
    public void HasViolations_OfAFaultAlone_IsFalseAndHasFaultsTrue()
    {
        Evaluation evaluation = new OneBox().Evaluate();
        Finding fault = Assert.Single(evaluation.Findings);
        Assert.Equal((LayoutFaultKind.NoHeight, Severity.Violation, Verdict.Unknown), (fault.Fault!.Kind, fault.Severity, fault.Verdict));
        Assert.Equal((false, false, true, true), (fault.IsViolation, evaluation.HasViolations, evaluation.HasUnknowns, evaluation.HasFaults));
        Assert.Equal((OneBox.WallAddress, "the-box (room/wall): it has no height"), (fault.Address, fault.Message));
        Assert.Equal([fault], evaluation.For("room"));
    }

    [Fact]
    public void IsViolation_OfARowThatIsNotMet_IsTrue()
    {
        Evaluation evaluation = new OneBox { Rules = OneBox.Only(RuleSets.Ada2010, "ada-reach") }.At(BoxHeight.Parse("90 in to center above finished floor")).Evaluate();
        Assert.Equal((true, true, false), (Assert.Single(evaluation.Findings).IsViolation, evaluation.HasViolations, evaluation.HasFaults));
    }

    [Fact]
    public void ToText_WithoutBoxes_SaysThatNothingWasJudged()
    {
        string text = new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(new Dwelling("Empty")).ToText();
        Assert.StartsWith("Empty: no boxes: nothing was judged.\n", text, StringComparison.Ordinal);
    }

    // A band from 8 to 20 in above a counter, and a box set 10 in below it: no "-8 in below".
    [Theory]
    [InlineData("8", "20", "10 in to center below countertop", "here 8 in to 20 in above")]
    [InlineData("-4", "20", "10 in to center below countertop", "here 4 in below to 20 in above")]
    [InlineData("-8", "-2", "3 in to center above countertop", "here 2 in to 8 in below")]
    [InlineData(null, "-2", "3 in to center above countertop", "here at least 2 in below")]
    [InlineData("8", null, "3 in to center above countertop", "here at least 8 in,")]
    public void Message_OfHeightsAboveAndBelow_HasNoSigns(string? low, string? high, string height, string words)
    {
        Distance? Of(string? inches) => inches is null ? null : inches[0] == '-' ? -CaseFile.Inches(inches[1..]) : CaseFile.Inches(inches);
        HeightBand band = new("band", "there", Severity.Violation, new("House rules"), Datum.Countertop) { Low = Of(low), High = Of(high) };
        OneBox box = new OneBox
        {
            Rules = new([band]),
            Wall = wall => wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, CaseFile.Inches("20"), CaseFile.Inches("120")).WithTop(new Level(CaseFile.Inches("36"), Datum.Subfloor)) }),
        }.At(BoxHeight.Parse(height));
        string message = Assert.Single(box.Evaluate().Findings).Message;
        Assert.Contains(words, message, StringComparison.Ordinal);
        Assert.DoesNotContain("-", message.Split("here ")[1].Split(", off by")[0].Replace("in,", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Find_ReadingThatIsNotThere_ListsThoseThatAre()
    {
        string message = Assert.Throws<ArgumentException>(() => RuleSets.UnitedStatesDwelling(NecEdition.Nec2023).WithReading("counter-receptacle", "top")).Message;
        Assert.Contains("center, box-top", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Severity_ThatIsNone_IsRefused()
    {
        Assert.Equal((Severity)99, Assert.Throws<ArgumentOutOfRangeException>(() => RuleSets.RoughInPractice.WithSeverity("board-seam", (Severity)99)).ActualValue);
        Assert.Throws<ArgumentOutOfRangeException>(() => new HeightBand("one", "there", 0, new("House rules"), Datum.Subfloor));
    }
}
