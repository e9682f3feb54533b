using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes that join, and boxes that leave.</content>
internal sealed partial class GroupIndex
{
    /// <summary>Puts a box that was added behind all others in its groups, and makes those that it is the first in.</summary>
    public void Enter(LayoutState state) => Enter(groupsOf.Count, state, static (group, box) => group.Enter(box));

    /// <summary>Puts a box that was added behind all others, or one that parted, in its groups, where it comes in the dwelling's order.</summary>
    public void Join(int box, LayoutState state) => Enter(box, state, static (group, box) => group.Join(box));

    /// <summary>Takes a box out of its groups, which stay even where nothing is left in them.</summary>
    public void Part(int box)
    {
        foreach (int group in groupsOf[box])
        {
            groups[group].Boxes.Part(box);
        }

        groupsOf[box] = [];
    }

    private void Enter(int box, LayoutState state, Action<ProvisionGroup, int> takeIn)
    {
        List<int> of = [];
        for (int r = 0; r < known.Length; r++)
        {
            ProvisionRule rule = state.Rules.Provision[r];
            if (NameOf(rule, box, state) is not { } name)
            {
                continue;
            }

            if (!known[r].TryGetValue(name, out int group))
            {
                group = groups.Count;
                Make(rule, r, known[r], name, new(state, []));
            }

            takeIn(groups[group].Boxes, box);
            of.Add(group);
        }

        if (box == groupsOf.Count)
        {
            groupsOf.Add([]);
        }

        groupsOf[box] = of.ToArray();
    }

    /// <summary>Takes the last box out again, and the groups that were made for it.</summary>
    public void Leave()
    {
        int box = groupsOf.Count - 1;
        foreach (int group in groupsOf[box])
        {
            groups[group].Boxes.Leave();
        }

        for (int last = groups.Count - 1; last >= 0 && groups[last].Boxes.Count == 0; last--)
        {
            groups[last].Among.Remove(groups[last].Name);
            groups.RemoveAt(last);
        }

        groupsOf.RemoveAt(box);
    }
}
