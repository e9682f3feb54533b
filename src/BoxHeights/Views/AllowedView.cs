using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What rules allow a box along one line: the heights at a place along its wall, or the places along its wall at a height.</summary>
/// <remarks>
/// It is about the box, its wall, the boxes beside and behind it and the level that it shares with others, from where they are. What rooms need of their boxes together isn't in it.
/// It is never an approval: local codes and the authority having jurisdiction decide.
/// </remarks>
public sealed class AllowedView
{
    private readonly DistanceSet held;
    private readonly LengthUnits units;

    internal AllowedView(bool fits, in DistanceSet held, Items<RuleAllows> rules, LengthUnits units)
    {
        this.held = held;
        this.units = units;
        Fits = fits;
        Rules = rules;
        Sure = FreeOf(Severity.Note);
        Possible = held;
        foreach (RuleAllows rule in rules)
        {
            if (!rule.IsLetOff)
            {
                Possible &= rule.Possible;
                Needs |= rule.Needs;
            }
        }
    }

    /// <summary>Whether a box of its size can be there at all: between the ends of its wall, and over the counter or beside whatever else its height is taken from.</summary>
    public bool Fits { get; }

    /// <summary>Where no rule has anything to find, whatever isn't known: readings of the stick to the edge and from the datum that were asked for, or centers from the wall's left end.</summary>
    public DistanceSet Sure { get; }

    /// <summary>Where no rule surely fails; holds <see cref="Sure"/>.</summary>
    public DistanceSet Possible { get; }

    /// <summary>What would have to be known to tell the two apart.</summary>
    public MissingFacts Needs { get; }

    /// <summary>What each rule says that speaks of the box.</summary>
    public Items<RuleAllows> Rules { get; }

    /// <summary>Where no rule of some weight has anything to find, whatever lighter ones say.</summary>
    /// <param name="least">The least weight that counts.</param>
    public DistanceSet FreeOf(Severity least)
    {
        DistanceSet free = held;
        foreach (RuleAllows rule in Rules)
        {
            free = rule.Severity >= least && !rule.IsLetOff ? free & rule.Silent : free;
        }

        return free;
    }

    /// <summary>The same of the rules that remedies keep slack from: all but habits.</summary>
    internal DistanceSet FirmlyFree
    {
        get
        {
            DistanceSet free = held;
            foreach (RuleAllows rule in Rules)
            {
                free = rule.Rule.YieldsWhenForced || rule.IsLetOff ? free : free & rule.Sure;
            }

            return free;
        }
    }

    /// <summary>What is allowed in all, to what a tape shows, rounded so that nothing more is allowed.</summary>
    public override string ToString() => Fits ? RuleAllows.Said(Sure, Possible, units) : "no room";
}

/// <summary>What one rule allows a box along a line.</summary>
public sealed class RuleAllows
{
    private readonly LengthUnits units;

    internal RuleAllows(Rule rule, in AllowedHeights allowed, bool isLetOff, LengthUnits units, string? notJudgedBecause = null)
    {
        this.units = units;
        Rule = rule;
        Sure = allowed.Sure;
        Possible = allowed.Possible;
        Needs = Sure == Possible ? MissingFacts.None : allowed.Needs;
        IsLetOff = isLetOff;
        NotJudgedBecause = notJudgedBecause;
    }

    /// <summary>The rule: its id, what it asks, its citation.</summary>
    public Rule Rule { get; }

    /// <summary>How much a finding of it weighs.</summary>
    public Severity Severity => Rule.Severity;

    /// <summary>Allowed whatever isn't known.</summary>
    public DistanceSet Sure { get; }

    /// <summary>Allowed for some of what isn't known; holds <see cref="Sure"/>.</summary>
    public DistanceSet Possible { get; }

    /// <summary>What would have to be known to tell the two apart.</summary>
    public MissingFacts Needs { get; }

    /// <summary>Whether it is silent there whatever it allows: others nearby let the box off, or it is a habit for which firmer rules leave no height.</summary>
    public bool IsLetOff { get; }

    /// <summary>Why it can't be held to the box; null where it can.</summary>
    public string? NotJudgedBecause { get; }

    /// <summary>Where nothing is found by it: a habit speaks only where it is clearly not met.</summary>
    internal DistanceSet Silent => Rule.YieldsWhenForced ? Possible : Sure;

    /// <summary>The rule's id, and what it allows, to what a tape shows, rounded so that nothing more is allowed.</summary>
    public override string ToString() => Rule.Id + ": " + (NotJudgedBecause is { } why ? "not judged, " + why : Said(Sure, Possible, units) + (IsLetOff ? ", let off" : ""));

    internal static string Said(DistanceSet sure, DistanceSet possible, LengthUnits units) =>
        sure == possible ? Printed.Allowed(sure, units).ToString() : "surely " + Printed.Allowed(sure, units) + ", possibly " + Printed.Allowed(possible, units);
}
