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

    private static Shape<StairPathLight> Light { get; } = new ShapeBuilder<StairPathLight>("stairPathLight", "One low light beside a flight.")
        .Required("tread", x => x.Tread, Texts.Count, "The tread that it lights, counted from 1 at the foot.", out MemberKey<int> tread)
        .Required("exact", x => x.Exact, Texts.Exact, "The place that the phase gives it, from the wall's left end.", out MemberKey<ExactDistance> exact)
        .Required("center", x => x.Center, Texts.Distance, "Where its box's center goes.", out MemberKey<Distance> center)
        .Made("stud", x => x.Stud, Texts.Count, "The stud that it is nailed to, counted from 1 at the left; absent where it needs blocking.", out MemberKey<int> stud)
        .Made("side", x => x.Side, Words.StudSide, "The side of that stud.", out MemberKey<StudSide> side)
        .Required("isDisplaced", x => x.IsDisplaced, Texts.Truth, "Whether a stud stands at its exact place, so that it is shifted farther than the adjustment allows.", out MemberKey<bool> displaced)
        .Required("reason", x => x.Reason, Texts.Plain, "What holds it, and why.", out MemberKey<string> why)
        .Build(v => new(v.Get(tread), v.Get(exact), v.Get(center), v.Find(stud), v.Find(side), v.Get(displaced), v.Get(why)));

    internal static Shape<StairLightPlan> StairLights { get; } = new ShapeBuilder<StairLightPlan>("stairLightPlan", "Lights beside a flight of stairs, on studs where they can be. A planning aid, never an approval.")
        .Required("flight", x => x.Flight, DwellingShapes.Flight, "The flight.", out MemberKey<StairFlight> flight)
        .Required("every", x => x.Every, Texts.Count, "One light on so many treads.", out MemberKey<int> every)
        .Required("startTread", x => x.StartTread, Texts.Count, "The tread of the first light, counted from 1.", out MemberKey<int> start)
        .Required("phase", x => x.Phase, Texts.Ratio, "Where on its tread each light sits: 0 at the nosing, 1 at the next.", out MemberKey<Ratio> phase)
        .Required("phasesTried", x => x.PhasesTried, Texts.Count, "At how many phases lights were counted.", out MemberKey<int> tried)
        .List("lights", x => x.Lights, (x, v) => new(x.Flight, x.Every, x.StartTread, x.Phase, v, x.PhasesTried, x.Reasons), Light, "The lights, from the foot up.")
        .List("reasons", x => x.Reasons, (x, v) => new(x.Flight, x.Every, x.StartTread, x.Phase, x.Lights, x.PhasesTried, v), Texts.Plain, "Why this interval and phase, and what has to be blocked.")
        .BuildDocument(v => new(v.Get(flight), v.Get(every), v.Get(start), v.Get(phase), default, v.Get(tried), default));
}
