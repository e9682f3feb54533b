using System;

namespace BoxHeights;

/// <summary>The outside of a box at its opening, as a tape finds it: width × height, and the depth where it is known.</summary>
/// <remarks>
/// Ears, nails and brackets don't count. The nominal size is what marks are worked out from; the ranges say what the boxes
/// sold under one description really measure, where that isn't exact. <c>default</c> has no size and means "not stated".
/// </remarks>
public readonly partial record struct BoxSize
{
    private BoxSize(Distance width, Distance height, Distance? depth, DistanceRange widthRange, DistanceRange heightRange)
    {
        Width = width;
        Height = height;
        Depth = depth;
        WidthRange = widthRange;
        HeightRange = heightRange;
    }

    /// <summary>A box of exactly this size.</summary>
    /// <param name="width">Outside width at the opening: more than zero, an even number of ticks (any 1/64 in, any 0.1 mm).</param>
    /// <param name="height">Outside height at the opening: more than zero, an even number of ticks.</param>
    /// <param name="depth">From the opening to the back: more than zero; null if not known.</param>
    /// <exception cref="ArgumentException">A size is zero or negative, or a width or height has no exact half.</exception>
    public BoxSize(Distance width, Distance height, Distance? depth = null)
        : this(EvenSize.Check(width, nameof(width)), EvenSize.Check(height, nameof(height)), depth, width, height)
    {
        if (depth is { Ticks: <= 0 })
        {
            throw new ArgumentException("A depth is more than zero, or null if it isn't known.", nameof(depth));
        }
    }

    /// <summary>Nominal outside width at the opening.</summary>
    public Distance Width { get; }

    /// <summary>Nominal outside height at the opening.</summary>
    public Distance Height { get; }

    /// <summary>From the opening to the back; null if not known.</summary>
    public Distance? Depth { get; }

    /// <summary>The widths that such boxes have; exactly <see cref="Width"/> unless <see cref="Ranging"/> said otherwise.</summary>
    public DistanceRange WidthRange { get; }

    /// <summary>The heights that such boxes have; exactly <see cref="Height"/> unless <see cref="Ranging"/> said otherwise.</summary>
    public DistanceRange HeightRange { get; }

    /// <summary>Whether a size is stated; false for <c>default</c>.</summary>
    public bool IsStated => Height != Distance.Zero;

    /// <summary>Whether every such box has just the nominal width and height.</summary>
    public bool IsExact => WidthRange.IsExact && HeightRange.IsExact;

    /// <summary>From the center to the left or right side, by the nominal width.</summary>
    public Distance HalfWidth => EvenSize.Half(Width);

    /// <summary>From the center to the top or bottom, by the nominal height.</summary>
    public Distance HalfHeight => EvenSize.Half(Height);

    /// <summary>The same nominal size for boxes that really measure anything in two ranges.</summary>
    /// <param name="width">The widths to be met with; holds <see cref="Width"/>; ends more than zero and an even number of ticks.</param>
    /// <param name="height">The heights to be met with; holds <see cref="Height"/>; ends more than zero and an even number of ticks.</param>
    /// <exception cref="ArgumentException">A range doesn't hold the nominal size, or an end of it is not a possible size.</exception>
    public BoxSize Ranging(DistanceRange width, DistanceRange height) =>
        new(Width, Height, Depth, EvenSize.Check(width, Width, nameof(width)), EvenSize.Check(height, Height, nameof(height)));

    /// <summary>The same box turned by a quarter.</summary>
    internal BoxSize Turned() => IsStated ? new BoxSize(Height, Width, Depth).Ranging(HeightRange, WidthRange) : this;

    /// <summary>The nominal size: "2-1/4 × 3-3/4 in", with ", 2-3/4 in deep" where the depth is known; "not stated" for <c>default</c>.</summary>
    public override string ToString() =>
        !IsStated ? "not stated" : EvenSize.Text(Width, Height) + (Depth is { } depth ? ", " + depth + " deep" : "");
}
