using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>To which side what ties in a room goes: one that its description decides, so that the room in the mirror decides for the other and gets the mirrored plan.</summary>
/// <remarks>
/// The room is told wall by wall from left to right, and once more as the mirror shows it, each from the wall with which it comes first in order: where the first comes
/// before the second ties go to the left, else to the right. A room that is the same in the mirror tells both alike, and its plan is the mirror's too.
/// </remarks>
internal static class RoomHand
{
    // No room has more; what ties in one with more goes to the left.
    private const int MostWalls = 60;

    /// <summary>The side.</summary>
    /// <param name="room">The room.</param>
    /// <param name="usual">The studs of walls that state none of their own; null where the storey states none.</param>
    /// <param name="measures">How thick they are, where that isn't stated.</param>
    public static WallEnd Of(Room room, StudLayout? usual, UsualMeasures measures)
    {
        int count = room.Walls.Count;
        if (count is 0 or > MostWalls)
        {
            return WallEnd.Left;
        }

        string[] told = new string[count];
        string[] mirrored = new string[count];
        for (int wall = 0; wall < count; wall++)
        {
            told[wall] = Told(room, usual, measures, wall, false);
            mirrored[count - 1 - wall] = Told(room, usual, measures, wall, true);
        }

        return Compare(told, First(told), mirrored, First(mirrored)) <= 0 ? WallEnd.Left : WallEnd.Right;
    }

    /// <summary>A wall with the turn at its end, or in the mirror at its beginning.</summary>
    private static string Told(Room room, StudLayout? usual, UsualMeasures measures, int index, bool mirrored)
    {
        Wall wall = room.Walls[index];
        List<string> parts = [];
        void Part(string what, Distance left, Distance right, object? more = null) =>
            parts.Add(FormattableString.Invariant($"{what} {(mirrored ? wall.Length - right : left).Ticks} {(mirrored ? wall.Length - left : right).Ticks} {more}"));
        WallEnd? Side(WallEnd? end) => mirrored && end is { } one ? one == WallEnd.Left ? WallEnd.Right : WallEnd.Left : end;
        foreach (Opening one in wall.Openings)
        {
            Part("opening " + one.Kind.Name, one.Left, one.Right, (Side(one.Hinge), Side(one.PocketOn), one.Swing, one.Leaf));
        }

        foreach (Counter one in wall.Counters)
        {
            Part("counter " + one.Kind.Name, one.Left, one.Right);
            foreach (CounterInterruption cut in one.Interruptions)
            {
                Part("cut " + cut.Kind.Name, cut.Left, cut.Right);
            }
        }

        foreach (Covering one in wall.Coverings)
        {
            Part("covering " + one.Kind.Name, one.Left, one.Right, (one.Bottom, one.Top));
        }

        foreach (Finish one in wall.Finishes)
        {
            Part("finish " + one.Kind.Name, one.Left, one.Right, (one.Bottom, one.Top));
        }

        foreach (NoCavity one in wall.NoCavity)
        {
            Part("filled", one.Left, one.Right);
        }

        foreach (DeviceBox one in wall.Boxes)
        {
            Part("box " + one.Purpose.Name, one.At ?? Distance.Zero, one.At ?? wall.Length);
        }

        foreach (Fixture one in room.Fixtures)
        {
            if (one.Wall == wall.Id && one is { Left: { } left, Right: { } right })
            {
                Part("fixture " + one.Kind.Name, left, right, one.Depth);
            }
        }

        StudLayout? studs = (wall.Studs ?? usual)?.In(measures);
        foreach (Distance face in studs?.Faces ?? default)
        {
            Part("stud", face, face + studs!.Thickness!.Value);
        }

        parts.Sort(StringComparer.Ordinal);
        decimal turn = room.Walls[mirrored ? (index + room.Walls.Count - 1) % room.Walls.Count : index].TurnDegrees;
        return FormattableString.Invariant($"{wall.Length.Ticks} {turn} {wall.Open} {wall.Exterior} {studs?.Spacing?.Ticks} {studs?.FirstFace?.Ticks} {Side(studs?.From)}; ") + string.Join("; ", parts);
    }

    /// <summary>The wall from which the telling comes first in order.</summary>
    private static int First(string[] told)
    {
        int first = 0;
        for (int from = 1; from < told.Length; from++)
        {
            first = Compare(told, from, told, first) < 0 ? from : first;
        }

        return first;
    }

    private static int Compare(string[] one, int from, string[] other, int fromOther)
    {
        int order = 0;
        for (int i = 0; i < one.Length && order == 0; i++)
        {
            order = string.CompareOrdinal(one[(from + i) % one.Length], other[(fromOther + i) % one.Length]);
        }

        return order;
    }
}
