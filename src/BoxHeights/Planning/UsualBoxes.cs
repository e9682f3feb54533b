using System.Collections.Generic;
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
            if (IsMeant(room, habit) && (lights is not { } some || habit.Box.Devices.Exists(some.Contains)) && !HasOne(room, habit))
            {
                Plan(room, habit);
            }
        }
    }

    private void Plan(Room room, UsualBox habit)
    {
        switch (habit.Place)
        {
            case UsualPlace.MiddleOfCeiling:
                draft.TryAdd(SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), habit.Box.WithPlan(new WallPlan(room).Inside(2)), "for " + room.Id, habit);
                break;
            case UsualPlace.InnerWall:
                OnInnerWall(room, habit);
                break;
            case UsualPlace.BesideEntrance:
                BesideEntrance(room, habit);
                break;
            default:
                BeforeOpenings(room, habit);
                break;
        }
    }

    private void OnInnerWall(Room room, UsualBox habit)
    {
        List<Wall> walls = [.. room.Walls];
        walls.RemoveAll(wall => wall.Open || wall.Exterior || draft.State.SurfaceAt(SurfaceAddress.Of(room.Id, wall.Id))?.Stair is not null);

        // Of walls with as much room the first, in the mirror the last.
        int inTurn = walls.Count > 0 && draft.HandAt(SurfaceAddress.Of(room.Id, walls[0].Id)) == WallEnd.Left ? 1 : -1;
        List<Wall> listed = [.. walls];
        walls.Sort((a, b) => Free(a) != Free(b) ? Free(b).CompareTo(Free(a)) : inTurn * listed.IndexOf(a).CompareTo(listed.IndexOf(b)));
        if (!walls.Exists(wall => TryAt(SurfaceAddress.Of(room.Id, wall.Id), wall.Length, habit, wall.Length.Split(2)[0], "for " + room.Id)))
        {
            draft.Note(room.Id + ": no " + habit.Box.Purpose + " box is planned: no inner wall has room for one");
        }
    }

    private static Distance Free(Wall wall)
    {
        Distance free = wall.Length;
        foreach (Opening opening in wall.Openings)
        {
            free -= opening.Right - opening.Left;
        }

        return free;
    }

    private void BesideEntrance(Room room, UsualBox habit)
    {
        string? unseen = null;
        foreach (Wall wall in room.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (opening.Entrance != EntranceSide.Inside || !habit.Openings.Contains(opening.Kind))
                {
                    continue;
                }

                if (draft.Doors.Outside(new(room, wall, opening)) is ({ } face, var seen))
                {
                    TrimmedOpening trimmed = TrimmedOpening.Of(seen, face.Usual);
                    Distance wish = seen.Hinge == WallEnd.Right ? Distance.Max(Distance.Zero, trimmed.Left - habit.From) : trimmed.Right + habit.From;
                    TryAt(face.Address, face.Length, habit, wish, "beside " + opening.Id + ", on the side of its latch");
                    return;
                }

                unseen ??= opening.Id;
            }
        }

        if (unseen is not null)
        {
            draft.Note(room.Id + ": no " + habit.Box.Purpose + " box is planned: no outside face is said to be behind " + unseen);
        }
    }

    private void BeforeOpenings(Room room, UsualBox habit)
    {
        WallPlan plan = new(room);
        for (int face = 0; face < plan.Count && !plan.IsTooLarge; face++)
        {
            foreach (Opening opening in plan.WallOf(face).Openings)
            {
                (decimal x, decimal y) = plan[face].InPlan(opening.Left.Ticks + ((opening.Right - opening.Left).Ticks / 2), habit.From.Ticks);
                PlanPoint place = new(Distance.FromTicks((long)x), Distance.FromTicks((long)y));
                if (habit.Openings.Contains(opening.Kind) && plan.Holds(place, Distance.Zero))
                {
                    draft.TryAdd(SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), habit.Box.WithPlan(place), "before " + opening.Id, habit);
                }
            }
        }
    }

    private bool TryAt(string address, Distance length, UsualBox habit, Distance wish, string reason)
    {
        if (HeightsOnWall.Of(draft, address, length, habit.Box, true) is not { } heights)
        {
            return false;
        }

        foreach (PlaceOnWall place in heights.AtStudsFirst(wish))
        {
            if (place.IsAsWanted && draft.TryAdd(address, habit.Box.WithAt(place.At).WithHeight(place.Height), reason, habit))
            {
                return true;
            }
        }

        return false;
    }

    private bool IsMeant(Room room, UsualBox habit)
    {
        if (!habit.OneInADwelling)
        {
            return habit.Rooms.Contains(room.Kind);
        }

        foreach (RoomKind kind in habit.Rooms)
        {
            foreach (Room one in draft.Described.Rooms)
            {
                if (one.Kind == kind && !one.Untouched && (habit.Place != UsualPlace.BesideEntrance || one.Walls.Exists(wall => wall.Openings.Exists(opening => opening.Entrance == EntranceSide.Inside && habit.Openings.Contains(opening.Kind)))))
                {
                    return one.Id == room.Id;
                }
            }
        }

        return false;
    }

    private bool HasOne(Room room, UsualBox habit)
    {
        if (habit.OneInADwelling)
        {
            return draft.State.Boxes.Exists(box => IsOne(box, habit));
        }

        foreach (int box in draft.BoxesOf(room.Id))
        {
            if (IsOne(draft.State.Boxes[box], habit))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOne(ResolvedBox box, UsualBox habit)
    {
        if (habit.Place == UsualPlace.BeforeOpenings)
        {
            return box.Surface.Kind == BoxSurface.Ceiling && box.Source.Purpose == habit.Box.Purpose;
        }

        Items<DeviceKind> devices = habit.Instead.Count > 0 ? habit.Instead : habit.Box.Devices;
        return box.Source.Devices.Exists(devices.Contains) || (habit.OrSwitchedReceptacle && box.Source.Switched is not (null or SwitchedPart.None));
    }
}
