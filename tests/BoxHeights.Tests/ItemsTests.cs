using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests;

public sealed class ItemsTests
{
    [Fact]
    public void With_OneMore_KeepsTheOld()
    {
        Items<int> two = new[] { 1, 2 };
        Assert.Equal([1, 2, 3], two.With(3).ToArray());
        Assert.Equal(2, two.Count);
        Assert.Throws<ArgumentException>(() => default(Items<string>).With(null!));
    }

    // A collection initializer calls Add and drops what it returns: the list would stay empty without a word.
    [Fact]
    public void Items_InCollectionInitializer_DoNotCompile() => Assert.Null(typeof(Items<int>).GetMethod("Add"));

#if !NETSTANDARD_ASSET
    [Fact]
    public void Items_InCollectionExpression_AreAllThere()
    {
        DeviceBox box = new("a", BoxPurpose.Switch) { Devices = [DeviceKind.Switch, DeviceKind.Dimmer] };
        Assert.Equal(new[] { DeviceKind.Switch, DeviceKind.Dimmer }, box.Devices.ToArray());
        Items<string> none = [];
        Assert.Empty(none);
        Assert.Throws<ArgumentException>(() => Create(null!));

        static Items<string> Create(string item) => [item];
    }
#endif

    // One item is common: it needs no list around it, and neither do two.
    [Fact]
    public void With_ItemsOneByOne_IsWithTheirList()
    {
        DeviceBox box = new("b", BoxPurpose.Switch);
        DeviceKind[] two = [DeviceKind.Switch, DeviceKind.Dimmer];
        Assert.Equal(box.WithDevices(new Items<DeviceKind>(two)), box.WithDevices(DeviceKind.Switch, DeviceKind.Dimmer));
        Assert.Equal(box.WithDevices(two), box.WithDevices(DeviceKind.Switch, DeviceKind.Dimmer));
        Assert.Equal([DeviceKind.Switch], box.WithDevices(DeviceKind.Switch).Devices);
        Assert.Equal(box, box.WithDevices(two).WithDevices());
        Assert.Equal(box, box.WithDevices(two).WithDevices(null));
        Assert.Equal(box, box.WithDevices(two).WithDevices(default));
        Assert.Throws<ArgumentException>(() => new Wall("w", Distance.FromInches(1m)).WithBoxes(box, null!));
        Assert.Equal(new RuleSet(RuleSets.Ada2010.Rows), new RuleSet([.. RuleSets.Ada2010.Rows]));
    }

    [Fact]
    public void With_AnArrayThatChangesLater_StaysAsItWas()
    {
        DeviceKind[] devices = [DeviceKind.Switch];
        DeviceBox box = new DeviceBox("b", BoxPurpose.Switch).WithDevices(devices);
        devices[0] = DeviceKind.Dimmer;
        Assert.Equal([DeviceKind.Switch], box.Devices);
    }
}
