using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Where along its wall a box is, in words of what one sees there: a king beside its opening, a corner, a stud by its number or its layout mark, a tread.</summary>
internal static class MarkPlace
{
    /// <summary>What a box is nailed to, else how far its center is from the face of what stands nearest; empty where nothing is known to stand.</summary>
    /// <param name="state">The dwelling.</param>
    /// <param name="box">The box.</param>
    /// <param name="along">Where its center is marked; null where that isn't known.</param>
    /// <param name="mark">Where it is marked above its room's subfloor; null where it isn't.</param>
    public static string Of(LayoutState state, int box, Distance? along, Distance? mark)
    {
        BoxTraits traits = state.SitesOf(box)[0].Site.Box;
        if (along is not { } place || traits.Surface != BoxSurface.Wall)
        {
            return "";
        }

        string tread = mark is { } up ? OnTread(state, box, place, up) : "";
        string stud = Nearest(state, box, place) is { } nearest ? Beside(state, box, nearest, place) : "";
        return tread + (tread.Length > 0 && stud.Length > 0 ? "; " : "") + stud;
    }

    /// <summary>Where the center of a box is that is nailed to the piece it is almost at; null where it is at none, or isn't nailed.</summary>
    public static Distance? NailedAt(LayoutState state, int box, Distance at)
    {
        if (Nearest(state, box, at) is not { } nearest || state.Boxes[box].Surface.Framing!.IsAssumed(nearest))
        {
            return null;
        }

        return SideOf(state, box, nearest, at) is { } side && CenterAt(state, box, nearest, side) is var center && (center - at).Abs() <= state.Options.AlongStep ? center : null;
    }

    /// <summary>The piece whose middle is nearest among those that stand at the box's height and have a face toward it.</summary>
    private static FramingMember? Nearest(LayoutState state, int box, Distance place)
    {
        ResolvedSurface surface = state.Boxes[box].Surface;
        if (surface is not { Studs: not null, Framing: { } framing } || !state.SitesOf(box)[0].Site.Box.Size.IsStated)
        {
            return null;
        }

        FramingMember? nearest = null;
        Distance least = Distance.MaxValue;
        bool isUpKnown = state.TryNominalCenter(box, out Distance up);
        foreach (FramingMember member in framing.Members)
        {
            bool stands = member.Part switch
            {
                FramingPart.Jack => false,
                FramingPart.Cripple => member.Number is not null && isUpKnown && member.StandsAt(up, state.SitesOf(box)[0].Site.Levels),
                _ => !member.IsReplaced,
            };
            Distance away = (place - Middle(member)).Abs();
            if (stands && away < least)
            {
                least = away;
                nearest = member;
            }
        }

        return nearest;
    }

    private static string Beside(LayoutState state, int box, in FramingMember member, Distance place)
    {
        ResolvedSurface surface = state.Boxes[box].Surface;
        StudSide side = place >= Middle(member) ? StudSide.Right : StudSide.Left;
        bool isNailed = SideOf(state, box, member, place) is { } && (CenterAt(state, box, member, side) - place).Abs() is var off
            && (surface.Framing!.IsAssumed(member) ? off <= state.Options.AlongStep : off == Distance.Zero);
        string name = NameOf(surface, member, state.Options.Units);
        if (surface.Framing!.IsAssumed(member))
        {
            return isNailed ? "near " + name + " (assumed layout)" : "";
        }

        string word = side == StudSide.Left ? "left" : "right";
        if (isNailed)
        {
            return member.Part is FramingPart.King or FramingPart.Corner
                ? name
                : name + ", " + word + " side" + (surface.StudLayout?.OpenSide is { } open ? open == side ? " (open side)" : " (web)" : "");
        }

        // From the face of the piece, where a tape is hooked; a box whose center is over it has no such distance.
        Distance away = side == StudSide.Left ? member.Left - place : place - member.Right;
        name = member.Part == FramingPart.King ? "the king at " + OpeningOf(surface, member)?.Id : name;
        return away > Distance.Zero ? Printed.OnTape(away, state.Options.Units) + " " + word + " of " + name : "over " + name;
    }

    /// <summary>The side of a piece that a nailed box is on; null where the box is held otherwise.</summary>
    private static StudSide? SideOf(LayoutState state, int box, in FramingMember member, Distance place) =>
        state.SitesOf(box)[0].Site.Box is { Surface: BoxSurface.Wall, Mounting: null or MountingMethod.Stud } ? place >= Middle(member) ? StudSide.Right : StudSide.Left : null;

    private static Distance CenterAt(LayoutState state, int box, in FramingMember member, StudSide side)
    {
        Distance half = state.SitesOf(box)[0].Site.Box.Size.HalfWidth;
        return side == StudSide.Right ? member.Right + half : member.Left - half;
    }

    private static Distance Middle(in FramingMember member) => member.Left + Distance.FromTicks((member.Right - member.Left).Ticks / 2);

    /// <summary>A king by its opening, a corner by its end; a stud by its number where all before it can be counted, else by its layout mark.</summary>
    private static string NameOf(ResolvedSurface surface, in FramingMember member, LengthUnits units)
    {
        if (member.Part == FramingPart.Corner)
        {
            return member.Left == Distance.Zero ? "left corner stud" : "right corner stud";
        }

        if (member.Part == FramingPart.King)
        {
            return OpeningOf(surface, member) is { } of ? "king, " + (member.Left < of.Left ? "left of " : "right of ") + of.Id : "king";
        }

        StudLayout layout = surface.StudLayout!;
        if (CanBeCounted(surface.Framing!, member.Number!.Value))
        {
            return "stud " + member.Number;
        }

        return layout.Faces.Count > 0 ? "stud with its left face at " + Printed.OnTape(member.Left, units)
            : layout.From == WallEnd.Left ? "layout mark " + Printed.OnTape(Middle(member), units)
            : "layout mark " + Printed.OnTape(surface.Length - Middle(member), units) + " from the right";
    }

    /// <summary>The opening that a king stands beside.</summary>
    private static Opening? OpeningOf(ResolvedSurface surface, in FramingMember king)
    {
        Opening? of = null;
        foreach (Opening opening in surface.Wall!.Openings)
        {
            of = of is null || Off(opening, king) < Off(of, king) ? opening : of;
        }

        return of;
    }

    private static Distance Off(Opening opening, in FramingMember member) => Distance.Min((opening.Left - member.Right).Abs(), (member.Left - opening.Right).Abs());

    /// <summary>Whether every stud up to a number stands in full, so that one who counts from the left corner comes to it.</summary>
    private static bool CanBeCounted(WallFraming framing, int number)
    {
        int standing = 0;
        foreach (FramingMember member in framing.Members)
        {
            standing += member is { Part: FramingPart.Stud, IsReplaced: false } && member.Number <= number ? 1 : 0;
        }

        return standing == number;
    }

    /// <summary>The tread that a place is over, and how far above it: on the wall of a stair whose floors are chosen.</summary>
    private static string OnTread(LayoutState state, int box, Distance place, Distance mark)
    {
        string found = "";
        if (state.Boxes[box].Surface.Stair is { } stair)
        {
            for (int tread = 1; tread <= stair.Flight.Risers && stair.TryTread(tread, out ExactDistance nosing, out DistanceRange top); tread++)
            {
                Distance at = nosing.RoundNearest();
                if (stair.Flight.Climbs == WallEnd.Left ? place <= at : at <= place)
                {
                    found = top.IsExact && mark > top.From ? "tread " + tread + ", " + Printed.OnTape(mark - top.From, state.Options.Units) + " up" : "";
                }
            }
        }

        return found;
    }
}
