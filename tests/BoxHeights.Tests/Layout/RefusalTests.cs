using System;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Layout;

/// <summary>Values that mean nothing are refused where they are given, by name and with what was given.</summary>
public sealed class RefusalTests
{
    private static readonly Distance Negative = -CaseFile.Inches("1");

    [Fact]
    public void Ceiling_Negative_IsRefused()
    {
        Assert.Equal("Framing", Assert.Throws<ArgumentOutOfRangeException>(() => new Ceiling().WithFraming(Negative)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => new Ceiling().WithFraming(Distance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Ceiling().WithBoard(new DistanceRange(Negative, CaseFile.Inches("1"))));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Ceiling().WithStrapping(Negative));
        Assert.Equal(Distance.Zero, new Ceiling().WithStrapping(Distance.Zero).Strapping!.Value.From);
    }

    [Fact]
    public void BoardLayout_CourseOfNoWidth_IsRefused() =>
        Assert.Equal("Widths", Assert.Throws<ArgumentOutOfRangeException>(() => new BoardLayout().WithWidths(new[] { CaseFile.Inches("48"), Distance.Zero })).ParamName);

    [Fact]
    public void OutOfRange_NamesTheValue()
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(() => new Wall("north", Negative));
        Assert.Equal(("Length", (object)Negative), (error.ParamName, error.ActualValue));
    }

    [Fact]
    public void Builder_GivenNull_NamesTheArgument()
    {
        DwellingBuilder house = new("house");
        RoomBuilder room = house.Room("room", RoomKind.Hall, "first");
        WallBuilder wall = room.Wall("north", CaseFile.Inches("120"));
        Assert.Equal("storey", Assert.Throws<ArgumentNullException>(() => house.Add((Storey)null!)).ParamName);
        Assert.Equal("fixture", Assert.Throws<ArgumentNullException>(() => room.Add((Fixture)null!)).ParamName);
        Assert.Equal("box", Assert.Throws<ArgumentNullException>(() => wall.Add((DeviceBox)null!)).ParamName);
        Assert.Equal("change", Assert.Throws<ArgumentException>(() => house.With(_ => null!)).ParamName);
        Assert.Equal("change", Assert.Throws<ArgumentException>(() => room.With(_ => null!)).ParamName);
        Assert.Equal("change", Assert.Throws<ArgumentException>(() => wall.With(_ => null!)).ParamName);
    }

    [Fact]
    public void Builder_TwoRoomsOfOneId_AreAFaultAndNoException()
    {
        DwellingBuilder house = new DwellingBuilder("house").Add(new Storey("first"));
        house.Room("hall", RoomKind.Hall, "first");
        house.Room("hall", RoomKind.Hall, "first");
        Finding finding = Assert.Single(new LayoutEvaluator(RuleSet.Empty).Evaluate(house.Build()).Findings);
        Assert.Equal((LayoutFaultKind.DuplicateId, "hall: a room and a room have the same id"), (finding.Fault!.Kind, finding.Message));
    }

    [Fact]
    public void Id_WithASlash_IsToldWhatASlashIsFor() =>
        Assert.Contains("\"kitchen/north\"", Assert.Throws<ArgumentException>(() => new DeviceBox("a/b", BoxPurpose.General)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("Kitchen", "kitchen")]
    [InlineData("DuplexReceptacle", "duplex-receptacle")]
    [InlineData("three way_switch", "three-way-switch")]
    [InlineData("-fan-", "fan")]
    [InlineData("GFCI receptacle", "gfci-receptacle")]
    public void Kind_WrittenInAnotherWay_IsToldTheRightOne(string name, string likened) =>
        Assert.Contains("perhaps \"" + likened + "\"", Assert.Throws<ArgumentException>(() => new DeviceKind(name)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("--")]
    public void Kind_OfNothing_IsGuessedAtNot(string name) => Assert.DoesNotContain("perhaps", Assert.Throws<ArgumentException>(() => new RoomKind(name)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("48")]
    [InlineData("48 to top")]
    public void Height_WithoutAUnit_SaysOnceWhereAndWhat(string text)
    {
        string message = Assert.Throws<FormatException>(() => BoxHeight.Parse(text)).Message;
        Assert.Equal(2, message.Split("at character").Length);
        Assert.Contains("add a unit: in, ft, mm, cm or m.", message, StringComparison.Ordinal);
    }

    // 1/3 in is 42.67/128 in and 8.4666… mm.
    [Theory]
    [InlineData("100 1/3 in", "100-43/128 in")]
    [InlineData("8 ft 4-1/3 in", "100-43/128 in")]
    [InlineData("0.33333333 m", "333.333325 mm")]
    public void Distance_BetweenTwoTicks_IsToldOneNearBy(string text, string near)
    {
        Assert.Contains("on the grid is " + near, Assert.Throws<FormatException>(() => Distance.Parse(text)).Message, StringComparison.Ordinal);
        Assert.Contains("on the grid is " + near, Assert.Throws<FormatException>(() => BoxHeight.Parse(text + " to top AFF")).Message, StringComparison.Ordinal);
        Assert.True(Distance.TryParse(near, out _));
    }
}
