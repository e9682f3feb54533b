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
            CounterOn(space, SurfaceAddress.Of(address, counter.Id), counter);
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

        foreach (NoCavity part in wall.NoCavity)
        {
            Upright(space, address, part.Bottom, part.Top, "bottom", "top", part.Kind.Name);
        }

        Studs(address, wall.Studs);
    }

    /// <summary>Studs that are thicker than they stand apart: one after another without a bay.</summary>
    private void Studs(string subject, StudLayout? studs)
    {
        if (studs?.Spacing is { } spacing && (studs.Thickness ?? catalog.UsualMeasures.Lumber) is var thick && thick >= spacing)
        {
            Contradicts(subject, $"its studs are {Text(thick):thickness} thick, but stand {Text(spacing):spacing} on center");
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

    private void CounterOn(ResolvedSpace space, string subject, Counter counter)
    {
        OfAHouse(counter.Depth, subject, "its depth");
        OfAHouse(counter.Top, subject, "its top");
        NotDeeper(subject, counter, counter.Overhang, $"overhang");
        NotDeeper(subject, counter, counter.KneeSpace, $"knee space");
        if (counter is { Top: { } top, Thickness: { } thickness } && Above(space, top) is { } up && up.To > Distance.Zero && thickness > up.To)
        {
            Contradicts(subject, $"it is {Text(thickness):thickness} thick, but its top is {Printed.Exactly(top, units):top}");
        }

        foreach (CounterInterruption one in counter.Interruptions)
        {
            if (one.Right <= one.Left)
            {
                NoExtent(subject, Wording.Term(one.Kind.Name), one.Left, one.Right);
            }
            else if (one.Left < counter.Left - catalog.UsualMeasures.TapeError || one.Right > counter.Right + catalog.UsualMeasures.TapeError)
            {
                Contradicts(subject, $"its {Wording.Term(one.Kind.Name):kind} runs from {Text(one.Left):left} to {Text(one.Right):right} along the wall, but the counter runs from {Text(counter.Left):counterLeft} to {Text(counter.Right):counterRight}");
            }

            NotDeeper(subject, counter, one.Behind, $"counter behind its {Wording.Term(one.Kind.Name):kind}");
        }
    }

    private void NotDeeper(string subject, Counter counter, Distance? part, Wording what)
    {
        if (part is { } deep && counter.Depth is { } depth && deep > depth)
        {
            Contradicts(subject, $"it is {Text(depth):depth} deep, but the {what:part} is {Text(deep):partDepth}");
        }
    }

    /// <summary>Counters before a door. How far a drawing may be off is no contradiction, and all of it is judged.</summary>
    private void CountersAcrossDoors(string address, Wall wall)
    {
        foreach (Counter counter in wall.Counters)
        {
            foreach (Opening door in wall.Openings)
            {
                if (OpeningKind.Doors.Contains(door.Kind) && (door.Sill is not { } sill || sill.Offset <= Distance.Zero)
                    && Distance.Min(counter.Right, door.Right) - Distance.Max(counter.Left, door.Left) > DrawingTolerance.GapAcross)
                {
                    Contradicts(SurfaceAddress.Of(address, counter.Id), $"it runs from {Text(counter.Left):left} to {Text(counter.Right):right}, across the {Wording.Term(door.Kind.Name):kind} \"{door.Id:door}\" from {Text(door.Left):doorLeft} to {Text(door.Right):doorRight}");
                }
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

    private void Storey(Storey storey, Storey? below)
    {
        OfAHouse(storey.AboveBelow, storey.Id, "its height above the storey below");
        OfAHouse(storey.Ceiling?.Framing?.To, storey.Id, "its ceiling framing");
        Studs(storey.Id, storey.Studs);
        if (storey.LevelLine is { } line && (line.Datum != Datum.Subfloor || line.Offset <= Distance.Zero))
        {
            Fault(LayoutFaultKind.UnknownReference, storey.Id, $"its level line is given as {Printed.Exactly(line, units):line}; give it above the subfloor");
        }
        else if (storey is { LevelLine.Offset: var high, Ceiling: { Framing.To: var overhead, From: not CeilingOrigin.RoomSubfloor } } && high > overhead)
        {
            Contradicts(storey.Id, $"its level line is {Text(high):line} above the subfloor, but the ceiling framing is at {Text(overhead):framing}");
        }

        if (storey.AboveBelow is { } up && below?.Ceiling?.Framing is { } framing && up <= framing.From)
        {
            Contradicts(storey.Id, $"it lies {Text(up):up} above the subfloor below, but the ceiling framing there is at {Text(framing.From):framing}");
        }
    }
}
