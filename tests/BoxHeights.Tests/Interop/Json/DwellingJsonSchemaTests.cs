using System;
using System.IO;
using System.Linq;
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
        string path = Path.Combine(Repository.Root, "src", "BoxHeights", "Interop", "Json", "dwelling.schema.json");
        if (Environment.GetEnvironmentVariable("BOXHEIGHTS_WRITE") == "schema")
        {
            File.WriteAllText(path, DwellingJson.Schema);
        }

        Assert.True(
            DwellingJson.Schema == File.ReadAllText(path).ReplaceLineEndings("\n"),
            "dwelling.schema.json is out of date: run this test with BOXHEIGHTS_WRITE=schema, and look at what changes.");
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

    [Fact]
    public void Schema_OwnKind_AcceptsAsReadDoes()
    {
        const string json = """{ "name": "x", "rooms": [ { "id": "r", "kind": "boat-shed", "storey": "s" } ] }""";

        Assert.True(Accepts(json));
        Assert.Equal("boat-shed", DwellingJson.Read(json).Rooms[0].Kind.Name);
    }

    [Fact]
    public void Schema_KnownKinds_ListsThemForEditors()
    {
        using JsonDocument schema = JsonDocument.Parse(DwellingJson.Schema);
        JsonElement kind = schema.RootElement.GetProperty("$defs").GetProperty("roomKind");

        Assert.Equal(RoomKind.Known.Select(known => known.Name), kind.GetProperty("anyOf")[0].GetProperty("enum").EnumerateArray().Select(name => name.GetString()));
    }

    [Fact]
    public void Schema_EachDefinition_HasTitleAndDescription()
    {
        using JsonDocument schema = JsonDocument.Parse(DwellingJson.Schema);

        Assert.Equal("urn:boxheights:schema:dwelling", schema.RootElement.GetProperty("$id").GetString());
        Assert.Equal("Outside face", schema.RootElement.GetProperty("$defs").GetProperty("outsideFace").GetProperty("title").GetString());
        Assert.All(
            schema.RootElement.GetProperty("$defs").EnumerateObject(),
            definition => Assert.True(definition.Value.TryGetProperty("title", out _) && definition.Value.TryGetProperty("description", out _), definition.Name));
    }

    private static bool Accepts(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
