using System;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests;

/// <summary>The README's example is the code between the markers below, and what it prints there is what this code prints.</summary>
public class ReadmeTests
{
    private static readonly string Readme = Repository.Read("README.md");

    [Fact]
    public void Example_IsTheCodeThatRunsHere() => Assert.Equal("using BoxHeights;\n\n" + CodeHere(), Block("csharp", 0));

    [Fact]
    public void ExampleOutput_IsWhatTheCodePrints() => Assert.Equal(Example(), Block("text", 0));

    [Fact]
    public void NotChecked_AgreesWithTheEvaluation()
    {
        string[] listed = Section("What isn't checked").Split('\n').Where(line => line.StartsWith("- ", StringComparison.Ordinal)).Select(line => line[2..]).ToArray();
        Dwelling empty = new DwellingBuilder("Empty").Build();
        Assert.Equal(new LayoutEvaluator(RuleSet.Empty).Evaluate(empty).NotChecked.ToArray(), listed);
    }

    [Fact]
    public void Readme_NeverSpeaksOfApprovalButToDenyIt()
    {
        string[] lines = Readme.Split('\n').Where(line => line.Contains("approv", StringComparison.OrdinalIgnoreCase)).ToArray();
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.Matches("never an approval|not an approval", line));
    }

    private static string Example()
    {
        // <example>
        Distance sheet = Distance.Parse("48 in");
        DwellingBuilder house = new DwellingBuilder("Cabin").Add(new Storey("first")
            .WithCeiling(new Ceiling().WithFraming(Distance.Parse("97-1/8 in")).WithBoard(Distance.Parse("5/8 in")))
            .WithBoards(new BoardLayout().WithWidths(sheet, sheet)));
        RoomBuilder hall = house.Room("hall", RoomKind.Hall, "first")
            .With(room => room.WithFloor(FloorBuildup.Of(new FloorLayer("oak strip", Distance.Parse("3/4 in")))));
        DeviceBox box = new DeviceBox("S1", BoxPurpose.Switch).WithDevices(DeviceKind.Switch)
            .WithAt(Distance.Parse("33-7/8 in")).WithHeight(BoxHeight.Parse("48 in to top AFF"));
        hall.Wall("north", Distance.Parse("12 ft")).Add(box).Add(box.WithId("S2").WithAt(Distance.Parse("8 ft 1-7/8 in")));

        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;
        string text = new LayoutEvaluator(rules).Evaluate(house.Build()).ToText();
        // </example>
        return text;
    }

    private static string CodeHere()
    {
        string code = Repository.Read("tests", "BoxHeights.Tests", "ReadmeTests.cs");
        string between = code.Split("// <example>\n")[1].Split("        // </example>")[0];
        return string.Join("\n", between.TrimEnd().Split('\n').Select(line => line.Length > 8 ? line[8..] : line)) + "\n";
    }

    private static string Block(string language, int index) => Readme.Split("```" + language + "\n")[index + 1].Split("```")[0];

    private static string Section(string heading) => Readme.Split("## " + heading + "\n")[1].Split("\n## ")[0];
}
