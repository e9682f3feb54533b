using System;
using System.Linq;
using BoxHeights.Tests.Rules;

namespace BoxHeights.Tests.Standards;

/// <content>Scenes in which a plan shows a number.</content>
public sealed partial class HabitCaseTests
{
    private static RoomPlan Plan(Dwelling house, params string[] rows) => new RoughInPlanner(new RuleSet(rows.Select(id => Practice.FirstOrDefault(row => row.Id == id) ?? Outlets.Row(id)!))).Plan(house);

    private static Items<BoxHeights.Rules.Rule> Practice => RuleSets.RoughInPractice.Rules;

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
        return plan.Dwelling.PlacedBoxes().Count(placed => placed.Box.Purpose == BoxPurpose.General).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>How many receptacles the shorter of a foyer's two walls gets where there is no break between them.</summary>
    private static string OnAFoyersWall(Distance length)
    {
        Dwelling house = new SquareRoom { Kind = RoomKind.Foyer, Wide = length, Deep = In("125") }.House()
            .WithWalls(wall => wall.Id is "north" or "west" ? wall.WithOpenings(new[] { new Opening("to-" + wall.Id, OpeningKind.Cased, Distance.Zero, wall.Length) }) : wall);
        RoomPlan plan = Plan(house, "foyer-outlets", "general-height", "room-for-boxes");
        return plan.Dwelling.PlacedBoxes().Count(placed => placed.Address == "square/south" && placed.Box.Purpose == BoxPurpose.General).ToString(System.Globalization.CultureInfo.InvariantCulture);
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
        return plan.Dwelling.PlacedBoxes().Count(placed => placed is { Address: "hall/s", Box.Purpose: var purpose } && purpose == BoxPurpose.Switch).ToString(System.Globalization.CultureInfo.InvariantCulture);
    }

    private static Items<SwitchPlace> Places(string left, Distance right, Distance casing, Func<Wall, Wall>? change = null)
    {
        Opening door = new Opening("entrance", OpeningKind.Door, In(left), right).WithLeaf(In("30")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Away).WithCasing(casing).WithReveal(In("3/16"));
        Wall north = new Wall("north", In("144")).WithOpenings(new[] { door });
        Room room = new Room("bedroom", RoomKind.Bedroom, "ground").WithWalls(new[] { change is null ? north : change(north), new Wall("east", In("120")), new Wall("south", In("144")), new Wall("west", In("120")) });
        return SwitchSide.For(room, "north", "entrance").Places;
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
