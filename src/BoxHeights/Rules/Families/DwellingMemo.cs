using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What space rules ask of the whole dwelling, each worked out once for all that is judged: asking it for each room anew grew with the square of the rooms.</summary>
/// <param name="dwelling">The description.</param>
/// <param name="boxes">The boxes that can be judged, by what they belong to.</param>
internal sealed class DwellingMemo(Dwelling dwelling, BoxLists boxes)
{
    private readonly OncePerKind listed = new(kind => kind.IsListedIn(dwelling));
    private readonly OncePerKind listedOutside = new(kind => kind.IsListedOutside(dwelling));
    private readonly List<(IBoxKind Kind, string? Except)> none = [];
    private readonly List<(IBoxKind Kind, Verdict OtherCounts)> some = [];
    private HashSet<string>? ids;

    public Dwelling Dwelling => dwelling;

    /// <summary>Whether any box says what it controls.</summary>
    public bool AreControlsSaid => boxes.Controlling > 0;

    /// <summary>Whether some boxes are described that can't be judged.</summary>
    public bool HasBoxesAtFault => boxes.HasFaults;

    /// <summary>Which of what is judged asked for which list of boxes; null unless that is noted.</summary>
    public SpaceReaders? Readers { get; set; }

    /// <summary>The boxes of a list, for whoever asks now: they have to be judged again when boxes join it or are described anew.</summary>
    public Items<SpaceBox> Read(SpaceBoxes list)
    {
        Readers?.Note(list.Number);
        return list.Listed;
    }

    /// <summary>The boxes of a room or outside face.</summary>
    public Items<SpaceBox> BoxesIn(string space) => boxes.InSpace(space) is { } list ? Read(list) : default;

    /// <summary>The boxes in the rooms of a storey.</summary>
    public Items<SpaceBox> BoxesOn(string storey) => boxes.OnStorey(storey) is { } list ? Read(list) : default;

    /// <summary>Whether such a box is described in a room or on an outside face, be it at fault.</summary>
    public bool IsIn(string space, IBoxKind kind)
    {
        foreach (SpaceBox box in BoxesIn(space))
        {
            if (kind.IsOne(box.Source))
            {
                return true;
            }
        }

        return boxes.AtFaultIn(space).Exists(kind.IsOne);
    }

    /// <summary>The boxes on the wall of a flight of stairs.</summary>
    public Items<SpaceBox> BoxesOnStairWall(string address) => boxes.OnStairWall(address) is { } list ? Read(list) : default;

    /// <summary>Whether a box of the description has an id.</summary>
    public bool HasBox(string id)
    {
        if (ids is null)
        {
            ids = new(StringComparer.Ordinal);
            foreach (PlacedBox placed in dwelling.PlacedBoxes())
            {
                ids.Add(placed.Box.Id);
            }
        }

        return ids.Contains(id);
    }

    /// <summary>Whether the description lists any such box.</summary>
    public bool Lists(IBoxKind kind) => (listed.Of(kind) && Some(kind, Verdict.Passes)) || None(kind);

    /// <summary>Whether the description lists any such box on an outside face.</summary>
    public bool ListsOutside(IBoxKind kind) => (listedOutside.Of(kind) && Some(kind, Verdict.Unknown)) || None(kind);

    /// <summary>Notes that a rule went by that the description lists no such box, and none that is added may be passed over.</summary>
    /// <param name="kind">Such boxes.</param>
    /// <param name="except">The space that asked about others than itself; null where its own boxes count.</param>
    /// <returns>False.</returns>
    public bool None(IBoxKind kind, string? except = null)
    {
        for (int i = 0; i < none.Count; i++)
        {
            if (ReferenceEquals(none[i].Kind, kind))
            {
                // Of two spaces that asked about the others, a box in either counts.
                none[i] = none[i].Except == except ? none[i] : (kind, null);
                return false;
            }
        }

        none.Add((kind, except));
        return false;
    }

    /// <summary>Notes that a rule went by that the description lists such a box, and that it may be the last.</summary>
    /// <param name="kind">Such boxes.</param>
    /// <param name="otherCounts">Passes where one anywhere else would do, Unknown where one outside would, Fails where it isn't said which others would.</param>
    /// <returns>True.</returns>
    public bool Some(IBoxKind kind, Verdict otherCounts = Verdict.Fails)
    {
        foreach ((IBoxKind known, Verdict counts) in some)
        {
            if (ReferenceEquals(known, kind) && counts == otherCounts)
            {
                return true;
            }
        }

        some.Add((kind, otherCounts));
        return true;
    }

    /// <summary>Takes over what was gone by in a layout that differs in its boxes alone: what is silent there isn't asked here.</summary>
    public void TakeOver(DwellingMemo like)
    {
        none.AddRange(like.none);
        some.AddRange(like.some);
    }

    /// <summary>Whether a rule went by that such a box is listed, and no other is known that it would be met by as well.</summary>
    public bool IsLastOfItsKind(SpaceBox box)
    {
        foreach ((IBoxKind kind, Verdict otherCounts) in some)
        {
            if (kind.IsOne(box.Source) && !HasOther(kind, otherCounts, box))
            {
                return true;
            }
        }

        return false;
    }

    private bool HasOther(IBoxKind kind, Verdict otherCounts, SpaceBox box) => otherCounts switch
    {
        Verdict.Passes => boxes.All.Exists(other => other != box && kind.IsOne(other.Source)),

        // Outside alone: a dwelling has many boxes, of which those come last.
        Verdict.Unknown => dwelling.Outside.Exists(face => boxes.InSpace(face.Id) is { } there && there.Exists(other => other != box && other.IsOutside && kind.IsOne(other.Source))),
        _ => false,
    };

    /// <summary>Whether a rule went by that no box is listed as one that is to be added.</summary>
    public bool IsFirstOfItsKind(PlacedBox placed)
    {
        foreach ((IBoxKind kind, string? except) in none)
        {
            if (kind.IsOne(placed.Box) && (except is null || !SurfaceAddress.Read(placed.Address).IsPartOf(except)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Answers by the kind's identity: a rule has one for life, and hashing a record of lists costs more than walking the few there are.</summary>
    private sealed class OncePerKind(Predicate<IBoxKind> ask)
    {
        private readonly List<(IBoxKind Kind, bool Is)> known = [];

        public bool Of(IBoxKind kind)
        {
            foreach ((IBoxKind one, bool itIs) in known)
            {
                if (ReferenceEquals(one, kind))
                {
                    return itIs;
                }
            }

            bool isOne = ask(kind);
            known.Add((kind, isOne));
            return isOne;
        }
    }
}
