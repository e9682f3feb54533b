using System;
using System.Collections.Generic;
using Google.OrTools.Sat;

namespace BoxHeights.Benchmarks;

/// <summary>The fewest boxes by Google.OrTools, CP-SAT: only the count; the evenest plan it doesn't prove in minutes at these sizes.</summary>
internal static class Solver
{
    public static int Fewest(RunToPlan run, RunPlannerOptions options)
    {
        CpModel model = new();
        long reach = options.Reach.Ticks;
        BoolVar[] used = new BoolVar[run.Candidates.Count];
        List<long> ends = [2 * run.Line.From.Ticks, 2 * run.Line.To.Ticks];
        for (int i = 0; i < used.Length; i++)
        {
            used[i] = model.NewBoolVar("");
            ends.Add(2 * (run.Candidates[i].At.Ticks - reach));
            ends.Add(2 * (run.Candidates[i].At.Ticks + reach));
        }

        // Between two neighboring ends of what candidates cover, the same ones cover every point.
        ends.Sort();
        List<ILiteral> covering = [];
        for (int i = 1; i < ends.Count; i++)
        {
            if (ends[i] == ends[i - 1] || ends[i] > 2 * run.Line.To.Ticks || ends[i - 1] < 2 * run.Line.From.Ticks)
            {
                continue;
            }

            covering.Clear();
            for (int c = 0; c < used.Length; c++)
            {
                if (Math.Abs((2 * run.Candidates[c].At.Ticks) - ((ends[i] + ends[i - 1]) / 2)) <= 2 * reach)
                {
                    covering.Add(used[c]);
                }
            }

            model.AddBoolOr(covering);
        }

        model.Minimize(LinearExpr.Sum(used));

        // One worker and this level prove it; the default settings don't within seconds.
        CpSolver solver = new() { StringParameters = "num_workers:1,linearization_level:2" };
        return solver.Solve(model) == CpSolverStatus.Optimal ? (int)Math.Round(solver.ObjectiveValue) : throw new InvalidOperationException("The solver proved nothing.");
    }
}
