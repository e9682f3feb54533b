using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What no set leaves out: a box that keeps the counter from being set, the room that added boxes are given, and where entrances get their switches. Common practice, no source.</summary>
internal static class InEverySet
{
    /// <summary>The top of a receptacle as it is usually set, 16 in, and what frames an opening above it.</summary>
    public static Distance SillOverReceptacles { get; } = Distance.FromInches(20);

    /// <summary>Twenty inches over a counter of 36 in, and what frames an opening above it.</summary>
    public static Distance SillOverCounters { get; } = Distance.FromInches(58);

    /// <summary>A wall of 6 ft gets a receptacle of its own.</summary>
    public static Distance OneToEachWall { get; } = Distance.FromFeet(6);

    /// <summary>A guard leaves no gap that a 4 in ball passes (International Residential Code R312.1.3): what ends as near as that to a wall meets it.</summary>
    public static Distance MeetsWithin { get; } = Distance.FromInches(4);

    /// <summary>One light from several places: a three-way switch at the first and the last of them, four-way ones between.</summary>
    public static SwitchesAtEntrances Switches { get; } = new("entrance-switches", "on the latch side of each entrance, within 24 in of it", Citation.CommonPractice,
        new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithHeight(TradePractice.HeightFor(BoxPurpose.Switch)))
    {
        AtEnds = DeviceKind.ThreeWaySwitch,
        Between = DeviceKind.FourWaySwitch,
        Lights = DeviceLists.Lights,
        Alone = new[] { BoxPurpose.VanityLight },
        Passages = new[] { RoomKind.Hall },
        FarEnd = Distance.FromFeet(15),
        FewSteps = Distance.FromFeet(5),
        WithinReach = Distance.FromInches(24),
        CasingGap = Distance.FromInches(0, 1, 2),
        BeyondLeaf = Distance.FromInches(3),

        // Jack and king, two dressed 2-bys.
        StudsBeside = Distance.FromInches(3),
        Board = Distance.FromInches(0, 1, 2),
        Pack = Distance.FromInches(1, 1, 2),
        PackName = "2-by",
        Heights = new(Distance.FromInches(40), Distance.FromInches(52)),
        Inward = new[] { RoomKind.Bedroom, RoomKind.Office, RoomKind.Laundry, RoomKind.Utility, RoomKind.Bathroom },
    };

    public static RuleSet Rows { get; } = new(
    [
        new KeepClear("counter-edge", "with its box and plate over or under a countertop and on or off its splash, not across an edge, where the counter can't be set",
            Severity.Advice, Citation.CommonPractice, WallPieces.Countertops)
        {
            UsualTopThickness = new(Distance.FromInches(0, 1, 4), Distance.FromInches(1, 1, 2)),
            Scope = RuleScope.Walls,
        },
        new RoomForBoxes("room-for-boxes", "6 in or more from openings and other boxes, and 8 in from the ends of its wall, where it is added", Citation.CommonPractice)
        {
            // Beside an opening stand a jack and a king stud, and the box is nailed to the king.
            Beside = Distance.FromInches(6),
            InNeed = Distance.FromInches(2),
            FromEnds = Distance.FromInches(8),

            // A usual box of 2-3/4 in less 1/2 in of board. Furring is shallower.
            Behind = Distance.FromInches(2, 1, 4),
            AtStairs = Distance.FromInches(12),
            Aside = Distance.FromFeet(3),
            PartOfReach = 6,
            OfReach = Distance.FromInches(6),
            BesideThings = Distance.FromInches(8),
            BetweenPlates = Distance.FromInches(0, 1, 2),
            NextBay = Distance.FromInches(16),
        },
        Switches,
    ]);
}
