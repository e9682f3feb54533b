using System;
using System.Text;

namespace BoxHeights;

/// <summary>Fills a rectangle with the lines of a pattern, each a line of its own: fills that repeat a tile are printed as images, many times the size of the page.</summary>
internal static class Hatching
{
    /// <summary>Appends the lines of a pattern as path data, on one grid for the whole page, and nothing where none crosses the rectangle.</summary>
    public static void Append(StringBuilder to, FillPattern pattern, in PageRect area)
    {
        switch (pattern)
        {
            case FillPattern.Hatch:
                Rising(to, area, 6_000);
                break;
            case FillPattern.BackHatch:
                Falling(to, area, 6_000);
                break;
            case FillPattern.Cross:
                Rising(to, area, 6_000);
                Falling(to, area, 6_000);
                break;
            case FillPattern.WideHatch:
                Rising(to, area, 14_000);
                break;
            case FillPattern.WideBackHatch:
                Falling(to, area, 14_000);
                break;
            case FillPattern.Rows:
                Level(to, area, 4_000);
                break;
            case FillPattern.Columns:
                Upright(to, area, 8_000);
                break;
            case FillPattern.Tiles:
                Level(to, area, 10_000);
                Upright(to, area, 10_000);
                break;
            case FillPattern.Diagonals:
                Line(to, area.Left, area.Bottom, area.Right, area.Top);
                Line(to, area.Left, area.Top, area.Right, area.Bottom);
                break;
            case FillPattern.Dots:
                Dotted(to, area, 5_000);
                break;
            case FillPattern.FewDots:
                Dotted(to, area, 12_000);
                break;
        }
    }

    /// <summary>The dashes that make dots of lines; empty for lines.</summary>
    public static string DashesOf(FillPattern pattern) => pattern switch { FillPattern.Dots => "1 4", FillPattern.FewDots => "1 11", _ => "" };

    // Lines on which x and y add up to a multiple of the step.
    private static void Rising(StringBuilder to, in PageRect area, long step)
    {
        for (long sum = Above(area.Left + area.Top, step); sum < area.Right + area.Bottom; sum += step)
        {
            (long from, long end) = (Math.Max(area.Left, sum - area.Bottom), Math.Min(area.Right, sum - area.Top));
            Line(to, from, sum - from, end, sum - end);
        }
    }

    // Lines on which x less y is a multiple of the step.
    private static void Falling(StringBuilder to, in PageRect area, long step)
    {
        for (long less = Above(area.Left - area.Bottom, step); less < area.Right - area.Top; less += step)
        {
            (long from, long end) = (Math.Max(area.Left, less + area.Top), Math.Min(area.Right, less + area.Bottom));
            Line(to, from, from - less, end, end - less);
        }
    }

    private static void Level(StringBuilder to, in PageRect area, long step)
    {
        for (long y = Above(area.Top - (step / 2), step) + (step / 2); y < area.Bottom; y += step)
        {
            Line(to, area.Left, y, area.Right, y);
        }
    }

    /// <summary>Level lines, and one in the middle of what is so low that none crosses it: what dots mean of a strip they mean of a thin one too.</summary>
    private static void Dotted(StringBuilder to, in PageRect area, long step)
    {
        int before = to.Length;
        Level(to, area, step);
        if (to.Length == before)
        {
            Line(to, area.Left, area.Top + (area.Height / 2), area.Right, area.Top + (area.Height / 2));
        }
    }

    private static void Upright(StringBuilder to, in PageRect area, long step)
    {
        for (long x = Above(area.Left - (step / 2), step) + (step / 2); x < area.Right; x += step)
        {
            Line(to, x, area.Top, x, area.Bottom);
        }
    }

    private static void Line(StringBuilder to, long x1, long y1, long x2, long y2)
    {
        if (x1 != x2 || y1 != y2)
        {
            to.Append('M').Append(SvgPage.Number(x1)).Append(' ').Append(SvgPage.Number(y1));
            _ = y1 == y2 ? to.Append('H').Append(SvgPage.Number(x2))
                : x1 == x2 ? to.Append('V').Append(SvgPage.Number(y2))
                : to.Append('L').Append(SvgPage.Number(x2)).Append(' ').Append(SvgPage.Number(y2));
        }
    }

    /// <summary>The first multiple of a step above a place.</summary>
    private static long Above(long place, long step)
    {
        long rest = place % step;
        return place - rest + (rest < 0 ? 0 : step);
    }
}
