using System.Collections.Generic;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>How one sort of value is read, written and described: the three in one place, so that they agree.</summary>
/// <typeparam name="T">The sort of value.</typeparam>
internal abstract class Codec<T>
{
    /// <summary>Reads the value whose first token is at hand, and leaves its last token at hand.</summary>
    internal abstract T Read(ref JsonIn input);

    /// <summary>Writes the value.</summary>
    internal abstract void Write(JsonOut output, T value);

    /// <summary>Writes what a schema says of it, into an object that is open.</summary>
    internal abstract void WriteSchema(SchemaOut schema);
}

/// <summary>A codec that a schema describes once, under a name.</summary>
internal abstract class NamedCodec<T>(string name) : Codec<T>, ISchemaDefinition
{
    /// <inheritdoc/>
    public string Name { get; } = name;

    /// <inheritdoc/>
    public abstract void WriteDefinition(SchemaOut schema);

    internal sealed override void WriteSchema(SchemaOut schema) => schema.Refer(this);
}

/// <summary>A count, the only number that is written as one.</summary>
internal sealed class CountCodec : Codec<int>
{
    internal override int Read(ref JsonIn input) => input.WholeNumber();

    internal override void Write(JsonOut output, int value) => output.Writer.WriteNumberValue(value);

    internal override void WriteSchema(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "integer");
        schema.Writer.WriteNumber("minimum", 1);
        schema.Writer.WriteNumber("maximum", int.MaxValue);
    }
}

/// <summary>True or false.</summary>
internal sealed class TruthCodec : Codec<bool>
{
    internal override bool Read(ref JsonIn input) => input.Truth();

    internal override void Write(JsonOut output, bool value) => output.Writer.WriteBooleanValue(value);

    internal override void WriteSchema(SchemaOut schema) => schema.Writer.WriteString("type", "boolean");
}

/// <summary>A list of values of one sort.</summary>
internal sealed class ListCodec<T>(Codec<T> item) : Codec<Items<T>>
{
    internal override Items<T> Read(ref JsonIn input)
    {
        input.Open(JsonTokenType.StartArray, "a list: [ … ]");
        List<T> items = [];
        while (input.Next() && input.Token != JsonTokenType.EndArray)
        {
            input.Path.Enter(items.Count);
            if (items.Count == JsonLimits.Items)
            {
                throw input.Fault(JsonLimits.TooManyItems);
            }

            items.Add(item.Read(ref input));
            input.Path.Leave();
        }

        return new(items);
    }

    internal override void Write(JsonOut output, Items<T> value)
    {
        if (value.Count > JsonLimits.Items)
        {
            throw output.Refused(JsonLimits.TooManyItems);
        }

        output.Writer.WriteStartArray();
        for (int i = 0; i < value.Count; i++)
        {
            output.Path.Enter(i);
            item.Write(output, value[i]);
            output.Path.Leave();
        }

        output.Writer.WriteEndArray();
    }

    internal override void WriteSchema(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "array");
        schema.Writer.WriteNumber("maxItems", JsonLimits.Items);
        schema.Writer.WriteStartObject("items");
        item.WriteSchema(schema);
        schema.Writer.WriteEndObject();
    }
}
