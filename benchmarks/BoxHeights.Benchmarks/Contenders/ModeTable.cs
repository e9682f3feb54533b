using System;

namespace BoxHeights.Benchmarks;

/// <summary>Counts heights by group and keeps the one that most share, of equally many the lowest. Allocates nothing after it is made.</summary>
internal sealed class ModeTable
{
    public const int Groups = 7;

    // A power of two, several times the heights of a house.
    private const int Slots = 512;
    private const int Free = int.MinValue;

    private readonly int[] keys = new int[Slots];
    private readonly int[] counts = new int[Slots];
    private readonly int[] most = new int[Groups];

    public int[] Levels { get; } = new int[Groups];

    public void Clear()
    {
        Array.Fill(keys, Free);
        Array.Clear(counts);
        Array.Clear(most);
    }

    public void Add(int group, int height)
    {
        // Heights are multiples of 1/32 in here, far more ticks than groups.
        int key = height + group;
        int slot = (int)((uint)(key * -1640531527) >> 23);
        while (keys[slot] != key && keys[slot] != Free)
        {
            slot = (slot + 1) & (Slots - 1);
        }

        keys[slot] = key;
        int count = ++counts[slot];

        // Whatever ends with the highest count passes here when it reaches it.
        bool better = count > most[group] || (count == most[group] && height < Levels[group]);
        most[group] = better ? count : most[group];
        Levels[group] = better ? height : Levels[group];
    }
}
