namespace BoxHeights.Rules;

/// <summary>The one light in the ceiling of a rectangular room, where it is nearly in the middle between two walls, is in the middle.</summary>
/// <remarks>One that is far off is meant for something else; the middle of a room of another shape is a matter of taste. Both are passed over, as are several lights.</remarks>
public sealed record RoomCenter : SpaceRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is asked, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    /// <param name="within">How far off the middle counts as in it, itself allowed.</param>
    /// <param name="nearly">How far off one may be and still be meant for the middle.</param>
    public RoomCenter(string id, string summary, Severity severity, Citation citation, Distance within, Distance nearly)
        : base(id, summary, severity, citation)
    {
        Within = within;
        Nearly = nearly;
    }

    /// <summary>How far off the middle counts as in it.</summary>
    public Distance Within { get; init; }

    /// <summary>How far off one may be and still be meant for the middle.</summary>
    public Distance Nearly { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => "one light in a rectangular room, at most " + Within + " off its middle in either direction, or more than " + Nearly;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        SpaceBox? light = null;
        foreach (SpaceBox box in space.Boxes)
        {
            if (box.Traits is { Purpose: var purpose, Surface: BoxSurface.Ceiling } && purpose == BoxPurpose.Light)
            {
                if (light is not null)
                {
                    return;
                }

                light = box;
            }
        }

        if (light is not { Plan: { } at, Traits.IsExisting: false } || RoomInPlan.Of(space).Plan.MiddleOfRectangle is not { } middle)
        {
            return;
        }

        Distance right = Off(at.Right, middle.Right);
        Distance into = Off(at.Into, middle.Into);
        Distance most = Distance.Max(right, into);
        if (most <= Within)
        {
            statement.Meets(light.Id, light.Address);
            return;
        }

        PlanPoint set = new(right == Distance.Zero ? at.Right : middle.Right, into == Distance.Zero ? at.Into : middle.Into);
        statement.FindsAmiss(
            light.Traits.Source.WithPlan(set),
            light.Address,
            most,
            DistanceSet.AtMost(Within),
            () => "it sits " + Printed.OffBy(most, space.Units) + " off the middle between two walls");
    }

    private Distance Off(Distance at, Distance middle) => (at - middle).Abs() is var off && off <= Nearly ? off : Distance.Zero;
}
