namespace BoxHeights;

/// <summary>One of the spaces into which barriers divide a box. From left to right, each takes the next of the box's devices, cables and conductors.</summary>
/// <remarks>What is left over in the box's lists is in none of them, and counts toward the whole box alone; so does what is fitted inside.</remarks>
[Described]
public sealed partial record BoxCompartment
{
    /// <summary>How many of the box's devices are in it, 1 or more; none unless stated.</summary>
    public int? Devices { get; init => field = Guard.Count(value, nameof(Devices)); }

    /// <summary>How many of the box's cables enter it, 1 or more; none unless stated.</summary>
    public int? Cables { get; init => field = Guard.Count(value, nameof(Cables)); }

    /// <summary>How many entries of the box's list of conductors are in it, 1 or more; none unless stated.</summary>
    public int? Conductors { get; init => field = Guard.Count(value, nameof(Conductors)); }

    /// <summary>The room inside it, with rings and extensions over it; null where it isn't stated.</summary>
    public Volume? Volume { get; init => field = Guard.Positive(value, nameof(Volume)); }
}
