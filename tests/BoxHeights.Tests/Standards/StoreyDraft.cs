using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>What a storey's rooms share: ceiling, board, crew, and how much of it is written down.</summary>
internal sealed class StoreyDraft
{
    // Cables that fit: gangs, cables, and a marked volume of at least their fill with one device to a gang, summed by hand from
    // NEC Table 314.16(B): 2.00 in³ for 14 AWG, 2.25 in³ for 12 AWG; a device counts two, all grounds (never more than four) one.
    private static readonly (int Gangs, string[] Cables, decimal Volume)[] Fills =
    [
        (1, ["14-2"], 14m),                          // 4 + 4 + 2 = 10.00
        (1, ["14-2", "14-2"], 14m),                  // 8 + 4 + 2 = 14.00
        (1, ["14-2", "14-2", "14-2"], 18m),          // 12 + 4 + 2 = 18.00
        (1, ["14-2", "14-3"], 16m),                  // 10 + 4 + 2 = 16.00
        (1, ["12-2", "12-2"], 16m),                  // 9 + 4.5 + 2.25 = 15.75
        (1, ["12-2", "12-2", "12-2"], 20.3m),        // 13.5 + 4.5 + 2.25 = 20.25
        (2, ["14-2", "14-2", "14-2"], 25m),          // 12 + 8 + 2 = 22.00
        (2, ["14-2", "14-2", "14-3", "14-3"], 32m),  // 20 + 8 + 2 = 30.00
        (3, ["14-2", "14-2", "14-2", "14-3"], 44m),  // 18 + 12 + 2 = 32.00
    ];

    private readonly Draw draw;
    private readonly Draw fronts;
    private readonly WallEnd? uprightFrom;
    private readonly decimal[] hung;
    private readonly bool hangsFromFloor;
    private int boxes;

    public StoreyDraft(Draw draw, string id, bool plain, bool isFramed)
    {
        IsFramed = isFramed;
        this.draw = draw;
        Id = id;
        Plain = plain;
        Site = draw.Aside();
        Framers = new FramingCrew(Site);
        (decimal rough, decimal[][] ways) = plain ? EightFeet : draw.One(EightFeet, EightFeet, NineFeet, TenFeet);
        decimal board = plain ? 0.625m : draw.One(0.5m, 0.625m);
        bool strapped = !plain && draw.Chance(15);
        BoardWall = rough - board - (strapped ? 0.75m : 0m);
        decimal[] courses = plain ? ways[0] : draw.OneOf(ways);
        bool isStated = plain || draw.Chance(60);
        BoardLayout hanging = new BoardLayout().WithWidths(courses.Select(In).ToArray()).WithFloorGap(In(0.5m));

        // Under 8 ft there is one common way to hang board, so a crew minds it also where nothing is written down.
        decimal[] seams = isStated || rough < 100 ? Enumerable.Range(1, courses.Length - 1).Select(k => BoardWall - courses.Take(k).Sum()).ToArray() : [];
        if (isStated && !plain && Says(15))
        {
            // Upright, so that sheets break on studs: from the end that the studs are counted from, where that is said.
            uprightFrom = Framers.Said?.From ?? WallEnd.Left;
            hanging = new BoardLayout().WithHung(BoardDirection.Vertical).WithFrom(uprightFrom == WallEnd.Left ? BoardOrigin.Left : BoardOrigin.Right).WithWidths(Enumerable.Repeat(In(48), 12).ToArray());
            seams = [];
        }
        else if (isStated && !plain && Says(15))
        {
            hanging = hanging.WithFrom(BoardOrigin.Bottom).WithWidths(new[] { In(48), In(48), In(24) });
            seams = [48.5m, 96.5m];
            hangsFromFloor = true;
        }

        Seams = seams;
        hung = courses;
        Crew = new CrewHeights(draw, seams);
        BoardsAreStated = isStated;
        fronts = draw.Aside();
        BoardThickness = fronts.One(0.5m, 0.5m, 0.625m);
        Storey = new Storey(id).WithGradeBelowSubfloor(draw.Chance(80) ? new DistanceRange(In(8), In(24)) : null)
            .WithCeiling(plain || draw.Chance(85) ? new Ceiling().WithFraming(In(rough)).WithBoard(In(board)).WithStrapping(strapped ? In(0.75m) : draw.Chance(50) ? Distance.Zero : null) : null)
            .WithBoards(isStated ? hanging.WithThickness(fronts.Chance(70) ? In(BoardThickness) : null) : null)
            .WithStuds(isFramed ? Framers.Said : null)
            .WithLevelLine(draw.Chance(25) ? new Level(In(48), Datum.Subfloor) : null);
    }

    // Precut studs, one bottom and two top plates. Courses from the ceiling down: only ways of hanging that leave the usual receptacle line alone.
    private static (decimal Rough, decimal[][] Hung) EightFeet => (97.125m, [[48, 48]]);

    private static (decimal Rough, decimal[][] Hung) NineFeet => (109.125m, [[54, 54], [12, 48, 48]]);

    private static (decimal Rough, decimal[][] Hung) TenFeet => (121.125m, [[48, 48, 24], [48, 24, 48], [54, 12, 54]]);

    public string Id { get; }

    public bool Plain { get; }

    public decimal BoardWall { get; }

    public IReadOnlyList<decimal> Seams { get; }

    public bool BoardsAreStated { get; }

    /// <summary>Whether sheets hang upright, so that a ceiling may be as far above a floor as it likes.</summary>
    public bool HangsUpright => uprightFrom is not null;

    /// <summary>The board on the walls, whether or not it is written down.</summary>
    public decimal BoardThickness { get; }

    public CrewHeights Crew { get; }

    public Storey Storey { get; }

    public Draw Draw => draw;

    /// <summary>Draws for what is found on site: framing, doors, finishes, how boxes are held.</summary>
    public Draw Site { get; }

    public FramingCrew Framers { get; }

    /// <summary>Whether anything is told of what is found on site.</summary>
    public bool IsFramed { get; }

    /// <summary>Whether the room that is being set out has a floor of its own level, so that the storey's line is of no use there.</summary>
    public bool IsOffLevel { get; set; }

    /// <summary>Whether the walls of the room that is being set out need a receptacle every few feet.</summary>
    public bool FillsWalls { get; set; }

    public int BoxCount => boxes;

    /// <summary>Whether something that is found on site is there, and told; some of a hundred times.</summary>
    public bool Says(int percent) => IsFramed && Site.Chance(percent);

    public string NextId() => Id + "-" + ++boxes;

    /// <summary>What is on a circuit of 20 A, and so on 12 AWG.</summary>
    private static BoxPurpose[] OnTwenty => [BoxPurpose.Counter, BoxPurpose.Bath, BoxPurpose.Laundry, BoxPurpose.Garage];

    /// <summary>Receptacles for ranges and dryers are two gangs wide.</summary>
    public static int GangsOf(IEnumerable<DeviceKind> devices) => devices.Sum(kind => kind == DeviceKind.RangeReceptacle || kind == DeviceKind.DryerReceptacle ? 2 : 1);

    /// <summary>A box with whatever of it is written down: kind, cables, mounting, size.</summary>
    public DeviceBox Box(BoxPurpose purpose, params DeviceKind[] devices)
    {
        DeviceBox box = new DeviceBox(NextId(), purpose).WithDevices(devices);
        int gangs = GangsOf(devices);
        (int, string[] Cables, decimal Volume)[] fitting = Fills.Where(fill => fill.Gangs == gangs && (!OnTwenty.Contains(purpose) || Array.TrueForAll(fill.Cables, cable => cable.StartsWith("12-", StringComparison.Ordinal)))).ToArray();
        bool device = devices.All(kind => kind.IsSwitch || (kind.IsReceptacle && kind != DeviceKind.RangeReceptacle && kind != DeviceKind.DryerReceptacle));
        if (device && fitting.Length > 0 && draw.Chance(40))
        {
            (_, string[] cables, decimal volume) = draw.OneOf(fitting);
            box = box.WithCables(cables.Select(CableType.Parse).ToArray()).WithVolume(Volume.FromCubicInches(volume)).WithClamps(gangs == 1 ? draw.One<CableClamps?>(null, CableClamps.None, CableClamps.Flap) : CableClamps.None);
        }

        return draw.Below(12) switch
        {
            0 => box.WithSize(new BoxSize(In(2.25m + (1.75m * (gangs - 1))), In(3.75m), Site.One<Distance?>(null, In(2.75m), In(3), In(3.25m)))),
            1 when gangs == 1 => box.WithSize(new BoxSize(In(2.25m), In(3.625m))),
            2 when gangs == 1 => box.WithKind(BoxKind.CutIn).WithMounting(new Mounting(MountingMethod.CutIn)),
            3 when gangs <= 2 => Square(box),
            4 => box.WithMounting(new Mounting(MountingMethod.Stud)),
            _ => box,
        };
    }

    /// <summary>A metal box of 4 in square with a ring. NEC Table 314.16(A): 21.0 in³ at 1-1/2 in of depth, 30.3 in³ at 2-1/8 in, so that it takes whatever was chosen for it.</summary>
    public DeviceBox Square(DeviceBox box, decimal volume = 0) => box.WithKind(BoxKind.FourSquare).WithMounting(new Mounting(MountingMethod.Bar)).WithClamps(CableClamps.None)
        .WithVolume(Volume.FromCubicInches(Math.Max(volume, box.Volume is { } chosen && chosen > Volume.FromCubicInches(21) ? 30.3m : Site.One(21m, 30.3m))));

    /// <summary>Where a box's center is above the subfloor, in inches, give or take 2 in.</summary>
    public decimal Up(BoxHeight height) => height.Value.Inches + (height.Edge switch { Edge.Top => -1.875m, Edge.Bottom => 1.875m, _ => 0 }) + (height.Datum switch
    {
        Datum.FinishedFloor => 0.75m,
        Datum.LevelLine => 48,
        Datum.FinishedCeiling => BoardWall,
        _ => 0,
    });

    /// <summary>Where sheets meet under a ceiling other than the storey's.</summary>
    public IEnumerable<decimal> SeamsUnder(decimal boardWall) => BoardsUnder(boardWall) is not null
        ? Enumerable.Range(1, (int)(boardWall / 48)).Select(k => hangsFromFloor ? 0.5m + (48 * k) : boardWall - (48 * k))
        : Seams.Count == 0 ? Seams : Enumerable.Range(1, hung.Length - 1).Select(k => boardWall - hung.Take(k).Sum());

    /// <summary>What is hung across a wall that is higher than the storey's: sheets of 48 in all the way; null where it hangs upright or nobody says.</summary>
    public BoardLayout? BoardsUnder(decimal boardWall) =>
        Storey.Boards is { Hung: BoardDirection.Horizontal } usual ? usual.WithWidths(Enumerable.Repeat(In(48), (int)(boardWall / 48) + 1).ToArray()) : null;

    /// <summary>Where sheets that hang upright meet on a wall.</summary>
    public IEnumerable<Distance> UprightSeams(Distance length)
    {
        for (Distance seam = In(48); uprightFrom is { } from && seam < length; seam += In(48))
        {
            yield return from == WallEnd.Left ? seam : length - seam;
        }
    }

    /// <summary>
    /// How far out a box is set, where that is written down: flush with the board and what lies on it, or as far behind as NEC 314.20 still allows, 1/4 in; where the
    /// surface burns, flush with it or standing out; and how closely the board is cut.
    /// </summary>
    /// <param name="box">The box.</param>
    /// <param name="finish">The finish that it opens through; null for bare board.</param>
    public DeviceBox SetForSurface(DeviceBox box, Finish? finish)
    {
        box = fronts.Chance(15) ? box.WithBoardGap(In(fronts.One(0m, 0.0625m, 0.125m))) : box;
        if (!fronts.Chance(30) || finish is { Thickness: null })
        {
            return box;
        }

        Distance surface = In(BoardThickness) + (finish?.Bed?.To ?? Distance.Zero) + (finish?.Thickness?.To ?? Distance.Zero);
        return box.WithSetFor(surface - (finish is null || finish.Kind == FinishKind.Tile || finish.Kind == FinishKind.Stone ? In(fronts.One(0m, 0m, 0.125m, 0.25m)) : In(fronts.One(0m, -0.0625m))));
    }

    /// <summary>A stick's height, as a crew that has shot a line may say it.</summary>
    public BoxHeight Said(Stick stick) => Storey.LevelLine is not null && !IsOffLevel && stick.Datum == Datum.Subfloor && draw.Chance(20)
        ? BoxHeight.To(stick.Edge, In(stick.Inches - 48), Datum.LevelLine)
        : stick.Height;

    /// <summary>What the drawing says where it agrees with the crew: the same height, or its center where the box is measured, or above an exact floor.</summary>
    public DeviceBox Drawn(DeviceBox box, FloorBuildup? floor)
    {
        if (box.Height is not { Edge: { } } height || !draw.Chance(20))
        {
            return box;
        }

        if (box.Size is { } size && draw.Chance(50))
        {
            height = height.AtEdge(Edge.Center, size);
        }

        if (floor is not null && floor.Thickness.IsExact && height.Datum == Datum.Subfloor && draw.Chance(50))
        {
            height = height.From(Datum.FinishedFloor, floor);
        }

        return box.WithSpecified(height);
    }

    /// <summary>What lies on a room's floor: measured, a choice still open between two, or not stated.</summary>
    public FloorBuildup? Floor() => Plain ? Floor(0.75m, 0.75m) : draw.Below(4) switch
    {
        0 => null,
        1 => Floor(0.75m, 0.875m),
        2 => Floor(0.3125m, 0.8125m),
        _ => draw.One(Floor(0.3125m, 0.3125m), Floor(0.5m, 0.5m), Floor(0.75m, 0.75m), Floor(1.25m, 1.25m)),
    };

    private static FloorBuildup Floor(decimal from, decimal to) => FloorBuildup.Of(new FloorLayer("floor", new DistanceRange(In(from), In(to))));
}
