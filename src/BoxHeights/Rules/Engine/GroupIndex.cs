using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The groups that provision rules judge, and which box is in which.</summary>
internal sealed class GroupIndex
{
    private readonly List<Group> groups = [];
    private readonly Dictionary<(ProvisionRule Rule, string Name), int> known = [];
    private int[][] groupsOf;

    public GroupIndex(LayoutState state)
    {
        groupsOf = new int[state.Boxes.Length][];
        List<int>[] of = new List<int>[groupsOf.Length];
        foreach (ProvisionRule rule in state.Rules.Provision)
        {
            Dictionary<string, List<int>> members = new(StringComparer.Ordinal);
            for (int i = 0; i < groupsOf.Length; i++)
            {
                if (NameOf(rule, i, state) is { } name)
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

                known.Add((rule, name), groups.Count);
                groups.Add(new(rule, name, new ProvisionGroup(state, members[name].ToArray())));
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

    /// <summary>Whether a box was put in its groups.</summary>
    public bool Holds(int box) => box < groupsOf.Length;

    /// <summary>Whether a box that was described anew belongs to the groups that it was put in.</summary>
    public bool Holds(int box, LayoutState state)
    {
        int found = 0;
        foreach (ProvisionRule rule in state.Rules.Provision)
        {
            if (NameOf(rule, box, state) is not { } name)
            {
                continue;
            }

            if (found == groupsOf[box].Length || groups[groupsOf[box][found]] is var group && (group.Rule != rule || group.Name != name))
            {
                return false;
            }

            found++;
        }

        return found == groupsOf[box].Length;
    }

    /// <summary>The readings of a rule's text under which a box of a group that fails would meet it, from where boxes are now. A reading may group boxes in its own way.</summary>
    public Items<string> DisputedBy(int group, int box, LayoutState state)
    {
        if (groups[group].Rule.Readings.Count == 0)
        {
            return default;
        }

        List<string> disputed = [];
        foreach (Reading reading in groups[group].Rule.Readings)
        {
            ProvisionRule other = (ProvisionRule)reading.Rule;
            string? name = NameOf(other, box, state);
            int[] members = name is null ? [] : Array.FindAll(AllBoxes(), one => NameOf(other, one, state) == name);
            ProvisionStatement statement = new();
            other.Judge(new(state, members), statement);
            if (!statement.Speaks(Array.IndexOf(members, box)))
            {
                disputed.Add(reading.Id);
            }
        }

        return new(disputed);
    }

    private int[] AllBoxes()
    {
        int[] all = new int[groupsOf.Length];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = i;
        }

        return all;
    }

    /// <summary>Puts a box that was added behind all others in its groups, and makes those that it is the first in.</summary>
    public void Enter(LayoutState state)
    {
        int box = groupsOf.Length;
        List<int> of = [];
        foreach (ProvisionRule rule in state.Rules.Provision)
        {
            if (NameOf(rule, box, state) is not { } name)
            {
                continue;
            }

            if (!known.TryGetValue((rule, name), out int group))
            {
                known.Add((rule, name), group = groups.Count);
                groups.Add(new(rule, name, new ProvisionGroup(state, [])));
            }

            groups[group].Boxes.Enter(box);
            of.Add(group);
        }

        Array.Resize(ref groupsOf, box + 1);
        groupsOf[box] = of.ToArray();
    }

    /// <summary>Takes the last box out again, and the groups that were made for it.</summary>
    public void Leave()
    {
        int box = groupsOf.Length - 1;
        foreach (int group in groupsOf[box])
        {
            groups[group].Boxes.Leave();
        }

        for (int last = groups.Count - 1; last >= 0 && groups[last].Boxes.Count == 0; last--)
        {
            known.Remove((groups[last].Rule, groups[last].Name));
            groups.RemoveAt(last);
        }

        Array.Resize(ref groupsOf, box);
    }

    /// <summary>The name of the group that a rule puts a box in; null where it doesn't speak of the box.</summary>
    private static string? NameOf(ProvisionRule rule, int box, LayoutState state)
    {
        return state.SitesOf(box) is { Length: > 0 } sites && rule.Scope.Covers(sites[0].Site.Box, sites[0].Site.Room)
            ? rule.GroupOf(sites[0].Site.Box, new GroupPlace(state.Boxes[box].Surface))
            : null;
    }

    /// <summary>One provision rule and boxes that it judges together.</summary>
    internal sealed class Group(ProvisionRule rule, string name, ProvisionGroup boxes)
    {
        public ProvisionRule Rule { get; } = rule;

        public string Name { get; } = name;

        public ProvisionGroup Boxes { get; } = boxes;
    }
}
