using System;

namespace BoxHeights;

/// <summary>An opening with everything that is put into and around it: rough opening → jamb → reveal → casing's outer edge, and the pocket beside a pocket door.</summary>
/// <remarks>
/// <para>The jamb's face is taken in line with the edge of the leaf: half of what the rough opening is wider than one leaf, or than two of a double door, lies on
/// each side. Of a pocket door it is the strike jamb. Where no leaf is stated, and for panels and cased openings, the face is 1 in inside the rough opening, as for
/// a door 2 in narrower than its opening. Casing starts a reveal back from that face. The gap of 3/32 to 1/8 in between leaf and jamb moves casing that much
/// outward. Common practice, no source.</para>
/// <para>A pocket door's frame takes twice the leaf and 1 in of the wall, counted from the strike side, whether the opening is described as all of that or as the
/// doorway alone. Common practice, from memory.</para>
/// </remarks>
public sealed class TrimmedOpening
{
    private TrimmedOpening(Opening opening, UsualMeasures usual)
    {
        Opening = opening;
        Distance width = opening.Right - opening.Left;
        Doorway = DoorwayOf(opening, usual.JambInset, out DistanceRange? pocket);
        Pocket = pocket;
        Distance inset = usual.JambInset;
        Distance leaves = (opening.Leaf ?? Distance.Zero) * (opening.Kind == OpeningKind.DoubleDoor ? 2 : 1);
        if (IsSwung(opening.Kind) && leaves > Distance.Zero && leaves < width)
        {
            inset = (width - leaves).Split(2)[0];
        }

        // A pocket's side of the doorway has no rough face of its own: a split jamb stands there.
        Distance strike = Distance.Max(Distance.Zero, Doorway.Width - (opening.Leaf ?? Distance.Zero));
        (Distance left, Distance right) = (Doorway.From, Doorway.To);
        JambLeft = left + (pocket is null ? inset : opening.PocketOn == WallEnd.Left ? Distance.Zero : strike);
        JambRight = right - (pocket is null ? inset : opening.PocketOn == WallEnd.Right ? Distance.Zero : strike);
        Distance beyond = Distance.Zero;
        Distance below = Distance.Zero;
        if (opening.Casing is { } casing)
        {
            Distance back = casing + (opening.Reveal ?? Distance.Zero);
            Left = Distance.Max(Distance.Zero, Distance.Min(left, JambLeft - back));
            Right = Distance.Max(right, JambRight + back);
            beyond = Distance.Max(Distance.Zero, back - inset);
            below = opening.Stool is { } stool ? casing + stool - inset : beyond;
        }
        else
        {
            Left = left;
            Right = right;
        }

        Bottom = opening.Sill is { } sill ? new Level(sill.Offset - below, sill.Datum) : null;
        Top = opening.Head is { } head ? new Level(head.Offset + beyond, head.Datum) : null;
    }

    /// <summary>The opening, and from where to where its trim reaches.</summary>
    public override string ToString() => Opening.Id + ": " + Left + " to " + Right + " with its trim";

    /// <summary>The opening.</summary>
    public Opening Opening { get; }

    /// <summary>The left jamb's face, from the wall's left end.</summary>
    public Distance JambLeft { get; }

    /// <summary>The right jamb's face, from the wall's left end.</summary>
    public Distance JambRight { get; }

    /// <summary>What one walks through, between rough faces: the opening without a pocket.</summary>
    public DistanceRange Doorway { get; }

    /// <summary>The stretch of wall that a pocket door slides into, where nothing can be set; null for other openings, and while its side isn't stated.</summary>
    public DistanceRange? Pocket { get; }

    /// <summary>The left outer edge of its casing; the rough opening's edge where no casing is stated.</summary>
    public Distance Left { get; }

    /// <summary>The right outer edge of its casing; the rough opening's edge where no casing is stated.</summary>
    public Distance Right { get; }

    /// <summary>The lower edge of what is around it; null where it reaches the floor.</summary>
    public Level? Bottom { get; }

    /// <summary>The upper edge of what is around it; null where its head isn't stated.</summary>
    public Level? Top { get; }

    /// <summary>Whether casing is put around it.</summary>
    internal bool IsCased => Opening.Casing is { } casing && casing > Distance.Zero;

    /// <summary>Works out the trim of an opening.</summary>
    /// <param name="opening">The opening.</param>
    /// <param name="usual">How far inside the opening its jambs are, where it doesn't say.</param>
    /// <exception cref="ArgumentNullException"><paramref name="opening"/> is null.</exception>
    /// <exception cref="OverflowException">Its measures are beyond the scale.</exception>
    internal static TrimmedOpening Of(Opening opening, UsualMeasures usual) => new(opening ?? throw new ArgumentNullException(nameof(opening)), usual);

    /// <summary>How much wall is seen between a plate and the casing beside it: negative where the plate laps onto the casing.</summary>
    /// <param name="center">The plate's center along the wall.</param>
    /// <param name="plate">The plate, of any size.</param>
    /// <returns>The smaller of what is seen to the left and to the right; negative by how far the nearer edge would have to move.</returns>
    public Distance Clearance(Distance center, PlateSize plate) =>
        Distance.Max(center - plate.HalfWidth - Right, Left - (center + plate.HalfWidth));

    private static bool IsSwung(OpeningKind kind) => kind == OpeningKind.Door || kind == OpeningKind.DoubleDoor;

    private static DistanceRange DoorwayOf(Opening opening, Distance inset, out DistanceRange? pocket)
    {
        pocket = null;
        DistanceRange all = new(opening.Left, Distance.Max(opening.Left, opening.Right));
        if (opening.Kind != OpeningKind.PocketDoor || opening.Leaf is not { } leaf || opening.PocketOn is not { } side)
        {
            return all;
        }

        // Described as the whole frame, the doorway is what the strike jamb and the leaf take of it.
        Distance frame = leaf + leaf + inset;
        Distance doorway = all.Width < leaf + leaf ? all.Width : leaf + inset;
        Distance inside = Distance.Max(leaf, Distance.Max(all.Width, frame) - doorway);
        if (side == WallEnd.Left)
        {
            Distance edge = all.To - doorway;
            pocket = new(edge > inside ? edge - inside : Distance.Zero, edge);
            return new(edge, all.To);
        }

        pocket = new(all.From + doorway, all.From + doorway + inside);
        return new(all.From, all.From + doorway);
    }
}
