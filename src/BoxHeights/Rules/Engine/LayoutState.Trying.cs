using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes described anew, for remedies to be tried out.</content>
internal sealed partial class LayoutState
{
    /// <summary>Describes a box anew, on the surface that it is listed under. What it is found to be is judged afterwards.</summary>
    public void Describe(int box, DeviceBox source)
    {
        Boxes[box] = BoxResolver.Again(source, Boxes[box].Surface, Options.Catalog, Options.Units);
        now[box].Sites = default;
        Put(box, Boxes[box].Height, Boxes[box].TryAlong(Options.Catalog, out Distance along) ? along : null);
        now[box].LimitFindings = null;
        JudgeLimits(box);
    }

    /// <summary>Judges what some boxes are judged in together with others, each once, and gathers what is found.</summary>
    /// <param name="boxes">The boxes.</param>
    /// <param name="findings">Takes what is found.</param>
    /// <param name="spaces">Takes what is judged of spaces, and may hold what looked at the boxes as they were described before.</param>
    /// <param name="onlyMoved">Whether nothing about them changed but where they are: then what doesn't read that says what it said.</param>
    public void JudgeTogether(HashSet<int> boxes, List<Finding> findings, HashSet<int> spaces, bool onlyMoved)
    {
        JudgeBeside(boxes, findings);
        foreach (int box in boxes)
        {
            if (onlyMoved && Spaces.Readers is { } readers)
            {
                spaces.UnionWith(readers.Of(box));
            }
            else
            {
                Spaces.AddJudgedWith(box, spaces);
            }
        }

        foreach (int space in spaces)
        {
            Spaces[space].Judge(this, isTrial: true);
            findings.AddRange(Spaces[space].Findings);
        }
    }

    /// <summary>The same of other boxes alone: what a room lacks may be judged later.</summary>
    private void JudgeBeside(HashSet<int> boxes, List<Finding> findings)
    {
        HashSet<int> beside = [];
        HashSet<int> groups = [];
        foreach (int box in boxes)
        {
            beside.UnionWith(CompanionsOf(box));
            groups.UnionWith(GroupsAround(box));
        }

        beside.ExceptWith(boxes);
        foreach (int box in beside)
        {
            JudgePlacement(box);
            CollectOwn(box, findings);
        }

        foreach (int group in groups)
        {
            JudgeGroup(group);
            Gather(groupFindings[group], findings);
        }
    }
}
