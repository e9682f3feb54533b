using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where on a wall a box can be put at one height: what a planner of runs chooses from, in the wall's own coordinate.</summary>
internal static class WallPlaces
{
    /// <summary>Candidates of a wall: stud faces for a box that is nailed to one, elsewhere every step where the wall is clear.</summary>
    /// <param name="site">What is stated for a box like the one that is planned.</param>
    /// <param name="reading">The height, as the reading of the stick.</param>
    /// <param name="margin">How far from every limit to keep along the wall where there is room for it. A stud's face is where it is.</param>
    /// <param name="step">What places are rounded to; more than zero.</param>
    public static Items<RunCandidate> Of(StatedSite site, Distance reading, Distance margin, Distance step)
    {
        DistanceSet clear = site.PlacesAt(reading);
        DistanceSet hidden = Hidden(site.Site.Surface.Fixtures);
        bool isNailed = site.Site.Box.Mounting is null or MountingMethod.Stud && site.Site.Surface.Studs is { Count: > 0 };
        List<Distance> places = isNailed ? BesideStuds(site.Site.Surface.Studs!, site.Site.Box.Size.Width, clear) : OnSteps(clear, margin, step);
        return new(places.ConvertAll(at => new RunCandidate(at, hidden.Contains(at) ? CandidateRank.LastResort : CandidateRank.Good)));
    }

    /// <summary>Candidates of a wall for a box on blocking of its own: every step where the wall is clear, none of them as good as a stud's face.</summary>
    /// <inheritdoc cref="Of"/>
    public static Items<RunCandidate> OnSteps(StatedSite site, Distance reading, Distance margin, Distance step) =>
        new(OnSteps(site.PlacesAt(reading), margin, step).ConvertAll(at => new RunCandidate(at, CandidateRank.Fair)));

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

    private static List<Distance> BesideStuds(StudPositions studs, Distance boxWidth, DistanceSet clear)
    {
        List<Distance> found = [];
        Distance? bayFrom = null;
        for (int stud = 1; stud <= studs.Count; stud++)
        {
            studs.TryCenter(stud, StudSide.Left, boxWidth, out Distance left);
            studs.TryCenter(stud, StudSide.Right, boxWidth, out Distance right);

            // A bay too narrow for the box has the centers of its two sides in the wrong order.
            if (bayFrom is { } from && from <= left)
            {
                Offer(from);
            }

            if (bayFrom is not { } before || before < left)
            {
                Offer(left);
            }

            bayFrom = right;
        }

        if (bayFrom is { } last)
        {
            Offer(last);
        }

        return found;

        void Offer(Distance at)
        {
            if (clear.Contains(at))
            {
                found.Add(at);
            }
        }
    }

    private static List<Distance> OnSteps(DistanceSet clear, Distance margin, Distance step)
    {
        List<Distance> found = [];
        for (int i = 0; i < clear.Count; i++)
        {
            DistanceSet one = DistanceSet.Between(clear[i].From, clear[i].To);
            DistanceSet roomy = one.Shrink(margin);
            DistanceRange within = roomy.IsEmpty ? clear[i] : roomy[0];
            for (Distance at = within.From.RoundUp(step); at <= within.To; at += step)
            {
                found.Add(at);
            }
        }

        return found;
    }
}
