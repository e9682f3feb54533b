using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>
/// Over the openings of a wall that carries something lies a header, whoever states it: 5-1/2 to 11-1/4 in tall, a 2 × 6 to a 2 × 12 on edge, common practice, no source;
/// as long as the rough opening and a jack of 1-1/2 in at each end (framers' tables: rough opening plus 3 in).
/// </summary>
public sealed class HeaderTests
{
    private static readonly Distance Tick = Distance.FromTicks(1);
    private static LayoutEvaluator Row => new(new RuleSet([RuleSets.RoughInPractice.Row("in-cavity")!]));

    // The box's bottom in inches over the head of a door: in the header, perhaps in it, over it.
    [Theory]
    [InlineData("0 in", 0, Verdict.Fails)]
    [InlineData("5-1/2 in", -1, Verdict.Fails)]
    [InlineData("5-1/2 in", 0, Verdict.Unknown)]
    [InlineData("11-1/4 in", -1, Verdict.Unknown)]
    [InlineData("11-1/4 in", 0, null)]
    public void Header_OverADoorOfABearingWall_IsJudgedUnstated(string over, int ticks, Verdict? expected)
    {
        Distance bottom = In(82.5m) + Distance.Parse(over) + Distance.FromTicks(ticks);
        Assert.Equal(expected, Judged(Hall(true, bottom, In(60))));
        Assert.Null(Judged(Hall(false, bottom, In(60))));
    }

    // The opening is 44 to 76 in; with the jacks 42-1/2 to 77-1/2 in, and a box of 2-1/4 in stands beside that.
    [Theory]
    [InlineData(-1, null)]
    [InlineData(1, Verdict.Fails)]
    public void Header_IsAsLongAsItsOpeningAndTheJacks(int ticks, Verdict? expected)
    {
        Assert.Equal(expected, Judged(Hall(true, In(84), In(42.5m) - In(1.125m) + Distance.FromTicks(ticks))));
        Assert.Equal(expected, Judged(Hall(true, In(84), In(77.5m) + In(1.125m) - Distance.FromTicks(ticks))));
    }

    [Fact]
    public void Header_ThatIsStated_IsTakenAsItIsStated()
    {
        Dwelling Stated(Distance bottom) => Hall(true, bottom, In(60), wall => wall.WithNoCavity(new[]
        {
            new NoCavity(NoCavityKind.Header, In(42.5m), In(77.5m)).WithBottom(new(In(82.5m), Datum.Subfloor)).WithTop(new(In(91.75m), Datum.Subfloor)),
        }));
        Assert.Equal(Verdict.Fails, Judged(Stated(In(91.75m) - Tick)));
        Assert.Null(Judged(Stated(In(91.75m))));
    }

    [Fact]
    public void Header_OfAnOpeningWithoutAHead_IsNotMadeUp() =>
        Assert.Null(Judged(Hall(true, In(84), In(60), wall => wall.WithOpenings(wall.Openings.Select(door => door.WithHead(null))))));

    // Whichever face says that the wall carries something, or what fills it, and whichever has the box.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Wall_OfTwoRooms_IsFilledForBoth(bool bearing)
    {
        NoCavity duct = new NoCavity(NoCavityKind.Duct, In(50), In(64)).WithBottom(new(In(80), Datum.Subfloor));
        Wall other = new Wall("south", In(120)).WithBearing(bearing).WithNoCavity(bearing ? Items<NoCavity>.None : new[] { duct });
        Dwelling house = Hall(false, In(84), In(60));
        Dwelling House(Wall behind, string? back) => house.WithRooms(new[]
        {
            house.Rooms[0].WithWalls(house.Rooms[0].Walls.Select(wall => wall.WithBackOf(back))),
            new Room("bath", RoomKind.Bathroom, "first").WithWalls(new[] { behind }),
        });
        Assert.Null(Judged(House(other, null)));
        Assert.Equal(Verdict.Fails, Judged(House(other, "bath/south")));
        Assert.Equal(Verdict.Fails, Judged(House(other.WithBackOf("hall/north"), null)));

        // Seen from the hall a duct at 50 to 64 in is at 56 to 70 in; a stringer lies on its own face.
        Assert.Null(Judged(House(other.WithBearing(false).WithNoCavity(new[] { duct.WithKind(NoCavityKind.Stringer) }), "bath/south")));
        Assert.Null(Judged(House(other.WithBearing(false).WithNoCavity(new[] { duct.WithLeft(In(61.125m)).WithRight(In(70)) }), "bath/south")));
        Assert.Equal(Verdict.Fails, Judged(House(other.WithBearing(false).WithNoCavity(new[] { duct.WithLeft(In(61.125m) - Tick).WithRight(In(70)) }), "bath/south")));
    }

    private static Verdict? Judged(Dwelling house) => Row.Evaluate(house).Findings.SingleOrDefault()?.Verdict;

    private static Dwelling Hall(bool bearing, Distance bottom, Distance at, System.Func<Wall, Wall>? change = null)
    {
        Wall wall = new Wall("north", In(120)).WithBearing(bearing)
            .WithOpenings(new[] { new Opening("door", OpeningKind.Door, In(44), In(76)).WithHead(new Level(In(82.5m), Datum.Subfloor)) })
            .WithBoxes(new[] { new DeviceBox("C1", new BoxPurpose("chime")).WithSize(new BoxSize(In(2.25m), In(3.75m))).WithAt(at).WithHeight(BoxHeight.ToBottom(bottom, Datum.Subfloor)) });
        return new Dwelling("House").WithStoreys(new[] { new Storey("first") })
            .WithRooms(new[] { new Room("hall", RoomKind.Hall, "first").WithWalls(new[] { change is null ? wall : change(wall) }) });
    }
}
