namespace BoxHeights;

/// <summary>Another place or height that a planned box could have on its wall, what it would cost, and why the plan didn't take it.</summary>
[Told]
public sealed partial class PlanAlternative
{
    /// <summary>The planned box.</summary>
    public string BoxId { get; }

    /// <summary>The wall that it is on.</summary>
    public string Address { get; }

    /// <summary>Where its center would be, from the wall's left end.</summary>
    public Distance At { get; }

    /// <summary>Its height there.</summary>
    public BoxHeight Height { get; }

    /// <summary>How it would be held there; null where nothing is said of the wall's studs.</summary>
    public Mounting? Mounting { get; }

    /// <summary>What would be found wrong, or couldn't be told any more, that isn't in the plan: heaviest first. None: it would do.</summary>
    public Items<PlanCost> Costs { get; }

    /// <summary>How much further the furthest point of its stretch of wall or counter would be from an outlet than it is in the plan, less where negative; null where the box serves no such stretch.</summary>
    public Distance? Further { get; internal init; }

    /// <summary>How far it is to the right of the planned place; negative to the left.</summary>
    public Distance Right { get; internal init; }

    /// <summary>Whether it would hang on blocking of its own, where the planned box is nailed to a stud.</summary>
    public bool NeedsBlocking { get; internal init; }

    /// <summary>Why the plan didn't take it, in one phrase.</summary>
    public string Why { get; internal init; } = "";

    /// <summary>The place, the height and why not: "kitchen-counter at 33-7/8 in, 48 in to top above subfloor: …".</summary>
    public override string ToString() => BoxId + " at " + Printed.OnTape(At, Units) + ", " + Printed.Of(Height, Units) + ": " + Why;

    /// <summary>How it is printed: as the dwelling's tape shows it.</summary>
    internal LengthUnits Units { private get; init; }
}

/// <summary>Something that would be found if a planned box were elsewhere.</summary>
public sealed class PlanCost
{
    internal PlanCost(Finding finding)
    {
        RuleId = finding.RuleId;
        Severity = finding.Severity;
        Verdict = finding.Verdict;
        Message = finding.Message;
    }

    /// <inheritdoc cref="Finding.RuleId"/>
    public string RuleId { get; }

    /// <inheritdoc cref="Finding.Severity"/>
    public Severity Severity { get; }

    /// <inheritdoc cref="Finding.Verdict"/>
    public Verdict Verdict { get; }

    /// <inheritdoc cref="Finding.Message"/>
    public string Message { get; }

    /// <summary>The finding in one line.</summary>
    public override string ToString() => Message;
}
