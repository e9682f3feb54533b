using System;

namespace BoxHeights;

/// <summary>A point in plan: right and into the room from the left end of the room's first wall, as seen facing it.</summary>
/// <remarks><c>default</c> is that corner.</remarks>
public readonly partial struct PlanPoint : IEquatable<PlanPoint>
{
    /// <summary>A point by its two distances.</summary>
    /// <param name="right">To the right along the first wall.</param>
    /// <param name="into">Away from the first wall, into the room.</param>
    public PlanPoint(Distance right, Distance into)
    {
        Right = right;
        Into = into;
    }

    /// <summary>To the right along the first wall.</summary>
    public Distance Right { get; }

    /// <summary>Away from the first wall, into the room.</summary>
    public Distance Into { get; }

    /// <summary>Whether two points are the same.</summary>
    public static bool operator ==(PlanPoint left, PlanPoint right) => left.Equals(right);

    /// <summary>Whether two points differ.</summary>
    public static bool operator !=(PlanPoint left, PlanPoint right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(PlanPoint other) => Right == other.Right && Into == other.Into;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PlanPoint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Right.GetHashCode() * 31) + Into.GetHashCode());

    /// <summary>Both distances.</summary>
    public override string ToString() => "(" + Right + ", " + Into + ")";
}
