namespace BoxHeights;

/// <summary>One device box: what it is for, what it holds, where it is or shall be.</summary>
[Described(nameof(Id), nameof(Purpose))]
public sealed partial record DeviceBox
{
    /// <summary>The name it is addressed by; one of its kind in the dwelling.</summary>
    public string Id { get; init => field = Guard.Id(value, nameof(Id)); }

    /// <summary>What the box is for.</summary>
    public BoxPurpose Purpose { get; init; }

    /// <summary>The devices in it, from left to right.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>How many device widths it has; as many as its devices need unless stated.</summary>
    public int? Gangs { get; init => field = Guard.Count(value, nameof(Gangs)); }

    /// <summary>The kind of box; a generic nail-on box unless stated.</summary>
    public BoxKind? Kind { get; init; }

    /// <summary>Its size at the opening; the catalog's unless stated.</summary>
    public BoxSize? Size { get; init; }

    /// <summary>The volume marked on it.</summary>
    public Volume? Volume { get; init => field = Guard.Positive(value, nameof(Volume)); }

    /// <summary>The size of its cover plate; standard unless stated.</summary>
    public PlateKind? Plate { get; init; }

    /// <summary>Whether the device lies on its side.</summary>
    public bool OnItsSide { get; init; }

    /// <summary>The surface that it sits on; the one that it is listed under unless stated.</summary>
    public BoxSurface? Surface { get; init => field = Guard.Known(value, BoxSurface.Cabinet, nameof(Surface)); }

    /// <summary>How it is held.</summary>
    public Mounting? Mounting { get; init; }

    /// <summary>Its center, along the wall from the wall's left end.</summary>
    public Distance? At { get; init => field = Guard.NotNegative(value, nameof(At)); }

    /// <summary>Its center in plan, for boxes in a ceiling or floor.</summary>
    public PlanPoint? Plan { get; init; }

    /// <summary>The height that it is set to.</summary>
    public BoxHeight? Height { get; init; }

    /// <summary>The height that the drawing asks for.</summary>
    public BoxHeight? Specified { get; init; }

    /// <summary>The height found on a walk, once it is set.</summary>
    public MeasuredHeight? Measured { get; init; }

    /// <summary>Whether it was there before, in a room that is worked on: it stays where it is, documents are asked of it as of a new box, habits aren't, and new boxes of its purpose in its room may be level with it.</summary>
    /// <remarks>A box of which documents ask nothing either, because the work doesn't touch it, is <see cref="Untouched"/>, which goes further.</remarks>
    public bool Existing { get; init; }

    /// <summary>Whether it is no part of this work: no rule is asked of it, be it of a document or a habit, and it stays where it is. As its room or outside face says unless stated; false for a new box in such a room.</summary>
    /// <remarks>What is new is still held against it: its level, its plate, the room that it takes. A box that was there before and of which documents do ask is <see cref="Existing"/>.</remarks>
    public bool? Untouched { get; init; }

    /// <summary>Whether it must stay where it is.</summary>
    public bool Pinned { get; init; }

    /// <summary>From which sides a person can reach it.</summary>
    public Approach? Approach { get; init => field = Guard.Known(value, BoxHeights.Approach.Either, nameof(Approach)); }

    /// <summary>The cables that enter it.</summary>
    public Items<CableType> Cables { get; init; }

    /// <summary>How cables are held.</summary>
    public CableClamps? Clamps { get; init => field = Guard.Known(value, CableClamps.Flap, nameof(Clamps)); }

    /// <summary>Conductors that enter it without being counted in a cable.</summary>
    public Items<LooseConductors> Conductors { get; init; }

    /// <summary>The largest conductor connected to each of its devices, in their order.</summary>
    public Items<ConductorSize> Connected { get; init; }

    /// <summary>What else is fitted inside it.</summary>
    public Items<BoxFitting> Fittings { get; init; }

    /// <summary>The volume marked on rings, extensions and domed covers that are assembled with it.</summary>
    public Volume? Extension { get; init => field = Guard.Positive(value, nameof(Extension)); }

    /// <summary>How far its front edge, or that of its ring, stands out from the stud or joist.</summary>
    public Distance? SetFor { get; init => field = Guard.NotNegative(value, nameof(SetFor)); }

    /// <summary>The rating of its receptacle ("125 V 20 A").</summary>
    public string? Rating { get; init; }

    /// <summary>The appliance that it serves alone.</summary>
    public string? Dedicated { get; init; }

    /// <summary>How much of its receptacle a switch controls.</summary>
    public SwitchedPart? Switched { get; init => field = Guard.Known(value, SwitchedPart.All, nameof(Switched)); }

    /// <summary>The ids of the boxes whose lights or switched receptacles its switches control; none where that isn't stated.</summary>
    public Items<string> Controls { get; init => field = Guard.Ids(value, nameof(Controls)); }

    /// <summary>Whether it can hold a ceiling fan.</summary>
    public bool FanRated { get; init; }

    /// <summary>What lets it be near a box on the other face of a rated wall; null where it isn't stated.</summary>
    public FireProtection? FireProtection { get; init => field = Guard.Known(value, BoxHeights.FireProtection.Listed, nameof(FireProtection)); }

    /// <summary>The widest gap, on any side, between its edge and the board, plaster or tile that it is set into; null where it isn't stated.</summary>
    public Distance? BoardGap { get; init => field = Guard.NotNegative(value, nameof(BoardGap)); }

    /// <summary>How far each of its devices reaches back from its front edge, in their order; the catalog's where they aren't stated. Zero for one that stays in front of it.</summary>
    public Items<Distance> DeviceDepths { get; init => field = Guard.NotNegative(value, nameof(DeviceDepths)); }

    /// <summary>How many gangs each of its devices needs to be mounted, 1 or more, in their order.</summary>
    /// <remarks>Where they aren't stated a receptacle for a range or a dryer needs two and any other device of a known kind one; a single receptacle of more than 20 A, or a device of a kind of your own, may need what the others leave.</remarks>
    public Items<int> DeviceGangs { get; init => field = Guard.Counts(value, nameof(DeviceGangs)); }

    /// <summary>Whether wiring is known to enter at the center of its back, behind the devices.</summary>
    public bool BackEntry { get; init; }

    /// <summary>The spaces that barriers divide it into, from left to right; none for a box in one piece, or while it isn't stated what is where.</summary>
    public Items<BoxCompartment> Compartments { get; init; }

    /// <summary>How the luminaire on it is built; null where it isn't stated.</summary>
    public LuminaireBuild? Luminaire { get; init => field = Guard.Known(value, LuminaireBuild.ForStorage, nameof(Luminaire)); }
}
