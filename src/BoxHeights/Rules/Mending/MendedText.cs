using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Says what became of a box: what it was, what it is now, and why.</summary>
internal sealed class MendedText(DeviceBox? was, PlacedBox placed, Items<int> because, List<Remedy> remedies, LengthUnits units)
{
    private DeviceBox Now => placed.Box;

    /// <summary>What to do, in one line.</summary>
    public string Line()
    {
        List<string> changes = [];
        if (was is null)
        {
            changes.Add("add " + Now.Purpose + " box" + (Now.At is { } at ? ", " + Print(at) + " from the left end of its wall" : "") + (Now.Height is { } height ? ", " + height.Exactly(units) : ""));
        }

        foreach ((string? then, string now, string what) in Differences())
        {
            changes.Add((then is null ? "" : "was " + then + ", ") + "now " + now + what);
        }

        changes.AddRange(Held());
        return Now.Id + " (" + placed.Address + "): " + string.Join("; ", changes) + (because.Count == 0 ? "" : " (see " + because + ")");
    }

    /// <summary>How it was, for a paper that says how it is.</summary>
    public string Was()
    {
        List<string> parts = was is null ? ["added"] : [];
        foreach ((string? then, string now, string what) in Differences())
        {
            parts.Add(then is null ? "now " + now + what : "was " + then + what);
        }

        parts.AddRange(Held());
        return string.Join("; ", parts) + (because.Count == 0 ? "" : ", see " + because);
    }

    private IEnumerable<(string? Then, string Now, string What)> Differences()
    {
        if (was is null)
        {
            yield break;
        }

        // A box that was measured is where it was found.
        (string?, string?, string)[] all =
        [
            ((was.Measured?.Height ?? was.Height)?.Exactly(units), Now.Height?.Exactly(units), ""),
            (Print(was.At), Print(Now.At), " from the left end of its wall"),
            (Print(was.Plan), Print(Now.Plan), " in plan"),
            (Print(was.SetFor), Print(Now.SetFor), " out from the framing"),
            (was.Volume?.ToString(), Now.Volume?.ToString(), ""),
            (was.Kind?.ToString(), Now.Kind?.ToString(), " box"),
        ];
        foreach ((string? then, string? now, string what) in all)
        {
            if (now is not null && now != then)
            {
                yield return (then, now, what);
            }
        }
    }

    /// <summary>Blocks and brackets aren't the box's own, so that the box alone doesn't tell of them.</summary>
    private List<string> Held() => remedies.FindAll(remedy => remedy is AddBlocking or ChangeMounting).ConvertAll(remedy => remedy.Text);

    private string? Print(PlanPoint? place) => place is { } some ? Printed.Of(some.Right, units) + " right, " + Printed.Of(some.Into, units) + " in" : null;

    private string? Print(Distance? distance) => distance is { } some ? Printed.Of(some, units) : null;
}
