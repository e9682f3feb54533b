using System;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>One record as an object: its members declared once, from which reading, writing and schema follow.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class Shape<T>(string name, string doc, Member<T>[] members, Func<MemberValues, T> create) : NamedCodec<T>(name)
{
    /// <summary>A member that names the schema of the document; only the document has it, and nothing is made of it.</summary>
    internal const string SchemaMember = "$schema";

    /// <summary>Whether the object is the document.</summary>
    internal bool IsDocument { get; init; }

    /// <summary>Whether a value can be made again of its members; all can unless stated.</summary>
    internal Predicate<T> IsWhole { get; init; } = static _ => true;

    /// <inheritdoc/>
    public override void WriteDefinition(SchemaOut schema)
    {
        schema.Writer.WriteString("description", doc);
        schema.Writer.WriteString("type", "object");
        schema.Writer.WriteStartObject("properties");
        if (IsDocument)
        {
            schema.Writer.WriteStartObject(SchemaMember);
            schema.Writer.WriteString("type", "string");
            schema.Writer.WriteEndObject();
        }

        foreach (Member<T> member in members)
        {
            schema.Writer.WriteStartObject(member.Name);
            schema.Writer.WriteString("description", member.Doc);
            member.WriteSchema(schema);
            schema.Writer.WriteEndObject();
        }

        schema.Writer.WriteEndObject();
        if (Array.Exists(members, member => member.IsRequired))
        {
            schema.Texts("required", Array.ConvertAll(Array.FindAll(members, member => member.IsRequired), member => member.Name));
        }

        schema.Writer.WriteBoolean("additionalProperties", false);
    }

    internal override T Read(ref JsonIn input)
    {
        input.Open(JsonTokenType.StartObject, "an object: { … }");
        int start = input.Start;
        MemberValues values = new(members.Length);
        bool schemaSeen = false;
        while (input.NextName(out string name))
        {
            input.Path.Enter(name);
            int index = Array.FindIndex(members, member => member.Name == name);
            bool isSchema = IsDocument && name == SchemaMember;
            if (index < 0 && !isSchema)
            {
                throw input.Fault("there is no member \"" + JsonLimits.Shown(name) + "\" here; " + Hint(name));
            }

            if (isSchema ? schemaSeen : values.Has(index))
            {
                throw input.Fault("the member \"" + name + "\" is here twice");
            }

            input.Next();
            if (isSchema)
            {
                schemaSeen = true;
                _ = input.Text("the address of a schema");
            }
            else
            {
                // The place first: reading moves on to the value's end.
                int at = input.Start;
                values.Set(index, members[index].Read(ref input), at);
            }

            input.Path.Leave();
        }

        foreach (Member<T> member in members)
        {
            if (member.IsRequired && !values.Has(member.Index))
            {
                throw input.Fault(start, "the member \"" + member.Name + "\" is missing");
            }
        }

        return Make(ref input, start, values);
    }

    internal override void Write(JsonOut output, T value)
    {
        if (!IsWhole(value))
        {
            throw output.Refused("nothing of it is stated");
        }

        output.Writer.WriteStartObject();
        foreach (Member<T> member in members)
        {
            output.Path.Enter(member.Name);
            member.Write(output, value);
            output.Path.Leave();
        }

        output.Writer.WriteEndObject();
    }

    private T Make(ref JsonIn input, int start, MemberValues values)
    {
        T made;
        try
        {
            made = create(values);
        }
        catch (ArgumentException fault)
        {
            // The records' checks name the argument, which is the member but for its first letter.
            int index = Array.FindIndex(members, member => string.Equals(member.Name, fault.ParamName, StringComparison.OrdinalIgnoreCase));
            throw Refused(ref input, index >= 0 && values.Has(index) ? index : -1, start, values, fault);
        }

        foreach (Member<T> member in members)
        {
            if (values.Has(member.Index))
            {
                try
                {
                    made = member.Apply(made, values);
                }
                catch (ArgumentException fault)
                {
                    throw Refused(ref input, member.Index, start, values, fault);
                }
            }
        }

        return made;
    }

    private BoxHeightsJsonException Refused(ref JsonIn input, int index, int start, MemberValues values, ArgumentException fault)
    {
        if (index >= 0)
        {
            input.Path.Enter(members[index].Name);
        }

        return input.Fault(index >= 0 ? values.Place(index) : start, Faults.Reason(fault));
    }

    private string Hint(string name)
    {
        string[] known = Array.ConvertAll(members, member => member.Name);
        string nearest = Spelling.Nearest(name, known, out bool isNear);
        return isNear ? "perhaps \"" + nearest + "\"?" : "known are " + string.Join(", ", known);
    }
}
