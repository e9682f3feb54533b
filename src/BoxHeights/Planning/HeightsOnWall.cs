using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where on one wall a box of some kind can be, and at which height there: the height that practice prefers wherever that is allowed, else the nearest that is.</summary>
internal sealed class HeightsOnWall
{
    // Some windows, counters and cabinets make a few heights; a wall with more has none worth looking for.
    private const int MostHeights = 8;

    private readonly SortedDictionary<long, (Distance Reading, CandidateRank Rank)> places = [];

    private readonly Distance wanted;

    private HeightsOnWall(BoxHeight wanted, Edge edge)
    {
        this.wanted = wanted.Value;
        Edge = edge;
        Datum = wanted.Datum;
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

    /// <summary>The places, nearest to one first; of two as near, the left one.</summary>
    public List<RunCandidate> NearestTo(Distance wish)
    {
        List<RunCandidate> sorted = [.. Places];
        sorted.Sort((a, b) => (a.At - wish).Abs() != (b.At - wish).Abs() ? (a.At - wish).Abs().CompareTo((b.At - wish).Abs()) : a.At.CompareTo(b.At));
        return sorted;
    }

    /// <summary>The places against a stud first, nearest to one first, then all others.</summary>
    public List<RunCandidate> AtStudsFirst(Distance wish)
    {
        List<RunCandidate> near = NearestTo(wish);
        return [.. near.FindAll(place => place.Rank != CandidateRank.Fair), .. near.FindAll(place => place.Rank == CandidateRank.Fair)];
    }

    /// <summary>Whether a box has the height at one of the places that it would have anywhere if nothing were in the way.</summary>
    public bool IsAsWanted(Distance along) => places[along.Ticks].Reading == wanted;

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

        DeviceBox probed = box.WithAt(length.Split(2)[0]).WithHeight(wanted);
        HeightsOnWall found = new(wanted, edge);
        foreach (bool isBetween in betweenStuds ? new[] { false, true } : [false])
        {
            DeviceBox held = HeldOnWall.As(draft.State, address, probed, isBetween);
            if (draft.State.SiteFor(address, held) is not { } site)
            {
                return null;
            }

            using LayoutState.Probe probe = draft.State.ProbeFor(address, held)!;
            SettledOptions options = draft.State.Options;
            foreach (Distance reading in Readings(site, wanted.Value, options))
            {
                foreach (RunCandidate place in isBetween
                    ? WallPlaces.OnSteps(site, reading, options.AlongMargin, options.AlongStep)
                    : WallPlaces.Of(site, reading, options.AlongMargin, options.AlongStep))
                {
                    found.Offer(draft, site, probe, place, reading);
                }
            }
        }

        return found;
    }

    /// <summary>Offers a place where the box's plate is clear of others and where it brings no finding of its own: a habit yields only where it must.</summary>
    private void Offer(RoughInDraft draft, StatedSite site, LayoutState.Probe probe, RunCandidate place, Distance reading)
    {
        if (!places.ContainsKey(place.At.Ticks) && PlateGap.IsKept(draft, site, place.At, reading)
            && probe.At(place.At, BoxHeight.To(Edge, reading, Datum)).IsSilent && IsOverItsCounter(probe.Box))
        {
            places.Add(place.At.Ticks, (reading, place.Rank));
        }
    }

    /// <summary>Whether a counter's receptacle has its plate above the top: no document says so, but there is no wall to set it in.</summary>
    private static bool IsOverItsCounter(SpaceBox box)
    {
        Facts needs = Facts.None;
        return box.Traits.Purpose != BoxPurpose.Counter || box.CounterTop is not { } top || box.IsWithin(TargetLine.PlateBottom, top.Datum, top.Offset, Distance.MaxValue, ref needs) == Verdict.Passes;
    }

    /// <summary>Which rules leave a box no height at a place, in words that follow what couldn't be had; nothing where there is one.</summary>
    public static string WhyNone(RoughInDraft draft, string address, Distance at, DeviceBox box)
    {
        if (Wanted(draft, address, box) is not { } wanted || draft.State.SurfaceAt(address) is not { } surface
            || draft.State.SiteFor(address, box.WithAt(surface.Length.Split(2)[0]).WithHeight(wanted)) is not { } site)
        {
            return "";
        }

        DistanceSet? over = box.Purpose == BoxPurpose.Counter && surface.CounterOn(at, at) is { } counter
            ? site.Site.AtLeast(TargetLine.PlateBottom, ResolvedSurface.UsualTopOf(counter), at, at).Sure : null;
        Items<string> rules = ConflictingRules.At(site, at, null, over);
        return rules.Count == 0 ? "" : "; no height there is left by " + string.Join(", ", rules);
    }

    /// <summary>The height to aim at: what most boxes of the purpose have in the storey, so that all are level; else what practice prefers; else the box's own; null where there is none.</summary>
    public static BoxHeight? Wanted(RoughInDraft draft, string address, DeviceBox box) =>
        Shared(draft, address, box) ?? ((Preferred(draft, address, box) ?? box.Height) is { } height ? Markable(height, draft.State.Options) : null);

    /// <summary>The height as a tape of the dwelling's units shows it: 48 in is 1219.2 mm, and set at 1219.</summary>
    private static BoxHeight Markable(BoxHeight height, SettledOptions options) => height.WithValue(height.Value.RoundNearest(options.HeightStep));

    /// <summary>The height that most boxes of the purpose have in the storey; the lowest of several that as many have.</summary>
    private static BoxHeight? Shared(RoughInDraft draft, string address, DeviceBox box)
    {
        Dictionary<BoxHeight, int> counts = [];
        foreach (int there in draft.Alike(draft.StoreyOf(address), box.Purpose))
        {
            if (draft.State.Boxes[there] is { IsExisting: false, Source.Height: { Edge: not null } height })
            {
                counts[height] = counts.TryGetValue(height, out int count) ? count + 1 : 1;
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

    private static BoxHeight? Preferred(RoughInDraft draft, string address, DeviceBox box)
    {
        if (draft.State.SurfaceAt(address) is { } surface)
        {
            BoxTraits traits = new(box, surface.Kind, Edge.Center, Datum.Subfloor, draft.State.Options.Catalog, false);
            foreach (BoxHeight preferred in draft.State.Rules.PreferredFor(traits, surface.RoomKind))
            {
                return preferred;
            }
        }

        return null;
    }

    /// <summary>The heights worth trying on a wall: the wanted one, then the nearest to it that each part of the wall allows, nearest first; those with less slack, or that a habit is against, after all others.</summary>
    private static List<Distance> Readings(StatedSite site, Distance wanted, SettledOptions options)
    {
        List<Distance> others = [];
        List<Distance> inNeed = [];
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
            List<Distance> list = others;
            foreach (DistanceSet allowed in new[] { all & firm.Shrink(options.HeightMargin), all, firm.Shrink(options.HeightMargin), firm })
            {
                if (allowed.TryNearestSnapped(wanted, options.HeightStep, out Distance reading))
                {
                    list.Add(reading);
                    list = inNeed;
                }
            }
        }

        others.Sort(NearerToWanted);
        inNeed.Sort(NearerToWanted);
        List<Distance> readings = [wanted];
        foreach (Distance reading in (List<Distance>)[.. others, .. inNeed])
        {
            if (!readings.Contains(reading) && readings.Count < MostHeights)
            {
                readings.Add(reading);
            }
        }

        return readings;

        int NearerToWanted(Distance a, Distance b) => (a - wanted).Abs() != (b - wanted).Abs() ? (a - wanted).Abs().CompareTo((b - wanted).Abs()) : a.CompareTo(b);
    }
}
