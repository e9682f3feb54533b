using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Takes what a provision rule states about a group.</summary>
public sealed class ProvisionStatement
{
    internal static readonly Wording NoPlace = $"where it is along its wall isn't stated";

    internal readonly struct Answer(int index, Verdict verdict, Distance measured, DistanceSet allowed, MissingFacts needs, Func<Wording>? because, Items<string> involves)
    {
        public int Index { get; } = index;

        public Verdict Verdict { get; } = verdict;

        public Distance Measured { get; } = measured;

        public DistanceSet Allowed { get; } = allowed;

        public MissingFacts Needs { get; } = needs;

        public Func<Wording>? Because { get; } = because;

        public Items<string> Involves { get; } = involves;
    }

    private readonly List<Answer> answers = [];
    private readonly List<(int Index, Wording Reason)> open = [];

    /// <summary>The boxes that couldn't be judged, and why.</summary>
    internal IReadOnlyList<(int Index, Wording Reason)> Open => open;

    internal int Count => answers.Count;

    internal Answer this[int i] => answers[i];

    internal DistanceSet Keep { get; private set; } = DistanceSet.All;

    /// <summary>A box doesn't meet the rule, or may not.</summary>
    /// <param name="index">The box in its group.</param>
    /// <param name="verdict">Fails or unknown.</param>
    /// <param name="measured">Where its center is, above the storey's subfloor.</param>
    /// <param name="allowed">Where its center may be, above the storey's subfloor.</param>
    /// <param name="needs">What isn't known.</param>
    /// <param name="because">Says what of this box alone makes it so, in a few words; asked only when the finding is read.</param>
    /// <param name="involves">The ids of the other boxes that it is about.</param>
    public void Finds(int index, Verdict verdict, Distance measured, in DistanceSet allowed, MissingFacts needs = MissingFacts.None, Func<Wording>? because = null, Items<string> involves = default)
    {
        if (verdict == Verdict.Passes)
        {
            throw new ArgumentException("A box that passes is no finding.", nameof(verdict));
        }

        answers.Add(new(index, verdict, measured, allowed, needs, because, involves));
    }

    /// <summary>A box can't be held to the rule, because something that it needs isn't described.</summary>
    /// <param name="index">The box in its group.</param>
    /// <param name="reason">What isn't described, in one phrase.</param>
    public void NotJudged(int index, Wording reason) => open.Add((index, reason));

    /// <summary>The rule isn't about this group after all: it is left out of the report.</summary>
    public void NotAboutThis() => IsSilent = true;

    /// <summary>Whether the rule isn't about the group.</summary>
    internal bool IsSilent { get; private set; }

    /// <summary>Takes down the boxes of which it isn't known where they are along their wall.</summary>
    internal void LeavesUnplaced(ProvisionGroup group)
    {
        for (int i = 0; group.Count > 1 && i < group.Count; i++)
        {
            if (!group.TryAlong(i, out _, out _))
            {
                NotJudged(i, NoPlace);
            }
        }
    }

    /// <summary>Where the center of any box of the group may go without making the answer worse, above the storey's subfloor.</summary>
    /// <param name="centers">The heights.</param>
    public void KeepWithin(in DistanceSet centers) => Keep = centers;

    /// <summary>Whether something is said of a box.</summary>
    internal bool Speaks(int index) => answers.Exists(answer => answer.Index == index);

    internal void Clear()
    {
        answers.Clear();
        open.Clear();
        IsSilent = false;
        Keep = DistanceSet.All;
    }
}
