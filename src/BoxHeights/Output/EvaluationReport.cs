using System;
using System.Collections.Generic;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What an evaluation says, as data that is kept, sent and compared: equal to another that says the same.</summary>
/// <remarks>A planning aid, never an approval: local codes, the authority having jurisdiction and licensed practice decide. Whoever shows it says so.</remarks>
[Told]
public sealed partial record EvaluationReport
{
    /// <summary>The name of the dwelling.</summary>
    public string Dwelling { get; }

    /// <summary>What it was made with.</summary>
    public EvaluationStamp Stamp { get; }

    /// <summary>The units in which texts print measures.</summary>
    public LengthUnits Units { get; internal init; }

    /// <summary>The rules that findings are of, each once.</summary>
    public Items<ReportedRule> Rules { get; internal init; }

    /// <summary>The findings, in the evaluation's order.</summary>
    public Items<ReportedFinding> Findings { get; internal init; }

    /// <summary>The findings grouped by what they share, the heaviest first, as the report numbers them; with remedies where they were asked for.</summary>
    public Items<ReportedCause> Causes { get; internal init; }

    /// <summary>What in this dwelling couldn't be judged.</summary>
    public Items<string> NotJudged { get; internal init; }

    /// <summary>What no rule of the set looks at.</summary>
    public Items<string> NotChecked { get; internal init; }

    /// <summary>The dwelling, and how many findings there are.</summary>
    public override string ToString() => Dwelling + ": " + EvaluationText.Counted(Findings.Count);

    /// <summary>The data of an evaluation.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="withRemedies">Whether what would mend each cause is looked for, which takes longer than the evaluation did.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static EvaluationReport Of(Evaluation evaluation, bool withRemedies = true) => Of(evaluation, withRemedies, CancellationToken.None);

    /// <summary>The data of an evaluation, unless somebody gives up.</summary>
    /// <param name="evaluation">The evaluation.</param>
    /// <param name="withRemedies">Whether what would mend each cause is looked for.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static EvaluationReport Of(Evaluation evaluation, bool withRemedies, CancellationToken cancellationToken)
    {
        _ = evaluation ?? throw new ArgumentNullException(nameof(evaluation));
        cancellationToken.ThrowIfCancellationRequested();
        List<ReportedRule> rules = [];
        HashSet<string> known = new(StringComparer.Ordinal);
        Dictionary<Finding, int> places = new(new Identity());
        foreach (Finding finding in evaluation.Findings)
        {
            places[finding] = places.Count + 1;
            if (finding.Fault is null && known.Add(finding.RuleId))
            {
                rules.Add(new(evaluation.Rules.Row(finding.RuleId)));
            }
        }

        rules.Sort((a, b) => string.CompareOrdinal(a.Id, b.Id));
        return new(evaluation.Dwelling.Name, evaluation.Stamp)
        {
            Units = evaluation.Units,
            Rules = new(rules),
            Findings = evaluation.Findings.Select(ReportedFinding.Of),
            Causes = evaluation.Causes.Select(cause => new ReportedCause(cause.Title)
            {
                Findings = cause.Findings.Select(finding => places[finding]),
                Remedies = withRemedies ? cause.FindRemedies(cancellationToken).Select(ReportedRemedy.Of) : default,
            }),
            NotJudged = evaluation.NotJudged,
            NotChecked = evaluation.NotChecked,
        };
    }

    // Two findings may say the same of one subject; each has its own place.
    private sealed class Identity : IEqualityComparer<Finding>
    {
        public bool Equals(Finding? x, Finding? y) => ReferenceEquals(x, y);

        public int GetHashCode(Finding obj) => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj);
    }
}

/// <summary>A rule that findings of a report are of.</summary>
[Told]
public sealed partial record ReportedRule
{
    internal ReportedRule(Rule rule)
        : this(rule.Id, rule.Summary, rule.Citation)
    {
    }

    /// <summary>Its id.</summary>
    public string Id { get; }

    /// <summary>What it asks, in one phrase.</summary>
    public string Summary { get; }

    /// <summary>Where that comes from.</summary>
    public Citation Citation { get; }

    /// <summary>Its id, what it asks and where that comes from.</summary>
    public override string ToString() => Id + ": " + Summary + " [" + Citation + "]";
}

/// <summary>A finding as data: <see cref="Finding"/> without the evaluation behind it.</summary>
[Told]
public sealed partial record ReportedFinding
{
    /// <inheritdoc cref="Finding.RuleId"/>
    public string RuleId { get; }

    /// <inheritdoc cref="Finding.Subject"/>
    public string Subject { get; }

    /// <inheritdoc cref="Finding.Address"/>
    public string Address { get; }

    /// <inheritdoc cref="Finding.Verdict"/>
    public Verdict Verdict { get; }

    /// <inheritdoc cref="Finding.Severity"/>
    public Severity Severity { get; }

    /// <inheritdoc cref="Finding.Message"/>
    public string Message { get; }

    /// <inheritdoc cref="Finding.At"/>
    public Distance? At { get; internal init; }

    /// <inheritdoc cref="Finding.Height"/>
    public BoxHeight? Height { get; internal init; }

    /// <summary>What was measured; null where nothing was.</summary>
    public Quantity? Measured { get; internal init; }

    /// <summary>What is allowed, in the same terms; null where nothing was measured.</summary>
    public QuantitySet? Allowed { get; internal init; }

    /// <summary>How far it is from being met; null where nothing was measured.</summary>
    public Quantity? Margin { get; internal init; }

    /// <inheritdoc cref="Finding.LeastChange"/>
    public LeastChange? LeastChange { get; internal init; }

    /// <inheritdoc cref="Finding.Needs"/>
    public MissingFacts Needs { get; internal init; }

    /// <inheritdoc cref="Finding.DisputedBy"/>
    public Items<string> DisputedBy { get; internal init; }

    /// <inheritdoc cref="Finding.Involves"/>
    public Items<string> Involves { get; internal init; }

    /// <inheritdoc cref="Finding.Stretches"/>
    public Items<WallStretch> Stretches { get; internal init; }

    /// <inheritdoc cref="Finding.Worst"/>
    public WorstPoint? Worst { get; internal init; }

    /// <summary>What kind of fault of the description it is; null for findings of rules.</summary>
    public LayoutFaultKind? Fault { get; internal init; }

    /// <inheritdoc cref="Finding.NotJudgedBecause"/>
    public string? NotJudgedBecause { get; internal init; }

    /// <summary>The finding in one line.</summary>
    public override string ToString() => Message;

    internal static ReportedFinding Of(Finding finding)
    {
        bool isMeasured = finding.Fault is null && finding.NotJudgedBecause is null;
        return new(finding.RuleId, finding.Subject, finding.Address, finding.Verdict, finding.Severity, finding.Message)
        {
            At = finding.At,
            Height = finding.Height,
            Measured = isMeasured ? finding.Measured : null,
            Allowed = isMeasured ? finding.Allowed : null,
            Margin = isMeasured ? finding.Margin : null,
            LeastChange = finding.LeastChange,
            Needs = finding.Needs,
            DisputedBy = finding.DisputedBy,
            Involves = finding.Involves,
            Stretches = finding.Stretches,
            Worst = finding.Worst,
            Fault = finding.Fault?.Kind,
            NotJudgedBecause = finding.NotJudgedBecause,
        };
    }
}

/// <summary>A cause as data: findings that share one remedy.</summary>
public sealed record ReportedCause
{
    internal ReportedCause(string title) => Title = title;

    /// <summary>The cause in one line.</summary>
    public string Title { get; }

    /// <summary>The places of its findings among the report's, counted from 1.</summary>
    public Items<int> Findings { get; internal init; }

    /// <summary>What would mend it, best first.</summary>
    public Items<ReportedRemedy> Remedies { get; internal init; }

    /// <summary>The cause in one line.</summary>
    public override string ToString() => Title;
}

/// <summary>What a remedy does.</summary>
public enum RemedyKind
{
    /// <summary><see cref="NoneFound"/>.</summary>
    None = 0,

    /// <summary><see cref="MoveBoxes"/>.</summary>
    Move = 1,

    /// <summary><see cref="AddBox"/>.</summary>
    Add = 2,

    /// <summary><see cref="ResizeBox"/>.</summary>
    Resize = 3,

    /// <summary><see cref="SetProjection"/>.</summary>
    Projection = 4,

    /// <summary><see cref="AddBlocking"/>.</summary>
    Blocking = 5,

    /// <summary><see cref="ChangeMounting"/>.</summary>
    Mounting = 6,

    /// <summary><see cref="MoveInPlan"/>.</summary>
    Plan = 7,
}

/// <summary>A remedy as data.</summary>
[Told]
public sealed partial record ReportedRemedy
{
    /// <summary>What it does.</summary>
    public RemedyKind Kind { get; }

    /// <summary>What to do, in one line.</summary>
    public string Text { get; }

    /// <summary>The ids of the boxes that it changes, or that nothing was found for.</summary>
    public Items<string> Boxes { get; internal init; }

    /// <summary>The height that it sets them to.</summary>
    public BoxHeight? Height { get; internal init; }

    /// <summary>The place along the wall that it sets one to.</summary>
    public Distance? Along { get; internal init; }

    /// <summary>The place in plan that it sets one to.</summary>
    public PlanPoint? Plan { get; internal init; }

    /// <summary>How the box is held then.</summary>
    public Mounting? Mounting { get; internal init; }

    /// <summary>The kind of box to take instead.</summary>
    public BoxKind? BoxKind { get; internal init; }

    /// <summary>Their size with its new depth.</summary>
    public BoxSize? Size { get; internal init; }

    /// <summary>The volume that is to be marked on them, at least.</summary>
    public Volume? Volume { get; internal init; }

    /// <summary>From the face of the framing to their front edge.</summary>
    public Distance? Projection { get; internal init; }

    /// <summary>The boxes that it adds.</summary>
    public Items<PlacedBox> Added { get; internal init; }

    /// <summary>Why there is none; null where there is one.</summary>
    public NoRemedyReason? Reason { get; internal init; }

    /// <summary>The ids of the rules that leave no place together.</summary>
    public Items<string> Conflicting { get; internal init; }

    /// <summary>What to do, in one line.</summary>
    public override string ToString() => Text;

    internal static ReportedRemedy Of(Remedy remedy) => remedy switch
    {
        MoveBoxes move => new(RemedyKind.Move, move.Text) { Boxes = move.Ids, Height = move.Height, Along = move.Along, Mounting = move.Mounting },
        AddBox add => new(RemedyKind.Add, add.Text) { Added = add.Placed },
        MoveInPlan move => new(RemedyKind.Plan, move.Text) { Boxes = new[] { move.Id }, Plan = move.Plan },
        ResizeBox resize => new(RemedyKind.Resize, resize.Text) { Boxes = resize.Ids, Volume = resize.Volume, Size = resize.Size, BoxKind = resize.Kind, Mounting = resize.Mounting },
        SetProjection outward => new(RemedyKind.Projection, outward.Text) { Boxes = outward.Ids, Projection = outward.Projection },
        AddBlocking block => new(RemedyKind.Blocking, block.Text) { Boxes = new[] { block.Id }, Along = block.Along },
        ChangeMounting held => new(RemedyKind.Mounting, held.Text) { Boxes = new[] { held.Id }, Along = held.Along, Mounting = held.Mounting },
        NoneFound none => new(RemedyKind.None, none.Text) { Boxes = none.Ids, Reason = none.Reason, Conflicting = none.Conflicting },
        _ => throw new ArgumentOutOfRangeException(nameof(remedy), remedy, "No report knows such a remedy."),
    };
}
