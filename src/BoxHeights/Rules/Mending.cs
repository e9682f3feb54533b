using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights.Rules;

/// <summary>Carries remedies out together, round by round, until none is left that helps.</summary>
/// <remarks>
/// A round takes one remedy for each box or lacking outlet, applies all that don't touch the same box, and keeps them if less is found and nothing new; where they get
/// in each other's way it keeps one after another. Each round that is kept finds less, so there are at most as many as findings.
/// </remarks>
internal sealed class Mending
{
    private readonly Evaluation before;
    private readonly HashSet<string> refused = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<(int? Cause, Remedy Remedy)>> done = new(StringComparer.Ordinal);
    private readonly CancellationToken cancellation;
    private Evaluation now;
    private Evaluation whenRefused;

    public Mending(Evaluation before, CancellationToken cancellation)
    {
        this.cancellation = cancellation;
        this.before = before;
        now = before;
        whenRefused = before;
    }

    public MendedDwelling Carry()
    {
        // Where a box goes comes before how far out it stands and how much it holds, which may be another matter there; and what stands is set right before anything is added, which
        // takes its place and height from those beside it. What brings another finding comes after what brings none.
        while (Round(IsOfPlace) || Round(IsOfBox) || Round(cause => !IsOfLack(cause), inNeed: true) || Round(IsOfLack, inNeed: true) || HasMoreToTry())
        {
        }

        if (now != before && now.Findings.Exists(finding => finding.Space is not null))
        {
            // What is found in the end may be disputed; of what the rounds tried out on the way nobody asked that.
            now = now.WithBoxesOf(now.Dwelling, cancellation);
        }

        return new(before, now, Changes());
    }

    /// <summary>What was refused may do once the rest is mended: it is tried again, as long as that mends something.</summary>
    private bool HasMoreToTry()
    {
        bool again = refused.Count > 0 && now != whenRefused;
        refused.Clear();
        whenRefused = now;
        return again;
    }

    private static bool IsOfPlace(Cause cause) => !cause.IsLack && cause.Findings[0].Limit is null;

    private static bool IsOfBox(Cause cause) => cause.Findings[0].Limit is not null;

    private static bool IsOfLack(Cause cause) => cause.IsLack;

    private bool Round(Predicate<Cause> which, bool inNeed = false)
    {
        List<(Cause Cause, Remedy Remedy)> batch = [];
        TakenIds taken = new(now.Dwelling);
        foreach (Cause cause in now.Causes)
        {
            if (!which(cause) || (cause.IsLack && HasToWait(cause, taken)))
            {
                continue;
            }

            HashSet<string> mended = new(StringComparer.Ordinal);
            foreach (Remedy remedy in cause.FindRemedies(cancellation))
            {
                // Remedies of one box are ways to choose from, best first; those of others belong together.
                Remedy one = remedy is AddBox more && cause.Findings[0].Space!.IsApart ? taken.Apart(more) : remedy;
                List<string> about = one.TouchedIds();
                if (one is not NoneFound && (inNeed || one.Brings.Count == 0) && !refused.Contains(Name(cause, one)) && !mended.Overlaps(about) && !taken.Overlap(about))
                {
                    mended.UnionWith(about);
                    batch.Add((cause, one));
                }
            }

            taken.Take(mended, cause);
        }

        return batch.Count > 0 && TryParts(batch);
    }

    /// <summary>
    /// Whether what would be added has an id that is taken in this round, and may be what already answers it: it waits for the next round, and isn't tried in this one.
    /// The lacks of one room ask for the same free id, and trying each in every round grew with their cube.
    /// </summary>
    private bool HasToWait(Cause cause, TakenIds taken)
    {
        SpaceAnswer lacking = cause.Findings[0].Space!;
        if (taken.Count == 0)
        {
            return false;
        }

        if (lacking.FirstAdded is { } first)
        {
            return taken.By(first()) is { } other && !(lacking.IsApart && other == cause.RuleId);
        }

        lock (now.State.Gate)
        {
            return lacking.Adds.Exists(placed => taken.By(placed.Box.Id) is not null);
        }
    }

    /// <summary>Keeps all of some remedies, or where they get in each other's way what can be kept of each half, one half after the other: few in the way of many don't make each be tried by itself.</summary>
    private bool TryParts(List<(Cause Cause, Remedy Remedy)> some)
    {
        if (TryAll(some))
        {
            return true;
        }

        if (some.Count == 1)
        {
            return false;
        }

        int half = some.Count / 2;
        return TryParts(some.GetRange(0, half)) | TryParts(some.GetRange(half, some.Count - half));
    }

    /// <summary>Keeps some remedies if less is found with them, and nothing new.</summary>
    private bool TryAll(List<(Cause Cause, Remedy Remedy)> some)
    {
        Evaluation then = now.WithBoxesOf(Applied(some), cancellation, isTrial: true);
        if (!IsBetter(then, some.Count == 1 ? some[0] : null))
        {
            if (some.Count == 1)
            {
                refused.Add(Name(some[0].Cause, some[0].Remedy));
            }

            return false;
        }

        foreach ((Cause cause, Remedy remedy) in some)
        {
            foreach (string id in remedy.TouchedIds())
            {
                done.ListOf(id).Add((NumberOf(cause), remedy));
            }
        }

        now = then;
        return true;
    }

    /// <summary>The dwelling with some remedies carried out, none of which touches what another does: in one go, since each of them alone goes through the whole dwelling.</summary>
    private Dwelling Applied(List<(Cause Cause, Remedy Remedy)> some)
    {
        Dictionary<string, Remedy> changing = new(StringComparer.Ordinal);
        List<PlacedBox> added = [];
        foreach ((_, Remedy remedy) in some)
        {
            foreach (string id in remedy.ChangedIds)
            {
                changing[id] = remedy;
            }

            added.AddRange(remedy is AddBox more ? more.Placed : default);
        }

        Dwelling changed = changing.Count == 0 ? now.Dwelling : now.Dwelling.WithBoxes(box => changing.TryGetValue(box.Id, out Remedy? remedy) ? remedy.Changed(box) : box);
        return added.Count == 0 ? changed : changed.WithBoxes(added);
    }

    /// <summary>
    /// Whether less is found, and nothing new; or with one that is needed less of what a document asks for, and nothing new that this waits for: what it says that it brings, or
    /// how boxes look together.
    /// </summary>
    private bool IsBetter(Evaluation then, (Cause Cause, Remedy Remedy)? needed)
    {
        Dictionary<(string, string, LayoutFault?), Finding> known = [];
        foreach (Finding finding in now.Findings)
        {
            known[finding.About] = finding;
        }

        Items<Finding> added = then.Findings.Where(finding => !known.TryGetValue(finding.About, out Finding? one) || one.Verdict < finding.Verdict || one.Severity < finding.Severity);
        return added.Count == 0 ? then.Findings.Count < now.Findings.Count
            : needed is var (cause, remedy) && Violations(then) < Violations(now) && !added.Exists(finding =>
                finding.Fault is not null || finding.IsViolation || !now.Rules.Row(finding.RuleId).GivesWay || !(remedy.Brings.Contains(finding.RuleId) || (cause.IsLack && finding.Group >= 0)));

        static int Violations(Evaluation of) => of.Findings.Where(finding => finding.IsViolation).Count;
    }

    private static string Name(Cause cause, Remedy remedy) => cause.RuleId + ": " + remedy.Text;

    /// <summary>Which of the first causes it comes from: a later one is what is left of it.</summary>
    private int? NumberOf(Cause cause)
    {
        foreach (Finding finding in cause.Findings)
        {
            if (before.NumberOf(finding) is > 0 and int number)
            {
                return number;
            }
        }

        return null;
    }

    private Items<MendedBox> Changes()
    {
        Dictionary<string, DeviceBox> described = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in before.Dwelling.PlacedBoxes())
        {
            described[placed.Box.Id] = placed.Box;
        }

        List<MendedBox> boxes = [];
        foreach (PlacedBox placed in now.Dwelling.PlacedBoxes())
        {
            described.TryGetValue(placed.Box.Id, out DeviceBox? was);
            if (!placed.Box.Equals(was) && done.TryGetValue(placed.Box.Id, out List<(int? Cause, Remedy Remedy)>? steps))
            {
                SortedSet<int> because = [];
                foreach ((int? cause, _) in steps)
                {
                    because.UnionWith(cause is { } number ? [number] : []);
                }

                MendedText text = new(was, placed, new(because), steps.ConvertAll(step => step.Remedy), before.State.Options.Units);
                boxes.Add(new(was, placed, new(because), text));
            }
        }

        return new(boxes);
    }
}
