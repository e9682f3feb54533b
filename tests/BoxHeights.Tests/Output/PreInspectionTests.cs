using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class PreInspectionTests
{
    private static readonly DeviceBox Usual = Box("W1", "16 in to top above subfloor");

    private static PreInspection Of(DeviceBox box, params Finish[] finishes)
    {
        Room room = Room("den", box);
        return Houses.Inspected(Houses.Of(room with { Walls = room.Walls.Select(wall => wall with { Finishes = finishes }) }));
    }

    private static string[] ItemsOf(DeviceBox box, params Finish[] finishes) => [.. Of(box, finishes).Rows.Select(row => row.ItemId)];

    private static Finish Finish(FinishKind kind, bool? combustible, Level? bottom = null, Level? top = null) =>
        new("f", kind, Inches(0), Inches(144)) { Combustible = combustible, Bottom = bottom, Top = top };

    // Limits from NEC 314.17(C) Exception (2017), 314.17, 300.14, 300.4(A)(1) and (D), and 314.20; the gap of 314.21 is seen only once there is board.
    [Fact]
    public void For_OneGangPlasticBoxInBoard_AsksForTheShortFastening()
    {
        PreInspection list = Of(Usual);
        Assert.Equal(
            [
                ("sheath-inside", Inches(0, 1, 4)), ("secured-near", Inches(8)), ("free-conductor", Inches(6)), ("out-of-opening", Inches(3)),
                ("hole-edge", Inches(1, 1, 4)), ("cable-edge", Inches(1, 1, 4)), ("front-behind", Inches(0, 1, 4)),
            ],
            list.Rows.AsEnumerable().Select(row => (row.ItemId, row.Limit!.Value)));
        Assert.Equal(["314.17", "314.17(C) Exception (2017 numbering)", "300.14", "300.14", "300.4(A)(1)", "300.4(D)", "314.20"], list.Rows.AsEnumerable().Select(row => row.Citation.Section));
    }

    [Fact]
    public void Limits_OfEveryItem_AreThoseOfTheCaseFile()
    {
        Level chair = new(Inches(36), Datum.Subfloor);
        Dictionary<string, InspectionRow> asked = new[]
        {
            Of(Usual), Of(Usual.WithGangs(2)), Of(Usual.WithKind(BoxKind.CutIn)), Of(Usual, Finish(FinishKind.Wainscot, true, null, chair)), Of(Usual, Finish(FinishKind.Wainscot, null, null, chair)),
        }.SelectMany(list => list.Rows.AsEnumerable()).DistinctBy(row => row.ItemId).ToDictionary(row => row.ItemId);
        foreach (Dictionary<string, string> row in CaseFile.Table("inspection-limits.csv"))
        {
            InspectionRow item = asked[row["item"]];
            Assert.Equal((CaseFile.Length(row["limit"], row["unit"]), row["section"], row["status"] == "memory"), (item.Limit!.Value, item.Citation.Section, item.Citation.Confidence == Confidence.FromMemory));
            Assert.True(asked.Remove(row["item"]));
        }

        // What has no number.
        Assert.Equal("held-at-box", Assert.Single(asked).Key);
    }

    // NEC 300.14: an opening less than 8 in either way.
    [Theory]
    [InlineData(0, 0, false)]
    [InlineData(-2, 0, true)]
    [InlineData(0, -2, true)]
    public void For_AnOpeningJustUnderEightInches_AsksForThreeOutside(int wide, int high, bool asked) => Assert.Equal(asked, ItemsOf(Usual with
    {
        Size = new BoxSize(Inches(8) + Distance.FromTicks(wide), Inches(8) + Distance.FromTicks(high)),
    }).Contains("out-of-opening"));

    [Fact]
    public void For_BoxesThatNeedAClamp_AskForTwelveInches()
    {
        DeviceBox large = Usual with { Size = new BoxSize(Inches(2, 5, 16), Inches(3, 3, 4)) };
        DeviceBox tall = Usual with { Size = new BoxSize(Inches(2, 1, 4), Inches(4, 1, 16)) };
        foreach (DeviceBox box in new[] { Usual.WithGangs(2), Usual.WithClamps(CableClamps.Internal), Usual.WithKind(BoxKind.FourSquare), Usual.WithKind(BoxKind.MetalDevice), large, tall })
        {
            InspectionRow[] rows = [.. Of(box).Rows];
            Assert.Equal(["sheath-inside", "held-at-box", "secured"], rows.Take(3).Select(row => row.ItemId));
            Assert.Equal((Inches(12), "334.30"), (rows[2].Limit!.Value, rows[2].Citation.Section));
            Assert.DoesNotContain(rows, row => row.ItemId == "secured-near");
        }
    }

    [Fact]
    public void For_BoxesThatMayGoWithoutAClamp_AskForEight()
    {
        DeviceBox largest = Usual with { Size = new BoxSize(Inches(2, 1, 4), Inches(4)) };
        foreach (DeviceBox box in new[] { Usual, Usual.WithClamps(CableClamps.None), Usual.WithClamps(CableClamps.Flap), largest })
        {
            Assert.Equal("sheath-inside, secured-near, free-conductor", string.Join(", ", ItemsOf(box).Take(3)));
        }
    }

    [Fact]
    public void For_CutInBox_LeavesFishedCablesOut()
    {
        string[] items = ItemsOf(Usual.WithKind(BoxKind.CutIn));
        Assert.Equal(items, ItemsOf(Usual.WithMounting(new Mounting(MountingMethod.CutIn))));
        Assert.Equal(["sheath-inside", "held-at-box", "secured-or-fished"], items.Take(3));
        Assert.Equal(Confidence.FromMemory, Of(Usual.WithKind(BoxKind.CutIn)).Rows[2].Citation.Confidence);
    }

    [Fact]
    public void For_WhatItOpensThrough_AsksForItsFront()
    {
        // The box runs from 12-1/4 to 16 in.
        Level chair = new(Inches(36), Datum.Subfloor);
        Assert.Equal(["front-flush"], Fronts(Usual, Finish(FinishKind.Wainscot, true, null, chair)));
        Assert.Equal(["front-ask"], Fronts(Usual, Finish(FinishKind.Wainscot, null, null, chair)));
        Assert.Equal(["front-behind"], Fronts(Usual, Finish(FinishKind.Wainscot, false, null, chair)));
        Assert.Equal(["front-behind"], Fronts(Usual, Finish(FinishKind.Tile, null, null, chair)));

        // Just over it, just under it, and across its edge.
        Assert.Equal(["front-behind"], Fronts(Usual, Finish(FinishKind.Panel, true, new Level(Inches(16), Datum.Subfloor))));
        Assert.Equal(["front-flush"], Fronts(Usual, Finish(FinishKind.Panel, true, new Level(Inches(15, 7, 8), Datum.Subfloor))));
        Assert.Equal(["front-behind"], Fronts(Usual, Finish(FinishKind.Panel, true, null, new Level(Inches(12, 1, 4), Datum.Subfloor))));
        Assert.Equal(["front-flush"], Fronts(Usual, Finish(FinishKind.Panel, true, null, new Level(Inches(12, 3, 8), Datum.Subfloor))));

        // A floor that isn't chosen leaves it open; one that is decides.
        Assert.Equal(["front-ask"], Fronts(Usual, Finish(FinishKind.Panel, true, new Level(Inches(15), Datum.FinishedFloor))));
        Assert.Equal(["front-ask"], Fronts(Usual with { At = null }, Finish(FinishKind.Panel, true) with { Right = Inches(10) }));
        Assert.Equal(["front-behind"], Fronts(Usual, Finish(FinishKind.Panel, true) with { Right = Inches(22, 7, 8) }));
        Assert.Equal(["front-flush"], Fronts(Usual, Finish(FinishKind.Panel, true) with { Right = Inches(23) }));

        static string[] Fronts(DeviceBox box, Finish finish) => [.. ItemsOf(box, finish).Where(id => id.StartsWith("front", StringComparison.Ordinal))];
    }

    [Fact]
    public void For_SplashOverACounter_IsFoundThere()
    {
        Room room = Room("den", Box("c", "44 in to center above finished floor"));
        room = room with
        {
            Walls = room.Walls.Select(wall => wall with
            {
                Counters = new[] { new Counter("c", CounterKind.Kitchen, Inches(0), Inches(60)) { Top = new Level(Inches(36), Datum.FinishedFloor) } },
                Finishes = new[] { Finish(FinishKind.Panel, true, new Level(Inches(0), Datum.Countertop), new Level(Inches(18), Datum.Countertop)) with { Right = Inches(60) } },
            }),
            Floor = Floor(Inches(0, 3, 4)),
        };
        Assert.Contains(Houses.Inspected(Houses.Of(room)).Rows, row => row.ItemId == "front-flush");
    }

    [Fact]
    public void For_OtherSurfaces_AsksWhatAppliesThere()
    {
        Room room = Room("den") with { Overhead = new[] { new DeviceBox("light", BoxPurpose.Light) { Kind = BoxKind.Octagon } }, InFloor = new[] { new DeviceBox("floor", BoxPurpose.General) } };
        Dwelling house = Houses.Of(room) with { Outside = new[] { new OutsideFace("front") { Walls = new[] { new Wall("face", Inches(100)) { Boxes = new[] { Box("porch", "18 in to bottom above subfloor") } } } } } };
        ILookup<string, string> items = Houses.Inspected(house).Rows.ToLookup(row => row.BoxId, row => row.ItemId);
        Assert.Contains("front-behind", items["light"]);
        Assert.Contains("secured", items["light"]);
        Assert.Contains("front-ask", items["floor"]);
        Assert.Contains("front-ask", items["porch"]);
        string[] onFace = ItemsOf(Usual.WithKind(BoxKind.Handy).WithMounting(new Mounting(MountingMethod.Surface)));
        Assert.DoesNotContain(onFace, id => id is "hole-edge" or "cable-edge" || id.StartsWith("front", StringComparison.Ordinal));
        Assert.DoesNotContain("hole-edge", ItemsOf(Usual.WithKind(BoxKind.Masonry)));
        Assert.DoesNotContain("out-of-opening", ItemsOf(Usual with { Size = new BoxSize(Inches(8), Inches(8)) }));
        Assert.Contains("out-of-opening", ItemsOf(Usual with { Size = new BoxSize(Inches(10), Inches(7, 7, 8)) }));
    }

    [Fact]
    public void For_OldAndLowVoltageBoxes_ListsNothingAndSaysWhy()
    {
        PreInspection list = Houses.Inspected(Houses.Of(Room("den", Usual with { Existing = true }, Box("data", "16 in to top above subfloor") with { Kind = BoxKind.LowVoltageBracket })));
        Assert.Empty(list.Rows);
        Assert.Equal(["W1: it was there before this work", "data: a bracket for low voltage only"], list.NotListed.AsEnumerable().Select(box => box.ToString()));
        Assert.EndsWith("## Nothing listed\n\n- W1: it was there before this work\n- data: a bracket for low voltage only\n", list.ToMarkdown(), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_OneBox_HasBoxesToTick()
    {
        PreInspection list = Of(Usual.WithGangs(2));
        string markdown = list.ToMarkdown();
        Assert.StartsWith("# Before the inspection: house\n\nA planning aid, not an approval.", markdown, StringComparison.Ordinal);
        Assert.Contains("- A: cable sheath runs at least 1/4 in into the box, past the clamp or entry — NEC (2017 to 2023) 314.17\n- C: each cable held", markdown, StringComparison.Ordinal);
        Assert.Contains("314.17 (from memory: check)\n", markdown, StringComparison.Ordinal);
        Assert.Contains("\n## den\n\n| box | on | for | A | C | D | F | G | H | I | J |\n|---|---|---|---|---|---|---|---|---|---|---|\n| W1 | north | general | ☐ |", markdown, StringComparison.Ordinal);
        Assert.Equal(list.Rows.Count, markdown.Split('☐').Length - 1);
        Assert.Equal("den/north,W1,general,sheath-inside,\"cable sheath runs at least 1/4 in into the box, past the clamp or entry\",NEC (2017 to 2023) 314.17", list.ToCsv().Split("\r\n")[1]);
        Assert.DoesNotContain("approved", markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void For_NoBoxes_IsEmpty()
    {
        Assert.Empty(Houses.Inspected(new Dwelling("empty")).Rows);
        Assert.Throws<ArgumentNullException>(() => PreInspection.For((Evaluation)null!));
    }

    // Every new box is asked about once: how its cables are held, how free they are, and where its front is.
    [Fact]
    public void For_AnyHouse_AsksEachBoxOneOfEach()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            PreInspection list = Houses.Inspected(house);
            ILookup<string, string> items = list.Rows.ToLookup(row => row.BoxId, row => row.ItemId);
            return house.PlacedBoxes().All(placed => placed.Box.Existing
                ? list.NotListed.Any(box => box.BoxId == placed.Box.Id) && !items[placed.Box.Id].Any()
                : items[placed.Box.Id].Count(id => id.StartsWith("secured", StringComparison.Ordinal)) == 1
                    && items[placed.Box.Id].Count(id => id.StartsWith("front-", StringComparison.Ordinal)) == 1
                    && items[placed.Box.Id].Contains("secured-near") != items[placed.Box.Id].Contains("held-at-box")
                    && items[placed.Box.Id].Distinct().Count() == items[placed.Box.Id].Count());
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void For_MirroredOrRenamedRooms_AsksTheSame()
    {
        Prop.ForAll(Arb.From(Any), house => Asked(house).SequenceEqual(Asked(Mirrored(house))) && Asked(house).SequenceEqual(Asked(Renamed(house)))).Check(Tries.Always(100));

        static IEnumerable<string> Asked(Dwelling house) => Houses.Inspected(house).Rows.Select(row => row.BoxId + row.ItemId).Order();
    }
}
