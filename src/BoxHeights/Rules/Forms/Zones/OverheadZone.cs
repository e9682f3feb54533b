using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box in a ceiling is outside a zone round something in its room. The reach is taken straight in plan; right at it is outside.</summary>
public sealed record OverheadZone : SpaceRule
{
    /// <summary>Describes a zone.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    /// <param name="around">What the zone is tied to.</param>
    /// <param name="reach">How far it reaches from there to the box's center, straight in plan; zero to 100 ft.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reach"/> is negative or more than 100 ft.</exception>
    public OverheadZone(string id, string summary, Severity severity, Citation citation, RoomAnchor around, Distance reach)
        : base(id, summary, severity, citation)
    {
        Around = around ?? throw new ArgumentNullException(nameof(around));
        Reach = RoomAnchor.CheckReach(reach, nameof(reach));
    }

    /// <summary>What the zone is tied to.</summary>
    public RoomAnchor Around { get; init; }

    /// <summary>How far it reaches, straight in plan.</summary>
    public Distance Reach { get; init; }

    /// <summary>The height that it ends at, above a datum or the fixture's own rim: a ceiling above it isn't judged. Null where it reaches up without end.</summary>
    public Level? Top { get; init; }

    /// <summary>Whether it ends at a fixture's screen.</summary>
    public bool EndsAtBarriers { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Around.KindsNamed;

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        return Zone.MistakesOf(Around, null, Top);
    }

    /// <inheritdoc/>
    public override string Numbers => "outside " + Zone.Words(Around, Reach) + (Top is { } high ? ", under a ceiling up to " + high : "")
        + (EndsAtBarriers ? ", ended by fixed barriers" : "");

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

            if (Around == RoomAnchor.WholeRoom)
            {
                statement.Finds(box.Id, box.Address, Verdict.Fails, Distance.Zero, DistanceSet.Empty, () => $"in this room");
                continue;
            }

            WallPlan plan = RoomInPlan.Of(space).Plan;
            List<ThingInPlan> things = RoomInPlan.Of(space).Things(Around);
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

    private static bool IsToldOf(List<ThingInPlan> things, WallPlan plan) =>
        things.TrueForAll(thing => thing.HasPlace || (thing.Fixture is { } lost && UnplacedThings.IsToldToLack(lost, plan)));

    private void Judge(SpaceView space, SpaceStatement statement, WallPlan plan, List<ThingInPlan> things, SpaceBox box, PlanPoint point)
    {
        ThingInPlan? nearest = null;
        Verdict worst = Verdict.Passes;
        Facts needs = Facts.None;
        Distance measured = Distance.Zero;
        foreach (ThingInPlan thing in things)
        {
            (Verdict verdict, Facts facts) = Of(space, plan, thing, point);
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

    private void Finds(SpaceStatement statement, LengthUnits units, SpaceBox box, ThingInPlan nearest, Verdict verdict, Distance measured, Facts needs) =>
        statement.Finds(
            box.Id, box.Address, verdict, measured, Reach == Distance.Zero ? DistanceSet.Empty : DistanceSet.AtLeast(Reach),
            () => Reach == Distance.Zero ? $"over {nearest.Name:thing}" : (Wording)$"in plan {Printed.Of(measured, units):measured} from {nearest.Name:thing}", needs);

    private (Verdict Verdict, Facts Needs) Of(SpaceView space, WallPlan plan, ThingInPlan thing, PlanPoint point)
    {
        Distance reach = EndsAtBarriers && Zone.IsClosedOff(thing) ? Distance.Zero : Reach;
        Verdict certain = Outside(plan, thing.Sure, point, reach);
        Verdict verdict = certain == Verdict.Fails ? certain : Outside(plan, thing.Possible, point, reach) == Verdict.Passes ? Verdict.Passes : Verdict.Unknown;
        Facts needs = verdict == Verdict.Unknown ? Facts.PlanPlace : Facts.None;
        if (verdict == Verdict.Passes)
        {
            return (verdict, needs);
        }

        if (Top is { } top)
        {
            if (Zone.Anchored(top, thing) is not var (offset, datum, unstated))
            {
                (verdict, needs) = (Verdict.Unknown, needs | Facts.ObstructionHeight);
            }
            else if (!space.Levels.TryOffset(datum, Datum.FinishedCeiling, out DistanceRange ceiling))
            {
                (verdict, needs) = (Verdict.Unknown, needs | Facts.Ceiling);
            }
            else if (ceiling.From > offset.To)
            {
                return (Verdict.Passes, Facts.None);
            }
            else if (ceiling.To > offset.From)
            {
                (verdict, needs) = (Verdict.Unknown, needs | unstated | (ceiling.IsExact ? Facts.None : Facts.Ceiling));
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
