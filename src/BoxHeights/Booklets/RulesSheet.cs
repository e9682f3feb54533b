using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>The last sheet: every rule that was applied, where it comes from, and what no rule looks at.</summary>
internal static class RulesSheet
{
    public static void Write(HtmlPage page, Evaluation report)
    {
        page.Begin("The rules used", "rules");
        List<string[]> rows = [];
        foreach (Rule rule in report.State.Rules.Set.Rows)
        {
            if (rule is HabitRule)
            {
                continue;
            }

            rows.Add([rule.Id, "must be " + rule.Summary, rule.Citation.ToString(), rule.LeavesOut ?? ""]);
        }

        page.Table("Rules " + report.RuleSetFingerprint, ["rule", "what it asks", "source", "leaves out"], rows);
        page.List("Not looked at by any rule here", report.NotChecked);
        page.End();
    }
}
