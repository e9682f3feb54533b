using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Output;

/// <summary>A mark sheet, read back by someone who has only the paper, says the same as the layout.</summary>
public sealed class MarkSheetRoundTripTests
{
    private static readonly LayoutEvaluator Evaluator = new(DwellingGen.Rules);

    [Fact]
    public void ToCsv_ReadBack_EvaluatesLikeTheLayout() => Prop.ForAll(DwellingGen.Seeds, Arb.From(Gen.Elements<Edge?>(null, Edge.Bottom, Edge.Center, Edge.Top)), (seed, edge) =>
    {
        Dwelling dwelling = DwellingGen.Dwelling(seed).WithUnits(seed % 2 == 0 ? LengthUnits.Inches : LengthUnits.Millimeters);
        if (edge is not null)
        {
            // A mark to another edge is made for a box of one size, so that what depended on the size no longer does.
            dwelling = dwelling.WithBoxes(box => box.Size is null ? box.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"))) : box);
        }

        MarkSheet sheet = Sheets.For(dwelling, DwellingGen.Rules, MarkOptions.Default.WithEdge(edge));
        Dictionary<string, string[]> rows = Csv(sheet.ToCsv()).Skip(1).ToDictionary(row => row[1], StringComparer.Ordinal);
        Dwelling marked = dwelling.WithBoxes(box => rows.TryGetValue(box.Id, out string[]? row) && row[6].Length > 0
            ? box.WithHeight(BoxHeight.To(EdgeOf(row[7]), Distance.Parse(row[6]), Datum.Subfloor)).WithAt(row[3].Length == 0 ? box.At : Distance.Parse(row[3]))
            : box);
        Assert.Equal(Said(dwelling), Said(marked));
        return true;
    }).Check(Tries.Always(80));

    [Fact]
    public void Rows_BoxesOnWalls_AreMarkedOnceFromLeftToRight() => Prop.ForAll(DwellingGen.Seeds, seed =>
    {
        Dwelling dwelling = DwellingGen.Dwelling(seed);
        MarkSheet sheet = Sheets.For(dwelling, DwellingGen.Rules);
        HashSet<string> broken = Evaluator.Evaluate(dwelling).Findings.Where(finding => finding.Fault is not null).Select(finding => finding.Subject).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(
            dwelling.PlacedBoxes().Select(placed => placed.Box.Id).Where(id => !broken.Contains(id)).Order(StringComparer.Ordinal),
            sheet.Rows.Select(row => row.BoxId).Order(StringComparer.Ordinal));
        return sheet.Rows.GroupBy(row => row.Address).All(wall => wall.Zip(wall.Skip(1), (a, b) => a.FromLeftCorner <= b.FromLeftCorner).All(inOrder => inOrder));
    }).Check(Tries.Always(40));

    // 48 in to the top on a floor of 0.3 in is 48.3 in above the subfloor; eighths of an inch are marked.
    [Theory]
    [InlineData("0", "48")]
    [InlineData("1/2", "48-1/2")]
    [InlineData("0.3", "48-1/4")]
    [InlineData("0.32", "48-3/8")]
    public void Rows_HeightFromTheFinishedFloor_IsMarkedAboveTheSubfloor(string floor, string mark)
    {
        OneBox box = new OneBox { Room = room => room.WithFloor(OneBox.Floor(CaseFile.Inches(floor))) }.At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.FinishedFloor));
        Assert.Equal(BoxHeight.ToTop(CaseFile.Inches(mark), Datum.Subfloor), Sheets.For(box.Build(), RuleSet.Empty).Rows.Single().Mark);
    }

    // The nearest eighth under 48.32 is 48-3/8: over the limit of 48 in above the floor, so the mark goes down.
    [Fact]
    public void Rows_RightAtALimit_AreRoundedInward()
    {
        OneBox box = new OneBox { Rules = RuleSets.California, Room = room => room.WithFloor(OneBox.Floor(CaseFile.Inches("0.32"))) }
            .At(BoxHeight.ToTop(CaseFile.Inches("48"), Datum.FinishedFloor));
        Assert.Equal(Verdict.Passes, box.Verdict());
        Assert.Equal(BoxHeight.ToTop(CaseFile.Inches("48-1/4"), Datum.Subfloor), Sheets.For(box.Build(), box.Rules).Rows.Single().Mark);
    }

    private static string[] Said(Dwelling dwelling) => Evaluator.Evaluate(dwelling).Findings.Select(DwellingGen.Key).Order(StringComparer.Ordinal).ToArray();

    private static Edge EdgeOf(string word) => word.Contains("bottom", StringComparison.Ordinal) ? Edge.Bottom : word.Contains("top", StringComparison.Ordinal) ? Edge.Top : Edge.Center;

    /// <summary>Values between commas after RFC 4180.</summary>
    private static List<string[]> Csv(string text)
    {
        List<string[]> rows = [];
        List<string> row = [];
        StringBuilder cell = new();
        bool quoted = false;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (quoted ? c == '"' && i + 1 < text.Length && text[i + 1] == '"' : false)
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && c is ',' or '\n')
            {
                row.Add(cell.ToString().TrimEnd('\r'));
                cell.Clear();
                if (c == '\n')
                {
                    rows.Add(row.ToArray());
                    row.Clear();
                }
            }
            else
            {
                cell.Append(c);
            }
        }

        return rows;
    }
}
