using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Where a wall face lies on its wall, when more than one face of the wall is described: places on all of them are turned into places on one.</summary>
[Told]
internal sealed partial class WallBody
{
    /// <summary>The address of the face whose places the others' are turned into: the same for every face of the wall.</summary>
    public string Id { get; }

    /// <summary>Whether this face is on the other side of the wall from that one.</summary>
    public bool IsBack { get; }

    private Distance Shift { get; }

    /// <summary>A place on this face as a place on the wall. Faces back to back run against each other.</summary>
    public Distance Along(Distance along) => IsBack ? Shift - along : Shift + along;

    /// <summary>A place on the wall as a place on this face.</summary>
    public Distance OnFace(Distance place) => IsBack ? Shift - place : place - Shift;

    /// <summary>Joins the faces that are said to be back to back and share a stretch.</summary>
    public static void Join(IReadOnlyList<ResolvedSurface> faces, BackFaces backs)
    {
        List<string> roots = [.. backs.Addresses];
        if (roots.Count == 0)
        {
            return;
        }

        Dictionary<string, ResolvedSurface> known = new(StringComparer.Ordinal);
        foreach (ResolvedSurface face in faces)
        {
            if (!known.ContainsKey(face.Address))
            {
                known.Add(face.Address, face);
            }
        }

        roots.Sort(StringComparer.Ordinal);
        foreach (string address in roots)
        {
            if (!known.TryGetValue(address, out ResolvedSurface? root) || root.Body is not null || !HasOne(backs, address))
            {
                continue;
            }

            root.Body = new(root.Address, false, Distance.Zero);
            Queue<ResolvedSurface> reached = new([root]);
            while (reached.Count > 0)
            {
                ResolvedSurface from = reached.Dequeue();
                foreach (BackFace behind in backs.Behind(from.Address))
                {
                    if (behind.Offset is { } offset && known.TryGetValue(behind.Address, out ResolvedSurface? to) && to.Body is null)
                    {
                        // The other face's right end lies at the offset: its place y is this face's place (offset + its length − y).
                        to.Body = new(root.Address, !from.Body!.IsBack, from.Body.Along(offset + to.Length));
                        reached.Enqueue(to);
                    }
                }
            }
        }
    }

    private static bool HasOne(BackFaces backs, string address)
    {
        foreach (BackFace face in backs.Behind(address))
        {
            if (face.Offset is not null)
            {
                return true;
            }
        }

        return false;
    }
}
