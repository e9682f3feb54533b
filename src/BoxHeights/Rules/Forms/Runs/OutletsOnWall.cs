using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The outlets of a wall, from left to right, so that each of many runs looks at those alone that stand on it.</summary>
internal sealed class OutletsOnWall
{
    private readonly List<int> boxes = [];
    private readonly List<int> anywhere = [];
    private readonly List<(long Along, int Box)> placed = [];
    private bool isSorted;

    public void Clear()
    {
        boxes.Clear();
        isSorted = false;
    }

    public void Add(int box) => boxes.Add(box);

    /// <summary>Those on a stretch, and those of which it isn't known where they are.</summary>
    public void Near(RunStretch stretch, int number, List<(SpaceBox Box, bool IsSure, MissingFacts Needs)> counting, List<(int Box, int Stretch)> near)
    {
        if (!isSorted)
        {
            Sort(counting);
        }

        foreach (int box in anywhere)
        {
            near.Add((box, number));
        }

        for (int i = FirstFrom(stretch.From.Ticks); i < placed.Count && placed[i].Along <= stretch.To.Ticks; i++)
        {
            near.Add((placed[i].Box, number));
        }
    }

    // Only here is it asked where they are: whoever asks is judged again when one moves.
    private void Sort(List<(SpaceBox Box, bool IsSure, MissingFacts Needs)> counting)
    {
        anywhere.Clear();
        placed.Clear();
        isSorted = true;
        foreach (int box in boxes)
        {
            if (counting[box].Box.Along is { } along)
            {
                placed.Add((along.Ticks, box));
            }
            else
            {
                anywhere.Add(box);
            }
        }

        placed.Sort(static (one, other) => one.Along.CompareTo(other.Along));
    }

    private int FirstFrom(long along)
    {
        int first = 0;
        int end = placed.Count;
        while (first < end)
        {
            int middle = (first + end) / 2;
            (first, end) = placed[middle].Along < along ? (middle + 1, end) : (first, middle);
        }

        return first;
    }
}
