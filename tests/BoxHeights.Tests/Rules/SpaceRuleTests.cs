using System;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>The family whose subject is there without any box: a rule of the tests' own asks for boxes low on a room's walls.</summary>
public class SpaceRuleTests
{
    /// <summary>A room has so many boxes whose center is surely no higher than a limit.</summary>
    private sealed record LowBoxes(string Name, int Fewest, Distance Limit, SpaceKind Of) : SpaceRule(Name, "there at least " + Fewest + " times, low", Severity.Violation, new("House rules", "1"))
    {
        public override SpaceKind Subject => Of;

        public override string Numbers => Fewest + " below " + Limit;

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Room is { Walls.Count: 0 })
            {
                statement.NotJudged($"no walls are described");
                return;
            }

            int low = 0;
            int maybe = 0;
            foreach (SpaceBox box in space.Boxes)
            {
                if (box.TryHeightOf(TargetLine.Center, Datum.FinishedFloor, out DistanceRange height, out _))
                {
                    low += height.To <= Limit ? 1 : 0;
                    maybe += height.From <= Limit ? 1 : 0;
                }
            }

            if (low >= Fewest)
            {
                return;
            }

            string address = space.Room is { } room ? room.Id + "/" + room.Walls[0].Id : space.Id;
            statement.Finds(space.Id, address, maybe >= Fewest ? Verdict.Unknown : Verdict.Fails, Quantity.Of(low), QuantitySet.AtLeast(Fewest), () => $"{low} low boxes",
                maybe >= Fewest ? MissingFacts.FloorFinish : MissingFacts.None,
                space.Room is null ? default : new[] { new PlacedBox(address, new DeviceBox("added", BoxPurpose.General).WithAt(Inches(30)).WithHeight(BoxHeight.ToCenter(Inches(10), Datum.FinishedFloor))) });
        }
    }

    private static readonly FloorBuildup Bare = FloorBuildup.Of(new FloorLayer("sealed", Distance.Zero));

    private static Distance Inches(int count) => Distance.FromInches(count, 0, 1);

    private static DeviceBox Box(string id, int at, int center) =>
        new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(Inches(at)).WithHeight(BoxHeight.ToCenter(Inches(center), Datum.Subfloor));

    private static Dwelling House(FloorBuildup floor, params DeviceBox[] boxes)
    {
        DwellingBuilder house = new("House of rules");
        house.Add(new Storey("main"));
        WallBuilder wall = house.Room("den", RoomKind.Office, "main").With(room => room.WithFloor(floor)).Wall("north", Inches(120));
        foreach (DeviceBox box in boxes)
        {
            wall.Add(box);
        }

        return house.Build();
    }

    private static LayoutEvaluator Evaluator(params Rule[] rules) => new(new RuleSet(rules));

    private static readonly LowBoxes OneLow = new("one-low", 1, Inches(16), SpaceKind.Room);

    [Fact]
    public void RoomWithoutBox_LacksIt_AndTheCureMendsIt()
    {
        Evaluation evaluation = Evaluator(OneLow).Evaluate(House(Bare));
        Finding finding = Assert.Single(evaluation.Findings);
        Assert.Equal(("den", "den/north", Verdict.Fails), (finding.Subject, finding.Address, finding.Verdict));
        Assert.Equal("den: 0 low boxes, must be there at least 1 times, low [House rules 1]", finding.Message);
        Assert.Equal((Quantity.Of(0), "at least 1", Quantity.Of(-1)), (finding.Measured, finding.Allowed.ToString(), finding.Margin));
        Assert.True(evaluation.HasViolations);
        Assert.Single(evaluation.For("den"));
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.Equal("add general box on den/north, 30 in from its left end, 10 in to center above finished floor", cure.Text);
        Assert.True(Evaluator(OneLow).Evaluate(cure.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    // 40 ft of bare wall take several receptacles: each is told by itself, so that a helper can tick it off.
    [Fact]
    public void CureOfSeveralBoxes_TellsThemApart()
    {
        DwellingBuilder house = new("House of rules");
        house.Add(new Storey("main"));
        house.Room("den", RoomKind.Office, "main").With(room => room.WithFloor(Bare)).Wall("north", Inches(480));
        LayoutEvaluator evaluator = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice, "wall-outlets"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(Assert.Single(evaluator.Evaluate(house.Build()).Findings).Remedies));
        string start = "add " + cure.Placed.Count + " boxes: ";
        Assert.True(cure.Placed.Count > 2);
        Assert.StartsWith(start, cure.Text, StringComparison.Ordinal);
        string[] told = cure.Text[start.Length..].Split("; ");
        Assert.Equal(cure.Placed.Count, told.Distinct().Count());
        Assert.All(told, one => Assert.StartsWith("general box on den/north, ", one, StringComparison.Ordinal));
    }

    // A box in an island is listed under the floor: who looks for it there looks in vain.
    [Fact]
    public void CureInAnIsland_NamesTheIsland()
    {
        Freestanding island = new Freestanding("island", FreestandingKind.Island).WithTop(Level.Parse("36 in above finished floor"))
            .WithCorners(new[] { new PlanPoint(Inches(40), Inches(40)), new PlanPoint(Inches(100), Inches(40)), new PlanPoint(Inches(100), Inches(76)), new PlanPoint(Inches(40), Inches(76)) });
        Dwelling house = new SquareRoom { Kind = RoomKind.Kitchen }.House();
        house = house.WithRooms(house.Rooms.Select(room => room.WithFreestanding(new[] { island })));
        LayoutEvaluator evaluator = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2017), "island-outlets"), EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));
        Assert.StartsWith("add counter box in square/island, ", Assert.Single(Assert.Single(evaluator.Evaluate(house).Findings).Remedies).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void FloorThatDecides_IsUnknown_AndNarrowingItTells()
    {
        // 16-1/2 in above the subfloor is 16 in above a floor of 1/2 in.
        DeviceBox box = Box("a", 30, 0).WithHeight(BoxHeight.ToCenter(Distance.FromInches(16, 1, 2), Datum.Subfloor));
        Assert.Equal(Verdict.Unknown, Assert.Single(Evaluator(OneLow).Evaluate(House(FloorBuildup.NotChosen, box)).Findings).Verdict);
        Assert.True(Evaluator(OneLow).Evaluate(House(FloorBuildup.Of(new FloorLayer("wood", Distance.FromInches(0, 1, 2))), box)).IsClean);
        Assert.Equal(Verdict.Fails, Assert.Single(Evaluator(OneLow).Evaluate(House(Bare, box)).Findings).Verdict);
    }

    [Fact]
    public void CureThatBringsAnotherFinding_IsNotOffered()
    {
        HeightBand high = new("all-high", "high", Severity.Violation, new("House rules", "2"), Datum.FinishedFloor) { Low = Inches(40) };
        Finding finding = Assert.Single(Evaluator(OneLow, high).Evaluate(House(Bare)).Findings);
        Assert.Equal(["all-high"], Assert.IsType<NoneFound>(Assert.Single(finding.Remedies)).Conflicting);
    }

    [Fact]
    public void SessionMove_JudgesTheRoomAnew()
    {
        LayoutSession session = Evaluator(OneLow).Open(House(Bare, Box("a", 30, 12), Box("b", 60, 40)));
        Assert.Empty(session.Findings);
        Assert.Equal("den", Assert.Single(session.Move("a", Inches(30), BoxHeight.ToCenter(Inches(17), Datum.Subfloor)).Appeared).Subject);
        Assert.Equal("den", Assert.Single(session.Move("b", Inches(60), BoxHeight.ToCenter(Inches(16), Datum.Subfloor)).Cleared).Subject);
        Assert.Single(session.Remove("b").Appeared);
    }

    [Fact]
    public void FaultOfTheRoom_KeepsTheRuleFromJudging()
    {
        Dwelling house = House(Bare);
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, Inches(40), Inches(30)) })))));
        Evaluation evaluation = Evaluator(OneLow).Evaluate(house);
        Assert.Equal(Finding.LayoutFaultId, Assert.Single(evaluation.Findings).RuleId);
        Assert.Contains("one-low: a fault of the description keeps it from being judged (den)", evaluation.NotJudged);
    }

    [Fact]
    public void RuleThatLacksWhatItNeeds_IsListed()
    {
        DwellingBuilder house = new("House of rules");
        house.Add(new Storey("main"));
        house.Room("den", RoomKind.Office, "main");
        Evaluation evaluation = Evaluator(OneLow).Evaluate(house.Build());
        Assert.Equal(("one-low", "den", Verdict.Unknown, "no walls are described"), Assert.Single(evaluation.Findings) is var one ? (one.RuleId, one.Subject, one.Verdict, one.NotJudgedBecause) : default);
        Assert.Contains("one-low: no walls are described (den)", evaluation.NotJudged);
    }

    [Fact]
    public void ReadingThatWouldBeMet_IsNamed()
    {
        LowBoxes disputed = OneLow with { Readings = new[] { new Reading("higher", "up to 20 in", OneLow with { Limit = Inches(20) }), new Reading("two", "two of them", OneLow with { Fewest = 2, Limit = Inches(20) }) } };
        Finding finding = Assert.Single(Evaluator(disputed).Evaluate(House(Bare, Box("a", 30, 18))).Findings);
        Assert.Equal("higher", Assert.Single(finding.DisputedBy));
    }

    [Theory]
    [InlineData(SpaceKind.Room, "den", 2)]
    [InlineData(SpaceKind.Storey, "main", 2)]
    [InlineData(SpaceKind.Dwelling, "House of rules", 2)]
    [InlineData(SpaceKind.Flight, "stair", 2)]
    [InlineData(SpaceKind.OutsideFace, "front", 0)]
    public void Subjects_SeeTheBoxesThatAreTheirs(SpaceKind kind, string id, int low)
    {
        Dwelling house = House(Bare, Box("a", 30, 12), Box("b", 60, 12), Box("c", 90, 40));
        house = house.WithOutside(new[] { new OutsideFace("front") }).WithFlights(new[] { new StairFlight("stair", "main", "main", 14) });
        Finding finding = Assert.Single(Evaluator(new LowBoxes("many-low", 9, Inches(16), kind)).Evaluate(house).Findings);
        Assert.Equal((id, Quantity.Of(low)), (finding.Subject, finding.Measured));
    }

    [Fact]
    public void Scope_LeavesOutRoomsOfOtherKinds()
    {
        LowBoxes kitchens = OneLow with { Scope = new() { Rooms = new[] { RoomKind.Kitchen } } };
        Assert.True(Evaluator(kitchens).Evaluate(House(Bare)).IsClean);
    }
}
