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

    /// <summary>What a picture of a place is called: the house, where it is known, and the place.</summary>
    public static string Title(string house, string place) => (house.Length == 0 ? "" : Isolated(house) + ": ") + Isolated(place);

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
            AppendEscaped(to, line);
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

    private static bool IsDirection(char one) => one is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
