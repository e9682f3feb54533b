using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Which boxes were set together: by one stick (one purpose, storey and height), or on one level (one purpose and storey).</summary>
internal sealed class BoxesSetTogether
{
    private readonly LayoutState state;
    private readonly Dictionary<(BoxPurpose Purpose, string StoreyId), List<int>> levels = [];
    private readonly Dictionary<(BoxPurpose Purpose, string StoreyId, BoxHeight? Height), List<int>> sticks = [];

    public BoxesSetTogether(LayoutState state)
    {
        this.state = state;
        for (int box = 0; box < state.Boxes.Count; box++)
        {
            if (state.SitesOf(box).Length > 0 && state.HasHeight(box) && IsFree(box))
            {
                if (state.HeightOf(box)?.Edge is not null)
                {
                    // Of what is to be asked nothing is set with others.
                    levels.ListOf(LevelOf(box)).Add(box);
                }

                sticks.ListOf(StickOf(box)).Add(box);
            }
        }
    }

    /// <summary>Whether a box may be set elsewhere.</summary>
    public bool IsFree(int box) => state.Boxes[box] is { IsExisting: false, Source.Pinned: false };

    /// <summary>The boxes that may be set elsewhere with a box's stick.</summary>
    public List<int> SetWith(int box) => sticks.ListOf(StickOf(box));

    /// <summary>The boxes that may be set elsewhere on a box's level.</summary>
    public List<int> LevelWith(int box) => levels.ListOf(LevelOf(box));

    /// <summary>The boxes of some findings, parted by stick.</summary>
    public List<List<int>> Of(Items<Finding> findings)
    {
        Dictionary<(BoxPurpose, string, BoxHeight?), List<int>> parted = [];
        List<List<int>> inOrder = [];
        HashSet<int> seen = [];
        foreach (Finding finding in findings)
        {
            if (seen.Add(finding.Box))
            {
                List<int> stick = parted.ListOf(StickOf(finding.Box));
                stick.Add(finding.Box);
                if (stick.Count == 1)
                {
                    inOrder.Add(stick);
                }
            }
        }

        return inOrder;
    }

    private (BoxPurpose Purpose, string StoreyId) LevelOf(int box) => (state.Boxes[box].Source.Purpose, state.Boxes[box].Surface.Space.StoreyId);

    private (BoxPurpose Purpose, string StoreyId, BoxHeight? Height) StickOf(int box) =>
        (state.Boxes[box].Source.Purpose, state.Boxes[box].Surface.Space.StoreyId, state.HeightOf(box));
}
