using System;
using System.Collections;
using System.Linq;
using System.Reflection;
using System.Text.Json;
using BoxHeights.Interop;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>Walks records by reflection beside the text that was written, so that a member declared under another's name is found.</summary>
public class DwellingJsonNamesTests
{
    [Fact]
    public void Write_RandomDwelling_EachPropertyIsUnderItsOwnName() =>
        Prop.ForAll(RandomDwelling.Arbitrary, dwelling =>
        {
            using JsonDocument document = JsonDocument.Parse(DwellingJson.Write(dwelling));
            Compare(dwelling, document.RootElement, "$");
            return true;
        }).Check(Tries.Always(100));

    [Fact]
    public void Cottage_ForEachMemberOfTheSchema_UsesIt()
    {
        using JsonDocument schema = JsonDocument.Parse(DwellingJson.Schema);
        using JsonDocument cottage = JsonDocument.Parse(DwellingJsonTests.Cottage);
        string[] names = Members(cottage.RootElement).Distinct().ToArray();

        Assert.All(
            schema.RootElement.GetProperty("$defs").EnumerateObject().Select(definition => definition.Value).Append(schema.RootElement)
                .Where(definition => definition.TryGetProperty("properties", out _))
                .SelectMany(definition => definition.GetProperty("properties").EnumerateObject().Select(member => member.Name)),
            name => Assert.Contains(name, names));
    }

    private static System.Collections.Generic.IEnumerable<string> Members(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(member => Members(member.Value).Prepend(member.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Members),
        _ => [],
    };

    private static void Compare(object value, JsonElement json, string path)
    {
        switch (value)
        {
            case FloorBuildup floor:
                Compare(floor.Layers, json, path);
                break;
            case PlanPoint point:
                Compare(new[] { point.Right, point.Into }, json, path);
                break;
            case DistanceRange { IsExact: false } range:
                Same(range.From.ToString(), json.GetProperty("from"), path);
                Same(range.To.ToString(), json.GetProperty("to"), path);
                break;
            case Distance or DistanceRange when json.GetString() == "none":
                Assert.True(value is DistanceRange zero ? zero == Distance.Zero : (Distance)value == Distance.Zero, path);
                Assert.True(path.EndsWith(".strapping", StringComparison.Ordinal) || path.EndsWith(".kneeSpace", StringComparison.Ordinal), path);
                break;
            case Enum word:
                Assert.Equal(word.ToString().ToUpperInvariant(), json.GetString()!.Replace("-", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant());
                break;
            case bool truth:
                Assert.Equal(truth, json.GetBoolean());
                break;
            case int count:
                Assert.Equal(count, json.GetInt32());
                break;
            case decimal degrees:
                Assert.Equal(FormattableString.Invariant($"{degrees} deg"), json.GetString());
                break;
            case string text:
                Same(text, json, path);
                break;
            case BoxSize size:
                Same(size.Width.ToString(), json.GetProperty("width"), path);
                Same(size.Height.ToString(), json.GetProperty("height"), path);
                CompareProperty(size.Depth, json, "depth", path);
                CompareProperty(size.WidthRange.IsExact ? null : size.WidthRange, json, "widthRange", path);
                CompareProperty(size.HeightRange.IsExact ? null : size.HeightRange, json, "heightRange", path);
                break;
            case IEnumerable list:
                object[] items = list.Cast<object>().ToArray();
                Assert.Equal(items.Length, json.GetArrayLength());
                for (int i = 0; i < items.Length; i++)
                {
                    Compare(items[i], json[i], path + "[" + i + "]");
                }

                break;
            case ValueType:
                Same(value.ToString()!, json, path);
                break;
            default:
                CompareRecord(value, json, path);
                break;
        }
    }

    private static void CompareRecord(object record, JsonElement json, string path)
    {
        PropertyInfo[] properties = record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(property => property.SetMethod is not null).ToArray();
        foreach (PropertyInfo property in properties)
        {
            CompareProperty(Written(property.GetValue(record), property.PropertyType, property.Name, record), json, Name(property.Name), path);
        }

        Assert.All(json.EnumerateObject(), member => Assert.Contains(member.Name, properties.Select(property => Name(property.Name))));
    }

    private static void CompareProperty(object? value, JsonElement json, string name, string path)
    {
        Assert.True((value is not null) == json.TryGetProperty(name, out JsonElement member), path + "." + name);
        if (value is not null)
        {
            Compare(value, member, path + "." + name);
        }
    }

    private static string Name(string property) => property == "TurnDegrees" ? "turn" : char.ToLowerInvariant(property[0]) + property[1..];

    // Null for what goes without saying.
    private static object? Written(object? value, Type type, string name, object of) =>
        value switch
        {
            null or false when type != typeof(bool?) => null,
            decimal turn when turn == (of is RoomPlace ? 0m : 90m) => null,
            Enum usual when type.IsEnum && Convert.ToInt32(usual, null) == 0 && name != nameof(Mounting.How) => null,
            string => value,
            IEnumerable list when !list.Cast<object>().Any() => null,
            _ => value,
        };

    private static void Same(string expected, JsonElement json, string path) => Assert.Equal(path + " " + expected, path + " " + json.GetString());
}
