using System;
using System.Globalization;

namespace BoxHeights;

/// <summary>Refuses values that are meaningless on their own, where they are given. What a check throws is told to callers by every member that uses it.</summary>
internal static class Guard
{
    /// <exception cref="ArgumentException">It is empty.</exception>
    public static string Text(string value, string name) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException(name + " is empty.", name) : value;

    /// <exception cref="ArgumentException">It is empty, or has a slash in it.</exception>
    public static string Id(string value, string name) =>
        Text(value, name).IndexOf(SurfaceAddress.Slash) >= 0 ? throw new ArgumentException(name + " \"" + value + "\" holds a slash; ids don't, because an address such as \"kitchen/north\" is a room's id and a wall's with a slash between.", name) : value;

    /// <exception cref="ArgumentException">One of them is empty, or has a slash in it.</exception>
    public static Items<string> Ids(Items<string> value, string name) => value.Select(one => Id(one, name));

    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public static Distance NotNegative(Distance value, string name) =>
        value < Distance.Zero ? throw new ArgumentOutOfRangeException(name, value, name + " is " + value + "; it can't be negative.") : value;

    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    public static Distance? NotNegative(Distance? value, string name) => value is { } given ? NotNegative(given, name) : null;

    /// <exception cref="ArgumentOutOfRangeException">It isn't more than zero.</exception>
    public static Distance Positive(Distance value, string name) =>
        value <= Distance.Zero ? throw new ArgumentOutOfRangeException(name, value, name + " is " + value + "; it must be more than zero.") : value;

    /// <exception cref="ArgumentOutOfRangeException">It isn't more than zero.</exception>
    public static Distance? Positive(Distance? value, string name) => value is { } given ? Positive(given, name) : null;

    /// <exception cref="ArgumentOutOfRangeException">It isn't more than zero.</exception>
    public static Volume? Positive(Volume? value, string name) =>
        value is { } given && given <= BoxHeights.Volume.Zero ? throw new ArgumentOutOfRangeException(name, given, name + " is " + given + "; it must be more than zero.") : value;

    /// <summary>A thickness or a height that isn't known exactly: none of it may be negative.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Some of it is negative.</exception>
    public static DistanceRange? NotNegative(DistanceRange? value, string name) =>
        value is { } given && given.From < Distance.Zero ? throw new ArgumentOutOfRangeException(name, given, name + " is " + given + "; it can't be negative.") : value;

    /// <exception cref="ArgumentOutOfRangeException">Some of it isn't more than zero.</exception>
    public static DistanceRange? Positive(DistanceRange? value, string name) =>
        value is { } given && given.From <= Distance.Zero ? throw new ArgumentOutOfRangeException(name, given, name + " is " + given + "; it must be more than zero.") : value;

    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static Items<Distance> NotNegative(Items<Distance> value, string name) => value.Select(one => NotNegative(one, name));

    /// <exception cref="ArgumentOutOfRangeException">One of them isn't more than zero.</exception>
    public static Items<Distance> Positive(Items<Distance> value, string name)
    {
        foreach (Distance one in value)
        {
            if (one <= Distance.Zero)
            {
                throw new ArgumentOutOfRangeException(name, one, name + " has " + one + " in it; each must be more than zero.");
            }
        }

        return value;
    }

    /// <summary>A value of an enum whose values go from 0 to a last one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The enum has no such value.</exception>
    public static T Known<T>(T value, T last, string name)
        where T : struct, Enum
    {
        WithinEnds(value, default(T), last, name);
        return value;
    }

    /// <exception cref="ArgumentOutOfRangeException">The enum has no such value.</exception>
    public static T? Known<T>(T? value, T last, string name)
        where T : struct, Enum => value is { } given ? Known(given, last, name) : null;

    // Not generic: each enum had a comparer of its own compiled for it, six methods, before the first evaluation in a process.
    private static void WithinEnds(Enum value, Enum first, Enum last, string name)
    {
        if (value.CompareTo(first) < 0 || value.CompareTo(last) > 0)
        {
            throw new ArgumentOutOfRangeException(name, value, name + " is " + value + ", which is no " + value.GetType().Name + ".");
        }
    }

    /// <summary>Counts of 1 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One of them is less than 1.</exception>
    public static Items<int> Counts(Items<int> value, string name) => value.Select(one => Count(one, name));

    /// <summary>Two opposite corners, or more that lie within a rectangle; none where they aren't stated.</summary>
    /// <exception cref="ArgumentException">There is one, or all of them lie straight beside or behind each other.</exception>
    public static Items<PlanPoint> Corners(Items<PlanPoint> value, string name) =>
        value.Count == 0 || (value.Exists(corner => corner.Right != value[0].Right) && value.Exists(corner => corner.Into != value[0].Into)) ? value
            : throw new ArgumentException(name + (value.Count == 1 ? " has one corner" : " has no extent from " + value[0]) + "; it takes two opposite corners.", name);

    /// <summary>An outline by its corners, or none where it isn't stated.</summary>
    /// <exception cref="ArgumentException">There are fewer than three.</exception>
    public static Items<PlanPoint> Outline(Items<PlanPoint> value, string name) =>
        value.Count is 1 or 2 ? throw new ArgumentException(name + " has " + value.Count + (value.Count == 1 ? " corner" : " corners") + "; an outline has three or more.", name) : value;

    /// <summary>What a function that changes a described thing gave back.</summary>
    public static T Changed<T>(T? value, string name)
        where T : class => value ?? throw new ArgumentException("The change gives null.", name);

    /// <exception cref="ArgumentNullException">It is null.</exception>
    public static T NotNull<T>(T? value, string name)
        where T : class => value ?? throw new ArgumentNullException(name);

    /// <exception cref="ArgumentOutOfRangeException">It isn't from −360 to 360.</exception>
    public static decimal Turn(decimal degrees, string name) =>
        degrees is < -360m or > 360m ? throw new ArgumentOutOfRangeException(name, degrees, name + " is " + degrees.ToString(CultureInfo.InvariantCulture) + "; it is from -360 to 360.") : degrees;

    /// <summary>What is worked out of measures; those that can't be added up any more are no measures of a house.</summary>
    public static T WithinReason<T>(Func<T> worked, string what, string name)
    {
        try
        {
            return worked();
        }
        catch (OverflowException beyond)
        {
            throw new ArgumentException("A measure of " + what + " is larger than anything in a house.", name, beyond);
        }
    }

    /// <exception cref="ArgumentOutOfRangeException">It is less than 1.</exception>
    public static int Count(int value, string name) =>
        value < 1 ? throw new ArgumentOutOfRangeException(name, value, name + " is " + value + "; it counts from 1.") : value;

    /// <exception cref="ArgumentOutOfRangeException">It is less than 1.</exception>
    public static int? Count(int? value, string name) => value is { } given ? Count(given, name) : null;
}
