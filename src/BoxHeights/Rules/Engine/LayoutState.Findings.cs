using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>What was found, gathered in the order in which it is told.</content>
internal sealed partial class LayoutState
{
    private readonly List<int> readers = [];

    /// <summary>Every finding: faults first, then box by box, group by group, and space by space.</summary>
    public void CollectInto(List<Finding> findings)
    {
        foreach (LayoutFault fault in Faults)
        {
            findings.Add(new Finding(this, fault));
        }

        int[]? order = InOrder();
        for (int i = 0; i < Boxes.Count; i++)
        {
            int box = order is null ? i : order[i];
            CollectOwn(box, findings);
            CollectNotJudged(box, findings);
        }

        foreach (int group in Groups.InOrder)
        {
            Gather(groupFindings[group], findings);
        }

        for (int s = 0; s < Spaces.Count; s++)
        {
            findings.AddRange(Spaces[s].Findings);
        }
    }

    /// <summary>Looks up what reads where a box is, before it is put elsewhere: what is judged and gathered around it is that, also if it won't read it any more.</summary>
    public void LookAround(int box)
    {
        readers.Clear();
        readers.AddRange(Spaces.Readers!.Of(box));
    }

    /// <summary>The findings that moving a box can change: its own, and those of whatever it is judged together with.</summary>
    public void CollectAround(int box, List<Finding> findings)
    {
        CollectOwn(box, findings);
        CollectNotJudged(box, findings);
        foreach (int companion in CompanionsOf(box))
        {
            if (companion != box)
            {
                CollectOwn(companion, findings);
            }
        }

        foreach (int group in GroupsAround(box))
        {
            Gather(groupFindings[group], findings);
        }

        foreach (int space in readers)
        {
            findings.AddRange(Spaces[space].Findings);
        }
    }

    public bool HasFindingsAround(int box)
    {
        bool any = CountOf(now[box].PlacementFindings) + CountOf(now[box].LimitFindings) + NotJudgedOf(box) > 0;
        foreach (int companion in CompanionsOf(box))
        {
            any |= CountOf(now[companion].PlacementFindings) > 0;
        }

        foreach (int group in GroupsAround(box))
        {
            any |= CountOf(groupFindings[group]) > 0;
        }

        foreach (int space in readers)
        {
            any |= Spaces[space].Findings.Count > 0;
        }

        return any;
    }

    /// <summary>Whether where a box is along its wall is only assumed, because a stud of a layout that nobody has seen tells it.</summary>
    public override bool IsPlacedByAssumedStud(int box) => Boxes[box].Source.At is null && Boxes[box].Surface.Studs is { Known: StudKnowledge.Assumed }
        && Boxes[box].TryAlong(Options.Catalog, out Distance along) && along == AtOf(box);

    private static int CountOf(List<Finding>? findings) => findings is null ? 0 : findings.Count;

    /// <summary>How many rules about its place that weigh as a violation couldn't be held to a box. What a limit lacks is a fact of the box that may be left out: that is told, and no finding.</summary>
    private int NotJudgedOf(int box)
    {
        ref BoxState here = ref now[box];
        if (here.NotJudged == BoxState.NotCounted)
        {
            // The same of any place: counting it each time was a tenth of judging all again.
            here.NotJudged = 0;
            foreach ((Rule rule, Wording why) in here.Sites.Length > 0 ? here.Sites[0].NotJudged : [])
            {
                here.NotJudged += (short)(IsBlocked(box, rule, why) ? 1 : 0);
            }
        }

        return here.NotJudged;
    }

    /// <summary>Rules that weigh as a violation and couldn't be held to a box. What a trial brings or clears isn't asked of them: no move mends a description.</summary>
    private void CollectNotJudged(int box, List<Finding> findings)
    {
        if (NotJudgedOf(box) == 0)
        {
            return;
        }

        foreach ((Rule rule, Wording why) in now[box].Sites[0].NotJudged)
        {
            if (IsBlocked(box, rule, why))
            {
                findings.Add(new(this, rule, box, why));
            }
        }
    }

    /// <summary>A thing without a place is a finding itself.</summary>
    private bool IsBlocked(int box, Rule rule, Wording why) => rule is PlacementRule { Severity: Severity.Violation }
        && !(ReferenceEquals(why, UnplacedThings.NoPlace) && Boxes[box].Surface.Space is { Room: { } room, Plan: { } plan } && UnplacedThings.AnyIsToldToLack(room, plan));

    /// <summary>The findings of one box by itself.</summary>
    public void CollectOwn(int box, List<Finding> findings)
    {
        Gather(now[box].PlacementFindings, findings);
        Gather(now[box].LimitFindings, findings);
    }

    private static void Gather(List<Finding>? some, List<Finding> findings)
    {
        if (some is not null)
        {
            findings.AddRange(some);
        }
    }
}
