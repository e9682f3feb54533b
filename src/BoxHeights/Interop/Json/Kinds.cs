using System;

namespace BoxHeights.Interop;

/// <summary>The open lists of kinds. The examples are a few that the library knows; any other name will do.</summary>
internal static class Kinds
{
    internal static readonly Codec<Occupancy> Occupancy = new TextCodec<Occupancy>(
        Form("occupancy", "a kind of building", () => BoxHeights.Occupancy.Known.Select(kind => kind.Name), "one-family", "two-family"), x => new(x));

    internal static readonly Codec<RoomKind> RoomKind = new TextCodec<RoomKind>(
        Form("roomKind", "a kind of room", () => BoxHeights.RoomKind.Known.Select(kind => kind.Name), "kitchen", "living-room"), x => new(x));

    internal static readonly Codec<CounterKind> CounterKind = new TextCodec<CounterKind>(
        Form("counterKind", "a kind of counter", () => BoxHeights.CounterKind.Known.Select(kind => kind.Name), "kitchen", "bath"), x => new(x));

    internal static readonly Codec<InterruptionKind> InterruptionKind = new TextCodec<InterruptionKind>(
        Form("interruptionKind", "a kind of interruption", () => BoxHeights.InterruptionKind.Known.Select(kind => kind.Name), "sink", "range"), x => new(x));

    internal static readonly Codec<CoveringKind> CoveringKind = new TextCodec<CoveringKind>(
        Form("coveringKind", "a kind of covering", () => BoxHeights.CoveringKind.Known.Select(kind => kind.Name), "wall-cabinet", "mirror"), x => new(x));

    internal static readonly Codec<FinishKind> FinishKind = new TextCodec<FinishKind>(
        Form("finishKind", "a kind of finish", () => BoxHeights.FinishKind.Known.Select(kind => kind.Name), "tile", "wainscot"), x => new(x));

    internal static readonly Codec<FixtureKind> FixtureKind = new TextCodec<FixtureKind>(
        Form("fixtureKind", "a kind of fixture", () => BoxHeights.FixtureKind.Known.Select(kind => kind.Name), "tub", "refrigerator"), x => new(x));

    internal static readonly Codec<FreestandingKind> FreestandingKind = new TextCodec<FreestandingKind>(
        Form("freestandingKind", "a kind of thing that stands free", () => BoxHeights.FreestandingKind.Known.Select(kind => kind.Name), "island", "half-wall"), x => new(x));

    internal static readonly Codec<NoCavityKind> NoCavityKind = new TextCodec<NoCavityKind>(
        Form("noCavityKind", "a kind of obstacle in a wall", () => BoxHeights.NoCavityKind.Known.Select(kind => kind.Name), "header", "duct"), x => new(x));

    internal static readonly Codec<OpeningKind> OpeningKind = new TextCodec<OpeningKind>(
        Form("openingKind", "a kind of opening", () => BoxHeights.OpeningKind.Known.Select(kind => kind.Name), "door", "pocket-door"), x => new(x));

    internal static readonly Codec<PlatformKind> PlatformKind = new TextCodec<PlatformKind>(
        Form("platformKind", "a kind of platform", () => BoxHeights.PlatformKind.Known.Select(kind => kind.Name), "deck", "porch"), x => new(x));

    internal static readonly Codec<BoxPurpose> BoxPurpose = new TextCodec<BoxPurpose>(
        Form("boxPurpose", "a purpose of a box", () => BoxHeights.BoxPurpose.Known.Select(kind => kind.Name), "general", "sink-base"), x => new(x));

    internal static readonly Codec<BoxKind> BoxKind = new TextCodec<BoxKind>(
        Form("boxKind", "a kind of box", () => BoxHeights.BoxKind.Known.Select(kind => kind.Name), "nail-on", "cut-in"), x => new(x));

    internal static readonly Codec<PlateKind> PlateKind = new TextCodec<PlateKind>(
        Form("plateKind", "a kind of plate", () => BoxHeights.PlateKind.Known.Select(kind => kind.Name), "standard", "jumbo"), x => new(x));

    internal static readonly Codec<DeviceKind> DeviceKind = new TextCodec<DeviceKind>(
        Form("deviceKind", "a kind of device", () => BoxHeights.DeviceKind.Known.Select(kind => kind.Name), "duplex-receptacle", "switch"), x => new(x));

    // Examples are texts, and what is known is asked for late: a first read shouldn't make every kind that there is.
    private static TextForm Form(string name, string what, Func<Items<string>> known, params string[] examples) => new(name, what)
    {
        Examples = examples,
        Pattern = "^[a-z0-9]+(-[a-z0-9]+)*$",
        Note = "one of those listed, or one of your own",
        Known = known,
    };
}
