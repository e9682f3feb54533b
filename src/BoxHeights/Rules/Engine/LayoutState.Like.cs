using System.Collections.Generic;
using System.Threading;

namespace BoxHeights.Rules;

/// <content>Layouts of dwellings that differ in their boxes alone: what is resolved and stated is shared, and what no other box changes isn't judged again.</content>
internal sealed partial class LayoutState
{
    /// <summary>The same layout once more, in which boxes may be tried elsewhere. Nobody may work with both at a time: see <see cref="Gate"/>.</summary>
    public LayoutState Copy(CancellationToken cancellation)
    {
        int[] same = new int[Boxes.Count];
        for (int box = 0; box < same.Length; box++)
        {
            same[box] = box;
        }

        LayoutState copy = new(this, Dwelling, [.. Boxes], same, cancellation, isCopy: true);
        copy.Spaces.ShareNotes(Spaces);
        return copy;
    }

    /// <summary>The layout of a dwelling that differs in its boxes alone, not judged yet.</summary>
    /// <param name="dwelling">The dwelling. Nothing may be another in it but boxes that are described otherwise or added.</param>
    /// <param name="cancellation">Ends what is worked out.</param>
    /// <returns>Null where a box is at fault, or may put others at fault: then the dwelling is to be resolved anew.</returns>
    public LayoutState? Like(Dwelling dwelling, CancellationToken cancellation)
    {
        if (haveJoined || OtherBoxes.Between(this, dwelling) is not { } boxes)
        {
            return null;
        }

        LayoutState like = new(this, dwelling, boxes.Resolved, boxes.Before, cancellation);
        if (like.Faults.Count > Faults.Count)
        {
            return null;
        }

        if (Spaces.Readers is null || boxes.ChangeWhatIsListed)
        {
            like.Spaces.NoteReaders();
            return like;
        }

        HashSet<int> read = [];
        foreach (int box in boxes.Moved)
        {
            read.UnionWith(Spaces.ReadersOf(boxes.Before[box]));
        }

        foreach (int box in boxes.Others)
        {
            Spaces.AddJudgedWith(like.Spaces, box, read);
            if (boxes.Before[box] >= 0)
            {
                Spaces.AddJudgedWith(boxes.Before[box], read);
            }
        }

        like.Spaces.TakeOver(Spaces, boxes.Numbers, read);
        return like;
    }

    /// <summary>Takes boxes over that are as they were, and enters the others.</summary>
    private LayoutState(LayoutState like, Dwelling dwelling, List<ResolvedBox> boxes, int[] before, CancellationToken cancellation, bool isCopy = false)
    {
        Cancellation = cancellation;
        Gate = like.Gate;
        Dwelling = dwelling;
        Rules = like.Rules;
        Options = like.Options;
        Faults = [.. like.Faults];
        Boxes = boxes;
        surfaces = like.surfaces;
        stated = like.stated;
        int count = boxes.Count;
        now = new BoxState[count];
        for (int i = 0; i < count; i++)
        {
            if (before[i] >= 0 && ReferenceEquals(boxes[i], like.Boxes[before[i]]))
            {
                TakeOver(i, like, before[i], isCopy);
            }
            else
            {
                Enter(i);
            }
        }

        Groups = new(this, like, before);
        groupFindings = new List<Finding>?[Groups.Count];
        keeps = new DistanceSet[Groups.Count];
        Spaces = new(this, like.Spaces, like.Spaces.Described is { } described ? SharedWalls.WithBoxesOf(dwelling, described, like.Dwelling) : dwelling);
    }

    private void TakeOver(int box, LayoutState like, int before, bool isCopy)
    {
        ref readonly BoxState there = ref like.now[before];
        now[box] = there with { PlacementFindings = null, LimitFindings = null };
        if (isCopy)
        {
            // All boxes are where they are there, so that what is found is the same.
            now[box].PlacementFindings = there.PlacementFindings is { Count: > 0 } placed ? [.. placed] : null;
            now[box].LimitFindings = there.LimitFindings is { Count: > 0 } limited ? [.. limited] : null;
            return;
        }

        // A finding tells of the layout that it was found in.
        if (CountOf(like.now[before].LimitFindings) > 0)
        {
            JudgeLimits(box);
        }

        // Where others may let it off it is judged when all are there.
        if (now[box].MayMiss && !HasRelief)
        {
            JudgeMissed(box);
        }
    }
}
