using System;
using System.Collections.Generic;
using System.Linq;

namespace BoxHeights.Tests.Standards;

/// <summary>A wall drafted from left to right: everything gets a stretch of its own, and the wall is as long as what was put on it.</summary>
internal sealed class WallDraft(string id, StoreyDraft storey)
{
    private readonly List<Opening> openings = [];
    private readonly List<Counter> counters = [];
    private readonly List<Finish> finishes = [];
    private readonly List<Covering> coverings = [];
    private readonly List<DeviceBox> boxes = [];

    /// <summary>The left end of what is put next.</summary>
    public decimal Here { get; private set; } = 8;

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

    /// <summary>A door, and beside its strike side the boxes that belong there, each nailed to the king or to the next stud.</summary>
    public WallDraft Door(decimal casing, params DeviceKind[] switches)
    {
        decimal left = Here;
        decimal right = left + 32;
        openings.Add(new Opening("d" + openings.Count, OpeningKind.Door, In(left), In(right)).WithLeaf(In(30)).WithCasing(In(casing)).WithReveal(In(0.1875m))
            .WithHinge(WallEnd.Left).WithHead(new Level(In(82.5m), Datum.Subfloor)));

        // Box widths by gang from common practice: 2-1/4, 4, 5-3/4, 7-1/2 in; jack and king are 3 in together.
        Put(BoxPurpose.Switch, right + 3 + ((2.25m + (1.75m * (switches.Length - 1))) / 2), switches);
        Here = right + 16;
        return this;
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

    public Wall Build(Func<Wall, Wall>? change = null)
    {
        Fill();

        // Where a finish comes, how far out a box is set is another story, which the mistakes tell.
        for (int i = 0; i < boxes.Count && finishes.Count == 0; i++)
        {
            boxes[i] = storey.SetForBoard(boxes[i]);
        }

        Wall wall = new Wall(id, In(Here + 8)).WithOpenings(openings.ToArray()).WithCounters(counters.ToArray()).WithFinishes(finishes.ToArray())
            .WithCoverings(coverings.ToArray()).WithBoxes(boxes.ToArray());
        return change is null ? wall : change(wall);
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
        (decimal Left, decimal Right)[] breaks = taken.Where((one, i) => i >= openings.Count || openings[i].Kind == OpeningKind.Door).ToArray();
        decimal[] edges = coverings.SelectMany(one => new[] { Inches(one.Left), Inches(one.Right) }).Concat(finishes.SelectMany(one => new[] { Inches(one.Left), Inches(one.Right) })).ToArray();
        decimal last = 0;
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
            if (counts || (free && at - last > 50))
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

    private static Distance In(decimal inches) => Distance.FromInches(inches);
}
