using System;
using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Booklets;

/// <summary>The booklet holds every room, wall with boxes and mark; it needs nothing from outside and takes nobody's text for markup.</summary>
public sealed class BookletTests
{
    private static readonly LayoutEvaluator Evaluator = new(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice);

    private static Dwelling House { get; } = OrdinaryHouses.Make(7, 6);

    [Fact]
    public void ToHtml_OfAHouse_IsWellFormedWithUniqueIdsAndNothingFromOutside()
    {
        string html = Booklet.For(Evaluator.Evaluate(House)).ToHtml();
        XDocument page = Parsed(html);
        string[] ids = page.Descendants().Attributes("id").Select(id => id.Value).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.DoesNotContain(page.Descendants(), one => one.Name.LocalName is "script" or "img" or "link" or "iframe" or "object");
        Assert.All(page.Descendants().Attributes().Where(one => one.Name.LocalName is "href" or "src"), one => Assert.StartsWith("#", one.Value, StringComparison.Ordinal));
        Assert.All(page.Descendants().Attributes("href"), link => Assert.Contains(link.Value[1..], ids));
        Assert.Single(page.Descendants(), one => one.Name.LocalName == "h1");
    }

    [Fact]
    public void ToHtml_OfAHouse_HasEveryRoomEveryWallWithBoxesAndEveryMark()
    {
        Evaluation evaluation = Evaluator.Evaluate(House);
        XDocument page = Parsed(Booklet.For(evaluation).ToHtml());
        string[] headings = page.Descendants().Where(one => one.Name.LocalName == "h2").Select(one => one.Value).ToArray();
        Assert.Empty(House.Rooms.Select(room => room.Id).Concat(House.Outside.Select(face => face.Id)).Except(headings));
        int walls = House.Rooms.SelectMany(room => room.Walls).Concat(House.Outside.SelectMany(face => face.Walls)).Count(wall => wall.Boxes.Count > 0);
        Assert.Equal(House.Rooms.Count + walls + 2, page.Descendants().Count(one => one.Name.LocalName == "figure"));
        HashSet<string> cells = page.Descendants().Where(one => one.Name.LocalName == "td").Select(one => one.Value).ToHashSet();
        Assert.Empty(MarkSheet.For(evaluation).Rows.Select(row => row.BoxId).Except(cells));
        Assert.Equal(page.Descendants().Count(one => one.Name.LocalName == "section"), page.Descendants().Count(one => (string?)one.Attribute("class") == "caution"));
    }

    // Two rooms of 96 × 60 in: side by side they are 196 × 60 in, one below the other 96 × 124 in.
    [Theory]
    [InlineData("100", "0", true)]
    [InlineData("0", "64", false)]
    public void ToHtml_OfAStoreyWiderThanDeep_IsPrintedOnPaperLaidOnItsSide(string right, string into, bool isWide)
    {
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("first"));
        Add("a", "0", "0");
        Add("b", right, into);
        XElement sheet = Parsed(Booklet.For(Evaluator.Evaluate(house.Build())).ToHtml()).Descendants().Single(one => ((string?)one.Attribute("id"))?.StartsWith("storey-", StringComparison.Ordinal) == true);
        Assert.Equal(isWide ? "wide" : null, (string?)sheet.Attribute("class"));
        Assert.Equal(isWide ? "960" : "700", (string?)sheet.Descendants().Single(one => one.Name.LocalName == "svg").Attribute("width"));

        void Add(string id, string right, string into)
        {
            RoomBuilder room = house.Room(id, RoomKind.Hall, "first").With(one => one.WithPlace(new RoomPlace(new PlanPoint(In(right), In(into)))));
            room.Wall("n", In(96m));
            room.Wall("e", In(60m));
            room.Wall("s", In(96m));
            room.Wall("w", In(60m));
        }
    }

    [Fact]
    public void ToHtml_OfNamesThatLookLikeMarkup_ShowsThem()
    {
        DwellingBuilder house = new("</title><script>alert(1)</script>");
        house.Add(new Storey("first"));
        house.Room("<b>", RoomKind.Hall, "first").Wall("\"w\"", Distance.Parse("96 in"))
            .Add(new DeviceBox("<script>", BoxPurpose.Switch).WithAt(Distance.Parse("40 in")).WithHeight(BoxHeight.Parse("48 in to top above subfloor")));
        XDocument page = Parsed(Booklet.For(Evaluator.Evaluate(house.Build())).ToHtml());
        Assert.DoesNotContain(page.Descendants(), one => one.Name.LocalName is "script" or "b");
        Assert.Contains(page.Descendants(), one => one.Name.LocalName == "td" && one.Value == "<script>");
    }

    // Whatever is wrong with a house, its booklet is written and says so.
    [Fact]
    public void ToHtml_OfAHouseThatCannotAllBeResolved_IsWritten()
    {
        Evaluation partial = Pictures.Scenes.Walls["partial"]();
        Assert.Contains("Not drawn, since a measure is larger than anything in a house", Booklet.For(partial).ToHtml(), StringComparison.Ordinal);
        Evaluation none = new LayoutEvaluator(RuleSets.RoughInPractice, EvaluatorOptions.Default.WithMostBoxesOnASurface(1)).Evaluate(House);
        string html = Booklet.For(none).ToHtml();
        Assert.Contains("nothing of the dwelling is judged", html, StringComparison.Ordinal);
        Assert.DoesNotContain(Parsed(html).Descendants(), one => (string?)one.Attribute("class") == "p1-wall");
    }

    [Fact]
    public void OrderList_OfAHouse_CountsEveryNewBoxAndDeviceOnce()
    {
        Evaluation evaluation = Evaluator.Evaluate(House);
        DeviceBox[] boxes = evaluation.Mend().Dwelling.PlacedBoxes().Select(placed => placed.Box).Where(box => !box.Existing).ToArray();
        OrderList list = OrderList.For(evaluation);
        Assert.Equal(boxes.Length, list.Rows.Where(row => row.Part == OrderedPart.Box).Sum(row => row.Count));
        Assert.Equal(boxes.Sum(box => box.Devices.Count), list.Rows.Where(row => row.Part == OrderedPart.Device).Sum(row => row.Count));
        Assert.All(list.Rows, row => Assert.Equal(row.Count, row.Rooms.Sum(room => room.Count)));
        string order = Parsed(Booklet.For(evaluation).ToHtml()).Descendants().Single(one => (string?)one.Attribute("id") == "order").Value;
        Assert.All([list.ToMarkdown(), order], paper => Assert.Contains("cable and what fastens it, connectors and breakers aren't in it", paper, StringComparison.Ordinal));
        Assert.Equal(list.Rows.Count + 1, list.ToCsv().Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal(boxes.Any(box => box.Devices.Contains(DeviceKind.ThreeWaySwitch)), list.Rows.Any(row => row.What == DeviceKind.ThreeWaySwitch.Name));
    }

    /// <summary>The page is written as XML too, but for two tags that HTML never closes.</summary>
    private static XDocument Parsed(string html)
    {
        Assert.StartsWith("<!DOCTYPE html>\n", html, StringComparison.Ordinal);
        return XDocument.Parse(html["<!DOCTYPE html>\n".Length..].Replace("<meta charset=\"utf-8\">", "").Replace("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">", ""));
    }
}
