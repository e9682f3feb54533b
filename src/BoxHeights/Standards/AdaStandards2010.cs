using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>2010 ADA Standards for Accessible Design: reach ranges, 308, and who is left out by 205.1.</summary>
internal static class AdaStandards2010
{
    // Before the rows: static members are made in the order in which they stand.
    private static Items<DeviceKind> Operated { get; } = new[]
    {
        DeviceKind.Switch, DeviceKind.ThreeWaySwitch, DeviceKind.FourWaySwitch, DeviceKind.Dimmer, DeviceKind.ToggleSwitch, DeviceKind.FanControl,
        DeviceKind.DuplexReceptacle, DeviceKind.GfciReceptacle, DeviceKind.SplitReceptacle, DeviceKind.SingleReceptacle,
        DeviceKind.DecoratorReceptacle, DeviceKind.UsbReceptacle, DeviceKind.Thermostat, DeviceKind.DoorbellButton, DeviceKind.DataJack, DeviceKind.TvJack,
    };

    public static RuleSet Rows { get; } = new(
    [
        new HeightBand("ada-reach", "within reach: operable parts 15 in to 48 in above the finished floor, lower over what is in the way", Severity.Violation,
            new("2010 ADA Standards", "308.2, 308.3; 205.1 exceptions 2 and 4"), Datum.FinishedFloor)
        {
            LowLine = TargetLine.LowestOperable,
            Low = Inches(15),
            HighLine = TargetLine.HighestOperable,
            High = Inches(48),
            Over = new()
            {
                Forward = new ReachStep[] { new(Inches(20), Inches(48)), new(Inches(25), Inches(44)) },
                Side = new ReachStep[] { new(Inches(10), Inches(48)), new(Inches(24), Inches(46)) },
                SideTopAtMost = Inches(34),
                LaundryTopAtMost = Inches(36),
            },

            // Dedicated outlets are left out by exception 2 and floor receptacles by exception 4.
            Scope = RuleScope.Walls with { ExceptDedicated = true, Devices = Operated },
        },
    ]);

    private static Distance Inches(int whole) => Distance.FromInches(whole, 0, 1);
}
