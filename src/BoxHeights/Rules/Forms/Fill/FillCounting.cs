using System;

namespace BoxHeights.Rules;

/// <summary>How an edition of a code, and whoever reads it, counts what is in a box.</summary>
[Described(nameof(Allowances), nameof(Grounds))]
public sealed partial record FillCounting
{
    // By size, since a fill is summed for every box of every evaluation.
    private Volume[] bySize = [];

    /// <summary>The room that a conductor of each size takes; a size that isn't among them takes none.</summary>
    public Items<ConductorAllowance> Allowances
    {
        get;
        init
        {
            field = value;
            bySize = new Volume[ConductorSize.Count];
            foreach (ConductorAllowance one in value)
            {
                bySize[one.Size.Place] = one.Volume;
            }
        }
    }

    /// <summary>How equipment grounds count.</summary>
    public GroundCounting Grounds { get; init; }

    /// <summary>How many allowances of its conductors a device takes for each gang that it needs: 2 unless stated.</summary>
    public int ForADevice { get; init; } = 2;

    /// <summary>Single receptacles of more amperes than this are wider than one gang where their box has gangs to spare; null where none is taken to be.</summary>
    public int? WideAbove { get; init; }

    /// <summary>The room that an unmarked barrier of metal takes.</summary>
    public Volume MetalBarrier { get; init; }

    /// <summary>The same of another barrier.</summary>
    public Volume PlasticBarrier { get; init; }

    /// <summary>Whether each assembly of terminal blocks takes one allowance.</summary>
    public bool CountsTerminalBlocks { get; init; }

    /// <summary>Whether the molded flap of a plastic box counts as an internal clamp.</summary>
    public bool FlapIsClamp { get; init; }

    /// <summary>Where the document says so.</summary>
    public FillParagraphs Paragraphs { get; init; } = new();

    /// <summary>The room that one conductor takes; none of a size that isn't stated.</summary>
    /// <param name="size">Its size.</param>
    public Volume AllowanceOf(ConductorSize size) => size.Place < bySize.Length ? bySize[size.Place] : Volume.Zero;

    /// <summary>How many conductors of a size fill a room with nothing else in it: the counts that NEC Table 314.16(A) prints beside each metal box.</summary>
    /// <param name="size">Their size.</param>
    /// <param name="room">The room; not negative.</param>
    /// <remarks>
    /// One printed count doesn't follow from the printed volume: five 8 AWG in the round box of 12.5 in³, where 12.5 / 3.00 gives 4. The volume is what a
    /// box is judged by. Zero of a size that takes no room.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="room"/> is negative.</exception>
    public long CountIn(ConductorSize size, Volume room) => room < Volume.Zero
        ? throw new ArgumentOutOfRangeException(nameof(room), room, "A room isn't negative.")
        : AllowanceOf(size) == Volume.Zero ? 0 : room.Picoliters / AllowanceOf(size).Picoliters;

    /// <summary>Whether another counts the same.</summary>
    public bool Equals(FillCounting? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(ToString());

    /// <summary>The way to count in words.</summary>
    public override string ToString() =>
        Allowances + "; a device " + ForADevice + (WideAbove is { } amperes ? ", single receptacles above " + amperes + " A by the gangs that are left for them" : "") + "; grounds " + (Grounds == GroundCounting.AllAsOne ? "all as one, a separate isolated set as one more" : "up to four as one, each beyond a quarter")
        + (CountsTerminalBlocks ? "; each terminal block as one conductor" : "") + (FlapIsClamp ? "; a molded flap counts as a clamp" : "")
        + (MetalBarrier == PlasticBarrier && PlasticBarrier == Volume.Zero ? "" : "; a barrier " + MetalBarrier + " of metal, " + PlasticBarrier + " of another kind")
        + (Paragraphs.Equals(new FillParagraphs()) ? "" : "; " + Paragraphs);
}

/// <summary>How equipment grounding conductors count toward fill.</summary>
public enum GroundCounting
{
    /// <summary>All together as one conductor, and a separate set for isolated grounds as one more: NEC until 2017.</summary>
    AllAsOne = 0,

    /// <summary>Up to four as one conductor, each beyond that as a quarter of one, isolated or not: NEC from 2020.</summary>
    QuarterBeyondFour = 1,
}
