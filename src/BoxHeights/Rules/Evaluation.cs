using System;
using System.Collections.Generic;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a rule set says of a dwelling: findings, their causes and remedies, checks with margins, and what couldn't be judged.</summary>
/// <remarks>Immutable and thread-safe. It is an aid for planning and never an approval: local codes, the authority having jurisdiction and licensed practice decide.</remarks>
public sealed partial class Evaluation
{
    private readonly LayoutState state;
    private readonly LayoutEvaluator evaluator;
    private readonly object grouping = new();
    private readonly object mending = new();
    private MendedDwelling? mended;
    private RemedyFinder? finder;
    private Items<Cause>? causes;
    private Items<Judgement>? judgements;
    private Dictionary<(string RuleId, string Subject, LayoutFault? Fault), Cause>? causeOf;

    internal Evaluation(LayoutEvaluator evaluator, LayoutState state, bool isTrial = false)
    {
        this.evaluator = evaluator;
        this.state = state;
        state.RemediesOf = RemediesOf;
        if (state.Spaces.Readers is null)
        {
            // For remedies and mending. To note it now costs nothing that can be measured, and to judge all again for it was a tenth of a report.
            state.Spaces.NoteReaders();
        }

        List<Finding> found = new(state.JudgeEntered(isTrial));
        state.Spaces.FreezeReaders();
        state.Cancellation = default;
        state.CollectInto(found);
        Findings = new(found);
        foreach (Finding finding in found)
        {
            HasViolations |= finding.IsViolation;
            HasUnknowns |= finding.Verdict == Verdict.Unknown;
            HasFaults |= finding.Fault is not null;
        }
    }

    /// <summary>The dwelling that was evaluated.</summary>
    public Dwelling Dwelling => state.Dwelling;

    /// <summary>Every finding: faults of the description first, then box by box in the dwelling's order, group by group, and what rooms and the whole dwelling lack.</summary>
    public Items<Finding> Findings { get; }

    /// <summary>The findings grouped by what they share, the heaviest first.</summary>
    public Items<Cause> Causes
    {
        get
        {
            lock (grouping)
            {
                return causes ??= Cause.Group(Findings, state, RemediesOf);
            }
        }
    }

    /// <summary>Whether something isn't met that a document of the rule set asks for: whether there is a finding with <see cref="Finding.IsViolation"/>.</summary>
    public bool HasViolations { get; }

    /// <summary>Whether something can't be decided from the description; true of every fault of it, too.</summary>
    public bool HasUnknowns { get; }

    /// <summary>Whether something in the description contradicts itself: some finding has a <see cref="Finding.Fault"/>. What it touches goes unjudged, so that there may be violations which nobody sees.</summary>
    public bool HasFaults { get; }

    /// <summary>Whether there is no finding at all. See <see cref="NotJudged"/> for what couldn't be judged, and <see cref="NotChecked"/> for what no rule looks at.</summary>
    public bool IsClean => Findings.Count == 0;

    /// <summary>What it was made with: rules, options, catalog and library. Of one description two evaluations with the same stamp find the same.</summary>
    public EvaluationStamp Stamp => new(RuleSetFingerprint, state.Options.Fingerprint, state.Options.Catalog.Fingerprint);

    /// <summary>What appeared, cleared or changed from another evaluation to this one, as a session tells it of a change.</summary>
    /// <param name="other">The evaluation before.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public SessionChange DiffFrom(Evaluation other) => SessionChange.Between((other ?? throw new ArgumentNullException(nameof(other))).Findings, Findings);

    /// <summary>Identifies the rows that were applied.</summary>
    public string RuleSetFingerprint => state.Rules.Set.Fingerprint;

    /// <summary>Every check of every box by every rule that speaks of it, one box after another.</summary>
    public IEnumerable<Check> Checks => CheckList.Of(state);

    /// <summary>What every rule came to for every subject that it may be about: boxes, rooms, runs of walls and counters, outside faces, flights, storeys, the dwelling.</summary>
    /// <remarks>What isn't met or depends on something has its finding; what is met, let off, not applicable or couldn't be judged is listed too, with the reason.</remarks>
    public Items<Judgement> Judgements
    {
        get
        {
            lock (state.Gate)
            {
                return judgements ??= new(JudgementList.Of(state, Findings, true));
            }
        }
    }

    /// <summary>What in this dwelling couldn't be judged: a line for each rule and reason, with what it is about. Rules that weigh as violations and are kept from judging have findings too.</summary>
    public Items<string> NotJudged => CoverageText.NotJudged(Told());

    /// <summary>What no rule of the set looks at, in any dwelling.</summary>
    public Items<string> NotChecked => new(Scope.NotCoveredBy(state.Rules.Set));

    /// <summary>The findings about a box, a wall, a room, a storey or another part of the dwelling, and all that it holds.</summary>
    /// <param name="id">An id, or an address such as "kitchen/north".</param>
    /// <returns>Empty where nothing was found about that part.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such part: nothing found of a misspelled id would look like nothing wrong.</exception>
    public Items<Finding> For(string id)
    {
        Items<Finding> found = About(id ?? throw new ArgumentNullException(nameof(id)));
        return found.Count > 0 || DwellingAddresses.Has(Dwelling, id)
            ? found
            : throw DwellingAddresses.NoSuch(Dwelling, "part", id, nameof(id), ": give the id of a box, room, outside face, flight or storey, or an address such as \"kitchen/north\"");
    }

    /// <summary>The dwelling with remedies carried out together, as a foreman would: papers for the crew are cut from it.</summary>
    /// <returns>What was changed and what nothing mends: worked out once.</returns>
    public MendedDwelling Mend() => Mend(CancellationToken.None);

    /// <summary>The dwelling with remedies carried out together, unless somebody gives up. Papers for the crew ask for it: whoever asks here first can end what takes long of them.</summary>
    /// <param name="cancellationToken">Ends it early; asked for again, it is worked out then.</param>
    /// <returns>What was changed and what nothing mends: worked out once.</returns>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public MendedDwelling Mend(CancellationToken cancellationToken)
    {
        lock (mending)
        {
            return mended ??= new Mending(this, cancellationToken).Carry();
        }
    }

    /// <summary>What couldn't be judged, the causes with their remedies, what is met, and what no rule looks at, as plain text.</summary>
    public string ToText() => ToText(CancellationToken.None);

    /// <summary>The same, unless somebody gives up: remedies take longer to find than the evaluation did.</summary>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public string ToText(CancellationToken cancellationToken) => EvaluationText.Of(this, cancellationToken);

    /// <summary>How many findings there are, and the first of them.</summary>
    public override string ToString() => Words.Format(Findings.Count == 0 ? EvaluationText.Counted(0) : $"{EvaluationText.Counted(Findings.Count):count}: {Findings[0].Wording:first}");

    /// <summary>The same for papers: they end even where it is worked out already.</summary>
    internal MendedDwelling Mended(CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        return Mend(cancellation);
    }

    /// <summary>What its rules state, and where boxes are.</summary>
    internal LayoutState State => state;

    /// <summary>What a fresh evaluation says of a dwelling that differs in its boxes alone: what they don't change isn't judged again.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="cancellation">Ends it early.</param>
    /// <param name="isTrial">Whether only what is found counts, and not which readings dispute it.</param>
    internal Evaluation WithBoxesOf(Dwelling dwelling, CancellationToken cancellation, bool isTrial = false)
    {
        lock (state.Gate)
        {
            if (state.Like(dwelling, cancellation) is { } like)
            {
                return new(evaluator, like, isTrial);
            }
        }

        return evaluator.Evaluate(dwelling, cancellation);
    }

    /// <summary>Whether there was anything to judge.</summary>
    internal bool HasJudged => state.Boxes.Count + Dwelling.Rooms.Count + Dwelling.Outside.Count + Dwelling.Flights.Count > 0;

    /// <summary>The judgements that say something, made anew each time: a report asks once.</summary>
    internal IReadOnlyList<Judgement> Told()
    {
        lock (state.Gate)
        {
            return JudgementList.Of(state, Findings, false);
        }
    }

    /// <summary>The rules of the set.</summary>
    internal RuleSet Rules => state.Rules.Set;

    /// <summary>The language in which findings are printed.</summary>
    internal WordingFormatter Words => state.Options.Words;

    /// <summary>The units in which findings are printed.</summary>
    internal LengthUnits Units => state.Options.Units;

    /// <summary>The findings about a part, and all that it holds; empty where there is no such part.</summary>
    internal Items<Finding> About(string id)
    {
        HashSet<string> rooms = DwellingAddresses.RoomsOn(Dwelling, id);
        List<Finding> found = [];
        foreach (Finding finding in Findings)
        {
            if (finding.Subject == id || finding.Address == id || SurfaceAddress.Read(finding.Address).IsPartOf(id)
                || (rooms.Count > 0 && rooms.Contains(SurfaceAddress.Read(finding.Address).Space)))
            {
                found.Add(finding);
            }
        }

        return new(found);
    }

    /// <summary>What would mend the cause of a finding.</summary>
    internal Items<Remedy> RemediesOf(Finding finding) => CauseOf(finding)?.Remedies ?? default;

    internal Cause? CauseOf(Finding finding)
    {
        Items<Cause> all = Causes;
        lock (grouping)
        {
            if (causeOf is null)
            {
                causeOf = [];

                // From the last, so that the first of several stays.
                for (int i = all.Count - 1; i >= 0; i--)
                {
                    foreach (Finding one in all[i].Findings)
                    {
                        causeOf[one.About] = all[i];
                    }
                }
            }

            return causeOf.TryGetValue(finding.About, out Cause? found) ? found : null;
        }
    }

    /// <summary>Looking for remedies states rules at further sites, which the state remembers: one cause at a time.</summary>
    private Items<Remedy> RemediesOf(Cause cause, CancellationToken cancellation)
    {
        lock (state.Gate)
        {
            return (finder ??= new(Findings, state)).For(cause, cancellation);
        }
    }
}
