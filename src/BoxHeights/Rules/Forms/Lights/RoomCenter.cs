namespace BoxHeights.Rules;

/// <summary>The one light in the ceiling of a rectangular room, where it is nearly in the middle between two walls, is in the middle.</summary>
/// <remarks>One that is far off is meant for something else; the middle of a room of another shape is a matter of taste. Both are passed over, as are several lights.</remarks>
[Row(nameof(Within), nameof(Nearly))]
public sealed partial record RoomCenter : SpaceRule
{
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

        if (light is not { Plan: { } at, Traits.IsExisting: false } || RoomInPlan.Of(space).Middle is not { } middle)
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

        Finds(light, new(right == Distance.Zero ? at.Right : middle.Right, into == Distance.Zero ? at.Into : middle.Into), most, space.Units, statement);
    }

    /// <summary>By itself, so that a light in the middle costs nothing.</summary>
    private void Finds(SpaceBox light, PlanPoint middle, Distance off, LengthUnits units, SpaceStatement statement) => statement.FindsAmiss(
        light.Source.WithPlan(middle), light.Address, off, DistanceSet.AtMost(Within), () => $"it sits {Printed.OffBy(off, units):off} off the middle between two walls");

    private Distance Off(Distance at, Distance middle) => (at - middle).Abs() is var off && off <= Nearly ? off : Distance.Zero;
}
