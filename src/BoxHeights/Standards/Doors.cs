using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Switches and thermostats beside doors, and the wall that is seen between a plate and casing. Common practice, no source.</summary>
internal static class Doors
{
    // After what it is made from: static members are made in the order in which they stand.
    private static RuleScope UsedAtTheDoor { get; } = RuleScope.Walls with { Devices = DeviceLists.Switches.With(DeviceKind.Thermostat), ExceptExisting = true };

    public static RuleSet Rows { get; } = new(
    [
        new KeepClear("casing-gap", "with 1/4 in or more of wall to be seen between plate and casing", Severity.Note, Citation.CommonPractice, WallPieces.Casings)
        {
            Least = Distance.FromInches(0, 1, 4),
            Scope = RuleScope.Walls with { ExceptExisting = true },
        },
        new KeepClear("behind-open-door", "clear of the door that opens onto the wall", Severity.Advice, Citation.CommonPractice, WallPieces.OpenLeaves) { Covers = "door swings", Scope = UsedAtTheDoor },
        new KeepClear("behind-barn-door", "clear of the wall that a barn door's panel covers when it is open", Severity.Advice, Citation.CommonPractice, WallPieces.OpenPanels) { Covers = "door swings", Scope = UsedAtTheDoor },
    ]);
}
