namespace BoxHeights;

/// <summary>A run that shall get boxes: a line along walls or behind a counter, unfolded into one coordinate, in which nothing interrupts it.</summary>
public sealed record RunToPlan
{
    /// <summary>Describes a run by what it must have.</summary>
    /// <param name="line">From where to where it reaches, in a coordinate of its own.</param>
    public RunToPlan(DistanceRange line) => Line = line;

    /// <summary>From where to where it reaches, in a coordinate of its own that all other members share.</summary>
    public DistanceRange Line { get; init; }

    /// <summary>Whether its end meets its start, as round a room without a door: then there is no gap at an end, and a box at its right end is one at its left.</summary>
    public bool IsLoop { get; init; }

    /// <summary>The wall faces that it goes along, from left to right. They name what is uncovered, and long ones get a box each.</summary>
    public Items<RunFace> Faces { get; init; }

    /// <summary>Where boxes can be put, in any order.</summary>
    public Items<RunCandidate> Candidates { get; init; }

    /// <summary>Where boxes that count are and stay: existing or pinned ones.</summary>
    public Items<Distance> Fixed { get; init; }

    /// <summary>Where the user wants a box: one somewhere in each of these.</summary>
    public Items<DistanceRange> Wishes { get; init; }

    /// <summary>How far a box may end up from where it is planned, as when studs are only assumed; zero or more. The plan leaves as much, if it can.</summary>
    public Distance Drift { get; init => field = Valid.NotNegative(value, nameof(Drift)); }

    /// <summary>The same with another <see cref="Line"/>.</summary>
    /// <param name="line">From where to where it reaches.</param>
    public RunToPlan WithLine(DistanceRange line) => this with { Line = line };

    /// <summary>The same with another <see cref="IsLoop"/>.</summary>
    /// <param name="isLoop">Whether its end meets its start.</param>
    public RunToPlan WithIsLoop(bool isLoop) => this with { IsLoop = isLoop };

    /// <summary>The same with other <see cref="Faces"/>.</summary>
    /// <param name="faces">The wall faces that it goes along.</param>
    public RunToPlan WithFaces(Items<RunFace> faces) => this with { Faces = faces };

    /// <summary>The same with other <see cref="Candidates"/>.</summary>
    /// <param name="candidates">Where boxes can be put.</param>
    public RunToPlan WithCandidates(Items<RunCandidate> candidates) => this with { Candidates = candidates };

    /// <summary>The same with other <see cref="Fixed"/> boxes.</summary>
    /// <param name="fixed">Where boxes that count are and stay.</param>
    public RunToPlan WithFixed(Items<Distance> @fixed) => this with { Fixed = @fixed };

    /// <summary>The same with other <see cref="Wishes"/>.</summary>
    /// <param name="wishes">Where the user wants a box.</param>
    public RunToPlan WithWishes(Items<DistanceRange> wishes) => this with { Wishes = wishes };

    /// <summary>The same with another <see cref="Drift"/>.</summary>
    /// <param name="drift">How far a box may end up from where it is planned.</param>
    public RunToPlan WithDrift(Distance drift) => this with { Drift = drift };
}
