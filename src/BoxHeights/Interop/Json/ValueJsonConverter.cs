using System;
using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace BoxHeights.Interop;

/// <summary>Reads and writes a value of this library wherever it stands in somebody else's JSON, in the form that <see cref="DwellingJson"/> gives it.</summary>
/// <remarks>
/// The values carry it as an attribute, so that serializers find it, generated ones (<c>JsonSerializerContext</c>) too: without it a
/// <see cref="Distance"/> would be written as an empty object and read back as zero. A value whose text is a key of a dictionary works too.
/// What has no such form throws <see cref="NotSupportedException"/>.
/// </remarks>
/// <typeparam name="T">The value.</typeparam>
public sealed class ValueJsonConverter<T> : JsonConverter<T>
    where T : notnull
{
    private static Codec Codec => JsonValues.Codec(typeof(T));

    /// <inheritdoc/>
    /// <exception cref="JsonException">It is no such value; the message says why.</exception>
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Parse(JsonElement.ParseValue(ref reader).GetRawText());

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">It is a value that no text stands for, such as a kind that is <c>default</c>.</exception>
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => Codec.Write(new JsonOut(writer), value);

    /// <inheritdoc/>
    /// <exception cref="JsonException">It is no such value; the message says why.</exception>
    public override T ReadAsPropertyName(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Parse("\"" + JsonEncodedText.Encode(reader.GetString()!) + "\"");

    /// <inheritdoc/>
    /// <exception cref="NotSupportedException">It isn't written as a text.</exception>
    public override void WriteAsPropertyName(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        ArrayBufferWriter<byte> buffer = new();
        using (Utf8JsonWriter name = new(buffer))
        {
            Codec.Write(new JsonOut(name), value);
        }

        Utf8JsonReader text = new(buffer.WrittenSpan);
        text.Read();
        writer.WritePropertyName(text.TokenType == JsonTokenType.String
            ? text.GetString()!
            : throw new NotSupportedException(typeof(T).Name + " isn't written as a text, and can't be a name."));
    }

    private static T Parse(string json)
    {
        try
        {
            return (T)JsonValues.Read(Codec, Encoding.UTF8.GetBytes(json));
        }
        catch (BoxHeightsJsonException fault)
        {
            BoxHeightsJsonError first = fault.Error;
            throw new JsonException(first.Path == "$" ? first.Reason : first.Path + ": " + first.Reason, fault);
        }
    }
}
