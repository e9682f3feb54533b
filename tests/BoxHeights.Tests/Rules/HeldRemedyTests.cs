using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Remedies that bring a box to another stud name it; where a stud has to be packed out for a plate to clear its casing, they say so.</summary>
public sealed class HeldRemedyTests
{
    private static readonly RuleSet FitAndCavity = new([RuleSets.RoughInPractice.Row("framing-fit"), RuleSets.RoughInPractice.Row("in-cavity")]);
    private static readonly StudLayout Sixteen = new StudLayout().WithSpacing(CaseFile.Inches("16")).WithKnown(StudKnowledge.Declared);

    // Stud 3 is centered on 48 in. A duct right of it takes the place of the box; on the stud's left side, 48 less 3/4 less 1-1/8, it is clear.
    [Fact]
    public void Move_ToAnotherSide_CarriesTheStudAndSide()
    {
        OneBox box = WithADuct(Sixteen, new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Right));
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies));
        Assert.Equal("set the-box 16 in to top above subfloor, 46-1/8 in from the left end of its wall, on the left side of stud 3", move.Text);
        Dwelling moved = move.ApplyTo(box.Build());
        Assert.Equal((3, StudSide.Left), (move.Mounting!.Stud, move.Mounting.Side));
        Assert.Equal(move.Mounting, moved.FindBox("the-box")!.Box.Mounting);
        Assert.Equal("stud 3, left side", Assert.Single(Sheets.For(moved, box.Rules).Rows).Stud);
        Assert.Empty(new LayoutEvaluator(box.Rules).Evaluate(moved).Findings);
    }

    // Furring 1-1/2 in deep: no nail-on box goes in. Placed by its center on the right side of stud 3, 48 + 3/4 + 1-1/8; a square box of 4 in on that stud has its center at 50-3/4 in.
    [Fact]
    public void Resize_OfABoxPlacedByItsCenter_KeepsItsStud()
    {
        RuleSet rules = new([RuleSets.RoughInPractice.Row("framing-fit"), RuleSets.RoughInPractice.Row("cavity-depth")]);
        OneBox box = new OneBox { Rules = rules, Wall = wall => wall.WithStuds(Sixteen).WithCavity(CaseFile.Inches("1-1/2")).WithBoards(new BoardLayout().WithThickness(CaseFile.Inches("1/2"))) }
            .At(BoxHeight.Parse("16 in to top above subfloor"));
        box = box with { Box = box.Box.WithAt(CaseFile.Inches("49-7/8")) };
        ResizeBox resize = Assert.IsType<ResizeBox>(Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies));
        Assert.EndsWith("with a ring for the-box, on the right side of stud 3", resize.Text, StringComparison.Ordinal);
        Assert.Equal((3, StudSide.Right), (resize.Mounting!.Stud, resize.Mounting.Side));
        Evaluation mended = new LayoutEvaluator(rules).Evaluate(resize.ApplyTo(box.Build()));
        Assert.Empty(mended.Findings);
        Assert.Equal(CaseFile.Inches("50-3/4"), Assert.Single(mended.Wall(OneBox.WallAddress).Boxes).Along);
    }

    [Fact]
    public void Move_AmongAssumedStudsOrOfABoxThatIsHeldOtherwise_NamesNone()
    {
        MoveBoxes MoveOf(OneBox box) => Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies));
        MoveBoxes assumed = MoveOf(WithADuct(Sixteen.WithKnown(StudKnowledge.Assumed), new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Right)));
        Assert.Equal(new Mounting(MountingMethod.Stud), assumed.Mounting);
        Assert.DoesNotContain("stud", assumed.Text, StringComparison.Ordinal);
        OneBox barred = WithADuct(Sixteen, new Mounting(MountingMethod.Bar));
        Assert.Equal(new Mounting(MountingMethod.Bar), MoveOf(barred with { Box = barred.Box.WithAt(CaseFile.Inches("52")) }).Mounting);
        OneBox unsaid = WithADuct(Sixteen, null);
        Assert.Null(MoveOf(unsaid with { Box = unsaid.Box.WithAt(CaseFile.Inches("52")) }).Mounting);
    }

    // Stud 3 is from 47-1/4 to 48-3/4 in. A cut-in box 2-1/4 in wide keeps 1/2 in off it: 45-5/8 in at most, an inch of slack, and down to the next quarter.
    [Fact]
    public void CutInBox_OnAStud_GoesIntoTheBay_WhetherOrNotItsMountingIsStated()
    {
        OneBox box = FramingSketch.Plain("cut-in", 376);
        foreach (OneBox one in new[] { box, box with { Box = box.Box.WithMounting(null).WithKind(BoxKind.CutIn) } })
        {
            MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(one.Evaluate().Findings).Remedies));
            Assert.Equal(CaseFile.Inches("44-1/2"), move.Along);
            Assert.Empty(new LayoutEvaluator(one.Rules).Evaluate(move.ApplyTo(one.Build())).Findings);
            Assert.True(one.Evaluate().TryNearest("the-box", CaseFile.Inches("47"), one.Box.Height!.Value, out NearestPlace? nearest));
            Assert.Equal(move.Along, nearest.Along);
        }
    }

    [Fact]
    public void Session_MoveToAStudsFace_IsOnThatStud()
    {
        OneBox box = WithADuct(Sixteen, new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Right));
        LayoutSession session = new LayoutEvaluator(box.Rules).Open(box.Build());
        Mounting? MountingAt(string at)
        {
            session.Move("the-box", CaseFile.Inches(at), BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor));
            return session.ToDwelling().FindBox("the-box")!.Box.Mounting;
        }

        Assert.Equal(new Mounting(MountingMethod.Stud).WithStud(5).WithSide(StudSide.Right), MountingAt("81-7/8"));
        Assert.Equal(new Mounting(MountingMethod.Stud), MountingAt("83"));
    }

    // A door from 60 to 92 in with a leaf of 30, reveal 3/16; the king ends at 95, a box 2-1/4 in wide is centered on 96-1/8. What one and two more 2-bys leave between
    // plate and casing: casing 3-1/2 with a jumbo plate -5/16 + 1-1/2; 4-1/2 with a standard one -15/16 + 1-1/2, with a jumbo one -1-5/16 + 3 (one leaves 3/16, too little).
    [Theory]
    [InlineData("3-1/2", "jumbo", "97-5/8", "one 2x block")]
    [InlineData("4-1/2", "standard", "97-5/8", "one 2x block")]
    [InlineData("4-1/2", "jumbo", "99-1/8", "two 2x blocks")]
    public void PlateOnTheCasing_OfABoxOnTheKing_IsMovedAndTheKingPackedOut(string casing, string plate, string at, string blocks)
    {
        foreach (StudKnowledge known in new[] { StudKnowledge.Declared, StudKnowledge.Assumed })
        {
            OneBox box = OnTheKing(casing, plate, known);
            Finding finding = Assert.Single(box.Evaluate().Findings);
            Assert.Equal("trim-clearance", finding.RuleId);
            AddBlocking packed = Assert.IsType<AddBlocking>(Assert.Single(finding.Remedies));
            Assert.Equal("move the-box to " + at + " in from the left end of its wall, and pack the stud to the left of the-box out with " + blocks + " at its height", packed.Text);
            Assert.Equal(CaseFile.Inches(at), packed.Along);
            Dwelling mended = packed.ApplyTo(box.Build());
            Assert.Empty(new LayoutEvaluator(box.Rules).Evaluate(mended).Findings);

            // Neither does by itself: moved it hangs beside the stud, and blocking where it is leaves the plate on the casing.
            LayoutEvaluator evaluator = new(box.Rules);
            string[] Left(Func<DeviceBox, DeviceBox> change) => evaluator.Evaluate(box.Build().WithBoxes(change)).Findings.Select(one => one.RuleId).ToArray();
            Assert.Equal(known == StudKnowledge.Declared ? ["framing-fit"] : [], Left(one => one.WithAt(packed.Along)));
            Assert.Equal(["trim-clearance"], Left(one => one.WithMounting(new Mounting(MountingMethod.Blocking))));
        }
    }

    [Fact]
    public void PlateOnTheCasing_OfABoxThatHasToStayOrIsOnABar_IsNotPacked()
    {
        OneBox box = OnTheKing("3-1/2", "jumbo", StudKnowledge.Declared);
        Assert.IsType<NoneFound>(Assert.Single(Assert.Single((box with { Box = box.Box.WithPinned(true) }).Evaluate().Findings).Remedies));
        OneBox barred = box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Bar)) };
        Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(barred.Evaluate().Findings).Remedies));
    }

    // Flanges of metal take no pack of 2-bys.
    [Fact]
    public void PlateOnTheCasing_OfABoxOnAMetalStud_IsMovedToAnother()
    {
        OneBox box = OnTheKing("3-1/2", "jumbo", StudKnowledge.Declared, "1-1/4");
        Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies));
    }

    private static OneBox OnTheKing(string casing, string plate, StudKnowledge known, string thickness = "1-1/2")
    {
        Opening door = new Opening("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("92")).WithLeaf(CaseFile.Inches("30")).WithCasing(CaseFile.Inches(casing)).WithReveal(CaseFile.Inches("3/16"));
        OneBox box = new() { Rules = RuleSets.RoughInPractice, Wall = wall => wall.WithLength(CaseFile.Inches("150")).WithOpenings(new[] { door }).WithStuds(Sixteen.WithFirstFace(CaseFile.Inches("10")).WithKnown(known).WithThickness(CaseFile.Inches(thickness))) };
        DeviceBox on = new DeviceBox("the-box", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))).WithPlate(new PlateKind(plate))
            .WithMounting(new Mounting(MountingMethod.Stud)).WithHeight(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor));
        return box with { Box = on.WithAt(CaseFile.Inches("92") + (CaseFile.Inches(thickness) * 2) + CaseFile.Inches("1-1/8")) };
    }

    private static OneBox WithADuct(StudLayout studs, Mounting? mounting)
    {
        OneBox box = new()
        {
            Rules = FitAndCavity,
            Wall = wall => wall.WithStuds(studs).WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, CaseFile.Inches("49"), CaseFile.Inches("60")) }),
        };
        return box with
        {
            Box = box.Box.WithAt(null).WithMounting(mounting).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))).WithHeight(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor)),
        };
    }
}
