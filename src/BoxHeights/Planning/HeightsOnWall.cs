using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where on one wall a box of some kind can be, and at which height there: the height that practice prefers wherever that is allowed, else the nearest that is.</summary>
internal sealed class HeightsOnWall
{
    // Some windows, counters and cabinets make a few heights; a wall with more has none worth looking for.
    private const int MostHeights = 6;

    private readonly SortedDictionary<long, (Distance Reading, CandidateRank Rank)> places = [];

    private HeightsOnWall(Edge edge, Datum datum)
    {
        Edge = edge;
        Datum = datum;
    }

    private Edge Edge { get; }

    private Datum Datum { get; }

    /// <summary>The places, from left to right.</summary>
    public IEnumerable<RunCandidate> Places
    {
        get
        {
            foreach (KeyValuePair<long, (Distance Reading, CandidateRank Rank)> place in places)
            {
                yield return new(Distance.FromTicks(place.Key), place.Value.Rank);
            }
        }
    }

    /// <summary>The places, nearest to one first.</summary>
    public List<RunCandidate> NearestTo(Distance wish)
    {
        List<RunCandidate> sorted = [.. Places];
        sorted.Sort((a, b) => (a.At - wish).Abs() != (b.At - wish).Abs() ? (a.At - wish).Abs().CompareTo((b.At - wish).Abs()) : a.At.CompareTo(b.At));
        return sorted;
    }

    /// <summary>The height of a box at one of the places.</summary>
    public BoxHeight HeightAt(Distance along) => BoxHeight.To(Edge, places[along.Ticks].Reading, Datum);

    /// <summary>Works out a wall.</summary>
    /// <param name="draft">The plan so far.</param>
    /// <param name="address">The wall.</param>
    /// <param name="length">Its length.</param>
    /// <param name="box">The box, with the height that it has where nothing is in the way.</param>
    /// <param name="betweenStuds">Whether places between studs will do as well, on blocking.</param>
    public static HeightsOnWall? Of(RoughInDraft draft, string address, Distance length, DeviceBox box, bool betweenStuds)
    {
        if (Wanted(draft, address, box) is not { Edge: { } edge } wanted)
        {
            return null;
        }

        LayoutState state = draft.Evaluator.StateOf(draft.Dwelling.WithBox(new(address, box.WithId("a-place-to-try").WithAt(length.Split(2)[0]).WithHeight(wanted))));
        int probe = System.Array.FindIndex(state.Boxes, one => one.Source.Id == "a-place-to-try");
        if (probe < 0 || state.SitesOf(probe) is not { Length: 1 } sites)
        {
            return null;
        }

        HeightsOnWall found = new(edge, wanted.Datum);
        foreach (Distance reading in Readings(sites[0], wanted.Value, state.Options))
        {
            foreach (RunCandidate place in WallPlaces.Of(sites[0], reading, state.Options.AlongMargin, state.Options.AlongStep))
            {
                found.Offer(state, probe, place, reading);
            }

            if (betweenStuds)
            {
                foreach (RunCandidate place in WallPlaces.OnSteps(sites[0], reading, state.Options.AlongMargin, state.Options.AlongStep))
                {
                    found.Offer(state, probe, place, reading);
                }
            }
        }

        return found;
    }

    private void Offer(LayoutState state, int probe, RunCandidate place, Distance reading)
    {
        if (!places.ContainsKey(place.At.Ticks) && IsFree(state, probe, place.At, reading))
        {
            places.Add(place.At.Ticks, (reading, place.Rank));
        }
    }

    /// <summary>Whether no other box of the wall is in the way: above or below one there is room.</summary>
    private static bool IsFree(LayoutState state, int probe, Distance at, Distance reading)
    {
        StatedSite site = state.SitesOf(probe)[0];
        PlateSize? plate = site.Site.Box.Plate;
        Distance wide = plate?.Width ?? site.Site.Box.Size.Width;
        Distance tall = plate?.Height ?? site.Site.Box.Size.Height;
        for (int other = 0; other < state.Boxes.Length; other++)
        {
            if (other == probe || state.Boxes[other].Surface != state.Boxes[probe].Surface || state.SitesOf(other) is not { Length: > 0 } sites || state.AtOf(other) is not { } beside)
            {
                continue;
            }

            PlateSize? its = sites[0].Site.Box.Plate;
            bool clearAlong = (at - beside).Abs() * 2 >= wide + (its?.Width ?? sites[0].Site.Box.Size.Width);
            bool clearInHeight = state.TryCenter(other, out DistanceRange center) && (site.CenterAboveReading + reading) is var mine
                && Distance.Max(center.From - mine.To, mine.From - center.To) * 2 >= tall + (its?.Height ?? sites[0].Site.Box.Size.Height);
            if (!clearAlong && !clearInHeight)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The height to aim at: what most boxes of the purpose have in the storey, so that all are level; else what practice prefers; else the box's own; null where there is none.</summary>
    public static BoxHeight? Wanted(RoughInDraft draft, string address, DeviceBox box) => Shared(draft, address, box) ?? Preferred(draft, box) ?? box.Height;

    /// <summary>The height that most boxes of the purpose have in the storey; the lowest of several that as many have.</summary>
    private static BoxHeight? Shared(RoughInDraft draft, string address, DeviceBox box)
    {
        string? storey = draft.StoreyOf(address);
        Dictionary<BoxHeight, int> counts = [];
        foreach (Room one in draft.Dwelling.Rooms)
        {
            foreach (Wall wall in one.Storey == storey ? one.Walls : default)
            {
                foreach (DeviceBox there in wall.Boxes)
                {
                    if (there.Purpose == box.Purpose && there.Height is { Edge: not null } height && !there.Existing)
                    {
                        counts[height] = counts.TryGetValue(height, out int count) ? count + 1 : 1;
                    }
                }
            }
        }

        BoxHeight? most = null;
        foreach (KeyValuePair<BoxHeight, int> one in counts)
        {
            if (most is not { } best || one.Value > counts[best] || (one.Value == counts[best] && one.Key.Value < best.Value))
            {
                most = one.Key;
            }
        }

        return most;
    }

    private static BoxHeight? Preferred(RoughInDraft draft, DeviceBox box)
    {
        foreach (Rule rule in draft.Evaluator.Rules.Rules)
        {
            if (rule is PlacementRule { Preferred: { Edge: not null } preferred } && rule.Scope.Purposes.Contains(box.Purpose))
            {
                return preferred;
            }
        }

        return null;
    }

    /// <summary>The heights worth trying on a wall: the wanted one, then the nearest to it that each part of the wall allows, nearest first.</summary>
    private static List<Distance> Readings(StatedSite site, Distance wanted, SettledOptions options)
    {
        List<Distance> others = [];
        long[] edges = site.Edges;
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            long left = System.Math.Max(edges[i], 0);
            long right = System.Math.Min(edges[i + 1], site.Site.Surface.Length.Ticks);
            if (right - left < 2)
            {
                continue;
            }

            long middle = left + ((right - left) / 2);
            DistanceSet firm = site.SureOfFirmRulesAt(middle);
            DistanceSet all = site.SureAt(middle);
            foreach (DistanceSet allowed in new[] { all & firm.Shrink(options.HeightMargin), all, firm.Shrink(options.HeightMargin), firm })
            {
                if (allowed.TryNearestSnapped(wanted, options.HeightStep, out Distance reading))
                {
                    if (reading != wanted && !others.Contains(reading))
                    {
                        others.Add(reading);
                    }

                    break;
                }
            }
        }

        others.Sort((a, b) => (a - wanted).Abs() != (b - wanted).Abs() ? (a - wanted).Abs().CompareTo((b - wanted).Abs()) : a.CompareTo(b));
        List<Distance> readings = [wanted, .. others];
        return readings.Count > MostHeights ? readings.GetRange(0, MostHeights) : readings;
    }
}
