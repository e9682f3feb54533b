using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Wordings;

/// <summary>Whatever is found, offered or left unjudged can be said in another language: no English is glued together behind a catalog's back.</summary>
public class OtherLanguageTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse + RuleSets.Ada2010;

    private static readonly Regex Measure = new(@"\d (in|ft|mm|in3|cm3)\b");
    private static readonly Regex Name = new("^[a-z][A-Za-z]*$");
    private static readonly Regex Word = new("[A-Za-z]{2,}");

    public static TheoryData<string> Kinds => new(PlantedMistakes.Kinds.Keys);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Finding_OfAPlantedMistake_HoldsNoWordOutsideTemplates(string kind)
    {
        if (PlantedMistakes.Kinds[kind](31337, 3) is not { } planted)
        {
            return;
        }

        Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(planted.House);
        List<Wording> all = [.. evaluation.Findings.Select(finding => finding.Wording), .. evaluation.Causes.SelectMany(cause => cause.Remedies).Select(remedy => remedy.Wording),
            .. evaluation.Judgements.Where(judgement => judgement.Reason is not null).Select(judgement => judgement.Reason!)];
        string names = NamesOf(planted.House);
        Assert.NotEmpty(all);
        string glued = string.Join("\n", all.SelectMany(one => Glued(one, names)).Distinct());
        Assert.True(glued.Length == 0, glued);
    }

    /// <summary>Words where only names belong, and measures where only words belong.</summary>
    private static IEnumerable<string> Glued(Wording wording, string names)
    {
        if (wording.Units is null && Measure.IsMatch(wording.Template))
        {
            yield return "a measure in the template \"" + wording.Template + "\"";
        }

        foreach (WordingArgument argument in wording.Arguments)
        {
            if (!Name.IsMatch(argument.Name))
            {
                yield return "a place without a name in \"" + wording.Template + "\"";
            }

            IEnumerable<string> found = argument.Value switch
            {
                Wording inner => Glued(inner, names),
                string text => Word.Matches(text).Select(word => word.Value).Where(word => !names.Contains(word, System.StringComparison.Ordinal))
                    .Select(word => "\"" + word + "\" of \"" + text + "\" as {" + argument.Name + "} in \"" + wording.Template + "\""),
                _ => [],
            };
            foreach (string one in found)
            {
                yield return one;
            }
        }
    }

    /// <summary>All that is a name: what the description calls its parts, and the rows and documents.</summary>
    private static string NamesOf(Dwelling house) => string.Join("\n",
    [
        .. house.Storeys.Select(storey => storey.Id), .. house.Rooms.Select(room => room.Id + " " + string.Join(" ", room.Walls.Select(wall => wall.Id + " " + string.Join(" ", PartsOf(wall)))) + " "
            + string.Join(" ", room.Fixtures.Select(fixture => fixture.Id)) + " " + string.Join(" ", room.Freestanding.Select(one => one.Id))),
        .. house.Outside.Select(face => face.Id + " " + string.Join(" ", face.Walls.Select(wall => wall.Id + " " + string.Join(" ", PartsOf(wall))))), .. house.Flights.Select(flight => flight.Id),
        .. house.PlacedBoxes().Select(placed => placed.Box.Id + " " + placed.Address), .. Rules.Rows.Select(rule => rule.Id + " " + rule.Citation), "in mm cm3 in3 ft AWG layout-fault",
    ]);

    private static IEnumerable<string> PartsOf(Wall wall) =>
        wall.Openings.Select(one => one.Id).Concat(wall.Finishes.Select(one => one.Id)).Concat(wall.Coverings.Select(one => one.Id)).Concat(wall.Counters.Select(one => one.Id));
}
