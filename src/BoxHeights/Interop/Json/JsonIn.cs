using System;
using System.Collections.Generic;
using System.Text;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>Where a value begins: how deep it lies in the text, and how many steps lead to it.</summary>
internal readonly record struct JsonMark(int Depth, int Steps);

/// <summary>Reads a document token by token, and knows where it is. A fault is thrown as a <see cref="BoxHeightsJsonException"/>; whoever reads the values of
/// an object or a list notes it and goes on with the next, so that all faults of a text are found at once.</summary>
internal ref struct JsonIn
{
    private readonly ReadOnlySpan<byte> text;
    private Utf8JsonReader reader;

    /// <param name="text">Valid UTF-8.</param>
    internal JsonIn(ReadOnlySpan<byte> text)
    {
        this.text = text;
        reader = new(text, new JsonReaderOptions { MaxDepth = JsonLimits.Depth });
        Path = new();
    }

    /// <summary>The faults noted so far, in the order in which they were found.</summary>
    internal List<BoxHeightsJsonError> Faults { get; } = [];

    /// <summary>Whether nothing more can be read: the text isn't JSON from here on, or it has more faults than anyone would mend at once.</summary>
    internal bool HasEnded { get; private set; }

    /// <summary>The way to the token at hand.</summary>
    internal JsonPath Path { get; }

    /// <summary>What sort of token is at hand.</summary>
    internal readonly JsonTokenType Token => reader.TokenType;

    /// <summary>The byte at which the token at hand begins.</summary>
    internal readonly int Start => (int)reader.TokenStartIndex;

    /// <summary>Goes on to the next token; false at the end of the text.</summary>
    internal bool Next()
    {
        try
        {
            return reader.Read();
        }
        catch (JsonException syntax)
        {
            HasEnded = true;
            int at = TextPlace.Offset(text, syntax.LineNumber.GetValueOrDefault(), syntax.BytePositionInLine.GetValueOrDefault());
            throw Fault(at, SyntaxReason(at));
        }
    }

    /// <summary>Goes on to the next member's name; false at the end of the object.</summary>
    internal bool NextName(out string name)
    {
        name = Next() && Token == JsonTokenType.PropertyName ? Unescaped() : "";
        return Token == JsonTokenType.PropertyName;
    }

    /// <summary>The place of the member or item that is about to be read.</summary>
    internal readonly JsonMark Mark() => new(reader.CurrentDepth, Path.Count);

    /// <summary>Notes a fault.</summary>
    internal void Note(BoxHeightsJsonException fault)
    {
        Faults.Add(fault.Error);
        if (Faults.Count == JsonLimits.Faults)
        {
            HasEnded = true;
            throw fault;
        }
    }

    /// <summary>Notes a fault, and goes to the end of the member or item that has it.</summary>
    internal void GoOnAfter(BoxHeightsJsonException fault, JsonMark mark)
    {
        Note(fault);
        Path.GoBack(mark.Steps + 1);

        // Its last token is the first at its depth that opens nothing and names nothing.
        while (reader.CurrentDepth > mark.Depth || Token is JsonTokenType.StartObject or JsonTokenType.StartArray or JsonTokenType.PropertyName)
        {
            Next();
        }
    }

    /// <summary>Makes sure that the token at hand opens an object or list.</summary>
    internal readonly void Open(JsonTokenType token, string expected)
    {
        if (Token != token)
        {
            throw Expected(expected);
        }
    }

    /// <summary>The text at hand.</summary>
    internal readonly string Text(string expected) => Token == JsonTokenType.String ? Unescaped() : throw Expected(expected);

    /// <summary>The whole number at hand.</summary>
    internal readonly int WholeNumber() =>
        Token == JsonTokenType.Number && reader.TryGetInt32(out int number) ? number : throw Expected("a whole number such as 2");

    /// <summary>The truth at hand.</summary>
    internal readonly bool Truth() => Token switch
    {
        JsonTokenType.True => true,
        JsonTokenType.False => false,
        _ => throw Expected("true or false"),
    };

    /// <summary>The exception for the token at hand, where another sort was expected.</summary>
    internal readonly BoxHeightsJsonException Expected(string expected) => Fault("expected " + expected + ", found " + Found());

    /// <summary>The exception for the token at hand.</summary>
    internal readonly BoxHeightsJsonException Fault(string reason) => Fault(Start, reason);

    /// <summary>The exception for a byte of the text.</summary>
    internal readonly BoxHeightsJsonException Fault(int at, string reason)
    {
        TextPlace place = TextPlace.Of(text, at);
        return new(new BoxHeightsJsonError(Path.ToString(), place.Line, place.Column, reason));
    }

    private readonly string Unescaped()
    {
        const int longestEscape = 6;
        string? value = null;
        if (reader.ValueSpan.Length <= longestEscape * JsonLimits.Characters)
        {
            try
            {
                value = reader.GetString();
            }
            catch (InvalidOperationException)
            {
                // The text is valid UTF-8, so only an escape can be at fault.
                throw Fault("an escape such as \\ud83c stands for half a character; its other half must follow");
            }
        }

        return value is { Length: <= JsonLimits.Characters }
            ? value
            : throw Fault(JsonLimits.TooManyCharacters);
    }

    private readonly string Found() => Token switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => "\"" + Raw() + "\"",
        JsonTokenType.Null => "null; leave out what isn't stated",
        _ => Raw(),
    };

    private readonly string Raw() => JsonLimits.Shown(Encoding.UTF8.GetString(reader.ValueSpan));

    // In our own words, which don't change with the framework's.
    private readonly string SyntaxReason(int at)
    {
        if (Token == JsonTokenType.EndObject && reader.CurrentDepth == 0)
        {
            return "the document has ended, and something follows it";
        }

        if (at >= text.Length)
        {
            return Token == JsonTokenType.None && text.Trim(" \t\r\n"u8).IsEmpty ? "the text is empty" : "the text ends before the document does";
        }

        ReadOnlySpan<byte> before = text[..at].TrimEnd(" \t\r\n"u8);
        _ = Rune.DecodeFromUtf8(text[at..], out Rune found, out _);
        return found.Value switch
        {
            '/' => "JSON has no comments",
            '}' or ']' when before.EndsWith(","u8) => "nothing follows the comma before " + found,
            < ' ' => "a control character isn't allowed here; write it as an escape such as \\n",
            _ => "this isn't JSON: " + found + " can't stand here",
        };
    }
}
