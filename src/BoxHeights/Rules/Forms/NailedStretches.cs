using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The stretches of a wall in which a box's center may be when the box is nailed to something.</summary>
internal sealed class NailedStretches
{
    private readonly PlacementSite site;
    private readonly WallFraming framing;
    private readonly Distance within;
    private readonly List<(long Left, long Right, AllowedHeights Heights)> stretches = [];

    private NailedStretches(PlacementSite site, WallFraming framing, Distance within)
    {
        this.site = site;
        this.framing = framing;
        this.within = within;
    }

    public static void State(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement)
    {
        NailedStretches nailed = new(site, framing, within);
        foreach (FramingMember member in framing.Members)
        {
            nailed.Beside(member.Left, member.Right, member.Bottom, member.Top);
        }

        foreach (NoCavity filled in site.Wall!.NoCavity)
        {
            if (filled.Kind == NoCavityKind.Post || filled.Kind == NoCavityKind.Blocking)
            {
                nailed.Beside(filled.Left, filled.Right, filled.Bottom, filled.Top);
            }
        }

        foreach (Opening opening in site.Wall.Openings)
        {
            nailed.InOpening(opening);
        }

        nailed.StateOthers(statement);
    }

    /// <summary>Against the left and the right side of a piece, where the bay has room for the box.</summary>
    private void Beside(Distance left, Distance right, Level? bottom, Level? top)
    {
        AllowedHeights heights = AllowedHeights.Anything;
        heights = bottom is { } low ? heights & site.AtLeast(TargetLine.BoxBottom, low, left, right) : heights;
        heights = top is { } high ? heights & site.AtMost(TargetLine.BoxTop, high, left, right) : heights;
        Against(left, StudSide.Left, heights);
        Against(right, StudSide.Right, heights);
    }

    private void Against(Distance face, StudSide side, AllowedHeights heights)
    {
        BoxSize size = site.Box.Size;
        Distance room = framing.RoomBeside(face, side);
        if (room < size.WidthRange.From)
        {
            return;
        }

        Distance center = side == StudSide.Left ? face - size.HalfWidth : face + size.HalfWidth;
        heights = room < size.WidthRange.To ? heights & AllowedHeights.DependsOn(Facts.BoxSize) : heights;
        stretches.Add(((center - within).Ticks, (center + within).Ticks, heights));
    }

    /// <summary>A box that reaches into an opening, or lies over it or in a door's pocket, is another rule's concern; one under a sill is nailed to a cripple, where those are known.</summary>
    private void InOpening(Opening opening)
    {
        Distance reach = site.Box.Size.HalfWidth - Distance.FromTicks(1);
        AllowedHeights heights = opening.Sill is { } sill && framing.KnowsUnder(opening) ? site.AtLeast(TargetLine.BoxTop, sill, opening.Left, opening.Right) : AllowedHeights.Anything;
        stretches.Add(((opening.Left - reach).Ticks, (opening.Right + reach).Ticks, heights));
        if (DoorPocket.TryOf(opening, out DoorPocket pocket))
        {
            stretches.Add(((pocket.Left - reach).Ticks, (pocket.Right + reach).Ticks, AllowedHeights.Anything));
        }
    }

    /// <summary>Sweeps along the wall: over each stretch between two ends, the heights that some piece allows.</summary>
    private void StateOthers(PlacementStatement statement)
    {
        long end = site.Surface.Length.Ticks;
        List<long> cuts = [0, end + 1];
        foreach ((long left, long right, _) in stretches)
        {
            cuts.Add(Math.Min(Math.Max(left, 0), end + 1));
            cuts.Add(Math.Min(Math.Max(right + 1, 0), end + 1));
        }

        cuts.Sort();
        stretches.Sort((a, b) => a.Left.CompareTo(b.Left));
        List<(long Left, long Right, AllowedHeights Heights)> open = [];
        int next = 0;
        for (int cut = 1; cut < cuts.Count; cut++)
        {
            long from = cuts[cut - 1];
            long to = cuts[cut] - 1;
            if (from > to)
            {
                continue;
            }

            while (next < stretches.Count && stretches[next].Left <= from)
            {
                open.Add(stretches[next++]);
            }

            open.RemoveAll(one => one.Right < from);
            AllowedHeights allowed = AllowedHeights.Nothing;
            foreach ((_, _, AllowedHeights heights) in open)
            {
                allowed |= heights;
            }

            if (!allowed.Sure.IsAll)
            {
                statement.Within(Distance.FromTicks(from), Distance.FromTicks(to), allowed);
            }
        }
    }
}
