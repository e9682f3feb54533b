using System;

namespace BoxHeights;

/// <summary>A straight line in plan that is walked with the room at one's right hand, as a wall face is from its left end to its right.</summary>
/// <remarks>Lines at right angles to a room's first wall are exact; on others a place is rounded once, to the nearest tick.</remarks>
internal readonly struct PlanLine
{
    private readonly decimal cosine;
    private readonly decimal sine;

    private PlanLine(PlanPoint start, decimal cosine, decimal sine, Distance length)
    {
        Start = start;
        Length = length;
        this.cosine = cosine;
        this.sine = sine;
    }

    public PlanPoint Start { get; }

    public Distance Length { get; }

    public PlanPoint End => At(Length);

    /// <summary>A line that runs at so many degrees to the room's first wall, turning into the room.</summary>
    public static PlanLine Heading(PlanPoint start, decimal degrees, Distance length)
    {
        (decimal cosine, decimal sine) = Turn.Of(degrees);
        return new(start, cosine, sine, length);
    }

    /// <summary>The line between two points that differ.</summary>
    public static PlanLine Between(PlanPoint from, PlanPoint to)
    {
        decimal right = (to.Right - from.Right).Ticks;
        decimal into = (to.Into - from.Into).Ticks;
        decimal length = right == 0 ? Math.Abs(into) : into == 0 ? Math.Abs(right) : Math.Abs(right) * Turn.Root(1m + (into / right * (into / right)));
        return new(from, right / length, into / length, Distance.FromTicks((long)Math.Round(length)));
    }

    public PlanPoint At(Distance along) =>
        new(Start.Right + Rounded(along.Ticks * cosine), Start.Into + Rounded(along.Ticks * sine));

    /// <summary>Where a point is seen from the line: how far along it, and how far off it toward the room.</summary>
    public void Locate(PlanPoint point, out Distance along, out Distance off)
    {
        decimal right = (point.Right - Start.Right).Ticks;
        decimal into = (point.Into - Start.Into).Ticks;
        along = Rounded((right * cosine) + (into * sine));
        off = Rounded((into * cosine) - (right * sine));
    }

    private static Distance Rounded(decimal ticks) => Distance.FromTicks((long)Math.Round(ticks));

    /// <summary>Sines, cosines and roots in decimals: the same digits on every machine.</summary>
    private static class Turn
    {
        private const decimal Pi = 3.1415926535897932384626433833m;

        public static (decimal Cosine, decimal Sine) Of(decimal degrees)
        {
            decimal rest = degrees % 360m;
            rest = rest < 0 ? rest + 360m : rest;
            int quarter = (int)(rest / 90m);
            (decimal cosine, decimal sine) = FirstQuarter(rest - (90m * quarter));
            return quarter switch
            {
                0 => (cosine, sine),
                1 => (-sine, cosine),
                2 => (-cosine, -sine),
                _ => (sine, -cosine),
            };
        }

        public static decimal Root(decimal square)
        {
            decimal root = Math.Max(1m, square / 2m);
            for (int step = 0; step < 200; step++)
            {
                decimal next = (root + (square / root)) / 2m;
                if (next == root)
                {
                    return next;
                }

                root = next;
            }

            return root;
        }

        private static (decimal Cosine, decimal Sine) FirstQuarter(decimal degrees)
        {
            if (degrees == 0m)
            {
                return (1m, 0m);
            }

            decimal angle = degrees * Pi / 180m;
            decimal cosine = 0m;
            decimal sine = 0m;
            decimal term = 1m;
            for (int n = 0; term != 0m; n++)
            {
                decimal signed = n % 4 < 2 ? term : -term;
                cosine += n % 2 == 0 ? signed : 0m;
                sine += n % 2 == 0 ? 0m : signed;
                term = term * angle / (n + 1);
            }

            return (cosine, sine);
        }
    }
}
