namespace BoxHeights;

/// <summary>One device box: what it is for, what it holds, where it is or shall be.</summary>
public sealed partial record DeviceBox
{
    /// <summary>Describes a device box by what it must have.</summary>
    /// <param name="id">The name it is addressed by; one of its kind in the dwelling.</param>
    /// <param name="purpose">What the box is for.</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public DeviceBox(string id, BoxPurpose purpose)
    {
        Id = id;
        Purpose = purpose;
    }

    /// <summary>The name it is addressed by; one of its kind in the dwelling.</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>What the box is for.</summary>
    public BoxPurpose Purpose { get; init; }

    /// <summary>The devices in it, from left to right.</summary>
    public Items<DeviceKind> Devices { get; init; }

    /// <summary>How many device widths it has; as many as its devices need unless stated.</summary>
    public int? Gangs { get; init => field = Valid.Count(value, nameof(Gangs)); }

    /// <summary>The kind of box; a generic nail-on box unless stated.</summary>
    public BoxKind? Kind { get; init; }

    /// <summary>Its size at the opening; the catalog's unless stated.</summary>
    public BoxSize? Size { get; init; }

    /// <summary>The volume marked on it.</summary>
    public Volume? Volume { get; init => field = Valid.Positive(value, nameof(Volume)); }

    /// <summary>The size of its cover plate; standard unless stated.</summary>
    public PlateKind? Plate { get; init; }

    /// <summary>Whether the device lies on its side.</summary>
    public bool OnItsSide { get; init; }

    /// <summary>The surface that it sits on; the one that it is listed under unless stated.</summary>
    public BoxSurface? Surface { get; init; }

    /// <summary>How it is held.</summary>
    public Mounting? Mounting { get; init; }

    /// <summary>Its center, along the wall from the wall's left end.</summary>
    public Distance? At { get; init => field = Valid.NotNegative(value, nameof(At)); }

    /// <summary>Its center in plan, for boxes in a ceiling or floor.</summary>
    public PlanPoint? Plan { get; init; }

    /// <summary>The height that it is set to.</summary>
    public BoxHeight? Height { get; init; }

    /// <summary>The height that the drawing asks for.</summary>
    public BoxHeight? Specified { get; init; }

    /// <summary>The height found on a walk, once it is set.</summary>
    public MeasuredHeight? Measured { get; init; }

    /// <summary>Whether it was there before this work.</summary>
    public bool Existing { get; init; }

    /// <summary>Whether it is no part of this work, so that nothing is asked of it; what its room or outside face says where it isn't stated. New boxes are still held against it.</summary>
    public bool? Untouched { get; init; }

    /// <summary>Whether it must stay where it is.</summary>
    public bool Pinned { get; init; }

    /// <summary>From which sides a person can reach it.</summary>
    public Approach? Approach { get; init; }

    /// <summary>The cables that enter it.</summary>
    public Items<CableType> Cables { get; init; }

    /// <summary>How cables are held.</summary>
    public CableClamps? Clamps { get; init; }

    /// <summary>Conductors that enter it without being counted in a cable.</summary>
    public Items<LooseConductors> Conductors { get; init; }

    /// <summary>The largest conductor connected to each of its devices, in their order.</summary>
    public Items<ConductorSize> Connected { get; init; }

    /// <summary>What else is fitted inside it.</summary>
    public Items<BoxFitting> Fittings { get; init; }

    /// <summary>The volume marked on rings, extensions and domed covers that are assembled with it.</summary>
    public Volume? Extension { get; init => field = Valid.Positive(value, nameof(Extension)); }

    /// <summary>How far its front edge, or that of its ring, stands out from the stud or joist.</summary>
    public Distance? SetFor { get; init => field = Valid.NotNegative(value, nameof(SetFor)); }

    /// <summary>The rating of its receptacle ("125 V 20 A").</summary>
    public string? Rating { get; init; }

    /// <summary>The appliance that it serves alone.</summary>
    public string? Dedicated { get; init; }

    /// <summary>How much of its receptacle a switch controls.</summary>
    public SwitchedPart? Switched { get; init; }

    /// <summary>Whether it can hold a ceiling fan.</summary>
    public bool FanRated { get; init; }

    /// <summary>What lets it be near a box on the other face of a rated wall; null where it isn't stated.</summary>
    public FireProtection? FireProtection { get; init; }

    /// <summary>The widest gap, on any side, between its edge and the board, plaster or tile that it is set into; null where it isn't stated.</summary>
    public Distance? BoardGap { get; init => field = Valid.NotNegative(value, nameof(BoardGap)); }

    /// <summary>How far each of its devices reaches back from its front edge, in their order; the catalog's where they aren't stated. Zero for one that stays in front of it.</summary>
    public Items<Distance> DeviceDepths { get; init => field = Valid.NotNegative(value, nameof(DeviceDepths)); }

    /// <summary>
    /// How many gangs each of its devices needs to be mounted, 1 or more, in their order. Where they aren't stated a receptacle for a range or a dryer needs two and
    /// any other device of a known kind one; a single receptacle of more than 20 A, or a device of a kind of your own, may need what the others leave.
    /// </summary>
    public Items<int> DeviceGangs { get; init => field = Valid.Counts(value, nameof(DeviceGangs)); }

    /// <summary>Whether wiring is known to enter at the center of its back, behind the devices.</summary>
    public bool BackEntry { get; init; }

    /// <summary>The spaces that barriers divide it into, from left to right; none where it isn't divided, or it isn't stated what is where.</summary>
    public Items<BoxCompartment> Compartments { get; init; }

    /// <summary>How the luminaire on it is built; null where it isn't stated.</summary>
    public LuminaireBuild? Luminaire { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by; one of its kind in the dwelling.</param>
    public DeviceBox WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Purpose"/>.</summary>
    /// <param name="purpose">What the box is for.</param>
    public DeviceBox WithPurpose(BoxPurpose purpose) => this with { Purpose = purpose };

    /// <summary>The same with another <see cref="Devices"/>.</summary>
    /// <param name="devices">The devices in it, from left to right.</param>
    public DeviceBox WithDevices(Items<DeviceKind> devices) => this with { Devices = devices };

    /// <summary>The same with another <see cref="Gangs"/>.</summary>
    /// <param name="gangs">How many device widths it has; as many as its devices need unless stated.</param>
    public DeviceBox WithGangs(int? gangs) => this with { Gangs = gangs };

    /// <summary>The same with another <see cref="Kind"/>.</summary>
    /// <param name="kind">The kind of box; a generic nail-on box unless stated.</param>
    public DeviceBox WithKind(BoxKind? kind) => this with { Kind = kind };

    /// <summary>The same with another <see cref="Size"/>.</summary>
    /// <param name="size">Its size at the opening; the catalog's unless stated.</param>
    public DeviceBox WithSize(BoxSize? size) => this with { Size = size };

    /// <summary>The same with another <see cref="Volume"/>.</summary>
    /// <param name="volume">The volume marked on it.</param>
    public DeviceBox WithVolume(Volume? volume) => this with { Volume = volume };

    /// <summary>The same with another <see cref="Plate"/>.</summary>
    /// <param name="plate">The size of its cover plate; standard unless stated.</param>
    public DeviceBox WithPlate(PlateKind? plate) => this with { Plate = plate };

    /// <summary>The same with another <see cref="OnItsSide"/>.</summary>
    /// <param name="onItsSide">Whether the device lies on its side.</param>
    public DeviceBox WithOnItsSide(bool onItsSide) => this with { OnItsSide = onItsSide };

    /// <summary>The same with another <see cref="Surface"/>.</summary>
    /// <param name="surface">The surface that it sits on; the one that it is listed under unless stated.</param>
    public DeviceBox WithSurface(BoxSurface? surface) => this with { Surface = surface };

    /// <summary>The same with another <see cref="Mounting"/>.</summary>
    /// <param name="mounting">How it is held.</param>
    public DeviceBox WithMounting(Mounting? mounting) => this with { Mounting = mounting };

    /// <summary>The same with another <see cref="At"/>.</summary>
    /// <param name="at">Its center, along the wall from the wall's left end.</param>
    public DeviceBox WithAt(Distance? at) => this with { At = at };

    /// <summary>The same with another <see cref="Plan"/>.</summary>
    /// <param name="plan">Its center in plan, for boxes in a ceiling or floor.</param>
    public DeviceBox WithPlan(PlanPoint? plan) => this with { Plan = plan };

    /// <summary>The same with another <see cref="Height"/>.</summary>
    /// <param name="height">The height that it is set to.</param>
    public DeviceBox WithHeight(BoxHeight? height) => this with { Height = height };

    /// <summary>The same with another <see cref="Specified"/>.</summary>
    /// <param name="specified">The height that the drawing asks for.</param>
    public DeviceBox WithSpecified(BoxHeight? specified) => this with { Specified = specified };

    /// <summary>The same with another <see cref="Measured"/>.</summary>
    /// <param name="measured">The height found on a walk, once it is set.</param>
    public DeviceBox WithMeasured(MeasuredHeight? measured) => this with { Measured = measured };

    /// <summary>The same with another <see cref="Existing"/>.</summary>
    /// <param name="existing">Whether it was there before this work.</param>
    public DeviceBox WithExisting(bool existing) => this with { Existing = existing };

    /// <summary>The same with another <see cref="Untouched"/>.</summary>
    /// <param name="untouched">Whether it is no part of this work, so that nothing is asked of it; what its room or outside face says where it isn't stated. New boxes are still held against it.</param>
    public DeviceBox WithUntouched(bool? untouched) => this with { Untouched = untouched };

    /// <summary>The same with another <see cref="Pinned"/>.</summary>
    /// <param name="pinned">Whether it must stay where it is.</param>
    public DeviceBox WithPinned(bool pinned) => this with { Pinned = pinned };

    /// <summary>The same with another <see cref="Approach"/>.</summary>
    /// <param name="approach">From which sides a person can reach it.</param>
    public DeviceBox WithApproach(Approach? approach) => this with { Approach = approach };

    /// <summary>The same with another <see cref="Cables"/>.</summary>
    /// <param name="cables">The cables that enter it.</param>
    public DeviceBox WithCables(Items<CableType> cables) => this with { Cables = cables };

    /// <summary>The same with another <see cref="Clamps"/>.</summary>
    /// <param name="clamps">How cables are held.</param>
    public DeviceBox WithClamps(CableClamps? clamps) => this with { Clamps = clamps };

    /// <summary>The same with another <see cref="Conductors"/>.</summary>
    /// <param name="conductors">Conductors that enter it without being counted in a cable.</param>
    public DeviceBox WithConductors(Items<LooseConductors> conductors) => this with { Conductors = conductors };

    /// <summary>The same with another <see cref="Connected"/>.</summary>
    /// <param name="connected">The largest conductor connected to each of its devices, in their order.</param>
    public DeviceBox WithConnected(Items<ConductorSize> connected) => this with { Connected = connected };

    /// <summary>The same with another <see cref="Fittings"/>.</summary>
    /// <param name="fittings">What else is fitted inside it.</param>
    public DeviceBox WithFittings(Items<BoxFitting> fittings) => this with { Fittings = fittings };

    /// <summary>The same with another <see cref="Extension"/>.</summary>
    /// <param name="extension">The volume marked on rings, extensions and domed covers that are assembled with it.</param>
    public DeviceBox WithExtension(Volume? extension) => this with { Extension = extension };

    /// <summary>The same with another <see cref="SetFor"/>.</summary>
    /// <param name="setFor">How far its front edge, or that of its ring, stands out from the stud or joist.</param>
    public DeviceBox WithSetFor(Distance? setFor) => this with { SetFor = setFor };

    /// <summary>The same with another <see cref="Rating"/>.</summary>
    /// <param name="rating">The rating of its receptacle ("125 V 20 A").</param>
    public DeviceBox WithRating(string? rating) => this with { Rating = rating };

    /// <summary>The same with another <see cref="Dedicated"/>.</summary>
    /// <param name="dedicated">The appliance that it serves alone.</param>
    public DeviceBox WithDedicated(string? dedicated) => this with { Dedicated = dedicated };

    /// <summary>The same with another <see cref="Switched"/>.</summary>
    /// <param name="switched">How much of its receptacle a switch controls.</param>
    public DeviceBox WithSwitched(SwitchedPart? switched) => this with { Switched = switched };

    /// <summary>The same with another <see cref="FanRated"/>.</summary>
    /// <param name="fanRated">Whether it can hold a ceiling fan.</param>
    public DeviceBox WithFanRated(bool fanRated) => this with { FanRated = fanRated };

    /// <summary>The same with another <see cref="FireProtection"/>.</summary>
    /// <param name="fireProtection">What lets it be near a box on the other face of a rated wall.</param>
    public DeviceBox WithFireProtection(FireProtection? fireProtection) => this with { FireProtection = fireProtection };

    /// <summary>The same with another <see cref="BoardGap"/>.</summary>
    /// <param name="boardGap">The widest gap between its edge and what it is set into.</param>
    public DeviceBox WithBoardGap(Distance? boardGap) => this with { BoardGap = boardGap };

    /// <summary>The same with other <see cref="DeviceDepths"/>.</summary>
    /// <param name="deviceDepths">How far each of its devices reaches back from its front edge, in their order.</param>
    public DeviceBox WithDeviceDepths(Items<Distance> deviceDepths) => this with { DeviceDepths = deviceDepths };

    /// <summary>The same with other <see cref="DeviceGangs"/>.</summary>
    /// <param name="deviceGangs">How many gangs each of its devices needs to be mounted, in their order.</param>
    public DeviceBox WithDeviceGangs(Items<int> deviceGangs) => this with { DeviceGangs = deviceGangs };

    /// <summary>The same with another <see cref="BackEntry"/>.</summary>
    /// <param name="backEntry">Whether wiring is known to enter at the center of its back.</param>
    public DeviceBox WithBackEntry(bool backEntry) => this with { BackEntry = backEntry };

    /// <summary>The same with other <see cref="Compartments"/>.</summary>
    /// <param name="compartments">The spaces that barriers divide it into, from left to right.</param>
    public DeviceBox WithCompartments(Items<BoxCompartment> compartments) => this with { Compartments = compartments };

    /// <summary>The same with another <see cref="Luminaire"/>.</summary>
    /// <param name="luminaire">How the luminaire on it is built.</param>
    public DeviceBox WithLuminaire(LuminaireBuild? luminaire) => this with { Luminaire = luminaire };
}
