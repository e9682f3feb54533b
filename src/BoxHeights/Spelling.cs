using System;

namespace BoxHeights;

/// <summary>Finds the word that someone may have meant.</summary>
internal static class Spelling
{
    /// <summary>The word that the fewest changes of a letter make of a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="words">The words; at least one.</param>
    /// <param name="isNear">Whether at most a third of the letters change, or two.</param>
    internal static string Nearest(string text, string[] words, out bool isNear)
    {
        string nearest = words[0];
        int fewest = int.MaxValue;
        foreach (string word in words)
        {
            int changes = Changes(text, word);
            if (changes < fewest)
            {
                fewest = changes;
                nearest = word;
            }
        }

        isNear = fewest <= Math.Max(2, nearest.Length / 3) && fewest < nearest.Length;
        return nearest;
    }

    /// <summary>The name that may have been meant by one that is none of them: spelled nearly so, or by its last word ("receptacle" of "duplex-receptacle").</summary>
    /// <returns>Null where none is near.</returns>
    internal static string? Meant(string name, string[] names)
    {
        string whole = Nearest(name, names, out bool isNear);
        if (isNear)
        {
            return whole;
        }

        string[] lastWords = Array.ConvertAll(names, one => one.Substring(one.LastIndexOf('-') + 1));
        string last = Nearest(name, lastWords, out isNear);
        return isNear ? names[Array.IndexOf(lastWords, last)] : null;
    }

    // Levenshtein's distance, with capitals alike.
    private static int Changes(string text, string word)
    {
        int[] above = new int[word.Length + 1];
        for (int j = 0; j <= word.Length; j++)
        {
            above[j] = j;
        }

        for (int i = 0; i < text.Length; i++)
        {
            int diagonal = above[0]++;
            for (int j = 0; j < word.Length; j++)
            {
                bool same = char.ToLowerInvariant(text[i]) == char.ToLowerInvariant(word[j]);
                int best = Math.Min(diagonal + (same ? 0 : 1), 1 + Math.Min(above[j], above[j + 1]));
                diagonal = above[j + 1];
                above[j + 1] = best;
            }
        }

        return above[word.Length];
    }
}
