using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>2010 ADA Standards, 308, from its own numbers.</summary>
public sealed class ReachCaseTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static readonly Distance Face = CaseFile.Inches("1.31");

    [Fact]
    public void AdaReach_OfTheWorkedCases_SaysWhatTheySay()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("reach-cases.csv"))
        {
            Assert.True(row["published"] is "" || row["published"] == row["expected"], "a published answer that is wrong needs a reason");
            OneBox box = Before(row["before"], row["top"], row["depth"], row["knee"]);
            box = box with
            {
                Options = EvaluatorOptions.Default.WithCatalog(PartsCatalog.Generic.With(
                    new DevicePart(DeviceKind.FanControl, new OperableParts(CaseFile.Inches("1"), CaseFile.Inches("1")), new Citation("this case")))),
                Box = box.Box.WithDevices(new[] { row["device"] == "inch-knob" ? DeviceKind.FanControl : new DeviceKind(row["device"]) })
                    .WithApproach(ApproachOf(row["approach"]))
                    .WithDedicated(row["before"] == "dedicated" ? "refrigerator" : null)
                    .WithSurface(row["before"] == "in the floor" ? BoxSurface.Floor : null),
            };
            Check? check = box.At(Center(row["center"])).Check();
            string said = check is { } one ? one.Verdict.ToString() : "Silent";
            Assert.True(string.Equals(row["expected"], said, StringComparison.OrdinalIgnoreCase), row["id"] + ": " + said);
        }
    }

    [Fact]
    public void AdaReach_EachStepOfTheTable_OneTickUnderAtAndOver()
    {
        int steps = 0;
        foreach (Dictionary<string, string> row in CaseFile.Table("reach-308.csv"))
        {
            Distance[] depths = DepthsOf(row).ToArray();
            foreach (Distance depth in depths)
            {
                OneBox box = Before("counter", "30", null, null) with { Box = new OneBox().Box.WithApproach(ApproachOf(row["approach"])) };
                box = box with { Wall = wall => wall.WithCounters(new[] { Counter(Above("30"), depth, depth) }) };
                if (row["high"].Length == 0)
                {
                    Assert.Equal(Verdict.Fails, box.At(Center("40")).Verdict());
                    Assert.Equal(Verdict.Fails, box.At(Center("32")).Verdict());
                    continue;
                }

                steps++;
                Distance highest = CaseFile.Inches(row["high"]) - Face;
                Assert.Equal(Verdict.Passes, box.At(Center(highest - Tick)).Verdict());
                Assert.Equal(Verdict.Passes, box.At(Center(highest)).Verdict());
                Assert.Equal(Verdict.Fails, box.At(Center(highest + Tick)).Verdict());
                Assert.Equal(-Tick, box.At(Center(highest + Tick)).Check()!.Value.Margin.AsDistance());
            }
        }

        Assert.Equal(4 * 2, steps);
    }

    [Fact]
    public void AdaReach_TopOfTheObstructionFromTheSide_OneTickUnderAtAndOver()
    {
        Dictionary<string, string> row = CaseFile.Table("reach-308.csv").Single(one => one["top at most"].Length > 0);
        foreach (string kind in new[] { "counter", "washer", "dryer" })
        {
            Distance most = CaseFile.Inches(row[kind == "counter" ? "top at most" : "laundry top at most"]);
            OneBox At(Distance top) => Before(kind, new Level(top, Datum.FinishedFloor), CaseFile.Inches("24"), Distance.Zero) with { Box = new OneBox().Box.WithApproach(Approach.Side).WithHeight(Center("44")) };
            Assert.Equal(Verdict.Passes, At(most - Tick).Verdict());
            Assert.Equal(Verdict.Passes, At(most).Verdict());
            Assert.Equal(Verdict.Fails, At(most + Tick).Verdict());
        }
    }

    [Fact]
    public void AdaReach_HighestAndLowestCenters_AreThePublishedOnes()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("reach-centers.csv"))
        {
            // A forward reach 20 in and 25 in deep is limited to 48 and 44 in, a side reach 24 in deep to 46 in; the low limit is met on clear wall.
            (string depth, Approach approach) = row["limit"] switch { "46" => ("24", Approach.Side), "44" => ("25", Approach.Forward), _ => ("20", Approach.Forward) };
            OneBox place = row["kind"] == "low" ? Before("", "", "", "") : Before("counter", "30", depth, depth);
            OneBox box = place with { Box = new OneBox().Box.WithDevices(new[] { new DeviceKind(row["device"]) }).WithOnItsSide(row["on its side"] == "yes").WithApproach(approach) };
            Distance center = CaseFile.Inches(row["center"]);
            Distance outward = row["kind"] == "low" ? -Tick : Tick;
            Assert.Equal(Verdict.Passes, box.At(Center(center)).Verdict());
            Assert.Equal(Verdict.Fails, box.At(Center(center + outward)).Verdict());
        }
    }

    // A counter 34 in high: from the side 46 in down to 24 in deep, forward 48 in to 20 and 44 in to 25 in deep if knees fit under it.
    [Theory]
    [InlineData("20", "20", "44", Verdict.Passes, MissingFacts.None)]
    [InlineData("20", "20", "46", Verdict.Unknown, MissingFacts.Approach)]
    [InlineData("20", "20", "47", Verdict.Fails, MissingFacts.None)]
    [InlineData("20", "0", "44", Verdict.Passes, MissingFacts.None)]
    [InlineData("20", "0", "46", Verdict.Fails, MissingFacts.None)]
    [InlineData("25", "25", "42", Verdict.Unknown, MissingFacts.Approach)]
    [InlineData("25", "25", "43", Verdict.Fails, MissingFacts.None)]
    [InlineData("25", "0", "42", Verdict.Fails, MissingFacts.None)]
    [InlineData("25", "0", "20", Verdict.Passes, MissingFacts.None)]
    public void AdaReach_ApproachNotStated_IsUnknownOnlyWhereItMatters(string depth, string knee, string center, Verdict expected, MissingFacts needs) =>
        AssertSays(Before("counter", "34", depth, knee).At(Center(center)), expected, needs);

    [Theory]
    [InlineData(Approach.Forward, "20", "46", Verdict.Unknown, MissingFacts.KneeSpace)]
    [InlineData(Approach.Forward, "20", "47", Verdict.Fails, MissingFacts.None)]
    [InlineData(Approach.Forward, "26", "40", Verdict.Fails, MissingFacts.None)]
    [InlineData(Approach.Side, "20", "44", Verdict.Passes, MissingFacts.None)]
    [InlineData(Approach.Either, "20", "44", Verdict.Passes, MissingFacts.None)]
    [InlineData(Approach.Either, "20", "46", Verdict.Unknown, MissingFacts.KneeSpace)]
    public void AdaReach_KneeSpaceNotStated_IsUnknownOnlyWhereItMatters(Approach approach, string depth, string center, Verdict expected, MissingFacts needs)
    {
        OneBox box = Before("counter", "34", depth, "");
        AssertSays(box with { Box = box.Box.WithApproach(approach).WithHeight(Center(center)) }, expected, needs);
    }

    [Theory]
    [InlineData("40", Verdict.Passes)]
    [InlineData("46.69", Verdict.Passes)]
    [InlineData("47", Verdict.Fails)]
    public void AdaReach_NothingInTheWay_AsksForNoApproach(string center, Verdict expected) => AssertSays(Before("", "", "", "").At(Center(center)), expected, MissingFacts.None);

    // A counter 35 in above the subfloor is 34 in above a floor 1 in thick, which is as high as a side reach goes.
    [Fact]
    public void AdaReach_CounterSetOnTheSubfloor_DependsOnTheFloor()
    {
        OneBox box = Before("counter", new Level(CaseFile.Inches("35"), Datum.Subfloor), CaseFile.Inches("24"), Distance.Zero) with
        {
            Box = new OneBox().Box.WithApproach(Approach.Side).WithHeight(Center("44")),
            Room = room => room.WithFloor(OneBox.Floor(new DistanceRange(Distance.Zero, CaseFile.Inches("1-1/4")))),
        };
        Check check = box.Check()!.Value;
        Assert.Equal(Verdict.Unknown, check.Verdict);
        Assert.True(check.Needs.HasFlag(MissingFacts.FloorFinish));
        Assert.Contains("good for any floor of at least 1 in", box.Evaluate().Findings.Single().Message, StringComparison.Ordinal);
        Assert.Equal(Verdict.Passes, (box with { Room = room => room.WithFloor(OneBox.Floor(CaseFile.Inches("1"))) }).Verdict());
        Assert.Equal(Verdict.Fails, (box with { Room = room => room.WithFloor(OneBox.Floor(CaseFile.Inches("1") - Tick)) }).Verdict());
    }

    // 16.81 in above the subfloor to the center puts the lowest outlet at 15-1/2 in: half an inch is left for the floor.
    [Fact]
    public void AdaReach_BoxSetFromTheSubfloor_IsGoodForThinFloors()
    {
        OneBox box = Before("", "", "", "") with { Room = room => room.WithFloor(OneBox.Floor(new DistanceRange(Distance.Zero, CaseFile.Inches("1-1/4")))) };
        box = box.At(BoxHeight.ToCenter(CaseFile.Inches("16.81"), Datum.Subfloor));
        AssertSays(box, Verdict.Unknown, MissingFacts.FloorFinish);
        Assert.Contains("good for any floor up to 1/2 in", box.Evaluate().Findings.Single().Message, StringComparison.Ordinal);
    }

    private static void AssertSays(OneBox box, Verdict expected, MissingFacts needs)
    {
        Check check = box.Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(needs, check.Needs);
    }

    private static IEnumerable<Distance> DepthsOf(Dictionary<string, string> row)
    {
        yield return row["over depth"] is { Length: > 0 } over ? CaseFile.Inches(over) + Tick : CaseFile.Inches("5");
        if (row["to depth"] is { Length: > 0 } to)
        {
            yield return CaseFile.Inches(to);
        }
    }

    private static Approach? ApproachOf(string text) => text switch { "forward" => Approach.Forward, "side" => Approach.Side, _ => null };

    private static BoxHeight Center(string inches) => Center(CaseFile.Inches(inches));

    private static BoxHeight Center(Distance center) => BoxHeight.ToCenter(center, Datum.FinishedFloor);

    private static Level Above(string inches) => new(CaseFile.Inches(inches), Datum.FinishedFloor);

    private static Counter Counter(Level top, Distance? depth, Distance? knee) =>
        new("counter", CounterKind.Kitchen, CaseFile.Inches("24"), CaseFile.Inches("120")) { Top = top, Depth = depth, KneeSpace = knee };

    private static OneBox Before(string what, string? top, string? depth, string? knee)
    {
        Distance? Of(string? text) => string.IsNullOrEmpty(text) ? null : CaseFile.Inches(text);
        return Before(what, Of(top) is { } high ? new Level(high, Datum.FinishedFloor) : default, Of(depth), Of(knee));
    }

    private static OneBox Before(string what, Level top, Distance? depth, Distance? knee)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.Ada2010, "ada-reach") };
        return what switch
        {
            "counter" => box with { Wall = wall => wall.WithCounters(new[] { Counter(top, depth, knee) }) },
            "washer" or "dryer" => box with
            {
                Room = room => room.WithFixtures(new[]
                {
                    new Fixture("machine", new FixtureKind(what)) { Wall = "wall", Left = CaseFile.Inches("60"), Right = CaseFile.Inches("87"), Depth = depth, Top = top },
                }),
            },
            _ => box,
        };
    }
}
