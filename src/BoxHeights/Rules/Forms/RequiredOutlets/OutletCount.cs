using System;

namespace BoxHeights.Rules;

/// <summary>How many outlets something needs: a number, one for each opening of some kinds, or one for so much of an area or a length and one more for each further part of it.</summary>
public sealed record OutletCount
{
    // More than a house has room for.
    private const int Most = 1000;

    /// <summary>One.</summary>
    public static OutletCount One { get; } = new();

    /// <summary>The least number, itself enough; 1 unless stated.</summary>
    public int Least { get; init => field = Guard.Count(value, nameof(Least)); } = 1;

    /// <summary>The most that there may be, itself allowed; null where there may be any number.</summary>
    public int? AtMost { get; init => field = Guard.Count(value, nameof(AtMost)); }

    /// <summary>Openings of these kinds each ask for one, in the bay that they lead to where all are in one wall.</summary>
    public Items<OpeningKind> OneForEach { get; init; }

    /// <summary>An opening wider than this asks for two; null where none does.</summary>
    public Distance? TwoBeyond { get; init; }

    /// <summary>The area or length that the least number serves, itself included; null where neither matters.</summary>
    public Quantity? First { get; init; }

    /// <summary>The area or length beyond that for which there is one more each, or for a part of it; more than nothing.</summary>
    public Quantity? Each { get; init => field = value is { Raw: <= 0 } ? throw new ArgumentOutOfRangeException(nameof(Each), value, "One more is for each part of something.") : value; }

    /// <summary>The count in words.</summary>
    public override string ToString() => "at least " + Least
        + (OneForEach.Count == 0 ? "" : ", and 1 for each of " + OneForEach + (TwoBeyond is { } wide ? ", 2 for one wider than " + wide : ""))
        + (Each is { } each ? ", and 1 for each " + each + " or part" + (First is { } first ? " beyond " + first : "") : "") + (AtMost is { } most ? ", at most " + most : "");

    /// <summary>The number for an area in squares of a tick, or for a length in ticks.</summary>
    internal int For(decimal measure)
    {
        decimal over = Each is null ? 0m : measure - (First?.Raw ?? 0);
        return Least + (over > 0m ? (int)Math.Min(Most, Math.Ceiling(over / Each!.Value.Raw)) : 0);
    }

    /// <summary>The number for a room's openings, no less than the least.</summary>
    internal int For(Room room)
    {
        int needed = 0;
        foreach (Wall wall in OneForEach.Count == 0 ? default : room.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                needed += !OneForEach.Contains(opening.Kind) ? 0 : opening.Right - opening.Left > TwoBeyond ? 2 : 1;
            }
        }

        return Math.Max(needed, Least);
    }
}
