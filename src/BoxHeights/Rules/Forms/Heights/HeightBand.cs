using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A band of heights above a datum: a low line at least so high, a high line at most so high, with other limits where something is reached over.</summary>
[Row(nameof(Datum))]
public sealed partial record HeightBand : PlacementRule
{
    private static readonly Distance Tick = Distance.FromTicks(1);

    /// <summary>What the band is measured from.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">There is no such datum.</exception>
    public Datum Datum { get; init => field = DatumText.Check(value, nameof(Datum)); }

    /// <summary>The line that the lower limit speaks of.</summary>
    public TargetLine LowLine { get; init; } = TargetLine.Center;

    /// <summary>The lower limit, itself allowed; null for none.</summary>
    public Distance? Low { get; init; }

    /// <summary>The line that the upper limit speaks of.</summary>
    public TargetLine HighLine { get; init; } = TargetLine.Center;

    /// <summary>The upper limit, itself allowed; null for none.</summary>
    public Distance? High { get; init; }

    /// <summary>Whether the lower limit itself isn't allowed.</summary>
    public bool LowIsStrict { get; init; }

    /// <summary>Whether the upper limit itself isn't allowed.</summary>
    public bool HighIsStrict { get; init; }

    /// <summary>Whether the band is forbidden instead: the low line at or over its top, or the high line at or under its bottom.</summary>
    public bool IsKeepOut { get; init; }

    /// <summary>The limits where a counter or an appliance is reached over; null where that changes nothing.</summary>
    public ReachOver? Over { get; init; }

    /// <inheritdoc/>
    public override bool ReadsWallParts => Over is not null || Datum == Datum.Countertop;

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Low is null && High is null && Preferred is null)
        {
            yield return "it has neither a Low nor a High, and nothing that it aims at";
        }

        if (IsKeepOut && (LowIsStrict || HighIsStrict))
        {
            yield return "the ends of a band that is kept out of are allowed";
        }

        if (Low > High || (Low == High && Low is not null && (LowIsStrict || HighIsStrict)))
        {
            yield return "its Low, " + Low + ", is above its High, " + High;
        }

        foreach (Items<ReachStep> steps in Over is null ? [] : new[] { Over.Forward, Over.Side })
        {
            for (int i = 1; i < steps.Count; i++)
            {
                if (steps[i].Depth <= steps[i - 1].Depth)
                {
                    yield return "the steps of its reach aren't in the order of their depths";
                }
            }
        }
    }

    /// <inheritdoc/>
    public override string Numbers =>
        (IsKeepOut ? "not: " : "") + (Low is { } low ? LowLine.Words() + (LowIsStrict ? " more than " : " at least ") + low : "")
        + (Low is not null && High is not null ? ", " : "")
        + (High is { } high ? HighLine.Words() + (HighIsStrict ? " less than " : " at most ") + high : "")
        + " " + DatumText.Print(Datum, false)
        + (Over is null ? "" : "; " + Over)
        + (Preferred is { } aim ? "; aims at " + aim : "");

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (Datum == Datum.Nosing && !site.Levels.TryGet(Datum.Nosing, out _))
        {
            // Only beside a flight are there nosings to measure from.
            return;
        }

        if (Datum == Datum.Countertop)
        {
            StateOverCounters(site, statement);
            return;
        }

        AllowedHeights clear = Band(site, High);
        Obstruction[] obstructions = Over is null ? [] : site.Surface.Obstructions;
        bool isBeforePlatforms = Datum is Datum.Grade or Datum.FinishedFloor && site.Platforms.Count > 0;
        if (obstructions.Length == 0 && !isBeforePlatforms)
        {
            statement.Everywhere(clear);
            return;
        }

        List<Slab> parts = statement.Scratch.Of<List<Slab>>();
        parts.Clear();
        foreach (Obstruction obstruction in obstructions)
        {
            bool matters = statement.Matters(obstruction.Left, obstruction.Right);
            parts.Add(new(obstruction.Left.Ticks, obstruction.Right.Ticks, matters ? BehindOrOver(site, obstruction, clear) : default));
        }

        foreach (Platform platform in isBeforePlatforms ? site.Platforms : default)
        {
            // Before a deck or porch a person stands on that, not on the ground.
            parts.Add(new(platform.Left.Ticks, platform.Right.Ticks, platform.Surface is { } surface
                ? Band(site, High, surface.Offset, surface.Datum)
                : AllowedHeights.DependsOn(MissingFacts.Datum)));
        }

        Around(parts, clear, statement);
    }

    /// <summary>Parts of the wall with limits of their own, and what is clear around them, all ends included: a box right at the end of a counter has to suit both.</summary>
    private static void Around(List<Slab> parts, in AllowedHeights clear, PlacementStatement statement)
    {
        parts.Sort(static (a, b) => a.LeftTicks.CompareTo(b.LeftTicks));
        Distance from = Distance.MinValue;
        foreach (Slab part in parts)
        {
            statement.Within(from, part.Left, clear);
            statement.Within(part.Left, part.Right, part.Allowed);
            from = from > part.Right ? from : part.Right;
        }

        statement.Within(from, Distance.MaxValue, clear);
    }

    private AllowedHeights Band(PlacementSite site, Distance? high) => Band(site, high, Distance.Zero, Datum);

    private AllowedHeights Band(PlacementSite site, Distance? high, Distance zero, Datum datum)
    {
        if (IsKeepOut)
        {
            AllowedHeights under = Low is { } bottom ? site.AtMost(HighLine, zero + bottom, datum) : AllowedHeights.Nothing;
            return high is { } top ? under | site.AtLeast(LowLine, zero + top, datum) : under;
        }

        AllowedHeights allowed = Low is { } low ? site.AtLeast(LowLine, zero + low + (LowIsStrict ? Tick : Distance.Zero), datum) : AllowedHeights.Anything;
        return high is { } limit ? allowed & site.AtMost(HighLine, zero + limit - (HighIsStrict ? Tick : Distance.Zero), datum) : allowed;
    }

    /// <summary>A band above a countertop holds over each counter, from that counter's own top.</summary>
    private void StateOverCounters(PlacementSite site, PlacementStatement statement)
    {
        foreach (Counter counter in site.Surface.Wall?.Counters ?? default)
        {
            statement.Within(counter.Left, counter.Right, counter.Top is { } top && top.Datum != Datum.Countertop
                ? Band(site, High, top.Offset, top.Datum)
                : AllowedHeights.DependsOn(MissingFacts.ObstructionHeight));
        }
    }

    /// <summary>What lies wholly beneath its top isn't reached over; where any part lies above it, the approaches that there can be have to suit.</summary>
    private AllowedHeights BehindOrOver(PlacementSite site, Obstruction obstruction, in AllowedHeights clear)
    {
        if (obstruction.Top is not { } top || top.Datum == Datum.Countertop)
        {
            return AllowedHeights.OneOf(clear, OverWith(site, obstruction, null), MissingFacts.ObstructionHeight);
        }

        // The top bounds the box in its own terms: taken above the finished floor first, an unchosen floor would count twice.
        AllowedHeights over = OverWith(site, obstruction, site.TryHeightOf(top, Datum, out DistanceRange height) ? height : null);
        AllowedHeights below = site.AtMost(TargetLine.HighestOperable, top.Offset, top.Datum);
        AllowedHeights above = site.AtLeast(TargetLine.HighestOperable, top.Offset + Distance.FromTicks(1), top.Datum);
        return (clear & below) | (over & above) | (clear & over);
    }

    private AllowedHeights OverWith(PlacementSite site, Obstruction obstruction, DistanceRange? height)
    {
        AllowedHeights forward = Stepped(site, Over!.Forward, obstruction.Depth);
        Verdict knees = obstruction.KneeSpace is not { } knee ? Verdict.Unknown
            : obstruction.Depth is not { } deep ? (knee == Distance.Zero ? Verdict.Fails : Verdict.Unknown)
            : knee >= deep ? Verdict.Passes : Verdict.Fails;
        Distance most = obstruction.IsLaundryMachine ? Over.LaundryTopAtMost : Over.SideTopAtMost;
        AllowedHeights side = Stepped(site, Over.Side, obstruction.Depth);
        side = height is not { } top ? (obstruction.Depth <= Over.ShallowDepth ? side : side.If(MissingFacts.ObstructionHeight))
            : top.To <= most || obstruction.Depth <= Over.ShallowDepth ? side
            : top.From <= most ? side.If(MissingFacts.ObstructionHeight | MissingFacts.FloorFinish)
            : obstruction.Depth is null && Over.ShallowDepth is not null ? side.If(MissingFacts.ObstructionDepth)
            : AllowedHeights.Nothing;

        if (site.Box.Approach is { } stated)
        {
            AllowedHeights allowed = (stated & Approach.Side) != 0 ? side : AllowedHeights.Nothing;
            return (stated & Approach.Forward) == 0 ? allowed
                : knees == Verdict.Passes ? allowed | forward
                : knees == Verdict.Unknown ? allowed | forward.If(MissingFacts.KneeSpace)
                : allowed;
        }

        return knees switch
        {
            Verdict.Fails => side,
            Verdict.Passes => AllowedHeights.OneOf(forward, side, MissingFacts.Approach),
            _ => AllowedHeights.OneOf(forward, side, MissingFacts.Approach | MissingFacts.KneeSpace),
        };
    }

    /// <summary>The band under the limit that goes with a depth; nothing beyond the last step.</summary>
    private AllowedHeights Stepped(PlacementSite site, Items<ReachStep> steps, Distance? depth)
    {
        if (depth is not { } deep)
        {
            AllowedHeights best = AllowedHeights.Nothing;
            foreach (ReachStep step in steps)
            {
                best |= Band(site, step.High);
            }

            return best.If(MissingFacts.ObstructionDepth);
        }

        foreach (ReachStep step in steps)
        {
            if (deep <= step.Depth)
            {
                return Band(site, step.High);
            }
        }

        return AllowedHeights.Nothing;
    }
}
