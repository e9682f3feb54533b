namespace BoxHeights;

/// <summary>How willingly a place is taken.</summary>
public enum CandidateRank
{
    /// <summary>A good place: a stud face in plain sight.</summary>
    Good = 0,

    /// <summary>As good, but for some work: a block has to be put in. Avoided among plans with as many boxes.</summary>
    Fair = 1,

    /// <summary>Only where nothing better covers, even if that takes a box more: behind a bed.</summary>
    LastResort = 2,
}
