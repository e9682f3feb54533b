namespace BoxHeights.Rules;

/// <summary>How much room a remedy or a plan gives a box beyond what the other rows of its set ask of its place. Without such a row those decide alone.</summary>
[Row]
public sealed partial record RoomForBoxes : HabitRule
{
    /// <summary>No custom: what the set's other rows allow decides.</summary>
    internal static RoomForBoxes None { get; } = new("none", "anywhere", Citation.CommonPractice);

    /// <summary>From an opening, from what covers the wall and from another box to the center of the box.</summary>
    public Distance Beside { get; init; }

    /// <summary>The same where there is no other place.</summary>
    public Distance InNeed { get; init; }

    /// <summary>From an end of its wall to the center of the box. Along a run a plan takes a place that is nearer to a corner only in need.</summary>
    public Distance FromEnds { get; init; }

    /// <summary>The depth that a wall's cavity has to have for it.</summary>
    public Distance Behind { get; init; }

    /// <summary>From the first or last nosing of a stair to its switch, and from the ends of a wall where its switch goes elsewhere.</summary>
    public Distance AtStairs { get; init; }

    /// <summary>How far along its wall from the place that was found for it a planned box may go instead; null for anywhere.</summary>
    public Distance? Aside { get; init; }

    /// <summary>Which part of a run's reach a plan keeps in hand, so that studs can be met: 6 for a sixth; null for none.</summary>
    public int? PartOfReach { get; init => field = Guard.Count(value, nameof(PartOfReach)); }

    /// <summary>The most of a run's reach that a plan keeps in hand; null for always that part.</summary>
    public Distance? OfReach { get; init; }

    /// <summary>How much further from a bed or the like than the nearest that will do.</summary>
    public Distance BesideThings { get; init; }

    /// <summary>How much wall is left between the plates of two boxes that are planned, side by side or over one another.</summary>
    public Distance BetweenPlates { get; init; }

    /// <summary>A box that goes no further aside than this stays where it was meant: to the next bay.</summary>
    public Distance NextBay { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Said(("off openings, coverings and boxes", Beside), ("off them in need", InNeed), ("off ends of walls", FromEnds), ("off nosings", AtStairs), ("deep cavities", Behind),
        ("of where it was meant", Aside), ("of a reach in hand at most", OfReach), ("further from things than it has to be", BesideThings), ("between plates", BetweenPlates), ("to the next bay", NextBay))
        + (PartOfReach is { } part ? ", 1/" + part + " of a reach in hand" : "");
}
