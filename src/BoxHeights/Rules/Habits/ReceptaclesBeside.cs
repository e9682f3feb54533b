namespace BoxHeights.Rules;

/// <summary>Furniture that wants a receptacle beside it, within reach, and not behind it. Plans go by it only where the set has such a row.</summary>
[Row(nameof(Things), nameof(Within))]
public sealed partial record ReceptaclesBeside : HabitRule
{
    /// <summary>The furniture.</summary>
    public Items<FixtureKind> Things { get; init; }

    /// <summary>How far from its side, along the wall.</summary>
    public Distance Within { get; init; }

    /// <summary>Whether there is one on either side; else one side does.</summary>
    public bool OnBothSides { get; init; }

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Things.Select(kind => kind.Name);

    /// <inheritdoc/>
    public override string Numbers => "within " + Within + " of " + (OnBothSides ? "either side" : "one side") + " of each " + Things;
}
