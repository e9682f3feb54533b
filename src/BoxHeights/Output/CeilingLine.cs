using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A line for recessed lights: where it would be with even spacing, and where a bay between joists is.</summary>
[Told]
public sealed partial record CeilingLine
{
    /// <summary>Where it is with even spacing, half of it at the walls: from the room's first wall where joists run along it, else from that wall's left end.</summary>
    public Distance Even { get; }

    /// <summary>The middle of the bay that it falls in, measured alike; null where it isn't known where joists are.</summary>
    public Distance? BetweenJoists { get; }

    /// <summary>Both places.</summary>
    public override string ToString() => Even + (BetweenJoists is { } bay ? ", between joists at " + bay : "");

    /// <summary>Lines of even spacing across the joists of a room; none unless its walls go round and its joists are stated.</summary>
    internal static Items<CeilingLine> In(ResolvedSpace space, int count)
    {
        List<CeilingLine> lines = [];
        if (space is { Room.Joists: { } joists, Plan.Extent: { } extent })
        {
            (Distance from, Distance span) = (joists.Across(extent.Least), joists.Across(extent.Most) - joists.Across(extent.Least));
            for (int line = 0; line < count; line++)
            {
                // Half a spacing stays at each wall.
                Distance even = from + Distance.FromTicks(span.Ticks / count * line) + Distance.FromTicks(span.Ticks / count / 2);
                lines.Add(new(even, joists.Bay(even)));
            }
        }

        return new(lines);
    }
}
