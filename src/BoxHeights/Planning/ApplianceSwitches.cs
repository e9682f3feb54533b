using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Switches of appliances that are plugged in out of reach: planned once the box that they are plugged into is.</summary>
internal sealed class ApplianceSwitches(RoughInDraft draft)
{
    public void Plan(Room room)
    {
        foreach (SwitchedAppliance habit in draft.State.Rules.HabitsOf<SwitchedAppliance>())
        {
            foreach (Fixture thing in room.Fixtures)
            {
                if (habit.Things.Contains(thing.Kind) && thing is { Wall: { } wall, Left: { } left, Right: { } right } && OutletOf(SurfaceAddress.Of(room.Id, wall), left, right, habit) is { } outlet)
                {
                    Plan(SurfaceAddress.Of(room.Id, wall), thing, outlet, habit);
                }
            }
        }
    }

    /// <summary>The planned box within reach of an appliance that is nearest to its middle; null where there is none, or it is switched already.</summary>
    private int? OutletOf(string address, Distance left, Distance right, SwitchedAppliance habit)
    {
        int? nearest = null;
        Distance middle = left + (right - left).Split(2)[0];
        foreach (int box in draft.State.SurfaceAt(address) is { } surface ? draft.State.BoxesOn(surface) : [])
        {
            if (habit.Outlets.Contains(draft.State.Boxes[box].Source.Purpose) && draft.State.AtOf(box) is { } at && at >= left - habit.Within && at <= right + habit.Within
                && (nearest is not { } other || (at - middle).Abs() < (draft.State.AtOf(other)!.Value - middle).Abs()))
            {
                nearest = box;
            }
        }

        return nearest is { } found && draft.IsPlanned(found) && draft.State.Boxes[found].Source.Switched is null or SwitchedPart.None ? nearest : null;
    }

    private void Plan(string address, Fixture thing, int outlet, SwitchedAppliance habit)
    {
        DeviceBox plain = draft.State.Boxes[outlet].Source;
        Distance length = draft.State.Boxes[outlet].Surface.Length;
        DeviceBox box = habit.Switch.WithControls(new[] { plain.Id });

        // Its place doesn't hang on what is in it, which is only sized when it is added.
        if (HeightsOnWall.Of(draft, address, length, box.WithCables(default), true) is not { } heights)
        {
            return;
        }

        // Before the switch is there it would control what isn't switched.
        Describe(outlet, draft.Resized(outlet, plain.WithSwitched(habit.Part).WithCables([.. plain.Cables, .. habit.Leg])));
        foreach (PlaceOnWall place in heights.AtStudsFirst(thing.Left!.Value + (thing.Right!.Value - thing.Left.Value).Split(2)[0]))
        {
            // With the others' height it is over the counter; where only a lower one is left it would be under it.
            if (place.IsAsWanted && place.At >= thing.Left - habit.Within && place.At <= thing.Right + habit.Within && draft.TryAdd(address, box.WithAt(place.At).WithHeight(place.Height), "over the counter beside " + thing.Id + ", for " + plain.Id, habit))
            {
                return;
            }
        }

        Describe(outlet, plain);
        draft.Note(SurfaceAddress.Of(SurfaceAddress.Read(address).Space, thing.Id) + ": no place for its switch within " + Printed.NoMoreThan(habit.Within, draft.Units) + " of it");
    }

    private void Describe(int box, DeviceBox source)
    {
        draft.State.Describe(box, source);
        draft.State.Spaces.SetStale(box);
    }
}
