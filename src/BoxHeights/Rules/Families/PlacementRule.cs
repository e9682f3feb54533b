using System;

namespace BoxHeights.Rules;

/// <summary>
/// A rule about a box on its surface. It states slabs: over this stretch along the wall, the box may be set to these heights.
/// Check, margin, remedy, plan and picture are all derived from that one statement.
/// </summary>
/// <remarks>The law of this family: a statement may read everything except where the box that it judges now is. The site it is handed has no position.</remarks>
public abstract record PlacementRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected PlacementRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>The height that a planner aims at within what is allowed; null where the row has no wish of its own.</summary>
    public BoxHeight? Preferred { get; init; }

    /// <summary>What lets the rule off a box that misses it: others nearby that meet it.</summary>
    public Relief Relief { get; init; }

    /// <summary>Whether the rule reads what is on the wall (counters, finishes, coverings, openings), and so can't decide where that is at fault.</summary>
    public virtual bool ReadsWallParts => true;

    /// <summary>Whether the rule is silent about a box of which it isn't said where it is along its wall: whoever sets it will see what is there.</summary>
    public virtual bool AsksForAPlace => false;

    /// <summary>What else a place has to be clear of before a box is sent there, of which this rule itself doesn't speak; null where that is nothing.</summary>
    internal virtual PlacementRule? ClearOf => null;

    /// <summary>States what is allowed at a site, over the whole length of its surface.</summary>
    /// <param name="site">The box and its surroundings, without its position.</param>
    /// <param name="statement">Takes the slabs.</param>
    public abstract void State(PlacementSite site, PlacementStatement statement);
}

/// <summary>What lets a rule off a receptacle that misses it: others nearby that meet it. Switches and other controls are never let off, since what they control isn't described.</summary>
[Flags]
public enum Relief
{
    /// <summary>Nothing: every box has to meet the rule.</summary>
    None = 0,

    /// <summary>One receptacle over a length of kitchen counter that no sink or appliance interrupts, where others over the same length all meet the rule.</summary>
    OneOverCounter = 1,

    /// <summary>A receptacle in a room where another for the same purpose meets the rule.</summary>
    ComparableInRoom = 2,
}
