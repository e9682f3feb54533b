using System;

namespace BoxHeights;

/// <summary>Refuses values that are meaningless on their own, where they are given.</summary>
internal static class Valid
{
    public static string Text(string value, string name) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException(name + " is empty.", name) : value;

    public static string Id(string value, string name) =>
        Text(value, name).IndexOf('/') >= 0 ? throw new ArgumentException(name + " \"" + value + "\" holds a slash, which parts a room's id from a wall's.", name) : value;

    public static Distance NotNegative(Distance value, string name) =>
        value < Distance.Zero ? throw new ArgumentOutOfRangeException(name, name + " is " + value + "; it can't be negative.") : value;

    public static Distance? NotNegative(Distance? value, string name) => value is { } given ? NotNegative(given, name) : null;

    public static Distance Positive(Distance value, string name) =>
        value <= Distance.Zero ? throw new ArgumentOutOfRangeException(name, name + " is " + value + "; it must be more than zero.") : value;

    public static Distance? Positive(Distance? value, string name) => value is { } given ? Positive(given, name) : null;

    public static Volume? Positive(Volume? value, string name) =>
        value is { } given && given <= BoxHeights.Volume.Zero ? throw new ArgumentOutOfRangeException(name, name + " is " + given + "; it must be more than zero.") : value;

    public static int Count(int value, string name) =>
        value < 1 ? throw new ArgumentOutOfRangeException(name, name + " is " + value + "; it counts from 1.") : value;

    public static int? Count(int? value, string name) => value is { } given ? Count(given, name) : null;
}
