namespace BoxHeights.Rules;

/// <summary>Furniture that wants a receptacle beside it, where what is plugged in can be reached: not behind it. A set without such a row has walls planned without regard to it.</summary>
public sealed record ReceptaclesBeside : HabitRule
{
    /// <summary>Describes the custom.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is done, in one plain phrase.</param>
    /// <param name="citation">Where the custom comes from.</param>
    /// <param name="things">The furniture.</param>
    /// <param name="within">How far from its side, along the wall.</param>
    public ReceptaclesBeside(string id, string summary, Citation citation, Items<FixtureKind> things, Distance within)
        : base(id, summary, citation)
    {
        Things = things;
        Within = within;
    }

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
