using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where on one wall a box of some kind can be, and at which height there: the height that practice prefers wherever that is allowed, else the nearest that is.</summary>
internal sealed class HeightsOnWall
{
    private readonly RoughInDraft draft;
    private readonly string address;
    private readonly BoxHeight wanted;
    private readonly List<Hold> holds = [];

    private HeightsOnWall(RoughInDraft draft, string address, BoxHeight wanted)
    {
        this.draft = draft;
        this.address = address;
        this.wanted = wanted;
    }

    /// <summary>Works out a wall; null where the box has no height there that names its edge.</summary>
    /// <param name="draft">The plan so far.</param>
    /// <param name="address">The wall.</param>
    /// <param name="length">Its length.</param>
    /// <param name="box">The box, with the height that it has where nothing is in the way.</param>
    /// <param name="betweenStuds">Whether places between studs will do as well, on blocking.</param>
    public static HeightsOnWall? Of(RoughInDraft draft, string address, Distance length, DeviceBox box, bool betweenStuds)
    {
        if (Wanted(draft, address, box) is not { Edge: not null } wanted)
        {
            return null;
        }

        DeviceBox probed = box with { At = length.Split(2)[0], Height = wanted };
        HeightsOnWall found = new(draft, address, wanted);
        foreach (bool isBetween in betweenStuds ? new[] { false, true } : [false])
        {
            DeviceBox held = HeldOnWall.As(draft.State, address, probed, isBetween);
            if (draft.State.SiteFor(address, held) is not { } site)
            {
                return null;
            }

            found.holds.Add(new(held, draft.HeightsAt(site, isBetween, wanted.Value)));
            if (!found.holds[0].On.Places.AreAtStuds && ReferenceEquals(held, probed))
            {
                // Held alike everywhere.
                break;
            }
        }

        return found;
    }

    /// <summary>The places within a stretch at which such a box counts, from left to right.</summary>
    public List<PlaceOnWall> Within(Distance from, Distance to, Predicate<SpaceBox> counts)
    {
        List<PlaceOnWall> found = [];
        HashSet<Distance> taken = [];
        foreach (Hold hold in holds)
        {
            using LayoutState.Probe probe = draft.State.ProbeFor(address, hold.Box)!;
            foreach (Distance at in hold.On.Places.All)
            {
                if (at >= from && at <= to && !taken.Contains(at) && Find(hold, probe, at) is { } place && counts(probe.Box))
                {
                    found.Add(place);
                }
            }

            if (holds.Count > 1)
            {
                found.ForEach(place => taken.Add(place.At));
                found.Sort((a, b) => a.At.CompareTo(b.At));
            }
        }

        return found;
    }

    /// <summary>The places, nearest to one first; of two as near, that on the room's hand. Each is looked at when it is asked for: the first is mostly taken.</summary>
    public IEnumerable<PlaceOnWall> NearestTo(Distance wish)
    {
        SortedSet<Distance> all = [];
        holds.ForEach(hold => all.UnionWith(hold.On.Places.All));
        foreach (Distance at in WallPlaces.NearestTo(wish, [.. all], draft.HandAt(address)))
        {
            foreach (Hold hold in holds)
            {
                if (hold.On.Places.Has(at) && Find(hold, at) is { } place)
                {
                    yield return place;
                    break;
                }
            }
        }
    }

    /// <summary>The places against a stud first, nearest to one first, then all others.</summary>
    public IEnumerable<PlaceOnWall> AtStudsFirst(Distance wish)
    {
        HashSet<Distance> given = [];
        foreach (Hold hold in holds)
        {
            foreach (Distance at in WallPlaces.NearestTo(wish, hold.On.Places.All, draft.HandAt(address)))
            {
                if (!given.Contains(at) && Find(hold, at) is { } place)
                {
                    given.Add(at);
                    yield return place;
                }
            }
        }
    }

    private PlaceOnWall? Find(Hold hold, Distance at)
    {
        if (!hold.On.MayBeClear(at))
        {
            return null;
        }

        // Put away again before anything is added.
        using LayoutState.Probe probe = draft.State.ProbeFor(address, hold.Box)!;
        return Find(hold, probe, at);
    }

    /// <summary>A place where the box's plate is clear of others and where it brings no finding of its own, at the first height that gives one: a habit yields only where it must.</summary>
    private PlaceOnWall? Find(Hold hold, LayoutState.Probe probe, Distance at)
    {
        for (int i = 0; i < hold.On.Readings.Count; i++)
        {
            Distance reading = hold.On.Readings[i];
            if (hold.On.ClearAt(i).Contains(at) && PlateGap.IsKept(draft, hold.On.Site, at, reading)
                && IsGood(probe.At(at, wanted.WithValue(reading))) && IsOverItsCounter(probe.Box))
            {
                return new(at, hold.On.Places.RankOf(at), wanted.WithValue(reading), reading == wanted.Value) { Site = hold.On.Site };
            }
        }

        return null;
    }

    /// <summary>Whether nothing is found of a box by itself; on the level that its room has of its own, nothing that this may not miss.</summary>
    private bool IsGood(LayoutState.Probe probe) => probe.IsSilent || (draft.Levels.Has(probe.Box) && probe.IsSilentBut(draft.Levels.MayBeMissed));

    /// <summary>Whether a counter's receptacle has its plate above the top: no document says so, but there is no wall to set it in.</summary>
    private static bool IsOverItsCounter(SpaceBox box)
    {
        MissingFacts needs = MissingFacts.None;
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

        DistanceSet? over = box.Purpose == BoxPurpose.Counter ? OverCounter.At(site.Site, at) : null;
        Items<string> rules = ConflictingRules.At(site, at, null, over);
        return rules.Count == 0 ? "" : "; no height there is left by " + string.Join(", ", rules);
    }

    /// <summary>
    /// The height to aim at: what the room has of its own, else what several new ones share in a room with old ones, else what those boxes of the purpose have that were there before in the room, else
    /// most of the new ones in the storey that aren't in such rooms, else those that were there before in it, so that what one sees together is level, unless no place on the wall allows that; else what
    /// practice prefers; else the box's own; null where there is none.
    /// </summary>
    public static BoxHeight? Wanted(RoughInDraft draft, string address, DeviceBox box)
    {
        BoxHeight? usual = (Preferred(draft, address, box) ?? box.Height) is { } height ? Markable(height, draft.State.Options) : null;
        List<BoxHeight> shared = SharedBy(draft, address, box);

        // Whether a height is allowed somewhere is asked of the whole wall: not where it comes to the usual one in any case.
        int level = shared.TrueForAll(one => one == usual) ? -1 : shared.FindIndex(one => IsAllowed(draft, address, box, one));
        return level < 0 ? usual : shared[level];
    }

    /// <summary>The heights that boxes of the purpose share, those first that one is seen together with.</summary>
    private static List<BoxHeight> SharedBy(RoughInDraft draft, string address, DeviceBox box)
    {
        ResolvedSpace? space = draft.State.SurfaceAt(address)?.Space;
        BoxHeight?[] all = draft.HasOld
            ? [
                draft.Levels.OfNew(space, box.Purpose),
                Shared(draft, address, box, one => one.IsExisting && one.Surface.Space == space),
                Shared(draft, address, box, one => !one.IsExisting && !draft.IsBesideOld(one) && !draft.Levels.Has(one)),
                Shared(draft, address, box, one => one.IsExisting),
            ]
            : [Shared(draft, address, box, one => !draft.Levels.Has(one))];
        List<BoxHeight> some = draft.Levels.Of(space, box.Purpose) is { } own ? [own] : [];
        foreach (BoxHeight? one in all)
        {
            if (one is { } height)
            {
                some.Add(height);
            }
        }

        return some;
    }

    /// <summary>Whether a height is allowed somewhere on a wall.</summary>
    private static bool IsAllowed(RoughInDraft draft, string address, DeviceBox box, BoxHeight height) =>
        draft.State.SurfaceAt(address) is not { } surface || draft.State.SiteFor(address, HeldOnWall.As(draft.State, address, box with { At = surface.Length.Split(2)[0], Height = height }, false)) is not { } site || !site.Places.ClearAt(height.Value).IsEmpty;

    /// <summary>The height as a tape of the dwelling's units shows it: 48 in is 1219.2 mm, and set at 1219.</summary>
    private static BoxHeight Markable(BoxHeight height, SettledOptions options) => height.WithValue(height.Value.RoundNearest(options.HeightStep));

    /// <summary>The height that most of some boxes of the purpose have in the storey, on the marks of a tape where they were there before; the lowest of several that as many have.</summary>
    private static BoxHeight? Shared(RoughInDraft draft, string address, DeviceBox box, Predicate<ResolvedBox> which)
    {
        Dictionary<BoxHeight, int> counts = [];
        foreach (int there in draft.Alike(draft.StoreyOf(address), box.Purpose))
        {
            ResolvedBox one = draft.State.Boxes[there];
            if (which(one) && (one.IsExisting ? one.Source.Measured?.Height ?? one.Source.Height : one.Source.Height) is { Edge: not null } found)
            {
                BoxHeight height = one.IsExisting ? Markable(found, draft.State.Options) : found;
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

    /// <summary>One way in which the box may be held.</summary>
    private sealed record Hold(DeviceBox Box, TriedHeights On);
}

/// <summary>A place that a box may have on a wall.</summary>
/// <param name="At">Its center along the wall.</param>
/// <param name="Rank">How willingly it is taken.</param>
/// <param name="Height">The height that it has there.</param>
/// <param name="IsAsWanted">Whether it would have that height anywhere if nothing were in the way.</param>
internal sealed record PlaceOnWall(Distance At, CandidateRank Rank, BoxHeight Height, bool IsAsWanted)
{
    /// <summary>What is stated for such a box on its wall.</summary>
    public StatedSite? Site { get; init; }

    /// <summary>Whether no habit yields to what is in the way there: what nobody has to have is put nowhere else.</summary>
    public bool IsUsual => Site?.Places.SureAt(At.Ticks).Contains(Height.Value) != false;
}
