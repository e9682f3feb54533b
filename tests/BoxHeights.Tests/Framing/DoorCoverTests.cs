using System.Linq;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>What doors take of a room's walls, by a second road: inch by inch along a row of walls, from where hinges are and how long a leaf is.</summary>
public sealed class DoorCoverTests
{
    private static readonly OpeningKind[] Kinds = [OpeningKind.Door, OpeningKind.DoubleDoor, OpeningKind.BarnDoor, OpeningKind.PocketDoor, OpeningKind.Cased];

    private int beyond;

    /// <summary>Three walls with a door in the middle one, or four round a room with a door in any of them.</summary>
    [Fact]
    public void In_AnyRowOfWalls_IsEveryInchThatADoorHides()
    {
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue)), seed =>
        {
            Draw draw = new(seed);
            bool isRound = draw.Chance(50);
            int[] lengths = isRound ? Repeated(draw.Between(90, 140), draw.Between(90, 140)) : [draw.Between(10, 90), draw.Between(90, 140), draw.Between(10, 90)];
            decimal[] turns = [.. lengths.Select(_ => isRound ? 90m : draw.One(90m, 0m, -90m, 45m, 135m))];
            int index = isRound ? draw.Below(4) : 1;
            int open = draw.Chance(30) ? (index + 1) % lengths.Length : -1;

            // Jambs are 1 in inside the rough opening, whatever closes it; a pocket's doorway is described without its pocket.
            OpeningKind kind = draw.One(Kinds);
            int leaf = draw.Between(20, 36), width = (kind == OpeningKind.DoubleDoor ? 2 * leaf : kind == OpeningKind.PocketDoor ? leaf - 1 : leaf) + 2;
            int left = draw.Between(0, lengths[index] - width);
            Opening door = new Opening("d", kind, In(left), In(left + width)).WithLeaf(draw.Chance(90) ? In(leaf) : null).WithSwing(draw.One<DoorSwing?>(DoorSwing.Into, DoorSwing.Into, DoorSwing.Away, null))
                .WithHinge(draw.One<WallEnd?>(WallEnd.Left, WallEnd.Right, null)).WithPocketOn(draw.One<WallEnd?>(WallEnd.Left, WallEnd.Right, null));
            Wall[] walls = [.. lengths.Select((length, i) => new Wall("w" + i, In(length)) { Open = i == open }.WithTurnDegrees(turns[i]).WithOpenings(i == index ? new[] { door } : []))];
            Items<DoorCover> found = DoorCover.In(walls, UsualMeasures.Generic);

            Assert.All(found, cover => Assert.True(cover.Left < cover.Right && cover.DoorWall == walls[index].Id && cover.Opening == door, cover.ToString()));
            DoorCoverKind? hides = door.Leaf is null ? null
                : kind == OpeningKind.PocketDoor && door.PocketOn is not null ? DoorCoverKind.Pocket
                : kind == OpeningKind.BarnDoor && door.PocketOn is not null ? DoorCoverKind.Panel
                : door.Swing == DoorSwing.Into && (kind == OpeningKind.DoubleDoor || (kind == OpeningKind.Door && door.Hinge is not null)) ? DoorCoverKind.Leaf : null;
            Assert.All(found, cover => Assert.Equal(hides, cover.Kind));

            // Hinges, or the end of a doorway that its panel clears, on either side.
            bool onLeft = kind == OpeningKind.Door ? door.Hinge == WallEnd.Left : kind == OpeningKind.DoubleDoor || door.PocketOn == WallEnd.Left;
            bool onRight = kind == OpeningKind.Door ? door.Hinge == WallEnd.Right : kind == OpeningKind.DoubleDoor || door.PocketOn == WallEnd.Right;
            int before = (index + lengths.Length - 1) % lengths.Length, after = (index + 1) % lengths.Length;
            for (int wall = 0; wall < lengths.Length; wall++)
            {
                for (int inch = 0; inch < lengths[wall]; inch++)
                {
                    int at = inch, of = wall;
                    bool Hidden() => hides is DoorCoverKind.Pocket ? of == index && InPocket(at)
                        : hides is not null && ((onLeft && Reaches(of == index ? left + 1 - at : of == before ? lengths[of] - at : null, left + 1, turns[before], of == index, of == open))
                            || (onRight && Reaches(of == index ? at + 1 - (left + width - 1) : of == after ? at + 1 : null, lengths[index] - (left + width - 1), turns[index], of == index, of == open)));
                    bool isFound = found.Any(cover => cover.Wall == walls[of].Id && cover.Left <= In(at) && In(at + 1) <= cover.Right);
                    Assert.True(Hidden() == isFound, door.Kind + " " + left + " to " + (left + width) + " in wall " + index + " of " + string.Join(", ", lengths) + " (" + string.Join(", ", turns) + "), leaf " + leaf + ": inch " + inch + " of " + walls[of].Id + "; " + string.Join("; ", found));
                    beyond += isFound && of != index ? 1 : 0;
                }
            }

            // Counted from the jamb on its own wall, from the corner on the next: behind an inside corner as far as the leaf is long, whatever it stands before; straight on or round a blunt one what is left of it.
            bool Reaches(int? off, int toTheCorner, decimal turn, bool isOwn, bool isOpen) =>
                off is > 0 && (isOwn ? off <= leaf : toTheCorner < leaf && !isOpen && turn >= 0m && (turn == 0m || hides == DoorCoverKind.Leaf) && off <= (turn >= 90m ? leaf : leaf - toTheCorner));

            // The frame takes twice the leaf and an inch, from the strike side on.
            bool InPocket(int inch) => onLeft ? inch < left && inch >= left + width - ((2 * leaf) + 1) : inch >= left + width && inch < left + (2 * leaf) + 1;
        }).Check(Tries.Always(200));
        Assert.True(beyond > 100, beyond + " inches round corners");
    }

    [Fact]
    public void In_AnOpeningWithoutWidth_IsNothing() =>
        Assert.Empty(DoorCover.In(new[] { new Wall("w", In(100)).WithOpenings(new[] { new Opening("d", OpeningKind.Door, In(50), In(50)).WithLeaf(In(30)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into) }) }, UsualMeasures.Generic));

    private static int[] Repeated(int wide, int deep) => [wide, deep, wide, deep];
}
