using System;
using System.Collections.Generic;

namespace BoxHeights.Interop;

/// <summary>Declares the members of a record, in the order in which they are written.</summary>
internal sealed class ShapeBuilder<TRecord>(string name, string doc)
{
    private readonly List<Member<TRecord>> members = [];

    /// <summary>A member that the record can't be made without.</summary>
    internal ShapeBuilder<TRecord> Required<TValue>(string name, Func<TRecord, TValue> get, Codec<TValue> codec, string doc, out MemberKey<TValue> key)
    {
        key = new(members.Count);
        return Add(name, doc, true, codec, Always(get), null);
    }

    /// <summary>A member that may be left out, and that the record is made with.</summary>
    internal ShapeBuilder<TRecord> Made<TValue>(string name, Func<TRecord, TValue?> get, Codec<TValue> codec, string doc, out MemberKey<TValue> key)
        where TValue : struct
    {
        key = new(members.Count);
        return Add(name, doc, false, codec, IfStated(get), null);
    }

    /// <summary>A member that may be left out: not stated.</summary>
    internal ShapeBuilder<TRecord> Optional<TValue>(
        string name, Func<TRecord, TValue?> get, Func<TRecord, TValue?, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : struct =>
        Add(name, doc, false, codec, IfStated(get), (record, value) => with(record, value));

    /// <summary>A member that may be left out: not stated.</summary>
    internal ShapeBuilder<TRecord> Optional<TValue>(
        string name, Func<TRecord, TValue?> get, Func<TRecord, TValue?, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : class =>
        Add(name, doc, false, codec, IfThere(get), with);

    /// <summary>A member that may be left out: a value that goes without saying.</summary>
    internal ShapeBuilder<TRecord> Usual<TValue>(
        string name, TValue usual, Func<TRecord, TValue> get, Func<TRecord, TValue, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : struct =>
        Add(name, doc, false, codec, Unless(get, usual), with);

    /// <summary>A member that may be left out: the empty list.</summary>
    internal ShapeBuilder<TRecord> List<TItem>(
        string name, Func<TRecord, Items<TItem>> get, Func<TRecord, Items<TItem>, TRecord> with, Codec<TItem> item, string doc) =>
        Add(name, doc, false, new ListCodec<TItem>(item), Unless(get, Items<TItem>.None), with);

    /// <summary>The shape, given how a record is made of the values read.</summary>
    internal Shape<TRecord> Build(Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create);

    /// <summary>The shape of the document itself.</summary>
    internal Shape<TRecord> BuildDocument(Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create) { IsDocument = true };

    /// <summary>The shape of a value that may be <c>default</c> and then can't be made again of its members.</summary>
    internal Shape<TRecord> BuildWhole(Predicate<TRecord> isWhole, Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create) { IsWhole = isWhole };

    private static TakeValue<TRecord, TValue> Always<TValue>(Func<TRecord, TValue> get) => (TRecord record, out TValue value) =>
    {
        value = get(record);
        return true;
    };

    private static TakeValue<TRecord, TValue> IfStated<TValue>(Func<TRecord, TValue?> get)
        where TValue : struct => (TRecord record, out TValue value) =>
    {
        TValue? stated = get(record);
        value = stated.GetValueOrDefault();
        return stated is not null;
    };

    private static TakeValue<TRecord, TValue> IfThere<TValue>(Func<TRecord, TValue?> get)
        where TValue : class => (TRecord record, out TValue value) =>
    {
        TValue? stated = get(record);
        value = stated!;
        return stated is not null;
    };

    private static TakeValue<TRecord, TValue> Unless<TValue>(Func<TRecord, TValue> get, TValue usual)
        where TValue : struct => (TRecord record, out TValue value) =>
    {
        value = get(record);
        return !value.Equals(usual);
    };

    private ShapeBuilder<TRecord> Add<TValue>(
        string name, string doc, bool isRequired, Codec<TValue> codec, TakeValue<TRecord, TValue> take, Func<TRecord, TValue, TRecord>? with)
    {
        members.Add(new Member<TRecord, TValue>(members.Count, name, doc, isRequired, codec, take, with));
        return this;
    }
}
