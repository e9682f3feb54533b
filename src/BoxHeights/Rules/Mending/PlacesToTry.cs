using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where along a wall a remedy may put boxes: places that are worth trying, nearest first.</summary>
internal sealed class PlacesToTry
{
    private readonly LayoutState state;
    private readonly List<int>?[] boxesOn;

    public PlacesToTry(LayoutState state)
    {
        this.state = state;
        boxesOn = new List<int>?[state.SurfaceCount];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            (boxesOn[state.Boxes[box].Surface.Index] ??= []).Add(box);
        }
    }

    /// <summary>Where to try a box along its wall: where it is, then stud faces or the ends of what stands in its way, nearest first.</summary>
    public List<Distance?> PlacesFor(int box)
    {
        List<Distance?> places = [null];
        if (state.AtOf(box) is not { } at || state.Boxes[box].Surface is not { Wall: { } wall } surface)
        {
            return places;
        }

        List<Distance> others = Candidates(state.SitesOf(box)[0], wall, box);
        Distance half = state.SitesOf(box)[0].Site.Box.Size.HalfWidth;
        if (state.Boxes[box].Source.Purpose == BoxPurpose.Counter && surface.CounterOn(at, at) is { } counter)
        {
            // Beyond its counter it would serve it no more.
            others.RemoveAll(place => place < counter.Left || place > counter.Right);
        }

        // Where it would leave a wall or counter without the outlet that it needs there is nothing to try.
        DistanceSet keep = state.Spaces.KeepOf(box);
        others.RemoveAll(place => !keep.Contains(place));
        others.RemoveAll(place => place < half || place > wall.Length - half || place == at || IsTaken(surface, box, place, half));
        SortByNearest(others, at);
        foreach (Distance place in others)
        {
            places.Add(place);
        }

        return places;
    }

    /// <summary>Where a box to add is nailed to a stud that is known to stand near where it should be, nearest first; none where studs are only assumed, or it is held otherwise.</summary>
    public List<Distance> StudsFor(PlacedBox placed)
    {
        if (placed.Box.At is not { } at || state.SurfaceAt(placed.Address) is not { Wall: { } wall, Framing: { Known: not StudKnowledge.Assumed } } surface
            || state.SiteFor(placed.Address, placed.Box) is not { } site || site.Site.Box.Mounting is not (null or MountingMethod.Stud))
        {
            return [];
        }

        Distance half = site.Site.Box.Size.HalfWidth;
        List<Distance> studs = Candidates(site, wall, -1);
        studs.RemoveAll(place => place < half || place > wall.Length - half || IsTaken(surface, -1, place, half));
        SortByNearest(studs, at);
        return studs;
    }

    /// <summary>Where to try a box against a stud that is packed out with lumber, nearest first: where its studs are lumber, and known to stand there.</summary>
    public List<Distance> PackedPlacesFor(int box)
    {
        List<Distance> places = [];
        if (state.AtOf(box) is not { } at || state.Boxes[box].Surface is not { Framing: { } framing } surface || !framing.IsLumber)
        {
            return places;
        }

        BoxSize size = state.SizeOf(box);
        foreach (FramingMember member in framing.Members)
        {
            for (int packed = 1; packed <= BlockingNeeded.MostPacked && member.IsSure && !framing.IsAssumed(member); packed++)
            {
                Distance off = surface.Usual.Lumber * packed;
                Beside(member.Left, StudSide.Left, off);
                Beside(member.Right, StudSide.Right, off);
            }
        }

        places.RemoveAll(place => place == at || IsTaken(surface, box, place, size.HalfWidth));
        SortByNearest(places, at);
        return places;

        void Beside(Distance face, StudSide side, Distance off)
        {
            if (framing.RoomBeside(face, side) >= off + size.Width)
            {
                places.Add(side == StudSide.Left ? face - off - size.HalfWidth : face + off + size.HalfWidth);
            }
        }
    }

    /// <summary>Of two that are as near the left one first: a sort may turn equals round.</summary>
    public static void SortByNearest(List<Distance> places, Distance at) =>
        places.Sort((a, b) => (a - at).Abs().CompareTo((b - at).Abs()) is var off && off != 0 ? off : a.CompareTo(b));

    private List<Distance> Candidates(StatedSite site, Wall wall, int box)
    {
        if (StudSides.Of(site.Site) is { } sides)
        {
            return sides;
        }

        List<Distance> found = [];
        List<long> edges = [.. site.Places.Edges];

        // Boxes that are in its way have ends as well.
        foreach ((ProvisionRule rule, ProvisionGroup group) in state.Groups.With(site, state.Rules.Provision))
        {
            rule.AddEdgesTo(edges, group, box, site.Site);
        }

        foreach (long edge in edges)
        {
            if (edge > 0 && edge < wall.Length.Ticks)
            {
                found.Add((Distance.FromTicks(edge) - state.Options.AlongMargin).RoundDown(state.Options.AlongStep));
                found.Add((Distance.FromTicks(edge) + state.Options.AlongMargin).RoundUp(state.Options.AlongStep));
            }
        }

        return found;
    }

    /// <summary>Whether another box of the wall is in the way at a place, at whatever height.</summary>
    private bool IsTaken(ResolvedSurface surface, int box, Distance place, Distance half)
    {
        foreach (int other in boxesOn[surface.Index] ?? [])
        {
            if (other != box && state.SitesOf(other).Length > 0 && state.AtOf(other) is { } at
                && (at - place).Abs() < half + state.SitesOf(other)[0].Site.Box.Size.HalfWidth)
            {
                return true;
            }
        }

        return false;
    }
}
