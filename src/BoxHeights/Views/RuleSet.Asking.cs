using System;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>What one row allows, without a house: a wall is made for the question, with nothing on it but what the question names.</content>
public sealed partial class RuleSet
{
    // 12 ft: long enough for whatever is asked of a box in its middle.
    private static readonly Distance AskedWall = Distance.FromInches(144);

    /// <summary>The heights that a row allows a device, to the center of its box above the finished floor.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="device">The device, alone in a generic box of one gang.</param>
    /// <param name="over">The counter that it is over; none for a bare wall.</param>
    /// <param name="floor">The finished floor; not known unless given.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such row, or it is about several boxes or a whole room.</exception>
    public RuleAllows Allowed(string id, DeviceKind device, Counter? over = null, FloorBuildup? floor = null) => Allowed(
        id,
        new DeviceBox("box", device.IsSwitch ? BoxPurpose.Switch : over is not null ? BoxPurpose.Counter : BoxPurpose.General)
            .WithDevices(new[] { device }).WithHeight(BoxHeight.ToCenter(Distance.Zero, Datum.FinishedFloor)),
        over,
        floor);

    /// <summary>The heights that a row allows a box, in the terms of the box's own height.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="box">The box. Where it is along a wall doesn't matter.</param>
    /// <param name="over">The counter that it is over; none for a bare wall.</param>
    /// <param name="floor">The finished floor; not known unless given.</param>
    /// <param name="storey">The storey, with its ceiling, board and studs; nothing of them is known unless given.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> or <paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no such row, or it is about several boxes or a whole room.</exception>
    public RuleAllows Allowed(string id, DeviceBox box, Counter? over = null, FloorBuildup? floor = null, Storey? storey = null)
    {
        Wall wall = new("wall", over is null ? AskedWall : Distance.Max(AskedWall, over.Right));
        Distance along = over is null ? AskedWall.Split(2)[0] : over.Left + (over.Right - over.Left).Split(2)[0];
        return Asked(id, over is null ? wall : wall.WithCounters(new[] { over }), floor, storey, evaluation => evaluation.AllowedAt(new PlacedBox("room/wall", Guard.NotNull(box, nameof(box))), along));
    }

    /// <summary>The places along a wall that a row allows a box at its height.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="box">The box, with its height.</param>
    /// <param name="wall">The wall, with what is on it.</param>
    /// <param name="floor">The finished floor; not known unless given.</param>
    /// <param name="storey">The storey, with its ceiling, board and studs; nothing of them is known unless given.</param>
    /// <returns>Centers from the wall's left end.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There is no such row, or it is about several boxes or a whole room; or the box has no height.</exception>
    public RuleAllows AllowedAlong(string id, DeviceBox box, Wall wall, FloorBuildup? floor = null, Storey? storey = null)
    {
        BoxHeight height = Guard.NotNull(box, nameof(box)).Height ?? throw new ArgumentException("Where along a wall depends on the height, and the box has none.", nameof(box));
        Wall asked = wall ?? throw new ArgumentNullException(nameof(wall));
        return Asked(id, asked, floor, storey, evaluation => evaluation.AllowedAlong(new PlacedBox("room/" + asked.Id, box), height));
    }

    private RuleAllows Asked(string id, Wall wall, FloorBuildup? floor, Storey? storey, Func<Evaluation, AllowedView> ask)
    {
        Rule row = Row(id);
        if (row is not (PlacementRule or LimitRule))
        {
            throw new ArgumentException("The row \"" + id + "\" is about several boxes or a whole room: ask an evaluation.", nameof(id));
        }

        Storey on = storey ?? new("storey");
        Room room = new Room("room", Kitchen(wall) ? RoomKind.Kitchen : RoomKind.Hall, on.Id).WithFloor(floor).WithWalls(new[] { wall });
        Dwelling house = new Dwelling("question").WithStoreys(new[] { on }).WithRooms(new[] { room });
        foreach (RuleAllows rule in ask(new LayoutEvaluator(new RuleSet(new[] { row })).Evaluate(house)).Rules)
        {
            return rule;
        }

        return new(row, AllowedHeights.Anything, false, LengthUnits.Inches, "it doesn't speak of such a box");
    }

    private static bool Kitchen(Wall wall) => wall.Counters.Exists(counter => counter.Kind == CounterKind.Kitchen);
}
