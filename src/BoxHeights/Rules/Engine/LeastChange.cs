namespace BoxHeights;

/// <summary>Which way a box would have to be moved.</summary>
public enum ChangeDirection
{
    /// <summary>Higher on its surface.</summary>
    Up = 0,

    /// <summary>Lower.</summary>
    Down = 1,

    /// <summary>Along its wall, toward the left end.</summary>
    Left = 2,

    /// <summary>Along its wall, toward the right end.</summary>
    Right = 3,
}

/// <summary>The least move of a box that decides a rule, straight up, down or along its wall. <c>default</c> is none at all, up.</summary>
/// <remarks>Of a box that doesn't meet it, or depends on something, the shortest one after which it is met for certain; of one that meets it, the longest one after which it still is, in the direction in which that is shortest.</remarks>
public readonly record struct LeastChange
{
    internal LeastChange(Distance amount, ChangeDirection direction)
    {
        Amount = amount;
        Direction = direction;
    }

    /// <summary>How far; never negative.</summary>
    public Distance Amount { get; }

    /// <summary>Which way.</summary>
    public ChangeDirection Direction { get; }

    /// <summary>Whether it is along the wall, and not in height.</summary>
    public bool IsAlong => Direction is ChangeDirection.Left or ChangeDirection.Right;

    /// <summary>The move in words, exactly: "1/16 in to the left", "2 in down".</summary>
    public override string ToString() => Worded(Printed.Exactly(Amount, LengthUnits.Inches)).ToString();

    internal Wording Worded(PrintedQuantity amount) => Direction switch
    {
        ChangeDirection.Up => $"{amount} up",
        ChangeDirection.Down => $"{amount} down",
        ChangeDirection.Left => $"{amount} to the left",
        _ => (Wording)$"{amount} to the right",
    };
}
