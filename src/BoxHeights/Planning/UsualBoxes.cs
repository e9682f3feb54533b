using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Boxes that rooms get by custom, where none like it is there.</summary>
internal sealed class UsualBoxes(RoughInDraft draft)
{
    /// <summary>Plans those of a room.</summary>
    /// <param name="room">The room.</param>
    /// <param name="lights">Devices that are planned now; null for all.</param>
    public void Plan(Room room, Items<DeviceKind>? lights = null)
    {
        foreach (UsualBox habit in draft.State.Rules.HabitsOf<UsualBox>())
        {
            if (habit.Rooms.Contains(room.Kind) && (lights is not { } some || habit.Box.Devices.Exists(some.Contains)) && !HasOne(room, habit))
            {
                draft.TryAdd(SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), habit.Box.WithPlan(new WallPlan(room).Inside(2)), "for " + room.Id, habit);
            }
        }
    }

    private bool HasOne(Room room, UsualBox habit)
    {
        Items<DeviceKind> devices = habit.Instead.Count > 0 ? habit.Instead : habit.Box.Devices;
        foreach (int box in draft.BoxesOf(room.Id))
        {
            DeviceBox source = draft.State.Boxes[box].Source;
            if (source.Devices.Exists(devices.Contains) || (habit.OrSwitchedReceptacle && source.Switched is not (null or SwitchedPart.None)))
            {
                return true;
            }
        }

        return false;
    }
}
