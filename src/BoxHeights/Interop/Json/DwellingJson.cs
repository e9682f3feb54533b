using System;
using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace BoxHeights.Interop;

/// <summary>Reads a dwelling from JSON and writes it.</summary>
/// <remarks>
/// <para>A member is named as the property, with a small first letter; the turn of a wall is <c>"turn": "90 deg"</c>. Measures are texts that the library
/// reads (<c>"47-3/4 in"</c>, <c>"48 in to top above subfloor"</c>), a range is <c>{ "from": "0 in", "to": "1-1/4 in" }</c>, a point in plan
/// <c>[ "7 ft", "5 ft 9 in" ]</c>, a floor the list of its layers. Only counts are numbers. What isn't stated is left out; <c>null</c> is an error.</para>
/// <para>Reading is strict: unknown and repeated members, comments, commas at an end, wrong capitals and the like are errors that say where and why.
/// A document has at most 16 MB, a text in it 10,000 characters, a list 100,000 items. A byte order mark before it is skipped, and a
/// <c>"$schema"</c> text in its outermost object is read over.</para>
/// </remarks>
public static class DwellingJson
{
    // Quotes, signs and letters of other alphabets stay readable. The text isn't made to stand inside a web page as it is.
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written. It can't say all that reading checks: the words within heights, ends in order.</summary>
    public static string Schema => WriteText(writer => new SchemaOut(writer).WriteAll(DwellingShapes.Dwelling));

    /// <summary>Reads a dwelling.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="DwellingJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Dwelling Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);

        // Longer in characters is longer in bytes.
        if (json.Length > JsonLimits.Bytes)
        {
            throw TooLong();
        }

        int lone = JsonLimits.LoneSurrogate(json);
        if (lone >= 0)
        {
            byte[] before = Encoding.UTF8.GetBytes(json[..lone]);
            throw AtDocument(before, before.Length, "half of a surrogate pair stands here; its other half is missing");
        }

        return Read(Encoding.UTF8.GetBytes(json));
    }

    /// <summary>Reads a dwelling.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="DwellingJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Dwelling Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > JsonLimits.Bytes)
        {
            throw TooLong();
        }

        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        ReadOnlySpan<byte> text = utf8.StartsWith(mark) ? utf8[mark.Length..] : utf8;
        if (!Utf8.IsValid(text))
        {
            throw AtDocument(text, ValidLength(text), "this byte isn't UTF-8; save the text as UTF-8");
        }

        JsonIn input = new(text);
        input.Next();
        Dwelling dwelling = DwellingShapes.Dwelling.Read(ref input);

        // Anything after the document is a fault, which this finds.
        input.Next();
        return dwelling;
    }

    /// <summary>Reads a dwelling, without exceptions.</summary>
    /// <param name="json">The text; null is no dwelling.</param>
    /// <param name="dwelling">The dwelling, or null.</param>
    /// <param name="error">Where and why there is none, or null.</param>
    /// <returns>Whether the text is a dwelling.</returns>
    public static bool TryRead(string? json, [NotNullWhen(true)] out Dwelling? dwelling, [NotNullWhen(false)] out DwellingJsonError? error)
    {
        try
        {
            dwelling = Read(json ?? "");
            error = null;
            return true;
        }
        catch (DwellingJsonException fault)
        {
            dwelling = null;
            error = fault.Error;
            return false;
        }
    }

    /// <summary>Writes a dwelling, indented by two spaces, with line feeds. <see cref="Read(string)"/> makes an equal one of the text.</summary>
    /// <remarks>Empty lists, and what goes without saying (<c>false</c>, a turn of 90°), are left out.</remarks>
    /// <param name="dwelling">The dwelling.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again: a kind, size or cable that is <c>default</c>, a value that its enumeration
    /// doesn't have, a text or list beyond the limits, half of a surrogate pair. The message says where.</exception>
    public static string Write(Dwelling dwelling)
    {
        ArgumentNullException.ThrowIfNull(dwelling);
        string json = WriteText(writer => DwellingShapes.Dwelling.Write(new JsonOut(writer), dwelling));
        return Encoding.UTF8.GetByteCount(json) <= JsonLimits.Bytes
            ? json
            : throw new ArgumentException("The dwelling can't be written: " + JsonLimits.TooLong + ".", nameof(dwelling));
    }

    private static string WriteText(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter writer = new(buffer, Readable))
        {
            write(writer);
        }

        // Line ends of the machine come from indenting alone: within texts they are escaped.
        return Encoding.UTF8.GetString(buffer.WrittenSpan).Replace("\r\n", "\n", StringComparison.Ordinal) + "\n";
    }

    private static int ValidLength(ReadOnlySpan<byte> text)
    {
        int valid = 0;
        while (Rune.DecodeFromUtf8(text[valid..], out _, out int length) == OperationStatus.Done)
        {
            valid += length;
        }

        return valid;
    }

    private static DwellingJsonException TooLong() => AtDocument([], 0, JsonLimits.TooLong);

    private static DwellingJsonException AtDocument(ReadOnlySpan<byte> text, int at, string reason)
    {
        TextPlace place = TextPlace.Of(text, at);
        return new(new("$", place.Line, place.Column, reason));
    }
}
