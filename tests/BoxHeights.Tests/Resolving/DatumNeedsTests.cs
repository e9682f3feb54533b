using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <summary>What has to be stated for each datum, as its remarks and the README say: without it the report and the marks name what is missing, with it the box has a mark.</summary>
public sealed class DatumNeedsTests
{
    private static readonly LayoutEvaluator Evaluator = new(new RuleSet([new HeightBand("band", "not too high", Severity.Violation, new("House rules"), Datum.Subfloor) { High = In(95) }]));

    private static readonly Dictionary<Datum, (Func<Dwelling, Dwelling> State, string Missing)> Needs = new()
    {
        [Datum.Subfloor] = (house => house, ""),
        [Datum.BottomPlate] = (house => house, ""),
        [Datum.FinishedFloor] = (house => OfRoom(house, room => room.WithFloor(OneBox.Floor(In(1)))), "good for any floor"),
        [Datum.LevelLine] = (house => OfStorey(house, storey => storey.WithLevelLine(new Level(In(48), Datum.Subfloor))), "depends on where the level line lies"),
        [Datum.Grade] = (house => OfStorey(house, storey => storey.WithGradeBelowSubfloor(In(8))), "depends on where the grade lies"),
        [Datum.FinishedCeiling] = (house => OfStorey(house, storey => storey.WithCeiling(new Ceiling().WithFraming(In(97)).WithBoard(In(0.5m)))), "depends on where the finished ceiling lies"),
        [Datum.Countertop] = (house => OfWall(house, wall => wall.WithCounters(new Counter("c", CounterKind.Kitchen, In(60), In(90)).WithTop(new Level(In(36), Datum.Subfloor)))), "taken from the countertop, but no counter of known height"),
        [Datum.SplashTop] = (house => OfWall(house, wall => wall.WithFinishes(new Finish("f", FinishKind.Tile, In(60), In(90)).WithTop(new Level(In(40), Datum.Subfloor)))), "taken from the splash top, but no finish with a known top"),
        [Datum.CabinetUnderside] = (house => OfWall(house, wall => wall.WithCoverings(new Covering("w", CoveringKind.WallCabinet, In(60), In(90)).WithBottom(new Level(In(54), Datum.Subfloor)))), "no wall cabinet of known height"),
        [Datum.WindowHead] = (house => OfWall(house, wall => wall.WithOpenings(new Opening("o", OpeningKind.Window, In(100), In(130)).WithHead(new Level(In(82), Datum.Subfloor)))), "no window with a known head"),
        [Datum.Rim] = (house => OfRoom(house, room => room.WithFixtures(new Fixture("t", FixtureKind.Tub).WithWall("wall").WithLeft(In(60)).WithRight(In(90)).WithRim(new Level(In(20), Datum.Subfloor)))), "no tub or shower with a known rim"),
        [Datum.Nosing] = (house => OfRoom(house, room => room.WithFloor(OneBox.Floor(In(0)))).WithStoreys(house.Storeys[0], new Storey("upper").WithAboveBelow(In(106))).WithFlights(new StairFlight("s", "ground", "upper", 14).WithTread(In(10)).WithFirstNosing(In(10)).WithWall("room/wall").WithCutForFloorBelow(In(0)).WithCutForFloorAbove(In(0))), "no flight of known rise climbs along its wall"),
        [Datum.WalkingSurface] = (house => OfRoom(house, room => room.WithFloor(OneBox.Floor(In(1)))), "good for any floor"),
        [Datum.ExistingPlate] = (house => OfWall(house, wall => wall.WithBoxes(wall.Boxes.With(new DeviceBox("old", BoxPurpose.General).WithExisting(true).WithAt(In(30)).WithHeight(BoxHeight.ToCenter(In(40), Datum.Subfloor))))), "no existing box of known height"),
    };

    [Fact]
    public void Datum_WithAndWithoutWhatItNeeds_IsMarkedOrNamed()
    {
        // A stool can be said of Levels alone.
        Assert.Equal(Enum.GetValues<Datum>().Except([Datum.WindowStool]), Needs.Keys.Order());
        Assert.Contains("taken from the window stool, but no part of a description says where one lies", Evaluator.Evaluate(House(Datum.WindowStool)).ToText(), StringComparison.Ordinal);
        Assert.All(Needs, need =>
        {
            Evaluation without = Evaluator.Evaluate(House(need.Key));
            Assert.Contains(need.Value.Missing, without.ToText(), StringComparison.Ordinal);
            Assert.Equal(need.Value.Missing.Length == 0, IsMarked(without));
            Evaluation with = Evaluator.Evaluate(need.Value.State(House(need.Key)));
            Assert.True(with.IsClean, with.ToText());
            Assert.True(IsMarked(with), need.Key.ToString());
        });
    }

    [Theory]
    [InlineData("44 in AFF", "no mark: 44 in above finished floor (edge unstated) names no edge of the box: add \"to top\", \"to center\" or \"to bottom\" to it")]
    [InlineData("4 in to center above level line", "no mark: where the level line lies isn't known: its storey doesn't state it")]
    [InlineData("10 in to center below finished ceiling", "no mark: where the finished ceiling lies isn't known: the framing and the board of the ceiling aren't stated")]
    public void MarkSheet_HeightThatCannotBeMarked_SaysWhatToAdd(string height, string note)
    {
        Dwelling house = OfRoom(House(Datum.Subfloor), room => room.WithFloor(OneBox.Floor(In(1))));
        MarkSheet sheet = MarkSheet.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(house.WithBoxes(box => box.WithHeight(BoxHeight.Parse(height)))));
        MarkRow row = Assert.Single(sheet.Rows);
        Assert.Null(row.Mark);
        Assert.Equal(note, row.Note);
    }

    private static bool IsMarked(Evaluation evaluation) => MarkSheet.For(evaluation, MarkOptions.Default.WithAsDescribed(true)).Rows.Any(row => row.BoxId == OneBox.Id && row.Mark is not null);

    // So high or low that all of them end within the room.
    private static Dwelling House(Datum datum) => new OneBox { Box = new DeviceBox(OneBox.Id, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(In(72)) }
        .At(BoxHeight.ToCenter(datum is Datum.FinishedCeiling or Datum.WindowHead or Datum.CabinetUnderside ? -In(10) : datum is Datum.FinishedFloor or Datum.WalkingSurface ? In(94) : In(20), datum)).Build();

    private static Dwelling OfRoom(Dwelling house, Func<Room, Room> change) => house.WithRooms(house.Rooms.Select(change));

    private static Dwelling OfStorey(Dwelling house, Func<Storey, Storey> change) => house.WithStoreys(house.Storeys.Select(change));

    private static Dwelling OfWall(Dwelling house, Func<Wall, Wall> change) => OfRoom(house, room => room.WithWalls(room.Walls.Select(change)));
}
