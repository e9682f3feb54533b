using System;

namespace BoxHeights.Rules;

/// <summary>A rule about one quantity of a box, such as its fill: the quantity lies within a set. Its remedy is another box, ring or projection, never a move.</summary>
public abstract record LimitRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected LimitRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>States the quantity and what is allowed.</summary>
    /// <param name="site">The box and its surroundings, without its position.</param>
    /// <param name="statement">Takes both.</param>
    public abstract void State(PlacementSite site, LimitStatement statement);

    /// <summary>A box of the same purpose that would meet the rule.</summary>
    /// <param name="box">The box that doesn't.</param>
    /// <param name="catalog">What boxes there are.</param>
    /// <returns>Null when the catalog has none.</returns>
    public abstract DeviceBox? Mend(BoxTraits box, PartsCatalog catalog);

    /// <summary>What to do where no standard box would meet the rule, in one phrase.</summary>
    public virtual string Otherwise => "no standard box of this kind is large enough: take a wider or deeper box, or fewer cables";
}

/// <summary>Takes what a limit rule states.</summary>
public sealed class LimitStatement
{
    internal bool IsSilent { get; private set; } = true;

    internal Quantity Measured { get; private set; }

    internal QuantitySet Allowed { get; private set; }

    internal Facts Needs { get; private set; }

    internal Func<string> Because { get; private set; } = () => "";

    /// <summary>The quantity and the set it has to lie in.</summary>
    /// <param name="measured">The quantity.</param>
    /// <param name="allowed">The set.</param>
    /// <param name="because">Says how the quantity comes about, in one line; asked only when a finding is read.</param>
    public void Judge(Quantity measured, QuantitySet allowed, Func<string> because)
    {
        IsSilent = false;
        Measured = measured;
        Allowed = allowed;
        Because = because;
    }

    /// <summary>The quantity is known, but not the set it has to lie in.</summary>
    /// <param name="measured">The quantity.</param>
    /// <param name="needs">What would have to be known.</param>
    /// <param name="because">Says how the quantity comes about, in one line; asked only when a finding is read.</param>
    public void DependsOn(Quantity measured, Facts needs, Func<string> because)
    {
        IsSilent = false;
        Measured = measured;
        Needs = needs;
        Because = because;
    }

    internal Verdict Verdict => Needs != Facts.None ? Verdict.Unknown : Allowed.Contains(Measured) ? Verdict.Passes : Verdict.Fails;

    internal Quantity Margin => Needs != Facts.None
        ? new(Measured.Kind, 0)
        : Allowed.Margin(Measured);
}
