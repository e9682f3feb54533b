using System;

namespace BoxHeights;

/// <summary>A height of a box as the trade gives it: a distance, the edge of the box that it goes to, and the datum that it is measured from.</summary>
/// <remarks>
/// Two heights can be equal but not compared or added: "48 in to top above subfloor" and "44 in to center above finished floor" have an
/// order only once both are at one edge and one datum. A drawing's height that names no edge is a value of its own, to be judged under
/// each of its three readings (<see cref="ReadAs"/>). <c>default</c> is 0 in to bottom above subfloor. An edge or datum that isn't one
/// of its enum's throws <see cref="ArgumentOutOfRangeException"/> wherever one is taken.
/// </remarks>
public readonly partial record struct BoxHeight
{
    // Said this way round so that default names an edge.
    private readonly bool edgeUnstated;
    private readonly Edge edge;

    private BoxHeight(Edge? edge, Distance value, Datum datum)
    {
        this.edge = EdgeText.Check(edge.GetValueOrDefault(), nameof(edge));
        edgeUnstated = edge is null;
        Value = value;
        Datum = DatumText.Check(datum, nameof(datum));
    }

    /// <summary>From the datum up to the edge; negative below the datum.</summary>
    public Distance Value { get; }

    /// <summary>The edge of the box that the height goes to; null if a drawing doesn't say.</summary>
    public Edge? Edge => edgeUnstated ? null : edge;

    /// <summary>What the height is measured from.</summary>
    public Datum Datum { get; }

    /// <summary>A height to the bottom of the box.</summary>
    /// <param name="value">From the datum up to the box's bottom.</param>
    /// <param name="datum">What it is measured from.</param>
    public static BoxHeight ToBottom(Distance value, Datum datum) => To(BoxHeights.Edge.Bottom, value, datum);

    /// <summary>A height to the center of the box, which is that of its device and plate.</summary>
    /// <param name="value">From the datum up to the center.</param>
    /// <param name="datum">What it is measured from.</param>
    public static BoxHeight ToCenter(Distance value, Datum datum) => To(BoxHeights.Edge.Center, value, datum);

    /// <summary>A height to the top of the box.</summary>
    /// <param name="value">From the datum up to the box's top.</param>
    /// <param name="datum">What it is measured from.</param>
    public static BoxHeight ToTop(Distance value, Datum datum) => To(BoxHeights.Edge.Top, value, datum);

    /// <summary>A height as on a drawing that doesn't say which edge it goes to.</summary>
    /// <param name="value">From the datum up to an edge not named.</param>
    /// <param name="datum">What it is measured from.</param>
    public static BoxHeight EdgeUnstated(Distance value, Datum datum) => new(null, value, datum);

    /// <summary>A height to an edge of the box.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="value">From the datum up to the edge.</param>
    /// <param name="datum">What it is measured from.</param>
    public static BoxHeight To(Edge edge, Distance value, Datum datum) => new(edge, value, datum);

    /// <summary>The height to the center of a box whose plate's edge is to lie somewhere.</summary>
    /// <param name="plateEdge">The edge of the plate.</param>
    /// <param name="value">From the datum up to that edge of the plate.</param>
    /// <param name="plate">The plate.</param>
    /// <param name="datum">What it is measured from.</param>
    /// <exception cref="ArgumentException">The plate's size is needed and not stated.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public static BoxHeight FromPlate(Edge plateEdge, Distance value, PlateSize plate, Datum datum) =>
        ToCenter(Shift(value, plateEdge, BoxHeights.Edge.Center, plate.HalfHeight, plate.IsStated, nameof(plate)), datum);

    /// <summary>This height with another distance.</summary>
    /// <param name="value">From the datum up to the edge.</param>
    public BoxHeight WithValue(Distance value) => new(Edge, value, Datum);

    /// <summary>This height taken as going to an edge: one reading of a drawing that names none.</summary>
    /// <param name="edge">The edge to read it as.</param>
    /// <returns>The same distance to that edge; a height that names its edge already is returned as it is.</returns>
    public BoxHeight ReadAs(Edge edge) => edgeUnstated ? To(edge, Value, Datum) : this;

    /// <summary>The same place, said by another edge of the box.</summary>
    /// <param name="edge">The edge to give the height to.</param>
    /// <param name="box">The box; its nominal height is used.</param>
    /// <exception cref="ArgumentException">The box's size is needed and not stated.</exception>
    /// <exception cref="InvalidOperationException">This height names no edge.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public BoxHeight AtEdge(Edge edge, BoxSize box) =>
        To(edge, Shift(Value, StatedEdge(), edge, box.HalfHeight, box.IsStated, nameof(box)), Datum);

    /// <summary>From the center to an edge of the plate, or from an edge of the plate to the center.</summary>
    /// <remarks>
    /// Off the center the height given or returned goes to the plate and not to the box: the two share their center only.
    /// Take a box's own top or bottom to the center with <see cref="AtEdge(Edge, BoxSize)"/> first.
    /// </remarks>
    /// <param name="edge">The edge to give the height to.</param>
    /// <param name="plate">The plate.</param>
    /// <exception cref="ArgumentException">The plate's size is needed and not stated.</exception>
    /// <exception cref="InvalidOperationException">This height names no edge, or neither edge is the center.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public BoxHeight AtEdge(Edge edge, PlateSize plate)
    {
        Edge from = StatedEdge();
        if (from != BoxHeights.Edge.Center && edge != BoxHeights.Edge.Center)
        {
            throw new InvalidOperationException(
                "A box and its plate share only their center: take the height to the center by the box's size first, or use FromPlate for a plate's edge.");
        }

        return To(edge, Shift(Value, from, edge, plate.HalfHeight, plate.IsStated, nameof(plate)), Datum);
    }

    /// <summary>The same place, measured from another datum.</summary>
    /// <param name="datum">The datum to measure from.</param>
    /// <param name="levels">Where the datums lie.</param>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    /// <exception cref="InvalidOperationException">How far the datums lie apart isn't known exactly; the message names the datum and its range.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public BoxHeight From(Datum datum, Levels levels) =>
        new(Edge, Value + (levels ?? throw new ArgumentNullException(nameof(levels))).Exact(datum, Datum), datum);

    /// <summary>The same place, measured from another datum, where only the floor has been laid on the subfloor.</summary>
    /// <param name="datum">The subfloor, the finished floor or the bottom plate.</param>
    /// <param name="floor">What lies on the subfloor.</param>
    /// <exception cref="ArgumentNullException"><paramref name="floor"/> is null.</exception>
    /// <exception cref="InvalidOperationException">The floor isn't known exactly, or a datum is none of the three.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public BoxHeight From(Datum datum, FloorBuildup floor) => From(datum, Levels.Default.With(floor));

    /// <summary>Where the edge that this height names lies above the storey's subfloor.</summary>
    /// <param name="levels">Where the datums lie.</param>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    /// <exception cref="InvalidOperationException">This height names no edge, or its datum isn't known exactly; the message names the datum and its range.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public Elevation Resolve(Levels levels)
    {
        StatedEdge();
        return new Level(Value, Datum).Resolve(levels);
    }

    /// <summary>Where the edge that this height names lies above the storey's subfloor, exactly or as a range.</summary>
    /// <param name="levels">Where the datums lie.</param>
    /// <param name="aboveStoreySubfloor">The height found.</param>
    /// <returns>False if the datum is not known, or this height names no edge (see <see cref="ReadAs"/>).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="levels"/> is null.</exception>
    /// <exception cref="OverflowException">The result is too large.</exception>
    public bool TryResolve(Levels levels, out DistanceRange aboveStoreySubfloor)
    {
        if (edgeUnstated)
        {
            aboveStoreySubfloor = default;
            return false;
        }

        return new Level(Value, Datum).TryResolve(levels, out aboveStoreySubfloor);
    }

    private static Distance Shift(Distance value, Edge from, Edge to, Distance half, bool stated, string name)
    {
        if (from == to)
        {
            return value;
        }

        // Edge counts from bottom over center to top, half a height each.
        return stated
            ? value + (half * ((int)to - (int)from))
            : throw new ArgumentException("The size isn't stated, and an edge is taken to another by it.", name);
    }

    private Edge StatedEdge() => edgeUnstated
        ? throw new InvalidOperationException("This height doesn't say which edge it goes to: read it as one first (ReadAs).")
        : edge;
}
