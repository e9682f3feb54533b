using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What an evaluation didn't look at: subjects that no rule of the set speaks of, parts of texts that its rows leave out, and rules that lacked what they need.</summary>
internal sealed class NotLookedAt(LayoutState state)
{
    private readonly SortedDictionary<string, SortedSet<string>> where = new(StringComparer.Ordinal);

    public Items<string> Lines()
    {
        List<string> all = [.. Scope.NotCoveredBy(state.Rules.Set)];
        HashSet<string> spoke = Spoke();
        List<string> silent = [];
        foreach (Rule rule in state.Rules.Set.Rules)
        {
            if (rule.LeavesOut is not { } part)
            {
                continue;
            }

            if (spoke.Contains(rule.Id))
            {
                all.Add(rule.Id + ": " + BothUnits.Of(part, state.Options.Units));
            }
            else
            {
                silent.Add(rule.Id);
            }
        }

        if (silent.Count > 0)
        {
            all.Add("rules that found nothing to judge: " + string.Join(", ", silent));
        }

        Boxes();
        Spaces();
        foreach ((string what, string subject) in UnknownKinds.In(state))
        {
            Add(what, subject);
        }

        foreach (KeyValuePair<string, SortedSet<string>> one in where)
        {
            all.Add(one.Key + " (" + string.Join(", ", one.Value) + ")");
        }

        return new(all);
    }

    /// <summary>The rules that said something of a box, a group or a space.</summary>
    private HashSet<string> Spoke()
    {
        HashSet<string> ids = new(StringComparer.Ordinal);
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            foreach (StatedSite site in state.SitesOf(box))
            {
                foreach (StatedPlacement placement in site.Placements)
                {
                    ids.Add(placement.Rule.Id);
                }

                foreach (StatedLimit limit in site.Limits)
                {
                    ids.Add(limit.Rule.Id);
                }
            }
        }

        for (int group = 0; group < state.Groups.Count; group++)
        {
            ids.Add(state.Groups[group].Rule.Id);
        }

        for (int space = 0; space < state.Spaces.Count; space++)
        {
            ids.Add(state.Spaces[space].Rule.Id);
        }

        return ids;
    }

    private void Boxes()
    {
        for (int box = 0; box < state.Boxes.Length; box++)
        {
            StatedSite[] sites = state.SitesOf(box);
            if (sites.Length == 0)
            {
                Add("a fault of the description keeps it from being judged", state.Boxes[box].Source.Id);
                continue;
            }

            if (!HasKnownDevice(state.Boxes[box].Source))
            {
                Add("rules about devices: none that is known here is stated", state.Boxes[box].Source.Id);
            }

            foreach ((string rule, string why) in sites[0].NotJudged)
            {
                Add(rule + ": " + why, state.Boxes[box].Surface.Address);
            }
        }
    }

    private void Spaces()
    {
        for (int space = 0; space < state.Spaces.Count; space++)
        {
            foreach (string why in state.Spaces[space].NotJudged)
            {
                Add(state.Spaces[space].Rule.Id + ": " + why, state.Spaces[space].View.Id);
            }
        }
    }

    private void Add(string what, string subject)
    {
        if (!where.TryGetValue(what, out SortedSet<string>? subjects))
        {
            where.Add(what, subjects = new(StringComparer.Ordinal));
        }

        subjects.Add(subject);
    }

    private static bool HasKnownDevice(DeviceBox box)
    {
        foreach (DeviceKind device in box.Devices)
        {
            if (device.IsKnown)
            {
                return true;
            }
        }

        return false;
    }
}
