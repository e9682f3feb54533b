using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Where people look for a light: in the middle of a room, of a basin, of a mirror. Common practice, no source.</summary>
internal static class Lights
{
    private static readonly Items<RoomKind> InTheMiddle = DeviceLists.Habitable.With(RoomKind.Hall).With(RoomKind.Foyer).With(RoomKind.Laundry).With(RoomKind.Pantry).With(RoomKind.Bathroom);

    // Where rooms that no document names are lit too: in a closet only by what is listed for it, wherever its shelves are.
    private static readonly Items<RoomKind> Lit = InTheMiddle.With(RoomKind.Kitchen).With(RoomKind.BreakfastRoom).With(RoomKind.Garage).With(RoomKind.Basement).With(RoomKind.Stair).With(RoomKind.Utility);

    private static DeviceBox InCeiling { get; } = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithKind(BoxKind.Octagon);

    public static RuleSet Rows { get; } = new(
    [
        // One that is further off than a joist's width and a bit is meant to be elsewhere.
        new RoomCenter("room-light-center", "in the middle of its room, where it is nearly there", Severity.Note, Citation.CommonPractice, Inches(1), Inches(6))
        {
            Scope = new RuleScope { Rooms = InTheMiddle.With(RoomKind.Closet) },
        },
        new UsualBox("usual-light", "lit from the middle of its ceiling", Citation.CommonPractice, InCeiling, Lit) { Instead = DeviceLists.Lights, OrSwitchedReceptacle = true },
        new UsualBox("usual-closet-light", "lit from the middle of its ceiling, by a luminaire listed for storage space", Citation.CommonPractice, InCeiling.WithLuminaire(LuminaireBuild.ForStorage), new[] { RoomKind.Closet })
        {
            Instead = DeviceLists.Lights,
        },

        // A stud in the middle keeps a box 3 in off it.
        new OnCenter("vanity-light-center", "over the middle of its basin or mirror, or between two", Severity.Note, Citation.CommonPractice, new[] { "basin", "mirror" }, Inches(3))
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.VanityLight }, ExceptExisting = true },
        },
    ]);

    private static Distance Inches(int whole) => Distance.FromInches(whole, 0, 1);
}
