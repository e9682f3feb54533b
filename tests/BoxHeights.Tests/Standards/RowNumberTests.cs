using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Every number of every published row has a case on each side: moved a little up or down, the row breaks one, or can't be meant any more.</summary>
public sealed class RowNumberTests
{
    private const string EachOrNone = "each of them has one or has none: the count isn't asked";

    /// <summary>Numbers that stand in one place of the library for every row that goes by them, and the row whose cases hold them.</summary>
    private static readonly Dictionary<string, string> OfSeveralRows = new()
    {
        // What every receptacle is rated for that has to be there.
        ["LowestVolts 110"] = "wall-outlets",
        ["HighestVolts 127"] = "wall-outlets",
        ["Amperes[0] 15"] = "wall-outlets",
        ["Amperes[1] 20"] = "wall-outlets",

        // Sills that a receptacle goes under, and how near a divider meets a wall.
        ["ClearBelow 20 in"] = "wall-outlets",
        ["ClearBelow 58 in"] = "counter-outlets",
        ["MeetsWithin 4 in"] = "wall-outlets",
    };

    /// <summary>Numbers that are seen in marks and places alone, which are rounded: they are moved a quarter of an inch.</summary>
    private static readonly string[] Rounded = ["Preferred.Value", "Box.Height.Value", "From", "BetweenPlates", "BesideThings", "disposal-switch Within"];

    /// <summary>Numbers that no case can hold, and why. One that a case holds after all is told, as is one that no row has.</summary>
    private static readonly (string Row, string Number, string Side, string Why)[] Exceptions =
    [
        .. Unseen("usual-light usual-closet-light usual-thermostat usual-chime", "From 0 in", "it isn't set off openings"),
        .. Unseen("island-outlets island-provision", "Of.LongSide 0 in", "none: a top of any length is asked for one"),
        .. Unseen("island-outlets island-provision", "Of.ShortSide 0 in", "none: a top of any width is asked for one"),
        .. Unseen("island-provision", "Of.OverhangAtMost 0 in", "nothing below the top counts, however far that reaches out"),
        .. Unseen("bath-receptacle canada-bath-receptacle washer-receptacle dryer-receptacle refrigerator-receptacle dishwasher-receptacle range-receptacle hvac-receptacle outdoor-unit-receptacle entrance-switch", "Count.Least 1", EachOrNone, "up"),
    ];

    [Fact]
    public void Number_OfEveryPublishedRow_HasACaseOnEachSide()
    {
        (Rule Row, RowNumber Number)[] numbers = [.. Numbers()];
        Assert.True(numbers.Length >= 480, numbers.Length + " numbers");
        HashSet<string> all = [.. numbers.Select(one => one.Row.Id + " " + one.Number)];
        Assert.DoesNotContain(Exceptions, one => !all.Contains(one.Row + " " + one.Number));

        // One in ten, spread over all rows, or all of them.
        int each = numbers.Length / Tries.Of(numbers.Length);
        List<string> wrong = [];
        foreach ((Rule row, RowNumber number) in numbers.Where((_, i) => i % each == 0))
        {
            foreach ((string side, int sign) in new[] { ("up", 1), ("down", -1) })
            {
                if (IsHeld(row, number, sign) == Exceptions.Any(one => (one.Row, one.Number, one.Side) == (row.Id, number.ToString(), side)))
                {
                    wrong.Add(row.Id + " " + number + " " + side);
                }
            }
        }

        Assert.Empty(wrong);
    }

    /// <summary>The numbers of each row, once for all editions in which it says the same; those of another reading only where it differs.</summary>
    private static IEnumerable<(Rule Row, RowNumber Number)> Numbers()
    {
        HashSet<string> seen = [];
        foreach (Rule row in PublishedRows.Rows)
        {
            string[] own = [.. RowNumber.Of(row).Select(number => number.ToString())];
            foreach (RowNumber number in row.Readings.SelectMany(reading => RowNumber.Of(reading.Rule).Where(number => !own.Contains(number.ToString()))).AsEnumerable().Concat(RowNumber.Of(row)))
            {
                string? shared = SharedBy(number);
                if (shared is null ? seen.Add(row.Id + " " + number + " of " + row.Numbers) : row.Id == OfSeveralRows[shared] && seen.Add(shared))
                {
                    yield return (row, number);
                }
            }
        }
    }

    private static bool IsHeld(Rule row, RowNumber number, int sign)
    {
        decimal steps = sign * (Rounded.Contains(number.Name) || Rounded.Contains(row.Id + " " + number.Name) ? 4 : 1);
        Dictionary<Rule, Rule> changed = [];
        try
        {
            _ = RuleSet.Empty.With(Changed(row));
        }
        catch (ArgumentException)
        {
            return true;
        }

        return RowCase.ByRule[row.Id].Any(one => !one.Holds(rule => rule.Id == row.Id && (SharedBy(number) is not null || rule.Numbers == row.Numbers) ? Changed(rule) : rule));

        Rule Changed(Rule rule)
        {
            if (!changed.TryGetValue(rule, out Rule? known))
            {
                known = Moved(rule with { Readings = rule.Readings.Select(reading => reading with { Rule = Moved(reading.Rule) }) });
                changed.Add(rule, known);
            }

            return known;
        }

        Rule Moved(Rule rule) => RowNumber.Of(rule).FirstOrDefault(one => one.ToString() == number.ToString())?.Moved(rule, steps) ?? rule;
    }

    private static string? SharedBy(RowNumber number) => OfSeveralRows.Keys.FirstOrDefault(end => number.ToString().EndsWith(end, StringComparison.Ordinal));

    private static IEnumerable<(string Row, string Number, string Side, string Why)> Unseen(string rows, string number, string why, string sides = "up down") =>
        rows.Split(' ').SelectMany(row => sides.Split(' ').Select(side => (row, number, side, why)));
}
