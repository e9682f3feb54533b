using System;
using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>A plan in the making: the dwelling as it is so far, and what was added why.</summary>
internal sealed class RoughInDraft(Dwelling dwelling, LayoutEvaluator evaluator, RoughInOptions options)
{
    // More would mean that adding boxes never ends.
    private const int MostCures = 400;

    // No house has a longer one, and the boxes along it would be without number.
    private static readonly Distance LongestWall = Distance.FromFeet(300m);

    private readonly List<PlannedBox> reasons = [];
    private readonly List<string> obstacles = [];
    private LayoutState? state;

    public Dwelling Dwelling { get; private set; } = dwelling;

    public LayoutEvaluator Evaluator { get; } = evaluator;

    public RoughInOptions Options { get; } = options;

    /// <summary>What the rules state of the dwelling as it is now.</summary>
    public LayoutState State => state ??= Evaluator.StateOf(Dwelling);

    public void Obstacle(string what)
    {
        if (!obstacles.Contains(what))
        {
            obstacles.Add(what);
        }
    }

    /// <summary>Plans a room: what is fixed by doors and furniture first, then what fills the rest.</summary>
    public void Room(Room room)
    {
        try
        {
            Fill(room);
        }
        catch (Exception beyond) when (beyond is OverflowException or ArgumentException { InnerException: OverflowException })
        {
            Obstacle(room.Id + ": a measure in it is larger than anything in a house");
        }
    }

    private void Fill(Room room)
    {
        foreach (Wall wall in room.Walls)
        {
            if (wall.Length > LongestWall)
            {
                Obstacle(room.Id + "/" + wall.Id + ": it is " + wall.Length.Exactly(Units) + " long; no room with a wall longer than " + BothUnits.Of(LongestWall.ToString("ft"), Units) + " is planned");
                return;
            }
        }

        if (Options.Switches)
        {
            new EntranceSwitches(this).Plan(room);
        }

        FurnitureBoxes beside = new(this);
        beside.Appliances(room);
        beside.Extras(room);
        new RunBoxes(this).Plan(room);
        Cure(finding => IsOf(finding, room.Id));
    }

    /// <summary>Adds a box, unless it brings a finding with it.</summary>
    /// <param name="address">The surface.</param>
    /// <param name="box">The box.</param>
    /// <param name="reason">Why it is there, in one clause.</param>
    /// <param name="rule">What asks for it, named after the reason.</param>
    /// <returns>Whether it stayed.</returns>
    public bool TryAdd(string address, DeviceBox box, string reason, Rule? rule = null)
    {
        string id = FreePlaces.FreeId(Dwelling, address.Split('/')[0] + "-" + box.Purpose);
        DeviceBox named = box.WithId(id);
        Dwelling before = Dwelling;
        HashSet<(string, string)> known = [];
        foreach (Finding finding in Found())
        {
            known.Add((finding.RuleId, finding.Subject));
        }

        Dwelling after = before.WithBox(new(address, named));
        if (!Holds(after, known) && (OnOneStick(after, address, named) is not { } level || !Holds(level, known)))
        {
            Take(before);
            return false;
        }

        reasons.Add(new(id, address, reason + (rule is null ? "" : " (" + rule.Id + ")"), rule?.Id));
        return true;
    }

    /// <summary>Takes a dwelling, if nothing is found there that wasn't before. What lacks something may lack less, and what lacked more has less: only what is new about boxes counts.</summary>
    private bool Holds(Dwelling changed, HashSet<(string RuleId, string Subject)> known)
    {
        Take(changed);
        return !Found().Exists(finding => finding.Space is null && !known.Contains((finding.RuleId, finding.Subject)));
    }

    /// <summary>The dwelling with all boxes of a purpose that were planned in a storey set by the stick of the last: one room may not allow the height that did for those before.</summary>
    private Dwelling? OnOneStick(Dwelling dwelling, string address, DeviceBox last)
    {
        string? storey = StoreyOf(address);
        HashSet<string> others = new(StringComparer.Ordinal);
        foreach (PlannedBox planned in reasons)
        {
            if (storey is not null && StoreyOf(planned.Address) == storey && dwelling.FindBox(planned.Id) is { Box: var box } && box.Purpose == last.Purpose && box.Height != last.Height)
            {
                others.Add(planned.Id);
            }
        }

        return others.Count == 0 ? null : dwelling.WithBoxes(box => others.Contains(box.Id) ? box.WithHeight(last.Height) : box);
    }

    /// <summary>The storey of the room that a surface is in; null outside.</summary>
    public string? StoreyOf(string address)
    {
        string id = address.Split('/')[0];
        foreach (Room room in Dwelling.Rooms)
        {
            if (room.Id == id)
            {
                return room.Storey;
            }
        }

        return null;
    }

    /// <summary>Ends the plan of a room, or of the dwelling.</summary>
    public RoomPlan Finish(string? room)
    {
        if (room is null)
        {
            Cure(_ => true);
        }

        HashSet<string> planned = [.. reasons.ConvertAll(box => box.Id)];
        foreach (Finding finding in Found())
        {
            if (finding.Severity == Severity.Violation && finding.Fault is null && (finding.Space is null ? planned.Contains(finding.Subject) : room is null || IsOf(finding, room)))
            {
                Obstacle(finding.Message);
            }
        }

        foreach (LayoutFault fault in State.Faults)
        {
            Obstacle(fault.Subject + ": " + fault.Message);
        }

        return new(Dwelling, new(reasons), new(Requirements()), new(obstacles));
    }

    /// <summary>What the rules that boxes were added for ask, in the order in which they first did.</summary>
    private List<string> Requirements()
    {
        List<string> ids = [];
        foreach (PlannedBox box in reasons)
        {
            if (box.RuleId is { } id && !ids.Contains(id))
            {
                ids.Add(id);
            }
        }

        return ids.ConvertAll(id => id + ": must be " + Asked(Evaluator.Rules.Find(id)) + " [" + Evaluator.Rules.Find(id).Citation + "]");
    }

    /// <summary>How measures are printed.</summary>
    public LengthUnits Units => Options.Evaluation.Units ?? Dwelling.Units;

    /// <summary>What a rule asks, in the units that the dwelling is marked in.</summary>
    public string Asked(Rule rule) => BothUnits.Of(rule.Summary, Units);

    /// <summary>Adds the boxes that findings of what is lacking offer, one finding after another.</summary>
    private void Cure(Predicate<Finding> which)
    {
        HashSet<string> given = new(StringComparer.Ordinal);
        for (int n = 0; n < MostCures; n++)
        {
            // What a thing needs beside it may serve the room as well; the other way round it may not.
            List<Finding> lacking = Found().FindAll(finding => finding is { Space.Cure.Count: > 0 } && IsLacking(finding) && which(finding) && !given.Contains(finding.RuleId + "|" + finding.Subject));
            Finding? next = lacking.Find(finding => Evaluator.Rules.Find(finding.RuleId) is FixtureOutlet) ?? (lacking.Count > 0 ? lacking[0] : null);
            if (next is null)
            {
                return;
            }

            given.Add(next.RuleId + "|" + next.Subject);
            Rule rule = Evaluator.Rules.Find(next.RuleId);
            foreach (PlacedBox placed in next.Space!.Cure)
            {
                TryAdd(placed.Address, placed.Box, "for " + next.Subject, rule);
            }
        }
    }

    /// <summary>Where a thing stands in plan may never be stated: then a box goes where it surely serves it.</summary>
    private bool IsLacking(Finding finding) =>
        finding.Outcome == Outcome.Fails || (finding is { Outcome: Outcome.Unknown, Needs: Facts.PlanPlace } && Evaluator.Rules.Find(finding.RuleId) is FixtureOutlet);

    private void Take(Dwelling dwelling)
    {
        Dwelling = dwelling;
        state = null;
    }

    private List<Finding> Found()
    {
        State.JudgeAll();
        List<Finding> found = [];
        State.CollectInto(found);
        return found;
    }

    private static bool IsOf(Finding finding, string room) => finding.Address == room || finding.Address.StartsWith(room + "/", StringComparison.Ordinal);
}
