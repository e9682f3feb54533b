using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>A cable as it is called at the counter: "14-2", "12-3", "14-2-2"; of a metric size "3G1.5".</summary>
/// <remarks>
/// The first number is the conductors' gauge, the next how many insulated conductors there are, a third a second group of them.
/// The bare ground isn't counted in the name and is there unless the text says "without ground". The name of a metric cable counts every core: "3G1.5" has two
/// insulated conductors of 1.5 mm² and a protective one, "3X1.5" has three and none. <c>default</c> means "not stated" and has no conductors.
/// </remarks>
public readonly partial record struct CableType
{
    private const string WithoutGround = " without ground";
    private const int MostInGroup = 9;

    // The sheath changes nothing of what is counted.
    private static readonly string[] Jackets = [" NM-B", " NM", " UF-B"];

    private static readonly char[] CoreMarks = ['G', 'g', 'X', 'x'];

    private readonly byte first;
    private readonly byte second;
    private readonly bool noGround;

    /// <summary>A cable of one group of insulated conductors, or two.</summary>
    /// <param name="size">The size of every conductor.</param>
    /// <param name="insulated">Insulated conductors in the first group: 2 to 9.</param>
    /// <param name="secondGroup">Insulated conductors in the second group, as in "14-2-2": 2 to 9, or 0 for none.</param>
    /// <param name="hasGround">Whether there is an equipment grounding conductor besides.</param>
    /// <exception cref="ArgumentException"><paramref name="size"/> is not stated, or is metric and there is a second group.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A count is out of its range.</exception>
    public CableType(ConductorSize size, int insulated, int secondGroup = 0, bool hasGround = true)
    {
        Size = size != default ? size : throw new ArgumentException("A cable's conductors have a size.", nameof(size));
        first = IsGroup(insulated)
            ? (byte)insulated
            : throw new ArgumentOutOfRangeException(nameof(insulated), insulated, "A cable here has 2 to 9 insulated conductors in a group.");
        second = secondGroup == 0 || IsGroup(secondGroup)
            ? (byte)secondGroup
            : throw new ArgumentOutOfRangeException(nameof(secondGroup), secondGroup, "A second group has 2 to 9 insulated conductors, or there is none (0).");
        noGround = !hasGround;
        if (second != 0 && size.Awg == 0)
        {
            throw new ArgumentException("A metric cable has one group of conductors.", nameof(secondGroup));
        }
    }

    /// <summary>The size of the cable's conductors.</summary>
    public ConductorSize Size { get; }

    /// <summary>How many insulated conductors there are in all: 4 in "14-2-2".</summary>
    public int InsulatedConductors => first + second;

    /// <summary>Whether there is an equipment grounding conductor; false for <c>default</c>.</summary>
    public bool HasGround => first != 0 && !noGround;

    /// <summary>Reads a cable such as "14-2", "12/3", "14-2-2", "14-2 without ground", "3G1.5" or "2X2.5"; NM, NM-B or UF-B behind it says nothing more.</summary>
    /// <param name="text">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text, or names a size that <see cref="ConductorSize"/> doesn't know.</exception>
    public static CableType Parse(string text) =>
        TryParse(text ?? throw new ArgumentNullException(nameof(text)), out CableType cable)
            ? cable
            : throw new FormatException("\"" + text + "\" is no cable: write gauge and insulated conductors, such as 14-2, 12-3 or 14-2-2, or cores and cross section, such as 3G1.5.");

    /// <summary>Reads a cable; false for any text that is none.</summary>
    /// <param name="text">The text; may be null.</param>
    /// <param name="cable">The cable read; <c>default</c> if none.</param>
    public static bool TryParse(string? text, out CableType cable)
    {
        cable = default;
        if (text is null)
        {
            return false;
        }

        string rest = text.Trim();
        string[] cored = rest.Split(CoreMarks);
        if (cored.Length == 2 && TryCount(cored[0], out int cores) && decimal.TryParse(cored[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal area))
        {
            bool isGrounded = rest[cored[0].Length] is 'G' or 'g';
            int live = isGrounded ? cores - 1 : cores;
            bool isKnown = ConductorSize.TryFromSquareMillimeters(area, out ConductorSize metric) && IsGroup(live);
            cable = isKnown ? new(metric, live, 0, isGrounded) : default;
            return isKnown;
        }

        bool hasGround = !rest.EndsWith(WithoutGround, StringComparison.OrdinalIgnoreCase);
        if (!hasGround)
        {
            rest = rest.Substring(0, rest.Length - WithoutGround.Length);
        }

        foreach (string jacket in Jackets)
        {
            rest = rest.EndsWith(jacket, StringComparison.OrdinalIgnoreCase) ? rest.Substring(0, rest.Length - jacket.Length).TrimEnd() : rest;
        }

        string[] parts = rest.Split('-', '/');
        int secondGroup = 0;
        if (parts.Length is not (2 or 3)
            || !TryCount(parts[0], out int awg) || !ConductorSize.TryFromAwg(awg, out ConductorSize size)
            || !TryCount(parts[1], out int insulated) || !IsGroup(insulated)
            || (parts.Length == 3 && (!TryCount(parts[2], out secondGroup) || !IsGroup(secondGroup))))
        {
            return false;
        }

        cable = new(size, insulated, secondGroup, hasGround);
        return true;
    }

    /// <summary>The text that <see cref="Parse"/> reads: "14-2"; "not stated" for <c>default</c>.</summary>
    public override string ToString() => first == 0
        ? "not stated"
        : Size.Awg == 0 ? Text(noGround ? first : first + 1) + (noGround ? "X" : "G") + Size.SquareMillimeters.ToString(CultureInfo.InvariantCulture)
        : Text(Size.Awg) + "-" + Text(first) + (second == 0 ? "" : "-" + Text(second)) + (noGround ? WithoutGround : "");

    private static bool IsGroup(int count) => count is >= 2 and <= MostInGroup;

    private static bool TryCount(string text, out int count) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
