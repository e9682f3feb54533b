namespace BoxHeights;

/// <summary>What a statement about a place is about, by its kind and its address: "door hall/south/d1".</summary>
internal static class ThingName
{
    /// <summary>The name of an opening, a finish, a covering, a counter, a door that stands open or a fixture; null for anything else.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="surface">The wall that is spoken of.</param>
    public static Wording? Of(object? thing, ResolvedSurface surface)
    {
        string? kind = thing switch
        {
            Opening opening => opening.Kind.Name,
            Finish finish => finish.Kind.Name,
            Covering covering => covering.Kind.Name,
            Counter => "counter",
            DoorCover door => door.Opening.Kind.Name,
            Fixture fixture => fixture.Kind.Name,
            _ => null,
        };
        return kind is null ? null : (Wording)$"{Wording.Term(kind):kind} {AddressOf(thing, surface):address}";
    }

    /// <summary>The address of the same; empty for anything else.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="surface">The wall that is spoken of.</param>
    public static string AddressOf(object? thing, ResolvedSurface surface) => thing switch
    {
        Opening opening => SurfaceAddress.Of(surface.Address, opening.Id),
        Finish finish => SurfaceAddress.Of(surface.Address, finish.Id),
        Covering covering => SurfaceAddress.Of(surface.Address, covering.Id),
        Counter counter => SurfaceAddress.Of(surface.Address, counter.Id),
        DoorCover door => SurfaceAddress.Of(SurfaceAddress.Of(surface.Space.Id, door.DoorWall), door.Opening.Id),
        Fixture fixture => SurfaceAddress.Of(surface.Space.Id, fixture.Id),
        _ => "",
    };
}
