using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Rules;

/// <summary>Something in front of the wall, in inches; null is not stated.</summary>
internal sealed record ThingBefore(decimal Left, decimal Right, decimal? Top, bool TopAboveFinish, decimal? Depth, decimal? Knee, bool IsLaundry);

/// <summary>Something on the wall that a plate must not lie across, in inches above the subfloor; null ends where the wall does.</summary>
internal sealed record ThingOnWall(string Kind, decimal Left, decimal Right, decimal? Bottom, decimal? Top, bool? OpenInside);

/// <summary>One box and its surroundings in plain decimals (inches), as random as the rules here can read.</summary>
internal sealed record SiteSketch
{
    public const decimal WallLength = 144m;
    public const decimal Ceiling = 0.5m;

    public string Rule { get; init; } = "ada-reach";

    public decimal FloorLow { get; init; }

    public decimal FloorHigh { get; init; }

    public decimal SubfloorOffset { get; init; }

    public decimal RoughLow { get; init; } = 97.125m;

    public decimal RoughHigh { get; init; } = 97.125m;

    public decimal[] Courses { get; init; } = [48m, 48m];

    public decimal BoxLow { get; init; } = 3.75m;

    public decimal BoxHigh { get; init; } = 3.75m;

    public Edge? Edge { get; init; }

    public Datum Datum { get; init; }

    public decimal Value { get; init; }

    public decimal? At { get; init; } = 72m;

    public decimal TapeError { get; init; }

    public bool IsSwitch { get; init; }

    public Approach? Approach { get; init; }

    public decimal Specified { get; init; } = 48m;

    public Edge? SpecifiedEdge { get; init; }

    public ThingBefore[] Before { get; init; } = [];

    public ThingOnWall? OnWall { get; init; }

    public Dwelling Build()
    {
        BoxHeight height = Edge is { } edge ? BoxHeight.To(edge, Inches(Value), Datum) : BoxHeight.EdgeUnstated(Inches(Value), Datum);
        BoxHeight specified = SpecifiedEdge is { } asked ? BoxHeight.To(asked, Inches(Specified), Datum.FinishedFloor) : BoxHeight.EdgeUnstated(Inches(Specified), Datum.FinishedFloor);
        DeviceBox box = new(OneBox.Id, IsSwitch ? BoxPurpose.Switch : BoxPurpose.General)
        {
            Devices = new[] { IsSwitch ? DeviceKind.ToggleSwitch : DeviceKind.DuplexReceptacle },
            Size = new BoxSize(Inches(2.25m), Inches(BoxLow)).Ranging(Inches(2.25m), new DistanceRange(Inches(BoxLow), Inches(BoxHigh))),
            At = At is { } at ? Inches(at) : null,
            Height = height,
            Measured = TapeError == 0m ? null : new MeasuredHeight(height) { Within = Inches(TapeError) },
            Approach = Approach,
            Specified = specified,
        };
        return new OneBox
        {
            Box = box,
            Storey = new Storey("ground")
            {
                Ceiling = new Ceiling { Framing = new DistanceRange(Inches(RoughLow), Inches(RoughHigh)), Board = Inches(Ceiling) },
                Boards = new BoardLayout { Widths = Courses.Select(Inches).ToArray() },
                LevelLine = new Level(Inches(40m), Datum.Subfloor),
            },
            Room = room => room.WithFloor(OneBox.Floor(new DistanceRange(Inches(FloorLow), Inches(FloorHigh)))).WithSubfloorOffset(Inches(SubfloorOffset))
                .WithFixtures(Before.Where(thing => thing.IsLaundry).Select((thing, i) => new Fixture("machine" + i, FixtureKind.Washer)
                {
                    Wall = "wall",
                    Left = Inches(thing.Left),
                    Right = Inches(thing.Right),
                    Top = TopOf(thing),
                    Depth = thing.Depth is { } depth ? Inches(depth) : null,
                }).ToArray()),
            Wall = wall => Dressed(wall).WithCounters(Before.Where(thing => !thing.IsLaundry).Select((thing, i) => new Counter("counter" + i, CounterKind.Kitchen, Inches(thing.Left), Inches(thing.Right))
            {
                Top = TopOf(thing),
                Depth = thing.Depth is { } depth ? Inches(depth) : null,
                KneeSpace = thing.Knee is { } knee ? Inches(knee) : null,
            }).ToArray()),
        }.Build();
    }

    public override string ToString() =>
        $"{Rule}: {Value} to {Edge?.ToString() ?? "?"} above {Datum}, at {At}, floor {FloorLow}..{FloorHigh}, offset {SubfloorOffset}, rough {RoughLow}..{RoughHigh} [{string.Join(' ', Courses)}], "
        + $"box {BoxLow}..{BoxHigh}, tape {TapeError}, switch {IsSwitch}, approach {Approach}, specified {Specified} to {SpecifiedEdge}, before: {string.Join<ThingBefore>("; ", Before)}, on: {OnWall}";

    private Wall Dressed(Wall wall)
    {
        if (OnWall is not { } thing)
        {
            return wall;
        }

        Level? Of(decimal? height) => height is { } up ? new Level(Inches(up), Datum.Subfloor) : null;
        return thing.Kind switch
        {
            "finish" => wall.WithFinishes(new[] { new Finish("finish", FinishKind.Tile, Inches(thing.Left), Inches(thing.Right)) { Bottom = Of(thing.Bottom), Top = Of(thing.Top) } }),
            "covering" => wall.WithCoverings(new[] { new Covering("covering", CoveringKind.WallCabinet, Inches(thing.Left), Inches(thing.Right)) { Bottom = Of(thing.Bottom), Top = Of(thing.Top), OpenInside = thing.OpenInside } }),
            _ => wall.WithOpenings(new[] { new Opening("opening", OpeningKind.Window, Inches(thing.Left), Inches(thing.Right)) { Sill = Of(thing.Bottom), Head = Of(thing.Top) } }),
        };
    }

    private static Level? TopOf(ThingBefore thing) =>
        thing.Top is { } top ? new Level(Inches(top), thing.TopAboveFinish ? Datum.FinishedFloor : Datum.Subfloor) : null;

    private static Distance Inches(decimal inches) => Distance.FromInches(inches);
}

/// <summary>Random sites, near the limits more often than not.</summary>
internal static class SiteGen
{
    public static readonly string[] Rules = ["ada-reach", "switch-reach", "board-seam", "specified-height", "finish-edge", "not-buried", "trim-clearance"];

    public static Arbitrary<SiteSketch> Sites { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1).Select(Site), Smaller);

    private static SiteSketch Site(int seed)
    {
        Random random = new(seed);
        T Pick<T>(params T[] some) => some[random.Next(some.Length)];
        decimal Sixteenths(int from, int to) => random.Next(from, to + 1) / 16m;
        bool known = random.Next(3) == 0;
        bool Maybe(int times) => !known && random.Next(times) == 0;
        string rule = Pick(Rules);
        decimal floor = Sixteenths(0, 20);
        decimal rough = Pick(96m, 97.125m, 109.125m, 100.5m);
        decimal tall = Pick(3.5m, 3.625m, 3.75m, 4m);
        bool isSwitch = rule == "switch-reach" || random.Next(3) == 0;
        decimal near = rule switch
        {
            "ada-reach" => Pick(15m, 44m, 46m, 48m, 34m, 36m),
            "switch-reach" => 79m,
            "board-seam" => Pick(rough - 0.5m - 48m, rough - 0.5m - 96m, 48m),
            "specified-height" => 48m,
            _ => Pick(36m, 40m, 60m, 82m),
        };
        return new SiteSketch
        {
            Rule = rule,
            FloorLow = floor,
            FloorHigh = Maybe(2) ? floor + Sixteenths(0, 16) : floor,
            SubfloorOffset = Pick(0m, 0m, 1.5m, -2m),
            RoughLow = rough,
            RoughHigh = Maybe(3) ? rough + Sixteenths(0, 8) : rough,
            Courses = Pick<decimal[]>([48m, 48m], [54m, 54m], [48m, 12m, 48m], [48m, 48m, 12m]),
            BoxLow = tall,
            BoxHigh = Maybe(3) ? tall + Pick(0.125m, 0.25m, 0.5m) : tall,
            Edge = Maybe(5) ? null : Pick<Edge>(BoxHeights.Edge.Bottom, BoxHeights.Edge.Center, BoxHeights.Edge.Top),
            Datum = Pick(Datum.Subfloor, Datum.FinishedFloor, Datum.BottomPlate, Datum.LevelLine),
            Value = near + Sixteenths(-64, 64),
            At = Maybe(6) ? null : Pick(72m, 60m, 84m, 59m, 61.375m, 82.625m, 20m),
            TapeError = Maybe(5) ? 0.125m : 0m,
            IsSwitch = isSwitch,
            Approach = Maybe(3) ? null : Pick(Approach.Forward, Approach.Side, Approach.Either),
            SpecifiedEdge = Maybe(4) ? null : Pick<Edge>(BoxHeights.Edge.Bottom, BoxHeights.Edge.Center, BoxHeights.Edge.Top),
            Before = rule == "ada-reach" ? Enumerable.Range(0, random.Next(3)).Select(_ => Before(random, known)).ToArray() : [],
            OnWall = rule is "finish-edge" or "not-buried" or "trim-clearance"
                ? new ThingOnWall(rule == "finish-edge" ? "finish" : rule == "not-buried" ? "covering" : "opening", Pick(60m, 0m, 71m), Pick(84m, SiteSketch.WallLength, 73m),
                    random.Next(4) == 0 ? null : near + Sixteenths(-16, 16), random.Next(4) == 0 ? null : near + 4m + Sixteenths(17, 200), Maybe(3) ? null : random.Next(2) == 0)
                : new ThingOnWall("finish", 0m, 1m, 0m, 1m, true),
        }.OnItsOwnDatum();
    }

    /// <summary>The level line is 40 in above the storey's subfloor, so what is measured from it reads less.</summary>
    private static SiteSketch OnItsOwnDatum(this SiteSketch site) => site.Datum == Datum.LevelLine ? site with { Value = site.Value - 40m + site.SubfloorOffset } : site;

    private static ThingBefore Before(Random random, bool known)
    {
        T Pick<T>(params T[] some) => some[random.Next(some.Length)];
        bool Maybe(int times) => !known && random.Next(times) == 0;
        bool laundry = random.Next(4) == 0;
        decimal depth = Pick(9m, 10m, 10.0625m, 20m, 20.0625m, 24m, 24.0625m, 25m, 25.0625m);
        bool isDeep = !Maybe(5);
        return new ThingBefore(
            Pick(60m, 40m, 72m), Pick(84m, 100m, 73m), Maybe(5) ? null : Pick(30m, 33.5m, 34m, 34.0625m, 35m, 36m, 36.0625m, 44m), random.Next(2) == 0,
            isDeep ? depth : null, laundry ? 0m : Maybe(4) ? null : Math.Min(Pick(0m, depth, depth - 0.0625m, 26m), isDeep ? depth : 24m), laundry);
    }

    private static IEnumerable<SiteSketch> Smaller(SiteSketch site)
    {
        SiteSketch[] simpler =
        [
            site with { FloorHigh = site.FloorLow }, site with { SubfloorOffset = 0m }, site with { RoughHigh = site.RoughLow }, site with { BoxHigh = site.BoxLow },
            site with { Edge = BoxHeights.Edge.Center }, site with { TapeError = 0m }, site with { At = 72m }, site with { Approach = Approach.Either },
            site with { SpecifiedEdge = BoxHeights.Edge.Center }, site with { Before = site.Before.Skip(1).ToArray() },
            site with { Before = site.Before.Take(1).Select(thing => thing with { Knee = thing.Knee ?? 0m, Depth = thing.Depth ?? 24m, Top = thing.Top ?? 34m }).ToArray() },
        ];
        return simpler.Where(one => one.ToString() != site.ToString());
    }
}
