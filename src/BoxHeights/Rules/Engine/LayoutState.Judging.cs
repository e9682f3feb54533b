using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes, groups and spaces compared with what is stated, from where boxes are now.</content>
internal sealed partial class LayoutState
{
    // How often a box was put somewhere, and how often when all groups were judged last: nothing was moved if it is the same.
    private int puts;
    private int putsWhenJudged = -1;

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
        for (int i = 0; HasRelief && i < Boxes.Count; i++)
        {
            if (now[i].MayMiss)
            {
                JudgeMissed(i);
            }
        }

        return JudgeGroupsAndSpaces(isTrial);
    }

    private int JudgeGroupsAndSpaces(bool isTrial = false)
    {
        int found = Faults.Count;
        for (int i = 0; i < Boxes.Count; i++)
        {
            found += CountOf(now[i].PlacementFindings) + CountOf(now[i].LimitFindings) + NotJudgedOf(i);
        }

        bool isSame = puts == putsWhenJudged;
        putsWhenJudged = puts;
        for (int g = 0; g < Groups.Count; g++)
        {
            JudgeGroup(g, isSame);
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

        foreach (int group in GroupsAround(box))
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
        ref BoxState here = ref now[box];
        int found = 0;
        for (int i = 0; here.MayMissLimits && i < here.Sites[0].Limits.Length; i++)
        {
            StatedLimit limit = here.Sites[0].Limits[i];
            if ((limit.MayFail || here.Sites.Length > 1) && JudgeLimit(box, i) is { Verdict: not Verdict.Passes } judged)
            {
                Place place = PlaceOf(box);
                if (FoundBefore(here.LimitFindings, found)?.Says(limit, judged, place) != true)
                {
                    SetFound(ref here.LimitFindings, found, new Finding(this, box, i, judged, place));
                }

                found++;
            }
        }

        EndFound(here.LimitFindings, found);
    }

    // What is found again of a box that hasn't moved is the finding that is there: with what was read of it, and without another one.
    private static Finding? FoundBefore(List<Finding>? findings, int nth) => nth < CountOf(findings) ? findings![nth] : null;

    private static void SetFound(ref List<Finding>? findings, int nth, Finding finding)
    {
        findings ??= [];
        if (nth < findings.Count)
        {
            findings[nth] = finding;
        }
        else
        {
            findings.Add(finding);
        }
    }

    private static void EndFound(List<Finding>? findings, int count)
    {
        if (findings is not null && findings.Count > count)
        {
            findings.RemoveRange(count, findings.Count - count);
        }
    }

    /// <summary>Judges a box by itself, from where it is now.</summary>
    public void JudgePlacement(int box)
    {
        ref BoxState here = ref now[box];
        if (here.Safe.Holds(here.At, here.Reading) || TrySafe(box))
        {
            here.PlacementFindings?.Clear();
        }
        else
        {
            JudgeRules(box);
        }
    }

    /// <summary>Judges a box rule by rule. For a first look that's less work than finding the places around it where it would pass.</summary>
    private void JudgeRules(int box)
    {
        AskAll(box);
        JudgeMissed(box);
    }

    /// <summary>Asks all rules at once whether a box surely passes them, whatever others are there.</summary>
    private void AskAll(int box)
    {
        ref BoxState here = ref now[box];
        here.MayMiss = here.Reading != NotKnown && here.Sites.Length > 0 && (here.Sites.Length > 1 || !here.Sites[0].AllPass(PlaceOf(box)));
    }

    /// <summary>Judges a box by each rule that it may miss.</summary>
    private void JudgeMissed(int box)
    {
        ref BoxState here = ref now[box];
        Place place = PlaceOf(box);
        StatedPlacement[] stated = here.MayMiss ? here.Sites[0].Placements : [];
        int found = 0;
        for (int p = 0; p < stated.Length; p++)
        {
            if ((here.Sites.Length > 1 || !stated[p].Passes(place)) && VerdictOf(box, p, place) is var verdict && verdict != Verdict.Passes && !Yields(box, p, verdict))
            {
                if (FoundBefore(here.PlacementFindings, found)?.Says(p, verdict, place, here.Sites) != true)
                {
                    SetFound(ref here.PlacementFindings, found, new Finding(this, box, p, verdict, place));
                }

                found++;
            }
        }

        EndFound(here.PlacementFindings, found);
    }

    private bool TrySafe(int box)
    {
        ref BoxState here = ref now[box];
        if (here.Sites.Length != 1 || here.At == NotKnown || here.Reading == NotKnown || here.IsMeasured
            || !here.Sites[0].HasPlaces || !here.Sites[0].Places.TryStretch(here.At, out long left, out long right, out DistanceSet allowed))
        {
            return false;
        }

        for (int i = 0; i < allowed.Count; i++)
        {
            DistanceRange one = allowed[i];
            if (one.From.Ticks <= here.Reading && here.Reading <= one.To.Ticks)
            {
                here.Safe = new(left + 1, right - 1, one.From.Ticks, one.To.Ticks);
                return true;
            }
        }

        return false;
    }

    /// <summary>Judges a group from where its boxes are now.</summary>
    /// <param name="group">The group.</param>
    /// <param name="isSame">Whether no box was put elsewhere since it was judged: then what is found again is the finding that is there.</param>
    private void JudgeGroup(int group, bool isSame = false)
    {
        Cancellation.ThrowIfCancellationRequested();
        answer.Clear();
        int found = 0;

        // It may have lost all its boxes.
        if (Groups[group].Boxes.Count > 0)
        {
            Groups[group].Rule.Judge(Groups[group].Boxes, answer);
            keeps[group] = answer.Keep;
            for (int i = 0; i < answer.Count; i++)
            {
                // What is no part of this work is only what others are held against.
                int box = Groups[group].Boxes.Member(answer[i].Index);
                if (!now[box].IsUntouched)
                {
                    if (!isSame || FoundBefore(groupFindings[group], found)?.Says(box, answer[i].Verdict) != true)
                    {
                        SetFound(ref groupFindings[group], found, new Finding(this, group, answer[i]));
                    }

                    found++;
                }
            }
        }

        EndFound(groupFindings[group], found);
    }
}
