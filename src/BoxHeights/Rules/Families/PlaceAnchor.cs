using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What a box of some purpose is set beside or behind: furniture, an appliance, a basin, a window. Distances are along the wall, from the thing's outline to the center of the box.</summary>
[Described(nameof(Things), nameof(UpTo))]
public sealed partial record PlaceAnchor
{
    /// <summary>The kinds of thing, by their names.</summary>
    /// <exception cref="System.ArgumentException">No thing is named, or a name isn't in lower case with hyphens.</exception>
    public Items<string> Things { get; init => field = value.Count == 0 ? throw new System.ArgumentException("An anchor names some thing.", nameof(Things)) : value.Select(thing => KindName.Check(thing, nameof(Things))); }

    /// <summary>How far outside the outline the center may be at most.</summary>
    public Distance UpTo { get; init => field = Guard.NotNegative(value, nameof(UpTo)); }

    /// <summary>How far outside the outline the center is at least; null where it may be within it.</summary>
    public Distance? Beyond { get; init => field = Guard.NotNegative(value, nameof(Beyond)); }

    /// <summary>The anchor in words: "2 in to 24 in beside a bed".</summary>
    public override string ToString() =>
        (Beyond is { } beyond ? beyond + " to " + UpTo + " beside a " : UpTo == Distance.Zero ? "within the outline of a " : "within or up to " + UpTo + " beside a ")
        + string.Join(" or ", Things);

    /// <summary>The things of the anchor's kinds on a wall: fixtures, what interrupts a counter, openings with their casing, coverings.</summary>
    /// <param name="fixtures">The fixtures against the wall.</param>
    /// <param name="wall">The wall; null on a surface that is none.</param>
    /// <param name="usual">What its openings measure where that isn't stated.</param>
    internal IReadOnlyList<AnchoredThing> ThingsOn(Items<Fixture> fixtures, Wall? wall, UsualMeasures usual)
    {
        // Mostly there is none.
        List<AnchoredThing>? found = null;
        foreach (Fixture fixture in fixtures)
        {
            if (Things.Contains(fixture.Kind.Name))
            {
                (found ??= []).Add(new(fixture.Id, fixture.Kind.Name, fixture.Left, fixture.Right));
            }
        }

        foreach (Counter counter in wall?.Counters ?? default)
        {
            foreach (CounterInterruption part in counter.Interruptions)
            {
                if (Things.Contains(part.Kind.Name))
                {
                    (found ??= []).Add(new(part.Kind + " of " + counter.Id, part.Kind.Name, part.Left, part.Right));
                }
            }
        }

        foreach (Opening opening in wall?.Openings ?? default)
        {
            if (Things.Contains(opening.Kind.Name))
            {
                TrimmedOpening trimmed = TrimmedOpening.Of(opening, usual);
                (found ??= []).Add(new(opening.Id, opening.Kind.Name, trimmed.Left, trimmed.Right));
            }
        }

        foreach (Covering covering in wall?.Coverings ?? default)
        {
            if (Things.Contains(covering.Kind.Name))
            {
                (found ??= []).Add(new(covering.Id, covering.Kind.Name, covering.Left, covering.Right));
            }
        }

        return found ?? (IReadOnlyList<AnchoredThing>)[];
    }
}

/// <summary>A thing that boxes belong to, and where it stands along its wall where that is stated.</summary>
internal readonly record struct AnchoredThing(string Name, string Kind, Distance? Left, Distance? Right);
