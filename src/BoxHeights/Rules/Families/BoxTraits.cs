namespace BoxHeights.Rules;

/// <summary>Everything about a box except where it is: what a rule may read of it.</summary>
public sealed class BoxTraits
{
    private readonly PartsCatalog catalog;
    private readonly BoxPart? part;
    private readonly PlatePart? plate;

    internal BoxTraits(DeviceBox source, BoxSurface listedUnder, Edge edge, Datum datum, PartsCatalog catalog, OperatedParts operated, bool isUntouched)
    {
        IsUntouched = isUntouched;
        Source = source;
        Edge = edge;
        Datum = datum;
        Surface = source.Surface ?? listedUnder;
        IsListedFlat = listedUnder is BoxSurface.Floor or BoxSurface.Ceiling;
        Gangs = ResolvedBox.GangsOf(source);
        Build = catalog.BuildOf(ResolvedBox.KindOf(source, catalog));
        _ = catalog.TryFindBox(Kind, Gangs, out part);
        _ = catalog.TryFindPlate(source.Plate ?? Build.Plate ?? catalog.UsualPlate, Gangs, out plate);
        Volume = ResolvedBox.VolumeOf(source, part, Gangs, catalog);
        this.catalog = catalog;
        Operated = operated;
    }

    internal BoxTraits(DeviceBox source, BoxSurface listedUnder, Edge edge, Datum datum, PartsCatalog catalog, bool isUntouched)
        : this(source, listedUnder, edge, datum, catalog, OperatedParts.Of(source, catalog), isUntouched)
    {
    }

    /// <summary>What the box is for.</summary>
    public BoxPurpose Purpose => Source.Purpose;

    /// <summary>Its devices, from left to right.</summary>
    public Items<DeviceKind> Devices => Source.Devices;

    /// <summary>How many device widths it has.</summary>
    public int Gangs { get; }

    /// <summary>The kind of box.</summary>
    public BoxKind Kind => Build.Kind;

    /// <summary>How boxes of its kind are built.</summary>
    public KindPart Build { get; }

    /// <summary>From the center of one of its devices to the next.</summary>
    public Distance GangPitch => Build.GangPitch ?? catalog.GangPitch;

    /// <summary>Its size; zero where it isn't known.</summary>
    public BoxSize Size => ResolvedBox.SizeOf(Source, part);

    /// <summary>From its opening to its back: as stated, or as its published volume or its kind tells; null where none of them does.</summary>
    public DistanceRange? Depth => Size.Depth is { } deep ? deep : BoxDepths.Of(Kind, Gangs, Volume is { } all ? all - (Source.Extension ?? BoxHeights.Volume.Zero) : null, catalog);

    /// <summary>The size of its plate; null where it isn't known.</summary>
    public PlateSize? Plate => ResolvedBox.PlateOf(Source, plate);

    /// <summary>The volume marked on it or published for its size, with that of its rings and extensions; null where it isn't known.</summary>
    public Volume? Volume { get; }

    /// <summary>The room that it has at the least, whatever is marked on it: <see cref="Volume"/>, else that of the smallest box of its kind; null where none is known.</summary>
    public Volume? LeastVolume => ResolvedBox.LeastVolumeOf(Source, catalog);

    /// <summary>How far the operated parts of its devices reach from its center, all together; null where a device or its style isn't known, or none is operated.</summary>
    public OperableParts? Operable => Operated.Range is { Lowest: { IsExact: true } low, Highest: { IsExact: true } high } ? new(-low.From, high.From, GripHigh) : null;

    /// <summary>How far above its center the highest known grip is at its highest; null where no device has one that is known.</summary>
    public Distance? GripHigh => Operated.Grip is { IsExact: true } grip ? grip.From : null;

    /// <summary>Where its devices may be operated.</summary>
    internal OperatedParts Operated { get; }

    /// <summary>The surface it sits on.</summary>
    public BoxSurface Surface { get; }

    /// <summary>Whether it is listed under a floor or ceiling and placed in plan, whatever it sits on.</summary>
    internal bool IsListedFlat { get; }

    /// <summary>The edge that its height is measured to.</summary>
    public Edge Edge { get; }

    /// <summary>The datum that its height is measured from.</summary>
    public Datum Datum { get; }

    /// <summary>How it is held: as stated, else as its kind can only be; null where that doesn't tell either.</summary>
    public MountingMethod? Mounting => Source.Mounting?.How ?? Build.Mounting;

    /// <summary>Whether it is set into a wall or a ceiling, so that the surface ends at its edge, and not onto it.</summary>
    public bool IsFlush => Surface is BoxSurface.Wall or BoxSurface.Ceiling && Mounting is not (MountingMethod.Surface or MountingMethod.Cabinet);

    /// <summary>Whether its body is in the cavity of a wall.</summary>
    public bool IsRecessed => Surface == BoxSurface.Wall && IsFlush;

    /// <summary>The clear bays that its bar or bracket spans; null where that isn't stated.</summary>
    public DistanceRange? Span => Source.Mounting?.Span;

    /// <summary>The sides that a person can reach it from; null where it isn't stated.</summary>
    public Approach? Approach => Source.Approach;

    /// <summary>Whether it serves one appliance alone.</summary>
    public bool IsDedicated => Source.Dedicated is not null;

    /// <summary>How much of its receptacle a switch controls; null where it isn't stated.</summary>
    public SwitchedPart? Switched => Source.Switched;

    /// <summary>The rating of its receptacle; null where it isn't stated.</summary>
    public string? Rating => Source.Rating;

    /// <summary>Whether it was there before this work.</summary>
    public bool IsExisting => Source.Existing || IsUntouched;

    /// <summary>Whether it stays as it is and isn't judged: other boxes are still judged by where it is.</summary>
    public bool IsUntouched { get; }

    /// <summary>The height that the drawing asks for.</summary>
    public BoxHeight? Specified => Source.Specified;

    /// <summary>The cables that enter it.</summary>
    public Items<CableType> Cables => Source.Cables;

    /// <summary>How cables are held in it; null where it isn't stated.</summary>
    public CableClamps? Clamps => Source.Clamps;

    /// <summary>How far its front edge stands out from the framing; null where it isn't stated.</summary>
    public Distance? SetFor => Source.SetFor;

    /// <summary>How far one of its devices reaches back from its front edge; null where that isn't known.</summary>
    /// <param name="device">Its place among <see cref="Devices"/>.</param>
    public Distance? DeviceDepth(int device) => device < Source.DeviceDepths.Count ? Source.DeviceDepths[device] : catalog.TryFindDevice(Devices[device], out DevicePart? part) ? part.Depth : null;

    /// <summary>The box as it is described. Where it is must not be read from it.</summary>
    internal DeviceBox Source { get; }

    /// <summary>Whether two boxes have the same traits, so that what is stated for one holds for the other.</summary>
    internal static bool Same(DeviceBox a, DeviceBox b) =>
        ReferenceEquals(a, b)
        || (a.Purpose == b.Purpose && a.Gangs == b.Gangs && a.Kind == b.Kind && a.Plate == b.Plate && a.OnItsSide == b.OnItsSide
            && a.Surface == b.Surface && a.Approach == b.Approach && a.Existing == b.Existing && a.Untouched == b.Untouched && a.Clamps == b.Clamps && a.Size == b.Size
            && a.Volume == b.Volume && a.Specified == b.Specified && a.Dedicated == b.Dedicated && a.Mounting?.How == b.Mounting?.How && a.Mounting?.Span == b.Mounting?.Span
            && a.SetFor == b.SetFor && a.Extension == b.Extension && a.Devices == b.Devices && a.Cables == b.Cables && a.Conductors == b.Conductors
            && a.Connected == b.Connected && a.Fittings == b.Fittings && a.Switched == b.Switched && a.Rating == b.Rating && a.FireProtection == b.FireProtection
            && a.BoardGap == b.BoardGap && a.DeviceDepths == b.DeviceDepths && a.DeviceGangs == b.DeviceGangs && a.BackEntry == b.BackEntry && a.Compartments == b.Compartments && a.Luminaire == b.Luminaire);
}
