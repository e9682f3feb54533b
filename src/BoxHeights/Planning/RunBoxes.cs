using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes along the runs of a room's walls and counters that lack some: the exact plan of each run, from the places that its walls offer.</summary>
internal sealed class RunBoxes(RoughInDraft draft)
{
    // Each is a place that what was planned before is in the way of; a run with more has hardly any left.
    private const int MostRefused = 24;

    public void Plan(Room room)
    {
        // Counters first: what serves them is settled before walls are filled up.
        foreach (bool areCounters in new[] { true, false })
        {
            foreach (SpaceRule rule in draft.State.Rules.Space)
            {
                if (rule is IServesRuns runs && runs.Spaces.AreOfCounters == areCounters)
                {
                    Plan(room, rule, runs);
                }
            }
        }
    }

    private void Plan(Room room, SpaceRule rule, IServesRuns served)
    {
        if (ViewOf(room, rule) is not { } view || served.Spaces.Of(view) is not { } runs)
        {
            return;
        }

        SpaceStatement statement = new();
        rule.Judge(view, statement);
        foreach (Run run in runs.Sure)
        {
            if (run.OpenAt.Count > 0 && run.Length >= served.Shortest)
            {
                draft.Note(room.Id + ": its walls don't go once round it. What may follow at their ends counts as if an outlet stood right there, so that what is near them has to be looked at on site");
            }

            string name = run.NameIn(view.Dwelling.Units);
            foreach (SpaceAnswer answer in statement.Answers)
            {
                if (answer.Subject == name)
                {
                    Plan(room, rule, served, run, view, runs);
                    break;
                }
            }
        }
    }

    private SpaceView? ViewOf(Room room, SpaceRule rule)
    {
        foreach (SpaceIndex.JudgedSpace judged in draft.State.Spaces.OfSpace(room.Id))
        {
            if (judged.Rule == rule && judged.View is { Room: not null, HasBrokenParts: false })
            {
                return judged.View;
            }
        }

        return null;
    }

    private void Plan(Room room, SpaceRule rule, IServesRuns served, Run run, SpaceView view, RoomRuns runs)
    {
        List<DistanceRange> may = [];
        List<DistanceRange> sure = [];
        RunOutlets outlets = new();
        outlets.Take(view, served.Outlets, runs, false);
        outlets.On(run, runs.Sure, may, sure);
        List<(DistanceRange Along, string Beside, Rule By)> wishes = served.Spaces.AreOfCounters ? [] : FurnitureWishes.Along(draft, room, run);
        foreach ((Distance from, Distance to, bool isLoop) in Legs(served, run))
        {
            List<Distance> stays = sure.FindAll(one => one.IsExact && one.From >= from && one.From <= to).ConvertAll(one => one.From);

            // Where something that isn't described may follow, the rule counts as if an outlet stood right there.
            stays.AddRange(run.OpenAt.Where(open => open >= from && open <= to));
            RunToPlan leg = new(new(from, to)) { IsLoop = isLoop, Faces = new(Faces(run, from, to)), Wishes = new(wishes.ConvertAll(wish => wish.Along)) };
            Plan(room, rule, served, run, leg, wishes, stays);
        }
    }

    private void Plan(Room room, SpaceRule rule, IServesRuns served, Run run, RunToPlan leg, List<(DistanceRange Along, string Beside, Rule By)> wishes, List<Distance> stays)
    {
        RunPlannerOptions aims = RunPlannerOptions.WithSlackFor(served.Reach ?? leg.Line.Width, draft.State.Rules.RoomForBoxes) with
        {
            FaceLength = served.OneToEach,
            CodeMinimum = draft.Options.CodeMinimum,
        };
        if (!TryPlan(room, rule, served, run, leg, wishes, stays, aims, false, out RunPlan plan) && rule.Severity == Severity.Violation)
        {
            _ = TryPlan(room, rule, served, run, leg, wishes, stays, aims, true, out plan);
        }

        foreach (RunObstacle obstacle in plan.Obstacles)
        {
            RunStretch stretch = run.At(obstacle.Uncovered.From + obstacle.Uncovered.Width.Split(2)[0], out Distance along);
            draft.Obstacle(
                room.Id + ": no place for a box within " + Printed.NoMoreThan(obstacle.Limit, draft.Units) + " of " + new SeenAlong(room, draft.Units).Stretches(run, obstacle.Uncovered)
                + " (" + rule.Id + ")" + (stretch.Wall < 0 ? "" : HeightsOnWall.WhyNone(draft, stretch.Address, along, served.Usual)));
        }
    }

    /// <summary>Adds what the exact plan of a part of a run asks for, and plans it anew without the places that what was planned before is in the way of.</summary>
    /// <returns>Whether nothing of it is left.</returns>
    private bool TryPlan(
        Room room, SpaceRule rule, IServesRuns served, Run run, RunToPlan leg, List<(DistanceRange Along, string Beside, Rule By)> wishes, List<Distance> stays, RunPlannerOptions aims, bool isNeeded, out RunPlan plan)
    {
        HashSet<Distance> refused = [];
        Offer? atStuds = null;
        Offer? between = null;
        bool isRefused;
        do
        {
            RunToPlan toPlan = leg with { Fixed = new(stays) };
            plan = Best(
                run, toPlan, aims, served,
                () => atStuds ??= Offered(room, served, run, leg.Line, false, refused), () => between ??= Offered(room, served, run, leg.Line, true, refused),
                out Dictionary<Distance, (string Address, PlaceOnWall Place)> places);
            isRefused = false;
            bool areAdded = false;
            foreach (PlannedPosition position in plan.Positions)
            {
                if (!position.IsFixed && places.TryGetValue(position.At, out (string Address, PlaceOnWall Place) here))
                {
                    bool ofItsOwn = position.Reason is PositionReason.Face or PositionReason.Wished;
                    (_, string beside, Rule? by) = position.Reason == PositionReason.Wished ? wishes.Find(wish => wish.Along.Contains(position.At)) : default;
                    string reason = by is not null ? "beside " + beside : ofItsOwn ? OneToEachWall(aims) : served.Spaces.AreOfCounters ? "serves its counter" : "serves its stretch of wall";
                    bool isAdded = draft.TryAdd(here.Address, At(served.Usual, here.Place), reason, by ?? (ofItsOwn ? null : rule), isNeeded && !ofItsOwn ? Need.OfLooks : Need.None);
                    (isAdded ? (ICollection<Distance>)stays : refused).Add(position.At);
                    isRefused |= !isAdded;
                    areAdded |= isAdded;
                }
            }

            // What was added is in the way of others; where nothing was, the walls offer what they did, but for what was refused.
            (atStuds, between) = areAdded ? (null, null) : (atStuds?.Without(refused), between?.Without(refused));
        }
        while (isRefused && refused.Count < MostRefused);
        return !isRefused && plan.Obstacles.Count == 0;
    }

    /// <summary>Studs before blocks between them. On a counter, where a box more is a hole more in its splash, the fewest boxes before either, and before slack.</summary>
    private RunPlan Best(Run run, RunToPlan toPlan, RunPlannerOptions aims, IServesRuns served, Func<Offer> atStuds, Func<Offer> between, out Dictionary<Distance, (string Address, PlaceOnWall Place)> places)
    {
        places = atStuds().Places;
        RunPlan best = Planned(run, toPlan, aims, atStuds());
        bool isTried = false;
        foreach (Func<Offer> from in new[] { atStuds, between })
        {
            foreach (RunPlannerOptions one in served is { Spaces.AreOfCounters: true, Reach: { } reach } ? new[] { aims, aims with { Reach = reach } } : [aims])
            {
                if (isTried && (best.Obstacles.Count > 0 || served.Spaces.AreOfCounters))
                {
                    RunPlan plan = Planned(run, toPlan, one, from());
                    if (best.Obstacles.Count > 0 || (plan.Obstacles.Count == 0 && plan.Positions.Count < best.Positions.Count))
                    {
                        (best, places) = (plan, from().Places);
                    }
                }

                isTried = true;
            }
        }

        return best;
    }

    private string OneToEachWall(RunPlannerOptions aims) =>
        BothUnits.Of("one to each wall of " + (aims.FaceLength!.Value is var face && face == face.RoundNearest(Distance.FromFeet(1)) ? face.ToString("ft") : face.Exactly(draft.Units)) + " or more, common practice", draft.Units);

    private RunPlan Planned(Run run, RunToPlan toPlan, RunPlannerOptions aims, Offer offer)
    {
        RunToPlan all = toPlan with { Candidates = offer.Candidates };
        return draft.HandAt(run.Stretches[0].Address) == WallEnd.Left || run.Stretches[0].Wall < 0 ? new RunPlanner(aims).Plan(all) : new RunPlanner(aims).Plan(all.Mirrored()).Mirrored(all);
    }

    /// <summary>The places that the walls of a part of a run offer, and none that was refused.</summary>
    private Offer Offered(Room room, IServesRuns rule, Run run, DistanceRange part, bool betweenStuds, HashSet<Distance> refused)
    {
        Dictionary<Distance, (string Address, PlaceOnWall Place)> places = [];
        List<RunCandidate> candidates = [];
        foreach (RunStretch stretch in run.Stretches)
        {
            // The part of it that is served by itself.
            Distance from = Distance.Max(stretch.From, part.From - stretch.Start + stretch.From);
            Distance to = Distance.Min(stretch.To, part.To - stretch.Start + stretch.From);
            if (stretch.Wall < 0 || from > to || HeightsOnWall.Of(draft, stretch.Address, stretch.Line.Length, rule.Usual, betweenStuds) is not { } heights)
            {
                continue;
            }

            // Where only a height is allowed at which an outlet doesn't count, there is no place for one.
            foreach (PlaceOnWall place in heights.Within(from, to, box => rule.Outlets.Of(box, out _) != Verdict.Fails))
            {
                Distance at = stretch.Start + place.At - stretch.From;
                if (!refused.Contains(at) && !places.ContainsKey(at))
                {
                    places.Add(at, (stretch.Address, place));
                    candidates.Add(new(at, InACorner(room, stretch, place.At) ? Worse(place.Rank, rule.Spaces.AreOfCounters) : place.Rank));
                }
            }
        }

        return new(places, new(candidates));
    }

    private static DeviceBox At(DeviceBox box, PlaceOnWall place) => box with { At = place.At, Height = place.Height };

    /// <summary>Whether a place is so near a corner at an end of its wall that nobody sets a box there without need.</summary>
    private bool InACorner(Room room, RunStretch stretch, Distance at)
    {
        Distance least = draft.State.Rules.RoomForBoxes.FromEnds;
        return (at < least && !DoorCover.GoesStraightOn(room.Walls, stretch.Wall, WallEnd.Left))
            || (stretch.Line.Length - at < least && !DoorCover.GoesStraightOn(room.Walls, stretch.Wall, WallEnd.Right));
    }

    /// <summary>In the corner of two counters, where hardly anything is plugged in, only if nothing else serves them; in that of a room among plans with as many boxes.</summary>
    private static CandidateRank Worse(CandidateRank rank, bool isOverACounter) =>
        isOverACounter ? CandidateRank.LastResort : rank == CandidateRank.Good ? CandidateRank.Fair : rank;

    /// <summary>What is served by itself: the run, or where outlets don't serve round corners each of its straight parts.</summary>
    private static IEnumerable<(Distance From, Distance To, bool IsLoop)> Legs(IServesRuns rule, Run run)
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

    private static IEnumerable<DistanceRange> Faces(Run run, Distance from, Distance to)
    {
        foreach (RunStretch stretch in run.Stretches)
        {
            if (stretch.Start < to && stretch.Start + stretch.Length > from)
            {
                // What may follow beyond an open end gives the face itself no box.
                Distance tick = Distance.FromTicks(1);
                yield return new(stretch.IsOpenLeft ? stretch.Start + tick : stretch.Start, stretch.Start + stretch.Length - (stretch.IsOpenRight ? tick : Distance.Zero));
            }
        }
    }

    /// <summary>What the walls offer a run: the places, and how willingly each is taken.</summary>
    private sealed class Offer(Dictionary<Distance, (string Address, PlaceOnWall Place)> places, Items<RunCandidate> candidates)
    {
        public Dictionary<Distance, (string Address, PlaceOnWall Place)> Places { get; } = places;

        public Items<RunCandidate> Candidates { get; } = candidates;

        public Offer Without(HashSet<Distance> refused) => new(Places, new(new List<RunCandidate>(Candidates).FindAll(candidate => !refused.Contains(candidate.At))));
    }
}
