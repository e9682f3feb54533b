using System;

namespace BoxHeights;

/// <summary>Where two sheets of a course of wall board meet end to end.</summary>
[Described(nameof(Course), nameof(Along))]
public sealed partial record ButtJoint
{
    /// <summary>The course, in hanging order: the first is 1.</summary>
    public int Course
    {
        get;
        init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(Course), value, "Courses are counted from 1.");
    }

    /// <summary>From the wall's left end (framing face).</summary>
    public Distance Along { get; init => field = Guard.NotNegative(value, nameof(Along)); }
}
