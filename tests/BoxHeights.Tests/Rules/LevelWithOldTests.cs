using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>What is level with a box that was there before in its room isn't told to hang elsewhere, wherever others of its purpose hang.</summary>
public sealed class LevelWithOldTests
{
    private static readonly LayoutEvaluator Level = new(OneBox.Only(RuleSets.RoughInPractice, "uniform-level"));
    private static readonly LayoutEvaluator Height = new(OneBox.Only(RuleSets.RoughInPractice, "general-height"));

    // Three receptacles of the storey at 16 in to the top, a new one in the study beside an old one at 14 in. Whether it stays out of this work or only was there before.
    [Theory]
    [InlineData("14", true, null)]
    [InlineData("14-1/4", true, null)]
    [InlineData("14-3/8", true, "new")]
    [InlineData("14", false, "new")]
    public void UniformLevel_BesideAnOldBox_IsMetThereToo(string top, bool isOldThere, string? found)
    {
        Dwelling house = House("14", top, isOldThere);
        Assert.Equal(found, Level.Evaluate(house).Findings.SingleOrDefault()?.Subject);
        Assert.Equal(found, Level.Evaluate(house.WithBoxes(box => box.Id == "old" ? box.WithExisting(false).WithUntouched(true) : box)).Findings.SingleOrDefault()?.Subject);
        AllowedView there = Level.Evaluate(house).AllowedAt("new", In("90"));
        Assert.Equal(isOldThere, there.Sure.Contains(In("14-1/4")));
        Assert.True(there.Sure.Contains(In("16")));
        Assert.False(there.Sure.Contains(In("15")));
    }

    // However many are level with an old box, they make no level for the storey's others; of those alone, three at 16 in and one at 20 in, the one is off.
    [Fact]
    public void UniformLevel_OfBoxesBesideAnOldOne_IsNoOtherRooms()
    {
        Dwelling house = House("14", "14", true);
        DeviceBox added = house.PlacedBoxes().Single(placed => placed.Box.Id == "new").Box;
        for (int i = 0; i < 4; i++)
        {
            house = house.WithBox(new("study/north", added.WithId("more-" + i).WithAt(Distance.FromInches(20 + (15 * i)))));
        }

        Assert.Empty(Level.Evaluate(house).Findings);
        Assert.Equal("bed-1", Assert.Single(Level.Evaluate(house.WithBoxes(box => box.Id == "bed-1" ? box.WithHeight(Top("20")) : box)).Findings).Subject);
        Assert.Equal(3, Level.Evaluate(house.WithBoxes(box => box.WithExisting(false))).Findings.Count);
    }

    // 10 in to the top is below what is usual; beside an old one at that height it isn't remarked on, in the next room it is.
    [Fact]
    public void Habit_BesideAnOldBox_IsSilentInItsRoomAlone()
    {
        Assert.Empty(Height.Evaluate(House("10", "10", true)).Findings);
        Assert.Equal("new", Assert.Single(Height.Evaluate(House("10", "10", false)).Findings).Subject);
        Dwelling next = House("10", "16", true).WithBoxes(box => box.Id == "bed-1" ? box.WithHeight(Top("10")) : box);
        Assert.Equal("bed-1", Assert.Single(Height.Evaluate(next).Findings).Subject);
    }

    // What is shaded in a picture of the wall is where nothing is found of the box when it is really set there, at its place and every 1/2 in of height.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void AllowedFor_BesideAnOldBox_IsWhereNothingIsFoundOfIt(bool isOldThere)
    {
        BoxSize size = new(In("2-1/4"), In("3-3/4"));
        Dwelling house = House("10", "10", isOldThere).WithBoxes(box => box.WithSize(size));
        Items<BandView> bands = Height.Evaluate(house).AllowedFor("new");
        Assert.Contains(bands, band => band.LimitedBy.Contains("general-height"));
        int silent = 0;
        for (int halves = 8; halves < 80; halves++)
        {
            Distance top = Distance.FromInches(halves / 2, halves % 2, 2);
            Distance center = BoxHeight.ToTop(top, Datum.Subfloor).AtEdge(Edge.Center, size).Value;
            bool isSilent = Height.Evaluate(house.WithBoxes(box => box.Id == "new" ? box.WithHeight(BoxHeight.ToTop(top, Datum.Subfloor)) : box)).Findings.Count == 0;
            Assert.All(bands, band => Assert.Equal(isSilent, band.Sure.Contains(center)));
            silent += isSilent ? 1 : 0;
        }

        Assert.Equal(isOldThere, bands[0].Sure.Contains(In("8-1/8")));
        Assert.InRange(silent, 5, 60);
    }

    // Set from different surfaces they are level for sure only where the floor is known: 3/4 in under 14 in above the subfloor is 13-1/4 in above the finished floor.
    [Theory]
    [InlineData("3/4", "13-1/4", 0)]
    [InlineData("3/4", "14-1/4", 1)]
    [InlineData(null, "13-1/4", 0)]
    [InlineData(null, "20", 0)]
    public void Habit_BesideAnOldBoxSetFromAnotherSurface_GoesByTheFloorBetween(string? floor, string aboveFloor, int findings)
    {
        Dwelling house = House("14", "14", true).WithBoxes(box => box.Id == "new" ? box.WithHeight(BoxHeight.ToTop(In(aboveFloor), Datum.FinishedFloor)) : box);
        house = house.WithRooms(house.Rooms.Select(room => floor is null ? room : room.WithFloor(OneBox.Floor(In(floor)))));
        Assert.Equal(findings, Height.Evaluate(house).Findings.Count);
    }

    // Whoever moves the old one, or takes it away, changes what is said of the new one.
    [Fact]
    public void Session_ThatMovesAnOldBox_SaysWhatAFreshEvaluationSays()
    {
        LayoutEvaluator both = new(OneBox.Only(RuleSets.RoughInPractice, "uniform-level") + OneBox.Only(RuleSets.RoughInPractice, "general-height"));
        LayoutSession session = both.Open(House("14", "14", true));
        Assert.Empty(session.Findings);
        SessionChange moved = session.Move("old", In("40"), Top("18"));
        Assert.Equal(["general-height new", "uniform-level new"], moved.Appeared.Select(finding => finding.RuleId + " " + finding.Subject).Order());
        Assert.Equal(moved.Appeared.Count, session.Move("old", In("40"), Top("14")).Cleared.Count);
        Assert.Equal(2, session.Remove("old").Appeared.Count);
        Assert.Equal(2, session.Add("study/south", House("14", "14", true).PlacedBoxes().Single(placed => placed.Box.Id == "old").Box).Cleared.Count);
        Assert.Equal(2, session.Change("old", box => box.WithExisting(false)).Appeared.Count(finding => finding.Subject == "new"));
        Assert.Equal(both.Evaluate(session.ToDwelling()).Findings.Select(finding => finding.Key), session.Findings.Select(finding => finding.Key));
    }

    /// <summary>A bedroom with three receptacles at 16 in to the top, and a study with one that was there before and a new one.</summary>
    private static Dwelling House(string old, string top, bool isOldThere)
    {
        DeviceBox Box(string id, int at, string height) => new DeviceBox(id, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(Distance.FromInches(at)).WithHeight(Top(height));
        DwellingBuilder house = new DwellingBuilder("old study").Add(new Storey("first"));
        house.Room("bed", RoomKind.Bedroom, "first").Wall("north", In("150")).Add(Box("bed-1", 20, "16")).Add(Box("bed-2", 70, "16")).Add(Box("bed-3", 120, "16"));
        RoomBuilder study = house.Room("study", RoomKind.Office, "first");
        study.Wall("north", In("150")).Add(Box("new", 90, top));
        WallBuilder south = study.Wall("south", In("150"));
        if (isOldThere)
        {
            south.Add(Box("old", 40, old).WithExisting(true));
        }

        return house.Build();
    }

    private static BoxHeight Top(string inches) => BoxHeight.ToTop(In(inches), Datum.Subfloor);

    private static Distance In(string inches) => Distance.Parse(inches + " in");
}
