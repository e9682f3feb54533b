using System;
using System.Text.Json;

namespace BoxHeights.Interop;

/// <summary>One record as an object: its members declared once, from which reading, writing and schema follow.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class Shape<T>(string name, string doc, Member<T>[] members, Func<MemberValues, T> create) : Codec<T>(name)
{
    /// <summary>A member that names the schema of the document; only the document has it, and nothing is made of it.</summary>
    internal const string SchemaMember = "$schema";

    /// <summary>Whether the object is the document.</summary>
    internal bool IsDocument { get; init; }

    /// <summary>Whether a value can be made again of its members; null where all can.</summary>
    internal Predicate<T>? IsWhole { get; init; }

    internal override void WriteDefinition(SchemaOut schema)
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
            member.Codec.WriteSchema(schema);
            schema.Writer.WriteEndObject();
        }

        schema.Writer.WriteEndObject();
        if (Array.Exists(members, member => member.IsRequired))
        {
            schema.Texts("required", Array.ConvertAll(Array.FindAll(members, member => member.IsRequired), member => member.Name));
        }

        schema.Writer.WriteBoolean("additionalProperties", false);
    }

    internal override object? Read(ref JsonIn input)
    {
        input.Open(JsonTokenType.StartObject, "an object: { … }");
        int start = input.Start;
        int known = input.Faults.Count;
        MemberValues values = new(members.Length);
        bool schemaSeen = false;
        while (input.NextName(out string member))
        {
            JsonMark mark = input.Mark();
            input.Path.Enter(member);
            try
            {
                ReadMember(ref input, member, values, ref schemaSeen);
            }
            catch (BoxHeightsJsonException fault) when (!input.HasEnded)
            {
                input.GoOnAfter(fault, mark);
            }

            input.Path.Leave();
        }

        for (int i = 0; i < members.Length; i++)
        {
            if (members[i].IsRequired && !values.IsThere(i))
            {
                input.Note(input.Fault(start, "the member \"" + members[i].Name + "\" is missing"));
            }
        }

        return input.Faults.Count == known ? Make(ref input, start, values) : null;
    }

    internal override void Write(JsonOut output, object value)
    {
        T record = (T)value;
        if (IsWhole?.Invoke(record) == false)
        {
            throw output.Refused("nothing of it is stated");
        }

        output.Writer.WriteStartObject();
        foreach (Member<T> member in members)
        {
            output.Path.Enter(member.Name);
            member.Write(output, record);
            output.Path.Leave();
        }

        output.Writer.WriteEndObject();
    }

    private void ReadMember(ref JsonIn input, string member, MemberValues values, ref bool schemaSeen)
    {
        int index = IndexOf(member, StringComparison.Ordinal);
        bool isSchema = IsDocument && member == SchemaMember;
        if (index < 0 && !isSchema)
        {
            throw input.Fault("there is no member \"" + JsonLimits.Shown(member) + "\" here; " + Hint(member));
        }

        if (isSchema ? schemaSeen : values.IsThere(index))
        {
            throw input.Fault("the member \"" + member + "\" is here twice");
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
            values.Begin(index, input.Start);
            values.Set(index, members[index].Codec.Read(ref input));
        }
    }

    private object Make(ref JsonIn input, int start, MemberValues values)
    {
        T made;
        try
        {
            made = create(values);
        }
        catch (ArgumentException fault)
        {
            // The records' checks name the argument, which is the member but for its first letter.
            int index = IndexOf(fault.ParamName, StringComparison.OrdinalIgnoreCase);
            throw Refused(ref input, index >= 0 && values.IsThere(index) ? index : -1, start, values, fault);
        }

        for (int i = 0; i < members.Length; i++)
        {
            if (values[i] is { } value)
            {
                try
                {
                    made = members[i].Apply(made, value);
                }
                catch (ArgumentException fault)
                {
                    throw Refused(ref input, i, start, values, fault);
                }
            }
        }

        return made!;
    }

    private int IndexOf(string? member, StringComparison comparison)
    {
        for (int i = 0; i < members.Length; i++)
        {
            if (string.Equals(members[i].Name, member, comparison))
            {
                return i;
            }
        }

        return -1;
    }

    private BoxHeightsJsonException Refused(ref JsonIn input, int index, int start, MemberValues values, ArgumentException fault)
    {
        if (index >= 0)
        {
            input.Path.Enter(members[index].Name);
        }

        return input.Fault(index >= 0 ? values.Place(index) : start, Faults.Reason(fault));
    }

    private string Hint(string member)
    {
        string[] known = Array.ConvertAll(members, other => other.Name);
        string nearest = Spelling.Nearest(member, known, out bool isNear);
        return isNear ? "perhaps \"" + nearest + "\"?" : "known are " + string.Join(", ", known);
    }
}
