using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Joins the names of kinds that a row speaks of.</summary>
internal static class KindNames
{
    public static Items<string> Joined(params Items<string>[] lists)
    {
        List<string> all = [];
        foreach (Items<string> list in lists)
        {
            all.AddRange(list);
        }

        return new(all);
    }
}
