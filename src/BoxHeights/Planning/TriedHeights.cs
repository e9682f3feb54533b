using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The heights that are worth trying on a wall for boxes like one, whatever else is planned, and where the wall is clear at each.</summary>
internal sealed class TriedHeights
{
    // Some windows, counters and cabinets make a few heights; a wall with more has none worth looking for.
    private const int MostHeights = 8;

    private readonly Distance wanted;
    private readonly SettledOptions options;
    private List<Distance>? readings;
    private DistanceSet?[] clear = [];

    /// <param name="site">What is stated for such a box.</param>
    /// <param name="places">Where along the wall it can be put.</param>
    /// <param name="wanted">The height that it has where nothing is in the way, as the reading of the stick.</param>
    /// <param name="options">How finely marks are made, and how far from limits to keep.</param>
    public TriedHeights(StatedSite site, WallPlaces places, Distance wanted, SettledOptions options)
    {
        Site = site;
        Places = places;
        this.wanted = wanted;
        this.options = options;
    }

    public StatedSite Site { get; }

    public WallPlaces Places { get; }

    /// <summary>The heights, in the order in which they are tried. Found when the first place is looked at: places between studs mostly aren't.</summary>
    public List<Distance> Readings
    {
        get
        {
            if (readings is null)
            {
                readings = ReadingsOf(Site, wanted, options);
                clear = new DistanceSet?[readings.Count];
            }

            return readings;
        }
    }

    /// <summary>Where the wall is clear at one of the heights.</summary>
    public DistanceSet ClearAt(int reading)
    {
        Distance up = Readings[reading];
        return clear[reading] ??= Places.ClearAt(up);
    }

    /// <summary>Whether the wall is clear at a place, at some of the heights.</summary>
    public bool MayBeClear(Distance at)
    {
        for (int i = 0; i < Readings.Count; i++)
        {
            if (ClearAt(i).Contains(at))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The heights worth trying: the wanted one, then the nearest to it that each part of the wall allows, nearest first; those with less slack, or that a habit is against, after all others.</summary>
    private static List<Distance> ReadingsOf(StatedSite site, Distance wanted, SettledOptions options)
    {
        List<Distance> others = [];
        List<Distance> inNeed = [];
        long[] edges = site.Places.Edges;
        bool isFirst = true;
        bool isOnStep = wanted.RoundNearest(options.HeightStep) == wanted;
        for (int i = 0; i + 1 < edges.Length; i++)
        {
            long left = Math.Max(edges[i], 0);
            long right = Math.Min(edges[i + 1], site.Site.Surface.Length.Ticks);
            if (right - left < 2)
            {
                continue;
            }

            long middle = left + ((right - left) / 2);
            DistanceSet firm = site.Places.SureOfFirmRulesAt(middle);
            DistanceSet all = site.Places.SureAt(middle);
            if (isOnStep && all.Contains(wanted) && firm.ContainsRange(new(wanted - options.HeightMargin, wanted + options.HeightMargin)))
            {
                // Over most of a wall it is as wanted.
                continue;
            }

            // The first of these that gives one is worth trying before what others give.
            DistanceSet withSlack = firm.Shrink(options.HeightMargin);
            isFirst = true;
            Take(all & withSlack);
            Take(all);
            Take(withSlack);
            Take(firm);
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

        void Take(in DistanceSet allowed)
        {
            if (allowed.TryNearestSnapped(wanted, options.HeightStep, out Distance reading))
            {
                (isFirst ? others : inNeed).Add(reading);
                isFirst = false;
            }
        }

        int NearerToWanted(Distance a, Distance b) => (a - wanted).Abs() != (b - wanted).Abs() ? (a - wanted).Abs().CompareTo((b - wanted).Abs()) : a.CompareTo(b);
    }
}
