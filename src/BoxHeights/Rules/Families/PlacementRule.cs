using System;

namespace BoxHeights.Rules;

/// <summary>A rule about where a box is on its surface. It states slabs: over this stretch along the wall, the box may be set to these heights.</summary>
/// <remarks>
/// Check, margin, remedy, plan and picture are all derived from that one statement. The law of this family: a statement may read everything except where the box
/// that it judges now is. The site it is handed has no position.
/// </remarks>
public abstract record PlacementRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected PlacementRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>The height that a planner aims at within what is allowed; null where the row has no wish of its own.</summary>
    public BoxHeight? Preferred { get; init; }

    /// <summary>The thing that its boxes are set beside or behind, for planners; null where the row ties them to none.</summary>
    public PlaceAnchor? Anchor { get; init; }

    /// <summary>What a plan puts at the thing that the row ties boxes to, without its place; a box without devices unless the row says more.</summary>
    public DeviceBox? Planned { get; init; }

    /// <summary>The things for which a plan puts one of itself, as for an appliance; none where it is an extra that somebody has to ask for.</summary>
    public Items<FixtureKind> PlannedFor { get; init; }

    /// <summary>Rooms in which a plan does so; every room where none is named.</summary>
    public Items<RoomKind> PlannedIn { get; init; }

    /// <summary>Whether a plan only notes it where there is no room for one, because no document asks for it.</summary>
    public bool IsPlannedByCustom { get; init; }

    /// <summary>What lets the rule off a box that misses it: others nearby that meet it.</summary>
    public Relief Relief { get; init; }

    /// <summary>A box is let off only if all that it holds is of these; the known receptacles where none is named.</summary>
    public Items<DeviceKind> ReliefFor { get; init; }

    /// <summary>The counters over which one box may be let off; every counter where none is named.</summary>
    public Items<CounterKind> ReliefOver { get; init; }

    /// <summary>How many boxes of a room that miss the rule are let off; where more miss it, none is. Zero, unless a row says otherwise.</summary>
    public int LetsOffInARoom { get; init; }

    /// <summary>How far off the level of a box for its purpose that was there before, on a wall of its room or outside face, a box that misses the rule is let off, itself allowed; null where none is.</summary>
    public Distance? OrLevelWithOld { get; init; }

    /// <summary>Whether any box may be let off for the sake of others.</summary>
    internal bool MayLetOff => Relief != Relief.None || LetsOffInARoom > 0;

    /// <summary>Whether the rule reads what is on the wall (counters, finishes, coverings, openings), and so can't decide where that is at fault.</summary>
    public virtual bool ReadsWallParts => true;

    /// <summary>Whether the rule is silent about a box of which it isn't said where it is along its wall: whoever sets it will see what is there.</summary>
    public virtual bool AsksForAPlace => false;

    /// <summary>What mends a box that misses the rule besides a move: something else that holds it where it is, or near.</summary>
    public virtual HeldInstead HeldInstead => HeldInstead.Nothing;

    /// <summary>How far off the height on its drawing a box may be, itself allowed; null where the rule doesn't go by that.</summary>
    public virtual Distance? OffTheDrawing => null;

    /// <summary>Whether a box that is over a thing belongs over its middle: then it isn't planned beside the thing where it may be there.</summary>
    internal virtual bool AsksForTheMiddle => false;

    /// <summary>What else a place has to be clear of before a box is sent there, of which this rule itself doesn't speak; null where that is nothing.</summary>
    internal virtual PlacementRule? ClearOf => null;

    /// <summary>What it says of boxes in ceilings, which have a place in plan and no height of their own; null where it speaks of walls alone.</summary>
    internal virtual SpaceRule? Overhead => null;

    /// <summary>States what is allowed at a site, over the whole length of its surface.</summary>
    /// <param name="site">The box and its surroundings, without its position.</param>
    /// <param name="statement">Takes the slabs.</param>
    public abstract void State(PlacementSite site, PlacementStatement statement);

    /// <summary>States what would be allowed if the height that the box's drawing asks for meant one edge of the box.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="statement">Takes the slabs.</param>
    /// <returns>False where the rule doesn't go by that height.</returns>
    public virtual bool StateIfMeant(Edge edge, PlacementSite site, PlacementStatement statement) => false;

    /// <summary>What it asks of this box, to go after its summary; null where the summary says all.</summary>
    /// <param name="site">The box and its surroundings.</param>
    public virtual Wording? AskedOf(PlacementSite site) => null;

    /// <summary>What is taken for granted about a part of the surface, for findings and for what is met there to say; null where nothing is.</summary>
    /// <param name="site">The box and its surroundings.</param>
    /// <param name="along">Where its center is along the wall; a range where that isn't known.</param>
    public virtual Wording? Assumes(PlacementSite site, DistanceRange along) => null;
}

/// <summary>What may hold a box instead of what holds it now. Each is tried before it is offered.</summary>
[Flags]
public enum HeldInstead
{
    /// <summary>Nothing else: the box has to go to where it is allowed.</summary>
    Nothing = 0,

    /// <summary>Blocking that it is nailed to where it is.</summary>
    Blocking = 1,

    /// <summary>A bracket or a bar where it is.</summary>
    Bracket = 2,

    /// <summary>A bar that spans its bay, in place of a move.</summary>
    LongerBar = 4,

    /// <summary>The stud that it is nailed to, packed out, so that it goes less far than to another.</summary>
    PackedStud = 8,
}

/// <summary>What lets a rule off a receptacle that misses it: others nearby that meet it. Switches and other controls are never let off, since what they control isn't described.</summary>
[Flags]
public enum Relief
{
    /// <summary>Nothing: every box has to meet the rule.</summary>
    None = 0,

    /// <summary>One receptacle over a length of counter that no sink or appliance interrupts, where others over the same length all meet the rule.</summary>
    OneOverCounter = 1,

    /// <summary>A receptacle in a room where another for the same purpose meets the rule.</summary>
    ComparableInRoom = 2,
}
