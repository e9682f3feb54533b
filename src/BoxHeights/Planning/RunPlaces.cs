using System;

namespace BoxHeights;

/// <summary>The places of a run, fixed ones and candidates together, in order and each once; those of a loop twice, once for each time round.</summary>
internal sealed class RunPlaces
{
    public RunPlaces(RunToPlan run)
    {
        From = run.Line.From;

        // Twice its length is still a number.
        Length = checked(run.Line.Width.Ticks * 2) / 2;
        Count = run.Fixed.Count + run.Candidates.Count;
        long[] at = new long[Count];
        CandidateRank[] rank = new CandidateRank[Count];
        int many = 0;
        bool isInOrder = true;
        foreach (Distance place in run.Fixed)
        {
            Add(place, CandidateRank.Stays);
        }

        foreach (RunCandidate candidate in run.Candidates)
        {
            Add(candidate.At, candidate.Rank);
        }

        if (!isInOrder)
        {
            Array.Sort(at, rank);
            KeepOnce(at, rank);
        }

        int all = run.IsLoop ? 2 * Count : Count;
        Array.Resize(ref at, all);
        Array.Resize(ref rank, all);
        for (int i = Count; i < all; i++)
        {
            at[i] = at[i - Count] + Length;
            rank[i] = rank[i - Count];
        }

        At = at;
        Rank = rank;

        void Add(Distance place, CandidateRank ranked)
        {
            long along = (place - From).Ticks;
            along = along < 0 || along > Length ? throw new ArgumentException("A place is on its run.", nameof(run)) : run.IsLoop && along == Length ? 0 : along;
            isInOrder &= many == 0 || at[many - 1] < along;
            (at[many], rank[many]) = (along, ranked);
            many++;
        }
    }

    /// <summary>How many there are, each counted once.</summary>
    public int Count { get; private set; }

    /// <summary>Measured from the run's left end.</summary>
    public long[] At { get; }

    public CandidateRank[] Rank { get; }

    public Distance From { get; }

    public long Length { get; }

    /// <summary>The places in a range, as indices from the first to before the last.</summary>
    public (int First, int End) In(DistanceRange range)
    {
        Distance from = Distance.Max(range.From, From), to = Distance.Min(range.To, From + Distance.FromTicks(Length));
        return to < from ? (0, 0) : (NotBefore((from - From).Ticks), NotBefore((to - From).Ticks + 1));

        int NotBefore(long along)
        {
            int found = Array.BinarySearch(At, 0, Count, along);
            return found < 0 ? ~found : found;
        }
    }

    private void KeepOnce(long[] at, CandidateRank[] rank)
    {
        Count = 0;
        for (int i = 0; i < at.Length; i++)
        {
            bool isAnother = Count == 0 || at[Count - 1] < at[i];
            Count += isAnother ? 1 : 0;
            at[Count - 1] = at[i];
            rank[Count - 1] = isAnother || rank[i] < rank[Count - 1] ? rank[i] : rank[Count - 1];
        }
    }
}
