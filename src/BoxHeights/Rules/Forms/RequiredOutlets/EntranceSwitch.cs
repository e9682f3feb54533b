using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The light outside an entrance has a switch in a room that the entrance leads to.</summary>
/// <remarks>
/// What a switch controls isn't described: a room with any switch is taken to have it, and one without may be served from elsewhere, so that it is never more than
/// unknown. Which room an entrance leads to is told by its wall or by the room's. Where no light is described there, another row says so.
/// </remarks>
public sealed record EntranceSwitch : SpaceRule
{
    /// <summary>Describes what is required.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is required, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is required.</param>
    /// <param name="light">What is controlled.</param>
    /// <param name="control">What controls it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="light"/> or <paramref name="control"/> is null.</exception>
    public EntranceSwitch(string id, string summary, Severity severity, Citation citation, CountedOutlet light, CountedOutlet control)
        : base(id, summary, severity, citation)
    {
        Light = light ?? throw new ArgumentNullException(nameof(light));
        Control = control ?? throw new ArgumentNullException(nameof(control));
    }

    /// <summary>What is controlled.</summary>
    public CountedOutlet Light { get; init; }

    /// <summary>What controls it.</summary>
    public CountedOutlet Control { get; init; }

    /// <summary>Doors of these kinds are no entrances.</summary>
    public Items<OpeningKind> ExceptOpenings { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.OutsideFace;

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override string Numbers => "for " + Light.Numbers + " at entrances, at least 1 " + Control.Numbers + " in a room behind them"
        + (ExceptOpenings.Count == 0 ? "" : ", not " + ExceptOpenings);

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Face is not { } face || RoomOutlet.Count(space, Light, out _, out _) == 0)
        {
            return;
        }

        bool hasEntrance = false;
        bool isKnown = false;
        List<string> without = [];
        foreach (Wall wall in face.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (!ThingInPlan.IsDoorway(opening) || ExceptOpenings.Contains(opening.Kind))
                {
                    continue;
                }

                hasEntrance = true;
                foreach (Room room in space.Backs.RoomsBehind(SurfaceAddress.Of(face.Id, wall.Id), opening))
                {
                    if (space.Whole.IsIn(room.Id, Control))
                    {
                        statement.Meets(face.Id, face.Id);
                        return;
                    }

                    isKnown = true;
                    without.Add(room.Id);
                }
            }
        }

        if (!hasEntrance)
        {
            return;
        }

        if (!isKnown)
        {
            statement.LeavesOpen("it isn't said which room its entrance leads to");
        }
        else if (!space.Whole.Lists(Control) && !space.IsWhole)
        {
            statement.LeavesOpen("no such outlet is described in the dwelling");
        }
        else
        {
            statement.Finds(
                face.Id, face.Id, Verdict.Unknown, Quantity.Of(0), QuantitySet.AtLeast(1), () => "no " + Control.Name + " in " + string.Join(", ", without), Facts.ServedFromOutside);
        }
    }
}
