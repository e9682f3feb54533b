using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <content>Rules that let a box off because others nearby meet them: the one case in which a placement depends on other boxes.</content>
internal sealed partial class LayoutState
{
    private Dictionary<ResolvedSpace, List<int>>? companions;

    /// <summary>The boxes of a box's room, itself among them, where a rule may let one off for the others' sake; none elsewhere.</summary>
    private List<int> CompanionsOf(int box)
    {
        return Rules.HasRelief ? Companions()[Boxes[box].Surface.Space] : None;
    }

    private Dictionary<ResolvedSpace, List<int>> Companions()
    {
        if (companions is null)
        {
            companions = [];
            for (int i = 0; i < Boxes.Length; i++)
            {
                companions.ListOf(Boxes[i].Surface.Space).Add(i);
            }
        }

        return companions;
    }

    private static List<int> None { get; } = [];

    /// <summary>Whether others nearby let a box off a rule that it misses.</summary>
    private bool IsLetOff(int box, PlacementRule rule)
    {
        if (rule.Relief == Relief.None || !IsReceptacle(box))
        {
            return false;
        }

        CounterLength? length = (rule.Relief & Relief.OneOverCounter) != 0 ? LengthUnder(box) : null;
        bool others = false;
        bool otherMisses = false;
        foreach (int other in CompanionsOf(box))
        {
            if (other == box || !IsReceptacle(other) || !Meets(other, rule, out bool meets))
            {
                continue;
            }

            if (meets && (rule.Relief & Relief.ComparableInRoom) != 0 && Boxes[other].Source.Purpose == Boxes[box].Source.Purpose)
            {
                return true;
            }

            if (length is { } here && LengthUnder(other) == here)
            {
                others = true;
                otherMisses |= !meets;
            }
        }

        return others && !otherMisses;
    }

    private bool IsReceptacle(int box)
    {
        foreach (DeviceKind device in Boxes[box].Source.Devices)
        {
            if (!device.IsReceptacle)
            {
                return false;
            }
        }

        return Boxes[box].Source.Devices.Count > 0;
    }

    /// <summary>Whether a rule speaks of a box, and if so whether the box surely meets it where it is.</summary>
    private bool Meets(int box, PlacementRule rule, out bool meets)
    {
        meets = false;
        if (!HasReading(box) || sites[box] is not { Length: > 0 })
        {
            return false;
        }

        for (int p = 0; p < sites[box][0].Placements.Length; p++)
        {
            if (sites[box][0].Placements[p].Rule == rule)
            {
                meets = VerdictOf(box, p, PlaceOf(box)) == Verdict.Passes;
                return true;
            }
        }

        return false;
    }

    /// <summary>The length of kitchen counter that a box is over; null where none is, or its place isn't known.</summary>
    private CounterLength? LengthUnder(int box)
    {
        if (AtOf(box) is not { } along || Boxes[box].Surface.CounterOn(along, along) is not { } counter || counter.Kind != CounterKind.Kitchen)
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

        return new(Boxes[box].Surface.Index, left, right);
    }

    /// <summary>A length of counter that no sink or appliance interrupts.</summary>
    private readonly record struct CounterLength(int Surface, Distance Left, Distance Right);
}
