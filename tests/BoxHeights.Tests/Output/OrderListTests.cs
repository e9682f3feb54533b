using System;
using System.Linq;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class OrderListTests
{
    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023);

    // Studs of 1-1/2 in at 16 in, the first with its near face at 15-1/4 in: faces at 16-3/4 and 31-1/4 in leave 14-1/2 in clear, 47-1/4 and 48-3/4 in after that.
    private static readonly Storey Framed = First.WithStuds(new StudLayout().WithSpacing(Inches(16)).WithFirstFace(Inches(15, 1, 4)).WithKnown(StudKnowledge.Declared));

    [Fact]
    public void Holding_OfABoxOnABlock_SaysHowLongTheBlockIs()
    {
        DeviceBox middle = At("a", Inches(24), MountingMethod.Blocking);

        // 2-1/4 in wide, its left side 1-1/2 in off the face at 16-3/4 in: one 2x block fills that.
        DeviceBox packed = At("b", Inches(16, 3, 4) + Inches(1, 1, 2) + Inches(1, 1, 8), MountingMethod.Blocking);
        Assert.Equal(["1 2x block against the stud", "1 block across the bay, 14-1/2 in long"], Of(OrderedPart.Holder, Ordered(Framed, middle, packed)));
        Assert.Equal(["1 bar", "1 bracket"], Of(OrderedPart.Holder, Ordered(Framed, At("a", Inches(24), MountingMethod.Bar), At("b", Inches(40), MountingMethod.Bracket))));
    }

    [Theory]
    [InlineData("24", "d")]
    [InlineData("17-7/8", "")]
    public void NotCounted_OfABoxThatNothingIsKnownToHold_SaysSo(string at, string asked)
    {
        OrderList list = Ordered(Framed, Houses.Box("d1", "16 in to top above subfloor").WithAt(Cases.CaseFile.Inches(at)));
        Assert.Equal(asked.Length > 0, list.NotCounted.Exists(line => line.StartsWith("what holds boxes that aren't known to stand against a stud: den", StringComparison.Ordinal)));
        Assert.DoesNotContain(list.Rows, row => row.Part == OrderedPart.Holder);
    }

    // NEC 300.4(D): 1-1/4 in from the nearest face, or a steel plate. In framing 2-1/2 in deep or less a cable has that from no more than one of its faces.
    [Theory]
    [InlineData("1-1/2", 2)]
    [InlineData("2-1/2", 2)]
    [InlineData("2-17/32", 0)]
    [InlineData("3-1/2", 0)]
    public void NailPlates_WhereTheFramingIsShallow_AreOneForEachCable(string cavity, int plates)
    {
        DeviceBox box = At("a", Inches(17, 7, 8), MountingMethod.Stud).WithCables(CableType.Parse("14-2"), CableType.Parse("14-2"));
        OrderList list = Ordered(Framed, wall => wall.WithCavity(Cases.CaseFile.Inches(cavity)), box);
        Assert.Equal(plates, list.Rows.Where(row => row.Part == OrderedPart.NailPlate).Sum(row => row.Count));
        Assert.DoesNotContain(list.NotCounted, line => line.Contains("its depth isn't stated", StringComparison.Ordinal));
        Assert.Contains(list.NotCounted, line => line.Contains("nearer than 1-1/4 in to a face", StringComparison.Ordinal));
        Assert.Contains(Ordered(Framed, box).NotCounted, line => line.Contains("its depth isn't stated: den", StringComparison.Ordinal));

        // A set that says nothing of cables near faces asks for no plates.
        OrderList silent = OrderList.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(House(Framed, wall => wall.WithCavity(Inches(1, 1, 2)), box)));
        Assert.DoesNotContain(silent.NotCounted, line => line.Contains("nail plates", StringComparison.Ordinal));
    }

    // Joists at 16 in, the first 8 in from the first wall: one is at 56 in, the middle of the bay at 64 in. A box 4 in across is nailed to a joist's side at 2-3/4 in from its middle.
    [Theory]
    [InlineData("64", "1 bar between joists, 16 in apart")]
    [InlineData("58-3/4", "")]
    [InlineData("53-1/4", "")]
    public void Holding_InACeiling_IsByItsJoists(string into, string held)
    {
        DeviceBox light = new DeviceBox("l", BoxPurpose.Light).WithDevices(DeviceKind.Luminaire).WithKind(BoxKind.Octagon).WithPlan(new PlanPoint(Inches(30), Cases.CaseFile.Inches(into)));
        Room room = Square(light);
        Assert.Equal(held.Length == 0 ? [] : new[] { held }, Of(OrderedPart.Holder, List(Houses.Of(room.WithJoists(new JoistLayout(Inches(16)).WithRuns(JoistRun.Along).WithFirst(Inches(8)))))));
        Assert.Contains(List(Houses.Of(room)).NotCounted, line => line.StartsWith("what holds boxes in ceilings", StringComparison.Ordinal) && line.EndsWith(": den", StringComparison.Ordinal));
    }

    [Fact]
    public void Plates_AreToldByWhatTheyCover_AndAgainstTheWeatherOutside()
    {
        DeviceBox pair = At("s", Inches(19, 3, 4), MountingMethod.Stud).WithDevices(DeviceKind.Switch, DeviceKind.ThreeWaySwitch);
        DeviceBox outlet = At("x", Inches(40), MountingMethod.Surface).WithDevices(DeviceKind.GfciReceptacle);
        Dwelling house = House(Framed, wall => wall, pair).WithOutside(new OutsideFace("porch").WithStorey("first").WithWalls(new Wall("wall", Inches(144)).WithBoxes(outlet)));
        Assert.Equal(["1 standard, 2-gang, for switch + three-way-switch", "1 weatherproof, 1-gang, for gfci-receptacle"], Of(OrderedPart.Plate, List(house)));
    }

    [Fact]
    public void Boxes_ForJunctionsAndRings_SayNoGangsOfTheirOwn()
    {
        DeviceBox square = At("q", Inches(24), MountingMethod.Bracket).WithKind(BoxKind.FourSquare).WithVolume(Volume.Parse("21 in3"));
        DeviceBox octagon = At("o", Inches(40), MountingMethod.Bracket).WithKind(BoxKind.Octagon).WithDevices(DeviceKind.Luminaire).WithVolume(Volume.Parse("15.5 in3"));
        Assert.Equal(["1 four-square, with a ring for 1-gang, 21 in3", "1 octagon, 15.5 in3"], Of(OrderedPart.Box, Ordered(Framed, square, octagon)));
    }

    [Fact]
    public void Boxes_OfOneKindAndDifferentVolumes_AreLinesOfTheirOwnSideBySide()
    {
        DeviceBox Sized(string id, int place, string? volume, BoxKind kind = default)
        {
            DeviceBox box = At(id, Inches(17, 7, 8) + (Inches(16) * place), MountingMethod.Stud).WithKind(kind == default ? BoxKind.NailOn : kind);
            return volume is null ? box : box.WithVolume(Volume.Parse(volume));
        }

        OrderList list = Ordered(Framed, Sized("a", 0, "22.5 in3"), Sized("b", 1, "21 in3", BoxKind.CutIn), Sized("c", 2, "21 in3", BoxKind.CutIn), Sized("d", 3, "18 in3"), Sized("e", 4, "18 in3"),
            Sized("f", 5, null), Sized("g", 6, null, BoxKind.LowVoltageBracket).WithDevices(DeviceKind.DataJack));
        Assert.Equal(["2 nail-on, 1-gang, 18 in3", "1 nail-on, 1-gang, 22.5 in3", "1 nail-on, 1-gang, volume not stated", "2 cut-in, 1-gang, 21 in3", "1 low-voltage-bracket, 1-gang"],
            list.Rows.Where(row => row.Part == OrderedPart.Box).Select(row => row.Count + " " + row.What));
        Assert.Contains("how large boxes have to be whose volume isn't stated: den", list.NotCounted);
        Assert.DoesNotContain(Ordered(Framed, Sized("d", 3, "18 in3")).NotCounted, line => line.Contains("volume", StringComparison.Ordinal));
    }

    private static Room Square(DeviceBox overhead) => new Room("den", RoomKind.Bedroom, "first")
        .WithWalls(new[] { "n", "e", "s", "w" }.Select(id => new Wall(id, Inches(120))).ToArray()).WithOverhead(overhead);

    private static DeviceBox At(string id, Distance at, MountingMethod how) =>
        Houses.Box(id, "16 in to top above subfloor").WithAt(at).WithMounting(new Mounting(how)).WithDevices(DeviceKind.DuplexReceptacle);

    private static Dwelling House(Storey storey, Func<Wall, Wall> wall, params DeviceBox[] boxes)
    {
        Room room = Room("den", boxes);
        return Houses.Of(room.WithWalls(wall(room.Walls[0]))).WithStoreys(storey);
    }

    private static OrderList Ordered(Storey storey, params DeviceBox[] boxes) => Ordered(storey, wall => wall, boxes);

    private static OrderList Ordered(Storey storey, Func<Wall, Wall> wall, params DeviceBox[] boxes) => List(House(storey, wall, boxes));

    // As described: what rows find is other tests' matter, so those of the set that only lists are kept.
    private static OrderList List(Dwelling house) => OrderList.For(new LayoutEvaluator(new RuleSet(Rules.Rows.Where(rule => rule is BoxHeights.Rules.InspectionItem))).Evaluate(house));

    private static string[] Of(OrderedPart part, OrderList list) => [.. list.Rows.Where(row => row.Part == part).Select(row => row.Count + " " + row.What).Order(StringComparer.Ordinal)];
}
