using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>Rows that are listed in order and found by key; a changed table is a new one.</summary>
internal sealed class PartTable<TKey, TRow>
    where TKey : notnull
    where TRow : class
{
    private readonly Func<TRow, TKey> keyOf;
    private readonly Dictionary<TKey, TRow> byKey;

    internal PartTable(Func<TRow, TKey> keyOf, IEnumerable<TRow> rows)
    {
        this.keyOf = keyOf;
        Rows = new(rows);
        byKey = new();
        foreach (TRow row in Rows)
        {
            byKey.Add(keyOf(row), row);
        }
    }

    internal Items<TRow> Rows { get; }

    internal bool TryFind(TKey key, [NotNullWhen(true)] out TRow? row) => byKey.TryGetValue(key, out row);

    internal PartTable<TKey, TRow> With(TRow row)
    {
        TKey key = keyOf(row);
        List<TRow> rows = new(Rows.Count + 1);
        foreach (TRow old in Rows)
        {
            rows.Add(keyOf(old).Equals(key) ? row : old);
        }

        if (!byKey.ContainsKey(key))
        {
            rows.Add(row);
        }

        return new(keyOf, rows);
    }
}
