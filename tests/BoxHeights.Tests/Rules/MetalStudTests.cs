using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Open sides of metal studs and spans of bars. That the web takes a screw and the open side wants a bracket is from memory; bays are computed.</summary>
public sealed class MetalStudTests
{
    private static RuleSet Practice => new(new[] { "framing-fit", "web-side", "bar-span", "in-cavity" }.Select(id => RuleSets.RoughInPractice.Row(id)!));
    private static readonly Distance Tick = Distance.FromTicks(1);

    // Flanges of 1-1/4 in, 16 in on center: the fourth stud's faces are at 63-3/8 and 64-5/8 in.
    [Theory]
    [InlineData(StudSide.Right, StudSide.Right, false)]
    [InlineData(StudSide.Right, StudSide.Left, true)]
    [InlineData(StudSide.Left, StudSide.Left, false)]
    [InlineData(StudSide.Left, StudSide.Right, true)]
    [InlineData(null, StudSide.Left, true)]
    [InlineData(null, StudSide.Right, true)]
    public void Box_OnTheOpenSide_IsRemarkedOn(StudSide? open, StudSide side, bool isFine)
    {
        Evaluation evaluation = OnStud(open, side).Evaluate();
        Assert.Equal(isFine ? [] : ["web-side"], evaluation.Findings.Select(finding => finding.RuleId));
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Fails, Severity.Advice), (finding.Verdict, finding.Severity)));
    }

    // It counts as on the face up to 1/4 in off it, as for any nailed box.
    [Fact]
    public void Box_OffTheOpenSide_IsNoMoreOnItThanOnAnyFace()
    {
        Distance face = CaseFile.Inches("64-5/8") + CaseFile.Inches("1-1/8");
        string[] FoundAt(Distance at)
        {
            OneBox box = OnStud(StudSide.Right, StudSide.Right);
            return (box with { Box = box.Box.WithAt(at).WithMounting(new Mounting(MountingMethod.Stud)) }).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();
        }

        Assert.Equal(["web-side"], FoundAt(face + CaseFile.Inches("1/4")));
        Assert.Equal(["framing-fit"], FoundAt(face + CaseFile.Inches("1/4") + Tick));
    }

    [Fact]
    public void OpenSide_OfStudsNobodyHasSeenOrAtAnOpening_IsntKnown()
    {
        OneBox box = OnStud(StudSide.Right, StudSide.Right);
        Func<Wall, Wall> wall = box.Wall;
        Assert.Empty((box with { Wall = one => wall(one).WithStuds(wall(one).Studs!.WithKnown(StudKnowledge.Assumed)) }).Evaluate().Findings);
        Assert.Empty((box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Bracket)).WithAt(CaseFile.Inches("65-3/4")) }).Evaluate().Findings);

        // A stud that is listed right at a door may be turned so that the frame can be screwed to it.
        Opening door = new("door", OpeningKind.Door, CaseFile.Inches("30"), CaseFile.Inches("62"));
        OneBox jamb = box with { Wall = one => wall(one).WithStuds(wall(one).Studs!.WithFaces(new[] { CaseFile.Inches("62"), CaseFile.Inches("100") })).WithOpenings(new[] { door }) };
        Assert.Empty((jamb with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Stud).WithStud(1).WithSide(StudSide.Right)) }).Evaluate().Findings);
        Assert.Single((jamb with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Stud).WithStud(2).WithSide(StudSide.Right)) }).Evaluate().Findings);
    }

    [Fact]
    public void Remedies_OfABoxOnTheOpenSide_AreTheWebAndABracket()
    {
        OneBox box = OnStud(StudSide.Right, StudSide.Right);
        Items<Remedy> remedies = Assert.Single(box.Evaluate().Findings).Remedies;
        Assert.Equal(2, remedies.Count);
        MoveBoxes move = Assert.IsType<MoveBoxes>(remedies[0]);
        Assert.Equal(CaseFile.Inches("63-3/8") - CaseFile.Inches("1-1/8"), move.Along);
        Assert.Equal(new Mounting(MountingMethod.Stud).WithStud(4).WithSide(StudSide.Left), move.Mounting);
        Assert.EndsWith("on the left side of stud 4", move.Text, StringComparison.Ordinal);
        ChangeMounting bracket = Assert.IsType<ChangeMounting>(remedies[1]);
        Assert.StartsWith("hold the-box on a bracket", bracket.Text, StringComparison.Ordinal);
        foreach (Remedy remedy in remedies)
        {
            Assert.Empty(new LayoutEvaluator(Practice).Evaluate(remedy.ApplyTo(box.Build())).Findings);
        }

        // A box that has to stay gets the bracket, right where its stud put it.
        ChangeMounting stays = Assert.IsType<ChangeMounting>(Assert.Single(Assert.Single((box with { Box = box.Box.WithPinned(true) }).Evaluate().Findings).Remedies));
        Assert.Equal(CaseFile.Inches("64-5/8") + CaseFile.Inches("1-1/8"), stays.ApplyTo(box.Build()).FindBox("the-box")!.Box.At);
    }

    [Fact]
    public void MarkSheet_OfMetalStuds_SaysWhatTheBoxIsFixedTo()
    {
        string Stud(StudSide? open) => Assert.Single(Sheets.For(OnStud(open, StudSide.Left).Build(), Practice).Rows).Stud;
        Assert.Equal(("stud 4, left side", "stud 4, left side (web)", "stud 4, left side (open side)"), (Stud(null), Stud(StudSide.Right), Stud(StudSide.Left)));
    }

    [Fact]
    public void Bar_OneTickUnderAtAndOverItsBay_FailsJustPastIt()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("bar-spans.csv"))
        {
            Distance bay = CaseFile.Inches(row["bay"]);
            Distance wide = CaseFile.Inches("3");
            Verdict Of(Distance least, Distance most) => InBay(row, new DistanceRange(least, most)).Check()!.Value.Verdict;
            Verdict? Silent(Distance least, Distance most) => InBay(row, new DistanceRange(least, most)).Check()?.Verdict;
            Assert.True(Of(bay + Tick, bay + wide) == Verdict.Fails, row["id"] + ": too narrow a bay");
            Assert.True(Of(bay - wide, bay - Tick) == Verdict.Fails, row["id"] + ": too wide a bay");
            Assert.True(Silent(bay, bay + wide) is null or Verdict.Passes, row["id"] + ": its least");
            Assert.True(Silent(bay - wide, bay) is null or Verdict.Passes, row["id"] + ": its most");
        }
    }

    [Fact]
    public void Bar_ThatDoesNotSpan_IsToldWhatWould()
    {
        OneBox box = InBay(CaseFile.Table("bar-spans.csv")[1], new DistanceRange(CaseFile.Inches("14"), CaseFile.Inches("18"))) with { Rules = Practice };
        Finding finding = Assert.Single(box.Evaluate().Findings);
        Assert.Equal(("bar-span", Verdict.Fails, Severity.Advice), (finding.RuleId, finding.Verdict, finding.Severity));
        Assert.Equal(
            ["take a bar for the-box that spans a clear bay of 22-1/2 in", "add a block 22-1/2 in long for the-box between the studs beside it, 72-3/4 in from the left end of its wall"],
            finding.Remedies.Select(remedy => remedy.Text));
        Assert.All(finding.Remedies, remedy => Assert.Empty(new LayoutEvaluator(Practice).Evaluate(remedy.ApplyTo(box.Build())).Findings));
        Assert.Empty((box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Bar)) }).Evaluate().Findings);
    }

    // On the first floor a crew has two boxes alike but for their bars: what is said of one must not be said of the other.
    [Fact]
    public void Bars_OfTwoBoxesAlike_AreJudgedEachByItsOwn()
    {
        OneBox box = InBay(CaseFile.Table("bar-spans.csv")[0], new DistanceRange(CaseFile.Inches("20"), CaseFile.Inches("24")));
        Func<Wall, Wall> wall = box.Wall;
        DeviceBox other = box.Box.WithId("other").WithAt(box.Box.At + CaseFile.Inches("16")).WithMounting(new Mounting(MountingMethod.Bar).WithSpan(new DistanceRange(CaseFile.Inches("14"), CaseFile.Inches("18"))));
        Assert.Equal("the-box", Assert.Single((box with { Wall = one => wall(one).WithBoxes(new[] { other }) }).Evaluate().Findings).Subject);
    }

    private static OneBox OnStud(StudSide? open, StudSide side) => Metal(box => box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(4).WithSide(side))) with
    {
        Wall = wall => wall.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithThickness(CaseFile.Inches("1-1/4")).WithKnown(StudKnowledge.Measured).WithOpenSide(open)),
    };

    private static OneBox InBay(Dictionary<string, string> row, DistanceRange span) => Metal(box => box.WithAt(CaseFile.Inches(row["at"])).WithMounting(new Mounting(MountingMethod.Bar).WithSpan(span))) with
    {
        Rules = OneBox.Only(Practice, "bar-span"),
        Wall = wall => wall.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches(row["spacing"])).WithThickness(CaseFile.Inches(row["thickness"])).WithKnown(StudKnowledge.Declared)),
    };

    private static OneBox Metal(Func<DeviceBox, DeviceBox> described)
    {
        OneBox box = new() { Rules = Practice };
        return box with { Box = described(box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))).WithHeight(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor))) };
    }
}
