#if !NETSTANDARD_ASSET
using System;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Pictures;
using BoxHeights.Tests.Standards;
using Microsoft.DotNet.Interactive.Formatting;
using Xunit;

namespace BoxHeights.Tests.Interop;

/// <summary>Values as a notebook's own formatter shows them: it knows nothing of this library but the name of an attribute.</summary>
public sealed class NotebookFacesTests
{
    private const string Html = "text/html";

    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    private static Evaluation Evaluation { get; } = Evaluator.Evaluate(OrdinaryHouses.Make(7, 6));

    [Fact]
    public void Measures_AreWords()
    {
        Assert.Equal("<span>48-3/8 in</span>", Distance.Parse("48-3/8 in").ToDisplayString(Html));
        Assert.Equal("<span>16 in to top above subfloor</span>", BoxHeight.Parse("16 in to top above subfloor").ToDisplayString(Html));
        Assert.Equal("48-3/8 in", Distance.Parse("48-3/8 in").ToDisplayString("text/plain"));
        Assert.Equal(Html, Formatter.GetPreferredMimeTypesFor(typeof(Distance)).First());
    }

    // As an object tree a house of this size takes some hundred thousand characters.
    [Fact]
    public void Evaluation_IsItsFirstPage()
    {
        string shown = Evaluation.ToDisplayString(Html);
        string text = Parsed(shown).Value;
        Assert.All(Evaluation.Causes, cause => Assert.Contains(cause.Title, text, StringComparison.Ordinal));
        Assert.Contains(Scope.Caution, text, StringComparison.Ordinal);
        Assert.DoesNotContain("dni-treeview\"", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_AreATable()
    {
        Items<Finding> findings = Scenes.Walls["forty-findings"]().Findings;
        XElement shown = Parsed(findings.ToDisplayString(Html));
        Assert.True(findings.Count > 20);
        Assert.Equal(findings.Count + 1, shown.Descendants("tr").Count());
        Assert.Contains(shown.Descendants("td"), cell => cell.Value == findings[0].Subject);
        Assert.All(shown.Descendants("tr").Skip(1).Zip(findings), row => Assert.EndsWith(": " + row.First.Elements("td").ElementAt(2).Value, row.Second.Message, StringComparison.Ordinal));
        Assert.Equal("<span>none</span>", Items<Finding>.None.ToDisplayString(Html));
    }

    [Fact]
    public void WallsAndRooms_ArePicturesWithIdsOfTheirOwn()
    {
        Room room = Evaluation.Dwelling.Rooms.First(one => one.Walls.Count > 1);
        XElement both = Parsed(Evaluation.Wall(room.Id + "/" + room.Walls[0].Id).ToDisplayString(Html) + Evaluation.Wall(room.Id + "/" + room.Walls[1].Id).ToDisplayString(Html)
            + Evaluation.Room(room.Id).ToDisplayString(Html));
        Assert.Equal(3, both.Descendants().Count(one => one.Name.LocalName == "svg"));
        string[] ids = both.Descendants().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Distinct(StringComparer.Ordinal), ids);
    }

    [Fact]
    public void Sheets_AreTables()
    {
        MarkSheet marks = MarkSheet.For(Evaluation);
        XElement shown = Parsed(marks.ToDisplayString(Html));
        Assert.NotEmpty(marks.Rows);
        Assert.Empty(marks.Rows.Select(row => row.BoxId).Except(shown.Descendants("td").Select(cell => cell.Value)));
        Assert.NotEmpty(Parsed(StoryPole.For(marks).ToDisplayString(Html)).Descendants("table"));
        Assert.NotEmpty(Parsed(OrderList.For(Evaluation).ToDisplayString(Html)).Descendants("table"));
    }

    // Nothing was measured in this house, nothing is in an empty one.
    [Fact]
    public void Sheets_WithoutARow_SayNone()
    {
        Evaluation empty = Evaluator.Evaluate(new Dwelling("empty"));
        object[] sheets = [PunchList.For(Evaluation), PunchList.For(empty), CeilingPlan.For(empty), CutoutList.For(empty), OrderList.For(empty), StoryPole.For(MarkSheet.For(empty)), MarkSheet.For(empty)];
        Assert.All(sheets, sheet => Assert.Equal("<span>none</span>", sheet.ToDisplayString(Html)));
    }

    [Fact]
    public void Names_ThatLookLikeMarkup_StayText()
    {
        DwellingBuilder house = new("<script>alert(1)</script>");
        house.Add(new Storey("first"));
        house.Room("<b>", RoomKind.Hall, "first").Wall("w", Distance.Parse("96 in"))
            .Add(new DeviceBox("<script>", BoxPurpose.Switch).WithAt(Distance.Parse("40 in")).WithHeight(BoxHeight.Parse("60 in to top above subfloor")));
        Dwelling dwelling = house.Build();
        Assert.DoesNotContain("<script>", Evaluator.Evaluate(dwelling).ToDisplayString(Html), StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", dwelling.ToDisplayString(Html), StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;", dwelling.ToDisplayString(Html), StringComparison.Ordinal);
    }

    /// <summary>What is shown, without the style that the notebook adds to lists of its own.</summary>
    private static XElement Parsed(string html) => XElement.Parse("<div>" + html.Replace("&nbsp;", " ", StringComparison.Ordinal) + "</div>");
}
#endif
