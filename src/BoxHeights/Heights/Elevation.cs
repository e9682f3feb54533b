using System;

namespace BoxHeights;

/// <summary>A level in the house: how far it lies above the storey's subfloor.</summary>
/// <remarks>
/// Negative below the subfloor. Two elevations differ by a <see cref="Distance"/>; they can't be added. <c>default</c> is the subfloor itself.
/// </remarks>
public readonly partial record struct Elevation : IComparable<Elevation>
{
    /// <summary>The level at a distance above the storey's subfloor.</summary>
    /// <param name="aboveStoreySubfloor">Up is positive.</param>
    public Elevation(Distance aboveStoreySubfloor) => AboveStoreySubfloor = aboveStoreySubfloor;

    /// <summary>How far it lies above the storey's subfloor; negative below.</summary>
    public Distance AboveStoreySubfloor { get; }

    /// <summary>The distance from the right level up to the left one.</summary>
    /// <exception cref="OverflowException">The distance is too large.</exception>
    public static Distance operator -(Elevation left, Elevation right) => left.AboveStoreySubfloor - right.AboveStoreySubfloor;

    /// <summary>The level that much higher.</summary>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public static Elevation operator +(Elevation elevation, Distance up) => new(elevation.AboveStoreySubfloor + up);

    /// <summary>The level that much lower.</summary>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public static Elevation operator -(Elevation elevation, Distance down) => new(elevation.AboveStoreySubfloor - down);

    /// <summary>Whether the left level is lower.</summary>
    public static bool operator <(Elevation left, Elevation right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left level is higher.</summary>
    public static bool operator >(Elevation left, Elevation right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left level is not higher.</summary>
    public static bool operator <=(Elevation left, Elevation right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left level is not lower.</summary>
    public static bool operator >=(Elevation left, Elevation right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Elevation other) => AboveStoreySubfloor.CompareTo(other.AboveStoreySubfloor);

    /// <summary>The level in words: "48 in above the storey's subfloor".</summary>
    public override string ToString() => AboveStoreySubfloor + " above the storey's subfloor";
}
