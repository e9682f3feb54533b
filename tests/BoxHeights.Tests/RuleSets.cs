using System;
using BoxHeights.Rules;
using Published = BoxHeights.RuleSets;

namespace BoxHeights.Tests;

/// <summary>
/// The published sets, as every test here names them: the library's own, unless <see cref="ChangedRow"/> has a number of theirs moved.
/// It stands before the library's class of that name, so that a case looks for its row as it always does and finds the moved one.
/// </summary>
internal static class RuleSets
{
    public static RuleSet RoughInPractice => ChangedRow.In(Published.RoughInPractice);

    /// <summary>Whatever is asked of a house in the United States: its boxes, its outlets and the trade's habits.</summary>
    public static RuleSet OfAHouse => UnitedStatesDwelling(NecEdition.Nec2023) + UnitedStatesOutlets(NecEdition.Nec2023) + RoughInPractice;

    public static RuleSet Ada2010 => ChangedRow.In(Published.Ada2010);

    public static RuleSet FairHousing => ChangedRow.In(Published.FairHousing);

    public static RuleSet TypeA2009 => ChangedRow.In(Published.TypeA2009);

    public static RuleSet TypeB2009 => ChangedRow.In(Published.TypeB2009);

    public static RuleSet California => ChangedRow.In(Published.California);

    public static RuleSet CanadaDwelling => ChangedRow.In(Published.CanadaDwelling);

    public static RuleSet CanadaBarrierFree => ChangedRow.In(Published.CanadaBarrierFree);

    public static RuleSet OntarioBarrierFree => ChangedRow.In(Published.OntarioBarrierFree);

    public static RuleSet UnitedStatesDwelling(NecEdition edition) => ChangedRow.In(Published.UnitedStatesDwelling(edition));

    public static RuleSet UnitedStatesOutlets(NecEdition edition) => ChangedRow.In(Published.UnitedStatesOutlets(edition));

    public static RuleSet RoughInPracticeWith(PracticeTable own) => Published.RoughInPracticeWith(own);

    public static FillCounting FillCounting(NecEdition edition) => ChangedRow.Now is null ? Published.FillCounting(edition) : ((FillLimit)UnitedStatesDwelling(edition).Row("box-fill")).Counting;
}

/// <summary>A row in place of a published one, on the thread that asks, while something is done.</summary>
internal static class ChangedRow
{
    [ThreadStatic]
    private static Func<Rule, Rule>? now;

    /// <summary>Gives a row's changed one, or the row itself; null while nothing is changed.</summary>
    public static Func<Rule, Rule>? Now => now;

    public static void While(Func<Rule, Rule> change, Action act)
    {
        now = change;
        try
        {
            act();
        }
        finally
        {
            now = null;
        }
    }

    public static RuleSet In(RuleSet set)
    {
        if (now is not { } change)
        {
            return set;
        }

        foreach (Rule row in set.Rows)
        {
            Rule changed = change(row);
            set = ReferenceEquals(changed, row) ? set : set.With(changed);
        }

        return set;
    }
}
