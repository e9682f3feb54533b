using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Which boxes a mark sheet has no rows for.</summary>
internal static class MarkRows
{
    /// <summary>Boxes on walls that are set already, and how that is known.</summary>
    public static Items<LeftOutBox> SetAlready(LayoutState state)
    {
        List<LeftOutBox> found = [];
        foreach (ResolvedBox box in state.Boxes)
        {
            if (box.IsOnWall && (box.IsExisting || box.Source.Measured is not null))
            {
                found.Add(new(box.Source.Id, box.IsExisting ? "was there before" : "set, and measured " + box.Source.Measured!.Height.Exactly(state.Options.Units)));
            }
        }

        return new(found);
    }

    /// <summary>Boxes on walls that should have a mark and can't.</summary>
    public static Items<LeftOutBox> LeftOut(LayoutState state)
    {
        List<LeftOutBox> found = [];
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.Boxes[box].IsOnWall && state.SitesOf(box).Length == 0)
            {
                found.Add(new(state.Boxes[box].Source.Id, Reasons.Faults(state.Faults, state.Boxes[box].Source.Id)));
            }
        }

        return new(found);
    }
}
