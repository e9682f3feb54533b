using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>Distances that may not be known exactly.</summary>
internal static class Ranges
{
    internal static Codec<DistanceRange> Distance { get; } = new RangeCodec();

    internal static Codec<DistanceRange> OrNone { get; } = new OrNoneCodec<DistanceRange>(Distance);

    private static Shape<DistanceRange> Ends { get; } = new ShapeBuilder<DistanceRange>("distanceEnds", "A distance that isn't known exactly, by its ends.")
        .Required("from", x => x.From, Texts.Distance, "The least that it can be.", out MemberKey<Distance> from)
        .Required("to", x => x.To, Texts.Distance, "The most that it can be.", out MemberKey<Distance> to)
        .Build(v => new(v.Get(from), v.Get(to)));

    private sealed class RangeCodec() : Codec<DistanceRange>("distanceRange")
    {
        internal override void WriteDefinition(SchemaOut schema)
        {
            schema.Writer.WriteString("description", "A distance, or its two ends where it isn't known exactly.");
            schema.Either(Texts.Distance, Ends);
        }

        internal override object? Read(ref JsonIn input) => input.Token switch
        {
            JsonTokenType.StartObject => Ends.Read(ref input),
            JsonTokenType.String => DistanceRange.Exactly((Distance)Texts.Distance.Read(ref input)!),
            _ => throw input.Expected("a distance such as \"3/8 in\" or a range such as { \"from\": \"0 in\", \"to\": \"1-1/4 in\" }"),
        };

        internal override void Write(JsonOut output, object value)
        {
            DistanceRange range = (DistanceRange)value;
            if (range.IsExact)
            {
                Texts.Distance.Write(output, range.From);
            }
            else
            {
                Ends.Write(output, value);
            }
        }
    }
}

/// <summary>A distance whose zero is called "none".</summary>
internal sealed class OrNoneCodec<T>(Codec<T> stated) : Codec<T>(null)
    where T : struct
{
    private const string None = "none";

    internal override object? Read(ref JsonIn input) =>
        input.Token == JsonTokenType.String && input.Text(None) == None ? (object)default(T) : stated.Read(ref input);

    internal override void Write(JsonOut output, object value)
    {
        if (value.Equals(default(T)))
        {
            output.Text(None);
        }
        else
        {
            stated.Write(output, value);
        }
    }

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteStartArray("anyOf");
        schema.Writer.WriteStartObject();
        schema.Writer.WriteString("const", None);
        schema.Writer.WriteEndObject();
        schema.Writer.WriteStartObject();
        stated.WriteSchema(schema);
        schema.Writer.WriteEndObject();
        schema.Writer.WriteEndArray();
    }
}
