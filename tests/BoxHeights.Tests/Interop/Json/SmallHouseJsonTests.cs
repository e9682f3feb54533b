using System.Linq;
using BoxHeights.Interop;
using Xunit;

namespace BoxHeights.Tests.Interop.Json;

/// <summary>The sample that the package carries and the README shows.</summary>
public class SmallHouseJsonTests
{
    private static readonly string Text = Repository.Read("src", "BoxHeights", "Interop", "Json", "small-house.json");

    [Fact]
    public void SmallHouse_ShowsWallDoorCounterAndStair()
    {
        Dwelling house = DwellingJson.Read(Text);
        Wall[] walls = house.Rooms.SelectMany(room => room.Walls).ToArray();

        Assert.Contains(walls.SelectMany(wall => wall.Openings), opening => opening.Kind == OpeningKind.Door);
        Assert.Single(walls.SelectMany(wall => wall.Counters));
        Assert.NotNull(Assert.Single(house.Flights).Lights);
        Assert.Equal(3, walls.SelectMany(wall => wall.Boxes).Count());
    }

    [Fact]
    public void SmallHouse_Evaluated_HasNoFaultsAndNoViolations()
    {
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice).Evaluate(DwellingJson.Read(Text));

        Assert.False(evaluation.HasFaults, evaluation.ToText());
        Assert.False(evaluation.HasViolations, evaluation.ToText());
    }

    [Fact]
    public void Readme_ShowsTheSample() =>
        Assert.Contains("```json\n" + Text.ReplaceLineEndings("\n") + "```", Repository.Read("README.md").ReplaceLineEndings("\n"), System.StringComparison.Ordinal);
}
