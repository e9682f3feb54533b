using System.Collections.Generic;

namespace BoxHeights.Benchmarks;

/// <summary>The library from the caller's objects: everything is checked, resolved, stated and judged each time. The evaluator is kept.</summary>
internal sealed class LibraryFromObjects : Contender
{
    private readonly Dwelling[] houses;
    private readonly LayoutEvaluator evaluator = new(Workload.Rules());

    public LibraryFromObjects(Workload workload)
        : base("BoxHeights from objects") => houses = workload.Dwellings;

    public override int Judge(int house) => evaluator.Evaluate(houses[house]).Findings.Count;

    public override IEnumerable<(string Box, string Rule)> Find(int house) => FoundIn(evaluator.Evaluate(houses[house]).Findings);

    /// <summary>Nothing here is unknown: an answer that isn't "fails" would show as a finding that no other contender has.</summary>
    internal static IEnumerable<(string Box, string Rule)> FoundIn(Items<Finding> findings)
    {
        foreach (Finding finding in findings)
        {
            yield return (finding.Subject, finding.Verdict == Verdict.Fails ? finding.RuleId : finding.ToString());
        }
    }
}

/// <summary>The library in an open session: rules have stated what they allow, and every box and group is judged again.</summary>
internal sealed class LibraryInSession : Contender
{
    private readonly LayoutSession[] sessions;

    public LibraryInSession(Workload workload)
        : base("BoxHeights re-evaluating") => sessions = System.Array.ConvertAll(workload.Dwellings, new LayoutEvaluator(Workload.Rules()).Open);

    public override int Judge(int house) => sessions[house].Now.JudgeAll();

    public override IEnumerable<(string Box, string Rule)> Find(int house)
    {
        _ = sessions[house].Now.JudgeAll();
        return LibraryFromObjects.FoundIn(sessions[house].Findings);
    }
}
