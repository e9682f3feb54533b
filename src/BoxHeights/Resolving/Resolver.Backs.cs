using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <content>What can't be about the two faces of a wall. Both are measured by different people: an inch apart is together.</content>
internal sealed partial class Resolver
{
    private void FacesOfWalls()
    {
        Dictionary<string, ResolvedSurface> byAddress = new(StringComparer.Ordinal);
        foreach (ResolvedSurface face in faces)
        {
            byAddress[face.Address] = face;
        }

        Dictionary<string, List<(ResolvedSurface Face, Distance Left, Distance Right)>> behind = new(StringComparer.Ordinal);
        foreach (ResolvedSurface face in faces)
        {
            if (face.Wall!.BackOf is not { } back || !byAddress.TryGetValue(back, out ResolvedSurface? other))
            {
                continue;
            }

            if (other == face)
            {
                Contradicts(face.Address, $"backOf names this wall itself");
            }
            else if (BackFaces.OffsetOf(face.Wall, other.Wall!) is not { } offset)
            {
                if (face.Wall.BackOffset is { } stated)
                {
                    Contradicts(face.Address, $"with a backOffset of {Text(stated):stated} this face, {Text(face.Length):length} long, and {back}, {Text(other.Length):otherLength} long, share no stretch of wall");
                }
            }
            else if (other.Wall!.BackOf != face.Address || BackFaces.OffsetOf(other.Wall, face.Wall) is not { } returned)
            {
                Faces(face, other, offset, behind);
            }
            else if (string.CompareOrdinal(face.Address, back) < 0)
            {
                // Said the other way round, as in the body of the wall.
                Distance expected = offset + other.Length - face.Length;
                if ((returned - expected).Abs() > DrawingTolerance.GapAcross)
                {
                    Contradicts(face.Address, $"its backOffset of {Text(offset):offset} is one of {Text(expected):expected} from {back}, which says {Text(returned):returned}");
                }
                else
                {
                    Faces(face, other, offset, behind);
                }
            }
        }
    }

    /// <summary>Compares two faces: a place on the other is the offset and its length, less that place, on this one.</summary>
    private void Faces(ResolvedSurface face, ResolvedSurface other, Distance offset, Dictionary<string, List<(ResolvedSurface Face, Distance Left, Distance Right)>> behind)
    {
        Distance end = offset + other.Length;
        Shares(face, other, end - face.Length, end, behind);
        Shares(other, face, offset, end, behind);
        foreach (Opening one in face.Wall!.Openings)
        {
            Facing(face, one, other, one.Left, one.Right, end);
        }
    }

    private static bool Overlap(Opening one, Distance left, Distance right) => one.Left < right - DrawingTolerance.GapAcross && left < one.Right - DrawingTolerance.GapAcross;

    private void Facing(ResolvedSurface face, Opening one, ResolvedSurface other, Distance left, Distance right, Distance end)
    {
        string subject = SurfaceAddress.Of(face.Address, one.Id);
        Opening? facing = null;
        foreach (Opening candidate in other.Wall!.Openings)
        {
            if (Overlap(candidate, end - right, end - left) && !IsUnder(one, candidate) && !IsUnder(candidate, one))
            {
                facing = facing is null || (candidate.Left - (end - right)).Abs() < (facing.Left - (end - right)).Abs() ? candidate : facing;
            }
        }

        // One that is described on a single face is there on the other too.
        if (facing is null)
        {
            return;
        }

        Wording name = $"\"{facing.Id:opening}\" of the other face, {other.Address:face}";
        if ((facing.Left - (end - right)).Abs() > DrawingTolerance.GapAcross || (facing.Right - (end - left)).Abs() > DrawingTolerance.GapAcross)
        {
            Contradicts(subject, $"it and {name:other}, lie in each other's way: seen from here they run from {Text(left):left} to {Text(right):right} and from {Text(end - facing.Right):otherLeft} to {Text(end - facing.Left):otherRight}");
        }
        else if (one.Kind == OpeningKind.Window != (facing.Kind == OpeningKind.Window))
        {
            Contradicts(subject, $"it is a {Wording.Term(one.Kind.Name):kind}, but {name:other}, is a {Wording.Term(facing.Kind.Name):otherKind}");
        }
        else if (one.Swing == DoorSwing.Into && facing.Swing == DoorSwing.Into && one.Kind == facing.Kind)
        {
            Contradicts(subject, $"it swings into the room on either side: so says {name:other}");
        }
        else if (one.Swing == DoorSwing.Away && facing.Swing == DoorSwing.Away && one.Kind == facing.Kind)
        {
            Contradicts(subject, $"it swings away from the room on either side: so says {name:other}");
        }
        else if ((one.Hinge is { } hinge && facing.Hinge == hinge && one.Kind == facing.Kind) || (one.Kind == OpeningKind.PocketDoor && facing.Kind == one.Kind && one.PocketOn is { } pocket && facing.PocketOn == pocket))
        {
            Contradicts(subject, one.Kind == OpeningKind.PocketDoor
                ? $"its pocket is on the same hand as those of {name:other}: seen from there they are on the other"
                : (Wording)$"its hinges are on the same hand as those of {name:other}: seen from there they are on the other");
        }
    }

    /// <summary>Notes that a face lies behind a stretch of another; two rooms of one storey can't both.</summary>
    private void Shares(ResolvedSurface face, ResolvedSurface other, Distance left, Distance right, Dictionary<string, List<(ResolvedSurface Face, Distance Left, Distance Right)>> behind)
    {
        if (!behind.TryGetValue(other.Address, out List<(ResolvedSurface Face, Distance Left, Distance Right)>? there))
        {
            behind.Add(other.Address, there = []);
        }

        foreach ((ResolvedSurface first, Distance from, Distance to) in there)
        {
            if (first != face && first.Space.StoreyId == face.Space.StoreyId && from < right - DrawingTolerance.GapAcross && left < to - DrawingTolerance.GapAcross)
            {
                Contradicts(other.Address, $"{first.Address:first} and {face.Address:second} are both said to be behind one stretch of it, from {Text(Distance.Max(from, left)):left} to {Text(Distance.Min(to, right)):right}");
            }
        }

        there.Add((face, left, right));
    }
}
