using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Says what became of a box: what it was, what it is now, and why.</summary>
internal static class MendedText
{
    public static string Of(DeviceBox? was, PlacedBox placed, IEnumerable<int> because, List<Remedy> remedies, LengthUnits units)
    {
        DeviceBox now = placed.Box;
        List<string> changes = [];
        if (was is null)
        {
            changes.Add("add " + now.Purpose + " box" + (now.At is { } at ? ", " + Printed.Of(at, units) + " from the left end of its wall" : "") + (now.Height is { } height ? ", " + height.Exactly(units) : ""));
        }
        else
        {
            Tell(changes, (was.Measured?.Height ?? was.Height)?.Exactly(units), now.Height?.Exactly(units), "");
            Tell(changes, was.At is { } from ? Printed.Of(from, units) : null, now.At is { } to ? Printed.Of(to, units) : null, " from the left end of its wall");
            Tell(changes, was.SetFor is { } front ? Printed.Of(front, units) : null, now.SetFor is { } further ? Printed.Of(further, units) : null, " out from the framing");
            Tell(changes, was.Volume?.ToString(), now.Volume?.ToString(), "");
            Tell(changes, was.Kind?.ToString(), now.Kind?.ToString(), " box");
        }

        foreach (Remedy remedy in remedies)
        {
            // Blocks and brackets aren't the box's own, so that the box alone doesn't tell of them.
            if (remedy is AddBlocking or ChangeMounting)
            {
                changes.Add(remedy.Text);
            }
        }

        string reasons = string.Join(", ", because);
        return now.Id + " (" + placed.Address + "): " + string.Join("; ", changes) + (reasons.Length == 0 ? "" : " (see " + reasons + ")");
    }

    private static void Tell(List<string> changes, string? was, string? now, string what)
    {
        if (was != now && now is not null)
        {
            changes.Add(was is null ? "now " + now + what : "was " + was + ", now " + now + what);
        }
    }
}
