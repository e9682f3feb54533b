using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Where something that a limit rule states counts: on a stretch of the surface, except at the heights at which the box is clear of what lies there.</summary>
/// <remarks><c>default</c> is everywhere.</remarks>
public readonly struct LimitZone
{
    private readonly Slab[]? clear;
    private readonly bool isOutside;

    /// <summary>A part of a wall.</summary>
    /// <param name="left">The places of the box's center along the wall begin here; <see cref="Distance.MinValue"/> for all that lies left.</param>
    /// <param name="right">They end here, both ends included; <see cref="Distance.MaxValue"/> for all that lies right.</param>
    /// <param name="clear">The heights at which the box is clear of it, as <see cref="PlacementSite"/> gives them.</param>
    public LimitZone(Distance left, Distance right, in AllowedHeights clear) => this.clear = [new Slab(left.Ticks, right.Ticks, clear)];

    private LimitZone(Slab[] clear)
    {
        this.clear = clear;
        isOutside = true;
    }

    /// <summary>What is clear of several parts of a wall.</summary>
    internal static LimitZone ClearOf(IEnumerable<LimitZone> parts)
    {
        List<Slab> slabs = [];
        foreach (LimitZone part in parts)
        {
            slabs.AddRange(part.clear ?? []);
        }

        return new([.. slabs]);
    }

    /// <summary>Whether it is a part of the surface: then it tells where the box is along it.</summary>
    internal bool IsAPart => clear is not null;

    /// <summary>Whether a box is in the zone; null where that isn't known.</summary>
    internal bool? Holds(in Place place) => clear is null ? true : SlabJudge.Verdict(clear, place) switch
    {
        Verdict.Passes => isOutside,
        Verdict.Fails => !isOutside,
        _ => null,
    };

    /// <summary>The heights at a place along the wall at which a box is surely, and those at which it is possibly, clear of the zone.</summary>
    internal AllowedHeights ClearAt(long along)
    {
        if (clear is null)
        {
            return AllowedHeights.Nothing;
        }

        AllowedHeights parts = SlabJudge.At(clear, along);
        return isOutside ? new(parts.Possible.Complement(), parts.Sure.Complement(), parts.Needs) : parts;
    }

    /// <summary>The stretches that it is on, or that it is clear of; none where it is everywhere.</summary>
    internal Slab[] Stretches => clear ?? [];

    /// <summary>What would tell whether a box is in the zone.</summary>
    internal MissingFacts NeedsAt(in Place place) => clear is null ? MissingFacts.None : SlabJudge.Judge(clear, place).Needs;
}

/// <summary>Takes what a limit rule states.</summary>
/// <remarks>Where zones overlap, the worst of what is stated for them counts.</remarks>
public sealed class LimitStatement
{
    private readonly List<LimitCase> cases = [];
    private bool keepsNothing;

    /// <summary>Whether all that was stated passes, wherever the box is.</summary>
    internal bool Passes { get; private set; }

    /// <summary>Why the rule couldn't be judged at this site; null when it was.</summary>
    public Wording? NotJudgedBecause { get; private set; }

    /// <summary>Said by those that read the whole wall.</summary>
    internal static Wording WallAtFault { get; } = $"a part of the wall is at fault";

    /// <summary>The quantity and the set it has to lie in.</summary>
    /// <param name="measured">The quantity.</param>
    /// <param name="allowed">The set.</param>
    /// <param name="because">Says how the quantity comes about, in one line; asked only when a finding is read.</param>
    /// <param name="zone">Where this counts.</param>
    public void Judge(Quantity measured, QuantitySet allowed, Func<Wording> because, LimitZone zone = default) =>
        Take(measured, allowed, MissingFacts.None, because, zone);

    /// <summary>The quantity, or the set it has to lie in, isn't known well enough.</summary>
    /// <param name="measured">The quantity, as far as it is known.</param>
    /// <param name="needs">What would have to be known.</param>
    /// <param name="because">Says how the quantity comes about, in one line; asked only when a finding is read.</param>
    /// <param name="zone">Where this counts.</param>
    public void DependsOn(Quantity measured, MissingFacts needs, Func<Wording> because, LimitZone zone = default) =>
        Take(measured, default, needs, because, zone);

    /// <summary>The rule says nothing here because something that it needs isn't described. The report lists it as not judged, without a finding: such facts may be left out.</summary>
    /// <param name="reason">What isn't described, in one phrase.</param>
    public void NotJudged(Wording reason) => NotJudgedBecause = reason;

    /// <summary>What forms work with.</summary>
    internal Scratch Scratch { get; } = new();

    /// <summary>As the one with a line, with what that is made from: most boxes pass, and then it isn't made at all.</summary>
    internal void Judge<T>(Quantity measured, QuantitySet allowed, T from, Func<T, Wording> because, LimitZone zone = default) =>
        Take(measured, allowed, MissingFacts.None, keepsNothing ? null : Line(from, because), zone);

    /// <summary>As the one with a line, with what that is made from.</summary>
    internal void DependsOn<T>(Quantity measured, MissingFacts needs, T from, Func<T, Wording> because, LimitZone zone = default) =>
        Take(measured, default, needs, keepsNothing ? null : Line(from, because), zone);

    internal LimitCase[] Take() => cases.ToArray();

    /// <summary>Begins anew, and keeps what is stated.</summary>
    internal void Clear()
    {
        cases.Clear();
        keepsNothing = false;
        NotJudgedBecause = null;
    }

    /// <summary>Begins anew, and keeps nothing but whether all passes.</summary>
    internal void Ask()
    {
        Clear();
        keepsNothing = true;
        Passes = true;
    }

    private static Func<Wording> Line<T>(T from, Func<T, Wording> because) => () => because(from);

    private void Take(Quantity measured, QuantitySet allowed, MissingFacts needs, Func<Wording>? because, LimitZone zone)
    {
        if (keepsNothing)
        {
            Passes &= LimitCase.VerdictOf(measured, allowed, needs) == Verdict.Passes;
        }
        else
        {
            cases.Add(new(zone, measured, allowed, needs, because!));
        }
    }
}

/// <summary>One thing that a limit rule states.</summary>
internal sealed class LimitCase(LimitZone zone, Quantity measured, QuantitySet allowed, MissingFacts needs, Func<Wording> because)
{
    public LimitZone Zone { get; } = zone;

    public Quantity Measured { get; } = measured;

    public QuantitySet Allowed { get; } = allowed;

    public MissingFacts Needs { get; } = needs;

    public Func<Wording> Because { get; } = because;

    /// <summary>What it says of a box that is in the zone.</summary>
    public Verdict Verdict { get; } = VerdictOf(measured, allowed, needs);

    /// <summary>What such a case says.</summary>
    public static Verdict VerdictOf(Quantity measured, QuantitySet allowed, MissingFacts needs) =>
        needs != MissingFacts.None ? Verdict.Unknown : allowed.Contains(measured) ? Verdict.Passes : Verdict.Fails;

    /// <summary>How far inside what is allowed; zero where it only depends on something.</summary>
    public Quantity Margin => Needs != MissingFacts.None ? new(Measured.Kind, 0) : Allowed.Margin(Measured);
}
