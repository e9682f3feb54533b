using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A stretch along a wall and the heights that a rule allows there.</summary>
internal readonly struct Slab(long left, long right, in AllowedHeights allowed, bool restsOnAssumedStuds = false, object? about = null)
{
    /// <summary>The stretch's left end, from the wall's left end.</summary>
    public Distance Left => Distance.FromTicks(LeftTicks);

    /// <summary>The stretch's right end, from the wall's left end.</summary>
    public Distance Right => Distance.FromTicks(RightTicks);

    /// <summary>The heights allowed over it.</summary>
    public AllowedHeights Allowed { get; } = allowed;

    internal long LeftTicks { get; } = left;

    internal long RightTicks { get; } = right;

    /// <summary>Whether it is so only if studs stand where they are assumed to, which a finding then says.</summary>
    internal bool RestsOnAssumedStuds { get; } = restsOnAssumedStuds;

    /// <summary>The thing that it is stated of: an opening, a finish, a door; null where it is about none.</summary>
    internal object? About { get; } = about;
}

/// <summary>Takes what a placement rule states.</summary>
/// <remarks>
/// Slabs may overlap: where they do, a box has to be allowed by all of them. Where there is none, every height is allowed.
/// The engine may hand a rule one that is about a single place, of which the rule isn't told: it compares what is stated there at once and keeps nothing.
/// </remarks>
public sealed class PlacementStatement
{
    private readonly List<Slab> slabs = [];
    private bool isAtAPlace;
    private Place place;

    /// <summary>Whether all that was stated surely allows the place that this is about.</summary>
    internal bool Passes { get; private set; }

    /// <summary>Why the rule couldn't be judged at this site; null when it was.</summary>
    public Wording? NotJudgedBecause { get; private set; }

    /// <summary>The thing that is spoken of from now on; null for none. A finding names it.</summary>
    internal object? About { get; set; }

    /// <summary>These heights are allowed wherever the box is along the wall.</summary>
    /// <param name="allowed">The heights.</param>
    public void Everywhere(in AllowedHeights allowed) => Take(long.MinValue, long.MaxValue, allowed, false);

    /// <summary>These heights are allowed over a stretch of the wall, both its ends included.</summary>
    /// <param name="left">Its left end; <see cref="Distance.MinValue"/> for all that lies left.</param>
    /// <param name="right">Its right end; <see cref="Distance.MaxValue"/> for all that lies right.</param>
    /// <param name="allowed">The heights.</param>
    public void Within(Distance left, Distance right, in AllowedHeights allowed) => Within(left, right, allowed, false);

    /// <summary>These heights are allowed over a stretch, perhaps only if studs stand where they are assumed to.</summary>
    internal void Within(Distance left, Distance right, in AllowedHeights allowed, bool restsOnAssumedStuds)
    {
        if (left <= right)
        {
            Take(left.Ticks, right.Ticks, allowed, restsOnAssumedStuds);
        }
    }

    /// <summary>The rule can't be judged here, because something that it needs isn't described at all. Of a rule that weighs as a violation that is a finding.</summary>
    /// <param name="reason">What isn't described, in one phrase.</param>
    public void NotJudged(Wording reason) => NotJudgedBecause = reason;

    /// <summary>Whether a stretch bears on what is asked: a form may pass over what is stated for another. It may not state anything else for that.</summary>
    internal bool Matters(Distance left, Distance right) => !isAtAPlace || (left.Ticks <= place.Right && right.Ticks >= place.Left);

    /// <summary>What forms work with.</summary>
    internal Scratch Scratch { get; } = new();

    internal Slab[] Take() => slabs.ToArray();

    /// <summary>Begins anew, about a single place.</summary>
    internal void AskAt(in Place asked)
    {
        Clear();
        isAtAPlace = true;
        place = asked;
        Passes = true;
    }

    private void Take(long left, long right, in AllowedHeights allowed, bool restsOnAssumedStuds)
    {
        if (!isAtAPlace)
        {
            slabs.Add(new(left, right, allowed, restsOnAssumedStuds, About));
        }
        else if (left <= place.Right && right >= place.Left)
        {
            Passes &= allowed.Sure.ContainsRange(place.Heights);
        }
    }

    /// <summary>Begins anew, about the whole surface.</summary>
    internal void Clear()
    {
        isAtAPlace = false;
        slabs.Clear();
        NotJudgedBecause = null;
        About = null;
    }
}
