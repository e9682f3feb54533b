using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using Fractions;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 314.20: how far the front of a box may be behind the finished surface.</summary>
public sealed class SetbackCaseTests
{
    private static readonly NecEdition[] Editions = [NecEdition.Nec2017, NecEdition.Nec2020, NecEdition.Nec2023, NecEdition.Nec2026];

    [Fact]
    public void State_TheWorkedCases_AreAsFarBehindAsPublished()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("setback.csv"))
        {
            Fraction surface = Surface(row);
            Assert.True(surface - CaseFile.Number(row["set for"]) == CaseFile.Number(row["behind"]), row["id"] + ": the case file's own sum");
            Distance margin = CaseFile.Inches(CaseFile.Number(row["most"]) - CaseFile.Number(row["behind"]));
            foreach (NecEdition edition in Editions)
            {
                Check check = Case(row, CaseFile.Inches(row["set for"]), edition).Check()!.Value;
                Assert.True((margin < Distance.Zero ? Verdict.Fails : Verdict.Passes) == check.Verdict, row["id"]);
                Assert.Equal(margin, check.Margin.AsDistance());
            }
        }
    }

    [Fact]
    public void State_OneTickBelowAtAndAbove_TurnsAtTheLimit()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("setback.csv"))
        {
            Distance turn = CaseFile.Inches(Surface(row) - CaseFile.Number(row["most"]));
            foreach (int ticks in new[] { -1, 0, 1 })
            {
                Check check = Case(row, turn + Distance.FromTicks(ticks)).Check()!.Value;
                Assert.True((ticks < 0 ? Verdict.Fails : Verdict.Passes) == check.Verdict, row["id"]);
            }
        }
    }

    [Fact]
    public void State_NotFlushOrNotStated_IsSilent()
    {
        Dictionary<string, string> tile = CaseFile.Table("setback.csv")[0];
        OneBox box = Case(tile, CaseFile.Inches("0"));
        Assert.Equal(Verdict.Fails, box.Verdict());
        Assert.Null((box with { Box = box.Box.WithSetFor(null) }).Check());
        Assert.Null((box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Surface)) }).Check());
        Assert.Null((box with { Box = box.Box.WithSurface(BoxSurface.Cabinet) }).Check());
        Evaluation bare = (box with { Wall = wall => wall }).Evaluate();
        Assert.Empty(bare.Checks);
        Assert.Contains(bare.NotJudged, line => line.StartsWith("box-setback: how thick the board is", StringComparison.Ordinal));
    }

    // 1/2 board, 1/8 bed: how thick the tile is, or whether a panel burns, matters only where it turns the verdict.
    [Theory]
    [InlineData("tile", "1/2", null, "1/4..3/8", Verdict.Fails, MissingFacts.None)]
    [InlineData("tile", "5/8", null, "1/4..3/8", Verdict.Unknown, MissingFacts.FinishThickness)]
    [InlineData("tile", "3/4", null, "1/4..3/8", Verdict.Passes, MissingFacts.None)]
    [InlineData("tile", "1/2", null, null, Verdict.Unknown, MissingFacts.FinishThickness)]
    [InlineData("tile", "1/4", null, null, Verdict.Fails, MissingFacts.None)]
    [InlineData("panel", "5/8", null, "1/8", Verdict.Unknown, MissingFacts.Combustible)]
    [InlineData("panel", "3/4", null, "1/8", Verdict.Passes, MissingFacts.None)]
    [InlineData("panel", "3/4", true, "1/8", Verdict.Passes, MissingFacts.None)]
    [InlineData("panel", "1/4", null, "1/8", Verdict.Fails, MissingFacts.None)]
    [InlineData("panel", "5/8", null, "1/8..1/4", Verdict.Unknown, MissingFacts.Combustible)]
    [InlineData("panel", "3/4", null, "0..1/2", Verdict.Unknown, MissingFacts.FinishThickness | MissingFacts.Combustible)]
    [InlineData("panel", "3/4", true, "0..1/4", Verdict.Unknown, MissingFacts.FinishThickness)]
    public void State_FinishNotKnown_MattersOnlyWhereItTurnsTheVerdict(
        string kind, string setFor, bool? burns, string? thickness, Verdict expected, MissingFacts needs)
    {
        Finish finish = Tiles(kind).WithBed(CaseFile.Inches("1/8")).WithCombustible(burns).WithThickness(thickness is null ? null : Range(thickness));
        Check check = Placed(finish, CaseFile.Inches("1/2"), CaseFile.Inches(setFor)).Check()!.Value;
        Assert.Equal(expected, check.Verdict);
        Assert.Equal(needs, check.Needs);
    }

    // Thin-set under tile is up to 1/4 in where nobody says; a panel has none.
    [Fact]
    public void State_BedNotStated_IsOpenUnderTileOnly()
    {
        Finish tile = Tiles("tile").WithThickness(CaseFile.Inches("1/4"));
        Assert.Equal(Verdict.Unknown, Placed(tile, CaseFile.Inches("1/2"), CaseFile.Inches("5/8")).Verdict());
        Assert.Equal(Verdict.Passes, Placed(tile, CaseFile.Inches("1/2"), CaseFile.Inches("3/4")).Verdict());
        Finish panel = tile.WithKind(FinishKind.Panel).WithCombustible(true);
        Assert.Equal(Verdict.Passes, Placed(panel, CaseFile.Inches("1/2"), CaseFile.Inches("3/4")).Verdict());
    }

    // Strapping 3/4 and board 5/8: the surface is 1-3/8 from the joists, and a box on them set for the board alone is 3/4 too far up.
    [Theory]
    [InlineData("5/8", Verdict.Fails)]
    [InlineData("1-1/8", Verdict.Passes)]
    [InlineData("1-3/8", Verdict.Passes)]
    public void State_BoxInACeiling_CountsStrappingAndBoard(string setFor, Verdict expected)
    {
        DwellingBuilder dwelling = new("case");
        dwelling.Add(new Storey("ground"));
        dwelling.Room("room", RoomKind.Kitchen, "ground").With(room => room
            .WithCeiling(new Ceiling().WithBoard(CaseFile.Inches("5/8")).WithStrapping(CaseFile.Inches("3/4")))
            .WithOverhead(new[] { new DeviceBox("light", BoxPurpose.VanityLight).WithKind(BoxKind.Octagon).WithSetFor(CaseFile.Inches(setFor)) }));
        Check check = new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "box-setback")).Evaluate(dwelling.Build()).Checks.Single();
        Assert.Equal(expected, check.Verdict);
    }

    [Theory]
    [InlineData("nail-on", false, "set the-box to stand 1 in out")]
    [InlineData("four-square", false, "plaster ring that stands 1 in out")]
    [InlineData("cut-in", false, "add an extension ring of 1/2 in")]
    [InlineData("masonry", false, "add an extension ring of 1/2 in")]
    [InlineData("nail-on", true, "add an extension ring of 1/2 in")]
    public void Remedies_BoxSetForTheBoardUnderTile_BringItOutToTheTile(string kind, bool existing, string text)
    {
        OneBox box = Case(CaseFile.Table("setback.csv")[0], CaseFile.Inches("1/2"));
        box = box with { Box = box.Box.WithKind(new BoxKind(kind)).WithExisting(existing) };
        Evaluation evaluation = box.Evaluate();
        Finding finding = evaluation.Findings.Single();
        Assert.Equal(CaseFile.Inches("1/2"), finding.Measured.AsDistance());
        Assert.Contains("1/2 in of board", finding.Message, StringComparison.Ordinal);
        SetProjection remedy = Assert.IsType<SetProjection>(finding.Remedies.Single());
        Assert.Equal(CaseFile.Inches("1"), remedy.Projection);
        Assert.Contains(text, remedy.Text, StringComparison.Ordinal);
        Assert.True(new LayoutEvaluator(box.Rules).Evaluate(remedy.ApplyTo(evaluation.Dwelling)).IsClean);
    }

    [Fact]
    public void MarkSheet_SetFor_IsAsStatedOrFlushWithWhatIsKnown()
    {
        Distance? SetFor(OneBox box) => Sheets.For(box.Build(), box.Rules).Rows.Single().StandsOut;
        OneBox box = Case(CaseFile.Table("setback.csv")[0], CaseFile.Inches("3/4"));
        Assert.Equal(CaseFile.Inches("3/4"), SetFor(box));
        OneBox open = box with { Box = box.Box.WithSetFor(null) };
        Assert.Equal(CaseFile.Inches("1"), SetFor(open));
        Assert.Equal(CaseFile.Inches("1/2"), SetFor(open with { Box = open.Box.WithHeight(BoxHeight.ToTop(CaseFile.Inches("36"), Datum.Subfloor)) }));
        Assert.Null(SetFor(open with { Wall = wall => wall }));
        Assert.Null(SetFor(open with { Wall = wall => wall.WithBoards(new BoardLayout().WithThickness(CaseFile.Inches("1/2"))).WithFinishes(new[] { Tiles("tile") }) }));
        Assert.Null(SetFor(open with { Box = open.Box.WithKind(BoxKind.CutIn) }));
        Assert.Contains(",1 in,", Sheets.For(open.Build(), open.Rules).ToCsv(), StringComparison.Ordinal);
    }

    internal static OneBox Placed(Finish? finish, Distance board, Distance setFor, NecEdition edition = NecEdition.Nec2023) => new()
    {
        Rules = OneBox.Only(RuleSets.UnitedStatesDwelling(edition), "box-setback"),
        Wall = wall => wall.WithBoards(new BoardLayout().WithThickness(board)).WithFinishes(finish is null ? default : new[] { finish }),
        Box = new DeviceBox(OneBox.Id, BoxPurpose.Switch)
        {
            Devices = new[] { DeviceKind.Switch },
            At = OneBox.Middle,
            Height = BoxHeight.ToTop(CaseFile.Inches("48"), Datum.Subfloor),
            SetFor = setFor,
        },
    };

    private static OneBox Case(Dictionary<string, string> row, Distance setFor, NecEdition edition = NecEdition.Nec2023)
    {
        Finish? finish = row["finish"].Length == 0 ? null : Tiles(row["finish"])
            .WithBed(CaseFile.Inches(row["bed"])).WithThickness(CaseFile.Inches(row["thickness"]))
            .WithCombustible(row["combustible"].Length == 0 ? null : bool.Parse(row["combustible"]));
        return Placed(finish, CaseFile.Inches(row["board"]), setFor, edition);
    }

    private static Fraction Surface(Dictionary<string, string> row) => CaseFile.Number(row["board"]) + CaseFile.Number(row["bed"]) + CaseFile.Number(row["thickness"]);

    // Over the middle of the wall, from 40 to 60 in.
    private static Finish Tiles(string kind) => new Finish("tiles", new FinishKind(kind), CaseFile.Inches("60"), CaseFile.Inches("84"))
        .WithBottom(new Level(CaseFile.Inches("40"), Datum.Subfloor)).WithTop(new Level(CaseFile.Inches("60"), Datum.Subfloor));

    private static DistanceRange Range(string text)
    {
        string[] ends = text.Split("..");
        return new(CaseFile.Inches(ends[0]), CaseFile.Inches(ends[^1]));
    }
}
