using System;

namespace BoxHeights.Benchmarks;

/// <summary>Draws an invented house of two storeys, sixteen rooms and about 150 boxes from a seed. Everything in it is known exactly, so that plain loops can judge it too.</summary>
internal sealed class HouseGenerator(int seed)
{
    private const int RoomsPerStorey = 8;
    private readonly Random random = new(seed);
    private int boxes;

    public Dwelling Create()
    {
        DwellingBuilder house = new("House " + seed);
        Storey("lower", Inches(97, 1, 8), Inches(48, 0, 1));
        Storey("upper", Inches(109, 1, 8), Inches(54, 0, 1));
        return house.Build();

        void Storey(string id, Distance framing, Distance board)
        {
            house.Add(new Storey(id)
            {
                Ceiling = new() { Framing = framing, Board = Inches(0, 5, 8) },
                Boards = new() { Widths = new[] { board, board } },
            });
            for (int i = 0; i < RoomsPerStorey; i++)
            {
                Room(house.Room(id + "-" + i, i == 0 ? RoomKind.Kitchen : RoomKind.Bedroom, id), i < 3);
            }
        }
    }

    private static Distance Inches(int whole, int numerator, int denominator) => Distance.FromInches(whole, numerator, denominator);

    private static Distance Sixteenths(int count) => Inches(0, 1, 16) * count;

    private T One<T>(params T[] of) => of[random.Next(of.Length)];

    private bool Chance(int percent) => random.Next(100) < percent;

    private void Room(RoomBuilder room, bool withCounter)
    {
        Distance floor = Sixteenths(One(0, 6, 12, 16));
        room.With(r => r.WithFloor(FloorBuildup.Of(new FloorLayer("floor", floor))));
        int[] sides = [random.Next(8, 21), random.Next(8, 21)];
        for (int w = 0; w < 4; w++)
        {
            int feet = sides[w % 2];
            WallBuilder wall = room.Wall("wall-" + w, Distance.FromFeetInches(feet, 0));
            if (w == 0)
            {
                wall.Add(new Opening("door", OpeningKind.Door, Inches(12, 0, 1), Inches(44, 0, 1)));
            }

            Counter? counter = withCounter && w == 1 ? Counter() : null;
            if (counter is not null)
            {
                wall.Add(counter);
            }

            int count = random.Next(1, 5);
            for (int i = 0; i < count; i++)
            {
                wall.Add(Box(floor, counter, feet));
            }
        }
    }

    /// <summary>Ends lie off the grid that boxes are placed on, so that no box stands right on one.</summary>
    private Counter Counter()
    {
        Distance depth = Inches(One(20, 24, 24, 24, 25), 0, 1);
        return new("counter", CounterKind.Kitchen, Inches(12, 1, 16), Inches(72, 1, 16))
        {
            Top = new(Inches(One(34, 34, 34, 36), 0, 1), Datum.FinishedFloor),
            Depth = depth,
            KneeSpace = Chance(20) ? depth : Distance.Zero,
        };
    }

    private DeviceBox Box(Distance floor, Counter? counter, int feet)
    {
        Distance at = Sixteenths(2 * random.Next(16, (feet * 96) - 16));
        bool over = counter is not null && counter.Left < at && at < counter.Right;
        BoxPurpose purpose = over ? BoxPurpose.Counter : One(BoxPurpose.General, BoxPurpose.General, BoxPurpose.Switch, BoxPurpose.Bedside);
        DeviceKind device = purpose == BoxPurpose.Switch ? One(DeviceKind.Switch, DeviceKind.ToggleSwitch, DeviceKind.Dimmer)
            : One(DeviceKind.DuplexReceptacle, DeviceKind.GfciReceptacle, DeviceKind.SingleReceptacle);
        Distance center = purpose == BoxPurpose.General ? Sixteenths(280) : purpose == BoxPurpose.Switch ? Sixteenths(740) : purpose == BoxPurpose.Counter ? Sixteenths(688) : Sixteenths(480);
        Distance asked = center;
        center += Chance(2) ? Sixteenths(random.Next(-160, purpose == BoxPurpose.Switch ? 761 : 801)) : Chance(3) ? Sixteenths(random.Next(-6, 7)) : Distance.Zero;
        BoxSize size = new(Inches(2, 1, 4), One(Inches(3, 1, 2), Inches(3, 5, 8), Inches(3, 3, 4), Inches(4, 0, 1)));
        BoxHeight height = BoxHeight.ToCenter(center, Datum.Subfloor).AtEdge(One(Edge.Bottom, Edge.Center, Edge.Top), size);
        return new("box-" + boxes++, purpose)
        {
            Devices = Chance(15) ? new[] { device, device } : new[] { device },
            Size = size,
            Volume = Volume.FromCubicInches(One(22.5m, 32m)),
            At = at,
            Height = Chance(50) ? height : BoxHeight.To(height.Edge!.Value, height.Value - floor, Datum.FinishedFloor),
            Specified = Chance(30) ? BoxHeight.ToCenter(asked, Datum.Subfloor) : null,
            Approach = One(Approach.Side, Approach.Side, Approach.Either, Approach.Forward),
            Dedicated = Chance(5) ? "freezer" : null,
            Cables = Cables(),
            Clamps = One(CableClamps.None, CableClamps.None, CableClamps.Internal),
        };
    }

    private Items<CableType> Cables()
    {
        CableType one = One(CableType.Parse("14-2"), CableType.Parse("14-2"), CableType.Parse("14-3"), CableType.Parse("12-2"));
        CableType[] cables = new CableType[Chance(97) ? random.Next(1, 3) : random.Next(3, 6)];
        Array.Fill(cables, one);
        return cables;
    }
}
