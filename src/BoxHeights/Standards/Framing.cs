using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What framing asks of boxes. Common practice, no source: any box can be blocked, so nothing here is more than advice.</summary>
internal static class Framing
{
    // Takes in stand-offs of up to 1/8 in, the spread of box widths and marks on quarter inches.
    private static readonly Distance OnTheFace = Distance.FromInches(0, 1, 4);

    public static RuleSet Rows { get; } = new(
    [
        // 1/2 in is what a cut-in box's ears need.
        new HeldByFraming("framing-fit", "where its way of mounting can hold it", Severity.Advice, Citation.CommonPractice, FramingHold.Mounting) { Within = OnTheFace, Clear = Distance.FromInches(0, 1, 2), Scope = OnWalls },

        // From memory: the web takes a screw, the open side wants a bracket.
        new HeldByFraming("web-side", "on the web of a metal stud, not on its open side", Severity.Advice, Citation.CommonPractice, FramingHold.Web) { Within = OnTheFace, Scope = OnWalls },
        new HeldByFraming("bar-span", "in a bay that its bar spans", Severity.Advice, Citation.CommonPractice, FramingHold.Bay) { Scope = OnWalls },

        // Of two-bys, a 2 × 6 to a 2 × 12 on edge.
        new KeepClear("in-cavity", "clear of what fills the wall: headers, posts, ducts, pockets", Severity.Advice, Citation.CommonPractice, WallPieces.FilledCavity)
        {
            Headers = new(Distance.FromInches(5, 1, 2), Distance.FromInches(11, 1, 4)),
            Scope = OnWalls,
        },
        new CavityDepth("cavity-depth", "no deeper than the wall", Severity.Advice, Citation.CommonPractice) { Scope = OnWalls },
        new BoxAgainstBox("next-box", "clear of the other boxes on its wall", Severity.Advice, Citation.CommonPractice, BoxPairs.OnOneFace) { Scope = RuleScope.Walls },
        new BoxAgainstBox("back-to-back", "clear of the boxes on the other side of its wall", Severity.Advice, Citation.CommonPractice, BoxPairs.BackToBack) { Scope = RuleScope.Walls },
    ]);

    private static RuleScope OnWalls => RuleScope.Walls with { ExceptExisting = true };
}
