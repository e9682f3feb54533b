using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Planned boxes are set like most of their kind in the storey: level rows of plates are common practice, no source.</summary>
public class SharedHeightTests
{
    // Of as many at one height as at another, the lower; else the one that more have, wherever it is listed.
    [Theory]
    [InlineData(18, 16, 18, 18)]
    [InlineData(18, 18, 16, 18)]
    [InlineData(16, 18, 16, 16)]
    [InlineData(16, 18, 18, 16, 16)]
    [InlineData(16, 16, 16, 18, 18)]
    public void Plan_OfARoom_SetsReceptaclesLikeMostInTheStorey(int expected, params int[] there)
    {
        DwellingBuilder house = new("two rooms");
        house.Add(new Storey("first"));
        RoomBuilder bedroom = Square(house, "bedroom");
        for (int i = 0; i < there.Length; i++)
        {
            bedroom.FindWall("north").Add(new DeviceBox("R" + i, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(In(20 + (i * 30))).WithHeight(BoxHeight.ToTop(In(there[i]), Datum.Subfloor)));
        }

        Square(house, "office");
        RuleSet rules = RuleSets.OfAHouse;
        RoomPlan plan = new RoughInPlanner(rules).Plan(house.Build(), "office");
        PlacedBox[] planned = plan.Dwelling.PlacedBoxes().Where(placed => placed.Address.StartsWith("office/", System.StringComparison.Ordinal) && placed.Box.Purpose == BoxPurpose.General).ToArray();
        Assert.NotEmpty(planned);
        Assert.All(planned, placed => Assert.Equal(BoxHeight.ToTop(In(expected), Datum.Subfloor), placed.Box.Height));
    }

    private static RoomBuilder Square(DwellingBuilder house, string id)
    {
        RoomBuilder room = house.Room(id, RoomKind.Office, "first");
        foreach (string wall in new[] { "north", "east", "south", "west" })
        {
            room.Wall(wall, In(144));
        }

        return room;
    }
}
