using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Wordings;

public class WordingTests
{
    private static readonly Distance Off = Distance.FromInches(0, 3, 8);

    [Fact]
    public void InterpolatedString_KeepsItsTemplateAndWhatStandsInIt()
    {
        string box = "K-3";
        Wording said = $"{box} is {new PrintedQuantity(Off, LengthUnits.Inches, Rounding.Up):off} too low";
        Assert.Equal("{box} is {off} too low", said.Template);
        Assert.Equal("K-3 is 3/8 in too low", said.ToString());
        Assert.Equal(["box", "off"], said.Arguments.Select(argument => argument.Name));
        Assert.Equal((Quantity)Off, ((PrintedQuantity)said.Arguments[1].Value).Quantity);
    }

    [Fact]
    public void Of_ForOldCompilers_MakesTheSame()
    {
        string box = "K-3";
        int count = 2;
        Assert.Equal((Wording)$"{box} holds {count} devices", Wording.Of("{box} holds {count} devices", ("box", box), ("count", count)));
        Assert.Throws<FormatException>(() => Wording.Of("{box} holds {count} devices", ("box", box)));
        Assert.Throws<FormatException>(() => Wording.Of("{box holds", ("box", box)));
    }

    [Fact]
    public void Catalog_PutsPlacesInAnyOrder_AndWordsWithinWordsToo()
    {
        WordingFormatter german = WordingFormatter.From(new Dictionary<string, string>
        {
            ["{box} is {off} too low"] = "Um {off} zu tief sitzt {box}",
            ["{distance} below"] = "{distance} darunter",
        });
        string box = "K-3";
        Wording off = $"{new PrintedQuantity(Distance.FromMillimeters(40m), LengthUnits.Millimeters, Rounding.None):distance} below";
        Assert.Equal("Um 40 mm darunter zu tief sitzt K-3", german.Format($"{box} is {off} too low"));
        Assert.Equal("K-3 is gone", german.Format($"{box} is gone"));
    }

    // Ids and the words of a row of one's own may hold anything.
    [Fact]
    public void Braces_InNamesAndRows_AreWordsAndNoPlaces()
    {
        string id = "{box}";
        Assert.Equal("{box} is gone", ((Wording)$"{id} is gone").ToString());
        Assert.Equal("a {{ b", ((Wording)$"a {{{{ b").ToString());
        DwellingBuilder house = new("{house");
        house.Add(new Storey("{s}"));
        house.Room("{r", RoomKind.Hall, "{s}").Wall("w}", Distance.FromInches(96m)).Add(new DeviceBox("{b}", BoxPurpose.Switch).WithAt(Distance.FromInches(40m)).WithHeight(BoxHeight.Parse("60 in to top above subfloor")));
        house.Room("{r2", RoomKind.Hall, "{s}").Wall("w}", Distance.FromInches(96m)).Add(new DeviceBox("{b}", BoxPurpose.Switch).WithAt(Distance.FromInches(40m)).WithHeight(BoxHeight.Parse("60 in to top above subfloor")));
        Rule row = RuleSets.RoughInPractice.Row("switch-height");
        string report = new LayoutEvaluator(RuleSets.RoughInPractice.With(row with { Summary = "where {somebody} likes it" })).Evaluate(house.Build()).ToText();
        Assert.Contains("a box on {r/w}", report, StringComparison.Ordinal);
        Assert.Contains("must be where {somebody} likes it", report, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{kasten} ist weg", "{box}")]
    [InlineData("{box} von {kasten} ist weg", "{kasten}")]
    [InlineData("er ist weg", "{box}")]
    [InlineData("{box ist weg", "closed")]
    [InlineData(null, "null")]
    public void From_SentenceThatIsWrong_IsRefusedAtOnce(string? sentence, string named)
    {
        ArgumentException refused = Assert.Throws<ArgumentException>(() => WordingFormatter.From(new Dictionary<string, string> { ["{box} is gone"] = sentence! }));
        Assert.Contains("\"{box} is gone\"", refused.Message, StringComparison.Ordinal);
        Assert.Contains(named, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Format_CatalogThatWasChangedSince_SaysWhichPlaceIsWrong()
    {
        Dictionary<string, string> catalog = new() { ["{box} is gone"] = "{box} ist weg" };
        WordingFormatter formatter = WordingFormatter.From(catalog);
        string box = "S1";
        Assert.Equal("S1 ist weg", formatter.Format($"{box} is gone"));
        catalog["{box} is gone"] = "{kasten} ist weg";
        Assert.Contains("kasten", Assert.Throws<FormatException>(() => formatter.Format($"{box} is gone")).Message, StringComparison.Ordinal);
    }

    // One part within the next, a list of thousands was as many calls deep, and printed its beginning as often.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(20_000)]
    public void Listed_HoweverMany_AreInOrder_OnASmallStack(int count)
    {
        string[] names = Enumerable.Range(0, count).Select(i => "w" + i).ToArray();
        string listed = "";
        Thread small = new(() => listed = Wording.Listed(names.Select(Wording.Name)).ToString(), 256 * 1024);
        small.Start();
        small.Join();
        Assert.Equal(string.Join(", ", names), listed);
    }

    [Theory]
    [InlineData(Rounding.Down, "12-1/2 in", "317.5 mm")]
    [InlineData(Rounding.Nearest, "12-1/2 in", "317.5 mm")]
    [InlineData(Rounding.Up, "12-9/16 in", "317.6 mm")]
    public void Quantity_OffTheTape_GoesTheWayItIsRounded(Rounding rounding, string inches, string millimeters)
    {
        // A tick, 12.5 nm, above 12-1/2 in: 317.5000125 mm.
        PrintedQuantity printed = new(Distance.FromInches(12, 1, 2) + Distance.FromTicks(1), LengthUnits.Inches, rounding);
        Assert.Equal(inches, printed.ToString());
        Assert.Equal(millimeters, printed.In(LengthUnits.Millimeters).ToString());
    }
}
