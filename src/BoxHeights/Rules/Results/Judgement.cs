using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a rule came to for one subject.</summary>
public enum Judged
{
    /// <summary>The rule isn't about it, or nothing is there that it speaks of.</summary>
    NotApplicable = 0,

    /// <summary>It meets the rule, whatever isn't known.</summary>
    Met = 1,

    /// <summary>It misses the rule and is let off: others nearby meet it, or firmer rules leave no place that does.</summary>
    LetOff = 2,

    /// <summary>The rule couldn't be judged: something that it needs isn't described, or can't be.</summary>
    NotJudged = 3,

    /// <summary>It depends on something that isn't stated, and there is a finding that says on what.</summary>
    Unknown = 4,

    /// <summary>It doesn't meet the rule, and there is a finding.</summary>
    NotMet = 5,
}

/// <summary>What something is that a rule is judged for.</summary>
public enum JudgedKind
{
    /// <summary>A box.</summary>
    Box = 0,

    /// <summary>A part of a room, face or flight: a run of wall or counter, a fixture, an island, a platform, an end of a stair.</summary>
    Part = 1,

    /// <summary>A room.</summary>
    Room = 2,

    /// <summary>An outside face.</summary>
    OutsideFace = 3,

    /// <summary>A flight of stairs.</summary>
    Flight = 4,

    /// <summary>A storey.</summary>
    Storey = 5,

    /// <summary>The dwelling.</summary>
    Dwelling = 6,
}

/// <summary>One rule and one subject: what came of it, and why.</summary>
public sealed record Judgement
{
    internal Judgement(Rule rule, JudgedKind kind, string subject, string address, Judged state, WordingFormatter words, Wording? why = null, Finding? finding = null)
    {
        RuleId = rule.Id;
        Severity = rule.Severity;
        Kind = kind;
        Subject = subject;
        Address = address;
        State = state;
        Why = why is null ? null : words.Format(why);
        Reason = why;
        Finding = finding;
        Where = subject;
    }

    /// <summary>The id of the rule.</summary>
    public string RuleId { get; }

    /// <summary>How much the rule weighs.</summary>
    public Severity Severity { get; }

    /// <summary>What the subject is.</summary>
    public JudgedKind Kind { get; }

    /// <summary>The id of the box, room, face, flight or storey, the dwelling's name, or the name that findings have for a part.</summary>
    public string Subject { get; }

    /// <summary>The address of the surface that a box is on, or of what the subject belongs to.</summary>
    public string Address { get; }

    /// <summary>What came of it.</summary>
    public Judged State { get; }

    /// <summary>Why it went unjudged or is let off, or what is assumed where it is met, in one phrase; else null. Of what fails or depends on something, its <see cref="Finding"/> tells.</summary>
    public string? Why { get; }

    /// <summary>The same as data.</summary>
    public Wording? Reason { get; }

    /// <summary>The finding; null where there is none. What couldn't be judged has one where the rule weighs as a violation and something in the description keeps it from being judged.</summary>
    public Finding? Finding { get; }

    /// <summary>Where what kept it from being judged lies: the wall of a box, where all its boxes share it.</summary>
    internal string Where { get; init; }

    /// <summary>The judgement in one line.</summary>
    public override string ToString() => RuleId + ": " + Subject + ": " + Words(State) + (Why is null ? "" : ": " + Why);

    private static string Words(Judged state) => state switch
    {
        Judged.Met => "met",
        Judged.LetOff => "let off",
        Judged.NotJudged => "not judged",
        Judged.Unknown => "depends on what isn't stated",
        Judged.NotMet => "not met",
        _ => "doesn't apply",
    };
}
