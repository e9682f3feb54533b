using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>How records at random are put together.</summary>
internal static class RandomParts
{
    public static Gen<int> Counts { get; } = Gen.OneOf(Gen.Choose(1, 20), Gen.Constant(int.MaxValue));

    /// <summary>Records with one member more chosen at random.</summary>
    public static Gen<T> With<T, TValue>(this Gen<T> records, Func<T, TValue, T> with, Gen<TValue> values) =>
        from record in records from value in values select with(record, value);

    /// <summary>Stated or not.</summary>
    public static Gen<T?> Maybe<T>(Gen<T> values)
        where T : struct => Gen.OneOf(Gen.Constant<T?>(null), values.Select(value => (T?)value));

    /// <summary>Stated or not.</summary>
    public static Gen<T?> Perhaps<T>(Gen<T> values)
        where T : class => Gen.OneOf(Gen.Constant<T?>(null), values.Select(value => (T?)value));

    /// <summary>None or a few.</summary>
    public static Gen<Items<T>> Few<T>(Gen<T> values, int most = 2) =>
        from count in Gen.Choose(0, most) from items in Gen.ArrayOf(values, count) select (Items<T>)items;

    public static Gen<T> OneOf<T>()
        where T : struct, Enum => Gen.Elements(Enum.GetValues<T>());

    public static Gen<T> Kind<T>(Func<string, T> kind) => Gen.Elements("door", "sink-base", "kind-2", "a-b-c").Select(kind);

    /// <summary>A text of one to six of the parts, not blank.</summary>
    public static Gen<string> Words(string[] parts) =>
        (from count in Gen.Choose(1, 6) from some in Gen.ArrayOf(Gen.Elements(parts), count) select string.Concat(some))
        .Where(text => !string.IsNullOrWhiteSpace(text));

    /// <summary>The lists that lack one of the items.</summary>
    public static IEnumerable<Items<T>> Without<T>(this Items<T> items) =>
        Enumerable.Range(0, items.Count).Select(left => new Items<T>(items.Where((_, i) => i != left)));

    /// <summary>The lists in which one of the items is smaller.</summary>
    public static IEnumerable<Items<T>> Smaller<T>(this Items<T> items, Func<T, IEnumerable<T>> smaller) =>
        Enumerable.Range(0, items.Count).SelectMany(at => smaller(items[at]).Select(item => new Items<T>(items.Select((old, i) => i == at ? item : old).AsEnumerable())));
}
