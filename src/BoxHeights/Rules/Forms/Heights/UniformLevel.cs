using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>Boxes of one purpose in one storey share a level line: their centers are at one height above the storey's subfloor. Rooms whose own subfloor is more than 1 in off have another line.</summary>
/// <remarks>The level is the one that most of them share. A box that the placement rules keep from that level is left out: something forces it up or down. So is one that is level with a box that was there before in its room, and it doesn't make the others' level.</remarks>
[Row(nameof(Within))]
public sealed partial record UniformLevel : ProvisionRule
{
    private static readonly Wording NoHeight = $"how high its center is above the subfloor isn't known";

    /// <summary>How far off the level a box may be, up or down, itself allowed.</summary>
    public Distance Within { get; init; }

    /// <summary>Whether only the boxes of one room or outside face share a level.</summary>
    public bool InOneRoom { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Within < Distance.Zero)
        {
            yield return "its limit, " + Within + ", is negative";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => "centers within " + Within + " of the level that most boxes of the purpose share in the " + (InOneRoom ? "room" : "storey") + ", or of the level of one that was there before in the room";

    /// <inheritdoc/>
    internal override bool LooksAtOld => true;

    /// <inheritdoc/>
    public override string? GroupOf(BoxTraits box, GroupPlace place) =>
        box.Surface == BoxSurface.Wall && Scope.Purposes.Contains(box.Purpose) ? (InOneRoom ? place.Room : place.Storey) + ": " + box.Purpose : null;

    /// <inheritdoc/>
    public override void Judge(ProvisionGroup group, ProvisionStatement statement)
    {
        if (!group.TryCommonCenter(Within, out Distance level))
        {
            if (group.Count == 1)
            {
                // There is none that it could be level with.
                statement.NotAboutThis();
                return;
            }

            for (int i = 0; i < group.Count; i++)
            {
                statement.NotJudged(i, NoHeight);
            }

            return;
        }

        DistanceSet allowed = DistanceSet.Between(level - Within, level + Within);
        statement.KeepWithin(allowed);
        for (int i = 0; i < group.Count; i++)
        {
            if (!group.TryCenter(i, out DistanceRange center))
            {
                statement.NotJudged(i, NoHeight);
                continue;
            }

            if (allowed.ContainsRange(center) || group.IsLevelWithOld(i, Within))
            {
                continue;
            }

            // What firm rules keep from the level itself is excused; a habit excuses only what it keeps from all that is level enough.
            Verdict free = group.CanBeWithin(i, DistanceSet.Single(level), habitsToo: false, out MissingFacts needs);
            if (free != Verdict.Fails && !IsOneOfTwoThatCannotMeet(group, i, center) && group.CanBeWithin(i, allowed, habitsToo: true, out _) != Verdict.Fails)
            {
                bool unknown = free == Verdict.Unknown || allowed.Overlaps(center);
                statement.Finds(i, unknown ? Verdict.Unknown : Verdict.Fails, center.From, allowed, unknown ? needs | group.NeedsOf(i) : MissingFacts.None);
            }
        }
    }

    /// <inheritdoc/>
    internal override AllowedHeights? Around(ProvisionGroup group, int except, AskedBox box)
    {
        List<Distance> others = group.CentersWithout(except, Within);
        if (others.Count == 0 || !box.Site.TryCenterAboveHeight(out DistanceRange own))
        {
            return null;
        }

        DistanceSet centers = CentersBeside(others, own.IsExact, out Distance level);
        DistanceSet band = DistanceSet.Between(level - Within, level + Within);
        Verdict free = box.CanBeWithin(DistanceSet.Single(level), false, out MissingFacts needs);
        if (free == Verdict.Fails || box.CanBeWithin(band, true, out _) == Verdict.Fails)
        {
            return null;
        }

        DistanceSet excused = WhereTheOtherCannotMeet(group, except, own);
        return group.LevelWithOld(box.Site, except, Within) | new AllowedHeights(
            centers.ErodeShift(-own) | excused,
            free == Verdict.Unknown ? DistanceSet.All : centers.DilateShift(-own) | excused,
            needs | (own.IsExact ? MissingFacts.None : MissingFacts.FloorFinish));
    }

    /// <summary>The centers at which a box is on the level that it then shares: it counts itself, where its center is known exactly.</summary>
    /// <param name="others">The centers of the others, from the lowest up; one at least.</param>
    /// <param name="counts">Whether its own center is known exactly.</param>
    /// <param name="level">The level wherever it isn't on it.</param>
    private DistanceSet CentersBeside(List<Distance> others, bool counts, out Distance level)
    {
        int most = 0;
        level = default;
        List<(Distance Center, int Count)> shared = [];
        for (int i = 0; i < others.Count;)
        {
            int count = others.LastIndexOf(others[i]) - i + 1;
            level = count > most ? others[i] : level;
            most = Math.Max(most, count);
            shared.Add((others[i], count));
            i += count;
        }

        DistanceSet centers = DistanceSet.Between(level - Within, level + Within);
        if (counts)
        {
            // With it as many may share its height as share the level, or more; the lowest of several such heights is the level.
            centers = most == 1 ? centers | DistanceSet.AtMost(level) : centers;
            foreach ((Distance center, int count) in shared)
            {
                centers = count + 1 > most || (count + 1 == most && center < level) ? centers | DistanceSet.Single(center) : centers;
            }
        }

        return centers;
    }

    private DistanceSet WhereTheOtherCannotMeet(ProvisionGroup group, int except, in DistanceRange own)
    {
        int other = group.Count > 0 && group.Member(0) == except ? 1 : 0;
        bool areTwo = InOneRoom && group.Count == (group.Has(except) ? 2 : 1);
        return areTwo ? group.PossibleCentersOf(other).DilateShift(new(-Within, Within)).DilateShift(-own).Complement() : DistanceSet.Empty;
    }

    /// <summary>Of two boxes in a room either may be the one that is off: neither is, where the other can't be set like it.</summary>
    private bool IsOneOfTwoThatCannotMeet(ProvisionGroup group, int index, DistanceRange center) =>
        InOneRoom && group.Count == 2 && group.CanBeWithin(1 - index, DistanceSet.Between(center.From - Within, center.To + Within), habitsToo: false, out _) == Verdict.Fails;
}
