namespace BoxHeights.Rules;

/// <summary>What is in a box, counted so that it takes the least, or the most, of what the description leaves open.</summary>
internal sealed class FillContents
{
    private static readonly int Sizes = ConductorSize.Count;

    // Conductors by size, then yokes by size, then fittings by kind.
    private readonly int[] counts = new int[(2 * Sizes) + (int)BoxFitting.PlasticBarrier + 1];
    private int? wideAbove;
    private ConductorSize thinnest;
    private ConductorSize thickest;
    private int feeding;

    /// <summary>Counts what is in a box; whatever it counted before is forgotten.</summary>
    /// <param name="box">The box.</param>
    /// <param name="build">How it is built.</param>
    /// <param name="counting">What is taken of clamps and of wide devices; null where only its conductors are asked for.</param>
    /// <param name="most">Whether it takes the most that the description leaves open, else the least.</param>
    public FillContents Of(DeviceBox box, KindPart build, FillCounting? counting, bool most)
    {
        Clear();
        wideAbove = counting?.WideAbove;
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
            counts[(2 * Sizes) + (int)fitting]++;
        }

        Yokes(box, build, most);
        HasClamps = box.Clamps == CableClamps.Internal || (counting is { FlapIsClamp: true } && box.Clamps == CableClamps.Flap) || (most && MayHaveClamps(box, build));
        OnTerminals = most ? thickest : thinnest;
        return this;
    }

    /// <summary>The largest conductor in the box.</summary>
    public ConductorSize Largest { get; private set; }

    /// <summary>What a terminal block counts by: which conductors end on it isn't described.</summary>
    public ConductorSize OnTerminals { get; private set; }

    public bool HasClamps { get; private set; }

    public int Grounds { get; private set; }

    public ConductorSize LargestGround { get; private set; }

    public int IsolatedGrounds { get; private set; }

    public ConductorSize LargestIsolatedGround { get; private set; }

    /// <summary>Whether conductors of one size only can be connected to devices.</summary>
    public bool IsOfOneSize => thinnest == thickest;

    /// <summary>Whether a device may be connected to conductors of a size.</summary>
    public bool MayFeed(ConductorSize size) => (feeding & (1 << size.Place)) != 0;

    /// <summary>How many conductors of a size there are, loops twice; grounds aren't among them.</summary>
    public int ConductorsOf(ConductorSize size) => counts[size.Place];

    /// <summary>How many device widths are fed by conductors of a size.</summary>
    public int YokesOn(ConductorSize size) => counts[Sizes + size.Place];

    public int CountOf(BoxFitting fitting) => counts[(2 * Sizes) + (int)fitting];

    /// <summary>
    /// A device box whose devices aren't stated holds some in the end, and so may gangs that its devices leave; a device of an unknown kind may sit on a yoke, and a
    /// large receptacle on a wide one. Junction boxes hold none.
    /// </summary>
    public static bool MayHoldMore(DeviceBox box, KindPart build, int? wideAbove = null)
    {
        for (int i = 0; i < box.Devices.Count; i++)
        {
            if ((!box.Devices[i].IsKnown && !GangsNeeded.IsStated(box, i)) || (box.Gangs is null && IsWide(box, i, wideAbove)))
            {
                return true;
            }
        }

        return box.Devices.Count > 0 ? GangsLeft(box, wideAbove) > 0 : build.HoldsDevices;
    }

    /// <summary>What the description leaves open, so that there may be less or more in a box.</summary>
    public MissingFacts LeftOpen(DeviceBox box, KindPart build) =>
        (MayHoldMore(box, build, wideAbove) || !IsOfOneSize ? MissingFacts.Devices : MissingFacts.None) | (MayHaveClamps(box, build) ? MissingFacts.Clamps : MissingFacts.None);

    /// <summary>A one-gang plastic box holds cables by a flap unless it says otherwise, a cast box by its hubs; wider ones, and metal ones, often have clamps inside.</summary>
    public static bool MayHaveClamps(DeviceBox box, KindPart build) =>
        box.Clamps is null && build.NoClampsUpTo < (box.Compartments.Count == 0 ? ResolvedBox.GangsOf(box) : int.MaxValue);

    /// <summary>The gangs that its devices leave, for a wide one or for one more: as few as there may be.</summary>
    private static int GangsLeft(DeviceBox box, int? wideAbove)
    {
        int left = System.Math.Max(0, ResolvedBox.GangsOf(box) - GangsNeeded.ByAll(box));
        for (int i = 0; i < box.Devices.Count; i++)
        {
            left = IsWide(box, i, wideAbove) ? 0 : left;
        }

        return left;
    }

    /// <summary>Large straight-bladed receptacles are wider than one gang, twisted ones aren't: of one in a box of more gangs it is taken that it needs them.</summary>
    private static bool IsWide(DeviceBox box, int device, int? wideAbove) =>
        wideAbove is { } amperes && box.Devices[device] == DeviceKind.SingleReceptacle && !GangsNeeded.IsStated(box, device) && box.Rating is { } rating && ReceptacleRating.Read(rating).IsAbove(amperes);

    /// <summary>Allowances for each gang that a device needs to be mounted.</summary>
    private void Yokes(DeviceBox box, KindPart build, bool most)
    {
        int free = System.Math.Max(0, ResolvedBox.GangsOf(box) - GangsNeeded.ByAll(box));
        for (int i = 0; i < box.Devices.Count; i++)
        {
            DeviceKind device = box.Devices[i];
            if (device.IsOperated && (device.IsKnown || most || GangsNeeded.IsStated(box, i)))
            {
                int widths = GangsNeeded.By(box, i);
                if (IsWide(box, i, wideAbove))
                {
                    widths += most && box.Gangs is null ? 1 : free;
                    free = 0;
                }

                ConductorSize stated = i < box.Connected.Count ? box.Connected[i] : default;
                counts[Sizes + (stated != default ? stated : most ? thickest : thinnest).Place] += widths;
            }
        }

        // What is left is taken by one that is wider than it seems, or by one more.
        if (most && (box.Devices.Count > 0 || MayHoldMore(box, build, wideAbove)))
        {
            counts[Sizes + thickest.Place] += free;
        }
    }

    private void Clear()
    {
        System.Array.Clear(counts, 0, counts.Length);
        (thinnest, thickest, feeding) = (default, default, 0);
        (Largest, LargestGround, LargestIsolatedGround) = (default, default, default);
        (Grounds, IsolatedGrounds) = (0, 0);
    }

    private void Count(ConductorSize size, int count, int each, bool mayFeed)
    {
        counts[size.Place] += count * each;
        Largest = Thicker(Largest, size);
        if (mayFeed)
        {
            feeding |= 1 << size.Place;
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
