using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Binds a described box to its surface, and says what in its description can't be.</summary>
/// <param name="catalog">Sizes that it doesn't state.</param>
/// <param name="units">How faults are printed.</param>
/// <param name="faults">Takes the faults.</param>
internal sealed class BoxResolver(PartsCatalog catalog, LengthUnits units, List<LayoutFault> faults)
{
    /// <summary>A box that is described anew on its surface; broken where that can't be.</summary>
    public static ResolvedBox Again(DeviceBox box, ResolvedSurface surface, PartsCatalog catalog, LengthUnits units) =>
        new BoxResolver(catalog, units, []).On(surface, box);

    /// <summary>A box on a surface; broken where it can't be there.</summary>
    public ResolvedBox On(ResolvedSurface surface, DeviceBox box) =>
        surface.Wall is { } wall ? OnWall(box, surface, wall) : new(box, surface, IsMisfit(box, surface));

    private bool IsMisfit(DeviceBox box, ResolvedSurface surface)
    {
        Wording? misfit = GangsNeeded.Misfit(box, catalog, units);
        if (misfit is not null)
        {
            faults.Add(new(LayoutFaultKind.Contradiction, box.Id, surface.Address, misfit));
        }

        return misfit is not null;
    }

    private ResolvedBox OnWall(DeviceBox box, ResolvedSurface surface, Wall wall)
    {
        int before = faults.Count;
        ResolvedBox resolved = new(box, surface, false);
        BoxSize size = ResolvedBox.SizeOf(box, catalog);
        void Found(LayoutFaultKind kind, Wording what) => faults.Add(new(kind, box.Id, surface.Address, what));
        if (!ResolvedBox.IsWithinReason(resolved.Height?.Value ?? Distance.Zero) || !ResolvedBox.IsWithinReason(resolved.Spread))
        {
            Found(LayoutFaultKind.BeyondMeasure, resolved.Height is { } high ? $"its height is {Printed.Exactly(high, units):height}, which is larger than anything in a house" : (Wording)$"its height is larger than anything in a house");
            return new(box, surface, true);
        }

        if (box.At is { } center && !ResolvedBox.IsWithinReason(center))
        {
            Found(LayoutFaultKind.BeyondMeasure, $"its center is at {Text(center):center}, which is larger than anything in a house");
            return new(box, surface, true);
        }

        _ = IsMisfit(box, surface);
        if (wall.Open)
        {
            Found(LayoutFaultKind.OutsideItsWall, $"no wall stands on this side of the room");
        }
        else if (resolved.TryAlong(catalog, out Distance along))
        {
            if (along < Distance.Zero || along > wall.Length)
            {
                Found(LayoutFaultKind.OutsideItsWall, $"its center is at {Text(along):along}, but the wall is {Text(wall.Length):length} long");
            }
            else if (!surface.Holds(along, size))
            {
                Found(LayoutFaultKind.OutsideItsWall, $"its center is at {Text(along):along}, so that a box {Text(size.Width):width} wide doesn't fit between the ends of the wall, which is {Text(wall.Length):length} long");
            }
            else if (!size.IsStated && !box.OnItsSide && GangsNeeded.LeastWidth(box, ResolvedBox.GangsOf(box), catalog) is var least && !surface.Holds(along, least))
            {
                Found(LayoutFaultKind.OutsideItsWall, $"its center is at {Text(along):along}, so that a box of {ResolvedBox.GangsOf(box):gangs} gangs, at least {Text(least):width} wide, doesn't fit between the ends of the wall, which is {Text(wall.Length):length} long");
            }
            else if (AtAgainstStud(box, surface, size) is { } against)
            {
                Found(LayoutFaultKind.Contradiction, against);
            }
        }
        else if (box.Mounting?.Stud is { } stud && surface.Studs is { } studs && stud > studs.Count)
        {
            Found(LayoutFaultKind.UnknownReference, NoSuchStud(stud, studs));
        }

        if (resolved.Height is not { } height)
        {
            if (!resolved.IsUntouched && (box.Surface is null || box.Surface == BoxSurface.Wall))
            {
                Found(LayoutFaultKind.NoHeight, $"it has no height");
            }
        }
        else if (ResolvedSurface.WhatIsMissing(height.Datum) is { } missing
            && (!resolved.TryAlong(catalog, out Distance at) || !surface.TryAnchor(new(Distance.Zero, height.Datum), at, at, out _)))
        {
            Found(LayoutFaultKind.UnknownReference, $"its height is taken from the {Wording.Term(DatumText.Name(height.Datum)):datum}, but {Wording.Term(missing):missing}");
        }
        else if (height.Datum == Datum.Nosing && surface.Stair is null)
        {
            Found(LayoutFaultKind.UnknownReference, $"its height is taken from the nosing, but no flight of known rise climbs along its wall");
        }
        else if (!surface.Holds(height, size))
        {
            Found(LayoutFaultKind.OutsideItsWall, surface.MostFraming is { } top && top > surface.Space.Framing!.Value.To
                ? $"it is set {Printed.Exactly(height, units):height}, so that it doesn't lie between the subfloor and the top of its wall at {Text(top):top}"
                : surface.Space.Framing is { } framing
                ? (Wording)$"it is set {Printed.Exactly(height, units):height}, so that it doesn't lie between the subfloor and the ceiling framing at {Printed.Exactly(framing, units):framing}"
                : (Wording)$"it is set {Printed.Exactly(height, units):height}, so that it doesn't lie between the subfloor and the ceiling framing");
        }

        return faults.Count == before ? resolved : new(box, surface, true);
    }

    /// <summary>What is wrong where a box is said to be both on a stud and at a place, and the stud stands elsewhere; null where both may be.</summary>
    /// <remarks>
    /// Studs that are only assumed contradict nothing. A tape is read as well as it usually is; a box of which only the kind is stated may be wider or narrower
    /// than usual, so that its center is as much again further from the stud or nearer. Common practice, no source.
    /// </remarks>
    private Wording? AtAgainstStud(DeviceBox box, ResolvedSurface surface, BoxSize size)
    {
        if (box is not { At: { } at, Mounting: { How: MountingMethod.Stud, Stud: { } stud } mounting } || !size.IsStated
            || surface.Studs is not { Known: not StudKnowledge.Assumed } studs)
        {
            return null;
        }

        if (stud > studs.Count)
        {
            return NoSuchStud(stud, studs);
        }

        Distance most = catalog.UsualMeasures.TapeError * (box.Size is null ? 2 : 1);
        Wording? said = null;
        foreach (StudSide side in mounting.Side is { } stated ? new[] { stated } : new[] { StudSide.Left, StudSide.Right })
        {
            if (!studs.TryCenter(stud, side, size.Width, out Distance center) || (center - at).Abs() <= most)
            {
                return null;
            }

            said = said is null ? $"{Text(center):center}" : (Wording)$"{said:first} or, on the other side, {Text(center):other}";
        }

        Wording on = mounting.Side switch { StudSide.Left => $"{stud}, left", StudSide.Right => $"{stud}, right", _ => (Wording)$"{stud}" };
        return $"it is said to be at {Text(at):at} and on stud {on:stud}, which puts its center at {said!:center}: which is meant?";
    }

    private static Wording NoSuchStud(int stud, StudPositions studs) => $"it is on stud {stud}, but the wall has {studs.Count:count} studs between its corners";

    private PrintedQuantity Text(Distance distance) => Printed.Exactly(distance, units);
}
