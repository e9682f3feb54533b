using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Where practice puts boxes beside and behind things, and how much room an added box gets. Common practice, no source.</summary>
public sealed class PracticePlaceTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static readonly Distance Left = In("60");
    private static readonly Distance Right = In("84");

    [Fact]
    public void Place_OneTickInsideAndOutsideEachEnd_TurnsThere() => Assert.All(CaseFile.Table("practice-places.csv"), TryPlace);

    internal static void TryPlace(Dictionary<string, string> row)
    {
        string what = string.Join(",", row.Values);
        OneBox box = Beside(row["purpose"], row["thing"]);
        Distance far = In(row["up to"]);
        Assert.True(At(box, Right + far) == Verdict.Passes && At(box, Left - far) == Verdict.Passes, what + ": as far as it may be");
        Assert.True(At(box, Right + far + Tick) == Verdict.Fails && At(box, Left - far - Tick) == Verdict.Fails, what + ": further");
        if (row["beyond"].Length > 0)
        {
            Distance near = In(row["beyond"]);
            Assert.True(At(box, Right + near) == Verdict.Passes && At(box, Left - near) == Verdict.Passes, what + ": as near as it may be");
            Assert.True(At(box, Right + near - Tick) == Verdict.Fails && At(box, Left - near + Tick) == Verdict.Fails, what + ": nearer");
        }
    }

    [Fact]
    public void Place_OfEveryPublishedSet_HasACase()
    {
        HashSet<string> held = [.. CaseFile.Table("practice-places.csv").Select(row => row["purpose"] + "-place")];
        Assert.DoesNotContain(PublishedRows.All.OfType<AnchoredPlace>().Select(row => row.Id), id => !held.Contains(id));
    }

    /// <summary>A row that is published is named by a case file or by a test: one that nothing names is named here.</summary>
    [Fact]
    public void Row_OfEveryPublishedSet_IsNamedByACaseOrATest()
    {
        HashSet<string> cases = [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Cases"), "*.*", SearchOption.AllDirectories).SelectMany(file => File.ReadAllText(file).Split(',', '"', ' ', '\n', '\r'))];
        string tests = string.Join("\n", Directory.GetFiles(Path.Combine(Repository.Root, "tests", "BoxHeights.Tests"), "*Tests*.cs", SearchOption.AllDirectories).Where(file => !file.Contains("PublicApi", StringComparison.Ordinal)).Select(File.ReadAllText));

        // Bands and places have files whose lines are made up to their ids; those of purposes aren't spelled out.
        HashSet<string> places = [.. CaseFile.Table("practice-places.csv").Select(row => row["purpose"] + "-place")];
        Assert.DoesNotContain(PublishedRows.All.Select(row => row.Id).Distinct(), id => !places.Contains(id) && !cases.Contains(id) && !tests.Contains("\"" + id + "\"", StringComparison.Ordinal));
    }

    // The middle of the longest stretch in a laundry without boxes, which is 8 in from corners and 6 in off an opening or a cabinet: from 8 or from 36 to 112 in, where cabinets cover the other walls.
    [Theory]
    [InlineData("", "60")]
    [InlineData("door", "74")]
    [InlineData("cabinet", "74")]
    public void AddedBox_InARoomWithout_GoesToTheMiddleOfTheLongestStretch(string atTheCorner, string expected)
    {
        RuleSet rules = new([RuleSets.UnitedStatesOutlets(NecEdition.Nec2023).Row("laundry-receptacle"), RuleSets.RoughInPractice.Row("room-for-boxes")]);
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("ground"));
        RoomBuilder room = house.Room("laundry", RoomKind.Laundry, "ground");
        WallBuilder first = room.Wall("south", In("120"));
        first = atTheCorner == "door" ? first.Add(new Opening("d", OpeningKind.Door, Distance.Zero, In("30"))) : first;
        _ = atTheCorner == "cabinet" ? first.Add(new Covering("c", CoveringKind.TallCabinet, Distance.Zero, In("30"))) : first;
        foreach ((string id, string length) in new[] { ("east", "90"), ("north", "120"), ("west", "90") })
        {
            room.Wall(id, In(length)).Add(new Covering("cabinet-" + id, CoveringKind.TallCabinet, Distance.Zero, In(length)));
        }

        Evaluation evaluation = new LayoutEvaluator(rules, EvaluatorOptions.Default.WithAllBoxesAreDescribed(true)).Evaluate(house.Build());
        AddBox added = Assert.IsType<AddBox>(Assert.Single(Assert.Single(evaluation.Causes).Remedies));
        Assert.Equal(("laundry/south", In(expected)), (added.Placed[0].Address, added.Placed[0].Box.At));
    }

    [Fact]
    public void Plan_WithoutTheRowForSwitches_SaysThatNoneArePlanned()
    {
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("ground"));
        house.Room("den", RoomKind.Office, "ground").Wall("south", In("144")).Add(new Opening("door", OpeningKind.Cased, In("50"), In("82")));
        RoomPlan with = new RoughInPlanner(RuleSets.RoughInPractice).Plan(house.Build());
        RoomPlan without = new RoughInPlanner(RuleSets.RoughInPractice.Without("entrance-switches")).Plan(house.Build());
        Assert.Equal(["den-light", "den-switch"], with.Reasons.Select(one => one.Id));
        Assert.Equal(["den-light"], without.Reasons.Select(one => one.Id));
        Assert.Single(without.Notes.AsEnumerable().Except(with.Notes));
    }

    // International Residential Code R315, from memory: outside the bedrooms.
    [Theory]
    [InlineData("bed", true)]
    [InlineData("hall", false)]
    public void CarbonMonoxideAlarm_InTheBedroomAlone_IsLackingOutside(string where, bool lacks)
    {
        DeviceBox alarm = new DeviceBox("alarm", BoxPurpose.Alarm).WithDevices(new[] { DeviceKind.CoAlarm }).WithPlan(new PlanPoint(In("40"), In("40")));
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("ground"));
        foreach ((string id, RoomKind kind) in new[] { ("bed", RoomKind.Bedroom), ("hall", RoomKind.Hall) })
        {
            RoomBuilder room = house.Room(id, kind, "ground");
            _ = where == id ? room.AddOverhead(alarm) : room;
            room.Wall("south", In("144"));
        }

        Evaluation evaluation = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "bedroom-hall-co-alarm")).Evaluate(house.Build());
        Assert.Equal(lacks, evaluation.HasViolations);
    }

    private static OneBox Beside(string purpose, string thing)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, purpose + "-place") };
        box = (thing == "window"
            ? box with { Wall = wall => wall.WithOpenings(new[] { new Opening("w", OpeningKind.Window, Left, Right) }) }
            : box with { Room = room => room.WithFixtures(new[] { new Fixture("thing", new FixtureKind(thing)).WithWall("wall").WithLeft(Left).WithRight(Right) }) }).At(BoxHeight.ToBottom(In("30"), Datum.Subfloor));
        return box with { Box = box.Box.WithPurpose(new BoxPurpose(purpose)) };
    }

    private static Verdict At(OneBox box, Distance along) => (box with { Box = box.Box.WithAt(along) }).Verdict();
}
