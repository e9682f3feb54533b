using System;

namespace BoxHeights.Interop;

/// <summary>The values that were read for one object, each with its place.</summary>
internal readonly struct MemberValues(int count)
{
    private readonly object?[] values = new object?[count];
    private readonly int[] places = new int[count];

    /// <summary>Whether the member stands in the text, with a fault or without.</summary>
    internal bool IsThere(int index) => places[index] > 0;

    /// <summary>The value that was read, or null.</summary>
    internal object? this[int index] => values[index];

    /// <summary>Notes where a member's value begins. Before it stand its name and a brace, so that no place is 0.</summary>
    internal void Begin(int index, int place) => places[index] = place;

    internal void Set(int index, object? value) => values[index] = value;

    /// <summary>The byte at which the value began.</summary>
    internal int Place(int index) => places[index];

    /// <summary>The value of a member that is there.</summary>
    internal TValue Get<TValue>(MemberKey<TValue> key) => (TValue)values[key.Index]!;

    /// <summary>The value of a member, or null.</summary>
    internal TValue? Find<TValue>(MemberKey<TValue> key)
        where TValue : struct => (TValue?)values[key.Index];
}

/// <summary>Names a member among the values read.</summary>
internal struct MemberKey<TValue>
{
    // A field: a property would be compiled for each sort of value.
    internal int Index;
}

/// <summary>One member of a record.</summary>
internal abstract class Member<TRecord>
{
    internal required string Name { get; init; }

    internal required string Doc { get; init; }

    internal required Codec Codec { get; init; }

    internal bool IsRequired { get; init; }

    /// <summary>What goes without saying, and isn't written.</summary>
    internal object? Usual { get; init; }

    /// <summary>The value in a record; null where nothing is stated.</summary>
    internal abstract object? Take(TRecord record);

    /// <summary>The record with the value read, unless it was made with it.</summary>
    internal abstract TRecord Apply(TRecord record, object value);

    /// <summary>Writes name and value, or nothing where nothing is stated.</summary>
    internal void Write(JsonOut output, TRecord record)
    {
        object? value = Take(record);
        if (value is not null && !value.Equals(Usual))
        {
            output.Writer.WritePropertyName(Name);
            Codec.Write(output, value);
        }
    }
}

/// <summary>One member of a record: how its value is taken from it and put into it.</summary>
internal sealed class Member<TRecord, TValue>(Func<TRecord, TValue> get, Func<TRecord, TValue, TRecord>? with) : Member<TRecord>
{
    internal override object? Take(TRecord record) => get(record);

    internal override TRecord Apply(TRecord record, object value) => with is null ? record : with(record, (TValue)value);
}
