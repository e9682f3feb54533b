using System;

namespace BoxHeights;

/// <summary>A stick, block or hammer stood on a surface, against whose end the box is held.</summary>
/// <remarks>What it sets depends on what it stands on: the same stick on the bottom plate sets every box higher by the plate. <c>default</c> has no length.</remarks>
public readonly partial record struct GaugeStick
{
    /// <summary>A stick.</summary>
    /// <param name="length">From the surface to the end that the box touches: more than zero.</param>
    /// <param name="touches">The edge of the box (or its center screw line) at the stick's end.</param>
    /// <param name="standsOn">The surface that it stands on.</param>
    /// <exception cref="ArgumentException">The length is zero or negative.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such edge or datum.</exception>
    public GaugeStick(Distance length, Edge touches, Datum standsOn)
    {
        Length = length > Distance.Zero ? length : throw new ArgumentException("A stick is longer than zero.", nameof(length));
        Touches = EdgeText.Check(touches, nameof(touches));
        StandsOn = DatumText.Check(standsOn, nameof(standsOn));
    }

    /// <summary>From the surface to the end that the box touches.</summary>
    public Distance Length { get; }

    /// <summary>The edge of the box at the stick's end.</summary>
    public Edge Touches { get; }

    /// <summary>The surface that it stands on.</summary>
    public Datum StandsOn { get; }

    /// <summary>The stick that sets a box at a height.</summary>
    /// <param name="height">The height wanted; its edge stated.</param>
    /// <param name="touches">The edge of the box that the stick is to touch.</param>
    /// <param name="box">The box; its nominal height is used where the edge differs.</param>
    /// <param name="standsOn">The surface that the stick is to stand on.</param>
    /// <param name="levels">Where the datums lie.</param>
    /// <exception cref="ArgumentException">The box's size is needed and not stated.</exception>
    /// <exception cref="InvalidOperationException">The height states no edge, a datum isn't known exactly, or the stick would have no length.</exception>
    public static GaugeStick For(BoxHeight height, Edge touches, BoxSize box, Datum standsOn, Levels levels)
    {
        Distance length = height.AtEdge(touches, box).From(standsOn, levels).Value;
        return length > Distance.Zero
            ? new(length, touches, standsOn)
            : throw new InvalidOperationException("The box would lie no higher than the " + DatumText.Name(standsOn) + ": no stick can stand there.");
    }

    /// <summary>The height that it sets.</summary>
    public BoxHeight Sets() => BoxHeight.To(Touches, Length, StandsOn);

    /// <summary>What it does, in words: "sets 16 in to top above subfloor".</summary>
    public override string ToString() => "sets " + Sets();
}
