namespace BoxHeights.Rules;

/// <summary>What of a run isn't reached.</summary>
/// <param name="Stretches">The stretches, along their walls.</param>
/// <param name="Worst">The point that is furthest from every outlet; null where there is none to be far from.</param>
internal sealed record RunGap(Items<WallStretch> Stretches, WorstPoint? Worst);
