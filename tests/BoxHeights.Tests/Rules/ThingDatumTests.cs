using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Heights from what is on the wall: the same stick means another height beside another thing. Worked by hand.</summary>
public sealed class ThingDatumTests
{
    private static readonly RuleSet Reach = OneBox.Only(RuleSets.Ada2010, "ada-reach");

    /// <summary>The center's height above the subfloor, read off the margin to the 48 in side-reach limit: the operable half of a duplex is 1.31 in.</summary>
    private static Distance? CenterOf(OneBox box) => (box with { Rules = Reach }).Check() is { Verdict: not Verdict.Unknown } check
        ? check.Margin.AsDistance() is var margin ? In("48") - In("1.31") - margin : null
        : null;

    private static OneBox From(string height) => new OneBox { Room = room => room.WithFloor(OneBox.Floor(Distance.Zero)) }.At(BoxHeight.Parse(height));

    private static string FaultOf(OneBox box) => Assert.Single(box.Evaluate().Findings).Fault!.Message;

    [Fact]
    public void WindowHead_IsThatOfTheNearestWindow()
    {
        OneBox box = From("40 in to center below window head") with
        {
            Wall = wall => wall.WithOpenings(new[]
            {
                new Opening("far", OpeningKind.Window, In("2"), In("30")).WithHead(Level.Parse("84 in above subfloor")),
                new Opening("near", OpeningKind.Window, In("90"), In("120")).WithHead(Level.Parse("82 in above subfloor")),
            }),
        };
        Assert.Equal(In("42"), CenterOf(box));
        Assert.Equal(In("44"), CenterOf(box with { Box = box.Box.WithAt(In("50")) }));
        Assert.Equal("its height is taken from the window head, but no window with a known head is in its wall", FaultOf(From("40 in to center below window head")));
    }

    [Fact]
    public void CabinetUnderside_IsThatOfTheCabinetOverTheBox()
    {
        OneBox box = From("10 in to center below cabinet underside") with
        {
            Wall = wall => wall.WithCoverings(new[] { new Covering("upper", CoveringKind.WallCabinet, In("60"), In("100")).WithBottom(Level.Parse("54 in above finished floor")) }),
        };
        Assert.Equal(In("44"), CenterOf(box));
        Assert.Contains("no wall cabinet", FaultOf(box with { Box = box.Box.WithAt(In("30")) }), StringComparison.Ordinal);
    }

    [Fact]
    public void Rim_IsThatOfTheNearestTub()
    {
        OneBox box = From("20 in to center above rim");
        Fixture tub = new Fixture("tub", FixtureKind.Tub).WithWall("wall").WithLeft(In("0")).WithRight(In("60")).WithRim(Level.Parse("18 in above finished floor"));
        Assert.Equal(In("38"), CenterOf(box with { Room = room => box.Room(room).WithFixtures(new[] { tub }) }));
        Assert.Contains("no tub or shower", FaultOf(box with { Room = room => box.Room(room).WithFixtures(new[] { tub.WithRim(null) }) }), StringComparison.Ordinal);
    }

    // The plate that is there is centered 2 in under the top of its 4 in box at 46 in: 44 in.
    [Fact]
    public void ExistingPlate_IsTheCenterOfTheNearestBoxThatWasThere()
    {
        DeviceBox there = new DeviceBox("there", BoxPurpose.Switch).WithAt(In("100")).WithExisting(true).WithSize(new BoxSize(In("2-1/4"), In("4"))).WithHeight(BoxHeight.Parse("46 in to top above subfloor"));
        OneBox box = From("0 in to center above existing plate");
        Assert.Equal(In("44"), CenterOfFirst(box with { Wall = wall => wall.WithBoxes(new[] { there }) }));
        Assert.Contains("no existing box", FaultOf(box), StringComparison.Ordinal);

        static Distance CenterOfFirst(OneBox box) => In("48") - In("1.31") - (box with { Rules = Reach }).Evaluate().Checks.Single(check => check.Subject == OneBox.Id).Margin.AsDistance();
    }

    [Fact]
    public void WalkingSurface_IndoorsIsTheFloor() => Assert.Equal(In("40"), CenterOf(From("40 in to center above walking surface")));

    [Fact]
    public void ThingsThatStandOnEachOther_WithoutEnd_AreAFault()
    {
        OneBox box = From("4 in to center above splash top") with
        {
            Wall = wall => wall.WithFinishes(new[] { new Finish("loop", FinishKind.Tile, In("0"), In("144")).WithTop(Level.Parse("1 in above splash top")) }),
        };
        Assert.Contains("no finish", FaultOf(box), StringComparison.Ordinal);
    }

    [Fact]
    public void Session_MoveToAnotherWindow_ReadsItsHead()
    {
        OneBox box = From("40 in to center below window head") with
        {
            Rules = Reach,
            Wall = wall => wall.WithOpenings(new[]
            {
                new Opening("low", OpeningKind.Window, In("2"), In("30")).WithHead(Level.Parse("82 in above subfloor")),
                new Opening("high", OpeningKind.Window, In("90"), In("120")).WithHead(Level.Parse("90 in above subfloor")),
            }),
        };
        LayoutSession session = new LayoutEvaluator(Reach).Open(box.Build());
        Assert.Single(session.Findings);
        Assert.Single(session.Move(OneBox.Id, In("40"), box.Box.Height!.Value).Cleared);
    }
}
