using System.Linq;

namespace BoxHeights.Tests.Rules;

/// <summary>Rooms and faces that have to have an outlet, with one somewhere.</summary>
internal static class RequiredOutletSketch
{
    public static Dwelling Front(Distance center) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[]
    {
        new OutsideFace("front").WithWalls(new[] { new Wall("face", In("300")).WithBoxes(new[] { Receptacle(In("60"), "0").WithPurpose(BoxPurpose.Exterior).WithHeight(BoxHeight.ToCenter(center, Datum.Grade)) }) }),
    });

    /// <summary>A deck 30 in above grade from 100 to 250 in, with a receptacle so high above it, or only one far from it.</summary>
    public static Dwelling Deck(Distance? gap, Distance? aboveDeck) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("36")) }).WithOutside(new[]
    {
        new OutsideFace("side").WithPlatforms(new[] { new Platform("deck", PlatformKind.Deck, In("100"), In("250")).WithGap(gap).WithSurface(new Level(In("30"), Datum.Grade)) }).WithWalls(new[]
        {
            new Wall("face", In("300")).WithBoxes(new[] { Receptacle(aboveDeck is null ? In("20") : In("150"), "0").WithPurpose(BoxPurpose.Exterior).WithHeight(BoxHeight.ToCenter(In("30") + (aboveDeck ?? In("20")), Datum.Grade)) }),
        }),
    });

    /// <summary>An outside face with doors 36 in wide, by their left ends in inches, and lights.</summary>
    public static Dwelling Entrances(int[] doors, Distance[] lights) => new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[]
    {
        new OutsideFace("front").WithWalls(new[]
        {
            new Wall("face", In("900")).WithOpenings(doors.Select((left, i) => new Opening("door-" + i, OpeningKind.Door, Distance.FromInches(left), Distance.FromInches(left + 36))).ToArray())
                .WithBoxes(lights.Select((at, i) => SquareRoom.Box("luminaire", "light", at, In("66")).WithId("light-" + i).WithHeight(BoxHeight.ToCenter(In("66"), Datum.Subfloor))).Append(SquareRoom.Box("doorbell-button", "doorbell", In("450"), In("44")).WithId("bell").WithHeight(BoxHeight.ToCenter(In("44"), Datum.Subfloor))).ToArray()),
        }),
    });

    /// <summary>A bath whose basin is 18 in wide, its left end so far from the corner, with so much counter left behind it.</summary>
    public static SquareRoom Bath(Distance left, Distance? behind) => new()
    {
        NorthCounters =
        [
            new Counter("vanity", CounterKind.Bath, left, left + In("18")).WithTop(new Level(In("34"), Datum.FinishedFloor)).WithDepth(In("22"))
                .WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Basin, left, left + In("18")).WithBehind(behind) }),
        ],
    };

    /// <summary>Basins from 12 to 30 in and from 42 to 60 in, right at the wall, and a receptacle.</summary>
    public static SquareRoom TwoBasins(string at) => new()
    {
        NorthCounters =
        [
            new Counter("vanity", CounterKind.Bath, In("6"), In("90")).WithTop(new Level(In("34"), Datum.FinishedFloor)).WithDepth(In("22")).WithInterruptions(new[]
            {
                new CounterInterruption(InterruptionKind.Basin, In("12"), In("30")).WithBehind(In("0")), new CounterInterruption(InterruptionKind.Basin, In("42"), In("60")).WithBehind(In("0")),
            }),
        ],
        North = [Receptacle(In(at), "44")],
    };

    public static DeviceBox Receptacle(Distance at, string center) => SquareRoom.Box("gfci-receptacle", "bath", at, In(center));

    public static Evaluation Evaluate(NecEdition edition, string rule, Dwelling house) => new LayoutEvaluator(OneBox.Only(RuleSets.UnitedStatesOutlets(edition), rule)).Evaluate(house);
}
