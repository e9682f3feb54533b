namespace BoxHeights;

/// <summary>Finds words in a text: any case, any number of blanks where the phrase has one, whole words only.</summary>
internal static class Phrase
{
    /// <summary>The longest of the phrases that stands at a place in the text.</summary>
    /// <param name="phrases">In lower case, single blanks.</param>
    /// <param name="text">The text.</param>
    /// <param name="index">Where to look; moved behind the phrase if there is one.</param>
    /// <returns>Its place among the phrases; −1 if none stands there.</returns>
    internal static int ReadLongest(string[] phrases, string text, ref int index)
    {
        int found = -1;
        int end = index;
        for (int i = 0; i < phrases.Length; i++)
        {
            int after = Match(phrases[i], text, index);
            if (after > end)
            {
                found = i;
                end = after;
            }
        }

        index = end;
        return found;
    }

    internal static void SkipBlanks(string text, ref int index)
    {
        while (index < text.Length && char.IsWhiteSpace(text[index]))
        {
            index++;
        }
    }

    private static int Match(string phrase, string text, int index)
    {
        foreach (char wanted in phrase)
        {
            if (wanted == ' ')
            {
                int before = index;
                SkipBlanks(text, ref index);
                if (index == before)
                {
                    return -1;
                }
            }
            else if (index < text.Length && TextCursor.ToLower(text[index]) == wanted)
            {
                index++;
            }
            else
            {
                return -1;
            }
        }

        bool wordGoesOn = index < text.Length && char.IsLetterOrDigit(phrase[phrase.Length - 1]) && char.IsLetterOrDigit(text[index]);
        return wordGoesOn ? -1 : index;
    }
}
