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

    // A gable is taller than the ceiling of its storey is high: 150 in where it is highest.
    [Theory]
    [InlineData("150", true)]
    [InlineData("150-1/8", false)]
    public void OutsideItsWall_BoxOnAGable_MayBeAsHighAsItsTop(string top, bool fits)
    {
        Dwelling dwelling = House(wall => wall.With(one => one.WithTop(new[] { new WallTopPoint(CaseFile.Inches("0"), CaseFile.Inches("90")), new WallTopPoint(CaseFile.Inches("60"), CaseFile.Inches("150")) }))
            .Add(Box("up", "60").WithHeight(BoxHeight.ToTop(CaseFile.Inches(top), Datum.Subfloor))));
        Finding[] faults = [.. Evaluator.Evaluate(dwelling).Findings.Where(finding => finding.Fault?.Kind == LayoutFaultKind.OutsideItsWall)];
        Assert.Equal(fits, faults.Length == 0);
        Assert.All(faults, fault => Assert.Contains("the top of its wall at 150 in", fault.Message, System.StringComparison.Ordinal));
    }

    // Along a stair the floor above is open, so that its wall goes on: a light at a tread near the head is over the ceiling, and its mark above the subfloor says the same place.
    [Theory]
    [InlineData("4 in to center above nosing")]
    [InlineData("110 in to center above subfloor")]
    public void OutsideItsWall_BoxAlongAStair_MayBeOverTheCeiling(string height)
    {
        Dwelling dwelling = House(wall => wall.Add(Box("light", "130").WithHeight(BoxHeight.Parse(height)).WithMounting(new Mounting(MountingMethod.Blocking))));
        StairFlight flight = new StairFlight("stair", "ground", "upper", 15).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("4")).WithWall("room/wall");
        dwelling = dwelling.WithStoreys(dwelling.Storeys.With(new Storey("upper").WithAboveBelow(CaseFile.Inches("109-1/4")))).WithFlights(new[] { flight });
        Assert.DoesNotContain(Evaluator.Evaluate(dwelling).Findings, finding => finding.Subject == "light" && finding.RuleId is "layout-fault" or "framing-fit");
    }

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
