using System;

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
            : throw new ArgumentException("A kind is named in lower-case words joined by single hyphens, such as \"three-way-switch\".", argument);
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
