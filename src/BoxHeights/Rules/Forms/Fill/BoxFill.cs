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
    private readonly FillCounting counting;
    private readonly FillContents contents;

    private BoxFill(DeviceBox box, FillCounting counting, KindPart build, bool most)
    {
        this.counting = counting;
        contents = new FillContents().Of(box, build, counting, most);
        Total = FillSum.Of(contents, counting, null);
    }

    /// <summary>The lines of the sum, written down as they are asked for.</summary>
    public Items<FillLine> Lines
    {
        get
        {
            List<FillLine> lines = [];
            _ = FillSum.Of(contents, counting, lines);
            return new(lines);
        }
    }

    /// <summary>The sum.</summary>
    public Volume Total { get; }

    /// <summary>Adds up what a box holds for certain.</summary>
    /// <param name="box">The box; at least one cable or conductor enters it.</param>
    /// <param name="counting">How things count: <see cref="RuleSet"/> rows have it, see <see cref="FillLimit.Counting"/>.</param>
    /// <param name="catalog">How boxes are built, where the box doesn't say; the generic parts unless given.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BoxFill Least(DeviceBox box, FillCounting counting, PartsCatalog? catalog = null) => Of(box, counting, catalog, false);

    /// <summary>Adds up what a box may hold at most.</summary>
    /// <param name="box">The box; at least one cable or conductor enters it.</param>
    /// <param name="counting">How things count.</param>
    /// <param name="catalog">How boxes are built, where the box doesn't say; the generic parts unless given.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BoxFill Most(DeviceBox box, FillCounting counting, PartsCatalog? catalog = null) => Of(box, counting, catalog, true);

    /// <summary>The smallest volume in which boxes of its kind and gangs are sold that holds whatever may be in a box; null where none does, or none is known.</summary>
    /// <param name="box">The box; its own volume doesn't matter.</param>
    /// <param name="counting">How things count.</param>
    /// <param name="catalog">What boxes there are.</param>
    /// <exception cref="ArgumentException">No conductor enters the box.</exception>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Volume? SmallestFor(DeviceBox box, FillCounting counting, PartsCatalog catalog)
    {
        Volume needed = Most(box, counting, Guard.NotNull(catalog, nameof(catalog))).Total - (box.Extension ?? Volume.Zero);
        foreach (Volume volume in catalog.StandardVolumes(ResolvedBox.KindOf(box, catalog), ResolvedBox.GangsOf(box)))
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

        if (ResolvedBox.VolumeOf(Guard.NotNull(box, nameof(box)), Guard.NotNull(catalog, nameof(catalog))) is not { } room)
        {
            return null;
        }

        // More cables always take more, so the last number that fits is found by halving.
        int fits = 0;
        int tooMany = (int)Math.Min(MostCables, (counting.CountIn(cable.Size, room) + 1));
        while (tooMany - fits > 1)
        {
            int middle = fits + ((tooMany - fits) / 2);
            if (Most(box.WithCables(Joined(box.Cables, cable, middle)), counting, catalog).Total <= room)
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
    public override string ToString() => ToString(LengthUnits.Inches);

    /// <summary>The sum and its lines: in cubic inches, or in cubic centimeters to a tenth.</summary>
    /// <param name="units">The units that the dwelling is marked in.</param>
    public string ToString(LengthUnits units) => Worded(units).ToString();

    internal Wording Worded(LengthUnits units) => $"fill {Printed.Of(Total, units, Rounding.Up):fill} ({Wording.Apart(Lines.Select(line => line.Worded(units))):lines})";

    /// <summary>Whether there is anything to count from.</summary>
    internal static bool IsCountable(DeviceBox box) => box.Cables.Count + box.Conductors.Count > 0;

    // No box is so large that more would fit: there is no need to lay them out.
    private const int MostCables = 10_000;

    /// <summary>The same of a box of which it is known how it is built.</summary>
    internal static BoxFill Of(DeviceBox box, FillCounting counting, KindPart build, bool most) => new(box, counting, build, most);

    private static BoxFill Of(DeviceBox box, FillCounting counting, PartsCatalog? catalog, bool most) => IsCountable(Guard.NotNull(box, nameof(box)))
        ? new(box, Guard.NotNull(counting, nameof(counting)), (catalog ?? PartsCatalog.Generic).BuildOf(ResolvedBox.KindOf(box, catalog ?? PartsCatalog.Generic)), most)
        : throw new ArgumentException("Fill is counted from cables and conductors, and there are none.", nameof(box));

    private static Items<CableType> Joined(Items<CableType> cables, CableType more, int count)
    {
        List<CableType> all = [.. cables];
        for (int i = 0; i < count; i++)
        {
            all.Add(more);
        }

        return new(all);
    }
}
