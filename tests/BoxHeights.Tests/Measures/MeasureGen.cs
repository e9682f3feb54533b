using System;
using System.Collections.Generic;
using System.Globalization;
using System.Numerics;
using FsCheck;
using FsCheck.Fluent;
using Fractions;

namespace BoxHeights.Tests.Measures;

/// <summary>What the properties here draw from, and exact arithmetic by another library.</summary>
internal static class MeasureGen
{
    public static readonly string[] Cultures = ["", "de-DE", "ar-SA", "tr-TR"];

    /// <summary>Any long, with the ends of the scale, small numbers and round ones more often than by chance.</summary>
    public static Gen<long> Longs { get; } = Gen.OneOf(
        Gen.Choose(-10, 10).Select(n => (long)n),
        Gen.Choose(int.MinValue, int.MaxValue).Select(n => (long)n),
        Gen.Choose(-100_000, 100_000).Select(n => n * 15_875L),
        Gen.Choose(-100_000, 100_000).Select(n => n * 2_032L),
        Gen.Choose(0, 20).Select(n => long.MaxValue - n),
        Gen.Choose(0, 20).Select(n => long.MinValue + n),
        from high in Gen.Choose(int.MinValue, int.MaxValue)
        from low in Gen.Choose(int.MinValue, int.MaxValue)
        select ((long)high << 32) | (uint)low);

    public static Gen<Distance> Distances { get; } = Longs.Select(Distance.FromTicks);

    /// <summary>Within 100,000 km either way, so that sums of two are on the scale.</summary>
    public static Gen<Distance> HalfScale { get; } = Longs.Select(n => Distance.FromTicks(n / 2));

    public static Gen<Distance> Steps { get; } = Gen.OneOf(
        Gen.Choose(1, 40).Select(n => Distance.FromTicks(n)),
        Gen.Choose(1, 256).Select(n => Distance.FromInches(0, n, 16)),
        Gen.Choose(1, 100).Select(n => Distance.FromMillimeters(n)));

    public static void Holds<T>(Gen<T> gen, Func<T, bool> law) => Prop.ForAll(gen.ToArbitrary(), law).Check(Tries.Always(100));

    public static void Holds<T>(Gen<T> gen, Func<T, IEnumerable<T>> shrink, Func<T, bool> law) =>
        Prop.ForAll(Arb.From(gen, shrink), law).Check(Tries.Always(100));

    /// <summary>Gen of pairs.</summary>
    public static Gen<(TA A, TB B)> Both<TA, TB>(Gen<TA> first, Gen<TB> second) =>
        from a in first
        from b in second
        select (a, b);

    /// <summary>A fraction as a whole number, or null where it isn't one or is beyond a long.</summary>
    public static long? WholeLong(Fraction value) =>
        value.Denominator.IsOne && value.Numerator >= long.MinValue && value.Numerator <= long.MaxValue ? (long)value.Numerator : null;

    /// <summary>The nearest whole number, half to even, by big integers alone.</summary>
    public static BigInteger HalfEven(Fraction value)
    {
        BigInteger doubled = (value.Numerator * 2) + value.Denominator;
        BigInteger floor = BigInteger.DivRem(doubled, value.Denominator * 2, out BigInteger rest);
        floor -= rest < 0 ? 1 : 0;
        return rest.IsZero && !floor.IsEven ? floor - 1 : floor;
    }

    /// <summary>Runs in a culture of its own: a thread's culture is not changed for others.</summary>
    public static void InCulture(string name, Action action)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            action();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
