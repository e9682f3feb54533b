using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Rules that let a box off because others nearby meet them, or were there before at its height: the one case in which a placement depends on other boxes.</content>
internal sealed partial class LayoutState
{
    private Dictionary<ResolvedSpace, List<int>>? companions;
    private bool? hasOld;

    /// <summary>Whether others nearby may let some box off.</summary>
    private bool HasRelief => Rules.HasRelief || LooksAtOld;

    /// <inheritdoc/>
    public override bool LooksAtOld => Rules.LooksAtOld && (hasOld ??= Boxes.Exists(box => box.IsExisting));

    /// <summary>The boxes of a box's room, itself among them, where a rule may let one off for its sake; none elsewhere.</summary>
    private List<int> CompanionsOf(int box) => Rules.HasRelief || IsOld(box) ? CompanionsIn(Boxes[box].Surface.Space) : None;

    /// <summary>The groups that a box is in; of one that was there before also those of the boxes that may be let off for its sake.</summary>
    private int[] GroupsAround(int box)
    {
        int[] own = Groups.Of(box);
        if (!IsOld(box))
        {
            return own;
        }

        HashSet<int> all = [.. own];
        foreach (int companion in CompanionsIn(Boxes[box].Surface.Space))
        {
            all.UnionWith(Boxes[companion].Source.Purpose == Boxes[box].Source.Purpose ? Groups.Of(companion) : []);
        }

        int[] inOrder = [.. all];
        Array.Sort(inOrder);
        return inOrder;
    }

    /// <summary>Whether a box was there before, and others may be let off that are level with it.</summary>
    private bool IsOld(int box) => Boxes[box].IsExisting && LooksAtOld;

    /// <inheritdoc/>
    public override AllowedHeights LevelWithOld(PlacementSite site, int index, Distance within)
    {
        AllowedHeights level = AllowedHeights.Nothing;
        foreach (int old in LooksAtOld && site.Box.Surface == BoxSurface.Wall ? CompanionsIn(site.Surface.Space) : None)
        {
            if (old != index && Boxes[old] is { IsExisting: true, IsOnWall: true } there && there.Source.Purpose == site.Box.Purpose && TryAbove(site, old, out DistanceRange above))
            {
                DistanceSet sure = above.Width <= within + within ? DistanceSet.Between(-within - above.From, within - above.To) : DistanceSet.Empty;
                level |= new AllowedHeights(sure, DistanceSet.Between(-within - above.To, within - above.From), above.IsExact ? MissingFacts.None : NeedsOfCenter(old) | MissingFacts.FloorFinish);
            }
        }

        return level;
    }

    /// <summary>Whether a box that misses a rule is let off for being level with one that was there before: a habit where it may be, any other rule where it surely is.</summary>
    private bool IsLevelWithOld(int box, PlacementRule rule) => rule.OrLevelWithOld is { } within && now[box].Sites.Length == 1
        && LevelWithOld(now[box].Sites[0].Site, box, within) is var level
        && (rule.YieldsWhenForced ? level.Possible.Overlaps(PlaceOf(box).Heights) : level.Sure.ContainsRange(PlaceOf(box).Heights));

    private List<int> CompanionsIn(ResolvedSpace space) => HasRelief && Companions().TryGetValue(space, out List<int>? some) ? some : None;

    private Dictionary<ResolvedSpace, List<int>> Companions()
    {
        if (companions is null)
        {
            companions = [];
            for (int i = 0; i < Boxes.Count; i++)
            {
                companions.ListOf(Boxes[i].Surface.Space).Add(i);
            }
        }

        return companions;
    }

    private static List<int> None { get; } = [];

    /// <summary>Whether others nearby let a box off a rule that it misses.</summary>
    /// <param name="box">The box, which may be described nowhere.</param>
    /// <param name="index">Its place among the boxes; −1 where it is none of them.</param>
    /// <param name="along">Where along its wall it is asked about; null where that isn't known.</param>
    /// <param name="rule">The rule.</param>
    public bool IsLetOff(ResolvedBox box, int index, Distance? along, PlacementRule rule)
    {
        if (rule.LetsOffInARoom > 0 && OthersThatMiss(box, index, rule) < rule.LetsOffInARoom)
        {
            return true;
        }

        if (rule.Relief == Relief.None || !MayBeLetOff(box, rule))
        {
            return false;
        }

        CounterLength? length = (rule.Relief & Relief.OneOverCounter) != 0 ? LengthUnder(box, along, rule) : null;
        bool others = false;
        bool otherMisses = false;
        foreach (int other in CompanionsIn(box.Surface.Space))
        {
            if (other == index || !MayBeLetOff(Boxes[other], rule) || !Meets(other, rule, out bool meets))
            {
                continue;
            }

            if (meets && (rule.Relief & Relief.ComparableInRoom) != 0 && Boxes[other].Source.Purpose == box.Source.Purpose)
            {
                return true;
            }

            if (length is { } here && LengthUnder(Boxes[other], AtOf(other), rule) == here)
            {
                others = true;
                otherMisses |= !meets;
            }
        }

        return others && !otherMisses;
    }

    private int OthersThatMiss(ResolvedBox box, int index, PlacementRule rule) =>
        CompanionsIn(box.Surface.Space).FindAll(other => other != index && Meets(other, rule, out bool meets) && !meets).Count;

    /// <summary>Whether all that a box holds is what the rule lets off.</summary>
    private static bool MayBeLetOff(ResolvedBox box, PlacementRule rule)
    {
        foreach (DeviceKind device in box.Source.Devices)
        {
            if (!(rule.ReliefFor.Count == 0 ? device.IsReceptacle : rule.ReliefFor.Contains(device)))
            {
                return false;
            }
        }

        return box.Source.Devices.Count > 0;
    }

    /// <summary>Whether a rule speaks of a box, and if so whether the box surely meets it where it is.</summary>
    private bool Meets(int box, PlacementRule rule, out bool meets)
    {
        meets = false;
        if (!HasHeight(box) || now[box].Sites.Length == 0)
        {
            return false;
        }

        for (int p = 0; p < now[box].Sites[0].Placements.Length; p++)
        {
            if (now[box].Sites[0].Placements[p] is var stated && stated.Rule == rule && stated.Speaks)
            {
                meets = VerdictOf(box, p, PlaceOf(box)) == Verdict.Passes;
                return true;
            }
        }

        return false;
    }

    /// <summary>The length of a counter of the rule's kinds that a box is over; null where none is, or its place isn't known.</summary>
    private static CounterLength? LengthUnder(ResolvedBox box, Distance? at, PlacementRule rule)
    {
        if (at is not { } along || box.Surface.CounterOn(along, along) is not { } counter || (rule.ReliefOver.Count > 0 && !rule.ReliefOver.Contains(counter.Kind)))
        {
            return null;
        }

        Distance left = counter.Left;
        Distance right = counter.Right;
        foreach (CounterInterruption part in counter.Interruptions)
        {
            if (part.Left < along && along < part.Right)
            {
                return null;
            }

            left = part.Right <= along ? Distance.Max(left, part.Right) : left;
            right = part.Left >= along ? Distance.Min(right, part.Left) : right;
        }

        return new(box.Surface.Index, left, right);
    }

    /// <summary>A length of counter that no sink or appliance interrupts.</summary>
    private readonly record struct CounterLength(int Surface, Distance Left, Distance Right);
}
