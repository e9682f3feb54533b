namespace BoxHeights.Interop;

/// <content>What results are made of.</content>
internal static partial class Words
{
    internal static readonly Codec<Verdict> Verdict = new WordCodec<Verdict>("verdict", "why there is a finding", BoxHeights.Verdict.Passes);

    internal static readonly Codec<Severity> Severity = new WordCodec<Severity>("severity", "how much a finding weighs");

    internal static readonly Codec<Confidence> Confidence = new WordCodec<Confidence>("confidence", "how sure a number is");

    internal static readonly Codec<ChangeDirection> ChangeDirection = new WordCodec<ChangeDirection>("changeDirection", "which way a box is moved");

    internal static readonly Codec<RemedyKind> RemedyKind = new WordCodec<RemedyKind>("remedyKind", "what a remedy does");

    internal static readonly Codec<NoRemedyReason> NoRemedyReason = new WordCodec<NoRemedyReason>("noRemedyReason", "why there is no remedy", BoxHeights.NoRemedyReason.NotJudged, BoxHeights.NoRemedyReason.FaultyDescription);

    internal static readonly Codec<LayoutFaultKind> LayoutFault = new WordCodec<LayoutFaultKind>("layoutFault", "what can't be about a description");

    internal static readonly Codec<MissingFacts> Fact = new WordCodec<MissingFacts>("fact", "what may be missing from a description", MissingFacts.None);
}
