using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>How far a box is from a thing, and whether that is near enough.</content>
public sealed partial record FixtureSubject
{
    /// <summary>Whether any other room of its level, or outdoors any other face of its storey, lists such an outlet.</summary>
    private bool IsOneElsewhereOnLevel(IBoxKind outlet, SpaceView space)
    {
        foreach (OutsideFace other in space.Face is null ? default : space.Dwelling.Outside)
        {
            if (other.Id != space.Id && DwellingAddresses.StoreyOf(space.Dwelling, other) == DwellingAddresses.StoreyOf(space.Dwelling, space.Face!) && outlet.IsListedIn(other))
            {
                return space.Whole.Some(outlet);
            }
        }

        foreach (Room other in space.Room is not { } room || OwnLevels.Contains(room.Kind) ? default : space.Dwelling.Rooms)
        {
            if (other.Id != space.Id && other.Storey == space.Room!.Storey && !OwnLevels.Contains(other.Kind) && outlet.IsListedIn(other))
            {
                return space.Whole.Some(outlet);
            }
        }

        return space.Whole.None(outlet, space.Id);
    }

    private Verdict Within(SpaceView space, WallPlan plan, SpaceBox box, ThingInPlan thing, ref MissingFacts needs, out Distance? gap)
    {
        gap = null;
        PlanPatch sure = FromMiddle ? thing.Sure.Middle : thing.Sure;
        PlanPatch possible = FromMiddle ? thing.Possible.Middle : thing.Possible;
        if (box.Plan is { } point && WallPlan.IsInAHouse(point))
        {
            gap = plan.Gap(point, possible).RoundedDown;
            return Of(plan.Gap(point, sure), plan.Gap(point, possible), ref needs);
        }

        int face = SurfaceAddress.Read(box.Address) is { Surface: { } wall } address && address.Space == space.Id ? plan.IndexOf(wall) : -1;
        if (face < 0 || box.Along is not { } at)
        {
            needs |= MissingFacts.Along;
            return Verdict.Unknown;
        }

        gap = plan.Gap(face, at, possible).RoundedDown;
        Verdict within = Of(plan.Gap(face, at, sure), plan.Gap(face, at, possible), ref needs);
        if (!ByCord || within != Verdict.Passes)
        {
            return within;
        }

        // Round what of the walls stands between; where that can't be worked out it does if nothing may stand there.
        bool? reaches = plan.ReachesByCord(face, at, sure, possible, Reach, out Distance? cord) ?? (plan.IsBefore(face, possible) && plan.IsClearBetween(face, at.Ticks, at.Ticks, possible) ? true : null);
        gap = reaches == false ? cord : gap;
        needs |= reaches is null ? MissingFacts.Barrier : MissingFacts.None;
        return reaches switch { true => Verdict.Passes, false => Verdict.Fails, _ => Verdict.Unknown };
    }

    private Verdict Of(PlanGap sure, PlanGap possible, ref MissingFacts needs)
    {
        if (sure.IsWithin(Reach) == true)
        {
            return Verdict.Passes;
        }

        if (possible.IsWithin(Reach) == false)
        {
            return Verdict.Fails;
        }

        needs |= MissingFacts.PlanPlace;
        return Verdict.Unknown;
    }

    private Verdict HighEnough(SpaceBox box, ThingInPlan thing, ref MissingFacts needs)
    {
        if (MostBelowTop is not { } most || thing.Top is not { } top || box.Traits.Surface == BoxSurface.Floor)
        {
            return Verdict.Passes;
        }

        return box.IsWithin(TargetLine.Center, top.Datum, top.Offset - most, Distance.MaxValue, ref needs);
    }

    /// <summary>Whether another thing of the wall lies between an outlet and what it would serve.</summary>
    private static bool IsAcross(SpaceView space, SpaceBox box, List<ThingInPlan> things, ThingInPlan thing)
    {
        int face = thing.Possible.Frame;
        if (box.Along is not { } at || face < 0 || box.Address != SurfaceAddress.Of(space.Id, RoomInPlan.Of(space).Room.Walls[face].Id))
        {
            return false;
        }

        return things.Exists(other => other != thing && other.HasPlace && other.Possible.Frame == face
            && (at.Ticks <= other.Possible.Left ? other.Possible.Right <= thing.Possible.Left : at.Ticks >= other.Possible.Right && other.Possible.Left >= thing.Possible.Right));
    }
}
