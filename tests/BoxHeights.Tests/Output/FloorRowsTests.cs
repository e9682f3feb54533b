using System;
using System.Linq;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class FloorRowsTests
{
    // 82 in from the left end of the first wall and 100 in into a room of 200 by 200 in: the nearest wall is the west, 82 in off; across it the north and the south are as far.
    [Fact]
    public void InFloor_OnAnIsland_IsByTwoTapesAndNamesTheIsland()
    {
        FloorRow row = Assert.Single(Sheet.InFloor);
        Assert.Equal(("kitchen", "k1", "island", "30 in to center above finished floor"), (row.Room, row.BoxId, row.On, row.Height.ToString()));
        Assert.Equal([Inches(82), Inches(100)], row.Tapes.Select(tape => tape.Away).Order());
        Assert.Contains("| k1 | counter | island | 82 in from w4 | 100 in from w1 | 30 in to center above finished floor |", Sheet.ToMarkdown(), StringComparison.Ordinal);
        Assert.Single(Sheet.ForRoom("kitchen").InFloor);
        Assert.Empty(Sheet.ForRoom("hall").InFloor);
    }

    [Fact]
    public void InFloor_SetAlready_HasNoRow() => Assert.Empty(MarksOf(OnIsland.WithExisting(true)).InFloor);

    private static DeviceBox OnIsland { get; } = new DeviceBox("k1", BoxPurpose.Counter).WithDevices(DeviceKind.DuplexReceptacle).WithSurface(BoxSurface.Cabinet)
        .WithPlan(new PlanPoint(Inches(82), Inches(100))).WithHeight(BoxHeight.ToCenter(Inches(30), Datum.FinishedFloor));

    internal static MarkSheet Sheet => MarksOf(OnIsland);

    private static MarkSheet MarksOf(DeviceBox box)
    {
        DwellingBuilder house = new("house");
        house.Add(First);
        house.Room("kitchen", RoomKind.Kitchen, "first").With(room => room.WithFreestanding(new Freestanding("island", FreestandingKind.Island)
            .WithTop(new Level(Inches(36), Datum.FinishedFloor)).WithCorners(Point(80, 70), Point(140, 70), Point(140, 100), Point(80, 100))))
            .AddInFloor(box).Outline(Point(0, 0), Point(200, 0), Point(200, 200), Point(0, 200));
        return Sheets.For(house.Build(), RuleSet.Empty);
    }

    private static PlanPoint Point(int right, int into) => new(Inches(right), Inches(into));
}
