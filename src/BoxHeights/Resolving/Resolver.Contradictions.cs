using System;

namespace BoxHeights;

/// <content>What can't be true at once about one part of a wall.</content>
internal sealed partial class Resolver
{
    /// <summary>A measure that no house has.</summary>
    private void OfAHouse(Distance? measure, string subject, string what)
    {
        if (measure is { } given && !ResolvedBox.IsWithinReason(given))
        {
            Fault(LayoutFaultKind.BeyondMeasure, subject, $"{Wording.Term(what):what} is {Text(given):given}, which is larger than anything in a house");
        }
    }

    private void OfAHouse(Level? level, string subject, string what) => OfAHouse(level?.Offset, subject, what);

    private void Contradicts(string subject, Wording what) => Fault(LayoutFaultKind.Contradiction, subject, what);

    private void Parts(ResolvedSpace space, string address, Wall wall)
    {
        foreach (Opening opening in wall.Openings)
        {
            Opening(space, SurfaceAddress.Of(address, opening.Id), opening);
        }

        foreach (Counter counter in wall.Counters)
        {
            CounterOn(SurfaceAddress.Of(address, counter.Id), counter);
        }

        foreach (Finish finish in wall.Finishes)
        {
            Upright(space, SurfaceAddress.Of(address, finish.Id), finish.Bottom, finish.Top, "bottom", "top");
        }

        foreach (Covering covering in wall.Coverings)
        {
            OfAHouse(covering.Depth, SurfaceAddress.Of(address, covering.Id), "its depth");
            Upright(space, SurfaceAddress.Of(address, covering.Id), covering.Bottom, covering.Top, "bottom", "top");
        }
    }

    private void Opening(ResolvedSpace space, string subject, Opening opening)
    {
        OfAHouse(opening.Casing, subject, "its casing");
        OfAHouse(opening.Reveal, subject, "its reveal");
        Upright(space, subject, opening.Sill, opening.Head, "sill", "head");

        // A barn door's panel hangs before its opening and is wider; of a pair each leaf is half as wide.
        int leaves = opening.Kind == OpeningKind.BarnDoor ? 0 : opening.Kind == OpeningKind.DoubleDoor ? 2 : 1;
        long width = Math.Max(0, (opening.Right - opening.Left).Ticks);
        if (leaves > 0 && width > 0 && opening.Leaf is { } leaf && leaf.Ticks > width / leaves)
        {
            Contradicts(subject, leaves == 1 ? $"its leaf is {Text(leaf):leaf} wide, but the opening is {Text(Distance.FromTicks(width)):width}"
                : (Wording)$"each of its two leaves is {Text(leaf):leaf} wide, but the opening is {Text(Distance.FromTicks(width)):width}");
        }
    }

    /// <summary>Heads above the ceiling framing. What is beside and under such an opening is where it is whatever is wrong above, so that all of it is judged.</summary>
    private void HeadsAboveTheCeiling(ResolvedSpace space, string address, Wall wall)
    {
        foreach (Opening opening in wall.Top.Count == 0 ? wall.Openings : default)
        {
            if (opening.Head is { } head && space.Framing is { } framing && Above(space, head) is { } up && up.From > framing.To)
            {
                Contradicts(SurfaceAddress.Of(address, opening.Id), $"its head is at {Text(up.From):head} above the subfloor, but the ceiling framing is at {Text(framing.To):framing}");
            }
        }
    }

    private void CounterOn(string subject, Counter counter)
    {
        OfAHouse(counter.Depth, subject, "its depth");
        OfAHouse(counter.Top, subject, "its top");
        foreach (CounterInterruption one in counter.Interruptions)
        {
            if (one.Left < counter.Left - catalog.UsualMeasures.TapeError || one.Right > counter.Right + catalog.UsualMeasures.TapeError)
            {
                Contradicts(subject, $"its {Wording.Term(one.Kind.Name):kind} runs from {Text(one.Left):left} to {Text(one.Right):right} along the wall, but the counter runs from {Text(counter.Left):counterLeft} to {Text(counter.Right):counterRight}");
            }
        }
    }

    /// <summary>Counters in one place. One may stand over another: a raised ledge behind a worktop. What both are before is before a counter, so that all of it is judged.</summary>
    private void CountersOverlap(string address, Wall wall)
    {
        foreach (Counter counter in wall.Counters)
        {
            foreach (Counter other in wall.Counters)
            {
                if (counter.Left < other.Right - catalog.UsualMeasures.TapeError && other.Left < counter.Right - catalog.UsualMeasures.TapeError
                    && string.CompareOrdinal(counter.Id, other.Id) < 0 && (counter.Top is null || other.Top is null || counter.Top == other.Top))
                {
                    Contradicts(SurfaceAddress.Of(address, counter.Id), $"it overlaps the counter \"{other.Id:other}\": {Text(counter.Left):left} to {Text(counter.Right):right} and {Text(other.Left):otherLeft} to {Text(other.Right):otherRight}");
                }
            }
        }
    }

    /// <summary>What has a lower and an upper edge has them in that order.</summary>
    private void Upright(ResolvedSpace space, string subject, Level? low, Level? high, string lower, string upper)
    {
        OfAHouse(low, subject, lower == "sill" ? "its sill" : "its bottom");
        OfAHouse(high, subject, upper == "head" ? "its head" : "its top");
        if (low is { } bottom && high is { } top && (bottom.Datum == top.Datum ? bottom.Offset >= top.Offset : Above(space, bottom)?.From >= Above(space, top)?.To))
        {
            Contradicts(subject, $"its {Wording.Term(lower):lower}, {Printed.Exactly(bottom, units):bottom}, isn't below its {Wording.Term(upper):upper}, {Printed.Exactly(top, units):top}");
        }
    }

    /// <summary>How high a level lies above the room's subfloor; null where that isn't known.</summary>
    private static DistanceRange? Above(ResolvedSpace space, Level level)
    {
        try
        {
            return space.Levels.TryOffset(Datum.Subfloor, level.Datum, out DistanceRange up) ? up + level.Offset : null;
        }
        catch (OverflowException)
        {
            return null;
        }
    }

    private void Storey(Storey storey, Storey? below)
    {
        OfAHouse(storey.AboveBelow, storey.Id, "its height above the storey below");
        OfAHouse(storey.Ceiling?.Framing?.To, storey.Id, "its ceiling framing");
        if (storey.AboveBelow is { } up && below?.Ceiling?.Framing is { } framing && up <= framing.From)
        {
            Contradicts(storey.Id, $"it lies {Text(up):up} above the subfloor below, but the ceiling framing there is at {Text(framing.From):framing}");
        }
    }

    /// <summary>A tread and a run that are both stated give one number of treads.</summary>
    private void Treads(StairFlight flight)
    {
        OfAHouse(flight.Tread, flight.Id, "its tread");
        OfAHouse(flight.Run, flight.Id, "its run");
        if (flight is { Tread: { } tread, Run: { } run } && ResolvedBox.IsWithinReason(tread) && ResolvedBox.IsWithinReason(run)
            && Math.Abs((tread.Ticks * (decimal)(flight.Risers - 1)) - run.Ticks) > DrawingTolerance.GapAcross.Ticks)
        {
            Contradicts(flight.Id, $"{flight.Risers:risers} risers with treads of {Text(tread):tread} don't make a run of {Text(run):run}");
        }
    }
}
