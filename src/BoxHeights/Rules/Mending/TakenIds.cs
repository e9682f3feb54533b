using System;
using System.Collections.Generic;
using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>The boxes that the remedies of one round are about, each with the rule whose finding it mends: no two of them touch the same one.</summary>
internal sealed class TakenIds(Dwelling dwelling)
{
    private readonly Dictionary<string, string> taken = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> lastNumbers = new(StringComparer.Ordinal);
    private HashSet<string>? described;

    public int Count => taken.Count;

    /// <summary>The rule that a box is taken for; null where it isn't taken.</summary>
    public string? By(string id) => taken.TryGetValue(id, out string? rule) ? rule : null;

    public bool Overlap(List<string> ids) => ids.Exists(taken.ContainsKey);

    public void Take(IEnumerable<string> ids, Cause cause)
    {
        foreach (string id in ids)
        {
            taken[id] = cause.RuleId;
        }
    }

    /// <summary>A remedy that adds boxes, with the ids that they would get if what was taken before them were there already.</summary>
    public AddBox Apart(AddBox remedy)
    {
        if (!remedy.Placed.Exists(placed => taken.ContainsKey(placed.Box.Id)))
        {
            return remedy;
        }

        return new(remedy.Placed.Select(placed => new PlacedBox(placed.Address, placed.Box.WithId(NextOf(placed.Box.Id)))), remedy.Wording) { Words = remedy.Words, Brings = remedy.Brings };
    }

    private string NextOf(string id)
    {
        described ??= Described();
        (string name, int number) = Parted(id);
        number = lastNumbers.TryGetValue(name, out int last) && last > number ? last : number;
        string next;
        do
        {
            number++;
            next = name + "-" + number.ToString(CultureInfo.InvariantCulture);
        }
        while (described.Contains(next) || taken.ContainsKey(next));
        lastNumbers[name] = number;
        return next;
    }

    private HashSet<string> Described()
    {
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            ids.Add(placed.Box.Id);
        }

        return ids;
    }

    /// <summary>An id without the number behind it, and that number; 1 where it has none.</summary>
    private static (string Name, int Number) Parted(string id)
    {
        int dash = id.LastIndexOf('-');
        return dash > 0 && int.TryParse(id.Substring(dash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? (id.Substring(0, dash), number) : (id, 1);
    }
}
