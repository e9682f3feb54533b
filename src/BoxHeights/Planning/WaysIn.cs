using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where people walk into a room, by what lies beyond: which of its openings are ways in, and how far they are apart.</summary>
internal sealed class WaysIn(DoorsThrough doors, SwitchesAtEntrances habit)
{
    // A closet that is too shallow to be walked into has the others.
    private static readonly Items<OpeningKind> Entrances = OpeningKind.Doorways.Where(kind => kind != OpeningKind.BifoldDoor && kind != OpeningKind.BypassDoor);

    /// <summary>Whether people walk in through an opening.</summary>
    public static bool IsWayIn(Opening opening) => Entrances.Contains(opening.Kind);

    /// <summary>The doors of a closet, those too that one only reaches in through.</summary>
    public static List<RoomOpening> ToACloset(Room room) => Of(room, OpeningKind.Doorways);

    /// <summary>The ways into a room that get switches: a closet's door isn't one, nor one from a room that one only gets to through it. Where there are no others, the two of those that are farthest apart.</summary>
    public List<RoomOpening> To(Room room)
    {
        List<RoomOpening> all = DoorsOf(room);
        List<RoomOpening> ways = all.FindAll(one => doors.OtherSide(one) is not { } other || Privacy(other.Room.Kind) <= Privacy(room.Kind));

        // From which wall a room's description begins, and which way round it goes, tells nothing.
        ways.Sort(InOrder);
        all.Sort(InOrder);
        return ways.Count > 0 ? ways : all.Count < 3 ? all : FarthestApart(room, all);
    }

    private List<RoomOpening> DoorsOf(Room room) => Of(room, Entrances).FindAll(one => doors.OtherSide(one) is not { } other || !SwitchSide.IsSetOutside(other.Room.Kind));

    private static List<RoomOpening> FarthestApart(Room room, List<RoomOpening> all)
    {
        WallPlan plan = new(room);
        List<RoomOpening> best = [all[0], all[1]];
        foreach (RoomOpening one in all)
        {
            foreach (RoomOpening other in all)
            {
                best = Apart(plan, one, other) > Apart(plan, best[0], best[1]) ? [one, other] : best;
            }
        }

        return best;
    }

    /// <summary>In a passage, the door that is farthest from all ways in: whoever comes out of it at night doesn't walk back in the dark.</summary>
    public RoomOpening? AtTheFarEnd(Room room, List<RoomOpening> ways)
    {
        if (habit.FarEnd is not { } far || !habit.Passages.Contains(room.Kind) || ways.Count == 0)
        {
            return null;
        }

        WallPlan plan = new(room);
        RoomOpening? farthest = null;
        decimal most = (decimal)far.Ticks * far.Ticks;
        foreach (RoomOpening door in DoorsOf(room))
        {
            decimal nearest = decimal.MaxValue;
            ways.ForEach(way => nearest = System.Math.Min(nearest, Apart(plan, door, way)));
            (farthest, most) = nearest > most ? (door, nearest) : (farthest, most);
        }

        return farthest;
    }

    /// <summary>How far the middles of two ways in are apart in plan, squared.</summary>
    public static decimal Apart(WallPlan plan, RoomOpening one, RoomOpening other)
    {
        if (plan.IsTooLarge)
        {
            return 0m;
        }

        (decimal x, decimal y) = Middle(one);
        (decimal toX, decimal toY) = Middle(other);
        return ((toX - x) * (toX - x)) + ((toY - y) * (toY - y));

        (decimal X, decimal Y) Middle(RoomOpening way) => plan[plan.IndexOf(way.Wall.Id)].InPlan((way.Opening.Left.Ticks + way.Opening.Right.Ticks) / 2m, 0m);
    }

    private int InOrder(RoomOpening one, RoomOpening other) => Beyond(one) != Beyond(other) ? Beyond(one).CompareTo(Beyond(other)) : string.CompareOrdinal(one.Opening.Id, other.Opening.Id);

    private int Beyond(RoomOpening one) => doors.OtherSide(one) is { } other ? Privacy(other.Room.Kind) : -1;

    private int Privacy(RoomKind kind)
    {
        int rank = habit.Inward.Count - 1;
        while (rank >= 0 && habit.Inward[rank] != kind)
        {
            rank--;
        }

        return rank;
    }

    private static List<RoomOpening> Of(Room room, Items<OpeningKind> kinds)
    {
        List<RoomOpening> found = [];
        foreach (Wall wall in room.Walls)
        {
            if (wall.Open)
            {
                found.Add(RoomOpening.OpenSide(room, wall));
                continue;
            }

            foreach (Opening opening in wall.Openings)
            {
                if (kinds.Contains(opening.Kind) && opening.Left < opening.Right && opening.Right <= wall.Length)
                {
                    found.Add(new(room, wall, opening));
                }
            }
        }

        return found;
    }
}
