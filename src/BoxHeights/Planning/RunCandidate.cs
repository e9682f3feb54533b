namespace BoxHeights;

/// <summary>A place along a run where a box can be put.</summary>
/// <param name="At">Where the box's center would be, in the run's own coordinate.</param>
/// <param name="Rank">How willingly the place is taken.</param>
public readonly record struct RunCandidate(Distance At, CandidateRank Rank = CandidateRank.Good);
