using System.Collections.Generic;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>What a schema describes once, under <c>$defs</c>.</summary>
internal interface ISchemaDefinition
{
    /// <summary>The name under <c>$defs</c>.</summary>
    string Name { get; }

    /// <summary>Writes the description, into an object that is open.</summary>
    void WriteDefinition(SchemaOut schema);
}

/// <summary>Writes a JSON Schema (draft 2020-12) from the same declarations that read and write.</summary>
internal sealed class SchemaOut(Utf8JsonWriter writer)
{
    private readonly HashSet<string> named = [];
    private readonly Queue<ISchemaDefinition> waiting = new();

    internal Utf8JsonWriter Writer { get; } = writer;

    /// <summary>Writes the whole schema.</summary>
    internal void WriteAll(ISchemaDefinition root)
    {
        Writer.WriteStartObject();
        Writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        Writer.WriteString("title", root.Name);
        root.WriteDefinition(this);
        Writer.WriteStartObject("$defs");
        while (waiting.TryDequeue(out ISchemaDefinition? definition))
        {
            Writer.WriteStartObject(definition.Name);
            definition.WriteDefinition(this);
            Writer.WriteEndObject();
        }

        Writer.WriteEndObject();
        Writer.WriteEndObject();
    }

    /// <summary>Refers to a description, which is written later, once.</summary>
    internal void Refer(ISchemaDefinition definition)
    {
        Writer.WriteString("$ref", "#/$defs/" + definition.Name);
        if (named.Add(definition.Name))
        {
            waiting.Enqueue(definition);
        }
    }

    /// <summary>Writes what a value is, given as within a sentence.</summary>
    internal void Describe(string what) => Writer.WriteString("description", char.ToUpperInvariant(what[0]) + what[1..] + ".");

    /// <summary>Says that a value is of one sort or another.</summary>
    internal void Either<T, TOther>(Codec<T> one, Codec<TOther> other)
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
}
