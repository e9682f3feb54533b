using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The ends of a wall at which the next one stands out into the room.</summary>
internal static class InsideCorners
{
    /// <summary>Strips of a wall that begin and end so far from its inside corners. Where a room's walls don't go round, what the first and the last of them meet isn't sure.</summary>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="from">How far from the corner a strip begins.</param>
    /// <param name="to">How far from it it ends, itself included.</param>
    public static List<(Distance Left, Distance Right, bool IsSure)> Strips(PlacementSite site, Distance from, Distance to)
    {
        List<(Distance, Distance, bool)> strips = [];
        Items<Wall> walls = site.Surface.Space.Room?.Walls ?? default;
        bool goesRound = site.Surface.Space.Plan is { GoesRound: true };
        for (int i = 0; i < walls.Count; i++)
        {
            if (walls[i].Id != site.Surface.Wall?.Id)
            {
                continue;
            }

            if (walls[i == 0 ? walls.Count - 1 : i - 1].TurnDegrees > 0m)
            {
                strips.Add((from, to, goesRound || i > 0));
            }

            if (walls[i].TurnDegrees > 0m)
            {
                strips.Add((walls[i].Length - to, walls[i].Length - from, goesRound || i < walls.Count - 1));
            }
        }

        return strips;
    }
}
