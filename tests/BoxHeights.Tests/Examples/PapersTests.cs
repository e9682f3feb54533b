#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Interop;
using WholeHouse;
using BoxHeights.Tests.Output;
using BoxHeights.Tests.Pictures;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>What the example's command line asks for, and the papers that it writes.</summary>
public class PapersTests
{
    private static readonly RuleSet Usual = RuleSets.OfAHouse;
    private static readonly string[] OddIds = ["..", "a:b", "a b", "A-B", "con"];
    private static readonly Dwelling House = DwellingJson.Read(Repository.Read("examples", "WholeHouse", "house.json"));

    [Fact]
    public void Papers_OfTheHouse_AreOneForEachRoomAndTheRestForTheWhole()
    {
        IReadOnlyList<(string Name, string Text)> papers = Written(House);
        string[] rooms = House.Rooms.Select(room => room.Id).Concat(House.Outside.Select(face => face.Id)).Select(id => "marks-" + id + ".md").ToArray();
        Assert.Equal(["causes.txt", "story-pole.md", "punch-list.md", "order.md", "ceilings.md", "cutouts.md", "booklet.html", "pre-inspection.md", .. rooms], papers.Select(paper => paper.Name));
        string kitchen = papers.Single(paper => paper.Name == "marks-kitchen.md").Text;
        Assert.StartsWith("# Marks: House at Alder Bend, kitchen\n", kitchen, StringComparison.Ordinal);
        Assert.Contains("| K1 |", kitchen, StringComparison.Ordinal);
        Assert.DoesNotContain("| P1 |", kitchen, StringComparison.Ordinal);
    }

    // Whoever has only the sheet sets the mended house, the lights high along the stair too: in it nothing is found.
    [Fact]
    public void Marks_OfTheHouse_ReadBack_AreTheMendedHouse() =>
        Assert.Empty(new LayoutEvaluator(Usual).Evaluate(MarkSheet.For(new LayoutEvaluator(Usual).Evaluate(House)).ToDwelling()).Findings);

    [Fact]
    public void Marks_OfAllRooms_AreTheWholeSheet()
    {
        MarkSheet whole = Sheets.For(House, Usual);
        IEnumerable<string> rooms = House.Rooms.Select(room => room.Id).Concat(House.Outside.Select(face => face.Id));
        Assert.Equal(whole.Rows, rooms.SelectMany(id => whole.ForRoom(id).Rows));
        Assert.Empty(whole.ForRoom("bed").Rows);
        Assert.Throws<ArgumentNullException>(() => whole.ForRoom(null!));
    }

    [Fact]
    public void Names_OfRoomsThatAreNoFileNames_StayInTheirFolderAndApart()
    {
        Dwelling odd = new Dwelling("odd").WithStoreys(new[] { new Storey("first") })
            .WithRooms(OddIds.Select(id => new Room(id, RoomKind.Hall, "first")).ToArray());
        Assert.Equal(["marks---.md", "marks-a-b.md", "marks-a-b-2.md", "marks-A-B-3.md", "marks-con.md"], Written(odd).SkipWhile(paper => !paper.Name.StartsWith("marks-", StringComparison.Ordinal)).Select(paper => paper.Name));
    }

    [Fact]
    public void Request_WithoutArguments_IsTheUsualOne()
    {
        Request request = Request.Parse([]);
        Assert.Equal(Usual.Fingerprint, request.Rules.Fingerprint);
        Assert.EndsWith("house.json", request.File, StringComparison.Ordinal);
        Assert.Null(request.Folder);
    }

    [Fact]
    public void Request_WithEverything_IsReadWhole()
    {
        Request request = Request.Parse(["--edition", "2017", "mine.json", "--rules", "california", "--rules", "ada", "--out", "papers", "--plan"]);
        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2017) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2017) + RuleSets.RoughInPractice + RuleSets.Ada2010 + RuleSets.California;
        Assert.Equal(("mine.json", rules.Fingerprint, "papers", true), (request.File, request.Rules.Fingerprint, request.Folder, request.Plan));
    }

    [Theory]
    [InlineData("ada", "ada-reach")]
    [InlineData("fair-housing", "fair-housing-reach")]
    [InlineData("type-a", "type-a-reach")]
    [InlineData("type-b", "type-b-reach")]
    [InlineData("california", "california-reach")]
    public void Request_ForAReachDocument_AddsItsRow(string document, string row) => Assert.NotNull(Request.Parse(["--rules", document]).Rules.Row(row));

    [Theory]
    [InlineData("ADA")]
    [InlineData("Type-A")]
    public void Request_ForAReachDocument_TakesAnyCase(string document) =>
        Assert.Equal(Request.Parse(["--rules", document.ToLowerInvariant()]).Rules, Request.Parse(["--rules", document]).Rules);

    [Fact]
    public void Request_ForHelp_IsTakenAsThat()
    {
        Assert.True(Request.Parse(["mine.json", "--help"]).Help);
        Assert.False(Request.Parse([]).Help);
        Assert.Contains("--help", Request.Usage, StringComparison.Ordinal);
    }

    [Fact]
    public void Request_NamingAFolder_IsToldSo() =>
        Assert.Contains("is a folder", Assert.Throws<ArgumentException>(() => Request.Parse([System.IO.Path.GetTempPath()])).Message, StringComparison.Ordinal);

    [Fact]
    public void Write_OverAnEarlierHouse_TakesItsSheetsAwayAndNothingElse()
    {
        string folder = System.IO.Directory.CreateTempSubdirectory("papers").FullName;
        try
        {
            string Full(string name) => System.IO.Path.Combine(folder, name);
            System.IO.File.WriteAllText(Full("marks-of-mine.md"), "mine");
            Papers.Write(folder, [("causes.txt", "1"), ("marks-den.md", "old"), ("marks-hall.md", "old")]);
            System.IO.File.AppendAllText(Full(Papers.List), "../marks-away.md\n");
            Papers.Write(folder, [("causes.txt", "2"), ("marks-hall.md", "new")]);
            Assert.Equal(["causes.txt", "marks-hall.md", "marks-of-mine.md", Papers.List], System.IO.Directory.GetFiles(folder).Select(System.IO.Path.GetFileName).Order(StringComparer.Ordinal));
            Assert.Equal(("2", "new"), (System.IO.File.ReadAllText(Full("causes.txt")), System.IO.File.ReadAllText(Full("marks-hall.md"))));
            Assert.Equal(["causes.txt", "marks-hall.md"], System.IO.File.ReadAllLines(Full(Papers.List)));
        }
        finally
        {
            System.IO.Directory.Delete(folder, recursive: true);
        }
    }

    // Of a storey with more boxes than its picture has room for labels each note under it is found in it.
    [Fact]
    public void Notes_UnderACrowdedPicture_HaveTheirMarksInIt()
    {
        SvgReader svg = new(StoreyPicture.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(House), "first").ToSvg());
        string[] Of(string part) => svg.Texts().Where(text => text.Part == part).Select(text => text.Text).Order().ToArray();
        Assert.True(Of("bh-note-number").Length > 2);
        Assert.Equal(Of("bh-note-number"), Of("bh-note-mark"));
        Assert.Empty(svg.Clashes());
    }

    [Theory]
    [InlineData("--edition", "1999")]
    [InlineData("--edition", null)]
    [InlineData("--rules", "mine")]
    [InlineData("--out", null)]
    [InlineData("--loud", null)]
    [InlineData("one.json", "two.json")]
    public void Request_NotUnderstood_SaysWhat(string first, string? second)
    {
        string[] arguments = second is null ? [first] : [first, second];
        Assert.Contains(arguments[^1], Assert.Throws<ArgumentException>(() => Request.Parse(arguments)).Message, StringComparison.Ordinal);
    }

    private static IReadOnlyList<(string Name, string Text)> Written(Dwelling dwelling) =>
        Papers.Of(dwelling, new LayoutEvaluator(Usual).Evaluate(dwelling), Sheets.For(dwelling, Usual));
}
#endif
