using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What rests on studs that nobody has seen says so, and nothing else does.</summary>
public sealed class AssumedStudTests
{
    private const string Assumed = "(studs assumed at 16 in on center from the left end)";
    private static readonly StudLayout Sixteen = new StudLayout().WithSpacing(CaseFile.Inches("16"));

    // 144 in is nine times 16: a stud is centered on 64 in whichever end the layout was pulled from.
    [Theory]
    [InlineData(MountingMethod.Bar, "64")]
    [InlineData(MountingMethod.CutIn, "66")]
    [InlineData(MountingMethod.Stud, "64")]
    public void Finding_OfAStudOfTheLayout_SaysThatItIsAssumed(MountingMethod how, string at)
    {
        OneBox box = Box(Sixteen, box => box.WithAt(CaseFile.Inches(at)).WithMounting(new Mounting(how)));
        Assert.Contains(Assumed, Assert.Single(box.Evaluate().Findings).Message, StringComparison.Ordinal);
        OneBox declared = Box(Sixteen.WithKnown(StudKnowledge.Declared), box => box.WithAt(CaseFile.Inches(at)).WithMounting(new Mounting(how)));
        Assert.DoesNotContain("assumed", Assert.Single(declared.Evaluate().Findings).Message, StringComparison.Ordinal);
    }

    // The corner stud stands whatever the layout.
    [Fact]
    public void Finding_OfACornerStud_IsSure()
    {
        OneBox box = Box(Sixteen, box => box.WithAt(CaseFile.Inches("2")).WithMounting(new Mounting(MountingMethod.Bar)));
        Assert.DoesNotContain("assumed", Assert.Single(box.Evaluate().Findings).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(WallEnd.Right, null, "(studs assumed at 16 in on center from the right end)")]
    [InlineData(WallEnd.Left, "16", "(studs assumed at 16 in on center from the left end, the first at 16 in)")]
    public void Layout_InWords_IsTheOneThatIsAssumed(WallEnd from, string? first, string said)
    {
        // Placed by its stud in what a duct takes: that it is there rests on where the stud is.
        StudLayout studs = Sixteen.WithFrom(from).WithFirstFace(first is null ? null : CaseFile.Inches(first));
        OneBox box = Box(studs, box => box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(4).WithSide(StudSide.Right)), "in-cavity");
        Func<Wall, Wall> wall = box.Wall;
        OneBox filled = box with { Wall = one => wall(one).WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, CaseFile.Inches("60"), CaseFile.Inches("72")) }) };
        Assert.Contains(said, Assert.Single(filled.Evaluate().Findings).Message, StringComparison.Ordinal);
        OneBox placed = filled with { Box = filled.Box.WithAt(CaseFile.Inches("66")) };
        Assert.DoesNotContain("assumed", Assert.Single(placed.Evaluate().Findings).Message, StringComparison.Ordinal);
    }

    // A height that isn't allowed anywhere along the wall doesn't rest on where the stud is.
    [Fact]
    public void Finding_OfAHeight_DoesNotRestOnStuds()
    {
        OneBox box = Box(Sixteen, box => box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(4).WithSide(StudSide.Right)), "general-height").At(BoxHeight.Parse("60 in to top above subfloor"));
        Assert.DoesNotContain("assumed", Assert.Single(box.Evaluate().Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Finding_OfTwoBoxes_SaysSoWhereAStudTellsWhereOneIs()
    {
        OneBox box = Box(Sixteen, box => box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(4).WithSide(StudSide.Right)), "next-box");
        Func<Wall, Wall> wall = box.Wall;
        string Said(DeviceBox one) => Assert.Single((box with { Box = one, Wall = face => wall(face).WithBoxes(new[] { box.Box.WithId("other").WithMounting(null).WithAt(CaseFile.Inches("66")) }) }).Evaluate().Findings).Message;
        Assert.Contains(Assumed, Said(box.Box), StringComparison.Ordinal);
        Assert.DoesNotContain("assumed", Said(box.Box.WithMounting(null).WithAt(CaseFile.Inches("66"))), StringComparison.Ordinal);
    }

    [Fact]
    public void Layout_OfAMetricHouse_IsSaidInMillimeters()
    {
        OneBox box = Box(new StudLayout().WithSpacing(Distance.FromMillimeters(400)), box => box.WithAt(Distance.FromMillimeters(1600)).WithMounting(new Mounting(MountingMethod.Bar)));
        Func<Wall, Wall> wall = box.Wall;
        Dwelling house = (box with { Wall = one => wall(one).WithLength(Distance.FromMillimeters(4000)) }).Build().WithUnits(LengthUnits.Millimeters);
        Assert.Contains("(studs assumed at 400 mm on center from the left end)", Assert.Single(new LayoutEvaluator(box.Rules).Evaluate(house).Findings).Message, StringComparison.Ordinal);
    }

    // Where nobody has seen the studs nobody can say how long a block between them is.
    [Fact]
    public void Blocking_BetweenAssumedStuds_HasNoLength()
    {
        OneBox box = Box(Sixteen, box => box.WithAt(CaseFile.Inches("64")).WithMounting(new Mounting(MountingMethod.Stud)));
        Assert.All(Assert.Single(box.Evaluate().Findings).Remedies.OfType<AddBlocking>(), block => Assert.DoesNotContain("long", block.Text, StringComparison.Ordinal));
    }

    private static OneBox Box(StudLayout studs, Func<DeviceBox, DeviceBox> described, string rule = "framing-fit")
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, rule), Wall = wall => wall.WithStuds(studs) };
        return box with { Box = described(box.Box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))).WithHeight(BoxHeight.ToTop(CaseFile.Inches("16"), Datum.Subfloor))) };
    }
}
