namespace BoxHeights;

/// <summary>A point on the top of a wall's framing.</summary>
public sealed record WallTopPoint
{
    /// <summary>Describes a wall top point by what it must have.</summary>
    /// <param name="along">From the wall's left end.</param>
    /// <param name="up">From the subfloor.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public WallTopPoint(Distance along, Distance up)
    {
        Along = along;
        Up = up;
    }

    /// <summary>From the wall's left end.</summary>
    public Distance Along { get; init => field = Valid.NotNegative(value, nameof(Along)); }

    /// <summary>From the subfloor.</summary>
    public Distance Up { get; init => field = Valid.NotNegative(value, nameof(Up)); }

    /// <summary>The same with another <see cref="Along"/>.</summary>
    /// <param name="along">From the wall's left end.</param>
    public WallTopPoint WithAlong(Distance along) => this with { Along = along };

    /// <summary>The same with another <see cref="Up"/>.</summary>
    /// <param name="up">From the subfloor.</param>
    public WallTopPoint WithUp(Distance up) => this with { Up = up };
}
