using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Puts the planned boxes of a room's counters on circuits as one would wire them: neighbors together, each circuit from an end of the counters inward, its first box protecting the rest.</summary>
internal sealed class CounterCircuits(RoughInDraft draft)
{
    public void Plan(Room room)
    {
        foreach (ApplianceCircuits habit in draft.State.Rules.HabitsOf<ApplianceCircuits>())
        {
            if (habit.Rooms.Contains(room.Kind) && InOrder(room, habit) is { Count: > 0 } boxes)
            {
                Share(boxes, habit);
            }
        }
    }

    /// <summary>The boxes from the left to the right round the room, what stands free in its middle among them; none where some are described, since nobody knows which circuit those are on.</summary>
    private List<int> InOrder(Room room, ApplianceCircuits habit)
    {
        List<int> onWalls = [];
        List<int> free = [];
        foreach (int box in draft.BoxesOf(room.Id))
        {
            DeviceBox source = draft.State.Boxes[box].Source;
            if (!habit.Purposes.Contains(source.Purpose))
            {
                continue;
            }

            if (!draft.IsPlanned(box))
            {
                return [];
            }

            if (habit.Protecting is null || source.Devices == new Items<DeviceKind>(new[] { habit.Protecting.Value }))
            {
                (draft.State.Boxes[box].IsOnWall ? onWalls : free).Add(box);
            }
        }

        onWalls.Sort((a, b) => draft.State.Boxes[a].Surface.Index != draft.State.Boxes[b].Surface.Index
            ? draft.State.Boxes[a].Surface.Index.CompareTo(draft.State.Boxes[b].Surface.Index)
            : Nullable.Compare(draft.State.AtOf(a), draft.State.AtOf(b)));
        int middle = (onWalls.Count + 1) / 2;
        return [.. onWalls.GetRange(0, middle), .. free, .. onWalls.GetRange(middle, onWalls.Count - middle)];
    }

    private void Share(List<int> boxes, ApplianceCircuits habit)
    {
        int circuits = Math.Min(habit.Circuits, boxes.Count);
        for (int circuit = 0, from = 0; circuit < circuits; circuit++)
        {
            int count = (boxes.Count - from + circuits - circuit - 1) / (circuits - circuit);
            List<int> own = boxes.GetRange(from, count);
            from += count;
            if (circuit > 0 && circuit == circuits - 1)
            {
                own.Reverse();
            }

            string on = habit.Circuits == 1 ? "" : FormattableString.Invariant($", on circuit {circuit + 1} of {habit.Circuits}");
            draft.Tell(own[0], on);
            for (int i = 1; i < own.Count; i++)
            {
                Feed(own[i], own[0], on, habit);
            }
        }
    }

    private void Feed(int box, int first, string on, ApplianceCircuits habit)
    {
        string through = ", fed through " + draft.State.Boxes[first].Source.Id + ", which protects it";
        if (habit.Onward is { } onward)
        {
            draft.State.Describe(box, draft.Rewired(box, draft.State.Boxes[box].Source.WithDevices(onward)));
            draft.State.Spaces.SetStale(box);
        }

        draft.Tell(box, on + (habit.Onward is null ? "" : through));
    }
}
