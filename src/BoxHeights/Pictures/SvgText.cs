using System.Text;

namespace BoxHeights;

/// <summary>What XML lets through: text stays text, whatever it holds.</summary>
internal static class SvgText
{
    private const char Isolate = '\u2068';
    private const char EndOfIsolate = '\u2069';
    private const char Replacement = '\uFFFD';

    /// <summary>A name of somebody's as it is shown: set apart, so that its direction turns nothing around it.</summary>
    public static string Isolated(string name)
    {
        bool plain = true;
        StringBuilder shown = new(name.Length);
        foreach (char one in name)
        {
            shown.Append(IsDirection(one) || char.IsControl(one) ? Replacement : one);
            plain &= one is >= ' ' and < (char)127;
        }

        return plain ? name : Isolate + shown.ToString() + EndOfIsolate;
    }

    /// <summary>A text of ours with names of somebody's in it: each stretch that runs from right to left is set apart, so that it turns no number or word beside it.</summary>
    public static string Mixed(string text)
    {
        StringBuilder shown = new(text.Length);
        int end = 0;
        for (int i = 0; i < text.Length; i++)
        {
            if (i >= end && IsRightToLeft(text[i]))
            {
                shown.Append(Isolate);
                end = EndOfStretch(text, i);
            }

            shown.Append(IsDirection(text[i]) ? Replacement : text[i]);
            if (i + 1 == end)
            {
                shown.Append(EndOfIsolate);
            }
        }

        return shown.ToString();
    }

    /// <summary>What a picture of a place is called: the house, where it is known, and the place.</summary>
    public static string Title(string house, string place) => (house.Length == 0 ? "" : Isolated(house) + ": ") + Isolated(place);

    /// <summary>What a thing is called: what it is, and its name. The kind of a counter is the room that it is for.</summary>
    public static string Thing(bool isCounter, string kind, string? id)
    {
        string what = isCounter ? "counter" : kind;
        return id is null || id == what ? what : what + " " + Isolated(id);
    }

    /// <summary>Appends text for an element or an attribute in double quotes.</summary>
    public static void AppendEscaped(StringBuilder to, string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            char one = text[i];
            switch (one)
            {
                case '&':
                    to.Append("&amp;");
                    break;
                case '<':
                    to.Append("&lt;");
                    break;
                case '>':
                    to.Append("&gt;");
                    break;
                case '"':
                    to.Append("&quot;");
                    break;
                case '\t' or '\n' or '\r':
                    to.Append("&#").Append((int)one).Append(';');
                    break;
                default:
                    if (char.IsHighSurrogate(one) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
                    {
                        to.Append(one).Append(text[++i]);
                    }
                    else
                    {
                        to.Append(one < ' ' || char.IsSurrogate(one) || one >= '\uFFFE' ? Replacement : one);
                    }

                    break;
            }
        }
    }

    /// <summary>Appends lines of text for an element that keeps them.</summary>
    public static void AppendLines(StringBuilder to, string text)
    {
        string between = "";
        foreach (string line in text.Split('\n'))
        {
            to.Append(between);
            AppendEscaped(to, Mixed(line));
            between = "\n";
        }
    }

    /// <summary>A name as part of an id: letters, digits and "-" as they are, anything else by its number.</summary>
    public static string AsId(string name)
    {
        StringBuilder id = new(name.Length);
        foreach (char one in name)
        {
            if (one is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '-')
            {
                id.Append(one);
            }
            else
            {
                id.Append('_').Append(((int)one).ToString("X4", System.Globalization.CultureInfo.InvariantCulture));
            }
        }

        return id.ToString();
    }

    /// <summary>Letters of scripts that run from right to left: Hebrew, Arabic and their like, and the blocks set aside for more.</summary>
    private static bool IsRightToLeft(char one) => one is (>= '\u0590' and <= '\u08FF') or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFC') or (>= '\uD802' and <= '\uD803') or '\uD83A' or '\uD83B';

    /// <summary>Behind the last letter from right to left before a letter or digit from left to right.</summary>
    private static int EndOfStretch(string text, int start)
    {
        int end = start;
        for (int i = start; i < text.Length && (IsRightToLeft(text[i]) || !char.IsLetterOrDigit(text[i])); i++)
        {
            end = IsRightToLeft(text[i]) ? i + 1 : end;
        }

        return end;
    }

    private static bool IsDirection(char one) => one is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
