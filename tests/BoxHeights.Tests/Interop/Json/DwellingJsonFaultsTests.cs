using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;
using System.Threading.Tasks;
using BoxHeights.Interop;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>All faults of a text at once, and texts that arrive as streams.</summary>
public class DwellingJsonFaultsTests
{
    // Each hole takes what is right or what is wrong there, and each wrong one has one fault, at the path beside it.
    private const string Holes = """
        { "name": {0}, "storeys": [ { "id": {1}, "levelLine": {2} } ], "rooms": [ { "id": "r", "kind": {3}, "storey": "s",
          "walls": [ { "id": "w", "length": {4}, "boxes": [ { "id": "a", "purpose": "general", "gangs": {5}, "plan": [ "1 ft", {6} ] },
            { "id": "b", "purpose": "switch", "cables": [ "12-2", {7} ], "size": { "width": {8}, "height": "3 in" } } ] } ] } ], "units": {9} }
        """;

    private static readonly (string Right, string Wrong, string Path)[] Values =
    [
        ("\"x\"", "7", "$.name"),
        ("\"s\"", "null", "$.storeys[0].id"),
        ("\"4 ft above subfloor\"", "\"4 ft\"", "$.storeys[0].levelLine"),
        ("\"hall\"", "\"Hall\"", "$.rooms[0].kind"),
        ("\"9 ft\"", "{ \"from\": [ 1 ] }", "$.rooms[0].walls[0].length"),
        ("2", "[ 2, { } ]", "$.rooms[0].walls[0].boxes[0].gangs"),
        ("\"2 ft\"", "true", "$.rooms[0].walls[0].boxes[0].plan[1]"),
        ("\"12-2\"", "\"13-2\"", "$.rooms[0].walls[0].boxes[1].cables[1]"),
        ("\"2 in\"", "[ [ ], [ { \"a\": 1 } ] ]", "$.rooms[0].walls[0].boxes[1].size.width"),
        ("\"inches\"", "\"ells\"", "$.units"),
    ];

    [Fact]
    public void TryRead_AnySetOfFaults_TellsEachOnceInOrder()
    {
        for (int set = 0; set < 1 << Values.Length; set++)
        {
            string json = Holes;
            List<string> expected = [];
            for (int i = 0; i < Values.Length; i++)
            {
                bool wrong = (set >> i & 1) != 0;
                json = json.Replace("{" + i + "}", wrong ? Values[i].Wrong : Values[i].Right, StringComparison.Ordinal);
                expected.AddRange(wrong ? [Values[i].Path] : []);
            }

            Assert.Equal(expected.Count == 0, DwellingJson.TryRead(json, out _, out Items<BoxHeightsJsonError> errors));
            Assert.Equal(expected, errors.Select(error => error.Path));
        }
    }

    [Fact]
    public void TryRead_FaultsOfEachSort_TellsAll()
    {
        DwellingJson.TryRead(
            """
            {
              "title": { "a": [ 1, 2 ] },
              "storeys": [ { }, { "id": "s", "id": "t" } ],
              "flights": [ { "id": "f", "from": "a", "to": "b", "risers": 0 } ]
            """,
            out _,
            out Items<BoxHeightsJsonError> errors);

        Assert.Equal(
            [
                "$.title, line 2, column 3: there is no member \"title\" here; known are name, units, occupancy, storeys, rooms, outside, flights",
                "$.storeys[0], line 3, column 16: the member \"id\" is missing",
                "$.storeys[1].id, line 3, column 34: the member \"id\" is here twice",
                "$.flights[0].risers, line 4, column 63: Risers is 0; it counts from 1.",
                "$, line 4, column 68: the text ends before the document does",
            ],
            errors.Select(error => error.ToString()));
    }

    [Fact]
    public void Read_MoreFaultsThanAnyoneMends_EndsAtTheHundredth()
    {
        string json = "{\"storeys\":[" + string.Join(',', Enumerable.Repeat("7", 5000)) + "],\"name\":";

        Items<BoxHeightsJsonError> errors = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(json)).Errors;
        Assert.Equal(100, errors.Count);
        Assert.Equal("$.storeys[99]", errors[99].Path);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(100_000)]
    public async Task ReadAsync_TextInPieces_IsEqual(int piece)
    {
        byte[] text = Encoding.UTF8.GetBytes("\uFEFF" + DwellingJsonTests.Cottage);
        Dwelling expected = DwellingJson.Read(DwellingJsonTests.Cottage);

        Assert.Equal(expected, DwellingJson.Read(new Pieces(text, piece)));
        Assert.Equal(expected, await DwellingJson.ReadAsync(new Pieces(text, piece)));
    }

    [Fact]
    public async Task ReadAsync_FaultyText_ThrowsAsReadDoes()
    {
        BoxHeightsJsonException expected = Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read("{\"storeys\":1}"));

        BoxHeightsJsonException found = await Assert.ThrowsAsync<BoxHeightsJsonException>(() => DwellingJson.ReadAsync(new MemoryStream("{\"storeys\":1}"u8.ToArray())));
        Assert.Equal(expected.Errors, found.Errors);
    }

    [Fact]
    public async Task ReadAsync_Canceled_Ends() =>
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => DwellingJson.ReadAsync(new Pieces([1], 1), new CancellationToken(true)));

    [Fact]
    public void Read_StreamWithoutEnd_IsRefusedSoon()
    {
        Pieces endless = new([(byte)' '], 64 * 1024, 1_000_000_000);

        Assert.Equal("the text is longer than 16 MB", Assert.Throws<BoxHeightsJsonException>(() => DwellingJson.Read(endless)).Reason);
        Assert.InRange(endless.Position, 16 * 1024 * 1024, 17 * 1024 * 1024);
    }

    // A stream that gives few bytes at a time; past its bytes the last one again, as often as asked for.
    private sealed class Pieces(byte[] bytes, int piece, int more = 0) : MemoryStream
    {
        private int at;

        public override long Position => at;

        public override int Read(byte[] buffer, int offset, int count)
        {
            int given = Math.Min(Math.Min(piece, count), bytes.Length - at + more);
            for (int i = 0; i < given; i++, at++)
            {
                buffer[offset + i] = bytes[Math.Min(at, bytes.Length - 1)];
            }

            return given;
        }

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            cancellationToken.ThrowIfCancellationRequested();
            byte[] read = new byte[buffer.Length];
            int given = Read(read, 0, read.Length);
            read.AsMemory(0, given).CopyTo(buffer);
            return new(given);
        }
    }
}
