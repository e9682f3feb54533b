using System;
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
        foreach ((string? then, string? now, string what) in new[]
        {
            Changed(was.Measured?.Height ?? was.Height, Now.Height, height => height.Exactly(units), ""),
            Changed(was.At, Now.At, Print, " from the left end of its wall"),
            Changed(was.Plan, Now.Plan, place => Printed.Of(place.Right, units) + " right, " + Printed.Of(place.Into, units) + " in", " in plan"),
            Changed(was.SetFor, Now.SetFor, Print, " out from the framing"),
            Changed(was.Volume, Now.Volume, volume => volume.ToString(), ""),
            Changed(was.Kind, Now.Kind, kind => kind.ToString(), " box"),
        })
        {
            if (now is not null && now != then)
            {
                yield return (then, now, what);
            }
        }
    }

    /// <summary>What was and what is now, in words; nothing where it stays, which most does.</summary>
    private static (string? Then, string? Now, string What) Changed<T>(T? then, T? now, Func<T, string> print, string what)
        where T : struct, IEquatable<T> =>
        now is not { } some || (then is { } before && before.Equals(some)) ? (null, null, what) : (then is { } was ? print(was) : null, print(some), what);

    /// <summary>Blocks and brackets aren't the box's own, so that the box alone doesn't tell of them.</summary>
    private List<string> Held() => remedies.FindAll(remedy => remedy is AddBlocking or ChangeMounting).ConvertAll(remedy => remedy.Text);

    private string Print(Distance distance) => Printed.Of(distance, units).ToString();
}
