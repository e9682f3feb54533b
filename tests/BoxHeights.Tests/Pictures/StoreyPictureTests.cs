using System;
using System.Linq;
using System.Xml.Linq;
using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Pictures;

public sealed class StoreyPictureTests
{
    // The hall's first wall runs to the right from (0, 0); the den's runs down from (200, 0), so that 30 in along it and 20 in into the den is at (180, 30).
    [Fact]
    public void OnStorey_OfATurnedRoom_IsWhereTheDrawingHasIt()
    {
        StoreyView storey = Evaluated().Storey("ground");
        Assert.Equal(["hall", "den"], storey.Rooms.Select(room => room.Room.Id));
        Assert.Equal(["loose"], storey.NotPlaced);
        Assert.Equal(At("180", "30"), storey.Rooms[1].OnStorey(At("30", "20")));
        Assert.Equal(At("37", "11"), storey.Rooms[0].OnStorey(At("30", "6")));
        Assert.Throws<ArgumentException>(() => Evaluated().Storey("attic"));
    }

    [Fact]
    public void Walls_ReadFromThePicture_AreWhereTheDrawingHasThem()
    {
        StoreyPicture picture = StoreyPicture.For(Evaluated(), "ground");
        SvgReader svg = new(picture.ToSvg());
        decimal scale = svg.Data("scale") / 1000m;
        int looked = 0;
        foreach (PlacedRoomView placed in picture.Storey.Rooms)
        {
            foreach (PlanWall wall in placed.Room.Walls)
            {
                XElement face = svg.All.Single(one => (string?)one.Attribute("class") == "bh-face" && (string?)one.Parent!.Attribute("data-address") == wall.Address);
                string[] numbers = face.Attribute("d")!.Value.Replace("M", "", StringComparison.Ordinal).Replace("L", "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries);
                PlanPoint start = placed.OnStorey(wall.Start);
                Assert.InRange(start.Right.Ticks - ((SvgReader.Thousandths(numbers[0]) - svg.Data("left")) * scale), -scale, scale);
                Assert.InRange(start.Into.Ticks - ((SvgReader.Thousandths(numbers[1]) - svg.Data("top")) * scale), -scale, scale);
                looked++;
            }
        }

        Assert.Equal(8, looked);
        Assert.Empty(svg.Clashes());
        Assert.Contains(svg.Texts(), text => text.Text.Contains("loose", StringComparison.Ordinal));
    }

    // Two rooms of 96 × 60 in side by side, with a box on each of both sides of the wall between them, 96 to 100-1/2 in from the left.
    [Fact]
    public void Labels_OfBoxesNamedAfterTheirRoom_LeaveItOutAndStayOutOfTheOther()
    {
        SvgReader svg = new(StoreyPicture.For(Evaluated("hall-general", "den-general"), "ground").ToSvg());
        (string Text, decimal X)[] labels = [.. svg.All.Where(one => (string?)one.Attribute("class") == "bh-box-name").Select(one => (one.Value, SvgReader.Thousandths(one.Attribute("x")!.Value)))];
        Assert.Equal(["general", "general"], labels.Select(label => label.Text));
        decimal between = svg.Data("left") + (In(98m).Ticks / (svg.Data("scale") / 1000m));
        Assert.True(labels[0].X < between && labels[1].X > between);
        Assert.Contains(svg.Texts(), text => text.Text.Contains("general in hall is hall-general", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("hall-general", "hall-general, general")]
    [InlineData("hallway", "hallway, general")]
    [InlineData("hall-", "hall-, general")]
    [InlineData("den-switch", "den-switch, general")]
    public void Labels_ThatWouldntTellABoxOfItsRoom_AreItsWholeId(string id, string labels)
    {
        DeviceBox other = Box("general").WithAt(CaseFile.Inches("30"));
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("ground"));
        Square(house.Room("hall", RoomKind.Hall, "ground").With(room => room.WithPlace(new RoomPlace(At("0", "0")))), 0, Box(id).WithAt(CaseFile.Inches("70")), other);
        SvgReader svg = new(StoreyPicture.For(new LayoutEvaluator(RuleSet.Empty).Evaluate(house.Build()), "ground").ToSvg());
        Assert.Equal(labels.Split(", ").Order(StringComparer.Ordinal), svg.All.Where(one => (string?)one.Attribute("class") == "bh-box-name").Select(one => one.Value).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(svg.Texts(), text => text.Text.Contains("labeled by the rest", StringComparison.Ordinal));
    }

    private static Evaluation Evaluated(string left, string right)
    {
        DwellingBuilder house = new DwellingBuilder("case").Add(new Storey("ground"));
        Square(house.Room("hall", RoomKind.Hall, "ground").With(room => room.WithPlace(new RoomPlace(At("0", "0")))), 1, Box(left).WithAt(CaseFile.Inches("20")));
        Square(house.Room("den", RoomKind.LivingRoom, "ground").With(room => room.WithPlace(new RoomPlace(At("100-1/2", "0")))), 3, Box(right).WithAt(CaseFile.Inches("40")));
        return new LayoutEvaluator(RuleSet.Empty).Evaluate(house.Build());
    }

    private static void Square(RoomBuilder room, int wall, params DeviceBox[] boxes)
    {
        for (int i = 0; i < 4; i++)
        {
            WallBuilder one = room.Wall("abcd".Substring(i, 1), CaseFile.Inches(i % 2 == 0 ? "96" : "60"));
            foreach (DeviceBox box in i == wall ? boxes : [])
            {
                one.Add(box);
            }
        }
    }

    private static DeviceBox Box(string id) => new DeviceBox(id, BoxPurpose.General).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));

    private static Evaluation Evaluated()
    {
        DwellingBuilder house = new("case");
        house.Add(new Storey("ground"));
        RoomBuilder hall = house.Room("hall", RoomKind.Hall, "ground").With(room => room.WithPlace(new RoomPlace(At("7", "5"))));
        RoomBuilder den = house.Room("den", RoomKind.LivingRoom, "ground").With(room => room.WithPlace(new RoomPlace(At("200", "0")).WithTurnDegrees(90m)));
        house.Room("loose", RoomKind.Closet, "ground");
        foreach (RoomBuilder room in new[] { hall, den })
        {
            room.Wall("a", CaseFile.Inches("96")).Add(new DeviceBox(room == hall ? "h" : "d", BoxPurpose.General).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("16 in to top above subfloor")));
            room.Wall("b", CaseFile.Inches("60"));
            room.Wall("c", CaseFile.Inches("96"));
            room.Wall("d", CaseFile.Inches("60"));
        }

        return new LayoutEvaluator(RuleSet.Empty).Evaluate(house.Build());
    }

    private static PlanPoint At(string right, string into) => new(CaseFile.Inches(right), CaseFile.Inches(into));
}
