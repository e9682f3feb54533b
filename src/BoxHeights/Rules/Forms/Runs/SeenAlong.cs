using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Tells runs and stretches of them by what one sees there: corners, doors, the ends of counters; by the tape where nothing is.</summary>
internal sealed class SeenAlong(Room room, LengthUnits units)
{
    /// <summary>A run from one end to the other: "dining from door hall-door on north, round 2 corners, to window w on west".</summary>
    public Wording Run(Run run)
    {
        if (run.IsLoop)
        {
            return $"{room.Id:room}, all round";
        }

        RunStretch first = run.Stretches[0];
        RunStretch last = run.Stretches[run.Stretches.Count - 1];
        if (run.Stretches.Count == 1)
        {
            return IsAll(first.Address, first.From, first.To) ? $"{first.Address:wall}"
                : (Wording)$"{first.Address:wall} from {Place(first.Address, first.From):from} to {Place(first.Address, first.To):to}";
        }

        Wording from = $"{Place(first.Address, first.From):place} on {NameOf(first.Address):wall}";
        Wording to = $"{Place(last.Address, last.To):place} on {NameOf(last.Address):wall}";
        int corners = Corners(run);
        return corners switch
        {
            0 => $"{room.Id:room} from {from} to {to}",
            1 => $"{room.Id:room} from {from}, round the corner, to {to}",
            _ => $"{room.Id:room} from {from}, round {corners} corners, to {to}",
        };
    }

    /// <summary>A stretch of a wall: "the left 48 in of west", "south from door d to 96 in".</summary>
    public Wording Stretch(WallStretch stretch)
    {
        string name = NameOf(stretch.Address);
        if (IsAll(stretch.Address, stretch.Left, stretch.Right))
        {
            return $"all of {name:wall}";
        }

        Wording left = Place(stretch.Address, stretch.Left);
        Wording right = Place(stretch.Address, stretch.Right);
        return WallAt(stretch.Address) is { } of && stretch.Left == Distance.Zero && ThingAt(of, stretch.Right) is null ? (Wording)$"the left {Printed.Of(stretch.Right, units):length} of {name:wall}"
            : WallAt(stretch.Address) is { } on && stretch.Right == on.Length && ThingAt(on, stretch.Left) is null ? (Wording)$"the right {Printed.Of(on.Length - stretch.Left, units):length} of {name:wall}"
            : (Wording)$"{name:wall} from {left:from} to {right:to}";
    }

    /// <summary>What a part of a run covers, wall by wall.</summary>
    public Wording Stretches(Run run, DistanceRange part)
    {
        List<Wording> all = [];
        foreach ((RunStretch stretch, Distance from, Distance to) in run.Between(part.From, part.To))
        {
            all.Add(Stretch(new(stretch.Address, from, to)));
        }

        return Wording.Listed(all);
    }

    /// <summary>A point on a wall: "door hall-door on north".</summary>
    public Wording Point(string address, Distance along) => $"{Place(address, along):place} on {NameOf(address):wall}";

    private bool IsAll(string address, Distance from, Distance to) => WallAt(address) is { } wall && from == Distance.Zero && to == wall.Length;

    /// <summary>What is at a place along a wall, on either side of it; the distance from the wall's left end where nothing is.</summary>
    private Wording Place(string address, Distance along) => (WallAt(address) is { } wall ? ThingAt(wall, along) : null) ?? $"{Printed.Of(along, units):distance}";

    /// <summary>What one sees at a place along a wall; null where only the tape tells it.</summary>
    private Wording? ThingAt(Wall wall, Distance along)
    {
        foreach (Opening opening in wall.Openings)
        {
            if (along == opening.Left || along == opening.Right)
            {
                return Thing(opening.Kind == OpeningKind.Cased ? "cased opening" : opening.Kind.Name, opening.Id);
            }
        }

        foreach (Counter counter in wall.Counters)
        {
            foreach (CounterInterruption cut in counter.Interruptions)
            {
                if (along == cut.Left || along == cut.Right)
                {
                    return Wording.Term(cut.Kind.Name);
                }
            }
        }

        foreach (Fixture fixture in room.Fixtures)
        {
            if (fixture.Wall == wall.Id && (along == fixture.Left || along == fixture.Right))
            {
                return Thing(fixture.Kind.Name, fixture.Id);
            }
        }

        foreach (Counter counter in wall.Counters)
        {
            if (along == counter.Left || along == counter.Right)
            {
                return $"the end of {Thing("counter", counter.Id):counter}";
            }
        }

        return along == Distance.Zero ? $"the left corner" : along == wall.Length ? (Wording)$"the right corner" : null;
    }

    private static Wording Thing(string kind, string id) => kind == id ? Wording.Term(kind) : $"{Wording.Term(kind):kind} {id:address}";

    private static string NameOf(string address) => SurfaceAddress.Read(address).Surface ?? address;

    private Wall? WallAt(string address)
    {
        foreach (Wall wall in room.Walls)
        {
            if (SurfaceAddress.Is(address, room.Id, wall.Id))
            {
                return wall;
            }
        }

        return null;
    }

    /// <summary>How many corners it goes round: not where walls follow each other straight on.</summary>
    private int Corners(Run run)
    {
        int corners = 0;
        Items<RunStretch> stretches = run.Stretches;
        for (int i = 1; i < stretches.Count; i++)
        {
            int wall = stretches[i - 1].Wall;
            bool isStraight = wall >= 0 && stretches[i].Wall >= 0 && room.Walls[wall].TurnDegrees == 0m;
            corners += stretches[i].Address == stretches[i - 1].Address || isStraight ? 0 : 1;
        }

        return corners;
    }
}
