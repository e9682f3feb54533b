using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using System.Threading.Tasks;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A dwelling that differs from an evaluated one in its boxes alone is judged where they touch something; a fresh evaluation says the same, in the same order.</summary>
public sealed class OtherBoxesTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    private static readonly LayoutEvaluator OfWholeDwellings = new(DwellingGen.Rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true));

    [Fact]
    public void WithBoxesOf_SeveralTimesOver_AgreesWithAFreshEvaluation() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Random random = new(seed);
        LayoutEvaluator evaluator = seed % 2 == 0 ? Evaluator : OfWholeDwellings;
        Evaluation now = evaluator.Evaluate(seed % 3 == 0 ? DwellingGen.Dwelling(seed) : OrdinaryHouses.Make(seed, 3 + (seed % 5)));
        for (int step = 0; step < 6; step++)
        {
            Dwelling other = Changed(now.Dwelling, random, step);
            now = now.WithBoxesOf(other, CancellationToken.None);
            Evaluation fresh = evaluator.Evaluate(other);
            Assert.Equal(fresh.Findings.Select(DwellingGen.Line), now.Findings.Select(DwellingGen.Line));
            Assert.Equal(fresh.Findings, now.Findings);
            Assert.Equal(fresh.Judgements.Select(one => one.ToString()), now.Judgements.Select(one => one.ToString()));
            Assert.Equal(fresh.Checks.Select(one => one.ToString()), now.Checks.Select(one => one.ToString()));
            if (step % 2 == 1)
            {
                Assert.Equal(fresh.ToText(), now.ToText());
            }
        }

        return true;
    }).Check(Tries.Config(100));

    // The road that is tried above is taken: else it would agree with itself.
    [Fact]
    public void Like_BoxesThatAreSound_IsNoWholeDwellingAnew()
    {
        int taken = 0;
        for (int seed = 1; seed <= 20; seed++)
        {
            Evaluation first = Evaluator.Evaluate(OrdinaryHouses.Make(seed, 5));
            Dwelling moved = first.Dwelling.WithBoxes(box => box is { Height: { } height, Measured: null } ? box.WithHeight(height.WithValue(height.Value + Distance.FromInches(0, 1, 16))) : box);
            taken += first.State.Like(moved, CancellationToken.None) is null ? 0 : 1;
        }

        Assert.InRange(taken, 15, 20);
    }

    [Fact]
    public void Like_BoxThatWentOrIsAtFault_IsTheWholeDwellingAnew()
    {
        Evaluation house = Evaluator.Evaluate(OrdinaryHouses.Make(3, 5));
        PlacedBox some = house.Dwelling.PlacedBoxes().First(placed => placed.Box is { At: not null, Height: not null });
        Assert.Null(house.State.Like(house.Dwelling.WithoutBox(some.Box.Id), CancellationToken.None));
        Assert.Null(house.State.Like(house.Dwelling.WithBox(new(some.Address, some.Box.WithId(house.Dwelling.Rooms[0].Id))), CancellationToken.None));
        Assert.NotNull(house.State.Like(house.Dwelling.WithBox(new(some.Address, some.Box.WithId("one more"))), CancellationToken.None));
    }

    // What is stated is shared by the house and the mended house, which are read on several threads.
    [Fact]
    public void MendedAndBefore_ReadOnManyThreads_SayWhatTheySayOnOne()
    {
        Dwelling house = OrdinaryHouses.Make(11, 6).WithBoxes(box => box.Purpose == BoxPurpose.Switch && box.Height is { } height ? box.WithHeight(height.WithValue(height.Value + Distance.FromInches(9))) : box);
        string expected = All(Evaluator.Evaluate(house));
        for (int round = 0; round < 5; round++)
        {
            Evaluation evaluation = Evaluator.Evaluate(house);
            string[] said = new string[6];
            Parallel.For(0, said.Length, i => said[i] = All(evaluation));
            Assert.All(said, one => Assert.Equal(expected, one));
        }

        static string All(Evaluation evaluation) =>
            MarkSheet.For(evaluation) + string.Join('\n', evaluation.Judgements) + string.Join('\n', evaluation.Mend().Evaluation.Judgements) + evaluation.ToText() + evaluation.Mend().ToText();
    }

    /// <summary>A few boxes as others are in some respect, elsewhere or more of them.</summary>
    private static Dwelling Changed(Dwelling dwelling, Random random, int step)
    {
        IReadOnlyList<PlacedBox> boxes = dwelling.PlacedBoxes();
        for (int i = random.Next(4); i >= 0; i--)
        {
            PlacedBox some = boxes[random.Next(boxes.Count)];
            DeviceBox other = boxes[random.Next(boxes.Count)].Box;
            Distance aside = Distance.FromInches(random.Next(-20, 21));
            dwelling = random.Next(3) == 0
                ? dwelling.WithBox(new(some.Address, other.WithId("more" + step + "-" + i).WithAt(some.Box.At is { } at && at + aside > Distance.Zero ? at + aside : some.Box.At).WithPlan(some.Box.Plan)))
                : dwelling.WithBoxes(box => box.Id == some.Box.Id ? Otherwise(random, box, other, aside) : box);
        }

        return dwelling;
    }

    private static DeviceBox Otherwise(Random random, DeviceBox box, DeviceBox other, Distance aside) => random.Next(9) switch
    {
        0 => box.WithPurpose(other.Purpose).WithDevices(other.Devices),
        1 => box.WithSize(other.Size).WithKind(other.Kind).WithVolume(other.Volume),
        2 => box.WithCables(other.Cables).WithVolume(other.Volume),
        3 => box.WithExisting(!box.Existing),
        4 => box.WithHeight(other.Height).WithMeasured(null),
        5 => box.WithMounting(null).WithAt(box.At is { } at ? at + Distance.FromInches(random.Next(0, 30)) : null),
        6 => box.WithPlan(box.Plan is { } plan ? new(plan.Right + aside, plan.Into) : null),
        _ => box.Height is { } height ? box.WithHeight(height.WithValue(height.Value + Distance.FromInches(random.Next(-4, 5)))).WithAt(box.At is { } along && along + aside > Distance.Zero ? along + aside : box.At) : box,
    };
}
