namespace BoxHeights;

/// <summary>What a country's houses measure where a description doesn't say: its lumber, sheets, doors, counters and floors.</summary>
/// <remarks>
/// Part of a <see cref="PartsCatalog"/>, whose own ones hold for every dwelling that is judged by it; whatever the description states goes before them. The first are taken
/// for true. What may be otherwise from house to house is a range or a most: what depends on it is unknown, never met or failed.
/// </remarks>
[Described]
public sealed partial record UsualMeasures
{
    /// <summary>What is common in the United States. Common practice, no source.</summary>
    public static UsualMeasures Generic { get; } = new();

    /// <summary>The thickness of dressed framing lumber: of studs of which none is stated, of jacks, plates and the blocks that a stud is packed out with. 1-1/2 in, a 2-by, unless stated; more than zero.</summary>
    public Distance Lumber { get; init => field = Guard.Positive(value, nameof(Lumber)); } = Distance.FromInches(1, 1, 2);

    /// <summary>What a piece of that lumber is called before "block" and the like; "2x" unless stated.</summary>
    public string LumberName { get; init => field = Guard.Text(value, nameof(LumberName)); } = "2x";

    /// <summary>How near to its full width a gap has to be for a block to fill it; 1/4 in unless stated. Not negative.</summary>
    public Distance BlockFit { get; init => field = Guard.NotNegative(value, nameof(BlockFit)); } = Distance.FromInches(0, 1, 4);

    /// <summary>The ways in which board is commonly hung across a wall: sheets of 48 or 54 in unless stated, and where two don't reach, a strip at the bottom, in the middle or at the top.</summary>
    public Items<BoardCourses> Courses { get; init; } = new BoardCourses[]
    {
        // A sheet that is ripped at the floor leaves the seams above it where they are, so up to two full sheets need no more than their first seam.
        Sheets(null, 97, 48, 48),
        Sheets(97, 109, 54, 54), Sheets(97, 109, 48, 48, 12), Sheets(97, 109, 48, 12, 48), Sheets(97, 109, 12, 48, 48),
        Sheets(109, null, 48, 48, 24), Sheets(109, null, 48, 24, 48), Sheets(109, null, 54, 54, 12), Sheets(109, null, 54, 12, 54), Sheets(109, null, 54, 48, 18),
    };

    /// <summary>As far as board ends from the floor or the ceiling without a strip between: it still has to reach the plate. 1 in unless stated; not negative.</summary>
    public Distance BoardGap { get; init => field = Guard.NotNegative(value, nameof(BoardGap)); } = Distance.FromInches(1, 0, 1);

    /// <summary>How far inside its rough opening a jamb's face is, where no leaf tells: 1 in unless stated. Not negative.</summary>
    public Distance JambInset { get; init => field = Guard.NotNegative(value, nameof(JambInset)); } = Distance.FromInches(1, 0, 1);

    /// <summary>The top of the pocket that a door slides into, above the subfloor: 84-1/2 in unless stated, from memory. More than zero.</summary>
    public Distance PocketTop { get; init => field = Guard.Positive(value, nameof(PocketTop)); } = Distance.FromInches(84, 1, 2);

    /// <summary>The top of a counter above what it stands on: 36 in unless stated, a base of 34-1/2 in and a top of 1-1/2 in. More than zero. Nothing that a document asks rests on it.</summary>
    public Distance CounterTop { get; init => field = Guard.Positive(value, nameof(CounterTop)); } = Distance.FromInches(36, 0, 1);

    /// <summary>How far a subfloor may lie off the storey's and still share its level line: 1 in unless stated. Not negative.</summary>
    public Distance LevelStep { get; init => field = Guard.NotNegative(value, nameof(LevelStep)); } = Distance.FromInches(1, 0, 1);

    /// <summary>How well a tape is read on site: 1/8 in unless stated. Not negative.</summary>
    public Distance TapeError { get; init => field = Guard.NotNegative(value, nameof(TapeError)); } = Distance.FromInches(0, 1, 8);

    /// <summary>How thick a floor that isn't chosen yet may be on its subfloor: 0 to 1-1/4 in unless stated, from a sealed slab to strip flooring or tile on a bed. Not negative.</summary>
    public DistanceRange Floor { get; init => field = Guard.NotNegative(value, nameof(Floor))!.Value; } = new(Distance.Zero, Distance.FromInches(1, 1, 4));

    /// <summary>A tub's rim or a shower's threshold above the finished floor: the floor to 24 in unless stated. Not negative.</summary>
    public DistanceRange Rim { get; init => field = Guard.NotNegative(value, nameof(Rim))!.Value; } = new(Distance.Zero, Distance.FromInches(24, 0, 1));

    /// <summary>The thin-set under tile at the most: 1/4 in unless stated. Not negative.</summary>
    public Distance MostBed { get; init => field = Guard.NotNegative(value, nameof(MostBed)); } = Distance.FromInches(0, 1, 4);

    /// <summary>The board of a wall at the most: 1-1/4 in unless stated, two layers of 5/8 in. Not negative.</summary>
    public Distance MostBoard { get; init => field = Guard.NotNegative(value, nameof(MostBoard)); } = Distance.FromInches(1, 1, 4);

    /// <summary>How far out from its wall the front of a counter is at the most, where another joins it: 30 in unless stated. Not negative.</summary>
    public Distance MostCounterDepth { get; init => field = Guard.NotNegative(value, nameof(MostCounterDepth)); } = Distance.FromInches(30);

    /// <summary>How far out from its wall a tub, range or basin stands at the most: 5 ft unless stated. More than zero.</summary>
    public Distance MostThingDepth { get; init => field = Guard.Positive(value, nameof(MostThingDepth)); } = Distance.FromFeetInches(5, 0);

    /// <summary>How much counter is left behind a basin or a range at the most: 6 in unless stated. Not negative.</summary>
    public Distance MostBehindABasin { get; init => field = Guard.NotNegative(value, nameof(MostBehindABasin)); } = Distance.FromInches(6, 0, 1);

    /// <summary>How high a cabinet's bottom is at the most that still stands on the floor line, over a toe kick: 6 in unless stated. Not negative.</summary>
    public Distance MostToeKick { get; init => field = Guard.NotNegative(value, nameof(MostToeKick)); } = Distance.FromInches(6);

    /// <summary>The widest sheet that is commonly hung; null where none is known.</summary>
    internal Distance? WidestSheet
    {
        get
        {
            Distance? widest = null;
            foreach (BoardCourses common in Courses)
            {
                foreach (Distance sheet in common.Widths)
                {
                    widest = widest is { } wide && wide >= sheet ? wide : sheet;
                }
            }

            return widest;
        }
    }

    private static BoardCourses Sheets(int? above, int? upTo, params int[] widths) => new BoardCourses(new Items<int>(widths).Select(Inches))
    {
        Above = above is { } low ? Inches(low) : null,
        UpTo = upTo is { } high ? Inches(high) : null,
    };

    private static Distance Inches(int whole) => Distance.FromInches(whole, 0, 1);
}

/// <summary>A way in which board is commonly hung across a wall of some height, from the ceiling down.</summary>
[Described(nameof(Widths))]
public sealed partial record BoardCourses
{
    /// <summary>The widths of the courses from the top down, each more than zero; the last is ripped to what is left.</summary>
    public Items<Distance> Widths { get; init => field = Guard.Positive(value, nameof(Widths)); }

    /// <summary>The walls that it is for are higher than this, from the subfloor to the ceiling board; null where the lowest are among them.</summary>
    public Distance? Above { get; init => field = Guard.NotNegative(value, nameof(Above)); }

    /// <summary>The highest wall that it is for; null where the highest are among them.</summary>
    public Distance? UpTo { get; init => field = Guard.Positive(value, nameof(UpTo)); }
}
