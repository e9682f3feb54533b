using System.Collections.Generic;
using System.Text;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>Writes a JSON Schema (draft 2020-12) from the same declarations that read and write.</summary>
internal sealed class SchemaOut(Utf8JsonWriter writer)
{
    private readonly HashSet<string> named = [];
    private readonly Queue<Codec> waiting = new();

    internal Utf8JsonWriter Writer { get; } = writer;

    /// <summary>Writes the whole schema.</summary>
    internal void WriteAll(Codec root)
    {
        Writer.WriteStartObject();
        Writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        Writer.WriteString("$id", "urn:boxheights:schema:" + root.Name);
        Title(root.Name!);
        root.WriteDefinition(this);
        Writer.WriteStartObject("$defs");
        while (waiting.TryDequeue(out Codec? definition))
        {
            Writer.WriteStartObject(definition.Name!);
            Title(definition.Name!);
            definition.WriteDefinition(this);
            Writer.WriteEndObject();
        }

        Writer.WriteEndObject();
        Writer.WriteEndObject();
    }

    /// <summary>Refers to a description, which is written later, once.</summary>
    internal void Refer(Codec definition, string name)
    {
        Writer.WriteString("$ref", "#/$defs/" + name);
        if (named.Add(name))
        {
            waiting.Enqueue(definition);
        }
    }

    /// <summary>Writes what a value is, given as within a sentence.</summary>
    internal void Describe(string what, string note = "") =>
        Writer.WriteString("description", char.ToUpperInvariant(what[0]) + what[1..] + (note.Length > 0 ? ": " + note : "") + ".");

    /// <summary>Says that a value is of one sort or another.</summary>
    internal void Either(Codec one, Codec other)
    {
        Writer.WriteStartArray("anyOf");
        Writer.WriteStartObject();
        one.WriteSchema(this);
        Writer.WriteEndObject();
        Writer.WriteStartObject();
        other.WriteSchema(this);
        Writer.WriteEndObject();
        Writer.WriteEndArray();
    }

    /// <summary>Writes a list of texts.</summary>
    internal void Texts(string name, IEnumerable<string> texts)
    {
        Writer.WriteStartArray(name);
        foreach (string text in texts)
        {
            Writer.WriteStringValue(text);
        }

        Writer.WriteEndArray();
    }

    // "outsideFace" is titled "Outside face".
    private void Title(string name)
    {
        StringBuilder title = new();
        foreach (char c in name)
        {
            title.Append(title.Length > 0 && char.IsAsciiLetterUpper(c) ? " " : "").Append(title.Length == 0 ? char.ToUpperInvariant(c) : char.ToLowerInvariant(c));
        }

        Writer.WriteString("title", title.ToString());
    }
}
