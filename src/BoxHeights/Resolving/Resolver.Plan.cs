using System.Globalization;

namespace BoxHeights;

/// <content>What can't be about places in plan.</content>
internal sealed partial class Resolver
{
    /// <summary>A room whose walls don't meet again. Up to three walls that don't go round are taken for a part of a room: nobody thinks that they are all.</summary>
    private void Closing(Room room, WallPlan plan)
    {
        if (!IsOfAHouse(room.Walls) || plan.GoesRound || (plan.Count < 4 && !DrawingTolerance.IsOnce(plan.Turned, plan.Count)))
        {
            return;
        }

        Distance off = Distance.FromTicks((long)Grid.SquareRoot((plan.End.X * plan.End.X) + (plan.End.Y * plan.End.Y)));
        Distance printed = off.RoundNearest(units == LengthUnits.Inches ? Distance.FromInches(0, 1, 8) : Distance.FromMillimeters(1));
        Wording ends = off <= DrawingTolerance.Gap ? $"where it began" : (Wording)$"{Text(printed):gap} from where it began";
        Wording turns = $"{plan.Turned.ToString("0.##", CultureInfo.InvariantCulture):angle} degrees";
        ends = DrawingTolerance.IsOnce(plan.Turned, plan.Count) ? ends : $"{ends} and turns {turns} in all, not 360";
        Fault(LayoutFaultKind.DoesNotClose, room.Id, DrawingTolerance.IsOnce(-plan.Turned, plan.Count)
            ? $"it doesn't close: its turns are those of walls seen from outside, {turns} in all; list its walls from left to right as a person sees them who stands in it, 90 degrees to an inside corner"
            : off <= DrawingTolerance.Gap ? $"it doesn't close: it ends {ends}; say which side is open, or its turn"
            : (Wording)$"it doesn't close: it ends {ends}; say which side is open, or its turn, or which length is wrong");
    }

    private static bool IsOfAHouse(Items<Wall> walls)
    {
        bool isOfAHouse = true;
        foreach (Wall wall in walls)
        {
            isOfAHouse &= ResolvedBox.IsWithinReason(wall.Length);
        }

        return isOfAHouse;
    }

    /// <summary>Whether nothing is wrong with the place in plan of a box that is added: of one in a wall, none is asked for.</summary>
    public static bool IsWellPlaced(DeviceBox box, ResolvedSurface surface, PartsCatalog catalog, LengthUnits units)
    {
        Resolver resolver = new(catalog, units);
        if (surface.Wall is null && surface.Space.Plan is { } plan)
        {
            resolver.Flat(box, surface.Address, plan.Closes, plan, surface.Kind == BoxSurface.Floor ? DrawingTolerance.BeyondWalls : DrawingTolerance.GapAcross);
        }

        return resolver.Faults.Count == 0;
    }

    private void InPlan(Room room, WallPlan plan)
    {
        bool closes = plan.Closes;
        foreach (DeviceBox box in room.Overhead)
        {
            Flat(box, SurfaceAddress.Of(room.Id, DwellingBoxes.Ceiling), closes, plan, DrawingTolerance.GapAcross);
        }

        foreach (DeviceBox box in room.InFloor)
        {
            Flat(box, SurfaceAddress.Of(room.Id, DwellingBoxes.Floor), closes, plan, DrawingTolerance.BeyondWalls);
        }

        foreach (Fixture fixture in room.Fixtures)
        {
            string subject = SurfaceAddress.Of(room.Id, fixture.Id);
            OfAHouse(fixture.Depth, subject, "its depth");
            OfAHouse(fixture.Rim, subject, "its rim");
            if (fixture.Plan.Count == 0 && fixture.Wall is null && closes)
            {
                Fault(LayoutFaultKind.NoPlace, subject, $"it isn't said where it stands: name its wall with left and right, or give its corners in plan");
            }

            Stands(subject, fixture.Plan, closes, plan);
        }

        foreach (Freestanding one in room.Freestanding)
        {
            Stands(SurfaceAddress.Of(room.Id, one.Id), one.Corners, closes, plan);
            Outlines(SurfaceAddress.Of(room.Id, one.Id), one.Corners);
            Stands(SurfaceAddress.Of(room.Id, one.Id), one.Line, closes, plan);
        }
    }

    /// <summary>A box in a ceiling or a floor. Where the walls don't close there is nothing that it could be outside of, or that its place would matter to.</summary>
    private void Flat(DeviceBox box, string surface, bool closes, WallPlan plan, Distance tolerance)
    {
        if (box.Plan is not { } point)
        {
            if (closes)
            {
                Fault(LayoutFaultKind.NoPlace, box.Id, $"it isn't said where it is: give its place in plan", surface);
            }
        }
        else if (!IsOfAHouse(point))
        {
            Fault(LayoutFaultKind.BeyondMeasure, box.Id, $"its place in plan is {Text(point):point}, which is larger than anything in a house", surface);
        }
        else if (closes && !plan.Holds(point, tolerance))
        {
            Fault(LayoutFaultKind.OutsideItsRoom, box.Id, $"its place in plan, {Text(point):point} from the left end of the first wall, lies outside the room", surface);
        }
    }

    private void Outlines(string subject, Items<PlanPoint> corners)
    {
        if (corners.Count > RoomOutline.MostCorners)
        {
            Fault(LayoutFaultKind.BeyondMeasure, subject, $"its outline has {corners.Count:count} corners, which is more than anything in a house");
        }
        else if (!corners.Exists(corner => !IsOfAHouse(corner)) && RoomOutline.Crossing(corners) is var (a, b, c, d))
        {
            Contradicts(subject, $"the sides of its outline from {Text(a):a} to {Text(b):b} and from {Text(c):c} to {Text(d):d} cross: give its corners in order");
        }
    }

    private void Stands(string subject, Items<PlanPoint> points, bool closes, WallPlan plan)
    {
        bool isInside = points.Count == 0 || !closes;
        foreach (PlanPoint point in points)
        {
            if (!IsOfAHouse(point))
            {
                Fault(LayoutFaultKind.BeyondMeasure, subject, $"a corner of it is at {Text(point):point}, which is larger than anything in a house");
                return;
            }

            isInside = isInside || plan.Holds(point, DrawingTolerance.BeyondWalls);
        }

        if (!isInside)
        {
            Fault(LayoutFaultKind.OutsideItsRoom, subject, $"all of it lies outside the room: a corner of it is at {Text(points[0]):point} from the left end of the first wall");
        }
    }

    private static bool IsOfAHouse(PlanPoint point) => ResolvedBox.IsWithinReason(point.Right) && ResolvedBox.IsWithinReason(point.Into);

    private Wording Text(PlanPoint point) => $"{Text(point.Right):right} to the right and {Text(point.Into):into} into the room";
}
