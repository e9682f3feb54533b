using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Something about a dwelling that a rule doesn't allow, or can't decide, or that can't be.</summary>
/// <remarks>Never an approval or a refusal: the authority having jurisdiction decides. Messages are put together when they are read.</remarks>
public sealed class Finding
{
    /// <summary>The <see cref="RuleId"/> of every layout fault.</summary>
    public const string LayoutFaultId = "layout-fault";

    private static readonly Citation OfTheDescription = new("the description itself", "", Confidence.Derived);

    private readonly LayoutState state;
    private readonly FindingText text;

    internal Finding(LayoutState state, LayoutFault fault)
    {
        this.state = state;
        Fault = fault;
        RuleId = LayoutFaultId;
        Outcome = Outcome.Unknown;
        Severity = Severity.Violation;
        Subject = fault.Subject;
        Address = fault.Subject;
        Needs = Facts.BrokenPart;
        Citation = OfTheDescription;
        text = FindingText.Of(fault);
    }

    internal Finding(LayoutState state, int box, int placement, in Place place)
        : this(state, state.SitesOf(box)[0].Placements[placement].Rule, box)
    {
        StatedSite[] sites = state.SitesOf(box);
        Verdict verdict = state.VerdictOf(box, placement, place);
        int edge = 0;
        while (edge < sites.Length - 1 && SlabJudge.Verdict(sites[edge].Placements[placement].Slabs, place) == Verdict.Passes)
        {
            edge++;
        }

        StatedPlacement stated = sites[edge].Placements[placement];
        Judgement judged = SlabJudge.Judge(stated.Slabs, place);
        Outcome = verdict == Verdict.Fails ? Outcome.Fails : Outcome.Unknown;
        Measured = place.Readings.From;
        Allowed = judged.Allowed;
        Margin = Distance.FromTicks(judged.Margin);
        Needs = Outcome == Outcome.Unknown ? judged.Needs | (sites.Length > 1 ? Facts.EdgeMeant : Facts.None) : Facts.None;
        if (stated.Rule.NoteUnder is { } under && Outcome == Outcome.Fails && Margin.Abs().AsDistance() < under)
        {
            Severity = Severity.Note;
        }

        List<string> disputed = [];
        foreach ((string id, Slab[] slabs) in stated.Readings)
        {
            if (Outcome == Outcome.Fails && SlabJudge.Verdict(slabs, place) == Verdict.Passes)
            {
                disputed.Add(id);
            }
        }

        DisputedBy = new(disputed);
        text = FindingText.Of(state, box, placement, place);
    }

    internal Finding(LayoutState state, int box, StatedLimit limit)
        : this(state, limit.Rule, box)
    {
        LimitStatement statement = limit.Statement;
        Outcome = statement.Verdict == Verdict.Fails ? Outcome.Fails : Outcome.Unknown;
        Measured = statement.Measured;
        Allowed = statement.Allowed;
        Margin = statement.Margin;
        Needs = statement.Needs;
        DisputedBy = Outcome == Outcome.Fails ? limit.DisputedBy : default;
        text = FindingText.Of(state, limit);
    }

    internal Finding(LayoutState state, int group, in ProvisionStatement.Answer answer)
        : this(state, state.Groups[group].Rule, state.Groups[group].Boxes.Member(answer.Index))
    {
        Group = group;
        Outcome = answer.Verdict == Verdict.Fails ? Outcome.Fails : Outcome.Unknown;
        Measured = answer.Measured;
        Allowed = answer.Allowed;
        Margin = answer.Allowed.Margin(answer.Measured);
        Needs = answer.Needs;
        text = FindingText.Of(state, state.Groups[group].Rule);
    }

    private Finding(LayoutState state, Rule rule, int box)
    {
        this.state = state;
        text = null!;
        Box = box;
        RuleId = rule.Id;
        Severity = rule.Severity;
        Citation = rule.Citation;
        Subject = state.Boxes[box].Source.Id;
        Address = state.Boxes[box].Surface.Address;
        Height = state.HeightOf(box);
        At = state.AtOf(box);
    }

    /// <summary>The id of the rule; <see cref="LayoutFaultId"/> for a fault of the description.</summary>
    public string RuleId { get; }

    /// <summary>Whether the rule isn't met, or can't be decided.</summary>
    public Outcome Outcome { get; }

    /// <summary>How much it weighs.</summary>
    public Severity Severity { get; }

    /// <summary>The id of the box, or the address of the part at fault.</summary>
    public string Subject { get; }

    /// <summary>The address of the surface that the box is on.</summary>
    public string Address { get; }

    /// <summary>The height at which it was judged, in the terms in which it was given; null where it has none.</summary>
    public BoxHeight? Height { get; }

    /// <summary>Where along its wall it was judged; null where that isn't known.</summary>
    public Distance? At { get; }

    /// <summary>What was measured: for a placement, the reading of the stick; for a level, the center above the storey's subfloor; for fill, a volume.</summary>
    public Quantity Measured { get; }

    /// <summary>What is allowed, in the same terms as <see cref="Measured"/>.</summary>
    public QuantitySet Allowed { get; }

    /// <summary>How far <see cref="Measured"/> is from <see cref="Allowed"/>: negative, or zero where it only depends on something.</summary>
    public Quantity Margin { get; }

    /// <summary>What would have to be known to decide.</summary>
    public Facts Needs { get; }

    /// <summary>The readings of the rule's text under which it would be met.</summary>
    public Items<string> DisputedBy { get; }

    /// <summary>Where the rule comes from.</summary>
    public Citation Citation { get; }

    /// <summary>What can't be; null unless the description is at fault.</summary>
    public LayoutFault? Fault { get; }

    /// <summary>What would mend it, best first. In a session, for the layout as it is when this is read; empty once the finding is gone.</summary>
    public Items<Remedy> Remedies => state.Evaluation?.Invoke().CauseOf(this)?.Remedies ?? default;

    /// <summary>The finding in one line.</summary>
    public string Message => text.Message(this);

    internal int Box { get; } = -1;

    internal int Group { get; } = -1;

    internal FindingText Text => text;

    /// <summary>The finding in one line.</summary>
    public override string ToString() => Message;

    /// <summary>Whether another finding is about the same rule and subject.</summary>
    internal bool IsAbout(Finding other) => RuleId == other.RuleId && Subject == other.Subject && Fault == other.Fault;

    /// <summary>Whether another finding about the same says the same.</summary>
    internal bool Agrees(Finding other) =>
        Outcome == other.Outcome && Severity == other.Severity && Measured == other.Measured && Allowed == other.Allowed && Needs == other.Needs;
}
