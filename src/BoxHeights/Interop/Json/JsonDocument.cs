using System;
using System.Buffers;
using System.IO;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using System.Threading;
using System.Threading.Tasks;

namespace BoxHeights.Interop;

/// <summary>A kind of document: how its text becomes a value and a value its text.</summary>
/// <typeparam name="T">What a document holds.</typeparam>
internal sealed class JsonDocument<T>(Shape<T> shape)
    where T : class
{
    private const int Mark = 3;
    private const int FirstPiece = 16 * 1024;

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
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        ReadOnlySpan<byte> text = utf8.StartsWith(mark) ? utf8[Mark..] : utf8;
        if (text.Length > JsonLimits.Bytes)
        {
            throw TooLong();
        }

        if (!Utf8.IsValid(text))
        {
            throw AtDocument(text, ValidLength(text), "this byte isn't UTF-8; save the text as UTF-8");
        }

        return (T)JsonValues.Read(shape, text);
    }

    internal T Read(Stream utf8)
    {
        ArgumentNullException.ThrowIfNull(utf8);
        byte[] room = new byte[FirstPiece];
        int length = 0;
        for (int read; (read = utf8.Read(room, length, room.Length - length)) > 0;)
        {
            length += read;
            room = WithRoom(room, length);
        }

        return Read(room.AsSpan(0, length));
    }

    internal async Task<T> ReadAsync(Stream utf8, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(utf8);
        byte[] room = new byte[FirstPiece];
        int length = 0;
        for (int read; (read = await utf8.ReadAsync(room.AsMemory(length), cancellation).ConfigureAwait(false)) > 0;)
        {
            length += read;
            room = WithRoom(room, length);
        }

        return Read(room.AsSpan(0, length));
    }

    internal string Write(T value, string argument)
    {
        ArgumentNullException.ThrowIfNull(value, argument);
        string json = WriteText(writer => shape.Write(new JsonOut(writer), value));
        return Encoding.UTF8.GetByteCount(json) <= JsonLimits.Bytes
            ? json
            : throw new ArgumentException("It can't be written: " + JsonLimits.TooLong + ".", argument);
    }

    // Always room for more, and never much more than a document may have: a stream that doesn't end is refused soon.
    private static byte[] WithRoom(byte[] room, int length)
    {
        if (length > JsonLimits.Bytes + Mark)
        {
            throw TooLong();
        }

        if (length == room.Length)
        {
            Array.Resize(ref room, Math.Min(2 * length, JsonLimits.Bytes + Mark + 1));
        }

        return room;
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
        return new(new BoxHeightsJsonError("$", place.Line, place.Column, reason));
    }
}
