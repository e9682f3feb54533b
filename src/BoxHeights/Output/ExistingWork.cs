using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What is there already, for new work to match.</summary>
public static class ExistingWork
{
    /// <summary>The height that most existing boxes of a purpose share on the walls of a room or storey.</summary>
    /// <remarks>
    /// Boxes are compared by their centers, from the height measured where there is one and by the nominal size of the box: in a room above its
    /// subfloor, through a storey above the storey's. In a room whose floor isn't known, heights that are all taken from that floor are compared above it.
    /// Of several levels that as many boxes share within the tolerance, it is the one that more boxes are at exactly, then the lowest.
    /// </remarks>
    /// <param name="dwelling">The dwelling.</param>
    /// <param name="roomOrStorey">The id of a room, an outside face or a storey; a room's where both have it.</param>
    /// <param name="purpose">The purpose.</param>
    /// <param name="tolerance">How far from the level a box's center may be and still share it, up or down; not negative.</param>
    /// <returns>Null where no existing box of the purpose has a center that can be told.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> or <paramref name="roomOrStorey"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such room, outside face or storey.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> is negative.</exception>
    public static ExistingLevel? LevelOf(Dwelling dwelling, string roomOrStorey, BoxPurpose purpose, Distance tolerance)
    {
        SettledOptions options = SettledOptions.Usual(dwelling);
        Guard.NotNegative(tolerance, nameof(tolerance));
        bool isRoom = HasRoom(dwelling, roomOrStorey ?? throw new ArgumentNullException(nameof(roomOrStorey)));
        if (!isRoom && !HasStorey(dwelling, roomOrStorey))
        {
            throw new ArgumentException("The dwelling has no room, outside face or storey \"" + roomOrStorey + "\".", nameof(roomOrStorey));
        }

        List<ResolvedBox> boxes = Resolver.Resolve(dwelling, options.Catalog).Boxes.FindAll(box => box.IsExisting && box.IsOnWall && box.Height is not null
            && box.Source.Purpose == purpose && (isRoom ? box.Surface.Space.Id : box.Surface.Space.StoreyId) == roomOrStorey);

        // A finished floor compares only boxes of its own room.
        Survey best = new(boxes, Datum.Subfloor, !isRoom, options.Catalog);
        if (isRoom && new Survey(boxes, Datum.FinishedFloor, false, options.Catalog) is var aboveFloor && aboveFloor.Centers.Count > best.Centers.Count)
        {
            best = aboveFloor;
        }

        return best.Centers.Count == 0 ? null : LevelOf(best, tolerance, dwelling.Units);
    }

    private static bool HasRoom(Dwelling dwelling, string id)
    {
        bool found = false;
        foreach (Room room in dwelling.Rooms)
        {
            found |= room.Id == id;
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            found |= face.Id == id;
        }

        return found;
    }

    private static bool HasStorey(Dwelling dwelling, string id)
    {
        bool found = false;
        foreach (Storey storey in dwelling.Storeys)
        {
            found |= storey.Id == id;
        }

        return found;
    }

    private static ExistingLevel LevelOf(Survey survey, Distance tolerance, LengthUnits units)
    {
        (ResolvedBox Box, BoxHeight Height, Distance Center) best = survey.Centers[0];
        (int Near, int Same) most = default;
        foreach ((ResolvedBox Box, BoxHeight Height, Distance Center) one in survey.Centers)
        {
            (int Near, int Same) count = default;
            foreach ((ResolvedBox _, BoxHeight _, Distance center) in survey.Centers)
            {
                count.Near += (center - one.Center).Abs() <= tolerance ? 1 : 0;
                count.Same += center == one.Center ? 1 : 0;
            }

            int order = count.CompareTo(most);
            if (order > 0 || (order == 0 && one.Center < best.Center))
            {
                most = count;
                best = one;
            }
        }

        List<string> sharing = [];
        List<LevelOutlier> outliers = [];
        foreach ((ResolvedBox box, BoxHeight _, Distance center) in survey.Centers)
        {
            if ((center - best.Center).Abs() <= tolerance)
            {
                sharing.Add(box.Source.Id);
            }
            else
            {
                outliers.Add(new(box.Source.Id, center - best.Center));
            }
        }

        return new(best.Height, new(sharing), new(outliers), new(survey.NotCompared), units);
    }

    /// <summary>The centers of some boxes above one datum, as far as they can be told.</summary>
    private sealed class Survey
    {
        public Survey(List<ResolvedBox> boxes, Datum from, bool throughStorey, PartsCatalog catalog)
        {
            foreach (ResolvedBox box in boxes)
            {
                BoxHeight height = box.Height!.Value;
                Distance own = throughStorey && box.Surface.Space.Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor) ? subfloor.From : Distance.Zero;
                BoxSize size = ResolvedBox.SizeOf(box.Source, catalog);
                bool known = box.TryOffset(from, height.Datum, catalog, out DistanceRange datum, out Datum? becauseOf);
                string? why = height.Edge is null ? Reasons.NoEdge
                    : !known || !datum.IsExact ? Reasons.NotKnown(becauseOf)
                    : height.Edge != Edge.Center && !size.IsStated ? Reasons.NoSize
                    : null;
                if (why is null)
                {
                    BoxHeight above = BoxHeight.To(height.Edge!.Value, own + datum.From + height.Value, from);
                    Centers.Add((box, above, above.AtEdge(Edge.Center, size).Value));
                }
                else
                {
                    NotCompared.Add(new(box.Source.Id, why));
                }
            }
        }

        public List<(ResolvedBox Box, BoxHeight Height, Distance Center)> Centers { get; } = [];

        public List<LeftOutBox> NotCompared { get; } = [];
    }
}
