using System;

namespace BoxHeights.Interop;

/// <summary>The open lists of kinds. The examples are a few that the library knows; any other name will do.</summary>
internal static class Kinds
{
    internal static Codec<Occupancy> Occupancy { get; } =
        Kind("occupancy", "a kind of building", x => new(x), x => x.Name, BoxHeights.Occupancy.OneFamily, BoxHeights.Occupancy.TwoFamily);

    internal static Codec<RoomKind> RoomKind { get; } =
        Kind("roomKind", "a kind of room", x => new(x), x => x.Name, BoxHeights.RoomKind.Kitchen, BoxHeights.RoomKind.LivingRoom);

    internal static Codec<CounterKind> CounterKind { get; } =
        Kind("counterKind", "a kind of counter", x => new(x), x => x.Name, BoxHeights.CounterKind.Kitchen, BoxHeights.CounterKind.Bath);

    internal static Codec<InterruptionKind> InterruptionKind { get; } =
        Kind("interruptionKind", "a kind of interruption", x => new(x), x => x.Name, BoxHeights.InterruptionKind.Sink, BoxHeights.InterruptionKind.Range);

    internal static Codec<CoveringKind> CoveringKind { get; } =
        Kind("coveringKind", "a kind of covering", x => new(x), x => x.Name, BoxHeights.CoveringKind.WallCabinet, BoxHeights.CoveringKind.Mirror);

    internal static Codec<FinishKind> FinishKind { get; } =
        Kind("finishKind", "a kind of finish", x => new(x), x => x.Name, BoxHeights.FinishKind.Tile, BoxHeights.FinishKind.Wainscot);

    internal static Codec<FixtureKind> FixtureKind { get; } =
        Kind("fixtureKind", "a kind of fixture", x => new(x), x => x.Name, BoxHeights.FixtureKind.Tub, BoxHeights.FixtureKind.Refrigerator);

    internal static Codec<FreestandingKind> FreestandingKind { get; } =
        Kind("freestandingKind", "a kind of thing that stands free", x => new(x), x => x.Name, BoxHeights.FreestandingKind.Island, BoxHeights.FreestandingKind.HalfWall);

    internal static Codec<NoCavityKind> NoCavityKind { get; } =
        Kind("noCavityKind", "a kind of obstacle in a wall", x => new(x), x => x.Name, BoxHeights.NoCavityKind.Header, BoxHeights.NoCavityKind.Duct);

    internal static Codec<OpeningKind> OpeningKind { get; } =
        Kind("openingKind", "a kind of opening", x => new(x), x => x.Name, BoxHeights.OpeningKind.Door, BoxHeights.OpeningKind.PocketDoor);

    internal static Codec<PlatformKind> PlatformKind { get; } =
        Kind("platformKind", "a kind of platform", x => new(x), x => x.Name, BoxHeights.PlatformKind.Deck, BoxHeights.PlatformKind.Porch);

    internal static Codec<BoxPurpose> BoxPurpose { get; } =
        Kind("boxPurpose", "a purpose of a box", x => new(x), x => x.Name, BoxHeights.BoxPurpose.General, BoxHeights.BoxPurpose.SinkBase);

    internal static Codec<BoxKind> BoxKind { get; } =
        Kind("boxKind", "a kind of box", x => new(x), x => x.Name, BoxHeights.BoxKind.NailOn, BoxHeights.BoxKind.CutIn);

    internal static Codec<PlateKind> PlateKind { get; } =
        Kind("plateKind", "a kind of plate", x => new(x), x => x.Name, BoxHeights.PlateKind.Standard, BoxHeights.PlateKind.Jumbo);

    internal static Codec<DeviceKind> DeviceKind { get; } =
        Kind("deviceKind", "a kind of device", x => new(x), x => x.Name, BoxHeights.DeviceKind.DuplexReceptacle, BoxHeights.DeviceKind.Switch);

    private static TextCodec<T> Kind<T>(string name, string what, Func<string, T> parse, Func<T, string> print, T example, T another)
        where T : struct =>
        new(name, what, [print(example), print(another)], "^[a-z0-9]+(-[a-z0-9]+)*$", parse, print);
}
