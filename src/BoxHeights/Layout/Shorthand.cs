using System;

namespace BoxHeights;

/// <summary>Short names for lengths, places and heights in scripts and notebooks: <c>using static BoxHeights.Shorthand;</c>, and then <c>In("47-3/4")</c>, <c>Ft(8, 1.5m)</c>, <c>Mm(1200)</c>.</summary>
/// <remarks>Each is exact or throws, as the factories of <see cref="Distance"/> are that it stands for.</remarks>
public static class Shorthand
{
    /// <summary>So many inches: <c>In(48)</c>, <c>In(33.875m)</c>.</summary>
    /// <param name="inches">Inches, exact on the grid.</param>
    /// <exception cref="ArgumentException">It isn't on the grid.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It is beyond the scale.</exception>
    public static Distance In(decimal inches) => Distance.FromInches(inches);

    /// <summary>Inches as a tape shows them: <c>In("33-7/8")</c>.</summary>
    /// <param name="inches">A number of inches, with a fraction where there is one, and no unit.</param>
    /// <exception cref="ArgumentNullException"><paramref name="inches"/> is null.</exception>
    /// <exception cref="FormatException">It is no such number.</exception>
    public static Distance In(string inches) => Distance.TryParse((inches ?? throw new ArgumentNullException(nameof(inches))) + " in", out Distance distance)
        ? distance
        : throw new FormatException("\"" + inches + "\" is no number of inches such as 48, 33-7/8 or 5/8; Distance.Parse reads a length with its unit.");

    /// <summary>Feet and inches: <c>Ft(12)</c>, <c>Ft(8, 1.5m)</c>.</summary>
    /// <param name="feet">Whole feet; not negative where inches follow.</param>
    /// <param name="inches">Inches more; not negative.</param>
    /// <exception cref="ArgumentException">It isn't on the grid.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="inches"/> is negative, or <paramref name="feet"/> is and inches follow; or they are beyond the scale.</exception>
    public static Distance Ft(int feet, decimal inches = 0m) => inches < 0m || (feet < 0 && inches != 0m)
        ? throw new ArgumentOutOfRangeException(nameof(inches), inches, "Inches are more of a length that isn't negative; give a length below zero the sign of all of it, -Ft(1, 6).")
        : Distance.FromFeet(feet) + Distance.FromInches(inches);

    /// <summary>So many millimeters: <c>Mm(1200)</c>.</summary>
    /// <param name="millimeters">Millimeters, exact on the grid.</param>
    /// <exception cref="ArgumentException">It isn't on the grid.</exception>
    /// <exception cref="ArgumentOutOfRangeException">It is beyond the scale.</exception>
    public static Distance Mm(decimal millimeters) => Distance.FromMillimeters(millimeters);

    /// <summary>A point in plan, in inches: <c>At(80, 70)</c>.</summary>
    /// <param name="right">Inches to the right along the room's first wall, or on a drawing.</param>
    /// <param name="into">Inches into the room, or down on a drawing.</param>
    /// <exception cref="ArgumentException">One of them isn't on the grid.</exception>
    /// <exception cref="ArgumentOutOfRangeException">One of them is beyond the scale.</exception>
    public static PlanPoint At(decimal right, decimal into) => new(In(right), In(into));

    /// <summary>A point in plan: <c>At(Mm(2000), Mm(1800))</c>.</summary>
    /// <param name="right">To the right along the room's first wall, or on a drawing.</param>
    /// <param name="into">Into the room, or down on a drawing.</param>
    public static PlanPoint At(Distance right, Distance into) => new(right, into);

    /// <summary>A height as <see cref="BoxHeight.Parse"/> reads it: <c>Height("48 in to top above subfloor")</c>.</summary>
    /// <param name="text">A distance, an edge of the box and what it is measured from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">It is no such text; the message says where and why.</exception>
    public static BoxHeight Height(string text) => BoxHeight.Parse(text);
}
