using System.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes that go to one height are told to go there together, and not if that undoes what each would mend alone.</summary>
public sealed class MovedAsOneTests
{
    private static readonly LayoutEvaluator Practice = new(RuleSets.RoughInPractice);

    // Two of four boxes have a panel's edge behind their plates, at 12-1/2 in.
    [Fact]
    public void Remedy_OfSomeBoxesThatGoToOneHeight_IsOneMove()
    {
        Dwelling house = House(["16", "16", "16", "16"]);
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.Id != "w0" ? wall
            : wall.WithFinishes(new[] { new Finish("base", new("panel"), Distance.Zero, wall.Length).WithBottom(Level.Parse("0 in above subfloor")).WithTop(Level.Parse("12-1/2 in above subfloor")) })).ToArray())).ToArray());
        Cause cause = Assert.Single(Practice.Evaluate(house).Causes);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(cause.Remedies));
        Assert.Equal(["b0", "b1"], move.Ids);
        Assert.Equal("set the stick 17 in to top above subfloor for 2 boxes: b0, b1", move.Text);
        Assert.True(Practice.Evaluate(move.ApplyTo(house)).IsClean);
    }

    // Four boxes of a room whose floor isn't known may be level with three others, which hang higher than is usual, or not. One of them where such usually are would be excused, all four of them would leave the
    // others off: the floor is to be found out.
    [Fact]
    public void Remedy_OfBoxesThatEachWouldDoAlone_IsToFindOutWhatIsntKnown()
    {
        Dwelling house = House(["20-5/8", "20-5/8", "20-5/8"]);
        Room other = new Room("other", RoomKind.Bedroom, "ground").WithFloor(FloorBuildup.Of(new FloorLayer("not chosen", new DistanceRange(Distance.Zero, CaseFile.Inches("1-1/4")))))
            .WithWalls(new[] { new Wall("w", CaseFile.Inches("200")).WithBoxes(Enumerable.Range(0, 4).Select(n => Box("o" + n, 20 + (n * 40), "18 in to center above finished floor")).ToArray()) });
        house = house.WithRooms(new Items<Room>(house.Rooms.Append(other)));
        Cause cause = Assert.Single(Practice.Evaluate(house).Causes, one => one.RuleId == "uniform-level");
        Assert.Equal((Verdict.Unknown, 4), (cause.Verdict, cause.Subjects.Count));
        Assert.Equal(NoRemedyReason.NotKnown, Assert.IsType<NoneFound>(Assert.Single(cause.Remedies)).Reason);
    }

    // 16 in is 406.4 mm, and marked at 406: that a box half an inch taller may miss the habit by 0.4 mm is no reason for a mark that no tape has.
    [Fact]
    public void Remedy_InMillimeters_IsAMark()
    {
        Dwelling house = House(["11", "11", "11"]).WithUnits(LengthUnits.Millimeters);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(Practice.Evaluate(house).Causes).Remedies));
        Assert.Equal(406m, move.Height.Value.Millimeters);
        Assert.Empty(Practice.Evaluate(move.ApplyTo(house)).Findings);
    }

    private static DeviceBox Box(string id, int at, string height) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse(height));

    /// <summary>Two walls, the first two boxes on one of them.</summary>
    private static Dwelling House(string[] tops) => new Dwelling("case").WithStoreys(new[] { new Storey("ground") }).WithRooms(new[]
    {
        new Room("room", RoomKind.Bedroom, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithWalls(Enumerable.Range(0, 2).Select(wall => new Wall("w" + wall, CaseFile.Inches("144"))
            .WithBoxes(tops.Select((top, n) => Box("b" + n, 30 + (n % 2 * 60), top + " in to top above subfloor")).Where((_, n) => n / 2 == wall).ToArray())).ToArray()),
    });
}
