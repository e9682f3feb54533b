using System.Text;

namespace BoxHeights;

/// <summary>A box that a plan added, and why.</summary>
[Told]
public sealed partial class PlannedBox
{
    /// <summary>The box's id.</summary>
    public string Id { get; }

    /// <summary>The surface it is on.</summary>
    public string Address { get; }

    /// <summary>Why it is there, in one clause.</summary>
    public string Reason { get; }

    /// <summary>The id of the rule that asks for it, or that ties it to a thing; null where only the planner's own practice does. <see cref="RoomPlan.Requirements"/> says what the rule asks.</summary>
    public string? RuleId { get; }

    /// <summary>The box and its reason.</summary>
    public override string ToString() => Id + " (" + Address + "): " + Reason;
}

/// <summary>A proposal: the dwelling with boxes added, why each is there, and what couldn't be planned. A planning aid, never an approval.</summary>
[Told]
public sealed partial class RoomPlan
{
    /// <summary>The dwelling with the planned boxes; what it had before is where it was.</summary>
    public Dwelling Dwelling { get; }

    /// <summary>The boxes that were added, in the order in which they were planned, each with its reason.</summary>
    public Items<PlannedBox> Reasons { get; }

    /// <summary>What the rules behind the boxes ask, each once: id, requirement, source.</summary>
    public Items<string> Requirements { get; }

    /// <summary>What couldn't be planned, a line each: stretches without a place for a box, things without room, findings that are left, and boxes that are required and have no place level with others.</summary>
    public Items<string> Obstacles { get; }

    /// <summary>What was left out although nothing is lacking, a line each, with what to describe for it: extras whose thing is missing, switches whose place is; and what isn't level because it is described so.</summary>
    public Items<string> Notes { get; }

    /// <summary>The plan as plain text: boxes with their reasons, what the rules behind them ask, what couldn't be planned, then what was left out.</summary>
    public string ToText()
    {
        StringBuilder text = new();
        text.Append(Dwelling.Name).Append(": ").Append(Reasons.Count).Append(Reasons.Count == 1 ? " box planned.\n" : " boxes planned.\n");
        foreach (PlannedBox box in Reasons)
        {
            text.Append("- ").Append(box).Append('\n');
        }

        foreach (string requirement in Requirements)
        {
            text.Append("* ").Append(requirement).Append('\n');
        }

        foreach (string obstacle in Obstacles)
        {
            text.Append("! ").Append(obstacle).Append('\n');
        }

        foreach (string note in Notes)
        {
            text.Append("? ").Append(note).Append('\n');
        }

        return text.Append(Scope.Caution).Append('\n').ToString();
    }

    /// <summary>How many boxes were planned, and how much couldn't be.</summary>
    public override string ToString() => Reasons.Count + (Reasons.Count == 1 ? " box" : " boxes") + " planned, " + Obstacles.Count + (Obstacles.Count == 1 ? " obstacle" : " obstacles");
}
