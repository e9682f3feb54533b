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

    /// <summary>
    /// Whether a box on another wall is out of place where such a thing stands in the room: an appliance's, and not what goes beside a bed. On the wall round the corner it is as
    /// near as on the thing's own where it is no further off in plan.
    /// </summary>
    public bool OnItsWall { get; init; }

    /// <summary>Its id, what it allows and where that comes from.</summary>
    public override string ToString() => InOneLine;

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
        foreach ((_, _, Distance? start, Distance? end) in anchor.ThingsOn(site.Fixtures, site.Surface.Wall, site.Usual))
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

        Room? room = OnItsWall ? site.Surface.Space.Room : null;
        if (!any && (room is null || !StandsIn(room, anchor, site.Usual)))
        {
            return;
        }

        List<(Distance Left, Distance Right)> possible = [.. allowed];
        if (room is not null && anchor.UpTo > Distance.Zero && RoundTheCorner(site, room, anchor, allowed, possible))
        {
            Beyond(allowed, AllowedHeights.DependsOn(MissingFacts.PlanPlace), statement);
        }

        Beyond(possible, AllowedHeights.Nothing, statement);
    }

    /// <summary>Adds the stretches of a wall that are near enough to a thing that stands against another, in plan: those that surely are, and those that may be.</summary>
    /// <returns>Whether they differ.</returns>
    private static bool RoundTheCorner(PlacementSite site, Room room, PlaceAnchor anchor, List<(Distance Left, Distance Right)> sure, List<(Distance Left, Distance Right)> possible)
    {
        bool differ = false;
        if (site.Surface.Wall is not { } wall || site.Surface.Space is not { Plan: { IsTooLarge: false } plan } space || plan.IndexOf(wall.Id) is not (>= 0 and var face))
        {
            return differ;
        }

        RoomAnchor tied = new() { Fixtures = anchor.Things.Select(thing => new FixtureKind(thing)), Interruptions = anchor.Things.Select(thing => new InterruptionKind(thing)) };

        // Itself allowed: what is nearer than one tick more.
        Distance reach = anchor.UpTo + Distance.FromTicks(1);
        foreach (ThingInPlan thing in ThingInPlan.Of(tied, room, plan, space.Backs, site.Usual))
        {
            // Across the room a cord would lie in the way.
            int its = thing.Fixture is { } fixture ? (fixture.Wall is { } against ? plan.IndexOf(against) : -1) : thing.HasPlace ? thing.Possible.Frame : -1;
            bool isNextWall = its >= 0 && (Math.Abs(its - face) == 1 || (plan.GoesRound && Math.Abs(its - face) == plan.Count - 1));
            if (thing.HasPlace && isNextWall && plan.TryNear(face, thing.Possible, reach, true, out long from, out long to))
            {
                possible.Add((Distance.FromTicks(from), Distance.FromTicks(to)));
                if (!plan.TryNear(face, thing.Sure, reach, false, out long sureFrom, out long sureTo))
                {
                    differ = true;
                    continue;
                }

                sure.Add((Distance.FromTicks(sureFrom), Distance.FromTicks(sureTo)));
                differ |= sureFrom != from || sureTo != to;
            }
        }

        return differ;
    }

    /// <summary>States what is so of all that lies between stretches and beyond them.</summary>
    private static void Beyond(List<(Distance Left, Distance Right)> stretches, in AllowedHeights allowed, PlacementStatement statement)
    {
        stretches.Sort((a, b) => a.Left.CompareTo(b.Left));
        Distance tick = Distance.FromTicks(1);
        Distance from = Distance.MinValue;
        foreach ((Distance left, Distance right) in stretches)
        {
            statement.Within(from, left - tick, allowed);
            from = Distance.Max(from, right + tick);
        }

        statement.Within(from, Distance.MaxValue, allowed);
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
