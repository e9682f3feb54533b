using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes against studs, from the case files.</summary>
public sealed class FramingFitCaseTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static RuleSet Row => OneBox.Only(RuleSets.RoughInPractice, "framing-fit");

    [Fact]
    public void Box_OfEachCase_HasItsVerdict()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("framing-fit.csv"))
        {
            Fraction unit = row["unit"] == "mm" ? new Fraction(10, 254) : Fraction.One;
            Distance Of(string name) => CaseFile.Inches(CaseFile.Number(row[name]) * unit);
            Verdict verdict = At(Of("spacing"), Of("thickness"), Of("width"), row["method"], Of("at")).Verdict();
            Assert.True(row["verdict"] == verdict.ToString(), row["id"] + ": " + verdict);
        }
    }

    [Fact]
    public void Box_OneTickUnderAtAndOverALimit_TurnsJustPastIt()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("framing-limits.csv"))
        {
            Distance limit = CaseFile.Inches(row["limit"]);
            foreach (int off in new[] { -1, 0, 1 })
            {
                OneBox box = At(CaseFile.Inches(row["spacing"]), CaseFile.Inches(row["thickness"]), CaseFile.Inches(row["width"]), row["method"], limit + (Tick * off));
                bool passes = off == 0 || off > 0 == (row["passes"] == "at or above");
                Assert.True(box.Verdict() == (passes ? Verdict.Passes : Verdict.Fails), row["id"] + " " + off);
            }
        }
    }

    // Lights along a stair, 2-1/4 in wide, studs 16 in on center: the way from each to the nearest place against a stud. Computed; the second flight is moved by 16 in.
    [Fact]
    public void Lights_AlongAStair_AreOffTheirStudsByThePublishedShift()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("stair-flanks.csv"))
        {
            Distance shift = CaseFile.Inches(row["shift"]);
            Verdict Within(Distance within)
            {
                HeldByFraming rule = (HeldByFraming)Row.Row("framing-fit") with { Within = within };
                OneBox box = At(CaseFile.Inches("16"), CaseFile.Inches("1-1/2"), CaseFile.Inches("2-1/4"), "stud", CaseFile.Inches(row["at"]));
                return (box with { Rules = new([rule]) }).Verdict();
            }

            Assert.Equal(Verdict.Passes, Within(shift));
            if (shift > Distance.Zero)
            {
                Assert.Equal(Verdict.Fails, Within(shift - Tick));
            }
        }

        Assert.Equal(4, CaseFile.Table("stair-flanks.csv").Count(row => row["id"] == "S-1" && CaseFile.Number(row["shift"]) <= CaseFile.Number("1-1/4")));
    }

    // Beside a door: the jack's opening-side face is the origin, the king's far face 3 in from it. Box widths by gang from common practice.
    [Theory]
    [InlineData("2-1/4")]
    [InlineData("4")]
    [InlineData("5-3/4")]
    [InlineData("7-1/2")]
    public void SwitchBox_OnTheKing_Fits(string width)
    {
        Distance wide = CaseFile.Inches(width);
        Distance king = CaseFile.Inches("65") + CaseFile.Inches("3");
        OneBox box = ByADoor(At(CaseFile.Inches("16"), CaseFile.Inches("1-1/2"), wide, "stud", king + Half(wide)));
        Assert.Equal(Verdict.Passes, box.Verdict());

        // On the jack it would lie in the king.
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithAt(king + Half(wide) - CaseFile.Inches("1-1/2")) }).Verdict());
    }

    // The trade packs a king out with 2-by blocking, 1-1/2 in each, so that the plate stands off the casing.
    [Theory]
    [InlineData("1-1/2", "pack the stud to the left of the-box out with one 2x block at its height")]
    [InlineData("3", "pack the stud to the left of the-box out with two 2x blocks at its height")]
    [InlineData("5-1/2", "add a block 11-1/4 in long for the-box between the studs beside it, 68 in from the left end of its wall")]
    public void SwitchBox_OffTheKing_GetsBlocking(string off, string text)
    {
        OneBox box = ByADoor(At(CaseFile.Inches("16"), CaseFile.Inches("1-1/2"), CaseFile.Inches("2-1/4"), "stud", CaseFile.Inches("69-1/8") + CaseFile.Inches(off)));
        Finding finding = Assert.Single(box.Evaluate().Findings);
        Assert.Equal(("framing-fit", Verdict.Fails, Severity.Advice), (finding.RuleId, finding.Verdict, finding.Severity));
        AddBlocking block = Assert.Single(finding.Remedies.OfType<AddBlocking>());
        Assert.Equal(text, block.Text);
        Assert.Empty(new LayoutEvaluator(Row).Evaluate(block.ApplyTo(box.Build())).Findings);
        MoveBoxes move = Assert.Single(finding.Remedies.OfType<MoveBoxes>());
        Assert.Empty(new LayoutEvaluator(Row).Evaluate(move.ApplyTo(box.Build())).Findings);
    }

    [Fact]
    public void Box_ThatHasToStay_GetsBlockingAlone()
    {
        OneBox box = At(CaseFile.Inches("16"), CaseFile.Inches("1-1/2"), CaseFile.Inches("2-1/4"), "stud", CaseFile.Inches("72"));
        Finding finding = Assert.Single((box with { Box = box.Box.WithPinned(true) }).Evaluate().Findings);
        Assert.IsType<AddBlocking>(Assert.Single(finding.Remedies));
    }

    private static Distance Half(Distance width) => Distance.FromTicks(width.Ticks / 2);

    /// <summary>A door from 33 to 65 in; the next stud of the layout is at 79-1/4 in.</summary>
    private static OneBox ByADoor(OneBox box)
    {
        Func<Wall, Wall> wall = box.Wall;
        return box with { Wall = one => wall(one).WithOpenings(new[] { new Opening("door", OpeningKind.Door, CaseFile.Inches("33"), CaseFile.Inches("65")) }) };
    }

    private static OneBox At(Distance spacing, Distance thickness, Distance width, string method, Distance at) => new()
    {
        Rules = Row,
        Wall = wall => wall.WithLength(CaseFile.Inches("192")).WithStuds(new StudLayout().WithSpacing(spacing).WithThickness(thickness).WithKnown(StudKnowledge.Declared)),
        Box = new OneBox().Box.WithSize(new BoxSize(width, CaseFile.Inches("3-3/4"))).WithAt(at).WithHeight(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor))
            .WithMounting(new Mounting(method switch
            {
                "stud" => MountingMethod.Stud,
                "bar" => MountingMethod.Bar,
                "bracket" => MountingMethod.Bracket,
                "cut-in" => MountingMethod.CutIn,
                _ => MountingMethod.Blocking,
            })),
    };
}
