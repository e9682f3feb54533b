using System.Collections.Generic;

namespace BoxHeights.Interop;

/// <summary>What an evaluation says.</summary>
internal static class ReportShapes
{
    private static Shape<EvaluationStamp> Stamp { get; } = new ShapeBuilder<EvaluationStamp>("evaluationStamp", "What an evaluation was made with.")
        .Required("rules", x => x.Rules, Texts.Plain, "Identifies the rules.", out MemberKey<string> rules)
        .Required("options", x => x.Options, Texts.Plain, "Identifies the options.", out MemberKey<string> options)
        .Required("catalog", x => x.Catalog, Texts.Plain, "Identifies the catalog of parts.", out MemberKey<string> catalog)
        .Required("library", x => x.Library, Texts.Plain, "The version of the library.", out MemberKey<string> library)
        .Build(v => new(v.Get(rules), v.Get(options), v.Get(catalog), v.Get(library)));

    private static Shape<Citation> Citation { get; } = new ShapeBuilder<Citation>("citation", "Where a number comes from.")
        .Required("document", x => x.Document, Texts.Plain, "The document, with its edition.", out MemberKey<string> document)
        .Usual("confidence", Confidence.Confirmed, x => x.Confidence, (x, v) => x with { Confidence = v }, Words.Confidence, "How sure it is that the number stands there; confirmed unless stated.")
        .Words("section", x => x.Section, (x, v) => x with { Section = v }, "The place in it.")
        .Build(v => new(v.Get(document)));

    private static Shape<ReportedRule> Rule { get; } = new ShapeBuilder<ReportedRule>("reportedRule", "A rule that findings are of.")
        .Required("id", x => x.Id, Texts.Plain, "Its id.", out MemberKey<string> id)
        .Required("summary", x => x.Summary, Texts.Plain, "What it asks, in one phrase.", out MemberKey<string> summary)
        .Required("citation", x => x.Citation, Citation, "Where that comes from.", out MemberKey<Citation> citation)
        .Build(v => new(v.Get(id), v.Get(summary), v.Get(citation)));

    private static Shape<WallStretch> Stretch { get; } = new ShapeBuilder<WallStretch>("wallStretch", "A stretch of a wall, or of a side of what stands free.")
        .Required("address", x => x.Address, Texts.Plain, "The address of the wall.", out MemberKey<string> address)
        .Required("left", x => x.Left, Texts.Distance, "Its left end, from the wall's left end.", out MemberKey<Distance> left)
        .Required("right", x => x.Right, Texts.Distance, "Its right end.", out MemberKey<Distance> right)
        .Build(v => new(v.Get(address), v.Get(left), v.Get(right)));

    private static Shape<WorstPoint> Worst { get; } = new ShapeBuilder<WorstPoint>("worstPoint", "The point of a run that is furthest from every outlet that counts.")
        .Required("address", x => x.Address, Texts.Plain, "The address of the wall.", out MemberKey<string> address)
        .Required("along", x => x.Along, Texts.Distance, "Where it is, from the wall's left end.", out MemberKey<Distance> along)
        .Required("away", x => x.Away, Texts.Distance, "How far the nearest outlet is along the run.", out MemberKey<Distance> away)
        .Build(v => new(v.Get(address), v.Get(along), v.Get(away)));

    private static Shape<LeastChange> Change { get; } = new ShapeBuilder<LeastChange>("leastChange", "The least move after which a rule is met.")
        .Required("amount", x => x.Amount, Texts.Distance, "How far.", out MemberKey<Distance> amount)
        .Required("direction", x => x.Direction, Words.ChangeDirection, "Which way.", out MemberKey<ChangeDirection> direction)
        .Build(v => new(v.Get(amount), v.Get(direction)));

    private static Shape<ReportedFinding> Finding { get; } = new ShapeBuilder<ReportedFinding>("reportedFinding", "Something that a rule doesn't allow, or can't decide, or that can't be.")
        .Required("rule", x => x.RuleId, Texts.Plain, "The id of the rule; \"layout-fault\" for a fault of the description.", out MemberKey<string> rule)
        .Required("subject", x => x.Subject, Texts.Plain, "The id of the box, room, flight or stretch of wall, or the address of the part at fault.", out MemberKey<string> subject)
        .Required("address", x => x.Address, Texts.Plain, "The address of the surface that it is on.", out MemberKey<string> address)
        .Required("verdict", x => x.Verdict, Words.Verdict, "Whether the rule isn't met, or can't be decided.", out MemberKey<Verdict> verdict)
        .Required("severity", x => x.Severity, Words.Severity, "How much it weighs.", out MemberKey<Severity> severity)
        .Required("message", x => x.Message, Texts.Plain, "The finding in one line.", out MemberKey<string> message)
        .Optional("at", x => x.At, (x, v) => x with { At = v }, Texts.Distance, "Where along its wall it was judged.")
        .Optional("height", x => x.Height, (x, v) => x with { Height = v }, Texts.Height, "The height at which it was judged.")
        .Optional("measured", x => x.Measured, (x, v) => x with { Measured = v }, Quantities.One, "What was measured.")
        .Optional("allowed", x => x.Allowed, (x, v) => x with { Allowed = v }, Quantities.Set, "What is allowed, in the same terms.")
        .Optional("margin", x => x.Margin, (x, v) => x with { Margin = v }, Quantities.One, "How far it is from being met: negative, or zero where it only depends on something.")
        .Optional("leastChange", x => x.LeastChange, (x, v) => x with { LeastChange = v }, Change, "The least move of the box after which it is met.")
        .List("needs", x => FactsOf(x.Needs), (x, v) => x with { Needs = Together(v) }, Words.Fact, "What would have to be known to decide.")
        .List("disputedBy", x => x.DisputedBy, (x, v) => x with { DisputedBy = v }, Texts.Plain, "The readings of the rule's text under which it would be met.")
        .List("involves", x => x.Involves, (x, v) => x with { Involves = v }, Texts.Plain, "The ids or addresses of whatever else it is about.")
        .List("stretches", x => x.Stretches, (x, v) => x with { Stretches = v }, Stretch, "The stretches that lack something.")
        .Optional("worst", x => x.Worst, (x, v) => x with { Worst = v }, Worst, "The point that is furthest from every outlet.")
        .Optional("fault", x => x.Fault, (x, v) => x with { Fault = v }, Words.LayoutFault, "What kind of fault of the description it is.")
        .Optional("notJudgedBecause", x => x.NotJudgedBecause, (x, v) => x with { NotJudgedBecause = v }, Texts.Plain, "Why the rule couldn't be judged at all.")
        .Build(v => new(v.Get(rule), v.Get(subject), v.Get(address), v.Get(verdict), v.Get(severity), v.Get(message)));

    private static Shape<PlacedBox> Placed { get; } = new ShapeBuilder<PlacedBox>("placedBox", "A box and its surface.")
        .Required("address", x => x.Address, Texts.Plain, "The address of the surface.", out MemberKey<string> address)
        .Required("box", x => x.Box, BoxShapes.Box, "The box.", out MemberKey<DeviceBox> box)
        .Build(v => new(v.Get(address), v.Get(box)));

    private static Shape<ReportedRemedy> Remedy { get; } = new ShapeBuilder<ReportedRemedy>("reportedRemedy", "What would mend a cause.")
        .Required("kind", x => x.Kind, Words.RemedyKind, "What it does.", out MemberKey<RemedyKind> kind)
        .Required("text", x => x.Text, Texts.Plain, "What to do, in one line.", out MemberKey<string> text)
        .List("boxes", x => x.Boxes, (x, v) => x with { Boxes = v }, Texts.Plain, "The boxes that it changes, or that nothing was found for.")
        .Optional("height", x => x.Height, (x, v) => x with { Height = v }, Texts.Height, "The height that it sets them to.")
        .Optional("along", x => x.Along, (x, v) => x with { Along = v }, Texts.Distance, "The place along the wall that it sets one to.")
        .Optional("plan", x => x.Plan, (x, v) => x with { Plan = v }, PlanPointCodec.Instance, "The place in plan that it sets one to.")
        .Optional("mounting", x => x.Mounting, (x, v) => x with { Mounting = v }, BoxShapes.Mounting, "How the box is held then.")
        .Optional("boxKind", x => x.BoxKind, (x, v) => x with { BoxKind = v }, Kinds.BoxKind, "The kind of box to take instead.")
        .Optional("size", x => x.Size, (x, v) => x with { Size = v }, BoxShapes.Size, "Their size with its new depth.")
        .Optional("volume", x => x.Volume, (x, v) => x with { Volume = v }, Texts.Volume, "The volume to be marked on them, at least.")
        .Optional("projection", x => x.Projection, (x, v) => x with { Projection = v }, Texts.Distance, "From the face of the framing to their front edge.")
        .List("added", x => x.Added, (x, v) => x with { Added = v }, Placed, "The boxes that it adds.")
        .Optional("reason", x => x.Reason, (x, v) => x with { Reason = v }, Words.NoRemedyReason, "Why there is none.")
        .List("conflicting", x => x.Conflicting, (x, v) => x with { Conflicting = v }, Texts.Plain, "The rules that leave no place together.")
        .Build(v => new(v.Get(kind), v.Get(text)));

    private static Shape<ReportedCause> Cause { get; } = new ShapeBuilder<ReportedCause>("reportedCause", "Findings that share one remedy.")
        .Required("title", x => x.Title, Texts.Plain, "The cause in one line.", out MemberKey<string> title)
        .List("findings", x => x.Findings, (x, v) => x with { Findings = v }, Texts.Count, "The places of its findings in the list of all, counted from 1.")
        .List("remedies", x => x.Remedies, (x, v) => x with { Remedies = v }, Remedy, "What would mend it, best first.")
        .Build(v => new(v.Get(title)));

    internal static Shape<EvaluationReport> Report { get; } = new ShapeBuilder<EvaluationReport>("evaluationReport", "What an evaluation says. A planning aid, never an approval.")
        .Required("dwelling", x => x.Dwelling, Texts.Plain, "The name of the dwelling.", out MemberKey<string> dwelling)
        .Required("stamp", x => x.Stamp, Stamp, "What it was made with.", out MemberKey<EvaluationStamp> stamp)
        .Usual("units", LengthUnits.Inches, x => x.Units, (x, v) => x with { Units = v }, Words.LengthUnits, "The units in which texts print measures; inches unless stated.")
        .List("rules", x => x.Rules, (x, v) => x with { Rules = v }, Rule, "The rules that findings are of, each once.")
        .List("findings", x => x.Findings, (x, v) => x with { Findings = v }, Finding, "The findings.")
        .List("causes", x => x.Causes, (x, v) => x with { Causes = v }, Cause, "The findings grouped by what they share, the heaviest first.")
        .List("notJudged", x => x.NotJudged, (x, v) => x with { NotJudged = v }, Texts.Plain, "What in this dwelling couldn't be judged.")
        .List("notChecked", x => x.NotChecked, (x, v) => x with { NotChecked = v }, Texts.Plain, "What no rule looks at.")
        .BuildDocument(v => new(v.Get(dwelling), v.Get(stamp)));

    private static Items<MissingFacts> FactsOf(MissingFacts facts)
    {
        List<MissingFacts> some = [];
        for (int bit = 0; bit < 31; bit++)
        {
            if (((int)facts & (1 << bit)) != 0)
            {
                some.Add((MissingFacts)(1 << bit));
            }
        }

        return new(some);
    }

    private static MissingFacts Together(Items<MissingFacts> some)
    {
        MissingFacts all = MissingFacts.None;
        foreach (MissingFacts one in some)
        {
            all |= one;
        }

        return all;
    }
}
