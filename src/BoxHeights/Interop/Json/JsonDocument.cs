using System;
using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace BoxHeights.Interop;

/// <summary>A kind of document: how its text becomes a value and a value its text.</summary>
/// <typeparam name="T">What a document holds.</typeparam>
internal sealed class JsonDocument<T>(Shape<T> shape)
    where T : class
{
    // Quotes, signs and letters of other alphabets stay readable. The text isn't made to stand inside a web page as it is.
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal string Schema => WriteText(writer => new SchemaOut(writer).WriteAll(shape));

    internal T Read(string json)
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

    internal T Read(ReadOnlySpan<byte> utf8)
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
        T value = shape.Read(ref input);

        // Anything after the document is a fault, which this finds.
        input.Next();
        return value;
    }

    internal string Write(T value, string argument)
    {
        ArgumentNullException.ThrowIfNull(value, argument);
        string json = WriteText(writer => shape.Write(new JsonOut(writer), value));
        return Encoding.UTF8.GetByteCount(json) <= JsonLimits.Bytes
            ? json
            : throw new ArgumentException("It can't be written: " + JsonLimits.TooLong + ".", argument);
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

    private static BoxHeightsJsonException TooLong() => AtDocument([], 0, JsonLimits.TooLong);

    private static BoxHeightsJsonException AtDocument(ReadOnlySpan<byte> text, int at, string reason)
    {
        TextPlace place = TextPlace.Of(text, at);
        return new(new("$", place.Line, place.Column, reason));
    }
}
