using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A wall that is framed, with its boxes set.</summary>
/// <param name="Address">Its address in the dwelling.</param>
/// <param name="Wall">What is told of it.</param>
/// <param name="Timber">What stands in it.</param>
/// <param name="Standing">What its boxes take of it.</param>
internal sealed record SetWall(string Address, Wall Wall, Timber Timber, IReadOnlyList<Standing> Standing);

/// <summary>A wall drafted from left to right: everything gets a stretch of its own, and the wall is as long as what was put on it.</summary>
internal sealed class WallDraft(string id, StoreyDraft storey)
{
    private readonly List<Opening> openings = [];
    private readonly List<Counter> counters = [];
    private readonly List<Finish> finishes = [];
    private readonly List<Covering> coverings = [];
    private readonly List<DeviceBox> boxes = [];
    private readonly List<Func<Distance, Finish>> along = [];
    private decimal? top;
    private decimal? cavity;
    private SetWall? back;

    public string Id => id;

    /// <summary>The left end of what is put next.</summary>
    public decimal Here { get; private set; } = 8;

    /// <summary>Whether the wall's length is that of another wall's face.</summary>
    public bool IsBack => back is not null;

    public WallDraft Gap(decimal inches)
    {
        Here += inches;
        return this;
    }

    public WallDraft Put(Opening opening)
    {
        openings.Add(opening);
        return this;
    }

    public WallDraft Put(Counter counter)
    {
        counters.Add(counter);
        return this;
    }

    public WallDraft Put(Finish finish)
    {
        finishes.Add(finish);
        return this;
    }

    public WallDraft Put(Covering covering)
    {
        coverings.Add(covering);
        return this;
    }

    /// <summary>Puts a box where the crew's stick for its purpose sets it; leaves it out where no usual stick clears the board's seams.</summary>
    public WallDraft Put(BoxPurpose purpose, decimal at, params DeviceKind[] devices)
    {
        if (storey.Crew.For(purpose) is { } stick)
        {
            Put(storey.Box(purpose, devices).WithHeight(storey.Said(stick)).WithAt(Distance.FromInches(at)));
        }

        return this;
    }

    public WallDraft Put(DeviceBox box)
    {
        boxes.Add(box);
        return this;
    }

    /// <summary>A finish from one end of the wall to the other, however long it becomes.</summary>
    public WallDraft Along(Func<Distance, Finish> finish)
    {
        along.Add(finish);
        return this;
    }

    /// <summary>A door, and on its strike side the switches that belong there.</summary>
    public WallDraft Door(RoomKind room, decimal casing, params DeviceKind[] switches)
    {
        DoorDraft door = storey.IsFramed ? new(storey.Site, room, casing) : new(casing);
        Here += door.Before;
        openings.Add(door.At("d" + openings.Count, Here));

        // Box widths by gang from common practice: 2-1/4, 4, 5-3/4, 7-1/2 in.
        Put(BoxPurpose.Switch, door.SwitchAt(Here, 2.25m + (1.75m * (switches.Length - 1))), switches);
        Here += door.Width + door.After;
        return this;
    }

    /// <summary>An opening that people walk through, with wall on both sides.</summary>
    public WallDraft Walkway(OpeningKind kind, decimal width, Func<Opening, Opening> change)
    {
        Here += 8;
        openings.Add(change(new Opening("o" + openings.Count, kind, In(Here), In(Here + width)).WithHead(new Level(In(82.5m), Datum.Subfloor)).WithCasing(In(2.25m)).WithReveal(In(0.1875m))));
        Here += width + 12;
        return this;
    }

    /// <summary>Ends the wall at a height of its own, all along.</summary>
    public WallDraft EndAt(decimal up)
    {
        top = up;
        return this;
    }

    /// <summary>Says that its studs are deeper or shallower than usual.</summary>
    public WallDraft Deep(decimal inches)
    {
        cavity = inches;
        return this;
    }

    /// <summary>Makes it the other face of a wall that is there: as long as that, with the same openings seen from the other side.</summary>
    public WallDraft BehindOf(SetWall other)
    {
        back = other;
        Here = other.Wall.Length.Inches - 8;
        foreach (Opening opening in other.Wall.Openings)
        {
            openings.Add(opening.WithLeft(other.Wall.Length - opening.Right).WithRight(other.Wall.Length - opening.Left).WithHinge(Turned(opening.Hinge)).WithPocketOn(Turned(opening.PocketOn))
                .WithSwing(opening.Swing switch { DoorSwing.Into => DoorSwing.Away, DoorSwing.Away => DoorSwing.Into, _ => null }));
        }

        return this;

        static WallEnd? Turned(WallEnd? end) => end switch { WallEnd.Left => WallEnd.Right, WallEnd.Right => WallEnd.Left, _ => null };
    }

    /// <summary>A window with its stool, and perhaps a box at its top, off its casing.</summary>
    public WallDraft Window(decimal sill, decimal casing, bool topBox)
    {
        Here += 6;
        decimal left = Here;
        decimal right = left + 36;
        openings.Add(new Opening("w" + openings.Count, OpeningKind.Window, In(left), In(right)).WithCasing(In(casing)).WithReveal(In(0.1875m)).WithStool(In(0.75m))
            .WithSill(new Level(In(sill), Datum.Subfloor)).WithHead(new Level(In(80), Datum.Subfloor)));
        if (topBox)
        {
            Put(BoxPurpose.WindowTop, right + 8, DeviceKind.DuplexReceptacle);
        }

        Put(BoxPurpose.General, left + 18, DeviceKind.DuplexReceptacle);
        Here = right + 20;
        return this;
    }

    /// <summary>The wall as it is seen from outside, where nobody asks for its studs.</summary>
    public Wall BuildOutside() => Bare();

    /// <summary>The wall framed, its boxes set where they can be held.</summary>
    /// <param name="room">The id of its room.</param>
    public SetWall Build(string room)
    {
        Fill();
        Wall wall = Bare();
        if (!storey.IsFramed)
        {
            return new(room + "/" + wall.Id, wall, new Timber(wall.Length, Distance.Zero), []);
        }

        Timber timber = back?.Timber.Behind(storey.Framers.Said) ?? storey.Framers.Frame(wall, cavity);
        IReadOnlyList<Standing> behind = back?.Standing.Select(one => one with { At = wall.Length - one.At }).ToArray() ?? [];
        (wall, IReadOnlyList<Standing> standing) = Electrician.Set(storey, wall, timber, behind);
        wall = wall.WithBoxes(wall.Boxes.Select(box => storey.SetForSurface(box, FinishAt(wall, box))).ToArray()).WithStuds(timber.Said).WithCavity(storey.Framers.SaysCavity ? timber.Cavity : null);
        return new(room + "/" + wall.Id, back is null ? wall : wall.WithBackOf(back.Address).WithBackOffset(storey.Site.Chance(50) ? Distance.Zero : null), timber, standing);
    }

    private Wall Bare()
    {
        Distance length = In(Here + 8);
        Wall wall = new Wall(id, length).WithOpenings(openings.ToArray()).WithCounters(counters.ToArray()).WithFinishes(finishes.Concat(along.Select(finish => finish(length))).ToArray())
            .WithCoverings(coverings.ToArray()).WithBoxes(boxes.ToArray());
        return top is { } up ? wall.WithTop(new[] { new WallTopPoint(Distance.Zero, In(up)), new WallTopPoint(length, In(up)) }) : wall;
    }

    /// <summary>The finish that a box opens through. No plate lies across the edge of one, so that its center tells.</summary>
    private Finish? FinishAt(Wall wall, DeviceBox box)
    {
        decimal up = storey.Up(box.Height!.Value);
        decimal counter = (counters.Count > 0 ? counters[0].Top?.Offset.Inches : null) ?? 36;
        decimal Over(Level level) => level.Offset.Inches + (level.Datum == Datum.Countertop ? counter + 0.75m : level.Datum == Datum.FinishedFloor ? 0.75m : 0);
        return wall.Finishes.FirstOrDefault(one => one.Left < box.At && box.At < one.Right && (one.Bottom is not { } bottom || Over(bottom) < up) && (one.Top is not { } high || up < Over(high)));
    }

    /// <summary>Where the room asks for it, a good crew starts from each door and sets a receptacle wherever the last is some 5 ft away.</summary>
    private void Fill()
    {
        if (!storey.FillsWalls)
        {
            return;
        }

        (decimal Left, decimal Right)[] taken = openings.Select(one => (Inches(one.Left), Inches(one.Right)))
            .Concat(coverings.Where(one => one.Kind == CoveringKind.TallCabinet).Select(one => (Inches(one.Left), Inches(one.Right))))
            .Concat(counters.Where(one => one.Kind == CounterKind.Kitchen).Select(one => (Inches(one.Left), Inches(one.Right)))).ToArray();
        (decimal Left, decimal Right)[] breaks = taken.Where((one, i) => i >= openings.Count || openings[i].Kind != OpeningKind.Window).ToArray();
        decimal[] edges = coverings.SelectMany(one => new[] { Inches(one.Left), Inches(one.Right) }).Concat(finishes.SelectMany(one => new[] { Inches(one.Left), Inches(one.Right) })).ToArray();

        // Left of a door, where there is room for one, the end of that wall space is at hand.
        decimal last = openings.Exists(one => one.Kind != OpeningKind.Window && Inches(one.Left) is >= 16 and < 72) ? -100 : 0;
        for (decimal at = 4; at <= Here + 4; at++)
        {
            if (breaks.Any(one => one.Left <= at && at <= one.Right))
            {
                last = -100;
                continue;
            }

            decimal here = at;
            DeviceBox? near = boxes.Find(box => box.At is { } place && Math.Abs(Inches(place) - here) < 8);
            bool counts = near is not null && Served.Contains(near.Purpose) && Math.Abs(Inches(near.At!.Value) - at) < 1 && near.Devices.Any(kind => kind.IsReceptacle);
            bool free = near is null && !taken.Any(one => one.Left - 6 < here && here < one.Right + 6) && !edges.Any(edge => Math.Abs(edge - here) < 5);
            if (counts || (free && at - last > 46))
            {
                if (!counts)
                {
                    Put(BoxPurpose.General, at, DeviceKind.DuplexReceptacle);
                }

                last = at;
            }
        }
    }

    private static readonly BoxPurpose[] Served = [BoxPurpose.General, BoxPurpose.Bedside, BoxPurpose.EndTable, BoxPurpose.Sofa, BoxPurpose.Office];

    private static decimal Inches(Distance distance) => distance.Ticks / 2_032_000m;
}
