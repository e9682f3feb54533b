using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <content>Scenes in which a plan shows a number.</content>
public sealed partial class HabitCaseTests
{
    private static RoomPlan Plan(Dwelling house, params string[] rows) => Plan(house, rows.Select(id => Practice.FirstOrDefault(row => row.Id == id) ?? Outlets.Row(id)!));

    private static RoomPlan Plan(Dwelling house, IEnumerable<BoxHeights.Rules.Rule> rows) => new RoughInPlanner(new RuleSet(rows)).Plan(house);

    private static Items<BoxHeights.Rules.Rule> Practice => RuleSets.RoughInPractice.Rows;

    /// <summary>Where a bell goes beside a front door from 100 to 136 in, hung on its left as one comes in.</summary>
    private static Distance? Bell()
    {
        Opening door = new Opening("front", OpeningKind.Door, In("164"), In("200")).WithHinge(WallEnd.Right).WithSwing(DoorSwing.Into).WithEntrance(EntranceSide.Inside);
        SquareRoom foyer = new() { Kind = RoomKind.Foyer, Wide = In("300"), NorthOpenings = [door], NorthIsBackOf = "street/face" };
        RoomPlan plan = Plan(foyer.House().WithOutside(new[] { new OutsideFace("street").WithWalls(new[] { new Wall("face", In("300")) }) }), "usual-doorbell", "doorbell-height");
        return plan.Reasons.SingleOrDefault(one => one.RuleId == "usual-doorbell") is { } reason ? plan.Dwelling.FindBox(reason.Id)!.Box.At : null;
    }

    /// <summary>How many receptacles are planned on one wall space that is reached to both ends by one, that much short of 72 in.</summary>
    private static string OnARun(Distance inHand)
    {
        Distance half = In("72") - inHand;
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[]
        {
            new Room("den", RoomKind.Office, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithWalls(new[]
            {
                new Wall("w", In("300")).WithOpenings(new[] { new Opening("a", OpeningKind.Cased, Distance.Zero, In("20")), new Opening("b", OpeningKind.Cased, In("20") + half + half, In("300")) }),
            }),
        });
        RoomPlan plan = Plan(house, "wall-outlets", "general-height", "room-for-boxes");
        return plan.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.General).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>How many receptacles the shorter of a foyer's two walls gets where there is no break between them.</summary>
    private static string OnAFoyersWall(Distance length)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Foyer, Wide = length, Deep = In("125") }.House()
            .WithWalls(wall => wall.Id is "north" or "west" ? wall.WithOpenings(new[] { new Opening("to-" + wall.Id, OpeningKind.Cased, Distance.Zero, wall.Length) }) : wall);
        return OnTheSouthWall(house, Outlets.Row("foyer-outlets"));
    }

    /// <summary>The same of a wall between two of 90 in, each of which has to have a receptacle that is so far from its ends that both serve all three.</summary>
    private static string OnAWallBetween(Distance length, BoxHeights.Rules.Rule row)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Office, Wide = length, Deep = In("90") }.House()
            .WithWalls(wall => wall.Id == "north" ? wall.WithOpenings(new[] { new Opening("way", OpeningKind.Cased, Distance.Zero, wall.Length) }) : wall);
        return OnTheSouthWall(house, row);
    }

    private static string OnTheSouthWall(Dwelling house, BoxHeights.Rules.Rule row)
    {
        RoomPlan plan = Plan(house, Practice.Where(one => one.Id is "general-height" or "room-for-boxes").Append(row));
        return plan.Dwelling.PlacedBoxes().Count(placed => placed.Address == "square/south" && placed.Box.Purpose == BoxPurpose.General).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>The places of what is planned left of a bed from 60 to 120 in.</summary>
    private static Distance[] BesideABed(params BoxPurpose[] purposes)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, Wide = In("220"), Deep = In("140"), Fixtures = [SquareRoom.Against("bed", FixtureKind.Bed, "north", In("60"), In("120"), In("80"))] }.House();
        RoomPlan plan = new RoughInPlanner(RuleSets.RoughInPractice, RoughInOptions.Default.WithExtras(purposes)).Plan(house, SquareRoom.Id);
        return [.. plan.Dwelling.PlacedBoxes().Where(placed => purposes.Contains(placed.Box.Purpose) && placed.Box.At < In("60")).Select(placed => placed.Box.At!.Value).OrderDescending()];
    }

    /// <summary>How many switches are at the door to a bedroom in a hall whose one way in is so far off: 108 in along one wall and 144 in along the next are 180 in.</summary>
    private static string InAHall(Distance apart)
    {
        Opening way = new("way", OpeningKind.Cased, In("117"), In("147"));
        Distance middle = In("144") + apart - In("180");
        Opening door = new Opening("door", OpeningKind.Door, middle - In("15"), middle + In("15")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away);
        Dwelling house = new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[]
        {
            new Room("hall", RoomKind.Hall, "ground").WithWalls(new[]
            {
                new Wall("s", In("400")).WithOpenings(new[] { door }).WithBackOf("bed/n"), new Wall("e", In("240")), new Wall("n", In("400")), new Wall("w", In("240")).WithOpenings(new[] { way }),
            }),
            new Room("bed", RoomKind.Bedroom, "ground").WithWalls(new[] { new Wall("n", In("400")) }),
        });
        RoomPlan plan = Plan(house, "usual-light", "entrance-switches", "switch-height");
        return plan.Dwelling.PlacedBoxes().Count(placed => placed is { Address: "hall/s", Box.Purpose: var purpose } && purpose == BoxPurpose.Switch).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>How many switches a room gets that has two ways in with their middles so far apart, and one far from both.</summary>
    private static string WithThreeWaysIn(Distance apart)
    {
        Opening Way(string id, Distance middle) => new(id, OpeningKind.Cased, middle - In("15"), middle + In("15"));
        Dwelling house = new SquareRoom { Kind = RoomKind.FamilyRoom, Wide = In("300"), Deep = In("240"), NorthOpenings = [Way("one", In("60")), Way("two", In("60") + apart)], SouthOpenings = [Way("three", In("100"))] }.House();
        return Plan(house, "usual-light", "entrance-switches", "switch-height").Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.Switch).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>At what height a switch goes where the set has no row for its height.</summary>
    private static BoxHeight? SwitchAlone()
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Bedroom, NorthOpenings = [new("way", OpeningKind.Cased, In("60"), In("92"))] }.House();
        return Plan(house, "usual-light", "entrance-switches").Dwelling.PlacedBoxes().Single(placed => placed.Box.Purpose == BoxPurpose.Switch).Box.Height;
    }

    /// <summary>How far behind the only vehicle door the opener's receptacle hangs.</summary>
    private static Distance Opener()
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Garage, Wide = In("240"), Deep = In("240"), NorthOpenings = [new("vehicles", OpeningKind.GarageDoor, In("60"), In("168"))] }.House();
        RoomPlan plan = Plan(house, "usual-door-opener");
        return plan.Dwelling.FindBox(plan.Reasons.Single(one => one.RuleId == "usual-door-opener").Id)!.Box.Plan!.Value.Into;
    }

    /// <summary>Whether a disposal from 120 to 130 in is switched where what covers the wall leaves one place for a plate, so far to its left.</summary>
    private static string BesideADisposal(Distance off)
    {
        Distance place = In("120") - off;
        Covering Glass(string id, Distance left, Distance right) => new Covering(id, CoveringKind.Mirror, left, right).WithBottom(new Level(In("30"), Datum.Subfloor));
        Dwelling house = new SquareRoom
        {
            Kind = RoomKind.Kitchen,
            Wide = In("240"),
            Fixtures = [SquareRoom.Against("sink", FixtureKind.Sink, "north", In("110"), In("140"), In("24")), SquareRoom.Against("disposal", FixtureKind.Disposal, "north", In("120"), In("130"), In("12"))],
        }.House().WithWalls(wall => wall.Id == "north" ? wall.WithCoverings(new[] { Glass("left", Distance.Zero, place - In("1-3/8")), Glass("right", place + In("1-3/8"), wall.Length) }) : wall);
        return YesNo(Plan(house, "sink-base-place", "sink-base-height", "switch-height", "disposal-switch", "room-for-boxes", "not-buried").Reasons.Any(one => one.RuleId == "disposal-switch"));
    }

    // NEC 210.52(B)(3), from memory: two circuits at least serve a kitchen's counters.
    [Fact]
    public void Circuits_OfAKitchensCounters_AreTwo()
    {
        RoomPlan plan = Plan(new SquareRoom { Kind = RoomKind.Kitchen, Wide = In("240"), NorthCounters = [new Counter("counter", CounterKind.Kitchen, Distance.Zero, In("240")).WithTop(new Level(In("36"), Datum.FinishedFloor)).WithDepth(In("25"))] }.House(), "counter-outlets", "counter-height", "counter-circuits", "room-for-boxes");
        Assert.Equal(["on circuit 1 of 2", "on circuit 2 of 2"], plan.Reasons.Select(one => one.Reason).SelectMany(reason => new[] { 1, 2, 3 }.Select(number => "on circuit " + number + " of 2").Where(words => reason.Contains(words, StringComparison.Ordinal))).Distinct().Order());
        Assert.DoesNotContain(plan.Reasons, one => one.Reason.Contains("on circuit 1 of 3", StringComparison.Ordinal));
    }

    private static Items<SwitchPlace> Places(string left, Distance right, Distance casing, Func<Wall, Wall>? change = null)
    {
        Opening door = new Opening("entrance", OpeningKind.Door, In(left), right).WithLeaf(In("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away).WithCasing(casing).WithReveal(In("3/16"));
        Wall north = new Wall("north", In("144")).WithOpenings(new[] { door });
        Room room = new Room("bedroom", RoomKind.Bedroom, "ground").WithWalls(new[] { change is null ? north : change(north), new Wall("east", In("120")), new Wall("south", In("144")), new Wall("west", In("120")) });
        BoxHeights.Rules.SwitchesAtEntrances habit = (BoxHeights.Rules.SwitchesAtEntrances)Practice.First(row => row.Id == "entrance-switches");
        return SwitchSide.For(room, "north", "entrance", habit.Box, PartsCatalog.Generic, null, habit, LengthUnits.Inches).Places;
    }

    private static Func<Wall, Wall> Cupboard(Distance left) => wall => wall.WithCoverings(new[] { new Covering("cupboard", CoveringKind.TallCabinet, left, wall.Length) });

    /// <summary>Whether a cabinet right of the door is in the way of its switch at 96-1/8 in.</summary>
    private static string Covered(Func<Covering, Covering> change, string clear) =>
        Places("60", In("92"), In("2-1/4"), wall => wall.WithCoverings(new[] { change(new Covering("cabinet", CoveringKind.WallCabinet, In("95"), In("110"))) }))[0].At == In("96-1/8") ? clear : "in its way";

    private static BoxHeight? Chime()
    {
        RoomPlan plan = Plan(new SquareRoom { Kind = RoomKind.Hall }.House(), "usual-chime");
        return plan.Dwelling.FindBox(plan.Reasons.Single(one => one.RuleId == "usual-chime").Id)!.Box.Height;
    }

    /// <summary>Whether one more is planned beside a thing from 60 to 120 in with receptacles so far off its sides.</summary>
    private static string Beside(FixtureKind kind, Distance off, string row)
    {
        DeviceBox Own(string id, Distance at) => SquareRoom.Box("duplex-receptacle", "general", at, In("14")).WithId(id);
        SquareRoom room = new()
        {
            Kind = RoomKind.Bedroom,
            Wide = In("220"),
            Deep = In("140"),
            Fixtures = [SquareRoom.Against("thing", kind, "north", In("60"), In("120"), In("30"))],
            North = [Own("left", In("60") - off), Own("right", In("120") + off)],
        };
        return Plan(room.House(), "wall-outlets", row, "room-for-boxes").Reasons.Any(one => one.RuleId == row) ? "added" : "there";
    }
}
