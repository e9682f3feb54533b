namespace BoxHeights;

/// <summary>A wall face, ceiling or floor with everything that rules read of it, worked out once.</summary>
internal sealed partial class ResolvedSurface
{
    private readonly PartsCatalog catalog;

    private TrimmedOpening[]? trimmed;
    private Obstruction[]? obstructions;
    private Wall? withoutBoxes;

    public ResolvedSurface(string address, BoxSurface kind, ResolvedSpace space, Wall? wall, int index, PartsCatalog catalog)
    {
        this.catalog = catalog;
        Index = index;
        Address = address;
        Kind = kind;
        Space = space;
        Wall = wall;
        if (wall is not null)
        {
            Build = new(wall, space.IsOutside ? null : space.Storey, space.BoardWall, Usual, space.LastHung);
            space.LastHung = Build.Boards ?? space.LastHung;
            Fixtures = space.FixturesOn(wall.Id);
            Platforms = space.PlatformsBefore(wall.Id);
            DoorCovers = space.DoorCoversOn(wall.Id);
        }
    }

    /// <summary>Its place in the order of all surfaces.</summary>
    public int Index { get; }

    public string Address { get; }

    /// <summary>What measures as it usually does, where the description doesn't say.</summary>
    public UsualMeasures Usual => Space.Usual;

    /// <summary>Whether something that is described on this wall can't be, so that rules which read it can't decide.</summary>
    public bool HasBrokenParts { get; set; }

    public BoxSurface Kind { get; }

    public ResolvedSpace Space { get; }

    public Wall? Wall { get; }

    /// <summary>What is shown to whoever mustn't read where boxes are; made when somebody asks, since it is a copy.</summary>
    public Wall? WallWithoutBoxes => Wall is null ? null : withoutBoxes ??= Wall.Boxes.Count == 0 ? Wall : Wall.WithBoxes(Items<DeviceBox>.None);

    /// <summary>What the wall is built of; null on ceilings and floors.</summary>
    public WallBuild? Build { get; }

    /// <summary>The layout of the wall's studs, its own or the storey's; null where nothing is said of them.</summary>
    public StudLayout? StudLayout => Build?.StudLayout;

    public StudPositions? Studs => Build?.Studs;

    public bool HasTooManyStuds => Build is { HasTooManyStuds: true };

    /// <summary>What stands upright in the wall, worked out when it is asked for; null where nothing is said of its studs.</summary>
    public WallFraming? Framing => Build?.Framing;

    public HungBoards? Boards => Build?.Boards;

    /// <summary>The wall's openings with what is put round them, worked out when somebody asks: hundreds of statements do.</summary>
    public TrimmedOpening[] TrimmedOpenings => trimmed ??= Wall is null ? [] : System.Array.ConvertAll([.. Wall.Openings], opening => TrimmedOpening.Of(opening, Usual));

    /// <summary>What stands against the wall and is reached over, worked out when somebody asks.</summary>
    public Obstruction[] Obstructions => obstructions ??= Obstruction.Before(this);

    /// <summary>How thick the board on the studs is; null where it isn't stated, and on ceilings and floors.</summary>
    public Distance? BoardThickness => Build?.BoardLayout?.Thickness;

    /// <summary>The wall that it is a face of, where other faces of it are described; null else.</summary>
    public WallBody? Body { get; set; }

    public Items<Fixture> Fixtures { get; }

    /// <summary>Decks, porches and balconies before an outside wall.</summary>
    public Items<Platform> Platforms { get; }

    /// <summary>What open doors hide of this wall.</summary>
    public Items<DoorCover> DoorCovers { get; }

    /// <summary>The flight of stairs that climbs along it; null where none is said to.</summary>
    public ResolvedStair? Stair { get; init; }

    public RoomKind RoomKind => Space.Kind;

    public Distance Length => Wall?.Length ?? Distance.Zero;

    /// <summary>Whether a box has room between the ends of its wall.</summary>
    public bool Holds(Distance along, BoxSize size) => along >= size.HalfWidth && along <= Length - size.HalfWidth;

    /// <summary>The same of a box of which only the width is known.</summary>
    public bool Holds(Distance along, Distance width) => along + along >= width && Length - along + (Length - along) >= width;

    /// <summary>
    /// As high above its room's subfloor as there may be framing: the ceiling's, or a stated top of the wall that goes higher. Null where none is known, and along a stair, where the floor above is open.
    /// </summary>
    public Distance? MostFraming
    {
        get
        {
            if (Stair is not null || Space.Framing is not { To: var most })
            {
                return null;
            }

            foreach (WallTopPoint point in Wall?.Top ?? default)
            {
                most = Distance.Max(most, point.Up);
            }

            return most;
        }
    }

    /// <summary>Whether a box can lie between the subfloor and the framing overhead, as far as both are known.</summary>
    public bool Holds(BoxHeight height, BoxSize size) => HeldHeights(height.Edge, height.Datum, size).Contains(height.Value);

    /// <summary>The heights, to an edge of a box and from a datum, at which it can lie there.</summary>
    public DistanceSet HeldHeights(Edge? edge, Datum datum, BoxSize size) => Space.HeldHeights(edge, datum, size, MostFraming);

    /// <summary>The counter that a height above "the countertop" means on a stretch of the wall.</summary>
    public Counter? CounterOn(Distance left, Distance right)
    {
        foreach (Counter counter in Wall?.Counters ?? default)
        {
            if (counter.Left <= right && left <= counter.Right)
            {
                return counter;
            }
        }

        return null;
    }

    /// <summary>What the trade takes the top of a counter to be: as stated, or as usual on what it stands on, the finished floor unless stated. Nothing that a document asks may rest on it.</summary>
    public Level UsualTopOf(Counter counter) => counter.Top ?? new Level(Usual.CounterTop, counter.BaseStandsOn ?? Datum.FinishedFloor);

    /// <summary>The ways in which board is commonly hung on it; none where its ceiling isn't stated.</summary>
    public Items<HungBoards> CommonBoards => Space.BoardWall is { } high && Wall is not { Top.Count: > 0 } ? HungBoards.Common(high, Usual) : default;
}
