using System.Collections.Generic;

namespace BoxHeights.Tests.Standards;

/// <summary>Draws from a seed, the same on every framework.</summary>
internal sealed class Draw(int seed)
{
    private uint state = unchecked(((uint)seed * 2654435761u) ^ 0x9E3779B9u) | 1u;

    public int Below(int count)
    {
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        return (int)((state >> 3) % (uint)count);
    }

    public int Between(int low, int high) => low + Below(high - low + 1);

    public bool Chance(int percent) => Below(100) < percent;

    /// <summary>Draws of their own, which leave these as they are.</summary>
    public Draw Aside() => new(unchecked((int)state));

    public T One<T>(params T[] choices) => choices[Below(choices.Length)];

    public T OneOf<T>(IReadOnlyList<T> choices) => choices[Below(choices.Count)];
}
