using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;

namespace BoxHeights.Tests.Rules;

/// <summary>
/// One room in a line for each wall, as the README of the cases writes them; "turn:-90" and "open" say how a wall goes on. A number may end in +t or -t for one
/// tick more or less. A counter whose depth isn't stated ends in :unstated.
/// </summary>
internal sealed class RoomSketch
{
    private readonly List<Fixture> fixtures = [];
    private readonly bool metric;
    private int ids;

    private RoomSketch(bool metric) => this.metric = metric;

    /// <summary>The room's dwelling.</summary>
    /// <param name="kind">The kind of room.</param>
    /// <param name="walls">Its walls.</param>
    /// <param name="standing">What stands in it: "railing x y x y", "half-wall x y x y", "island left near right far [overhang [top]]", its top else at 36 in, with or without a side
    /// that divides the room ("… line x y x y"); and what is set into an island ("in sink left near right far").</param>
    /// <param name="flat">Boxes listed under its floor: "floor x y", "on-wall x y", "on-island x y height"; or its ceiling: "ceiling x y".</param>
    /// <param name="metric">Whether numbers are millimeters.</param>
    public static Dwelling House(string kind, IEnumerable<string> walls, IEnumerable<string>? standing = null, IEnumerable<string>? flat = null, bool metric = false)
    {
        RoomSketch sketch = new(metric);
        Wall[] made = walls.Select((wall, i) => sketch.Wall("w" + i, wall)).ToArray();
        string[] all = (standing ?? []).ToArray();
        sketch.fixtures.AddRange(all.Where(IsSetIn).Select(sketch.SetIn));
        ILookup<bool, string> boxes = (flat ?? []).ToLookup(line => line.StartsWith("ceiling ", StringComparison.Ordinal));
        Room room = new Room("room", new RoomKind(kind), "ground").WithFloor(FloorBuildup.Of(new FloorLayer("sealed", Distance.Zero)))
            .WithWalls(made).WithFixtures(sketch.fixtures.ToArray())
            .WithFreestanding(all.Where(line => !IsSetIn(line)).Select(sketch.Standing).ToArray())
            .WithInFloor(boxes[false].Select(sketch.Flat).ToArray()).WithOverhead(boxes[true].Select(sketch.Flat).ToArray());
        return new Dwelling("case").WithUnits(metric ? LengthUnits.Millimeters : LengthUnits.Inches).WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { room });
    }

    public static DeviceBox Receptacle(string id, BoxPurpose purpose, Distance at, Distance center) =>
        new DeviceBox(id, purpose).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4")))
            .WithAt(at).WithHeight(BoxHeight.ToCenter(center, Datum.FinishedFloor));

    /// <summary>A number of a case, in the case's unit.</summary>
    public static Distance Measure(string text, bool metric)
    {
        long more = text.EndsWith("+t", StringComparison.Ordinal) ? 1 : text.EndsWith("-t", StringComparison.Ordinal) ? -1 : 0;
        string number = more == 0 ? text : text[..^2];
        Distance distance = metric ? Distance.FromTicks((long)(CaseFile.Number(number).ToDecimal() * 80_000m)) : CaseFile.Inches(number);
        return distance + Distance.FromTicks(more);
    }

    private Distance Here(string text) => Measure(text, metric);

    private Wall Wall(string id, string line)
    {
        string[] tokens = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Wall wall = new(id, Here(tokens[0]));
        foreach (string token in tokens.Skip(1))
        {
            ILookup<bool, string> stated = token.Split(':').ToLookup(part => part.Contains('=', StringComparison.Ordinal));
            string[] parts = stated[false].ToArray();
            T With<T>(T thing)
                where T : class => NamedProperties.Set(thing, stated[true], metric);
            Distance At(int part) => Here(parts[part]);
            wall = parts[0] switch
            {
                "wall" => With(wall),
                "turn" => wall.WithTurnDegrees(decimal.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)),
                "open" => wall.WithOpen(true),
                "box" or "cbox" => wall.WithBoxes(wall.Boxes.With(With(Box(parts)))),
                "window" or "pass-through" or "odd-hole" => wall.WithOpenings(wall.Openings.With(With(new Opening("o" + ++ids, new OpeningKind(parts[0]), At(1), At(2))
                    .WithSill(parts.Length > 3 && parts[3] == "unstated" ? null : new Level(parts.Length > 3 ? At(3) : Here("36"), Datum.Subfloor))))),
                "sliding-door" => wall.WithOpenings(wall.Openings.With(With(Sliding(parts)))),
                "door" or "cased" or "bifold-door" or "bypass-door" or "double-door" => wall.WithOpenings(wall.Openings.With(With(Door(parts)))),
                "tall-cabinet" or "base-cabinet" or "bookcase" or "wall-cabinet" or "odd-thing" => wall.WithCoverings(wall.Coverings.With(With(new Covering("c" + ++ids, new CoveringKind(parts[0]), At(1), At(2))
                    .WithBottom(parts[0] == "wall-cabinet" ? new Level(Here("54"), Datum.FinishedFloor) : null)))),
                "kitchen" or "desk" or "bar" => wall.WithCounters(wall.Counters.With(With(new Counter("k" + ++ids, new CounterKind(parts[0]), At(1), At(2))
                    .WithTop(new Level(Here("36"), Datum.FinishedFloor)).WithDepth(parts.Length > 3 ? null : CaseFile.Inches("25.5"))))),
                "sink" or "range" or "cooktop" or "refrigerator" => Interrupted(wall, new CounterInterruption(new InterruptionKind(parts[0]), At(1), At(2)).WithBehind(parts.Length > 3 ? At(3) : null)),
                _ => WithFixture(wall, With(new Fixture("f" + ++ids, new FixtureKind(parts[0])).WithWall(id).WithLeft(At(1)).WithRight(At(2)))),
            };
        }

        return wall;
    }

    private Wall WithFixture(Wall wall, Fixture fixture)
    {
        fixtures.Add(fixture);
        return wall;
    }

    private Opening Door(string[] parts)
    {
        Opening door = new("o" + ++ids, new OpeningKind(parts[0]), Here(parts[1]), Here(parts[2]));
        return parts.Length <= 3 ? door : door.WithSwing(parts[3] == "away" ? DoorSwing.Away : DoorSwing.Into)
            .WithHinge(parts[3] == "left" ? WallEnd.Left : parts[3] == "right" ? WallEnd.Right : null);
    }

    /// <summary>Perhaps with the width of its leaf and the side that this stands on when it is open.</summary>
    private Opening Sliding(string[] parts)
    {
        Opening door = new("o" + ++ids, OpeningKind.SlidingDoor, Here(parts[1]), Here(parts[2]));
        return parts.Length <= 3 ? door : door.WithLeaf(Here(parts[3])).WithPocketOn(parts[4] == "left" ? WallEnd.Left : parts[4] == "right" ? WallEnd.Right : null);
    }

    private DeviceBox Box(string[] parts)
    {
        bool counter = parts[0] == "cbox";
        return Receptacle("b" + ++ids, counter ? BoxPurpose.Counter : BoxPurpose.General, Here(parts[1]), Here(parts.Length > 2 ? parts[2] : counter ? "44" : metric ? "400" : "16"));
    }

    private static Wall Interrupted(Wall wall, CounterInterruption one)
    {
        int last = wall.Counters.Count - 1;
        return wall.WithCounters(wall.Counters.Select(counter => counter == wall.Counters[last] ? counter.WithInterruptions(counter.Interruptions.With(one)) : counter));
    }

    private static bool IsSetIn(string line) => line.StartsWith("in ", StringComparison.Ordinal);

    private Fixture SetIn(string line)
    {
        string[] parts = line.Split(' ');
        return new Fixture("f" + ++ids, new FixtureKind(parts[1])).WithPlan(Points(parts.Skip(2)));
    }

    private Freestanding Standing(string line)
    {
        string[] halves = line.Split(" line ");
        string[] parts = halves[0].Split(' ');
        Freestanding one = new Freestanding("s" + ++ids, new FreestandingKind(parts[0])).WithTop(new Level(Here("36"), Datum.FinishedFloor));
        if (parts[0] is "railing" or "half-wall")
        {
            return one.WithLine(Points(parts.Skip(1)));
        }

        PlanPoint[] ends = Points(parts.Skip(1).Take(4));
        PlanPoint[] corners = ends.Length == 0 ? [] : [ends[0], new(ends[1].Right, ends[0].Into), ends[1], new(ends[0].Right, ends[1].Into)];
        one = parts.Length > 6 ? one.WithTop(new Level(Here(parts[6]), Datum.FinishedFloor)) : one;
        return one.WithCorners(corners).WithOverhang(parts.Length > 5 ? Here(parts[5]) : null).WithLine(halves.Length > 1 ? Points(halves[1].Split(' ')) : []);
    }

    private PlanPoint[] Points(IEnumerable<string> numbers) => numbers.Chunk(2).Select(pair => new PlanPoint(Here(pair[0]), Here(pair[1]))).ToArray();

    private DeviceBox Flat(string line)
    {
        ILookup<bool, string> stated = line.Split(' ').ToLookup(part => part.Contains('=', StringComparison.Ordinal));
        string[] parts = stated[false].ToArray();
        DeviceBox box = Receptacle("b" + ++ids, BoxPurpose.General, Distance.Zero, parts.Length > 3 ? Here(parts[3]) : Here(metric ? "400" : "16")).WithAt(null).WithPlan(new PlanPoint(Here(parts[1]), Here(parts[2])));
        return NamedProperties.Set(OnSurface(parts[0], box), stated[true], metric);
    }

    private static DeviceBox OnSurface(string surface, DeviceBox box) =>
        surface switch
        {
            "ceiling" => box.WithHeight(null),
            "floor" => box.WithHeight(null).WithDevices(new[] { DeviceKind.FloorReceptacle }),
            "on-wall" => box.WithSurface(BoxSurface.Wall),
            _ => box.WithSurface(BoxSurface.Cabinet),
        };
}
