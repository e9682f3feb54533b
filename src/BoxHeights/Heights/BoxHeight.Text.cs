using System;

namespace BoxHeights;

public readonly partial record struct BoxHeight
{
    /// <summary>Reads a height: a distance, an edge and a datum, in any order.</summary>
    /// <remarks>
    /// Edges: "to top", "to center", "to bottom", "T.O.B.", "B.O.B.", "C/L", "O.C."; without one the edge is unstated. Datums: "AFF",
    /// "above finished floor", "above subfloor", "off the subfloor", "off the slab", "off the plate", "above countertop" and the like;
    /// "below" counts down. Without a datum the text is refused, but for a leading plus or <c>H=</c>: on a drawing <c>+48"</c> and <c>H=48"</c> are above
    /// finished floor. "U.N.O." behind it says nothing.
    /// </remarks>
    /// <param name="text">The text, such as "48 in to top above subfloor" or <c>+44" AFF</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text; the message says where and why.</exception>
    public static BoxHeight Parse(string text) =>
        TryRead(text ?? throw new ArgumentNullException(nameof(text)), out BoxHeight height, out int at, out string? error)
            ? height
            : throw HeightText.Fault(text, at, error);

    /// <summary>Reads a height as <see cref="Parse"/> does; false for any text that is none.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="height">The height read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out BoxHeight height) => TryRead(text, out height, out _, out _);

    /// <summary>The height in whole words, as <see cref="Parse"/> reads them: "48 in to top above subfloor", "44 in above finished floor (edge unstated)".</summary>
    public override string ToString() => ToString(null);

    /// <summary>The height in whole words, with its distance in a format.</summary>
    internal string ToString(string? format) => edgeUnstated
        ? HeightText.Print(Value, " ", Datum, format) + " " + EdgeText.Print(null)
        : HeightText.Print(Value, " " + EdgeText.Print(edge) + " ", Datum, format);

    private static bool TryRead(string? text, out BoxHeight height, out int at, out string? error)
    {
        height = default;
        if (!HeightText.TryRead(text, out HeightText read, out at, out error))
        {
            return false;
        }

        error = read.Distance is null ? "say how high."
            : read.Datum is null && !read.HasPlus ? "say what it is measured from: above subfloor, above finished floor (AFF), off the bottom plate, \u2026"
            : read.Datum is not null && read.Direction == 0 ? "say above or below."
            : null;
        if (error is not null)
        {
            return false;
        }

        height = new(read.Edge, read.Distance.GetValueOrDefault(), read.Datum ?? Datum.FinishedFloor);
        return true;
    }
}
