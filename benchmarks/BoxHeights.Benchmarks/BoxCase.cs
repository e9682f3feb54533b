using System.Collections.Generic;

namespace BoxHeights.Benchmarks;

/// <summary>A box and what is around it as one flat object with heights in ticks above the room's subfloor: what a program without a layout model would keep.</summary>
internal sealed class BoxCase
{
    public const long Inch = 2_032_000;

    public required string Id { get; init; }

    /// <summary>0 for bottom, 1 for center, 2 for top.</summary>
    public required long Edge { get; init; }

    public required long Value { get; init; }

    public required bool AboveFinishedFloor { get; init; }

    public required long BoxHeight { get; init; }

    public required long Floor { get; init; }

    public required long Seam { get; init; }

    public required long Below { get; init; }

    public required long Above { get; init; }

    public required long Grip { get; init; }

    public required bool IsSwitch { get; init; }

    public required bool IsDedicated { get; init; }

    /// <summary>0 general, 1 switch, 2 counter, 3 something else.</summary>
    public required int Purpose { get; init; }

    public required int Storey { get; init; }

    public required bool HasCounter { get; init; }

    public required long CounterTop { get; init; }

    public required long CounterDepth { get; init; }

    public required long KneeSpace { get; init; }

    public required bool FromSide { get; init; }

    public required bool FromFront { get; init; }

    /// <summary>The center that the drawing asks for; null where it asks for nothing.</summary>
    public required long? Specified { get; init; }

    public required long Conductors { get; init; }

    public required long Grounds { get; init; }

    public required long Clamps { get; init; }

    public required long Yokes { get; init; }

    public required long Allowance { get; init; }

    public required long Volume { get; init; }

    /// <summary>The center that most boxes of the group share, set by whoever judges the house.</summary>
    public long Level { get; set; }

    public int Group => (3 * Storey) + Purpose;

    public long Center => Value + (AboveFinishedFloor ? Floor : 0) + ((1 - Edge) * BoxHeight / 2);

    /// <summary>Flattens a generated house. Only what the generator draws is understood.</summary>
    public static BoxCase[] ListOf(Dwelling dwelling)
    {
        List<BoxCase> cases = [];
        foreach (Room room in dwelling.Rooms)
        {
            int storey = room.Storey == dwelling.Storeys[0].Id ? 0 : 1;
            Storey of = dwelling.Storeys[storey];
            long seam = (of.Ceiling!.Framing!.Value.From - of.Ceiling.Board!.Value.From - of.Boards!.Widths[0]).Ticks;
            foreach (Wall wall in room.Walls)
            {
                foreach (DeviceBox box in wall.Boxes)
                {
                    cases.Add(Of(box, wall, room.Floor!.Thickness.From.Ticks, seam, storey));
                }
            }
        }

        return cases.ToArray();
    }

    private static BoxCase Of(DeviceBox box, Wall wall, long floor, long seam, int storey)
    {
        PartsCatalog.Generic.TryFindDevice(box.Devices[0], out DevicePart? device);
        Distance at = box.At!.Value;
        Counter? counter = wall.Counters.Count > 0 && wall.Counters[0].Left <= at && at <= wall.Counters[0].Right ? wall.Counters[0] : null;
        int count = box.Cables.Count;
        return new()
        {
            Id = box.Id,
            Edge = (long)box.Height!.Value.Edge!.Value,
            Value = box.Height.Value.Value.Ticks,
            AboveFinishedFloor = box.Height.Value.Datum == Datum.FinishedFloor,
            BoxHeight = box.Size!.Value.Height.Ticks,
            Floor = floor,
            Seam = seam,
            Below = device!.Operable.Below.Ticks,
            Above = device.Operable.Above.Ticks,
            Grip = (device.Operable.GripHigh ?? Distance.Zero).Ticks,
            IsSwitch = box.Devices[0].IsSwitch,
            IsDedicated = box.Dedicated is not null,
            Purpose = box.Purpose == BoxPurpose.General ? 0 : box.Purpose == BoxPurpose.Switch ? 1 : box.Purpose == BoxPurpose.Counter ? 2 : 3,
            Storey = storey,
            HasCounter = counter is not null,
            CounterTop = counter?.Top!.Value.Offset.Ticks ?? 0,
            CounterDepth = counter?.Depth!.Value.Ticks ?? 0,
            KneeSpace = counter?.KneeSpace!.Value.Ticks ?? 0,
            FromSide = (box.Approach!.Value & Approach.Side) != 0,
            FromFront = (box.Approach.Value & Approach.Forward) != 0,
            Specified = box.Specified?.Value.Ticks,
            Conductors = (long)count * box.Cables[0].InsulatedConductors,
            Grounds = count,
            Clamps = box.Clamps == CableClamps.Internal ? 1 : 0,
            Yokes = box.Devices.Count,
            Allowance = RuleSets.FillCounting(NecEdition.Nec2020).AllowanceOf(box.Cables[0].Size).Picoliters,
            Volume = box.Volume!.Value.Picoliters,
        };
    }
}
