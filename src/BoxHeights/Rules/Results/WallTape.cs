namespace BoxHeights;

/// <summary>A tape held square off a wall: how a place in a ceiling or floor is found.</summary>
[Told]
public sealed partial record WallTape
{
    /// <summary>The address of the wall.</summary>
    public string Address { get; }

    /// <summary>Where along the wall it is held, from the wall's left end.</summary>
    public Distance Along { get; }

    /// <summary>How far the place is from the framing face of the wall.</summary>
    public Distance Away { get; }

    /// <summary>The tape in words.</summary>
    public override string ToString() => Away + " from " + Address;

    /// <summary>The two tapes to a place in a room, one where no wall runs across the nearest, or none.</summary>
    internal static Items<WallTape> To(ResolvedSpace space, PlanPoint point) =>
        space.Plan is { } plan ? TapedFrom.To(plan, point).Select(tape => new WallTape(space.Id + "/" + plan.WallOf(tape.Face).Id, tape.Along, tape.Away)) : default;
}
