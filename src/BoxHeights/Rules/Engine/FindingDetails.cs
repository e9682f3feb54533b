using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a finding says beyond that there is one.</summary>
internal sealed class FindingDetails
{
    private FindingDetails(FindingText text) => Text = text;

    public Quantity Measured { get; private init; }

    public QuantitySet Allowed { get; private init; }

    public Quantity Margin { get; private init; }

    public LeastChange? LeastChange { get; private init; }

    public MissingFacts Needs { get; private init; }

    public Items<string> DisputedBy { get; private init; }

    public FindingText Text { get; }

    public static FindingDetails Of(LayoutFault fault) => new(FindingText.Of(fault)) { Needs = MissingFacts.BrokenPart };

    public static FindingDetails NotJudged(LengthUnits units, Rule rule, Wording why) => new(FindingText.Of(units, rule, why));

    public static FindingDetails Of(LengthUnits units, StatedLimit limit, in LimitJudgement judged, in Place place) =>
        new(FindingText.Of(units, limit.Rule, judged.Of!))
        {
            Measured = judged.Of!.Measured,
            Allowed = judged.Of.Allowed,
            Margin = judged.Margin,
            Needs = judged.Needs,
            DisputedBy = judged.Verdict == Verdict.Fails ? limit.DisputedBy(place) : default,
        };

    public static FindingDetails Of(LengthUnits units, ProvisionRule rule, in ProvisionStatement.Answer answer, Items<string> disputedBy) => new(FindingText.Of(units, rule, answer.Because))
    {
        Measured = answer.Measured,
        Allowed = answer.Allowed,
        Margin = answer.Allowed.Margin(answer.Measured),
        Needs = answer.Needs,
        DisputedBy = disputedBy,
    };

    public static FindingDetails Of(LengthUnits units, SpaceRule rule, SpaceAnswer answer, Items<string> disputedBy) => new(FindingText.Of(units, rule, answer))
    {
        Measured = answer.Measured,
        Allowed = answer.Allowed,
        Margin = answer.Allowed.Margin(answer.Measured),
        Needs = answer.Needs,
        DisputedBy = disputedBy,
    };

    /// <summary>Of a placement, told by the first edge that doesn't pass where the box's edge isn't stated.</summary>
    public static FindingDetails Of(LengthUnits units, SitesOfBox sites, int placement, Verdict verdict, in Place place)
    {
        int edge = 0;
        while (edge < sites.Length - 1 && SlabJudge.Verdict(sites[edge].Placements[placement].Slabs, place) == Verdict.Passes)
        {
            edge++;
        }

        StatedPlacement stated = sites[edge].Placements[placement];
        SlabJudgement judged = SlabJudge.Judge(stated.Slabs, place);
        List<string> disputed = [];
        if (verdict == Verdict.Fails)
        {
            foreach ((string id, Slab[] slabs) in stated.Readings)
            {
                if (SlabJudge.Verdict(slabs, place) == Verdict.Passes)
                {
                    disputed.Add(id);
                }
            }
        }

        (long margin, LeastChange? change) = PlaceMargin.Of(sites, placement, verdict, place);
        return new(FindingText.Of(units, sites, placement, place))
        {
            Measured = place.Heights.From,
            Allowed = judged.Allowed,
            Margin = Distance.FromTicks(margin),
            LeastChange = change,
            Needs = verdict == Verdict.Fails ? MissingFacts.None : judged.Needs | (sites.Length > 1 ? MissingFacts.EdgeMeant : MissingFacts.None),
            DisputedBy = new(disputed),
        };
    }
}
