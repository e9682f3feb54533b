using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes along the runs of a room's walls and counters that lack some: the exact plan of each run, from the places that its walls offer.</summary>
internal sealed class RunBoxes(RoughInDraft draft)
{
    public void Plan(Room room)
    {
        foreach (SpaceRule rule in draft.State.Rules.Space)
        {
            // Counters first: what serves them is settled before walls are filled up.
            if (rule is Coverage { Spaces: CounterSpaces } counters)
            {
                Plan(room, counters);
            }
        }

        foreach (SpaceRule rule in draft.State.Rules.Space)
        {
            if (rule is Coverage { Spaces: not CounterSpaces } walls)
            {
                Plan(room, walls);
            }
        }
    }

    private void Plan(Room room, Coverage rule)
    {
        if (ViewOf(room, rule) is not { } view || rule.Spaces.Of(view) is not { } runs)
        {
            return;
        }

        SpaceStatement statement = new();
        rule.Judge(view, statement);
        foreach (Run run in runs.Sure)
        {
            string name = run.NameIn(view.Dwelling.Units);
            foreach (SpaceAnswer answer in statement.Answers)
            {
                if (answer.Subject == name)
                {
                    Plan(room, rule, run, view, runs);
                    break;
                }
            }
        }
    }

    private SpaceView? ViewOf(Room room, Coverage rule)
    {
        for (int i = 0; i < draft.State.Spaces.Count; i++)
        {
            if (draft.State.Spaces[i] is { View.Room: { } one } judged && one.Id == room.Id && judged.Rule == rule && !judged.View.HasBrokenParts)
            {
                return judged.View;
            }
        }

        return null;
    }

    private void Plan(Room room, Coverage rule, Run run, SpaceView view, RoomRuns runs)
    {
        List<DistanceRange> may = [];
        List<DistanceRange> sure = [];
        RunOutlets outlets = new();
        outlets.Take(view, rule.Outlets, runs, false);
        outlets.On(run, runs.Sure, may, sure);
        foreach ((Distance from, Distance to, bool isLoop) in Legs(rule, run))
        {
            Distance limit = rule.Reach ?? to - from;
            RunPlannerOptions aims = RunPlannerOptions.WithSlackFor(limit) with
            {
                FaceLength = rule.Spaces is WallSpaces ? RunPlannerOptions.Walls.FaceLength : null,
                CodeMinimum = draft.Options.CodeMinimum,
            };
            RunToPlan toPlan = new(new(from, to))
            {
                IsLoop = isLoop,
                Faces = new(Faces(run, from, to)),
                Fixed = new(sure.FindAll(one => one.IsExact && one.From >= from && one.From <= to).ConvertAll(one => one.From)),
            };
            RunPlan plan = Planned(rule, run, toPlan, aims, false, out Dictionary<Distance, (string Address, DeviceBox Box)> boxes);
            if (plan.Obstacles.Count > 0)
            {
                plan = Planned(rule, run, toPlan, aims, true, out boxes);
            }

            foreach (PlannedPosition position in plan.Positions)
            {
                if (!position.IsFixed && boxes.TryGetValue(position.At, out (string Address, DeviceBox Box) place))
                {
                    bool ofItsOwn = position.Reason == PositionReason.Face;
                    draft.TryAdd(place.Address, place.Box, ofItsOwn ? OneToEachWall(aims) : rule.Spaces is CounterSpaces ? "serves its counter" : "serves its stretch of wall", ofItsOwn ? null : rule);
                }
            }

            foreach (RunObstacle obstacle in plan.Obstacles)
            {
                draft.Obstacle(room.Id + ": " + obstacle.ToString(draft.Units) + " (" + rule.Id + ")");
            }
        }
    }

    private string OneToEachWall(RunPlannerOptions aims) =>
        BothUnits.Of("one to each wall of " + aims.FaceLength!.Value.ToString("ft") + " or more, common practice", draft.Units);

    private RunPlan Planned(Coverage rule, Run run, RunToPlan toPlan, RunPlannerOptions aims, bool betweenStuds, out Dictionary<Distance, (string Address, DeviceBox Box)> boxes)
    {
        boxes = [];
        List<RunCandidate> candidates = [];
        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Wall < 0 || HeightsOnWall.Of(draft, stretch.Address, stretch.Line.Length, rule.Usual, betweenStuds) is not { } heights)
            {
                continue;
            }

            foreach (RunCandidate place in heights.Places)
            {
                Distance at = stretch.Start + place.At - stretch.From;
                if (place.At >= stretch.From && place.At <= stretch.To && toPlan.Line.Contains(at) && !boxes.ContainsKey(at))
                {
                    boxes.Add(at, (stretch.Address, rule.Usual.WithAt(place.At).WithHeight(heights.HeightAt(place.At))));
                    candidates.Add(new(at, place.Rank));
                }
            }
        }

        return new RunPlanner(aims).Plan(toPlan.WithCandidates(new(candidates)));
    }

    /// <summary>What is served by itself: the run, or where outlets don't serve round corners each of its straight parts.</summary>
    private static IEnumerable<(Distance From, Distance To, bool IsLoop)> Legs(Coverage rule, Run run)
    {
        if (rule.AroundCorners)
        {
            yield return (Distance.Zero, run.Length, run.IsLoop);
            yield break;
        }

        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Length >= rule.Shortest)
            {
                yield return (stretch.Start, stretch.Start + stretch.Length, false);
            }
        }
    }

    private static IEnumerable<RunFace> Faces(Run run, Distance from, Distance to)
    {
        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Start < to && stretch.Start + stretch.Length > from)
            {
                yield return new(stretch.Address, new(stretch.Start, stretch.Start + stretch.Length));
            }
        }
    }
}
