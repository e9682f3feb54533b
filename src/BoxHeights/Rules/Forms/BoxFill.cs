using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>One line of a fill calculation: so many allowances of a volume, and the paragraph that asks for them.</summary>
public sealed record FillLine
{
    internal FillLine(string what, int quarters, Volume allowance, string paragraph)
    {
        What = what;
        Quarters = quarters;
        Allowance = allowance;
        Paragraph = paragraph;
        Volume = allowance.MultiplyQuarters(quarters);
    }

    /// <summary>What takes the room.</summary>
    public string What { get; }

    /// <summary>How many quarters of an allowance it takes.</summary>
    public int Quarters { get; }

    /// <summary>The allowance of one conductor.</summary>
    public Volume Allowance { get; }

    /// <summary>The paragraph of NEC 314.16(B).</summary>
    public string Paragraph { get; }

    /// <summary>The volume taken.</summary>
    public Volume Volume { get; }

    /// <summary>The line as count × allowance = volume.</summary>
    public override string ToString() =>
        What + " " + (Quarters / 4m).ToString("0.##", System.Globalization.CultureInfo.InvariantCulture) + " × " + Allowance + " = " + Volume;
}

/// <summary>How much room conductors, clamps, devices and grounds take in a box: an explained sum after NEC 314.16(B).</summary>
/// <remarks>
/// Counted from cables: each brings its insulated conductors and one equipment ground, all of which end or are spliced in the box. A device counts
/// twice the largest conductor in the box, since which cable feeds it isn't described. Pigtails and connectors count nothing.
/// </remarks>
public sealed class BoxFill
{
    private BoxFill(Items<FillLine> lines)
    {
        Lines = lines;
        Volume total = Volume.Zero;
        foreach (FillLine line in lines)
        {
            total += line.Volume;
        }

        Total = total;
    }

    /// <summary>The lines of the sum.</summary>
    public Items<FillLine> Lines { get; }

    /// <summary>The sum.</summary>
    public Volume Total { get; }

    /// <summary>Adds up the fill of a box.</summary>
    /// <param name="cables">The cables that enter it; one at least.</param>
    /// <param name="yokes">How many device widths its yokes take: one for most, two for a receptacle that needs two gangs.</param>
    /// <param name="hasInternalClamps">Whether clamps take room inside.</param>
    /// <param name="grounds">How equipment grounds count.</param>
    /// <exception cref="ArgumentException">There are no cables.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="yokes"/> is negative.</exception>
    public static BoxFill Of(Items<CableType> cables, int yokes, bool hasInternalClamps, GroundCounting grounds)
    {
        if (cables.Count == 0)
        {
            throw new ArgumentException("Fill is counted from cables, and there are none.", nameof(cables));
        }

        if (yokes < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(yokes), yokes, "A box holds no fewer than zero yokes.");
        }

        int[] conductors = new int[ConductorSize.Awg18.Awg + 1];
        ConductorSize largest = cables[0].Size;
        ConductorSize? largestGround = null;
        int groundCount = 0;
        foreach (CableType cable in cables)
        {
            conductors[cable.Size.Awg] += cable.InsulatedConductors;
            largest = cable.Size > largest ? cable.Size : largest;
            if (cable.HasGround)
            {
                groundCount++;
                largestGround = largestGround is { } ground && ground > cable.Size ? ground : cable.Size;
            }
        }

        List<FillLine> lines = [];
        for (int awg = conductors.Length - 1; awg > 0; awg--)
        {
            if (conductors[awg] > 0)
            {
                ConductorSize some = ConductorSize.FromAwg(awg);
                lines.Add(new(some + " conductors", 4 * conductors[awg], some.Allowance, "(1)"));
            }
        }

        if (hasInternalClamps)
        {
            lines.Add(new("internal clamps", 4, largest.Allowance, "(2)"));
        }

        if (yokes > 0)
        {
            lines.Add(new(yokes == 1 ? "device" : yokes + " devices", 8 * yokes, largest.Allowance, "(4)"));
        }

        if (largestGround is { } size)
        {
            int quarters = grounds == GroundCounting.QuarterBeyondFour ? 4 + Math.Max(0, groundCount - 4) : 4;
            lines.Add(new("equipment grounds", quarters, size.Allowance, "(5)"));
        }

        return new(new(lines));
    }

    /// <summary>The sum in one line.</summary>
    public override string ToString() => "fill " + Total + " (" + string.Join("; ", Lines) + ")";
}

/// <summary>How equipment grounding conductors count toward fill.</summary>
public enum GroundCounting
{
    /// <summary>All together as one conductor: NEC until 2017.</summary>
    AllAsOne = 0,

    /// <summary>Up to four as one conductor, each beyond that as a quarter of one: NEC from 2020.</summary>
    QuarterBeyondFour = 1,
}
