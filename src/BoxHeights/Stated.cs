using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What of a description is stated, in one line: what isn't says nothing. All that is, for rows hold descriptions, and stamps are made of what rows print.</summary>
internal static class Stated
{
    /// <summary>A line of what a thing is, and of its members by their names.</summary>
    public static string Line(string head, params (string Name, object? Value)[] members)
    {
        List<string> said = [];
        foreach ((string name, object? value) in members)
        {
            string text = value switch
            {
                null => "",
                true => name,
                false => "not " + name,
                Enum one => name + " " + Word(one),
                IFormattable number => name + " " + number.ToString(null, System.Globalization.CultureInfo.InvariantCulture),
                _ => value.ToString() is { Length: > 0 } words ? name + " " + (words.Contains(", ") && words[0] != '(' ? "(" + words + ")" : words) : "",
            };
            if (text.Length > 0)
            {
                said.Add(text);
            }
        }

        string tail = string.Join(", ", said);
        return tail.Length == 0 ? head.Length == 0 ? "nothing stated" : head.TrimEnd(':', ' ') : head.Length == 0 || head.EndsWith(": ", StringComparison.Ordinal) ? head + tail : head + ", " + tail;
    }

    /// <summary>One of a closed list, as a word in a line.</summary>
    public static string Word(Enum one) => one.ToString().ToLowerInvariant();

    /// <summary>Those of some parts that say something.</summary>
    public static string Joined(params string?[] parts) => string.Join(", ", Array.FindAll(parts, part => !string.IsNullOrEmpty(part)));
}
