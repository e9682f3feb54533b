using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights.Rules;

/// <summary>
/// A row of a rule set: one statement of what a document allows. What computes it is a form (a type that derives from one of the three families);
/// the row adds numbers, scope and citation.
/// </summary>
/// <remarks>
/// A rule is immutable and equal to another with the same content, so that sets which share a row can be joined.
/// A library with forms of its own targets net8.0 or newer too if programs for .NET are to load it: built for netstandard2.0 alone, its forms load only
/// where the netstandard2.0 build of BoxHeights does.
/// </remarks>
public abstract record Rule
{
    internal const string DefaultReading = "default";

    private static readonly Citation NoCitation = new("none");

    /// <summary>Names a row.</summary>
    /// <param name="id">A short phrase of the trade in kebab case, stable for ever.</param>
    /// <param name="summary">What is allowed, in one plain phrase that completes "it must be …".</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    /// <exception cref="ArgumentException">The id isn't in kebab case, or a text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such severity.</exception>
    private protected Rule(string id, string summary, Severity severity, Citation citation)
    {
        Id = KindName.Check(id, nameof(id));
        Summary = string.IsNullOrWhiteSpace(summary) ? throw new ArgumentException("A rule says what it allows.", nameof(summary)) : summary;
        Severity = Checked(severity, nameof(severity));
        Citation = citation ?? throw new ArgumentNullException(nameof(citation));
    }

    /// <summary>The row's id.</summary>
    public string Id { get; init; }

    /// <summary>What is allowed, in one plain phrase. Its measures (6 ft, 900 mm, 34 to 38 in) are as the document prints them; findings add the dwelling's own units where those are others.</summary>
    public string Summary { get; init; }

    /// <summary>How much a finding weighs.</summary>
    public Severity Severity { get; init; }

    /// <summary>A miss smaller than this is only a note; null where every miss weighs the same.</summary>
    public Distance? NoteUnder { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public Citation Citation { get; init; }

    /// <summary>Raised when a number of a published row is corrected; 1 at first.</summary>
    public int Revision { get; init; } = 1;

    /// <summary>Which boxes the row speaks of.</summary>
    public RuleScope Scope { get; init; } = RuleScope.Everything;

    /// <summary>Whether the row is a habit: it speaks only where it is clearly not met, and other rules leave a place that would meet it.</summary>
    public bool YieldsWhenForced { get; init; }

    /// <summary>What of its text the row doesn't apply, in one phrase; null where it applies all.</summary>
    public string? LeavesOut { get; init; }

    /// <summary>The name of the reading that this row follows; "default" where it has no other.</summary>
    public string ReadingId { get; init; } = DefaultReading;

    /// <summary>Other readings of the same text that authorities hold.</summary>
    public Items<Reading> Readings { get; init; }

    /// <summary>Names of kinds that the row speaks of besides those of its scope: they are known, whoever made them.</summary>
    public virtual Items<string> KindsNamed => default;

    /// <summary>What of the list of things that no report looks at is looked at with this row, in that list's words: "stairs", "sink zones". Reports of sets with such a row leave it off.</summary>
    public virtual string? Covers { get; init; }

    /// <summary>Whether a box that misses the rule goes aside, at the height that it has, before it goes up or down: what it collides with stands beside it, as a casing, a door or a neighbor does.</summary>
    public virtual bool MendsAside => false;

    /// <summary>
    /// Whether what a violation asks doesn't wait for it: where nothing else mends one, a remedy or a plan leaves this unmet and says so. So it is of all that is short of
    /// a violation, but for what can't be built.
    /// </summary>
    internal virtual bool GivesWay => Severity < Severity.Violation;

    /// <summary>The form's numbers in words, for <see cref="RuleSet.Describe"/>.</summary>
    public abstract string Numbers { get; }

    /// <summary>The row in one line.</summary>
    internal string InOneLine => Id + ": " + Summary + " [" + Citation + "]";

    /// <summary>What of the row can't be meant, each in one phrase: a lower limit above the upper one, nothing that is limited. Checked where the row enters a rule set.</summary>
    protected virtual IEnumerable<string> Mistakes() => [];

    /// <summary>The row, if it can be meant.</summary>
    /// <exception cref="ArgumentException">It can't; the message says all that is wrong with it.</exception>
    internal Rule Meant(string argument)
    {
        List<string> wrong = [.. Mistakes()];
        HashSet<string> ids = new(StringComparer.Ordinal) { ReadingId };
        foreach (Reading reading in Readings)
        {
            string name = "its reading \"" + reading.Id + "\" ";
            Add(ids.Add(reading.Id), name + "is there twice");
            Add(reading.Rule.Id == Id, name + "is a row of another id, \"" + reading.Rule.Id + "\"");
            Add(reading.Rule.Severity == Severity, name + "weighs otherwise");
            Add(IsOfOneFamily(reading.Rule), name + "is a rule of another family");
            foreach (string mistake in reading.Rule.Mistakes())
            {
                wrong.Add(name + "can't be meant: " + mistake);
            }
        }

        return wrong.Count == 0 ? this : throw new ArgumentException("The row \"" + Id + "\" can't be meant: " + string.Join("; ", wrong) + ".", argument);

        void Add(bool good, string mistake)
        {
            if (!good)
            {
                wrong.Add(mistake);
            }
        }
    }

    /// <summary>All that the row goes by, without its prose: what a stamp is made from. Written by the compiler for every record, so that a form can't forget a number that it shows.</summary>
    internal string Data()
    {
        // What the compiler writes prints numbers as the thread does, those of a caller's own form too: a row goes by the same numbers everywhere.
#pragma warning disable RS0030
        CultureInfo here = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            return Printed();
        }
        finally
        {
            CultureInfo.CurrentCulture = here;
        }
#pragma warning restore RS0030
    }

    private string Printed()
    {
        StringBuilder text = new();
        text.Append(EqualityContract).Append(' ');
        WithoutProse().PrintMembers(text);
        foreach (Reading reading in Readings)
        {
            text.Append("\n  ").Append(reading.Id).Append(": ").Append(reading.Rule.Data());
        }

        return text.ToString();
    }

    /// <summary>Whether another row is the same but for its prose.</summary>
    internal bool IsSameInOtherWords(Rule other) => InNoWords().Equals(other.InNoWords());

    private Rule InNoWords() => WithoutProse() with { Readings = Readings.Select(reading => reading with { Summary = "", Rule = reading.Rule.InNoWords() }) };

    private Rule WithoutProse() => this with { Summary = "", LeavesOut = null, Citation = NoCitation, Readings = default };

    private bool IsOfOneFamily(Rule other) => this switch
    {
        PlacementRule => other is PlacementRule,
        LimitRule => other is LimitRule,
        ProvisionRule => other is ProvisionRule,
        SpaceRule space => other is SpaceRule same && same.Subject == space.Subject,
        HabitRule => other is HabitRule,
        _ => false,
    };

    internal static Severity Checked(Severity severity, string name) => severity is Severity.Note or Severity.Advice or Severity.Violation
        ? severity
        : throw new ArgumentOutOfRangeException(name, severity, "A finding is a note, advice or a violation.");
}

/// <summary>Another reading of a row's text.</summary>
public sealed record Reading
{
    /// <summary>Names a reading.</summary>
    /// <param name="id">Its name, in kebab case.</param>
    /// <param name="summary">How it reads the text, in one phrase.</param>
    /// <param name="rule">The row under this reading.</param>
    public Reading(string id, string summary, Rule rule)
    {
        Id = KindName.Check(id, nameof(id));
        Summary = summary ?? throw new ArgumentNullException(nameof(summary));
        Rule = rule ?? throw new ArgumentNullException(nameof(rule));
    }

    /// <summary>The reading's name.</summary>
    public string Id { get; init; }

    /// <summary>How it reads the text.</summary>
    public string Summary { get; init; }

    /// <summary>The row under this reading.</summary>
    public Rule Rule { get; init; }
}
