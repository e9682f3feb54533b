using System;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>NFPA 70, National Electrical Code, editions 2017 to 2026.</summary>
internal static class Nec
{
    private static Items<DeviceKind> Switches { get; } = new[]
    {
        DeviceKind.Switch, DeviceKind.ThreeWaySwitch, DeviceKind.FourWaySwitch, DeviceKind.Dimmer, DeviceKind.ToggleSwitch, DeviceKind.FanControl,
    };

    public static RuleSet Dwelling(NecEdition edition)
    {
        if (edition is not (NecEdition.Nec2017 or NecEdition.Nec2020 or NecEdition.Nec2023 or NecEdition.Nec2026))
        {
            throw new ArgumentOutOfRangeException(nameof(edition), edition, "There are rows for the editions 2017, 2020, 2023 and 2026.");
        }

        string document = "NEC " + (int)edition;
        // The 2026 text of both sections hasn't been read: the rows carry 2023 over.
        Confidence confidence = edition == NecEdition.Nec2026 ? Confidence.FromMemory : Confidence.Confirmed;
        GroundCounting grounds = edition == NecEdition.Nec2017 ? GroundCounting.AllAsOne : GroundCounting.QuarterBeyondFour;
        FillLimit fill = new("box-fill", "large enough for its conductors, clamps, devices and grounds", Severity.Violation, new(document, "314.16(A), (B)", confidence), grounds);
        return new(
        [
            new HeightBand("switch-reach", "at most 6 ft 7 in above the floor to the grip at its highest", Severity.Violation, new(document, "404.8(A)", confidence), Datum.FinishedFloor)
            {
                HighLine = TargetLine.GripAtHighest,
                High = Distance.FromFeetInches(6, 7),
                Scope = RuleScope.Walls with { Devices = Switches },
            },
            fill with
            {
                Readings = new[] { new Reading("flap-is-clamp", "the molded flap of a plastic box counts as an internal clamp", fill with { FlapIsClamp = true }) },
            },
        ]);
    }
}
