using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Rules;

/// <content>Judging one rule and space, with notes of what it read, and trying boxes in it.</content>
internal sealed partial class SpaceIndex
{
    /// <summary>Which of what is judged reads where a box is; null unless that is noted.</summary>
    public SpaceReaders? Readers { get; private set; }

    /// <summary>Notes from now on what is read by what is judged, for whoever moves boxes, adds some or describes some anew.</summary>
    public void NoteReaders()
    {
        Readers = new();
        if (whole is not null)
        {
            whole.Readers = new();
        }
    }

    /// <summary>Notes nothing any more: what is tried out later begins at the same places each time, so that what reads a box there is what a move of it can change.</summary>
    public void FreezeReaders()
    {
        Readers?.Freeze();
        whole?.Readers?.Freeze();
    }

    /// <summary>Judges one from where boxes are now.</summary>
    /// <param name="one">Its number.</param>
    /// <param name="state">Where boxes are.</param>
    /// <param name="isTrial">Whether only what is found counts, and not which readings dispute it.</param>
    /// <returns>How many findings there are.</returns>
    public int Judge(int one, LayoutState state, bool isTrial = false)
    {
        Readers?.Begin();
        whole!.Readers?.Begin();
        int found = judged[one].Judge(state, isTrial);
        Readers?.End(one);
        whole.Readers?.End(one);
        return found;
    }

    /// <summary>Judges one for boxes that are tried and that were not there before: only what they bear on.</summary>
    /// <param name="one">Its number.</param>
    /// <param name="state">Where boxes are.</param>
    /// <param name="tried">The boxes.</param>
    /// <param name="asked">Findings that somebody asks about: of those that it passes over it says what it said.</param>
    /// <param name="findings">Takes what is found.</param>
    public void Try(int one, LayoutState state, HashSet<int> tried, Items<Finding> asked, List<Finding> findings)
    {
        _ = judged[one].Judge(state, isTrial: true, [.. tried.Select(box => boxOf[box]!)]);
        findings.AddRange(judged[one].Findings);
        foreach (Finding finding in statement.LookedAt is null ? default : asked)
        {
            if (finding.RuleId == judged[one].Rule.Id && !statement.LookedAt!.Contains(finding.Subject))
            {
                findings.Add(finding);
            }
        }
    }
}
