using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Puts a finding into words, when someone asks: until then it holds only what the words need.</summary>
internal sealed class FindingText
{
    private readonly Rule? rule;
    private readonly LayoutFault? fault;
    private readonly Func<string>? because;
    private readonly StatedSite[] sites;
    private readonly int placement;
    private readonly Place place;
    private readonly LengthUnits units;

    private FindingText(LengthUnits units, Rule? rule, LayoutFault? fault, Func<string>? because, StatedSite[] sites, int placement, in Place place)
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

    public static FindingText Of(LayoutFault fault) => new(default, null, fault, null, [], 0, default);

    public static FindingText Of(LengthUnits units, StatedSite[] sites, int placement, in Place place) =>
        new(units, sites[0].Placements[placement].Rule, null, null, sites, placement, place);

    public static FindingText Of(LengthUnits units, LimitRule rule, LimitCase of) => new(units, rule, null, of.Because, [], 0, default) { IsOfAPart = of.Zone.IsAPart };

    public static FindingText Of(LengthUnits units, ProvisionRule rule, Func<string>? ofThisBox) => new(units, rule, null, ofThisBox, [], 0, default);

    /// <summary>Of what a rule couldn't judge.</summary>
    public static FindingText Of(LengthUnits units, Rule rule, string why) => new(units, rule, null, () => why, [], 0, default);

    public static FindingText Of(LengthUnits units, SpaceRule rule, SpaceAnswer answer) => new(units, rule, null, answer.What, [], 0, default);

    public string Message(Finding finding) =>
        fault is not null ? fault.Subject + (fault.Address == fault.Subject ? ": " : " (" + fault.Address + "): ") + fault.Message
        : finding.Space is not null || finding.NotJudgedBecause is not null ? finding.Subject + ": " + Body(finding, "")
        : finding.Subject + " (" + finding.Address + "): " + Body(finding, rule is ProvisionRule ? OfThisBox() : Sideways(), Thing());

    /// <summary>The finding without its subject: the same for all that share a cause.</summary>
    public string Body(Finding finding) => Body(finding, "");

    private string Body(Finding finding, string ofThisBox, string thing = "")
    {
        if (fault is not null)
        {
            return fault.Message;
        }

        if (finding.NotJudgedBecause is { } why)
        {
            return "not judged, " + why + ", must be " + BothUnits.Of(rule!.Summary, units) + " [" + finding.Citation + "]";
        }

        string what = because is not null && rule is not ProvisionRule ? because() : finding.Height is { } height ? "set " + height.Exactly(units) : "as it is set";
        what += rule is ProvisionRule ? ofThisBox : "";
        string must = ", must be " + BothUnits.Of(rule!.Summary, units) + (rule is PlacementRule placed && placed.AskedOf(sites[0].Site) is { } asked ? ", " + asked : "") + (thing.Length == 0 ? "" : " (" + thing + ")");
        string text;
        if (finding.Verdict == Verdict.Unknown)
        {
            text = Depends(finding) + ": " + what + must;
        }
        else if (rule is SpaceRule)
        {
            text = what + must;
        }
        else if (rule is ProvisionRule)
        {
            text = what + must + (finding.Allowed.Raw.Count == 0 ? "" : ": center " + Printed.AboveOrBelow(finding.Measured.AsDistance(), units) + " the storey's subfloor, allowed "
                + Printed.Allowed(finding.Allowed, units, finding.Measured.AsDistance() < Distance.Zero));
        }
        else
        {
            text = what + must + ": " + (rule is LimitRule ? "allowed " + AllowedHere(finding, finding.Margin) : OffBy(finding, ofThisBox));
        }

        text += RestsOnAssumedStuds(finding) ? finding.AssumedStuds : "";
        text += rule is PlacementRule stated && stated.Assumes(sites[0].Site, place.Along) is { } assumed ? " (" + assumed + ")" : "";
        return text + Disputed(finding) + " [" + finding.Citation + "]";
    }

    /// <summary>How the text would have to be read for this to be met, in words: nobody on site knows readings by their ids.</summary>
    private string Disputed(Finding finding)
    {
        string text = "";
        foreach (string id in finding.DisputedBy)
        {
            string says = id;
            foreach (Reading reading in rule!.Readings)
            {
                says = reading.Id == id && reading.Summary.Length > 0 ? reading.Summary : says;
            }

            text += (text.Length == 0 ? "; met where it is read so: " : "; or: ") + says;
        }

        return text;
    }

    /// <summary>The things that what isn't met is stated of, by kind and address; empty where it is about none.</summary>
    public string Thing()
    {
        string all = "";
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.SlabsOf((PlacementRule)rule!))
            {
                string name = slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Readings) ? "" : ThingName.Of(slab.About, site.Site.Surface);
                all += name.Length == 0 || all.IndexOf(name, StringComparison.Ordinal) >= 0 ? "" : (all.Length == 0 ? "" : ", ") + name;
            }
        }

        return all;
    }

    /// <summary>The addresses of those things.</summary>
    public Items<string> Involved()
    {
        List<string> all = [];
        foreach (StatedSite site in sites)
        {
            foreach (Slab slab in site.SlabsOf((PlacementRule)rule!))
            {
                bool isMet = slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Readings);
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
                if (slab.LeftTicks > place.Right || slab.RightTicks < place.Left || slab.Allowed.Sure.ContainsRange(place.Readings))
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

    private string OfThisBox() => because is null ? "" : ", " + because();

    /// <summary>The least move first, then what else is allowed.</summary>
    private string OffBy(Finding finding, string sideways)
    {
        bool any = finding.Allowed.Raw.Count > 0;
        string here = any ? "allowed here " + AllowedHere(finding, finding.HeightMargin) : "allowed not here";
        return sideways.Length == 0 ? here
            : !any ? "off by " + sideways
            : finding.LeastChange is { IsAlong: true } ? "off by " + sideways + ", or allowed here " + Heights(finding)
            : here + ", or " + sideways;
    }

    /// <summary>How far off is left out where no height would do for every edge that may be meant.</summary>
    private string AllowedHere(Finding finding, Quantity margin) => finding.Allowed.Raw.Count == 0 ? "not here" : Heights(finding) + (margin.Raw == long.MinValue ? "" : ", off by " + Printed.OffBy(margin, units));

    private string Heights(Finding finding) => Printed.Allowed(finding.Allowed, units, rule is not LimitRule && finding.Height is { } from && from.Value < Distance.Zero);

    /// <summary>The least way along the wall to where the height is allowed, where there is one: often the shorter way.</summary>
    private string Sideways() =>
        place.Left == place.Right && sites.Length > 0 && PlaceMargin.NearestBeside(sites, placement, place) is { } along ? along.Worded(Printed.OffBy(along.Amount, units)) : "";

    private string Depends(Finding finding)
    {
        if (sites.Length > 1)
        {
            return Edges(edge => SlabJudge.Verdict(sites[(int)edge].SlabsOf((PlacementRule)rule!), place), "it");
        }

        // The height on the drawing, not the box's own, names no edge.
        if (rule is PlacementRule drawing && (finding.Needs & Facts.EdgeMeant) != 0 && IfMeant(drawing, Edge.Center) is not null)
        {
            return Edges(edge => IfMeant(drawing, edge)!.Value, "the drawing");
        }

        if ((finding.Needs & Facts.FloorFinish) != 0 && sites.Length == 1 && FloorTolerance.Of(sites[0], placement, place, units) is { Length: > 0 } good)
        {
            return good;
        }

        return "depends on " + FactText.Of(finding.Needs);
    }

    /// <summary>What the rule says if the drawing means an edge; null where it doesn't go by the drawing.</summary>
    private Verdict? IfMeant(PlacementRule drawing, Edge edge)
    {
        PlacementStatement statement = new();
        return drawing.StateIfMeant(edge, sites[0].Site, statement) ? SlabJudge.Verdict(statement.Take(), place) : null;
    }

    private static string Name(Edge edge) => edge switch { Edge.Bottom => "bottom", Edge.Top => "top", _ => "center" };

    private static string Edges(Func<Edge, Verdict> verdict, string who)
    {
        string fails = "";
        foreach (Edge edge in new[] { Edge.Bottom, Edge.Center, Edge.Top })
        {
            fails += verdict(edge) != Verdict.Fails ? "" : (fails.Length == 0 ? "" : " or ") + Name(edge);
        }

        return fails.Length == 0 ? "depends on " + FactText.Of(Facts.EdgeMeant) : "fails if " + who + " means " + fails;
    }
}
