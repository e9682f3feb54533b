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

    /// <summary>The thing, and how far from it.</summary>
    public PlaceAnchor Anchor { get; init; }

    /// <inheritdoc/>
    public override string Numbers => Anchor.ToString();

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        bool any = false;
        List<(Distance Left, Distance Right)> allowed = [];
        foreach ((_, _, Distance? start, Distance? end) in ThingsOn(site.Fixtures, site.Wall))
        {
            if (start is not { } left || end is not { } right)
            {
                statement.NotJudged("where the " + string.Join(" or ", Anchor.Things) + " stands along its wall isn't stated");
                return;
            }

            any = true;
            if (Anchor.Beyond is { } beyond)
            {
                allowed.Add((left - Anchor.UpTo, left - beyond));
                allowed.Add((right + beyond, right + Anchor.UpTo));
            }
            else
            {
                allowed.Add((left - Anchor.UpTo, right + Anchor.UpTo));
            }
        }

        if (!any)
        {
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

    /// <summary>The things of the anchor's kinds on a wall: fixtures, what interrupts a counter, openings with their casing, coverings.</summary>
    /// <param name="fixtures">The fixtures against the wall.</param>
    /// <param name="wall">The wall; null on a surface that is none.</param>
    internal IEnumerable<AnchoredThing> ThingsOn(Items<Fixture> fixtures, Wall? wall)
    {
        foreach (Fixture fixture in fixtures)
        {
            if (Anchor.Things.Contains(fixture.Kind.Name))
            {
                yield return new(fixture.Id, fixture.Kind.Name, fixture.Left, fixture.Right);
            }
        }

        if (wall is null)
        {
            yield break;
        }

        foreach (Counter counter in wall.Counters)
        {
            foreach (CounterInterruption part in counter.Interruptions)
            {
                if (Anchor.Things.Contains(part.Kind.Name))
                {
                    yield return new(part.Kind + " of " + counter.Id, part.Kind.Name, part.Left, part.Right);
                }
            }
        }

        foreach (Opening opening in wall.Openings)
        {
            if (Anchor.Things.Contains(opening.Kind.Name))
            {
                TrimmedOpening trimmed = TrimmedOpening.Of(opening);
                yield return new(opening.Id, opening.Kind.Name, trimmed.Left, trimmed.Right);
            }
        }

        foreach (Covering covering in wall.Coverings)
        {
            if (Anchor.Things.Contains(covering.Kind.Name))
            {
                yield return new(covering.Id, covering.Kind.Name, covering.Left, covering.Right);
            }
        }
    }
}

/// <summary>A thing that boxes belong to, and where it stands along its wall where that is stated.</summary>
internal readonly record struct AnchoredThing(string Name, string Kind, Distance? Left, Distance? Right);
