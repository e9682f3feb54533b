using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Boxes that what they are on doesn't hold where they are, or that have to be held differently to go elsewhere.</content>
internal sealed partial class RemedyFinder
{
    private HeldInstead WhatHoldsInstead(Cause cause) => state.Rules.Set.Row(cause.RuleId) is PlacementRule rule ? rule.HeldInstead : HeldInstead.Nothing;

    /// <summary>A box goes to a stud's side that holds it, or gets something else to hold it where it is.</summary>
    private List<Remedy> Held(Cause cause, int box)
    {
        List<Remedy> found = [];
        HeldInstead by = WhatHoldsInstead(cause);
        if ((by & HeldInstead.LongerBar) != HeldInstead.Nothing)
        {
            Offer(OnALongerBar(box));
        }
        else
        {
            found.AddRange((Remedy?)(Aside(cause, box) ?? Single(cause, box)) is { } move ? [move] : []);
        }

        Offer((by & HeldInstead.Bracket) != HeldInstead.Nothing ? OnABracket(box) : null);
        Offer((by & HeldInstead.Blocking) != HeldInstead.Nothing ? Blocked(box) : null);
        return found.Count > 0 ? found : trials.IsExhausted ? [NotLookedAt(cause, new[] { state.Boxes[box].Source.Id })] : [NonePlaced(cause, new[] { state.Boxes[box].Source.Id }, ConflictingRules.At(state, box, cause.RuleId), !sticks.IsFree(box))];

        void Offer(Remedy? remedy)
        {
            if (remedy is not null && trials.Mends(remedy, cause, [box]))
            {
                found.Add(remedy);
            }
        }
    }

    /// <summary>Something for a box to be nailed to where it is.</summary>
    private AddBlocking? Blocked(int box)
    {
        DeviceBox source = state.Boxes[box].Source;
        return source.Mounting?.How is MountingMethod.Stud or MountingMethod.Bar or MountingMethod.Bracket && state.AtOf(box) is { } at
            ? new(source.Id, BlockingText.For(source.Id, state.Boxes[box].Surface, at, state.SizeOf(box), state.Options.Units), at)
            : null;
    }

    private ChangeMounting? OnABracket(int box)
    {
        DeviceBox source = state.Boxes[box].Source;
        return state.AtOf(box) is { } at ? new(source.Id, new(MountingMethod.Bracket), at, $"hold {source.Id:id} on a bracket or a bar where it is, the open side of the stud taking no screw") : null;
    }

    private ChangeMounting? OnALongerBar(int box)
    {
        ResolvedBox resolved = state.Boxes[box];
        if (state.AtOf(box) is not { } at)
        {
            return null;
        }

        foreach (FramingBay bay in FramingBay.Of(resolved.Surface.Wall!, resolved.Surface.Framing!))
        {
            if (bay.Left <= at && at <= bay.Right)
            {
                Wording take = $"take a bar for {resolved.Source.Id:id} that spans a clear bay of {Printed.Of(bay.Width, state.Options.Units):width}";
                return new(resolved.Source.Id, resolved.Source.Mounting!.WithSpan(bay.Width), at, bay.IsAssumed ? AssumedStuds.Added(take, resolved.Surface, state.Options.Units) : take);
            }
        }

        return null;
    }

    /// <summary>The nearest place along the wall that mends it at the height that the box has.</summary>
    private MoveBoxes? Aside(Cause cause, int box)
    {
        if (!sticks.IsFree(box) || state.HeightOf(box) is not { } height)
        {
            return null;
        }

        List<int> one = [box];
        foreach (Distance? along in places.PlacesFor(box))
        {
            MoveBoxes move = Move(one, height, along, true);
            if (along is not null && trials.Mends(move, cause, one))
            {
                return move;
            }
        }

        return null;
    }

    /// <summary>
    /// A box by itself: moved, or where its plate lies across an edge and a shorter way mends that, moved there and nailed to a stud that is packed out.
    /// Up and down costs nothing; a stud that is packed out is less work than another bay.
    /// </summary>
    private Remedy? Alone(Cause cause, int box)
    {
        MoveBoxes? aside = state.Rules.Set.Row(cause.RuleId) is { MendsAside: true } ? Aside(cause, box) : null;
        MoveBoxes? move = IsNear(aside, box) ? aside : Single(cause, box) ?? aside;
        return move is { Along: null } || (WhatHoldsInstead(cause) & HeldInstead.PackedStud) == HeldInstead.Nothing ? move : (Remedy?)Packed(cause, box, move) ?? move;
    }

    /// <summary>Whether a box goes no further aside than to the next bay: what the set says of it.</summary>
    private bool IsNear(MoveBoxes? aside, int box) => aside is { Along: { } along } && state.AtOf(box) is { } at && (along - at).Abs() <= state.Rules.RoomForBoxes.NextBay;

    private AddBlocking? Packed(Cause cause, int box, MoveBoxes? move)
    {
        DeviceBox source = state.Boxes[box].Source;
        if (source.Mounting?.How != MountingMethod.Stud || !sticks.IsFree(box) || state.AtOf(box) is not { } at)
        {
            return null;
        }

        foreach (Distance place in places.PackedPlacesFor(box))
        {
            if (move is { Along: { } along } && (place - at).Abs() >= (along - at).Abs())
            {
                return null;
            }

            AddBlocking block = new(
                source.Id,
                $"move {source.Id:id} to {Printed.Of(place, state.Options.Units):place} from the left end of its wall, and {BlockingText.For(source.Id, state.Boxes[box].Surface, place, state.SizeOf(box), state.Options.Units):blocking}",
                place);
            if (trials.Mends(block, cause, [box]))
            {
                return block;
            }
        }

        return null;
    }
}
