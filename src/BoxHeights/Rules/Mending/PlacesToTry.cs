using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where a remedy may put boxes: heights and places along a wall that are worth trying, best first.</summary>
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

    /// <summary>Heights worth trying for boxes together: what practice prefers, what their neighbors have, then the nearest that every rule allows.</summary>
    public IEnumerable<(BoxHeight Height, bool Slack)> HeightsFor(List<int> boxes, bool levelOnly, Distance? along = null)
    {
        StatedSite site = state.SitesOf(boxes[0])[0];
        foreach (BoxHeight preferred in state.Rules.PreferredFor(site.Site.Box, site.Site.Room))
        {
            // What can be marked in the dwelling's units, before what can't.
            DistanceSet allowed = Allowed(boxes, preferred.Edge!.Value, preferred.Datum, along, true);
            Distance marked = preferred.Value.RoundNearest(state.Options.HeightStep);
            if (allowed.Contains(marked) || allowed.Contains(preferred.Value))
            {
                yield return (preferred.WithValue(allowed.Contains(marked) ? marked : preferred.Value), true);
            }
        }

        foreach (int neighbor in NeighborsOf(boxes[0]))
        {
            if (state.HeightOf(neighbor) is { Edge: { } edge } height && Allowed(boxes, edge, height.Datum, along, true).Contains(height.Value))
            {
                yield return (height, true);
            }
        }

        if (state.HeightOf(boxes[0]) is not { } now)
        {
            yield break;
        }

        foreach (bool slack in new[] { true, false })
        {
            Edge edge = now.Edge ?? Edge.Center;
            DistanceSet allowed = Allowed(boxes, edge, now.Datum, along, slack);
            if (levelOnly)
            {
                allowed &= LevelOf(boxes[0], edge, now.Datum);
            }

            if (allowed.TryNearestSnapped(now.Value, state.Options.HeightStep, out Distance snapped))
            {
                yield return (BoxHeight.To(edge, snapped, now.Datum), slack);
            }
            else if (!slack && allowed.TryNearest(now.Value, out Distance nearest))
            {
                yield return (BoxHeight.To(edge, nearest, now.Datum), slack);
            }
        }
    }

    /// <summary>The nearest height to its own that every rule surely allows a box to add where it goes, with slack where there is any; null where there is none.</summary>
    public BoxHeight? HeightFor(PlacedBox placed)
    {
        if (placed.Box is not { At: { } at, Height: { Edge: not null } now } || state.SiteFor(placed.Address, placed.Box) is not { } site)
        {
            return null;
        }

        DistanceSet all = site.SureAt(at.Ticks);
        DistanceSet firm = site.SureOfFirmRulesAt(at.Ticks);
        foreach (DistanceSet allowed in new[] { all & firm.Shrink(state.Options.HeightMargin), all, firm.Shrink(state.Options.HeightMargin), firm })
        {
            if (allowed.TryNearestSnapped(now.Value, state.Options.HeightStep, out Distance snapped))
            {
                return now.WithValue(snapped);
            }
        }

        return null;
    }

    /// <summary>Heights, each once, that a box to add on a wall may share: those of boxes of its purpose that are surely on the level of its storey or room.</summary>
    public List<BoxHeight> HeightsOnTheLevelOf(PlacedBox placed)
    {
        List<BoxHeight> heights = [];
        string? level = placed.Box.At is null ? null : state.SurfaceAt(placed.Address)?.Space.LevelId;
        for (int box = 0; level is not null && box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].Source.Purpose == placed.Box.Purpose && state.Boxes[box].Surface.Space.LevelId == level && state.HeightOf(box) is { } height
                && !heights.Contains(height) && Array.Exists(state.Groups.Of(box), group => IsLevel(box, state.Groups[group].Boxes, state.KeepOf(group))))
            {
                heights.Add(height);
            }
        }

        return heights;
    }

    private static bool IsLevel(int box, ProvisionGroup boxes, DistanceSet keep)
    {
        for (int i = 0; i < boxes.Count; i++)
        {
            if (boxes.Member(i) == box)
            {
                return !keep.IsAll && boxes.TryCenter(i, out DistanceRange center) && keep.ContainsRange(center);
            }
        }

        return false;
    }

    /// <summary>Members of a box's groups, those that most others agree with first.</summary>
    private IEnumerable<int> NeighborsOf(int box)
    {
        foreach (int group in state.Groups.Of(box))
        {
            ProvisionGroup boxes = state.Groups[group].Boxes;
            for (int i = 0; i < boxes.Count; i++)
            {
                if (boxes.Member(i) != box && boxes.TryCenter(i, out DistanceRange center) && state.KeepOf(group).ContainsRange(center))
                {
                    yield return boxes.Member(i);
                    break;
                }
            }
        }
    }

    /// <summary>The readings of a stick that every placement rule surely allows for all the boxes; with slack, away from every limit but those of habit.</summary>
    private DistanceSet Allowed(List<int> boxes, Edge edge, Datum datum, Distance? along, bool slack)
    {
        DistanceSet all = DistanceSet.All;
        DistanceSet firm = DistanceSet.All;
        foreach (int box in boxes)
        {
            if ((along ?? state.AtOf(box)) is { } place)
            {
                StatedSite site = state.SiteOf(box, edge, datum, place);
                DistanceSet here = site.SureAt(place.Ticks);
                if (here.IsEmpty && boxes.Count > 1)
                {
                    // No height mends this one, which has to go elsewhere: it says nothing of the stick that it shares with the others.
                    continue;
                }

                all &= here;
                firm &= site.SureOfFirmRulesAt(place.Ticks);
            }
        }

        return slack ? all & firm.Shrink(state.Options.HeightMargin) : all;
    }

    /// <summary>The readings of a stick that keep a box within its groups' levels.</summary>
    private DistanceSet LevelOf(int box, Edge edge, Datum datum)
    {
        DistanceSet all = DistanceSet.All;
        StatedSite site = state.SiteOf(box, edge, datum, state.AtOf(box));
        foreach (int group in state.Groups.Of(box))
        {
            all &= state.KeepOf(group).ErodeShift(-site.CenterAboveHeight);
        }

        return all;
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
        studs.Sort((a, b) => (a - at).Abs() is var one && (b - at).Abs() is var other && one != other ? one.CompareTo(other) : a.CompareTo(b));
        return studs;
    }

    /// <summary>Where to try a box against a stud that is packed out with 2-bys, nearest first: where its studs are lumber, and known to stand there.</summary>
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
        List<long> edges = [.. site.Edges];

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
