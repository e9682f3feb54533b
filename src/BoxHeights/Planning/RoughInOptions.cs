namespace BoxHeights;

/// <summary>What a rough-in planner plans beside what its rules ask for. Immutable.</summary>
[Described]
public sealed partial record RoughInOptions
{
    /// <summary>Switches at entrances, receptacles with slack, nothing beyond what is asked for.</summary>
    public static RoughInOptions Default { get; } = new();

    /// <summary>Whether runs get the fewest boxes that their limit asks for, without slack and without a box for each long face.</summary>
    public bool CodeMinimum { get; init; }

    /// <summary>Whether entrances that have no switch get one.</summary>
    public bool Switches { get; init; } = true;

    /// <summary>Practice extras: purposes whose boxes are set beside or behind furniture and fixtures (<see cref="BoxPurpose.Bedside"/>, <see cref="BoxPurpose.Television"/>). Each thing of the kind gets its boxes; a plan notes those that no thing was described for.</summary>
    public Items<BoxPurpose> Extras { get; init; }

    /// <summary>How much wall is left at least between the plates of two boxes that are planned, side by side or over one another; not negative. Null for what the set says, which is 1/2 in in the published ones.</summary>
    public Distance? PlateGap { get; init => field = value is { } gap ? Guard.NotNegative(gap, nameof(PlateGap)) : null; }

    /// <summary>How boxes are judged and marks rounded; as each dwelling is marked unless it states otherwise. A plan takes every box to be described.</summary>
    public EvaluatorOptions Evaluation { get; init; } = EvaluatorOptions.Default;
}
