using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Which runs are looked at again where a box is tried.</content>
public sealed partial record Coverage
{
    /// <summary>The runs that a box is on which is tried; all of them where none is, or where it may serve others too. Else what a room lacks in a thousand places would be judged a thousand times for each.</summary>
    private List<Run> Asked(SpaceView space, RoomRuns runs, SpaceStatement statement) =>
        statement.Tried is null || NextSpacesToo || runs.AtMost is not null ? runs.Sure : BorneOn(space, runs, statement, statement.Tried);

    // By itself: what a lambda needs is made as soon as its method is called, and most rooms are judged without any box that is tried.
    private static List<Run> BorneOn(SpaceView space, RoomRuns runs, SpaceStatement statement, List<SpaceBox> tried)
    {
        List<Run> asked = runs.Sure.FindAll(run => MayBeOn(run, tried));
        statement.LookedAt = new(asked.ConvertAll(run => run.NameIn(space.Dwelling.Units)), StringComparer.Ordinal);
        return asked;
    }

    private static bool MayBeOn(Run run, List<SpaceBox> boxes)
    {
        foreach (RunStretch stretch in run.Stretches)
        {
            foreach (SpaceBox box in boxes)
            {
                if (box.Traits.IsListedFlat || (box.Address == stretch.Address && (box.Along is not { } along || (stretch.From <= along && along <= stretch.To))))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
