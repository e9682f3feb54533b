using System;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Pictures;

public sealed class PolePictureTests
{
    [Theory]
    [InlineData(240)]
    [InlineData(960)]
    public void ToSvg_HasEveryMarkAndNoLabelOverAnother(int width)
    {
        StoryPole pole = Pole();
        SvgReader svg = new(PolePicture.For(pole).ToSvg(PictureOptions.Default.WithWidth(width)));
        Assert.Empty(svg.Clashes());
        Assert.Equal(pole.Rows.Count, svg.All.Count(one => (string?)one.Attribute("class") == "bh-mark"));
        string all = string.Join(" ", svg.Texts().Select(text => text.Text));
        Assert.All(pole.Rows, mark => Assert.Contains(mark.Mark.Value + " to ", all, StringComparison.Ordinal));
        Assert.Contains("Not yet: 18 in to center above finished floor", all, StringComparison.Ordinal);
    }

    // A tenth of a millimeter is a unit: 48 in is 12,192 of them above the subfloor, whichever page it is on.
    [Theory]
    [InlineData(PaperSize.A4, "210mm", "297mm", "0 0 2100 2970")]
    [InlineData(PaperSize.Letter, "215.9mm", "279.4mm", "0 0 2159 2794")]
    public void ToPages_AreAsLargeAsLife(PaperSize paper, string width, string height, string viewBox)
    {
        StoryPole pole = Pole();
        Items<string> pages = PolePicture.For(pole).ToPages(paper);
        Assert.True(pages.Count > 3);
        int marks = 0;
        for (int i = 0; i < pages.Count; i++)
        {
            XElement root = XDocument.Parse(pages[i]).Root!;
            Assert.Equal((width, height, viewBox), (root.Attribute("width")!.Value, root.Attribute("height")!.Value, root.Attribute("viewBox")!.Value));
            SvgReader svg = new(pages[i].Replace("mm\"", "\"", StringComparison.Ordinal));
            foreach (XElement mark in svg.All.Where(one => (string?)one.Attribute("class") == "bh-mark"))
            {
                decimal up = (svg.Data("subfloor") - Ys(mark)[0]) * 8m;
                Assert.Contains(pole.Rows, row => row.Mark.Value.Ticks - up is >= 0 and < 8);
                marks++;
            }
        }

        // One that falls where two pages lie over each other is on both.
        Assert.InRange(marks, pole.Rows.Count, 2 * pole.Rows.Count);
    }

    // The upper crosses of a page are at the height of the lower ones of the next.
    [Fact]
    public void ToPages_CrossesLieOnEachOther()
    {
        Items<string> pages = PolePicture.For(Pole()).ToPages(PaperSize.A4);
        decimal[][] heights = pages.Select(page =>
        {
            SvgReader svg = new(page.Replace("mm\"", "\"", StringComparison.Ordinal));
            return svg.All.Where(one => (string?)one.Attribute("class") == "bh-register").Select(one => Ys(one)).Where(ys => ys[0] == ys[1]).Select(ys => (decimal)(svg.Data("subfloor") - ys[0])).Distinct().Order().ToArray();
        }).ToArray();
        for (int i = 1; i < heights.Length; i++)
        {
            Assert.Equal(heights[i - 1].Max(), heights[i].Min());
        }
    }

    [Fact]
    public void ToPages_WithoutMarks_AreNone()
    {
        Assert.Empty(PolePicture.For(Output.Sheets.PoleFor(new Dwelling("empty"))).ToPages(PaperSize.A4));
        Assert.Throws<ArgumentNullException>(() => PolePicture.For(null!));
    }

    private static long[] Ys(XElement path)
    {
        string[] numbers = path.Attribute("d")!.Value.Replace("M", "", StringComparison.Ordinal).Replace("L", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [SvgReader.Thousandths(numbers[1]), SvgReader.Thousandths(numbers[3])];
    }

    private static StoryPole Pole()
    {
        DeviceBox Box(string id, string height, int at) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse(height));
        return Output.Sheets.PoleFor(new OneBox
        {
            Room = room => room.WithFloor(OneBox.Floor(new(CaseFile.Inches("0"), CaseFile.Inches("1")))),
            Wall = wall => wall.WithBoxes(new[] { Box("a", "48 in to top above subfloor", 20), Box("b", "16 in to bottom above subfloor", 40), Box("c", "18 in to center above finished floor", 60), Box("d", "48-1/8 in to top above subfloor", 80), Box("e", "60 in to center above subfloor", 100) }),
        }.At(BoxHeight.Parse("16-1/4 in to bottom above subfloor")).Build());
    }
}
