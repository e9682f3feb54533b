using System;
namespace BoxHeights.Rules;

/// <summary>What in a room a zone is tied to. Everything that is named counts; with nothing named, the whole room is the zone.</summary>
public sealed record RoomAnchor
{
    // 100 ft is beyond any house.
    private static readonly Distance MostReach = Distance.FromFeetInches(100, 0);

    /// <summary>Nothing: the whole room.</summary>
    public static RoomAnchor WholeRoom { get; } = new();

    /// <summary>Fixtures of these kinds.</summary>
    public Items<FixtureKind> Fixtures { get; init; }

    /// <summary>What interrupts counters, of these kinds.</summary>
    public Items<InterruptionKind> Interruptions { get; init; }

    /// <summary>Doors and cased openings to a room that has a fixture of one of these kinds. Either wall has to say which it is the back of.</summary>
    public Items<FixtureKind> DoorsToRoomsWith { get; init; }

    /// <summary>Whether it is tied to every wall.</summary>
    public bool EveryWall { get; init; }

    /// <summary>The names of kinds that it speaks of.</summary>
    internal Items<string> KindsNamed => KindNames.Joined(Fixtures.Select(kind => kind.Name), Interruptions.Select(kind => kind.Name), DoorsToRoomsWith.Select(kind => kind.Name));

    internal static Distance CheckReach(Distance reach, string name) => reach < Distance.Zero || reach > MostReach
        ? throw new ArgumentOutOfRangeException(name, reach, "What is taken from things in a room reaches from zero to 100 ft.")
        : reach;

    /// <summary>What it is tied to, in words.</summary>
    public override string ToString()
    {
        string text = Fixtures.ToString();
        Add(Interruptions.Count == 0 ? "" : "in a counter " + Interruptions);
        Add(DoorsToRoomsWith.Count == 0 ? "" : "doors to a room with " + DoorsToRoomsWith);
        Add(EveryWall ? "every wall" : "");
        return text.Length == 0 ? "the whole room" : text;

        void Add(string more) => text += text.Length == 0 || more.Length == 0 ? more : ", " + more;
    }
}
