using System;

namespace BoxHeights;

/// <summary>Sizes that have an exact half, so that a center never needs rounding.</summary>
internal static class EvenSize
{
    internal static Distance Check(Distance size, string name)
    {
        if (size.Ticks <= 0)
        {
            throw new ArgumentException("A width or height is more than zero.", name);
        }

        return size.Ticks % 2 == 0
            ? size
            : throw new ArgumentException("A width or height is an even number of ticks (any 1/64 in, any 0.1 mm), so that its center is exact.", name);
    }

    internal static DistanceRange Check(DistanceRange range, Distance nominal, string name)
    {
        Check(range.From, name);
        Check(range.To, name);
        return range.Contains(nominal)
            ? range
            : throw new ArgumentException("The range doesn't hold the nominal size " + nominal + ".", name);
    }

    internal static Distance Half(Distance size) => Distance.FromTicks(size.Ticks / 2);

    /// <summary>The text of width × height, with the unit once where both have the same.</summary>
    internal static string Text(Distance width, Distance height)
    {
        string first = width.ToString();
        string second = height.ToString();
        int unit = first.LastIndexOf(' ');
        bool same = unit >= 0 && second.EndsWith(first.Substring(unit), StringComparison.Ordinal);
        return (same ? first.Substring(0, unit) : first) + " × " + second;
    }
}
