using System;
using System.Text;

namespace BoxHeights;

/// <summary>The one form that the names of open kinds have.</summary>
internal static class KindName
{
    internal static string Check(string name, string argument)
    {
        if (name is null)
        {
            throw new ArgumentNullException(argument);
        }

        return IsKebab(name)
            ? name
            : throw new ArgumentException(
                "A kind is named in lower-case words joined by single hyphens, such as \"three-way-switch\""
                + (Likened(name) is { Length: > 0 } likened ? "; \"" + name + "\" is perhaps \"" + likened + "\"." : "."),
                argument);
    }

    /// <summary>A name written in another way, in the form that names have: "Three_WaySwitch" as "three-way-switch"; empty where nothing of it is left.</summary>
    private static string Likened(string name)
    {
        StringBuilder words = new();
        char before = '-';
        foreach (char c in name)
        {
            char lower = c is >= 'A' and <= 'Z' ? (char)(c | 0x20) : c;
            if (lower is not ((>= 'a' and <= 'z') or (>= '0' and <= '9')))
            {
                before = '-';
                continue;
            }

            bool begins = before == '-' || (lower != c && before is >= 'a' and <= 'z');
            words.Append(begins && words.Length > 0 ? "-" : "").Append(lower);
            before = c;
        }

        return words.ToString();
    }

    private static bool IsKebab(string name)
    {
        bool inWord = false;
        foreach (char c in name)
        {
            if (c is (>= 'a' and <= 'z') or (>= '0' and <= '9'))
            {
                inWord = true;
            }
            else if (c == '-' && inWord)
            {
                inWord = false;
            }
            else
            {
                return false;
            }
        }

        // Also false for the empty name and for a hyphen at the end.
        return inWord;
    }
}
