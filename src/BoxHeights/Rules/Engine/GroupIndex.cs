using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The groups that provision rules judge, and which box is in which.</summary>
internal sealed class GroupIndex
{
    private readonly List<Group> groups = [];
    private readonly int[][] groupsOf;

    public GroupIndex(LayoutState state)
    {
        groupsOf = new int[state.Boxes.Length][];
        List<int>[] of = new List<int>[groupsOf.Length];
        GroupPlace[] places = Array.ConvertAll(state.Boxes, box => new GroupPlace(box.Surface));
        foreach (ProvisionRule rule in state.Rules.Provision)
        {
            Dictionary<string, List<int>> members = new(StringComparer.Ordinal);
            for (int i = 0; i < groupsOf.Length; i++)
            {
                if (state.SitesOf(i) is not { Length: > 0 } sites || !rule.Scope.Covers(sites[0].Site.Box, sites[0].Site.Room))
                {
                    continue;
                }

                if (rule.GroupOf(sites[0].Site.Box, places[i]) is { } name)
                {
                    if (!members.TryGetValue(name, out List<int>? list))
                    {
                        members.Add(name, list = []);
                    }

                    list.Add(i);
                }
            }

            List<string> names = [.. members.Keys];
            names.Sort(StringComparer.Ordinal);
            foreach (string name in names)
            {
                foreach (int box in members[name])
                {
                    (of[box] ??= []).Add(groups.Count);
                }

                groups.Add(new(rule, new ProvisionGroup(state, members[name].ToArray())));
            }
        }

        for (int i = 0; i < groupsOf.Length; i++)
        {
            groupsOf[i] = of[i]?.ToArray() ?? [];
        }
    }

    public int Count => groups.Count;

    public Group this[int index] => groups[index];

    public int[] Of(int box) => groupsOf[box];

    /// <summary>One provision rule and boxes that it judges together.</summary>
    internal sealed class Group(ProvisionRule rule, ProvisionGroup boxes)
    {
        public ProvisionRule Rule { get; } = rule;

        public ProvisionGroup Boxes { get; } = boxes;
    }
}
