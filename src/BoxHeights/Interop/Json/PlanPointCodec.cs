using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>A point in plan: <c>[ right, into ]</c>.</summary>
internal sealed class PlanPointCodec() : Codec<PlanPoint>("planPoint")
{
    private const string Expected = "a point such as [ \"7 ft\", \"5 ft 9 in\" ]: to the right, and into the room";

    internal static PlanPointCodec Instance { get; } = new();

    internal override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteString("description", "A point in plan: to the right along the room's first wall, and into the room.");
        schema.Writer.WriteString("type", "array");
        schema.Writer.WriteStartObject("items");
        Texts.Distance.WriteSchema(schema);
        schema.Writer.WriteEndObject();
        schema.Writer.WriteNumber("minItems", 2);
        schema.Writer.WriteNumber("maxItems", 2);
    }

    internal override object Read(ref JsonIn input)
    {
        input.Open(JsonTokenType.StartArray, Expected);
        Distance right = ReadPart(ref input, 0);
        Distance into = ReadPart(ref input, 1);
        input.Next();
        return input.Token == JsonTokenType.EndArray ? new PlanPoint(right, into) : throw input.Fault("a point has two distances, and this is a third");
    }

    internal override void Write(JsonOut output, object value)
    {
        PlanPoint point = (PlanPoint)value;
        output.Writer.WriteStartArray();
        Texts.Distance.Write(output, point.Right);
        Texts.Distance.Write(output, point.Into);
        output.Writer.WriteEndArray();
    }

    private static Distance ReadPart(ref JsonIn input, int index)
    {
        input.Next();
        if (input.Token == JsonTokenType.EndArray)
        {
            throw input.Fault("expected " + Expected + "; a distance is missing");
        }

        input.Path.Enter(index);
        Distance part = (Distance)Texts.Distance.Read(ref input)!;
        input.Path.Leave();
        return part;
    }
}
