namespace BoxHeights.Benchmarks;

/// <summary>A box in 68 bytes, so that 64 houses strain the caches little: heights in ticks fit an int up to 88 ft, what is yes or no is a bit.</summary>
internal readonly struct PackedBox
{
    public const int Switch = 0;
    public const int Dedicated = 1;
    public const int General = 2;
    public const int ForCounter = 3;
    public const int Counter = 4;
    public const int FromSide = 5;
    public const int FromFront = 6;
    public const int HasAsked = 7;
    public const int Finished = 8;

    private readonly int flags;
    private readonly byte conductors, grounds, clamps, yokes;

    public PackedBox(BoxCase box)
    {
        Value = (int)box.Value;
        Floor = (int)box.Floor;
        Seam = (int)box.Seam;
        Height = (int)box.BoxHeight;
        Below = (int)box.Below;
        Above = (int)box.Above;
        Grip = (int)box.Grip;
        Top = (int)box.CounterTop;
        Depth = (int)box.CounterDepth;
        Knee = (int)box.KneeSpace;
        Asked = (int)(box.Specified ?? 0);
        Edge = (byte)box.Edge;
        Purpose = (byte)box.Purpose;
        Group = (byte)(box.Purpose == 3 ? ModeTable.Groups - 1 : box.Group);
        conductors = (byte)box.Conductors;
        grounds = (byte)box.Grounds;
        clamps = (byte)box.Clamps;
        yokes = (byte)box.Yokes;
        Allowance = box.Allowance;
        Volume = box.Volume;
        flags = Bit(box.IsSwitch, Switch) | Bit(box.IsDedicated, Dedicated) | Bit(box.Purpose == 0, General) | Bit(box.Purpose == 2, ForCounter)
            | Bit(box.HasCounter, Counter) | Bit(box.FromSide, FromSide) | Bit(box.FromFront, FromFront) | Bit(box.Specified is not null, HasAsked)
            | Bit(box.AboveFinishedFloor, Finished);
    }

    public int Value { get; }

    public int Floor { get; }

    public int Seam { get; }

    public int Height { get; }

    public int Below { get; }

    public int Above { get; }

    public int Grip { get; }

    public int Top { get; }

    public int Depth { get; }

    public int Knee { get; }

    public int Asked { get; }

    public byte Edge { get; }

    public byte Purpose { get; }

    public byte Group { get; }

    public long Allowance { get; }

    public long Volume { get; }

    public int Center => Value + (Floor & Is(Finished)) + (((1 - Edge) * Height) >> 1);

    /// <summary>The fill in quarters of an allowance.</summary>
    public int Quarters => (4 * (conductors + clamps + (2 * yokes) + 1)) + ((grounds - 4) & ~((grounds - 4) >> 31));

    /// <summary>All ones for yes.</summary>
    public int Is(int flag) => -((flags >> flag) & 1);

    private static int Bit(bool yes, int flag) => (yes ? 1 : 0) << flag;
}
