using System;

namespace BoxHeights;

/// <summary>How much a description may hold: a hostile one is turned away before anything is worked out from it.</summary>
internal static class SizeCaps
{
    /// <summary>What is larger than its cap, first the least part that is; null where nothing is.</summary>
    public static LayoutFault? Beyond(Dwelling dwelling, EvaluatorOptions caps)
    {
        long all = dwelling.Storeys.Count + (long)dwelling.Flights.Count;
        foreach (Room room in dwelling.Rooms)
        {
            long parts = room.Fixtures.Count + room.Freestanding.Count + room.Overhead.Count + (long)room.InFloor.Count;
            LayoutFault? fault = Boxes(room.Id, "ceiling", room.Overhead.Count, caps) ?? Boxes(room.Id, "floor", room.InFloor.Count, caps) ?? OfSpace(room.Id, room.Walls, parts, caps, ref all);
            if (fault is not null)
            {
                return fault;
            }
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            if (OfSpace(face.Id, face.Walls, face.Fixtures.Count, caps, ref all) is { } fault)
            {
                return fault;
            }
        }

        return all > caps.MostPartsOfADwelling ? Fault(dwelling.Name, all, "parts", caps.MostPartsOfADwelling, nameof(caps.MostPartsOfADwelling)) : null;
    }

    private static LayoutFault? OfSpace(string id, Items<Wall> walls, long parts, EvaluatorOptions caps, ref long all)
    {
        foreach (Wall wall in walls)
        {
            long own = wall.Openings.Count + wall.Counters.Count + wall.Coverings.Count + wall.Finishes.Count + wall.NoCavity.Count + (long)wall.Top.Count;
            foreach (Counter counter in wall.Counters)
            {
                own += counter.Interruptions.Count;
            }

            if (Boxes(id, wall.Id, wall.Boxes.Count, caps) is { } fault)
            {
                return fault;
            }

            if (own > caps.MostPartsOfAWall)
            {
                return Fault(SurfaceAddress.Of(id, wall.Id), own, "openings, counters and other parts", caps.MostPartsOfAWall, nameof(caps.MostPartsOfAWall));
            }

            parts += 1 + own + wall.Boxes.Count;
        }

        all += 1 + parts;
        return parts > caps.MostPartsOfARoom ? Fault(id, parts, "walls, boxes and other parts", caps.MostPartsOfARoom, nameof(caps.MostPartsOfARoom)) : null;
    }

    private static LayoutFault? Boxes(string space, string surface, int count, EvaluatorOptions caps) =>
        count > caps.MostBoxesOnASurface ? Fault(SurfaceAddress.Of(space, surface), count, "boxes", caps.MostBoxesOnASurface, nameof(caps.MostBoxesOnASurface)) : null;

    private static LayoutFault Fault(string subject, long count, string what, int most, string cap) => new(LayoutFaultKind.BeyondMeasure, subject, subject,
        $"it has {(int)Math.Min(count, int.MaxValue):count} {Wording.Term(what):parts}, and at most {most} are looked at: nothing of the dwelling is judged; the evaluator's option {cap:option} raises that");
}
