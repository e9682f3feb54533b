using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>An opening as one of its rooms sees it.</summary>
/// <param name="Room">The room.</param>
/// <param name="Wall">The wall that the opening is in.</param>
/// <param name="Opening">The opening.</param>
internal readonly record struct RoomOpening(Room Room, Wall Wall, Opening Opening)
{
    /// <summary>Its wall's address.</summary>
    public string Address => SurfaceAddress.Of(Room.Id, Wall.Id);
}

/// <summary>Finds an opening as the room behind its wall describes it, where it is said which face lies behind which.</summary>
internal sealed class DoorsThrough(LayoutState state)
{
    private Dictionary<string, List<ResolvedSurface>>? faces;

    /// <summary>The same opening seen from its other side; null where that isn't described.</summary>
    public RoomOpening? OtherSide(RoomOpening one)
    {
        if (state.SurfaceAt(one.Address)?.Body is not { } body)
        {
            return null;
        }

        (Distance from, Distance to) = Span(body, one.Opening);
        foreach (ResolvedSurface face in FacesOf(body))
        {
            if (face.Body!.IsBack == body.IsBack || face is not { Space.Room: { } room, Wall: { } wall })
            {
                continue;
            }

            foreach (Opening opening in wall.Openings)
            {
                (Distance left, Distance right) = Span(face.Body, opening);
                if (left < to && from < right && opening.Left < opening.Right && opening.Right <= wall.Length)
                {
                    return new(room, wall, opening);
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
