namespace BoxHeights.Interop;

/// <content>What results are made of.</content>
internal static partial class Words
{
    internal static readonly Codec<Verdict> Verdict = new WordCodec<Verdict>(
        "verdict", "why there is a finding", (BoxHeights.Verdict.Unknown, "unknown"), (BoxHeights.Verdict.Fails, "fails"));

    internal static readonly Codec<Severity> Severity = new WordCodec<Severity>(
        "severity", "how much a finding weighs", (BoxHeights.Severity.Note, "note"), (BoxHeights.Severity.Advice, "advice"), (BoxHeights.Severity.Violation, "violation"));

    internal static readonly Codec<Confidence> Confidence = new WordCodec<Confidence>(
        "confidence", "how sure a number is", (BoxHeights.Confidence.Confirmed, "confirmed"), (BoxHeights.Confidence.FromMemory, "from-memory"),
        (BoxHeights.Confidence.Derived, "derived"), (BoxHeights.Confidence.CommonPractice, "common-practice"));

    internal static readonly Codec<ChangeDirection> ChangeDirection = new WordCodec<ChangeDirection>(
        "changeDirection", "which way a box is moved", (BoxHeights.ChangeDirection.Up, "up"), (BoxHeights.ChangeDirection.Down, "down"),
        (BoxHeights.ChangeDirection.Left, "left"), (BoxHeights.ChangeDirection.Right, "right"));

    internal static readonly Codec<RemedyKind> RemedyKind = new WordCodec<RemedyKind>(
        "remedyKind", "what a remedy does", (BoxHeights.RemedyKind.None, "none"), (BoxHeights.RemedyKind.Move, "move"), (BoxHeights.RemedyKind.Add, "add"),
        (BoxHeights.RemedyKind.Resize, "resize"), (BoxHeights.RemedyKind.Projection, "projection"), (BoxHeights.RemedyKind.Blocking, "blocking"), (BoxHeights.RemedyKind.Mounting, "mounting"));

    internal static readonly Codec<LayoutFaultKind> LayoutFault = new WordCodec<LayoutFaultKind>(
        "layoutFault", "what can't be about a description", (LayoutFaultKind.DuplicateId, "duplicate-id"), (LayoutFaultKind.UnknownReference, "unknown-reference"),
        (LayoutFaultKind.OutsideItsWall, "outside-its-wall"), (LayoutFaultKind.NoExtent, "no-extent"), (LayoutFaultKind.OverlappingOpenings, "overlapping-openings"),
        (LayoutFaultKind.NoHeight, "no-height"), (LayoutFaultKind.BeyondMeasure, "beyond-measure"), (LayoutFaultKind.Contradiction, "contradiction"),
        (LayoutFaultKind.DoesNotClose, "does-not-close"), (LayoutFaultKind.MisspelledKind, "misspelled-kind"), (LayoutFaultKind.UnknownKind, "unknown-kind"),
        (LayoutFaultKind.NoPlace, "no-place"), (LayoutFaultKind.OutsideItsRoom, "outside-its-room"));

    internal static readonly Codec<MissingFacts> Fact = new WordCodec<MissingFacts>(
        "fact", "what may be missing from a description", (MissingFacts.FloorFinish, "floor-finish"), (MissingFacts.BoxSize, "box-size"), (MissingFacts.EdgeMeant, "edge-meant"), (MissingFacts.Along, "along"),
        (MissingFacts.Devices, "devices"), (MissingFacts.Approach, "approach"), (MissingFacts.KneeSpace, "knee-space"), (MissingFacts.ObstructionDepth, "obstruction-depth"),
        (MissingFacts.ObstructionHeight, "obstruction-height"), (MissingFacts.Ceiling, "ceiling"), (MissingFacts.Clamps, "clamps"), (MissingFacts.Datum, "datum"), (MissingFacts.OperableParts, "operable-parts"),
        (MissingFacts.BoxVolume, "box-volume"), (MissingFacts.TapeReading, "tape-reading"), (MissingFacts.BrokenPart, "broken-part"), (MissingFacts.OpenInside, "open-inside"),
        (MissingFacts.FinishThickness, "finish-thickness"), (MissingFacts.Combustible, "combustible"), (MissingFacts.FloorLine, "floor-line"), (MissingFacts.PlanPlace, "plan-place"), (MissingFacts.Rim, "rim"),
        (MissingFacts.Barrier, "barrier"), (MissingFacts.Enclosure, "enclosure"), (MissingFacts.ServedFromOutside, "served-from-outside"), (MissingFacts.FireProtection, "fire-protection"),
        (MissingFacts.Boards, "boards"), (MissingFacts.CounterThickness, "counter-thickness"), (MissingFacts.HeaderHeight, "header-height"));
}
