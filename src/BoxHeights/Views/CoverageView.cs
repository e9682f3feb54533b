namespace BoxHeights;

/// <summary>What a rule about receptacles asks for along the walls of a room, and what of it is served as the boxes stand.</summary>
[Told]
public sealed partial class CoverageView
{
    /// <summary>The rule.</summary>
    public string RuleId { get; }

    /// <summary>The stretches that are served, whatever isn't known.</summary>
    public Items<WallStretch> Served { get; }

    /// <summary>The stretches that aren't, or maybe not.</summary>
    public Items<WallStretch> Open { get; }

    /// <summary>The rule, and what is open.</summary>
    public override string ToString() => RuleId + ": " + (Open.Count == 0 ? "all served" : "open: " + Open);
}
