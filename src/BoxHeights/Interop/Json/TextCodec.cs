using System;

namespace BoxHeights.Interop;

/// <summary>A value that is written as a text which the library reads.</summary>
/// <typeparam name="T">The sort of value.</typeparam>
internal sealed class TextCodec<T>(string name, string what, string[] examples, string? pattern, Func<string, T> parse, Func<T, string> print)
    : NamedCodec<T>(name)
    where T : struct
{
    private readonly string expected = what + (examples.Length > 0 ? " such as \"" + string.Join("\" or \"", examples[..Math.Min(2, examples.Length)]) + "\"" : "");

    /// <inheritdoc/>
    public override void WriteDefinition(SchemaOut schema)
    {
        schema.Describe(what);
        schema.Writer.WriteString("type", "string");
        schema.Writer.WriteNumber("maxLength", JsonLimits.Characters);
        if (pattern is not null)
        {
            schema.Writer.WriteString("pattern", pattern);
        }

        schema.Texts("examples", examples);
    }

    internal override T Read(ref JsonIn input)
    {
        string text = input.Text(expected);
        try
        {
            return parse(text);
        }
        catch (FormatException fault)
        {
            throw input.Fault("expected " + expected + ": " + fault.Message);
        }
        catch (ArgumentException fault)
        {
            throw input.Fault("expected " + expected + ", found \"" + JsonLimits.Shown(text) + "\": " + Faults.Reason(fault));
        }
    }

    internal override void Write(JsonOut output, T value)
    {
        string text = print(value);
        if (!IsReadBack(text, value))
        {
            throw output.Refused("it is " + what + " that no text stands for");
        }

        output.Text(text);
    }

    private bool IsReadBack(string text, T value)
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

/// <summary>A value of a closed list, each written as its word.</summary>
/// <typeparam name="T">The enumeration.</typeparam>
internal sealed class WordCodec<T>(string name, string what, params (T Value, string Word)[] words) : NamedCodec<T>(name)
    where T : struct, Enum
{
    /// <inheritdoc/>
    public override void WriteDefinition(SchemaOut schema)
    {
        schema.Describe(what);
        schema.Texts("enum", Array.ConvertAll(words, row => row.Word));
    }

    internal override T Read(ref JsonIn input)
    {
        string expected = what + ", one of \"" + string.Join("\", \"", Array.ConvertAll(words, row => row.Word)) + "\"";
        string text = input.Text(expected);
        int row = Array.FindIndex(words, row => row.Word == text);
        return row >= 0 ? words[row].Value : throw input.Expected(expected);
    }

    internal override void Write(JsonOut output, T value)
    {
        int row = Array.FindIndex(words, row => row.Value.Equals(value));
        output.Text(row >= 0 ? words[row].Word : throw output.Refused("there is no such value"));
    }
}

/// <summary>A plain text.</summary>
internal sealed class PlainTextCodec(bool isId) : Codec<string>
{
    internal override string Read(ref JsonIn input) => input.Text("a text in quotation marks");

    internal override void Write(JsonOut output, string value) => output.Text(value);

    internal override void WriteSchema(SchemaOut schema)
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
