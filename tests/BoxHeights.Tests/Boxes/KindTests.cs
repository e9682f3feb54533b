using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Boxes;

public class KindTests
{
    // Names are kept in users' files for ever: typed here by hand, so that a changed one fails. One that is added is seen in the list of public members.
    private const string Devices =
        "switch three-way-switch four-way-switch dimmer toggle-switch rocker-switch push-switch three-way-toggle-switch three-way-rocker-switch four-way-toggle-switch four-way-rocker-switch slide-dimmer rotary-dimmer fan-control duplex-receptacle gfci-receptacle split-receptacle "
        + "single-receptacle range-receptacle dryer-receptacle floor-receptacle decorator-receptacle usb-receptacle thermostat doorbell-button "
        + "chime luminaire smoke-alarm co-alarm smoke-co-alarm data-jack tv-jack blank";

    private const string Boxes =
        "nail-on cut-in four-square four-eleven-square octagon handy metal-device masonry cast pancake low-voltage-bracket fan-rated";

    [Fact]
    public void Known_OfEachKind_HasTheseNames()
    {
        Assert.Equal(Devices.Split(' '), Devices.Split(' ').Intersect(DeviceKind.Known.Select(kind => kind.Name)));
        Assert.Equal(Boxes.Split(' '), Boxes.Split(' ').Intersect(BoxKind.Known.Select(kind => kind.Name)));
        Assert.Empty("standard midway jumbo".Split(' ').Except(PlateKind.Known.Select(kind => kind.Name)));
    }

    [Fact]
    public void IsSwitchAndIsReceptacle_OfKnownKinds_SplitTheListInThree()
    {
        string[] names = Devices.Split(' ');
        Assert.Equal(names.Take(14), DeviceKind.Known.Where(kind => kind.IsSwitch).Select(kind => kind.Name));
        Assert.Equal(names.Skip(14).Take(9), DeviceKind.Known.Where(kind => kind.IsReceptacle).Select(kind => kind.Name));
    }

    [Theory]
    [InlineData("network-switch")]
    [InlineData("vehicle-receptacle")]
    public void IsSwitchAndIsReceptacle_OwnKindSpelledAlike_JoinsNoFamily(string name)
    {
        Assert.False(new DeviceKind(name).IsSwitch);
        Assert.False(new DeviceKind(name).IsReceptacle);
    }

    [Fact]
    public void Equality_SameName_IsTheSameKind()
    {
        Assert.Equal(DeviceKind.Switch, new DeviceKind("switch"));
        Assert.True(new DeviceKind("switch").IsSwitch);
        Assert.True(BoxKind.NailOn == new BoxKind("nail-on"));
        Assert.True(PlateKind.Jumbo != PlateKind.Midway);
        Assert.Equal(DeviceKind.Switch.GetHashCode(), new DeviceKind("switch").GetHashCode());
        Assert.False(DeviceKind.Switch.Equals("switch"));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("Switch")]
    [InlineData("-switch")]
    [InlineData("switch-")]
    [InlineData("three--way")]
    [InlineData("three way")]
    [InlineData("three_way")]
    [InlineData("schalter-ä")]
    public void Constructor_NameOfAnotherForm_Throws(string name)
    {
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => new DeviceKind(name)).ParamName);
        Assert.Throws<ArgumentException>(() => new BoxKind(name));
        Assert.Throws<ArgumentException>(() => new PlateKind(name));
    }

    [Fact]
    public void Constructor_Null_Throws()
    {
        Assert.Throws<ArgumentNullException>(() => new DeviceKind(null!));
        Assert.Throws<ArgumentNullException>(() => new BoxKind(null!));
        Assert.Throws<ArgumentNullException>(() => new PlateKind(null!));
    }

    [Fact]
    public void Default_HasTheEmptyName()
    {
        Assert.Equal("", default(DeviceKind).Name);
        Assert.Equal("", default(BoxKind).ToString());
        Assert.False(default(DeviceKind).IsSwitch);
        Assert.NotEqual(default, PlateKind.Standard);
    }

    [Fact]
    public void Constructor_DigitsAndHyphens_AreAllowed() => Assert.Equal("4-11-square", new BoxKind("4-11-square").Name);
}
