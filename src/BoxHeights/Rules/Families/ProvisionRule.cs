using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A rule about a run, a room or a group that a set of boxes satisfies together.</summary>
/// <remarks>For each box it also states a keep set: where that box may go without making this rule's own answer worse, so that other remedies respect it.</remarks>
public abstract record ProvisionRule : Rule
{
    /// <inheritdoc cref="Rule(string, string, Severity, Citation)"/>
    protected ProvisionRule(string id, string summary, Severity severity, Citation citation)
        : base(id, summary, severity, citation)
    {
    }

    /// <summary>Whether what is found of a box is no other's concern: of two in each other's way it isn't shared by a third elsewhere.</summary>
    public virtual bool IsForEachAlone => false;

    /// <summary>Whether it lets off boxes that are level with one which was there before in their room.</summary>
    internal virtual bool LooksAtOld => false;

    /// <summary>What the boxes of a group, where they are, leave a box at a place along its wall, as readings of its stick; null where the rule states nothing of the kind.</summary>
    /// <param name="group">The boxes.</param>
    /// <param name="except">The box itself, where it is among them.</param>
    /// <param name="box">The box that is asked about.</param>
    internal virtual AllowedHeights? Around(ProvisionGroup group, int except, AskedBox box) => null;

    /// <summary>Adds the places along the wall at which that changes.</summary>
    internal virtual void AddEdgesTo(List<long> edges, ProvisionGroup group, int except, PlacementSite site)
    {
    }

    /// <summary>The group that a box belongs to.</summary>
    /// <param name="box">The box.</param>
    /// <param name="place">What it belongs to.</param>
    /// <returns>A name that all members share; null when the rule doesn't speak of the box.</returns>
    public abstract string? GroupOf(BoxTraits box, GroupPlace place);

    /// <summary>Judges a group.</summary>
    /// <param name="group">Its boxes.</param>
    /// <param name="statement">Takes the answer.</param>
    public abstract void Judge(ProvisionGroup group, ProvisionStatement statement);
}
