using System;
using System.Linq;
using System.Text;
using BoxHeights.Interop;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

public class DwellingJsonHostileTests
{
    private const string Small = """
        { "name": "é½", "storeys": [ { "id": "s", "levelLine": "4 ft above subfloor" } ], "rooms": [ { "id": "r", "kind": "hall", "storey": "s",
          "floor": [ { "material": "oak", "thickness": { "from": "0 in", "to": "3/4 in" } } ],
          "walls": [ { "id": "w", "length": "9 ft", "turn": "90 deg", "boxes": [ { "id": "b", "purpose": "general", "gangs": 2, "existing": true,
            "plan": [ "1 ft", "2 ft" ], "size": { "width": "2-1/4 in", "height": "3-3/4 in" }, "height": "16 in to top AFF", "cables": [ "12-2" ] } ] } ] } ] }
        """;

    [Theory]
    [InlineData("", "$", 1, 1)]
    [InlineData(" \n ", "$", 2, 2)]
    [InlineData("{", "$", 1, 2)]
    [InlineData("[]", "$", 1, 1)]
    [InlineData("\"name\"", "$", 1, 1)]
    [InlineData("null", "$", 1, 1)]
    [InlineData("NaN", "$", 1, 1)]
    [InlineData("{\"name\":\"x\"", "$", 1, 12)]
    [InlineData("{\"name\":\"x\",}", "$", 1, 13)]
    [InlineData("{\"name\":\"x\"}}", "$", 1, 13)]
    [InlineData("{\"name\":\"x\"}\n{}", "$", 2, 1)]
    [InlineData("{\"name\":\"x\"} // end", "$", 1, 14)]
    [InlineData("{/**/\"name\":\"x\"}", "$", 1, 2)]
    [InlineData("{'name':\"x\"}", "$", 1, 2)]
    [InlineData("{name:\"x\"}", "$", 1, 2)]
    [InlineData("{\"name\":\"x\n\"}", "$.name", 1, 11)]
    [InlineData("{\"name\":\"\\x\"}", "$.name", 1, 11)]
    [InlineData("{\"name\":NaN}", "$.name", 1, 9)]
    [InlineData("{\"name\":-Infinity}", "$.name", 1, 10)]
    [InlineData("{\"name\":01}", "$.name", 1, 10)]
    [InlineData("{\"name\":null}", "$.name", 1, 9)]
    [InlineData("{\"name\":1}", "$.name", 1, 9)]
    [InlineData("{\"name\":\"\\ud800\"}", "$.name", 1, 9)]
    [InlineData("{\"name\":\"\\ud800\\ud800\"}", "$.name", 1, 9)]
    [InlineData("{\"\\udc00\":\"x\"}", "$", 1, 2)]
    [InlineData("{\"name\":\" \"}", "$.name", 1, 9)]
    [InlineData("{\"Name\":\"x\"}", "$.Name", 1, 2)]
    [InlineData("{\"name\":\"x\",\n  \"a b\":1}", "$['a b']", 2, 3)]
    [InlineData("{\"name\":\"x\",\n\"\":1}", "$['']", 2, 1)]
    [InlineData("{\"name\":\"x\",\"name\":\"x\"}", "$.name", 1, 13)]
    [InlineData("{\"name\":\"x\",\"n\\u0061me\":\"x\"}", "$.name", 1, 13)]
    [InlineData("{\"$schema\":\"a\",\"$schema\":\"a\",\"name\":\"x\"}", "$.$schema", 1, 16)]
    [InlineData("{\"$schema\":1,\"name\":\"x\"}", "$.$schema", 1, 12)]
    [InlineData("{\"rooms\":{}}", "$.rooms", 1, 10)]
    [InlineData("{\"rooms\":[null]}", "$.rooms[0]", 1, 11)]
    [InlineData("{\"rooms\":[[]]}", "$.rooms[0]", 1, 11)]
    [InlineData("{\"storeys\":[]}", "$", 1, 1)]
    [InlineData("{\"name\":\"é😀\",\"about\":1}", "$.about", 1, 15)]
    [InlineData("{\"units\":\"Inches\"}", "$.units", 1, 10)]
    [InlineData("{\"units\":1}", "$.units", 1, 10)]
    [InlineData("{\"occupancy\":\"One\"}", "$.occupancy", 1, 14)]
    [InlineData("{\"storeys\":[{\"id\":\"a\"},\n {\"id\":\"b/c\"}]}", "$.storeys[1].id", 2, 8)]
    [InlineData("{\"storeys\":[{}]}", "$.storeys[0]", 1, 13)]
    [InlineData("{\"storeys\":[{\"$schema\":\"x\"}]}", "$.storeys[0].$schema", 1, 14)]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"aboveBelow\":\"-1 in\"}]}", "$.storeys[0].aboveBelow", 1, 36)]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"aboveBelow\":\"1\"}]}", "$.storeys[0].aboveBelow", 1, 36)]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"aboveBelow\":\"99999999999999999 ft\"}]}", "$.storeys[0].aboveBelow", 1, 36)]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"aboveBelow\":\"none\"}]}", "$.storeys[0].aboveBelow", 1, 36)]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"gradeBelowSubfloor\":5}]}", "$.storeys[0].gradeBelowSubfloor", 1, 44)]
    [InlineData("{\"storeys\":[{\"gradeBelowSubfloor\":{\"from\":\"1 in\",\"to\":\"0 in\"}}]}", "$.storeys[0].gradeBelowSubfloor.from", 1, 43)]
    [InlineData("{\"storeys\":[{\"gradeBelowSubfloor\":{\"from\":\"1 in\"}}]}", "$.storeys[0].gradeBelowSubfloor", 1, 35)]
    [InlineData("{\"storeys\":[{\"levelLine\":\"4 ft\"}]}", "$.storeys[0].levelLine", 1, 26)]
    [InlineData("{\"storeys\":[{\"ceiling\":{\"board\":\"none\"}}]}", "$.storeys[0].ceiling.board", 1, 33)]
    [InlineData("{\"storeys\":[{\"boards\":{\"widths\":[\"4 ft\",4]}}]}", "$.storeys[0].boards.widths[1]", 1, 41)]
    [InlineData("{\"flights\":[{\"id\":\"a\",\"from\":\"a\",\"to\":\"b\",\"risers\":0}]}", "$.flights[0].risers", 1, 52)]
    [InlineData("{\"flights\":[{\"risers\":1.0}]}", "$.flights[0].risers", 1, 23)]
    [InlineData("{\"flights\":[{\"risers\":1e1}]}", "$.flights[0].risers", 1, 23)]
    [InlineData("{\"flights\":[{\"risers\":4294967296}]}", "$.flights[0].risers", 1, 23)]
    [InlineData("{\"flights\":[{\"risers\":\"9\"}]}", "$.flights[0].risers", 1, 23)]
    [InlineData("{\"flights\":[{\"lights\":{\"every\":1,\"phase\":\"1/0\"}}]}", "$.flights[0].lights.phase", 1, 42)]
    [InlineData("{\"rooms\":[{\"walls\":[{\"turn\":90}]}]}", "$.rooms[0].walls[0].turn", 1, 29)]
    [InlineData("{\"rooms\":[{\"walls\":[{\"turn\":\"90\"}]}]}", "$.rooms[0].walls[0].turn", 1, 29)]
    [InlineData("{\"rooms\":[{\"walls\":[{\"turn\":\"9,5 deg\"}]}]}", "$.rooms[0].walls[0].turn", 1, 29)]
    [InlineData("{\"rooms\":[{\"walls\":[{\"open\":\"true\"}]}]}", "$.rooms[0].walls[0].open", 1, 29)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"plan\":[]}]}]}", "$.rooms[0].inFloor[0].plan", 1, 32)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"plan\":[\"1 in\",2]}]}]}", "$.rooms[0].inFloor[0].plan[1]", 1, 39)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"plan\":[\"1 in\",\"2 in\",\"3 in\"]}]}]}", "$.rooms[0].inFloor[0].plan", 1, 46)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"size\":{\"width\":\"0 in\",\"height\":\"1 in\"}}]}]}", "$.rooms[0].inFloor[0].size.width", 1, 40)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"volume\":\"20.3\"}]}]}", "$.rooms[0].inFloor[0].volume", 1, 33)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"cables\":[\"12-2\",\"13-2\"]}]}]}", "$.rooms[0].inFloor[0].cables[1]", 1, 41)]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"mounting\":{\"how\":\"cutIn\"}}]}]}", "$.rooms[0].inFloor[0].mounting.how", 1, 42)]
    public void Read_HostileText_SaysWhere(string json, string path, int line, int column)
    {
        BoxHeightsJsonException fault = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(json));

        Assert.Equal((path, line, column), (fault.Path, fault.Line, fault.Column));
        Assert.False(DwellingJson.TryRead(json, out _, out Items<BoxHeightsJsonError> errors));
        Assert.Equal(fault.Errors, errors);
        Assert.Equal(string.Join('\n', errors), fault.Message);
    }

    [Theory]
    [InlineData("{\"name\":\"x\",}", "nothing follows the comma before }")]
    [InlineData("{\"name\":\"x\"} []", "the document has ended, and something follows it")]
    [InlineData("{\"name\":\"x", "the text ends before the document does")]
    [InlineData("{/* x */}", "JSON has no comments")]
    [InlineData("{name:1}", "this isn't JSON: n can't stand here")]
    [InlineData("{\"name\":null}", "expected a text in quotation marks, found null; leave out what isn't stated")]
    [InlineData("{\"about\":1}", "there is no member \"about\" here; known are name, units, occupancy, storeys, rooms, outside, flights")]
    [InlineData("{\"stories\":1}", "there is no member \"stories\" here; perhaps \"storeys\"?")]
    [InlineData("{\"name\":\"x\",\"name\":1}", "the member \"name\" is here twice")]
    [InlineData("{}", "the member \"name\" is missing")]
    [InlineData("{\"name\":\"\"}", "Name is empty.")]
    [InlineData("{\"units\":\"mm\"}", "expected units, one of \"inches\", \"millimeters\", found \"mm\"")]
    [InlineData("{\"rooms\":{}}", "expected a list: [ … ], found an object")]
    [InlineData("{\"storeys\":[{\"aboveBelow\":16}]}", "expected a distance such as \"16 in\" or \"406.4 mm\", found 16")]
    [InlineData("{\"storeys\":[{\"aboveBelow\":\"16\"}]}", "expected a distance such as \"16 in\" or \"406.4 mm\": \"16\" is not a distance: at character 2, add a unit: in, ft, mm, cm or m.")]
    [InlineData("{\"storeys\":[{\"id\":\"a\",\"aboveBelow\":\"-1 in\"}]}", "AboveBelow is -1 in; it can't be negative.")]
    [InlineData("{\"storeys\":[{\"gradeBelowSubfloor\":true}]}", "expected a distance such as \"3/8 in\" or a range such as { \"from\": \"0 in\", \"to\": \"1-1/4 in\" }, found true")]
    [InlineData("{\"flights\":[{\"risers\":\"9\"}]}", "expected a whole number such as 2, found \"9\"")]
    [InlineData("{\"rooms\":[{\"kind\":\"Hall\"}]}", "expected a kind of room such as \"kitchen\" or \"living-room\", found \"Hall\": A kind is named in lower-case words joined by single hyphens, such as \"three-way-switch\"; \"Hall\" is perhaps \"hall\".")]
    [InlineData("{\"rooms\":[{\"walls\":[{\"turn\":\"90°\"}]}]}", "expected an angle such as \"90 deg\" or \"-90 deg\": \"90°\" is not a number of degrees.")]
    [InlineData("{\"rooms\":[{\"inFloor\":[{\"plan\":[\"1 in\"]}]}]}", "expected a point such as [ \"7 ft\", \"5 ft 9 in\" ]: to the right, and into the room; a distance is missing")]
    public void Read_HostileText_SaysWhatToDo(string json, string reason) =>
        Assert.Equal(reason, Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(json)).Reason);

    [Fact]
    public void Read_EveryPrefixOfADocument_IsRefused()
    {
        byte[] whole = Encoding.UTF8.GetBytes(Small);
        Assert.Equal("é½", DwellingJson.Read(whole).Name);

        for (int length = 0; length < whole.Length; length++)
        {
            byte[] prefix = whole[..length];
            Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(prefix));
        }
    }

    [Fact]
    public void Read_MutatedBytes_GivesADwellingOrItsOwnException()
    {
        byte[] whole = Encoding.UTF8.GetBytes(Small);
        Gen<byte[]> mutated =
            from changes in Gen.Choose(1, 4)
            from places in Gen.ArrayOf(Gen.Choose(0, whole.Length - 1), changes)
            from bytes in Gen.ArrayOf(Gen.OneOf(Gen.Choose(0, 255).Select(b => (byte)b), Gen.Elements("{}[]\",:0/-\\ \n"u8.ToArray())), changes)
            from move in Gen.Choose(0, 2)
            select Mutate(whole, places, bytes, move);

        Prop.ForAll(Arb.From(mutated), IsReadOrRefused).Check(Tries.Always(3000));
    }

    [Fact]
    public void Read_AnyBytes_GivesItsOwnException() =>
        Prop.ForAll(Arb.From(Gen.ArrayOf(Gen.Choose(0, 255).Select(b => (byte)b))), IsReadOrRefused).Check(Tries.Always(1000));

    [Fact]
    public void Read_BadUtf8_SaysWhere()
    {
        BoxHeightsJsonException fault = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read([.. "{\n \"é"u8, 0xFF, .. "\":1}"u8]));

        Assert.Equal("$, line 2, column 4: this byte isn't UTF-8; save the text as UTF-8", fault.Message);
    }

    [Fact]
    public void Read_HalfASurrogatePair_SaysWhere()
    {
        // Not in the table: an attribute's text is kept as UTF-8, which has no half pairs.
        BoxHeightsJsonException fault = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read("{\n\"name\":\"é\ud800\"}"));

        Assert.Equal("$, line 2, column 10: half of a surrogate pair stands here; its other half is missing", fault.Message);
    }

    [Fact]
    public void Read_BeyondTheLimits_IsRefused()
    {
        static string Reason(string json) => Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(json)).Reason;
        string name = new('n', 10_000);

        Assert.Equal(name, DwellingJson.Read("{\"name\":\"" + name + "\"}").Name);
        Assert.Equal("a text here has at most 10000 characters", Reason("{\"name\":\"" + name + "n\"}"));
        Assert.Equal("a text here has at most 10000 characters", Reason("{\"name\":\"" + string.Concat(Enumerable.Repeat("\\u006e", 70_000)) + "\"}"));
        Assert.Equal("a text here has at most 10000 characters", Reason("{\"" + name + "n\":1}"));
        Assert.Equal("the text is longer than 16 MB", Reason(new string(' ', (16 * 1024 * 1024) + 1)));
        Assert.Equal("the text is longer than 16 MB", Reason(new string('é', (8 * 1024 * 1024) + 1)));
        Assert.Equal("expected an object: { … }, found a list", Reason(new string('[', 1_000_000)));
        Assert.StartsWith("there is no member \"nnn", Reason("{\"" + name + "\":1}"), StringComparison.Ordinal);
        Assert.True(Reason("{\"" + name + "\":1}").Length < 300);
    }

    [Fact]
    public void Read_LongestList_IsReadAndOneMoreRefused()
    {
        static string Boxes(int count) => "{\"name\":\"x\",\"storeys\":[{\"id\":\"s\",\"boards\":{\"widths\":[" + string.Join(',', Enumerable.Repeat("\"4 ft\"", count)) + "]}}]}";

        Assert.Equal(100_000, DwellingJson.Read(Boxes(100_000)).Storeys[0].Boards!.Widths.Count);
        BoxHeightsJsonException fault = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(Boxes(100_001)));
        Assert.Equal(("$.storeys[0].boards.widths[100000]", "a list here has at most 100000 items"), (fault.Path, fault.Reason));
    }

    private static byte[] Mutate(byte[] whole, int[] places, byte[] bytes, int move)
    {
        byte[] changed = (byte[])whole.Clone();
        for (int i = 0; i < places.Length; i++)
        {
            changed[places[i]] = bytes[i];
        }

        // Left as long as it was, a byte shorter, or with a stretch of it twice.
        return move switch
        {
            1 => [.. changed[..places[0]], .. changed[(places[0] + 1)..]],
            2 => [.. changed[..places[0]], .. changed[(places[0] / 2)..]],
            _ => changed,
        };
    }

    private static bool IsReadOrRefused(byte[] text)
    {
        try
        {
            Dwelling read = DwellingJson.Read(text);
            return DwellingJson.Read(DwellingJson.Write(read)) == read;
        }
        catch (BoxHeightsJsonException fault)
        {
            return fault is { Line: >= 1, Column: >= 1, Reason.Length: > 0 } && fault.Path.StartsWith('$');
        }
    }
}
