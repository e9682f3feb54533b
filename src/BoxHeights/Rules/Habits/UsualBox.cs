namespace BoxHeights.Rules;

/// <summary>Where a usual box goes.</summary>
public enum UsualPlace
{
    /// <summary>In the middle of the ceiling.</summary>
    MiddleOfCeiling = 0,

    /// <summary>In the middle of the wall with most room that isn't an outside wall, or as near as may be.</summary>
    InnerWall = 1,

    /// <summary>Outside, beside the latch of an entrance to the dwelling.</summary>
    BesideEntrance = 2,

    /// <summary>In the ceiling before each of its openings of some kinds.</summary>
    BeforeOpenings = 3,
}

/// <summary>A box that rooms usually get although no document asks for it, unless what it holds is there already. It is planned only where the set has such a row.</summary>
[Row(nameof(Box), nameof(Rooms))]
public sealed partial record UsualBox : HabitRule
{
    /// <summary>The box, without its place.</summary>
    public DeviceBox Box { get; init => field = Guard.NotNull(value, nameof(Box)); }

    /// <summary>Rooms that get one.</summary>
    public Items<RoomKind> Rooms { get; init; }

    /// <summary>Where in such a room it goes.</summary>
    public UsualPlace Place { get; init; }

    /// <summary>How far that is from the opening that it belongs to.</summary>
    public Distance From { get; init; }

    /// <summary>The openings that it belongs to, where it belongs to some.</summary>
    public Items<OpeningKind> Openings { get; init; }

    /// <summary>Whether a dwelling gets one in all, in the first room of the kind that is named first.</summary>
    public bool OneInADwelling { get; init; }

    /// <summary>A room that has one of these needs none more; the devices of <see cref="Box"/> where none is named.</summary>
    public Items<DeviceKind> Instead { get; init; }

    /// <summary>Whether a receptacle that a switch controls does as well.</summary>
    public bool OrSwitchedReceptacle { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Box.Devices + (OneInADwelling ? " in one of " : " in each ") + Rooms + ", " + PlaceInWords + (Said(("off", From)) is { Length: > 0 } off ? ", " + off + " " + Openings : "") + (Instead.Count == 0 ? "" : ", where there is no " + Instead) + (OrSwitchedReceptacle ? ", and no switched receptacle" : "");

    private string PlaceInWords => Place switch
    {
        UsualPlace.MiddleOfCeiling => "in the middle of the ceiling",
        UsualPlace.InnerWall => "on an inner wall",
        UsualPlace.BesideEntrance => "outside beside an entrance",
        _ => "in the ceiling before its openings",
    };
}
