using System;
using System.Collections.Generic;
using System.Text;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>What is said of a sort of text, whatever it is read as.</summary>
internal sealed class TextForm(string name, string what)
{
    /// <summary>The name under which a schema describes it.</summary>
    internal string Name { get; } = name;

    /// <summary>What it is, as within a sentence.</summary>
    internal string What { get; } = what;

    /// <summary>A few texts, for messages and schemas.</summary>
    internal string[] Examples { get; init; } = [];

    /// <summary>What a schema can check of a text.</summary>
    internal string? Pattern { get; init; }

    /// <summary>What else a schema says of it: how it is written, in which units.</summary>
    internal string Note { get; init; } = "";

    /// <summary>Of an open list, those that are known: a schema lists them, for editors to offer, and lets any other pass.</summary>
    internal Func<string[]>? Known { get; init; }

    /// <summary>What is asked for where another text stands.</summary>
    internal string Expected => Examples.Length > 0 ? What + " such as \"" + string.Join("\" or \"", Examples[..Math.Min(2, Examples.Length)]) + "\"" : What;

    internal void WriteDefinition(SchemaOut schema)
    {
        schema.Describe(What, Note);
        if (Known is null)
        {
            WriteText(schema);
            schema.Texts("examples", Examples);
            return;
        }

        schema.Writer.WriteStartArray("anyOf");
        schema.Writer.WriteStartObject();
        schema.Texts("enum", Known());
        schema.Writer.WriteEndObject();
        schema.Writer.WriteStartObject();
        WriteText(schema);
        schema.Writer.WriteEndObject();
        schema.Writer.WriteEndArray();
    }

    private void WriteText(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "string");
        schema.Writer.WriteNumber("maxLength", JsonLimits.Characters);
        if (Pattern is not null)
        {
            schema.Writer.WriteString("pattern", Pattern);
        }
    }
}

/// <summary>A value that is written as a text which the library reads.</summary>
/// <typeparam name="T">The sort of value.</typeparam>
/// <param name="form">What is said of its text.</param>
/// <param name="parse">How it is read.</param>
/// <param name="print">How it is written; as it prints itself unless stated.</param>
internal sealed class TextCodec<T>(TextForm form, Func<string, T> parse, Func<T, string>? print = null) : Codec<T>(form.Name)
    where T : struct
{
    internal override object Read(ref JsonIn input)
    {
        string text = input.Token == JsonTokenType.String ? input.Text("") : throw input.Expected(form.Expected);
        try
        {
            return parse(text);
        }
        catch (FormatException fault)
        {
            throw input.Fault("expected " + form.Expected + ": " + fault.Message);
        }
        catch (ArgumentException fault)
        {
            throw input.Fault("expected " + form.Expected + ", found \"" + JsonLimits.Shown(text) + "\": " + Faults.Reason(fault));
        }
    }

    internal override void Write(JsonOut output, object value)
    {
        string text = print is null ? value.ToString()! : print((T)value);
        if (!IsReadBack(text, value))
        {
            throw output.Refused("it is " + form.What + " that no text stands for");
        }

        output.Text(text);
    }

    internal override void WriteDefinition(SchemaOut schema) => form.WriteDefinition(schema);

    private bool IsReadBack(string text, object value)
    {
        try
        {
            return value.Equals(parse(text));
        }
        catch (Exception fault) when (fault is FormatException or ArgumentException)
        {
            return false;
        }
    }
}

/// <summary>A value of a closed list, each written as its word. Values are objects here, and words are looked up when the first is read: code for each list is what a start costs.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal sealed class WordCodec<T> : Codec<T>
    where T : struct, Enum
{
    private readonly string what;
    private readonly T[] never = [];
    private (object Value, string Word)[]? words;

    /// <summary>The words are the values' own names, with hyphens: "from-memory".</summary>
    /// <param name="name">The name under which a schema describes them.</param>
    /// <param name="what">What they are, as within a sentence.</param>
    /// <param name="never">Values that are never written.</param>
    internal WordCodec(string name, string what, params T[] never)
        : base(name)
    {
        this.what = what;
        this.never = never;
    }

    /// <summary>The words are those given.</summary>
    internal WordCodec(string name, string what, (object Value, string Word)[] words)
        : base(name)
    {
        this.what = what;
        this.words = words;
    }

    private (object Value, string Word)[] Words => words ??= OwnNames.Of(Enum.GetValues<T>(), never);

    internal override object Read(ref JsonIn input)
    {
        string text = input.Token == JsonTokenType.String ? input.Text("") : throw input.Expected(Expected());
        foreach ((object value, string word) in Words)
        {
            if (word == text)
            {
                return value;
            }
        }

        throw input.Expected(Expected());
    }

    internal override void Write(JsonOut output, object value)
    {
        foreach ((object known, string word) in Words)
        {
            if (value.Equals(known))
            {
                output.Text(word);
                return;
            }
        }

        throw output.Refused("there is no such value");
    }

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Describe(what);
        schema.Texts("enum", Array.ConvertAll(Words, static row => row.Word));
    }

    private string Expected() => what + ", one of \"" + string.Join("\", \"", Array.ConvertAll(Words, static row => row.Word)) + "\"";
}

/// <summary>The values of a closed list under their own names.</summary>
internal static class OwnNames
{
    public static (object Value, string Word)[] Of(Array values, Array never)
    {
        List<(object Value, string Word)> words = [];
        foreach (object value in values)
        {
            if (Array.IndexOf(never, value) < 0)
            {
                words.Add((value, Hyphened(value.ToString()!)));
            }
        }

        return words.ToArray();
    }

    private static string Hyphened(string name)
    {
        StringBuilder text = new();
        foreach (char letter in name)
        {
            text.Append(char.IsUpper(letter) && text.Length > 0 ? "-" : "").Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }
}

/// <summary>A plain text.</summary>
internal sealed class PlainTextCodec(bool isId) : Codec<string>(null)
{
    internal override object Read(ref JsonIn input) => input.Text("a text in quotation marks");

    internal override void Write(JsonOut output, object value) => output.Text((string)value);

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "string");
        schema.Writer.WriteNumber("maxLength", JsonLimits.Characters);
        if (isId)
        {
            schema.Writer.WriteString("pattern", "^[^/]*[^/\\s][^/]*$");
        }
    }
}

/// <summary>What the library's own checks say, without what only a programmer needs.</summary>
internal static class Faults
{
    internal static string Reason(ArgumentException fault)
    {
        int parameter = fault.Message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        return parameter < 0 ? fault.Message : fault.Message.Remove(parameter);
    }
}
