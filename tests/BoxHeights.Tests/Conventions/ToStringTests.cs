using System;
using System.Linq;
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
