using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>An opening as one of its rooms sees it, or a side of the room that is open.</summary>
/// <param name="Room">The room.</param>
/// <param name="Wall">The wall that the opening is in.</param>
/// <param name="Opening">The opening; all of a side that is open.</param>
internal readonly record struct RoomOpening(Room Room, Wall Wall, Opening Opening)
{
    /// <summary>Its wall's address.</summary>
    public string Address => SurfaceAddress.Of(Room.Id, Wall.Id);

    /// <summary>Whether no wall stands there.</summary>
    public bool IsOpenSide => Wall.Open;

    /// <summary>A side of a room that is open.</summary>
    public static RoomOpening OpenSide(Room room, Wall wall) => new(room, wall, new Opening(wall.Id, OpeningKind.Cased, Distance.Zero, wall.Length));
}

/// <summary>Finds an opening as the room behind its wall describes it, where it is said which face lies behind which.</summary>
internal sealed class DoorsThrough(LayoutState state)
{
    private Dictionary<string, List<ResolvedSurface>>? faces;

    /// <summary>The same opening seen from the room on its other side; null where that isn't described, or is outdoors.</summary>
    public RoomOpening? OtherSide(RoomOpening one) => Across(one) is ({ Space.Room: { } room, Wall: { } wall }, var opening) ? new(room, wall, opening) : null;

    /// <summary>The outside face that an opening leads to, and the opening as it is seen there; null where that isn't described, or isn't outdoors.</summary>
    public (ResolvedSurface Face, Opening Opening)? Outside(RoomOpening one) => Across(one) is ({ Space.IsOutside: true } face, var opening) ? (face, opening) : null;

    private (ResolvedSurface Face, Opening Opening)? Across(RoomOpening one)
    {
        if (state.SurfaceAt(one.Address)?.Body is not { } body)
        {
            return null;
        }

        (Distance from, Distance to) = Span(body, one.Opening);
        foreach (ResolvedSurface face in FacesOf(body))
        {
            if (face.Body!.IsBack == body.IsBack || face.Wall is not { } wall)
            {
                continue;
            }

            foreach (Opening opening in wall.Openings)
            {
                (Distance left, Distance right) = Span(face.Body, opening);
                if (left < to && from < right && opening.Left < opening.Right && opening.Right <= wall.Length)
                {
                    return (face, opening);
                }
            }
        }

        return null;
    }

    private static (Distance From, Distance To) Span(WallBody body, Opening opening)
    {
        Distance one = body.Along(opening.Left);
        Distance other = body.Along(opening.Right);
        return (Distance.Min(one, other), Distance.Max(one, other));
    }

    private List<ResolvedSurface> FacesOf(WallBody body)
    {
        if (faces is null)
        {
            faces = new(StringComparer.Ordinal);
            foreach (ResolvedSurface surface in state.Surfaces)
            {
                if (surface.Body is { } whole)
                {
                    faces.ListOf(whole.Id).Add(surface);
                }
            }
        }

        return faces[body.Id];
    }
}
