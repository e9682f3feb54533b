using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A stretch of wall that an open door stands before, or slides into.</summary>
/// <remarks>
/// <para>A leaf that swings into the room lies flat against its own wall when it is fully open: from its hinge jamb outward by its width. Where an inside corner is nearer
/// than that, it stops against the wall round the corner and hides as much of that one too; where the wall goes straight on as another, it hides the rest of that. A barn door's panel clears the doorway and covers its own width beside it.</para>
/// <para>Only what is stated is known: the side of the hinges, the swing and the leaf; for panels and pockets the side and the leaf.</para>
/// </remarks>
[Told]
public sealed partial class DoorCover
{
    /// <summary>What covers the wall, and from where to where.</summary>
    public override string ToString() => Wall + ": " + Kind + " of " + Opening.Id + ", " + Left + " to " + Right;

    /// <summary>What hides the wall.</summary>
    public DoorCoverKind Kind { get; }

    /// <summary>The opening that the door closes.</summary>
    public Opening Opening { get; }

    /// <summary>The id of the wall that the opening is in, within the room.</summary>
    public string DoorWall { get; }

    /// <summary>The id of the wall that is hidden, within the room.</summary>
    public string Wall { get; }

    /// <summary>The left end of what is hidden, from that wall's left end.</summary>
    public Distance Left { get; }

    /// <summary>The right end of what is hidden, from that wall's left end.</summary>
    public Distance Right { get; }

    /// <summary>Everything that the doors of a room take of its walls.</summary>
    /// <param name="room">The room.</param>
    /// <param name="usual">What its doors measure where that isn't stated.</param>
    /// <exception cref="ArgumentNullException"><paramref name="room"/> is null.</exception>
    internal static Items<DoorCover> In(Room room, UsualMeasures usual) => In((room ?? throw new ArgumentNullException(nameof(room))).Walls, usual);

    /// <summary>Everything that the doors in a row of walls, seen left to right, take of them.</summary>
    internal static Items<DoorCover> In(Items<Wall> walls, UsualMeasures usual)
    {
        List<DoorCover> found = [];
        for (int i = 0; i < walls.Count; i++)
        {
            foreach (Opening opening in walls[i].Openings)
            {
                if (opening.Right > opening.Left)
                {
                    Add(found, walls, i, opening, usual);
                }
            }
        }

        return new(found);
    }

    private static void Add(List<DoorCover> found, Items<Wall> walls, int index, Opening opening, UsualMeasures usual)
    {
        if (opening.Leaf is not { } leaf)
        {
            return;
        }

        TrimmedOpening trimmed = TrimmedOpening.Of(opening, usual);
        if (trimmed.Pocket is { } pocket)
        {
            found.Add(new(DoorCoverKind.Pocket, opening, walls[index].Id, walls[index].Id, pocket.From, pocket.To));
        }
        else if (opening.Kind == OpeningKind.BarnDoor && opening.PocketOn is { } side)
        {
            Beside(DoorCoverKind.Panel, side);
        }
        else if (opening.Swing == DoorSwing.Into && opening.Kind == OpeningKind.DoubleDoor)
        {
            Beside(DoorCoverKind.Leaf, WallEnd.Left);
            Beside(DoorCoverKind.Leaf, WallEnd.Right);
        }
        else if (opening.Swing == DoorSwing.Into && opening.Kind == OpeningKind.Door && opening.Hinge is { } hinge)
        {
            Beside(DoorCoverKind.Leaf, hinge);
        }

        void Beside(DoorCoverKind kind, WallEnd side)
        {
            Distance jamb = side == WallEnd.Left ? trimmed.JambLeft : walls[index].Length - trimmed.JambRight;
            Cover(kind, index, side, Distance.Max(Distance.Zero, jamb - leaf), jamb);
            if (jamb < leaf && Next(walls, index, side, out decimal turn) is { } next && BeyondTheEnd(turn, leaf, jamb) is { } far && (kind == DoorCoverKind.Leaf || turn == 0m))
            {
                Cover(kind, next, side == WallEnd.Left ? WallEnd.Right : WallEnd.Left, Distance.Zero, Distance.Min(far, walls[next].Length));
            }
        }

        // Counted from the named end of the wall.
        void Cover(DoorCoverKind kind, int on, WallEnd from, Distance near, Distance far)
        {
            Wall wall = walls[on];
            if (far > near)
            {
                found.Add(from == WallEnd.Left
                    ? new(kind, opening, walls[index].Id, wall.Id, near, far)
                    : new(kind, opening, walls[index].Id, wall.Id, wall.Length - far, wall.Length - near));
            }
        }
    }

    /// <summary>
    /// How much of the next wall a leaf hides that reaches beyond the end of its own: as much as it is wide behind an inside corner. Where the wall goes straight on, or
    /// round a blunter corner, what is left of the leaf: no less, whatever the angle. None behind an outside corner.
    /// </summary>
    internal static Distance? BeyondTheEnd(decimal turn, Distance leaf, Distance toTheEnd) => turn >= 90m ? leaf : turn >= 0m ? leaf - toTheEnd : null;

    /// <summary>The wall round a square inside corner from another, or from an open side, if one stands there.</summary>
    internal static int? Neighbor(Items<Wall> walls, int index, WallEnd side) => Next(walls, index, side, out decimal turn) is { } next && turn == 90m ? next : null;

    /// <summary>Whether another wall goes straight on from an end of one: no corner is there.</summary>
    internal static bool GoesStraightOn(Items<Wall> walls, int index, WallEnd side) => Next(walls, index, side, out decimal turn) is not null && turn == 0m;

    /// <summary>The wall that follows at an end of another, and the turn between them. A room's last wall meets its first only where all its turns make a full one.</summary>
    private static int? Next(Items<Wall> walls, int index, WallEnd side, out decimal turn)
    {
        turn = 0m;
        int next = index + (side == WallEnd.Left ? -1 : 1);
        if (next < 0 || next == walls.Count)
        {
            if (!DrawingTolerance.IsOnce(walls))
            {
                return null;
            }

            next = next < 0 ? walls.Count - 1 : 0;
        }

        turn = DrawingTolerance.Squared(walls[side == WallEnd.Left ? next : index].TurnDegrees);
        return walls[next].Open ? null : next;
    }
}
