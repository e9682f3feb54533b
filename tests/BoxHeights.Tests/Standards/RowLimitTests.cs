using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Published limits, from the case files, one tick below, at and above.</summary>
public sealed class RowLimitTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    [Fact]
    public void Row_OneTickUnderAtAndOverItsLimit_TurnsJustPastIt()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("row-limits.csv"))
        {
            TryLimit(row);
        }

        Assert.True(CaseFile.Table("row-limits.csv").Count(row => row["limit"] != "none") >= 140);
    }

    internal static void TryLimit(Dictionary<string, string> row)
    {
        OneBox box = Site(row) with { Rules = OneBox.Only(SetOf(row["reading"], row["edition"], row["rule"]), row["rule"]) };
        string what = string.Join(",", row.Values);
        if (row["limit"] == "none")
        {
            Assert.True(box.At(BoxHeight.ToCenter(In("40"), Datum.FinishedFloor)).Verdict() == Verdict.Fails, what);
            return;
        }

        Distance limit = CaseFile.Length(row["limit"], row["unit"]) - CaseFile.Length(row["above edge"], row["unit"]);
        Distance outward = row["side"] == "at most" ? Tick : -Tick;
        Verdict At(Distance value) => box.At(BoxHeight.To(EdgeOf(row["edge"]), value, DatumOf(row["datum"]))).Verdict();
        Assert.True(At(limit - outward) == Verdict.Passes, what + ": inside");
        Assert.True(At(limit) == Verdict.Passes, what + ": at the limit");
        Assert.True(At(limit + outward) == Verdict.Fails, what + ": outside");
    }

    /// <summary>Every band of heights that is published has each of its limits in a case: one without is named here.</summary>
    [Fact]
    public void Band_OfEveryPublishedSet_HasACaseForEachLimit()
    {
        HashSet<string> held = [.. CaseFile.Table("row-limits.csv").Select(row => row["rule"] + " " + row["side"]), .. CaseFile.Table("reach-308.csv").SelectMany(_ => new[] { "ada-reach at least", "ada-reach at most" }), .. DocumentCaseTests.Held];

        // Both ends of a keep-out are in tests of their own: stair-limits.csv.
        held.UnionWith(["clear-of-handrail at least", "clear-of-handrail at most", "stair-lamp at least", "stair-lamp at most"]);
        string[] missing = [.. PublishedRows.All.OfType<HeightBand>().SelectMany(band => new[] { (band.Low, "at least"), (band.High, "at most") }.Where(side => side.Item1 is not null).Select(side => band.Id + " " + side.Item2)).Where(side => !held.Contains(side)).Distinct()];
        Assert.Empty(missing);
    }

    /// <summary>A box that is far too high is brought to the height that the trade aims at, unless it is level with one that was there before.</summary>
    [Fact]
    public void Remedy_OfAHabit_AimsAtTheUsualHeight() => Assert.All(CaseFile.Table("practice-heights.csv"), TryHeight);

    internal static void TryHeight(Dictionary<string, string> row)
    {
        string rule = row["purpose"] + "-height";
        BoxHeight aim = BoxHeight.To(EdgeOf(row["edge"]), In(row["inches"]), DatumOf(row["datum"]));
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, rule), Room = room => room.WithFloor(OneBox.Floor(In("3/4"))) };
        box = (box with { Box = box.Box.WithPurpose(new BoxPurpose(row["purpose"])) }).At(BoxHeight.To(aim.Edge!.Value, aim.Value + In("40"), aim.Datum));
        Assert.Equal(aim, Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(box.Evaluate().Causes).Remedies)).Height);

        DeviceBox old = box.Box.WithId("old").WithAt(In("20")).WithExisting(true);
        bool IsFound(Distance off) => !(box with { Wall = wall => wall.WithBoxes(new[] { old }) }).At(BoxHeight.To(aim.Edge!.Value, aim.Value + In("40") + off, aim.Datum)).Evaluate().IsClean;
        Distance limit = In(row["off old"]);
        foreach (int sign in new[] { 1, -1 })
        {
            Assert.False(IsFound(sign * (limit - Tick)), rule + ": nearly level with an old one");
            Assert.False(IsFound(sign * limit), rule + ": at the limit");
            Assert.True(IsFound(sign * (limit + Tick)), rule + ": off an old one's level");
        }
    }

    [Fact]
    public void Row_OfACase_CitesTheSectionAndSaysWhatIsFromMemory()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("row-limits.csv").Where(row => row["section"].Length > 0))
        {
            Citation citation = SetOf(row["reading"], row["edition"], row["rule"]).Row(row["rule"]).Citation;
            string what = string.Join(",", row.Values) + ": " + citation;
            Assert.True(citation.Section.Split(", ").Any(section => row["section"].StartsWith(section, StringComparison.Ordinal)), what);
            Assert.True((citation.Confidence == Confidence.FromMemory) == (row["status"] == "memory"), what);
            Assert.True(citation.Document.Contains(row["edition"], StringComparison.Ordinal), what);
        }
    }

    [Fact]
    public void ReachDocument_OfTheWorkedCases_SaysWhatTheySay() => Assert.All(CaseFile.Table("reach-by-document.csv"), TryReach);

    internal static void TryReach(Dictionary<string, string> row)
    {
        OneBox box = Before(new OneBox { Rules = OneBox.Only(SetOf(row["reading"], "", row["set"] + "-reach"), row["set"] + "-reach") }, row);
        box = box with { Box = box.Box.WithDevices(new[] { new DeviceKind(row["device"]) }).WithSize(new BoxSize(In("2-1/4"), In("3-3/4"))) };
        Verdict said = box.At(BoxHeight.ToCenter(In(row["center"]), Datum.FinishedFloor)).Verdict();
        Assert.True(string.Equals(row["expected"], said.ToString(), StringComparison.OrdinalIgnoreCase), row["set"] + " " + row["case"] + ": " + said);
    }

    [Fact]
    public void BelowCounter_BeforeThe2026Edition_DoesNotExist()
    {
        foreach (NecEdition edition in new[] { NecEdition.Nec2017, NecEdition.Nec2020, NecEdition.Nec2023 })
        {
            Assert.DoesNotContain(RuleSets.UnitedStatesDwelling(edition).Rows, rule => rule.Id == "below-counter");
        }
    }

    [Fact]
    public void CounterReceptacle_WhoseCenterIsInButWhoseTopIsOver_IsDisputedButNotFound()
    {
        OneBox box = AtACounter(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023)).At(BoxHeight.ToCenter(In("20"), Datum.Countertop));
        Check check = box.Evaluate().Checks.Single(one => one.RuleId == "counter-receptacle");
        Assert.Equal(Verdict.Passes, check.Verdict);
        Assert.Equal("box-top", Assert.Single(check.DisputedBy));
        Assert.Empty(box.Evaluate().Findings);
    }

    [Fact]
    public void CounterReceptacle_WithTheStricterReading_FindsItAndNamesTheOther()
    {
        OneBox box = AtACounter(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023).WithReading("counter-receptacle", "box-top")).At(BoxHeight.ToCenter(In("20"), Datum.Countertop));
        Finding finding = Assert.Single(box.Evaluate().Findings);
        Assert.Equal("counter-receptacle", finding.RuleId);
        Assert.Equal("center", Assert.Single(finding.DisputedBy));
    }

    [Fact]
    public void CounterReceptacle_InOrOverUnderBothReadings_IsNotDisputed()
    {
        OneBox box = AtACounter(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023));
        Assert.Empty(box.At(BoxHeight.ToTop(In("20"), Datum.Countertop)).Evaluate().Checks.Single(one => one.RuleId == "counter-receptacle").DisputedBy);
        Assert.Empty(Assert.Single(box.At(BoxHeight.ToCenter(In("20-1/8"), Datum.Countertop)).Evaluate().Findings).DisputedBy);
    }

    private static OneBox AtACounter(RuleSet rules)
    {
        OneBox box = new() { Rules = OneBox.Only(rules, "counter-receptacle") };
        return Counter(box, In("36"), In("25.5")) with { Box = box.Box.WithPurpose(BoxPurpose.Counter).WithSize(new BoxSize(In("2-1/4"), In("3-3/4"))) };
    }

    private static OneBox Site(Dictionary<string, string> row)
    {
        OneBox box = new();
        box = box with
        {
            Box = box.Box.WithDevices(new[] { new DeviceKind(row["device"]) }).WithPurpose(new BoxPurpose(row["purpose"])),
            Room = room => room.WithKind(new RoomKind(row["room"])).WithFloor(OneBox.Floor(In("3/4"))),
        };
        return Before(box, row);
    }

    private static OneBox Before(OneBox box, Dictionary<string, string> row)
    {
        box = row["approach"].Length > 0 ? box with { Box = box.Box.WithApproach(row["approach"] == "side" ? Approach.Side : Approach.Forward) } : box;
        return row["top"].Length == 0 ? box
            : row.TryGetValue("before", out string? machine) && machine.Length > 0 ? Machine(box, machine, In(row["top"]), In(row["depth"]))
            : Counter(box, In(row["top"]), In(row["depth"]));
    }

    private static OneBox Machine(OneBox box, string kind, Distance top, Distance depth) => box with
    {
        Room = room => room.WithFixtures(new[] { SquareRoom.Against("machine", new FixtureKind(kind), "wall", In("60"), In("87"), depth).WithTop(new Level(top, Datum.FinishedFloor)) }),
    };

    private static OneBox Counter(OneBox box, Distance top, Distance depth) => box with
    {
        Wall = wall => wall.WithCounters(new[]
        {
            new Counter("counter", CounterKind.Kitchen, Distance.Zero, In("144")).WithTop(new Level(top, Datum.FinishedFloor)).WithDepth(depth)
                .WithKneeSpace(box.Box.Approach == Approach.Forward ? depth : Distance.Zero),
        }),
    };

    private static RuleSet SetOf(string reading, string edition, string rule) =>
        reading.Length == 0 ? PublishedRows.SetWith(rule, edition) : PublishedRows.SetWith(rule, edition).WithReading(rule, reading);

    private static Edge EdgeOf(string text) => text == "top" ? Edge.Top : text == "bottom" ? Edge.Bottom : Edge.Center;

    private static Datum DatumOf(string text) => text switch
    {
        "countertop" => Datum.Countertop,
        "subfloor" => Datum.Subfloor,
        "grade" => Datum.Grade,
        "finished ceiling" => Datum.FinishedCeiling,
        _ => Datum.FinishedFloor,
    };
}
