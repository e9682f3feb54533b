using System;

namespace BoxHeights;

/// <content>What can't be about the heights of a room and of what is in it.</content>
internal sealed partial class Resolver
{
    /// <summary>A room between its floor and its ceiling.</summary>
    private void HasRoom(Room room, ResolvedSpace space)
    {
        if (space.Framing is not { } framing)
        {
            return;
        }

        if (framing.To <= Distance.Zero)
        {
            Contradicts(room.Id, $"its subfloor lies at or above its ceiling, which is {Printed.Exactly(-framing, units):depth} below it");
        }
        else if (space.BoardWall is { } under && under.To <= Distance.Zero)
        {
            Contradicts(room.Id, $"what hangs under its ceiling framing, {Printed.Exactly(framing - under, units):build}, reaches down to its subfloor: the framing is {Printed.Exactly(framing, units):framing} above that");
        }
        else if (room.Floor?.Thickness is { } floor && floor.From >= (space.BoardWall ?? framing).To)
        {
            Contradicts(room.Id, $"its floor is {Printed.Exactly(floor, units):floor} thick, which reaches its ceiling, {Printed.Exactly(space.BoardWall ?? framing, units):ceiling} above the subfloor");
        }
    }

    /// <summary>Parts of a wall that lie under the floor or over the ceiling. Outdoors and along a stair they may; and tile to the ceiling is often said to end a little over it.</summary>
    private void BetweenFloorAndCeiling(ResolvedSurface surface, Wall wall)
    {
        if (surface.Space.IsOutside || surface.Stair is not null)
        {
            return;
        }

        Distance? overhead = surface.MostFraming;
        foreach (Opening opening in wall.Openings)
        {
            Within(surface.Space, surface.Address, opening.Id, opening.Head, "head", isTop: true, null);
            Within(surface.Space, surface.Address, opening.Id, opening.Sill, "sill", isTop: false, overhead);
        }

        foreach (Counter counter in wall.Counters)
        {
            Within(surface.Space, surface.Address, counter.Id, counter.Top, "top", isTop: true, overhead);
        }

        foreach (Finish finish in wall.Finishes)
        {
            Within(surface.Space, surface.Address, finish.Id, finish.Top, "top", isTop: true, null);
            Within(surface.Space, surface.Address, finish.Id, finish.Bottom, "bottom", isTop: false, overhead);
        }

        foreach (Covering covering in wall.Coverings)
        {
            Within(surface.Space, surface.Address, covering.Id, covering.Top, "top", isTop: true, null);
            Within(surface.Space, surface.Address, covering.Id, covering.Bottom, "bottom", isTop: false, overhead);
        }
    }

    private void Within(ResolvedSpace space, string whole, string part, Level? level, string what, bool isTop, Distance? overhead)
    {
        if (level is not { } given || Above(space, given) is not { } up)
        {
            return;
        }

        if (isTop && up.To <= Distance.Zero)
        {
            Contradicts(SurfaceAddress.Of(whole, part), $"its {Wording.Term(what):what} is given as {Printed.Exactly(given, units):level}, which isn't above the subfloor");
        }
        else if (overhead is { } framing && (isTop ? up.From > framing : up.From >= framing))
        {
            Contradicts(SurfaceAddress.Of(whole, part), $"its {Wording.Term(what):what} is at {Text(up.From):level} above the subfloor, but the ceiling framing is at {Text(framing):framing}");
        }
    }

    /// <summary>Heads above the ceiling framing. What is beside and under such an opening is where it is whatever is wrong above, so that all of it is judged.</summary>
    private void HeadsAboveTheCeiling(ResolvedSpace space, string address, Wall wall)
    {
        foreach (Opening opening in wall.Top.Count == 0 ? wall.Openings : default)
        {
            if (opening.Head is { } head && space.Framing is { } framing && Above(space, head) is { } up && up.From > framing.To)
            {
                Contradicts(SurfaceAddress.Of(address, opening.Id), $"its head is at {Text(up.From):head} above the subfloor, but the ceiling framing is at {Text(framing.To):framing}");
            }
        }
    }

    /// <summary>What has a lower and an upper edge has them in that order.</summary>
    private void Upright(ResolvedSpace space, string subject, Level? low, Level? high, string lower, string upper, string? part = null)
    {
        OfAHouse(low, subject, lower == "sill" ? "its sill" : "its bottom");
        OfAHouse(high, subject, upper == "head" ? "its head" : "its top");
        if (low is { } bottom && high is { } top && (bottom.Datum == top.Datum ? bottom.Offset >= top.Offset : Above(space, bottom)?.From >= Above(space, top)?.To))
        {
            Contradicts(subject, part is not null ? $"the bottom of its {Wording.Term(part):part}, {Printed.Exactly(bottom, units):bottom}, isn't below the top, {Printed.Exactly(top, units):top}"
                : (Wording)$"its {Wording.Term(lower):lower}, {Printed.Exactly(bottom, units):bottom}, isn't below its {Wording.Term(upper):upper}, {Printed.Exactly(top, units):top}");
        }
    }

    /// <summary>How high a level lies above the room's subfloor; null where that isn't known.</summary>
    private static DistanceRange? Above(ResolvedSpace space, Level level)
    {
        try
        {
            return space.Levels.TryOffset(Datum.Subfloor, level.Datum, out DistanceRange up) ? up + level.Offset : null;
        }
        catch (OverflowException)
        {
            return null;
        }
    }
}
