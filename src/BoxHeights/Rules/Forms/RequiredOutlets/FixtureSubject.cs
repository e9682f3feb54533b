using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Each thing of a kind in a room, or before an outside face, needs an outlet within reach, straight in plan from the outlet's center to the thing's nearest edge.</summary>
public sealed partial record FixtureSubject : OutletSubject
{
    private static readonly Wording ElsewhereUnmeasured = $"how far what is in other rooms of its level is from it isn't described";
    private static readonly Wording NothingToServe = $"nothing that needs one is described";

    /// <summary>Names the things.</summary>
    /// <param name="around">The things.</param>
    /// <param name="reach">How far an outlet may be off, itself allowed; zero to 100 ft.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reach"/> is negative or more than 100 ft.</exception>
    public FixtureSubject(RoomAnchor around, Distance reach)
    {
        Around = around ?? throw new ArgumentNullException(nameof(around));
        Reach = RoomAnchor.CheckReach(reach, nameof(reach));
    }

    /// <summary>The things.</summary>
    public RoomAnchor Around { get; init; }

    /// <summary>How far an outlet may be off.</summary>
    public Distance Reach { get; init; }

    /// <summary>Purposes of the boxes that serve the things; a room without such a box isn't asked. Empty: every box that counts serves them.</summary>
    public Items<BoxPurpose> Serving { get; init; }

    /// <summary>Boxes for these purposes serve the things as well, but ask for nothing.</summary>
    public Items<BoxPurpose> ServingToo { get; init; }

    /// <summary>In rooms of these kinds it asks for an outlet near the things even where no box serves them; then any that counts will do, whatever its purpose.</summary>
    public Items<RoomKind> AlwaysIn { get; init; }

    /// <summary>Whether one of a room's things that is served does for all of them.</summary>
    public bool AnyOne { get; init; }

    /// <summary>Whether the way is a cord's, which goes through no wall.</summary>
    public bool ByCord { get; init; }

    /// <summary>Whether it is taken from the middle of the thing instead of its nearest edge.</summary>
    public bool FromMiddle { get; init; }

    /// <summary>How far below the top that a thing is set into an outlet may be, itself allowed; null where that doesn't matter.</summary>
    public Distance? MostBelowTop { get; init; }

    /// <summary>Whether an outlet on the thing's own wall serves it only where no other such thing lies between.</summary>
    public bool NotAcrossAnother { get; init; }

    /// <summary>Whether it speaks of what stands before outside faces instead of in rooms.</summary>
    public bool Outside { get; init; }

    /// <summary>Whether an outlet elsewhere on the same level may be as near. How rooms lie to each other isn't described, so that it isn't judged then.</summary>
    public bool AnywhereOnItsLevel { get; init; }

    /// <summary>Rooms of these kinds are a level of their own within their storey.</summary>
    public Items<RoomKind> OwnLevels { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Kind => Outside ? SpaceKind.OutsideFace : SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => (AnyOne ? "any " : "each ") + Around + (Outside ? " outside" : "") + ", within " + Reach + " in plan" + (FromMiddle ? " of its middle" : "")
        + (Serving.Count == 0 ? "" : ", for " + Serving) + (ServingToo.Count == 0 ? "" : " or " + ServingToo) + (AlwaysIn.Count == 0 ? "" : ", always in " + AlwaysIn) + (ByCord ? ", by a cord that goes through no wall" : "")
        + (MostBelowTop is { } low ? ", center at most " + low + " below the top" : "") + (NotAcrossAnother ? ", not across another" : "")
        + (AnywhereOnItsLevel ? ", in any room of its level" : "") + (OwnLevels.Count == 0 ? "" : "; levels of their own: " + OwnLevels);

    internal override Items<string> KindsNamed => KindNames.Joined(Around.KindsNamed, Serving.Select(kind => kind.Name), ServingToo.Select(kind => kind.Name), AlwaysIn.Select(kind => kind.Name));

    /// <summary>What a thing needs beside it may serve the room as well; the other way round it may not.</summary>
    internal override bool IsPlannedFirst => true;

    /// <summary>Where a thing stands in plan may never be stated: then a box goes where it surely serves it.</summary>
    internal override MissingFacts PlannedDespite => MissingFacts.PlanPlace;

    internal override bool LooksAt(BoxTraits box) => Serving.Contains(box.Purpose);

    internal override void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement)
    {
        WallPlan plan = RoomInPlan.Of(space).Plan;
        List<ThingInPlan> things = RoomInPlan.Of(space).Things(Around);
        bool any = Serving.Count == 0 || (!ServesAny(space) && space.Room is { } room && AlwaysIn.Contains(room.Kind));
        if (things.Count == 0 || (!any && !ServesAny(space)))
        {
            if (Serving.Count == 0 && row.Scope.Rooms.Count > 0)
            {
                statement.LeavesOpen(NothingToServe);
            }

            return;
        }

        if (!row.IsDescribed(space, statement))
        {
            return;
        }

        foreach (ThingInPlan thing in things)
        {
            if (plan.IsTooLarge || !thing.HasPlace)
            {
                if (thing.Fixture is { } lost && UnplacedThings.IsToldToLack(lost, plan))
                {
                    statement.LeavesOpen(UnplacedThings.NoPlace, thing.In(space.Id));
                }
                else
                {
                    statement.NotJudged(UnplacedThings.NoPlace, thing.In(space.Id));
                }

                continue;
            }

            if (!AnyOne || thing == NearestServed(row, space, plan, things, any))
            {
                Judge(row, space, statement, plan, things, thing, any);
            }
        }
    }

    /// <summary>The thing that is served best, the first of several.</summary>
    private ThingInPlan? NearestServed(RequiredOutlet row, SpaceView space, WallPlan plan, List<ThingInPlan> things, bool any)
    {
        ThingInPlan? found = null;
        Verdict best = Verdict.Fails;
        foreach (ThingInPlan thing in things)
        {
            if (thing.HasPlace && Best(row, space, plan, things, thing, any, out _, out _) is var one && (found is null || one < best))
            {
                (found, best) = (thing, one);
            }
        }

        return found;
    }

    // Without a lambda: it is asked each time a room is judged, and allocates nothing.
    private bool ServesAny(SpaceView space)
    {
        foreach (SpaceBox box in space.Boxes)
        {
            if (Serving.Contains(box.Traits.Purpose))
            {
                return true;
            }
        }

        return false;
    }

    private void Judge(RequiredOutlet row, SpaceView space, SpaceStatement statement, WallPlan plan, List<ThingInPlan> things, ThingInPlan thing, bool any)
    {
        Verdict best = Best(row, space, plan, things, thing, any, out MissingFacts needs, out Distance? nearest);
        if (best == Verdict.Fails && AnywhereOnItsLevel && IsOneElsewhereOnLevel(row.Outlet, space))
        {
            statement.LeavesOpen(ElsewhereUnmeasured, thing.In(space.Id));
        }
        else if (best != Verdict.Passes)
        {
            Finds(row, space, statement, plan, thing, best, nearest, needs);
        }
        else if (statement.TellsAll)
        {
            statement.Meets(thing.In(space.Id), space.Id);
        }
    }

    /// <summary>How well the outlets of a space serve a thing.</summary>
    private Verdict Best(RequiredOutlet row, SpaceView space, WallPlan plan, List<ThingInPlan> things, ThingInPlan thing, bool any, out MissingFacts needs, out Distance? nearest)
    {
        Verdict best = Verdict.Fails;
        needs = MissingFacts.None;
        nearest = null;
        foreach (SpaceBox box in space.Boxes)
        {
            if (!any && !Serving.Contains(box.Traits.Purpose) && !ServingToo.Contains(box.Traits.Purpose))
            {
                continue;
            }

            Verdict one = row.Outlet.Of(box, out MissingFacts missing);
            if (one == Verdict.Fails)
            {
                continue;
            }

            one = one.And(Within(space, plan, box, thing, ref missing, out Distance? gap));
            one = one == Verdict.Fails ? one : one.And(HighEnough(box, thing, ref missing));
            one = one == Verdict.Fails || !NotAcrossAnother || !IsAcross(space, box, things, thing) ? one : Verdict.Fails;
            best = one < best ? one : best;
            needs |= one == Verdict.Unknown ? missing : MissingFacts.None;
            nearest = gap is { } off && (nearest is not { } least || off < least) ? off : nearest;
        }

        return best;
    }

    private void Finds(RequiredOutlet row, SpaceView space, SpaceStatement statement, WallPlan plan, ThingInPlan thing, Verdict verdict, Distance? nearest, MissingFacts needs) =>
        statement.Finds(
            thing.In(space.Id), space.Id, verdict, nearest ?? Distance.Zero, nearest is null ? DistanceSet.Empty : DistanceSet.AtMost(Reach),
            () => nearest is not { } off ? $"no {row.OutletName:outlet} that counts"
                : ByCord ? $"the nearest {row.OutletName:outlet} that may count is {Printed.Of(off, space.Units):off} away as its cord goes"
                : (Wording)$"the nearest {row.OutletName:outlet} that may count is {Printed.Of(off, space.Units):off} away in plan",
            verdict == Verdict.Unknown ? needs : MissingFacts.None, () => AddedFor(row, space, plan, thing),
            thing.Fixture is { } it ? new[] { SurfaceAddress.Of(space.Id, it.Id) } : default(Items<string>));

    internal override bool ServesFrom(RequiredOutlet row, SpaceView space, string lacking, SpaceBox box, Distance offered)
    {
        WallPlan plan = RoomInPlan.Of(space).Plan;
        ThingInPlan? thing = RoomInPlan.Of(space).Things(Around).Find(one => one.In(space.Id) == lacking);
        return thing is { HasPlace: true } && box.Along is { } at && plan.IndexOf(box.WallId) is >= 0 and var face && Serves(plan, face, at, thing, out _);
    }

    private bool Serves(WallPlan plan, int face, Distance at, ThingInPlan thing, out PlanGap gap)
    {
        gap = plan.Gap(face, at, thing.Sure);
        return gap.IsWithin(Reach) == true && plan.IsClearBetween(face, at.Ticks, at.Ticks, thing.Possible);
    }

    private Items<PlacedBox> AddedFor(RequiredOutlet row, SpaceView space, WallPlan plan, ThingInPlan thing)
    {
        if (row.Adds is not { } added)
        {
            return default;
        }

        DeviceBox box = added.WithId(FreePlaces.FreeId(space, space.Id + "-" + added.Id));
        return OutletPlace.OnWall(
            space, box.WithHeight(NeighborHeight.InItsRoom(space, box, row.Outlet)), (face, at) => Serves(plan, face, at, thing, out PlanGap gap) ? gap.RoundedDown.Ticks : null);
    }
}
