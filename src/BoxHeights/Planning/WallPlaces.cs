using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where on a wall a box of some kind can be put, in the wall's own coordinate: against stud faces if it is nailed to one, else at every step, or on blocking of its own at every step.</summary>
internal sealed class WallPlaces
{
    private readonly StatedSite site;
    private readonly Distance margin;
    private readonly bool onBlocking;
    private readonly DistanceSet hidden;

    /// <param name="site">What is stated for a box like the one that is planned.</param>
    /// <param name="onBlocking">Whether it gets blocking of its own: none of its places is as good as a stud's face.</param>
    /// <param name="margin">How far from every limit to keep along the wall where there is room for it. A stud's face is where it is.</param>
    /// <param name="step">What places are rounded to; more than zero.</param>
    public WallPlaces(StatedSite site, bool onBlocking, Distance margin, Distance step)
    {
        this.site = site;
        this.margin = margin;
        this.onBlocking = onBlocking;
        hidden = onBlocking ? DistanceSet.Empty : Hidden(site.Site.Surface.Fixtures);
        AreAtStuds = !onBlocking && site.Site.Box.Mounting is null or MountingMethod.Stud && site.Site.Surface.Studs is { Count: > 0 };
        All = AreAtStuds ? BesideStuds(site.Site.Surface.Studs!, site.Site.Framing, site.Site.Box.Size) : Steps(site.Site.Surface.Length, step);
    }

    /// <summary>Whether they are stud faces.</summary>
    public bool AreAtStuds { get; }

    /// <summary>All of them from left to right, whatever stands there.</summary>
    public Distance[] All { get; }

    /// <summary>Whether a place is one of them.</summary>
    public bool Has(Distance at) => Array.BinarySearch(All, at) >= 0;

    /// <summary>Where the wall is clear at a height, as the reading of the stick.</summary>
    public DistanceSet ClearAt(Distance reading)
    {
        DistanceSet clear = site.Places.ClearAt(reading);
        return AreAtStuds ? clear : Roomy(clear);
    }

    /// <summary>How willingly one is taken.</summary>
    public CandidateRank RankOf(Distance at) => onBlocking ? CandidateRank.Fair : hidden.Contains(at) ? CandidateRank.LastResort : CandidateRank.Good;

    /// <summary>Places from left to right, nearest to one first; of two as near, that on a side.</summary>
    public static IEnumerable<Distance> NearestTo(Distance wish, Distance[] places, WallEnd hand)
    {
        int right = Array.BinarySearch(places, wish);
        right = right < 0 ? ~right : right;
        for (int left = right - 1; left >= 0 || right < places.Length;)
        {
            int nearer = left < 0 ? 1 : right >= places.Length ? -1 : (wish - places[left]).CompareTo(places[right] - wish);
            yield return nearer < 0 || (nearer == 0 && hand == WallEnd.Left) ? places[left--] : places[right++];
        }
    }

    /// <summary>What stands before the wall and hides what is behind it: not a table or a television, where a receptacle is wanted.</summary>
    internal static DistanceSet Hidden(Items<Fixture> fixtures)
    {
        DistanceSet hidden = DistanceSet.Empty;
        foreach (Fixture fixture in fixtures)
        {
            if (fixture is { Left: { } left, Right: { } right } && fixture.Kind != FixtureKind.Table && fixture.Kind != FixtureKind.Television)
            {
                hidden |= DistanceSet.Between(left, right);
            }
        }

        return hidden;
    }

    private static Distance[] BesideStuds(StudPositions studs, WallFraming? framing, BoxSize box)
    {
        List<Distance> found = [];
        Distance? bayFrom = null;
        for (int stud = 1; stud <= studs.Count; stud++)
        {
            studs.TryCenter(stud, StudSide.Left, box.Width, out Distance left);
            studs.TryCenter(stud, StudSide.Right, box.Width, out Distance right);
            if (framing is { Members.Count: <= WallFraming.MostWorkedThrough } && InsteadOf(framing, stud) is var (start, end))
            {
                (left, right) = (start - box.HalfWidth, end + box.HalfWidth);
            }

            // A bay too narrow for the box has the centers of its two sides in the wrong order.
            if (bayFrom is { } from && from <= left)
            {
                found.Add(from);
            }

            if (bayFrom is not { } before || before < left)
            {
                found.Add(left);
            }

            bayFrom = right;
        }

        if (bayFrom is { } last)
        {
            found.Add(last);
        }

        return [.. found];
    }

    /// <summary>From where to where the kings, jacks or corner studs reach that stand in a stud's place; null where it stands itself.</summary>
    private static (Distance From, Distance To)? InsteadOf(WallFraming framing, int stud)
    {
        foreach (FramingMember replaced in framing.Members)
        {
            if (replaced.IsReplaced && replaced.Number == stud)
            {
                (Distance from, Distance to) = (replaced.Right, replaced.Left);
                foreach (FramingMember member in framing.Members)
                {
                    bool isThere = member is { IsSure: true, IsReplaced: false } && member.Left < replaced.Right && replaced.Left < member.Right;
                    (from, to) = isThere ? (Distance.Min(from, member.Left), Distance.Max(to, member.Right)) : (from, to);
                }

                return from < to ? (from, to) : null;
            }
        }

        return null;
    }

    private static Distance[] Steps(Distance length, Distance step)
    {
        Distance[] found = new Distance[(length.Ticks / step.Ticks) + 1];
        for (int i = 0; i < found.Length; i++)
        {
            found[i] = step * i;
        }

        return found;
    }

    private DistanceSet Roomy(DistanceSet clear)
    {
        List<DistanceRange> found = [];
        for (int i = 0; i < clear.Count; i++)
        {
            DistanceSet roomy = DistanceSet.Between(clear[i].From, clear[i].To).Shrink(margin);
            found.Add(roomy.IsEmpty ? clear[i] : roomy[0]);
        }

        return DistanceSet.UnionOf(found);
    }
}
