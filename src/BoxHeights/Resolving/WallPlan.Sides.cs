namespace BoxHeights;

/// <content>How long a passage is.</content>
internal sealed partial class WallPlan
{
    /// <summary>
    /// How long a passage of one way, straight or round any number of square corners, is along its middle. What of each side a corner makes longer outside it makes
    /// shorter inside, so that the middle is half of both sides together: of all walls but the two ends.
    /// </summary>
    /// <remarks>Where a shape can be taken for a passage in two ways, as a rectangle can, it is the longer.</remarks>
    /// <returns>False for a shape that branches or has other corners, and where the walls don't go round.</returns>
    public bool TryMiddle(out Distance middle)
    {
        middle = default;
        bool found = false;
        for (int end = 0; GoesRound && walls.Count % 2 == 0 && end < walls.Count / 2; end++)
        {
            int other = end + (walls.Count / 2);
            if (IsEnd(end) && IsEnd(other) && SidesTurnAlike(end, other))
            {
                Distance sides = Sides(end, other);
                found = true;
                middle = Distance.Max(middle, sides);
            }
        }

        return found;
    }

    private int After(int wall, int steps) => (wall + steps + walls.Count) % walls.Count;

    private bool IsEnd(int wall) => walls[wall].TurnDegrees == 90m && walls[After(wall, -1)].TurnDegrees == 90m;

    /// <summary>Whether every corner of one side is an outside corner where the other's is an inside one.</summary>
    private bool SidesTurnAlike(int end, int other)
    {
        for (int corner = 1; corner < (walls.Count / 2) - 1; corner++)
        {
            decimal turn = walls[After(end, corner)].TurnDegrees;
            if ((turn != 90m && turn != -90m) || walls[After(end, -corner - 1)].TurnDegrees != -turn)
            {
                return false;
            }
        }

        return true;
    }

    private Distance Sides(int end, int other)
    {
        // Two sides that don't agree, as in a rectangle taped a little off, count by the shorter.
        if (walls.Count == 4)
        {
            return Distance.Min(walls[After(end, 1)].Length, walls[After(other, 1)].Length);
        }

        Distance sides = Distance.Zero;
        for (int wall = 0; wall < walls.Count; wall++)
        {
            sides += wall == end || wall == other ? Distance.Zero : walls[wall].Length;
        }

        return Distance.FromTicks(sides.Ticks / 2);
    }
}
