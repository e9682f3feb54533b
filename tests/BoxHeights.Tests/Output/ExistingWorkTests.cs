using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class ExistingWorkTests
{
    private static DeviceBox Old(string id, string height) => Box(id, height) with { Existing = true };

    private static ExistingLevel? LevelIn(string place, Distance tolerance, params Room[] rooms) => ExistingWork.LevelOf(Of(rooms), place, BoxPurpose.General, tolerance);

    [Fact]
    public void LevelOf_FiveOfSix_NamesTheOther()
    {
        DeviceBox[] boxes = [.. Enumerable.Range(2, 5).Select(n => Old("W" + n, "18-3/4 in to top above subfloor")), Old("W1", "18-1/4 in to top above subfloor")];
        ExistingLevel level = LevelIn("den", Eighth, Room("den", boxes))!;
        Assert.Equal("match 18-3/4 in to top above subfloor (5 of 6; W1 is 1/2 low)", level.ToString());
        Assert.Equal("W2, W3, W4, W5, W6", level.Sharing.ToString());
        Assert.Equal(("W1", -Inches(0, 1, 2)), (level.Outliers.Single().BoxId, level.Outliers.Single().Offset));
    }

    [Fact]
    public void LevelOf_MixedEdgesAndSizes_ComparesCenters()
    {
        // 46-1/8 in is the center of a 3-3/4 in box with its top at 48 in, and of a 4 in box with its bottom at 44-1/8 in.
        DeviceBox square = Old("c", "44-1/8 in to bottom above subfloor") with { Kind = BoxKind.FourSquare };
        ExistingLevel level = LevelIn("den", Distance.Zero, Room("den", Old("a", "48 in to top above subfloor"), Old("b", "46-1/8 in to center above subfloor"), square))!;
        Assert.Equal("match 48 in to top above subfloor (3 of 3)", level.ToString());
    }

    [Fact]
    public void LevelOf_Measured_CountsBeforeWhatWasMeant() =>
        Assert.Equal("match 15-1/4 in to top above subfloor (1 of 1)", LevelIn("den", Eighth, Room("den", Old("a", "16 in to top above subfloor").Measured("15-1/4 in to top above subfloor")))!.ToString());

    [Fact]
    public void LevelOf_Tolerance_IsItselfAllowed()
    {
        Room room = Room("den", Old("a", "16 in to top above subfloor"), Old("b", "16 in to top above subfloor"), Old("c", "16-1/8 in to top above subfloor"));
        Assert.Equal("match 16 in to top above subfloor (3 of 3)", LevelIn("den", Eighth, room)!.ToString());
        Assert.Equal("match 16 in to top above subfloor (2 of 3; c is 1/8 high)", LevelIn("den", Eighth - Distance.FromTicks(1), room)!.ToString());
    }

    [Fact]
    public void LevelOf_AsManyOnTwoLevels_IsTheLowest() =>
        Assert.Equal("match 12 in to top above subfloor (1 of 2; a is 4 high)", LevelIn("den", Eighth, Room("den", Old("a", "16 in to top above subfloor"), Old("b", "12 in to top above subfloor")))!.ToString());

    [Fact]
    public void LevelOf_FloorNotKnown_ComparesAboveThatFloor()
    {
        Room room = Room("den", Old("a", "18 in to top above finished floor"), Old("b", "18 in to top above finished floor"), Old("c", "17 in to top above subfloor"));
        ExistingLevel level = LevelIn("den", Eighth, room)!;
        Assert.Equal("match 18 in to top above finished floor (2 of 2; not compared: c)", level.ToString());
        Assert.Equal("c: the floor isn't chosen", level.NotCompared.Single().ToString());
        Assert.Equal("match 17 in to top above subfloor (1 of 1; not compared: a, b)", LevelIn("first", Eighth, room)!.ToString());
    }

    [Fact]
    public void LevelOf_StoreyWithASunkenRoom_IsOneLevelLine()
    {
        // 22 in over a floor 6 in down is 16 in above the storey's.
        Room sunken = Room("den", Old("a", "22 in to top above subfloor")) with { SubfloorOffset = Inches(-6) };
        Room level = Room("bed", Old("b", "16 in to top above subfloor"));
        Assert.Equal("match 16 in to top above subfloor (2 of 2)", LevelIn("first", Eighth, sunken, level)!.ToString());
        Assert.Equal("match 22 in to top above subfloor (1 of 1)", LevelIn("den", Eighth, sunken, level)!.ToString());
    }

    [Fact]
    public void LevelOf_NothingToMatch_IsNull()
    {
        Assert.Null(LevelIn("den", Eighth, Room("den", Box("new", "16 in to top above subfloor"), Old("edge", "16 in above subfloor"))));
        Assert.Null(ExistingWork.LevelOf(Of(Room("den", Old("a", "16 in to top above subfloor"))), "den", BoxPurpose.Switch, Eighth));
    }

    [Fact]
    public void LevelOf_BadArguments_ThrowsNamingThem()
    {
        Dwelling house = Of(Room("den"));
        Assert.Equal("roomOrStorey", Assert.Throws<ArgumentException>(() => ExistingWork.LevelOf(house, "attic", BoxPurpose.General, Eighth)).ParamName);
        Assert.Equal("tolerance", Assert.Throws<ArgumentOutOfRangeException>(() => ExistingWork.LevelOf(house, "den", BoxPurpose.General, -Eighth)).ParamName);
        Assert.Throws<ArgumentNullException>(() => ExistingWork.LevelOf(house, null!, BoxPurpose.General, Eighth));
        Assert.Throws<ArgumentNullException>(() => ExistingWork.LevelOf(null!, "den", BoxPurpose.General, Eighth));
    }

    // The second road: sort the centers and slide a window over them; whatever level is found, no other holds more boxes.
    [Fact]
    public void LevelOf_AnyBoxes_NoLevelIsSharedByMore()
    {
        Gen<(IList<int> Heights, int Tolerance)> cases =
            from heights in Gen.ListOf(Gen.Choose(200, 220))
            from tolerance in Gen.Choose(0, 3)
            select ((IList<int>)heights.ToList(), tolerance);
        Prop.ForAll(Arb.From(cases), one =>
        {
            DeviceBox[] boxes = [.. one.Heights.Select((sixteenths, index) => Old("b" + index, "16 in to top above subfloor") with { Height = BoxHeight.ToTop(Inches(0, sixteenths, 16), Datum.Subfloor) })];
            ExistingLevel? level = LevelIn("den", Inches(0, one.Tolerance, 16), Room("den", boxes));
            int most = Enumerable.Range(190, 40).Where(one.Heights.Contains).Select(center => one.Heights.Count(height => Math.Abs(height - center) <= one.Tolerance)).DefaultIfEmpty(0).Max();
            return level is null ? one.Heights.Count == 0
                : level.Sharing.Count == most && level.Compared == one.Heights.Count
                    && level.Outliers.All(outlier => outlier.Offset == boxes.Single(box => box.Id == outlier.BoxId).Height!.Value.Value - level.Height.Value);
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void LevelOf_MirroredOrRenamedRooms_IsTheSameLevel()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            Dwelling old = house.WithBoxes(box => box with { Existing = true });
            return Centers(old).SequenceEqual(Centers(Mirrored(old))) && Centers(old).SequenceEqual(Centers(Renamed(old)));
        }).Check(Tries.Always(100));

        // Which of several boxes on the level it is read from may change with the order: their offsets don't.
        static IEnumerable<string> Centers(Dwelling house) => house.Rooms.Select(room => room.Id).Take(2).Append("first").Select(place =>
            ExistingWork.LevelOf(house, place, BoxPurpose.Switch, Eighth) is { } level
                ? string.Join(' ', level.Sharing.Order()) + " / " + string.Join(' ', level.Outliers.Select(outlier => outlier.BoxId + outlier.Offset).Order())
                : "none");
    }
}
