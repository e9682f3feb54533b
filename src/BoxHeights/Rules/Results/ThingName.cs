using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What a statement about a place is about, by its kind and its address: "door hall/south/d1".</summary>
internal static class ThingName
{
    /// <summary>The name of an opening, a finish, a covering or a door that stands open; empty for anything else.</summary>
    /// <param name="thing">The thing.</param>
    /// <param name="surface">The wall that is spoken of.</param>
    public static string Of(object? thing, ResolvedSurface surface) => thing switch
    {
        Opening opening => opening.Kind + " " + surface.Address + "/" + opening.Id,
        Finish finish => finish.Kind + " " + surface.Address + "/" + finish.Id,
        Covering covering => covering.Kind + " " + surface.Address + "/" + covering.Id,
        DoorCover door => door.Opening.Kind + " " + surface.Space.Id + "/" + door.DoorWall + "/" + door.Opening.Id,
        _ => "",
    };
}
