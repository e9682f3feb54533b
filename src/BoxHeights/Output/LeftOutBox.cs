namespace BoxHeights;

/// <summary>A box that a paper has no line for, and why.</summary>
[Told]
public sealed partial record LeftOutBox
{
    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>Why the report leaves it out, in words.</summary>
    public string Why { get; }

    /// <summary>The box and why: "W9: its height names no edge".</summary>
    public override string ToString() => BoxId + ": " + Why;
}
