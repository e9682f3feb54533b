namespace BoxHeights;

/// <summary>One face of a wall, seen from inside its room: <c>along</c> runs from its left end to the right, framing face to framing face.</summary>
[Described(nameof(Id), nameof(Length))]
public sealed partial record Wall
{
    /// <summary>The name it is addressed by within its room ("kitchen/north" is the wall "north" of the room "kitchen").</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>Its length between framing faces; more than zero.</summary>
    public Distance Length { get; init => field = Guard.Positive(value, nameof(Length)); }

    /// <summary>The turn from this face to the next, in degrees, −360 to 360: 90 is an inside corner, −90 an outside corner, 0 goes straight on.</summary>
    /// <remarks>
    /// Within half a degree of a whole number of 45 degrees it is taken for that, unless the room closes only as it is drawn: drawings are never square to the last digit.
    /// The walls of a room are taken to close where their turns make 360 degrees within that tolerance a corner and the last ends within 12 in of where the first begins; what lies
    /// across the room is judged where they do within 1 in. Common practice, no source.
    /// </remarks>
    public decimal TurnDegrees { get; init => field = Guard.Turn(value, nameof(TurnDegrees)); } = 90m;

    /// <summary>Whether this side is open: no wall stands there.</summary>
    public bool Open { get; init; }

    /// <summary>Whether it is an outside wall.</summary>
    public bool Exterior { get; init; }

    /// <summary>Whether it carries a floor, a ceiling or a roof, so that a header lies over each of its openings. Either face may say it.</summary>
    public bool Bearing { get; init; }

    /// <summary>The address of the face on its other side ("laundry/west"). Either of the two may say it, and openings need only be described on one: they go through both.</summary>
    public string? BackOf { get; init; }

    /// <summary>How far right of this face's left end the other face's right end lies.</summary>
    public Distance? BackOffset { get; init; }

    /// <summary>The depth of the stud cavity.</summary>
    public Distance? Cavity { get; init => field = Guard.Positive(value, nameof(Cavity)); }

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

    /// <summary>Where nothing can be set into it: headers, posts, pockets, ducts. What one face says fills the wall for both, but for stringers, which lie on one face.</summary>
    public Items<NoCavity> NoCavity { get; init; }

    /// <summary>The boxes on it.</summary>
    public Items<DeviceBox> Boxes { get; init; }

    /// <summary>Whether it is declared a fire-resistance rated wall. Rules for such walls speak of no other.</summary>
    public bool Rated { get; init; }

    /// <summary>Whether its stud cavity is filled with loose-fill cellulose, rock wool or slag wool.</summary>
    public bool CavityFilled { get; init; }

    /// <summary>Its id and length, and how many boxes it has.</summary>
    public override string ToString() => Id + ": " + Length + (Open ? ", open" : "") + ", boxes: " + Boxes.Count;

    /// <summary>How many boxes some walls have.</summary>
    internal static int BoxesOn(Items<Wall> walls)
    {
        int boxes = 0;
        foreach (Wall wall in walls)
        {
            boxes += wall.Boxes.Count;
        }

        return boxes;
    }
}
