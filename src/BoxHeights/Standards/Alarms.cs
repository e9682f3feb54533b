using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Smoke and carbon monoxide alarms on walls: NFPA 72, and what makers' instructions still ask for.</summary>
internal static class Alarms
{
    public static RuleSet Rows { get; } = new(
    [
        new HeightBand("wall-alarm", "with its top at most 12 in below the ceiling", Severity.Violation, new("NFPA 72", "17.7.3.2.1"), Datum.FinishedCeiling)
        {
            LowLine = TargetLine.HighestOperable,
            Low = -Distance.FromInches(12, 0, 1),
            Scope = RuleScope.Walls with { Devices = DeviceLists.SmokeAlarms },
        },
        new HeightBand("wall-alarm-air", "with its top 4 in or more below the ceiling, as makers' instructions ask", Severity.Note,
            new("makers' instructions"), Datum.FinishedCeiling)
        {
            HighLine = TargetLine.HighestOperable,
            High = -Distance.FromInches(4, 0, 1),
            Scope = RuleScope.Walls with { Devices = DeviceLists.SmokeAlarms },
        },
    ]);
}
