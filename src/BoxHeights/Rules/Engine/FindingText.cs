using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Puts a finding into words, when someone asks: until then it holds only what the words need.</summary>
internal sealed class FindingText
{
    private readonly Rule? rule;
    private readonly LayoutFault? fault;
    private readonly Func<Wording>? because;
    private readonly SitesOfBox sites;
    private readonly int placement;
    private readonly Place place;
    private readonly LengthUnits units;

    private FindingText(LengthUnits units, Rule? rule, LayoutFault? fault, Func<Wording>? because, SitesOfBox sites, int placement, in Place place)
    {
        this.units = units;
        this.rule = rule;
        this.fault = fault;
        this.because = because;
        this.sites = sites;
        this.placement = placement;
        this.place = place;
    }

    /// <summary>Whether what a limit says is true of a part of the surface only.</summary>
    private bool IsOfAPart { get; init; }

    public static FindingText Of(LayoutFault fault) => new(default, null, fault, null, default, 0, default);

    public static FindingText Of(LengthUnits units, SitesOfBox sites, int placement, in Place place) =>
        new(units, sites[0].Placements[placement].Rule, null, null, sites, placement, place);

    public static FindingText Of(LengthUnits units, LimitRule rule, LimitCase of) => new(units, rule, null, of.Because, default, 0, default) { IsOfAPart = of.Zone.IsAPart };

    public static FindingText Of(LengthUnits units, ProvisionRule rule, Func<Wording>? ofThisBox) => new(units, rule, null, ofThisBox, default, 0, default);

    /// <summary>Of what a rule couldn't judge.</summary>
    public static FindingText Of(LengthUnits units, Rule rule, Wording why) => new(units, rule, null, () => why, default, 0, default);

    public static FindingText Of(LengthUnits units, SpaceRule rule, SpaceAnswer answer) => new(units, rule, null, answer.What, default, 0, default);

    public Wording Message(Finding finding) =>
        fault is not null ? (fault.Address == fault.Subject ? $"{fault.Subject:subject}: {fault.Wording:body}" : (Wording)$"{fault.Subject:subject} ({fault.Address:address}): {fault.Wording:body}")
        : finding.Space?.Named is { } named ? $"{named():subject}: {Body(finding):body}"
        : finding.Space is not null || finding.Unjudged is not null ? $"{finding.Subject:subject}: {Body(finding):body}"
        : (Wording)$"{finding.Subject:subject} ({finding.Address:address}): {OwnBody(finding):body}";

    /// <summary>The finding without its subject: the same for all that share a cause.</summary>
    public Wording Body(Finding finding) => Body(finding, false);

    /// <summary>The finding without its subject, as of this box alone: the things that it is in the way of, and which way along the wall is the shortest.</summary>
    public Wording OwnBody(Finding finding) => Body(finding, true);

    private Wording Body(Finding finding, bool ofThisBox)
    {
        if (fault is not null)
        {
            return fault.Wording;
        }

        if (finding.Unjudged is { } why)
        {
            return $"not judged, {why}, must be {Wording.OfRow(rule!.Summary, units):rule} [{finding.Citation.ToString():citation}]";
        }

        Wording said = $"{What(finding, ofThisBox):what}, must be {Must(ofThisBox):rule}";
        if (finding.Verdict == Verdict.Unknown)
        {
            said = $"{Depends(finding):needs}: {said}";
        }
        else if (rule is ProvisionRule)
        {
            said = finding.Allowed.Raw.Count == 0 ? said
                : $"{said}: center {Printed.AboveOrBelow(finding.Measured.AsDistance(), units):center} the storey's subfloor, allowed {Printed.Allowed(finding.Allowed, units, finding.Measured.AsDistance() < Distance.Zero):allowed}";
        }
        else if (rule is not SpaceRule)
        {
            Wording Limited() => finding.Allowed.Raw.Count == 0 ? $"not allowed here" : (Wording)$"allowed {AllowedHere(finding, finding.Margin):allowed}";
            said = $"{said}: {(rule is LimitRule ? Limited() : OffBy(finding, ofThisBox ? Sideways() : null)):off}";
        }

        if (RestsOnAssumedStuds(finding) && finding.AssumedStuds is { } studs)
        {
            said = $"{said} ({studs})";
        }

        if (rule is PlacementRule stated && stated.Assumes(sites[0].Site, place.Along) is { } assumed)
        {
            said = $"{said} ({assumed})";
        }

        return Disputed(finding) is { } reading ? $"{said}; met where it is read so: {reading} [{finding.Citation.ToString():citation}]" : (Wording)$"{said} [{finding.Citation.ToString():citation}]";
    }

    /// <summary>How it is now.</summary>
    private Wording What(Finding finding, bool ofThisBox)
    {
        Wording what = because is not null && rule is not ProvisionRule ? because() : finding.Height is { } height ? $"set {Printed.Exactly(height, units):height}" : (Wording)$"as it is set";
        return rule is ProvisionRule && ofThisBox && because is not null ? $"{what}, {because():more}" : what;
    }

    /// <summary>What the rule asks for.</summary>
    private Wording Must(bool ofThisBox)
    {
        Wording must = Wording.OfRow(rule!.Summary, units);
        if (rule is PlacementRule placed && placed.AskedOf(sites[0].Site) is { } asked)
        {
            must = $"{must:rule}, {asked}";
        }

        return ofThisBox && Things() is { } thing ? $"{must:rule} ({thing})" : must;
    }

    /// <summary>How the text would have to be read for this to be met, in words: nobody on site knows readings by their ids.</summary>
    private Wording? Disputed(Finding finding)
    {
        Wording? all = null;
        foreach (string id in finding.DisputedBy)
        {
            Wording says = Wording.Term(id);
            foreach (Reading reading in rule!.Readings)
            {
                says = reading.Id == id && reading.Summary.Length > 0 ? Wording.Term(reading.Summary) : says;
            }

            all = all is null ? says : $"{all:first}; or: {says:next}";
        }

        return all;
    }

    /// <summary>The things that what isn't met is stated of, by kind and address; null where it is about none.</summary>
    public Wording? Things()
    {
        List<Wording> all = [];
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.SlabsOf((PlacementRule)rule!))
            {
                bool isMet = slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Heights);
                if (!isMet && ThingName.Of(slab.About, site.Site.Surface) is { } thing && !all.Contains(thing))
                {
                    all.Add(thing);
                }
            }
        }

        return all.Count == 0 ? null : Wording.Listed(all);
    }

    /// <summary>The addresses of those things.</summary>
    public Items<string> Involved()
    {
        List<string> all = [];
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.SlabsOf((PlacementRule)rule!))
            {
                bool isMet = slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Heights);
                if (!isMet && ThingName.AddressOf(slab.About, site.Site.Surface) is { Length: > 0 } address && !all.Contains(address))
                {
                    all.Add(address);
                }
            }
        }

        return new(all);
    }

    /// <summary>Whether nothing would be found if studs didn't stand where they are assumed to.</summary>
    private bool RestsOnAssumedStuds(Finding finding)
    {
        bool rests = IsOfAPart && finding.IsPlacedByAssumedStud;
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.SlabsOf((PlacementRule)rule!))
            {
                if (slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Heights))
                {
                    continue;
                }

                bool isOfAPlace = slab.LeftTicks != long.MinValue || slab.RightTicks != long.MaxValue;
                if (!slab.RestsOnAssumedStuds && !(isOfAPlace && finding.IsPlacedByAssumedStud))
                {
                    return false;
                }

                rests = true;
            }
        }

        return rests;
    }

    /// <summary>The least move first, then what else is allowed.</summary>
    private Wording OffBy(Finding finding, Wording? sideways)
    {
        bool any = finding.Allowed.Raw.Count > 0;
        Wording here = any ? $"allowed here {AllowedHere(finding, finding.HeightMargin):allowed}" : (Wording)$"not allowed here";
        return sideways is null ? here
            : !any ? $"off by {sideways}"
            : finding.LeastChange is { IsAlong: true } ? $"off by {sideways}, or allowed here {Heights(finding):allowed}"
            : (Wording)$"{here}, or {sideways}";
    }

    /// <summary>How far off is left out where no height would do for every edge that may be meant.</summary>
    private Wording AllowedHere(Finding finding, Quantity margin) =>
        margin.Raw == long.MinValue ? Heights(finding) : $"{Heights(finding):allowed}, off by {Printed.OffBy(margin, units):off}";

    private Wording Heights(Finding finding) => Printed.Allowed(finding.Allowed, units, rule is not LimitRule && finding.Height is { } from && from.Value < Distance.Zero);

    /// <summary>The least way along the wall to where the height is allowed, where there is one: often the shorter way.</summary>
    private Wording? Sideways() =>
        place.Left == place.Right && sites.Length > 0 && PlaceMargin.NearestBeside(sites, placement, place) is { } along ? along.Worded(Printed.OffBy(along.Amount, units)) : null;

    private Wording Depends(Finding finding)
    {
        if (sites.Length > 1)
        {
            return Edges(edge => SlabJudge.Verdict(sites[(int)edge].SlabsOf((PlacementRule)rule!), place), $"it");
        }

        // The height on the drawing, not the box's own, names no edge.
        if (rule is PlacementRule drawing && (finding.Needs & MissingFacts.EdgeMeant) != 0 && IfMeant(drawing, Edge.Center) is not null)
        {
            return Edges(edge => IfMeant(drawing, edge)!.Value, $"the drawing");
        }

        if ((finding.Needs & MissingFacts.FloorFinish) != 0 && sites.Length == 1 && FloorTolerance.Of(sites[0], placement, place, units) is { } good)
        {
            return good;
        }

        return $"depends on {finding.Facts:facts}";
    }

    /// <summary>What the rule says if the drawing means an edge; null where it doesn't go by the drawing.</summary>
    private Verdict? IfMeant(PlacementRule drawing, Edge edge)
    {
        PlacementStatement statement = new();
        return drawing.StateIfMeant(edge, sites[0].Site, statement) ? SlabJudge.Verdict(statement.Take(), place) : null;
    }

    private static Wording Name(Edge edge) => edge switch { Edge.Bottom => $"bottom", Edge.Top => $"top", _ => (Wording)$"center" };

    private static Wording Edges(Func<Edge, Verdict> verdict, Wording who)
    {
        List<Wording> fails = [];
        foreach (Edge edge in new[] { Edge.Bottom, Edge.Center, Edge.Top })
        {
            if (verdict(edge) == Verdict.Fails)
            {
                fails.Add(Name(edge));
            }
        }

        return fails.Count == 0 ? $"depends on {FactText.Of(MissingFacts.EdgeMeant):facts}" : (Wording)$"fails if {who} means {Wording.Or(fails):edges}";
    }
}
