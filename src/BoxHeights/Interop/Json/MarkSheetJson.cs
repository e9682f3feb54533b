using System;

namespace BoxHeights.Interop;

/// <summary>Writes a sheet of marks as JSON and reads it back.</summary>
/// <remarks>The dwelling that it is cut from is in it, written as <see cref="DwellingJson"/> writes it, so that a sheet that was read does all that the first one does; the catalog of parts isn't, so that a <see cref="StoryPole"/> of it takes <see cref="PartsCatalog.Generic"/>. Texts and limits are those of <see cref="DwellingJson"/>; nothing is found by reflection, so that trimmed and natively compiled programs read and write it.</remarks>
public static class MarkSheetJson
{
    private static readonly JsonDocument<MarkSheet> Document = new(MarkShapes.Sheet);

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written.</summary>
    public static string Schema => Document.Schema;

    /// <summary>Reads a sheet of marks.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static MarkSheet Read(string json) => Document.Read(json);

    /// <summary>Reads a sheet of marks.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static MarkSheet Read(ReadOnlySpan<byte> utf8) => Document.Read(utf8);

    /// <summary>Writes a sheet of marks, indented by two spaces.</summary>
    /// <param name="sheet">It.</param>
    /// <exception cref="ArgumentNullException"><paramref name="sheet"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again; the message says where.</exception>
    public static string Write(MarkSheet sheet) => Document.Write(sheet, nameof(sheet));
}
