using System;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>
/// Boxes in walls that are declared rated, after the exceptions of IBC 714.4.2 (2018): steel boxes of 16 in² at most; on opposite sides 24 in apart in different
/// stud cavities, or the depth of a filled cavity, solid fireblocking, putty pads on both, or listed means.
/// </summary>
public sealed class RatedWallTests
{
    private static RuleSet Separation => OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "rated-separation");
    private static RuleSet Opening => OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "rated-opening");
    private static readonly Distance Tick = Distance.FromTicks(1);

    private static DeviceBox Box(string id, Distance at) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(at)
        .WithSize(new BoxSize(In("2"), In("4"))).WithHeight(BoxHeight.Parse("16 in to top above subfloor")).WithFireProtection(FireProtection.None);

    /// <summary>Two rooms with one wall of 144 in between them, a box on each face: 60 in from the left end of its own, and so many inches away along the wall.</summary>
    private static Evaluation Evaluate(Distance away, Func<Wall, Wall>? wall = null, Func<DeviceBox, DeviceBox>? box = null, RuleSet? rules = null)
    {
        wall ??= one => one;
        box ??= one => one;
        DwellingBuilder house = new("case");
        house.Add(new Storey("main"));
        house.Room("one", RoomKind.Bedroom, "main").Wall("east", In("144")).With(face => wall(face.WithRated(true).WithBackOf("other/west").WithBackOffset(Distance.Zero))).Add(box(Box("a", In("60"))));

        // The other face runs the other way: its place 84 in is right behind 60 in.
        house.Room("other", RoomKind.Bedroom, "main").Wall("west", In("144")).Add(box(Box("b", In("84") + away)));
        return new LayoutEvaluator(rules ?? Separation).Evaluate(house.Build());
    }

    // Boxes 2 in wide: side to side 24 in is 26 in from center to center.
    [Theory]
    [InlineData(0, true)]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void Apart_OneTickUnderAtAndOverTheLimit(int ticks, bool good)
    {
        Distance away = In("26") + Distance.FromTicks(ticks);
        Assert.Equal(good, Evaluate(away).IsClean);
        Assert.Equal(good, Evaluate(-away).IsClean);
    }

    [Fact]
    public void Apart_TooNear_IsAViolationThatNamesTheOtherBox()
    {
        Finding finding = Assert.Single(Evaluate(In("24")).Findings);
        Assert.Equal((Verdict.Fails, Severity.Violation), (finding.Verdict, finding.Severity));
        Assert.Contains("near " + (finding.Subject == "a" ? "b" : "a") + " on the other face", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public void Apart_ReadFromCenters_IsEnoughAt24Inches(int ticks, bool good) =>
        Assert.Equal(good, Evaluate(In("24") + Distance.FromTicks(ticks), null, null, Separation.WithReading("rated-separation", "centers")).IsClean);

    // 24 in from center to center is 22 in from side to side.
    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public void Apart_TooNearFromSideToSide_IsDisputedWhereCentersAreFarEnough(int ticks, bool disputed)
    {
        Finding finding = Assert.Single(Evaluate(In("24") + Distance.FromTicks(ticks)).Findings);
        Assert.Equal(disputed ? ["centers"] : [], finding.DisputedBy);
        Assert.Equal(disputed, finding.Message.Contains("met where it is read so: measured from center to center", StringComparison.Ordinal));
    }

    // A town that asks it only of boxes of its own listing groups no box of these: read so, it is met.
    [Fact]
    public void Apart_AReadingThatSpeaksOfOtherBoxes_IsMetByThese()
    {
        RatedSeparation row = (RatedSeparation)Separation.Row("rated-separation");
        RatedSeparation others = row with { Scope = new RuleScope { Purposes = new[] { BoxPurpose.Dryer } } };
        RuleSet rules = new([row with { Readings = new[] { new Reading("dryers-alone", "it speaks of dryers' boxes alone", others), new Reading("all-the-same", "as it is", row with { Readings = default }) } }]);
        Assert.Equal(["dryers-alone"], Assert.Single(Evaluate(In("10"), null, null, rules).Findings).DisputedBy);
    }

    [Fact]
    public void FilledCavity_NeedsItsDepthBetweenTheBoxes()
    {
        Wall Filled(Wall wall) => wall.WithCavityFilled(true).WithCavity(In("3-1/2"));
        Assert.True(Evaluate(In("5-1/2"), Filled).IsClean);
        Assert.False(Evaluate(In("5-1/2") - Tick, Filled).IsClean);
        Assert.False(Evaluate(In("5-1/2"), wall => wall.WithCavity(In("3-1/2"))).IsClean);
    }

    [Theory]
    [InlineData(FireProtection.PuttyPad, true)]
    [InlineData(FireProtection.Listed, true)]
    [InlineData(FireProtection.None, false)]
    public void Protection_OnBoth_IsEnough(FireProtection protection, bool good) => Assert.Equal(good, Evaluate(Distance.Zero, null, box => box.WithFireProtection(protection)).IsClean);

    [Fact]
    public void Protection_OnOneAlone_IsNotEnough() =>
        Assert.Equal(Verdict.Fails, Assert.Single(Evaluate(Distance.Zero, null, box => box.WithFireProtection(box.Id == "a" ? FireProtection.PuttyPad : FireProtection.None)).Findings).Verdict);

    [Fact]
    public void Protection_NotStated_IsUnknownAndSaysSo()
    {
        Finding finding = Assert.Single(Evaluate(Distance.Zero, null, box => box.WithFireProtection(null)).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.FireProtection), (finding.Verdict, finding.Needs));
        Assert.Contains("how the boxes are protected", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("62", "63-1/2", true)]
    [InlineData("80", "81-1/2", false)]
    public void Fireblocking_BetweenThem_IsEnough(string left, string right, bool good) =>
        Assert.Equal(good, Evaluate(-In("10"), wall => wall.WithNoCavity(new[] { new NoCavity(NoCavityKind.Fireblock, In(left), In(right)) })).IsClean);

    // A wall with one stud at 10 in: everything right of it is one cavity, however far apart.
    [Fact]
    public void OneCavity_IsNotEnough_HoweverFarApart()
    {
        Wall OneStud(Wall wall, string face) => wall.WithStuds(new StudLayout().WithFaces(new[] { In(face) }).WithKnown(StudKnowledge.Measured));
        Assert.False(Evaluate(-In("40"), wall => OneStud(wall, "10")).IsClean);
        Assert.True(Evaluate(-In("40"), wall => OneStud(wall, "80")).IsClean);
    }

    [Fact]
    public void WallThatIsNotDeclaredRated_HasNothingSaidOfIt() => Assert.True(Evaluate(Distance.Zero, wall => wall.WithRated(false)).IsClean);

    // 4 in square is 16 in², at the limit; 4-11/16 in square is nearly 22. Plastic boxes follow their listing.
    [Theory]
    [InlineData("four-square", true)]
    [InlineData("four-eleven-square", false)]
    [InlineData("nail-on", null)]
    public void MetalBox_OfMoreThan16SquareInches_IsTooLarge(string kind, bool? good)
    {
        OneBox box = new() { Rules = Opening, Wall = wall => wall.WithRated(true) };
        box = box with { Box = box.Box.WithKind(new BoxKind(kind)) };
        Check? check = box.At(BoxHeight.Parse("16 in to bottom above subfloor")).Check();
        Assert.Equal(good, check is { } one ? one.Verdict == Verdict.Passes : null);
        Assert.Null((box with { Wall = wall => wall }).At(BoxHeight.Parse("16 in to bottom above subfloor")).Check());
        if (good == false)
        {
            Finding finding = box.At(BoxHeight.Parse("16 in to bottom above subfloor")).Evaluate().Findings.Single();
            Assert.Contains("allowed at most 16 in2", finding.Message, StringComparison.Ordinal);
        }
    }
}
