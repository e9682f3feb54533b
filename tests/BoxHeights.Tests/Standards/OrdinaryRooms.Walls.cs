namespace BoxHeights.Tests.Standards;

/// <content>Walls by what stands against them.</content>
internal sealed partial class OrdinaryRooms
{
    private WallDraft CounterWall(string id)
    {
        WallDraft wall = new(id, storey);
        decimal left = wall.Here;
        decimal right = left + 132;
        bool full = draw.Chance(40);
        Counter counter = new Counter("counter", CounterKind.Kitchen, In(left), In(right)).WithDepth(In(25.5m));
        counter = storey.Says(60) ? counter.WithInterruptions(new[] { new CounterInterruption(InterruptionKind.Sink, In(left + 56), In(left + 76)) }) : counter;
        counter = draw.Chance(30) ? counter.WithBaseStandsOn(Datum.FinishedFloor) : counter;
        _ = wall.Put(counter.WithTop(new Level(In(36), Datum.FinishedFloor)));
        _ = wall.Put(Tiled(new Finish("splash", FinishKind.Tile, In(left), In(right))).WithBottom(new Level(Distance.Zero, Datum.Countertop))
            .WithTop(full ? new Level(In(54), Datum.FinishedFloor) : new Level(In(4), Datum.Countertop)));
        _ = wall.Put(new Covering("uppers", CoveringKind.WallCabinet, In(left), In(left + 48)).WithBottom(new Level(In(54), Datum.FinishedFloor))
            .WithTop(new Level(In(84), Datum.FinishedFloor)).WithLightRail(draw.One<Distance?>(null, In(1.5m))));
        for (int i = 0; i < 4; i++)
        {
            _ = wall.Put(BoxPurpose.Counter, left + 14 + (i * 34), draw.One(Receptacle, DeviceKind.GfciReceptacle, DeviceKind.DecoratorReceptacle));
        }

        if (storey.Crew.For(BoxPurpose.SinkBase) is { } stick)
        {
            DeviceBox sink = storey.Box(BoxPurpose.SinkBase, DeviceKind.SplitReceptacle).WithAt(In(left + 66)).WithHeight(stick.Height);
            _ = wall.Put(draw.Below(3) switch { 0 => sink, 1 => sink.WithDedicated("disposal and dishwasher"), _ => sink.WithSurface(BoxSurface.Cabinet) });
        }

        return wall.Put(BoxPurpose.Dishwasher, left + 90, Receptacle).Gap(140);
    }

    private WallDraft ApplianceWall(string id)
    {
        WallDraft wall = new(id, storey);
        _ = wall.Put(BoxPurpose.Refrigerator, wall.Here + 18, Receptacle).Gap(40).Put(BoxPurpose.Range, wall.Here + 15, DeviceKind.RangeReceptacle);
        if (storey.Crew.For(BoxPurpose.Hood) is { } hood)
        {
            _ = wall.Put(new Covering("hood", CoveringKind.WallCabinet, In(wall.Here), In(wall.Here + 30)).WithBottom(new Level(In(66), Datum.FinishedFloor))
                .WithTop(new Level(In(90), Datum.FinishedFloor)).WithOpenInside(true));
            _ = wall.Put(storey.Box(BoxPurpose.Hood, DeviceKind.SingleReceptacle).WithAt(In(wall.Here + 15)).WithHeight(hood.Height));
        }

        _ = wall.Gap(40).Put(new Covering("pantry", CoveringKind.TallCabinet, In(wall.Here), In(wall.Here + 26)).WithTop(new Level(In(84), Datum.FinishedFloor))).Gap(30);
        return Receptacles(wall, BoxPurpose.General, 1);
    }

    private WallDraft VanityWall(string id)
    {
        WallDraft wall = new(id, storey);
        decimal left = wall.Here;
        _ = wall.Put(new Counter("vanity", CounterKind.Bath, In(left), In(left + 68)).WithDepth(In(22)).WithTop(new Level(In(draw.One(32m, 34m)), Datum.FinishedFloor)));
        bool splash = draw.Chance(60);
        if (storey.Says(30))
        {
            _ = wall.Along(length => Tiled(new Finish("tile", FinishKind.Tile, Distance.Zero, length)));
        }
        else if (splash)
        {
            _ = wall.Put(new Finish("splash", FinishKind.Stone, In(left), In(left + 68)).WithBottom(new Level(Distance.Zero, Datum.Countertop)).WithTop(new Level(In(4), Datum.Countertop)));
        }

        _ = wall.Put(new Covering("mirror", CoveringKind.Mirror, In(left + 4), In(left + 56)).WithBottom(new Level(In(40), Datum.FinishedFloor)).WithTop(new Level(In(73), Datum.FinishedFloor)))
            .Put(BoxPurpose.Bath, left + 61, DeviceKind.GfciReceptacle).Put(BoxPurpose.VanityLight, left + 30, DeviceKind.Luminaire).Gap(76);
        return wall.Put(new Covering("surround", CoveringKind.TubSurround, In(wall.Here), In(wall.Here + 60)).WithTop(new Level(In(76), Datum.FinishedFloor))).Gap(62);
    }

    /// <summary>Tile in a bed of mortar, where somebody has chosen it.</summary>
    private Finish Tiled(Finish tile) => !storey.Says(70) ? tile : tile.WithBed(In(0.125m)).WithThickness(In(storey.Site.One(0.25m, 0.3125m, 0.375m)));

    private WallDraft BedWall(string id)
    {
        WallDraft wall = new(id, storey);
        _ = wall.Put(BoxPurpose.Bedside, wall.Here + 10, Receptacle).Gap(76).Put(BoxPurpose.Bedside, wall.Here + 10, DeviceKind.UsbReceptacle).Gap(24);
        return Receptacles(wall, BoxPurpose.General, draw.Between(1, 3)).Put(BoxPurpose.Television, wall.Here, Receptacle).Gap(20);
    }

    private WallDraft WindowWall(string id)
    {
        WallDraft wall = new WallDraft(id, storey).Deep(storey.Site.One(3.5m, 5.5m));
        if (storey.Says(15))
        {
            _ = wall.Walkway(OpeningKind.SlidingDoor, 72, door => door.WithPocketOn(storey.Site.One<WallEnd?>(null, WallEnd.Left, WallEnd.Right)));
        }

        for (int i = draw.Between(1, 2); i > 0; i--)
        {
            _ = wall.Window(draw.One(24m, 30m, 36m), draw.One(2.25m, 3.25m), draw.Chance(40));
        }

        return wall;
    }

    private WallDraft SeatWall(string id)
    {
        WallDraft wall = new(id, storey);
        _ = wall.Put(BoxPurpose.EndTable, wall.Here + 10, Receptacle).Gap(40).Put(BoxPurpose.Sofa, wall.Here + 20, Receptacle).Gap(60);
        _ = Receptacles(wall, BoxPurpose.General, draw.Between(1, 3)).Put(BoxPurpose.Thermostat, wall.Here, DeviceKind.Thermostat).Gap(20);
        if (draw.Chance(30))
        {
            // A half wall of 42 in with a cap: its switch drops as far as it must.
            decimal length = wall.Here + 60;
            wall = new WallDraft(id, storey).Put(storey.Box(BoxPurpose.Switch, DeviceKind.Switch).WithAt(In(30)).WithHeight(BoxHeight.ToTop(In(36), Datum.Subfloor)));
            _ = wall.Put(BoxPurpose.General, 50, Receptacle).Gap(length);
            return wall.EndAt(42);
        }

        return wall;
    }

    private WallDraft MediaWall(string id)
    {
        WallDraft wall = new(id, storey);
        return wall.Put(BoxPurpose.Media, wall.Here + 20, DeviceKind.DataJack, DeviceKind.TvJack).Put(BoxPurpose.Television, wall.Here + 30, Receptacle).Gap(60)
            .Put(BoxPurpose.General, wall.Here + 10, Receptacle).Gap(20);
    }

    /// <summary>Wainscot to 32 in with a rail on it: receptacles lie in it, switches over it.</summary>
    private WallDraft WainscotWall(string id)
    {
        WallDraft wall = new(id, storey);
        _ = Receptacles(wall, BoxPurpose.General, 2).Put(BoxPurpose.Switch, wall.Here + 10, DeviceKind.Dimmer).Gap(30);
        DistanceRange? thickness = storey.Says(60) ? In(0.5m) : null;
        return wall.Along(length => new Finish("wainscot", FinishKind.Wainscot, Distance.Zero, length).WithTop(new Level(In(32), Datum.Subfloor)).WithThickness(thickness).WithCombustible(storey.Site.One<bool?>(null, true)))
            .Along(length => new Finish("rail", FinishKind.ChairRail, Distance.Zero, length).WithBottom(new Level(In(32), Datum.Subfloor)).WithTop(new Level(In(34.5m), Datum.Subfloor)));
    }

    private WallDraft MachineWall(string id) => new WallDraft(id, storey).Put(BoxPurpose.Laundry, 26, Receptacle).Put(BoxPurpose.Dryer, 48, DeviceKind.DryerReceptacle).Gap(80)
        .Put(BoxPurpose.General, 90, Receptacle).Gap(20);

    /// <summary>Where the storey's board isn't written down, nobody minds seams in a garage: it may never get board.</summary>
    private WallDraft GarageWall(string id)
    {
        WallDraft wall = new(id, storey);
        for (int i = 0; i < 3; i++)
        {
            _ = storey.BoardsAreStated
                ? wall.Put(BoxPurpose.Garage, wall.Here + 10, DeviceKind.GfciReceptacle)
                : wall.Put(storey.Box(BoxPurpose.Garage, DeviceKind.GfciReceptacle).WithAt(In(wall.Here + 10)).WithHeight((storey.Crew.For(BoxPurpose.Garage) ?? storey.Crew.Anywhere(BoxPurpose.Garage)).Height));
            _ = wall.Gap(70);
        }

        return wall;
    }

    private WallDraft DeskWall(string id)
    {
        WallDraft wall = new(id, storey);
        if (draw.Chance(50))
        {
            // A built-in desk: the receptacle under it serves what stands on the floor there.
            _ = wall.Put(new Counter("desk", CounterKind.Desk, In(wall.Here), In(wall.Here + 60)).WithDepth(In(24)).WithTop(new Level(In(30), Datum.FinishedFloor)))
                .Put(BoxPurpose.General, wall.Here + 20, Receptacle);
        }

        return wall.Gap(70).Put(BoxPurpose.Office, wall.Here + 10, Receptacle).Gap(30).Put(BoxPurpose.Office, wall.Here + 10, DeviceKind.DataJack).Gap(30).Put(BoxPurpose.General, wall.Here, Receptacle).Gap(20);
    }

    private WallDraft HallWall(string id)
    {
        WallDraft wall = new(id, storey);
        _ = Receptacles(wall, BoxPurpose.General, draw.Between(1, 3)).Put(BoxPurpose.Switch, wall.Here, DeviceKind.ThreeWaySwitch, DeviceKind.FourWaySwitch).Gap(20);
        Alarm(wall);
        return wall.Put(BoxPurpose.Thermostat, wall.Here + 10, DeviceKind.Thermostat).Gap(30);
    }

    private WallDraft BareWall(string id, RoomKind kind)
    {
        WallDraft wall = new(id, storey);
        if (kind == RoomKind.Basement && storey.Says(75))
        {
            // Furred out with 2 by 2: what goes in is a square box 1-1/2 in deep with a ring.
            _ = wall.Deep(1.5m);
            for (int i = 0; i < 2; i++)
            {
                if (storey.Crew.For(BoxPurpose.Basement) is { } stick)
                {
                    _ = wall.Put(storey.Square(new DeviceBox(storey.NextId(), BoxPurpose.Basement).WithDevices(new[] { DeviceKind.GfciReceptacle })).WithVolume(Volume.FromCubicInches(21))
                        .WithHeight(stick.Height).WithAt(In(wall.Here + 10))).Gap(72);
                }
            }

            return wall;
        }

        BoxPurpose purpose = kind == RoomKind.Basement ? BoxPurpose.Basement : kind == RoomKind.Attic ? BoxPurpose.Attic : BoxPurpose.General;
        return Receptacles(wall, purpose, draw.Between(2, 4));
    }

    private WallDraft ClosetWall(string id)
    {
        WallDraft wall = new(id, storey);
        return wall.Put(new Covering("shelf", CoveringKind.Shelf, In(wall.Here), In(wall.Here + 48)).WithBottom(new Level(In(66), Datum.Subfloor)).WithTop(new Level(In(67), Datum.Subfloor)))
            .Put(BoxPurpose.Closet, wall.Here + 60, Receptacle).Gap(70);
    }

    /// <summary>A wall on which nothing else is: of a wall that another room has on its other side, or of its own.</summary>
    private WallDraft OtherWall(string id, RoomKind kind)
    {
        WallDraft wall = new(id, storey);
        if (!storey.IsOffLevel && storey.Says(60) && shared.Find(one => !backed.Contains(one.Address) && one.Wall.Length.Inches < 260) is { } behind)
        {
            backed.Add(behind.Address);
            return wall.BehindOf(behind);
        }

        if (kind == RoomKind.Bedroom && storey.Says(70))
        {
            _ = wall.Gap(storey.Site.Between(0, 20)).Walkway(storey.Site.One(OpeningKind.BifoldDoor, OpeningKind.BypassDoor), 60, door => door);
        }

        return wall.Gap(storey.Site.Between(90, 130));
    }
}
