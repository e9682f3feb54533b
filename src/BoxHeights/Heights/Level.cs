using System;

namespace BoxHeights;

/// <summary>A horizontal line in a room: so far above or below a datum, or the datum itself.</summary>
/// <remarks><c>default</c> is the subfloor.</remarks>
public readonly partial record struct Level
{
    /// <summary>The line at a distance from a datum.</summary>
    /// <param name="offset">Up is positive; zero is the datum itself.</param>
    /// <param name="datum">The datum.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such datum.</exception>
    public Level(Distance offset, Datum datum)
    {
        Offset = offset;
        Datum = DatumText.Check(datum, nameof(datum));
    }

    /// <summary>How far above the datum; negative below it.</summary>
    public Distance Offset { get; }

    /// <summary>The datum.</summary>
    public Datum Datum { get; }

    /// <summary>Reads a line such as "42 in above subfloor", "6 in below subfloor", "countertop", "4 in above countertop".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text; the message says where and why.</exception>
    public static Level Parse(string text) =>
        TryRead(text ?? throw new ArgumentNullException(nameof(text)), out Level level, out int at, out string? error)
            ? level
            : throw HeightText.Fault(text, at, error);

    /// <summary>Reads a line; false for any text that is none.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="level">The line read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out Level level) => TryRead(text, out level, out _, out _);

    /// <summary>Where the line lies above the storey's subfloor.</summary>
    /// <param name="levels">Where the datums lie.</param>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    /// <exception cref="InvalidOperationException">The datum is not known exactly; the message names what isn't.</exception>
    public Elevation Resolve(Levels levels) =>
        new((levels ?? throw new ArgumentNullException(nameof(levels))).Exact(Datum) + Offset);

    /// <summary>Where the line lies above the storey's subfloor, exactly or as a range.</summary>
    /// <param name="levels">Where the datums lie.</param>
    /// <param name="aboveStoreySubfloor">The height found.</param>
    /// <returns>False if the datum is not known.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    public bool TryResolve(Levels levels, out DistanceRange aboveStoreySubfloor)
    {
        bool known = (levels ?? throw new ArgumentNullException(nameof(levels))).TryGet(Datum, out DistanceRange datum);
        aboveStoreySubfloor = known ? datum + Offset : default;
        return known;
    }

    /// <summary>The line in words, as <see cref="Parse"/> reads them: "42 in above subfloor", "countertop".</summary>
    public override string ToString() => Offset == Distance.Zero ? DatumText.Name(Datum) : HeightText.Print(Offset, " ", Datum);

    private static bool TryRead(string? text, out Level level, out int at, out string? error)
    {
        level = default;
        if (!HeightText.TryRead(text, out HeightText read, out at, out error))
        {
            return false;
        }

        error = read.NamesEdge ? "a line has no edge."
            : read.Datum is null ? "say what it is measured from: above subfloor, above finished floor, countertop, \u2026"
            : read.Distance is null && read.Direction != 0 ? "say how far."
            : read.Distance is not null && read.Direction == 0 ? "say above or below."
            : null;
        if (error is not null)
        {
            return false;
        }

        level = new(read.Distance.GetValueOrDefault(), read.Datum.GetValueOrDefault());
        return true;
    }
}
