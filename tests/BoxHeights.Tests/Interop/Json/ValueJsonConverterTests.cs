using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using BoxHeights.Interop;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

public class ValueJsonConverterTests
{
    // What rules and results pass around, which nobody keeps in a document of their own.
    private static readonly string[] Passing =
        ["AllowedHeights", "Check", "FramingMember", "LeastChange", "LimitZone", "PrintedQuantity", "Slab", "WallArea"];

    public static TheoryData<object, string> Written { get; } = new()
    {
        { Distance.FromInches(48m), "\"48 in\"" },
        { Distance.FromMillimeters(1219.3m), "\"1219.3 mm\"" },
        { default(Distance), "\"0 in\"" },
        { new DistanceRange(Distance.Zero, Distance.FromInches(1.25m)), """{"from":"0 in","to":"1-1/4 in"}""" },
        { DistanceRange.Exactly(Distance.FromInches(3m)), "\"3 in\"" },
        { Volume.Parse("20.3 in3"), "\"20.3 in3\"" },
        { new Ratio(1, 3), "\"1/3\"" },
        { new ExactDistance(Distance.FromInches(32m), 3), "\"10-2/3 in\"" },
        { (Quantity)Volume.Parse("18 in3"), "\"18 in3\"" },
        { QuantitySet.AtLeast(2), """{"of":"count","stretches":[{"from":"2 things"}]}""" },
        { BoxHeight.Parse("48 in to top above subfloor"), "\"48 in to top above subfloor\"" },
        { Level.Parse("4 in above countertop"), "\"4 in above countertop\"" },
        { SurfaceAddress.Parse("kitchen/north"), "\"kitchen/north\"" },
        { new PlanPoint(Distance.FromFeet(7m), Distance.FromInches(69m)), """["84 in","69 in"]""" },
        { new BoxSize(Distance.FromInches(2m), Distance.FromInches(3m)), """{"width":"2 in","height":"3 in"}""" },
        { CableType.Parse("14-2"), "\"14-2\"" },
        { ConductorSize.FromAwg(12), "\"12 AWG\"" },
        { LooseConductors.Parse("3 x 12 AWG"), "\"3 x 12 AWG\"" },
        { Occupancy.OneFamily, "\"one-family\"" },
        { RoomKind.Hall, "\"hall\"" },
        { CounterKind.Kitchen, "\"kitchen\"" },
        { InterruptionKind.Sink, "\"sink\"" },
        { CoveringKind.Mirror, "\"mirror\"" },
        { FinishKind.Tile, "\"tile\"" },
        { FixtureKind.Tub, "\"tub\"" },
        { FreestandingKind.Island, "\"island\"" },
        { NoCavityKind.Duct, "\"duct\"" },
        { OpeningKind.Door, "\"door\"" },
        { PlatformKind.Deck, "\"deck\"" },
        { BoxPurpose.Switch, "\"switch\"" },
        { BoxKind.CutIn, "\"cut-in\"" },
        { PlateKind.Standard, "\"standard\"" },
        { DeviceKind.Switch, "\"switch\"" },
        { FloorBuildup.Of(new FloorLayer("oak", Distance.FromInches(0.75m))), """[{"material":"oak","thickness":"3/4 in"}]""" },
        { new DeviceBox("a", BoxPurpose.Light), """{"id":"a","purpose":"light"}""" },
        { new Wall("w", Distance.FromFeet(9m)), """{"id":"w","length":"108 in"}""" },
        { new Room("r", RoomKind.Hall, "s"), """{"id":"r","kind":"hall","storey":"s"}""" },
        { new Storey("s"), """{"id":"s"}""" },
        { new Dwelling("x"), """{"name":"x"}""" },
        { new PracticeTable("Our crew"), """{"name":"Our crew"}""" },
    };

    [Theory]
    [MemberData(nameof(Written))]
    public void Serialize_Value_IsItsTextAndReadBack(object value, string json)
    {
        Assert.Equal(json, JsonSerializer.Serialize(value, value.GetType()));
        Assert.Equal(value, JsonSerializer.Deserialize(json, value.GetType()));
    }

    [Fact]
    public void PublicValueTypes_EachIsWrittenAboveOrRefusedOrPassesOnly()
    {
        HashSet<Type> written = Written.Select(row => row[0].GetType()).ToHashSet();
        Type[] values = typeof(Distance).Assembly.GetExportedTypes()
            .Where(type => type.IsValueType && !type.IsEnum && !type.IsGenericType && !type.IsNested && !Passing.Contains(type.Name)).ToArray();

        Assert.Contains(typeof(Distance), values);
        Assert.All(values, type => Assert.NotNull(type.GetCustomAttribute<JsonConverterAttribute>()));
        Assert.All(
            values.Where(type => !written.Contains(type)),
            type => Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(Activator.CreateInstance(type), type)));
    }

    [Fact]
    public void Deserialize_RecordOfTheCallers_HoldsWhatWasThere()
    {
        Order order = new(Distance.FromInches(48m), null, [BoxKind.NailOn], new() { [DeviceKind.Switch] = 2 }, new Dwelling("x"));
        const string json = """{"Height":"48 in","Other":null,"Kinds":["nail-on"],"Count":{"switch":2},"House":{"name":"x"}}""";

        Assert.Equal(json, JsonSerializer.Serialize(order));
        AssertSame(order, JsonSerializer.Deserialize<Order>(json)!);
    }

    [Fact]
    public void Deserialize_WithoutReflection_HoldsWhatWasThere()
    {
        JsonSerializerOptions options = new() { TypeInfoResolver = new WithoutReflection() };
        Dwelling house = new Dwelling("x").WithStoreys(new[] { new Storey("s") });

        Assert.Equal(Distance.FromInches(48m), JsonSerializer.Deserialize<Distance>(JsonSerializer.Serialize(Distance.FromInches(48m), options), options));
        Assert.Equal(house, JsonSerializer.Deserialize<Dwelling>(JsonSerializer.Serialize(house, options), options));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(BoxKind.NailOn, options));
    }

    [Theory]
    [InlineData("\"48\"", "$")]
    [InlineData("48", "$")]
    [InlineData("null", "$")]
    [InlineData("{}", "$")]
    public void Deserialize_NoDistance_IsRefused(string json, string path) =>
        Assert.Equal(path, Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Distance>(json)).Path);

    [Fact]
    public void Deserialize_FaultWithinADwelling_SaysWhere()
    {
        JsonException fault = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Order>("""{"House":{"name":"x","storeys":[{}]}}"""));

        Assert.Equal("$.House", fault.Path);
        Assert.StartsWith("$.storeys[0]: the member \"id\" is missing", fault.Message, StringComparison.Ordinal);
        Assert.IsType<BoxHeightsJsonException>(fault.InnerException);
    }

    [Fact]
    public void Serialize_WhatNoTextStandsFor_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => JsonSerializer.Serialize(default(BoxKind)));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Serialize(new Dictionary<PlanPoint, int> { [default] = 1 }));
    }

    private static void AssertSame(Order expected, Order found)
    {
        Assert.Equal((expected.Height, expected.Other, expected.House), (found.Height, found.Other, found.House));
        Assert.Equal(expected.Kinds, found.Kinds);
        Assert.Equal(expected.Count, found.Count);
    }

    internal sealed record Order(Distance Height, Distance? Other, List<BoxKind> Kinds, Dictionary<DeviceKind, int> Count, Dwelling House);

    // What a generated context says of such types; nothing else is known here.
    private sealed class WithoutReflection : IJsonTypeInfoResolver
    {
        public JsonTypeInfo? GetTypeInfo(Type type, JsonSerializerOptions options) =>
            type == typeof(Distance) ? JsonMetadataServices.CreateValueInfo<Distance>(options, new ValueJsonConverter<Distance>())
            : type == typeof(Dwelling) ? JsonMetadataServices.CreateValueInfo<Dwelling>(options, new ValueJsonConverter<Dwelling>())
            : null;
    }
}
