using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What one limit rule states at a site, under each of its readings.</summary>
internal sealed class StatedLimit
{
    private readonly PlacementSite site;
    private readonly LimitCase[] cases;

    public StatedLimit(LimitRule rule, PlacementSite site, LimitCase[] cases)
    {
        Rule = rule;
        this.site = site;
        this.cases = cases;
        foreach (LimitCase one in cases)
        {
            MayFail |= one.Verdict != Verdict.Passes;
        }
    }

    public LimitRule Rule { get; }

    /// <summary>Whether there is a place at which it doesn't pass.</summary>
    public bool MayFail { get; }

    /// <summary>What it says of a box at a place: the worst of what counts there.</summary>
    public LimitJudgement At(in Place place) => Worst(cases, place);

    /// <summary>The heights at a place along the wall at which it passes.</summary>
    public AllowedHeights AllowedAt(long along)
    {
        AllowedHeights all = AllowedHeights.Anything;
        foreach (LimitCase one in cases)
        {
            if (one.Verdict != Verdict.Passes)
            {
                AllowedHeights clear = one.Zone.ClearAt(along);
                all &= one.Verdict == Verdict.Fails ? clear : new(clear.Sure, DistanceSet.All, clear.Needs | one.Needs);
            }
        }

        return all;
    }

    /// <summary>Adds the ends of the stretches over which it doesn't say the same.</summary>
    public void AddEdgesTo(List<long> edges)
    {
        foreach (LimitCase one in cases)
        {
            foreach (Slab stretch in one.Zone.Stretches)
            {
                edges.Add(stretch.LeftTicks);
                edges.Add(stretch.RightTicks);
            }
        }
    }

    /// <summary>The readings of the rule that would say otherwise of a place; worked out as they are asked for.</summary>
    public Items<string> DisputedBy(in Place place)
    {
        List<string> disputed = [];
        foreach (Reading reading in Rule.Readings)
        {
            if (reading.Rule is LimitRule other)
            {
                LimitStatement statement = new();
                other.State(site, statement);
                LimitJudgement said = Worst(statement.Take(), place);
                if (!said.IsSilent && said.Verdict != At(place).Verdict)
                {
                    disputed.Add(reading.Id);
                }
            }
        }

        return new(disputed);
    }

    private static LimitJudgement Worst(LimitCase[] cases, in Place place)
    {
        LimitJudgement worst = default;
        for (int i = 0; i < cases.Length; i++)
        {
            if (cases[i].Zone.Holds(place) is var holds && holds == false)
            {
                continue;
            }

            LimitJudgement one = holds == true || cases[i].Verdict == Verdict.Passes
                ? new(cases[i].Verdict, cases[i], cases[i].Needs)
                : new(Verdict.Unknown, cases[i], cases[i].Needs | cases[i].Zone.NeedsAt(place));
            worst = one.IsWorseThan(worst) ? one : worst;
        }

        return worst;
    }
}

/// <summary>What a limit rule says of a box where it is. <c>default</c> says nothing.</summary>
internal readonly struct LimitJudgement(Verdict verdict, LimitCase? of, MissingFacts needs)
{
    public Verdict Verdict { get; } = verdict;

    /// <summary>What decided it.</summary>
    public LimitCase? Of { get; } = of;

    public MissingFacts Needs { get; } = needs;

    public bool IsSilent => Of is null;

    public bool Is(in LimitJudgement other) => Verdict == other.Verdict && ReferenceEquals(Of, other.Of) && Needs == other.Needs;

    public Quantity Margin => Of is null ? default : Verdict == Verdict.Unknown ? new(Of.Measured.Kind, 0) : Of.Margin;

    public bool IsWorseThan(in LimitJudgement other) =>
        other.IsSilent || Verdict > other.Verdict || (Verdict == other.Verdict && Of!.Margin.Raw < other.Of!.Margin.Raw);

    /// <summary>What is left of it where another edge may be meant, of which something else is said.</summary>
    public LimitJudgement Or(in LimitJudgement other)
    {
        if (other.Verdict == Verdict)
        {
            return this;
        }

        LimitJudgement worse = IsSilent || (!other.IsSilent && other.IsWorseThan(this)) ? other : this;
        return new(Verdict.Unknown, worse.Of, worse.Needs | MissingFacts.EdgeMeant);
    }
}
