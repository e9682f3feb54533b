namespace BoxHeights;

/// <summary>The point of a run that is furthest from every outlet that counts.</summary>
[Told]
public sealed partial record WorstPoint
{
    /// <summary>The address of the wall, or of what stands in the room.</summary>
    public string Address { get; }

    /// <summary>Where it is, from the wall's left end.</summary>
    public Distance Along { get; }

    /// <summary>How far the nearest outlet that counts is along the run.</summary>
    public Distance Away { get; }

    /// <summary>The point in words: "living/north 132 in, 134 in away".</summary>
    public override string ToString() => Address + " " + Along + ", " + Away + " away";
}
