using System;
using System.IO;
using System.Text.Json;
using BoxHeights.Interop;
using FsCheck;
using FsCheck.Fluent;
using Json.Schema;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

public class DwellingJsonSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(DwellingJson.Schema);

    [Fact]
    public void Schema_FileInTheRepository_IsTheSame()
    {
        string file = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "dwelling.schema.json"));

        Assert.True(DwellingJson.Schema == file.ReplaceLineEndings("\n"), "src/BoxHeights/Interop/Json/dwelling.schema.json is out of date: write DwellingJson.Schema into it.");
    }

    [Fact]
    public void Schema_RandomDwellingWritten_Accepts() =>
        Prop.ForAll(RandomDwelling.Arbitrary, dwelling => Accepts(DwellingJson.Write(dwelling))).Check(Tries.Always(100));

    [Fact]
    public void Schema_Cottage_Accepts() => Assert.True(Accepts(DwellingJsonTests.Cottage));

    [Theory]
    [InlineData("""{ }""")]
    [InlineData("""{ "name": null }""")]
    [InlineData("""{ "name": "x", "about": "y" }""")]
    [InlineData("""{ "name": "x", "units": "furlongs" }""")]
    [InlineData("""{ "name": "x", "units": 1 }""")]
    [InlineData("""{ "name": "x", "occupancy": "One Family" }""")]
    [InlineData("""{ "name": "x", "storeys": [ { "id": "a/b" } ] }""")]
    [InlineData("""{ "name": "x", "storeys": [ { "id": "a", "aboveBelow": 108 } ] }""")]
    [InlineData("""{ "name": "x", "storeys": [ { "id": "a", "aboveBelow": "108" } ] }""")]
    [InlineData("""{ "name": "x", "storeys": [ { "id": "a", "aboveBelow": "none" } ], "flights": 1 }""")]
    [InlineData("""{ "name": "x", "storeys": [ { "id": "a", "gradeBelowSubfloor": { "from": "1 in" } } ] }""")]
    [InlineData("""{ "name": "x", "flights": [ { "id": "a", "from": "a", "to": "b", "risers": 0 } ] }""")]
    [InlineData("""{ "name": "x", "flights": [ { "id": "a", "from": "a", "to": "b", "risers": "9" } ] }""")]
    [InlineData("""{ "name": "x", "rooms": [ { "id": "r", "kind": "hall", "storey": "s", "inFloor": [ { "id": "b", "purpose": "general", "plan": [ "1 in" ] } ] } ] }""")]
    public void Schema_BadDocument_RejectsAsReadDoes(string json)
    {
        Assert.False(Accepts(json));
        Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(json));
    }

    private static bool Accepts(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
