using System;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Conventions;

public class ToStringTests
{
    // What only rules see while they judge, what has nothing to show but its options, and what the framework makes.
    private static readonly string[] Silent =
    [
        "BoxTraits", "LimitZone", "LimitStatement", "PlacementSite", "PlacementStatement", "ProvisionGroup", "ProvisionStatement", "SpaceStatement", "SpaceView", "SpaceBox",
        "Levels", "RoughInPlanner", "StairLightPlanner", "SwitchSide", "BoxHeightsOptions", "ValueJsonConverter`1", "Enumerator",
    ];

    [Fact]
    public void ToString_OfEveryPublicType_SaysMoreThanItsName() => Assert.Empty(
        typeof(Distance).Assembly.GetExportedTypes()
            .Where(type => type is { IsInterface: false, IsEnum: false } && !(type.IsAbstract && type.IsSealed) && !typeof(Delegate).IsAssignableFrom(type) && !Silent.Contains(type.Name))
            .Where(type => type.GetMethod("ToString", Type.EmptyTypes)!.DeclaringType is { } declaring && (declaring == typeof(object) || declaring == typeof(ValueType)))
            .Select(type => type.Name));

    // What stands for "no bound" in a program is no number for a person.
    [Fact]
    public void ToString_OfARow_HasNoNumbersThatNobodyMeant()
    {
        Rule[] rows = [.. Enum.GetValues<NecEdition>().SelectMany(edition => (RuleSets.UnitedStatesDwelling(edition) + RuleSets.UnitedStatesOutlets(edition)).Rows), .. RuleSets.RoughInPractice.Rows, .. RuleSets.CanadaDwelling.Rows, .. RuleSets.Ada2010.Rows];
        Assert.True(rows.Length > 150);
        Assert.All(rows, row => Assert.DoesNotMatch("[0-9]{9,}", row.Data()));
        Assert.All(rows, row => Assert.Equal(row.Id + ": " + row.Summary + " [" + row.Citation + "]", row.ToString()));
    }

    // 0.6875 in less a tick is met by no more than 11/16 in; a tick over is missed by no less than 1/16 in.
    [Theory]
    [InlineData(1_397_000, -1, "met, by 5/8 in")]
    [InlineData(1_397_000, 0, "met, by 11/16 in")]
    [InlineData(0, -1, "not met, off by 1/16 in")]
    public void ToString_OfACheck_IsWhatATapeShows(long margin, int more, string expected) => Assert.Equal(
        "b: r: " + expected,
        new Check("r", "b", margin + more < 0 ? Verdict.Fails : Verdict.Passes, Distance.FromTicks(margin + more), MissingFacts.None, default, LengthUnits.Inches).ToString());

    [Fact]
    public void ToString_OfARuleSet_SaysHowManyRowsItHas()
    {
        RuleSet practice = RuleSets.RoughInPractice;
        Assert.Equal("no rows", RuleSet.Empty.ToString());
        Assert.Equal("board-seam", new RuleSet(practice.Row("board-seam")).ToString());
        Assert.Equal("2 rows, board-seam to switch-height", new LayoutEvaluator(new RuleSet(practice.Row("switch-height"), practice.Row("board-seam"))).ToString());
    }

    [Fact]
    public void ToString_OfBuildersAndPlans_SaysWhatTheyHold()
    {
        DwellingBuilder house = new DwellingBuilder("Cabin").Add(new Storey("first"));
        WallBuilder wall = house.Room("hall", RoomKind.Hall, "first").Wall("north", Distance.FromFeet(9m));
        wall.Add(new DeviceBox("a", BoxPurpose.Switch));

        Assert.Equal("Cabin, rooms so far: 1", house.ToString());
        Assert.Equal("north, boxes so far: 1", wall.ToString());
        Assert.Equal("Cabin, findings: 1", new LayoutEvaluator(RuleSet.Empty).Open(house.Build()).ToString());
        Assert.StartsWith("# ", Output.Sheets.For(house.Build(), RuleSet.Empty).ToString(), StringComparison.Ordinal);
    }
}
