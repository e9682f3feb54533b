using System;

namespace BoxHeights;

/// <summary>How far the parts of a device that a hand operates reach from the device's center.</summary>
/// <remarks>Reach rules speak of the highest and lowest operable part, not of the box. <c>default</c> is a device operated just at its center.</remarks>
public readonly partial record struct OperableParts
{
    /// <summary>The extent of the operated parts.</summary>
    /// <param name="below">From the center down to the lowest operated part; negative if even that lies above the center.</param>
    /// <param name="above">From the center up to the highest operated part; negative if even that lies below the center.</param>
    /// <param name="gripHigh">From the center up to the middle of the grip when the handle is at its highest; null if there is no handle.</param>
    /// <exception cref="ArgumentException">The highest part would lie below the lowest.</exception>
    public OperableParts(Distance below, Distance above, Distance? gripHigh = null)
    {
        Below = below;
        Above = above >= -below ? above : throw new ArgumentException("The highest operated part lies below the lowest.", nameof(above));
        GripHigh = gripHigh;
    }

    /// <summary>From the center down to the lowest operated part.</summary>
    public Distance Below { get; }

    /// <summary>From the center up to the highest operated part.</summary>
    public Distance Above { get; }

    /// <summary>From the center up to the middle of the grip when the handle is at its highest; null if there is no handle.</summary>
    public Distance? GripHigh { get; }

    /// <summary>The parts of two devices of one box together: from the lowest to the highest of both.</summary>
    /// <param name="other">The other device's parts.</param>
    public OperableParts Union(OperableParts other) => new(
        Distance.Max(Below, other.Below),
        Distance.Max(Above, other.Above),
        GripHigh is { } grip && other.GripHigh is { } otherGrip ? Distance.Max(grip, otherGrip) : GripHigh ?? other.GripHigh);

    /// <summary>The extent in words: "1.31 in below to 1.31 in above the center".</summary>
    public override string ToString() => Below + " below to " + Above + " above the center";
}
