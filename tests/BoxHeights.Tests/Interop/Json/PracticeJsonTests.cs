using System;
using BoxHeights.Interop;
using Xunit;

namespace BoxHeights.Tests.Interop;

/// <summary>A builder's own heights as JSON.</summary>
public sealed class PracticeJsonTests
{
    private const string Crew = """
        {
          "name": "North crew",
          "heights": [
            { "purpose": "switch", "height": "46 in to top above subfloor", "noLower": "44 in to top above subfloor", "noHigher": "47 in to top above subfloor" },
            { "purpose": "wine-cooler", "height": "20 in to center above finished floor" }
          ]
        }
        """;

    [Fact]
    public void Read_ThenWrite_IsTheSame()
    {
        PracticeTable table = PracticeJson.Read(Crew);
        Assert.Equal(table, PracticeJson.Read(PracticeJson.Write(table)));
        Assert.Equal(["switch", "wine-cooler"], table.Heights.Select(height => height.Purpose.Name));
    }

    [Fact]
    public void Usual_Written_IsReadBack() => Assert.Equal(PracticeTable.Usual, PracticeJson.Read(PracticeJson.Write(PracticeTable.Usual)));

    [Theory]
    [InlineData("""{ "heights": [] }""", "$", "name")]
    [InlineData("""{ "name": "x", "heights": [ { "purpose": "switch", "height": "48 in above subfloor (edge unstated)" } ] }""", "$.heights[0].height", "names its edge")]
    [InlineData("""{ "name": "x", "heights": [ { "purpose": "switch", "height": "48 in to top above subfloor", "low": "x" } ] }""", "$.heights[0].low", "no member")]
    public void Read_WhatIsNoTable_SaysWhereAndWhy(string json, string path, string reason)
    {
        BoxHeightsJsonException fault = Assert.Throws<BoxHeightsJsonException>(() => PracticeJson.Read(json));
        Assert.Equal(path, fault.Path);
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void RoughInPracticeWith_OwnTable_JudgesByIt()
    {
        RuleSet rules = RuleSets.RoughInPracticeWith(PracticeJson.Read(Crew));
        Dwelling dwelling = new Dwelling("test").WithStoreys(new[] { new Storey("first") }).WithRooms(new[]
        {
            new Room("hall", RoomKind.Hall, "first").WithWalls(new[]
            {
                new Wall("north", Distance.FromInches(96m)).WithBoxes(new[]
                {
                    new DeviceBox("S1", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(Distance.FromInches(40m)).WithHeight(BoxHeight.Parse("48 in to top above subfloor")),
                }),
            }),
        });
        Assert.True(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(dwelling).IsClean);
        Finding finding = Assert.Single(new LayoutEvaluator(rules).Evaluate(dwelling).Findings);
        Assert.Equal("switch-height", finding.RuleId);
        Assert.Equal("North crew", finding.Citation.Document);
        Assert.Equal(BoxHeight.Parse("46 in to top above subfloor"), Assert.IsType<MoveBoxes>(finding.Remedies[0]).Height);
    }

    [Fact]
    public void RoughInPracticeWith_TwoHeightsForOnePurpose_Throws()
    {
        PracticeHeight one = new(BoxPurpose.Switch, BoxHeight.Parse("46 in to top above subfloor"));
        Assert.Throws<ArgumentException>(() => RuleSets.RoughInPracticeWith(new PracticeTable("x").WithHeights(new[] { one, one })));
    }
}
