using System;

namespace BoxHeights;

/// <summary>Where something of a dwelling is: a room or outside face, a surface of it ("kitchen/north", "kitchen/ceiling"), or a thing there ("kitchen/north/window").</summary>
/// <remarks>Equal where they print the same. <c>default</c> has no space, and prints as nothing.</remarks>
public readonly partial record struct SurfaceAddress
{
    /// <summary>What stands between the ids of an address, and so in none of them.</summary>
    internal const char Slash = '/';

    private readonly string? text;

    private SurfaceAddress(string text) => this.text = text;

    /// <summary>The id of the room or outside face; all of it where it has no parts.</summary>
    public string Space => Part(0) ?? "";

    /// <summary>The id of the wall, "ceiling" or "floor", or of a thing that stands in the room; null for the room itself.</summary>
    public string? Surface => Part(1);

    /// <summary>The id of a thing on the surface; null for the surface itself.</summary>
    public string? Thing => Part(2);

    /// <summary>Its text, for whoever wants that.</summary>
    /// <param name="address">The address.</param>
    public static implicit operator string(SurfaceAddress address) => address.ToString();

    /// <summary>Reads an address: one to three ids with slashes between.</summary>
    /// <param name="text">"kitchen", "kitchen/north" or "kitchen/north/window".</param>
    /// <exception cref="FormatException">It is none.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    public static SurfaceAddress Parse(string text) => TryParse(text ?? throw new ArgumentNullException(nameof(text)), out SurfaceAddress address)
        ? address
        : throw new FormatException("\"" + text + "\" is no address: one is written \"kitchen\", \"kitchen/north\" or \"kitchen/north/window\".");

    /// <summary>Reads an address.</summary>
    /// <param name="text">One to three ids with slashes between.</param>
    /// <param name="address">The address; <c>default</c> where it is none.</param>
    /// <returns>Whether it is one.</returns>
    public static bool TryParse(string? text, out SurfaceAddress address)
    {
        string[] parts = (text ?? "").Split(Slash);
        bool good = parts.Length <= 3 && Array.TrueForAll(parts, part => !string.IsNullOrWhiteSpace(part));
        address = good ? new(text!) : default;
        return good;
    }

    /// <summary>Whether it is something of a room, or of a surface: "kitchen/north" is part of "kitchen".</summary>
    /// <param name="whole">The address of a room, a face or a surface.</param>
    public bool IsPartOf(string whole) => whole is not null && ToString() is { } here && here.Length > whole.Length && here[whole.Length] == Slash && here.StartsWith(whole, StringComparison.Ordinal);

    /// <summary>The ids with spaces between.</summary>
    internal string InWords => ToString().Replace(Slash, ' ');

    /// <summary>The address of a part, in text: a wall of a room, an opening in a wall.</summary>
    internal static string Of(string whole, string part) => whole + Slash + part;

    /// <summary>Whether an address in text is that of a part.</summary>
    internal static bool Is(string address, string whole, string part) =>
        address.Length == whole.Length + 1 + part.Length && address[whole.Length] == Slash && address.StartsWith(whole, StringComparison.Ordinal) && address.EndsWith(part, StringComparison.Ordinal);

    /// <summary>What an address in text says, which nobody has to have checked.</summary>
    internal static SurfaceAddress Read(string text) => new(text);

    /// <summary>The ids with slashes between.</summary>
    public override string ToString() => text ?? "";

    private string? Part(int index)
    {
        string all = ToString();
        int from = 0;
        for (; index > 0; index--)
        {
            from = all.IndexOf(Slash, from) + 1;
            if (from == 0)
            {
                return null;
            }
        }

        int end = all.IndexOf(Slash, from);
        return from == 0 && end < 0 ? all : all.Substring(from, (end < 0 ? all.Length : end) - from);
    }
}
