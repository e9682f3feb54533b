using System;

namespace BoxHeights.Interop;

/// <summary>Reads a builder's own table of heights from JSON and writes it, as strictly as <see cref="DwellingJson"/> reads a dwelling.</summary>
/// <remarks><c>{ "name": "Our crew", "heights": [ { "purpose": "switch", "height": "46 in to top above subfloor", "noLower": "44 in to top above subfloor" } ] }</c></remarks>
public static class PracticeJson
{
    private static readonly JsonDocument<PracticeTable> Document = new(PracticeShapes.Table);

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written.</summary>
    public static string Schema => Document.Schema;

    /// <summary>Reads a table.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is no table; the exception says where and why.</exception>
    public static PracticeTable Read(string json) => Document.Read(json);

    /// <summary>Reads a table.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="BoxHeightsJsonException">It is no table; the exception says where and why.</exception>
    public static PracticeTable Read(ReadOnlySpan<byte> utf8) => Document.Read(utf8);

    /// <summary>Writes a table, indented by two spaces. <see cref="Read(string)"/> makes an equal one of the text.</summary>
    /// <param name="table">The table.</param>
    /// <exception cref="ArgumentNullException"><paramref name="table"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again; the message says where.</exception>
    public static string Write(PracticeTable table) => Document.Write(table, nameof(table));
}
