using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <summary>Where each datum lies in a room: how far above another, and so on down to the storey's subfloor.</summary>
/// <remarks>
/// Each datum hangs on one other, so that what moves together stays together: a countertop 36 in above the finished floor is exactly
/// that, also while the floor itself is anything from 0 to 1-1/4 in. The room's subfloor hangs on the storey's, which is also what
/// elevations count from; a sunken room's lies lower. Immutable: each <c>With</c> gives new levels.
/// </remarks>
public sealed class Levels : IEquatable<Levels>
{
    // The storey's own zero, which is no datum that a tape is held to.
    private const int Storey = (int)Datum.ExistingPlate + 1;
    private const int NotSet = -1;

    private readonly int[] parents;
    private readonly DistanceRange[] offsets;

    private Levels(int[] parents, DistanceRange[] offsets)
    {
        this.parents = parents;
        this.offsets = offsets;
    }

    /// <summary>A room on the storey's own level with a bottom plate 1-1/2 in thick (dressed 2x lumber); nothing else is known.</summary>
    public static Levels Default { get; } = CreateDefault();

    /// <summary>The same with a bottom plate of such lumber.</summary>
    internal static Levels For(UsualMeasures usual) => usual.Lumber == UsualMeasures.Generic.Lumber ? Default : Default.With(Datum.BottomPlate, usual.Lumber, Datum.Subfloor);

    /// <summary>Says where a datum lies: so far above another.</summary>
    /// <remarks>
    /// The level line, grade and a walking surface outside belong to the storey: when they are said to lie above
    /// <see cref="Datum.Subfloor"/>, the storey's subfloor is meant, and <see cref="WithSubfloorAt"/> leaves them where they are.
    /// </remarks>
    /// <param name="datum">The datum placed; any but <see cref="Datum.Subfloor"/>. What was known of it before is dropped.</param>
    /// <param name="offset">From the other datum up to this one; negative below it; a range while it isn't known exactly.</param>
    /// <param name="above">The datum that it hangs on, which needn't be known yet.</param>
    /// <exception cref="ArgumentException">It is the subfloor, or it would hang on itself.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such datum.</exception>
    public Levels With(Datum datum, DistanceRange offset, Datum above) => new Draft(this).With(datum, offset, above).Done;

    private void Put(Datum datum, DistanceRange offset, Datum above)
    {
        int child = Index(datum, nameof(datum));
        int parent = Index(above, nameof(above));
        if (datum == Datum.Subfloor)
        {
            throw new ArgumentException("The room's subfloor hangs on the storey's: use WithSubfloorAt.", nameof(datum));
        }

        if (above == Datum.Subfloor && datum is Datum.LevelLine or Datum.Grade or Datum.WalkingSurface)
        {
            parent = Storey;
        }

        for (int node = parent; node is not (Storey or NotSet); node = parents[node])
        {
            if (node == child)
            {
                throw new ArgumentException("The " + DatumText.Name(above) + " is itself taken from the " + DatumText.Name(datum) + ".", nameof(above));
            }
        }

        Put(child, offset, parent);
    }

    /// <summary>Says what lies on the subfloor: puts <see cref="Datum.FinishedFloor"/> so far above it.</summary>
    /// <param name="floor">The layers.</param>
    /// <exception cref="ArgumentNullException"><paramref name="floor"/> is null.</exception>
    public Levels With(FloorBuildup floor) =>
        With(Datum.FinishedFloor, (floor ?? throw new ArgumentNullException(nameof(floor))).Thickness, Datum.Subfloor);

    /// <summary>Puts the room's subfloor at a level of the storey: below zero for a sunken room.</summary>
    /// <param name="elevation">The subfloor's level.</param>
    public Levels WithSubfloorAt(Elevation elevation) => new Draft(this).WithSubfloorAt(elevation).Done;

    /// <summary>Where a datum lies above the storey's subfloor.</summary>
    /// <param name="datum">The datum.</param>
    /// <param name="aboveStoreySubfloor">Its height, or the range that it lies in.</param>
    /// <returns>False if it, or one that it hangs on, is not known.</returns>
    public bool TryGet(Datum datum, out DistanceRange aboveStoreySubfloor) => TryGet(datum, out aboveStoreySubfloor, out _);

    /// <summary>Where a datum lies above the storey's subfloor, and what keeps that from being exact.</summary>
    /// <param name="datum">The datum.</param>
    /// <param name="aboveStoreySubfloor">Its height, or the range that it lies in.</param>
    /// <param name="becauseOf">The datum that is not known, or known as a range only (of several, the first from the datum down); null if the height is exact.</param>
    /// <returns>False if it, or one that it hangs on, is not known.</returns>
    public bool TryGet(Datum datum, out DistanceRange aboveStoreySubfloor, out Datum? becauseOf) =>
        TryClimb(Storey, Index(datum, nameof(datum)), out aboveStoreySubfloor, out becauseOf);

    /// <summary>How far one datum lies above another.</summary>
    /// <param name="from">The datum measured from.</param>
    /// <param name="to">The datum measured to.</param>
    /// <param name="offset">Positive if <paramref name="to"/> is the higher; exact where both hang on the same line by exact distances.</param>
    /// <returns>False if a datum that this needs is not known.</returns>
    public bool TryOffset(Datum from, Datum to, out DistanceRange offset) => TryOffset(from, to, out offset, out _);

    /// <summary>How far one datum lies above another, and what keeps that from being exact.</summary>
    /// <param name="from">The datum measured from.</param>
    /// <param name="to">The datum measured to.</param>
    /// <param name="offset">Positive if <paramref name="to"/> is the higher.</param>
    /// <param name="becauseOf">
    /// The datum that is not known, or known as a range only (of several, the first from <paramref name="to"/> down, then from
    /// <paramref name="from"/> down); null if the offset is exact.
    /// </param>
    /// <returns>False if a datum that this needs is not known.</returns>
    public bool TryOffset(Datum from, Datum to, out DistanceRange offset, out Datum? becauseOf) =>
        TryClimb(Index(from, nameof(from)), Index(to, nameof(to)), out offset, out becauseOf);

    /// <summary>How far one datum lies above another.</summary>
    /// <param name="from">The datum measured from.</param>
    /// <param name="to">The datum measured to.</param>
    /// <returns>Positive if <paramref name="to"/> is the higher; a range while it isn't known exactly.</returns>
    /// <exception cref="InvalidOperationException">A datum that this needs is not known; the message names it.</exception>
    public DistanceRange Offset(Datum from, Datum to) => TryOffset(from, to, out DistanceRange offset, out Datum? missing)
        ? offset
        : throw new InvalidOperationException(NotKnown(missing));

    /// <inheritdoc/>
    public bool Equals([NotNullWhen(true)] Levels? other)
    {
        if (other is null)
        {
            return false;
        }

        for (int i = 0; i < parents.Length; i++)
        {
            if (parents[i] != other.parents[i] || !offsets[i].Equals(other.offsets[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Levels);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = 17;
        for (int i = 0; i < parents.Length; i++)
        {
            hash = unchecked((hash * 31) + parents[i] + offsets[i].GetHashCode());
        }

        return hash;
    }

    /// <summary>The one distance between two datums, for what can't be answered with a range.</summary>
    internal Distance Exact(Datum from, Datum to) =>
        Exact(TryOffset(from, to, out DistanceRange offset, out Datum? becauseOf), offset, becauseOf);

    /// <summary>The one height of a datum above the storey's subfloor.</summary>
    internal Distance Exact(Datum datum) => Exact(TryGet(datum, out DistanceRange height, out Datum? becauseOf), height, becauseOf);

    private Distance Exact(bool known, DistanceRange found, Datum? becauseOf)
    {
        if (!known)
        {
            throw new InvalidOperationException(NotKnown(becauseOf));
        }

        int node = (int)becauseOf.GetValueOrDefault();
        return found.IsExact ? found.From : throw new InvalidOperationException(
            "Where the " + NodeName(node) + " lies isn't known exactly: " + offsets[node] + " above the " + NodeName(parents[node]) + ".");
    }

    private static string NotKnown(Datum? missing) => "Where the " + DatumText.Name(missing.GetValueOrDefault()) + " lies is not known.";

    private static Levels CreateDefault()
    {
        int[] parents = new int[Storey];
        for (int i = 0; i < parents.Length; i++)
        {
            parents[i] = NotSet;
        }

        return new Levels(parents, new DistanceRange[Storey])
            .WithSubfloorAt(default)
            .With(Datum.BottomPlate, UsualMeasures.Generic.Lumber, Datum.Subfloor);
    }

    private static int Index(Datum datum, string name) => (int)DatumText.Check(datum, name);

    private static string NodeName(int node) => node == Storey ? "storey's subfloor" : DatumText.Name((Datum)node);

    private void Put(int child, DistanceRange offset, int parent)
    {
        parents[child] = parent;
        offsets[child] = offset;
    }

    // Both lines are followed only to the first node that they share, so that a range below it cancels out.
    private bool TryClimb(int from, int to, out DistanceRange offset, out Datum? becauseOf)
    {
        offset = default;
        becauseOf = null;
        int onFromLine = 0;
        int node = from;
        while (true)
        {
            onFromLine |= 1 << node;
            if (node == Storey || parents[node] == NotSet)
            {
                break;
            }

            node = parents[node];
        }

        int fromEnd = node;
        DistanceRange up = default;
        for (node = to; (onFromLine & (1 << node)) == 0; node = parents[node])
        {
            if (node == Storey || parents[node] == NotSet)
            {
                // The lines never meet: one of them ends at a datum that isn't known.
                becauseOf = (Datum)(node == Storey ? fromEnd : node);
                return false;
            }

            Step(node, ref up, ref becauseOf);
        }

        DistanceRange down = default;
        for (int below = from; below != node; below = parents[below])
        {
            Step(below, ref down, ref becauseOf);
        }

        offset = up - down;
        return true;
    }

    private void Step(int node, ref DistanceRange sum, ref Datum? becauseOf)
    {
        sum += offsets[node];
        if (!offsets[node].IsExact)
        {
            becauseOf ??= (Datum)node;
        }
    }

    /// <summary>Levels while several things are said of them: they are copied once, and not for each.</summary>
    internal readonly struct Draft(Levels from)
    {
        /// <summary>The levels, once all is said.</summary>
        public Levels Done { get; } = new((int[])from.parents.Clone(), (DistanceRange[])from.offsets.Clone());

        /// <inheritdoc cref="Levels.With(Datum, DistanceRange, Datum)"/>
        public Draft With(Datum datum, DistanceRange offset, Datum above)
        {
            Done.Put(datum, offset, above);
            return this;
        }

        /// <inheritdoc cref="Levels.WithSubfloorAt"/>
        public Draft WithSubfloorAt(Elevation elevation)
        {
            Done.Put((int)Datum.Subfloor, elevation.AboveStoreySubfloor, Storey);
            return this;
        }
    }
}
