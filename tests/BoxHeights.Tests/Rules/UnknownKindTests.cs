using System;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>A misspelled kind is one that no rule speaks of: the report says so and what may have been meant, and a kind that somebody's row names is no mistake.</summary>
public sealed class UnknownKindTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    [Theory]
    [InlineData("swich", "switch")]
    [InlineData("refridgerator", "refrigerator")]
    [InlineData("stairlight", "stair-light")]
    public void Purpose_Misspelled_IsToldWithTheNearest(string purpose, string meant) =>
        Assert.Contains($"purpose \"{purpose}\" isn't known here: is \"{meant}\" meant? (the-box)", Said(box => box.WithPurpose(new BoxPurpose(purpose))));

    [Theory]
    [InlineData("toggle-swich", "toggle-switch")]
    [InlineData("recptacle", "duplex-receptacle")]
    public void Device_Misspelled_IsToldWithTheNearest(string device, string meant) =>
        Assert.Contains($"device \"{device}\" isn't known here: is \"{meant}\" meant? (the-box)", Said(box => box.WithDevices(new[] { new DeviceKind(device) })));

    [Fact]
    public void Kinds_OfBoxAndPlateMisspelled_AreTold()
    {
        string[] said = Said(box => box.WithKind(new BoxKind("nailon")).WithPlate(new PlateKind("jumboo")));
        Assert.Contains("kind of box \"nailon\" isn't known here: is \"nail-on\" meant? (the-box)", said);
        Assert.Contains("plate \"jumboo\" isn't known here: is \"jumbo\" meant? (the-box)", said);
    }

    [Fact]
    public void Purpose_Empty_IsTold() => Assert.Contains("purpose without a name (the-box)", Said(box => box.WithPurpose(default)));

    [Fact]
    public void Purpose_OfNoKind_IsToldWithoutAGuess() =>
        Assert.Contains("purpose \"aquarium\" isn't known here (the-box)", Said(box => box.WithPurpose(new BoxPurpose("aquarium"))));

    [Fact]
    public void Boxes_OfOneUnknownKind_ShareALine()
    {
        DwellingBuilder house = new("house");
        house.Add(new Storey("first"));
        WallBuilder wall = house.Room("room", new RoomKind("kichen"), "first").Wall("north", CaseFile.Inches("144"));
        wall.Add(new DeviceBox("b", new BoxPurpose("swich")).WithAt(CaseFile.Inches("60"))).Add(new DeviceBox("a", new BoxPurpose("swich")).WithAt(CaseFile.Inches("30")));
        Items<string> said = new LayoutEvaluator(Rules).Evaluate(house.With(one => one.WithOccupancy(new Occupancy("one-famly"))).Build()).NotJudged;
        Assert.Contains("purpose \"swich\" isn't known here: is \"switch\" meant? (a, b)", said);
        Assert.Contains("room kind \"kichen\" isn't known here: is \"kitchen\" meant? (room)", said);
        Assert.Contains("occupancy \"one-famly\" isn't known here: is \"one-family\" meant? (house)", said);
    }

    [Fact]
    public void Fixture_Misspelled_IsToldAndAnyOtherIsNot()
    {
        string[] Of(string fixture) => Said(box => box, room => room.WithFixtures(new[] { new Fixture("one", new FixtureKind(fixture)) }));
        Assert.Contains("fixture \"washr\" isn't known here: is \"washer\" meant? (room/one)", Of("washr"));
        Assert.DoesNotContain(Of("aquarium"), line => line.Contains("aquarium", StringComparison.Ordinal));
    }

    [Fact]
    public void Kind_ThatARowSpeaksOf_IsKnown()
    {
        HeightBand own = new("own-height", "low", Severity.Note, new Citation("House rules"), Datum.Subfloor)
        {
            High = CaseFile.Inches("90"),
            Scope = RuleScope.Walls with { Purposes = new[] { new BoxPurpose("aquarium") }, Devices = new[] { new DeviceKind("pump") } },
        };
        string[] said = Said(box => box.WithPurpose(new BoxPurpose("aquarium")).WithDevices(new[] { new DeviceKind("pump") }), rules: Rules.With(own));
        Assert.DoesNotContain(said, line => line.Contains("isn't known", StringComparison.Ordinal));
    }

    [Fact]
    public void Kinds_ThatAreKnown_AreNotTold() => Assert.DoesNotContain(Said(box => box), line => line.Contains("isn't known", StringComparison.Ordinal));

    private static string[] Said(Func<DeviceBox, DeviceBox> change, Func<Room, Room>? room = null, RuleSet? rules = null)
    {
        OneBox one = new() { Rules = rules ?? Rules, Room = room ?? (same => same) };
        return (one with { Box = change(one.Box.WithHeight(BoxHeight.Parse("16 in to top above subfloor"))) }).Evaluate().NotJudged.ToArray();
    }
}
