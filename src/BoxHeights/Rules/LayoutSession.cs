using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A dwelling that is being edited: each change says which findings appeared, cleared or changed.</summary>
/// <remarks>
/// It belongs to one caller: not thread-safe. Moving a box that passes, to where it passes, allocates nothing; what else is done to a box costs what it touches, and so does
/// coming back to how a few of them were. Where a wall, a room or the rules change, or a description has faults that a change may mend, the whole dwelling is judged again.
/// </remarks>
public sealed partial class LayoutSession
{
    private LayoutEvaluator evaluator;
    private readonly Dictionary<string, int> indexOf = new(StringComparer.Ordinal);
    private LayoutState state;
    private bool[] moved;
    private DeviceBox[] entered = [];

    internal LayoutSession(LayoutEvaluator evaluator, LayoutState state)
    {
        this.evaluator = evaluator;
        this.state = state;
        moved = [];
        Take(state);
    }

    /// <summary>The dwelling, and how many findings there are.</summary>
    public override string ToString() => state.Dwelling.Name + ", findings: " + Findings.Count;

    /// <summary>The findings as they are now.</summary>
    public Items<Finding> Findings
    {
        get
        {
            List<Finding> all = [];
            state.CollectInto(all);
            return new(all);
        }
    }

    /// <summary>Sets a box to another height, where it is along its wall.</summary>
    /// <param name="id">The box.</param>
    /// <param name="height">Its height. <c>default</c> is 0 in to bottom above subfloor, as any other height.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentException">There is no such box.</exception>
    /// <exception cref="InvalidOperationException">It is pinned.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="height"/> is larger than anything in a house.</exception>
    public SessionChange Move(string id, BoxHeight height)
    {
        int box = Movable(id);
        return state.AtOf(box) is { } along ? Move(id, along, height)
            : ResolvedBox.IsWithinReason(height.Value) ? ReopenWith(id, null, height)
            : throw NoHouse(nameof(height), height, height.ToString());
    }

    /// <summary>Puts a box elsewhere along its wall, at a height.</summary>
    /// <param name="id">The box.</param>
    /// <param name="along">Its center from the wall's left end; not negative.</param>
    /// <param name="height">Its height. <c>default</c> is 0 in to bottom above subfloor, as any other height.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentException">There is no such box.</exception>
    /// <exception cref="InvalidOperationException">It is pinned.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="along"/> is negative, or one of the two is larger than anything in a house.</exception>
    public SessionChange Move(string id, Distance along, BoxHeight height)
    {
        int box = Movable(id);
        along = Guard.NotNegative(along, nameof(along));
        if (!ResolvedBox.IsWithinReason(along))
        {
            throw NoHouse(nameof(along), along, along.ToString());
        }

        if (!ResolvedBox.IsWithinReason(height.Value))
        {
            throw NoHouse(nameof(height), height, height.ToString());
        }

        if (NeedsResolving(box, along, height))
        {
            return ReopenWith(id, along, height);
        }

        state.LookAround(box);
        List<Finding>? before = null;
        if (state.HasFindingsAround(box))
        {
            state.CollectAround(box, before = []);
        }

        state.Put(box, height, along);
        moved[box] = true;
        held = null;
        state.JudgeAfterMove(box);
        if (before is null && !state.HasFindingsAround(box))
        {
            return SessionChange.None;
        }

        List<Finding> after = [];
        state.CollectAround(box, after);
        return SessionChange.Between(before ?? [], after);
    }

    /// <summary>Everything that there is to say about the dwelling as it is now.</summary>
    public Evaluation Evaluate() => evaluator.Evaluate(ToDwelling());

    /// <summary>The layout as it is now: another after what makes it be judged as a whole again.</summary>
    internal LayoutState Now => state;

    private static ArgumentOutOfRangeException NoHouse(string name, object value, string text) => new(name, value, "No house is as large as " + text + ".");

    /// <summary>A box at another height, and at another place where one is given: then it is on its stud no more, but on the one that it is set against.</summary>
    private DeviceBox Moved(int index, DeviceBox box, Distance? along, BoxHeight height) => box with
    {
        At = along ?? box.At,
        Height = height,
        Measured = null,
        Mounting = along is { } place ? state.Boxes[index].HeldAt(place, state.Options.Catalog) : box.Mounting,
    };

    private void Take(LayoutState taken)
    {
        state = taken;
        held = null;
        state.RemediesOf = finding => Evaluate().RemediesOf(finding);
        state.Spaces.NoteReaders();
        state.JudgeEntered();
        moved = new bool[state.Boxes.Count];
        entered = [.. state.Boxes.ConvertAll(box => box.Source)];
        BeginBoxes();
        indexOf.Clear();
        for (int i = state.Boxes.Count - 1; i >= 0; i--)
        {
            indexOf[state.Boxes[i].Source.Id] = i;
        }
    }

    // On its own, because what a lambda captures is allocated where its method begins.
    private SessionChange ReopenWith(string id, Distance? along, BoxHeight height)
    {
        int index = Find(id);
        return Describe(index, Moved(index, AsItIs(index), Stays(index, along) ? null : along, height));
    }

    /// <summary>Whether a place is where a box is described to be, by its stud or by a distance; a place that isn't known is.</summary>
    private bool Stays(int box, Distance? along) =>
        along is null || (state.Boxes[box].TryAlong(state.Options.Catalog, out Distance described) && described == along);

    private SessionChange Reopen(Dwelling dwelling)
    {
        List<Finding> before = [];
        state.CollectInto(before);
        Take(evaluator.StateOf(dwelling));
        List<Finding> after = [];
        state.CollectInto(after);
        return SessionChange.Between(before, after);
    }

    private int Find(string id) => indexOf.TryGetValue(id ?? throw new ArgumentNullException(nameof(id)), out int box)
        ? box
        : throw DwellingAddresses.NoSuch(state.Dwelling, "box", id, nameof(id));

    /// <summary>Whether a move can make or mend a fault of the description, or change the terms of the box's height.</summary>
    private bool NeedsResolving(int box, Distance along, BoxHeight height)
    {
        ResolvedBox resolved = state.Boxes[box];
        return resolved.IsBroken || resolved.Height is not { } now || now.Edge != height.Edge || now.Datum != height.Datum
            || ResolvedSurface.IsOfAThing(height.Datum) || resolved.Source.Measured is not null
            || !resolved.Surface.Holds(along, state.SizeOf(box)) || !resolved.Surface.Holds(height, state.SizeOf(box));
    }
}

/// <summary>What a change of a session did to its findings, or how those of two evaluations differ.</summary>
public sealed class SessionChange
{
    // So many are looked through sooner than listed.
    private const int Few = 16;

    private SessionChange(Items<Finding> appeared, Items<Finding> cleared, Items<Finding> changed)
    {
        Appeared = appeared;
        Cleared = cleared;
        Changed = changed;
    }

    /// <summary>Nothing.</summary>
    public static SessionChange None { get; } = new(default, default, default);

    /// <summary>Findings that weren't there before.</summary>
    public Items<Finding> Appeared { get; }

    /// <summary>Findings that are gone.</summary>
    public Items<Finding> Cleared { get; }

    /// <summary>Findings about the same as before that now say something else.</summary>
    public Items<Finding> Changed { get; }

    /// <summary>How many findings appeared, cleared and changed.</summary>
    public override string ToString() => Appeared.Count + " appeared, " + Cleared.Count + " cleared, " + Changed.Count + " changed";

    internal static SessionChange Between(IReadOnlyList<Finding> before, IReadOnlyList<Finding> after)
    {
        Many? many = before.Count + after.Count > Few ? new(before, after) : null;
        List<Finding>? appeared = null;
        List<Finding>? changed = null;
        List<Finding>? cleared = null;
        foreach (Finding now in after)
        {
            (bool isKnown, bool agrees) = many is null ? Compare(before, now) : Compare(many.Before(now), now);
            if (!isKnown)
            {
                (appeared ??= []).Add(now);
            }
            else if (!agrees)
            {
                (changed ??= []).Add(now);
            }
        }

        foreach (Finding then in before)
        {
            if (!(many?.IsLeft(then) ?? IsAmong(after, then)))
            {
                (cleared ??= []).Add(then);
            }
        }

        return appeared is null && cleared is null && changed is null ? None : new(Listed(appeared), Listed(cleared), Listed(changed));
    }

    private static Items<Finding> Listed(List<Finding>? findings) => findings is null ? default : new(findings);

    /// <summary>Whether a finding is about what one before was about, and whether one of those says the same.</summary>
    private static (bool IsKnown, bool Agrees) Compare(IReadOnlyList<Finding> before, Finding now)
    {
        bool isKnown = false;
        for (int i = 0; i < before.Count; i++)
        {
            if (ReferenceEquals(before[i], now) || before[i].IsAbout(now))
            {
                isKnown = true;
                if (ReferenceEquals(before[i], now) || before[i].Agrees(now))
                {
                    return (true, true);
                }
            }
        }

        return (isKnown, false);
    }

    private static bool IsAmong(IReadOnlyList<Finding> findings, Finding one)
    {
        for (int i = 0; i < findings.Count; i++)
        {
            if (ReferenceEquals(findings[i], one) || findings[i].IsAbout(one))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Findings by what they are about, where looking through all for each would take long.</summary>
    private sealed class Many
    {
        private static readonly List<Finding> Nothing = [];

        private readonly Dictionary<(string, string, LayoutFault?), List<Finding>> before = [];
        private readonly HashSet<(string, string, LayoutFault?)> left = [];

        public Many(IReadOnlyList<Finding> before, IReadOnlyList<Finding> after)
        {
            foreach (Finding then in before)
            {
                this.before.ListOf(then.About).Add(then);
            }

            foreach (Finding now in after)
            {
                left.Add(now.About);
            }
        }

        public List<Finding> Before(Finding now) => before.TryGetValue(now.About, out List<Finding>? then) ? then : Nothing;

        public bool IsLeft(Finding then) => left.Contains(then.About);
    }
}
