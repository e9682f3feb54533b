using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What a good crew does, whether or not a document asks for it. Common practice, no source.</summary>
internal static class TradePractice
{
    public static RuleSet Rows { get; } = new(
    [
        new BoardSeam("board-seam", "cut into one sheet of wall board, not across a seam", Severity.Advice, Citation.CommonPractice)
        {
            NoteUnder = Distance.FromInches(0, 1, 2),
            Scope = RuleScope.Walls,
        },
        new SpecifiedHeight("specified-height", "set where the drawing asks for it", Severity.Advice, Citation.CommonPractice, Quarter),
        new UniformLevel("uniform-level", "level with the other boxes of its purpose in the storey", Severity.Advice, Citation.CommonPractice, Quarter)
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Counter }, ExceptExisting = true },
        },
        Habit("general-height", "about knee high, as receptacles are usually set", BoxPurpose.General, 16,
            TargetLine.BoxBottom, 12, TargetLine.Center, 18),
        Habit("switch-height", "about chest high, as switches are usually set", BoxPurpose.Switch, 48,
            TargetLine.BoxTop, 42, TargetLine.BoxTop, 52),
        Habit("counter-height", "a hand above the counter, as counter receptacles are usually set", BoxPurpose.Counter, 48,
            TargetLine.Center, 42, TargetLine.BoxTop, 52),
    ]);

    private static Distance Quarter => Distance.FromInches(0, 1, 4);

    /// <summary>A usual height to the top of the box above the subfloor, with the spread in which nobody would remark on it.</summary>
    private static HeightBand Habit(string id, string summary, BoxPurpose purpose, int top, TargetLine lowLine, int low, TargetLine highLine, int high) =>
        new(id, summary, Severity.Note, Citation.CommonPractice, Datum.Subfloor)
        {
            LowLine = lowLine,
            Low = Distance.FromInches(low, 0, 1),
            HighLine = highLine,
            High = Distance.FromInches(high, 0, 1),
            Preferred = BoxHeight.ToTop(Distance.FromInches(top, 0, 1), Datum.Subfloor),
            YieldsWhenForced = true,
            Scope = RuleScope.Walls with { Purposes = new[] { purpose }, ExceptExisting = true },
        };
}
