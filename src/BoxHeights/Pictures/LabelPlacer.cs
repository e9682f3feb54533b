using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Finds room for labels: none overlaps another or what is blocked, and none leaves the page.</summary>
internal sealed class LabelPlacer(PageRect bounds)
{
    private const int NearRings = 3;

    private readonly List<PageRect> taken = [];

    /// <summary>Keeps labels off a part of the page.</summary>
    public void Block(in PageRect part) => taken.Add(part);

    /// <summary>Whether a label could be there.</summary>
    public bool IsFree(in PageRect place)
    {
        if (!bounds.Holds(place))
        {
            return false;
        }

        foreach (PageRect one in taken)
        {
            if (one.Overlaps(place))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Takes the first of several places that is free, and fit for it where not every one is.</summary>
    public bool TryTake(IEnumerable<PageRect> places, out PageRect taken, Predicate<PageRect>? isFit = null)
    {
        foreach (PageRect place in places)
        {
            if (IsFree(place) && isFit?.Invoke(place) != false)
            {
                this.taken.Add(place);
                taken = place;
                return true;
            }
        }

        taken = default;
        return false;
    }

    /// <summary>Places for a label around a thing: right of it, left, above, below, at its corners, then further and further off; from the fourth ring on all round it.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="width">The label's width.</param>
    /// <param name="height">The label's height.</param>
    /// <param name="gap">The least gap to the thing.</param>
    /// <param name="rings">How often to try further off.</param>
    public static IEnumerable<PageRect> Around(PageRect thing, long width, long height, long gap, int rings)
    {
        long x = thing.Left + ((thing.Width - width) / 2);
        long y = thing.Top + ((thing.Height - height) / 2);
        for (int ring = 0; ring < rings; ring++)
        {
            long off = gap + (ring * height / 2);
            (long left, long right, long above, long below) = (thing.Left - off - width, thing.Right + off, thing.Top - off - height, thing.Bottom + off);
            yield return new(right, y, width, height);
            yield return new(left, y, width, height);
            yield return new(x, above, width, height);
            yield return new(x, below, width, height);
            yield return new(right, above, width, height);
            yield return new(left, above, width, height);
            yield return new(right, below, width, height);
            yield return new(left, below, width, height);
            for (long step = height; ring >= NearRings && step < Math.Max(x - left, y - above); step += height)
            {
                foreach (long aside in new[] { step, -step })
                {
                    if (step < y - above)
                    {
                        yield return new(right, y + aside, width, height);
                        yield return new(left, y + aside, width, height);
                    }

                    if (step < x - left)
                    {
                        yield return new(x + aside, above, width, height);
                        yield return new(x + aside, below, width, height);
                    }
                }
            }
        }
    }
}
