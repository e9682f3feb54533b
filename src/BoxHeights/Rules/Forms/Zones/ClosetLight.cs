using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A luminaire in the ceiling of a clothes closet is so far from its storage space as the luminaire's build asks for. Distances are straight in plan, to the center of the box.</summary>
/// <remarks>
/// Over rods and clothes the storage space stands out from the side and back walls as far as a usual shelf, or a deeper one that is described as a covering, does.
/// Where the build isn't stated a place that is right for every enclosed one passes, and any other isn't judged.
/// </remarks>
[Row]
public sealed partial record ClosetLight : SpaceRule
{
    private static readonly Wording NoEnclosure = $"{FactText.Of(MissingFacts.Enclosure):facts} isn't stated";
    private static readonly Wording DoesNotClose = $"its walls don't close";

    /// <summary>How far the storage space stands out from the side and back walls where no shelf is deeper.</summary>
    public Distance Storage { get; init; }

    /// <summary>From the storage space to an enclosed luminaire on the surface.</summary>
    public Distance ToEnclosed { get; init; }

    /// <summary>From the storage space to a fluorescent or a recessed luminaire.</summary>
    public Distance ToOthers { get; init; }

    /// <summary>Devices that are recessed luminaires by their kind.</summary>
    public Items<DeviceKind> Recessed { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Recessed.Select(kind => kind.Name);

    /// <inheritdoc/>
    public override string Numbers => "enclosed " + ToEnclosed + ", fluorescent or recessed " + ToOthers + " in plan from storage " + Storage
        + " out from walls without a door, or as far as a deeper shelf; listed for it anywhere, open nowhere";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        foreach (SpaceBox box in space.Boxes)
        {
            LuminaireBuild? build = BuildOf(box.Traits);
            if (box.Traits.Surface != BoxSurface.Ceiling || !Scope.Covers(box.Traits, box.Room))
            {
                continue;
            }

            if (build == LuminaireBuild.ForStorage)
            {
                statement.Meets(box.Id, box.Address);
                continue;
            }

            if (build == LuminaireBuild.Open)
            {
                FindsOpen(statement, box.Id, box.Address);
                continue;
            }

            WallPlan plan = RoomInPlan.Of(space).Plan;
            if (box.Plan is null && plan.Closes)
            {
                // The fault is a finding itself.
                statement.LeavesOpen(UnplacedThings.NoPlace, box.Id);
            }
            else if (plan.IsTooLarge || box.Plan is not { } point || !WallPlan.IsInAHouse(point))
            {
                statement.NotJudged(UnplacedThings.NoPlace, box.Id);
            }
            else if (!plan.Closes)
            {
                statement.LeavesOpen(DoesNotClose, box.Id);
            }
            else
            {
                Judge(space, plan, box, point, build, statement);
            }
        }
    }

    // On its own, because what a lambda captures is allocated where its scope begins.
    private static void FindsOpen(SpaceStatement statement, string box, string address) =>
        statement.Finds(box, address, Verdict.Fails, Distance.Zero, DistanceSet.Empty, () => $"with an open luminaire", () => $"take an enclosed or a recessed luminaire for {box:box}");

    private LuminaireBuild? BuildOf(BoxTraits box)
    {
        foreach (DeviceKind device in box.Devices)
        {
            if (Recessed.Contains(device))
            {
                // What is recessed has to be enclosed besides: said of it, that takes nothing back.
                return box.Source.Luminaire is LuminaireBuild.Open or LuminaireBuild.ForStorage ? box.Source.Luminaire : LuminaireBuild.Recessed;
            }
        }

        return box.Source.Luminaire;
    }

    private void Judge(SpaceView space, WallPlan plan, SpaceBox box, PlanPoint point, LuminaireBuild? build, SpaceStatement statement)
    {
        Distance needed = build is null or LuminaireBuild.Enclosed ? ToEnclosed : ToOthers;
        (Distance gap, string name)? nearest = null;
        bool? isClear = true;
        foreach ((string name, PlanPatch patch) in StorageOf(plan))
        {
            PlanGap gap = plan.Gap(point, patch);
            bool? clear = gap.IsClearOf(needed);
            if (clear != true && (nearest is not { } near || gap.RoundedDown < near.gap))
            {
                nearest = (gap.RoundedDown, name);
            }

            isClear = isClear == false || clear == false ? false : clear is null ? null : isClear;
        }

        if (nearest is not var (measured, at))
        {
            statement.Meets(box.Id, box.Address);
            return;
        }

        if (build is null)
        {
            statement.LeavesOpen(NoEnclosure, box.Id);
            return;
        }

        statement.Finds(
            box.Id, box.Address, isClear is null ? Verdict.Unknown : Verdict.Fails, measured, DistanceSet.AtLeast(needed),
            () => $"in plan {Printed.Of(measured, space.Units):measured} from the storage space at {at}",
            () => $"move {box.Id:box} to where it is {Printed.Of(needed, space.Units):needed} or more in plan from the storage space", isClear is null ? MissingFacts.PlanPlace : MissingFacts.None);
    }

    /// <summary>The storage space under the ceiling: along the sides and the back, and over every shelf that is deeper.</summary>
    private IEnumerable<(string Name, PlanPatch Patch)> StorageOf(WallPlan plan)
    {
        for (int face = 0; face < plan.Count; face++)
        {
            Wall wall = plan.WallOf(face);
            if (!wall.Open && !ThingInPlan.HasDoorway(wall))
            {
                yield return (wall.Id, PlanPatch.Against(face, Distance.Zero, wall.Length, Distance.Zero, Storage));
            }

            foreach (Covering shelf in wall.Coverings)
            {
                if (shelf.Kind == CoveringKind.Shelf && shelf.Depth is { } depth && depth > Storage)
                {
                    yield return (shelf.Id, PlanPatch.Against(face, shelf.Left, shelf.Right, Distance.Zero, depth));
                }
            }
        }
    }
}
