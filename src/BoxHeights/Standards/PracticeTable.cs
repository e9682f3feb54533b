using System;

namespace BoxHeights;

/// <summary>A height at which a crew sets boxes of one purpose.</summary>
[Described]
public sealed partial record PracticeHeight
{
    /// <summary>A height for a purpose.</summary>
    /// <param name="purpose">What the boxes are for.</param>
    /// <param name="height">The height aimed at, with its edge.</param>
    /// <exception cref="ArgumentException">The purpose is empty, or the height names no edge.</exception>
    public PracticeHeight(BoxPurpose purpose, BoxHeight height)
    {
        Purpose = purpose == default ? throw new ArgumentException("A practice height is for some purpose.", nameof(purpose)) : purpose;
        Height = Edged(height, nameof(height));
    }

    /// <summary>What the boxes are for.</summary>
    public BoxPurpose Purpose { get; init; }

    /// <summary>The height aimed at.</summary>
    public BoxHeight Height { get; init; }

    /// <summary>The lowest height that nobody would remark on; null where low ones are never remarked on.</summary>
    public BoxHeight? NoLower { get; init => field = value is { } low ? Edged(low, nameof(NoLower)) : null; }

    /// <summary>The highest height that nobody would remark on; null where high ones are never remarked on.</summary>
    public BoxHeight? NoHigher { get; init => field = value is { } high ? Edged(high, nameof(NoHigher)) : null; }

    /// <summary>The thing that its boxes are set beside or behind; null where their place along the wall is free.</summary>
    public PlaceAnchor? Anchor { get; init; }

    /// <exception cref="ArgumentException">It names no edge.</exception>
    private static BoxHeight Edged(BoxHeight height, string name) =>
        height.Edge is null ? throw new ArgumentException("A practice height names its edge; " + height + " doesn't.", name) : height;
}

/// <summary>A builder's own heights, in place of the usual ones or beside them.</summary>
[Described(nameof(Name))]
public sealed partial record PracticeTable
{
    /// <summary>The trade's usual heights in the United States. Common practice, no source.</summary>
    public static PracticeTable Usual => Standards.TradePractice.Usual;

    /// <summary>Whose table it is.</summary>
    public string Name { get; init => field = Guard.Text(value, nameof(Name)); }

    /// <summary>The heights, one for each purpose.</summary>
    public Items<PracticeHeight> Heights { get; init; }
}
