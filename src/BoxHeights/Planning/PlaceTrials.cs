using System.Collections.Generic;
using System.Threading;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>Tries out the other places and heights that one box of a plan could have on its wall, all else being as it is planned.</summary>
internal sealed class PlaceTrials(LayoutSession session, PlacedBox planned, CancellationToken cancellation)
{
    private Distance? asPlanned;

    private LayoutState State => session.Now;

    private DeviceBox Box => planned.Box;

    /// <summary>Every other place, best first.</summary>
    public Items<PlanAlternative> All()
    {
        if (Box is not { At: { } at, Height: { Edge: not null } height } || State.SurfaceAt(planned.Address) is not { Kind: BoxSurface.Wall } surface)
        {
            return default;
        }

        asPlanned = Furthest();
        DistanceSet hidden = WallPlaces.Hidden(surface.Fixtures);
        List<(PlanAlternative Tried, bool IsHidden)> found = [];
        foreach (Distance place in Places(surface, at))
        {
            cancellation.ThrowIfCancellationRequested();
            found.Add((Try(place, height, hidden.Contains(place) && !hidden.Contains(at)), hidden.Contains(place)));
        }

        foreach (BoxHeight other in Heights(at, height))
        {
            cancellation.ThrowIfCancellationRequested();
            found.Add((Try(at, other, false), hidden.Contains(at)));
        }

        found.Sort(Compare);
        return new(found.ConvertAll(one => one.Tried));
    }

    /// <summary>Against either side of every piece of framing that is known to stand; a bay apart where none is.</summary>
    private SortedSet<Distance> Places(ResolvedSurface surface, Distance at)
    {
        SortedSet<Distance> places = [];
        Distance half = ResolvedBox.SizeOf(Box, State.Options.Catalog).HalfWidth;
        if (surface.Framing is { Known: not StudKnowledge.Assumed, Members: { Count: > 0 and <= WallFraming.MostWorkedThrough } members })
        {
            foreach (FramingMember member in members)
            {
                Offer(member.IsSure ? member.Left - half : at);
                Offer(member.IsSure ? member.Right + half : at);
            }
        }
        else if (State.Rules.RoomForBoxes.NextBay is var bay && bay > Distance.Zero)
        {
            for (Distance off = bay; off < surface.Length; off += bay)
            {
                Offer(at - off);
                Offer(at + off);
            }
        }

        return places;

        void Offer(Distance place)
        {
            if (place != at && place >= half && place <= surface.Length - half)
            {
                places.Add(place);
            }
        }
    }

    /// <summary>The lowest and the highest that rules of its place surely allow where it is, habits left aside, on the marks of a tape.</summary>
    private List<BoxHeight> Heights(Distance at, BoxHeight height)
    {
        DistanceSet free = State.SiteFor(planned.Address, Box)?.Places.SureOfFirmRulesAt(at.Ticks) ?? DistanceSet.Empty;
        List<BoxHeight> heights = [];
        if (!free.IsEmpty)
        {
            Offer(free[0].From == Distance.MinValue ? null : free[0].From.RoundUp(State.Options.HeightStep));
            Offer(free[free.Count - 1].To == Distance.MaxValue ? null : free[free.Count - 1].To.RoundDown(State.Options.HeightStep));
        }

        return heights;

        void Offer(Distance? reading)
        {
            if (reading is { } some && free.Contains(some) && height.WithValue(some) is var other && other != height && !heights.Contains(other))
            {
                heights.Add(other);
            }
        }
    }

    private PlanAlternative Try(Distance at, BoxHeight height, bool isHidden)
    {
        DeviceBox there = HeldOnWall.At(State, planned.Address, Box.WithMounting(null).WithAt(at).WithHeight(height));
        List<PlanCost> costs = [.. session.Change(Box.Id, _ => there).Appeared.Select(finding => new PlanCost(finding))];
        Distance? further = Furthest() - asPlanned;
        session.Change(Box.Id, _ => Box);
        costs.Sort((a, b) => a.Severity != b.Severity ? b.Severity.CompareTo(a.Severity) : string.CompareOrdinal(a.RuleId, b.RuleId));
        Distance right = at - Box.At!.Value;
        bool needsBlocking = there.Mounting?.How == MountingMethod.Blocking && Box.Mounting?.How != MountingMethod.Blocking;
        return new(Box.Id, planned.Address, at, height, there.Mounting, new(costs))
        {
            Further = further,
            Right = right,
            NeedsBlocking = needsBlocking,
            Units = State.Options.Units,
            Why = costs.Count > 0 ? Found(costs)
                : isHidden ? "behind what stands there"
                : needsBlocking ? "it needs a block, where the planned place has a stud"
                : further > Distance.Zero ? "a point of its stretch is " + Printed.Of(further.Value, State.Options.Units) + " further from an outlet"
                : height != Box.Height ? "allowed, and not where such boxes are usually set or others like it are"
                : further == Distance.Zero ? "it does as well, " + Printed.Of(right.Abs(), State.Options.Units) + " off the planned place"
                : "it would do, " + Printed.Of(right.Abs(), State.Options.Units) + " off the planned place",
        };
    }

    private static string Found(List<PlanCost> costs) =>
        costs.Count + (costs.Count == 1 ? " finding" : " findings") + " that the plan hasn't, of " + new Items<string>(costs.ConvertAll(cost => cost.RuleId)).Distinct();

    /// <summary>How far the furthest point of the stretches that the box serves is from an outlet that counts; null where it serves none.</summary>
    private Distance? Furthest()
    {
        Distance? most = null;
        string room = SurfaceAddress.Read(planned.Address).Space;
        foreach (SpaceIndex.JudgedSpace judged in State.Spaces.OfSpace(room))
        {
            if (judged is not { Rule: IServesRuns served, View: { Room: not null, HasBrokenParts: false } view } || served.Spaces.Of(view) is not { } runs)
            {
                continue;
            }

            RunOutlets outlets = new();
            outlets.Take(view, served.Outlets, runs, false);
            List<DistanceRange> may = [];
            List<DistanceRange> sure = [];
            foreach (Run run in runs.Sure)
            {
                if (run.Length >= served.Shortest && Serves(run) && outlets.On(run, runs.Sure, may, sure) is var _
                    && RunCover.TryWorst(run, Between(run, sure), sure, out _, out Distance away) && !(most >= away))
                {
                    most = away;
                }
            }
        }

        return most;
    }

    private bool Serves(Run run) => run.Stretches.Exists(stretch => stretch.Address == planned.Address && stretch.From <= Box.At && Box.At <= stretch.To);

    /// <summary>What lies between outlets, so that the middle of each is looked at, and the ends of what has ends.</summary>
    private static List<DistanceRange> Between(Run run, List<DistanceRange> outlets)
    {
        List<DistanceRange> all = [.. outlets];
        all.Sort(static (a, b) => a.From.CompareTo(b.From));
        List<DistanceRange> between = [];
        for (int i = 1; i < all.Count; i++)
        {
            between.Add(new(all[i - 1].From, all[i].From));
        }

        if (all.Count > 0 && run.IsLoop)
        {
            between.Add(new(all[all.Count - 1].From, all[0].From + run.Length));
        }
        else if (all.Count > 0)
        {
            between.Add(new(Distance.Zero, all[0].From));
            between.Add(new(all[all.Count - 1].From, run.Length));
        }

        return between;
    }

    private static int Compare((PlanAlternative Tried, bool IsHidden) a, (PlanAlternative Tried, bool IsHidden) b)
    {
        int order = Weight(a.Tried).CompareTo(Weight(b.Tried));
        order = order != 0 ? order : a.Tried.Costs.Count.CompareTo(b.Tried.Costs.Count);
        order = order != 0 ? order : a.IsHidden.CompareTo(b.IsHidden);
        order = order != 0 ? order : a.Tried.NeedsBlocking.CompareTo(b.Tried.NeedsBlocking);
        order = order != 0 ? order : (a.Tried.Further ?? Distance.Zero).CompareTo(b.Tried.Further ?? Distance.Zero);
        order = order != 0 ? order : a.Tried.Right.Abs().CompareTo(b.Tried.Right.Abs());
        order = order != 0 ? order : a.Tried.At.CompareTo(b.Tried.At);
        return order != 0 ? order : a.Tried.Height.Value.CompareTo(b.Tried.Height.Value);
    }

    private static int Weight(PlanAlternative tried) => tried.Costs.Count == 0 ? 0 : (int)tried.Costs[0].Severity;
}
