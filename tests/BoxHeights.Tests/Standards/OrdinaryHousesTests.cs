using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>What the rule sets for a house in the United States say of good houses, and of good houses with one mistake.</summary>
public sealed class OrdinaryHousesTests
{
    private static readonly NecEdition[] Editions = [NecEdition.Nec2017, NecEdition.Nec2020, NecEdition.Nec2023, NecEdition.Nec2026];
    private static readonly LayoutEvaluator[] Boxes = Editions.Select(edition => new LayoutEvaluator(RuleSets.UnitedStatesDwelling(edition) + RuleSets.RoughInPractice)).ToArray();
    private static readonly LayoutEvaluator[] Whole = Editions.Select(edition => new LayoutEvaluator(RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition) + RuleSets.RoughInPractice)).ToArray();

    public static TheoryData<string> Mistakes() => new(PlantedMistakes.Kinds.Keys);

    // The editions differ in few rows: each house is judged by the oldest or the one after it, and by one of the newer two.
    [Fact]
    public void OrdinaryHouse_InEveryEdition_IsSilent() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
    {
        Dwelling house = OrdinaryHouses.Make(one.Seed, one.Rooms);
        foreach (LayoutEvaluator evaluator in new[] { Whole[one.Seed % 2], Whole[2 + (one.Seed / 2 % 2)] })
        {
            Evaluation evaluation = evaluator.Evaluate(house);
            Assert.True(evaluation.IsClean, Texts(evaluation));
        }
    }).Check(Tries.Config(2000));

    // 1.8 m is less than 6 ft, and the wall behind an open leaf doesn't count: which way a door swings has to be said, or it is an honest unknown. No door swings away from the rooms on both its sides: of each wall one face is taken.
    [Fact]
    public void OrdinaryHouse_InCanada_IsSilent()
    {
        LayoutEvaluator canada = new(RuleSets.CanadaDwelling + RuleSets.RoughInPractice);
        Prop.ForAll(OrdinaryHouses.Seeds, one =>
        {
            Dwelling house = OrdinaryHouses.Make(one.Seed, one.Rooms);
            house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithBackOf(null).WithBackOffset(null).WithOpenings(wall.Openings.Select(door => door.WithSwing(door.Swing ?? DoorSwing.Away)))))));
            Evaluation evaluation = canada.Evaluate(house);
            Assert.True(evaluation.IsClean, Texts(evaluation));
        }).Check(Tries.Config(500));
    }

    [Fact]
    public void OrdinaryHouse_OfAnySeed_HasFourToFourteenRoomsAndFortyToAHundredAndFiftyBoxes() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
    {
        Dwelling house = OrdinaryHouses.Make(one.Seed, one.Rooms);
        Assert.InRange(house.Rooms.Count, 4, 14);
        Assert.InRange(house.PlacedBoxes().Count, 40, 150);
    }).Check(Tries.Config(300));

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Mistake_InAnOrdinaryHouse_IsWhatIsFoundAndNothingElse(string name)
    {
        int planted = 0;
        for (int seed = 1; planted < Tries.Of(40) && seed <= 800; seed++)
        {
            if (PlantedMistakes.Kinds[name](seed, 4 + (seed % 11)) is not { } mistake)
            {
                continue;
            }

            planted++;
            Evaluation evaluation = (mistake.NeedsOutlets ? Whole : Boxes)[seed % Editions.Length].Evaluate(mistake.House);
            string found = "seed " + seed + ": " + Texts(evaluation);
            Finding[] told = Told(evaluation, mistake);
            Assert.True(new HashSet<string>(mistake.Rules).SetEquals(told.Select(finding => finding.RuleId)), found);
            Assert.True(told.All(finding => finding.Verdict == mistake.Verdict), found);
            Assert.True(mistake.NeedsOutlets || mistake.Boxes.SetEquals(told.Select(finding => finding.Subject)), found);
            Assert.True(!mistake.IsOneStick || evaluation.Causes.Count == 1, found);
            Assert.True(mistake.Still is not { } still || Told(Whole[seed % Editions.Length].Evaluate(still), mistake).Length == 0, found);
        }

        Assert.True(planted >= 8, "hardly any house offers a place for this mistake: " + planted);
    }

    /// <summary>What is found but for studs that go through a box which the mistake put elsewhere, without saying how it is held there.</summary>
    private static Finding[] Told(Evaluation evaluation, Planted mistake) => [.. evaluation.Findings.Where(finding =>
        finding.RuleId != "framing-fit" || mistake.Rules.Contains("framing-fit") || mistake.House.FindBox(finding.Subject)!.Box.Mounting is not null)];

    // Who says less of a good house may learn less, and is told of no violation: habit may assume what is usual.
    [Theory]
    [InlineData("tops of counters")]
    [InlineData("depths of counters")]
    [InlineData("swings of doors")]
    [InlineData("casings of openings")]
    [InlineData("floors")]
    [InlineData("board")]
    public void OrdinaryHouse_OfWhichLessIsSaid_IsNeverFoundWrong(string left)
    {
        int unknown = 0;
        for (int seed = 1; seed <= Tries.Of(100); seed++)
        {
            Dwelling house = OrdinaryHouses.Make(seed, 4 + (seed % 11));
            Dwelling less = left == "board" ? house.WithStoreys(house.Storeys.Select(storey => storey.WithBoards(null)))
                : house.WithRooms(house.Rooms.Select(room => (left == "floors" ? room.WithFloor(null) : room).WithWalls(room.Walls.Select(wall => left switch
                {
                    "tops of counters" => wall.WithCounters(wall.Counters.Select(counter => counter.WithTop(null))),
                    "depths of counters" => wall.WithCounters(wall.Counters.Select(counter => counter.WithDepth(null))),
                    "swings of doors" => wall.WithOpenings(wall.Openings.Select(opening => opening.WithSwing(null))),
                    "casings of openings" => wall.WithOpenings(wall.Openings.Select(opening => opening.WithCasing(null).WithReveal(null))),
                    _ => wall,
                }))));
            Evaluation evaluation = Whole[seed % Editions.Length].Evaluate(less);
            Assert.True(!evaluation.HasViolations && !evaluation.HasFaults, "seed " + seed + ": " + Texts(evaluation));
            unknown += evaluation.Findings.Count;
        }

        Assert.True(left is not "tops of counters" || unknown > 0, "nothing depended on " + left);
    }

    // A remodel: what is wrong was there before, and is no part of the work.
    [Theory]
    [InlineData("behind the mirror")]
    [InlineData("plate on the casing")]
    [InlineData("three 12-2 in 18")]
    [InlineData("switch at 85")]
    [InlineData("21 in above the counter")]
    [InlineData("box 1/8 in proud")]
    [InlineData("outdoor receptacle at 80")]
    public void Mistake_ThatIsNoPartOfTheWork_IsSilent(string name)
    {
        int planted = 0;
        for (int seed = 1; planted < Tries.Of(40) && seed <= 400; seed++)
        {
            if (PlantedMistakes.Kinds[name](seed, 4 + (seed % 11)) is { } mistake)
            {
                planted++;
                Evaluation evaluation = Boxes[seed % Editions.Length].Evaluate(mistake.House.WithBoxes(box => mistake.Boxes.Contains(box.Id) ? box.WithUntouched(true) : box));
                Assert.True(evaluation.IsClean, "seed " + seed + ": " + Texts(evaluation));
            }
        }

        Assert.True(planted >= 4, "hardly any house offers a place for this mistake: " + planted);
    }

    [Fact]
    public void StickFromTheFinishedFloor_Remedy_IsOneStickFromTheSubfloorThatLeavesNothing()
    {
        for (int seed = 1; seed <= Tries.Of(40); seed++)
        {
            Planted mistake = PlantedMistakes.Kinds["stick from the finished floor"](seed, 8)!;
            LayoutEvaluator evaluator = Boxes[seed % Editions.Length];
            Cause cause = Assert.Single(evaluator.Evaluate(mistake.House).Causes);
            MoveBoxes move = Assert.IsType<MoveBoxes>(cause.Remedies[0]);
            Evaluation after = evaluator.Evaluate(move.ApplyTo(mistake.House));
            Assert.True(after.IsClean, "seed " + seed + ": " + move.Text + "\n" + Texts(after));
        }
    }

    private static string Texts(Evaluation evaluation) => string.Join("\n", evaluation.Findings.Select(finding => finding.RuleId + ": " + finding.Message));
}
