using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Findings name the door or the box that they mean, and what they offer is about their own box.</summary>
public sealed class NamedThingTests
{
    private static readonly LayoutEvaluator Practice = new(RuleSets.RoughInPractice);

    [Fact]
    public void PlateOnCasing_NamesTheOpening()
    {
        Opening[] openings = [new("d1", OpeningKind.Door, In("20"), In("52")), new("w1", OpeningKind.Window, In("90"), In("120"))];
        SquareRoom room = new() { Kind = RoomKind.Bedroom, North = [SquareRoom.Box("duplex-receptacle", "general", In("52") + In("1"), In("16"))], NorthOpenings = openings };
        Finding finding = Assert.Single(Found("trim-clearance", room.House()));
        Assert.Contains("(door square/north/d1)", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("w1", finding.Message, StringComparison.Ordinal);
    }

    // Round the corner from its door: the leaf of 30 in has 21 in to the corner, and stands before the next wall.
    [Fact]
    public void SwitchBehindALeaf_NamesTheDoorAndItsWall()
    {
        Opening door = new Opening("way-in", OpeningKind.Door, In("20"), In("52")).WithLeaf(In("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into);
        SquareRoom room = new() { Kind = RoomKind.Bedroom, West = [SquareRoom.Box("switch", "switch", In("105"), In("46"))], NorthOpenings = [door] };
        Finding finding = Assert.Single(Found("behind-open-door", room.House()));
        Assert.Contains("(door square/north/way-in)", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void BackToBack_TwoPairs_AreTwoCausesThatNameTheirPartners()
    {
        Dwelling house = TwoPairs();
        Evaluation evaluation = Only("back-to-back").Evaluate(house);
        Assert.Equal(2, evaluation.Causes.Count);
        foreach ((string box, string partner) in new[] { ("B1", "A1 (one/wall)"), ("B2", "A2 (three/wall)") })
        {
            Finding finding = evaluation.Findings.Single(one => one.Subject == box);
            Assert.Contains("back to back with " + partner, finding.Message, StringComparison.Ordinal);
            Assert.NotEmpty(finding.Remedies);
            Assert.All(finding.Remedies, remedy => Assert.Equal([box], Assert.IsType<MoveBoxes>(remedy).Ids));
        }
    }

    // The same slip at two doors: each box is offered its own way out, and only that.
    [Fact]
    public void Remedies_OfABox_AreAboutThatBox()
    {
        Opening door = new("door", OpeningKind.Door, In("20"), In("52"));
        SquareRoom One(string id) => new() { Kind = RoomKind.Bedroom, NorthOpenings = [door], North = [SquareRoom.Box("duplex-receptacle", "general", In("53"), In("16")).WithId(id)] };
        Dwelling house = One("A").House(One("B").Build().WithId("other"));
        Evaluation evaluation = Only("trim-clearance").Evaluate(house);
        Assert.Equal(2, evaluation.Causes.Count);
        foreach (Finding finding in evaluation.Findings)
        {
            Assert.NotEmpty(finding.Remedies);
            Assert.All(finding.Remedies, remedy => Assert.Contains(finding.Subject, remedy.ChangedIds));
        }
    }

    // One stick set them all across one splash: that is one cause, with one remedy for all of them.
    [Fact]
    public void BoxesAcrossOneSplash_ShareTheCauseAndItsRemedy()
    {
        Finish splash = new Finish("splash", FinishKind.Tile, Distance.Zero, In("144")).WithBottom(new Level(In("36"), Datum.Subfloor)).WithTop(new Level(In("40"), Datum.Subfloor));
        DeviceBox[] boxes = [.. new[] { "30", "60", "90" }.Select(at => SquareRoom.Box("duplex-receptacle", "counter", In(at), In("40")).WithHeight(BoxHeight.ToCenter(In("40"), Datum.Subfloor)).WithId("K" + at))];
        Dwelling house = new SquareRoom { Kind = RoomKind.Kitchen, North = boxes }.House();
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id == "north" ? wall.WithFinishes(new[] { splash }) : wall))));
        Evaluation evaluation = Only("finish-edge").Evaluate(house);
        Cause cause = Assert.Single(evaluation.Causes);
        Assert.Equal(3, cause.Subjects.Count);
        Assert.All(evaluation.Findings, finding => Assert.Equal(cause.Remedies, finding.Remedies));
    }

    private static Items<Finding> Found(string rule, Dwelling house) => new(Practice.Evaluate(house).Findings.Where(finding => finding.RuleId == rule));

    private static LayoutEvaluator Only(string rule) => new(OneBox.Only(RuleSets.RoughInPractice, rule));

    /// <summary>Two walls of 3-1/2 in, each with a deep box on both faces at one place.</summary>
    private static Dwelling TwoPairs()
    {
        DeviceBox Box(string id, string at) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
            .WithSize(new BoxSize(In("2-1/4"), In("3-3/4"), In("3"))).WithAt(In(at)).WithHeight(BoxHeight.ToTop(In("16"), Datum.Subfloor));
        Room Room(string id, string? back, DeviceBox box) => new Room(id, RoomKind.Bedroom, "first").WithWalls(new[] { new Wall("wall", In("144")).WithBackOf(back).WithCavity(In("3-1/2")).WithBoxes(new[] { box }) });
        return new Dwelling("pairs").WithStoreys(new[] { new Storey("first").WithBoards(new BoardLayout().WithThickness(In("1/2"))).WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared)) }).WithRooms(new[]
        {
            Room("one", "two/wall", Box("A1", "60")), Room("two", null, Box("B1", "84")),
            Room("three", "four/wall", Box("A2", "60")), Room("four", null, Box("B2", "84")),
        });
    }
}
