namespace BoxHeights;

/// <summary>What an opening in a wall is. An open list: <c>new OpeningKind("…")</c> makes one of your own.</summary>
[Kind("door")]
[Kind("double-door")]
[Kind("pocket-door")]
[Kind("barn-door")]
[Kind("sliding-door")]
[Kind("bifold-door")]
[Kind("bypass-door", "Panels that slide past each other within the opening.")]
[Kind("cased")]
[Kind("window")]
[Kind("pass-through")]
[Kind("garage-door", "A door for vehicles.")]
[Kind("overhead-door", "A door for vehicles that goes up under the ceiling.")]
public readonly partial record struct OpeningKind
{
    /// <summary>Openings that a person walks through; sliding closet doors and bifolds are read as such too.</summary>
    internal static Items<OpeningKind> Doorways { get; } = new[] { Door, DoubleDoor, PocketDoor, BarnDoor, SlidingDoor, BifoldDoor, BypassDoor, Cased };

    /// <summary>Doors of every kind, those for vehicles too.</summary>
    internal static Items<OpeningKind> Doors { get; } = Doorways.Where(kind => kind != Cased).With(GarageDoor).With(OverheadDoor);
}
