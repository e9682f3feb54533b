using System;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Measures that no house has are faults of what they describe; the rest is judged, and nothing throws.</summary>
public sealed class BeyondMeasureTests
{
    private static readonly LayoutEvaluator Evaluator =
        new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010);

    private static readonly Distance Huge = Distance.FromTicks(long.MaxValue - 1);

    [Theory]
    [InlineData(Edge.Bottom)]
    [InlineData(Edge.Center)]
    [InlineData(Edge.Top)]
    public void Height_OfABox_BeyondMeasure_IsAFaultOfThatBox(Edge edge)
    {
        foreach (Distance height in new[] { Huge, -Huge })
        {
            Evaluation evaluation = Evaluator.Evaluate(House(box => box.WithHeight(BoxHeight.To(edge, height, Datum.FinishedFloor)), wall => wall, room => room));
            Assert.Contains(evaluation.Findings, finding => finding is { Fault: not null, Subject: "odd" });
            Assert.Contains(evaluation.Checks, check => check.Subject == "good");
            Assert.DoesNotContain(evaluation.Findings, finding => finding.Subject == "good");
        }
    }

    [Fact]
    public void Parts_BeyondMeasure_NeverThrow()
    {
        Level high = new(Huge, Datum.FinishedFloor);
        Dwelling[] odd =
        [
            House(box => box, wall => wall.WithCounters(new[] { new Counter("c", CounterKind.Kitchen, Distance.Zero, Huge).WithTop(high).WithDepth(Huge) }), room => room),
            House(box => box, wall => wall.WithFinishes(new[] { new Finish("f", FinishKind.Tile, Huge, Huge).WithTop(high).WithBottom(new Level(-Huge, Datum.Subfloor)) }), room => room),
            House(box => box, wall => wall.WithOpenings(new[] { new Opening("o", OpeningKind.Door, Distance.Zero, Huge).WithCasing(Huge).WithReveal(Huge).WithHead(high) }), room => room),
            House(box => box, wall => wall.WithLength(Huge).WithTop(new[] { new WallTopPoint(Distance.Zero, Huge), new WallTopPoint(Huge, Distance.Zero) }), room => room),
            House(box => box.WithSetFor(Huge).WithMeasured(new MeasuredHeight(BoxHeight.ToTop(Huge, Datum.Subfloor)).WithWithin(Huge)), wall => wall, room => room),
            House(box => box, wall => wall, room => room.WithFloor(FloorBuildup.Of(new FloorLayer("a", Huge), new FloorLayer("b", Huge)))),
            House(box => box, wall => wall, room => room.WithSubfloorOffset(-Huge).WithCeiling(new Ceiling().WithFraming(Huge).WithBoard(Huge))),
        ];
        foreach (Dwelling dwelling in odd)
        {
            Evaluation evaluation = Evaluator.Evaluate(dwelling);
            Assert.Contains(evaluation.Checks, check => check.Subject == "good");
            Assert.NotEmpty(evaluation.ToText());
            Assert.NotNull(Evaluator.Open(dwelling).ToDwelling());
        }
    }

    [Fact]
    public void Move_BeyondMeasure_Throws()
    {
        LayoutSession session = Evaluator.Open(House(box => box, wall => wall, room => room));
        Assert.Throws<ArgumentOutOfRangeException>(() => session.Move("good", Huge, BoxHeight.ToTop(Distance.FromInches(16m), Datum.Subfloor)));
        Assert.Throws<ArgumentOutOfRangeException>(() => session.Move("good", Distance.Zero, BoxHeight.ToTop(-Huge, Datum.Subfloor)));
    }

    private static Dwelling House(Func<DeviceBox, DeviceBox> box, Func<Wall, Wall> wall, Func<Room, Room> room)
    {
        DeviceBox good = new DeviceBox("good", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
            .WithAt(Distance.FromInches(30m)).WithHeight(BoxHeight.ToCenter(Distance.FromInches(17.75m), Datum.Subfloor));
        Room odd = room(new Room("odd-room", RoomKind.Kitchen, "first").WithWalls(new[]
        {
            wall(new Wall("n", Distance.FromInches(120m))).WithBoxes(new[] { box(good.WithId("odd")) }),
        }));
        Room other = new Room("other", RoomKind.Bedroom, "first").WithFloor(FloorBuildup.Of()).WithWalls(new[] { new Wall("n", Distance.FromInches(120m)).WithBoxes(new[] { good }) });
        return new Dwelling("test").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { odd, other });
    }
}
