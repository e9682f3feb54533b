using System;
using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes beside or behind what stands against their wall.</summary>
public sealed class AnchoredPlaceTests
{
    private static readonly Items<string> Bed = new(["bed"]);
    private static readonly Items<string> Nightstand = new(["nightstand"]);
    private static readonly Distance Tick = Distance.FromTicks(1);

    private static Distance Inches(decimal count) => Distance.FromInches(count);

    private static Fixture On(string kind, decimal left, decimal right) =>
        new Fixture("a-" + kind, new FixtureKind(kind)).WithWall("wall").WithLeft(Inches(left)).WithRight(Inches(right));

    private static OneBox Behind(string row, BoxPurpose purpose, params Fixture[] fixtures)
    {
        OneBox box = new OneBox { Rules = OneBox.Only(RuleSets.RoughInPractice, row), Room = room => room.WithFixtures(fixtures) }.At(BoxHeight.Parse("30 in to bottom above subfloor"));
        return box with { Box = box.Box.WithPurpose(purpose) };
    }

    private static Verdict At(OneBox box, Distance along) => (box with { Box = box.Box.WithAt(along) }).Verdict();

    // A queen bed is 60 in wide; boxes stand 6 to 12 in outside its edges, and nobody remarks on 2 to 30 in. Common practice, no source.
    [Theory]
    [InlineData(36, true)]
    [InlineData(33, true)]
    [InlineData(27, true)]
    [InlineData(72, false)]
    [InlineData(100, false)]
    [InlineData(108, true)]
    [InlineData(114, true)]
    [InlineData(136, false)]
    public void Bedside_StandsOutsideTheBed(decimal at, bool good) =>
        Assert.Equal(good ? Verdict.Passes : Verdict.Fails, At(Behind("bedside-place", BoxPurpose.Bedside, On("bed", 42, 102)), Inches(at)));

    // Behind a sofa, at a television: within the outline, ends included. Common practice, no source.
    [Theory]
    [InlineData("sofa")]
    [InlineData("television")]
    [InlineData("refrigerator")]
    [InlineData("range")]
    public void BehindIt_MeansWithinItsOutline_EndsIncluded(string kind)
    {
        OneBox box = Behind(kind + "-place", new BoxPurpose(kind), On(kind, 40, 80));
        Assert.Equal(Verdict.Passes, At(box, Inches(40)));
        Assert.Equal(Verdict.Passes, At(box, Inches(80)));
        Assert.Equal(Verdict.Fails, At(box, Inches(40) - Tick));
        Assert.Equal(Verdict.Fails, At(box, Inches(80) + Tick));
    }

    /// <summary>Round the corner of a washer that stands 4 in from it, 30 in deep, its receptacle is as near as anywhere: a hand that gets 24 in past its side gets there. By brute force in plan, in whole inches.</summary>
    [Fact]
    public void RoundTheCorner_NearItsThing_IsAllowed()
    {
        for (int fromCorner = 3; fromCorner < 110; fromCorner++)
        {
            int beyond = Math.Max(0, fromCorner - 30);
            Assert.Equal((4 * 4) + (beyond * beyond) <= 24 * 24 ? 0 : 1, RoundACorner(4, 30, fromCorner).Findings.Count);
        }

        // How deep it is nobody said: it is surely where it touches its wall, and may reach out 36 in.
        Assert.Empty(RoundACorner(4, null, 23).Findings);
        Finding open = Assert.Single(RoundACorner(4, null, 40).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.PlanPlace), (open.Verdict, open.Needs));
        Assert.Equal(Verdict.Fails, Assert.Single(RoundACorner(4, null, 90).Findings).Verdict);
    }

    // A dishwasher with its back to the south wall, 40 in from its receptacle on the north wall: its cord would cross the room.
    [Fact]
    public void AcrossTheRoom_NearItsThing_IsNotAllowed()
    {
        Fixture dishwasher = SquareRoom.Against("machine", FixtureKind.Dishwasher, "south", Inches(40), Inches(64), Inches(24));
        SquareRoom galley = new() { Kind = RoomKind.Kitchen, Deep = Inches(64), Fixtures = [dishwasher], North = [SquareRoom.Box("duplex-receptacle", "dishwasher", Inches(92), Inches(18))] };
        Assert.Single(new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "dishwasher-place")).Evaluate(galley.House()).Findings);
    }

    // One that is too far along its own wall for that.
    [Fact]
    public void RoundTheCorner_FarFromItsThing_IsNotAllowed() => Assert.Single(RoundACorner(40, 30, 10).Findings);

    private static Evaluation RoundACorner(decimal thingOff, decimal? deep, decimal boxOff)
    {
        Fixture washer = new Fixture("machine", FixtureKind.Washer).WithWall("north").WithLeft(Inches(thingOff)).WithRight(Inches(thingOff + 27)).WithDepth(deep is { } depth ? Inches(depth) : null);
        SquareRoom laundry = new() { Kind = RoomKind.Laundry, Fixtures = [washer], West = [SquareRoom.Box("gfci-receptacle", "laundry", Inches(120 - boxOff), Inches(44))] };
        return new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "laundry-place")).Evaluate(laundry.House());
    }

    [Fact]
    public void WallWithoutTheThing_HasNothingSaidOfIt()
    {
        Assert.Null(Behind("bedside-place", BoxPurpose.Bedside).Check());
        Assert.Null(Behind("bedside-place", BoxPurpose.Bedside, On("sofa", 10, 50)).Check());
        Assert.Null(Behind("bedside-place", BoxPurpose.Bedside, On("bed", 10, 70).WithWall(null)).Check());
    }

    [Fact]
    public void ThingWithoutItsPlace_IsListedAsNotChecked()
    {
        OneBox box = Behind("bedside-place", BoxPurpose.Bedside, On("bed", 10, 70).WithRight(null));
        Assert.Contains("bedside-place: where the bed stands along its wall isn't stated (room/wall)", box.Evaluate().NotJudged);
    }

    [Fact]
    public void Interruption_Opening_AndCovering_AreThingsToo()
    {
        OneBox light = Behind("vanity-light-place", BoxPurpose.VanityLight);
        OneBox overBasin = light with
        {
            Wall = wall => wall.WithCounters(new[] { new Counter("vanity", CounterKind.Bath, Inches(0), Inches(60)).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, Inches(20), Inches(40)) }) }),
        };
        Assert.Equal(Verdict.Passes, At(overBasin, Inches(52)));
        Assert.Equal(Verdict.Fails, At(overBasin, Inches(53)));
        OneBox overMirror = light with { Wall = wall => wall.WithCoverings(new[] { new Covering("glass", CoveringKind.Mirror, Inches(0), Inches(60)) }) };
        Assert.Equal(Verdict.Passes, At(overMirror, Inches(72)));
        Assert.Equal(Verdict.Fails, At(overMirror, Inches(73)));

        // 2-1/4 in casing with a reveal of 3/16 in ends 1-7/16 in outside the rough opening: the bracket's box at least 4 in beyond.
        OneBox window = Behind("window-top-place", BoxPurpose.WindowTop) with
        {
            Wall = wall => wall.WithOpenings(new[] { new Opening("window", OpeningKind.Window, Inches(40), Inches(76)).WithCasing(Inches(2.25m)).WithReveal(Distance.Parse("3/16 in")) }),
        };
        Assert.Equal(Verdict.Passes, At(window, Distance.Parse("81-7/16 in")));
        Assert.Equal(Verdict.Fails, At(window, Distance.Parse("81-7/16 in") - Tick));
    }

    [Fact]
    public void Finding_SaysWhichWay_AndTheRemedyGoesThere()
    {
        OneBox box = Behind("bedside-place", BoxPurpose.Bedside, On("bed", 42, 102));
        Finding finding = Assert.Single((box with { Box = box.Box.WithAt(Inches(100)) }).Evaluate().Findings);
        Assert.Contains("must be 2 in to 30 in beside a bed: off by 4 in to the right [", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(Inches(105), Assert.IsType<MoveBoxes>(Assert.Single(finding.Remedies)).Along);
    }

    /// <summary>Brute force: the distance of a point from each outline, in whole inches.</summary>
    [Fact]
    public void Verdict_BesideRandomThings_IsThatOfTheDistanceToTheNearest()
    {
        Prop.ForAll(Arb.From(Gen.Choose(0, 140).ArrayOf(7)), n =>
        {
            int beyond = n[5] % 8;
            int upTo = beyond + (n[6] % 12);
            PlaceAnchor anchor = new PlaceAnchor(Bed, Inches(upTo)).WithBeyond(n[4] % 3 == 0 ? null : Inches(beyond));
            (int Left, int Right)[] beds = [(Math.Min(n[0], n[1]), Math.Max(n[0], n[1]) + 1), (Math.Min(n[2], n[3]), Math.Max(n[2], n[3]) + 1)];
            OneBox box = Behind("bedside-place", BoxPurpose.Bedside, beds.Select((bed, i) => On("bed", bed.Left, bed.Right).WithId("bed-" + i)).ToArray()) with
            {
                Rules = new RuleSet([new AnchoredPlace("beside", "beside it", Severity.Note, Citation.CommonPractice, anchor)]),
            };
            int at = Math.Clamp(n[4], 2, 142);
            bool good = beds.Any(bed => Math.Max(0, Math.Max(bed.Left - at, at - bed.Right)) is var away
                && away <= upTo && (anchor.Beyond is null || (away >= beyond && (at <= bed.Left || at >= bed.Right))));
            return (At(box, Inches(at)) == Verdict.Passes) == good;
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void Table_WithAnAnchorOfItsOwn_TakesTheUsualOnesPlace()
    {
        PracticeHeight own = new PracticeHeight(BoxPurpose.Bedside, BoxHeight.Parse("28 in to bottom above subfloor")).WithAnchor(new PlaceAnchor(Nightstand, Distance.Zero));
        PracticeTable table = new PracticeTable("Alder crew").WithHeights(new[] { own });
        Assert.Equal("within the outline of a nightstand", RuleSets.RoughInPracticeWith(table).Row("bedside-place").Numbers);
        Assert.Throws<ArgumentException>(() => RuleSets.RoughInPracticeWith(table.WithHeights(new[] { own.WithAnchor(null) })).Row("bedside-place"));
    }
}
