using System;

namespace BoxHeights;

/// <summary>How far a drawing or a tape may be off: the one place that says when a corner is square and when walls meet.</summary>
/// <remarks>
/// Lengths that a person types are taken as they stand. A room is never square to the last digit, though, and angles are measured: by a drawing program, a scan or a
/// protractor. All of it common practice, no source.
/// </remarks>
internal static class DrawingTolerance
{
    /// <summary>How far a turn may be off a whole number of 45 degrees and still be taken for it: half a degree, 1-1/4 in over 12 ft.</summary>
    public const decimal Degrees = 0.5m;

    private const decimal Step = 45m;

    private const decimal Half = 180m;

    /// <summary>How far the last wall may end from where the first begins and still be taken to meet it: 12 in. A tape misses by less, a wall that was left out by more.</summary>
    public static readonly Distance Gap = Distance.FromInches(12);

    /// <summary>How far it may miss where distances across the room are measured from the far walls: 1 in.</summary>
    public static readonly Distance GapAcross = Distance.FromInches(1);

    /// <summary>How far beyond a room's walls something may be drawn that stands in it: 12 in. A railing along an open side, a panel on its far side.</summary>
    public static readonly Distance BeyondWalls = Distance.FromInches(12);

    /// <summary>A turn as it is drawn, from −180 to 180 degrees: 270 to the right is 90 to the left.</summary>
    public static decimal Turn(decimal degrees) => degrees > Half ? degrees - (2m * Half) : degrees < -Half ? degrees + (2m * Half) : degrees;

    /// <summary>A turn as it was meant: the nearest whole number of 45 degrees where the drawing may be off so far, else as it is drawn.</summary>
    public static decimal Squared(decimal degrees)
    {
        decimal turn = Turn(degrees);
        decimal meant = Math.Round(turn / Step) * Step;
        return Math.Abs(turn - meant) <= Degrees ? meant : turn;
    }

    /// <summary>Whether turns of so many corners, added up, are once round.</summary>
    public static bool IsOnce(decimal turned, int corners) => Math.Abs(turned - (2m * Half)) <= Degrees * corners;

    /// <summary>Whether the turns of walls are once round, so that the last wall meets the first.</summary>
    public static bool IsOnce(Items<Wall> walls)
    {
        decimal turned = 0m;
        foreach (Wall wall in walls)
        {
            turned += Turn(wall.TurnDegrees);
        }

        return IsOnce(turned, walls.Count);
    }
}
