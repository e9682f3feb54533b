namespace BoxHeights.Interop;

/// <summary>Plans.</summary>
internal static class PlanShapes
{
    private static Shape<PlannedBox> Planned { get; } = new ShapeBuilder<PlannedBox>("plannedBox", "A box that a plan added, and why.")
        .Required("id", x => x.Id, Texts.Plain, "Its id.", out MemberKey<string> id)
        .Required("address", x => x.Address, Texts.Plain, "The surface it is on.", out MemberKey<string> address)
        .Required("reason", x => x.Reason, Texts.Plain, "Why it is there.", out MemberKey<string> reason)
        .Optional("rule", x => x.RuleId, (x, v) => new(x.Id, x.Address, x.Reason, v), Texts.Plain, "The id of the rule that asks for it.")
        .Build(v => new(v.Get(id), v.Get(address), v.Get(reason), null));

    internal static Shape<RoomPlan> Plan { get; } = new ShapeBuilder<RoomPlan>("roomPlan", "A proposal: the dwelling with boxes added, and why each is there. A planning aid, never an approval.")
        .Required("dwelling", x => x.Dwelling, DwellingShapes.Dwelling, "The dwelling with the planned boxes.", out MemberKey<Dwelling> dwelling)
        .List("reasons", x => x.Reasons, (x, v) => new(x.Dwelling, v, x.Requirements, x.Obstacles, x.Notes), Planned, "The boxes that were added, each with its reason.")
        .List("requirements", x => x.Requirements, (x, v) => new(x.Dwelling, x.Reasons, v, x.Obstacles, x.Notes), Texts.Plain, "What the rules behind them ask.")
        .List("obstacles", x => x.Obstacles, (x, v) => new(x.Dwelling, x.Reasons, x.Requirements, v, x.Notes), Texts.Plain, "What couldn't be planned.")
        .List("notes", x => x.Notes, (x, v) => new(x.Dwelling, x.Reasons, x.Requirements, x.Obstacles, v), Texts.Plain, "What was left out though nothing is lacking for it.")
        .BuildDocument(v => new(v.Get(dwelling), default, default, default, default));
}
