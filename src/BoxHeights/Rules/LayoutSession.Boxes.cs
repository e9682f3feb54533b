using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>Boxes that are added to the dwelling and taken away: the open layout takes them in, unless more than their surroundings would have to be judged again.</content>
public sealed partial class LayoutSession
{
    // So many numbers of boxes that left are kept unused: then the dwelling is opened anew.
    private const int MostUnused = 256;

    private readonly HashSet<string> takenAway = new(StringComparer.Ordinal);
    private int described;
    private int unused;
    private HashSet<string>? namesOfParts;

    /// <summary>Adds a box: one that <see cref="AllowedAt(PlacedBox, Distance)"/> and <see cref="TryNearest(PlacedBox, Distance, BoxHeight, out NearestPlace?)"/> were asked about, as it is.</summary>
    /// <param name="placed">The box and the surface it goes on.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="placed"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such surface, or there is a box of its id: two couldn't be told apart any more.</exception>
    public SessionChange Add(PlacedBox placed)
    {
        DeviceBox box = Guard.NotNull(placed, nameof(placed)).Box;
        if (indexOf.ContainsKey(box.Id))
        {
            throw new ArgumentException("There is a box \"" + box.Id + "\" already.", nameof(placed));
        }

        held = null;
        List<Finding> before = [];
        List<Finding> after = [];
        if ((namesOfParts ??= DwellingAddresses.NamesOfParts(state.Dwelling)).Contains(box.Id) || !state.TryJoin(placed, before, after))
        {
            return Reopen(ToDwelling().WithBox(placed));
        }

        indexOf.Add(box.Id, state.Boxes.Count - 1);
        Array.Resize(ref moved, state.Boxes.Count);
        return SessionChange.Between(before, after);
    }

    /// <summary>Adds a box.</summary>
    /// <param name="address">The surface it goes on: "room/wall", "room/ceiling" or "room/floor".</param>
    /// <param name="box">The box.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such surface, or there is a box of its id: two couldn't be told apart any more.</exception>
    public SessionChange Add(string address, DeviceBox box) => Add(new PlacedBox(address, box));

    /// <summary>Carries a remedy out: all of it, or nothing where it can't be.</summary>
    /// <param name="remedy">What a finding or cause of the session as it is now offers. <see cref="NoneFound"/> changes nothing.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="remedy"/> is null.</exception>
    /// <exception cref="ArgumentException">It adds a box whose id is taken, or to a surface that isn't there any more.</exception>
    /// <exception cref="InvalidOperationException">It moves a box that was pinned meanwhile.</exception>
    public SessionChange Apply(Remedy remedy)
    {
        _ = Guard.NotNull(remedy, nameof(remedy));
        SessionState before = State;
        return Compared(() =>
        {
            try
            {
                foreach (BoxChange change in remedy.ChangesIn(before.Dwelling))
                {
                    _ = Apply(change);
                }
            }
            catch
            {
                _ = Restore(before);
                throw;
            }
        });
    }

    /// <summary>Carries out what becomes of one box, of a remedy or of <see cref="MendedDwelling.Boxes"/>.</summary>
    /// <param name="change">The change.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="change"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such box any more; or there is one already that was to be added, or no such surface.</exception>
    /// <exception cref="InvalidOperationException">It moves a box that is pinned.</exception>
    public SessionChange Apply(BoxChange change) => Guard.NotNull(change, nameof(change)).Before is null ? Add(change.After) : Change(change.Id, box => change.After.Box.WithPinned(box.Pinned));

    /// <summary>Takes a box away.</summary>
    /// <param name="id">The box.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentException">There is no such box.</exception>
    /// <exception cref="InvalidOperationException">It is pinned.</exception>
    public SessionChange Remove(string id)
    {
        int box = Movable(id);
        held = null;
        List<Finding> before = [];
        List<Finding> after = [];
        if (unused == MostUnused || !state.TryLeave(box, before, after))
        {
            return Reopen(ToDwelling().WithoutBox(id));
        }

        indexOf.Remove(id);
        unused++;
        if (box < described)
        {
            takenAway.Add(id);
        }

        return SessionChange.Between(before, after);
    }

    /// <summary>A box described otherwise, on its surface and under its id.</summary>
    private SessionChange Describe(int index, DeviceBox box)
    {
        List<Finding> before = [];
        List<Finding> after = [];
        if (!state.TryDescribe(index, box, before, after))
        {
            Dwelling now = ToDwelling();
            DeviceBox was = now.FindBox(box.Id)!.Box;
            return Reopen(now.WithBoxes(one => ReferenceEquals(one, was) ? box : one));
        }

        held = null;
        moved[index] = false;
        return SessionChange.Between(before, after);
    }

    /// <summary>The dwelling as it is now: what <see cref="Evaluate"/> judges, and what <see cref="State"/> keeps with the rules that it is judged by.</summary>
    public Dwelling ToDwelling()
    {
        List<PlacedBox> added = [];
        for (int box = described; box < state.Boxes.Count; box++)
        {
            if (indexOf.TryGetValue(state.Boxes[box].Source.Id, out int index) && index == box)
            {
                added.Add(new(state.Boxes[box].Surface.Address, AsItIs(box)));
            }
        }

        Dwelling left = state.Dwelling.WithBoxesLeft(box =>
            takenAway.Contains(box.Id) ? null
            : indexOf.TryGetValue(box.Id, out int index) && index < described && ReferenceEquals(entered[index], box) ? AsItIs(index)
            : box);
        return added.Count == 0 ? left : left.WithBoxes(added);
    }

    private DeviceBox AsItIs(int box) => moved[box]
        ? Moved(box, state.Boxes[box].Source, Stays(box, state.AtOf(box)) ? null : state.AtOf(box), state.HeightOf(box)!.Value)
        : state.Boxes[box].Source;

    /// <summary>Begins to count boxes that join and leave.</summary>
    private void BeginBoxes()
    {
        described = state.Boxes.Count;
        unused = 0;
        takenAway.Clear();
        namesOfParts = null;
    }
}
