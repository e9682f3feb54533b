using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>From rough opening to casing, and plates beside it.</summary>
public sealed class TrimmedOpeningTests
{
    private static RuleSet Rules => new([RuleSets.RoughInPractice.Row("trim-clearance")!, RuleSets.RoughInPractice.Row("casing-gap")!]);
    private static readonly Distance Jack = CaseFile.Inches("60");

    private static Distance Tick => Distance.FromTicks(1);

    public static TheoryData<string> Cases => new(CaseFile.Table("trim-clearance.csv").Select(row => row["id"]));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Clearance_BoxOnTheKing_IsThePublishedOne(string id)
    {
        Dictionary<string, string> row = Row(id);
        TrimmedOpening trimmed = TrimmedOpening.Of(Door(row), UsualMeasures.Generic);
        Assert.True(PartsCatalog.Generic.TryFindPlate(new PlateKind(row["plate"]), Gangs(row), out PlatePart? plate));
        Assert.Equal(CaseFile.Inches(row["clearance"]), trimmed.Clearance(Center(row), plate.Size));

        // The second road: jack, king and packs of 1-1/2 in each, half the box less half the plate; the casing's edge from the leaf's.
        Fraction plateEdge = new Fraction(3) + (new Fraction(3, 2) * new Fraction(Packs(row))) + (CaseFile.Number(row["box"]) / new Fraction(2))
            - ((CaseFile.Number(Widths[row["plate"]]) + (new Fraction(29, 16) * new Fraction(Gangs(row) - 1))) / new Fraction(2));
        Fraction casingEdge = CaseFile.Number(row["casing"]) + CaseFile.Number(row["reveal"]) - (CaseFile.Number(row["rough over leaf"]) / new Fraction(2));
        Assert.Equal(CaseFile.Number(row["clearance"]), plateEdge - casingEdge);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Clearance_OnTheOtherSide_IsTheSame(string id)
    {
        Dictionary<string, string> row = Row(id);
        Opening door = Door(row);
        Assert.True(PartsCatalog.Generic.TryFindPlate(new PlateKind(row["plate"]), Gangs(row), out PlatePart? plate));
        Assert.Equal(CaseFile.Inches(row["clearance"]), TrimmedOpening.Of(door, UsualMeasures.Generic).Clearance(door.Left - (Center(row) - Jack), plate.Size));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Rows_BoxOnTheKing_FollowTheClearance(string id)
    {
        Dictionary<string, string> row = Row(id);
        string[] found = Found(row, Center(row));
        Fraction clearance = CaseFile.Number(row["clearance"]);
        Fraction least = CaseFile.Number(Limit("casing-gap"));
        Assert.Equal(clearance < Fraction.Zero ? ["trim-clearance"] : clearance < least ? ["casing-gap"] : [], found);
    }

    [Fact]
    public void Rows_OneTickAroundEachLimit_ChangeThere()
    {
        Dictionary<string, string> row = Row("2-1/4 standard");
        Distance touching = Center(row) - CaseFile.Inches(row["clearance"]);
        Distance least = CaseFile.Inches(Limit("casing-gap"));
        Assert.Equal(["trim-clearance"], Found(row, touching - Tick));
        Assert.Equal(["casing-gap"], Found(row, touching));
        Assert.Equal(["casing-gap"], Found(row, touching + least - Tick));
        Assert.Empty(Found(row, touching + least));
    }

    // Plate 4-1/2 in tall, casing 2-1/4 in over a head at 82-1/2 in: its upper edge is 82-1/2 − 1 + 3/16 + 2-1/4 = 83-15/16 in. By hand.
    [Fact]
    public void Rows_OverTheHead_AskForTheSameGap()
    {
        Dictionary<string, string> row = Row("2-1/4 standard");
        Distance touching = CaseFile.Inches("83-15/16") + CaseFile.Inches("2-1/4");
        Distance least = CaseFile.Inches(Limit("casing-gap"));
        Distance middle = Jack - CaseFile.Inches("15");
        Assert.Equal(["trim-clearance"], Found(row, middle, touching - Tick));
        Assert.Equal(["casing-gap"], Found(row, middle, touching));
        Assert.Empty(Found(row, middle, touching + least));
    }

    [Fact]
    public void Gap_CasingNotStated_IsNotJudged()
    {
        Opening bare = new("door", OpeningKind.Door, CaseFile.Inches("28"), Jack);
        OneBox box = Beside(bare, Jack + CaseFile.Inches("1-1/2"));
        Assert.Empty(box.Evaluate().Findings);
    }

    // Leaf, kind, rough opening from 40 in; jamb faces and, for a pocket, its stretch. Recomputed by hand: half of what is over, 1 in without a leaf, 2 × leaf + 1 in of frame.
    [Theory]
    [InlineData("door", "32", "30", null, "41", "71", null, null)]
    [InlineData("door", "32.5", "30", null, "41-1/4", "71-1/4", null, null)]
    [InlineData("double-door", "62", "30", null, "41", "101", null, null)]
    [InlineData("cased", "36", null, null, "41", "75", null, null)]
    [InlineData("bifold-door", "61.5", "60", null, "41", "100-1/2", null, null)]
    [InlineData("bypass-door", "61.5", "30", null, "41", "100-1/2", null, null)]
    [InlineData("sliding-door", "72", "36", "left", "41", "111", null, null)]
    [InlineData("barn-door", "36", "40", "left", "41", "75", null, null)]
    [InlineData("pocket-door", "24", "24", "left", "40", "64", "15", "40")]
    [InlineData("pocket-door", "24", "24", "right", "40", "64", "64", "89")]
    [InlineData("pocket-door", "26", "24", "right", "42", "66", "66", "90")]
    [InlineData("pocket-door", "49", "24", "left", "64", "88", "40", "64")]
    [InlineData("pocket-door", "49", "24", "right", "41", "65", "65", "89")]
    public void Of_EachKind_HasItsJambsAndPocket(string kind, string rough, string? leaf, string? side, string left, string right, string? from, string? to)
    {
        Distance start = CaseFile.Inches("40");
        Opening opening = new Opening("o", new OpeningKind(kind), start, start + CaseFile.Inches(rough))
            .WithLeaf(leaf is null ? null : CaseFile.Inches(leaf))
            .WithPocketOn(side is null ? null : side == "left" ? WallEnd.Left : WallEnd.Right);
        TrimmedOpening trimmed = TrimmedOpening.Of(opening, UsualMeasures.Generic);
        Assert.Equal((CaseFile.Inches(left), CaseFile.Inches(right)), (trimmed.JambLeft, trimmed.JambRight));
        Assert.Equal(from is null ? null : new DistanceRange(CaseFile.Inches(from), CaseFile.Inches(to!)), trimmed.Pocket);
    }

    internal static string Limit(string rule) => CaseFile.Table("stair-limits.csv").Single(row => row["rule"] == rule)["limit"];

    private static Dictionary<string, string> Widths { get; } = new() { ["standard"] = "2-3/4", ["midway"] = "3-1/8", ["jumbo"] = "3-1/2" };

    private static Dictionary<string, string> Row(string id) => CaseFile.Table("trim-clearance.csv").Single(row => row["id"] == id);

    private static int Gangs(Dictionary<string, string> row) => int.Parse(row["gangs"], CultureInfo.InvariantCulture);

    private static int Packs(Dictionary<string, string> row) => int.Parse(row["packs"], CultureInfo.InvariantCulture);

    private static Opening Door(Dictionary<string, string> row)
    {
        Distance leaf = CaseFile.Inches("30");
        return new Opening("door", OpeningKind.Door, Jack - leaf - CaseFile.Inches(row["rough over leaf"]), Jack).WithLeaf(leaf)
            .WithCasing(CaseFile.Inches(row["casing"])).WithReveal(CaseFile.Inches(row["reveal"])).WithHead(Level.Parse("82-1/2 in above subfloor"));
    }

    private static Distance Center(Dictionary<string, string> row) =>
        Jack + CaseFile.Inches(new Fraction(3) + (new Fraction(3, 2) * new Fraction(Packs(row))) + (CaseFile.Number(row["box"]) / new Fraction(2)));

    private static OneBox Beside(Opening opening, Distance at)
    {
        OneBox one = new() { Rules = Rules, Wall = wall => wall.WithOpenings(new[] { opening }) };
        return (one with { Box = one.Box.WithAt(at) }).At(BoxHeight.Parse("48 in to top above subfloor"));
    }

    private static string[] Found(Dictionary<string, string> row, Distance at, Distance? center = null)
    {
        OneBox one = Beside(Door(row), at);
        one = one with { Box = one.Box.WithGangs(Gangs(row)).WithPlate(new PlateKind(row["plate"])).WithSize(new BoxSize(CaseFile.Inches(row["box"]), CaseFile.Inches("3-3/4"))) };
        one = center is { } height ? one.At(BoxHeight.ToCenter(height, Datum.Subfloor)) : one;
        return one.Evaluate().Findings.Select(finding => finding.RuleId).ToArray();
    }
}
