using System;

namespace BoxHeights;

/// <summary>The words for the edge that a height is measured to.</summary>
internal static class EdgeText
{
    private const string Unstated = "(edge unstated)";

    // The first of each row is printed.
    private static readonly (Edge? Edge, string[] Phrases)[] Words =
    [
        (Edge.Bottom, ["to bottom", "to the bottom", "bottom", "to bottom of box", "to the bottom of the box", "bottom of box", "bottom of the box", "b.o.b.", "b.o.b", "bob"]),
        (Edge.Center,
        [
            "to center", "to the center", "to centre", "to the centre", "center", "centre", "to center of box", "to the center of the box", "center of box",
            "center of the box", "to center line", "to centerline", "center line", "centerline", "on center", "on centre", "o.c.", "o.c", "oc", "c/l", "c.l.", "cl",
        ]),
        (Edge.Top, ["to top", "to the top", "top", "to top of box", "to the top of the box", "top of box", "top of the box", "t.o.b.", "t.o.b", "tob"]),
        (null, [Unstated, "edge unstated"]),
    ];

    internal static Edge Check(Edge edge, string name) =>
        edge is Edge.Bottom or Edge.Center or Edge.Top ? edge : throw new ArgumentOutOfRangeException(name, edge, "There is no such edge.");

    internal static string Print(Edge? edge)
    {
        foreach ((Edge? candidate, string[] phrases) in Words)
        {
            if (candidate == edge)
            {
                return phrases[0];
            }
        }

        return Unstated;
    }

    /// <summary>Reads the words for an edge, or those that say none is stated (null).</summary>
    internal static bool TryRead(string text, ref int index, out Edge? edge)
    {
        edge = null;
        int end = index;
        foreach ((Edge? candidate, string[] phrases) in Words)
        {
            int at = index;
            if (Phrase.ReadLongest(phrases, text, ref at) >= 0 && at > end)
            {
                edge = candidate;
                end = at;
            }
        }

        bool found = end > index;
        index = end;
        return found;
    }
}
