using System;
using System.Threading;

namespace BoxHeights;

/// <content>What else a plan could have done with one of its boxes.</content>
public sealed partial class RoughInPlanner
{
    /// <summary>The other places and heights that a planned box could have on its wall, best first, each with what it would cost and why the plan didn't take it.</summary>
    /// <remarks>
    /// Places are those against the sides of the wall's studs, or a usual bay apart where nothing is said of them; heights the lowest and the highest that rules of its
    /// place surely allow where the box is, habits left aside. Each is tried out with all else as it is planned. Best is what costs least: by the weight of what would be found, then how many findings, whether it
    /// needs blocking, how far outlets would be, and how far it is from the planned place.
    /// </remarks>
    /// <param name="plan">A plan of this planner, as it was made or read back.</param>
    /// <param name="box">The id of a box that it planned.</param>
    /// <returns>None for a box that isn't on a wall, or whose wall has no other place.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The plan has no such box among those that it planned.</exception>
    public Items<PlanAlternative> Alternatives(RoomPlan plan, string box) => Alternatives(plan, box, CancellationToken.None);

    /// <summary>The same, unless somebody gives up.</summary>
    /// <param name="plan">A plan of this planner, as it was made or read back.</param>
    /// <param name="box">The id of a box that it planned.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <returns>None for a box that isn't on a wall, or whose wall has no other place.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> or <paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The plan has no such box among those that it planned.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public Items<PlanAlternative> Alternatives(RoomPlan plan, string box, CancellationToken cancellationToken)
    {
        _ = plan ?? throw new ArgumentNullException(nameof(plan));
        _ = box ?? throw new ArgumentNullException(nameof(box));
        if (!plan.Reasons.Exists(one => one.Id == box) || plan.Dwelling.FindBox(box) is not { } planned)
        {
            throw new ArgumentException("The plan has no box \"" + box + "\" among those that it planned.", nameof(box));
        }

        LayoutEvaluator evaluator = new(rules, options.Evaluation.WithAllBoxesAreDescribed(true));
        return new PlaceTrials(evaluator.Open(plan.Dwelling), planned, cancellationToken).All();
    }
}
