using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>One bare wall, without a dwelling.</content>
public sealed partial class RoughInPlanner
{
    /// <summary>Where receptacles go along a bare wall from corner to corner, each nailed to a stud: as far apart as the rules' row for walls lets them, with the slack that plans keep.</summary>
    /// <param name="length">The wall's length between framing faces; more than zero.</param>
    /// <param name="studs">The layout of its studs.</param>
    /// <returns>The centers of one-gang boxes from the wall's left end.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="studs"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> isn't more than zero.</exception>
    /// <exception cref="ArgumentException">The wall would have more than 10,000 studs.</exception>
    /// <exception cref="InvalidOperationException">No row of the rules asks for receptacles along walls.</exception>
    public Items<Distance> AlongWall(Distance length, StudLayout studs)
    {
        Guard.Positive(length, nameof(length));
        CompiledRules compiled = new(rules);
        IServesRuns served = Array.Find(compiled.Space, rule => rule is IServesRuns { Spaces.AreOfCounters: false, Reach: not null }) as IServesRuns
            ?? throw new InvalidOperationException("No row of these rules asks for receptacles along walls.");
        BoxSize box = ResolvedBox.SizeOf(served.Usual, options.Evaluation.Catalog);
        StudPositions positions = StudPositions.Along((studs ?? throw new ArgumentNullException(nameof(studs))).In(options.Evaluation.Catalog.UsualMeasures), length);
        List<RunCandidate> candidates = [];
        for (int stud = 1; stud <= positions.Count; stud++)
        {
            foreach (StudSide side in new[] { StudSide.Left, StudSide.Right })
            {
                if (positions.TryCenter(stud, side, box.Width, out Distance center) && center >= box.HalfWidth && center <= length - box.HalfWidth)
                {
                    candidates.Add(new(center));
                }
            }
        }

        DistanceRange wall = new(Distance.Zero, length);
        RunPlannerOptions aims = RunPlannerOptions.WithSlackFor(served.Reach!.Value, compiled.RoomForBoxes) with { FaceLength = served.OneToEach, CodeMinimum = options.CodeMinimum };
        return new RunPlanner(aims).Plan(new(wall) { Faces = new[] { wall }, Candidates = new(candidates) }).Positions.Select(position => position.At);
    }
}
