using System;
using System.Linq;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Standards;

/// <content>Its document: a row of every form and custom that there is, to copy from.</content>
internal static partial class InventedCountry
{
    private static readonly Citation Rules = new("Byland Wiring Rules", "1");
    private static readonly Citation Fire = new("Byland Wiring Rules", "11");
    private static readonly ConductorSize Thin = ConductorSize.FromSquareMillimeters(1.5m);
    private static readonly ConductorSize Thick = ConductorSize.FromSquareMillimeters(2.5m);

    public static RuleSet Set { get; } = new(
    [
        new HeightBand("switch-line", "900 to 1100 mm above the floor", Severity.Violation, new("Byland Wiring Rules", "4.1"), Datum.FinishedFloor)
        {
            Low = Mm(900), High = Mm(1100), Preferred = BoxHeight.ToCenter(Mm(1000), Datum.FinishedFloor), Scope = RuleScope.Walls with { Devices = new[] { DeviceKind.Switch } },
        },
        new HeightBand("socket-line", "250 to 1300 mm above the floor", Severity.Violation, new("Byland Wiring Rules", "4.2"), Datum.FinishedFloor)
        {
            Low = Mm(250), High = Mm(1300), Preferred = BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor), Scope = RuleScope.Walls with { Devices = new[] { Socket } },
        },
        new Zone("water-zone", "600 mm or more from a tub or shower", Severity.Violation, new("Byland Wiring Rules", "7.1"), Water, Mm(600)) { Scope = RuleScope.Walls },
        new SocketsByArea("sockets-by-area", "there once for each 4 m2 of floor, or part of it", Severity.Violation, new("Byland Wiring Rules", "5.1"), 4m)
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.Bedroom } },
        },
        new RequiredOutlet("basin-socket", "within 1500 mm of a basin", Severity.Violation, new("Byland Wiring Rules", "5.2"), Counted, new FixtureSubject(new RoomAnchor { Fixtures = new[] { FixtureKind.Basin } }, Mm(1500)))
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.Bathroom } },
            Adds = SocketBox.WithHeight(BoxHeight.ToCenter(Mm(1100), Datum.FinishedFloor)),
        },
        new Coverage("wall-sockets", "within 2500 mm of a socket, all along the wall", Severity.Violation, new("Byland Wiring Rules", "5.3"),
            new WallSpaces { Doorways = new[] { OpeningKind.Door } },
            new CountedOutlet("socket", new[] { Socket }) { UnstatedMayBeOne = true, Surfaces = new[] { BoxSurface.Wall }, LowestVolts = 220, HighestVolts = 240, Amperes = new[] { 16 } }, Mm(1000), Mm(2500), SocketBox.WithHeight(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor)))
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.LivingRoom } },
        },
        new AnchoredPlace("beside-bed", "beside the bed", Severity.Note, Rules, new PlaceAnchor(new[] { "bed" }, Mm(500)).WithBeyond(Mm(100)))
        {
            Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Bedside } }, Planned = new DeviceBox("planned", BoxPurpose.Bedside).WithDevices(new[] { Socket }), PlannedFor = new[] { FixtureKind.Bed },
        },
        new SpecifiedHeight("as-drawn", "at the height that is drawn", Severity.Advice, Rules, Mm(8)),
        new UniformLevel("one-line", "level with the others of its purpose", Severity.Advice, Rules, Mm(5)) { Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.Switch } } },
        new KeepClear("clear-of-frames", "clear of the frames of openings", Severity.Advice, Rules, WallPieces.Openings) { Scope = RuleScope.Walls },
        new BoxAgainstBox("clear-of-boxes", "clear of other boxes", Severity.Advice, Rules, BoxPairs.OnOneFace) { Scope = RuleScope.Walls },
        new KeepClear("behind-leaf", "clear of an open leaf", Severity.Advice, Rules, WallPieces.OpenLeaves) { Scope = RuleScope.Walls },
        new RoomForBoxes("room-for-sockets", "100 mm or more from openings", Rules) { PartOfReach = 5, Beside = Mm(100), FromEnds = Mm(150), Aside = Mm(800), BetweenPlates = Mm(10), NextBay = Mm(600) },
        new SwitchesAtEntrances("door-switches", "beside the latch", Rules, new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithHeight(BoxHeight.ToCenter(Mm(1000), Datum.FinishedFloor)))
        {
            WithinReach = Mm(500), CasingGap = Mm(30), BeyondLeaf = Mm(100), StudsBeside = Mm(90), Heights = new(Mm(900), Mm(1100)),
        },
        new InspectionItem("sheath-seen", "10 mm or more of sheath seen in the box", new("Byland Wiring Rules", "9.1"), 1) { Limit = Mm(10) },
        new RequiredOutlet("bath-light", "there once", Severity.Violation, new("Byland Wiring Rules", "5.4"), new CountedOutlet("light", new[] { DeviceKind.Luminaire }), new RoomSubject())
        {
            Scope = new RuleScope { Rooms = new[] { RoomKind.Bathroom } }, Adds = new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }),
        },
        new KeepClear("seen-beside-frames", "with 15 mm or more of wall seen between plate and frame", Severity.Note, Rules, WallPieces.Casings) { Least = Mm(15), Scope = RuleScope.Walls },
        new AllowedZones("cable-zones", "in a zone where cables run", Severity.Advice, Rules)
        {
            Bands = new LevelBand[] { new(Datum.FinishedFloor, Mm(150), Mm(450)), new(Datum.FinishedFloor, Mm(900), Mm(1150)) }, BesideOpenings = new(Mm(100), Mm(300)), FromCorners = new(Mm(100), Mm(300)),
            Openings = new[] { OpeningKind.Door }, Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.General } },
        },
        new ClosetLight("closet-light", "300 mm or more in plan from what is stored", Severity.Advice, Rules)
        {
            Storage = Mm(310), ToEnclosed = Mm(290), ToOthers = Mm(160), Recessed = new DeviceKind[] { new("recessed-light") }, Scope = new RuleScope { Rooms = new[] { RoomKind.Closet } },
        },
        new FillLimit("box-room", "roomy enough for its wires", Severity.Violation, new("Byland Wiring Rules", "8.1"),
            new FillCounting(new ConductorAllowance[] { new(Thin, Volume.FromCubicCentimeters(8)), new(Thick, Volume.FromCubicCentimeters(11)) }, GroundCounting.AllAsOne)),
        new DepthLimit("deep-enough", "deep enough for its device", Severity.Violation, new("Byland Wiring Rules", "8.2"))
        {
            WithoutDevice = Mm(20), OnConductors = new DepthOnConductors[] { new(Thin, Mm(35)), new(null, Mm(45)) },
        },
        new CavityDepth("within-wall", "no deeper than the wall", Severity.Advice, Rules),
        new SetbackLimit("behind-surface", "at most 5 mm behind the finished surface", Severity.Violation, new("Byland Wiring Rules", "8.3"), Mm(5)),
        new ProudLimit("past-surface", "at most 3 mm past the finished surface", Severity.Note, Rules, Mm(3)),
        new GapLimit("cut-gap", "with a gap of at most 4 mm round it", Severity.Violation, new("Byland Wiring Rules", "8.4"), Mm(4)),
        new HeldByFraming("held", "where it can be fixed", Severity.Advice, Rules, FramingHold.Mounting) { Within = Mm(7), Clear = Mm(11), Scope = RuleScope.Walls },
        new BoardSeam("one-board", "cut into one board", Severity.Advice, Rules) { Scope = RuleScope.Walls },
        new RatedOpening("fire-opening", "at most 9000 mm2 of fire wall for one box", Severity.Violation, Fire, Quantity.Area(Mm(90), Mm(100))),
        new RatedSeparation("fire-apart", "550 mm from boxes behind a fire wall", Severity.Violation, Fire, Mm(550)),
        new RatedTotal("fire-total", "at most 0.05 m2 of openings in any 8 m2 of a fire wall", Severity.Violation, Fire, Quantity.Area(Mm(250), Mm(200)), Quantity.Area(Mm(4000), Mm(2000))),
        new RiserVariation("even-risers", "with risers that differ by at most 8 mm", Severity.Violation, new("Byland Wiring Rules", "10.1"), Mm(8)),
        new StairPathLights("even-lights", "at one height along a flight", Severity.Note, Rules) { MostAlong = Mm(20), MostInHeight = Mm(5), Below = Mm(500) },
        new RoomCenter("light-in-the-middle", "in the middle of its room, where it is nearly there", Severity.Note, Rules, Mm(20), Mm(160)),
        new OnCenter("over-basin", "over the middle of its basin", Severity.Note, Rules, new[] { "basin" }, Mm(70)) { Scope = RuleScope.Walls with { Purposes = new[] { BoxPurpose.VanityLight } } },
        new FanReady("fan-box", "able to hold a fan", Severity.Advice, Rules) { Scope = new RuleScope { Devices = new[] { DeviceKind.Luminaire }, Rooms = new[] { RoomKind.Bedroom } } },
        new ControlledLights("light-switched", "switched", Severity.Advice, Rules, new[] { DeviceKind.Luminaire }, ControlAsked.InEachRoom),
        new ThreeWayMates("two-way-mates", "in pairs", Severity.Note, Rules, Ways),
        new ControlledLights("ways-together", "switched in pairs from two places", Severity.Advice, Rules, new[] { DeviceKind.Luminaire }, ControlAsked.OfWays) { Ways = Ways },
        new CircuitRating("circuit-wires", "on wires for its 16 A", Severity.Violation, new("Byland Wiring Rules", "6.1"), 16, new ConductorRating[] { new(Thin, 13), new(Thick, 18) })
        {
            Scope = RuleScope.Everything with { Devices = new[] { Socket } },
        },
        new UsualBox("usual-light", "in the middle of the ceiling", Rules, new DeviceBox("light", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }), new[] { RoomKind.Bedroom }),
        new UsualWiring("usual-wires", "fed by 3G2.5", Rules, new[] { Socket }) { Feed = new[] { CableType.Parse("3G2.5") } },
        new ApplianceCircuits("worktop-circuits", "on two circuits", Rules, new[] { BoxPurpose.Counter }, new[] { RoomKind.Kitchen }, 2),
        new ReceptaclesBeside("sofa-sockets", "within 700 mm of a sofa", Rules, new[] { FixtureKind.Sofa }, Mm(700)),
        new SwitchedAppliance("grinder-switch", "switched over the worktop", Rules, new[] { FixtureKind.Disposal }, new[] { BoxPurpose.SinkBase }, new DeviceBox("switch", BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }), Mm(800)),
    ]);

    private static SwitchWays Ways => new(new[] { DeviceKind.Switch }, new[] { TwoWay }, new DeviceKind[] { new("crossing-switch") }) { EndName = "two-way", BetweenName = "crossing" };

    private static RoomAnchor Water => new() { Fixtures = new[] { FixtureKind.Tub, FixtureKind.Shower } };

    private static CountedOutlet Counted => new("socket", new[] { Socket });

    /// <summary>A form of one's own: so many sockets for so much floor. It reads whole rooms with square corners.</summary>
    private sealed record SocketsByArea(string Name, string Asks, Severity Weight, Citation From, decimal SquareMeters) : SpaceRule(Name, Asks, Weight, From)
    {
        public override SpaceKind Subject => SpaceKind.Room;

        public override string Numbers => "one socket for each " + SquareMeters + " m2";

        public override void Judge(SpaceView space, SpaceStatement statement)
        {
            if (space.Room is not { Walls.Count: 4 } room)
            {
                return;
            }

            int needed = (int)Math.Ceiling(room.Walls[0].Length.Millimeters * room.Walls[1].Length.Millimeters / 1_000_000m / SquareMeters);
            int there = space.Boxes.AsEnumerable().Count(box => box.Traits.Devices.Contains(Socket));
            if (there >= needed)
            {
                statement.Meets(space.Id, space.Id);
                return;
            }

            PlacedBox[] added = [.. Enumerable.Range(there + 1, needed - there).Select(number => new PlacedBox(space.Id + "/" + room.Walls[2].Id,
                SocketBox.WithId(space.Id + "-socket-" + number).WithAt(Mm(300 * number)).WithHeight(BoxHeight.ToCenter(Mm(300), Datum.FinishedFloor))))];
            statement.Finds(space.Id, space.Id, Verdict.Fails, Quantity.Of(there), QuantitySet.AtLeast(needed), () => $"{there} sockets of {needed}", MissingFacts.None, added);
        }

        public override bool ServesFrom(SpaceView space, string lacking, SpaceBox box, Distance offered) => box.Traits.Devices.Contains(Socket);
    }
}
