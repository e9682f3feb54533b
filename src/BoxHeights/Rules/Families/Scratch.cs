using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What forms work with, used again for each site: hundreds are stated one after the other, each with hardly anything in its lists.</summary>
internal sealed class Scratch
{
    private readonly List<object> kept = [];

    /// <summary>The one of a kind, as whoever used it last left it.</summary>
    public T Of<T>()
        where T : class, new()
    {
        foreach (object one in kept)
        {
            if (one is T known)
            {
                return known;
            }
        }

        T made = new();
        kept.Add(made);
        return made;
    }
}
