using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A box as it stands on a wall: what it takes of it, roughly in height.</summary>
/// <param name="At">Its center along the wall.</param>
/// <param name="Half">Half of its body's width.</param>
/// <param name="HalfPlate">Half of its plate's width.</param>
/// <param name="Up">Its center above the subfloor, in inches.</param>
/// <param name="Depth">How far it reaches behind the studs' faces at the most.</param>
internal readonly record struct Standing(Distance At, Distance Half, Distance HalfPlate, decimal Up, Distance Depth);

/// <summary>
/// Sets the boxes of a framed wall where they can be held, as near to where they are wanted as a good electrician would: nailed to the nearest stud with room in its
/// bay, cut in clear of studs, on a bar or bracket in the bay; off casing, off the edges of whatever lies on the wall, and off one another.
/// </summary>
internal sealed class Electrician
{
    // For a stud that is further away he puts a block where the box is wanted.
    private static readonly Distance Farthest = In(12);

    private static readonly Distance Eighth = In(0.125m);
    private static readonly Distance Quarter = In(0.25m);

    // Where else a box goes that is held anywhere: every quarter of an inch up to 40 in away, the nearest first, so that no more are looked at than need be.
    private static readonly Distance[] Aside = [.. Enumerable.Range(-160, 321).Select(step => In(step / 4m)).OrderBy(off => off.Abs())];

    private readonly StoreyDraft storey;
    private readonly Draw draw;
    private readonly Timber timber;
    private readonly IReadOnlyList<Standing> behind;
    private readonly List<Standing> standing = [];
    private readonly List<NoCavity> blocks = [];
    private Wall wall;

    private Electrician(StoreyDraft storey, Wall wall, Timber timber, IReadOnlyList<Standing> behind)
    {
        this.storey = storey;
        draw = storey.Site;
        this.wall = wall;
        this.timber = timber;
        this.behind = behind;
    }

    /// <summary>The wall with its boxes set, and what they take of it.</summary>
    /// <param name="storey">What is told of the storey.</param>
    /// <param name="wall">The wall, with boxes where they are wanted.</param>
    /// <param name="timber">What stands in it.</param>
    /// <param name="behind">What is set in its other face, in places of this one.</param>
    public static (Wall Wall, IReadOnlyList<Standing> Standing) Set(StoreyDraft storey, Wall wall, Timber timber, IReadOnlyList<Standing> behind)
    {
        Electrician electrician = new(storey, wall, timber, behind);
        return (electrician.SetAll(), electrician.standing);
    }

    private Wall SetAll()
    {
        Dictionary<string, DeviceBox> set = [];
        foreach (DeviceBox box in wall.Boxes.OrderBy(box => box.Existing ? 0 : box.Purpose == BoxPurpose.Switch ? 1 : 2))
        {
            if (box.Existing || box.Surface is not null)
            {
                // Sheets that are hung upright are hung so that none meets another on a box that is there.
                DeviceBox left = storey.UprightSeams(wall.Length).Any(seam => (seam - box.At!.Value).Abs() < In(3)) ? box.WithAt(box.At!.Value + In(6)) : box;
                standing.Add(Standing(left, left.At!.Value));
                set.Add(box.Id, left);
            }
            else
            {
                DeviceBox one = SetOne(box) ?? throw new InvalidOperationException("Nowhere on " + wall.Id + " is there room for " + box.Id + ".");
                standing.Add(Standing(one, one.At!.Value));
                set.Add(box.Id, one);
            }
        }

        return wall.WithBoxes(wall.Boxes.Select(box => set[box.Id]).ToArray()).WithNoCavity(blocks.ToArray());
    }

    /// <summary>The box where it is held; null where the wall has no room for it at all.</summary>
    private DeviceBox? SetOne(DeviceBox box)
    {
        MountingMethod method = MethodFor(box);

        // A light belongs in the middle of its mirror: on a block, as near to that as a stud lets it.
        method = method == MountingMethod.Stud && box.Purpose == BoxPurpose.VanityLight ? MountingMethod.Blocking : method;
        Distance wanted = box.At!.Value;
        Opening? under = wall.Openings.FirstOrDefault(one => one.Kind == OpeningKind.Window && one.Left < wanted && wanted < one.Right);
        if (method == MountingMethod.Stud)
        {
            Standing at = Standing(box, wanted);
            Distance off = draw.One(Distance.Zero, Distance.Zero, In(0.0625m), In(0.125m));
            Nailing? nearest = timber.Nailers(under).SelectMany(piece => Beside(piece, at.Half + off)).OrderBy(one => (one.At - wanted).Abs()).Cast<Nailing?>().FirstOrDefault(one => Fits(at, box, under, one!.Value.At, null));
            if (box.Purpose == BoxPurpose.Switch && (nearest is null || (nearest.Value.At - wanted).Abs() > In(3)) && Packed(box, at) is { } packed)
            {
                return packed;
            }

            if (nearest is { } nailing && (nailing.At - wanted).Abs() < Farthest)
            {
                return Said(box.WithAt(nailing.At), method, nailing.Side, storey.Framers.NumberOf(timber, nailing.Piece));
            }

            method = MountingMethod.Blocking;
        }

        Distance clear = method == MountingMethod.CutIn ? In(0.625m) : In(0.125m);
        Standing here = Standing(box, wanted);
        Distance? best = Aside.Select(off => wanted + off).Cast<Distance?>().FirstOrDefault(at => Fits(here, box, under, at!.Value, clear));
        return best is { } place ? Said(box.WithAt(place), method, null, null) : null;
    }

    /// <summary>An extra piece on the king, so that a plate clears wide casing: the trade's cure.</summary>
    private DeviceBox? Packed(DeviceBox box, in Standing wished)
    {
        (Distance wanted, Distance half) = (wished.At, wished.Half);
        foreach (Opening door in wall.Openings)
        {
            bool right = wanted > door.Right;
            Distance king = right ? door.Right + (timber.Thickness * 2) : door.Left - (timber.Thickness * 2);
            if ((king - wanted).Abs() > In(6))
            {
                continue;
            }

            Distance left = right ? king : king - timber.Thickness;
            Distance at = right ? left + timber.Thickness + half : left - half;
            if (timber.Pieces(null).TrueForAll(piece => piece.Right <= left || left + timber.Thickness <= piece.Left) && Fits(wished, box, null, at, null))
            {
                timber.AddBlock(left, left + timber.Thickness);
                blocks.Add(new NoCavity(NoCavityKind.Blocking, left, left + timber.Thickness).WithBottom(new Level(In(38), Datum.Subfloor)).WithTop(new Level(In(62), Datum.Subfloor)));
                return Said(box.WithAt(at), MountingMethod.Stud, right ? StudSide.Right : StudSide.Left, null);
            }
        }

        return null;
    }

    private static IEnumerable<Nailing> Beside((Distance Left, Distance Right) piece, Distance half)
    {
        yield return new(piece.Right + half, piece, StudSide.Right);
        yield return new(piece.Left - half, piece, StudSide.Left);
    }

    /// <summary>Writes down as much of how it is held as anybody does.</summary>
    private DeviceBox Said(DeviceBox box, MountingMethod method, StudSide? side, int? number)
    {
        if (box.Mounting is null && !draw.Chance(60))
        {
            return box;
        }

        Mounting mounting = new(method);
        mounting = side is not null && draw.Chance(40) ? mounting.WithSide(side) : mounting;
        return box.WithMounting(side is not null && number is not null && draw.Chance(50) ? mounting.WithSide(side).WithStud(number) : mounting);
    }

    private MountingMethod MethodFor(DeviceBox box) =>
        box.Kind == BoxKind.CutIn ? MountingMethod.CutIn
        : box.Kind == BoxKind.FourSquare || box.Kind == BoxKind.Octagon ? draw.One(MountingMethod.Bar, MountingMethod.Bracket)
        : storey.Framers.IsMetal ? MountingMethod.Bracket
        : box.Mounting is null && draw.Chance(8) ? MountingMethod.Blocking
        : MountingMethod.Stud;

    /// <summary>Whether a box may be at a place: its body in a bay, its plate off trim and edges, and off other boxes.</summary>
    /// <param name="wished">What it would take where it is wanted.</param>
    /// <param name="box">The box.</param>
    /// <param name="under">The window that it is under; null elsewhere.</param>
    /// <param name="at">The place.</param>
    /// <param name="clear">What is left between its body and studs; null for a box that is nailed to one.</param>
    private bool Fits(Standing wished, DeviceBox box, Opening? under, Distance at, Distance? clear)
    {
        Standing one = wished with { At = at };
        Distance wanted = box.At!.Value;
        bool Hits(Distance left, Distance right, Distance half) => at - half < right && left < at + half;
        bool nailed = clear is null;
        if (at - one.Half < timber.Thickness || at + one.Half > wall.Length - timber.Thickness || at < one.HalfPlate || at > wall.Length - one.HalfPlate)
        {
            return false;
        }

        if (under is not null ? at - one.Half < under.Left || at + one.Half > under.Right : timber.Holes.Any(hole => Hits(hole.Left, hole.Right, one.Half)))
        {
            return false;
        }

        // A nailed box touches its stud: what is asked is that the widest of its kind fits into the rest of the bay.
        Distance body = one.Half + (clear ?? Distance.Zero);
        if (timber.Pieces(under).Any(piece => Hits(piece.Left, piece.Right, body)) || (nailed && !HasRoom(under, at, one.Half)))
        {
            return false;
        }

        if (under is null && wall.Openings.Any(opening => TrimOf(opening) is var (left, right) && Hits(left, right, one.HalfPlate + Quarter)))
        {
            return false;
        }

        // It is wanted 8 in from its window, and belongs 4 to 18 in off the casing.
        if (box.Purpose == BoxPurpose.WindowTop && (at < wanted - In(1.5m) || at > wanted + In(6)))
        {
            return false;
        }

        if (DoorDraft.IsUsedAtADoor(box) && wall.Openings.Any(door => DoorDraft.Behind(door).Any(leaf => Hits(leaf.Left, leaf.Right, one.Half))))
        {
            return false;
        }

        if (storey.UprightSeams(wall.Length).Any(seam => !nailed && Hits(seam, seam, one.Half + Quarter)) || Edges().Any(edge => Crosses(edge, wanted, at, one.HalfPlate)))
        {
            return false;
        }

        return !standing.Exists(other => Math.Abs(other.Up - one.Up) < 8 && (at - other.At).Abs() < Distance.Max(one.Half + other.Half, one.HalfPlate + other.HalfPlate) + Quarter)
            && !behind.Any(other => Math.Abs(other.Up - one.Up) < 8 && (at - other.At).Abs() < one.Half + other.Half + Quarter && one.Depth + other.Depth > timber.Cavity);
    }

    /// <summary>Whether there is 1/4 in more than the box takes between the pieces on its sides.</summary>
    private bool HasRoom(Opening? under, Distance at, Distance half)
    {
        List<(Distance Left, Distance Right)> pieces = timber.Pieces(under);
        Distance left = pieces.Where(piece => piece.Right <= at).Max(piece => piece.Right);
        Distance right = pieces.Where(piece => piece.Left >= at).Min(piece => piece.Left);
        return right - left >= half + half + Quarter;
    }

    /// <summary>Where the trim of an opening ends: the leaf's side of the jamb, the reveal, the casing.</summary>
    private static (Distance Left, Distance Right) TrimOf(Opening opening)
    {
        Distance beyond = opening.Casing is { } casing ? casing + (opening.Reveal ?? Distance.Zero) - In(1) : Distance.Zero;
        beyond = Distance.Max(Distance.Zero, opening.Kind == OpeningKind.PocketDoor ? beyond + In(1) : beyond);
        return (opening.Left - beyond, opening.Right + beyond);
    }

    private IEnumerable<Distance> Edges() => wall.Coverings.SelectMany(one => new[] { one.Left, one.Right })
        .Concat(wall.Finishes.SelectMany(one => new[] { one.Left, one.Right }))
        .Concat(wall.Counters.SelectMany(one => new[] { one.Left, one.Right }))
        .Concat(wall.Counters.SelectMany(one => one.Interruptions.SelectMany(cut => new[] { one.Left + (cut.Left - one.Left), cut.Right })))
        .Where(edge => edge > Distance.Zero && edge < wall.Length);

    /// <summary>Whether a box would come to lie across an edge that it was wanted beside, or beyond it. One that is wanted across it lies over or under the thing.</summary>
    private static bool Crosses(Distance edge, Distance wanted, Distance at, Distance halfPlate)
    {
        Distance reach = halfPlate + Eighth;
        return (wanted - edge).Abs() >= reach && ((at - edge).Abs() < reach || (at < edge) != (wanted < edge));
    }

    private Standing Standing(DeviceBox box, Distance at)
    {
        int gangs = Math.Max(1, StoreyDraft.GangsOf(box.Devices));

        // Widths by gang from common practice: 2-1/4, 4, 5-3/4, 7-1/2 in; plates by the pitch of 1-13/16 in.
        Distance width = box.Kind == BoxKind.FourSquare || box.Kind == BoxKind.Octagon ? In(4) : box.Size?.Width ?? In(2.25m + (1.75m * (gangs - 1)));
        Distance plate = In(2.75m + (1.8125m * (gangs - 1)));
        Distance depth = box.Kind == BoxKind.FourSquare ? box.Volume == Volume.FromCubicInches(21) ? In(1.5m) : In(2.125m) : (box.Size?.Depth ?? In(3.625m)) - In(0.5m);
        return new(at, Distance.FromTicks(width.Ticks / 2), Distance.FromTicks(plate.Ticks / 2), storey.Up(box.Height!.Value), depth);
    }

    private readonly record struct Nailing(Distance At, (Distance Left, Distance Right) Piece, StudSide Side);
}
