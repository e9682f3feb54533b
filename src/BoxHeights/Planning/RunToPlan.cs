namespace BoxHeights;

/// <summary>How willingly a place is taken.</summary>
internal enum CandidateRank
{
    /// <summary>A box is there and stays.</summary>
    Stays = -1,

    /// <summary>A good place: a stud face in plain sight.</summary>
    Good = 0,

    /// <summary>As good, but for some work: a block has to be put in. Avoided among plans with as many boxes.</summary>
    Fair,

    /// <summary>Only where nothing better covers, even if that takes a box more: behind a bed.</summary>
    LastResort,
}

/// <summary>A place along a run where a box can be put.</summary>
/// <param name="At">Where the box's center would be, in the run's own coordinate.</param>
/// <param name="Rank">How willingly the place is taken.</param>
internal readonly record struct RunCandidate(Distance At, CandidateRank Rank = CandidateRank.Good);

/// <summary>A run that shall get boxes: a line along walls or behind a counter, unfolded into one coordinate, in which nothing interrupts it.</summary>
/// <param name="Line">From where to where it reaches, in a coordinate that all other members share.</param>
internal sealed record RunToPlan(DistanceRange Line)
{
    /// <summary>Whether its end meets its start, as round a room without a door: then there is no gap at an end, and a box at its right end is one at its left.</summary>
    public bool IsLoop { get; init; }

    /// <summary>The stretches of wall face that it goes along, of which long ones get a box each.</summary>
    public Items<DistanceRange> Faces { get; init; }

    /// <summary>Where boxes can be put, in any order.</summary>
    public Items<RunCandidate> Candidates { get; init; }

    /// <summary>Where boxes that count are and stay.</summary>
    public Items<Distance> Fixed { get; init; }

    /// <summary>Where a box is wanted: one somewhere in each of these.</summary>
    public Items<DistanceRange> Wishes { get; init; }

    /// <summary>Where a place is when the run is seen from its other end.</summary>
    public Distance Mirrored(Distance at) => Line.From + Line.To - at;

    /// <summary>The run seen from its other end.</summary>
    public RunToPlan Mirrored() => this with
    {
        Faces = Faces.Select(Mirrored),
        Candidates = Candidates.Select(one => one with { At = Mirrored(one.At) }),
        Fixed = Fixed.Select(Mirrored),
        Wishes = Wishes.Select(Mirrored),
    };

    private DistanceRange Mirrored(DistanceRange along) => new(Mirrored(along.To), Mirrored(along.From));
}
