namespace BoxHeights;

/// <summary>What a height is measured from.</summary>
/// <remarks>
/// In a dwelling each of them needs what its remarks say. Where that is missing, a height from what stands or hangs on the wall is a fault of the description
/// (<see cref="LayoutFaultKind.UnknownReference"/>); one from what belongs to the room or the storey can't be decided until it is stated, and findings name it. <see cref="Levels"/> say
/// where they lie without a dwelling.
/// </remarks>
public enum Datum
{
    /// <summary>The top of the subfloor sheathing, or of the bare slab, in the room.</summary>
    /// <remarks>Needs nothing.</remarks>
    Subfloor = 0,

    /// <summary>The top of the finish floor at that place. Code heights are taken from here.</summary>
    /// <remarks>Needs <see cref="Room.Floor"/>; while that isn't stated it is anything from none to 1-1/4 in above the subfloor. Outside it is the grade.</remarks>
    FinishedFloor,

    /// <summary>The top of the bottom (sole) plate of the wall.</summary>
    /// <remarks>Needs nothing: the plate is of the usual lumber, 1-1/2 in thick, on the subfloor.</remarks>
    BottomPlate,

    /// <summary>The line shot through the storey, by laser or level, from which heights are taken up and down.</summary>
    /// <remarks>Needs <see cref="Storey.LevelLine"/>.</remarks>
    LevelLine,

    /// <summary>The top of the counter or vanity at that place.</summary>
    /// <remarks>Needs a counter on the wall where the box is, with its <see cref="Counter.Top"/>.</remarks>
    Countertop,

    /// <summary>The top edge of the backsplash.</summary>
    /// <remarks>Needs a finish on the wall where the box is, with its <see cref="Finish.Top"/>.</remarks>
    SplashTop,

    /// <summary>The underside of the wall cabinet.</summary>
    /// <remarks>Needs a covering of the kind <see cref="CoveringKind.WallCabinet"/> on the wall where the box is, with its <see cref="Covering.Bottom"/>.</remarks>
    CabinetUnderside,

    /// <summary>The head of the window's rough opening.</summary>
    /// <remarks>Needs a window in the wall with its <see cref="Opening.Head"/>: of several, the nearest counts.</remarks>
    WindowHead,

    /// <summary>The top of the window's stool (the inside sill).</summary>
    /// <remarks>No part of a dwelling states where it lies: only <see cref="Levels"/> can.</remarks>
    WindowStool,

    /// <summary>The rim of the tub, or the threshold of the shower.</summary>
    /// <remarks>Needs a fixture at the wall with its <see cref="Fixture.Rim"/> and both ends: of several, the nearest counts.</remarks>
    Rim,

    /// <summary>The line through the noses of the stair's treads.</summary>
    /// <remarks>Needs a flight along the wall (<see cref="StairFlight.Wall"/>) with <see cref="StairFlight.FirstNosing"/>, its tread or run, and <see cref="Storey.AboveBelow"/> of each storey that it climbs to; to be exact, the floors at both its ends too.</remarks>
    Nosing,

    /// <summary>The underside of the finished ceiling.</summary>
    /// <remarks>Needs the framing and the board of the room's or the storey's <see cref="Ceiling"/>; strapping that isn't stated is none.</remarks>
    FinishedCeiling,

    /// <summary>The ground outside, as finished.</summary>
    /// <remarks>Needs <see cref="Storey.GradeBelowSubfloor"/>.</remarks>
    Grade,

    /// <summary>The deck, porch, balcony or landing that one stands on.</summary>
    /// <remarks>Outside it needs a platform before the wall where the box is, with its <see cref="Platform.Surface"/>; indoors it is the finished floor.</remarks>
    WalkingSurface,

    /// <summary>The center of a cover plate that is there already and is to be matched.</summary>
    /// <remarks>Needs a box on the wall that is <see cref="DeviceBox.Existing"/> or <see cref="DeviceBox.Untouched"/>, with its place and height: of several, the nearest counts.</remarks>
    ExistingPlate,
}
