using System;
using System.Text;

namespace BoxHeights;

/// <content>Text, the same in every culture.</content>
public readonly partial record struct DistanceSet : IFormattable
{
    /// <summary>The stretches in words: <c>15 in to 44 in or 48 in</c>, <c>at most 48 in</c>, <c>at least 50 in</c>, <c>anything</c>, <c>nothing</c>.</summary>
    public override string ToString() => ToString(null, null);

    /// <summary>The stretches in a format of distances.</summary>
    /// <param name="format">As for <see cref="Distance.ToString(string?, IFormatProvider?)"/>.</param>
    /// <param name="formatProvider">Not used: text is the same in every culture.</param>
    /// <exception cref="FormatException">There is no such format.</exception>
    public string ToString(string? format, IFormatProvider? formatProvider = null)
    {
        if (IsEmpty || IsAll)
        {
            return IsEmpty ? "nothing" : "anything";
        }

        StringBuilder words = new();
        for (int i = 0; i < count; i++)
        {
            DistanceRange stretch = this[i];
            words.Append(i == 0 ? "" : " or ");
            words.Append(
                stretch.From == Distance.MinValue ? "at most " + stretch.To.ToString(format, formatProvider)
                : stretch.To == Distance.MaxValue ? "at least " + stretch.From.ToString(format, formatProvider)
                : stretch.ToString(format, formatProvider));
        }

        return words.ToString();
    }
}
