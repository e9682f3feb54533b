using System;

namespace BoxHeights.Rules;

/// <summary>What a person uses from the doorway isn't hidden by a door that stands open.</summary>
/// <remarks>
/// A box is behind a leaf or a panel when the center of one of its devices is: on the edge itself it isn't. A pocket door hides nothing: that no box goes into its
/// pocket is said by <see cref="InCavity"/>.
/// Over the head of the opening nothing is hidden; where the head isn't stated the door is taken to reach as high as any box. A door whose hinges, swing or leaf
/// aren't stated hides nothing here.
/// </remarks>
public sealed record BehindDoor : PlacementRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the rule comes from.</param>
    /// <param name="by">What hides a box: a leaf or a panel.</param>
    /// <exception cref="ArgumentException"><paramref name="by"/> is a pocket, which hides nothing.</exception>
    public BehindDoor(string id, string summary, Severity severity, Citation citation, DoorCoverKind by)
        : base(id, summary, severity, citation) => By = by;

    /// <summary>What hides a box: a leaf or a panel.</summary>
    public DoorCoverKind By
    {
        get;
        init => field = value != DoorCoverKind.Pocket ? value : throw new ArgumentException("A pocket hides nothing of the wall before it.", nameof(By));
    }

    /// <inheritdoc/>
    public override bool MendsAside => true;

    /// <inheritdoc/>
    public override string? Covers { get; init; } = "door swings";

    /// <inheritdoc/>
    public override string Numbers => "the center of each device at or beyond the edge of the open " + By.ToString().ToLowerInvariant();

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        foreach (DoorCover cover in site.DoorCovers)
        {
            if (cover.Kind != By)
            {
                continue;
            }

            statement.About = cover;
            Distance inside = HalfBetweenOuterDevices(site.Box) - Distance.FromTicks(1);
            AllowedHeights over = cover.Opening.Head is { } head ? site.AtLeast(TargetLine.BoxBottom, head, cover.Left, cover.Right) : AllowedHeights.Nothing;
            statement.Within(cover.Left - inside, cover.Right + inside, over);
        }
    }

    private static Distance HalfBetweenOuterDevices(BoxTraits box) =>
        EvenSize.Half(box.GangPitch) * (box.Gangs - 1);
}
