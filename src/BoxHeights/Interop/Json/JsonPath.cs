using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights.Interop;

/// <summary>The way from the document to the value at hand, while it is read or written.</summary>
internal sealed class JsonPath
{
    private readonly List<(string? Name, int Index)> steps = [];

    internal void Enter(string name) => steps.Add((name, 0));

    internal void Enter(int index) => steps.Add((null, index));

    /// <summary>How many steps there are.</summary>
    internal int Count => steps.Count;

    /// <summary>Leaves all that lies beyond so many steps.</summary>
    internal void GoBack(int count) => steps.RemoveRange(count, steps.Count - count);

    internal void Leave() => steps.RemoveAt(steps.Count - 1);

    public override string ToString()
    {
        StringBuilder path = new("$");
        foreach ((string? name, int index) in steps)
        {
            if (name is null)
            {
                path.Append('[').Append(index.ToString(CultureInfo.InvariantCulture)).Append(']');
            }
            else if (IsPlain(name))
            {
                path.Append('.').Append(name);
            }
            else
            {
                path.Append("['").Append(JsonLimits.Shown(name)).Append("']");
            }
        }

        return path.ToString();
    }

    private static bool IsPlain(string name)
    {
        foreach (char c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c != '$')
            {
                return false;
            }
        }

        return name.Length is > 0 and <= 60;
    }
}
