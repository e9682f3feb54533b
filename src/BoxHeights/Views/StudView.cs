namespace BoxHeights;

/// <summary>An upright piece of a wall's framing, with its ends above the storey's subfloor.</summary>
public sealed class StudView
{
    internal StudView(in FramingMember member, DistanceRange? bottom, DistanceRange? top, bool isAssumed)
    {
        Part = member.Part;
        Number = member.Number;
        Left = member.Left;
        Right = member.Right;
        Bottom = bottom;
        Top = top;
        IsSure = member.IsSure;
        IsReplaced = member.IsReplaced;
        IsAssumed = isAssumed;
    }

    /// <summary>What it is there for.</summary>
    public FramingPart Part { get; }

    /// <summary>Its number among the studs between the corners, from 1 at the left; null for what corners and openings add.</summary>
    public int? Number { get; }

    /// <summary>Its left face, from the wall's left end.</summary>
    public Distance Left { get; }

    /// <summary>Its right face, from the wall's left end.</summary>
    public Distance Right { get; }

    /// <summary>Its lower end: the top of the bottom plate unless stated.</summary>
    public DistanceRange? Bottom { get; }

    /// <summary>Its upper end: the lowest that the top of the wall's framing is over it, unless stated; null where that isn't known.</summary>
    public DistanceRange? Top { get; }

    /// <summary>Whether it is there whatever isn't known: see <see cref="FramingMember.IsSure"/>.</summary>
    public bool IsSure { get; }

    /// <summary>Whether a corner, king or jack surely stands where the layout has it, so that it is left out or moved.</summary>
    public bool IsReplaced { get; }

    /// <summary>Whether nobody has seen where it stands: a stud of a layout that is only assumed.</summary>
    public bool IsAssumed { get; }

    /// <summary>Whether a height is between its ends as far as they are known.</summary>
    internal bool StandsAt(Distance up) => !(Bottom is { } bottom && bottom.To > up) && !(Top is { } top && top.From < up);

    /// <summary>What it is and where it stands.</summary>
    public override string ToString() => Part.ToString().ToLowerInvariant() + (Number is { } number ? " " + number : "") + ", " + Left + " to " + Right;
}
