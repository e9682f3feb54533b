using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes that a remedy adds are tried where they touch something. Where more than that changes, the whole dwelling has to be judged with them.</summary>
public sealed class AddedBoxTrialTests
{
    private static readonly CountedOutlet CoAlarm = new("carbon monoxide alarm", new[] { DeviceKind.CoAlarm });

    private static readonly DeviceBox CoBox = new DeviceBox("co", BoxPurpose.Alarm).WithDevices(new[] { DeviceKind.CoAlarm });

    private static readonly Citation House = new("House rules", "1");

    private static readonly RuleSet Rows = new(
    [
        new RequiredOutlet("bedroom-co", "there in each bedroom", Severity.Violation, House, CoAlarm, new RoomSubject()) { Scope = new() { Rooms = new[] { RoomKind.Bedroom } }, Adds = CoBox },
        new RequiredOutlet("storey-co", "there on each storey", Severity.Violation, House, CoAlarm, new StoreySubject()) { OnlyWhereListed = true },
    ]);

    private static readonly EvaluatorOptions Whole = EvaluatorOptions.Default.WithAllBoxesAreDescribed(true);

    /// <summary>Says nothing. It is a caller's own rule, so that every box to add is tried on the whole dwelling.</summary>
    private sealed record Silent() : SpaceRule("silent", "anything", Severity.Note, House)
    {
        public override SpaceKind Subject => SpaceKind.Dwelling;

        public override string Numbers => "none";

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
        }
    }

    /// <summary>No room of a dwelling has as many boxes, wherever they are.</summary>
    private sealed record FewBoxes(int Most) : SpaceRule("few-boxes", "in a dwelling of few boxes", Severity.Violation, House)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "at most " + Most;

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            int count = space.Dwelling.PlacedBoxes().Count;
            if (count > Most)
            {
                statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(count), QuantitySet.AtLeast(Most), () => $"{count} boxes");
            }
        }
    }

    /// <summary>The bedroom needs a box, and its rule believes that one upstairs will do.</summary>
    private sealed record WrongRoom() : SpaceRule("wrong-room", "there", Severity.Violation, House)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "1";

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Id == "bedroom" && space.Boxes.Count == 0)
            {
                statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => $"no box", MissingFacts.None, new[] { new PlacedBox("den/ceiling", CoBox) });
            }
        }
    }

    private static Dwelling TwoStoreys(bool coAbove)
    {
        DwellingBuilder house = new("two storeys");
        house.Add(new Storey("ground"));
        house.Add(new Storey("upper"));
        Room(house, "bedroom", RoomKind.Bedroom, "ground", []);
        Room(house, "den", RoomKind.Office, "upper", [coAbove ? CoBox : new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire })]);
        return house.Build();
    }

    private static void Room(DwellingBuilder house, string id, RoomKind kind, string storey, DeviceBox[] overhead)
    {
        RoomBuilder room = house.Room(id, kind, storey).With(one => one.WithOverhead(overhead));
        foreach (string wall in new[] { "n", "e", "s", "w" })
        {
            room.Wall(wall, Distance.FromFeet(12));
        }
    }

    private static Items<Remedy> RemediesOf(string rule, Dwelling dwelling, RuleSet rows) => new LayoutEvaluator(rows, Whole).Evaluate(dwelling).Causes.Single(cause => cause.RuleId == rule).Remedies;

    // The first carbon monoxide alarm that a dwelling lists means that each of its storeys is asked for one.
    [Fact]
    public void Remedy_FirstBoxOfItsKind_IsOfferedOnlyWhereNoOtherStoreyThenLacksOne()
    {
        Assert.IsType<NoneFound>(Assert.Single(RemediesOf("bedroom-co", TwoStoreys(false), Rows)));
        Assert.IsType<AddBox>(Assert.Single(RemediesOf("bedroom-co", TwoStoreys(true), Rows)));
    }

    [Fact]
    public void Remedy_WhereARuleOfTheCallersOwnCountsAllBoxes_IsTriedOnTheWholeDwelling()
    {
        Assert.Equal(["few-boxes"], Assert.IsType<NoneFound>(Assert.Single(RemediesOf("bedroom-co", TwoStoreys(true), Rows.With(new FewBoxes(1))))).Conflicting);
        Assert.Single(RemediesOf("bedroom-co", TwoStoreys(true), Rows.With(new FewBoxes(2))));
    }

    [Fact]
    public void Remedy_ThatPutsABoxWhereItDoesNotMend_IsNotOffered() => Assert.IsType<NoneFound>(Assert.Single(RemediesOf("wrong-room", TwoStoreys(false), new RuleSet([new WrongRoom()]))));

    [Fact]
    public void Remedy_WithTheIdOfARoom_IsNotOffered()
    {
        Dwelling house = TwoStoreys(true);
        Assert.IsType<NoneFound>(Assert.Single(RemediesOf("bedroom-co", house.WithRooms(house.Rooms.With(new Room("bedroom-co", RoomKind.Closet, "upper"))), Rows)));
    }

    // The second road: with a rule of a caller's own in the set each box to add is tried on the whole dwelling.
    [Fact]
    public void Remedies_OfRandomHouses_AreThoseFoundOnTheWholeDwelling()
    {
        int tried = 0;
        LayoutEvaluator touched = new(DwellingGen.Rules, Whole);
        LayoutEvaluator whole = new(DwellingGen.Rules.With(new Silent()), Whole);
        Prop.ForAll(DwellingGen.Seeds, seed =>
        {
            Dwelling house = DwellingGen.Dwelling(seed);
            string[] one = Added(touched.Evaluate(house));
            Assert.Equal(Added(whole.Evaluate(house)), one);
            tried += one.Length;
            return true;
        }).Check(Tries.Config(60));
        Assert.InRange(tried, 5, int.MaxValue);
    }

    private static string[] Added(Evaluation evaluation) => evaluation.Causes.SelectMany(cause => cause.Remedies.OfType<AddBox>().Select(remedy => cause.RuleId + ": " + remedy.Text)).ToArray();

    // The second of two can't be there: the first isn't left behind.
    [Fact]
    public void Trial_OneOfWhoseBoxesCantBe_LeavesNothing()
    {
        LayoutState state = new LayoutEvaluator(Rows, Whole).Evaluate(new SquareRoom { Kind = RoomKind.Bedroom, North = [Switch("own", "40")] }.House()).State;
        PlacedBox good = new("square/east", Switch("good", "40"));
        Assert.Null(state.With(new[] { good, new PlacedBox("square/south", Switch("beyond", "400")) }));
        Assert.Null(state.With(new[] { good, new PlacedBox("square/nowhere", Switch("lost", "40")) }));
        Assert.Equal("own", Assert.Single(state.Boxes).Source.Id);
        Assert.Empty(state.BoxesOn(state.SurfaceAt("square/east")!));

        static DeviceBox Switch(string id, string at) => SquareRoom.Box("switch", "switch", Cases.CaseFile.Inches(at), Cases.CaseFile.Inches("46")).WithId(id);
    }
}
