namespace BoxHeights;

/// <summary>A point in plan: right and into the room from the left end of the room's first wall, as seen facing it.</summary>
/// <remarks><c>default</c> is that corner.</remarks>
public readonly partial record struct PlanPoint
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

    /// <summary>Both distances.</summary>
    public override string ToString() => "(" + Right + ", " + Into + ")";
}
