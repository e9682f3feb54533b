using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>Rows that are listed in order and found by the name of their kind and, where they have them, gangs; a changed table is a new one.</summary>
/// <remarks>Keys are texts: a dictionary by a struct of ours would have to be compiled anew in every process, which costs more than all its look-ups.</remarks>
internal sealed class PartTable<TRow>
    where TRow : class
{
    private readonly Func<TRow, string> nameOf;
    private readonly Func<TRow, int>? gangsOf;
    private readonly Dictionary<string, List<TRow>> byName = new(StringComparer.Ordinal);

    internal PartTable(Func<TRow, string> nameOf, Func<TRow, int>? gangsOf, IEnumerable<TRow> rows)
    {
        this.nameOf = nameOf;
        this.gangsOf = gangsOf;
        Rows = new(rows);
        foreach (TRow row in Rows)
        {
            byName.ListOf(nameOf(row)).Add(row);
        }
    }

    internal Items<TRow> Rows { get; }

    internal bool TryFind(string name, int gangs, [NotNullWhen(true)] out TRow? row)
    {
        row = null;
        if (byName.TryGetValue(name, out List<TRow>? all))
        {
            foreach (TRow one in all)
            {
                row = row is null && GangsOf(one) == gangs ? one : row;
            }
        }

        return row is not null;
    }

    internal bool TryFind(string name, [NotNullWhen(true)] out TRow? row) => TryFind(name, 0, out row);

    internal PartTable<TRow> With(TRow row)
    {
        bool isThere = TryFind(nameOf(row), GangsOf(row), out TRow? there);
        List<TRow> rows = new(Rows.Count + 1);
        foreach (TRow old in Rows)
        {
            rows.Add(ReferenceEquals(old, there) ? row : old);
        }

        if (!isThere)
        {
            rows.Add(row);
        }

        return new(nameOf, gangsOf, rows);
    }

    private int GangsOf(TRow row) => gangsOf?.Invoke(row) ?? 0;
}
