using System;

namespace BoxHeights;

/// <summary>The places of a run, fixed ones and candidates together, in order and each once.</summary>
internal sealed class RunPlaces
{
    /// <summary>Twice the longest line still fits a number of 63 bits, and so does the sum of two of its lengths.</summary>
    private const long Longest = 1L << 61;

    /// <summary>The cube of their count still fits too: see the weights of <see cref="RunWindows"/>.</summary>
    private const int Most = 1_000_000;

    private RunPlaces(long[] at, CandidateRank[] rank, bool[] isFixed, long from, long length)
    {
        At = at;
        Rank = rank;
        IsFixed = isFixed;
        From = from;
        Length = length;
    }

    /// <summary>Measured from the run's left end.</summary>
    public long[] At { get; }

    public CandidateRank[] Rank { get; }

    public bool[] IsFixed { get; }

    public int Count => At.Length;

    public long From { get; }

    public long Length { get; }

    public static RunPlaces Of(RunToPlan run)
    {
        long from = run.Line.From.Ticks;
        ulong length = unchecked((ulong)run.Line.To.Ticks - (ulong)from);
        if (length is 0 or > Longest)
        {
            throw new ArgumentException("A run from " + run.Line.From + " to " + run.Line.To + (length == 0 ? " has no length." : " is longer than can be planned."), nameof(run));
        }

        bool isLoop = run.IsLoop;
        int count = run.Fixed.Count + run.Candidates.Count;
        if (count > Most)
        {
            throw new ArgumentException("A run has no more than " + Most + " places; this one has " + count + ".", nameof(run));
        }

        long[] at = new long[count];
        CandidateRank[] rank = new CandidateRank[count];
        int many = 0;
        foreach (Distance place in run.Fixed)
        {
            at[many++] = Within(place);
        }

        // A fixed box is the best of all who share its place.
        const CandidateRank stays = (CandidateRank)(-1);
        for (int i = 0; i < many; i++)
        {
            rank[i] = stays;
        }

        foreach (RunCandidate candidate in run.Candidates)
        {
            if (candidate.Rank is < CandidateRank.Good or > CandidateRank.LastResort)
            {
                throw new ArgumentException("There is no rank " + candidate.Rank + ".", nameof(run));
            }

            at[many] = Within(candidate.At);
            rank[many++] = candidate.Rank;
        }

        if (!IsInOrder(at))
        {
            Array.Sort(at, rank);
            KeepOnce(ref at, ref rank);
        }

        bool[] isFixed = new bool[at.Length];
        for (int i = 0; run.Fixed.Count > 0 && i < at.Length; i++)
        {
            isFixed[i] = rank[i] == stays;
            rank[i] = isFixed[i] ? CandidateRank.Good : rank[i];
        }

        return new(at, rank, isFixed, from, (long)length);

        long Within(Distance place)
        {
            // Left of the run is beyond any length when it is read without a sign.
            ulong along = unchecked((ulong)place.Ticks - (ulong)from);
            return along < length || (along == length && !isLoop) ? (long)along : along == length ? 0 : throw Elsewhere(place, run);
        }
    }

    /// <summary>The places in a range, as indices from the first to before the last.</summary>
    public (int First, int End) In(DistanceRange range) => (FirstAtLeast(range.From.Ticks), FirstAtLeast(range.To.Ticks, orEqual: false));

    /// <summary>A loop cut open at one of its places, which then stands fixed at either end.</summary>
    public RunPlaces CutAt(int place)
    {
        long[] at = new long[Count + 1];
        CandidateRank[] rank = new CandidateRank[Count + 1];
        bool[] isFixed = new bool[Count + 1];
        for (int i = 0; i <= Count; i++)
        {
            int from = (place + i) % Count;
            at[i] = At[from] - At[place] + (i > 0 && from <= place ? Length : 0);
            rank[i] = Rank[from];
            isFixed[i] = IsFixed[from] || from == place;
        }

        return new(at, rank, isFixed, From, Length);
    }

    private int FirstAtLeast(long ticks, bool orEqual = true)
    {
        if (ticks < From)
        {
            return 0;
        }

        ulong away = unchecked((ulong)ticks - (ulong)From);
        int low = 0, high = Count;
        while (low < high)
        {
            int middle = (low + high) >> 1;
            if ((ulong)At[middle] < away || (!orEqual && (ulong)At[middle] == away))
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private static ArgumentException Elsewhere(Distance place, RunToPlan run) =>
        new(FormattableString.Invariant($"{place} isn't on the run from {run.Line.From} to {run.Line.To}."), nameof(run));

    /// <summary>Whether each lies right of the one before.</summary>
    private static bool IsInOrder(long[] at)
    {
        for (int i = 1; i < at.Length; i++)
        {
            if (at[i] <= at[i - 1])
            {
                return false;
            }
        }

        return true;
    }

    private static void KeepOnce(ref long[] at, ref CandidateRank[] rank)
    {
        int count = 0;
        for (int i = 0; i < at.Length; i++)
        {
            if (count > 0 && at[count - 1] == at[i])
            {
                rank[count - 1] = (CandidateRank)Math.Min((int)rank[count - 1], (int)rank[i]);
            }
            else
            {
                at[count] = at[i];
                rank[count++] = rank[i];
            }
        }

        Array.Resize(ref at, count);
        Array.Resize(ref rank, count);
    }
}
