using System;

namespace BoxHeights;

/// <summary>The outside of a cover plate: width × height.</summary>
/// <remarks>The plate's center is the device's center, and the box's. <c>default</c> has no size and means "not stated".</remarks>
public readonly partial record struct PlateSize
{
    /// <summary>A plate of this size.</summary>
    /// <param name="width">Outside width: more than zero, an even number of ticks (any 1/64 in, any 0.1 mm).</param>
    /// <param name="height">Outside height: more than zero, an even number of ticks.</param>
    /// <exception cref="ArgumentException">A size is zero or negative, or has no exact half.</exception>
    public PlateSize(Distance width, Distance height)
    {
        Width = EvenSize.Check(width, nameof(width));
        Height = EvenSize.Check(height, nameof(height));
    }

    /// <summary>Outside width.</summary>
    public Distance Width { get; }

    /// <summary>Outside height.</summary>
    public Distance Height { get; }

    /// <summary>Whether a size is stated; false for <c>default</c>.</summary>
    public bool IsStated => Height != Distance.Zero;

    /// <summary>From the center to the left or right edge.</summary>
    public Distance HalfWidth => EvenSize.Half(Width);

    /// <summary>From the center to the top or bottom edge.</summary>
    public Distance HalfHeight => EvenSize.Half(Height);

    /// <summary>The same plate turned by a quarter.</summary>
    internal PlateSize Turned() => IsStated ? new(Height, Width) : this;

    /// <summary>The size: "2-3/4 × 4-1/2 in"; "not stated" for <c>default</c>.</summary>
    public override string ToString() => !IsStated ? "not stated" : EvenSize.Text(Width, Height);
}
