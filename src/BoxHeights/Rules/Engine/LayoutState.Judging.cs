
namespace BoxHeights.Rules;

/// <content>Boxes, groups and spaces compared with what is stated, from where boxes are now.</content>
internal sealed partial class LayoutState
{
    /// <summary>Judges every box and group from where they are now.</summary>
    /// <returns>How many findings there are. Nothing is allocated for what passes.</returns>
    public int JudgeAll()
    {
        for (int i = 0; i < Boxes.Count; i++)
        {
            JudgeLimits(i);
            JudgePlacement(i);
        }

        return JudgeGroupsAndSpaces();
    }

    /// <summary>Judges the rest of what was just entered: each box was judged by itself, but where others may let one off that misses something, before all others were there.</summary>
    /// <remarks>What a layout that differs in a few boxes found nothing of, and reads none of those, isn't judged again.</remarks>
    /// <param name="isTrial">Whether only what is found counts, and not which readings dispute it.</param>
    /// <returns>How many findings there are.</returns>
    public int JudgeEntered(bool isTrial = false)
    {
        for (int i = 0; Rules.HasRelief && i < Boxes.Count; i++)
        {
            if (mayMiss[i])
            {
                JudgeRules(i);
            }
        }

        return JudgeGroupsAndSpaces(isTrial);
    }

    private int JudgeGroupsAndSpaces(bool isTrial = false)
    {
        int found = Faults.Count;
        for (int i = 0; i < Boxes.Count; i++)
        {
            found += CountOf(placementFindings[i]) + CountOf(limitFindings[i]) + NotJudgedOf(i);
        }

        for (int g = 0; g < Groups.Count; g++)
        {
            JudgeGroup(g);
            found += CountOf(groupFindings[g]);
        }

        for (int s = 0; s < Spaces.Count; s++)
        {
            found += Spaces.IsSilent(s) ? 0 : Spaces.Judge(s, this, isTrial);
        }

        return found;
    }

    /// <summary>Judges a box, the groups it is in, and what read where it was (<see cref="LookAround"/>), after it was put elsewhere.</summary>
    public void JudgeAfterMove(int box)
    {
        JudgeLimits(box);
        JudgePlacement(box);
        foreach (int companion in CompanionsOf(box))
        {
            JudgePlacement(companion);
        }

        foreach (int group in Groups.Of(box))
        {
            JudgeGroup(group);
        }

        foreach (int space in readers)
        {
            Spaces.Judge(space, this);
        }
    }

    private void JudgeLimits(int box)
    {
        limitFindings[box]?.Clear();
        for (int i = 0; mayMissLimits[box] && i < sites[box][0].Limits.Length; i++)
        {
            if ((sites[box][0].Limits[i].MayFail || sites[box].Length > 1) && JudgeLimit(box, i) is { Verdict: not Verdict.Passes } judged)
            {
                (limitFindings[box] ??= []).Add(new Finding(this, box, i, judged, PlaceOf(box)));
            }
        }
    }

    /// <summary>Judges a box by itself, from where it is now.</summary>
    public void JudgePlacement(int box)
    {
        if (safe[box].Holds(at[box], reading[box]) || TrySafe(box))
        {
            placementFindings[box]?.Clear();
        }
        else
        {
            JudgeRules(box);
        }
    }

    /// <summary>Judges a box rule by rule. For a first look that's less work than finding the places around it where it would pass.</summary>
    private void JudgeRules(int box)
    {
        placementFindings[box]?.Clear();
        mayMiss[box] = false;
        if (reading[box] == NotKnown || sites[box].Length == 0)
        {
            return;
        }

        Place place = PlaceOf(box);
        mayMiss[box] = sites[box].Length > 1 || !sites[box][0].AllPass(place);
        if (!mayMiss[box])
        {
            return;
        }

        StatedPlacement[] stated = sites[box][0].Placements;
        for (int p = 0; p < stated.Length; p++)
        {
            if ((sites[box].Length > 1 || !stated[p].Passes(place)) && VerdictOf(box, p, place) is var verdict && verdict != Verdict.Passes && !Yields(box, p, verdict))
            {
                (placementFindings[box] ??= []).Add(new Finding(this, box, p, verdict, place));
            }
        }
    }

    private bool TrySafe(int box)
    {
        if (sites[box].Length != 1 || at[box] == NotKnown || reading[box] == NotKnown || Boxes[box].Spread != Distance.Zero
            || !sites[box][0].TryStretch(at[box], out long left, out long right, out DistanceSet allowed))
        {
            return false;
        }

        for (int i = 0; i < allowed.Count; i++)
        {
            DistanceRange one = allowed[i];
            if (one.From.Ticks <= reading[box] && reading[box] <= one.To.Ticks)
            {
                safe[box] = new(left + 1, right - 1, one.From.Ticks, one.To.Ticks);
                return true;
            }
        }

        return false;
    }

    private void JudgeGroup(int group)
    {
        Cancellation.ThrowIfCancellationRequested();
        groupFindings[group]?.Clear();
        answer.Clear();
        if (Groups[group].Boxes.Count == 0)
        {
            // All its boxes left.
            return;
        }

        Groups[group].Rule.Judge(Groups[group].Boxes, answer);
        keeps[group] = answer.Keep;
        for (int i = 0; i < answer.Count; i++)
        {
            // What is no part of this work is only what others are held against.
            if (!Boxes[Groups[group].Boxes.Member(answer[i].Index)].IsUntouched)
            {
                (groupFindings[group] ??= []).Add(new Finding(this, group, answer[i]));
            }
        }
    }
}
