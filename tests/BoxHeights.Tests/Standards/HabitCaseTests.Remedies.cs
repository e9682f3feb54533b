using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;

namespace BoxHeights.Tests.Standards;

/// <content>Scenes in which a remedy or a finding shows a number.</content>
public sealed partial class HabitCaseTests
{
    /// <summary>Places are tried a sixteenth of an inch apart, as near as they may be.</summary>
    private static EvaluatorOptions Closely => EvaluatorOptions.Default.WithAlongMargin(Distance.Zero).WithAlongStep(In("1/16"));

    private static RuleSet Outlets => RuleSets.UnitedStatesOutlets(NecEdition.Nec2023);

    /// <summary>Where the box goes that a laundry lacks, all of its walls alike; none where there is no place.</summary>
    private static string InALaundry(Func<Wall, Wall> change)
    {
        Room room = new SquareRoom { Kind = RoomKind.Laundry }.Build();
        Wall[] walls = [.. room.Walls.Select(wall => change(wall.WithLength(In("120"))))];
        return Only(new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room.WithWalls(walls) }), "laundry-receptacle");
    }

    /// <summary>Two windows over a counter leave a strip of wall twice as wide, its middle at 40 in.</summary>
    private static string Strip(Distance half)
    {
        Opening Window(string id, Distance left, Distance right) => new Opening(id, OpeningKind.Window, left, right).WithSill(new Level(In("40"), Datum.Subfloor));
        Dwelling house = RoomSketch.House("kitchen", ["100 kitchen:20:60"]);
        return Only(house.WithWalls(wall => wall.WithOpenings(new[] { Window("one", In("10"), In("40") - half), Window("two", In("40") + half, In("70")) })), "counter-outlets");
    }

    /// <summary>A landing with one wall, twice as long, whose switch isn't there, and a receptacle 8 in beyond its middle.</summary>
    private static string AtAStair(Distance half)
    {
        StairFlight flight = new StairFlight("main", "low", "high", 14).WithTread(In("10")).WithFirstNosing(In("20")).WithWall("hall/stair");
        DeviceBox other = new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        return Only(StairRuleTests.House(flight, [], [other.WithAt(half + In("8"))]).WithWalls(wall => wall.Id == "side" ? wall.WithLength(half + half) : wall), "stair-switches");
    }

    /// <summary>On which side of a front door from 100 to 136 in its light goes, where something covers the right side up to 6 in short of a place.</summary>
    private static string AtAnEntrance(Distance aside)
    {
        Wall face = new Wall("face", In("300")).WithOpenings(new[] { new Opening("front", OpeningKind.Door, In("100"), In("136")).WithHinge(WallEnd.Left) })
            .WithCoverings(new[] { new Covering("stone", new CoveringKind("stone"), In("136"), In("130") + aside) });
        DeviceBox other = new DeviceBox("bell", BoxPurpose.Doorbell).WithDevices(new[] { DeviceKind.DoorbellButton }).WithAt(In("20")).WithHeight(BoxHeight.ToCenter(In("44"), Datum.Subfloor));
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey.WithGradeBelowSubfloor(In("12")) }).WithOutside(new[] { new OutsideFace("street").WithWalls(new[] { face.WithBoxes(new[] { other }) }) });
        return CaseFile.Inches(Only(house, "entrance-light", Closely)) > In("118") ? "right" : "left";
    }

    /// <summary>Where a box goes that is behind a wall cabinet, a plate's half more than so far from its right edge: aside, or under it.</summary>
    private static string BehindACabinet(Distance aside)
    {
        Covering cabinet = new Covering("cabinet", CoveringKind.WallCabinet, In("20"), In("72") + aside - In("1-3/8")).WithBottom(new Level(In("54"), Datum.Subfloor)).WithTop(new Level(In("84"), Datum.Subfloor));
        OneBox box = new OneBox { Rules = new([RuleSets.RoughInPractice.Row("not-buried"), RuleSets.RoughInPractice.Row("room-for-boxes")]), Wall = wall => wall.WithCoverings(new[] { cabinet }), Options = Closely }.At(BoxHeight.ToCenter(In("60"), Datum.Subfloor));
        MoveBoxes move = box.Evaluate().Causes.Single().Remedies.OfType<MoveBoxes>().First();

        return move.Along is null ? "under it" : "aside";
    }

    private static string Only(Dwelling house, string row, EvaluatorOptions? options = null)
    {
        RuleSet rules = new([Outlets.Row(row), RuleSets.RoughInPractice.Row("room-for-boxes")]);
        Evaluation evaluation = new LayoutEvaluator(rules, (options ?? EvaluatorOptions.Default).WithAllBoxesAreDescribed(true)).Evaluate(house);
        Finding finding = evaluation.Findings.First(one => one.RuleId == row);
        return finding.Remedies[0] is AddBox added ? added.Placed[0].Box.At!.Value.ToString("in").Replace(" in", "", StringComparison.Ordinal) : "none";
    }

    /// <summary>One light so far above the nosings that lie on a line through the treads, and others at 6 in that it isn't in phase with.</summary>
    private static string PathLight(Distance above)
    {
        StairFlight flight = new StairFlight("main", "low", "high", 14).WithTread(In("10")).WithFirstNosing(In("20")).WithWall("hall/stair");
        DeviceBox Light(string id, string at, Distance height) => new DeviceBox(id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithAt(In(at)).WithHeight(BoxHeight.ToCenter(height, Datum.Nosing));
        Dwelling house = StairRuleTests.House(flight, [Light("a", "25", In("6")), Light("b", "45", In("6")), Light("c", "65", above)]);
        return new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, "stair-path-lights")).Evaluate(house).Findings.Count == 0 ? "no path light" : "found";
    }

    private static OneBox OverTheSeam(Distance across)
    {
        // Boards of 48 in from the floor up: the seam is at 48 in, and a box 3-3/4 in high whose top is that far over it.
        Storey storey = new Storey("ground").WithCeiling(new Ceiling().WithFraming(In("96-1/2")).WithBoard(In("1/2"))).WithBoards(new BoardLayout().WithThickness(In("1/2")).WithWidths(new[] { In("48"), In("48") }));
        OneBox box = new() { Storey = storey };
        return (box with { Box = box.Box.WithSize(new BoxSize(In("2-1/4"), In("3-3/4"))) }).At(BoxHeight.ToTop(In("48") + across, Datum.Subfloor));
    }

    private static OneBox SetFor(Distance projection)
    {
        OneBox box = new() { Storey = new Storey("ground").WithBoards(new BoardLayout().WithThickness(In("1/2"))) };
        return (box with { Box = box.Box.WithSetFor(projection) }).At(BoxHeight.Parse("16 in to top above subfloor"));
    }

    private static OneBox Drawn(Distance off)
    {
        OneBox box = new();
        return (box with { Box = box.Box.WithSpecified(BoxHeight.Parse("16 in to top above subfloor")) }).At(BoxHeight.ToTop(In("16") + off, Datum.Subfloor));
    }

    /// <summary>What is found in a room of three boxes of a purpose at one height and one so far above them.</summary>
    private static string Level(string row, BoxPurpose purpose, Distance off)
    {
        DeviceBox Box(int i) => SquareRoom.Box("gfci-receptacle", purpose.Name, Distance.FromInches(20 + (30 * i)), In("40") + (i == 3 ? off : Distance.Zero)).WithId("b" + i);
        Dwelling house = new SquareRoom { North = [Box(0), Box(1), Box(2), Box(3)] }.House();
        return new LayoutEvaluator(OneBox.Only(RuleSets.RoughInPractice, row)).Evaluate(house).Findings is { Count: > 0 } found ? found[0].Severity.ToString() : "silent";
    }

    private static string Severity(OneBox box, string row) =>
        (box with { Rules = OneBox.Only(RuleSets.RoughInPractice, row) }).Evaluate().Findings.SingleOrDefault()?.Severity.ToString() ?? "silent";

    private static string YesNo(bool holds) => holds ? "yes" : "no";
}
