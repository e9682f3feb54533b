using System.Globalization;
using System.Linq;
using System.Text;
using Xunit;
using static BoxHeights.Tests.Output.Houses;

namespace BoxHeights.Tests.Output;

public sealed class TextTableTests
{
    [Fact]
    public void ToCsv_CellsWithCommasQuotesAndLines_AreQuoted()
    {
        TextTable table = new("room", "box", "note");
        table.Add("a,b", "say \"x\"", "two\nlines");
        table.Add("plain", "", "48 in");
        Assert.Equal("room,box,note\r\n\"a,b\",\"say \"\"x\"\"\",\"two\nlines\"\r\nplain,,48 in\r\n", table.ToCsv());
    }

    [Fact]
    public void AppendMarkdown_Groups_HaveAHeadingEachAndCellsStayInTheirPlace()
    {
        TextTable table = new("room", "box", "note");
        table.Add("a", "1", "x|y");
        table.Add("a", "2", "two\r\nlines");
        table.Add("b", "3", ""); // A column that says nothing in a group isn't printed there.
        StringBuilder text = new();
        table.AppendMarkdown(text);
        Assert.Equal("\n## a\n\n| box | note |\n|---|---|\n| 1 | x\\|y |\n| 2 | two lines |\n\n## b\n\n| box |\n|---|\n| 3 |\n", text.ToString());
    }

    [Fact]
    public void MarkSheet_SharesIt()
    {
        MarkSheet sheet = Sheets.For(Of(Room("den", Box("d|1", "16 in to top above subfloor"))), RuleSets.RoughInPractice);
        Assert.Equal("wall,box,for,from left corner,at,stop,mark,edge,from level line,stands out,note\r\nden/north,d|1,general,24 in,,,16 in,to top,-32 in,,\r\n", sheet.ToCsv());
        Assert.EndsWith("\n## den: to the top of the box\n\n| wall | box | for | from left corner | mark | from level line |\n|---|---|---|---|---|---|\n| north | d\\|1 | general | 24 in | 16 in | -32 in |\n", sheet.ToMarkdown(), System.StringComparison.Ordinal);
    }

    [Fact]
    public void Reports_UnderAnyCulture_AreTheSame()
    {
        Room den = Room("den", Box("a", "16-1/32 in to top above subfloor").Measured("12.001 in to top above subfloor"), Box("o", "44 in to center above finished floor"));
        Dwelling house = Of(den, Room("bed", Box("e", "16 in to top above subfloor") with { Existing = true })) with { Units = LengthUnits.Millimeters };
        string usual = All(house);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            foreach (string culture in new[] { "de-DE", "ar-SA", "tr-TR" })
            {
                CultureInfo.CurrentCulture = new CultureInfo(culture);
                Assert.Equal(usual, All(house));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string All(Dwelling house) => Sheets.PoleFor(house).ToMarkdown() + Sheets.PoleFor(house).ToCsv() + Sheets.PunchesFor(house).ToMarkdown() + Sheets.PunchesFor(house).ToCsv()
            + ExistingWork.LevelOf(house, "bed", BoxPurpose.General, Eighth) + Houses.Inspected(house).ToMarkdown() + Houses.Inspected(house).ToCsv();
    }

    [Fact]
    public void Reports_HostileHouse_StillSpeak()
    {
        DeviceBox twin = Box("same", "16 in to top above subfloor");
        Room one = Room("x|y\nz", twin, twin, new DeviceBox("a,\"b\"", BoxPurpose.General), Box("high", "900 in to top above subfloor"), Box("low", "40 in to top below subfloor")) with { Storey = "none" };
        Dwelling house = Of(one, one, new Room("bare", RoomKind.Hall, "first"));
        Assert.Equal("same, same, same, same", string.Join(", ", Sheets.PoleFor(house).Rows.Single(row => row.Mark.Value == Inches(16)).BoxIds));
        Assert.Contains("## none\n", Sheets.PoleFor(house).ToMarkdown(), System.StringComparison.Ordinal);
        Assert.Contains("have the same id\"\r\n", Sheets.PoleFor(house).ToCsv(), System.StringComparison.Ordinal);
        Assert.Contains("## x\\|y z\n", Houses.Inspected(house).ToMarkdown(), System.StringComparison.Ordinal);
        Assert.Empty(Sheets.PunchesFor(house).Rows);
    }
}
