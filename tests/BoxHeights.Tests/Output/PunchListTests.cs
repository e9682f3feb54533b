using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class PunchListTests
{
    [Theory]
    [InlineData("16 in to top above subfloor", AsBuilt.ClearlyIn, null)]
    [InlineData("16-1/8 in to top above subfloor", AsBuilt.ClearlyIn, null)]
    [InlineData("16-3/16 in to top above subfloor", AsBuilt.WithinTapeError, "W1: 3/16 high, within the tape's error of the tolerance: measure again")]
    [InlineData("15-5/8 in to top above subfloor", AsBuilt.WithinTapeError, "W1: 3/8 low, within the tape's error of the tolerance: measure again")]
    [InlineData("15-9/16 in to top above subfloor", AsBuilt.ClearlyOut, "W1: 7/16 low")]
    [InlineData("18-3/4 in to top above subfloor", AsBuilt.ClearlyOut, "W1: 2-3/4 high")]
    [InlineData("17-1/4 in to top off the bottom plate", AsBuilt.ClearlyOut, "W1: 2-3/4 high")]
    [InlineData("16 in above subfloor", AsBuilt.NotCompared, "W1: not compared: the edge that was measured to isn't stated")]
    [InlineData("16 in to top above grade", AsBuilt.NotCompared, "W1: not compared: where the grade lies isn't known: its storey doesn't state it")]
    public void For_PlannedAt16ToTheTop_SaysHowItLies(string read, AsBuilt outcome, string? line)
    {
        // Tolerance 1/4 in, tape 1/8 in: clearly in up to 1/8 in off, clearly out beyond 3/8 in.
        PunchList list = Sheets.PunchesFor(Of(Room("den", Box("W1", "16 in to top above subfloor").Measured(read))));
        Assert.Equal(outcome == AsBuilt.ClearlyIn ? ["W1"] : [], list.ClearlyIn.AsEnumerable());
        Assert.Equal(line is null ? [] : [(outcome, line)], list.Rows.AsEnumerable().Select(row => (row.AsBuilt, row.Line)));
    }

    // "0 boxes are within the tolerance" would sound as if some weren't.
    [Fact]
    public void ToMarkdown_OfAHouseThatNobodyMeasured_SaysSo()
    {
        DeviceBox box = Box("W1", "16 in to top above subfloor");
        Assert.Contains("there is nothing to compare", Sheets.PunchesFor(Of(Room("den", box))).ToMarkdown(), StringComparison.Ordinal);
        string measured = Sheets.PunchesFor(Of(Room("den", box.Measured("16 in to top above subfloor")))).ToMarkdown();
        Assert.Contains("Tolerance 1/4 in up or down; boxes measured clearly within it: 1.", measured, StringComparison.Ordinal);
    }

    [Fact]
    public void For_OtherEdgeOfABoxOfKnownSize_ComparesByHalfOfIt()
    {
        // Half of 3-3/4 in under 48 in is 46-1/8 in.
        DeviceBox box = Box("S1", "48 in to top above subfloor") with { Size = new BoxSize(Inches(2, 1, 4), Inches(3, 3, 4)) };
        Assert.Equal("S1", Sheets.PunchesFor(Of(Room("den", box.Measured("46-1/4 in to center above subfloor")))).ClearlyIn.ToString());
        PunchRow low = Assert.Single(Sheets.PunchesFor(Of(Room("den", box.Measured("43-3/4 in to bottom above subfloor")))).Rows);
        Assert.Equal("S1: 1/2 low", low.Line);
        Assert.Equal((DistanceRange)(-Inches(0, 1, 2)), low.Off);
    }

    [Fact]
    public void For_OtherEdgeOfAGenericBox_DependsOnTheBox()
    {
        // Such boxes are 3-1/2 to 4 in tall: the top over a center at 46-1/4 in is at 48 to 48-1/4 in.
        PunchRow row = Assert.Single(Sheets.PunchesFor(Of(Room("den", Box("S1", "48 in to top above subfloor").Measured("46-1/4 in to center above subfloor")))).Rows);
        Assert.Equal(new DistanceRange(Inches(0), Inches(0, 1, 4)), row.Off);
        Assert.Equal("S1: not compared: it depends on the box: measure yours", row.Line);
        row = Assert.Single(Sheets.PunchesFor(Of(Room("den", Box("S1", "48 in to top above subfloor").Measured("45 in to center above subfloor")))).Rows);
        Assert.Equal("S1: at least 1 low", row.Line);
    }

    [Fact]
    public void For_FloorNotChosen_SaysSoUnlessItDoesntMatter()
    {
        DeviceBox planned = Box("T1", "44 in to center above finished floor");
        PunchRow near = Assert.Single(Sheets.PunchesFor(Of(Room("den", planned.Measured("44-1/2 in to center above subfloor")))).Rows);
        Assert.Equal("T1: not compared: the floor isn't chosen", near.Line);
        Assert.Equal(new DistanceRange(-Inches(0, 3, 4), Inches(0, 1, 2)), near.Off);
        Assert.Equal("T1: at least 4-3/4 high", Assert.Single(Sheets.PunchesFor(Of(Room("den", planned.Measured("50 in to center above subfloor")))).Rows).Line);
        Assert.Equal("T1: 1/2 high", Assert.Single(Sheets.PunchesFor(Of(Room("den", planned.Measured("44-1/2 in to center above finished floor")))).Rows).Line);
    }

    [Fact]
    public void For_DrawingAndPlanDiffer_TakesTheDrawingIfItNamesAnEdge()
    {
        DeviceBox box = Box("W1", "16 in to top above subfloor").Measured("18 in to top above subfloor");
        Assert.Equal("W1", Sheets.PunchesFor(Of(Room("den", box with { Specified = BoxHeight.Parse("18 in to top above subfloor") }))).ClearlyIn.ToString());
        Assert.Equal("W1: 2 high", Assert.Single(Sheets.PunchesFor(Of(Room("den", box with { Specified = BoxHeight.Parse("18 in above subfloor") }))).Rows).Line);
        PunchRow unstated = Assert.Single(Sheets.PunchesFor(Of(Room("den", box with { Height = null, Specified = BoxHeight.Parse("18 in above subfloor") }))).Rows);
        Assert.Equal("W1: not compared: the edge that the planned height goes to isn't stated", unstated.Line);
    }

    [Fact]
    public void For_NothingPlannedOrMeasured_IsntLookedAt()
    {
        PunchList list = Sheets.PunchesFor(Of(Room("den", Box("a", "16 in to top above subfloor"), Box("b", "16 in to top above subfloor").Measured("12 in to top above subfloor") with { Height = null })));
        Assert.Empty(list.Rows);
        Assert.Empty(list.ClearlyIn);
    }

    [Fact]
    public void For_Tolerance_IsItsOwn()
    {
        Dwelling house = Of(Room("den", Box("W1", "16 in to top above subfloor").Measured("16-1/2 in to top above subfloor", Distance.Zero)));
        Assert.Empty(Sheets.PunchesFor(house, Inches(0, 1, 2)).Rows);
        Assert.Equal(AsBuilt.ClearlyOut, Assert.Single(Sheets.PunchesFor(house, Inches(0, 1, 2) - Distance.FromTicks(1)).Rows).AsBuilt);
        Assert.Equal("tolerance", Assert.Throws<ArgumentOutOfRangeException>(() => Sheets.PunchesFor(house, -Inches(1))).ParamName);
        Assert.Throws<ArgumentNullException>(() => PunchList.For((Evaluation)null!));
    }

    [Fact]
    public void Texts_TwoRooms_GroupByRoom()
    {
        PunchList list = Sheets.PunchesFor(Of(
            Room("den", Box("W1", "16 in to top above subfloor").Measured("15-1/2 in to top above subfloor")),
            Room("bed", Box("W2", "406.4 mm to top above subfloor").Measured("17 in to top above subfloor"))));
        Assert.Contains("## den\n\n| surface | box |", list.ToMarkdown(), StringComparison.Ordinal);
        Assert.Contains("| north | W2 | general | 16 in to top above subfloor | 17 in to top above subfloor | 1/8 in | W2: 1 high |\n", list.ToMarkdown(), StringComparison.Ordinal);
        Assert.Contains("not an approval", list.ToMarkdown(), StringComparison.Ordinal);
        Assert.Equal("den,north,W1,general,16 in to top above subfloor,15-1/2 in to top above subfloor,1/8 in,W1: 1/2 low", list.ToCsv().Split("\r\n")[1]);
        Assert.Equal("W1: 12.7 mm low", Sheets.PunchesFor(Of(Room("den", Box("W1", "16 in to top above subfloor").Measured("15-1/2 in to top above subfloor"))) with { Units = LengthUnits.Millimeters }).Rows[0].Line);
    }

    [Fact]
    public void For_MeasuredAsPlanned_IsEmpty()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            Dwelling built = house.WithBoxes(box => box.Height is { Edge: not null } height ? box.WithMeasured(new MeasuredHeight(height)) : box);
            PunchList list = Sheets.PunchesFor(built);
            return list.Rows.Count == 0 && list.ClearlyIn.Count == built.PlacedBoxes().Count(placed => placed.Box.Measured is not null);
        }).Check(Tries.Always(100));
    }

    // The second road: whole numbers of ticks, all readings that the tape's error allows.
    [Fact]
    public void For_AnyReading_IsInOrOutWhateverTheTapeMeant()
    {
        Gen<(int Off, int Within, int Tolerance)> cases =
            from off in Gen.Choose(-12, 12)
            from within in Gen.Choose(0, 5)
            from tolerance in Gen.Choose(0, 8)
            select (off, within, tolerance);
        Prop.ForAll(Arb.From(cases), one =>
        {
            DeviceBox box = Box("x", "16 in to top above subfloor").WithMeasured(
                new MeasuredHeight(BoxHeight.ToTop(Inches(16) + (Inches(0, 1, 16) * one.Off), Datum.Subfloor)).WithWithin(Inches(0, 1, 16) * one.Within));
            PunchList list = Sheets.PunchesFor(Of(Room("den", box)), Inches(0, 1, 16) * one.Tolerance);
            IEnumerable<bool> meant = Enumerable.Range(one.Off - one.Within, (2 * one.Within) + 1).Select(off => Math.Abs(off) <= one.Tolerance);
            AsBuilt expected = meant.All(good => good) ? AsBuilt.ClearlyIn : meant.Any(good => good) ? AsBuilt.WithinTapeError : AsBuilt.ClearlyOut;
            return expected == AsBuilt.ClearlyIn ? list.ClearlyIn.Count == 1 && list.Rows.Count == 0 : list.Rows.Single().AsBuilt == expected;
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void For_MirroredOrRenamedRooms_HasTheSameLines()
    {
        Prop.ForAll(Arb.From(Any), house =>
        {
            Dwelling built = house.WithBoxes(box => box.WithMeasured(new MeasuredHeight(BoxHeight.ToTop(Inches(17), Datum.Subfloor))));
            return Lines(built).SequenceEqual(Lines(Mirrored(built))) && Lines(built).SequenceEqual(Lines(Renamed(built)));
        }).Check(Tries.Always(100));

        static IEnumerable<string> Lines(Dwelling house) => Sheets.PunchesFor(house).Rows.Select(row => row.Line).Order();
    }
}
