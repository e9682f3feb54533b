using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Finishes, coverings and trim against a plate.</summary>
public sealed class FinishEdgeTests
{
    private static readonly LayoutEvaluator Practice = new(RuleSets.RoughInPractice);

    // Four ways in which a counter of 36 in comes about, and the lowest center at which a 4-1/2 in plate clears a 4 in splash.
    // Arithmetic from common practice, no source: counter + splash + half a plate, recomputed by hand above the subfloor.
    [Theory]
    [InlineData("34-1/2 in", "1-1/2 in", "3/4 in", true, "43 in")]
    [InlineData("34-1/2 in", "1-1/4 in", "3/4 in", true, "42-3/4 in")]
    [InlineData("34-1/2 in", "1-1/4 in", "3/4 in", false, "42 in")]
    [InlineData("34-1/2 in", "1-1/2 in", "3/4 in", false, "42-1/4 in")]
    public void Splash_LowestCenterThatClearsIt(string cabinet, string top, string floor, bool onFinishedFloor, string center)
    {
        Datum stands = onFinishedFloor ? Datum.FinishedFloor : Datum.Subfloor;
        Level counterTop = new(Distance.Parse(cabinet) + Distance.Parse(top), stands);
        Finding? At(Distance height)
        {
            Wall wall = new Wall("north", In(120))
                .WithCounters(new[] { new Counter("c", CounterKind.Kitchen, In(0), In(120)).WithTop(counterTop) })
                .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In(0), In(120)).WithBottom(Level.Parse("countertop")).WithTop(Level.Parse("4 in above countertop")) })
                .WithBoxes(new[] { Box("K1", 60).WithHeight(BoxHeight.ToCenter(height, Datum.Subfloor)) });
            return Evaluate(wall, Distance.Parse(floor)).Findings.SingleOrDefault(finding => finding.RuleId == "counter-edge");
        }

        Distance limit = Distance.Parse(center);
        Assert.Equal(Verdict.Fails, At(limit - Tick)?.Verdict);
        Assert.Null(At(limit));
        Assert.Null(At(limit + Tick));
    }

    [Fact]
    public void Splash_OnACounterOfUsualHeight_FollowsWhatItsBaseStandsOn()
    {
        Wall wall = new Wall("north", In(120))
            .WithCounters(new[] { new Counter("c", CounterKind.Kitchen, In(0), In(120)).WithBaseStandsOn(Datum.Subfloor) })
            .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In(0), In(120)).WithBottom(Level.Parse("countertop")).WithTop(Level.Parse("4 in above countertop")) })
            .WithBoxes(new[] { Box("K1", 60).WithHeight(BoxHeight.ToCenter(In(42.25m), Datum.Subfloor)) });
        Assert.DoesNotContain(Evaluate(wall, In(0.75m)).Findings, finding => finding.RuleId == "counter-edge");
    }

    [Fact]
    public void FullHeightSplash_WholePlateInside_IsFine()
    {
        Wall wall = new Wall("north", In(120))
            .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In(0), In(100)).WithBottom(Level.Parse("36 in above subfloor")).WithTop(Level.Parse("54 in above subfloor")) })
            .WithBoxes(new[] { Box("K1", 60).WithHeight(BoxHeight.Parse("48 in to top above subfloor")) });
        Assert.Empty(Evaluate(wall, In(0.75m)).Findings);
    }

    [Theory]
    [InlineData("mirror", null, Verdict.Fails)]
    [InlineData("wall-cabinet", null, Verdict.Unknown)]
    [InlineData("wall-cabinet", false, Verdict.Fails)]
    public void Covering_OverTheWholeBox_BuriesIt(string kind, bool? open, Verdict outcome)
    {
        Finding finding = Assert.Single(Covered(kind, open).Findings, one => one.RuleId == "not-buried");
        Assert.Equal(outcome, finding.Verdict);
    }

    [Fact]
    public void Cabinet_OpenInside_HoldsABox() => Assert.DoesNotContain(Covered("tall-cabinet", true).Findings, finding => finding.RuleId == "not-buried");

    // A refrigerator 36 in wide and 70 in tall stands at 40 to 76 in: a switch behind it nobody sees, over it, beside it or over a lower washer one does; its receptacle belongs there.
    // Common practice, no source.
    [Theory]
    [InlineData("refrigerator", "70", 58, 46, "toggle-switch", 1)]
    [InlineData("refrigerator", "70", 75, 69, "toggle-switch", 1)]
    [InlineData("refrigerator", "70", 76, 46, "toggle-switch", 0)]
    [InlineData("refrigerator", "70", 39, 46, "toggle-switch", 0)]
    [InlineData("refrigerator", "70", 58, 70, "toggle-switch", 0)]
    [InlineData("refrigerator", "70", 58, 46, "duplex-receptacle", 0)]
    [InlineData("washer", "39", 58, 46, "toggle-switch", 0)]
    [InlineData("television", "70", 58, 46, "toggle-switch", 0)]
    public void Switch_BehindWhatStandsThere_IsHidden(string thing, string top, int at, int center, string device, int found)
    {
        Evaluation evaluation = Behind(thing, Level.Parse(top + " in above subfloor"), at, center, device);
        Assert.Equal(found, evaluation.Findings.Count);
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Fails, "room/it"), (finding.Verdict, Assert.Single(finding.Involves))));
        Assert.All(evaluation.Findings, finding => Assert.NotEmpty(finding.Remedies));
    }

    // How tall a thing is that states no top nobody knows: a switch behind it may be hidden, one beside it isn't.
    [Theory]
    [InlineData("refrigerator", 58, "toggle-switch", 1)]
    [InlineData("refrigerator", 76, "toggle-switch", 0)]
    [InlineData("refrigerator", 58, "duplex-receptacle", 0)]
    [InlineData("television", 58, "toggle-switch", 0)]
    public void Switch_BehindWhatStatesNoTop_IsNotJudged(string thing, int at, string device, int found)
    {
        Evaluation evaluation = Behind(thing, null, at, 46, device);
        Assert.Equal(found, evaluation.Findings.Count);
        Assert.All(evaluation.Findings, finding => Assert.Equal((Verdict.Unknown, MissingFacts.ObstructionHeight, "room/it"), (finding.Verdict, finding.Needs, Assert.Single(finding.Involves))));
        Assert.Equal(found == 1, evaluation.HasUnknowns);
    }

    private static Evaluation Behind(string thing, Level? top, int at, int center, string device)
    {
        Fixture fixture = new Fixture("it", new FixtureKind(thing)).WithWall("wall").WithLeft(In(40)).WithRight(In(76)).WithTop(top);
        OneBox box = new OneBox { Rules = OneBox.Only(RuleSets.RoughInPractice, "switch-hidden"), Room = room => room.WithFixtures(new[] { fixture }) }.At(BoxHeight.ToCenter(In(center), Datum.Subfloor));
        return (box with { Box = box.Box.WithAt(In(at)).WithDevices(new[] { new DeviceKind(device) }) }).Evaluate();
    }

    // A door 2 in narrower than its opening, reveal 3/16: casing and plate, box nailed to the king (its center 3 in + 1-1/8 in from the opening).
    // Common practice, no source; recomputed: plate edge 2-3/4 in less casing edge −1 + 3/16 + casing.
    [Theory]
    [InlineData("2-1/4 in", "standard", null)]
    [InlineData("3-1/2 in", "standard", null)]
    [InlineData("3-1/2 in", "jumbo", "5/16 in")]
    [InlineData("4-1/2 in", "standard", "15/16 in")]
    public void Casing_BesideABoxOnTheKing(string casing, string plate, string? overlap)
    {
        Distance jack = In(60);
        Wall wall = new Wall("east", In(120))
            .WithOpenings(new[]
            {
                new Opening("door", OpeningKind.Door, In(28), jack).WithLeaf(In(30)).WithCasing(Distance.Parse(casing)).WithReveal(In(0.1875m)).WithHead(Level.Parse("82-1/2 in above subfloor")),
            })
            .WithBoxes(new[]
            {
                Box("S1", 0).WithAt(jack + In(4.125m)).WithPurpose(BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithPlate(new PlateKind(plate))
                    .WithHeight(BoxHeight.Parse("48 in to top above subfloor")),
            });
        Finding? finding = Evaluate(wall, In(0.75m)).Findings.SingleOrDefault(one => one.RuleId == "trim-clearance");
        Assert.Equal(overlap is null, finding is null);
        if (overlap is not null)
        {
            // The remedy moves it along by at least the overlap.
            MoveBoxes move = Assert.IsType<MoveBoxes>(finding!.Remedies[0]);
            Assert.True(move.Along - (jack + In(4.125m)) >= Distance.Parse(overlap));
        }
    }

    [Fact]
    public void Verdict_OnRandomWalls_IsThatOfTwoRectangles()
    {
        // Left, right, bottom, top of a finish; along and center of a box; in eighths of an inch. Plate 2-3/4 by 4-1/2.
        Arbitrary<int[]> numbers = Arb.From(Gen.Choose(0, 960).ArrayOf(6));
        Prop.ForAll(numbers, n =>
        {
            int left = Math.Min(n[0], n[1]);
            int right = Math.Max(n[0], n[1]) + 1;
            int bottom = Math.Min(n[2], n[3]) / 2;
            int top = (Math.Max(n[2], n[3]) / 2) + 1;
            // The box itself lies on the wall: 9 eighths is half its width.
            int along = 9 + n[4];
            int center = 36 + (n[5] / 2);
            Wall wall = new Wall("north", Eighths(2000))
                .WithFinishes(new[] { new Finish("f", FinishKind.Tile, Eighths(left), Eighths(right)).WithBottom(new Level(Eighths(bottom), Datum.Subfloor)).WithTop(new Level(Eighths(top), Datum.Subfloor)) })
                .WithBoxes(new[] { Box("X", 0).WithAt(Eighths(along)).WithPurpose(new BoxPurpose("test")).WithHeight(BoxHeight.ToCenter(Eighths(center), Datum.Subfloor)) });
            bool found = Evaluate(wall, In(0)).Findings.Any(finding => finding.RuleId == "finish-edge");

            // Half a plate is 11 eighths wide and 18 high. At the wall's left end a finish has no edge.
            int from = left == 0 ? int.MinValue : left;
            bool apart = along + 11 <= from || along - 11 >= right || center + 18 <= bottom || center - 18 >= top;
            bool within = along - 11 >= from && along + 11 <= right && center - 18 >= bottom && center + 18 <= top;
            return found == !(apart || within);
        }).Check(Tries.Always(100));
    }

    private static Distance Tick => Distance.FromTicks(1);

    private static DeviceBox Box(string id, decimal at) =>
        new DeviceBox(id, BoxPurpose.Counter).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(In(at));

    private static Evaluation Covered(string kind, bool? open) => Evaluate(
        new Wall("north", In(120))
            .WithCoverings(new[] { new Covering("c", new CoveringKind(kind), In(40), In(80)).WithBottom(Level.Parse("30 in above subfloor")).WithTop(Level.Parse("76 in above subfloor")).WithOpenInside(open) })
            .WithBoxes(new[] { Box("X", 60).WithHeight(BoxHeight.Parse("48 in to top above subfloor")) }),
        In(0.75m));

    private static Evaluation Evaluate(Wall wall, Distance floor) => Practice.Evaluate(new Dwelling("test")
        .WithStoreys(new[] { new Storey("first") })
        .WithRooms(new[] { new Room("room", RoomKind.Kitchen, "first").WithFloor(FloorBuildup.Of(new FloorLayer("floor", floor))).WithWalls(new[] { wall }) }));
}
