using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The bays of a garage: its floor parted square to the wall that the vehicle doors are in, halfway between the middles of neighboring bays.</summary>
internal sealed class VehicleBays
{
    private readonly WallPlan plan;
    private readonly PlanLine doors;
    private readonly List<long> middles;

    private VehicleBays(WallPlan plan, PlanLine doors, List<long> middles)
    {
        this.plan = plan;
        this.doors = doors;
        this.middles = middles;
    }

    /// <summary>How many there are.</summary>
    public int Count => middles.Count;

    /// <summary>The bays that openings of some kinds lead to.</summary>
    /// <param name="plan">The garage's plan.</param>
    /// <param name="kinds">Openings that lead to a bay.</param>
    /// <param name="twoBeyond">One that is wider leads to two; null where none does.</param>
    /// <returns>Null where there are fewer than two, doors in walls that aren't one, or walls that don't go round.</returns>
    public static VehicleBays? Of(WallPlan plan, Items<OpeningKind> kinds, Distance? twoBeyond)
    {
        List<long> middles = [];
        int wall = -1;
        for (int face = 0; plan.GoesRound && face < plan.Count; face++)
        {
            foreach (Opening opening in plan.WallOf(face).Openings)
            {
                if (!kinds.Contains(opening.Kind))
                {
                    continue;
                }

                if (wall >= 0 && plan.SideOf(wall) != plan.SideOf(face))
                {
                    return null;
                }

                wall = wall < 0 ? face : wall;
                (decimal x, decimal y) = plan[face].InPlan(opening.Left.Ticks, 0m);
                long left = (long)Math.Round(plan[wall].Seen(x, y).Along);
                long width = (opening.Right - opening.Left).Ticks;
                if (opening.Right - opening.Left > twoBeyond)
                {
                    middles.Add(left + (width / 4));
                    middles.Add(left + width - (width / 4));
                }
                else
                {
                    middles.Add(left + (width / 2));
                }
            }
        }

        middles.Sort();
        return middles.Count < 2 ? null : new(plan, plan[wall], middles);
    }

    /// <summary>The bay of a place on a wall.</summary>
    public int BayAt(int face, Distance along, out bool isOnTheLine)
    {
        (decimal x, decimal y) = plan[face].InPlan(along.Ticks, 0m);
        decimal at = doors.Seen(x, y).Along;
        int bay = 0;
        while (bay + 1 < Count && at > Line(bay))
        {
            bay++;
        }

        isOnTheLine = bay + 1 < Count && at == Line(bay);
        return bay;
    }

    /// <summary>The bays that no outlet of some boxes is in; each on the line between two serves one of them.</summary>
    /// <param name="space">The garage.</param>
    /// <param name="outlet">What counts.</param>
    /// <param name="canBeServed">Whether all of these bays may yet be served, by outlets of which too little is known.</param>
    /// <param name="needs">What would have to be known of those.</param>
    public List<int> Without(SpaceView space, CountedOutlet outlet, out bool canBeServed, out MissingFacts needs)
    {
        int[] inside = new int[Count];
        int[] onTheLine = new int[Count];
        int[] insideIfItCounts = new int[Count];
        int[] onTheLineIfItCounts = new int[Count];
        int anywhere = 0;
        needs = MissingFacts.None;
        foreach (SpaceBox box in space.Boxes)
        {
            Verdict counts = outlet.Of(box, out MissingFacts missing);
            if (counts == Verdict.Fails)
            {
                continue;
            }

            needs |= counts == Verdict.Unknown ? missing : MissingFacts.None;
            int face = box.Address.Length > space.Id.Length ? plan.IndexOf(box.Address.Substring(space.Id.Length + 1)) : -1;
            if (face < 0 || box.Along is not { } along)
            {
                anywhere++;
                needs |= MissingFacts.Along;
                continue;
            }

            int bay = BayAt(face, along, out bool isOnTheLine);
            (isOnTheLine ? onTheLineIfItCounts : insideIfItCounts)[bay]++;
            if (counts == Verdict.Passes)
            {
                (isOnTheLine ? onTheLine : inside)[bay]++;
            }
        }

        canBeServed = NotServed(insideIfItCounts, onTheLineIfItCounts).Count <= anywhere;
        return NotServed(inside, onTheLine);
    }

    /// <summary>From left to right, the line on the left first: what is on the other may still do for the next bay.</summary>
    private List<int> NotServed(int[] inside, int[] onTheLine)
    {
        List<int> without = [];
        int fromTheLeft = 0;
        for (int bay = 0; bay < Count; bay++)
        {
            bool isServed = inside[bay] > 0 || fromTheLeft > 0;
            fromTheLeft = onTheLine[bay] - (isServed || onTheLine[bay] == 0 ? 0 : 1);
            if (!isServed && onTheLine[bay] == 0)
            {
                without.Add(bay);
            }
        }

        return without;
    }

    /// <summary>Where a bay ends and the next begins.</summary>
    private decimal Line(int bay) => (middles[bay] + middles[bay + 1]) / 2m;
}
