using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Rules;

namespace BoxHeights.Tests.Pictures;

/// <summary>Walls that differ as much as walls do: empty and crowded, narrow and long, tiled, sloped, half high, with nothing known, with everything wrong.</summary>
internal static class Scenes
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;

    private static readonly Storey Usual = new Storey("ground").WithStuds(new StudLayout().WithSpacing(In(16)).WithKnown(StudKnowledge.Declared)).WithLevelLine(Level.Parse("48 in above subfloor"))
        .WithBoards(new BoardLayout().WithWidths(new[] { In(48), In(48) }).WithThickness(In(0.5m))).WithCeiling(new Ceiling().WithFraming(In(97.125m)).WithBoard(In(0.625m)));

    /// <summary>The walls by name, each with an evaluation of its room.</summary>
    public static IReadOnlyDictionary<string, Func<Evaluation>> Walls { get; } = new Dictionary<string, Func<Evaluation>>(StringComparer.Ordinal)
    {
        ["empty"] = () => Wall(wall => wall),
        ["crowded"] = () => Wall(wall => wall.WithBoxes(Enumerable.Range(0, 14).Select(i => Receptacle("r" + i, 6 + (10 * i), i % 3 == 0 ? "16 in to top above subfloor" : i % 3 == 1 ? "48 in to top above subfloor" : "44-1/4 in to center above subfloor")).ToArray())),
        ["narrow"] = () => Wall(wall => wall.WithLength(In(18)).WithBoxes(new[] { Receptacle("n1", 9, "16 in to top above subfloor"), Switch("switch-of-the-narrow-wall", 9, "48 in to top above subfloor") })),
        ["long"] = () => Wall(wall => wall.WithLength(In(720)).WithOpenings(new[] { Door("entry", 300, 338) }).WithBoxes(Enumerable.Range(0, 9).Select(i => Receptacle("L" + i, 20 + (80 * i), "16 in to top above subfloor")).ToArray())),
        ["kitchen"] = () => Wall(Kitchen),
        ["bath"] = () => Wall(Bath, RoomKind.Bathroom),
        ["stair"] = Stair,
        ["sloped"] = () => Wall(wall => wall.WithTop(new[] { new WallTopPoint(In(0), In(30)), new WallTopPoint(In(100), In(110)) }).WithBoxes(new[] { Receptacle("low", 30, "16 in to top above subfloor"), Switch("high", 120, "48 in to top above subfloor") })),
        ["half-wall"] = () => Wall(wall => wall.WithLength(In(60)).WithTop(new[] { new WallTopPoint(In(0), In(42)) }).WithBoxes(new[] { Switch("half", 30, "36 in to top above subfloor") })),
        ["metric"] = () => Wall(wall => wall.WithLength(Distance.FromMillimeters(3600m)).WithBoxes(new[] { Receptacle("m1", 40, "300 mm to center above subfloor"), Switch("m2", 100, "1200 mm to center above subfloor") }), units: LengthUnits.Millimeters),
        ["names"] = () => Wall(wall => wall.WithId("קיר-צפון").WithOpenings(new[] { Door("דלת", 90, 126) }).WithBoxes(new[] { Receptacle("コンセント", 30, "16 in to top above subfloor"), Switch("מפסק \u202Eabc", 60, "48 in to top above subfloor"), Receptacle("<b>", 20, "44 in to center above subfloor") })),
        ["partial"] = () => Wall(
            wall => wall.WithLength(Distance.MaxValue).WithOpenings(new[] { Door("gate", 90, 126).WithRight(Distance.MaxValue), Door("entry", 40, 76) })
                .WithBoxes(new[] { Receptacle("seen", 20, "16 in to top above subfloor"), Switch("high", 90, "48 in to top above subfloor").WithHeight(BoxHeight.ToTop(Distance.FromTicks(long.MaxValue - 1), Datum.Subfloor)) }),
            storey: Usual.WithStuds(null)),
        ["joints"] = () => Wall(wall => wall.WithBoards(Usual.Boards!.WithButtJoints(new[] { new ButtJoint(1, In(96)), new ButtJoint(2, In(48)) }))
            .WithBoxes(new[] { Receptacle("low", 47, "16 in to top above subfloor"), Switch("high", 120, "52 in to bottom above subfloor") })),
        ["no-studs"] = () => Wall(wall => wall.WithBoxes(new[] { Receptacle("free", 40, "16 in to top above subfloor") }), storey: new Storey("ground")),
        ["ranges"] = () => Wall(wall => wall.WithOpenings(new[] { new Opening("window", OpeningKind.Window, In(50), In(86)).WithSill(Level.Parse("36 in above finished floor")).WithHead(Level.Parse("80 in above finished floor")).WithCasing(In(2.25m)) })
            .WithCounters(new[] { new Counter("top", CounterKind.Kitchen, In(90), In(140)).WithTop(Level.Parse("36 in above finished floor")).WithDepth(In(25)) })
            .WithBoxes(new[] { Receptacle("a", 20, "18 in to center above finished floor"), Receptacle("b", 110, "44 in to center above finished floor") }), floor: new(In(0), In(3)), storey: Usual.WithStuds(new StudLayout().WithSpacing(In(16)))),
        ["forty-findings"] = () => Wall(wall => wall.WithOpenings(new[] { Door("door", 60, 98) }).WithBoxes(Enumerable.Range(0, 22).Select(i => Switch("s" + i, 3 + (6.5m * i), (70 + (i % 4)) + " in to center above subfloor").WithCables(new[] { CableType.Parse("12-3"), CableType.Parse("12-3"), CableType.Parse("12-3") })).ToArray())),
    };

    public static string Address(Evaluation evaluation) => evaluation.Dwelling.Rooms[0].Id + "/" + evaluation.Dwelling.Rooms[0].Walls[0].Id;

    private static Evaluation Wall(Func<Wall, Wall> with, RoomKind? kind = null, LengthUnits units = LengthUnits.Inches, DistanceRange? floor = null, Storey? storey = null)
    {
        DwellingBuilder house = new DwellingBuilder("Scenes").With(dwelling => dwelling.WithUnits(units));
        house.Add(storey ?? Usual);
        RoomBuilder room = house.Room("room", kind ?? RoomKind.Kitchen, "ground").With(one => one.WithFloor(OneBox.Floor(floor ?? In(0.75m))));
        Distance length = with(new Wall("north", In(144))).Length;
        room.Wall("north", length).With(with);
        foreach ((string id, Distance other) in new[] { ("east", In(120)), ("south", length), ("west", In(120)) })
        {
            room.Wall(id, other);
        }

        return new LayoutEvaluator(Rules).Evaluate(house.Build());
    }

    private static Wall Kitchen(Wall wall) => wall.WithOpenings(new[] { new Opening("sink-window", OpeningKind.Window, In(60), In(96)).WithSill(Level.Parse("44 in above subfloor")).WithHead(Level.Parse("82 in above subfloor")).WithCasing(In(2.25m)) })
        .WithCounters(new[] { new Counter("run", CounterKind.Kitchen, In(0), In(144)).WithTop(Level.Parse("36 in above finished floor")).WithDepth(In(25.5m)).WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, In(62), In(94)) }) })
        .WithCoverings(new[] { new Covering("upper-left", CoveringKind.WallCabinet, In(0), In(54)).WithBottom(Level.Parse("54 in above finished floor")).WithTop(Level.Parse("84 in above finished floor")), new Covering("upper-right", CoveringKind.WallCabinet, In(102), In(144)).WithBottom(Level.Parse("54 in above finished floor")).WithTop(Level.Parse("84 in above finished floor")) })
        .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In(0), In(144)).WithBottom(Level.Parse("36 in above finished floor")).WithTop(Level.Parse("54 in above finished floor")).WithThickness(In(0.375m)) })
        .WithBoxes(new[] { Receptacle("K1", 14, "44 in to center above subfloor", BoxPurpose.Counter), Receptacle("K2", 34, "44 in to center above subfloor", BoxPurpose.Counter), Switch("K3", 50, "44 in to center above subfloor").WithGangs(2), Receptacle("K4", 110, "44 in to center above subfloor", BoxPurpose.Counter), Receptacle("K5", 78, "18 in to center above subfloor", BoxPurpose.SinkBase) });

    private static Wall Bath(Wall wall) => wall.WithLength(In(108)).WithFinishes(new[] { new Finish("surround", FinishKind.Tile, In(0), In(32)).WithTop(Level.Parse("84 in above subfloor")), new Finish("wainscot", FinishKind.Tile, In(32), In(108)).WithTop(Level.Parse("42 in above subfloor")) })
        .WithCoverings(new[] { new Covering("mirror", CoveringKind.Mirror, In(66), In(102)).WithBottom(Level.Parse("40 in above subfloor")).WithTop(Level.Parse("76 in above subfloor")) })
        .WithBoxes(new[] { Receptacle("B1", 60, "44 in to center above subfloor", BoxPurpose.Bath), new DeviceBox("vanity", BoxPurpose.VanityLight).WithKind(BoxKind.Octagon).WithAt(In(84)).WithHeight(BoxHeight.Parse("80 in to center above subfloor")), Switch("B2", 44, "48 in to top above subfloor") });

    private static Evaluation Stair()
    {
        DwellingBuilder house = new("Scenes");
        house.Add(Usual);
        house.Add(new Storey("upper").WithAboveBelow(In(109)));
        RoomBuilder room = house.Room("hall", RoomKind.Hall, "ground").With(one => one.WithFloor(OneBox.Floor(In(0.75m))));
        DeviceBox light = new DeviceBox("t1", BoxPurpose.Light).WithKind(BoxKind.NailOn).WithHeight(BoxHeight.Parse("10 in to center above nosing"));
        room.Wall("stairwell", In(190)).With(wall => wall.WithTop(new[] { new WallTopPoint(In(0), In(205)) }).WithBoxes(new[] { light.WithAt(In(44)), light.WithId("t5").WithAt(In(84)), light.WithId("t9").WithAt(In(124)) }));
        Dwelling dwelling = house.Build();
        return new LayoutEvaluator(Rules).Evaluate(dwelling.WithFlights(new[] { new StairFlight("main", "ground", "upper", 15).WithTread(In(10)).WithNosing(In(1)).WithWall("hall/stairwell").WithFirstNosing(In(30)).WithClimbs(WallEnd.Right) }));
    }

    private static Opening Door(string id, decimal left, decimal right) => new Opening(id, OpeningKind.Door, In(left), In(right)).WithHead(Level.Parse("82-1/2 in above subfloor")).WithLeaf(In(right - left - 2)).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithCasing(In(2.25m));

    private static DeviceBox Receptacle(string id, decimal at, string height, BoxPurpose? purpose = null) =>
        new DeviceBox(id, purpose ?? BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(In(at)).WithHeight(BoxHeight.Parse(height));

    private static DeviceBox Switch(string id, decimal at, string height) => new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }).WithAt(In(at)).WithHeight(BoxHeight.Parse(height));
}
