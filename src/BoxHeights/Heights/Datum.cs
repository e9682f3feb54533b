namespace BoxHeights;

/// <summary>What a height is measured from.</summary>
public enum Datum
{
    /// <summary>The top of the subfloor sheathing, or of the bare slab, in the room.</summary>
    Subfloor = 0,

    /// <summary>The top of the finish floor at that place. Code heights are taken from here.</summary>
    FinishedFloor,

    /// <summary>The top of the bottom (sole) plate of the wall.</summary>
    BottomPlate,

    /// <summary>The line shot through the storey, by laser or level, from which heights are taken up and down.</summary>
    LevelLine,

    /// <summary>The top of the counter or vanity at that place.</summary>
    Countertop,

    /// <summary>The top edge of the backsplash.</summary>
    SplashTop,

    /// <summary>The underside of the wall cabinet.</summary>
    CabinetUnderside,

    /// <summary>The head of the window's rough opening.</summary>
    WindowHead,

    /// <summary>The top of the window's stool (the inside sill).</summary>
    WindowStool,

    /// <summary>The rim of the tub, or the threshold of the shower.</summary>
    Rim,

    /// <summary>The line through the noses of the stair's treads.</summary>
    Nosing,

    /// <summary>The underside of the finished ceiling.</summary>
    FinishedCeiling,

    /// <summary>The ground outside, as finished.</summary>
    Grade,

    /// <summary>The deck, porch, balcony or landing that one stands on.</summary>
    WalkingSurface,

    /// <summary>The center of a cover plate that is there already and is to be matched.</summary>
    ExistingPlate,
}
