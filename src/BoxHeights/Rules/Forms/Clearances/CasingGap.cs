namespace BoxHeights.Rules;

/// <summary>Between a plate and the casing beside, above or below it some wall is seen.</summary>
/// <remarks>A plate that laps onto the casing isn't this rule's concern but that of <see cref="FinishEdge"/>. Openings without stated casing aren't judged.</remarks>
public sealed record CasingGap : PlacementRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the number comes from.</param>
    /// <param name="least">The narrowest strip of wall, itself allowed; more than zero.</param>
    public CasingGap(string id, string summary, Severity severity, Citation citation, Distance least)
        : base(id, summary, severity, citation) => Least = least;

    /// <summary>The narrowest strip of wall that does, itself allowed.</summary>
    public Distance Least { get; init => field = Guard.Positive(value, nameof(Least)); }

    /// <summary>A plate isn't sent onto the casing, whether or not the set has a row against that.</summary>
    internal override PlacementRule? ClearOf => new FinishEdge(Id, Summary, Severity, Citation, EdgesOf.Openings);

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override HeldInstead HeldInstead => HeldInstead.PackedStud;

    /// <inheritdoc/>
    public override string Numbers => "a plate that is clear of casing by " + Least + " or more";

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Box.Plate is not { } plate)
        {
            // The rule about lapping onto casing says that the plate's size is missing.
            return;
        }

        Distance tick = Distance.FromTicks(1);
        foreach (Opening opening in site.Wall?.Openings ?? default)
        {
            TrimmedOpening trimmed = TrimmedOpening.Of(opening);
            if (!trimmed.IsCased)
            {
                continue;
            }

            statement.About = opening;
            Distance left = trimmed.Left - plate.HalfWidth;
            Distance right = trimmed.Right + plate.HalfWidth;
            AllowedHeights over = trimmed.Top is { } top ? site.AtLeast(TargetLine.PlateBottom, top, trimmed.Left, trimmed.Right) : AllowedHeights.Nothing;
            AllowedHeights under = trimmed.Bottom is { } bottom ? site.AtMost(TargetLine.PlateTop, bottom, trimmed.Left, trimmed.Right) : AllowedHeights.Nothing;
            statement.Within(left - Least + tick, left, over | under);
            statement.Within(right, right + Least - tick, over | under);

            // Over the head or under the stool: lapping, or off by enough.
            if (trimmed.Top is { } head)
            {
                statement.Within(left + tick, right - tick, site.AtMost(TargetLine.PlateBottom, Up(head, -tick), trimmed.Left, trimmed.Right)
                    | site.AtLeast(TargetLine.PlateBottom, Up(head, Least), trimmed.Left, trimmed.Right));
            }

            if (trimmed.Bottom is { } stool)
            {
                statement.Within(left + tick, right - tick, site.AtLeast(TargetLine.PlateTop, Up(stool, tick), trimmed.Left, trimmed.Right)
                    | site.AtMost(TargetLine.PlateTop, Up(stool, -Least), trimmed.Left, trimmed.Right));
            }
        }
    }

    private static Level Up(Level level, Distance by) => new(level.Offset + by, level.Datum);
}
