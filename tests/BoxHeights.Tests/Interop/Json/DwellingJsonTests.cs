using System;
using System.Globalization;
using System.IO;
using System.Text;
using BoxHeights.Interop;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

public class DwellingJsonTests
{
    internal static string Cottage => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Cases", "Interop", "cottage.json"));

    [Fact]
    public void Read_Cottage_HoldsWhatItSays()
    {
        Dwelling cottage = DwellingJson.Read(Cottage);

        Assert.Equal("Cottage by the Mill Race", cottage.Name);
        Assert.Equal(LengthUnits.Millimeters, cottage.Units);
        Assert.Equal(new DistanceRange(Distance.FromInches(6m), Distance.FromInches(20m)), cottage.Storeys[0].GradeBelowSubfloor);
        Room scullery = cottage.Rooms[0];
        Assert.Equal(Distance.FromInches(-7.25m), scullery.SubfloorOffset);
        Assert.Equal(new DistanceRange(Distance.FromInches(0.75m), Distance.FromInches(0.875m)), scullery.Floor!.Thickness);
        Assert.Equal((DistanceRange)Distance.Zero, scullery.Ceiling!.Strapping);
        Assert.Equal(new PlanPoint(Distance.FromFeet(4.5m), Distance.FromFeet(9m)), scullery.Fixtures[1].Plan[1]);
        Wall wall = scullery.Walls[0];
        Assert.Equal(135m, wall.TurnDegrees);
        Assert.Equal(90m, scullery.Walls[1].TurnDegrees);
        Assert.Equal(Distance.Zero, wall.Counters[0].KneeSpace);
        Assert.Equal(new Level(Distance.Zero, Datum.Countertop), wall.Finishes[0].Bottom);
        Assert.False(wall.Finishes[0].Combustible);
        DeviceBox box = wall.Boxes[0];
        Assert.Equal(BoxHeight.EdgeUnstated(Distance.FromInches(44m), Datum.FinishedFloor), box.Specified);
        Assert.Equal(Distance.FromInches(4, 1, 16), box.Size!.Value.WidthRange.To);
        Assert.Equal(3, box.Mounting!.Stud);
        Assert.False(box.Cables[2].HasGround);
        Assert.Equal(new Ratio(1, 2), cottage.Flights[0].Lights!.Phase);
    }

    [Fact]
    public void Write_CottageRead_IsReadAsTheSameAndWrittenAlike()
    {
        Dwelling cottage = DwellingJson.Read(Cottage);
        string written = DwellingJson.Write(cottage);

        Assert.Equal(cottage, DwellingJson.Read(written));
        Assert.Equal(written, DwellingJson.Write(DwellingJson.Read(written)));
    }

    [Fact]
    public void Read_RandomDwellingWritten_IsEqual() =>
        Prop.ForAll(RandomDwelling.Arbitrary, dwelling => DwellingJson.Read(DwellingJson.Write(dwelling)).Equals(dwelling)).Check(Tries.Always(100));

    [Fact]
    public void Read_TextOrUtf8OrMarked_IsEqual()
    {
        Dwelling expected = DwellingJson.Read(Cottage);

        Assert.Equal(expected, DwellingJson.Read(Encoding.UTF8.GetBytes(Cottage)));
        Assert.Equal(expected, DwellingJson.Read(Encoding.UTF8.GetBytes("\uFEFF" + Cottage)));
        Assert.Equal(expected, DwellingJson.Read("\uFEFF" + Cottage));
        Assert.True(DwellingJson.TryRead(Cottage.Replace("\n", "\r\n", StringComparison.Ordinal), out Dwelling? read, out Items<BoxHeightsJsonError> errors));
        Assert.Equal(expected, read);
        Assert.Empty(errors);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("tr-TR")]
    public void Write_ForeignCulture_IsTheSameText(string culture)
    {
        string expected = DwellingJson.Write(DwellingJson.Read(Cottage));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(expected, DwellingJson.Write(DwellingJson.Read(Cottage)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Write_SmallDwelling_IsThisText()
    {
        Dwelling dwelling = new Dwelling("Shed \"Nº 2\"")
            .WithRooms(new[]
            {
                new Room("r", RoomKind.Utility, "s")
                    .WithFloor(FloorBuildup.Of())
                    .WithCeiling(new Ceiling().WithStrapping(Distance.Zero))
                    .WithOverhead(new[] { new DeviceBox("b", BoxPurpose.Light).WithPlan(new PlanPoint(Distance.FromFeet(7m), Distance.FromMillimeters(12.5m))) }),
            });

        Assert.Equal(
            """
            {
              "name": "Shed \"Nº 2\"",
              "rooms": [
                {
                  "id": "r",
                  "kind": "utility",
                  "storey": "s",
                  "floor": [],
                  "ceiling": {
                    "strapping": "none"
                  },
                  "overhead": [
                    {
                      "id": "b",
                      "purpose": "light",
                      "plan": [
                        "84 in",
                        "12.5 mm"
                      ]
                    }
                  ]
                }
              ]
            }

            """.ReplaceLineEndings("\n"),
            DwellingJson.Write(dwelling));
    }

    [Fact]
    public void Write_WhatCouldNotBeReadAgain_SaysWhere()
    {
        static string Refusal(DeviceBox box) =>
            Assert.Throws<ArgumentException>(() => DwellingJson.Write(new Dwelling("x").WithRooms(new[]
            {
                new Room("r", RoomKind.Hall, "s").WithOverhead(new[] { new DeviceBox("a", BoxPurpose.Light), box }),
            }))).Message;

        DeviceBox box = new("b", BoxPurpose.Light);
        Assert.Equal("$.rooms[0].overhead[1].purpose can't be written: it is a purpose of a box that no text stands for.", Refusal(box.WithPurpose(default)));
        Assert.Equal("$.rooms[0].overhead[1].cables[0] can't be written: it is a cable that no text stands for.", Refusal(box.WithCables(new[] { default(CableType) })));
        Assert.Equal("$.rooms[0].overhead[1].size can't be written: nothing of it is stated.", Refusal(box.WithSize(default(BoxSize))));
        Assert.Equal("$.rooms[0].overhead[1].rating can't be written: it holds half of a surrogate pair.", Refusal(box.WithRating("\ud83c")));
        Assert.Equal("$.rooms[0].overhead[1].rating can't be written: a text here has at most 10000 characters.", Refusal(box.WithRating(new string('x', 10_001))));
        Assert.Equal("$.rooms[0].overhead[1].cables can't be written: a list here has at most 100000 items.", Refusal(box.WithCables(new CableType[100_001])));
    }

    [Fact]
    public void Write_LongestTextAllowed_IsReadAgain()
    {
        Dwelling dwelling = new(new string('\u0001', 10_000));

        Assert.Equal(dwelling, DwellingJson.Read(DwellingJson.Write(dwelling)));
    }

    [Fact]
    public void Read_Null_IsAProgrammersFault()
    {
        Assert.Throws<ArgumentNullException>(() => DwellingJson.Read((string)null!));
        Assert.Throws<ArgumentNullException>(() => DwellingJson.Write(null!));
        Assert.False(DwellingJson.TryRead(null, out Dwelling? dwelling, out Items<BoxHeightsJsonError> errors));
        Assert.Null(dwelling);
        Assert.Equal("$, line 1, column 1: the text is empty", Assert.Single(errors).ToString());
    }
}
