namespace BoxHeights;

/// <summary>One face of a wall, seen from inside its room: <c>along</c> runs from its left end to the right, framing face to framing face.</summary>
public sealed partial record Wall
{
    /// <summary>Describes a wall by what it must have.</summary>
    /// <param name="id">The name it is addressed by within its room ("kitchen/north" is the wall "north" of the room "kitchen").</param>
    /// <param name="length">Its length between framing faces; more than zero.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public Wall(string id, Distance length)
    {
        Id = id;
        Length = length;
    }

    /// <summary>The name it is addressed by within its room ("kitchen/north" is the wall "north" of the room "kitchen").</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>Its length between framing faces; more than zero.</summary>
    public Distance Length { get; init => field = Valid.Positive(value, nameof(Length)); }

    /// <summary>The turn from this face to the next, in degrees, −360 to 360: 90 is an inside corner, −90 an outside corner, 0 goes straight on.</summary>
    /// <remarks>
    /// Within half a degree of a whole number of 45 degrees it is taken for that, unless the room closes only as it is drawn: drawings are never square to the last digit.
    /// The walls of a room are taken to close where their turns make 360 degrees within that tolerance a corner and the last ends within 12 in of where the first begins; what lies
    /// across the room is judged where they do within 1 in. Common practice, no source.
    /// </remarks>
    public decimal TurnDegrees { get; init => field = Valid.Turn(value, nameof(TurnDegrees)); } = 90m;

    /// <summary>Whether this side is open: no wall stands there.</summary>
    public bool Open { get; init; }

    /// <summary>Whether it is an outside wall.</summary>
    public bool Exterior { get; init; }

    /// <summary>The address of the face on its other side ("laundry/west"). Either of the two may say it, and openings need only be described on one: they go through both.</summary>
    public string? BackOf { get; init; }

    /// <summary>How far right of this face's left end the other face's right end lies.</summary>
    public Distance? BackOffset { get; init; }

    /// <summary>The depth of the stud cavity.</summary>
    public Distance? Cavity { get; init => field = Valid.Positive(value, nameof(Cavity)); }

    /// <summary>The top of the framing where it isn't level, from left to right.</summary>
    public Items<WallTopPoint> Top { get; init; }

    /// <summary>Its studs; the storey's unless stated.</summary>
    public StudLayout? Studs { get; init; }

    /// <summary>Its board; the storey's unless stated.</summary>
    public BoardLayout? Boards { get; init; }

    /// <summary>Doors, windows and other openings in it.</summary>
    public Items<Opening> Openings { get; init; }

    /// <summary>Counters that stand against it.</summary>
    public Items<Counter> Counters { get; init; }

    /// <summary>Finishes that lie on parts of it: backsplash, wainscot, tile.</summary>
    public Items<Finish> Finishes { get; init; }

    /// <summary>What hides parts of it: cabinets, mirrors, panels.</summary>
    public Items<Covering> Coverings { get; init; }

    /// <summary>Where nothing can be set into it: headers, posts, pockets, ducts.</summary>
    public Items<NoCavity> NoCavity { get; init; }

    /// <summary>The boxes on it.</summary>
    public Items<DeviceBox> Boxes { get; init; }

    /// <summary>Whether it is declared a fire-resistance rated wall. Rules for such walls speak of no other.</summary>
    public bool Rated { get; init; }

    /// <summary>Whether its stud cavity is filled with loose-fill cellulose, rock wool or slag wool.</summary>
    public bool CavityFilled { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by within its room ("kitchen/north" is the wall "north" of the room "kitchen").</param>
    public Wall WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Length"/>.</summary>
    /// <param name="length">Its length between framing faces; more than zero.</param>
    public Wall WithLength(Distance length) => this with { Length = length };

    /// <summary>The same with another <see cref="TurnDegrees"/>.</summary>
    /// <param name="turnDegrees">The turn from this face to the next, in degrees: 90 is an inside corner, −90 an outside corner.</param>
    public Wall WithTurnDegrees(decimal turnDegrees) => this with { TurnDegrees = turnDegrees };

    /// <summary>The same with another <see cref="Open"/>.</summary>
    /// <param name="open">Whether this side is open: no wall stands there.</param>
    public Wall WithOpen(bool open) => this with { Open = open };

    /// <summary>The same with another <see cref="Exterior"/>.</summary>
    /// <param name="exterior">Whether it is an outside wall.</param>
    public Wall WithExterior(bool exterior) => this with { Exterior = exterior };

    /// <summary>The same with another <see cref="BackOf"/>.</summary>
    /// <param name="backOf">The address of the face on its other side ("laundry/west").</param>
    public Wall WithBackOf(string? backOf) => this with { BackOf = backOf };

    /// <summary>The same with another <see cref="BackOffset"/>.</summary>
    /// <param name="backOffset">How far right of this face's left end the other face's right end lies.</param>
    public Wall WithBackOffset(Distance? backOffset) => this with { BackOffset = backOffset };

    /// <summary>The same with another <see cref="Cavity"/>.</summary>
    /// <param name="cavity">The depth of the stud cavity.</param>
    public Wall WithCavity(Distance? cavity) => this with { Cavity = cavity };

    /// <summary>The same with another <see cref="Top"/>.</summary>
    /// <param name="top">The top of the framing where it isn't level, from left to right.</param>
    public Wall WithTop(Items<WallTopPoint> top) => this with { Top = top };

    /// <summary>The same with another <see cref="Studs"/>.</summary>
    /// <param name="studs">Its studs; the storey's unless stated.</param>
    public Wall WithStuds(StudLayout? studs) => this with { Studs = studs };

    /// <summary>The same with another <see cref="Boards"/>.</summary>
    /// <param name="boards">Its board; the storey's unless stated.</param>
    public Wall WithBoards(BoardLayout? boards) => this with { Boards = boards };

    /// <summary>The same with another <see cref="Openings"/>.</summary>
    /// <param name="openings">Doors, windows and other openings in it.</param>
    public Wall WithOpenings(Items<Opening> openings) => this with { Openings = openings };

    /// <summary>The same with another <see cref="Counters"/>.</summary>
    /// <param name="counters">Counters that stand against it.</param>
    public Wall WithCounters(Items<Counter> counters) => this with { Counters = counters };

    /// <summary>The same with another <see cref="Finishes"/>.</summary>
    /// <param name="finishes">Finishes that lie on parts of it: backsplash, wainscot, tile.</param>
    public Wall WithFinishes(Items<Finish> finishes) => this with { Finishes = finishes };

    /// <summary>The same with another <see cref="Coverings"/>.</summary>
    /// <param name="coverings">What hides parts of it: cabinets, mirrors, panels.</param>
    public Wall WithCoverings(Items<Covering> coverings) => this with { Coverings = coverings };

    /// <summary>The same with another <see cref="NoCavity"/>.</summary>
    /// <param name="noCavity">Where nothing can be set into it: headers, posts, pockets, ducts.</param>
    public Wall WithNoCavity(Items<NoCavity> noCavity) => this with { NoCavity = noCavity };

    /// <summary>The same with another <see cref="Boxes"/>.</summary>
    /// <param name="boxes">The boxes on it.</param>
    public Wall WithBoxes(Items<DeviceBox> boxes) => this with { Boxes = boxes };

    /// <summary>The same with another <see cref="Rated"/>.</summary>
    /// <param name="rated">Whether it is declared a fire-resistance rated wall.</param>
    public Wall WithRated(bool rated) => this with { Rated = rated };

    /// <summary>The same with another <see cref="CavityFilled"/>.</summary>
    /// <param name="cavityFilled">Whether its stud cavity is filled.</param>
    public Wall WithCavityFilled(bool cavityFilled) => this with { CavityFilled = cavityFilled };
}
