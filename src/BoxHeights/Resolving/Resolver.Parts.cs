using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What can't be about the parts of a wall, and of a room.</summary>
internal sealed partial class Resolver
{
    private static readonly Wording AnOpening = $"opening";
    private static readonly Wording ACounter = $"counter";
    private static readonly Wording AFinish = $"finish";
    private static readonly Wording ACovering = $"covering";

    // What the parts of a wall are, and from where, by their ids; used again for each wall.
    private readonly Dictionary<string, (Wording What, Distance Left)> parts = new(StringComparer.Ordinal);

    private void NoExtent(string subject, Wording what, Distance left, Distance right) =>
        Fault(LayoutFaultKind.NoExtent, subject, $"this {what} runs from {Text(left):left} to {Text(right):right}: its right end isn't right of its left end");

    /// <summary>A fixture is listed under its room, so that its wall has to be named.</summary>
    private void BeyondItsWall(string subject, Fixture fixture, Wall wall)
    {
        if ((fixture.Right ?? fixture.Left) is { } end && end > wall.Length)
        {
            Fault(LayoutFaultKind.OutsideItsWall, subject,
                fixture.Right is null
                ? $"this fixture begins at {Text(end):place} along its wall \"{wall.Id:wall}\", but the wall is {Text(wall.Length):length} long"
                : (Wording)$"this fixture ends at {Text(end):place} along its wall \"{wall.Id:wall}\", but the wall is {Text(wall.Length):length} long");
        }
    }

    private void Parts(string address, Wall wall, ResolvedSpace space)
    {
        parts.Clear();
        void Part(string? id, Wording what, Distance left, Distance right)
        {
            if (id is not null)
            {
                if (parts.TryGetValue(id, out (Wording What, Distance Left) first))
                {
                    Fault(LayoutFaultKind.DuplicateId, SurfaceAddress.Of(address, id), $"{From(first.What, first.Left)} and {From(what, left):second} have the same id");
                }
                else
                {
                    parts.Add(id, (what, left));
                }
            }

            if (right <= left)
            {
                NoExtent(Subject(), what, left, right);
            }
            else if (right > wall.Length)
            {
                Fault(LayoutFaultKind.OutsideItsWall, Subject(), $"this {what} ends at {Text(right):right}, but the wall is {Text(wall.Length):length} long");
            }

            string Subject() => id is null ? address : SurfaceAddress.Of(address, id);
        }

        Wording From(Wording what, Distance left) => $"the {what} from {Text(left):left}";

        foreach (Opening opening in wall.Openings)
        {
            Part(opening.Id, AnOpening, opening.Left, opening.Right);
        }

        foreach (Counter counter in wall.Counters)
        {
            Part(counter.Id, ACounter, counter.Left, counter.Right);
        }

        foreach (Finish finish in wall.Finishes)
        {
            Part(finish.Id, AFinish, finish.Left, finish.Right);
        }

        foreach (Covering covering in wall.Coverings)
        {
            Part(covering.Id, ACovering, covering.Left, covering.Right);
        }

        foreach (NoCavity part in wall.NoCavity)
        {
            Part(null, $"{Wording.Term(part.Kind.Name):kind} without cavity", part.Left, part.Right);
        }

        for (int i = 1; i < wall.Top.Count; i++)
        {
            if (wall.Top[i].Along < wall.Top[i - 1].Along)
            {
                Fault(LayoutFaultKind.NoExtent, address, $"the points of its top aren't in order from left to right: {Text(wall.Top[i].Along):along} follows {Text(wall.Top[i - 1].Along):before}");
            }
        }

        if (wall.Top.Count > 0 && wall.Top[wall.Top.Count - 1].Along is var end && end > wall.Length)
        {
            Fault(LayoutFaultKind.OutsideItsWall, address, $"a point of its top is at {Text(end):along}, but the wall is {Text(wall.Length):length} long");
        }

        Overlaps(address, wall.Openings);
        Parts(space, address, wall);
    }

    /// <summary>Openings overlap only if they do so both along the wall and in height: a transom over a door doesn't.</summary>
    private void Overlaps(string address, Items<Opening> openings)
    {
        for (int i = 0; i < openings.Count; i++)
        {
            for (int j = i + 1; j < openings.Count; j++)
            {
                Opening a = openings[i];
                Opening b = openings[j];
                if (a.Left < b.Right && b.Left < a.Right && !IsUnder(a, b) && !IsUnder(b, a))
                {
                    Fault(LayoutFaultKind.OverlappingOpenings, SurfaceAddress.Of(address, a.Id), $"it overlaps the opening \"{b.Id:other}\" both along the wall and in height");
                }
            }
        }
    }

    private static bool IsUnder(Opening low, Opening high) =>
        low.Head is { } head && high.Sill is { } sill && head.Datum == sill.Datum && head.Offset <= sill.Offset;
}
