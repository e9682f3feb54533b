using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>How much room conductors, clamps, devices, grounds and fittings take in a box: an explained sum after NEC 314.16.</summary>
/// <remarks>
/// Each cable brings its insulated conductors and one equipment ground, all of which end or are spliced in the box. Pigtails, connectors, locknuts and
/// bushings count nothing. What the description leaves open (clamps, devices, which conductors a device is connected to) is taken as little as it can be
/// by <see cref="Least"/> and as much as it can be by <see cref="Most"/>; where all is stated they are equal.
/// </remarks>
public sealed class BoxFill
{
    // An unmarked barrier, from memory: 314.16(A).
    private static readonly Volume MetalBarrier = Volume.FromCubicInches(0.5m);
    private static readonly Volume PlasticBarrier = Volume.FromCubicInches(1.0m);

    private BoxFill(Items<FillLine> lines)
    {
        Lines = lines;
        Volume total = Volume.Zero;
        foreach (FillLine line in lines)
        {
            total += line.Volume;
        }

        Total = total;
    }

    /// <summary>The lines of the sum.</summary>
    public Items<FillLine> Lines { get; }

    /// <summary>The sum.</summary>
    public Volume Total { get; }

    /// <summary>Adds up what a box holds for certain.</summary>
    /// <param name="box">The box; at least one cable or conductor enters it.</param>
    /// <param name="counting">How things count: <see cref="RuleSet"/> rows have it, see <see cref="FillLimit.Counting"/>.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BoxFill Least(DeviceBox box, FillCounting counting) => Of(box, counting, false);

    /// <summary>Adds up what a box may hold at most.</summary>
    /// <param name="box">The box; at least one cable or conductor enters it.</param>
    /// <param name="counting">How things count.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BoxFill Most(DeviceBox box, FillCounting counting) => Of(box, counting, true);

    /// <summary>The smallest volume in which boxes of its kind and gangs are sold that holds whatever may be in a box; null where none does, or none is known.</summary>
    /// <param name="box">The box; its own volume doesn't matter.</param>
    /// <param name="counting">How things count.</param>
    /// <param name="catalog">What boxes there are.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Volume? SmallestFor(DeviceBox box, FillCounting counting, PartsCatalog catalog)
    {
        Volume needed = Most(box, counting).Total - (box.Extension ?? Volume.Zero);
        foreach (Volume volume in NotNull(catalog, nameof(catalog)).StandardVolumes(ResolvedBox.KindOf(box), ResolvedBox.GangsOf(box)))
        {
            if (volume >= needed)
            {
                return volume;
            }
        }

        return null;
    }

    /// <summary>How many more cables of a type a box has room for, whatever it may hold else; null where its volume isn't known.</summary>
    /// <param name="cable">The type of cable; stated.</param>
    /// <param name="box">The box. It may be empty.</param>
    /// <param name="counting">How things count.</param>
    /// <param name="catalog">Where its volume is looked up if it isn't marked.</param>
    /// <returns>Zero where it is full, or more than full.</returns>
    /// <exception cref="ArgumentException"><paramref name="cable"/> isn't stated.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static int? RoomFor(CableType cable, DeviceBox box, FillCounting counting, PartsCatalog catalog)
    {
        if (cable == default)
        {
            throw new ArgumentException("Room is counted in cables of a type.", nameof(cable));
        }

        if (ResolvedBox.VolumeOf(NotNull(box, nameof(box)), NotNull(catalog, nameof(catalog))) is not { } room)
        {
            return null;
        }

        // More cables always take more, so the last number that fits is found by halving.
        int fits = 0;
        int tooMany = (int)Math.Min(MostCables, (room.Picoliters / cable.Size.Allowance.Picoliters) + 1);
        while (tooMany - fits > 1)
        {
            int middle = fits + ((tooMany - fits) / 2);
            if (Most(box.WithCables(Joined(box.Cables, cable, middle)), counting).Total <= room)
            {
                fits = middle;
            }
            else
            {
                tooMany = middle;
            }
        }

        return fits;
    }

    /// <summary>The sum in one line.</summary>
    public override string ToString() => "fill " + Total + " (" + string.Join("; ", Lines) + ")";

    /// <summary>Whether there is anything to count from.</summary>
    internal static bool IsCountable(DeviceBox box) => box.Cables.Count + box.Conductors.Count > 0;

    // No box is so large that more would fit: there is no need to lay them out.
    private const int MostCables = 10_000;

    private static BoxFill Of(DeviceBox box, FillCounting counting, bool most)
    {
        if (!IsCountable(NotNull(box, nameof(box))))
        {
            throw new ArgumentException("Fill is counted from cables and conductors, and there are none.", nameof(box));
        }

        FillContents contents = new(box, NotNull(counting, nameof(counting)).FlapIsClamp, most);
        List<FillLine> lines = [];
        AddBySize("conductors", "conductors", contents.ConductorsOf, 4, "(B)(1)");
        if (contents.HasClamps)
        {
            lines.Add(new("internal clamps", 4, contents.Largest.Allowance, "(B)(2)"));
        }

        AddFitting(BoxFitting.LuminaireStud, "luminaire stud", contents.Largest.Allowance, "(B)(3)", asOne: true);
        AddFitting(BoxFitting.Hickey, "hickey", contents.Largest.Allowance, "(B)(3)", asOne: true);
        AddBySize("device", "devices", contents.YokesOn, 8, "(B)(4)");
        AddGrounds(contents, counting.Grounds, lines);
        if (counting.CountsTerminalBlocks)
        {
            AddFitting(BoxFitting.TerminalBlock, "terminal blocks", contents.OnTerminals.Allowance, "(B)(6)");
        }

        AddFitting(BoxFitting.MetalBarrier, "metal barriers", MetalBarrier, "(A)");
        AddFitting(BoxFitting.PlasticBarrier, "nonmetallic barriers", PlasticBarrier, "(A)");
        return new(new(lines));

        void AddBySize(string one, string several, Func<int, int> countOf, int quarters, string paragraph)
        {
            for (int awg = ConductorSize.Awg18.Awg; awg > 0; awg--)
            {
                if (countOf(awg) is > 0 and var count)
                {
                    ConductorSize size = ConductorSize.FromAwg(awg);
                    string what = count == 1 ? one : several;
                    lines.Add(new(quarters == 4 ? size + " " + what : what + " on " + size, quarters * count, size.Allowance, paragraph));
                }
            }
        }

        // Of studs and hickeys each type counts once, however many there are.
        void AddFitting(BoxFitting fitting, string what, Volume allowance, string paragraph, bool asOne = false)
        {
            if (contents.CountOf(fitting) is > 0 and var count)
            {
                lines.Add(new(what, asOne ? 4 : 4 * count, allowance, paragraph));
            }
        }
    }

    private static void AddGrounds(FillContents contents, GroundCounting grounds, List<FillLine> lines)
    {
        if (grounds == GroundCounting.QuarterBeyondFour)
        {
            ConductorSize largest = contents.LargestGround > contents.LargestIsolatedGround ? contents.LargestGround : contents.LargestIsolatedGround;
            AddGround("equipment grounds", contents.Grounds + contents.IsolatedGrounds, largest, true);
            return;
        }

        AddGround("equipment grounds", contents.Grounds, contents.LargestGround, false);
        AddGround("isolated grounds", contents.IsolatedGrounds, contents.LargestIsolatedGround, false);

        void AddGround(string what, int count, ConductorSize largest, bool quarters)
        {
            if (count > 0)
            {
                lines.Add(new(what, quarters ? 4 + Math.Max(0, count - 4) : 4, largest.Allowance, "(B)(5)"));
            }
        }
    }

    private static Items<CableType> Joined(Items<CableType> cables, CableType more, int count)
    {
        List<CableType> all = [.. cables];
        for (int i = 0; i < count; i++)
        {
            all.Add(more);
        }

        return new(all);
    }

    private static T NotNull<T>(T value, string name)
        where T : class => value ?? throw new ArgumentNullException(name);
}
