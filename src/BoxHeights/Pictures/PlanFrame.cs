using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where a plan is on the page, and how large.</summary>
internal sealed class PlanFrame
{
    private readonly ElevationFrame frame;
    private readonly Distance left;

    private PlanFrame(ElevationFrame frame, Distance left, PageRect labels, long around)
    {
        this.frame = frame;
        this.left = left;
        Labels = labels;
        Bottom = frame.Area.Bottom + around;
    }

    /// <summary>Ticks to a thousandth of a user unit.</summary>
    public long Scale => frame.Scale;

    /// <summary>Where labels may be.</summary>
    public PageRect Labels { get; }

    /// <summary>The lower end of what the plan takes of the page.</summary>
    public long Bottom { get; }

    /// <summary>The lower left corner of the plan, for what has no place in it.</summary>
    public PageRect Corner => new(frame.Area.Left, frame.Area.Bottom, 1, 1);

    /// <summary>A frame that holds some points, with room for names and lengths around them.</summary>
    public static PlanFrame Around(List<PlanPoint> points, SvgPage page, PictureOptions options)
    {
        (Distance left, Distance right, Distance near, Distance far) = (points[0].Right, points[0].Right, points[0].Into, points[0].Into);
        foreach (PlanPoint point in points)
        {
            (left, right) = (Distance.Min(left, point.Right), Distance.Max(right, point.Right));
            (near, far) = (Distance.Min(near, point.Into), Distance.Max(far, point.Into));
        }

        long around = Math.Min(page.Line * 4, page.TextWidth / 8);
        Distance one = Distance.FromInches(1);
        ElevationFrame frame = ElevationFrame.Within(
            Distance.Max(one, right - left), -Distance.Max(far, near + one), -near, page.Margin + around, page.Cursor + around, page.TextWidth - (2 * around),
            (options.DrawingHeight ?? Math.Max(60, options.Width * 7 / 10)) * 1000L);
        return new(frame, left, new(page.Margin, page.Cursor, page.TextWidth, frame.Area.Height + (2 * around)), around);
    }

    public (long X, long Y) At(PlanPoint point) => (frame.X(point.Right - left), frame.Y(-point.Into));

    /// <summary>The rectangle round some points.</summary>
    public static PageRect Round((long X, long Y)[] points)
    {
        (long left, long top, long right, long bottom) = (points[0].X, points[0].Y, points[0].X, points[0].Y);
        foreach ((long x, long y) in points)
        {
            (left, top, right, bottom) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x), Math.Max(bottom, y));
        }

        return new(left, top, Math.Max(1, right - left), Math.Max(1, bottom - top));
    }
}
