using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Something about a dwelling that a rule forbids or can't decide, or a contradiction in its description.</summary>
/// <remarks>Never an approval or a refusal: the authority having jurisdiction decides. Messages are put together when they are read.</remarks>
public sealed partial class Finding : IEquatable<Finding>
{
    /// <summary>The <see cref="RuleId"/> of every layout fault.</summary>
    public const string LayoutFaultId = "layout-fault";

    private static readonly Citation OfTheDescription = new("the description itself", "", Confidence.Derived);

    private readonly LayoutState state;
    private readonly Rule? rule;
    private readonly SitesOfBox sites;
    private readonly int placement;
    private readonly Place place;
    private readonly StatedLimit? limit;
    private readonly LimitJudgement judged;
    private readonly Items<string> involved;
    private FindingDetails? details;

    internal Finding(LayoutState state, LayoutFault fault)
    {
        this.state = state;
        Fault = fault;
        Verdict = Verdict.Unknown;
        details = FindingDetails.Of(fault);
    }

    /// <summary>A placement that doesn't pass. Only that is settled now: many findings are counted and never read.</summary>
    internal Finding(LayoutState state, int box, int placement, Verdict verdict, in Place place)
        : this(state, state.SitesOf(box)[0].Placements[placement].Rule, box, verdict)
    {
        sites = state.SitesOf(box);
        this.placement = placement;
        this.place = place;
    }

    internal Finding(LayoutState state, int box, int limit, in LimitJudgement judged, in Place place)
        : this(state, state.SitesOf(box)[0].Limits[limit].Rule, box, judged.Verdict)
    {
        this.limit = state.SitesOf(box)[0].Limits[limit];
        this.judged = judged;
        this.place = place;
    }

    internal Finding(LayoutState state, int group, in ProvisionStatement.Answer answer)
        : this(state, state.Groups[group].Rule, state.Groups[group].Boxes.Member(answer.Index), answer.Verdict)
    {
        Group = group;
        involved = answer.Involves;
        details = FindingDetails.Of(state.Options.Units, state.Groups[group].Rule, answer, answer.Verdict == Verdict.Fails ? state.Groups.DisputedBy(group, Box, state) : default);
    }

    internal Finding(LayoutState state, SpaceRule rule, SpaceAnswer answer, Items<string> disputedBy)
    {
        this.state = state;
        this.rule = rule;
        Space = answer;
        involved = answer.Involves;
        Unjudged = answer.NotJudgedBecause;
        Verdict = answer.Verdict == Verdict.Fails ? Verdict.Fails : Verdict.Unknown;
        details = FindingDetails.Of(state.Options.Units, rule, answer, disputedBy);
    }

    /// <summary>A box that a rule couldn't be held to.</summary>
    internal Finding(LayoutState state, Rule rule, int box, Wording why)
        : this(state, rule, box, Verdict.Unknown)
    {
        Unjudged = why;
        details = FindingDetails.NotJudged(state.Options.Units, rule, why);
    }

    private Finding(LayoutState state, Rule rule, int box, Verdict verdict)
    {
        this.state = state;
        this.rule = rule;
        Box = box;
        Verdict = verdict == Verdict.Fails ? Verdict.Fails : Verdict.Unknown;
        Height = state.HeightOf(box);
        At = state.AtOf(box);
    }

    /// <summary>Whether it is what a placement rule says of a place.</summary>
    internal bool Says(int placement, Verdict verdict, in Place place, in SitesOfBox sites) =>
        this.placement == placement && Verdict == verdict && this.place.Is(place) && this.sites.Are(sites);

    /// <summary>Whether it is what a rule says of a box among others that are where they were.</summary>
    internal bool Says(int box, Verdict verdict) => Box == box && Verdict == verdict;

    /// <summary>Whether it is what a limit rule says of a place.</summary>
    internal bool Says(StatedLimit limit, in LimitJudgement judged, in Place place) =>
        ReferenceEquals(this.limit, limit) && this.judged.Is(judged) && this.place.Is(place);

    /// <summary>The row that it is of, with its summary, numbers and source; null for a fault of the description.</summary>
    public Rule? Rule => rule;

    /// <summary>The id of the rule; <see cref="LayoutFaultId"/> for a fault of the description.</summary>
    public string RuleId => rule?.Id ?? LayoutFaultId;

    /// <summary>Whether the rule isn't met, or can't be decided.</summary>
    public Verdict Verdict { get; }

    /// <summary>How much it weighs. What can't be decided weighs what its rule does, and a fault of the description as much as a violation, since it may hide one.</summary>
    public Severity Severity => Fault is not null ? (Fault.Kind == LayoutFaultKind.UnknownKind ? Severity.Note : Severity.Violation)
        : rule is null ? Severity.Violation
        : sites.Length > 0 && rule.NoteUnder is { } under && Verdict == Verdict.Fails && HeightMargin.Abs().AsDistance() < under ? Severity.Note
        : rule.Severity;

    /// <summary>Whether a document of the rule set asks for something that isn't met: it fails, and weighs as a violation. Never true of a fault or of what can't be decided.</summary>
    public bool IsViolation => Verdict == Verdict.Fails && Severity == Severity.Violation;

    /// <summary>The id of the box, the room, flight or stretch of wall that lacks something, or the address of the part at fault.</summary>
    public string Subject => Fault?.Subject ?? Space?.Subject ?? state.Boxes[Box].Source.Id;

    /// <summary>The address of the surface that the box is on, or of what lacks something.</summary>
    public string Address => Fault?.Address ?? Space?.Address ?? state.Boxes[Box].Surface.Address;

    /// <summary>The height at which it was judged, in the terms in which it was given; null where it has none.</summary>
    public BoxHeight? Height { get; }

    /// <summary>Where along its wall it was judged; null where that isn't known.</summary>
    public Distance? At { get; }

    /// <summary>What was measured: of a placement the reading of the stick, of a level the center above the storey's subfloor, of a limit its quantity; of a space, as its rule says.</summary>
    public Quantity Measured => Details.Measured;

    /// <summary>What is allowed, in the same terms as <see cref="Measured"/>.</summary>
    public QuantitySet Allowed => Details.Allowed;

    /// <summary>How far it is from being met: negative, or zero where it only depends on something.</summary>
    /// <remarks>Of a placement it is the least move of the box, in height or along its wall, as <see cref="LeastChange"/> tells, and the most negative distance where there is none; else from <see cref="Measured"/> to <see cref="Allowed"/>.</remarks>
    public Quantity Margin => Details.Margin;

    /// <summary>Of a placement: the least move after which it is met for certain, and its direction; null where there is none, and for what no move of the box mends.</summary>
    public LeastChange? LeastChange => Details.LeastChange;

    /// <summary>The same in height alone, which boxes that were set with one stick share.</summary>
    internal Quantity HeightMargin => sites.Length == 0 ? Margin : Distance.FromTicks(PlaceMargin.OfHeight(sites, placement, Verdict, place));

    /// <summary>What would have to be known to decide.</summary>
    public MissingFacts Needs => Details.Needs;

    /// <summary>The readings of the rule's text under which it would be met.</summary>
    public Items<string> DisputedBy => Details.DisputedBy;

    /// <summary>Where the rule comes from.</summary>
    public Citation Citation => rule?.Citation ?? OfTheDescription;

    /// <summary>What can't be; null unless the description is at fault.</summary>
    public LayoutFault? Fault { get; }

    /// <summary>
    /// Names what it is about, the same in every session and evaluation of the same description: the rule and the subject, and for a fault what it is. Two findings
    /// of one rule about one subject share it.
    /// </summary>
    public string Key => RuleId + "|" + Subject + (Fault is null ? "" : "|" + Fault.Kind + "|" + Fault.Message);

    /// <summary>The ids of the other boxes that it is about, or the addresses of the doors, finishes, cabinets and fixtures; none where it is about its subject alone.</summary>
    public Items<string> Involves => sites.Length == 0 ? involved : Text.Involved();

    /// <summary>The stretches of walls, or of sides of what stands free, that lack something, each piece by itself; none where it is about a box or all of its subject.</summary>
    public Items<WallStretch> Stretches => Space?.Gap?.Invoke().Stretches ?? default;

    /// <summary>The point of a run that is furthest from every outlet that counts; null where it has none, or the finding is about no run.</summary>
    public WorstPoint? Worst => Space?.Gap?.Invoke().Worst;

    /// <summary>Why the rule couldn't be judged at all, in one phrase; null where it was. Its verdict is unknown, and nothing was measured.</summary>
    public string? NotJudgedBecause => Unjudged is null ? null : Words.Format(Unjudged);

    /// <summary>What would mend it, best first: of what its cause offers, all that is about its box. In a session, for the layout as it is when this is read; empty once the finding is gone.</summary>
    public Items<Remedy> Remedies
    {
        get
        {
            Items<Remedy> all = state.RemediesOf?.Invoke(this) ?? default;
            List<Remedy> own = [];
            foreach (Remedy remedy in all)
            {
                if (Box < 0 || remedy.Concerns(Subject))
                {
                    own.Add(remedy);
                }
            }

            return own.Count == all.Count ? all : new(own);
        }
    }

    /// <summary>The finding in one line, in the language of <see cref="EvaluatorOptions.Words"/>.</summary>
    public string Message => Words.Format(Wording);

    /// <summary>The same as data: its template and what stands in its places, for a language, markup or units of one's own.</summary>
    public Wording Wording => Text.Message(this);

    /// <summary>Why the rule couldn't be judged at all; null where it was.</summary>
    internal Wording? Unjudged { get; }

    /// <summary>What would have to be known, in words.</summary>
    internal Wording Facts => Box < 0 ? FactText.Of(Needs) : FactText.Of(Needs, state.Boxes[Box], Height, state.Options.Catalog);

    /// <summary>The finding without its subject: the same for all that share a cause.</summary>
    internal string Body => BodyIn(null);

    /// <summary>The same in other units than the evaluation's, where some are asked for.</summary>
    internal string BodyIn(LengthUnits? units) => WordsIn(units).Format(Text.Body(this));

    /// <summary>The finding without its subject, as its message says it.</summary>
    internal string OwnBodyIn(LengthUnits? units) => WordsIn(units).Format(Text.OwnBody(this));

    private WordingFormatter WordsIn(LengthUnits? units) => units is { } other && other != state.Options.Units ? Words.In(other) : Words;

    /// <summary>What it is about, as one sees it on site.</summary>
    internal string Seen => Space?.Named is { } named ? Words.Format(named()) : Subject;

    /// <summary>The language of the evaluator that found it.</summary>
    internal WordingFormatter Words => state.Options.Words;

    internal int Box { get; } = -1;

    internal int Group { get; } = -1;

    internal SpaceAnswer? Space { get; }

    internal FindingText Text => Details.Text;

    /// <summary>Whether where the box is along its wall is only assumed.</summary>
    internal bool IsPlacedByAssumedStud => Box >= 0 && state.IsPlacedByAssumedStud(Box);

    /// <summary>How the studs of its wall are assumed to stand; null where they are known.</summary>
    internal Wording? AssumedStuds => BoxHeights.AssumedStuds.Of(state.Boxes[Box].Surface, state.Options.Units);

    /// <summary>The rule, where it is about a quantity that no move of the box mends.</summary>
    internal LimitRule? Limit => limit?.Rule;

    private FindingDetails Details => details ??= limit is null
        ? FindingDetails.Of(state.Options.Units, sites, placement, Verdict, place)
        : FindingDetails.Of(state.Options.Units, limit, judged, place);

    /// <summary>The finding in one line.</summary>
    public override string ToString() => Message;

    /// <summary>Whether another finding is about the same rule and subject.</summary>
    internal bool IsAbout(Finding other) => RuleId == other.RuleId && Subject == other.Subject && Fault == other.Fault;

    /// <summary>What a finding is about: the same for two that are about the same.</summary>
    internal (string RuleId, string Subject, LayoutFault? Fault) About => (RuleId, Subject, Fault);

    /// <summary>Whether another finding about the same says the same: of a run, in the words that a person reads, so that it doesn't change with each tick that a box is dragged.</summary>
    internal bool Agrees(Finding other) =>
        Verdict == other.Verdict && Severity == other.Severity && Needs == other.Needs && LeastChange == other.LeastChange && DisputedBy == other.DisputedBy && Equals(Unjudged, other.Unjudged)
        && (Space?.Gap is not null || (Measured == other.Measured && Allowed == other.Allowed && Margin == other.Margin)) && Space?.Said == other.Space?.Said;

    /// <summary>Whether another finding is about the same, wherever it comes from, and says exactly the same of it.</summary>
    public bool Equals(Finding? other) =>
        ReferenceEquals(this, other) || (other is not null && Key == other.Key && Agrees(other) && Measured == other.Measured && Allowed == other.Allowed && Margin == other.Margin
            && Address == other.Address && Height == other.Height && At == other.At && Citation == other.Citation);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Finding);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Key);
}
