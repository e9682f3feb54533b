using System.Collections.Generic;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>How one sort of value is read, written and described: the three in one place, so that they agree.</summary>
/// <remarks>Values pass as objects. Code for each sort of value, and for each pair of a record and a value, would be compiled once for each of them:
/// that was half of what a first reading took.</remarks>
/// <param name="name">The name under which a schema describes it once; null where it is described at each place.</param>
internal abstract class Codec(string? name)
{
    /// <summary>The name under <c>$defs</c>.</summary>
    internal string? Name { get; } = name;

    /// <summary>Reads the value whose first token is at hand, and leaves its last token at hand; null where faults within it have been noted.</summary>
    internal abstract object? Read(ref JsonIn input);

    /// <summary>Writes the value.</summary>
    internal abstract void Write(JsonOut output, object value);

    /// <summary>Writes what a schema says of it, into an object that is open.</summary>
    internal abstract void WriteDefinition(SchemaOut schema);

    /// <summary>Writes its description, or where that stands.</summary>
    internal void WriteSchema(SchemaOut schema)
    {
        if (Name is null)
        {
            WriteDefinition(schema);
        }
        else
        {
            schema.Refer(this, Name);
        }
    }
}

/// <summary>A codec whose sort of value the compiler knows, so that no member is declared with another's.</summary>
/// <typeparam name="T">The sort of value.</typeparam>
internal abstract class Codec<T>(string? name) : Codec(name);

/// <summary>A count, the only number that is written as one.</summary>
internal sealed class CountCodec() : Codec<int>(null)
{
    internal override object Read(ref JsonIn input) => input.WholeNumber();

    internal override void Write(JsonOut output, object value) => output.Writer.WriteNumberValue((int)value);

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "integer");
        schema.Writer.WriteNumber("minimum", 1);
        schema.Writer.WriteNumber("maximum", int.MaxValue);
    }
}

/// <summary>True or false.</summary>
internal sealed class TruthCodec() : Codec<bool>(null)
{
    internal override object Read(ref JsonIn input) => input.Truth();

    internal override void Write(JsonOut output, object value) => output.Writer.WriteBooleanValue((bool)value);

    internal override void WriteDefinition(SchemaOut schema) => schema.Writer.WriteString("type", "boolean");
}

/// <summary>A list of values of one sort.</summary>
internal sealed class ListCodec<T>(Codec<T> item) : Codec<Items<T>>(null)
{
    internal override object? Read(ref JsonIn input) => ListReading.Read(ref input, item) is { } read ? Of(read) : null;

    internal override void Write(JsonOut output, object value)
    {
        Items<T> items = (Items<T>)value;
        if (items.Count > JsonLimits.Items)
        {
            throw output.Refused(JsonLimits.TooManyItems);
        }

        output.Writer.WriteStartArray();
        for (int i = 0; i < items.Count; i++)
        {
            output.Path.Enter(i);
            item.Write(output, items[i]!);
            output.Path.Leave();
        }

        output.Writer.WriteEndArray();
    }

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteString("type", "array");
        schema.Writer.WriteNumber("maxItems", JsonLimits.Items);
        schema.Writer.WriteStartObject("items");
        item.WriteSchema(schema);
        schema.Writer.WriteEndObject();
    }

    private static Items<T> Of(List<object> read)
    {
        T[] items = new T[read.Count];
        for (int i = 0; i < items.Length; i++)
        {
            items[i] = (T)read[i];
        }

        return Items<T>.Own(items);
    }
}

/// <summary>What reading a list is, whatever its items are.</summary>
internal static class ListReading
{
    /// <summary>The items; null where faults within them have been noted.</summary>
    internal static List<object>? Read(ref JsonIn input, Codec item)
    {
        input.Open(JsonTokenType.StartArray, "a list: [ … ]");
        int known = input.Faults.Count;
        List<object> items = [];
        for (int at = 0; input.Next() && input.Token != JsonTokenType.EndArray; at++)
        {
            JsonMark mark = input.Mark();
            input.Path.Enter(at);
            if (at == JsonLimits.Items)
            {
                throw input.Fault(JsonLimits.TooManyItems);
            }

            try
            {
                if (item.Read(ref input) is { } read)
                {
                    items.Add(read);
                }
            }
            catch (BoxHeightsJsonException fault) when (!input.HasEnded)
            {
                input.GoOnAfter(fault, mark);
            }

            input.Path.Leave();
        }

        return input.Faults.Count == known ? items : null;
    }
}
