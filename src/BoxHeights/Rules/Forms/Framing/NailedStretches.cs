using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The stretches of a wall in which a box's center may be when the box is nailed to something.</summary>
internal sealed class NailedStretches
{
    private readonly PlacementSite site;
    private readonly WallFraming framing;
    private readonly Distance within;
    private readonly List<(long Left, long Right, AllowedHeights Heights, bool IsOpen)> stretches = [];

    private NailedStretches(PlacementSite site, WallFraming framing, Distance within)
    {
        this.site = site;
        this.framing = framing;
        this.within = within;
    }

    /// <summary>States where a box is against something that it can be nailed to, and nowhere else.</summary>
    public static void State(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement) =>
        All(site, framing, within, statement).Sweep(statement, openSidesHold: true);

    /// <summary>States where a box is against the open side of a metal stud and against nothing else.</summary>
    public static void StateOpenSides(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement) =>
        All(site, framing, within, statement).Sweep(statement, openSidesHold: false);

    private static NailedStretches All(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement)
    {
        NailedStretches nailed = new(site, framing, within);
        Distance reach = site.Box.Size.WidthRange.To + within;
        foreach (FramingMember member in framing.Members)
        {
            if (statement.Matters(member.Left - reach, member.Right + reach))
            {
                nailed.Beside(member.Left, member.Right, member.Bottom, member.Top, nailed.OpenSideOf(member));
            }
        }

        foreach (NoCavity filled in site.Wall!.NoCavity)
        {
            if (filled.Kind == NoCavityKind.Post || filled.Kind == NoCavityKind.Blocking)
            {
                nailed.Beside(filled.Left, filled.Right, filled.Bottom, filled.Top, null);
            }
        }

        foreach (Opening opening in site.Wall.Openings)
        {
            nailed.InOpening(opening);
        }

        return nailed;
    }

    /// <summary>The open side of a whole metal stud of the layout; null where it isn't stated, or the stud may be turned because it stands at an opening.</summary>
    private StudSide? OpenSideOf(FramingMember member)
    {
        if (framing.OpenSide is not { } open || member is not { Part: FramingPart.Stud, IsSure: true })
        {
            return null;
        }

        Distance pack = framing.Thickness * 2;
        foreach (Opening opening in site.Wall!.Openings)
        {
            if (member.Left < opening.Right + pack && opening.Left - pack < member.Right)
            {
                return null;
            }
        }

        return open;
    }

    /// <summary>Against the left and the right side of a piece, where the bay has room for the box.</summary>
    private void Beside(Distance left, Distance right, Level? bottom, Level? top, StudSide? open)
    {
        AllowedHeights heights = AllowedHeights.Anything;
        heights = bottom is { } low ? heights & site.AtLeast(TargetLine.BoxBottom, low, left, right) : heights;
        heights = top is { } high ? heights & site.AtMost(TargetLine.BoxTop, high, left, right) : heights;
        Against(left, StudSide.Left, heights, open == StudSide.Left);
        Against(right, StudSide.Right, heights, open == StudSide.Right);
    }

    private void Against(Distance face, StudSide side, AllowedHeights heights, bool isOpen)
    {
        BoxSize size = site.Box.Size;
        Distance room = framing.RoomBeside(face, side);
        if (room < size.WidthRange.From)
        {
            return;
        }

        Distance center = side == StudSide.Left ? face - size.HalfWidth : face + size.HalfWidth;
        heights = room < size.WidthRange.To ? heights & AllowedHeights.DependsOn(MissingFacts.BoxSize) : heights;
        stretches.Add(((center - within).Ticks, (center + within).Ticks, heights, isOpen));
    }

    /// <summary>A box that reaches into an opening, or lies over it or in a door's pocket, is another rule's concern; one under a sill is nailed to a cripple, where those are known.</summary>
    private void InOpening(Opening opening)
    {
        Distance reach = site.Box.Size.HalfWidth - Distance.FromTicks(1);
        AllowedHeights heights = opening.Sill is { } sill && framing.KnowsUnder(opening) ? site.AtLeast(TargetLine.BoxTop, sill, opening.Left, opening.Right) : AllowedHeights.Anything;
        stretches.Add(((opening.Left - reach).Ticks, (opening.Right + reach).Ticks, heights, false));
        if (DoorPocket.TryOf(opening, out DoorPocket pocket))
        {
            stretches.Add(((pocket.Left - reach).Ticks, (pocket.Right + reach).Ticks, AllowedHeights.Anything, false));
        }
    }

    /// <summary>Sweeps along the wall: over each stretch between two ends, the heights that some piece allows. Where open sides don't hold a box, only stretches at one of them are spoken of.</summary>
    private void Sweep(PlacementStatement statement, bool openSidesHold)
    {
        long end = site.Surface.Length.Ticks;
        List<long> cuts = [0, end + 1];
        foreach ((long left, long right, _, _) in stretches)
        {
            cuts.Add(Math.Min(Math.Max(left, 0), end + 1));
            cuts.Add(Math.Min(Math.Max(right + 1, 0), end + 1));
        }

        cuts.Sort();
        stretches.Sort((a, b) => a.Left.CompareTo(b.Left));
        List<(long Left, long Right, AllowedHeights Heights, bool IsOpen)> here = [];
        int next = 0;
        for (int cut = 1; cut < cuts.Count; cut++)
        {
            long from = cuts[cut - 1];
            long to = cuts[cut] - 1;
            if (from > to || !statement.Matters(Distance.FromTicks(from), Distance.FromTicks(to)))
            {
                continue;
            }

            while (next < stretches.Count && stretches[next].Left <= from)
            {
                here.Add(stretches[next++]);
            }

            here.RemoveAll(one => one.Right < from);
            AllowedHeights allowed = AllowedHeights.Nothing;
            foreach ((_, _, AllowedHeights heights, bool isOpen) in here)
            {
                allowed |= isOpen && !openSidesHold ? AllowedHeights.Nothing : heights;
            }

            if ((openSidesHold || here.Exists(one => one.IsOpen)) && !allowed.Sure.IsAll)
            {
                statement.Within(Distance.FromTicks(from), Distance.FromTicks(to), allowed);
            }
        }
    }
}
