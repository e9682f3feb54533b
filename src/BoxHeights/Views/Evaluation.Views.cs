using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <content>What was judged, open to read.</content>
public sealed partial class Evaluation
{
    private Dictionary<Cause, int>? numbers;

    /// <summary>Whether rooms and walls are there to be looked at: not of a dwelling that holds more than is looked at.</summary>
    internal bool IsResolved => state.Surfaces.Count > 0;

    /// <summary>A wall as it was resolved: studs, board, openings, what stands on and before it, its boxes, and what was found there.</summary>
    /// <param name="address">Its address: "kitchen/north", or an outside face and its wall.</param>
    /// <exception cref="ArgumentNullException"><paramref name="address"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such wall, or the dwelling holds so much that none of it is looked at.</exception>
    public WallView Wall(string address)
    {
        _ = address ?? throw new ArgumentNullException(nameof(address));
        ResolvedSurface? surface = Find(one => one.Kind == BoxSurface.Wall && one.Address == address);
        return surface is null ? throw NoSuch("wall", address, nameof(address)) : View(surface);
    }

    /// <summary>A room as it was resolved, in plan.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such room, or the dwelling holds so much that none of it is looked at.</exception>
    public RoomView Room(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        ResolvedSurface? surface = Find(one => !one.Space.IsOutside && one.Space.Id == id);
        return surface is null ? throw NoSuch("room", id, nameof(id)) : View(surface.Space);
    }

    /// <summary>A storey as it is drawn: its rooms where they lie.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such storey.</exception>
    public StoreyView Storey(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        bool isKnown = false;
        foreach (Storey storey in Dwelling.Storeys)
        {
            isKnown |= storey.Id == id;
        }

        List<PlacedRoomView> placed = [];
        List<string> notPlaced = [];
        foreach (ResolvedSurface surface in isKnown ? state.Surfaces : throw NoSuch("storey", id, nameof(id)))
        {
            if (surface is { Kind: BoxSurface.Ceiling, Space: { Room: { } room, Plan: { } plan } space } && room.Storey == id)
            {
                if (room.Place is { } place && WallPlan.IsInAHouse(place.Corner) && !plan.IsTooLarge)
                {
                    placed.Add(new(View(space), place));
                }
                else
                {
                    notPlaced.Add(room.Id);
                }
            }
        }

        return new(id, new(placed), new(notPlaced));
    }

    /// <summary>A face of the building as it was resolved.</summary>
    /// <param name="id">Its id.</param>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such face.</exception>
    public FaceView Face(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        foreach (OutsideFace face in Dwelling.Outside)
        {
            if (face.Id == id)
            {
                return new(face, face.Walls.Select(wall => Wall(SurfaceAddress.Of(id, wall.Id))));
            }
        }

        throw NoSuch("outside face", id, nameof(id));
    }

    private WallView View(ResolvedSurface surface) => new(surface, new(surface), BoxViews.On(state, surface), PlacesOn);

    private RoomView View(ResolvedSpace space)
    {
        RoomParts parts = new(space.Room!, space.Plan!, space.Usual);
        List<BoxView> onWalls = [];
        List<BoxView> overhead = [];
        List<BoxView> inFloor = [];
        foreach (ResolvedSurface surface in state.Surfaces)
        {
            if (ReferenceEquals(surface.Space, space))
            {
                (surface.Kind == BoxSurface.Wall ? onWalls : surface.Kind == BoxSurface.Ceiling ? overhead : inFloor).AddRange(BoxViews.On(state, surface));
            }
        }

        return new(space, () => Placed(About(space.Id), null))
        {
            Walls = parts.Walls(),
            Openings = parts.Openings(),
            Shapes = parts.Shapes(),
            Coverage = CoverageIn(space),
            WallBoxes = new(onWalls),
            Overhead = new(overhead),
            InFloor = new(inFloor),
        };
    }

    private Items<CoverageView> CoverageIn(ResolvedSpace space)
    {
        List<CoverageView> found = [];
        lock (state.Gate)
        {
            foreach (SpaceIndex.JudgedSpace one in state.Spaces.OfSpace(space.Id))
            {
                if (one.Rule is var rule && rule.ServedIn(one.View) is var (served, open) && served.Count + open.Count > 0)
                {
                    found.Add(new(rule.Id, new(served), new(open)));
                }
            }
        }

        return new(found);
    }

    private Items<FindingPlace> PlacesOn(WallView wall)
    {
        List<Finding> here = [.. About(wall.Address)];
        foreach (Finding finding in Findings)
        {
            // What a run lacks is about every wall that it goes along, and has the address of the first.
            if (StretchesOn(wall, finding).Count > 0 && !here.Contains(finding))
            {
                here.Add(finding);
            }
        }

        return Placed(new(here), wall);
    }

    private static Items<WallStretch> StretchesOn(WallView wall, Finding finding) => finding.Stretches.Where(stretch => stretch.Address == wall.Address);

    /// <summary>Findings with their numbers in the report, in its order.</summary>
    private Items<FindingPlace> Placed(Items<Finding> findings, WallView? wall)
    {
        List<FindingPlace> places = [];
        foreach (Finding finding in findings)
        {
            BoxView? box = finding.Box >= 0 ? wall?.Box(finding.Subject) : null;
            WallPart? part = box is null && wall is not null ? PartOf(wall, finding.Fault?.Subject) : null;
            places.Add(new(finding, NumberOf(finding)) { Box = box, Part = part, Areas = wall is null ? default : AreasOf(wall, finding, box, part) });
        }

        // Findings of one cause stay in the dwelling's order.
        List<FindingPlace> sorted = [];
        places.ForEach(place => sorted.Insert(sorted.FindLastIndex(one => one.Number <= place.Number) + 1, place));
        return new(sorted);
    }

    private static WallPart? PartOf(WallView wall, string? address)
    {
        foreach (WallPart part in wall.Parts)
        {
            if (part.Id is not null && part.Address == address)
            {
                return part;
            }
        }

        return null;
    }

    private static Items<WallArea> AreasOf(WallView wall, Finding finding, BoxView? box, WallPart? part) =>
        box is not null && (box.Plate ?? box.Body) is { } seen ? new[] { seen }
        : box?.Along is { } along ? new[] { new WallArea(along, along, box.Center, box.Center) }
        : part is not null ? new[] { part.Area }
        : StretchesOn(wall, finding).Select(stretch => new WallArea(stretch.Left, stretch.Right, wall.Subfloor, wall.Subfloor));

    /// <summary>The place of a finding's cause among <see cref="Causes"/>, counted from 1; 0 where there is no finding about the same.</summary>
    internal int NumberOf(Finding finding)
    {
        Items<Cause> all = Causes;
        lock (grouping)
        {
            if (numbers is null)
            {
                numbers = [];
                for (int i = 0; i < all.Count; i++)
                {
                    numbers[all[i]] = i + 1;
                }
            }
        }

        return CauseOf(finding) is { } cause ? numbers[cause] : 0;
    }

    private ResolvedSurface? Find(Predicate<ResolvedSurface> which)
    {
        foreach (ResolvedSurface surface in state.Surfaces)
        {
            if (which(surface))
            {
                return surface;
            }
        }

        return null;
    }

    private ArgumentException NoSuch(string what, string name, string argument) => DwellingAddresses.Has(Dwelling, name)
        ? new("Nothing of the " + what + " \"" + name + "\" is resolved: the dwelling holds more than is looked at.", argument)
        : DwellingAddresses.NoSuch(Dwelling, what, name, argument);
}
