using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>What stands in a wall. Layout from a government builder's manual: first near face at 15-1/4 in, door and window studs added without disturbing the run; jack inside, king outside, 1-1/2 in each.</summary>
public sealed class WallFramingTests
{
    private static readonly StudLayout Declared = new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared);

    [Fact]
    public void Members_OfAWallWithADoor_AreLayoutCornersJacksAndKings() => Assert.Equal(
        [
            "corner 0 in", "stud 15-1/4 in", "stud 31-1/4 in", "stud 47-1/4 in", "king 57 in", "jack 58-1/2 in", "jack 92 in", "king 93-1/2 in", "stud 95-1/4 in",
            "stud 111-1/4 in", "stud 127-1/4 in", "corner 142-1/2 in",
        ],
        Pieces(WallFraming.Of(Wall(Door("60", "92")), Declared, UsualMeasures.Generic)));

    // The window cuts the studs centered on 64 and 80 in: they go on under its sill, and so may one at each end of it.
    [Fact]
    public void Members_UnderASill_AreCripples()
    {
        Opening window = new Opening("window", OpeningKind.Window, In("60"), In("92")).WithSill(Level.Parse("36 in above subfloor")).WithHead(Level.Parse("80 in above subfloor"));
        FramingMember[] cripples = WallFraming.Of(Wall(window), Declared, UsualMeasures.Generic).Members.Where(member => member.Part == FramingPart.Cripple).ToArray();
        Assert.Equal(["60 in?", "63-1/4 in", "79-1/4 in", "90-1/2 in?"], cripples.Select(member => member.Left + (member.IsSure ? "" : "?")));
        Assert.All(cripples, member => Assert.Equal(window.Sill, member.Top));
        Assert.All(WallFraming.Of(Wall(window), Declared, UsualMeasures.Generic).Members.Where(member => member.Part == FramingPart.Jack), member => Assert.Equal(window.Head, member.Top));
    }

    // The stud centered on 64 in would stand from 63-1/4 in, the king from 63 in: what stands there is the king.
    [Fact]
    public void Stud_WhereAKingStands_IsNotSure()
    {
        WallFraming framing = WallFraming.Of(Wall(Door("66", "98")), Declared, UsualMeasures.Generic);
        Assert.False(Assert.Single(framing.Members, member => member.Left == In("63-1/4")).IsSure);
        Assert.True(Assert.Single(framing.Members, member => member.Left == In("63")).IsSure);
    }

    // Whoever listed a stud at the opening's side listed what stands there; on the other side nothing is listed, and something has to.
    [Fact]
    public void Members_ListedOneByOne_TakeTheListedStudForTheKing()
    {
        StudLayout listed = new StudLayout().WithFaces(new[] { In("93"), In("20") }).WithKnown(StudKnowledge.Measured);
        Assert.Equal(
            ["corner 0 in", "stud 20 in", "king 57 in", "jack 58-1/2 in", "stud 93 in", "corner 142-1/2 in"],
            Pieces(WallFraming.Of(Wall(Door("60", "92")), listed, UsualMeasures.Generic)));
    }

    [Theory]
    [InlineData("144", true)]
    [InlineData("156", false)]
    public void Studs_OfAnAssumedLayout_AreSureWhereBothEndsAgree(string length, bool agree)
    {
        WallFraming framing = WallFraming.Of(new Wall("wall", In(length)), Declared.WithKnown(StudKnowledge.Assumed), UsualMeasures.Generic);
        Assert.All(framing.Members.Where(member => member.Part == FramingPart.Stud), member => Assert.Equal(agree, member.IsSure));
        Assert.All(framing.Members.Where(member => member.Part == FramingPart.Corner), member => Assert.True(member.IsSure));
    }

    // Clear bays: 14-1/2 and 22-1/2 in between studs, 13-3/4 and 21-3/4 in between the corner and the first.
    [Theory]
    [InlineData("16", "16-3/4", "14-1/2", "13-3/4")]
    [InlineData("24", "24-3/4", "22-1/2", "21-3/4")]
    public void RoomBeside_InTheBays_IsThePublishedWidth(string spacing, string face, string bay, string first)
    {
        WallFraming framing = WallFraming.Of(new Wall("wall", In("192")), Declared.WithSpacing(In(spacing)), UsualMeasures.Generic);
        Assert.Equal(In(bay), framing.RoomBeside(In(face), StudSide.Right));
        Assert.Equal(In(bay), framing.RoomBeside(In(face) + In(bay), StudSide.Left));
        Assert.Equal(In(first), framing.RoomBeside(In("1-1/2"), StudSide.Right));
        Assert.Equal(Distance.Zero, framing.RoomBeside(In(face) + In(bay), StudSide.Right));
    }

    // Flanges of 1-1/4 in stand 5/8 in to each side of 16, 32, … in.
    [Fact]
    public void Members_OfMetal_AreAsWideAsTheirFlanges()
    {
        FramingMember stud = WallFraming.Of(Wall(Door("60", "92")), Declared.WithThickness(In("1-1/4")), UsualMeasures.Generic).Members.First(member => member.Part == FramingPart.Stud);
        Assert.Equal((In("15-3/8"), In("16-5/8")), (stud.Left, stud.Right));
    }

    [Fact]
    public void Members_BesideWindowsCloseTogether_StandInNeither()
    {
        WallFraming framing = WallFraming.Of(Wall(Door("30", "60"), new Opening("second", OpeningKind.Door, In("61-1/2"), In("90"))), Declared, UsualMeasures.Generic);
        Assert.Equal(["jack 60 in"], Pieces(framing).Where(piece => piece.StartsWith("jack 6", StringComparison.Ordinal)).Distinct());
        Assert.DoesNotContain(framing.Members, member => member.IsSure && member.Left < In("60") && member.Right > In("30"));
    }

    // Studs centered on 64 and 80 in would stand in the doorway from 60 to 92 in; the one on 96 stands, and so does the one on 48.
    [Theory]
    [InlineData("70", 3, StudSide.Right)]
    [InlineData("75", 6, StudSide.Left)]
    [InlineData("96", 6, StudSide.Right)]
    public void Nearest_InADoorway_IsAStudThatStands(string along, int stud, StudSide side) =>
        Assert.Equal((stud, side), WallFraming.Of(Wall(Door("60", "92")), Declared, UsualMeasures.Generic).Nearest(In(along)));

    // Under a sill at 36 in the stud on 80 goes on as a short one: a receptacle is nailed to it, a switch isn't.
    [Theory]
    [InlineData("16", 5)]
    [InlineData("36", 5)]
    [InlineData("36-1/64", 6)]
    public void Nearest_UnderASill_IsTheShortStudAsFarAsItReaches(string up, int stud)
    {
        Opening window = new Opening("window", OpeningKind.Window, In("60"), In("92")).WithSill(Level.Parse("36 in above subfloor"));
        Assert.Equal(stud, WallFraming.Of(Wall(window), Declared, UsualMeasures.Generic).Nearest(In("80"), In(up), Levels.Default)?.Stud);
        Assert.Equal(6, WallFraming.Of(Wall(window), Declared, UsualMeasures.Generic).Nearest(In("80"))?.Stud);
    }

    // The king at 63 in takes the place of the stud on 64.
    [Fact]
    public void Nearest_WhereAKingTakesAStudsPlace_IsTheNext() => Assert.Equal(3, WallFraming.Of(Wall(Door("66", "98")), Declared, UsualMeasures.Generic).Nearest(In("63"))?.Stud);

    [Fact]
    public void Nearest_WithoutAStud_IsNull() => Assert.Null(WallFraming.Of(Wall(), new StudLayout(), UsualMeasures.Generic).Nearest(In("4")));

    // Second road: a stud is one that the layout has and that nothing of an opening and its jacks and kings touches.
    [Fact]
    public void Nearest_AnyPlaceOfAnyWall_IsTheOneThatALookAtAllFinds() => Prop.ForAll(
        Arb.From(from doors in Gen.ListOf(from left in Gen.Choose(16, 2000) from wide in Gen.Choose(8, 700) select (Left: left, Wide: wide)) from at in Gen.Choose(0, 2304) select (Doors: doors.Take(3).ToArray(), At: at)),
        of =>
        {
            Distance Sixteenths(int count) => Distance.FromInches(0, count, 16);
            Opening[] doors = of.Doors.Select((door, i) => new Opening("d" + i, OpeningKind.Door, Sixteenths(door.Left), Sixteenths(door.Left + door.Wide))).ToArray();
            WallFraming framing = WallFraming.Of(Wall(doors), Declared, UsualMeasures.Generic);
            Distance place = Sixteenths(of.At);
            (int Stud, Distance Middle)[] all = Enumerable.Range(1, 8).Select(stud => (stud, In("16") * stud)).ToArray();
            bool InOne(Distance middle) => doors.Any(door => door.Left < middle + In("3/4") && middle - In("3/4") < door.Right);
            bool Taken(Distance middle) => framing.Members.Any(piece => piece.Part is FramingPart.King or FramingPart.Jack or FramingPart.Corner && piece.Left < middle + In("3/4") && middle - In("3/4") < piece.Right);
            (int Stud, Distance Middle)[] standing = all.Where(stud => !InOne(stud.Middle) && !Taken(stud.Middle)).ToArray();
            return framing.Nearest(place) is not { } found
                ? standing.Length == 0
                : standing.SingleOrDefault(one => one.Stud == found.Stud) is { Stud: > 0 } nearest && standing.All(one => (place - nearest.Middle).Abs() <= (place - one.Middle).Abs())
                    && (found.Side == StudSide.Right) == (place >= nearest.Middle);
        }).Check(Tries.Always(200));

    // Second road: sixteenth by sixteenth along the wall from a face on, as far as pieces surely stand, and as far as none does.
    [Fact]
    public void FaceOfPackAndRoomBeside_AnyFaceOfAnyWall_AreWhatAWalkAlongItFinds() => Prop.ForAll(
        Arb.From(
            from doors in Gen.ListOf(from left in Gen.Choose(0, 2000) from wide in Gen.Choose(8, 700) select (Left: left, Wide: wide))
            from known in Gen.Elements(StudKnowledge.Declared, StudKnowledge.Assumed)
            from at in Gen.Choose(0, 2000)
            from way in Gen.Elements(WallEnd.Left, WallEnd.Right)
            select (Doors: doors.Take(3).ToArray(), Known: known, At: at, Way: way)),
        of =>
        {
            const int Length = 2200;
            Distance Sixteenths(int count) => Distance.FromInches(count / 16m);
            Opening[] doors = of.Doors.Select((door, i) => new Opening("d" + i, OpeningKind.Door, Sixteenths(door.Left), Sixteenths(door.Left + door.Wide))).ToArray();
            WallFraming framing = WallFraming.Of(new Wall("wall", Sixteenths(Length)).WithOpenings(doors), Declared.WithKnown(of.Known), UsualMeasures.Generic);
            bool Stands(int cell) => framing.Members.Any(piece => piece.IsSure && piece.Left <= Sixteenths(cell) && Sixteenths(cell + 1) <= piece.Right);
            int step = of.Way == WallEnd.Right ? 1 : -1, first = of.Way == WallEnd.Right ? 0 : -1;

            // A face of some piece, or any place.
            int start = of.At % 3 == 0 ? of.At : (int)((of.At % 2 == 0 ? framing.Members[of.At % framing.Members.Count].Left : framing.Members[of.At % framing.Members.Count].Right).Ticks / 127_000);
            int pack = start, room = start;
            while (Stands(pack + first))
            {
                pack += step;
            }

            while (room + first is >= 0 and < Length && !Stands(room + first))
            {
                room += step;
            }

            return framing.FaceOfPack(Sixteenths(start), of.Way) == Sixteenths(pack)
                && framing.RoomBeside(Sixteenths(start), of.Way == WallEnd.Right ? StudSide.Right : StudSide.Left) == (Sixteenths(room) - Sixteenths(start)).Abs();
        }).Check(Tries.Always(200));

    // Two corners of 1-1/2 in have just room in 3 in.
    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 2)]
    [InlineData(1, 2)]
    public void Corners_OfAWallAsShortAsTheyAre_StandWhereTheyHaveRoom(int ticks, int corners) =>
        Assert.Equal(corners, WallFraming.Of(new Wall("wall", In("3") + Distance.FromTicks(ticks)), Declared, UsualMeasures.Generic).Members.Count(member => member.Part == FramingPart.Corner));

    // Up to its top, itself included.
    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void StandsAt_OneTickUnderAtAndOverItsTop_TurnsThere(int ticks, bool stands)
    {
        Level end = Level.Parse("36 in above subfloor");
        Distance up = In("36") + Distance.FromTicks(ticks);
        Assert.Equal(stands, new FramingMember(FramingPart.Cripple, In("10"), In("11-1/2"), true, end).StandsAt(up, Levels.Default));
    }

    [Fact]
    public void Members_WithoutALayout_AreNone() => Assert.Empty(WallFraming.Of(Wall(Door("60", "92")), new StudLayout(), UsualMeasures.Generic).Members);

    private static Wall Wall(params Opening[] openings) => new Wall("wall", In("144")).WithOpenings(openings);

    private static Opening Door(string left, string right) => new("door", OpeningKind.Door, In(left), In(right));

    private static string[] Pieces(WallFraming framing) => framing.Members.Select(member => member.Part.ToString().ToLowerInvariant() + " " + member.Left).ToArray();
}
