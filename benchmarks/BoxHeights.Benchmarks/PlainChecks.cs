using System;

namespace BoxHeights.Benchmarks;

/// <summary>The rows as plain predicates on one box, as they would be written into a program by hand. Heights are centers above the subfloor.</summary>
internal static class PlainChecks
{
    public const long Inch = BoxCase.Inch;
    public const long Tolerance = Inch / 4;

    public static bool Reach(BoxCase box, long center)
    {
        if (box.IsDedicated)
        {
            return true;
        }

        long low = center - box.Floor - box.Below;
        long high = center - box.Floor + box.Above;
        return low >= 15 * Inch && high <= (box.HasCounter && low > box.CounterTop ? HighOver(box) : 48 * Inch);
    }

    public static bool SwitchReach(BoxCase box, long center) => !box.IsSwitch || center - box.Floor + box.Grip <= 79 * Inch;

    public static bool Counts(BoxCase box, long center) => box.Purpose != 0 || center - box.Floor <= 66 * Inch;

    public static bool AboveCounter(BoxCase box, long center) => box.Purpose != 2 || !box.HasCounter || center - box.Floor <= box.CounterTop + (20 * Inch);

    public static bool Seam(BoxCase box, long center) => center + (box.BoxHeight / 2) <= box.Seam || center - (box.BoxHeight / 2) >= box.Seam;

    public static bool Asked(BoxCase box, long center) => box.Specified is not { } asked || Math.Abs(center - asked) <= Tolerance;

    public static bool Fill(BoxCase box) =>
        ((4 * (box.Conductors + box.Clamps + (2 * box.Yokes) + 1)) + Math.Max(0, box.Grounds - 4)) * box.Allowance <= 4 * box.Volume;

    public static bool Habit(BoxCase box, long center)
    {
        (long low, long high) = HabitOf(box);
        return low <= center && center <= high;
    }

    /// <summary>A habit is silent where the other rules leave no height that it likes.</summary>
    public static bool HabitOrForced(BoxCase box, long center) => Habit(box, center) || IsForced(box);

    /// <summary>Off the level only if the other rules would let it be there.</summary>
    public static bool Level(BoxCase box, long center) => box.Purpose == 3 || Math.Abs(center - box.Level) <= Tolerance || !CanBeAt(box, box.Level);

    public static bool CanBeAt(BoxCase box, long center) =>
        Reach(box, center) && SwitchReach(box, center) && Counts(box, center) && AboveCounter(box, center) && Seam(box, center) && Asked(box, center) && Habit(box, center);

    private static long HighOver(BoxCase box)
    {
        long side = !box.FromSide || box.CounterTop > 34 * Inch ? long.MinValue
            : box.CounterDepth <= 10 * Inch ? 48 * Inch
            : box.CounterDepth <= 24 * Inch ? 46 * Inch : long.MinValue;
        long front = !box.FromFront || box.KneeSpace < box.CounterDepth ? long.MinValue
            : box.CounterDepth <= 20 * Inch ? 48 * Inch
            : box.CounterDepth <= 25 * Inch ? 44 * Inch : long.MinValue;
        return Math.Max(side, front);
    }

    private static (long Low, long High) HabitOf(BoxCase box)
    {
        long half = box.BoxHeight / 2;
        return box.Purpose switch
        {
            0 => ((12 * Inch) + half, 18 * Inch),
            1 => ((42 * Inch) - half, (52 * Inch) - half),
            2 => (42 * Inch, (52 * Inch) - half),
            _ => (long.MinValue, long.MaxValue),
        };
    }

    /// <summary>Reach and seam each leave two stretches, the rest one: whether any four of them meet.</summary>
    private static bool IsForced(BoxCase box)
    {
        const long Far = long.MaxValue / 4;
        (long low, long high) = HabitOf(box);
        high = Math.Min(high, box.IsSwitch ? (79 * Inch) + box.Floor - box.Grip : Far);
        high = Math.Min(high, box.Purpose == 0 ? (66 * Inch) + box.Floor : Far);
        high = Math.Min(high, box is { Purpose: 2, HasCounter: true } ? box.CounterTop + (20 * Inch) + box.Floor : Far);
        if (box.Specified is { } asked)
        {
            low = Math.Max(low, asked - Tolerance);
            high = Math.Min(high, asked + Tolerance);
        }

        long half = box.BoxHeight / 2;
        long reachLow = box.IsDedicated ? -Far : (15 * Inch) + box.Floor + box.Below;
        long reachHigh = box.IsDedicated ? Far : (48 * Inch) + box.Floor - box.Above;
        long top = box.HasCounter && !box.IsDedicated ? box.CounterTop + box.Floor + box.Below : Far;
        long over = box.HasCounter ? Math.Max(HighOver(box), -Far) + box.Floor - box.Above : -Far;
        return !Meets(reachLow, Math.Min(reachHigh, top)) && !Meets(Math.Max(reachLow, top + 1), over);

        bool Meets(long from, long to)
        {
            from = Math.Max(from, low);
            to = Math.Min(to, high);
            return from <= Math.Min(to, box.Seam - half) || Math.Max(from, box.Seam + half) <= to;
        }
    }
}
