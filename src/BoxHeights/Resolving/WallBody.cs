using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where a wall face lies on its wall, when more than one face of the wall is described: places on all of them are turned into places on one.</summary>
internal sealed class WallBody
{
    private WallBody(string id, bool isBack, Distance shift)
    {
        Id = id;
        IsBack = isBack;
        Shift = shift;
    }

    /// <summary>The address of the face whose places the others' are turned into: the same for every face of the wall.</summary>
    public string Id { get; }

    /// <summary>Whether this face is on the other side of the wall from that one.</summary>
    public bool IsBack { get; }

    private Distance Shift { get; }

    /// <summary>A place on this face as a place on the wall. Faces back to back run against each other.</summary>
    public Distance Along(Distance along) => IsBack ? Shift - along : Shift + along;

    /// <summary>
    /// Joins the faces that are said to be back to back and share a stretch. Where it isn't said how far one is off the other, faces of equal length are
    /// taken to match; others aren't joined.
    /// </summary>
    public static void Join(IReadOnlyList<ResolvedSurface> faces)
    {
        Dictionary<string, List<(ResolvedSurface Face, Distance Offset)>> behind = Neighbors(faces);
        List<string> roots = [.. behind.Keys];
        roots.Sort(StringComparer.Ordinal);
        foreach (ResolvedSurface root in roots.ConvertAll(address => Find(faces, address)!))
        {
            if (root.Body is not null)
            {
                continue;
            }

            root.Body = new(root.Address, false, Distance.Zero);
            Queue<ResolvedSurface> reached = new([root]);
            while (reached.Count > 0)
            {
                ResolvedSurface from = reached.Dequeue();
                foreach ((ResolvedSurface to, Distance offset) in behind[from.Address])
                {
                    if (to.Body is null)
                    {
                        // The other face's right end lies at the offset: its place y is this face's place (offset + its length − y).
                        to.Body = new(root.Address, !from.Body!.IsBack, from.Body.Along(offset + to.Length));
                        reached.Enqueue(to);
                    }
                }
            }
        }
    }

    /// <summary>By address: the faces behind a face, and how far right of its left end their right ends lie.</summary>
    private static Dictionary<string, List<(ResolvedSurface Face, Distance Offset)>> Neighbors(IReadOnlyList<ResolvedSurface> faces)
    {
        Dictionary<string, List<(ResolvedSurface, Distance)>> all = new(StringComparer.Ordinal);
        foreach (ResolvedSurface face in faces)
        {
            if (face.Wall?.BackOf is { } back && back != face.Address && Find(faces, back) is { } other && OffsetOf(face, other) is { } offset)
            {
                Note(face, other, offset);

                // Said the other way round: this face's right end lies at the offset on the other.
                Note(other, face, offset + other.Length - face.Length);
            }
        }

        return all;

        void Note(ResolvedSurface from, ResolvedSurface to, Distance offset)
        {
            if (!all.TryGetValue(from.Address, out List<(ResolvedSurface, Distance)>? list))
            {
                all.Add(from.Address, list = []);
            }

            list.Add((to, offset));
        }
    }

    private static Distance? OffsetOf(ResolvedSurface face, ResolvedSurface other)
    {
        Distance? offset = face.Wall!.BackOffset ?? (face.Length == other.Length ? Distance.Zero : null);
        return offset < face.Length && offset > -other.Length && IsOfAHouse(face.Length) && IsOfAHouse(other.Length) ? offset : null;
    }

    /// <summary>Short enough for the lengths of any number of walls to be added up.</summary>
    private static bool IsOfAHouse(Distance length) => length.Ticks < 1L << 48;

    private static ResolvedSurface? Find(IReadOnlyList<ResolvedSurface> faces, string address)
    {
        foreach (ResolvedSurface face in faces)
        {
            if (face.Address == address)
            {
                return face;
            }
        }

        return null;
    }
}
