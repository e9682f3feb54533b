namespace BoxHeights.Rules;

/// <summary>The heights that a rule allows, as readings of the stick that sets the box: <see cref="Sure"/> ones and <see cref="Possible"/> ones, and what would have to be known to tell them apart.</summary>
public readonly struct AllowedHeights
{
    internal AllowedHeights(in DistanceSet sure, in DistanceSet possible, MissingFacts needs)
    {
        Sure = sure;
        Possible = possible;
        Needs = needs;
    }

    /// <summary>Every height.</summary>
    public static AllowedHeights Anything => new(DistanceSet.All, DistanceSet.All, MissingFacts.None);

    /// <summary>No height.</summary>
    public static AllowedHeights Nothing => default;

    /// <summary>What is surely and what is possibly allowed.</summary>
    public override string ToString() => Sure == Possible ? Sure.ToString() : "surely " + Sure + ", possibly " + Possible;

    /// <summary>Allowed whatever isn't known.</summary>
    public DistanceSet Sure { get; }

    /// <summary>Allowed for some of what isn't known; holds <see cref="Sure"/>.</summary>
    public DistanceSet Possible { get; }

    /// <summary>What isn't known.</summary>
    public MissingFacts Needs { get; }

    /// <summary>No height is known to be allowed and none to be forbidden.</summary>
    /// <param name="needs">What would have to be known.</param>
    public static AllowedHeights DependsOn(MissingFacts needs) => new(DistanceSet.Empty, DistanceSet.All, needs);

    /// <summary>Heights that both allow.</summary>
    public static AllowedHeights operator &(in AllowedHeights left, in AllowedHeights right) =>
        new(left.Sure & right.Sure, left.Possible & right.Possible, left.Needs | right.Needs);

    /// <summary>Heights that one or the other allows.</summary>
    public static AllowedHeights operator |(in AllowedHeights left, in AllowedHeights right) =>
        new(left.Sure | right.Sure, left.Possible | right.Possible, left.Needs | right.Needs);

    /// <summary>Heights that both allow.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    public static AllowedHeights BitwiseAnd(in AllowedHeights left, in AllowedHeights right) => left & right;

    /// <summary>Heights that one or the other allows.</summary>
    /// <param name="left">One.</param>
    /// <param name="right">The other.</param>
    public static AllowedHeights BitwiseOr(in AllowedHeights left, in AllowedHeights right) => left | right;

    /// <summary>These heights if something holds that isn't known; the sure ones are gone, the possible ones stay.</summary>
    /// <param name="fact">What isn't known.</param>
    public AllowedHeights If(MissingFacts fact) => new(DistanceSet.Empty, Possible, Needs | fact);

    /// <summary>One of two sets applies, and it isn't known which: sure is what both allow, possible what either allows.</summary>
    /// <param name="one">One set.</param>
    /// <param name="other">The other.</param>
    /// <param name="fact">What would tell which applies.</param>
    public static AllowedHeights OneOf(in AllowedHeights one, in AllowedHeights other, MissingFacts fact) =>
        new(one.Sure & other.Sure, one.Possible | other.Possible, one.Needs | other.Needs | fact);
}
