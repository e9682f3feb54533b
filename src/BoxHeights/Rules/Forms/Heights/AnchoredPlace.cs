using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box belongs to a thing that stands against its wall, and its center is beside or behind that. Silent on walls where no such thing is described.</summary>
public sealed record AnchoredPlace : PlacementRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    /// <param name="anchor">The thing, and how far from it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="anchor"/> is null.</exception>
    public AnchoredPlace(string id, string summary, Severity severity, Citation citation, PlaceAnchor anchor)
        : base(id, summary, severity, citation) => Anchor = anchor ?? throw new ArgumentNullException(nameof(anchor));

    /// <summary>Whether a box on another wall is out of place where such a thing stands in the room: an appliance's, and not what goes beside a bed.</summary>
    public bool OnItsWall { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Anchor + (OnItsWall ? ", on its own wall" : "");

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (Anchor is not { } anchor)
        {
            return;
        }

        bool any = false;
        List<(Distance Left, Distance Right)> allowed = [];
        foreach ((_, _, Distance? start, Distance? end) in anchor.ThingsOn(site.Fixtures, site.Wall, site.Usual))
        {
            if (start is not { } left || end is not { } right)
            {
                statement.NotJudged($"where the {Wording.Or(anchor.Things.Select(Wording.Term)):things} stands along its wall isn't stated");
                return;
            }

            any = true;
            if (anchor.Beyond is { } beyond)
            {
                allowed.Add((left - anchor.UpTo, left - beyond));
                allowed.Add((right + beyond, right + anchor.UpTo));
            }
            else
            {
                allowed.Add((left - anchor.UpTo, right + anchor.UpTo));
            }
        }

        if (!any)
        {
            if (OnItsWall && site.Surface.Space.Room is { } room && StandsIn(room, anchor, site.Usual))
            {
                statement.Everywhere(AllowedHeights.Nothing);
            }

            return;
        }

        // What lies between the stretches isn't allowed.
        allowed.Sort((a, b) => a.Left.CompareTo(b.Left));
        Distance tick = Distance.FromTicks(1);
        Distance from = Distance.MinValue;
        foreach ((Distance left, Distance right) in allowed)
        {
            statement.Within(from, left - tick, AllowedHeights.Nothing);
            from = Distance.Max(from, right + tick);
        }

        statement.Within(from, Distance.MaxValue, AllowedHeights.Nothing);
    }

    /// <summary>Whether such a thing stands against a wall of a room.</summary>
    private static bool StandsIn(Room room, PlaceAnchor anchor, UsualMeasures usual)
    {
        Items<Fixture> standing = room.Fixtures.Where(fixture => fixture.Wall is not null);
        foreach (Wall wall in room.Walls)
        {
            foreach (AnchoredThing _ in anchor.ThingsOn(standing, wall, usual))
            {
                return true;
            }
        }

        return false;
    }
}
