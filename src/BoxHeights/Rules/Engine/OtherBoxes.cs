using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The boxes of a dwelling that differs from a layout's in its boxes alone, and which of them are others.</summary>
internal sealed class OtherBoxes
{
    private readonly LayoutState state;
    private HashSet<string>? names;

    private OtherBoxes(LayoutState state) => this.state = state;

    /// <summary>All boxes, in the dwelling's order; one that is as it was is the layout's own.</summary>
    public List<ResolvedBox> Resolved { get; } = [];

    /// <summary>The number in the layout of each box; negative where it is added.</summary>
    public int[] Before { get; private set; } = [];

    /// <summary>The number here of each of the layout's boxes; null where all are the same.</summary>
    public int[]? Numbers { get; private set; }

    /// <summary>Boxes that are the same but for where they are.</summary>
    public List<int> Moved { get; } = [];

    /// <summary>Boxes that are described otherwise in other ways, or added.</summary>
    public List<int> Others { get; } = [];

    /// <summary>Whether one of them is the first or was the last of its kind that the dwelling lists, or a rule may look at any box, so that anything may be judged otherwise.</summary>
    public bool ChangeWhatIsListed { get; private set; }

    /// <summary>Compares a layout with a dwelling that has the same rooms, faces and walls.</summary>
    /// <returns>Null where a box went, or one is at fault or may put others at fault.</returns>
    public static OtherBoxes? Between(LayoutState state, Dwelling dwelling)
    {
        OtherBoxes boxes = new(state) { ChangeWhatIsListed = !state.Rules.LooksAtOwnBoxesOnly };
        return SizeCaps.Beyond(dwelling, state.Options.Caps) is null && boxes.Enter(dwelling) ? boxes : null;
    }

    private bool Enter(Dwelling dwelling)
    {
        int surface = 0;
        int next = 0;
        List<int> before = [];
        foreach (Room room in dwelling.Rooms)
        {
            foreach (Wall wall in room.Walls)
            {
                if (!Enter(wall.Boxes))
                {
                    return false;
                }
            }

            if (!Enter(room.Overhead) || !Enter(room.InFloor))
            {
                return false;
            }
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            foreach (Wall wall in face.Walls)
            {
                if (!Enter(wall.Boxes))
                {
                    return false;
                }
            }
        }

        Before = before.ToArray();
        if (Resolved.Count > state.Boxes.Count)
        {
            Numbers = new int[state.Boxes.Count];
            for (int box = 0; box < Before.Length; box++)
            {
                if (Before[box] >= 0)
                {
                    Numbers[Before[box]] = box;
                }
            }
        }

        return surface == state.SurfaceCount && next == state.Boxes.Count;

        bool Enter(Items<DeviceBox> boxes)
        {
            if (surface == state.SurfaceCount)
            {
                return false;
            }

            ResolvedSurface on = state.Surfaces[surface++];
            foreach (DeviceBox box in boxes)
            {
                bool isThere = next < state.Boxes.Count && ReferenceEquals(state.Boxes[next].Surface, on) && state.Boxes[next].Source.Id == box.Id;
                before.Add(isThere ? next : -1);
                if (!(isThere ? Was(next, box) : Is(box, on)))
                {
                    return false;
                }

                next += isThere ? 1 : 0;
            }

            return next == state.Boxes.Count || !ReferenceEquals(state.Boxes[next].Surface, on);
        }
    }

    /// <summary>Takes in a box that was there under its id.</summary>
    private bool Was(int index, DeviceBox box)
    {
        ResolvedBox was = state.Boxes[index];
        if (ReferenceEquals(was.Source, box) || was.Source.Equals(box))
        {
            Resolved.Add(was);
            return true;
        }

        if (was.IsBroken || was.Source.Controls != box.Controls || state.Faults.Exists(fault => fault.Subject == box.Id) || Sound(box, was.Surface) is not { } resolved)
        {
            return false;
        }

        (IsMoved(was.Source, box) ? Moved : Others).Add(Resolved.Count);
        ChangeWhatIsListed |= state.Spaces.IsLastOfItsKind(index);
        Resolved.Add(resolved);
        return true;
    }

    /// <summary>Takes in a box that is added.</summary>
    private bool Is(DeviceBox box, ResolvedSurface surface)
    {
        if (names is null)
        {
            names = DwellingAddresses.NamesOfParts(state.Dwelling);
            foreach (ResolvedBox one in state.Boxes)
            {
                names.Add(one.Source.Id);
            }
        }

        if (!names.Add(box.Id) || state.AreNamesOpen(box.Controls) || Sound(box, surface) is not { } resolved)
        {
            return false;
        }

        Others.Add(Resolved.Count);
        Resolved.Add(resolved);
        return true;
    }

    private ResolvedBox? Sound(DeviceBox box, ResolvedSurface surface)
    {
        ChangeWhatIsListed |= state.Spaces.IsFirstOfItsKind(new(surface.Address, box));
        return state.SoundBut(box, surface);
    }

    /// <summary>Whether all about a box is the same but where it is: what rules ask of it else doesn't change.</summary>
    private static bool IsMoved(DeviceBox was, DeviceBox now) =>
        was.Height is { } one && now.Height is { } other && one.Edge == other.Edge && one.Datum == other.Datum && (was with { At = now.At, Height = now.Height }).Equals(now);
}
