using System;

namespace BoxHeights.Rules;

/// <summary>What of an outside face needs an outlet.</summary>
public enum FacePart
{
    /// <summary>The face itself.</summary>
    Face = 0,

    /// <summary>Each deck, porch and balcony before it.</summary>
    Platforms = 1,

    /// <summary>Each entrance in it: a door, but not one for vehicles.</summary>
    Entrances = 2,
}

/// <summary>An outside face has an outlet of a kind, for itself, for each platform before it, or for its entrances.</summary>
/// <remarks>A face of which no box is described isn't judged, nor are faces of a dwelling that lists no such outlet outside.</remarks>
public sealed record FaceOutlet : SpaceRule
{
    /// <summary>How far beyond a platform's end an outlet on its wall is still reached from it: 2 ft, an arm's length. Common practice, no source.</summary>
    private static readonly Distance ArmsLength = Distance.FromFeetInches(2, 0);

    /// <summary>Describes what is required.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is required, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is required.</param>
    /// <param name="outlet">What counts.</param>
    /// <param name="of">What needs one.</param>
    public FaceOutlet(string id, string summary, Severity severity, Citation citation, CountedOutlet outlet, FacePart of)
        : base(id, summary, severity, citation)
    {
        Outlet = outlet ?? throw new ArgumentNullException(nameof(outlet));
        Of = of;
    }

    /// <summary>What counts. For platforms its highest is taken above the platform's own surface.</summary>
    public CountedOutlet Outlet { get; init; }

    /// <summary>What needs one.</summary>
    public FacePart Of { get; init; }

    /// <summary>The ids of the faces that the row speaks of; every face where none is named.</summary>
    public Items<string> Faces { get; init; }

    /// <summary>The widest gap to the wall with which a platform counts, itself included; null where any does.</summary>
    public Distance? MostGap { get; init; }

    /// <summary>Whether only platforms that a door leads to count.</summary>
    public bool NeedsDoor { get; init; }

    /// <summary>Doors of these kinds are no entrances.</summary>
    public Items<OpeningKind> ExceptOpenings { get; init; }

    /// <summary>Dwellings that the row speaks of, where theirs is stated; every dwelling where none is named.</summary>
    public Items<Occupancy> Occupancies { get; init; }

    /// <summary>A box that would do, without its place; null where none is offered.</summary>
    public DeviceBox? Cure { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.OutsideFace;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => KindNames.Joined(Outlet.KindsNamed, ExceptOpenings.Select(kind => kind.Name));

    /// <inheritdoc/>
    public override string Numbers => "at least 1 " + Outlet.Numbers + " for "
        + (Of switch { FacePart.Platforms => "each platform", FacePart.Entrances => "the entrances of a face", _ => "a face" })
        + (Faces.Count == 0 ? "" : " named " + Faces) + (MostGap is { } gap ? ", no further than " + gap + " from the wall" : "") + (NeedsDoor ? ", that a door leads to" : "")
        + (ExceptOpenings.Count == 0 ? "" : ", not " + ExceptOpenings) + (Occupancies.Count == 0 ? "" : "; in " + Occupancies);

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Face is not { } face || (Faces.Count > 0 && !Faces.Contains(face.Id))
            || (Occupancies.Count > 0 && space.Dwelling.Occupancy is { } of && !Occupancies.Contains(of))
            || (Of == FacePart.Platforms && face.Platforms.Count == 0) || (Of == FacePart.Entrances && EntranceOf(face) is null))
        {
            return;
        }

        if (!RoomOutlet.IsDescribed(space, Outlet, statement))
        {
            return;
        }

        if (Of != FacePart.Platforms)
        {
            int sure = RoomOutlet.Count(space, Outlet, out int possible, out Facts needs);
            if (sure == 0)
            {
                // A light goes beside its entrance; what serves the face as a whole goes anywhere on it.
                Opening? entrance = Of == FacePart.Entrances ? EntranceOf(face) : null;
                Lacks(statement, face.Id, face.Id, possible > 0, needs, space, entrance?.Right ?? Distance.Zero, Distance.MaxValue, null);
            }
            else
            {
                statement.Meets(face.Id, face.Id);
            }

            return;
        }

        foreach (Platform platform in face.Platforms)
        {
            Judge(space, face, platform, statement);
        }
    }

    private Opening? EntranceOf(OutsideFace face)
    {
        foreach (Wall wall in face.Walls)
        {
            foreach (Opening opening in wall.Openings)
            {
                if (ThingInPlan.IsDoorway(opening) && !ExceptOpenings.Contains(opening.Kind))
                {
                    return opening;
                }
            }
        }

        return null;
    }

    private void Judge(SpaceView space, OutsideFace face, Platform platform, SpaceStatement statement)
    {
        if ((MostGap is { } most && platform.Gap > most) || face.Walls.Count == 0 || (NeedsDoor && !HasDoor(face.Walls[0], platform)))
        {
            return;
        }

        string address = SurfaceAddress.Of(face.Id, face.Walls[0].Id);
        bool possible = false;
        Facts needs = Facts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            Facts missing = Facts.None;
            Verdict counts = box.Address == address ? Outlet.Of(box, null, out missing) : Verdict.Fails;
            counts = counts == Verdict.Fails ? counts : counts.And(LowEnough(box, platform, ref missing));
            if (counts == Verdict.Fails || (box.Along is { } at && (at < platform.Left - ArmsLength || at > platform.Right + ArmsLength)))
            {
                continue;
            }

            if (counts == Verdict.Passes && box.Along is not null)
            {
                if (statement.TellsAll)
                {
                    statement.Meets(face.Id + " " + platform.Id, address);
                }

                return;
            }

            possible = true;
            needs |= missing | (box.Along is null ? Facts.Along : Facts.None);
        }

        if (MostGap is not null && platform.Gap is null)
        {
            // Whether it is near enough to need one isn't said.
            possible = true;
            needs |= Facts.PlanPlace;
        }

        Lacks(statement, face.Id + " " + platform.Id, address, possible, needs, space, platform.Left, platform.Right, platform.Surface);
    }

    /// <summary>Whether a box is above a platform, and low enough. Where its surface isn't stated, that is known of a box that is low enough above the ground under it.</summary>
    private Verdict LowEnough(SpaceBox box, Platform platform, ref Facts needs)
    {
        if (Outlet.Highest is not { } highest)
        {
            return Verdict.Passes;
        }

        if (platform.Surface is { } surface)
        {
            return box.IsWithin(TargetLine.Center, surface.Datum, surface.Offset, surface.Offset + highest.Offset, ref needs);
        }

        Facts unknown = Facts.None;
        if (box.IsWithin(TargetLine.Center, highest.Datum, Distance.MinValue, highest.Offset, ref unknown) == Verdict.Passes)
        {
            return Verdict.Passes;
        }

        needs |= Facts.Datum;
        return Verdict.Unknown;
    }

    private void Lacks(SpaceStatement statement, string subject, string address, bool possible, Facts needs, SpaceView space, Distance left, Distance right, Level? surface) =>
        statement.Finds(
            subject, address, possible ? Verdict.Unknown : Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => "no " + Outlet.Name, possible ? needs : Facts.None,
            () => CureOn(space, left, right, surface));

    private static bool HasDoor(Wall wall, Platform platform)
    {
        foreach (Opening opening in wall.Openings)
        {
            if (ThingInPlan.IsDoorway(opening) && opening.Left < platform.Right && platform.Left < opening.Right)
            {
                return true;
            }
        }

        return false;
    }

    private Items<PlacedBox> CureOn(SpaceView space, Distance left, Distance right, Level? surface)
    {
        if (Cure is not { Height: { Edge: { } edge } height } cure || space.Face is not { Walls.Count: > 0 } face)
        {
            return default;
        }

        Wall wall = face.Walls[0];
        Distance step = space.TryStep * 4;
        string address = SurfaceAddress.Of(face.Id, wall.Id);
        DeviceBox box = surface is { } walked ? cure.WithHeight(BoxHeight.To(edge, walked.Offset + height.Value, walked.Datum)) : cure;
        DistanceSet free = FreePlaces.On(space, wall, box);
        for (Distance at = Distance.Max(left, Distance.Zero) + space.RoomForBoxes.FromEnds; at < wall.Length - space.RoomForBoxes.FromEnds && at <= right && at.Ticks < 1L << 33; at += step)
        {
            if (at.RoundNearest(space.AlongStep) is var marked && free.Contains(marked))
            {
                return new[] { new PlacedBox(address, box.WithId(FreePlaces.FreeId(space, space.Id + "-" + cure.Id)).WithAt(marked)) };
            }
        }

        return default;
    }
}
