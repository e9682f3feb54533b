using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A misspelled kind is one that no rule speaks of: the report says so and what may have been meant, and a kind that somebody's row names is no mistake.</summary>
public sealed class UnknownKindTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    [Theory]
    [InlineData("swich", "switch")]
    [InlineData("refridgerator", "refrigerator")]
    [InlineData("stairlight", "stair-light")]
    public void Purpose_Misspelled_IsToldWithTheNearest(string purpose, string meant) =>
        Assert.Contains($"the-box (room/wall): purpose \"{purpose}\" isn't known here: is \"{meant}\" meant?", Said(box => box.WithPurpose(new BoxPurpose(purpose))));

    [Theory]
    [InlineData("toggle-swich", "toggle-switch")]
    [InlineData("recptacle", "duplex-receptacle")]
    public void Device_Misspelled_IsToldWithTheNearest(string device, string meant) =>
        Assert.Contains($"the-box (room/wall): device \"{device}\" isn't known here: is \"{meant}\" meant?", Said(box => box.WithDevices(new[] { new DeviceKind(device) })));

    [Fact]
    public void Kinds_OfBoxAndPlateMisspelled_AreTold()
    {
        string[] said = Said(box => box.WithKind(new BoxKind("nailon")).WithPlate(new PlateKind("jumboo")));
        Assert.Contains("the-box (room/wall): kind of box \"nailon\" isn't known here: is \"nail-on\" meant?", said);
        Assert.Contains("the-box (room/wall): plate \"jumboo\" isn't known here: is \"jumbo\" meant?", said);
    }

    [Fact]
    public void Purpose_Empty_IsTold() => Assert.Contains("the-box (room/wall): purpose without a name", Said(box => box.WithPurpose(default)));

    [Fact]
    public void Purpose_OfNoKind_IsToldWithoutAGuess() => Assert.StartsWith(
        "the-box (room/wall): purpose \"aquarium\" isn't known here, so that nothing is judged that goes by it", Assert.Single(Said(box => box.WithPurpose(new BoxPurpose("aquarium")))), StringComparison.Ordinal);

    [Theory]
    [InlineData("banana", true)]
    [InlineData("5-20R", true)]
    [InlineData("20 A", false)]
    [InlineData("125/250 V", false)]
    [InlineData("15A-125V", false)]
    public void Rating_WithoutVoltsAndAmperes_IsToldAsANote(string rating, bool isTold)
    {
        Finding[] found = [.. new LayoutEvaluator(Rules + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(Rated(rating)).Findings.Where(finding => finding.Fault?.Kind == LayoutFaultKind.UnknownKind)];
        Assert.Equal(isTold ? ["the-box (room/wall): rating \"" + rating + "\" names neither volts nor amperes, as \"125 V 20 A\" does, so that whether its receptacle counts isn't known"] : [], found.Select(finding => finding.Message));
        Assert.All(found, finding => Assert.Equal(Severity.Note, finding.Severity));
        Assert.DoesNotContain(new LayoutEvaluator(RuleSets.Ada2010).Evaluate(Rated(rating)).Findings, finding => finding.Fault?.Kind == LayoutFaultKind.UnknownKind);
    }

    private static Dwelling Rated(string rating)
    {
        OneBox box = new();
        return (box with { Box = box.Box.WithRating(rating) }).Build();
    }

    [Fact]
    public void Fixture_OnAnOutsideFace_IsToldWithItsFace()
    {
        Dwelling house = new OneBox().Build().WithOutside(new[] { new OutsideFace("side").WithFixtures(new[] { new Fixture("unit", new FixtureKind("condensor")) }).WithWalls(new[] { new Wall("face", CaseFile.Inches("300")) }) });
        string[] said = [.. new LayoutEvaluator(Rules + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house).Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Message)];
        Assert.Contains(said, one => one.StartsWith("side/unit (side): ", StringComparison.Ordinal) && one.Contains("\"condensor\" isn't known here: is \"condenser\" meant?", StringComparison.Ordinal));
    }

    [Fact]
    public void Boxes_OfOneUnknownKind_AreTold()
    {
        DwellingBuilder house = new("house");
        house.Add(new Storey("first"));
        WallBuilder wall = house.Room("room", new RoomKind("kichen"), "first").Wall("north", CaseFile.Inches("144"));
        wall.Add(new DeviceBox("b", new BoxPurpose("swich")).WithAt(CaseFile.Inches("60"))).Add(new DeviceBox("a", new BoxPurpose("swich")).WithAt(CaseFile.Inches("30")));
        string[] said = new LayoutEvaluator(Rules + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house.With(one => one.WithOccupancy(new Occupancy("one-famly"))).Build()).Findings
            .Where(finding => finding.Fault?.Kind is LayoutFaultKind.UnknownKind or LayoutFaultKind.MisspelledKind).Select(finding => finding.Message).ToArray();
        Assert.Equal(
            [
                "house: occupancy \"one-famly\" isn't known here: is \"one-family\" meant?", "room: room kind \"kichen\" isn't known here: is \"kitchen\" meant?",
                "b (room/north): purpose \"swich\" isn't known here: is \"switch\" meant?", "a (room/north): purpose \"swich\" isn't known here: is \"switch\" meant?",
            ],
            said);
    }

    [Fact]
    public void Fixture_Misspelled_IsToldWithTheNearest()
    {
        string[] Of(string fixture) => Said(box => box, room => room.WithFixtures(new[] { new Fixture("one", new FixtureKind(fixture)) }));
        Assert.Equal(["room/one (room): fixture \"washr\" isn't known here: is \"washer\" meant?"], Of("washr"));
        Assert.StartsWith("room/one (room): fixture \"aquarium\" isn't known here, so that", Assert.Single(Of("aquarium")), StringComparison.Ordinal);
    }

    [Fact]
    public void Kind_ThatARowSpeaksOf_IsKnown()
    {
        HeightBand own = new("own-height", "low", Severity.Note, new Citation("House rules"), Datum.Subfloor)
        {
            High = CaseFile.Inches("90"),
            Scope = RuleScope.Walls with { Purposes = new[] { new BoxPurpose("aquarium") }, Devices = new[] { new DeviceKind("pump") } },
        };
        string[] said = Said(box => box.WithPurpose(new BoxPurpose("aquarium")).WithDevices(new[] { new DeviceKind("pump") }), rules: Rules.With(own));
        Assert.Empty(said);
    }

    [Fact]
    public void Kinds_ThatAreKnown_AreNotTold() => Assert.Empty(Said(box => box));

    // Whoever reads nothing of a kind misses nothing by it.
    [Fact]
    public void Kind_ThatNoRuleReads_IsNoFinding()
    {
        OneBox one = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "board-seam") };
        Assert.True((one with { Box = one.Box.WithPurpose(new BoxPurpose("swich")).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) }).Evaluate().IsClean);
    }

    [Theory]
    [InlineData("bedrom", Severity.Violation)]
    [InlineData("sauna", Severity.Note)]
    public void RoomKind_ThatNobodyKnows_WeighsByWhetherAnotherMayBeMeant(string kind, Severity severity)
    {
        OneBox one = new() { Rules = RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), Room = room => room.WithKind(new RoomKind(kind)) };
        Evaluation evaluation = one.At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate();
        Finding finding = Assert.Single(evaluation.Findings, one => one.Fault?.Kind is LayoutFaultKind.UnknownKind or LayoutFaultKind.MisspelledKind);
        Assert.Equal((severity, "room", Verdict.Unknown, false), (finding.Severity, finding.Subject, finding.Verdict, evaluation.HasViolations));
        Assert.DoesNotContain((one with { Options = EvaluatorOptions.Default.WithOwnKinds(new[] { kind }) }).At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate().Findings, one => one.Fault is not null);
    }

    // Evaluators of one set share what it is compiled to, and none the kinds that another was told of; made once, they judge again without making all names anew.
    [Fact]
    public void OwnKinds_OfEvaluatorsThatShareASet_AreEachItsOwn()
    {
        RuleSet rules = RuleSets.UnitedStatesOutlets(NecEdition.Nec2023);
        string[] kinds = [.. Enumerable.Range(0, 6).Select(i => "sauna-" + i)];
        LayoutEvaluator[] evaluators = [.. kinds.Select(kind => new LayoutEvaluator(rules, EvaluatorOptions.Default.WithOwnKinds(new[] { kind })))];
        Dwelling[] houses = [.. kinds.Select(kind => new OneBox { Room = room => room.WithKind(new RoomKind(kind)) }.At(BoxHeight.Parse("16 in to top above subfloor")).Build())];
        for (int round = 0; round < 2; round++)
        {
            for (int i = 0; i < kinds.Length; i++)
            {
                Assert.Equal(kinds.Select((_, house) => house != i), houses.Select(house => evaluators[i].Evaluate(house).Findings.Exists(finding => finding.Fault?.Kind is LayoutFaultKind.UnknownKind or LayoutFaultKind.MisspelledKind)));
            }
        }

        long alone = Allocated(() => evaluators[0].Evaluate(houses[0]));
        long all = Allocated(() =>
        {
            for (int i = 0; i < kinds.Length; i++)
            {
                evaluators[i].Evaluate(houses[i]);
            }
        });
        Assert.InRange(all, 0, 2 * kinds.Length * alone);

        static long Allocated(Action work)
        {
            work();
            long before = GC.GetAllocatedBytesForCurrentThread();
            work();
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    // A covering along the floor that nobody knows may break a wall space or not: a heater does in one way and a rug in none.
    [Theory]
    [InlineData("baseboard-heater")]
    [InlineData("base-cabnet")]
    public void Covering_ThatNobodyKnows_IsTold(string kind) =>
        Assert.Contains(Said(box => box, rules: RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), wall: wall => wall.WithCoverings(new[] { new Covering("c", new CoveringKind(kind), CaseFile.Inches("0"), CaseFile.Inches("20")) })),
            line => line.StartsWith("room/wall/c (room/wall): covering \"" + kind + "\" isn't known here", StringComparison.Ordinal));

    [Fact]
    public void DeviceOfTheCatalog_IsKnown()
    {
        PartsCatalog catalog = PartsCatalog.Generic.With(new DevicePart(new DeviceKind("wine-cooler-plug"), new OperableParts(CaseFile.Inches("1"), CaseFile.Inches("1")), new("House rules")));
        OneBox one = new() { Rules = Rules, Options = EvaluatorOptions.Default.WithCatalog(catalog) };
        Assert.DoesNotContain((one with { Box = one.Box.WithDevices(new[] { new DeviceKind("wine-cooler-plug") }).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) }).Evaluate().Findings, found => found.Fault is not null);
    }

    private static string[] Said(Func<DeviceBox, DeviceBox> change, Func<Room, Room>? room = null, RuleSet? rules = null, Func<Wall, Wall>? wall = null)
    {
        OneBox one = new() { Rules = rules ?? Rules, Room = room ?? (same => same), Wall = wall ?? (same => same) };
        return (one with { Box = change(one.Box.WithHeight(BoxHeight.Parse("16 in to top above subfloor"))) }).Evaluate().Findings
            .Where(finding => finding.Fault?.Kind is LayoutFaultKind.UnknownKind or LayoutFaultKind.MisspelledKind).Select(finding => finding.Message).ToArray();
    }
}
