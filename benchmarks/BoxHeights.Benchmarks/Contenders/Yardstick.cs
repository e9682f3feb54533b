using System;
using System.Collections.Generic;
using System.Numerics;

namespace BoxHeights.Benchmarks;

/// <summary>The practical limit: one hand-written loop over packed boxes without branches, with findings in a buffer. Other contenders are measured against it.</summary>
internal sealed class Yardstick : Contender
{
    private const int Inch = (int)BoxCase.Inch;
    private const int Tolerance = (int)PlainChecks.Tolerance;

    // 250 in: beyond every height here, and far from overflow.
    private const int Far = 250 * Inch;
    private const int MostBoxes = 320;
    private const int HabitBits = (1 << 5) | (1 << 6) | (1 << 7);
    private const int LevelBit = 1 << 9;

    // By purpose: the habit's ends, and how many half boxes are added to get the center.
    private static readonly int[] HabitLow = [12 * Inch, 42 * Inch, 42 * Inch, -Far];
    private static readonly int[] HabitLowHalves = [1, -1, 0, 0];
    private static readonly int[] HabitHigh = [18 * Inch, 52 * Inch, 52 * Inch, Far];
    private static readonly int[] HabitHighHalves = [0, -1, -1, 0];

    private readonly BoxCase[][] houses;
    private readonly PackedBox[][] packed;
    private readonly PackedBox[]? repacked;
    private readonly ModeTable modes = new();
    private readonly int[] centers = new int[MostBoxes];
    private readonly int[] hits = new int[MostBoxes];
    private readonly int[] bitsOf = new int[MostBoxes];
    private readonly int[] findings = new int[MostBoxes * Workload.RuleIds.Length];

    /// <summary>A yardstick over a workload.</summary>
    /// <param name="workload">The houses.</param>
    /// <param name="packing">Whether flat objects are packed each time, or are there packed.</param>
    public Yardstick(Workload workload, bool packing)
        : base(packing ? "fused loop, packing flat objects" : "fused loop over packed boxes: the yardstick")
    {
        houses = workload.Cases;
        packed = packing ? [] : Array.ConvertAll(houses, house => Array.ConvertAll(house, box => new PackedBox(box)));
        repacked = packing ? new PackedBox[MostBoxes] : null;
    }

    public override int Judge(int house)
    {
        BoxCase[] boxes = houses[house];
        if (repacked is null)
        {
            return Judge(packed[house], boxes);
        }

        for (int i = 0; i < boxes.Length; i++)
        {
            repacked[i] = new(boxes[i]);
        }

        return Judge(repacked.AsSpan(0, boxes.Length), boxes);
    }

    public override IEnumerable<(string Box, string Rule)> Find(int house)
    {
        int count = Judge(house);
        for (int i = 0; i < count; i++)
        {
            yield return (houses[house][findings[i] >> 4].Id, Workload.RuleIds[findings[i] & 15]);
        }
    }

    private static int Negative(int value) => value >> 31;

    private int Judge(ReadOnlySpan<PackedBox> packedBoxes, BoxCase[] boxes)
    {
        modes.Clear();
        for (int i = 0; i < packedBoxes.Length; i++)
        {
            ref readonly PackedBox box = ref packedBoxes[i];
            centers[i] = box.Center;
            modes.Add(box.Group, box.Center);
        }

        int hitCount = 0;
        for (int i = 0; i < packedBoxes.Length; i++)
        {
            ref readonly PackedBox box = ref packedBoxes[i];
            int bits = Bits(box, centers[i], modes.Levels[box.Group]);
            bitsOf[i] = bits;
            hits[hitCount] = i;
            hitCount += bits == 0 ? 0 : 1;
        }

        int found = 0;
        for (int h = 0; h < hitCount; h++)
        {
            int i = hits[h];
            int bits = bitsOf[i];
            if ((bits & (HabitBits | LevelBit)) != 0)
            {
                bits = WithoutExcused(boxes[i], bits, modes.Levels[packedBoxes[i].Group]);
            }

            for (; bits != 0; bits &= bits - 1)
            {
                findings[found++] = (i << 4) | BitOperations.TrailingZeroCount(bits);
            }
        }

        return found;
    }

    private static int Bits(in PackedBox box, int center, int level)
    {
        int half = box.Height >> 1;
        int overFloor = center - box.Floor;
        int low = overFloor - box.Below;
        int high = overFloor + box.Above;

        // A limit that doesn't apply is far below: masks of ones pick between two values.
        int side = ((46 * Inch) + ((2 * Inch) & ~Negative((10 * Inch) - box.Depth)))
            - (Far & (Negative((24 * Inch) - box.Depth) | Negative((34 * Inch) - box.Top) | ~box.Is(PackedBox.FromSide)));
        int front = ((44 * Inch) + ((4 * Inch) & ~Negative((20 * Inch) - box.Depth)))
            - (Far & (Negative((25 * Inch) - box.Depth) | Negative(box.Knee - box.Depth) | ~box.Is(PackedBox.FromFront)));
        int reached = Math.Max(side, front);
        int over = box.Is(PackedBox.Counter) & Negative(box.Top - low);
        int limit = (reached & over) | ((48 * Inch) & ~over);

        int purpose = box.Purpose;
        int habitLow = HabitLow[purpose] + (HabitLowHalves[purpose] * half);
        int habitHigh = HabitHigh[purpose] + (HabitHighHalves[purpose] * half);
        int habit = Negative((center - habitLow) | (habitHigh - center));

        int seam = Negative(center - half - box.Seam) & Negative(box.Seam - center - half);
        int asked = center - box.Asked;
        int off = center - level;
        int full = (int)(((4 * box.Volume) - (box.Quarters * box.Allowance)) >> 63);

        int bits = Negative((low - (15 * Inch)) | (limit - high)) & ~box.Is(PackedBox.Dedicated) & 1;
        bits |= Negative((79 * Inch) - overFloor - box.Grip) & box.Is(PackedBox.Switch) & (1 << 1);
        bits |= Negative((66 * Inch) - overFloor) & box.Is(PackedBox.General) & (1 << 2);
        bits |= Negative(box.Top + (20 * Inch) - overFloor) & box.Is(PackedBox.Counter) & box.Is(PackedBox.ForCounter) & (1 << 3);
        bits |= seam & (1 << 4);
        bits |= habit & ((1 << 5) << purpose) & HabitBits;
        bits |= Negative((Tolerance - asked) | (Tolerance + asked)) & box.Is(PackedBox.HasAsked) & (1 << 8);
        bits |= Negative((Tolerance - off) | (Tolerance + off)) & Negative(purpose - 3) & LevelBit;
        return bits | (full & (1 << 10));
    }

    /// <summary>Takes out a habit that nothing allows here, and a level that something keeps the box from. Rare, so not in the loop.</summary>
    private static int WithoutExcused(BoxCase box, int bits, long level)
    {
        if ((bits & HabitBits) != 0 && PlainChecks.HabitOrForced(box, box.Center))
        {
            bits &= ~HabitBits;
        }

        return (bits & LevelBit) != 0 && !PlainChecks.CanBeAt(box, level) ? bits & ~LevelBit : bits;
    }
}
