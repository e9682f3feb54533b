using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>What becomes of a conductor in a box, which decides how much room it takes.</summary>
public enum ConductorUse
{
    /// <summary>It is spliced or ends there, or passes through uncut.</summary>
    Ordinary = 0,

    /// <summary>It is coiled there uncut with at least twice the length that has to stay free, which is 12 in at least: it counts twice (NEC 314.16(B)(1)). A shorter loop is ordinary.</summary>
    Loop = 1,

    /// <summary>It is an equipment grounding conductor or a bonding jumper that comes in from outside.</summary>
    Ground = 2,

    /// <summary>It belongs to a separate set of grounds for isolated receptacles.</summary>
    IsolatedGround = 3,
}

/// <summary>Conductors of one size that enter a box without being counted in a cable: in raceway, or wires of a luminaire.</summary>
/// <remarks>
/// Leave out what the code leaves out: pigtails that never leave the box, and, under a domed luminaire or canopy, its ground and up to four of its wires smaller
/// than 14 AWG (NEC 314.16(B)(1) and its exception). <c>default</c> means "not stated".
/// </remarks>
public readonly partial record struct LooseConductors
{
    private const int MostConductors = 100;

    /// <summary>Conductors of one size.</summary>
    /// <param name="count">How many: 1 to 100.</param>
    /// <param name="size">Their size; stated.</param>
    /// <param name="use">What becomes of them.</param>
    /// <exception cref="ArgumentException"><paramref name="size"/> is not stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> or <paramref name="use"/> is out of its range.</exception>
    public LooseConductors(int count, ConductorSize size, ConductorUse use = ConductorUse.Ordinary)
    {
        Count = count is >= 1 and <= MostConductors ? count : throw new ArgumentOutOfRangeException(nameof(count), count, "There are 1 to 100 conductors of a size.");
        Size = size != default ? size : throw new ArgumentException("Conductors have a size.", nameof(size));
        Use = use is >= ConductorUse.Ordinary and <= ConductorUse.IsolatedGround ? use : throw new ArgumentOutOfRangeException(nameof(use));
    }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>Their size.</summary>
    public ConductorSize Size { get; }

    /// <summary>What becomes of them.</summary>
    public ConductorUse Use { get; }

    /// <summary>Whether they are equipment grounds, isolated or not.</summary>
    public bool IsGround => Use is ConductorUse.Ground or ConductorUse.IsolatedGround;

    /// <summary>Reads conductors such as "3 x 12 AWG", "1 x 14 AWG loop", "2 x 12 AWG ground" or "1 x 12 AWG isolated ground".</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text.</exception>
    public static LooseConductors Parse(string text) =>
        TryParse(text ?? throw new ArgumentNullException(nameof(text)), out LooseConductors conductors)
            ? conductors
            : throw new FormatException("\"" + text + "\" are no conductors: write how many and their size, such as 3 x 12 AWG or 1 x 12 AWG ground.");

    /// <summary>Reads conductors; false for any text that is none.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="conductors">The conductors read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out LooseConductors conductors)
    {
        conductors = default;
        string[] words = (text ?? "").Trim().Split(' ');
        if (words.Length < 4 || !string.Equals(words[1], "x", StringComparison.OrdinalIgnoreCase)
            || !int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count is < 1 or > MostConductors
            || !ConductorSize.TryParse(words[2] + " " + words[3], out ConductorSize size))
        {
            return false;
        }

        string named = string.Join(" ", words, 4, words.Length - 4).ToLowerInvariant();
        for (ConductorUse use = ConductorUse.Ordinary; use <= ConductorUse.IsolatedGround; use++)
        {
            if (named == Name(use))
            {
                conductors = new(count, size, use);
                return true;
            }
        }

        return false;
    }

    /// <summary>The text that <see cref="Parse"/> reads: "3 x 12 AWG"; "not stated" for <c>default</c>.</summary>
    public override string ToString() => Count == 0
        ? "not stated"
        : Count.ToString(CultureInfo.InvariantCulture) + " x " + Size + (Use == ConductorUse.Ordinary ? "" : " " + Name(Use));

    private static string Name(ConductorUse use) => use switch
    {
        ConductorUse.Loop => "loop",
        ConductorUse.Ground => "ground",
        ConductorUse.IsolatedGround => "isolated ground",
        _ => "",
    };
}
