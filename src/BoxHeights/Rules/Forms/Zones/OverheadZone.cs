using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What a <see cref="Zone"/> says of boxes in ceilings: their centers are outside it in plan, or the ceiling is above where it ends or below where it begins.</summary>
internal sealed record OverheadZone : SpaceRule
{
    private readonly Zone zone;

    /// <summary>The ceilings of a zone.</summary>
    public OverheadZone(Zone zone)
        : base(zone.Id, zone.Summary, zone.Severity, zone.Citation)
    {
        this.zone = zone;
        NoteUnder = zone.NoteUnder;
        Revision = zone.Revision;
        Scope = zone.Scope;
        LeavesOut = zone.LeavesOut;
        ReadingId = zone.ReadingId;
        Readings = zone.Readings.Select(reading => reading with { Rule = new OverheadZone((Zone)reading.Rule) });
    }

    /// <summary>Its id, what it allows and where that comes from.</summary>
    public override string ToString() => InOneLine;

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => zone.Numbers;

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room)
        {
            return;
        }

        foreach (SpaceBox box in space.Boxes)
        {
            if (box.Traits.Surface != BoxSurface.Ceiling || !Scope.Covers(box.Traits, room.Kind))
            {
                continue;
            }

            if (zone.Around == RoomAnchor.WholeRoom)
            {
                FindsInside(statement, box.Id, box.Address);
                continue;
            }

            WallPlan plan = RoomInPlan.Of(space).Plan;
            List<ThingInPlan> things = RoomInPlan.Of(space).Things(zone.Around);
            if (things.Count == 0)
            {
                return;
            }

            if (plan.IsTooLarge || things.Exists(thing => !thing.HasPlace))
            {
                if (!plan.IsTooLarge && IsToldOf(things, plan))
                {
                    statement.LeavesOpen(UnplacedThings.NoPlace);
                }
                else
                {
                    statement.NotJudged(UnplacedThings.NoPlace);
                }

                return;
            }

            if (box.Plan is not { } point || !WallPlan.IsInAHouse(point))
            {
                if (box.Plan is null && plan.Closes)
                {
                    // The fault is a finding itself.
                    statement.LeavesOpen(UnplacedThings.NoPlace, box.Id);
                }
                else
                {
                    statement.NotJudged(UnplacedThings.NoPlace, box.Id);
                }

                continue;
            }

            Judge(space, statement, plan, things, box, point);
        }
    }

    // On its own, because what a lambda captures is allocated where its scope begins.
    private static void FindsInside(SpaceStatement statement, string box, string address) =>
        statement.Finds(box, address, Verdict.Fails, Distance.Zero, DistanceSet.Empty, () => $"in this room", () => $"move {box:box} to another room");

    private static bool IsToldOf(List<ThingInPlan> things, WallPlan plan) =>
        things.TrueForAll(thing => thing.HasPlace || (thing.Fixture is { } lost && UnplacedThings.IsToldToLack(lost, plan)));

    private void Judge(SpaceView space, SpaceStatement statement, WallPlan plan, List<ThingInPlan> things, SpaceBox box, PlanPoint point)
    {
        ThingInPlan? nearest = null;
        Verdict worst = Verdict.Passes;
        MissingFacts needs = MissingFacts.None;
        Distance measured = Distance.Zero;
        foreach (ThingInPlan thing in things)
        {
            (Verdict verdict, MissingFacts facts) = Of(space, plan, thing, point);
            Distance gap = plan.Gap(point, thing.Sure).RoundedDown;
            if (verdict > worst || (verdict == worst && nearest is not null && gap < measured))
            {
                (nearest, worst, needs, measured) = (thing, verdict, facts, gap);
            }
        }

        if (nearest is not null)
        {
            Finds(statement, space.Units, box, nearest, worst, measured, needs);
        }
        else
        {
            statement.Meets(box.Id, box.Address);
        }
    }

    private void Finds(SpaceStatement statement, LengthUnits units, SpaceBox box, ThingInPlan nearest, Verdict verdict, Distance measured, MissingFacts needs) =>
        statement.Finds(
            box.Id, box.Address, verdict, measured, zone.Reach == Distance.Zero ? DistanceSet.Empty : DistanceSet.AtLeast(zone.Reach),
            () => zone.Reach == Distance.Zero ? $"over {nearest.Name:thing}" : (Wording)$"in plan {Printed.Of(measured, units):measured} from {nearest.Name:thing}",
            () => zone.Reach == Distance.Zero ? $"move {box.Id:box} to where it isn't over {nearest.Name:thing}" : (Wording)$"move {box.Id:box} to where it is {Printed.Of(zone.Reach, units):reach} or more in plan from {nearest.Name:thing}", needs);

    private (Verdict Verdict, MissingFacts Needs) Of(SpaceView space, WallPlan plan, ThingInPlan thing, PlanPoint point)
    {
        Distance reach = zone.EndsAtBarriers && Zone.IsClosedOff(thing) ? Distance.Zero : zone.Reach;
        Verdict certain = Outside(plan, thing.Sure, point, reach);
        Verdict verdict = certain == Verdict.Fails ? certain : Outside(plan, thing.Possible, point, reach) == Verdict.Passes ? Verdict.Passes : Verdict.Unknown;
        MissingFacts needs = verdict == Verdict.Unknown ? MissingFacts.PlanPlace : MissingFacts.None;
        if (verdict == Verdict.Passes)
        {
            return (verdict, needs);
        }

        if (thing.Possible.Frame >= 0 && zone.HoodsOver(thing, plan.WallOf(thing.Possible.Frame), thing.Possible.Frame).Count > 0)
        {
            // The ceiling is above whatever hangs under it.
            return (Verdict.Passes, MissingFacts.None);
        }

        foreach ((Level? end, bool isTop) in new[] { (zone.Top, true), (zone.Bottom, false) })
        {
            if (end is not { } line)
            {
                continue;
            }

            if (Zone.Anchored(line, thing, space.Usual) is not var (offset, datum, unstated))
            {
                (verdict, needs) = (Verdict.Unknown, needs | MissingFacts.ObstructionHeight);
            }
            else if (!space.Levels.TryOffset(datum, Datum.FinishedCeiling, out DistanceRange ceiling))
            {
                (verdict, needs) = (Verdict.Unknown, needs | MissingFacts.Ceiling);
            }
            else if (isTop ? ceiling.From > offset.To : ceiling.To < offset.From)
            {
                return (Verdict.Passes, MissingFacts.None);
            }
            else if (isTop ? ceiling.To > offset.From : ceiling.From < offset.To)
            {
                (verdict, needs) = (Verdict.Unknown, needs | unstated | (ceiling.IsExact ? MissingFacts.None : MissingFacts.Ceiling));
            }
        }

        return (verdict, needs);
    }

    private static Verdict Outside(WallPlan plan, in PlanPatch patch, PlanPoint point, Distance reach)
    {
        bool? outside = reach > Distance.Zero ? plan.Gap(point, patch).IsClearOf(reach) : patch.Inside.IsEmpty ? true : !plan.Gap(point, patch.Inside).IsWithin(Distance.Zero);
        return outside switch { true => Verdict.Passes, false => Verdict.Fails, _ => Verdict.Unknown };
    }
}
