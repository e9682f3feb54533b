using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What the space rules are judged for, and which box belongs to what.</summary>
internal sealed class SpaceIndex
{
    private static readonly List<int> None = [];

    private readonly List<Judged> judged = [];
    private readonly List<SpaceBox> boxes = [];
    private readonly Dictionary<string, List<Subject>> subjects = new(StringComparer.Ordinal);
    private readonly List<Subject> wide = [];
    private List<int>?[] of;

    public SpaceIndex(LayoutState state, Resolver resolved)
    {
        of = new List<int>?[state.Boxes.Length];
        if (state.Rules.Space.Length == 0)
        {
            return;
        }

        for (int i = 0; i < state.Boxes.Length; i++)
        {
            if (state.SitesOf(i).Length > 0)
            {
                boxes.Add(new(state, i));
            }
        }

        Dwelling dwelling = resolved.Dwelling;
        foreach (Room room in dwelling.Rooms)
        {
            Enter(state, View(SpaceKind.Room, room.Id, box => box.SpaceId == room.Id, room: room), room.Kind, subjects.ListOf(room.Id));
        }

        foreach (OutsideFace face in dwelling.Outside)
        {
            Enter(state, View(SpaceKind.OutsideFace, face.Id, box => box.SpaceId == face.Id, face: face), default, subjects.ListOf(face.Id));
        }

        foreach (StairFlight flight in dwelling.Flights)
        {
            Enter(state, View(SpaceKind.Flight, flight.Id, _ => true, flight: flight), default, wide);
        }

        foreach (Storey storey in dwelling.Storeys)
        {
            Enter(state, View(SpaceKind.Storey, storey.Id, box => state.Boxes[box.Index].Surface.Space is { IsOutside: false } space && space.StoreyId == storey.Id, storey: storey), default, wide);
        }

        Enter(state, View(SpaceKind.Dwelling, dwelling.Name, _ => true), default, wide);

        Subject View(SpaceKind kind, string id, Predicate<SpaceBox> has, Room? room = null, OutsideFace? face = null, StairFlight? flight = null, Storey? storey = null)
        {
            ResolvedSpace? space = kind is SpaceKind.Room or SpaceKind.OutsideFace ? resolved.Spaces.Find(one => one.Id == id && one.IsOutside == face is not null) : null;
            SpaceView view = new(state.Options, kind, id, dwelling, space?.Levels ?? Levels.Default, new(boxes.FindAll(has)))
            {
                Room = room,
                Face = face,
                Flight = flight,
                Storey = storey,
                OfDwelling = boxes,
                Backs = resolved.Backs,
                Framing = space?.Framing,
                HasBrokenParts = space is { HasBrokenParts: true },
            };
            return new(view, has);
        }
    }

    public int Count => judged.Count;

    public Judged this[int index] => judged[index];

    /// <summary>What has to be judged again after a box moved.</summary>
    public List<int> Of(int box) => of[box] ?? None;

    /// <summary>What is judged for a room or an outside face by itself.</summary>
    public IEnumerable<Judged> OfSpace(string id) => Of(subjects.TryGetValue(id, out List<Subject>? own) ? own : []);

    /// <summary>What is judged for flights, storeys and the dwelling.</summary>
    public IEnumerable<Judged> Wide => Of(wide);

    /// <summary>Where along its wall a box may go without making what its room has to provide worse.</summary>
    public DistanceSet KeepOf(int box)
    {
        DistanceSet keep = DistanceSet.All;
        foreach (int space in Of(box))
        {
            foreach (SpaceBox one in judged[space].View.Boxes)
            {
                keep &= one.Index == box && !judged[space].View.HasBrokenParts ? judged[space].Rule.KeepAlong(judged[space].View, one) : DistanceSet.All;
            }
        }

        return keep;
    }

    /// <summary>Takes in a box that was added behind all others. What it belongs to has to be judged again.</summary>
    public void Enter(LayoutState state)
    {
        int index = of.Length;
        Array.Resize(ref of, index + 1);
        SpaceBox box = new(state, index);
        boxes.Add(box);
        foreach (List<Subject> some in new[] { subjects.TryGetValue(box.SpaceId, out List<Subject>? own) ? own : [], wide })
        {
            foreach (Subject subject in some)
            {
                if (subject.Has(box))
                {
                    subject.View.Enter(box);
                    (of[index] ??= []).AddRange(subject.Judged);
                }
            }
        }

        SetStale(index);
    }

    /// <summary>Notes that what a box belongs to has to be judged again.</summary>
    public void SetStale(int box)
    {
        foreach (int one in Of(box))
        {
            judged[one].IsStale = true;
        }
    }

    private IEnumerable<Judged> Of(List<Subject> some)
    {
        foreach (Subject subject in some)
        {
            foreach (int one in subject.Judged)
            {
                yield return judged[one];
            }
        }
    }

    private void Enter(LayoutState state, Subject subject, RoomKind kind, List<Subject> among)
    {
        among.Add(subject);
        SpaceView view = subject.View;
        foreach (SpaceRule rule in state.Rules.Space)
        {
            if (rule.Subject != view.Kind || (rule.Scope.Rooms.Count > 0 && !rule.Scope.Rooms.Contains(kind)))
            {
                continue;
            }

            foreach (SpaceBox box in view.Boxes)
            {
                (of[box.Index] ??= []).Add(judged.Count);
            }

            subject.Judged.Add(judged.Count);
            judged.Add(new(rule, view));
        }
    }

    /// <summary>A room, outside face, flight, storey or the dwelling, which boxes belong to it, and what is judged for it.</summary>
    private sealed class Subject(SpaceView view, Predicate<SpaceBox> has)
    {
        public SpaceView View { get; } = view;

        public Predicate<SpaceBox> Has { get; } = has;

        public List<int> Judged { get; } = [];
    }

    /// <summary>One space rule, what it is judged for, and what it said last.</summary>
    internal sealed class Judged(SpaceRule rule, SpaceView view)
    {
        private readonly SpaceStatement statement = new();

        public SpaceRule Rule { get; } = rule;

        public SpaceView View { get; } = view;

        public List<Finding> Findings { get; } = [];

        /// <summary>Whether a box of it was added or set anew since it was judged.</summary>
        public bool IsStale { get; set; }

        /// <summary>Judges it from where its boxes are now.</summary>
        /// <returns>How many findings there are.</returns>
        public int Judge(LayoutState state)
        {
            Findings.Clear();
            IsStale = false;
            Say(statement);
            foreach (OpenPart open in statement.Open)
            {
                // A fault of the space itself is a finding, and says why.
                if (open.Blocks && Rule.Severity == Severity.Violation && !state.Faults.Exists(fault => fault.Subject == View.Id))
                {
                    Findings.Add(new(state, Rule, SpaceAnswer.Of(open, View.Id), default));
                }
            }

            foreach (SpaceAnswer answer in statement.Answers)
            {
                Findings.Add(new(state, Rule, answer, answer.Verdict == Verdict.Fails && Rule.Readings.Count > 0 ? DisputedBy(answer.Subject) : default));
            }

            return Findings.Count;
        }

        /// <summary>All that it says from where boxes are now, what is met too.</summary>
        public SpaceStatement SayAll()
        {
            SpaceStatement all = new() { TellsAll = true };
            Say(all);
            return all;
        }

        private void Say(SpaceStatement to)
        {
            to.Clear();
            if (View.HasBrokenParts)
            {
                // The fault is a finding itself.
                to.LeavesOpen("a fault of the description keeps it from being judged");
                return;
            }

            try
            {
                Rule.Judge(View, to);
            }
            catch (OverflowException)
            {
                // What can't be added up any more is no measure of a house, and the rest goes on.
                to.Clear();
                to.NotJudged("a measure in it is larger than anything in a house");
            }
        }

        /// <summary>The readings of the rule's text under which something that fails would be met, from where boxes are now.</summary>
        private Items<string> DisputedBy(string subject)
        {
            List<string> disputed = [];
            foreach (Reading reading in Rule.Readings)
            {
                SpaceStatement other = new();
                ((SpaceRule)reading.Rule).Judge(View, other);
                if (other.IsMet(subject, statement))
                {
                    disputed.Add(reading.Id);
                }
            }

            return new(disputed);
        }
    }
}
