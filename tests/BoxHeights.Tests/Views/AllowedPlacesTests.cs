using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Views;

/// <summary>Where a box may go, held against the box really set there in a dwelling that is evaluated anew.</summary>
public sealed class AllowedPlacesTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    private static readonly BoxSize OneGang = new(In("2-1/4"), In("3-3/4"));

    [Fact]
    public void AllowedAt_BoxesOfRandomWalls_AgreesWithSettingThemThere() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        LayoutSession session = Evaluator.Open(dwelling);
        foreach (PlacedBox placed in dwelling.PlacedBoxes().Take(3))
        {
            for (int i = 0; i < 6; i++)
            {
                (Distance along, BoxHeight height) = Somewhere(random, dwelling, placed);
                AllowedView allowed = evaluation.AllowedAt(placed.Box.Id, along);
                Agrees(allowed, height.Value, dwelling, placed, along, height);
                Assert.Equal(allowed.ToString(), session.AllowedAt(placed.Box.Id, along).ToString());
            }
        }

        Assert.Equal(dwelling, session.ToDwelling());
        return true;
    }).Check(Tries.Config(100));

    [Fact]
    public void AllowedAlong_BoxesOfRandomWalls_AgreesWithSettingThemThere() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        foreach (PlacedBox placed in dwelling.PlacedBoxes().Take(3))
        {
            (_, BoxHeight height) = Somewhere(random, dwelling, placed);
            AllowedView allowed = evaluation.AllowedAlong(placed.Box.Id, height);
            for (int i = 0; i < 8; i++)
            {
                Distance along = Somewhere(random, dwelling, placed).Along;
                Agrees(allowed, along, dwelling, placed, along, height);
            }
        }

        return true;
    }).Check(Tries.Config(60));

    [Fact]
    public void AllowedAt_BoxThatIsNotThereYet_AgreesWithAddingIt() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        PlacedBox beside = dwelling.PlacedBoxes()[0];
        for (int i = 0; i < 8; i++)
        {
            PlacedBox ghost = new(beside.Address, DwellingGen.Box(random, DwellingGen.Sixteenths, "ghost", 1600));
            (Distance along, BoxHeight height) = Somewhere(random, dwelling, ghost);
            Agrees(evaluation.AllowedAt(ghost, along), height.Value, dwelling.WithBox(ghost), ghost, along, height);
        }

        return true;
    }).Check(Tries.Config(60));

    // Bodies and plates on both faces of one wall: the other face runs the other way.
    [Theory]
    [InlineData("3-1/2")]
    [InlineData("5-1/2")]
    public void AllowedAt_BackToBack_AgreesWithSettingItThere(string cavity)
    {
        DeviceBox deep = new DeviceBox("front", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithSize(new BoxSize(In("2-1/4"), In("3-3/4"), In("2-7/8")))
            .WithAt(In("40")).WithHeight(BoxHeight.ToCenter(In("16"), Datum.Subfloor));
        DwellingBuilder house = new("two rooms");
        house.Add(new Storey("ground").WithBoards(new BoardLayout().WithThickness(In("1/2"))));
        house.Room("a", RoomKind.Bedroom, "ground").Wall("n", In("120")).With(wall => wall.WithCavity(In(cavity))).Add(deep);
        house.Room("b", RoomKind.Bedroom, "ground").Wall("s", In("100")).With(wall => wall.WithBackOf("a/n").WithBackOffset(In("10"))).Add(deep.WithId("back").WithAt(In("20")));
        Dwelling dwelling = house.Build();
        Evaluation evaluation = Evaluator.Evaluate(dwelling);
        PlacedBox back = dwelling.FindBox("back")!;
        int inTheWay = 0;
        for (int along = 60; along < 90; along++)
        {
            Distance at = Distance.FromInches(along);
            BoxHeight height = BoxHeight.ToCenter(In("17"), Datum.Subfloor);
            AllowedView allowed = evaluation.AllowedAt("back", at);
            Agrees(allowed, height.Value, dwelling, back, at, height);
            Agrees(evaluation.AllowedAlong("back", height), at, dwelling, back, at, height);
            inTheWay += allowed.Rules.Count(rule => rule.Rule is BoxAgainstBox && !rule.Sure.Contains(height.Value));
        }

        Assert.Equal(cavity == "3-1/2", inTheWay > 0);
    }

    // A wall between units, rated: studs, fireblocks, fill and putty pads on either face decide what may be how near. 24 in apart is NEC 300.21's usual rule of listings (from memory).
    [Fact]
    public void AllowedAlong_OnARatedWall_AgreesWithSettingItThere()
    {
        HashSet<Verdict> seen = [];
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1)), seed =>
        {
            Random random = new(seed);
            DeviceBox Box(string id) => new DeviceBox(id, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithSize(OneGang).WithAt(Distance.FromInches(random.Next(4, 90)))
                .WithFireProtection(random.Next(4) switch { 0 => null, 1 => FireProtection.None, 2 => FireProtection.PuttyPad, _ => FireProtection.Listed }).WithHeight(BoxHeight.ToCenter(In("16"), Datum.Subfloor));
            Wall Face(string id, int length, params DeviceBox[] boxes) => new Wall(id, Distance.FromInches(length)).WithRated(random.Next(3) > 0).WithCavity(In("3-1/2")).WithCavityFilled(random.Next(4) == 0).WithBoxes(boxes)
                .WithStuds(random.Next(2) == 0 ? null : new StudLayout().WithSpacing(In("16")).WithKnown(random.Next(2) == 0 ? StudKnowledge.Assumed : StudKnowledge.Declared))
                .WithNoCavity(random.Next(2) == 0 ? null : [new NoCavity(NoCavityKind.Fireblock, Distance.FromInches(40), Distance.FromInches(random.Next(41, 44)))]);
            Dwelling dwelling = new Dwelling("units").WithStoreys(new Storey("ground"))
                .WithRooms(new Room("a", RoomKind.Bedroom, "ground").WithWalls(Face("n", 120, Box("front"), Box("front-2"))), new Room("b", RoomKind.Bedroom, "ground").WithWalls(Face("s", 100, Box("back")).WithBackOf("a/n").WithBackOffset(Distance.FromInches(random.Next(-20, 30)))));
            PlacedBox back = dwelling.FindBox("back")!;
            RuleSet rated = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023).Rows.Where(rule => rule is RatedSeparation));
            LayoutEvaluator evaluator = new(rated);
            Evaluation evaluation = evaluator.Evaluate(dwelling);
            AllowedView all = evaluation.AllowedAlong("back", back.Box.Height!.Value);
            foreach (long at in Enumerable.Range(8, 380).Select(quarter => quarter * 508_000L).SelectMany(at => new[] { at - 1, at, at + 1 }).Where(_ => random.Next(6) == 0))
            {
                Distance along = Distance.FromTicks(at);
                Verdict? found = evaluator.Evaluate(dwelling.WithBoxes(box => box.Id == "back" ? box.WithAt(along) : box)).Findings
                    .Where(one => one.Subject == "back" || one.Involves.Contains("back")).Select(one => (Verdict?)one.Verdict).OrderByDescending(verdict => verdict == Verdict.Fails).FirstOrDefault();
                seen.Add(found ?? Verdict.Passes);
                foreach ((AllowedView view, Distance asked) in new[] { (all, along), (evaluation.AllowedAt("back", along), back.Box.Height!.Value.Value) })
                {
                    Assert.Equal((found is null, found != Verdict.Fails), (view.Sure.Contains(asked), view.Possible.Contains(asked)));
                }
            }

            return true;
        }).Check(Tries.Always(20));
        Assert.Equal([Verdict.Passes, Verdict.Unknown, Verdict.Fails], seen.Order());
    }

    // One level for the boxes of a storey: two at 16 in, one at 18 in. Whoever joins is on it, near it, or makes 18 in the level of two, which is then no lower.
    [Theory]
    [InlineData("16", true)]
    [InlineData("16-1/4", true)]
    [InlineData("15-3/4", true)]
    [InlineData("16-3/8", false)]
    [InlineData("18", false)]
    [InlineData("12", false)]
    public void AllowedAt_BesideBoxesOnALevel_IsOnIt(string center, bool isAllowed)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "uniform-level") };
        DeviceBox At(string id, string at, string up) => box.Box.WithId(id).WithSize(OneGang).WithAt(In(at)).WithHeight(BoxHeight.ToCenter(In(up), Datum.Subfloor));
        Evaluation evaluation = (box with { Box = At(OneBox.Id, "72", "30"), Wall = wall => wall.WithBoxes(At("a", "20", "16"), At("b", "40", "16"), At("c", "100", "18")) }).Evaluate();
        Assert.Equal(isAllowed, evaluation.AllowedAt(OneBox.Id, In("72")).Sure.Contains(In(center)));
    }

    // Every other receptacle of the counter is good, so the one that isn't is let off; beyond the counter it is on its own.
    [Fact]
    public void AllowedAt_ReceptacleThatOthersLetOff_SaysSo()
    {
        DeviceBox good = new DeviceBox("good", BoxPurpose.Counter).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithSize(OneGang).WithApproach(Approach.Side).WithAt(In("30")).WithHeight(BoxHeight.ToCenter(In("42"), Datum.FinishedFloor));
        OneBox two = new()
        {
            Rules = RuleSets.Ada2010,
            Room = room => room.WithFloor(OneBox.Floor(In("1/2"))),
            Wall = wall => wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, In("0"), In("90")).WithTop(Level.Parse("34 in above finished floor")).WithDepth(In("24")) }).WithBoxes(new[] { good }),
            Box = good.WithId(OneBox.Id).WithAt(In("70")).WithHeight(BoxHeight.ToCenter(In("60"), Datum.FinishedFloor)),
        };
        Evaluation evaluation = two.Evaluate();
        RuleAllows over = Assert.Single(evaluation.AllowedAt(OneBox.Id, In("70")).Rules, rule => rule.Rule is PlacementRule { Relief: not Relief.None });
        Assert.True(over.IsLetOff);
        Assert.False(over.Sure.Contains(In("60")));
        Assert.True(evaluation.AllowedAt(OneBox.Id, In("70")).Sure.Contains(In("60")));
        Assert.False(evaluation.AllowedAt(OneBox.Id, In("120")).Sure.Contains(In("60")));
        Assert.False(evaluation.AllowedAlong(OneBox.Id, BoxHeight.ToCenter(In("60"), Datum.FinishedFloor)).Sure.Contains(In("120")));
    }

    // Of every place that is marked and every height, none that keeps the slack is nearer; without slack, none that passes.
    [Fact]
    public void TryNearest_RandomWalls_IsTheNearestOfAllPlaces() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        EvaluatorOptions coarse = EvaluatorOptions.Default.WithAlongStep(In("3")).WithHeightStep(In("1"));
        Evaluation evaluation = new LayoutEvaluator(DwellingGen.Rules, coarse).Evaluate(dwelling);
        foreach (PlacedBox found in dwelling.PlacedBoxes().Take(2))
        {
            PlacedBox placed = new(found.Address, found.Box.WithMounting(new(MountingMethod.Bracket)).WithId("ghost").WithHeight(Stated(found.Box)).WithMeasured(null));
            (Distance along, BoxHeight height) = Somewhere(random, dwelling, placed);
            Distance length = LengthOf(dwelling, placed);
            (decimal Away, bool Slack)? least = null;
            foreach (bool slack in new[] { true, false })
            {
                for (Distance at = Distance.Zero; at <= length && least?.Slack != !slack; at += In("3"))
                {
                    AllowedView here = evaluation.AllowedAt(placed, at);
                    DistanceSet free = here.FirmlyFree;
                    for (int off = -32; slack && off <= 32; off++)
                    {
                        free &= evaluation.AllowedAt(placed, at + Distance.FromTicks(off * 63_500L)).FirmlyFree;
                    }

                    if ((slack ? here.Sure & free.Shrink(In("1/4")) : here.Sure).TryNearestSnapped(height.Value, In("1"), out Distance reading))
                    {
                        decimal away = Square(at - along) + Square(reading - height.Value);
                        least = least is { } known && known.Away <= away ? known : (away, slack);
                    }
                }
            }

            bool any = evaluation.TryNearest(placed, along, height, out NearestPlace? nearest);
            if (least is { } best)
            {
                Assert.Equal(best, (Square(nearest!.Along - along) + Square(nearest.Height.Value - height.Value), nearest.HasSlack));
                Agrees(evaluation.AllowedAt(placed, nearest.Along), nearest.Height.Value, dwelling.WithBox(placed), placed, nearest.Along, nearest.Height);
                Assert.True(evaluation.AllowedAt(placed, nearest.Along).Sure.Contains(nearest.Height.Value));
            }
            else
            {
                Assert.True(!any || !nearest!.HasSlack);
            }
        }

        return true;
    }).Check(Tries.Config(40));

    // Studs at 16 in on center stand from 15-1/4 to 16-3/4 in, and so on. 1-1/8 in is half a box.
    [Fact]
    public void TryNearest_BoxNailedToAStud_IsBesideTheNearestOne()
    {
        OneBox nailed = new OneBox
        {
            Rules = RuleSets.RoughInPractice,
            Storey = new Storey("ground").WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared)),
        }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor));
        nailed = nailed with { Box = nailed.Box.WithSize(OneGang).WithMounting(new(MountingMethod.Stud)) };
        Evaluation evaluation = nailed.Evaluate();
        Assert.True(evaluation.TryNearest(OneBox.Id, In("50"), nailed.Box.Height!.Value, out NearestPlace? nearest));
        Assert.Equal(In("49-7/8"), nearest!.Along);
        Assert.Equal(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Right), nearest.Mounting);
        Assert.Equal("49-7/8 in along, 16 in to top above subfloor", nearest.ToString());
        LayoutSession session = new LayoutEvaluator(nailed.Rules).Open(nailed.Build());
        session.Change(OneBox.Id, box => nearest.Set(box.WithMeasured(new MeasuredHeight(BoxHeight.ToTop(In("20"), Datum.Subfloor)))));
        Assert.Equal(nailed.Box.WithAt(In("49-7/8")).WithMounting(nearest.Mounting), session.ToDwelling().FindBox(OneBox.Id)!.Box);
        Assert.Equal(evaluation.TryNearest(OneBox.Id, In("50"), nailed.Box.Height!.Value, out _), new LayoutEvaluator(nailed.Rules).Open(nailed.Build()).TryNearest(OneBox.Id, In("50"), nailed.Box.Height!.Value, out _));
    }

    [Fact]
    public void AllowedAt_BoxThatNoWallHolds_HasNoRoom()
    {
        Evaluation evaluation = new OneBox { Rules = RuleSets.RoughInPractice }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor)).Evaluate();
        AllowedView beyond = evaluation.AllowedAt(OneBox.Id, In("144"));
        Assert.False(beyond.Fits);
        Assert.True(beyond.Possible.IsEmpty);
        Assert.Equal("no room", beyond.ToString());
        Assert.Throws<ArgumentException>(() => evaluation.AllowedAt("nobody", In("10")));
        Assert.Throws<ArgumentException>(() => evaluation.AllowedAt(new PlacedBox("nowhere", new("b", BoxPurpose.General)), In("10")));
    }

    // Each rule's own: what weighs less doesn't narrow what is free of what weighs more.
    [Fact]
    public void FreeOf_Weights_LeavesLighterRulesOut()
    {
        OneBox box = new OneBox { Rules = RuleSets.RoughInPractice + RuleSets.Ada2010, Room = room => room.WithFloor(OneBox.Floor(In("1/2"))) }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor));
        AllowedView allowed = (box with { Box = box.Box.WithSize(OneGang) }).Evaluate().AllowedAt(OneBox.Id, In("72"));
        Assert.True(allowed.FreeOf(Severity.Violation).Contains(In("40")));
        Assert.False(allowed.FreeOf(Severity.Note).Contains(In("40")));
        Assert.Equal(allowed.Sure, allowed.FreeOf(Severity.Note));
        Assert.Contains(allowed.Rules, rule => rule.Rule.Id == "general-height" && rule.Severity == Severity.Note && !rule.Sure.Contains(In("40")));
    }

    private static decimal Square(Distance distance) => (decimal)distance.Ticks * distance.Ticks;

    private static BoxHeight Stated(DeviceBox box) => box.Height is { Edge: not null } height ? height : BoxHeight.ToCenter(In("20"), Datum.Subfloor);

    private static Distance LengthOf(Dwelling dwelling, PlacedBox placed) =>
        dwelling.Rooms.SelectMany(room => room.Walls, (room, wall) => (Address: room.Id + "/" + wall.Id, wall.Length)).First(wall => wall.Address == placed.Address).Length;

    private static (Distance Along, BoxHeight Height) Somewhere(Random random, Dwelling dwelling, PlacedBox placed)
    {
        BoxHeight now = placed.Box.Height!.Value;
        int most = (int)(LengthOf(dwelling, placed).Ticks / 63_500) + 20;
        return (Distance.FromTicks(random.Next(0, most) * 63_500L), now.WithValue(random.Next(3) == 0 ? now.Value + DwellingGen.Sixteenths(random.Next(-9, 10)) : DwellingGen.Sixteenths(random.Next(0, 1500))));
    }

    private static void Agrees(AllowedView allowed, Distance asked, Dwelling dwelling, PlacedBox placed, Distance along, BoxHeight height)
    {
        Evaluation there = Evaluator.Evaluate(dwelling.WithBoxes(box => box.Id == placed.Box.Id
            ? box.WithAt(along).WithHeight(height).WithMeasured(null).WithMounting(box.Mounting?.WithStud(null).WithSide(null))
            : box));
        Verdict? worst = null;
        foreach (Finding finding in there.Findings.Where(one => IsOfItsPlace(one, placed.Box.Id)))
        {
            worst = worst == Verdict.Fails || finding.Verdict == Verdict.Fails || (finding.Fault is not null && finding.Subject == placed.Box.Id) ? Verdict.Fails : Verdict.Unknown;
        }

        string what = placed.Box.Id + " at " + along + ", " + height + ": " + allowed + "; " + string.Join("; ", there.Findings.Where(one => IsOfItsPlace(one, placed.Box.Id)));
        Assert.True(allowed.Sure.Contains(asked) == (worst is null), what);
        Assert.True(allowed.Possible.Contains(asked) == (worst != Verdict.Fails), what);
        if (there.Findings.Any(one => one.Fault is not null && one.Subject == placed.Box.Id))
        {
            return;
        }

        foreach (Check check in there.Checks.Where(one => one.Subject == placed.Box.Id))
        {
            RuleAllows? rule = allowed.Rules.SingleOrDefault(one => one.Rule.Id == check.RuleId);
            Assert.True((rule?.Sure.Contains(asked) ?? true) == (check.Verdict == Verdict.Passes), what + " " + check);
            Assert.True((rule?.Possible.Contains(asked) ?? true) == (check.Verdict != Verdict.Fails), what + " " + check);
        }
    }

    private static bool IsOfItsPlace(Finding finding, string id) =>
        finding.Fault is { } fault ? fault.Subject == id
        : finding.NotJudgedBecause is null && (finding.Subject == id || finding.Involves.Contains(id))
            && DwellingGen.Rules.Row(finding.RuleId) is PlacementRule or LimitRule or ProvisionRule;
}
