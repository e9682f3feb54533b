using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What each rule came to for each subject, read from an evaluated state: findings as they are, and what made no finding with its reason.</summary>
internal sealed class JudgementList
{
    private static readonly Wording NoDevice = $"which devices it holds isn't stated";

    private readonly LayoutState state;
    private readonly bool all;
    private readonly List<Judgement> found = [];
    private readonly Dictionary<(string RuleId, int Box), Finding> ofBoxes = [];
    private readonly Dictionary<(int Group, int Box), Finding> ofGroups = [];

    // Of all boxes once, and not of each space's: flights and the dwelling list all of them.
    private readonly HashSet<string> boxIds = new(StringComparer.Ordinal);

    private JudgementList(LayoutState state, IReadOnlyList<Finding> findings, bool all)
    {
        this.state = state;
        this.all = all;
        foreach (ResolvedBox box in state.Boxes)
        {
            boxIds.Add(box.Source.Id);
        }

        foreach (Finding finding in findings)
        {
            if (finding.Group >= 0)
            {
                ofGroups[(finding.Group, finding.Box)] = finding;
            }
            else if (finding.Box >= 0)
            {
                ofBoxes[(finding.RuleId, finding.Box)] = finding;
            }
        }
    }

    /// <summary>Every judgement: of boxes, of boxes that are judged together, of rooms and other spaces; each in the order of the description.</summary>
    /// <param name="state">The state.</param>
    /// <param name="findings">What was found in it.</param>
    /// <param name="evenNotApplicable">Whether rules are listed that aren't about a subject.</param>
    public static List<Judgement> Of(LayoutState state, IReadOnlyList<Finding> findings, bool evenNotApplicable)
    {
        JudgementList list = new(state, findings, evenNotApplicable);
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            list.Box(box);
        }

        for (int group = 0; group < state.Groups.Count; group++)
        {
            list.Group(group);
        }

        for (int space = 0; space < state.Spaces.Count; space++)
        {
            list.Space(state.Spaces[space]);
        }

        return list.found;
    }

    private void Box(int box)
    {
        if (state.Boxes[box].IsUntouched)
        {
            return;
        }

        SitesOfBox sites = state.SitesOf(box);
        BoxTraits traits = sites.Length > 0 ? sites[0].Site.Box : new(state.Boxes[box].Source, state.Boxes[box].Surface.Kind, Edge.Bottom, Datum.Subfloor, state.Options.Catalog, false);
        HashSet<string> said = new(StringComparer.Ordinal);
        if (sites.Length > 0)
        {
            Place place = state.PlaceOf(box);
            for (int p = 0; p < sites[0].Placements.Length; p++)
            {
                if (sites[0].Placements[p].Speaks)
                {
                    said.Add(sites[0].Placements[p].Rule.Id);
                    Placement(box, p, place);
                }
            }

            for (int i = 0; i < sites[0].Limits.Length; i++)
            {
                said.Add(sites[0].Limits[i].Rule.Id);
                Add(sites[0].Limits[i].Rule, box, state.JudgeLimit(box, i).IsSilent ? Judged.NotApplicable : Judged.Met);
            }

            foreach ((Rule rule, Wording why) in sites[0].NotJudged)
            {
                said.Add(rule.Id);
                Add(rule, box, Judged.NotJudged, why, state.Boxes[box].Surface.Address);
            }
        }

        foreach (Rule rule in state.Rules.OfBoxes)
        {
            if (said.Contains(rule.Id))
            {
                continue;
            }

            bool covers = rule.Scope.Covers(traits, state.Boxes[box].Surface.RoomKind);
            if (sites.Length == 0 && covers)
            {
                Add(rule, box, Judged.NotJudged, SpaceIndex.AtFault);
            }
            else if (!covers && traits.Devices.Count == 0 && rule.Scope.Devices.Count > 0 && (rule.Scope with { Devices = default }).Covers(traits, state.Boxes[box].Surface.RoomKind))
            {
                Add(rule, box, Judged.NotJudged, NoDevice);
            }
            else if (all && (rule is not ProvisionRule || !IsGrouped(box, rule)) && !(traits.Surface == BoxSurface.Ceiling && state.Rules.Set.Row(rule.Id) is PlacementRule { Overhead: not null }))
            {
                Add(rule, box, Judged.NotApplicable);
            }
        }
    }

    private bool IsGrouped(int box, Rule rule) => Array.Exists(state.Groups.Of(box), group => ReferenceEquals(state.Groups[group].Rule, rule));

    private void Placement(int box, int placement, in Place place)
    {
        PlacementRule rule = state.SitesOf(box)[0].Placements[placement].Rule;
        if (!state.HasHeight(box))
        {
            // What lies flat in a ceiling or a floor is at no height.
            Add(rule, box, Judged.NotApplicable);
            return;
        }

        Verdict verdict = state.VerdictOf(box, placement, place);
        if (verdict == Verdict.Passes || !state.Yields(box, placement, verdict))
        {
            Add(rule, box, Judged.Met, rule.Assumes(state.SitesOf(box)[0].Site, place.Along));
        }
        else if (!rule.YieldsWhenForced && !(rule.AsksForAPlace && state.AtOf(box) is null))
        {
            Add(rule, box, Judged.LetOff, $"others nearby meet it");
        }
        else if (state.AtOf(box) is null)
        {
            Add(rule, box, Judged.NotJudged, ProvisionStatement.NoPlace);
        }
        else if (verdict == Verdict.Unknown)
        {
            MissingFacts needs = SlabJudge.Judge(state.SitesOf(box)[0].Placements[placement].Slabs, place).Needs | (state.SitesOf(box).Length > 1 ? MissingFacts.EdgeMeant : MissingFacts.None);
            Add(rule, box, Judged.NotJudged, $"it depends on {FactText.Of(needs, state.Boxes[box], state.HeightOf(box), state.Options.Catalog):facts}");
        }
        else
        {
            Add(rule, box, Judged.LetOff, $"firmer rules leave no height that it asks for");
        }
    }

    private void Group(int group)
    {
        ProvisionRule rule = state.Groups[group].Rule;
        ProvisionGroup boxes = state.Groups[group].Boxes;
        ProvisionStatement said = new();
        rule.Judge(boxes, said);
        for (int i = 0; i < boxes.Count; i++)
        {
            int box = boxes.Member(i);
            Wording? why = null;
            if (state.Boxes[box].IsUntouched)
            {
                continue;
            }

            foreach ((int index, Wording reason) in said.Open)
            {
                why = index == i ? reason : why;
            }

            if (ofGroups.TryGetValue((group, box), out Finding? finding))
            {
                found.Add(Of(rule, box, finding.Verdict == Verdict.Fails ? Judged.NotMet : Judged.Unknown, null, finding));
            }
            else if (all || !said.IsSilent)
            {
                found.Add(Of(rule, box, said.IsSilent ? Judged.NotApplicable : why is null ? Judged.Met : Judged.NotJudged, said.IsSilent ? null : why, null));
            }
        }
    }

    private void Space(SpaceIndex.JudgedSpace judged)
    {
        SpaceStatement said = judged.SayAll();
        SpaceView view = judged.View;
        foreach (Finding finding in judged.Findings)
        {
            found.Add(new(judged.Rule, KindOf(finding.Subject), finding.Subject, finding.Address,
                finding.NotJudgedBecause is not null ? Judged.NotJudged : finding.Verdict == Verdict.Fails ? Judged.NotMet : Judged.Unknown, state.Options.Words, finding.Unjudged, finding));
        }

        foreach (OpenPart open in said.Open)
        {
            if (!judged.Findings.Exists(finding => Equals(finding.Unjudged, open.Reason) && finding.Subject == (open.Subject ?? view.Id)))
            {
                found.Add(new(judged.Rule, KindOf(open.Subject ?? view.Id), open.Subject ?? view.Id, view.Id, Judged.NotJudged, state.Options.Words, open.Reason));
            }
        }

        foreach ((string subject, string address, Wording? letOff) in said.Met)
        {
            found.Add(new(judged.Rule, KindOf(subject), subject, address, letOff is null ? Judged.Met : Judged.LetOff, state.Options.Words, letOff));
        }

        if (all && judged.Findings.Count + said.Open.Count + said.Met.Count == 0)
        {
            found.Add(new(judged.Rule, KindOf(view.Id), view.Id, view.Id, Judged.NotApplicable, state.Options.Words));
        }

        JudgedKind KindOf(string subject) =>
            subject != view.Id ? (boxIds.Contains(subject) && view.Boxes.Exists(box => box.Id == subject) ? JudgedKind.Box : JudgedKind.Part)
            : view.Kind switch
            {
                SpaceKind.Room => JudgedKind.Room,
                SpaceKind.OutsideFace => JudgedKind.OutsideFace,
                SpaceKind.Flight => JudgedKind.Flight,
                SpaceKind.Storey => JudgedKind.Storey,
                _ => JudgedKind.Dwelling,
            };
    }

    /// <summary>A judgement of a box, unless there is a finding: then that is what came of it.</summary>
    private void Add(Rule rule, int box, Judged judged, Wording? why = null, string? where = null)
    {
        ofBoxes.TryGetValue((rule.Id, box), out Finding? finding);
        if (finding is { NotJudgedBecause: null })
        {
            found.Add(Of(rule, box, finding.Verdict == Verdict.Fails ? Judged.NotMet : Judged.Unknown, null, finding));
        }
        else if (all || judged != Judged.NotApplicable)
        {
            found.Add(where is null ? Of(rule, box, judged, why, finding) : Of(rule, box, judged, why, finding) with { Where = where });
        }
    }

    private Judgement Of(Rule rule, int box, Judged judged, Wording? why, Finding? finding) =>
        new(rule, JudgedKind.Box, state.Boxes[box].Source.Id, state.Boxes[box].Surface.Address, judged, state.Options.Words, why, finding);
}
