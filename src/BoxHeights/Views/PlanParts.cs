namespace BoxHeights;

/// <summary>A wall face of a room in plan. One walks along it from <see cref="Start"/> to <see cref="End"/> with the room at one's right hand.</summary>
public sealed class PlanWall
{
    private readonly System.Func<Distance, Distance, PlanPoint> at;

    internal PlanWall(string address, Wall wall, System.Func<Distance, Distance, PlanPoint> at)
    {
        this.at = at;
        Start = At(Distance.Zero);
        End = At(wall.Length);
        Address = address;
        Wall = wall;
    }

    /// <summary>The wall, and from where to where.</summary>
    public override string ToString() => Address + ", " + Start + " to " + End;

    /// <summary>Its address.</summary>
    public string Address { get; }

    /// <summary>The wall as it is described.</summary>
    public Wall Wall { get; }

    /// <summary>Its left end, seen from the room.</summary>
    public PlanPoint Start { get; }

    /// <summary>Its right end.</summary>
    public PlanPoint End { get; }

    /// <summary>A place on it.</summary>
    /// <param name="along">From its left end.</param>
    public PlanPoint At(Distance along) => at(along, Distance.Zero);

    /// <summary>A place before it, in the room.</summary>
    /// <param name="along">From its left end.</param>
    /// <param name="away">Square off it.</param>
    public PlanPoint Before(Distance along, Distance away) => at(along, away);
}

/// <summary>An opening of a room in plan, on the framing face of its wall.</summary>
[Told]
public sealed partial class PlanOpening
{
    /// <summary>The opening, and from where to where.</summary>
    public override string ToString() => Address + ", " + Start + " to " + End;

    /// <summary>Its address.</summary>
    public string Address { get; }

    /// <summary>The opening as it is described.</summary>
    public Opening Opening { get; }

    /// <summary>The left rough face, seen from the room.</summary>
    public PlanPoint Start { get; }

    /// <summary>The right rough face.</summary>
    public PlanPoint End { get; }

    /// <summary>The leaves that swing into the room; none where that isn't stated, or they swing away.</summary>
    public Items<PlanSwing> Swings { get; internal init; }
}

/// <summary>A door leaf that swings into a room: a quarter turn about its hinge.</summary>
[Told]
public sealed partial class PlanSwing
{
    /// <summary>The hinge, and where the leaf's edge is closed and open.</summary>
    public override string ToString() => "from " + Hinge + ", " + Closed + " to " + Open;

    /// <summary>Its hinge, at the jamb.</summary>
    public PlanPoint Hinge { get; }

    /// <summary>Its free end when it is shut.</summary>
    public PlanPoint Closed { get; }

    /// <summary>Its free end when it stands square to its wall.</summary>
    public PlanPoint Open { get; }
}

/// <summary>What stands in a room or against its walls, in plan: a counter, a fixture, a cabinet, an island, a rail.</summary>
[Told]
public sealed partial class PlanShape
{
    /// <summary>What it is, and its corners.</summary>
    public override string ToString() => Kind + " \"" + Id + "\", " + Corners;

    /// <summary>Its id on its wall or in its room.</summary>
    public string Id { get; }

    /// <summary>Its address.</summary>
    public string Address { get; }

    /// <summary>What it is, by its kind's name.</summary>
    public string Kind { get; }

    /// <summary>Its corners in order.</summary>
    public Items<PlanPoint> Corners { get; }

    /// <summary>Whether the last corner is joined to the first. Not of a line, nor of what stands against a wall with a depth that isn't known: then only its stretch of the wall is told.</summary>
    public bool IsClosed { get; }

    /// <summary>The <see cref="Counter"/>, <see cref="Covering"/>, <see cref="Fixture"/> or <see cref="Freestanding"/> as it is described.</summary>
    public object Source { get; }
}
