using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>
/// Frames the walls of a storey and says of it as much, and as well, as framers do. Positions from a government builder's manual: the first stud's near face is half a
/// stud short of the spacing (15-1/4 in for 16), the next follow at the spacing, and what openings add doesn't disturb the run. A jack and a king stand on each
/// side of an opening, a corner has its stud: common practice, no source. Worked out here from those words, not by the library.
/// </summary>
internal sealed class FramingCrew
{
    private static readonly Distance TwoBy = Distance.FromInches(1.5m);
    private static readonly Distance DrywallStud = Distance.FromInches(1.25m);

    private readonly Draw draw;
    private readonly Distance spacing;
    private readonly Telling telling;
    private readonly WallEnd from;

    public FramingCrew(Draw draw)
    {
        this.draw = draw;
        IsMetal = draw.Chance(10);
        spacing = draw.One(Distance.FromInches(16), Distance.FromInches(16), Distance.FromInches(24), Distance.FromMillimeters(400), Distance.FromMillimeters(600));
        telling = draw.One(Telling.Nothing, Telling.Assumed, Telling.OfStorey, Telling.OfWall, Telling.OneByOne);
        from = draw.One(WallEnd.Left, WallEnd.Right);
        SaysCavity = draw.Chance(70);
    }

    private enum Telling
    {
        /// <summary>Nobody says where studs are.</summary>
        Nothing,

        /// <summary>The drawing has a spacing; from which end the framer pulls each wall he decides on the day.</summary>
        Assumed,

        /// <summary>The framer says how he pulls all walls of the storey.</summary>
        OfStorey,

        /// <summary>Each wall has its own layout.</summary>
        OfWall,

        /// <summary>Each stud was measured.</summary>
        OneByOne,
    }

    /// <summary>Whether its studs are of steel: no box is nailed to one.</summary>
    public bool IsMetal { get; }

    public bool SaysCavity { get; }

    /// <summary>What is said of all walls of the storey.</summary>
    public StudLayout? Said => telling switch
    {
        Telling.Assumed => Layout(from, StudKnowledge.Assumed),
        Telling.OfStorey => Layout(from, StudKnowledge.Declared),
        _ => null,
    };

    private Distance Thickness => IsMetal ? DrywallStud : TwoBy;

    /// <summary>Whether its studs are known well enough for a box to be called by the number of its stud.</summary>
    private bool IsKnown => telling is Telling.OfStorey or Telling.OfWall;

    /// <summary>Frames a wall of which the openings are set out.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="cavity">How deep its studs are, if it isn't a usual wall.</param>
    public Timber Frame(Wall wall, decimal? cavity)
    {
        Timber timber = new(wall.Length, Thickness) { Cavity = Distance.FromInches(cavity ?? (IsMetal ? 3.625m : 3.5m)) };
        timber.AddPack(Distance.Zero, Thickness);
        timber.AddPack(wall.Length - Thickness, wall.Length);
        foreach (Opening opening in wall.Openings)
        {
            (Distance left, Distance right) = RoughOf(opening);
            timber.AddHole(left, right);
            timber.AddPack(left - (Thickness * 2), left);
            timber.AddPack(right, right + (Thickness * 2));
            if (opening.Kind == OpeningKind.Window)
            {
                timber.AddCripple(opening, left);
                timber.AddCripple(opening, right - Thickness);
            }
        }

        WallEnd end = telling == Telling.OfStorey ? from : draw.One(WallEnd.Left, WallEnd.Right);
        Distance? first = telling == Telling.OfWall ? draw.One<Distance?>(null, null, Distance.FromInches(14.5m), Distance.FromInches(12)) : null;
        List<Distance> faces = Faces(wall.Length, end, first);
        foreach (Distance face in faces)
        {
            if (!timber.IsTaken(face, face + Thickness))
            {
                timber.AddCommon(face);
            }

            foreach (Opening window in wall.Openings.Where(one => one.Kind == OpeningKind.Window && one.Left + Thickness <= face && face + (Thickness * 2) <= one.Right))
            {
                timber.AddCripple(window, face);
            }
        }

        timber.Said = telling switch
        {
            Telling.OfWall => Layout(end, draw.One(StudKnowledge.Declared, StudKnowledge.Measured)).WithFirstFace(first),
            Telling.OneByOne => Measured(timber),
            _ => null,
        };
        return timber;
    }

    /// <summary>The number by which a box's stud is called, counted from the left: only where no opening makes it doubtful what is counted.</summary>
    public int? NumberOf(Timber timber, (Distance Left, Distance Right) stud) =>
        IsKnown && timber.Holes.Count == 0 && timber.Commons.Contains(stud) ? 1 + timber.Commons.ToList().IndexOf(stud) : null;

    /// <summary>What an opening takes of the framing. A pocket door's frame is twice its leaf and 1 in, from its strike jamb: common practice, from memory.</summary>
    private static (Distance Left, Distance Right) RoughOf(Opening opening)
    {
        if (opening is not { Kind: var kind, Leaf: { } leaf, PocketOn: { } side } || kind != OpeningKind.PocketDoor)
        {
            return (opening.Left, opening.Right);
        }

        Distance frame = Distance.Max(opening.Right - opening.Left, leaf + leaf + Distance.FromInches(1));
        return side == WallEnd.Left ? (opening.Right - frame, opening.Right) : (opening.Left, opening.Left + frame);
    }

    private List<Distance> Faces(Distance length, WallEnd end, Distance? first)
    {
        List<Distance> faces = [];
        Distance half = Distance.FromTicks(Thickness.Ticks / 2);
        for (Distance near = first ?? spacing - half; near < length - Thickness; near += spacing)
        {
            // Tapes aren't exact where studs are measured one by one.
            Distance off = telling == Telling.OneByOne ? Distance.FromInches(draw.Between(-2, 2) / 8m) : Distance.Zero;
            faces.Add((end == WallEnd.Left ? near : length - near - Thickness) + off);
        }

        faces.Sort();
        return faces;
    }

    private StudLayout Layout(WallEnd end, StudKnowledge known) =>
        new StudLayout().WithSpacing(spacing).WithFrom(end).WithThickness(IsMetal ? Thickness : null).WithKnown(known);

    /// <summary>Either the studs between corners and openings, or every piece that a tape was held to.</summary>
    private StudLayout Measured(Timber timber)
    {
        IEnumerable<Distance> faces = timber.Commons.Select(one => one.Left);
        if (draw.Chance(40))
        {
            faces = faces.Concat(timber.Packs.SelectMany(pack => pack.Right - pack.Left == Thickness ? new[] { pack.Left } : new[] { pack.Left, pack.Left + Thickness }));
        }

        return new StudLayout().WithFaces(faces.OrderBy(face => face).ToArray()).WithThickness(IsMetal ? Thickness : null).WithKnown(StudKnowledge.Measured);
    }
}
