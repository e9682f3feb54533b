namespace BoxHeights;

/// <content>How long a passage is.</content>
internal sealed partial class WallPlan
{
    /// <summary>How long a passage is along its middle: a rectangle's longer side, and both legs of an L up to where their middles cross.</summary>
    /// <returns>False for any other shape, and where the walls don't go round.</returns>
    public bool TryMiddle(out Distance middle)
    {
        middle = default;
        int reflex = -1;
        for (int i = 0; i < walls.Count; i++)
        {
            if (walls[i].TurnDegrees == -90m && walls.Count == 6 && reflex < 0)
            {
                reflex = i;
            }
            else if (walls[i].TurnDegrees != 90m)
            {
                return false;
            }
        }

        if (!GoesRound || walls.Count != (reflex < 0 ? 4 : 6))
        {
            return false;
        }

        Distance Side(int after) => walls[(reflex + after) % walls.Count].Length;
        if (reflex < 0)
        {
            middle = Distance.Max(Distance.Min(walls[0].Length, walls[2].Length), Distance.Min(walls[1].Length, walls[3].Length));
        }
        else
        {
            // From the inner corner: a leg's inner side and its end, both outer sides, the other leg's end and inner side.
            middle = Side(3) + Side(4) - Distance.FromTicks((Side(2) + Side(5)).Ticks / 2);
        }

        return true;
    }
}
