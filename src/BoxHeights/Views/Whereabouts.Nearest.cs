using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>The nearest place with slack, to the steps that remedies are rounded to; else the nearest without.</content>
internal sealed partial class Whereabouts
{
    private readonly Dictionary<long, AllowedView> asked = [];
    private List<(long Left, long Right)>? pieces;

    /// <summary>Finds the nearest place to one on the wall, in a straight line; of two as near the one that is less far along, then the left one.</summary>
    public NearestPlace? Nearest(Distance along, BoxHeight height)
    {
        SettledOptions options = state.Options;
        List<Distance>? studs = IsOnWall ? StudSides.Of(SitesAt(along)[0].Site) : [along];
        if (studs is not null)
        {
            PlacesToTry.SortByNearest(studs, along);
        }

        // A box that is nailed to a stud is where the stud is: along the wall it needs no slack.
        return studs is null
            ? NearestOf(Candidates(along, options.AlongMargin), along, height, options.AlongMargin, options.HeightMargin) ?? NearestOf(Candidates(along, Distance.Zero), along, height, Distance.Zero, null)
            : NearestOf(studs, along, height, null, options.HeightMargin) ?? NearestOf(studs, along, height, null, null);
    }

    private NearestPlace? NearestOf(List<Distance> candidates, Distance along, BoxHeight height, Distance? aside, Distance? slack)
    {
        NearestPlace? best = null;
        decimal least = decimal.MaxValue;
        foreach (Distance place in candidates)
        {
            decimal off = Square(place - along);
            if (off >= least)
            {
                break;
            }

            if (Heights(place, aside, slack) is var allowed && !allowed.IsEmpty
                && (allowed.TryNearestSnapped(height.Value, state.Options.HeightStep, out Distance reading) || (slack is null && allowed.TryNearest(height.Value, out reading)))
                && off + Square(reading - height.Value) is var away && away < least)
            {
                least = away;
                best = new(place, height.WithValue(reading), box.HeldAt(place, state.Options.Catalog) ?? box.Source.Mounting, slack is not null);
            }
        }

        return best;
    }

    /// <summary>The heights at a place: with slack, those at which it may go up, down and aside by that much and firm rules still find nothing.</summary>
    private DistanceSet Heights(Distance place, Distance? aside, Distance? slack)
    {
        List<(long Left, long Right)> all = aside is null ? [] : pieces ??= [.. Pieces()];
        int at = PieceAt(all, place.Ticks);
        AllowedView here = at < 0 ? Asked(place.Ticks) : Asked(all[at]);
        if (!here.Fits || slack is not { } margin)
        {
            return here.Sure;
        }

        DistanceSet firm = here.FirmlyFree;
        for (int left = at - 1; left >= 0 && all[left].Right >= (place - aside.GetValueOrDefault()).Ticks && !firm.IsEmpty; left--)
        {
            firm &= Asked(all[left]).FirmlyFree;
        }

        for (int right = at + 1; at >= 0 && right < all.Count && all[right].Left <= (place + aside.GetValueOrDefault()).Ticks && !firm.IsEmpty; right++)
        {
            firm &= Asked(all[right]).FirmlyFree;
        }

        return here.Sure & firm.Shrink(margin);
    }

    /// <summary>The piece of the wall that a place is in; negative where none is.</summary>
    private static int PieceAt(List<(long Left, long Right)> all, long place)
    {
        int low = 0;
        int high = all.Count - 1;
        while (low < high)
        {
            int middle = (low + high) >> 1;
            (low, high) = all[middle].Right < place ? (middle + 1, high) : (low, middle);
        }

        return high >= 0 && all[low].Left <= place && place <= all[low].Right ? low : -1;
    }

    private AllowedView Asked((long Left, long Right) piece) => Asked(piece.Left + ((piece.Right - piece.Left) / 2));

    private AllowedView Asked(long place)
    {
        if (!asked.TryGetValue(place, out AllowedView? view))
        {
            asked.Add(place, view = At(Distance.FromTicks(place)));
        }

        return view;
    }

    /// <summary>Places worth trying, nearest first: of each stretch over which nothing changes, the one nearest to a place among the multiples of the step.</summary>
    private List<Distance> Candidates(Distance along, Distance aside)
    {
        long step = state.Options.AlongStep.Ticks;
        HashSet<long> places = [];
        Around(along.Ticks);
        if (box.Surface.Stair is not null)
        {
            // Each place is another.
            for (long at = 0; at <= box.Surface.Length.Ticks; at += step)
            {
                places.Add(at);
            }
        }
        else
        {
            foreach (long edge in Edges())
            {
                Around(edge - aside.Ticks);
                Around(edge + aside.Ticks);
            }
        }

        List<Distance> found = [];
        foreach (long place in places)
        {
            found.Add(Distance.FromTicks(place));
        }

        PlacesToTry.SortByNearest(found, along);
        return found;

        void Around(long place)
        {
            long down = place - Grid.Above(place, step);
            places.UnionWith([down, down == place ? place - step : down, down + step]);
        }
    }

    private static decimal Square(Distance distance) => (decimal)distance.Ticks * distance.Ticks;
}
