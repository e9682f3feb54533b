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
        key = new() { Index = members.Count };
        members.Add(new Member<TRecord, TValue>(get, null) { Name = name, Doc = doc, Codec = codec, IsRequired = true });
        return this;
    }

    /// <summary>A member that may be left out, and that the record is made with.</summary>
    internal ShapeBuilder<TRecord> Made<TValue>(string name, Func<TRecord, TValue?> get, Codec<TValue> codec, string doc, out MemberKey<TValue> key)
        where TValue : struct
    {
        key = new() { Index = members.Count };
        members.Add(new Member<TRecord, TValue?>(get, null) { Name = name, Doc = doc, Codec = codec });
        return this;
    }

    /// <summary>A member that may be left out: not stated.</summary>
    internal ShapeBuilder<TRecord> Optional<TValue>(
        string name, Func<TRecord, TValue?> get, Func<TRecord, TValue?, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : struct
    {
        members.Add(new Member<TRecord, TValue?>(get, with) { Name = name, Doc = doc, Codec = codec });
        return this;
    }

    /// <summary>A member that may be left out: not stated.</summary>
    internal ShapeBuilder<TRecord> Optional<TValue>(
        string name, Func<TRecord, TValue?> get, Func<TRecord, TValue?, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : class
    {
        members.Add(new Member<TRecord, TValue?>(get, with) { Name = name, Doc = doc, Codec = codec });
        return this;
    }

    /// <summary>A text that may be left out: the empty one.</summary>
    internal ShapeBuilder<TRecord> Words(string name, Func<TRecord, string> get, Func<TRecord, string, TRecord> with, string doc)
    {
        members.Add(new Member<TRecord, string>(get, with) { Name = name, Doc = doc, Codec = Texts.Plain, Usual = "" });
        return this;
    }

    /// <summary>A member that may be left out: a value that goes without saying.</summary>
    internal ShapeBuilder<TRecord> Usual<TValue>(
        string name, TValue usual, Func<TRecord, TValue> get, Func<TRecord, TValue, TRecord> with, Codec<TValue> codec, string doc)
        where TValue : struct
    {
        members.Add(new Member<TRecord, TValue>(get, with) { Name = name, Doc = doc, Codec = codec, Usual = usual });
        return this;
    }

    /// <summary>A member that may be left out: the empty list.</summary>
    internal ShapeBuilder<TRecord> List<TItem>(
        string name, Func<TRecord, Items<TItem>> get, Func<TRecord, Items<TItem>, TRecord> with, Codec<TItem> item, string doc)
    {
        members.Add(new Member<TRecord, Items<TItem>>(get, with) { Name = name, Doc = doc, Codec = new ListCodec<TItem>(item), Usual = Items<TItem>.None });
        return this;
    }

    /// <summary>The shape, given how a record is made of the values read.</summary>
    internal Shape<TRecord> Build(Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create);

    /// <summary>The shape of the document itself.</summary>
    internal Shape<TRecord> BuildDocument(Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create) { IsDocument = true };

    /// <summary>The shape of a value that may be <c>default</c> and then can't be made again of its members.</summary>
    internal Shape<TRecord> BuildWhole(Predicate<TRecord> isWhole, Func<MemberValues, TRecord> create) => new(name, doc, members.ToArray(), create) { IsWhole = isWhole };
}
