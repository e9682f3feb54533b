using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A box across a countertop's edge: neither under it nor over it, and in the way of the counter. Common practice, no source; recomputed by hand.</summary>
public sealed class CounterEdgeTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static readonly Level Top = new(In(36), Datum.FinishedFloor);

    public static TheoryData<string> Sets { get; } = new(All.Keys);

    private static Dictionary<string, RuleSet> All => new()
    {
        ["ada"] = RuleSets.Ada2010,
        ["type a"] = RuleSets.TypeA2009,
        ["type b"] = RuleSets.TypeB2009,
        ["fair housing"] = RuleSets.FairHousing,
        ["california"] = RuleSets.California,
        ["dwelling"] = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023),
        ["outlets"] = RuleSets.UnitedStatesOutlets(NecEdition.Nec2020),
        ["canada"] = RuleSets.CanadaDwelling,
        ["canada barrier-free"] = RuleSets.CanadaBarrierFree,
        ["ontario"] = RuleSets.OntarioBarrierFree,
        ["practice"] = RuleSets.RoughInPractice,
        ["own practice"] = RuleSets.RoughInPracticeWith(new PracticeTable("crew")),
    };

    // A counter of 36 in, 26 in deep, without knee space, reached from the side: nothing over it is within reach, so the highest operable part has to be under it.
    [Theory]
    [InlineData("fair housing", "fair-housing-reach")]
    [InlineData("ada", "ada-reach")]
    [InlineData("type a", "type-a-reach")]
    [InlineData("type b", "type-b-reach")]
    public void Reach_AcrossTheTop_IsOverIt(string set, string row)
    {
        Distance highest = In(36) - In(1.31m);
        Assert.Equal(Verdict.Passes, At(highest - Tick));
        Assert.Equal(Verdict.Passes, At(highest));
        Assert.Equal(Verdict.Fails, At(highest + Tick));
        Assert.Equal(Verdict.Fails, At(In(37)));
        Assert.Equal(Verdict.Fails, At(In(37.31m)));
        Assert.Equal(Verdict.Fails, At(In(37.31m) + Tick));

        Verdict At(Distance center) => (Box(center) with { Rules = OneBox.Only(All[set], row) }).Verdict();
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Evaluate_ABoxAcrossTheTop_IsFoundAndNeverLeftThere(string set)
    {
        OneBox across = Box(In(37)) with { Rules = All[set] };
        Evaluation evaluation = across.Evaluate();
        Assert.Single(evaluation.Findings, finding => finding.RuleId == "counter-edge" && finding.Verdict == Verdict.Fails);
        foreach (MoveBoxes move in evaluation.Causes.SelectMany(cause => cause.Remedies).OfType<MoveBoxes>().Where(move => move.Height.Datum == Datum.FinishedFloor))
        {
            Distance half = In(2.25m);
            Distance center = move.Height.AtEdge(BoxHeights.Edge.Center, new BoxSize(In(2.25m), In(3.75m))).Value;
            Assert.True(center - half >= In(36) || center + half <= In(34.5m), set + ": " + move);
        }
    }

    // A plate 4-1/2 in tall, a top 1-1/2 in thick.
    [Theory]
    [InlineData("38-1/4 in", true)]
    [InlineData("32-1/4 in", false)]
    public void CounterEdge_OneTickAcross_Fails(string touching, bool over)
    {
        Distance at = Distance.Parse(touching);
        Distance across = over ? -Tick : Tick;
        Assert.Equal(Verdict.Passes, Edge(at).Verdict());
        Assert.Equal(Verdict.Passes, Edge(at - across).Verdict());
        Assert.Equal(Verdict.Fails, Edge(at + across).Verdict());
        Assert.Equal(-Tick, Edge(at + across).Check()!.Value.Margin.AsDistance());
    }

    [Fact]
    public void CounterEdge_UnderATopOfUnstatedThickness_IsUnknownUntilItIsClearOfAny()
    {
        OneBox Unstated(Distance center) => Edge(center) with { Wall = wall => wall.WithCounters(new[] { Counter().WithThickness(null) }) };
        Assert.Equal(Verdict.Passes, Unstated(In(32.25m)).Verdict());
        Assert.Equal(MissingFacts.CounterThickness, Unstated(In(32.25m) + Tick).Check()!.Value.Needs);
        Assert.Equal(Verdict.Unknown, Unstated(In(33.5m)).Verdict());
        Assert.Equal(Verdict.Fails, Unstated(In(33.5m) + Tick).Verdict());
        Assert.Equal(Verdict.Passes, Unstated(In(38.25m)).Verdict());
    }

    // The counter runs from 40 to 100 in, its range from 60 to 90: half a plate is 1-3/8 in.
    [Theory]
    [InlineData("38-5/8 in", 1)]
    [InlineData("101-3/8 in", -1)]
    [InlineData("61-3/8 in", -1)]
    [InlineData("88-5/8 in", 1)]
    public void CounterEdge_BesideTheTop_IsClearOfIt(string clear, int toward)
    {
        OneBox At(Distance along) => Edge(In(37)) with
        {
            Box = Edge(In(37)).Box.WithAt(along),
            Wall = wall => wall.WithCounters(new[]
            {
                new Counter("c", CounterKind.Kitchen, In(40), In(100)).WithTop(Top).WithThickness(In(1.5m)).WithInterruptions(new[]
                {
                    new CounterInterruption(InterruptionKind.Range, In(60), In(90)), new CounterInterruption(InterruptionKind.Sink, In(42), In(58)),
                }),
            }),
        };
        Distance place = Distance.Parse(clear);
        Assert.Equal(Verdict.Passes, At(place).Verdict());
        Assert.Equal(Verdict.Passes, At(place - (Tick * toward)).Verdict());
        Assert.Equal(Verdict.Fails, At(place + (Tick * toward)).Verdict());
    }

    [Fact]
    public void CounterEdge_WhereWhatInterruptsTheTopIsOfNoKnownKind_IsUnknown()
    {
        OneBox box = Edge(In(37)) with { Wall = wall => wall.WithCounters(new[] { Counter().WithInterruptions(new[] { new CounterInterruption(new("hatch"), In(60), In(90)) }) }) };
        Assert.Equal(Verdict.Unknown, box.Verdict());
    }

    [Theory]
    [InlineData("4 in above countertop", "42-1/4 in")]
    [InlineData("40 in above finished floor", "42-1/4 in")]
    public void CounterEdge_AcrossTheSplash_FailsInASetWithoutPractice(string top, string clear)
    {
        OneBox At(Distance center) => Edge(center) with
        {
            Wall = wall => wall.WithCounters(new[] { Counter() })
                .WithFinishes(new[] { new Finish("splash", FinishKind.Stone, In(0), In(144)).WithBottom(Top).WithTop(Level.Parse(top)) }),
        };
        Assert.Equal(Verdict.Passes, At(Distance.Parse(clear)).Verdict());
        Assert.Equal(Verdict.Fails, At(Distance.Parse(clear) - Tick).Verdict());
    }

    [Fact]
    public void CounterEdge_OfRandomPlaces_IsThatOfTwoRectangles()
    {
        // Along and center of a duplex, in eighths of an inch; the top from 60 to 100 in, 34-1/2 to 36 in above the floor.
        Prop.ForAll(Arb.From(Gen.Choose(12, 1140).Two()), n =>
        {
            int center = (n.Item2 / 4) + 200;
            OneBox box = Edge(In(center / 8m)) with
            {
                Box = Edge(In(center / 8m)).Box.WithAt(In(n.Item1 / 8m)),
                Wall = wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, In(60), In(100)).WithTop(Top).WithThickness(In(1.5m)) }),
            };
            bool apart = n.Item1 + 11 <= 480 || n.Item1 - 11 >= 800 || center - 18 >= 288 || center + 18 <= 276;
            return box.Verdict() == (apart ? Verdict.Passes : Verdict.Fails);
        }).Check(Tries.Always(100));
    }

    private static Counter Counter() => new Counter("c", CounterKind.Kitchen, In(0), In(144)).WithTop(Top).WithDepth(In(26)).WithKneeSpace(Distance.Zero).WithThickness(In(1.5m));

    private static OneBox Box(Distance center)
    {
        OneBox box = new() { Room = room => room.WithFloor(OneBox.Floor(In(0.75m))), Wall = wall => wall.WithCounters(new[] { Counter() }) };
        return (box with { Box = box.Box.WithApproach(Approach.Side).WithKind(BoxKind.NailOn).WithPurpose(new BoxPurpose("test")) }).At(BoxHeight.ToCenter(center, Datum.FinishedFloor));
    }

    private static OneBox Edge(Distance center) => Box(center) with { Rules = OneBox.Only(RuleSets.Ada2010, "counter-edge") };
}
