namespace BoxHeights;

/// <summary>What one rule says of one box: a view, worked out as it is read.</summary>
public readonly struct Check
{
    private readonly LengthUnits units;

    internal Check(string ruleId, string subject, Verdict verdict, Quantity margin, MissingFacts needs, Items<string> disputedBy, LengthUnits units, LeastChange? change = null)
    {
        this.units = units;
        RuleId = ruleId;
        Subject = subject;
        Verdict = verdict;
        Margin = margin;
        Needs = needs;
        DisputedBy = disputedBy;
        LeastChange = change;
    }

    /// <summary>The id of the rule.</summary>
    public string RuleId { get; }

    /// <summary>The id of the box.</summary>
    public string Subject { get; }

    /// <summary>What the rule says.</summary>
    public Verdict Verdict { get; }

    /// <summary>How far inside what is allowed (the largest amount where nothing bounds it), or negative, how far outside (the most negative one where nothing is allowed).</summary>
    public Quantity Margin { get; }

    /// <summary>Of a place: the move that <see cref="Margin"/> is the length of, and its direction; null where no move would change anything, and for other quantities.</summary>
    public LeastChange? LeastChange { get; }

    /// <summary>What would have to be known to decide.</summary>
    public MissingFacts Needs { get; }

    /// <summary>The readings of the rule's text that would say otherwise.</summary>
    public Items<string> DisputedBy { get; }

    /// <summary>The check in one line, with its margin as a tape shows it, rounded so that it never looks better than it is.</summary>
    public override string ToString() => Subject + ": " + RuleId + ": " + Verdict switch
    {
        Verdict.Passes => Margin.IsUnbounded ? "met everywhere" : "met, by " + new PrintedQuantity(Margin, units, Rounding.Down),
        Verdict.Fails => "not met, " + (Margin.IsUnbounded ? "and no height here would" : "off by " + Printed.OffBy(Margin, units)),
        _ => "depends on " + FactText.Of(Needs),
    };
}
