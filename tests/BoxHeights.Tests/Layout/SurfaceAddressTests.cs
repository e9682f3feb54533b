using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Layout;

public class SurfaceAddressTests
{
    [Theory]
    [InlineData("kitchen", "kitchen", null, null)]
    [InlineData("kitchen/north", "kitchen", "north", null)]
    [InlineData("dining room/east wall/window 2", "dining room", "east wall", "window 2")]
    public void Parse_Text_HasItsParts(string text, string space, string? surface, string? thing)
    {
        SurfaceAddress read = SurfaceAddress.Parse(text);
        Assert.Equal((space, surface, thing), (read.Space, read.Surface, read.Thing));
        Assert.Equal(text, read.ToString());
        Assert.Equal(SurfaceAddress.Parse(text), read);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("kitchen/")]
    [InlineData("/north")]
    [InlineData("kitchen//window")]
    [InlineData("kitchen/ /window")]
    [InlineData("kitchen/north/window/sash")]
    public void Parse_NoAddress_Throws(string text)
    {
        Assert.False(SurfaceAddress.TryParse(text, out SurfaceAddress none));
        Assert.Equal(default, none);
        Assert.Throws<FormatException>(() => SurfaceAddress.Parse(text));
    }

    [Fact]
    public void Parse_Null_ThrowsAndTryParseDoesNot()
    {
        Assert.Equal("text", Assert.Throws<ArgumentNullException>(() => SurfaceAddress.Parse(null!)).ParamName);
        Assert.False(SurfaceAddress.TryParse(null, out _));
    }

    [Theory]
    [InlineData("kitchen/north", "kitchen", true)]
    [InlineData("kitchen/north/window", "kitchen", true)]
    [InlineData("kitchen/north/window", "kitchen/north", true)]
    [InlineData("kitchen", "kitchen", false)]
    [InlineData("kitchenette/north", "kitchen", false)]
    [InlineData("kitchen/northern", "kitchen/north", false)]
    [InlineData("kitchen", "kitchen/north", false)]
    public void IsPartOf_RoomOrSurface_OnlyOfWhatHoldsIt(string address, string whole, bool expected) => Assert.Equal(expected, SurfaceAddress.Parse(address).IsPartOf(whole));

    [Fact]
    public void Default_HasNothing()
    {
        Assert.Equal(("", null, null), (default(SurfaceAddress).Space, default(SurfaceAddress).Surface, default(SurfaceAddress).Thing));
        Assert.Equal("", default(SurfaceAddress).ToString());
    }

    [Fact]
    public void PlacedBoxes_OfADwelling_AreAtAddresses()
    {
        DeviceBox box = new("a", BoxPurpose.Light);
        Dwelling dwelling = new Dwelling("x")
            .WithRooms(new[] { new Room("hall", RoomKind.Hall, "main").WithWalls(new[] { new Wall("east", Distance.FromFeet(9m)).WithBoxes(new[] { box }) }).WithOverhead(new[] { box.WithId("b") }) });
        Assert.Equal(["hall east", "hall ceiling"], dwelling.PlacedBoxes().Select(placed => SurfaceAddress.Parse(placed.Address)).Select(at => at.Space + " " + at.Surface));
    }
}
