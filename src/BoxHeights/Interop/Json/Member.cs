using System;

namespace BoxHeights.Interop;

/// <summary>The values that were read for one object, each with its place.</summary>
internal readonly struct MemberValues(int count)
{
    private readonly object?[] values = new object?[count];
    private readonly int[] places = new int[count];

    internal bool Has(int index) => values[index] is not null;

    internal void Set(int index, object value, int place)
    {
        values[index] = value;
        places[index] = place;
    }

    /// <summary>The byte at which the value began.</summary>
    internal int Place(int index) => places[index];

    /// <summary>The value of a member that is there.</summary>
    internal TValue Get<TValue>(MemberKey<TValue> key) => (TValue)values[key.Index]!;

    /// <summary>The value of a member, or null.</summary>
    internal TValue? Find<TValue>(MemberKey<TValue> key)
        where TValue : struct => (TValue?)values[key.Index];
}

/// <summary>Names a member among the values read.</summary>
internal readonly record struct MemberKey<TValue>(int Index);

/// <summary>One member of a record.</summary>
internal abstract class Member<TRecord>(int index, string name, string doc, bool isRequired)
{
    internal int Index { get; } = index;

    internal string Name { get; } = name;

    internal string Doc { get; } = doc;

    internal bool IsRequired { get; } = isRequired;

    internal abstract object Read(ref JsonIn input);

    /// <summary>The record with the value read, unless it was made with it.</summary>
    internal abstract TRecord Apply(TRecord record, MemberValues values);

    /// <summary>Writes name and value, or nothing where nothing is stated.</summary>
    internal abstract void Write(JsonOut output, TRecord record);

    internal abstract void WriteSchema(SchemaOut schema);
}

/// <summary>Takes a value from a record; false where it isn't to be written.</summary>
internal delegate bool TakeValue<in TRecord, TValue>(TRecord record, out TValue value);

/// <summary>One member of a record, whose value has a codec.</summary>
internal sealed class Member<TRecord, TValue>(
    int index, string name, string doc, bool isRequired, Codec<TValue> codec, TakeValue<TRecord, TValue> take, Func<TRecord, TValue, TRecord>? with)
    : Member<TRecord>(index, name, doc, isRequired)
{
    internal override object Read(ref JsonIn input) => codec.Read(ref input)!;

    internal override TRecord Apply(TRecord record, MemberValues values) =>
        with is null ? record : with(record, values.Get(new MemberKey<TValue>(Index)));

    internal override void Write(JsonOut output, TRecord record)
    {
        if (take(record, out TValue value))
        {
            output.Writer.WritePropertyName(Name);
            codec.Write(output, value);
        }
    }

    internal override void WriteSchema(SchemaOut schema) => codec.WriteSchema(schema);
}
