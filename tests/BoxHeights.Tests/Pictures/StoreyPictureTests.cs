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
