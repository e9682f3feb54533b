using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>Rows that are listed in order and found by key; a changed table is a new one.</summary>
/// <remarks>Keys are texts: a dictionary by a struct of ours would have to be compiled anew in every process, which costs more than all its look-ups.</remarks>
internal sealed class PartTable<TRow>
    where TRow : class
{
    private readonly Func<TRow, string> keyOf;
    private readonly Dictionary<string, TRow> byKey;

    internal PartTable(Func<TRow, string> keyOf, IEnumerable<TRow> rows)
    {
        this.keyOf = keyOf;
        Rows = new(rows);
        byKey = new(StringComparer.Ordinal);
        foreach (TRow row in Rows)
        {
            byKey.Add(keyOf(row), row);
        }
    }

    internal Items<TRow> Rows { get; }

    internal bool TryFind(string key, [NotNullWhen(true)] out TRow? row) => byKey.TryGetValue(key, out row);

    internal PartTable<TRow> With(TRow row)
    {
        string key = keyOf(row);
        List<TRow> rows = new(Rows.Count + 1);
        foreach (TRow old in Rows)
        {
            rows.Add(keyOf(old) == key ? row : old);
        }

        if (!byKey.ContainsKey(key))
        {
            rows.Add(row);
        }

        return new(keyOf, rows);
    }
}
