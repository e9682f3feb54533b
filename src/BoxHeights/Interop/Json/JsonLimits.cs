using static System.FormattableString;

namespace BoxHeights.Interop;

/// <summary>How large a document may be. Far beyond any house, and small enough that a hostile text costs little.</summary>
internal static class JsonLimits
{
    internal const int Bytes = 16 * 1024 * 1024;
    internal const int Characters = 10_000;
    internal const int Items = 100_000;
    internal const int Depth = 64;

    /// <summary>So many faults are told at once; reading ends with the last of them.</summary>
    internal const int Faults = 100;

    internal static string TooLong { get; } = Invariant($"the text is longer than {Bytes / (1024 * 1024)} MB");

    internal static string TooManyCharacters { get; } = Invariant($"a text here has at most {Characters} characters");

    internal static string TooManyItems { get; } = Invariant($"a list here has at most {Items} items");

    /// <summary>A text short enough to be shown in a message.</summary>
    internal static string Shown(string text)
    {
        const int longest = 60;
        return text.Length > longest ? text.Remove(longest) + "…" : text;
    }

    /// <summary>The place of the first half of a surrogate pair that stands alone, or −1. Such a text has no UTF-8.</summary>
    internal static int LoneSurrogate(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
            {
                continue;
            }

            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
            {
                return i;
            }

            i++;
        }

        return -1;
    }
}
