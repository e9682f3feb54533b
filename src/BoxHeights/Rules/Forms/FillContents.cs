namespace BoxHeights.Rules;

/// <summary>What is in a box, counted so that it takes the least, or the most, of what the description leaves open.</summary>
internal sealed class FillContents
{
    private static readonly int Gauges = ConductorSize.Awg18.Awg + 1;

    // Conductors by gauge, then yokes by gauge, then fittings by kind.
    private readonly int[] counts = new int[(2 * Gauges) + (int)BoxFitting.PlasticBarrier + 1];
    private ConductorSize thinnest;
    private ConductorSize thickest;
    private int feeding;

    public FillContents(DeviceBox box, bool flapIsClamp, bool most)
    {
        foreach (CableType cable in box.Cables)
        {
            Count(cable.Size, cable.InsulatedConductors, 1, mayFeed: true);
            if (cable.HasGround)
            {
                Ground(cable.Size, 1, isolated: false);
            }
        }

        foreach (LooseConductors loose in box.Conductors)
        {
            if (loose.IsGround)
            {
                Ground(loose.Size, loose.Count, loose.Use == ConductorUse.IsolatedGround);
            }
            else
            {
                // Wires of a luminaire feed nothing where there are cables.
                Count(loose.Size, loose.Count, loose.Use == ConductorUse.Loop ? 2 : 1, box.Cables.Count == 0);
            }
        }

        foreach (BoxFitting fitting in box.Fittings)
        {
            counts[(2 * Gauges) + (int)fitting]++;
        }

        Yokes(box, most);
        HasClamps = box.Clamps == CableClamps.Internal || (flapIsClamp && box.Clamps == CableClamps.Flap) || (most && MayHaveClamps(box));
        OnTerminals = most ? thickest : thinnest;
    }

    /// <summary>The largest conductor in the box.</summary>
    public ConductorSize Largest { get; private set; }

    /// <summary>What a terminal block counts by: which conductors end on it isn't described.</summary>
    public ConductorSize OnTerminals { get; }

    public bool HasClamps { get; }

    public int Grounds { get; private set; }

    public ConductorSize LargestGround { get; private set; }

    public int IsolatedGrounds { get; private set; }

    public ConductorSize LargestIsolatedGround { get; private set; }

    /// <summary>Whether conductors of one size only can be connected to devices.</summary>
    public bool IsOfOneSize => thinnest == thickest;

    /// <summary>Whether a device may be connected to conductors of a size.</summary>
    public bool MayFeed(int awg) => (feeding & (1 << awg)) != 0;

    /// <summary>How many conductors of a size there are, loops twice; grounds aren't among them.</summary>
    public int ConductorsOf(int awg) => counts[awg];

    /// <summary>How many device widths are fed by conductors of a size.</summary>
    public int YokesOn(int awg) => counts[Gauges + awg];

    public int CountOf(BoxFitting fitting) => counts[(2 * Gauges) + (int)fitting];

    /// <summary>A device box whose devices aren't stated holds some in the end; a device of an unknown kind may sit on a yoke. Junction boxes hold none.</summary>
    public static bool MayHoldMore(DeviceBox box)
    {
        foreach (DeviceKind device in box.Devices)
        {
            if (!device.IsKnown)
            {
                return true;
            }
        }

        BoxKind kind = ResolvedBox.KindOf(box);
        return box.Devices.Count == 0 && kind != BoxKind.Octagon && kind != BoxKind.FourSquare && kind != BoxKind.FourElevenSquare
            && kind != BoxKind.Pancake && kind != BoxKind.FanRated;
    }

    /// <summary>A one-gang plastic box holds cables by a flap unless it says otherwise, a cast box by its hubs; wider ones, and metal ones, often have clamps inside.</summary>
    public static bool MayHaveClamps(DeviceBox box)
    {
        BoxKind kind = ResolvedBox.KindOf(box);
        return box.Clamps is null && kind != BoxKind.Cast && !(ResolvedBox.GangsOf(box) == 1 && box.Compartments.Count == 0 && (kind == BoxKind.NailOn || kind == BoxKind.CutIn));
    }

    /// <summary>Receptacles for ranges and dryers need two gangs, and count for each.</summary>
    private static int WidthsOf(DeviceKind device) => device == DeviceKind.RangeReceptacle || device == DeviceKind.DryerReceptacle ? 2 : 1;

    private void Yokes(DeviceBox box, bool most)
    {
        for (int i = 0; i < box.Devices.Count; i++)
        {
            DeviceKind device = box.Devices[i];
            if (device.IsOperated && (device.IsKnown || most))
            {
                ConductorSize stated = i < box.Connected.Count ? box.Connected[i] : default;
                counts[Gauges + (stated != default ? stated : most ? thickest : thinnest).Awg] += WidthsOf(device);
            }
        }

        if (most && box.Devices.Count == 0 && MayHoldMore(box))
        {
            counts[Gauges + thickest.Awg] += ResolvedBox.GangsOf(box);
        }
    }

    private void Count(ConductorSize size, int count, int each, bool mayFeed)
    {
        counts[size.Awg] += count * each;
        Largest = Thicker(Largest, size);
        if (mayFeed)
        {
            feeding |= 1 << size.Awg;
            thickest = Thicker(thickest, size);
            thinnest = thinnest == default || size < thinnest ? size : thinnest;
        }
    }

    private void Ground(ConductorSize size, int count, bool isolated)
    {
        Largest = Thicker(Largest, size);
        if (isolated)
        {
            IsolatedGrounds += count;
            LargestIsolatedGround = Thicker(LargestIsolatedGround, size);
        }
        else
        {
            Grounds += count;
            LargestGround = Thicker(LargestGround, size);
        }
    }

    private static ConductorSize Thicker(ConductorSize one, ConductorSize other) => other > one ? other : one;
}
