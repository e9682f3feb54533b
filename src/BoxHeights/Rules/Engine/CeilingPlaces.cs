using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where in its ceiling a box goes that isn't well where it is offered: as near as may be to that, off whatever a rule keeps it from.</summary>
internal static class CeilingPlaces
{
    // Of a room's length and depth: in a room of 16 ft a foot.
    private const int Parts = 16;

    /// <summary>The box where nothing is found of it, or where it is offered if that is nowhere.</summary>
    public static PlacedBox Well(LayoutState state, PlacedBox offered)
    {
        if (offered.Box.Plan is not { } wish || state.SurfaceAt(offered.Address) is not { Kind: BoxSurface.Ceiling, Space.Room: { } room } || IsWell(state, offered))
        {
            return offered;
        }

        List<PlanPoint> places = Grid(room, state.Options.AlongStep);
        places.Sort((a, b) => Off(a) != Off(b) ? Off(a).CompareTo(Off(b)) : a.Right != b.Right ? a.Right.CompareTo(b.Right) : a.Into.CompareTo(b.Into));
        foreach (PlanPoint place in places)
        {
            PlacedBox there = new(offered.Address, offered.Box.WithPlan(place));
            if (IsWell(state, there))
            {
                return there;
            }
        }

        return offered;

        decimal Off(PlanPoint point) => Square(point.Right - wish.Right) + Square(point.Into - wish.Into);

        static decimal Square(Distance distance) => (decimal)distance.Ticks * distance.Ticks;
    }

    private static List<PlanPoint> Grid(Room room, Distance step)
    {
        List<PlanPoint> found = [];
        WallPlan plan = new(room);
        if (plan.Extent is not var (least, most))
        {
            return found;
        }

        for (int column = 1; column < Parts; column++)
        {
            for (int row = 1; row < Parts; row++)
            {
                PlanPoint place = new(Part(least.Right, most.Right, column), Part(least.Into, most.Into, row));
                if (plan.Holds(place, Distance.Zero))
                {
                    found.Add(place);
                }
            }
        }

        return found;

        Distance Part(Distance from, Distance to, int part) => (from + Distance.FromTicks((to - from).Ticks / Parts * part)).RoundNearest(step);
    }

    private static bool IsWell(LayoutState state, PlacedBox placed)
    {
        using LayoutState.Trial? trial = state.With(new[] { placed }, nearby: true);
        return trial is not null && !trial.Findings.Exists(finding => finding.Subject == placed.Box.Id);
    }
}
