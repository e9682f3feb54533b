using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What every rule came to for every subject: nothing that was looked at vanishes, and nothing that wasn't passes.</summary>
public sealed class JudgementTests
{
    private static readonly RuleSet Outlets = RuleSets.UnitedStatesOutlets(NecEdition.Nec2023);

    [Fact]
    public void Judgements_OfRandomHouses_AreTheFindingsAndTheChecks() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Evaluation evaluation = new LayoutEvaluator(DwellingGen.Rules).Evaluate(DwellingGen.Dwelling(seed));
        Finding[] told = evaluation.Judgements.Where(one => one.Finding is not null).Select(one => one.Finding!).ToArray();
        Assert.Equal(evaluation.Findings.Where(one => one.Fault is null).Select(one => one.Message).Order(StringComparer.Ordinal), told.Select(one => one.Message).Order(StringComparer.Ordinal));
        Assert.All(evaluation.Judgements, one => Assert.True(
            one.Finding switch { null => one.State is not (Judged.NotMet or Judged.Unknown), { NotJudgedBecause: not null } => one.State == Judged.NotJudged, { Verdict: Verdict.Fails } => one.State == Judged.NotMet, _ => one.State == Judged.Unknown },
            one.ToString()));
        Assert.All(evaluation.Judgements, one => Assert.True(
            (one.State is Judged.LetOff or Judged.NotJudged) == (one.Why is not null) || (one is { State: Judged.Met, RuleId: "counter-edge", Why: { } assumed } && assumed.Contains("assumed", StringComparison.Ordinal)), one.ToString()));

        string[] met = evaluation.Judgements.Where(one => one.State == Judged.Met && DwellingGen.Rules.Row(one.RuleId) is PlacementRule or LimitRule).Select(one => one.RuleId + " " + one.Subject).Order(StringComparer.Ordinal).ToArray();
        Assert.Equal(evaluation.Checks.Where(check => check.Verdict == Verdict.Passes).Select(check => check.RuleId + " " + check.Subject).Order(StringComparer.Ordinal), met);

        // Each box and each rule about boxes once, whatever came of it, but for boxes in ceilings of which a row speaks by their room; each space rule for each of its subjects at least once.
        foreach (Rule rule in DwellingGen.Rules.Rows.Where(rule => rule is not (SpaceRule or HabitRule) && rule.Scope.WithoutCeilings is not null))
        {
            bool byRoom = rule is PlacementRule { Overhead: not null };
            Assert.Equal(
                evaluation.Dwelling.PlacedBoxes().Count(placed => !byRoom || !IsOverhead(placed.Address)),
                evaluation.Judgements.Count(one => one.RuleId == rule.Id && (!byRoom || (one.Kind == JudgedKind.Box && !IsOverhead(one.Address)))));
        }

        foreach (SpaceRule rule in DwellingGen.Rules.Rows.OfType<SpaceRule>().Where(rule => rule.Subject == SpaceKind.Room))
        {
            Assert.All(evaluation.Dwelling.Rooms.Where(room => rule.Scope.Rooms.Count == 0 || rule.Scope.Rooms.Contains(room.Kind)),
                room => Assert.Contains(evaluation.Judgements, one => one.RuleId == rule.Id && (one.Address == room.Id || one.Address.StartsWith(room.Id + "/", StringComparison.Ordinal) || one.Subject == room.Id)));
        }

        return true;

        static bool IsOverhead(string address) => address.EndsWith("/ceiling", StringComparison.Ordinal);
    }).Check(Tries.Config(40));

    // 144 in between two doors: an outlet at 72 in reaches all of it, and one tick more than 72 in from its end leaves that tick.
    [Theory]
    [InlineData("122", Judged.Met)]
    [InlineData("121", Judged.NotMet)]
    public void Run_ThatIsServed_IsMetAndNotSilent(string at, Judged expected)
    {
        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(Outlets, "wall-outlets")).Evaluate(RoomSketch.House("bedroom", ["300 door:0:50 box:" + at + " door:194:300"]));
        Judgement run = Assert.Single(evaluation.Judgements);
        Assert.Equal((expected, JudgedKind.Part, "room/w0"), (run.State, run.Kind, run.Address));
    }

    [Fact]
    public void RoomOfAnotherKind_IsNotApplicable_AndOneWithoutBoxesNotJudged()
    {
        LayoutEvaluator bath = new(OneBox.Only(Outlets, "bath-receptacle"));
        Assert.Empty(bath.Evaluate(RoomSketch.House("bedroom", ["100", "100", "100", "100"])).Judgements);
        Judgement open = Assert.Single(bath.Evaluate(RoomSketch.House("bathroom", ["100", "100", "100", "100"])).Judgements);
        Assert.Equal((Judged.NotJudged, JudgedKind.Room, "room", null), (open.State, open.Kind, open.Subject, open.Finding));
    }

    // Silence is no passing: a caller's own rule that says nothing of a room hasn't met it.
    [Fact]
    public void RuleThatSaysNothing_IsNotApplicable_AndOneThatSaysSoIsMet()
    {
        foreach ((bool says, Judged expected) in new[] { (false, Judged.NotApplicable), (true, Judged.Met) })
        {
            Evaluation evaluation = new LayoutEvaluator(new([new Own(says)])).Evaluate(RoomSketch.House("bedroom", ["100"]));
            Assert.Equal(expected, Assert.Single(evaluation.Judgements).State);
        }
    }

    // Two receptacles over one length of counter, one out of reach: that one is let off, and says so.
    [Fact]
    public void BoxThatIsLetOff_DoesntVanish()
    {
        PlacementRule row = new HeightBand("own-reach", "in reach", Severity.Violation, new("House rules"), Datum.Subfloor) { High = CaseFile.Inches("40"), Relief = Relief.ComparableInRoom };
        DeviceBox low = new DeviceBox("low", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("20")).WithHeight(BoxHeight.Parse("16 in to center above subfloor"));
        OneBox box = new() { Rules = new([row]), Wall = wall => wall.WithBoxes(new[] { low }) };
        Evaluation evaluation = box.At(BoxHeight.Parse("50 in to center above subfloor")).Evaluate();
        Assert.True(evaluation.IsClean);
        Assert.Equal(["low: Met ", "the-box: LetOff others nearby meet it"], evaluation.Judgements.Select(one => one.Subject + ": " + one.State + " " + one.Why));
        Assert.Contains("\nLet off: the-box (own-reach).\n", evaluation.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void BoxAtFault_IsJudgedByNoRule_AndSaysWhy()
    {
        Evaluation evaluation = new OneBox { Rules = RuleSets.Ada2010 }.Evaluate();
        Judgement one = Assert.Single(evaluation.Judgements, judged => judged.RuleId == "ada-reach");
        Assert.Equal((Judged.NotJudged, "a fault of the description keeps it from being judged"), (one.State, one.Why));
    }

    // Six walls without an end, a bath that lies in a zone of unknown extent: the first lines say what couldn't be judged and what that is.
    [Fact]
    public void ToText_SaysFirstWhatCouldntBeJudged_ThenWhatIsWrong()
    {
        Room bath = new SquareRoom { Fixtures = [new Fixture("tub", FixtureKind.Tub).WithWall("north")], North = [SquareRoom.Box("gfci-receptacle", "bath", CaseFile.Inches("30"), CaseFile.Inches("44"))] }.Build();
        Dwelling house = RoomSketch.House("bedroom", []);
        house = house.WithRooms(house.Rooms.With(bath));
        string[] lines = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "tub-receptacle") + OneBox.Only(Outlets, "wall-outlets") + OneBox.Only(RuleSets.Ada2010, "ada-reach"))
            .Evaluate(house.WithBoxes(box => box.WithHeight(BoxHeight.Parse("60 in to center above finished floor")))).ToText().Split('\n');
        Assert.EndsWith(": 3 causes, 3 findings (1 violation, 2 not judged).", lines[0], StringComparison.Ordinal);
        Assert.Equal("1. NOT JUDGED  the-box: it isn't said where everything stands in plan (tub-receptacle)", lines[2]);
        Assert.Equal("2. NOT JUDGED  room: its walls aren't described (wall-outlets)", lines[4]);
        Assert.StartsWith("3. VIOLATION  the-box (square/north): set 60 in to center above finished floor", lines[6], StringComparison.Ordinal);
        Assert.Contains("Met: nothing was found to be met.", lines);
        Assert.Contains(lines, line => line.StartsWith("Not looked at by any rule here: receptacle spacing", StringComparison.Ordinal) || line.StartsWith("Not looked at by any rule here: other required outlets", StringComparison.Ordinal));
    }

    // One wall less, and less is met: never more. Whatever is met of the smaller description is met of the whole one or never was about it.
    [Fact]
    public void Judgements_OfAHouseWithAFactLess_NeverMeetMore() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Dwelling whole = DwellingGen.Dwelling(seed);
        Dwelling less = whole.WithRooms(whole.Rooms.Select(room => room.WithFloor(FloorBuildup.NotChosen))).WithBoxes(box => box.WithSize(null).WithKind(null));
        string[] Met(Dwelling house) => new LayoutEvaluator(RuleSets.Ada2010).Evaluate(house).Judgements.Where(one => one.State == Judged.Met).Select(one => one.RuleId + " " + one.Subject).ToArray();
        Assert.Empty(Met(less).Except(Met(whole)));
        return true;
    }).Check(Tries.Config(40));

    private sealed record Own : SpaceRule
    {
        private readonly bool says;

        public Own(bool says)
            : base("own", "as it is", Severity.Violation, new("House rules")) => this.says = says;

        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => says ? "says so" : "silent";

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (says)
            {
                statement.Meets(space.Id, space.Id);
            }
        }
    }
}
