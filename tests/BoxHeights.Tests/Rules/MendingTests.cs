using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Standards;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Remedies carried out together leave nothing that could be mended, in whatever order, and go about it as a foreman would.</summary>
public sealed class MendingTests
{
    private static readonly RuleSet Rules = RuleSets.OfAHouse;
    private static readonly LayoutEvaluator Evaluator = new(Rules);

    public static TheoryData<string> Mistakes() => new(PlantedMistakes.Kinds.Keys);

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void Mend_AMistakeInAnOrdinaryHouse_LeavesOnlyWhatHasNoRemedy(string name)
    {
        int mended = 0;
        for (int seed = 1; seed <= 800 && mended < Tries.Of(20) / 5; seed++)
        {
            if (PlantedMistakes.Kinds[name](seed, 4 + (seed % 11)) is not { } mistake)
            {
                continue;
            }

            mended++;
            Evaluation before = Evaluator.Evaluate(mistake.House);
            MendedDwelling after = before.Mend();
            string said = "seed " + seed + "\n" + before.ToText() + "\n" + after.ToText();
            Assert.True(after.Left.All(cause => cause.Remedies.All(remedy => remedy is NoneFound)), said);
            Assert.True(after.Evaluation.Findings.All(left => before.Findings.Any(one => one.RuleId == left.RuleId && one.Subject == left.Subject)), said);
            Assert.True(Evaluator.Evaluate(after.Dwelling).Findings.Count == after.Evaluation.Findings.Count, said);
            Assert.True(after.Boxes.All(box => box.Because.All(number => number >= 1 && number <= before.Causes.Count)), said);
            AssertInAnyOrder(mistake.House, after, new Random(seed), said);

            // Whoever has only the sheet sets the mended house: clean, but for what is left.
            Assert.Equal(Keys(after.Evaluation), Keys(Evaluator.Evaluate(MarkSheet.For(before).ToDwelling())));
        }

        Assert.True(mended >= 2, "hardly any house offers a place for this mistake: " + mended);
    }

    private static string[] Keys(Evaluation evaluation) => [.. evaluation.Findings.Select(finding => finding.Key).Order(StringComparer.Ordinal)];

    // Three old boxes and a new one at 13 in over a floor that isn't chosen, one at 16 in over the subfloor: 84 in beside the door are out of reach. What is added is level with the old
    // ones, whatever the floor will be, as the new one at their height is; the other new one is where such are usually set.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Mend_OfARoomWithOldBoxesAndNoFloorYet_AddsWhatItLacks(bool isUntouched)
    {
        DeviceBox Low(string id, int at) => new DeviceBox(id, BoxPurpose.General).WithDevices(DeviceKind.DuplexReceptacle).WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.Parse("13 in to center AFF"));
        DeviceBox Old(string id, int at) => isUntouched ? Low(id, at).WithUntouched(true) : Low(id, at).WithExisting(true);
        DwellingBuilder house = new DwellingBuilder("old").Add(new Storey("first"));
        RoomBuilder room = house.Room("bed", RoomKind.Bedroom, "first");
        room.Wall("north", Distance.FromInches(150)).Add(Old("old-1", 20)).Add(Old("old-2", 120)).Add(Low("new-1", 70).WithHeight(BoxHeight.Parse("16 in to top above subfloor")));
        room.Wall("east", Distance.FromInches(130)).Add(Old("old-3", 60));
        room.Wall("south", Distance.FromInches(150)).Add(new Opening("door", OpeningKind.Door, Distance.FromInches(10), Distance.FromInches(42)));
        room.Wall("west", Distance.FromInches(130)).Add(Low("new-2", 40));
        Evaluation before = Evaluator.Evaluate(house.Build());
        Assert.Equal("wall-outlets", Assert.Single(before.Findings, finding => finding.IsViolation).RuleId);
        MendedDwelling after = before.Mend();
        Assert.DoesNotContain(after.Evaluation.Findings, finding => finding.IsViolation);
        Assert.Equal(2, after.Boxes.Count(box => box.Before is null));
        Assert.All(after.Boxes, box => Assert.Equal("13 in to center above finished floor", box.After.Box.Height!.Value.ToString()));
    }

    [Fact]
    public void Mend_OfAHouseThatIsClean_ChangesNothing()
    {
        for (int seed = 1; seed <= Tries.Of(60); seed++)
        {
            Dwelling house = OrdinaryHouses.Make(seed, 5);
            MendedDwelling mended = Evaluator.Evaluate(house).Mend();
            Assert.Empty(mended.Boxes);
            Assert.Same(house, mended.Dwelling);
        }
    }

    // Three lights on one face at one height, 66 in to center. A window ends at 60 in with 3-1/2 in of casing, its edge at 63-11/16; the plate of the one at 64 in laps it.
    [Fact]
    public void Mend_OneLightOfThreeOnACasing_GoesAsideAlone()
    {
        Distance In(string text) => Distance.Parse(text + " in");
        DwellingBuilder house = new("Porch");
        house.Add(new Storey("first"));
        WallBuilder wall = house.Room("porch", RoomKind.Hall, "first").Wall("north", In("240"));
        wall.With(one => one.WithOpenings(new[]
        {
            new Opening("window", OpeningKind.Window, In("24"), In("60")).WithSill(new Level(In("40"), Datum.Subfloor)).WithHead(new Level(In("80"), Datum.Subfloor))
                .WithCasing(In("3-1/2")).WithReveal(In("3/16")),
        }));
        foreach ((string id, string at) in new[] { ("L1", "64"), ("L2", "120"), ("L3", "180") })
        {
            wall.Add(new DeviceBox(id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithPlate(PlateKind.Standard).WithAt(In(at)).WithHeight(BoxHeight.ToCenter(In("66"), Datum.Subfloor)));
        }

        LayoutEvaluator trim = new(OneBox.Only(RuleSets.RoughInPractice, "trim-clearance") + OneBox.Only(RuleSets.RoughInPractice, "uniform-level") + OneBox.Only(RuleSets.RoughInPractice, "room-for-boxes"));
        MendedDwelling mended = trim.Evaluate(house.Build()).Mend();
        MendedBox moved = Assert.Single(mended.Boxes);
        Assert.Equal("L1", moved.After.Box.Id);
        Assert.Equal(moved.Before!.Height, moved.After.Box.Height);
        Assert.True(moved.After.Box.At > In("64"));
        Assert.Empty(mended.Left);
    }

    // 20 ft of bedroom wall with one box at its end. Studs are declared 16 in on center, so that faces lie at k × 16 ± 3/4 in, and a box 2-1/4 in wide is centered 1-7/8 in off the stud's middle.
    [Fact]
    public void Mend_AnOutletThatLacks_IsAddedAtAStudThatStands()
    {
        Distance In(string text) => Distance.Parse(text + " in");
        DwellingBuilder house = new("Long room");
        house.Add(new Storey("first"));
        RoomBuilder room = house.Room("bedroom", RoomKind.Bedroom, "first");
        foreach (string side in new[] { "north", "east", "south", "west" })
        {
            room.Wall(side, In(side is "north" or "south" ? "240" : "120")).With(wall => wall.WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared)))
                .Add(new DeviceBox(side, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithSize(new BoxSize(In("2-1/4"), In("3-3/4")))
                    .WithMounting(new Mounting(MountingMethod.Stud)).WithAt(In("17-7/8")).WithHeight(BoxHeight.ToTop(In("16"), Datum.Subfloor)));
        }

        LayoutEvaluator spacing = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets") + RuleSets.RoughInPractice);
        MendedDwelling mended = spacing.Evaluate(house.Build()).Mend();
        Assert.NotEmpty(mended.Boxes);
        Assert.Empty(mended.Left);
        foreach (MendedBox added in mended.Boxes)
        {
            Assert.Null(added.Before);
            decimal off = added.After.Box.At!.Value.Ticks / 2_032_000m % 16;
            Assert.True(off is 1.875m or 14.125m, added.ToString());
            Assert.NotNull(added.After.Box.Mounting?.Stud);
        }
    }

    // Doors 2 to 5 ft from each other leave pieces of wall that each lack an outlet of their own (NEC 210.52(A)(2): 2 ft or more). A second road takes one remedy, evaluates, and takes the next.
    [Theory]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(12)]
    public void Mend_PiecesOfWallThatEachLackAnOutlet_AddsWhatOneAfterTheOtherWould(int doors)
    {
        Random random = new(doors);
        int at = 0;
        List<Opening> openings = [];
        for (int i = 0; i < doors; i++)
        {
            at += random.Next(24, 60);
            openings.Add(new Opening("d" + i, OpeningKind.Door, Distance.FromInches(at), Distance.FromInches(at += 32)));
        }

        Wall Side(string id, int length, Items<Opening> doorsIn) => new Wall(id, Distance.FromInches(length)).WithTurnDegrees(90).WithOpenings(doorsIn);
        Room room = new Room("room", RoomKind.Bedroom, "first")
            .WithWalls(new[] { Side("north", at + 40, new(openings)), Side("east", 120, default), Side("south", at + 40, default), Side("west", 120, default) });
        LayoutEvaluator spacing = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "wall-outlets") + RuleSets.RoughInPractice);
        Dwelling house = new Dwelling("Corridor of doors").WithStoreys(new[] { new Storey("first") }).WithRooms(new[] { room });
        MendedDwelling mended = spacing.Evaluate(house).Mend();
        while (spacing.Evaluate(house).Causes.FirstOrDefault(cause => cause.Remedies.Any(remedy => remedy is AddBox)) is { } lack)
        {
            house = lack.Remedies.OfType<AddBox>().First().ApplyTo(house);
        }

        Assert.InRange(mended.Boxes.Count, doors, 4 * doors);
        Assert.Empty(mended.Left);
        Assert.Equal(
            house.PlacedBoxes().OrderBy(placed => placed.Box.Id, StringComparer.Ordinal),
            mended.Dwelling.PlacedBoxes().OrderBy(placed => placed.Box.Id, StringComparer.Ordinal));
    }

    /// <summary>Each box changed once, one after another in some order, comes to the same.</summary>
    private static void AssertInAnyOrder(Dwelling house, MendedDwelling mended, Random random, string said)
    {
        MendedBox[] boxes = mended.Boxes.ToArray();
        random.Shuffle(boxes);
        foreach (MendedBox box in boxes)
        {
            house = box.Before is null ? house.WithBox(box.After) : house.WithBoxes(one => one.Id == box.After.Box.Id ? box.After.Box : one);
        }

        Assert.True(
            new HashSet<PlacedBox>(house.PlacedBoxes()).SetEquals(mended.Dwelling.PlacedBoxes()) && Evaluator.Evaluate(house).Findings.Count == mended.Evaluation.Findings.Count, said);
    }
}
