using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Rules;
using Xunit;
using static BoxHeights.Shorthand;

namespace BoxHeights.Tests;

/// <summary>"Quick questions" in the README: the code between the markers, and the answers that it gives there, each worked out by hand beside it here.</summary>
public sealed class ReadmeQuickTests
{
    private static readonly string Readme = Repository.Read("README.md");

    [Fact]
    public void Questions_AreTheCodeThatRunsHere()
    {
        string code = Repository.Read("tests", "BoxHeights.Tests", "ReadmeQuickTests.cs").Split("// <quick>\n")[1].Split("        // </quick>")[0];
        string here = string.Join("\n", code.TrimEnd().Split('\n').Select(line => line.Length > 8 ? line[8..] : line)) + "\n";
        Assert.Equal("using System.Collections.Generic;\nusing System.Linq;\nusing BoxHeights;\nusing BoxHeights.Rules;\nusing static BoxHeights.Shorthand;\n\nList<string> answers = [];\n" + here, Readme.Split("```csharp\n")[2].Split("```")[0]);
        string[] questions = here.Split("\n// ").Skip(1).ToArray();
        Assert.Equal(15, questions.Length);
        Assert.All(questions, question => Assert.InRange(question.Trim().Split('\n').Length - 1, 1, 3));
    }

    [Fact]
    public void Answers_InTheReadme_AreWhatTheCodeGives() => Assert.Equal(string.Join("\n", Answers().Select((answer, i) => (i + 1) + ". " + answer)) + "\n", Readme.Split("```text\n")[2].Split("```")[0]);

    // The published answers of fill are NEC Table 314.16(B)(1)'s 2.0 in³ a 14 AWG conductor, two for each device, one for all grounds; the rest is arithmetic.
    [Fact]
    public void Answers_WorkedOutByHand_AreTheSame()
    {
        List<string> answers = Answers();

        // 97-1/8 less 5/8 of board less one sheet.
        Assert.Contains("at most 48-1/2 in", answers[0], StringComparison.Ordinal);
        Assert.Equal("14-1/8 in to center above subfloor", answers[1]);
        Assert.Equal(((42m - (3.75m / 2) + 0.75m) * 25.4m).ToString("0.000", CultureInfo.InvariantCulture) + " mm", answers[2]);
        Assert.StartsWith("fill " + ((3 * 2 * 2) + (2 * 2 * 2) + 2) + " in3", answers[3], StringComparison.Ordinal);
        Assert.Equal("10-3/4 in", answers[6]);
        Assert.Equal("18-7/8 in to top above subfloor", answers[7]);
        Assert.Equal(string.Join(", ", Enumerable.Range(0, 8).Select(i => (15 + (16 * i)) + "-1/4 in to " + (16 + (16 * i)) + "-3/4 in")), answers[9]);
        Assert.Equal(string.Join(", ", Enumerable.Range(0, 6).Select(i => 8 + (16 * i) + " in")), answers[12]);
        Assert.Equal(((18 - (2 * 2) - 2) / (2 * 2)).ToString(CultureInfo.InvariantCulture), answers[14]);
    }

    private static List<string> Answers()
    {
        List<string> answers = [];
        // <quick>
        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023) + RuleSets.RoughInPractice + RuleSets.Ada2010;
        PartsCatalog parts = PartsCatalog.Generic;
        FillCounting counting = RuleSets.FillCounting(NecEdition.Nec2023);
        StudLayout studs = new StudLayout().WithSpacing(In(16));
        Distance sheet = In(48);
        Distance wall = Ft(12);
        FloorBuildup oak = FloorBuildup.Of(new FloorLayer("oak strip", In("3/4")));
        BoxSize oneGang = parts.FindBox(BoxKind.NailOn, 1).Size;
        DeviceBox box = new DeviceBox("S", BoxPurpose.Switch).WithDevices(DeviceKind.Switch).WithHeight(Height("48 in to top above subfloor"));

        // Does a box 48 in to its top clear the seam, under this ceiling and its board, over this floor?
        Ceiling ceiling = new Ceiling().WithFraming(In("97-1/8")).WithBoard(In("5/8"));
        Storey storey = new Storey("first").WithCeiling(ceiling).WithBoards(new BoardLayout().WithWidths(sheet, sheet));
        answers.Add("the top " + rules.Allowed("board-seam", box, floor: oak, storey: storey).Sure);

        // Where is the center of a one-gang box set 16 in to its top?
        answers.Add(Height("16 in to top above subfloor").AtEdge(Edge.Center, oneGang).ToString());

        // The drawing says 42 in to center above finished floor, which is 3/4 in: where is the bottom above the subfloor, in mm?
        answers.Add(Height("42 in to center AFF").AtEdge(Edge.Bottom, oneGang).From(Datum.Subfloor, oak).Value.ToString("mm"));

        // What do three 14-2 and two switches fill, and which is the smallest box for them?
        DeviceBox full = box.WithDevices(DeviceKind.Switch, DeviceKind.Switch).WithCables(Enumerable.Repeat(CableType.Parse("14-2"), 3).ToArray()).WithClamps(CableClamps.Flap);
        answers.Add(BoxFill.Most(full, counting) + "; a box of " + BoxFill.SmallestFor(full, counting, parts));

        // Where do receptacles go along 18 ft of wall, on its studs?
        answers.Add(new RoughInPlanner(rules).AlongWall(Ft(18), studs).ToString());

        // Seven lights beside a stair of fifteen risers: which treads, and where along its wall?
        StairFlight stair = new StairFlight("stair", "first", "second", 15).WithTread(In(10)).WithFirstNosing(In(28));
        StairLightPlan lights = StairLightPlanner.Plan(stair, StudPositions.Along(studs, Ft(16)), StairLightOptions.Default.WithCount(7));
        answers.Add("treads " + string.Join(", ", lights.Lights.Select(light => light.Tread + " at " + light.Center)));

        // How long is a stick from the bottom plate to the bottom of a box 16 in to its top?
        answers.Add(Height("16 in to top above subfloor").AtEdge(Edge.Bottom, oneGang).From(Datum.BottomPlate, Levels.Default).Value.ToString());

        // What does a 13-5/8 in tool set that stands on the plate and holds the box up?
        answers.Add(BoxHeight.ToBottom(In("13-5/8"), Datum.BottomPlate).AtEdge(Edge.Top, oneGang).From(Datum.Subfloor, Levels.Default).ToString());

        // How high may a switch be over a counter 25 in deep?
        Counter counter = new Counter("counter", CounterKind.Kitchen, Distance.Zero, Ft(8)).WithDepth(In(25)).WithTop(Level.Parse("36 in above finished floor"));
        answers.Add("its center " + rules.Allowed("ada-reach", DeviceKind.Switch, over: counter).Sure.RoundInward(In("1/8")));

        // Where are the faces of the studs of a 12 ft wall at 16 in?
        answers.Add(StudPositions.Along(studs, wall).Faces.ToString());

        // How large are a three-gang box and its plate?
        answers.Add(parts.FindBox(BoxKind.NailOn, 3).Size + ", " + parts.FindPlate(PlateKind.Standard, 3).Size);

        // Is a plate at 33-7/8 in clear of a door's casing?
        Opening door = new Opening("door", OpeningKind.Door, In(36), In(68)).WithCasing(In("2-1/4")).WithReveal(In("3/16"));
        RuleAllows clear = rules.AllowedAlong("trim-clearance", box, new Wall("north", wall).WithOpenings(door), oak);
        answers.Add((clear.Sure.Contains(In("33-7/8")) ? "yes" : "no") + ": the center " + clear.Sure);

        // Where do six pendants hang over 96 in?
        answers.Add(string.Join(", ", In(96).SplitCenters(6)));

        // What does this rule say, and where is it printed?
        answers.Add(rules.Row("switch-reach").Summary + " [" + rules.Row("switch-reach").Citation + "]");

        // How many 14-2 fit in 18 in³ with a switch?
        answers.Add(BoxFill.RoomFor(CableType.Parse("14-2"), box.WithVolume(Volume.Parse("18 in3")), counting, parts).ToString()!);
        // </quick>
        return answers;
    }

    // Tests have an In of their own, which the README hasn't.
    private static Distance In(decimal inches) => Shorthand.In(inches);

    private static Distance In(string inches) => Shorthand.In(inches);
}
