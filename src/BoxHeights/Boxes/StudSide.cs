namespace BoxHeights;

/// <summary>Which side of a stud a box is nailed to, seen from inside the room facing the wall.</summary>
public enum StudSide
{
    /// <summary>The side toward the wall's left end.</summary>
    Left = 0,

    /// <summary>The side toward the wall's right end.</summary>
    Right = 1,
}
