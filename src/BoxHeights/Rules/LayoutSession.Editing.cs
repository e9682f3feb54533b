using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>What a drawing changes besides a box's place on its wall.</content>
public sealed partial class LayoutSession
{
    // So many boxes are put back one by one; for more of them the dwelling is opened anew.
    private const int FewBoxes = 8;

    private SessionState? held;

    /// <summary>The session as it is now, as a value: keep it, and <see cref="Restore"/> comes back to it. A stack of them is undo, another redo.</summary>
    public SessionState State => held ??= new(ToDwelling(), evaluator);

    /// <summary>Comes back to how the session, or another, once was.</summary>
    /// <param name="state">What <see cref="State"/> was then.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="state"/> is null.</exception>
    public SessionChange Restore(SessionState state)
    {
        _ = state ?? throw new ArgumentNullException(nameof(state));
        if (state.Equals(State))
        {
            return SessionChange.None;
        }

        if (ReferenceEquals(state.Evaluator, evaluator) && OtherBoxes(State.Dwelling, state.Dwelling) is { } others)
        {
            return Compared(() => others.ForEach(box => Describe(Find(box.Id), box)));
        }

        evaluator = state.Evaluator;
        return Reopen(state.Dwelling);
    }

    /// <summary>The boxes of a dwelling that are described otherwise in another; null where more than a few boxes differ.</summary>
    private List<DeviceBox>? OtherBoxes(Dwelling now, Dwelling then)
    {
        IReadOnlyList<PlacedBox> here = now.PlacedBoxes();
        IReadOnlyList<PlacedBox> there = then.PlacedBoxes();
        if (here.Count != there.Count || here.Count != indexOf.Count || !now.WithBoxesLeft(_ => null).Equals(then.WithBoxesLeft(_ => null)))
        {
            return null;
        }

        List<DeviceBox> others = [];
        for (int i = 0; i < here.Count; i++)
        {
            if (here[i].Address != there[i].Address || here[i].Box.Id != there[i].Box.Id)
            {
                return null;
            }

            if (!here[i].Box.Equals(there[i].Box))
            {
                others.Add(there[i].Box);
            }
        }

        return others.Count <= FewBoxes ? others : null;
    }

    /// <summary>Judges by other rules from now on, with the same options.</summary>
    /// <param name="rules">The rules.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rules"/> is null.</exception>
    public SessionChange Change(RuleSet rules)
    {
        evaluator = evaluator.With(rules);
        return Reopen(ToDwelling());
    }

    /// <summary>Changes a box: its devices, cables, size, purpose, whatever it says.</summary>
    /// <param name="id">The box.</param>
    /// <param name="change">Gives the box as it shall be; its id stays.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such box, or its id is changed.</exception>
    /// <exception cref="InvalidOperationException">It is pinned, stays so, and is put elsewhere.</exception>
    public SessionChange Change(string id, Func<DeviceBox, DeviceBox> change)
    {
        int index = Find(id);
        _ = change ?? throw new ArgumentNullException(nameof(change));
        DeviceBox before = AsItIs(index);
        DeviceBox after = change(before) ?? throw new ArgumentException("A box is changed, not taken away.", nameof(change));
        if (after.Id != id)
        {
            throw new ArgumentException("The box \"" + id + "\" keeps its id.", nameof(change));
        }

        if (before.Pinned && after.Pinned && (before.At != after.At || before.Height != after.Height || before.Plan != after.Plan || before.Mounting != after.Mounting))
        {
            throw Pinned(id);
        }

        return after.Equals(before) ? SessionChange.None : Describe(index, after);
    }

    /// <summary>Puts a box on another wall, or elsewhere on its own.</summary>
    /// <param name="id">The box.</param>
    /// <param name="address">The wall: "room/wall".</param>
    /// <param name="along">Its center from the wall's left end; not negative.</param>
    /// <param name="height">Its height.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> or <paramref name="address"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such box, or no such wall.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="along"/> is negative.</exception>
    /// <exception cref="InvalidOperationException">It is pinned.</exception>
    public SessionChange Move(string id, string address, Distance along, BoxHeight height)
    {
        int box = Movable(id);
        _ = address ?? throw new ArgumentNullException(nameof(address));
        along = Guard.NotNegative(along, nameof(along));
        if (state.Boxes[box].Surface.Address == address)
        {
            return Move(id, along, height);
        }

        if (state.SurfaceAt(address) is not { Kind: BoxSurface.Wall } wall)
        {
            throw DwellingAddresses.NoSuch(state.Dwelling, "wall", address, nameof(address));
        }

        DeviceBox moved = state.Boxes[box].Source with { At = along, Height = height, Measured = null, Plan = null };
        moved = moved with { Mounting = new ResolvedBox(moved, wall, false).HeldAt(along, state.Options.Catalog) };
        return Compared(() =>
        {
            _ = Remove(id);
            _ = Add(address, moved);
        });
    }

    /// <summary>Puts a box in a ceiling or a floor elsewhere in plan.</summary>
    /// <param name="id">The box.</param>
    /// <param name="plan">Its center, from the left end of the room's first wall to the right and into the room.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentException">There is no such box, or it is on a wall.</exception>
    /// <exception cref="InvalidOperationException">It is pinned.</exception>
    public SessionChange MoveInPlan(string id, PlanPoint plan)
    {
        int box = Movable(id);
        return state.Boxes[box].Surface.Kind == BoxSurface.Wall
            ? throw new ArgumentException("The box \"" + id + "\" is on a wall: it is moved along it.", nameof(id))
            : Describe(box, AsItIs(box).WithPlan(plan));
    }

    /// <summary>Changes a wall and what is on it: its length, doors and windows, counters, cabinets, finishes.</summary>
    /// <param name="address">The wall: "room/wall", where the room may be an outside face.</param>
    /// <param name="change">Gives the wall as it shall be, with its boxes as they are. Another id gives it another address.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such wall, or a box is then there twice.</exception>
    public SessionChange ChangeWall(string address, Func<Wall, Wall> change)
    {
        _ = address ?? throw new ArgumentNullException(nameof(address));
        _ = change ?? throw new ArgumentNullException(nameof(change));
        bool found = false;
        Items<Wall> Changed(string owner, Items<Wall> walls) => walls.Select(wall =>
        {
            if (owner + "/" + wall.Id != address)
            {
                return wall;
            }

            found = true;
            return change(wall) ?? throw new ArgumentException("A wall is changed, not taken away.", nameof(change));
        });
        Dwelling now = ToDwelling();
        Dwelling then = now with
        {
            Rooms = now.Rooms.Select(room => room.WithWalls(Changed(room.Id, room.Walls))),
            Outside = now.Outside.Select(face => face.WithWalls(Changed(face.Id, face.Walls))),
        };
        return found ? Become(now, then, nameof(change)) : throw DwellingAddresses.NoSuch(state.Dwelling, "wall", address, nameof(address));
    }

    /// <summary>Changes a room: its walls, what stands in it, its floor.</summary>
    /// <param name="id">The room.</param>
    /// <param name="change">Gives the room as it shall be.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such room, or a box is then there twice.</exception>
    public SessionChange ChangeRoom(string id, Func<Room, Room> change)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        _ = change ?? throw new ArgumentNullException(nameof(change));
        bool found = false;
        Dwelling now = ToDwelling();
        Dwelling then = now.WithRooms(now.Rooms.Select(room =>
        {
            if (room.Id != id)
            {
                return room;
            }

            found = true;
            return change(room) ?? throw new ArgumentException("A room is changed, not taken away.", nameof(change));
        }));
        return found ? Become(now, then, nameof(change)) : throw DwellingAddresses.NoSuch(state.Dwelling, "room", id, nameof(id));
    }

    /// <summary>A change that brings no box twice: two of one id can't be told apart any more.</summary>
    private SessionChange Become(Dwelling now, Dwelling then, string argument)
    {
        if (then.Equals(now))
        {
            return SessionChange.None;
        }

        HashSet<string> twice = Twice(then);
        twice.ExceptWith(Twice(now));
        foreach (string id in twice)
        {
            throw new ArgumentException("The box \"" + id + "\" would be there twice.", argument);
        }

        return Reopen(then);
    }

    /// <summary>What several changes did together.</summary>
    private SessionChange Compared(Action changes)
    {
        List<Finding> before = [];
        state.CollectInto(before);
        changes();
        List<Finding> after = [];
        state.CollectInto(after);
        return SessionChange.Between(before, after);
    }

    private static HashSet<string> Twice(Dwelling dwelling)
    {
        HashSet<string> once = new(StringComparer.Ordinal);
        HashSet<string> twice = new(StringComparer.Ordinal);
        foreach (PlacedBox placed in dwelling.PlacedBoxes())
        {
            if (!once.Add(placed.Box.Id))
            {
                twice.Add(placed.Box.Id);
            }
        }

        return twice;
    }

    private int Movable(string id)
    {
        int box = Find(id);
        return state.Boxes[box].Source.Pinned ? throw Pinned(id) : box;
    }

    private static InvalidOperationException Pinned(string id) => new("The box \"" + id + "\" is pinned where it is: change that first.");
}

/// <summary>How a session was at one time: the dwelling, and what it was judged by. Equal to another of the same dwelling and rules.</summary>
[Told]
public sealed partial class SessionState : IEquatable<SessionState>
{
    /// <summary>The dwelling as it was.</summary>
    public Dwelling Dwelling { get; }

    /// <summary>What it was judged by.</summary>
    public RuleSet Rules => Evaluator.Rules;

    internal LayoutEvaluator Evaluator { get; }

    /// <inheritdoc/>
    public bool Equals(SessionState? other) => other is not null && (ReferenceEquals(Evaluator, other.Evaluator) || Rules.Equals(other.Rules)) && Dwelling.Equals(other.Dwelling);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as SessionState);

    /// <inheritdoc/>
    public override int GetHashCode() => Dwelling.Name.GetHashCode();

    /// <summary>The dwelling's name.</summary>
    public override string ToString() => Dwelling.Name;
}
