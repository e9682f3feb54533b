using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What a house usually gets although no document asks for it. Common practice, no source.</summary>
internal static class UsualBoxes
{
    // Where rooms that no document names are lit too.
    private static readonly Items<RoomKind> Lit = DeviceLists.Habitable.With(RoomKind.Hall).With(RoomKind.Foyer).With(RoomKind.Laundry).With(RoomKind.Pantry).With(RoomKind.Bathroom)
        .With(RoomKind.Kitchen).With(RoomKind.BreakfastRoom).With(RoomKind.Garage).With(RoomKind.Basement).With(RoomKind.Stair).With(RoomKind.Utility);

    private static readonly Items<RoomKind> Central = new[] { RoomKind.Hall, RoomKind.Foyer, RoomKind.LivingRoom, RoomKind.FamilyRoom };

    private static DeviceBox Light { get; } = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithKind(BoxKind.Octagon);

    public static RuleSet Rows { get; } = new(
    [
        Usual("usual-light", "lit from the middle of its ceiling", Light, Lit) with { Instead = DeviceLists.Lights, OrSwitchedReceptacle = true },

        // In a closet only by what is listed for it, wherever its shelves are.
        Usual("usual-closet-light", "lit from the middle of its ceiling, by a luminaire listed for storage space", Light.WithLuminaire(LuminaireBuild.ForStorage), new[] { RoomKind.Closet }) with { Instead = DeviceLists.Lights },

        // Out of the sun, off outside walls, where air moves.
        Usual("usual-thermostat", "on an inner wall, one in a dwelling", Bracket(BoxPurpose.Thermostat, DeviceKind.Thermostat), Central) with { Place = UsualPlace.InnerWall, OneInADwelling = true },
        Usual("usual-chime", "high on an inner wall, one in a dwelling", Bracket(BoxPurpose.DoorbellChime, DeviceKind.Chime).WithHeight(BoxHeight.ToCenter(Distance.FromInches(80), Datum.Subfloor)), Central) with
        {
            Place = UsualPlace.InnerWall,
            OneInADwelling = true,
        },
        Usual("usual-doorbell", "beside the latch of the front door, 4 in off its casing", Box(BoxPurpose.Doorbell, DeviceKind.DoorbellButton), new[] { RoomKind.Foyer, RoomKind.Hall, RoomKind.LivingRoom, RoomKind.FamilyRoom }) with
        {
            Place = UsualPlace.BesideEntrance,
            OneInADwelling = true,
            Openings = new[] { OpeningKind.Door, OpeningKind.DoubleDoor },
            From = Distance.FromInches(4),
        },

        // Lamps stand on both sides of a bed; elsewhere one side does.
        new ReceptaclesBeside("beside-bed", "within 2 ft of either side of a bed", Citation.CommonPractice, new[] { FixtureKind.Bed }, Distance.FromFeet(2)) { OnBothSides = true },
        new ReceptaclesBeside("beside-furniture", "within 2 ft of one side of a sofa, a desk, a dresser or a crib", Citation.CommonPractice, new FixtureKind[] { FixtureKind.Sofa, FixtureKind.Desk, new("dresser"), new("crib") }, Distance.FromFeet(2)),

        // On the 20 A circuit of the box under the sink.
        new SwitchedAppliance(
            "disposal-switch", "switched over the counter within 3 ft, half of the receptacle under the sink", Citation.CommonPractice, new[] { FixtureKind.Disposal }, new[] { BoxPurpose.SinkBase },
            Box(BoxPurpose.Switch, DeviceKind.Switch).WithCables(CableType.Parse("12-2"), CableType.Parse("12-2")), Distance.FromFeet(3)) { Leg = new[] { CableType.Parse("12-2") } },

        // The machine hangs a little behind where the open door ends.
        Usual("usual-door-opener", "in the ceiling 10 ft behind each vehicle door", Box(BoxPurpose.DoorOpener, DeviceKind.GfciReceptacle).WithKind(BoxKind.Octagon), new[] { RoomKind.Garage }) with
        {
            Place = UsualPlace.BeforeOpenings,
            Openings = DeviceLists.VehicleDoors,
            From = Distance.FromFeet(10),
        },
    ]);

    private static UsualBox Usual(string id, string summary, DeviceBox box, Items<RoomKind> rooms) => new(id, summary, Citation.CommonPractice, box, rooms);

    /// <summary>What is fed by bell wire needs no box: a bracket holds it to the board.</summary>
    private static DeviceBox Bracket(BoxPurpose purpose, DeviceKind device) => Box(purpose, device).WithKind(BoxKind.LowVoltageBracket);

    private static DeviceBox Box(BoxPurpose purpose, DeviceKind device) => new DeviceBox("usual", purpose).WithDevices(new[] { device });
}
