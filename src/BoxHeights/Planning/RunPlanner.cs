using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Plans the boxes of one run: exactly the best by the order below, found without trying all. Immutable and thread-safe.</summary>
/// <remarks>
/// <para>Boxes that stay do. Then, in this order: every point of the run is within <see cref="RunPlannerOptions.Reach"/> (less, if boxes may drift) of a box; around
/// a hole between candidates that is too wide for that, within <see cref="RunPlannerOptions.Limit"/>; around one too wide even for that, as near as any candidate comes.
/// Each wish gets a box, if a candidate lies in it. Each face as long as <see cref="RunPlannerOptions.FaceLength"/> gets one, if it has a candidate that isn't a last
/// resort. Then the fewest last resorts, the fewest boxes, the fewest places that are only fair, the smallest largest gap, the smallest sum of squared gaps (a
/// gap at an end counts double, and twice its square), and of plans equal in all that, the one whose first box that differs is further left.</para>
/// <para>With <see cref="RunPlannerOptions.CodeMinimum"/>: every point within the limit, the fewest boxes, the fewest places that aren't good, and from there on the same.</para>
/// <para>A run seen from its other end gets the same plan from its other end, unless several are equal in everything but which is further left.</para>
/// </remarks>
public sealed class RunPlanner
{
    private readonly RunPlannerOptions options;

    /// <summary>Makes a planner.</summary>
    /// <param name="options">What plans aim at.</param>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    /// <exception cref="ArgumentException">The options don't do; the message lists all that is wrong.</exception>
    public RunPlanner(RunPlannerOptions options) => this.options = (options ?? throw new ArgumentNullException(nameof(options))).Checked();

    /// <summary>Plans a run.</summary>
    /// <param name="run">The run.</param>
    /// <exception cref="ArgumentNullException"><paramref name="run"/> is null.</exception>
    /// <exception cref="ArgumentException">The run has no length or is too long, a candidate or fixed box isn't on it, or a rank isn't one.</exception>
    public RunPlan Plan(RunToPlan run)
    {
        RunPlaces places = RunPlaces.Of(run ?? throw new ArgumentNullException(nameof(run)));
        long limit = Math.Min(options.Limit.Ticks, places.Length);
        long slack = Math.Min(Slack(run.Drift.Ticks), limit);
        RunAim aim = new() { Reach = options.CodeMinimum ? limit : slack, Limit = limit, LastResortCosts = !options.CodeMinimum };
        List<DistanceRange> unmet = [];
        foreach (DistanceRange wish in run.Wishes)
        {
            (int First, int End) range = places.In(wish);
            if (range.First == range.End)
            {
                unmet.Add(wish);
            }
            else if (!options.CodeMinimum)
            {
                aim.Wishes.Add(range);
            }
        }

        if (!options.CodeMinimum)
        {
            AddFaces(run, places, aim);
        }

        PlannedPosition[] positions = places.Count == 0 ? [] : Positions(run, places, aim);
        RunGaps gaps = new(run, positions);
        return new(positions, gaps.All, gaps.Largest)
        {
            WithoutSlack = new(gaps.Beyond(slack)),
            Obstacles = new(gaps.Beyond(limit).ConvertAll(bare => new RunObstacle(bare, FacesOf(run, bare), options.Limit))),
            UnmetWishes = new(unmet),
        };
    }

    // Less than half of the limit can't be kept to everywhere that the limit itself can.
    private long Slack(long drift) =>
        Math.Min(options.Reach.Ticks, Math.Max(options.Limit.Ticks - drift, options.Limit.Ticks - (options.Limit.Ticks / 2)));

    private void AddFaces(RunToPlan run, RunPlaces places, RunAim aim)
    {
        foreach (RunFace face in run.Faces)
        {
            // Of a wall that reaches beyond the run, the part in it counts.
            Distance from = face.Along.From > run.Line.From ? face.Along.From : run.Line.From;
            Distance to = face.Along.To < run.Line.To ? face.Along.To : run.Line.To;
            if (options.FaceLength is not { } length || from > to || to - from < length)
            {
                continue;
            }

            (int First, int End) range = places.In(new(from, to));
            if (Array.FindIndex(places.Rank, range.First, range.End - range.First, rank => rank != CandidateRank.LastResort) >= 0)
            {
                aim.Faces.Add(range);
            }
        }
    }

    private static PlannedPosition[] Positions(RunToPlan run, RunPlaces places, RunAim aim)
    {
        RunWindows? windows = null;
        int[] chosen = run.IsLoop ? LoopPath.Choose(places, aim) : LinePath.Choose(places, aim, out windows);
        PlannedPosition[] positions = new PlannedPosition[chosen.Length];
        for (int i = 0; i < chosen.Length; i++)
        {
            positions[i] = new(Distance.FromTicks(places.From + places.At[chosen[i]]), ReasonOf(i));
        }

        return positions;

        PositionReason ReasonOf(int which)
        {
            int place = chosen[which];
            int before = which == 0 ? -1 : chosen[which - 1];
            int after = which + 1 == chosen.Length ? places.Count : chosen[which + 1];
            if (places.IsFixed[place])
            {
                return PositionReason.Stays;
            }

            foreach ((int first, int end) in aim.Wishes)
            {
                if (before < first && first <= place && place < end && end <= after)
                {
                    return PositionReason.Wished;
                }
            }

            return windows?.Skips(before, after) ?? LoopPath.Spares(places, aim, chosen, which) ? PositionReason.Face : PositionReason.Coverage;
        }
    }

    private static Items<string> FacesOf(RunToPlan run, DistanceRange bare)
    {
        List<string> names = [];
        foreach (RunFace face in run.Faces)
        {
            if (face.Along.From < bare.To && bare.From < face.Along.To)
            {
                names.Add(face.Name);
            }
        }

        return new(names);
    }
}
