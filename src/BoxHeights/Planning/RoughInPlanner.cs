using System;
using System.Collections.Generic;
using System.Threading;

namespace BoxHeights;

/// <summary>Plans the boxes that a room or a whole dwelling needs: switches at entrances, extras that are asked for, runs of walls and counters, then whatever else is lacking.</summary>
/// <remarks>
/// Boxes that are there stay. Immutable and thread-safe.
/// Each box goes where every rule but habits surely lets it be, at the height that practice prefers or the nearest that is allowed, and is kept only if it brings
/// no finding with it. The plan is the same each time, and a room seen in a mirror gets the mirrored plan: where several places do equally well the box goes
/// to a side that the room's own description decides, and in the mirror to the other. It is a proposal: the authority having jurisdiction and licensed practice decide.
/// </remarks>
public sealed partial class RoughInPlanner
{
    private readonly RuleSet rules;
    private readonly RoughInOptions options;

    /// <summary>Makes a planner with the usual options.</summary>
    /// <param name="rules">What the plan has to meet. <see cref="RuleSets.UnitedStatesOutlets"/> and the like say what has to be there, <see cref="RuleSets.RoughInPractice"/> at which heights.</param>
    /// <exception cref="ArgumentNullException"><paramref name="rules"/> is null.</exception>
    public RoughInPlanner(RuleSet rules)
        : this(rules, RoughInOptions.Default)
    {
    }

    /// <summary>Makes a planner.</summary>
    /// <param name="rules">What the plan has to meet.</param>
    /// <param name="options">What is planned beside.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The evaluation options don't do; the message says all that is wrong with them.</exception>
    public RoughInPlanner(RuleSet rules, RoughInOptions options)
    {
        this.rules = rules ?? throw new ArgumentNullException(nameof(rules));
        this.options = options ?? throw new ArgumentNullException(nameof(options));
        _ = (options.Evaluation ?? throw new ArgumentException("Evaluation is null.", nameof(options))).Checked();
    }

    /// <summary>Plans one room.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="room">The room's id.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such room.</exception>
    public RoomPlan Plan(Dwelling dwelling, string room) => Plan(dwelling, room, CancellationToken.None);

    /// <summary>Plans one room, unless somebody gives up.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="room">The room's id.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> or <paramref name="room"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such room.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public RoomPlan Plan(Dwelling dwelling, string room, CancellationToken cancellationToken)
    {
        Guard.NotNull(dwelling, nameof(dwelling));

        RoughInDraft draft = Draft(dwelling, cancellationToken);
        draft.Rooms([Find(draft.Described, room ?? throw new ArgumentNullException(nameof(room)))], false);
        return draft.Finish(room);
    }

    /// <summary>Plans every room, one after another, then what the dwelling as a whole lacks.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public RoomPlan Plan(Dwelling dwelling) => Plan(dwelling, CancellationToken.None);

    /// <summary>Plans every room, one after another, then what the dwelling as a whole lacks, unless somebody gives up.</summary>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public RoomPlan Plan(Dwelling dwelling, CancellationToken cancellationToken)
    {
        RoughInDraft draft = Draft(dwelling ?? throw new ArgumentNullException(nameof(dwelling)), cancellationToken);
        HashSet<string> seen = new(StringComparer.Ordinal);
        draft.Rooms([.. draft.Described.Rooms.Where(room => seen.Add(room.Id))], true);
        return draft.Finish(null);
    }

    private RoughInDraft Draft(Dwelling dwelling, CancellationToken cancellation) => new(dwelling, new LayoutEvaluator(rules, options.Evaluation.WithAllBoxesAreDescribed(true)), options, cancellation);

    private static Room Find(Dwelling dwelling, string room)
    {
        foreach (Room one in dwelling.Rooms)
        {
            if (one.Id == room)
            {
                return one;
            }
        }

        throw new ArgumentException("The dwelling has no room \"" + room + "\"; there are: " + string.Join(", ", dwelling.Rooms.Select(one => one.Id)) + ".", nameof(room));
    }
}
