using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes against whatever stands in a wall: brute force, mirrors, and where nothing may be said.</summary>
public sealed class FramingFitTests
{
    private static readonly RuleSet Row = OneBox.Only(RuleSets.RoughInPractice, "framing-fit");
    private static readonly RuleSet Web = OneBox.Only(RuleSets.RoughInPractice, "web-side");
    private static readonly RuleSet Bars = OneBox.Only(RuleSets.RoughInPractice, "bar-span");
    private static readonly RuleSet Filled = OneBox.Only(RuleSets.RoughInPractice, "in-cavity");

    [Theory]
    [InlineData(MountingMethod.Masonry)]
    [InlineData(MountingMethod.Surface)]
    [InlineData(MountingMethod.Cabinet)]
    public void Box_ThatAsksNothingOfStuds_HasNothingSaidOfIt(MountingMethod how)
    {
        OneBox box = FramingSketch.Plain("stud", 512);
        Assert.Null((box with { Box = box.Box.WithMounting(new Mounting(how)) }).Check());
    }

    // A stud's middle is at 64 in (every 16 in), the box is 2-1/4 in wide and a stud 1-1/2 in: two bodies, which no way of holding a box puts into one place. From 65-7/8 in on it is beside the stud.
    [Theory]
    [InlineData(512, Verdict.Fails)]
    [InlineData(518, Verdict.Fails)]
    [InlineData(527, Verdict.Passes)]
    [InlineData(560, Verdict.Passes)]
    public void Box_OfWhichItIsNotStatedHowItIsHeld_HasNoStudGoingThroughIt(int eighths, Verdict verdict)
    {
        OneBox box = FramingSketch.Plain("stud", eighths);
        OneBox unsaid = box with { Box = box.Box.WithMounting(null) };
        Assert.Equal(verdict, unsaid.Verdict());

        // What may go onto the wall or onto the stud itself, or a layout that is only assumed, says nothing of it.
        Assert.Null((unsaid with { Box = unsaid.Box.WithKind(BoxKind.Handy) }).Check());
        Assert.Null((unsaid with { Box = unsaid.Box.WithKind(BoxKind.Pancake) }).Check());
        Assert.Null((unsaid with { Wall = wall => box.Wall(wall) is var framed ? framed.WithStuds(framed.Studs!.WithKnown(StudKnowledge.Assumed)) : wall }).Check());
    }

    // The catalog has nail-on boxes of up to four gangs: of a larger one somebody has to say how wide it is.
    [Fact]
    public void Box_OfMoreGangsThanAnyKnownSizeHas_IsToldToNeedItsSize()
    {
        OneBox box = FramingSketch.Plain("stud", 560);
        Evaluation evaluation = (box with { Box = box.Box.WithSize(null).WithKind(BoxKind.NailOn).WithGangs(12) }).Evaluate();
        Assert.Contains(evaluation.NotJudged, line => line.Contains("no size is known for nail-on boxes of 12 gangs: state it", System.StringComparison.Ordinal));
    }

    [Fact]
    public void Box_WithoutStudsOrAPlaceOrNew_HasNothingSaidOfIt()
    {
        OneBox box = FramingSketch.Plain("stud", 512);
        Assert.Equal(Verdict.Fails, box.Verdict());
        Assert.Null((box with { Wall = wall => wall }).Check());
        Assert.Null((box with { Wall = wall => wall.WithStuds(new StudLayout().WithKnown(StudKnowledge.Measured)) }).Check());
        Assert.Null((box with { Box = box.Box.WithAt(null) }).Check());
        Assert.Empty((box with { Box = box.Box.WithAt(null) }).Evaluate().Findings);
        Assert.Null((box with { Box = box.Box.WithExisting(true) }).Check());
        Assert.Null((box with { Box = box.Box.WithSurface(BoxSurface.Cabinet) }).Check());
    }

    [Fact]
    public void CutInBox_HasToMissTheStud_WhetherOrNotItsMountingIsStated()
    {
        OneBox box = FramingSketch.Plain("cut-in", 512);
        Assert.Equal(Verdict.Fails, box.Verdict());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithMounting(null).WithKind(BoxKind.CutIn) }).Verdict());
    }

    // 144 in is nine times 16: pulled from either end the studs stand alike. A foot more, and from the right they stand 12 in off those from the left.
    [Theory]
    [InlineData(1152, "bar", 512, Verdict.Fails)]
    [InlineData(1152, "stud", 512, Verdict.Fails)]
    [InlineData(1152, "stud", 576, Verdict.Passes)]
    [InlineData(1248, "bar", 512, Verdict.Passes)]
    [InlineData(1248, "stud", 512, Verdict.Passes)]
    [InlineData(1248, "bar", 9, Verdict.Fails)]
    public void AssumedStuds_LeaveOutOnlyWhatHoldsFromBothEnds(int length, string method, int at, Verdict expected)
    {
        OneBox box = FramingSketch.Plain(method, at);
        Assert.Equal(expected, (box with { Wall = wall => wall.WithLength(Eighths(length)).WithStuds(new StudLayout().WithSpacing(Eighths(128))) }).Verdict());
    }

    // The leaf slides in on the left: 30 in and 1 in of wall without a stud or a cavity; the king on that side stands beyond it.
    [Fact]
    public void PocketDoor_HasNoCavityOnThePocketSideAndNoJackThere()
    {
        OneBox box = FramingSketch.Plain("stud", 0) with
        {
            Rules = new RuleSet([Row.Row("framing-fit"), Filled.Row("in-cavity")]),
            Wall = wall => wall.WithStuds(new StudLayout().WithFaces(new[] { Eighths(64) }).WithKnown(StudKnowledge.Measured)).WithOpenings(new[]
            {
                new Opening("pocket", OpeningKind.PocketDoor, Eighths(640), Eighths(880)).WithLeaf(Eighths(240)).WithPocketOn(WallEnd.Left),
            }),
        };
        string[] FindingsAt(int at) => (box with { Box = box.Box.WithAt(Eighths(at)) }).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();

        Assert.Equal(["in-cavity"], FindingsAt(600));
        Assert.Equal(["in-cavity"], FindingsAt(640 - 248 + 9));
        Assert.Empty(FindingsAt(640 - 248 - 24 - 9));
        Assert.Empty(FindingsAt(880 + 24 + 9));
        Assert.Equal(["framing-fit"], FindingsAt(880 + 24));
    }

    // Described as all of its frame, 61 in for a leaf of 30: the doorway is the 31 in at the strike, the pocket the rest.
    [Theory]
    [InlineData(WallEnd.Left, 632)]
    [InlineData(WallEnd.Right, 640)]
    public void PocketDoor_DescribedAsItsWholeFrame_HasItsPocketWithin(WallEnd side, int doorway)
    {
        OneBox box = FramingSketch.Plain("bar", 0) with
        {
            Rules = Filled,
            Wall = wall => wall.WithOpenings(new[] { new Opening("pocket", OpeningKind.PocketDoor, Eighths(392), Eighths(880)).WithLeaf(Eighths(240)).WithPocketOn(side) }),
        };
        string[] FindingsAt(int at) => (box with { Box = box.Box.WithAt(Eighths(at)) }).Evaluate().Findings.Select(finding => finding.RuleId).ToArray();
        int inside = side == WallEnd.Left ? -1 : 1;
        Assert.Equal(["in-cavity"], FindingsAt(doorway + (inside * 9)));
        Assert.Empty(FindingsAt(doorway - (inside * 9)));
    }

    [Theory]
    [InlineData("header")]
    [InlineData("duct")]
    [InlineData("stringer")]
    public void FilledPart_HoldsNoBoxButOneOnTheFace(string kind)
    {
        // 60 to 90 in along, 82-1/2 to 91-3/4 in up: the box, 2-1/4 by 3-3/4 in, touches it at 82-1/2 in, and beside it at 58-7/8 in.
        OneBox box = FramingSketch.Plain("bar", 600) with
        {
            Rules = Filled,
            Wall = wall => wall.WithNoCavity(new[] { new NoCavity(new NoCavityKind(kind), Eighths(480), Eighths(720)).WithBottom(Level.Parse("82-1/2 in above subfloor")).WithTop(Level.Parse("91-3/4 in above subfloor")) }),
        };
        BoxHeight touching = BoxHeight.Parse("82-1/2 in to top above subfloor");
        BoxHeight across = touching.WithValue(touching.Value + Distance.FromTicks(1));
        Assert.Equal(Verdict.Passes, box.At(touching).Verdict());
        Assert.Equal(Verdict.Fails, box.At(across).Verdict());
        Assert.Equal(Verdict.Passes, (box with { Box = box.Box.WithAt(Eighths(471)) }).At(across).Verdict());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithAt(Eighths(471) + Distance.FromTicks(1)) }).At(across).Verdict());
        Assert.Null((box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Surface)) }).At(across).Check());
    }

    // A bottom plate of 1-1/2 in; under a rough ceiling of 97-1/8 in one top plate at least.
    [Theory]
    [InlineData("1-1/2 in to bottom above subfloor", 1)]
    [InlineData("95-5/8 in to top above subfloor", -1)]
    public void Box_InAPlate_DoesNotFit(string limit, int inward)
    {
        OneBox box = FramingSketch.Plain("stud", 528 - 1);
        box = box with { Storey = box.Storey.WithCeiling(new Ceiling().WithFraming(Distance.Parse("97-1/8 in"))) };
        BoxHeight height = BoxHeight.Parse(limit);
        Assert.Equal(Verdict.Passes, box.At(height).Verdict());
        Assert.Equal(Verdict.Fails, box.At(height.WithValue(height.Value - Distance.FromTicks(inward))).Verdict());
    }

    // A rough ceiling from 97 to 97-1/8 in: what is under the lower plate surely fits, what is over the higher one surely doesn't.
    [Theory]
    [InlineData("95-1/2 in", 0, Verdict.Passes, MissingFacts.None)]
    [InlineData("95-1/2 in", 1, Verdict.Unknown, MissingFacts.Ceiling)]
    [InlineData("95-5/8 in", 0, Verdict.Unknown, MissingFacts.Ceiling)]
    [InlineData("95-5/8 in", 1, Verdict.Fails, MissingFacts.None)]
    public void Box_UnderACeilingThatIsNotKnown_NeedsIt(string top, int ticks, Verdict verdict, MissingFacts needs)
    {
        OneBox box = FramingSketch.Plain("stud", 528 - 1);
        box = box with { Storey = box.Storey.WithCeiling(new Ceiling().WithFraming(new DistanceRange(Distance.Parse("97 in"), Distance.Parse("97-1/8 in")))) };
        Check check = box.At(BoxHeight.ToTop(Distance.Parse(top) + Distance.FromTicks(ticks), Datum.Subfloor)).Check()!.Value;
        Assert.Equal((verdict, needs), (check.Verdict, check.Needs));
    }

    [Fact]
    public void Post_HasSidesToNailTo()
    {
        OneBox box = FramingSketch.Plain("stud", 600 + 9);
        OneBox posted = box with { Wall = wall => FramingSketch.Studded(wall).WithNoCavity(new[] { new NoCavity(NoCavityKind.Post, Eighths(572), Eighths(600)) }) };
        Assert.Equal((Verdict.Fails, Verdict.Passes), (box.Verdict(), posted.Verdict()));
    }

    // Of a generic box all that is known is 2-1/8 to 2-3/8 in: within that, whether it is 1/2 in off the stud depends on the box.
    [Fact]
    public void GenericBox_ThatMayBeTooWide_DependsOnIt()
    {
        OneBox box = FramingSketch.Plain("cut-in", 0);
        Verdict At(string at) => (box with { Box = box.Box.WithSize(null).WithKind(BoxKind.CutIn).WithAt(Distance.Parse(at)) }).Verdict();
        Assert.Equal((Verdict.Passes, Verdict.Unknown, Verdict.Fails), (At("66-7/16 in"), At("66-3/8 in"), At("66-1/4 in")));
    }

    // On a block right against the stud, or nailed to a post, it is where it is by its own width: nothing to depend on.
    [Fact]
    public void GenericBox_RightAgainstSomething_DoesNotDependOnItsWidth()
    {
        OneBox blocked = FramingSketch.Plain("bar", 518 + 9);
        blocked = blocked with { Box = blocked.Box.WithSize(null).WithMounting(new Mounting(MountingMethod.Blocking)) };
        Assert.Equal(Verdict.Passes, blocked.Verdict());
        OneBox posted = blocked with { Rules = Filled, Wall = wall => wall.WithNoCavity(new[] { new NoCavity(NoCavityKind.Post, Eighths(490), Eighths(518)) }) };
        Assert.Equal(Verdict.Passes, posted.Verdict());
        Assert.Equal(Verdict.Fails, (posted with { Box = posted.Box.WithAt(Eighths(525)) }).Verdict());
    }

    /// <summary>The second road: every piece as a rectangle in whole eighths of an inch, put there by the trade's words, and the box as another.</summary>
    [Fact]
    public void Verdict_OnRandomWalls_IsThatOfARectangleAmongRectangles() => Prop.ForAll(FramingSketch.Any, sketch =>
        (sketch.Box(Row).Check()?.Verdict ?? Verdict.Passes) == (sketch.Fits() ? Verdict.Passes : Verdict.Fails)).Check(Tries.Always(2000));

    [Fact]
    public void Verdict_InAMirror_IsTheSame() => Prop.ForAll(FramingSketch.Any, sketch =>
    {
        RuleSet rules = new([Row.Row("framing-fit"), Filled.Row("in-cavity"), Web.Row("web-side"), Bars.Row("bar-span")]);
        Dwelling dwelling = sketch.Box(rules).Build();
        LayoutEvaluator evaluator = new(rules);
        return DwellingGen.Lines(evaluator.Evaluate(dwelling).Findings).SequenceEqual(DwellingGen.Lines(evaluator.Evaluate(Mirror.Of(dwelling)).Findings));
    }).Check(Tries.Always(500));

    [Fact]
    public void WebSide_OnRandomWalls_IsThatOfRectanglesOfWhichSomeHaveOneSide() => Prop.ForAll(FramingSketch.Any, sketch =>
        (sketch.Box(Web).Check()?.Verdict ?? Verdict.Passes) == (sketch.IsOffTheOpenSide() ? Verdict.Passes : Verdict.Fails)).Check(Tries.Always(2000));

    [Fact]
    public void BarSpan_OnRandomWalls_IsThatOfTheGapBetweenRectangles() => Prop.ForAll(FramingSketch.Any, sketch =>
        (sketch.Box(Bars).Check()?.Verdict ?? Verdict.Passes) == (sketch.IsSpanned() ? Verdict.Passes : Verdict.Fails)).Check(Tries.Always(2000));

    // Or the roads above would have nothing to differ about.
    [Fact]
    public void RandomWalls_HaveEnoughOfEach()
    {
        FramingSketch[] sketches = FramingSketch.Any.Generator.Sample(2000).ToArray();
        Assert.InRange(sketches.Count(sketch => !sketch.Fits()), 200, 1800);
        Assert.InRange(sketches.Count(sketch => !sketch.IsOffTheOpenSide()), 10, 1800);
        Assert.InRange(sketches.Count(sketch => !sketch.IsSpanned()), 10, 1800);
    }

    [Fact]
    public void Filled_OnRandomWalls_IsThatOfTwoRectangles() => Prop.ForAll(FramingSketch.Any, sketch =>
        (sketch.Box(Filled).Check()?.Verdict ?? Verdict.Passes) == (sketch.IsFilled() ? Verdict.Fails : Verdict.Passes)).Check(Tries.Always(1000));
}
