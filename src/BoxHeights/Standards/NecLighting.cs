using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>Lights that a dwelling has to have, and switches for them: NEC 210.70, as far as a description tells.</summary>
/// <remarks>
/// A row asks for a light or for a switch, not for both, so that each says what was looked for. A switch may be outside the room that it lights, and halls, stairs
/// and entrances may be controlled from afar or by themselves: where none is described it depends on that.
/// </remarks>
internal static class NecLighting
{
    private const string Other = "which light a switch controls; control from afar or by itself";

    private static CountedOutlet Light { get; } = new("light", DeviceLists.Lights)
    {
        Purposes = new[] { BoxPurpose.Light, BoxPurpose.VanityLight, BoxPurpose.StairLight },
        Surfaces = DeviceLists.Anywhere,
    };

    private static CountedOutlet SwitchedReceptacle { get; } = new("switched receptacle", DeviceLists.Receptacles) { OnlySwitched = true };

    private static CountedOutlet Switch { get; } = new("switch", DeviceLists.Switches) { Purposes = new[] { BoxPurpose.Switch } };

    private static DeviceBox RoundBox { get; } = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithKind(BoxKind.Octagon);

    /// <summary>Rows of an edition. The 2026 text hasn't been read: its rows carry 2023 over, marked "from memory".</summary>
    public static IEnumerable<Rule> Rows(NecEdition edition)
    {
        Citation rooms = Section("210.70(A)(1)", true);
        Citation passages = Section("210.70(A)(2)", false);
        Citation service = Section(edition == NecEdition.Nec2017 ? "210.70(A)(3)" : "210.70(C)", false);

        // From memory: laundry areas are named from 2023 on.
        bool laundryIsNamed = edition is NecEdition.Nec2023 or NecEdition.Nec2026;
        Citation laundry = laundryIsNamed ? Section("210.70(A)(1)", false) : service;
        Severity inLaundry = laundryIsNamed ? Severity.Violation : Severity.Advice;

        yield return Lit("room-light", "there at least once, or a receptacle that a switch controls", rooms, DeviceLists.Habitable) with
        {
            Of = new RoomSubject { Instead = SwitchedReceptacle },

            // These are the rooms where the box may come to hold a fan.
            Adds = RoundBox.WithKind(BoxKind.FanRated).WithFanRated(true),
        };
        yield return Lit("kitchen-bath-light", "there at least once", rooms, new[] { RoomKind.Kitchen, RoomKind.Bathroom });
        yield return Switched("room-switch", "on a wall of the room, for its light", rooms, DeviceLists.Habitable.With(RoomKind.Kitchen).With(RoomKind.Bathroom)) with
        {
            LeavesOut = "which light a switch controls, and how near an entrance it is",
        };
        Items<RoomKind> passing = new[] { RoomKind.Hall, RoomKind.Stair, RoomKind.Garage };
        yield return Lit("passage-light", "there at least once", passages, passing);
        yield return Switched("passage-switch", "there for its light", passages, passing);
        yield return new ControlledLights("light-control", "controlled by a switch, one light of the room at least", Severity.Violation, rooms, Light.Devices, ControlAsked.InEachRoom)
        {
            Rooms = DeviceLists.Habitable.With(RoomKind.Kitchen).With(RoomKind.Bathroom),
            LeavesOut = "control by occupancy sensors and from afar",
        };
        yield return Lit("laundry-light", "there at least once", laundry, new[] { RoomKind.Laundry }) with { Severity = inLaundry };
        yield return Switched("laundry-switch", "there for its light", laundry, new[] { RoomKind.Laundry }) with { Severity = inLaundry };
        Items<RoomKind> stores = new[] { RoomKind.Basement, RoomKind.Utility };
        yield return Lit("service-light", "there at least once", service, stores) with
        {
            LeavesOut = "whether it is used for storage or has equipment to be serviced: basements and utility rooms are taken to be",
        };
        yield return Switched("service-switch", "there for its light", service, stores) with { LeavesOut = Other + "; lights with a switch of their own" };
        yield return Lit("attic-light", "there at least once where equipment has to be serviced", service, new RoomKind[] { RoomKind.Attic, new("crawl-space") }) with
        {
            Of = new RoomSubject { OnlyWith = DeviceLists.ServicedEquipment },
            LeavesOut = "whether it is used for storage; how it is switched",
        };
        // How far a light reaches the document doesn't say; common practice, no source.
        yield return new RequiredOutlet("entrance-light", "there on the outer side of each entrance at grade", Severity.Violation, passages, Light,
            new FaceSubject { AtEntrances = true, ExceptOpenings = DeviceLists.VehicleDoors, SurelyWithin = Distance.FromFeetInches(10, 0), PerhapsWithin = Distance.FromFeetInches(20, 0) })
        {
            Adds = RoundBox.WithHeight(BoxHeight.ToCenter(Distance.FromInches(66, 0, 1), Datum.Subfloor)),
            LeavesOut = "what a light reaches: it is taken to light an entrance within 10 ft, and none beyond 20 ft; entrances without a way to grade",
        };
        yield return new RequiredOutlet("entrance-switch", "there for the light at the entrance, in the room that it leads to", Severity.Violation, passages, Switch,
            new EntranceSubject(Light) { ExceptOpenings = DeviceLists.VehicleDoors })
        {
            LeavesOut = Other,
        };

        Citation Section(string section, bool isRead) =>
            new("NEC " + (int)edition, section, isRead && edition != NecEdition.Nec2026 ? Confidence.Confirmed : Confidence.FromMemory);
    }

    private static RequiredOutlet Lit(string id, string summary, Citation citation, Items<RoomKind> rooms) =>
        new(id, summary, Severity.Violation, citation, Light, new RoomSubject()) { Scope = new RuleScope { Rooms = rooms }, Adds = RoundBox };

    private static RequiredOutlet Switched(string id, string summary, Citation citation, Items<RoomKind> rooms) =>
        new(id, summary, Severity.Violation, citation, Switch, new RoomSubject { Unless = MissingFacts.ServedFromOutside }) { Scope = new RuleScope { Rooms = rooms }, LeavesOut = Other };
}
