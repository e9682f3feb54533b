using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>Boxes that aren't on their wall, and kinds that nobody knows.</content>
public sealed partial class ResolverTests
{
    [Fact]
    public void UnknownReference_StudThatIsNotThere_IsNamedAndNotJudged() => AssertNotJudged(
        Box("far", "0").WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(40).WithSide(StudSide.Left)),
        LayoutFaultKind.UnknownReference,
        "stud 40");

    [Theory]
    [InlineData(Datum.Countertop, "no counter")]
    [InlineData(Datum.SplashTop, "no finish")]
    public void UnknownReference_CountertopThatIsNotThere_IsNamedAndNotJudged(Datum datum, string words) =>
        AssertNotJudged(Box("above", "60").WithHeight(BoxHeight.ToBottom(CaseFile.Inches("8"), datum)), LayoutFaultKind.UnknownReference, words);

    // A one-gang box is 2-1/4 in wide and 3-3/4 tall: common practice, no source.
    [Theory]
    [InlineData("1-1/8", "16", true)]
    [InlineData("1-1/16", "16", false)]
    [InlineData("142-7/8", "16", true)]
    [InlineData("142-15/16", "16", false)]
    [InlineData("60", "3-3/4", true)]
    [InlineData("60", "3-11/16", false)]
    public void OutsideItsWall_BoxThatReachesBeyondIt_IsNamed(string at, string top, bool fits)
    {
        Evaluation evaluation = Evaluator.Evaluate(House(wall => wall.Add(Box("edge", at).WithHeight(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor)))));
        Assert.Equal(fits, evaluation.For("edge").All(finding => finding.Fault is null));
    }

    // Its place follows from the stud, and there is a counter there.
    [Fact]
    public void UnknownReference_BoxOnAStudBehindACounter_IsNone()
    {
        DeviceBox box = Box("above", "0").WithAt(null).WithHeight(BoxHeight.ToBottom(CaseFile.Inches("8"), Datum.Countertop))
            .WithMounting(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Left));
        Dwelling dwelling = House(wall => wall.Add(box).Add(Counter("counter", "30", "90").WithTop(new Level(CaseFile.Inches("36"), Datum.FinishedFloor))));
        Assert.DoesNotContain(Evaluator.Evaluate(dwelling).Findings, finding => finding.Fault is not null);
    }

    [Fact]
    public void OutsideItsWall_BoxBeyondItsEnd_IsNamedAndNotJudged() => AssertNotJudged(Box("beyond", "144-1/16"), LayoutFaultKind.OutsideItsWall, "144 in");

    // A stud near the left corner, and a box so wide that it would stand in the next wall.
    [Fact]
    public void OutsideItsWall_BoxLeftOfItsStart_IsNamedAndNotJudged() => AssertNotJudged(
        Box("before", "0").WithAt(null).WithSize(new BoxSize(CaseFile.Inches("60"), CaseFile.Inches("4"))).WithMounting(new Mounting(MountingMethod.Stud).WithStud(1).WithSide(StudSide.Left)),
        LayoutFaultKind.OutsideItsWall,
        "before");

    [Fact]
    public void OutsideItsWall_BoxOverTheCeiling_IsNamedAndNotJudged() =>
        AssertNotJudged(Box("up", "60").WithHeight(BoxHeight.ToTop(CaseFile.Inches("98"), Datum.Subfloor)), LayoutFaultKind.OutsideItsWall, "ceiling");

    [Fact]
    public void NoHeight_BoxOnAWall_IsNamedAndNotJudged() => AssertNotJudged(Box("somewhere", "60").WithHeight(null), LayoutFaultKind.NoHeight, "height");

    [Fact]
    public void BeyondMeasure_BoxAsHighAsNoHouse_IsNamedAndNotJudged() =>
        AssertNotJudged(Box("far", "60").WithHeight(BoxHeight.ToTop(Distance.FromTicks(long.MaxValue - 1), Datum.Subfloor)), LayoutFaultKind.BeyondMeasure, "larger than anything in a house");

    [Fact]
    public void MisspelledKind_OfAPurpose_IsNamedAndTheBoxIsJudged()
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(Box("odd", "60").WithPurpose(new BoxPurpose("swich")))), LayoutFaultKind.MisspelledKind, "odd", "is \"switch\" meant?");
        Assert.Contains(evaluation.Checks, check => check.Subject == "odd");
    }

    [Fact]
    public void UnknownKind_OfAPurpose_IsNamedAndTheBoxIsJudged()
    {
        Evaluation evaluation = AssertFinds(House(wall => wall.Add(Box("odd", "60").WithPurpose(new BoxPurpose("aquarium")))), LayoutFaultKind.UnknownKind, "odd", "isn't known here");
        Assert.Contains(evaluation.Checks, check => check.Subject == "odd");
    }
}
