using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Where people look for a light: in the middle of a room, of a basin, of a mirror. Common practice, no source.</summary>
internal static class Lights
{
    private static readonly Items<RoomKind> InTheMiddle = DeviceLists.Habitable.With(RoomKind.Hall).With(RoomKind.Foyer).With(RoomKind.Laundry).With(RoomKind.Pantry).With(RoomKind.Closet).With(RoomKind.Bathroom);

    public static RuleSet Rows { get; } = new(
    [
        // One that is further off than a joist's width and a bit is meant to be elsewhere.
        new RoomCenter("room-light-center", "in the middle of its room, where it is nearly there", Severity.Note, Citation.CommonPractice, Inches(1), Inches(6))
        {
            Scope = new RuleScope { Rooms = InTheMiddle },
        },

        // A stud in the middle keeps a box 3 in off it.
        new OnCenter("vanity-light-center", "over the middle of its basin or mirror, or between two", Severity.Note, Citation.CommonPractice, new[] { "basin", "mirror" }, Inches(3))
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.VanityLight }, ExceptExisting = true },
        },
    ]);

    private static Distance Inches(int whole) => Distance.FromInches(whole, 0, 1);
}
