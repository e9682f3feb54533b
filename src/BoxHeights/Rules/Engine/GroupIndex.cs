using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The groups that provision rules judge, and which box is in which.</summary>
internal sealed partial class GroupIndex
{
    private readonly List<Group> groups = [];

    // By rule, then by name: hashing a rule, which is a record of lists, at each look cost more than judging did.
    private readonly Dictionary<string, int>[] known;
    private readonly List<int[]> groupsOf = [];
    private List<int>? inOrder;

    /// <summary>Puts the boxes of a layout in their groups.</summary>
    /// <param name="state">The layout.</param>
    /// <param name="like">One that differs in its boxes alone: a box that it has as well is in groups of the same names; null for none.</param>
    /// <param name="before">The number there of each box; negative where it isn't there.</param>
    public GroupIndex(LayoutState state, LayoutState? like = null, int[]? before = null)
    {
        ProvisionRule[] rules = state.Rules.Provision;
        int count = state.Boxes.Count;

        // By box, then by rule: the group and one more, so that none is zero.
        int[] of = new int[count * rules.Length];
        known = new Dictionary<string, int>[rules.Length];

        // Used again for each rule.
        List<string> names = [];
        List<List<int>> members = [];
        for (int r = 0; r < rules.Length; r++)
        {
            ProvisionRule rule = rules[r];
            Dictionary<string, int> among = known[r] = new(StringComparer.Ordinal);
            names.Clear();
            for (int i = 0; i < count; i++)
            {
                bool isThere = like is not null && before![i] >= 0 && ReferenceEquals(like.Boxes[before[i]], state.Boxes[i]);
                if ((isThere ? like!.Groups.NameOf(r, before![i]) : NameOf(rule, i, state)) is not { } name)
                {
                    continue;
                }

                if (!among.TryGetValue(name, out int nth))
                {
                    among.Add(name, nth = names.Count);
                    names.Add(name);
                    if (members.Count == nth)
                    {
                        members.Add([]);
                    }

                    members[nth].Clear();
                }

                members[nth].Add(i);
            }

            names.Sort(StringComparer.Ordinal);
            foreach (string name in names)
            {
                List<int> boxes = members[among[name]];
                Make(rule, r, among, name, new(state, boxes.ToArray()));
                foreach (int box in boxes)
                {
                    of[(box * rules.Length) + r] = groups.Count;
                }
            }
        }

        List(of, rules.Length, count);
    }

    /// <summary>Lists the groups of each box. Most boxes are in the same as one before them, and share its list.</summary>
    private void List(int[] of, int rules, int count)
    {
        groupsOf.Capacity = count;
        int[]?[] last = new int[]?[groups.Count];
        List<int> own = [];
        for (int box = 0; box < count; box++)
        {
            own.Clear();
            for (int r = 0; r < rules; r++)
            {
                if (of[(box * rules) + r] is > 0 and var group)
                {
                    own.Add(group - 1);
                }
            }

            if (own.Count == 0)
            {
                groupsOf.Add([]);
                continue;
            }

            ref int[]? before = ref last[own[0]];
            before = before is not null && AreSame(before, own) ? before : own.ToArray();

            groupsOf.Add(before);
        }
    }

    private static bool AreSame(int[] one, List<int> other)
    {
        bool same = one.Length == other.Count;
        for (int i = 0; same && i < one.Length; i++)
        {
            same = one[i] == other[i];
        }

        return same;
    }

    public int Count => groups.Count;

    public Group this[int index] => groups[index];

    public int[] Of(int box) => groupsOf[box];

    /// <summary>The groups rule by rule, those of each by name: as a fresh look would have them.</summary>
    public List<int> InOrder
    {
        get
        {
            if (inOrder?.Count != groups.Count)
            {
                inOrder = [];
                for (int i = 0; i < groups.Count; i++)
                {
                    inOrder.Add(i);
                }

                inOrder.Sort((one, other) => groups[one].Nth != groups[other].Nth ? groups[one].Nth.CompareTo(groups[other].Nth) : string.CompareOrdinal(groups[one].Name, groups[other].Name));
            }

            return inOrder;
        }
    }

    /// <summary>Whether a box was put in its groups.</summary>
    public bool Holds(int box) => box < groupsOf.Count;

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

    /// <summary>The boxes that rules would judge a box with.</summary>
    /// <param name="site">What is stated for the box.</param>
    /// <param name="rules">The rule set's provisions.</param>
    public IEnumerable<(ProvisionRule Rule, ProvisionGroup Group)> With(StatedSite site, ProvisionRule[] rules)
    {
        for (int i = 0; i < rules.Length; i++)
        {
            if (NameOf(rules[i], site) is { } name && known[i].TryGetValue(name, out int group))
            {
                yield return (rules[i], groups[group].Boxes);
            }
        }
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
            Array.Sort(members, state.InOrder);
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
        int[] all = new int[groupsOf.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = i;
        }

        return all;
    }

    private void Make(ProvisionRule rule, int nth, Dictionary<string, int> among, string name, ProvisionGroup boxes)
    {
        among[name] = groups.Count;
        groups.Add(new(rule, nth, among, name, boxes));
    }

    /// <summary>The name of the group of a rule that a box was put in; null where it is in none of its.</summary>
    private string? NameOf(int rule, int box)
    {
        foreach (int group in groupsOf[box])
        {
            if (groups[group].Nth == rule)
            {
                return groups[group].Name;
            }
        }

        return null;
    }

    /// <summary>The name of the group that a rule puts a box in; null where it doesn't speak of the box.</summary>
    private static string? NameOf(ProvisionRule rule, int box, LayoutState state) => state.SitesOf(box) is { Length: > 0 } sites ? NameOf(rule, sites[0]) : null;

    private static string? NameOf(ProvisionRule rule, StatedSite site) =>
        rule.Scope.Covers(site.Site.Box, site.Site.Room) ? rule.GroupOf(site.Site.Box, site.Group) : null;

    /// <summary>One provision rule and boxes that it judges together.</summary>
    internal sealed class Group(ProvisionRule rule, int nth, Dictionary<string, int> among, string name, ProvisionGroup boxes)
    {
        public ProvisionRule Rule { get; } = rule;

        /// <summary>The rule's number among those for groups.</summary>
        public int Nth { get; } = nth;

        /// <summary>All groups of the rule by their names.</summary>
        public Dictionary<string, int> Among { get; } = among;

        public string Name { get; } = name;

        public ProvisionGroup Boxes { get; } = boxes;
    }
}
