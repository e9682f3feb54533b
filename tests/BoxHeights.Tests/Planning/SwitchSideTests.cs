using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Where a switch goes at an entrance.</summary>
public sealed class SwitchSideTests
{
    private static readonly string[] AtDoors = ["trim-clearance", "casing-gap", "behind-open-door", "behind-barn-door", "in-cavity", "not-buried", "framing-fit"];

    public static TheoryData<string> Cases => new(CaseFile.Table("switch-sides.csv").Select(row => row["id"]));

    [Theory]
    [MemberData(nameof(Cases))]
    public void For_EachKindOfEntrance_GivesThePlacesInOrder(string id)
    {
        Dictionary<string, string> row = CaseFile.Table("switch-sides.csv").Single(one => one["id"] == id);
        SwitchSide side = For(RoomOf(row), int.Parse(row["gangs"], CultureInfo.InvariantCulture));
        Assert.Equal(row["places"], string.Join("; ", side.Places.Select(Said)));
        Assert.Equal(int.Parse(row["refusals"], CultureInfo.InvariantCulture), side.Refusals.Count);
        Assert.Equal(row["room"] == "closet", side.IsBetterOutside);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void For_InAMirror_GivesTheMirroredPlaces(string id)
    {
        Dictionary<string, string> row = CaseFile.Table("switch-sides.csv").Single(one => one["id"] == id);
        int gangs = int.Parse(row["gangs"], CultureInfo.InvariantCulture);
        Room room = RoomOf(row);
        AssertMirrored(room, For(room, gangs), For(Mirror.Of(HouseOf(room)).Rooms[0], gangs));
    }

    [Fact]
    public void For_RandomRooms_GivesPlacesThatTheRowsAccept() => Prop.ForAll(Rooms(), room =>
    {
        SwitchSide side = For(room, 1);
        LayoutEvaluator practice = new(new RuleSet(AtDoors.Select(id => RuleSets.RoughInPractice.Row(id)!)));
        foreach (SwitchPlace place in side.Places)
        {
            Room switched = room.WithWalls(room.Walls.Select(wall => room.Id + "/" + wall.Id == place.Wall
                ? wall.WithBoxes(new[] { Switch(1).WithAt(place.At).WithHeight(BoxHeight.Parse("48 in to top above subfloor")).WithMounting(new Mounting(
                    place.Reason.Contains(", nailed to", StringComparison.Ordinal) && wall.Studs is not null ? MountingMethod.Stud : MountingMethod.Blocking)) })
                : wall));
            Evaluation evaluation = practice.Evaluate(HouseOf(switched));
            Assert.True(evaluation.IsClean, place + "\n" + string.Join("\n", evaluation.Findings.Select(finding => finding.Message)));
        }

        AssertMirrored(room, side, For(Mirror.Of(HouseOf(room)).Rooms[0], 1));
    }).Check(Tries.Always(1000));

    [Fact]
    public void For_TallCabinetBesideTheLatch_GoesRoundIt()
    {
        Room room = RoomOf(CaseFile.Table("switch-sides.csv").Single(one => one["id"] == "latch"));
        Room covered = room.WithWalls(room.Walls.Select(wall => wall.Id != "north" ? wall : wall.WithCoverings(new[]
        {
            new Covering("pantry", CoveringKind.TallCabinet, CaseFile.Inches("95"), CaseFile.Inches("110")).WithTop(Level.Parse("84 in above subfloor")),
        })));
        SwitchPlace first = For(covered, 1).Places[0];
        Assert.Equal((SwitchPlaceKind.LatchSide, CaseFile.Inches("111-3/8"), 0), (first.Kind, first.At, first.Packs));

        // An upper cabinet is over the switch's head.
        Room upper = covered.WithWalls(covered.Walls.Select(wall => wall.WithCoverings(wall.Coverings.Select(one => one.WithBottom(Level.Parse("54 in above finished floor"))))));
        Assert.Equal(CaseFile.Inches("96-1/8"), For(upper, 1).Places[0].At);
    }

    // Beside a pocket from 35 in on the box has to be clear of it, and its plate may lap over: 29-3/4 and 3 and 1-1/8 are 33-7/8 in, and 1-1/8 more are 35 in.
    [Theory]
    [InlineData(0, true)]
    [InlineData(-1, false)]
    public void For_APocketBesideTheKing_LeavesRoomForTheBox(int ticks, bool hasRoom)
    {
        Distance doorway = CaseFile.Inches("60") + Distance.FromTicks(ticks);
        Opening entrance = new Opening("entrance", OpeningKind.Door, CaseFile.Inches("5"), CaseFile.Inches("29-3/4")).WithLeaf(CaseFile.Inches("22-3/4")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away)
            .WithCasing(CaseFile.Inches("2-1/4")).WithReveal(CaseFile.Inches("3/16"));
        Opening pocket = new Opening("pocket", OpeningKind.PocketDoor, doorway, doorway + CaseFile.Inches("24")).WithLeaf(CaseFile.Inches("24")).WithPocketOn(WallEnd.Left);
        SwitchSide side = For(RoomWith("bathroom", entrance, pocket), 1);
        Assert.Equal(hasRoom, side.Places.Any(place => place.Kind == SwitchPlaceKind.LatchSide && place.At == CaseFile.Inches("33-7/8") && place.Packs == 0));
    }

    [Fact]
    public void For_StudsThatAreStated_NailsToWhatStandsThere()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("switch-studs.csv"))
        {
            StudLayout studs = new StudLayout()
                .WithSpacing(Perhaps(row["spacing"])).WithFirstFace(Perhaps(row["first"])).WithThickness(Perhaps(row["thickness"]))
                .WithFaces(row["faces"].Length == 0 ? default : new Items<Distance>(row["faces"].Split(';').Select(CaseFile.Inches)))
                .WithKnown(Enum.Parse<StudKnowledge>(row["known"], true));
            Opening door = new Opening("entrance", OpeningKind.Door, CaseFile.Inches(row["left"]), CaseFile.Inches(row["right"]))
                .WithLeaf(CaseFile.Inches("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away).WithCasing(CaseFile.Inches("2-1/4")).WithReveal(CaseFile.Inches("3/16"));
            Room room = RoomWith("bedroom", door);
            room = room.WithWalls(room.Walls.Select(wall => wall.Id == row["on"] ? wall.WithStuds(studs) : wall));
            Storey? storey = row["on"] == "storey" ? new Storey("first").WithStuds(studs) : null;
            SwitchSide side = For(room, 1, storey);
            Assert.Equal(row["id"] + ": " + row["places"], row["id"] + ": " + string.Join("; ", side.Places.Select(place => Said(place) + " packs " + place.Packs)));
        }
    }

    // A tape reads an eighth off (common practice, no source): a stud that seems to stand so far from the jack is the king, one that stands farther is another.
    [Theory]
    [InlineData(0, "nailed to the king stud")]
    [InlineData(1, "nailed to the stud beside the king")]
    public void For_StudsMeasuredALittleApart_SaysWhichOneItIsNailedTo(int ticks, string stud)
    {
        Items<Distance> faces = new(new[] { CaseFile.Inches("20"), CaseFile.Inches("92-1/8"), CaseFile.Inches("93-3/4") + Distance.FromTicks(ticks) });
        Opening door = new Opening("entrance", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("92")).WithLeaf(CaseFile.Inches("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);
        Room room = RoomWith("bedroom", door);
        room = room.WithWalls(room.Walls.Select(wall => wall.Id == "north" ? wall.WithStuds(new StudLayout().WithFaces(faces).WithKnown(StudKnowledge.Measured)) : wall));
        Assert.EndsWith(stud, For(room, 1).Places[0].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void For_AnOpeningBeyondItsWall_SaysWhere()
    {
        Room room = RoomWith("bedroom", new Opening("entrance", OpeningKind.Door, CaseFile.Inches("120"), CaseFile.Inches("144")).WithHinge(WallEnd.Left));
        Assert.NotEmpty(SwitchSide.For(room, "north", "entrance").Refusals);
        Room beyond = room.WithWalls(room.Walls.Select(wall => wall.WithOpenings(wall.Openings.Select(one => one.WithRight(one.Right + Distance.FromTicks(1))))));
        Assert.Contains("but its wall is 144 in long", Assert.Throws<ArgumentException>(() => SwitchSide.For(beyond, "north", "entrance")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void For_NoSuchOpening_Throws()
    {
        Room room = RoomOf(CaseFile.Table("switch-sides.csv")[0]);
        Assert.Throws<ArgumentException>(() => SwitchSide.For(room, "north", "other"));
        Assert.Throws<ArgumentException>(() => SwitchSide.For(room, "north", "entrance", Switch(40), PartsCatalog.Generic));
        Assert.Throws<ArgumentNullException>(() => SwitchSide.For(null!, "north", "entrance"));
        Assert.Equal("bedroom/north", SwitchSide.For(room, "north", "entrance").Places[0].Wall);
    }

    private static SwitchSide For(Room room, int gangs) => For(room, gangs, null);

    private static SwitchSide For(Room room, int gangs, Storey? storey) =>
        SwitchSide.For(room, "north", "entrance", Switch(gangs), PartsCatalog.Generic, storey, (SwitchesAtEntrances)RuleSets.RoughInPractice.Row("entrance-switches"), LengthUnits.Inches);

    private static DeviceBox Switch(int gangs) => new DeviceBox("S", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithGangs(gangs).WithSize(gangs > 2 ? null : new BoxSize(CaseFile.Inches(gangs == 1 ? "2-1/4" : "4"), CaseFile.Inches("3-3/4")));

    private static string Said(SwitchPlace place) => (place.Kind switch
    {
        SwitchPlaceKind.LatchSide => "latch-side ",
        SwitchPlaceKind.ReturnWall => "return-wall ",
        SwitchPlaceKind.FarSide => "far-side ",
        _ => "beyond-leaf ",
    }) + place.Wall.Split('/')[1] + " " + place.At.ToString("in").Replace(" in", "", StringComparison.Ordinal);

    private static Dwelling HouseOf(Room room) => new Dwelling("doors").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room });

    private static Room RoomOf(Dictionary<string, string> row)
    {
        WallEnd? End(string name) => row[name].Length == 0 ? null : row[name] == "left" ? WallEnd.Left : WallEnd.Right;
        Opening opening = new Opening("entrance", new OpeningKind(row["kind"]), CaseFile.Inches(row["left"]), CaseFile.Inches(row["right"]))
            .WithLeaf(row["leaf"].Length == 0 ? null : CaseFile.Inches(row["leaf"])).WithHinge(End("hinge")).WithPocketOn(End("side"))
            .WithSwing(row["swing"].Length == 0 ? null : row["swing"] == "into" ? DoorSwing.Into : DoorSwing.Away)
            .WithCasing(CaseFile.Inches(row["casing"])).WithReveal(CaseFile.Inches("3/16"));
        return RoomWith(row["room"], opening);
    }

    private static Room RoomWith(string kind, params Opening[] openings) => new Room(kind, new RoomKind(kind), "first").WithWalls(new[]
    {
        new Wall("north", CaseFile.Inches("144")).WithOpenings(openings).WithBoards(Board), new Wall("east", CaseFile.Inches("120")).WithBoards(Board),
        new Wall("south", CaseFile.Inches("144")).WithBoards(Board), new Wall("west", CaseFile.Inches("120")).WithBoards(Board),
    });

    /// <summary>Board of 3/8 in, so that it isn't what is taken where none is stated.</summary>
    private static BoardLayout Board { get; } = new BoardLayout().WithThickness(CaseFile.Inches("3/8"));

    /// <summary>Places count by kind and wall; of two sides with as much wall the right one is first in both, so ties aren't compared in order.</summary>
    private static void AssertMirrored(Room room, SwitchSide side, SwitchSide mirror)
    {
        IEnumerable<string> One(SwitchSide of, bool turn) => of.Places.Select(place =>
        {
            Distance length = room.Walls.Single(wall => place.Wall.EndsWith("/" + wall.Id, StringComparison.Ordinal)).Length;
            return place.Wall + " " + (turn ? length - place.At : place.At) + " " + place.Packs + " " + place.CasingGap + " " + place.Reason;
        });
        Assert.Equal(One(side, false), One(mirror, true));
        Assert.Equal(side.Refusals, mirror.Refusals);
    }

    private static Arbitrary<Room> Rooms() => Arb.From(
        from kind in Gen.Elements("door", "double-door", "pocket-door", "barn-door")
        from leaf in Gen.Choose(144, 288)
        let width = (kind == "double-door" ? 2 * leaf : leaf) + 16
        from left in Gen.Choose(4, Math.Min(640, 1148 - width)) // within its wall of 144 in
        from hinge in Gen.Elements(WallEnd.Left, WallEnd.Right)
        from swing in Gen.Elements(DoorSwing.Into, DoorSwing.Away)
        from casing in Gen.Choose(8, 48)
        from other in Gen.Choose(8, 300)
        let entrance = new Opening("entrance", new OpeningKind(kind), Eighths(left), Eighths(left + width)).WithLeaf(Eighths(leaf)).WithHinge(hinge).WithPocketOn(hinge).WithSwing(swing)
            .WithCasing(Eighths(casing)).WithReveal(CaseFile.Inches("3/16"))
        let beside = new Opening("beside", OpeningKind.Door, Eighths(left + width + other), Eighths(left + width + other + 208)).WithLeaf(Eighths(192)).WithHinge(hinge).WithSwing(swing)
            .WithCasing(Eighths(18)).WithReveal(CaseFile.Inches("3/16"))
        from studs in Studs
        let room = RoomWith("bedroom", left + width + other + 208 < 1100 ? [entrance, beside] : [entrance])
        select room.WithWalls(room.Walls.Select(wall => wall.WithStuds(studs))));

    private static Gen<StudLayout?> Studs { get; } =
        from isStated in Gen.Frequency((1, Gen.Constant(false)), (3, Gen.Constant(true)))
        from spacing in Gen.Elements(128, 192)
        from first in Gen.Choose(40, 128)
        from end in Gen.Elements(WallEnd.Left, WallEnd.Right)
        from thick in Gen.Elements(10, 12)
        from known in Gen.Elements(StudKnowledge.Assumed, StudKnowledge.Declared)
        from faces in Gen.OneOf(Gen.Constant<int[]>([]), Gen.Choose(1, 78).ArrayOf(6).Select(places => places.Distinct().Select(place => place * 12).ToArray()))
        select !isStated ? null : new StudLayout().WithSpacing(Eighths(spacing)).WithFirstFace(Eighths(first)).WithFrom(end).WithThickness(Eighths(thick)).WithKnown(known)
            .WithFaces(faces.Select(Eighths).ToArray());

    private static Distance? Perhaps(string inches) => inches.Length == 0 ? null : CaseFile.Inches(inches);
}
