using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A counter whose height nobody stated: documents can't be told, and what habit assumes is said.</summary>
public sealed class UnstatedCounterTests
{
    [Theory]
    [InlineData("ada", "ada-reach", 42)]
    [InlineData("nec", "counter-receptacle", 70)]
    public void CodeRow_OverACounterWithoutTop_IsUnknown(string set, string row, int center)
    {
        OneBox box = At(center, set, row, null);
        Assert.Equal(Verdict.Unknown, box.Verdict());
        Assert.True((box.Check()!.Value.Needs & MissingFacts.ObstructionHeight) != 0);
    }

    [Fact]
    public void CodeRow_OfACounterThatIsDescribedLess_IsNeverMoreMet()
    {
        Prop.ForAll(Arb.From(Gen.Choose(14, 70).Two()), n => new[] { ("ada", "ada-reach"), ("nec", "counter-receptacle") }.All(row =>
            At(n.Item1, row.Item1, row.Item2, null).Check() is not { Verdict: Verdict.Passes }
            || At(n.Item1, row.Item1, row.Item2, new Level(Distance.FromInches(n.Item2), Datum.FinishedFloor)).Check() is null or { Verdict: Verdict.Passes }))
            .Check(Tries.Always(100));
    }

    [Fact]
    public void CounterEdge_WithoutTop_AssumesTheUsualAndSaysSo()
    {
        Finding finding = Assert.Single(At(37, "ada", "counter-edge", null).Evaluate().Findings);
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains("(counter c assumed 36 in above finished floor)", finding.Message, StringComparison.Ordinal);
        Evaluation clear = At(44, "ada", "counter-edge", null).Evaluate();
        Assert.Empty(clear.Findings);
        Assert.Equal("counter c assumed 36 in above finished floor", Assert.Single(clear.Judgements, one => one.Subject == OneBox.Id && one.RuleId == "counter-edge").Why);
        Evaluation stated = At(44, "ada", "counter-edge", new Level(Distance.FromInches(36), Datum.FinishedFloor)).Evaluate();
        Assert.Null(Assert.Single(stated.Judgements, one => one.Subject == OneBox.Id && one.RuleId == "counter-edge").Why);
    }

    // A box at some height would do, and nobody knows which: what to find out is the remedy. Where the top is stated, boxes are.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Outlets_OfACounterWithoutTop_AreAddedOnceItIsKnown(bool isStated)
    {
        OneBox bare = At(0, "nec", "counter-receptacle", isStated ? new Level(Distance.FromInches(36), Datum.FinishedFloor) : null);
        Dwelling house = bare.Build();
        house = house.WithRooms(house.Rooms.Select(room => room.WithFloor(OneBox.Floor(Distance.Zero)).WithWalls(room.Walls.Select(wall => wall.WithBoxes(Items<DeviceBox>.None)))));
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023)).Evaluate(house);
        Remedy remedy = Assert.Single(Assert.Single(evaluation.Causes, cause => cause.RuleId == "counter-outlets").Remedies);
        Assert.Equal(isStated, remedy is AddBox);
        Assert.Equal(!isStated, remedy is NoneFound { Reason: NoRemedyReason.NotKnown } && remedy.Text.StartsWith("find out first: the height of what it is reached over", StringComparison.Ordinal));
    }

    [Fact]
    public void Height_AboveACounterWithoutTop_IsAFaultAndNotTakenAsMet()
    {
        Evaluation evaluation = At(0, "ada", "ada-reach", null).At(BoxHeight.Parse("8 in to center above countertop")).Evaluate();
        Assert.Contains("no counter of known height", Assert.Single(evaluation.Findings).Message, StringComparison.Ordinal);
    }

    private static OneBox At(int center, string set, string row, Level? top)
    {
        OneBox box = new()
        {
            Rules = OneBox.Only(set == "ada" ? RuleSets.Ada2010 : RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), row),
            Wall = wall => wall.WithCounters(new[]
            {
                new Counter("c", CounterKind.Kitchen, Distance.Zero, Distance.FromInches(144)).WithTop(top).WithDepth(Distance.FromInches(24)).WithKneeSpace(Distance.Zero).WithBaseStandsOn(Datum.FinishedFloor),
            }),
        };
        return (box with { Box = box.Box.WithPurpose(BoxPurpose.Counter).WithApproach(Approach.Side) }).At(BoxHeight.ToCenter(Distance.FromInches(center), Datum.FinishedFloor));
    }
}
