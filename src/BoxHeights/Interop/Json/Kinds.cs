using System;

namespace BoxHeights.Interop;

/// <summary>The open lists of kinds. The examples are a few that the library knows; any other name will do.</summary>
internal static class Kinds
{
    internal static readonly Codec<Occupancy> Occupancy = new TextCodec<Occupancy>(
        Form("occupancy", "a kind of building", BoxHeights.Occupancy.KnownNames, "one-family", "two-family"), x => new(x));

    internal static readonly Codec<RoomKind> RoomKind = new TextCodec<RoomKind>(
        Form("roomKind", "a kind of room", BoxHeights.RoomKind.KnownNames, "kitchen", "living-room"), x => new(x));

    internal static readonly Codec<CounterKind> CounterKind = new TextCodec<CounterKind>(
        Form("counterKind", "a kind of counter", BoxHeights.CounterKind.KnownNames, "kitchen", "bath"), x => new(x));

    internal static readonly Codec<InterruptionKind> InterruptionKind = new TextCodec<InterruptionKind>(
        Form("interruptionKind", "a kind of interruption", BoxHeights.InterruptionKind.KnownNames, "sink", "range"), x => new(x));

    internal static readonly Codec<CoveringKind> CoveringKind = new TextCodec<CoveringKind>(
        Form("coveringKind", "a kind of covering", BoxHeights.CoveringKind.KnownNames, "wall-cabinet", "mirror"), x => new(x));

    internal static readonly Codec<FinishKind> FinishKind = new TextCodec<FinishKind>(
        Form("finishKind", "a kind of finish", BoxHeights.FinishKind.KnownNames, "tile", "wainscot"), x => new(x));

    internal static readonly Codec<FixtureKind> FixtureKind = new TextCodec<FixtureKind>(
        Form("fixtureKind", "a kind of fixture", BoxHeights.FixtureKind.KnownNames, "tub", "refrigerator"), x => new(x));

    internal static readonly Codec<FreestandingKind> FreestandingKind = new TextCodec<FreestandingKind>(
        Form("freestandingKind", "a kind of thing that stands free", BoxHeights.FreestandingKind.KnownNames, "island", "half-wall"), x => new(x));

    internal static readonly Codec<NoCavityKind> NoCavityKind = new TextCodec<NoCavityKind>(
        Form("noCavityKind", "a kind of obstacle in a wall", BoxHeights.NoCavityKind.KnownNames, "header", "duct"), x => new(x));

    internal static readonly Codec<OpeningKind> OpeningKind = new TextCodec<OpeningKind>(
        Form("openingKind", "a kind of opening", BoxHeights.OpeningKind.KnownNames, "door", "pocket-door"), x => new(x));

    internal static readonly Codec<PlatformKind> PlatformKind = new TextCodec<PlatformKind>(
        Form("platformKind", "a kind of platform", BoxHeights.PlatformKind.KnownNames, "deck", "porch"), x => new(x));

    internal static readonly Codec<BoxPurpose> BoxPurpose = new TextCodec<BoxPurpose>(
        Form("boxPurpose", "a purpose of a box", BoxHeights.BoxPurpose.KnownNames, "general", "sink-base"), x => new(x));

    internal static readonly Codec<BoxKind> BoxKind = new TextCodec<BoxKind>(
        Form("boxKind", "a kind of box", BoxHeights.BoxKind.KnownNames, "nail-on", "cut-in"), x => new(x));

    internal static readonly Codec<PlateKind> PlateKind = new TextCodec<PlateKind>(
        Form("plateKind", "a kind of plate", BoxHeights.PlateKind.KnownNames, "standard", "jumbo"), x => new(x));

    internal static readonly Codec<DeviceKind> DeviceKind = new TextCodec<DeviceKind>(
        Form("deviceKind", "a kind of device", BoxHeights.DeviceKind.KnownNames, "duplex-receptacle", "switch"), x => new(x));

    // Examples are texts, and what is known is asked for late: a first read shouldn't make every kind that there is.
    private static TextForm Form(string name, string what, Func<string[]> known, params string[] examples) => new(name, what)
    {
        Examples = examples,
        Pattern = "^[a-z0-9]+(-[a-z0-9]+)*$",
        Note = "one of those listed, or one of your own",
        Known = known,
    };
}
