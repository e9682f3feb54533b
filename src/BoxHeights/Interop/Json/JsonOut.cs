using System;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>Writes a document, and knows where it is.</summary>
internal sealed class JsonOut(Utf8JsonWriter writer)
{
    internal Utf8JsonWriter Writer { get; } = writer;

    /// <summary>The way to the value at hand.</summary>
    internal JsonPath Path { get; } = new();

    /// <summary>Writes a text, unless reading it would be refused.</summary>
    internal void Text(string text)
    {
        if (text.Length > JsonLimits.Characters)
        {
            throw Refused(JsonLimits.TooManyCharacters);
        }

        if (JsonLimits.LoneSurrogate(text) >= 0)
        {
            throw Refused("it holds half of a surrogate pair");
        }

        Writer.WriteStringValue(text);
    }

    /// <summary>The exception for a value that no document can hold.</summary>
    internal ArgumentException Refused(string reason) => new(Path + " can't be written: " + reason + ".");
}
