using System;
using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Heights;

public class HeightTextTests
{
    [Theory]
    [InlineData("48 in to top AFF", "48 in to top above finished floor")]
    [InlineData("48 in to top above subfloor", "48 in to top above subfloor")]
    [InlineData("48\" AFF", "48 in above finished floor (edge unstated)")]
    [InlineData("+48\" AFF", "48 in above finished floor (edge unstated)")]
    [InlineData("+44 in AFF", "44 in above finished floor (edge unstated)")]
    [InlineData("+48\"", "48 in above finished floor (edge unstated)")]
    [InlineData("H=44\"", "44 in above finished floor (edge unstated)")]
    [InlineData("h = 44 in to top", "44 in to top above finished floor")]
    [InlineData("H=44\" to center above subfloor", "44 in to center above subfloor")]
    [InlineData("44\" A.F.F. U.N.O.", "44 in above finished floor (edge unstated)")]
    [InlineData("18 in to center AFF, unless noted otherwise", "18 in to center above finished floor")]
    [InlineData("+18\" O.C.", "18 in to center above finished floor")]
    [InlineData("18\" O.C. AFF", "18 in to center above finished floor")]
    [InlineData("18\" C/L AFF", "18 in to center above finished floor")]
    [InlineData("C/L 18\" A.F.F.", "18 in to center above finished floor")]
    [InlineData("44 in cl above the subfloor", "44 in to center above subfloor")]
    [InlineData("44 in to centre above finish floor", "44 in to center above finished floor")]
    [InlineData("1200 mm to center line above finished floor", "1200 mm to center above finished floor")]
    [InlineData("T.O.B. 48\" A.F.F", "48 in to top above finished floor")]
    [InlineData("48\" T.O.B AFF", "48 in to top above finished floor")]
    [InlineData("12\" BOB off the subfloor", "12 in to bottom above subfloor")]
    [InlineData("12-1/4 in B.O.B. off the slab", "12-1/4 in to bottom above subfloor")]
    [InlineData("12 in to bottom off the plate", "12 in to bottom off the bottom plate")]
    [InlineData("12 in off the sole plate to the bottom", "12 in to bottom off the bottom plate")]
    [InlineData("off the bottom plate 12 in to bottom", "12 in to bottom off the bottom plate")]
    [InlineData("12 in to bottom of box, off of the bottom plate", "12 in to bottom off the bottom plate")]
    [InlineData("above finished floor, 48 in to the top of the box", "48 in to top above finished floor")]
    [InlineData("bottom at 48 in above subfloor", "48 in to bottom above subfloor")]
    [InlineData("4 ft to top ASF", "48 in to top above subfloor")]
    [InlineData("48 in to top SF", "48 in to top above subfloor")]
    [InlineData("48 in to top above FF", "48 in to top above finished floor")]
    [InlineData("48 IN TO TOP ABOVE FIN. FLOOR", "48 in to top above finished floor")]
    [InlineData("8 in to center above counter", "8 in to center above countertop")]
    [InlineData("6 in to top below the level line", "6 in to top below level line")]
    [InlineData("-6 in to top above level line", "6 in to top below level line")]
    [InlineData("\u22126 in to top above level line", "6 in to top below level line")]
    [InlineData("\u20136 in to top above level line", "6 in to top below level line")]
    [InlineData("6 in to top down from the bench line", "6 in to top below level line")]
    [InlineData("18 in to bottom above grade", "18 in to bottom above grade")]
    [InlineData("18 in to bottom above the ground", "18 in to bottom above grade")]
    [InlineData("12 in to top below finished ceiling", "12 in to top below finished ceiling")]
    [InlineData("12 in to top below ceiling", "12 in to top below finished ceiling")]
    [InlineData("2 in to top under the wall cabinet", "2 in to top below cabinet underside")]
    [InlineData("6 in to center above tread nosing", "6 in to center above nosing")]
    [InlineData("0 in to center from existing plate", "0 in to center above existing plate")]
    [InlineData("  48 in   to  top\u00a0above   subfloor ", "48 in to top above subfloor")]
    [InlineData("48 in above finished floor (edge unstated)", "48 in above finished floor (edge unstated)")]
    public void Parse_SpellingOfTheTrade_IsPrintedInWholeWords(string text, string printed)
    {
        Assert.Equal(printed, BoxHeight.Parse(text).ToString());
        Assert.True(BoxHeight.TryParse(text, out BoxHeight height));
        Assert.Equal(BoxHeight.Parse(printed), height);
    }

    [Theory]
    [InlineData("48 in to top", "measured from")]
    [InlineData("18\" O.C.", "measured from")]
    [InlineData("48 in", "measured from")]
    [InlineData("48 to top AFF", "character")]
    [InlineData("to top AFF", "how high")]
    [InlineData("", "how high")]
    [InlineData("48 in to top to bottom AFF", "one edge")]
    [InlineData("48 in to top (edge unstated) AFF", "one edge")]
    [InlineData("48 in to top AFF above subfloor", "one datum")]
    [InlineData("48 in to top countertop", "above or below")]
    [InlineData("-6 in to top below subfloor", "no sign")]
    [InlineData("+6 in to top below subfloor", "no sign")]
    [InlineData("\u20136 in to top below subfloor", "no sign")]
    [InlineData("48 in to top above the moon", "character 13")]
    [InlineData("48 in to top AFFX", "character 13")]
    [InlineData("48 in 12 in to top AFF", "character 6: a height is one distance")]
    [InlineData("48 in to tops AFF", "character 6")]
    [InlineData("48 in to top plate", "above or below")]
    public void Parse_NoHeight_SaysWhereOrWhy(string text, string says)
    {
        Assert.False(BoxHeight.TryParse(text, out BoxHeight height));
        Assert.Equal(default, height);
        Assert.Contains(says, Assert.Throws<FormatException>(() => BoxHeight.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("42 in above subfloor", "42 in above subfloor")]
    [InlineData("countertop", "countertop")]
    [InlineData("at the countertop", "countertop")]
    [InlineData("0 in above countertop", "countertop")]
    [InlineData("6 in below subfloor", "6 in below subfloor")]
    [InlineData("4 in above countertop", "4 in above countertop")]
    [InlineData("4 in above counter", "4 in above countertop")]
    [InlineData("1-1/2 in off the plate", "1-1/2 in off the bottom plate")]
    [InlineData("84 in AFF", "84 in above finished floor")]
    [InlineData("slab", "subfloor")]
    [InlineData("6 in sf", "6 in above subfloor")]
    public void Parse_Level_IsPrintedInWholeWords(string text, string printed)
    {
        Assert.Equal(printed, Level.Parse(text).ToString());
        Assert.True(Level.TryParse(text, out Level level));
        Assert.Equal(Level.Parse(printed), level);
    }

    [Theory]
    [InlineData("42 in to top above subfloor", "no edge")]
    [InlineData("42 in", "measured from")]
    [InlineData("+42 in", "measured from")]
    [InlineData("above countertop", "how far")]
    [InlineData("42 in countertop", "above or below")]
    [InlineData("", "measured from")]
    public void Parse_NoLevel_SaysWhy(string text, string says)
    {
        Assert.False(Level.TryParse(text, out Level level));
        Assert.Equal(default, level);
        Assert.Contains(says, Assert.Throws<FormatException>(() => Level.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_OfToString_IsTheSameHeight() =>
        Prop.ForAll(Arb.From(HeightGen.Heights), height => BoxHeight.Parse(height.ToString()) == height).Check(Tries.Always(100));

    [Fact]
    public void Parse_OfToString_IsTheSameLevel() =>
        Prop.ForAll(Arb.From(HeightGen.Distances), Arb.From(Gen.Elements(HeightGen.Datums)), (offset, datum) =>
            Level.Parse(new Level(offset, datum).ToString()) == new Level(offset, datum)).Check(Tries.Always(100));

    [Fact]
    public void Parse_OfToString_AtTheEndsOfTheScale_IsTheSameHeight()
    {
        foreach (Distance end in new[] { Distance.MinValue, Distance.MaxValue, -Distance.MaxValue })
        {
            BoxHeight height = BoxHeight.ToTop(end, Datum.Grade);
            Assert.Equal(height, BoxHeight.Parse(height.ToString()));
        }
    }

    // Every word of a height in every order: all six orders of distance, edge and datum say the same.
    [Fact]
    public void Parse_WordsInAnyOrder_IsTheSameHeight()
    {
        foreach (Datum datum in HeightGen.Datums)
        {
            foreach (Edge edge in HeightGen.Edges)
            {
                BoxHeight height = BoxHeight.To(edge, Distance.FromInches(12, 1, 2), datum);
                string words = height.ToString();
                string edgeWords = "to " + new[] { "bottom", "center", "top" }[(int)edge];
                string datumWords = words.Substring(words.IndexOf(edgeWords, StringComparison.Ordinal) + edgeWords.Length + 1);
                string[] parts = ["12-1/2 in", edgeWords, datumWords];
                foreach (int[] order in new[] { new[] { 0, 1, 2 }, [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0] })
                {
                    Assert.Equal(height, BoxHeight.Parse(parts[order[0]] + " " + parts[order[1]] + " " + parts[order[2]]));
                }
            }
        }
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [InlineData("tr-TR")]
    public void Text_UnderAnotherCulture_IsTheSame(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal("1219.25 mm to bottom below finished ceiling", BoxHeight.Parse("1219.25 MM TO BOTTOM BELOW FINISHED CEILING").ToString());
            Assert.Equal("6 in below window stool", Level.Parse("6 IN BELOW WINDOW STOOL").ToString());
            Assert.Equal("14-2-2", CableType.Parse("14-2-2").ToString());
            Assert.Equal("12 AWG", ConductorSize.Awg12.ToString());
            Assert.Equal("-6 in above the storey's subfloor", new Elevation(Distance.FromInches(-6)).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("\0")]
    [InlineData("\ud800")]
    [InlineData("+")]
    [InlineData("-")]
    [InlineData("\u2212")]
    [InlineData(".")]
    [InlineData("½")]
    [InlineData("\u0664\u0668 in AFF")]
    [InlineData(",,,,")]
    [InlineData("at at at @")]
    [InlineData("above")]
    [InlineData("the")]
    [InlineData("above the")]
    [InlineData("99999999999999999999999999999999999999999999 in to top AFF")]
    [InlineData("1/0 in to top AFF")]
    [InlineData("48 in to top AFF\n48")]
    [InlineData("(edge unstated")]
    public void TryParse_HostileText_IsFalse(string? text)
    {
        Assert.False(BoxHeight.TryParse(text, out _));
        Assert.False(Level.TryParse(text, out _));
    }

    [Theory]
    [InlineData("\u00bd in to center above subfloor", "1/2 in to center above subfloor")]
    [InlineData("\u2155 in to top above subfloor", "1/5 in to top above subfloor")]
    public void Parse_OfAFractionsOwnSign_IsTheFraction(string text, string same) => Assert.Equal(BoxHeight.Parse(same), BoxHeight.Parse(text));

    [Theory]
    [InlineData("48 in to lid above subfloor")]
    [InlineData("48 in to topping above subfloor")]
    [InlineData("_ 48 in to top above subfloor")]
    public void Parse_OfAWordThatNamesNothing_SaysWhatHasToBeNamed(string text) =>
        Assert.Contains("name no edge", Assert.Throws<FormatException>(() => BoxHeight.Parse(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void TryParse_WordsThrownTogether_NeverThrows()
    {
        Gen<string> words = Gen.Elements(
            "48 in", "-", "+", "3'", "\"", "to", "top", "bottom", "plate", "off", "above", "below", "the", "AFF", "O.C.", "(edge unstated)", ",", "\u00bd", "\u2212", "in", "99999999999999999999", "mm", "\ud83d", "sf");
        Prop.ForAll(Arb.From(words.ListOf()), list =>
        {
            foreach (string text in new[] { string.Join(" ", list), string.Concat(list) })
            {
                bool height = BoxHeight.TryParse(text, out BoxHeight read);
                bool level = Level.TryParse(text, out _);
                if ((height && BoxHeight.Parse(read.ToString()) != read) || (height && level && read.Edge is not null))
                {
                    return false;
                }
            }

            return true;
        }).Check(Tries.Always(100));
    }

    [Fact]
    public void Parse_Null_Throws()
    {
        Assert.Throws<ArgumentNullException>(() => BoxHeight.Parse(null!));
        Assert.Throws<ArgumentNullException>(() => Level.Parse(null!));
    }
}
