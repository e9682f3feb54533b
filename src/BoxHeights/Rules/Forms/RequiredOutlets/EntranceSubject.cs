using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A light outside an entrance needs a switch in a room that the entrance leads to.</summary>
/// <remarks>
/// What a switch controls isn't described: a room with any switch is taken to have it, and one without may be served from elsewhere, so that it is never more than
/// unknown. Which room an entrance leads to is told by its wall or by the room's. Where no light is described there, another row says so.
/// </remarks>
public sealed record EntranceSubject : OutletSubject
{
    private static readonly Wording NoRoomBehind = $"it isn't said which room its entrance leads to";

    /// <summary>Names the light.</summary>
    /// <param name="light">What is controlled.</param>
    /// <exception cref="ArgumentNullException"><paramref name="light"/> is null.</exception>
    public EntranceSubject(CountedOutlet light) => Light = light ?? throw new ArgumentNullException(nameof(light));

    /// <summary>What is controlled.</summary>
    public CountedOutlet Light { get; init; }

    /// <summary>Doors of these kinds are no entrances.</summary>
    public Items<OpeningKind> ExceptOpenings { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => SpaceKind.OutsideFace;

    /// <inheritdoc/>
    public override string Numbers => Light.Numbers + " at entrances, in a room behind them" + (ExceptOpenings.Count == 0 ? "" : ", not " + ExceptOpenings);

    internal override bool LooksAt(BoxTraits box) => Light.MayBe(box);

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        if (space.Face is not { } face || Count(space, Light, out _, out _) == 0 || FaceSubject.EntranceOf(face, ExceptOpenings) is null)
        {
            return;
        }

        List<string> without = [];
        foreach (Wall wall in face.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                foreach (Room room in ThingInPlan.IsDoorway(opening) && !ExceptOpenings.Contains(opening.Kind) ? space.Backs.RoomsBehind(SurfaceAddress.Of(face.Id, wall.Id), opening) : [])
                {
                    if (space.Whole.IsIn(room.Id, row.Outlet))
                    {
                        statement.Meets(face.Id, face.Id);
                        return;
                    }

                    without.Add(room.Id);
                }
            }
        }

        if (without.Count == 0)
        {
            statement.LeavesOpen(NoRoomBehind);
        }
        else if (!space.Whole.Lists(row.Outlet) && !space.IsWhole)
        {
            statement.LeavesOpen(RequiredOutlet.NoneInTheDwelling);
        }
        else
        {
            row.Lacks(statement, face.Id, face.Id, 0, 1, true, MissingFacts.ServedFromOutside, () => $"{row.Counted(0):none} in {string.Join(", ", without):rooms}");
        }
    }
}
