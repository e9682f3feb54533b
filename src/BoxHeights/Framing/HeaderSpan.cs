namespace BoxHeights;

/// <summary>Where the header of an opening lies: on its jacks, from the opening's head up, so that it is longer than the opening by a jack at each end.</summary>
[Told]
internal readonly partial struct HeaderSpan
{
    public Distance Left { get; }

    public Distance Right { get; }

    public Level Bottom { get; }

    /// <summary>Its upper edge, if it is so tall.</summary>
    public Level TopAt(Distance tall) => new(Bottom.Offset + tall, Bottom.Datum);

    /// <summary>The header of an opening in a wall that carries something.</summary>
    /// <param name="opening">The opening; a pocket door's pocket is under its header too.</param>
    /// <param name="wall">Its wall.</param>
    /// <param name="jack">How thick its jacks are; null where that isn't known.</param>
    /// <param name="usual">How thick they usually are, and how high pockets.</param>
    /// <param name="header">Where it lies.</param>
    /// <returns>False where the opening's head isn't stated, or a header is stated over it.</returns>
    public static bool TryOf(Opening opening, Wall wall, Distance? jack, UsualMeasures usual, out HeaderSpan header)
    {
        header = default;
        if (opening.Head is not { } head || opening.Right <= opening.Left)
        {
            return false;
        }

        foreach (NoCavity part in wall.NoCavity)
        {
            if (part.Kind == NoCavityKind.Header && part.Left < opening.Right && opening.Left < part.Right)
            {
                return false;
            }
        }

        (Distance left, Distance right) = (opening.Left, opening.Right);
        if (DoorPocket.TryOf(opening, usual, out DoorPocket pocket))
        {
            (left, right) = (Distance.Min(left, pocket.Left), Distance.Max(right, pocket.Right));
        }

        Distance beyond = jack ?? usual.Lumber;
        header = new(Distance.Max(Distance.Zero, left - beyond), Distance.Min(wall.Length, right + beyond), head);
        return true;
    }
}
