using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A margin is the least move that decides, whichever way it is.</summary>
public sealed class LeastChangeTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static readonly RuleSet All = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;
    private static readonly Dictionary<string, LayoutEvaluator> Evaluators =
        SiteGen.Rules.ToDictionary(rule => rule, rule => new LayoutEvaluator(OneBox.Only(All, rule)), StringComparer.Ordinal);

    private static readonly (ChangeDirection Way, long Along, long Up)[] Ways =
        [(ChangeDirection.Up, 0, 1), (ChangeDirection.Down, 0, -1), (ChangeDirection.Left, -1, 0), (ChangeDirection.Right, 1, 0)];

    // A casing from 60 to 84 in reaches over the wall; the plate of 2-3/4 in laps it by 1/16 in at its left end. In height it would have to go over the head.
    [Theory]
    [InlineData("58-11/16", "1/16", ChangeDirection.Left, "off by 1/16 in to the left")]
    [InlineData("85-1/4", "1/8", ChangeDirection.Right, "off by 1/8 in to the right")]
    public void Margin_PlateThatLapsTheCasing_IsTheWaySideways(string at, string off, ChangeDirection way, string words)
    {
        OneBox box = new OneBox
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "trim-clearance"),
            Wall = wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Window, CaseFile.Inches("60"), CaseFile.Inches("84")).WithSill(new Level(CaseFile.Inches("2"), Datum.Subfloor)).WithHead(new Level(CaseFile.Inches("90"), Datum.Subfloor)) }),
        }.At(BoxHeight.ToCenter(CaseFile.Inches("46"), Datum.Subfloor));
        box = box with { Box = box.Box.WithAt(CaseFile.Inches(at)) };
        Evaluation evaluation = box.Evaluate();
        Finding finding = Assert.Single(evaluation.Findings);
        Check check = Assert.Single(evaluation.Checks);
        LeastChange change = finding.LeastChange!.Value;
        Assert.Equal((CaseFile.Inches(off), way, true), (change.Amount, change.Direction, change.IsAlong));
        Assert.Equal(-CaseFile.Inches(off), finding.Margin.AsDistance());
        Assert.Equal((finding.Margin, finding.LeastChange), (check.Margin, check.LeastChange));
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(", off by", finding.Message, StringComparison.Ordinal);
        Assert.Equal(words["off by ".Length..], change.ToString());

        Distance mended = CaseFile.Inches(at) + (way == ChangeDirection.Left ? -change.Amount : change.Amount);
        OneBox clear = box with { Box = box.Box.WithAt(mended) };
        Assert.Equal(Verdict.Passes, clear.Verdict());
        Assert.Equal(Distance.Zero, clear.Check()!.Value.Margin.AsDistance());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithAt(mended + (way == ChangeDirection.Left ? Tick : -Tick)) }).Verdict());
    }

    // The seam at 48-1/2 in: a box of 3-3/4 in is 1/2 in too high or 3-1/4 in too low; the nearer way counts.
    [Theory]
    [InlineData("49", "1/2", ChangeDirection.Down)]
    [InlineData("51-3/4", "1/2", ChangeDirection.Up)]
    [InlineData("48", "1/2", ChangeDirection.Up)]
    [InlineData("53", "3/4", ChangeDirection.Down)]
    public void Margin_BesideASeam_IsUpOrDown(string top, string amount, ChangeDirection way)
    {
        Check check = OnASeam(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)).Check()!.Value;
        Assert.Equal((CaseFile.Inches(amount), way), (check.LeastChange!.Value.Amount, check.LeastChange.Value.Direction));
        Assert.Equal(CaseFile.Inches(amount), check.Margin.AsDistance().Abs());
    }

    // 47 in to an edge that nobody names: the bottom would be met at 48-1/2 in, the center at 46-5/8, the top at 48-1/2. All three are met at 44-3/4 in and below, or at
    // 52-1/4 in and above.
    [Fact]
    public void Margin_OfAnUnstatedEdge_IsOverEveryReading()
    {
        OneBox box = OnASeam(BoxHeight.EdgeUnstated(CaseFile.Inches("47"), Datum.Subfloor));
        Finding finding = Assert.Single(box.Evaluate().Findings);
        Assert.Equal(new LeastChange?[] { finding.LeastChange }, [box.Check()!.Value.LeastChange]);
        Assert.Equal((CaseFile.Inches("2-1/4"), ChangeDirection.Down), (finding.LeastChange!.Value.Amount, finding.LeastChange.Value.Direction));
        Assert.Equal(box.Check()!.Value.Margin, finding.Margin);
        Assert.Equal(Verdict.Passes, box.At(BoxHeight.EdgeUnstated(CaseFile.Inches("44-3/4"), Datum.Subfloor)).Verdict());
        Assert.Equal(Verdict.Unknown, box.At(BoxHeight.EdgeUnstated(CaseFile.Inches("44-3/4") + Tick, Datum.Subfloor)).Verdict());
    }

    // What is told of any box: after the least move it is met, and after a shorter one in no direction; a box that is met stays so up to its margin every way.
    [Fact]
    public void LeastChange_OfAnySite_DecidesAndNothingLessDoes() => Prop.ForAll(SiteGen.Sites, site =>
    {
        site = site with { At = site.At ?? 72m };
        Dwelling house = site.Build();
        if (CheckOf(house, site.Rule) is not { } check)
        {
            return true;
        }

        Finding? finding = Evaluators[site.Rule].Evaluate(house).Findings.SingleOrDefault(one => one.Fault is null);
        Assert.True(finding is null || (finding.Margin == check.Margin && finding.LeastChange == check.LeastChange), "a finding and its check differ");
        long amount = check.LeastChange?.Amount.Ticks ?? long.MaxValue;
        Assert.True(check.LeastChange is null || Math.Abs(check.Margin.AsDistance().Ticks) == amount, "the margin is the move's length");
        bool passes = check.Verdict == Verdict.Passes;
        foreach ((ChangeDirection way, long along, long up) in Ways)
        {
            foreach (long ticks in new[] { amount - 1, amount, amount + 1 }.Where(ticks => ticks is > 0 and < 400_000_000))
            {
                bool isThat = check.LeastChange?.Direction == way;
                Verdict? moved = CheckOf(Moved(house, along * ticks, up * ticks), site.Rule)?.Verdict;
                Assert.True(moved is null || (passes
                    ? ticks <= amount ? moved == Verdict.Passes : !isThat || moved != Verdict.Passes
                    : ticks < amount ? moved != Verdict.Passes : ticks > amount || !isThat || moved == Verdict.Passes), check + ", " + check.LeastChange + ": " + ticks + " ticks " + way + " is " + moved);
            }
        }

        return true;
    }).Check(Tries.Config(400));

    private static OneBox OnASeam(BoxHeight height)
    {
        OneBox box = new OneBox
        {
            Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam"),
            Storey = new Storey("ground").WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8")))
                .WithBoards(new BoardLayout().WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") })),
        }.At(height);
        return box with { Box = box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))) };
    }

    private static Check? CheckOf(Dwelling house, string rule)
    {
        Evaluation evaluation = Evaluators[rule].Evaluate(house);
        return evaluation.HasFaults ? null : evaluation.Checks.Where(check => check.RuleId == rule).Select(check => (Check?)check).SingleOrDefault();
    }

    private static Dwelling Moved(Dwelling house, long along, long up) => house.WithBoxes(box =>
    {
        BoxHeight height = box.Height!.Value.WithValue(box.Height.Value.Value + Distance.FromTicks(up));
        Distance at = box.At!.Value + Distance.FromTicks(along);
        return at < Distance.Zero ? box.WithHeight(null) : box.WithAt(at).WithHeight(height).WithMeasured(box.Measured is { } measured ? new MeasuredHeight(height).WithWithin(measured.Within) : null);
    });
}
