using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The boxes that can be judged, listed by what they belong to: all of them, those of a room or outside face, of a storey, and of a stair's wall.</summary>
internal sealed class BoxLists
{
    private static readonly List<DeviceBox> None = [];

    private readonly Dictionary<string, SpaceBoxes> inSpace = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SpaceBoxes> onStorey = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SpaceBoxes> onStairWall = new(StringComparer.Ordinal);
    private readonly HashSet<string> untouched = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<DeviceBox>> atFault = new(StringComparer.Ordinal);
    private int count;

    /// <param name="dwelling">The dwelling.</param>
    /// <param name="boxes">How many boxes there are at first.</param>
    public BoxLists(Dwelling dwelling, int boxes)
    {
        All = new(count++, boxes);
        foreach (StairFlight flight in dwelling.Flights)
        {
            if (flight.Wall is { } wall)
            {
                Among(onStairWall, wall);
            }
        }

        // Each under the same number in every layout that differs in its boxes alone.
        foreach (Room room in dwelling.Rooms)
        {
            OfSpace(room.Id);
            OfStorey(room.Storey);
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            OfSpace(face.Id);
        }
    }

    /// <summary>Every box.</summary>
    public SpaceBoxes All { get; }

    /// <summary>Whether some boxes are described that can't be judged.</summary>
    public bool HasFaults => atFault.Count > 0;

    /// <summary>The boxes of a room or outside face.</summary>
    public SpaceBoxes OfSpace(string id) => Among(inSpace, id);

    /// <summary>The boxes of a storey.</summary>
    public SpaceBoxes OfStorey(string id) => Among(onStorey, id);

    /// <summary>The boxes of a room or outside face; null where none is known by that id.</summary>
    public SpaceBoxes? InSpace(string id) => inSpace.TryGetValue(id, out SpaceBoxes? list) ? list : null;

    /// <summary>The boxes in the rooms of a storey; null where none is known by that id.</summary>
    public SpaceBoxes? OnStorey(string id) => onStorey.TryGetValue(id, out SpaceBoxes? list) ? list : null;

    /// <summary>The boxes on the wall of a flight of stairs; null where no flight has that wall.</summary>
    public SpaceBoxes? OnStairWall(string address) => onStairWall.TryGetValue(address, out SpaceBoxes? list) ? list : null;

    /// <summary>Whether a box of an id is no part of the work.</summary>
    public bool IsUntouched(string? id) => id is not null && untouched.Contains(id);

    /// <summary>The boxes of a room or outside face that a fault keeps from being judged: they are described all the same.</summary>
    public List<DeviceBox> AtFaultIn(string space) => atFault.TryGetValue(space, out List<DeviceBox>? list) ? list : None;

    /// <summary>How many boxes say what they control.</summary>
    public int Controlling { get; private set; }

    /// <summary>Puts in a box that there is at first; null where a fault keeps it from being judged.</summary>
    public void Enter(SpaceBox? box, ResolvedBox described)
    {
        if (box is null)
        {
            atFault.ListOf(described.Surface.Space.Id).Add(described.Source);
            Controlling += described.Source.Controls.Count > 0 ? 1 : 0;
            return;
        }

        Add(box);
    }

    /// <summary>Puts a box in the lists that it belongs to, behind all others.</summary>
    public void Add(SpaceBox box)
    {
        foreach (SpaceBoxes list in Of(box))
        {
            list.Add(box);
        }

        Counts(box);
    }

    /// <summary>Puts a box in the lists that it belongs to, where it comes in the dwelling's order.</summary>
    public void Join(SpaceBox box)
    {
        foreach (SpaceBoxes list in Of(box))
        {
            list.Join(box);
        }

        Counts(box);
    }

    /// <summary>Takes a box out of its lists, whichever it is.</summary>
    public void Part(SpaceBox box)
    {
        foreach (SpaceBoxes list in Of(box))
        {
            list.Part(box);
        }

        CountsNoMore(box);
    }

    /// <summary>Takes the box out again that was added last.</summary>
    public void RemoveLast(SpaceBox box)
    {
        foreach (SpaceBoxes list in Of(box))
        {
            list.RemoveLast();
        }

        CountsNoMore(box);
    }

    /// <summary>The lists that a box belongs to.</summary>
    public ListsOfBox Of(SpaceBox box) => new(All, InSpace(box.SpaceId), StoreyOf(box) is { } storey ? OnStorey(storey) : null, OnStairWall(box.Address));

    /// <summary>The storey that a box counts for; null outside.</summary>
    public static string? StoreyOf(SpaceBox box) => box.IsOutside ? null : box.StoreyId;

    private void Counts(SpaceBox box)
    {
        Controlling += box.Source.Controls.Count > 0 ? 1 : 0;
        if (box.Traits.IsUntouched)
        {
            untouched.Add(box.Id);
        }
    }

    private void CountsNoMore(SpaceBox box)
    {
        Controlling -= box.Source.Controls.Count > 0 ? 1 : 0;
        untouched.Remove(box.Id);
    }

    private SpaceBoxes Among(Dictionary<string, SpaceBoxes> known, string id)
    {
        if (!known.TryGetValue(id, out SpaceBoxes? list))
        {
            known.Add(id, list = new(count++));
        }

        return list;
    }
}

/// <summary>The lists that one box belongs to, without a list of them: each box of each layout is put in its own.</summary>
internal readonly struct ListsOfBox(SpaceBoxes all, SpaceBoxes? space, SpaceBoxes? storey, SpaceBoxes? wall)
{
    private const int Most = 4;

    public Enumerator GetEnumerator() => new(this);

    private SpaceBoxes? At(int nth) => nth switch
    {
        0 => all,
        1 => space,
        2 => storey,
        _ => wall,
    };

    public struct Enumerator(ListsOfBox lists)
    {
        private int nth = -1;

        public readonly SpaceBoxes Current => lists.At(nth)!;

        public bool MoveNext()
        {
            do
            {
                nth++;
            }
            while (nth < Most && lists.At(nth) is null);

            return nth < Most;
        }
    }
}
