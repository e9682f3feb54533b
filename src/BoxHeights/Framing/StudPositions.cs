using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where the studs of a wall stand: a layout turned into faces.</summary>
/// <remarks>
/// The first stud's near face is one spacing less half a stud from the end that the layout is pulled from (15-1/4 in for 16 in on center),
/// so that sheet edges break on centers. Studs count from the left end of the wall; the stud in the corner itself isn't counted, and no other is set where it stands:
/// a mark of the layout that falls on the one in the far corner is none.
/// </remarks>
public sealed class StudPositions
{
    private const long Most = 10_000;

    private readonly long[] faces;
    private readonly long thickness;

    private StudPositions(long[] faces, long thickness, StudKnowledge known)
    {
        this.faces = faces;
        this.thickness = thickness;
        Known = known;
    }

    /// <summary>No studs.</summary>
    internal static StudPositions None { get; } = new([], 0, StudKnowledge.Declared);

    /// <summary>How many studs there are, and how well they are known.</summary>
    public override string ToString() => Count + " studs, " + Known;

    /// <summary>How well these positions are known.</summary>
    public StudKnowledge Known { get; }

    /// <summary>How many studs there are between the corners.</summary>
    public int Count => faces.Length;

    /// <summary>From the left to the right face of each, from the wall's left end.</summary>
    public Items<DistanceRange> Faces
    {
        get
        {
            List<DistanceRange> both = [];
            foreach (long face in faces)
            {
                both.Add(new(Distance.FromTicks(face), Distance.FromTicks(face + thickness)));
            }

            return new(both);
        }
    }

    /// <summary>Works out the studs of a wall.</summary>
    /// <param name="layout">Their layout.</param>
    /// <param name="wallLength">The wall's length between framing faces.</param>
    /// <exception cref="ArgumentNullException"><paramref name="layout"/> is null.</exception>
    /// <exception cref="ArgumentException">The wall would have more than 10,000 studs.</exception>
    public static StudPositions Along(StudLayout layout, Distance wallLength)
    {
        Guard.NotNull(layout, nameof(layout));

        long count = CountOf(layout, wallLength);
        if (count > Most)
        {
            throw new ArgumentException("A wall has no more than " + Most + " studs; this one would have " + count + ".", nameof(layout));
        }

        long thickness = ThicknessOf(layout).Ticks;
        long[] faces = new long[count];
        long spacing = layout.Spacing?.Ticks ?? 0;
        long first = layout.FirstFace?.Ticks ?? spacing - (thickness / 2);
        for (int stud = 0; stud < faces.Length; stud++)
        {
            long near = first + (stud * spacing);
            faces[stud] = layout.Faces.Count > 0 ? layout.Faces[stud].Ticks : layout.From == WallEnd.Left ? near : wallLength.Ticks - near - thickness;
        }

        Array.Sort(faces);
        return new(faces, thickness, layout.Known);
    }

    /// <summary>Whether a stud's left face is there.</summary>
    internal bool HasFace(Distance left) => Array.BinarySearch(faces, left.Ticks) >= 0;

    /// <summary>Whether a layout on a wall gives studs that can be counted one by one: at most 10,000.</summary>
    internal static bool IsCountable(StudLayout layout, Distance wallLength) => CountOf(layout, wallLength) <= Most;

    /// <summary>Where a box nailed to a stud has its center.</summary>
    /// <param name="stud">The stud, from 1 at the left.</param>
    /// <param name="side">The side of the stud.</param>
    /// <param name="boxWidth">The box's outside width.</param>
    /// <param name="center">The center, from the wall's left end.</param>
    /// <returns>False when the wall has no such stud.</returns>
    public bool TryCenter(int stud, StudSide side, Distance boxWidth, out Distance center)
    {
        if (stud < 1 || stud > faces.Length)
        {
            center = default;
            return false;
        }

        long half = boxWidth.Ticks / 2;
        long face = faces[stud - 1];
        center = Distance.FromTicks(side == StudSide.Right ? face + thickness + half : face - half);
        return true;
    }

    /// <summary>The stud that a box is nailed to where its center is at a place, and the side of it.</summary>
    /// <param name="center">The center, from the wall's left end.</param>
    /// <param name="boxWidth">The box's outside width.</param>
    /// <returns>Null where the box is set against no stud.</returns>
    internal (int Stud, StudSide Side)? Holding(Distance center, Distance boxWidth)
    {
        for (int stud = 1; stud <= faces.Length; stud++)
        {
            TryCenter(stud, StudSide.Left, boxWidth, out Distance left);
            TryCenter(stud, StudSide.Right, boxWidth, out Distance right);
            if (center == left || center == right)
            {
                return (stud, center == left ? StudSide.Left : StudSide.Right);
            }
        }

        return null;
    }

    /// <summary>The two faces of a stud.</summary>
    /// <param name="stud">The stud, from 1 at the left.</param>
    /// <param name="left">Its left face, from the wall's left end.</param>
    /// <param name="right">Its right face, from the wall's left end.</param>
    /// <returns>False when the wall has no such stud.</returns>
    public bool TryFaces(int stud, out Distance left, out Distance right)
    {
        bool known = stud >= 1 && stud <= faces.Length;
        left = known ? Distance.FromTicks(faces[stud - 1]) : default;
        right = known ? left + Distance.FromTicks(thickness) : default;
        return known;
    }

    private static Distance ThicknessOf(StudLayout layout) => layout.Thickness ?? UsualMeasures.Generic.Lumber;

    /// <summary>How many studs stand between the first and the far corner, by division: a spacing of a hair would never be walked to its end.</summary>
    private static long CountOf(StudLayout layout, Distance wallLength)
    {
        if (layout.Faces.Count > 0 || layout.Spacing is not { } spacing)
        {
            return layout.Faces.Count;
        }

        long thickness = ThicknessOf(layout).Ticks;
        long first = layout.FirstFace?.Ticks ?? spacing.Ticks - (thickness / 2);
        long last = wallLength.Ticks - (2 * thickness);
        return first <= last ? ((last - first) / spacing.Ticks) + 1 : 0;
    }
}
