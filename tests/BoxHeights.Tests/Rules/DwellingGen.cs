using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace BoxHeights.Tests.Rules;

/// <summary>Random dwellings, good ones and bad ones, and what is compared about them.</summary>
internal static class DwellingGen
{
    public static RuleSet Rules { get; } = RuleSets.OfAHouse + RuleSets.Ada2010;

    /// <summary>How the properties here make a length of so many sixteenths of an inch.</summary>
    public static Distance Sixteenths(int sixteenths) => Distance.FromTicks(sixteenths * 127_000L);

    /// <summary>A dwelling by its seed: one seed gives one house, however its lengths are made.</summary>
    public static Arbitrary<int> Seeds { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    public static Dwelling Dwelling(int seed, Func<int, Distance>? length = null)
    {
        Random random = new(seed);
        Func<int, Distance> of = length ?? Sixteenths;
        DwellingBuilder dwelling = new("random");
        int boxes = 0;
        int storeys = random.Next(1, 3);
        for (int s = 0; s < storeys; s++)
        {
            int rough = Pick(random, 1554, 1746, 1558);
            dwelling.Add(new Storey("storey" + s)
            {
                Ceiling = new Ceiling { Framing = random.Next(4) == 0 ? new DistanceRange(of(rough - 4), of(rough + 4)) : of(rough), Board = of(Pick(random, 8, 10)) },
                Boards = random.Next(5) == 0 ? null : new BoardLayout { Widths = rough < 1600 ? new[] { of(768), of(768) } : new[] { of(864), of(864) }, Thickness = random.Next(5) == 0 ? null : of(8) },
                Studs = new StudLayout { Spacing = of(Pick(random, 256, 384)), From = Pick(random, WallEnd.Left, WallEnd.Right), Known = StudKnowledge.Declared },
                LevelLine = random.Next(2) == 0 ? new Level(of(768), Datum.Subfloor) : null,
            });
            int rooms = random.Next(1, 3);
            for (int r = 0; r < rooms; r++)
            {
                RoomBuilder room = dwelling.Room("room" + s + r, Pick(random, RoomKind.Kitchen, RoomKind.Bedroom, RoomKind.Hall), "storey" + s);
                DistanceRange? floor = random.Next(3) switch { 0 => null, 1 => of(random.Next(0, 21)), _ => new DistanceRange(of(4), of(random.Next(4, 21))) };
                Distance? offset = random.Next(4) == 0 ? of(random.Next(0, 40)) : null;
                room.With(one => one.WithFloor(floor is { } chosen ? OneBox.Floor(chosen) : null).WithSubfloorOffset(offset));
                int walls = random.Next(1, 4);
                for (int w = 0; w < walls; w++)
                {
                    Wall(random, of, dwelling, room, "wall" + w, ref boxes);
                }
            }
        }

        return dwelling.Build();
    }

    /// <summary>What the evaluation finds, without the order in which it says it.</summary>
    public static string[] Lines(IEnumerable<Finding> findings) => findings.Select(Line).Order(StringComparer.Ordinal).ToArray();

    public static string Line(Finding finding) =>
        Key(finding) + "|" + finding.Severity + "|" + finding.Margin + "|" + finding.Needs + "|" + string.Join(',', finding.DisputedBy);

    public static string Key(Finding finding) => Subject(finding) + "|" + finding.Verdict;

    public static string Subject(Finding finding) => finding.RuleId + "|" + finding.Subject + "|" + finding.Fault?.Message;

    /// <summary>Whether a finding is about a run of wall or counter, and not about a box.</summary>
    public static bool IsOfARun(Finding finding) => finding.RuleId is "wall-outlets" or "counter-outlets";

    private static void Wall(Random random, Func<int, Distance> of, DwellingBuilder dwelling, RoomBuilder room, string id, ref int boxes)
    {
        int length = random.Next(96, 240) * 16;
        WallBuilder wall = room.Wall(id, of(length));
        int counterRight = 0;
        if (random.Next(2) == 0)
        {
            int left = random.Next(0, length / 32) * 16;
            counterRight = left + (random.Next(24, 48) * 16);
            Level? top = random.Next(5) == 0 ? null : new Level(of(Pick(random, 544, 576, 560)), Pick(random, Datum.Subfloor, Datum.FinishedFloor));
            int? deep = random.Next(5) == 0 ? null : Pick(random, 160, 320, 384, 400, 408);
            wall.Add(new Counter("counter", CounterKind.Kitchen, of(left), of(counterRight))
            {
                Top = top,
                Depth = deep is { } depth ? of(depth) : null,
                KneeSpace = random.Next(3) switch { 0 => null, 1 => of(0), _ => of(Math.Min(400, deep ?? 400)) },
            });
            if (random.Next(2) == 0)
            {
                wall.Add(new Finish("splash", new FinishKind("splash"), of(left), of(counterRight))
                {
                    Bottom = new Level(of(576), Datum.Subfloor),
                    Top = new Level(of(random.Next(2) == 0 ? 640 : 780), random.Next(2) == 0 ? Datum.Subfloor : Datum.FinishedFloor),
                    Thickness = random.Next(3) == 0 ? null : new DistanceRange(of(2), of(random.Next(2, 7))),
                    Bed = random.Next(2) == 0 ? of(2) : null,
                    Combustible = random.Next(3) switch { 0 => null, 1 => false, _ => true },
                });
            }
        }

        if (random.Next(3) == 0 && counterRight + 600 < length)
        {
            wall.Add(new Opening("door", OpeningKind.Door, of(length - 560), of(length - 48)) { Head = new Level(of(1320), Datum.Subfloor), Casing = of(36), Reveal = of(3) });
        }

        int many = random.Next(1, 5);
        for (int b = 0; b < many; b++)
        {
            wall.Add(Box(random, of, "box" + boxes++, length));
        }

        _ = dwelling;
    }

    public static DeviceBox Box(Random random, Func<int, Distance> of, string id, int length)
    {
        BoxPurpose purpose = Pick(random, BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Counter);
        DeviceKind device = purpose == BoxPurpose.Switch ? Pick(random, DeviceKind.ToggleSwitch, DeviceKind.Switch) : DeviceKind.DuplexReceptacle;
        int gangs = random.Next(4) == 0 ? 2 : 1;
        DeviceBox box = new(id, purpose)
        {
            Devices = Enumerable.Repeat(device, gangs).ToArray(),
            Size = random.Next(3) == 0 ? null : new BoxSize(of(gangs == 1 ? 36 : 64), of(Pick(random, 58, 60, 64))),
            Height = Height(random, of, purpose),
            Approach = random.Next(3) switch { 0 => null, 1 => Approach.Side, _ => Approach.Forward },
            Cables = random.Next(3) == 0 ? Enumerable.Repeat(CableType.Parse(Pick(random, "14-2", "12-2")), random.Next(1, 4)).ToArray() : default,
            Volume = Volume.FromCubicInches(gangs == 1 ? Pick(random, 14m, 18m, 20.3m) : 32m),
            Specified = random.Next(4) == 0 ? BoxHeight.ToTop(of(768), Datum.Subfloor) : null,
            Pinned = random.Next(12) == 0,
            SetFor = random.Next(2) == 0 ? of(random.Next(0, 18)) : null,
        };
        return random.Next(3) == 0
            ? box.WithMounting(new Mounting(MountingMethod.Stud).WithStud(random.Next(1, 7)).WithSide(Pick(random, StudSide.Left, StudSide.Right)))
            : box.WithAt(of(random.Next(2, (length / 16) - 2) * 16)).WithMounting(random.Next(2) == 0 ? new Mounting(MountingMethod.Bracket) : null);
    }

    private static BoxHeight Height(Random random, Func<int, Distance> of, BoxPurpose purpose)
    {
        int usual = purpose == BoxPurpose.General ? 256 : 768;
        int value = random.Next(3) switch { 0 => usual, 1 => usual + random.Next(-24, 25), _ => usual + random.Next(-120, 121) };
        Datum datum = Pick(random, Datum.Subfloor, Datum.Subfloor, Datum.FinishedFloor, Datum.BottomPlate);
        return random.Next(12) == 0 ? BoxHeight.EdgeUnstated(of(value), datum) : BoxHeight.To(Pick(random, Edge.Top, Edge.Top, Edge.Center, Edge.Bottom), of(value), datum);
    }

    public static T Pick<T>(Random random, params T[] some) => some[random.Next(some.Length)];
}
