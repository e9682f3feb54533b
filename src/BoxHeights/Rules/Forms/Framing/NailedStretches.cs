using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The stretches of a wall in which a box's center may be when the box is nailed to something.</summary>
internal sealed class NailedStretches
{
    private readonly List<Stretch> stretches = [];

    // Apart from the stretches, which are sorted and copied: most allow any height, and a statement of heights is large.
    private readonly List<AllowedHeights> heightsOf = [];
    private readonly List<long> cuts = [];
    private readonly List<Stretch> here = [];
    private PlacementSite site = null!;
    private WallFraming framing = null!;
    private Distance within;

    /// <summary>States where a box is against something that it can be nailed to, and nowhere else.</summary>
    public static void State(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement) =>
        All(site, framing, within, statement).Sweep(statement, openSidesHold: true);

    /// <summary>States where a box is against the open side of a metal stud and against nothing else.</summary>
    public static void StateOpenSides(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement) =>
        All(site, framing, within, statement).Sweep(statement, openSidesHold: false);

    private static NailedStretches All(PlacementSite site, WallFraming framing, Distance within, PlacementStatement statement)
    {
        NailedStretches nailed = statement.Scratch.Of<NailedStretches>();
        nailed.Begin(site, framing, within);
        Distance reach = site.Box.Size.WidthRange.To + within;
        foreach (FramingMember member in framing.Members)
        {
            if (statement.Matters(member.Left - reach, member.Right + reach))
            {
                nailed.Beside(member.Left, member.Right, null, member.Top, nailed.OpenSideOf(member));
            }
        }

        foreach (NoCavity filled in site.Surface.Wall!.NoCavity)
        {
            if ((filled.Kind == NoCavityKind.Post || filled.Kind == NoCavityKind.Blocking) && statement.Matters(filled.Left - reach, filled.Right + reach))
            {
                nailed.Beside(filled.Left, filled.Right, filled.Bottom, filled.Top, null);
            }
        }

        foreach (Opening opening in site.Surface.Wall.Openings)
        {
            nailed.InOpening(opening, statement);
        }

        return nailed;
    }

    private void Begin(PlacementSite of, WallFraming framed, Distance asNear)
    {
        site = of;
        framing = framed;
        within = asNear;
        stretches.Clear();
        heightsOf.Clear();
        cuts.Clear();
        here.Clear();
    }

    /// <summary>The open side of a whole metal stud of the layout; null where it isn't stated, or the stud may be turned because it stands at an opening.</summary>
    private StudSide? OpenSideOf(FramingMember member)
    {
        if (framing.OpenSide is not { } open || member is not { Part: FramingPart.Stud, IsSure: true })
        {
            return null;
        }

        Distance pack = framing.Thickness * 2;
        foreach (Opening opening in site.Surface.Wall!.Openings)
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
        Add(center - within, center + within, heights, isOpen);
    }

    /// <summary>A box that reaches into an opening, or lies over it or in a door's pocket, is another rule's concern; one under a sill is nailed to a cripple, where those are known.</summary>
    private void InOpening(Opening opening, PlacementStatement statement)
    {
        Distance reach = site.Box.Size.HalfWidth - Distance.FromTicks(1);
        if (statement.Matters(opening.Left - reach, opening.Right + reach))
        {
            AllowedHeights heights = opening.Sill is { } sill && framing.KnowsUnder(opening) ? site.AtLeast(TargetLine.BoxTop, sill, opening.Left, opening.Right) : AllowedHeights.Anything;
            Add(opening.Left - reach, opening.Right + reach, heights, false);
        }

        if (DoorPocket.TryOf(opening, site.Usual, out DoorPocket pocket))
        {
            Add(pocket.Left - reach, pocket.Right + reach, AllowedHeights.Anything, false);
        }
    }

    private void Add(Distance left, Distance right, in AllowedHeights heights, bool isOpen)
    {
        stretches.Add(new(left.Ticks, right.Ticks, heights.Sure.IsAll ? -1 : heightsOf.Count, isOpen));
        if (!heights.Sure.IsAll)
        {
            heightsOf.Add(heights);
        }
    }

    /// <summary>Sweeps along the wall: over each stretch between two ends, the heights that some piece allows. Where open sides don't hold a box, only stretches at one of them are spoken of.</summary>
    private void Sweep(PlacementStatement statement, bool openSidesHold)
    {
        long end = site.Surface.Length.Ticks;
        cuts.Add(0);
        cuts.Add(end + 1);
        foreach (Stretch stretch in stretches)
        {
            cuts.Add(Math.Min(Math.Max(stretch.Left, 0), end + 1));
            cuts.Add(Math.Min(Math.Max(stretch.Right + 1, 0), end + 1));
        }

        cuts.Sort();
        stretches.Sort(static (a, b) => a.Left.CompareTo(b.Left));
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

            for (int i = here.Count - 1; i >= 0; i--)
            {
                if (here[i].Right < from)
                {
                    here.RemoveAt(i);
                }
            }

            AllowedHeights allowed = AllowedHeights.Nothing;
            foreach (Stretch stretch in here)
            {
                allowed |= stretch.IsOpen && !openSidesHold ? AllowedHeights.Nothing : stretch.Heights < 0 ? AllowedHeights.Anything : heightsOf[stretch.Heights];
            }

            if ((openSidesHold || here.Exists(static one => one.IsOpen)) && !allowed.Sure.IsAll)
            {
                statement.Within(Distance.FromTicks(from), Distance.FromTicks(to), allowed);
            }
        }
    }

    /// <summary>From where to where a center may be.</summary>
    /// <param name="left">From where.</param>
    /// <param name="right">To where.</param>
    /// <param name="heights">Which of the statements of heights holds there; −1 where any height does.</param>
    /// <param name="isOpen">Whether it is at the open side of a stud.</param>
    private readonly struct Stretch(long left, long right, int heights, bool isOpen)
    {
        public long Left => left;

        public long Right => right;

        public int Heights => heights;

        public bool IsOpen => isOpen;
    }
}
