using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Lists that are kept under keys.</summary>
internal static class ListTable
{
    /// <summary>The list under a key; a new one where there was none.</summary>
    public static List<TItem> ListOf<TKey, TItem>(this Dictionary<TKey, List<TItem>> lists, TKey key)
        where TKey : notnull
    {
        if (!lists.TryGetValue(key, out List<TItem>? list))
        {
            lists[key] = list = [];
        }

        return list;
    }
}
