using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class StoryPoleTests
{
    [Fact]
    public void For_UsualHouse_HasAMarkForEachHeight()
    {
        StoryPole pole = Sheets.PoleFor(Of(
            Room("den", Box("d1", "16 in to top above subfloor"), Box("d2", "48 in to top above subfloor", BoxPurpose.Switch)),
            Room("bed", Box("b1", "48 in to top above subfloor", BoxPurpose.Counter), Box("b2", "16 in to top above subfloor"), Box("b3", "12 in to bottom above subfloor"))));
        Assert.Equal(["12 in to bottom above subfloor", "16 in to top above subfloor", "48 in to top above subfloor"], pole.Rows.AsEnumerable().Select(row => row.Mark.ToString()));
        Assert.Equal(["b3", "d1, b2", "d2, b1"], pole.Rows.AsEnumerable().Select(row => row.BoxIds.ToString()));
        Assert.Equal("switch, counter", pole.Rows[2].Purposes.ToString());

        // On the plate the pole reads 1-1/2 in less; the line is 48 in above the subfloor.
        Assert.Equal([Inches(10, 1, 2), Inches(14, 1, 2), Inches(46, 1, 2)], pole.Rows.AsEnumerable().Select(row => row.FromPlate!.Value));
        Assert.Equal([Inches(-36), Inches(-32), Inches(0)], pole.Rows.AsEnumerable().Select(row => row.FromLevelLine!.Value));
        Assert.Empty(pole.NotYet);
        Assert.Empty(pole.LeftOut);
    }

    [Fact]
    public void For_HammerStoodOnThePlate_MarksThePlateHigher()
    {
        // A box 3-5/8 in tall over a hammer of 13-5/8 in on the plate has its top at 18-3/4 in: common practice, no source.
        PoleMark mark = Assert.Single(Sheets.PoleFor(Of(Room("den", Box("d1", "13-5/8 in to bottom off the bottom plate")))).Rows);
        Assert.Equal(Inches(15, 1, 8), mark.Mark.Value);
        Assert.Equal(Inches(13, 5, 8), mark.FromPlate);
        Assert.Equal(Inches(18, 3, 4), mark.Mark.AtEdge(Edge.Top, new BoxSize(Inches(2, 1, 4), Inches(3, 5, 8))).Value);
    }

    [Fact]
    public void For_FloorsChosen_BringsOneHeightToOneMarkAndAnotherToTwo()
    {
        Room tiled = Room("bath", Box("t1", "44 in to center above finished floor"), Box("t2", "8 in to bottom above countertop")) with { Floor = Floor(Inches(0, 7, 8)) };
        tiled = tiled with { Walls = tiled.Walls.Select(wall => wall with { Counters = new[] { new Counter("c", CounterKind.Bath, Inches(0), Inches(60)) { Top = new Level(Inches(34), Datum.FinishedFloor) } } }) };
        StoryPole pole = Sheets.PoleFor(Of(tiled, Room("den", Box("d1", "44-7/8 in to center above subfloor"))));
        Assert.Equal(["42-7/8 in to bottom above subfloor", "44-7/8 in to center above subfloor"], pole.Rows.AsEnumerable().Select(row => row.Mark.ToString()));
        Assert.Equal("t1, d1", pole.Rows[1].BoxIds.ToString());
    }

    [Fact]
    public void For_FloorNotChosen_ListsTheRangeApart()
    {
        StoryPole pole = Sheets.PoleFor(Of(Room("den", Box("d1", "44 in to center above finished floor"), Box("d2", "44 in to center above finished floor"))));
        PoleRange range = Assert.Single(pole.NotYet);
        Assert.Equal(new DistanceRange(Inches(44), Inches(45, 1, 4)), range.Range);
        Assert.Equal(BoxHeight.ToCenter(Inches(44), Datum.FinishedFloor), range.Height);
        Assert.Equal("the floor isn't chosen", range.Why);
        Assert.Equal("d1, d2", range.BoxIds.ToString());
        Assert.Empty(pole.Rows);
        Assert.Contains("first,,to center,,,general,2,\"d1, d2\",44 in to 45-1/4 in: the floor isn't chosen\r\n", pole.ToCsv(), StringComparison.Ordinal);
        Assert.Contains("| 44 in to center above finished floor | 44 in to 45-1/4 in | the floor isn't chosen | general | 2 | d1, d2 |", pole.ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void For_SunkenRoom_HasMarksOfItsOwnThatNameIt()
    {
        Room sunken = Room("den", Box("d1", "16 in to top above subfloor")) with { SubfloorOffset = Inches(-6) };
        StoryPole pole = Sheets.PoleFor(Of(sunken, Room("bed", Box("b1", "16 in to top above subfloor"), Box("b2", "32 in to top below level line"))));
        Assert.Equal(["b1, b2", "d1"], pole.Rows.AsEnumerable().Select(row => row.BoxIds.ToString()));
        Assert.Equal([Inches(0), Inches(-6)], pole.Rows.AsEnumerable().Select(row => row.Subfloor));
        Assert.Equal(["", "den"], pole.Rows.AsEnumerable().Select(row => row.Rooms.ToString()));

        // 16 in over a floor 6 in down is 38 in under a line at 48 in.
        Assert.Equal([Inches(-32), Inches(-38)], pole.Rows.AsEnumerable().Select(row => row.FromLevelLine!.Value));
        Assert.Contains("## first, subfloor 6 in below the storey's: den\n", pole.ToMarkdown(), StringComparison.Ordinal);
    }

    // The sheet rounds, once: what it marks alike is one mark here, and the readings are off that mark. 406 mm less a plate of 38.1 mm is 367.9 mm; a line at 1219.2 mm is 813.2 mm up.
    [Fact]
    public void For_HeightsThatTheSheetMarksAlike_HasOneMark()
    {
        StoryPole pole = Sheets.PoleFor(Of(Room("den", Box("d1", "16-1/32 in to top above subfloor"), Box("d2", "16 in to top above subfloor"), Box("d3", "15-31/32 in to top above subfloor"))));
        PoleMark mark = Assert.Single(pole.Rows);
        Assert.Equal((Inches(16), "d1, d2, d3"), (mark.Mark.Value, string.Join(", ", mark.BoxIds.Order())));
        PoleMark metric = Assert.Single(Sheets.PoleFor(Of(Room("den", Box("d1", "16 in to top above subfloor"))) with { Units = LengthUnits.Millimeters }).Rows);
        Assert.Equal([406m, 367.9m, -813.2m], [metric.Mark.Value.Millimeters, metric.FromPlate!.Value.Millimeters, metric.FromLevelLine!.Value.Millimeters]);
    }

    [Fact]
    public void For_BoxesThatCantBeMarked_SaysWhy()
    {
        DeviceBox cabinet = Box("hood", "74 in to center above subfloor") with { Surface = BoxSurface.Cabinet };
        StoryPole pole = Sheets.PoleFor(Of(Room(
            "den", Box("edge", "16 in above subfloor"), Box("grade", "18 in to bottom above grade"), Box("far", "16 in to top above subfloor") with { At = Inches(150) },
            Box("counter", "8 in to bottom above countertop"), Box("old", "14 in to top above subfloor") with { Existing = true }, cabinet, new DeviceBox("bare", BoxPurpose.General))));
        Assert.Empty(pole.Rows);
        Assert.Equal(
            [
                "edge: its height names no edge of the box: add \"to top\", \"to center\" or \"to bottom\" to it", "grade: where the grade lies isn't known: its storey doesn't state it", "far: its center is at 150 in, but the wall is 144 in long",
                "counter: its height is taken from the countertop, but no counter of known height stands where it is", "bare: it has no height",
            ],
            pole.LeftOut.AsEnumerable().Select(box => box.ToString()));
    }

    [Fact]
    public void For_BoxLowerThanThePlate_HasNoReadingOnIt() =>
        Assert.Null(Assert.Single(Sheets.PoleFor(Of(Room("den", Box("d1", "1-1/2 in to bottom above subfloor")))).Rows).FromPlate);

    [Fact]
    public void For_NoBoxes_IsOnlyTheCaution()
    {
        StoryPole pole = Sheets.PoleFor(new Dwelling("empty"));
        Assert.Empty(pole.Rows);
        Assert.Equal("storey,mark,to,on the plate,from level line,for,boxes,ids,note\r\n", pole.ToCsv());
        Assert.StartsWith("# Story pole: empty\n\nA planning aid, not an approval.", pole.ToMarkdown(), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => StoryPole.For((Evaluation)null!));
    }

    [Fact]
    public void For_AnyHouse_ListsEveryNewBoxOnAWallOnce()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            StoryPole pole = Sheets.PoleFor(house);
            List<string> listed = [.. pole.Rows.SelectMany(row => row.BoxIds), .. pole.NotYet.SelectMany(row => row.BoxIds), .. pole.LeftOut.AsEnumerable().Select(box => box.BoxId)];
            return listed.Order().SequenceEqual(house.PlacedBoxes().Where(placed => !placed.Box.Existing).Select(placed => placed.Box.Id).Order());
        }).Check(Tries.Always(100));
    }

    // The second road: each mark's height added up from what the room says, in sixteenths and the like, without levels.
    [Fact]
    public void For_AnyHouse_MarksAreWhereTheirBoxesAre()
    {
        Prop.ForAll(Arb.From(Any), house => Sheets.PoleFor(house).Rows.All(row => row.BoxIds.All(id =>
        {
            PlacedBox placed = house.FindBox(id)!;
            Room room = house.Rooms.Single(one => one.Id == placed.Address.Split('/')[0]);
            BoxHeight height = placed.Box.Height!.Value;
            decimal floor = height.Datum is Datum.FinishedFloor or Datum.Countertop ? room.Floor!.Layers.Sum(layer => layer.Thickness.From.Inches) : 0m;
            decimal exact = height.Value.Inches + floor + height.Datum switch { Datum.BottomPlate => 1.5m, Datum.Countertop => 36m, _ => 0m };
            return row.Mark.Edge == height.Edge && row.Storey == room.Storey && row.Subfloor == room.SubfloorOffset
                && Math.Abs(row.Mark.Value.Inches - exact) <= 0.0625m && row.Mark.Value.IsMultipleOf(Eighth)
                && (row.FromPlate is { } plate ? plate == row.Mark.Value - Inches(1, 1, 2) : row.Mark.Value <= Inches(1, 1, 2))
                && (row.Storey == "first") == (row.FromLevelLine is not null);
        }))).Check(Tries.Always(100));
    }

    [Fact]
    public void For_AnyHouse_RisesAndNeverRepeats()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            Items<PoleMark> rows = Sheets.PoleFor(house).Rows;
            return rows.Zip(rows.Skip(1)).All(pair => pair.First.Storey != pair.Second.Storey || pair.First.Subfloor != pair.Second.Subfloor || pair.First.Mark.Value <= pair.Second.Mark.Value)
                && rows.Select(row => (row.Storey, row.Subfloor, row.Mark)).Distinct().Count == rows.Count;
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void For_MirroredOrRenamedRooms_IsTheSamePole()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            List<string> pole = Lines(house);
            return pole.SequenceEqual(Lines(Mirrored(house))) && pole.SequenceEqual(Lines(Renamed(house)));
        }).Check(Tries.Always(100));

        static List<string> Lines(Dwelling house)
        {
            StoryPole pole = Sheets.PoleFor(house);
            return
            [
                .. pole.Rows.AsEnumerable().Select(row => row.Storey + row.Subfloor + row.Mark + row.FromPlate + row.FromLevelLine + string.Join(' ', row.BoxIds.Order())),
                .. pole.NotYet.Select(row => row.Storey + row.Subfloor + row.Height + row.Range + row.Why + string.Join(' ', row.BoxIds.Order())),
                .. pole.LeftOut.AsEnumerable().Select(box => box.ToString()).Order(),
            ];
        }
    }
}
