using System.Linq;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Standards;

/// <summary>Good work that looks wrong at first sight: no rule set may remark on it.</summary>
public sealed class DecoyTests
{
    private static readonly NecEdition[] Editions = [NecEdition.Nec2017, NecEdition.Nec2020, NecEdition.Nec2023, NecEdition.Nec2026];

    // 97-1/8 rough, 5/8 or 1/2 ceiling, 48 in sheets: the seam is at 48-1/2 or 48-5/8.
    [Theory]
    [InlineData("5/8", true)]
    [InlineData("1/2", true)]
    [InlineData("5/8", false)]
    [InlineData("1/2", false)]
    public void SwitchAt48ToTheTop_HalfAnInchUnderTheSeam_IsSilent(string ceiling, bool boardsStated) => AssertSilent(Switch(Under(ceiling, boardsStated), "48", Edge.Top));

    [Fact]
    public void SwitchWithItsBottomOnTheSeam_IsSilent()
    {
        OneBox box = Switch(Under("5/8", true), "48-1/2", Edge.Bottom);
        AssertSilent(box with { Box = box.Box.WithSize(new BoxSize(In("2-1/4"), In("3-1/2"))) });
    }

    [Theory]
    [InlineData("standard")]
    [InlineData("jumbo")]
    public void PlateAQuarterOffTheCasing_IsSilent(string plate)
    {
        OneBox box = Switch(new Storey("ground"), "48", Edge.Top);
        Distance half = plate == "jumbo" ? In("1-3/4") : In("1-3/8");

        // The opening's right end, 1 in back to the jamb's face, 3/16 of reveal, 2-1/4 of casing.
        Distance edge = In("40") - In("1") + In("3/16") + In("2-1/4");
        AssertSilent(box with
        {
            Wall = wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("8"), In("40")).WithLeaf(In("30")).WithCasing(In("2-1/4")).WithReveal(In("3/16")) })
                .WithBoxes(new[] { new OneBox().Box.WithId("general").WithAt(In("100")).WithHeight(BoxHeight.ToTop(In("16"), Datum.Subfloor)) }),
            Box = box.Box.WithPlate(new PlateKind(plate)).WithAt(edge + half + In("1/4")),
        });
    }

    // 12 + 4 + 2 = 18.00 in³ after NEC 314.16(B).
    [Fact]
    public void ThreeCables14_2AndADevice_InExactly18_IsSilent()
    {
        CableType cable = CableType.Parse("14-2");
        OneBox box = Switch(new Storey("ground"), "48", Edge.Top);
        AssertSilent(box with { Box = box.Box.WithCables(new[] { cable, cable, cable }).WithVolume(Volume.FromCubicInches(18)) });
    }

    // Board 1/2, mortar 1/8, tile 3/8: the surface is 1 in out, and a box set for 3/4 is 1/4 in behind it: as far as NEC 314.20 allows.
    [Theory]
    [InlineData("3/4", "false")]
    [InlineData("1", "true")]
    public void BoxIn1InOfTile_AsFarBehindAsIsAllowed_IsSilent(string setFor, string burns)
    {
        OneBox box = Switch(new Storey("ground"), "48", Edge.Top);
        AssertSilent(box with
        {
            Wall = wall => wall.WithBoards(new BoardLayout().WithThickness(In("1/2")))
                .WithFinishes(new[] { new Finish("tile", FinishKind.Tile, Distance.Zero, wall.Length).WithBed(In("1/8")).WithThickness(In("3/8")).WithCombustible(bool.Parse(burns)) }),
            Box = box.Box.WithSetFor(In(setFor)),
        });
    }

    [Fact]
    public void SwitchAt36_InAHalfWallAmongSwitchesAt48_IsSilent()
    {
        DeviceBox Other(string id, int at) => new OneBox().Box.WithId(id).WithPurpose(BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch })
            .WithAt(Distance.FromInches(at)).WithHeight(BoxHeight.ToTop(In("48"), Datum.Subfloor));
        OneBox box = Switch(Under("5/8", true), "36", Edge.Top);
        box = box with { Wall = wall => wall.WithTop(new[] { new WallTopPoint(Distance.Zero, In("42")), new WallTopPoint(wall.Length, In("42")) }) };
        Dwelling house = box.Build();
        house = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.With(new Wall("full", In("144")).WithBoxes(new[] { Other("a", 20), Other("b", 60), Other("c", 100) })))));
        AssertSilent(house);

        // The same switch at 36 in a full wall is remarked on.
        Dwelling full = house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithTop(Items<WallTopPoint>.None)))));
        Assert.Equal("switch-height uniform-level", string.Join(" ", Evaluator(NecEdition.Nec2023).Evaluate(full).Findings.Select(finding => finding.RuleId)));
    }

    [Fact]
    public void SwitchAt48_InAHalfWall_IsFound()
    {
        OneBox box = Switch(new Storey("ground"), "48", Edge.Top) with { Wall = wall => wall.WithTop(new[] { new WallTopPoint(Distance.Zero, In("42")), new WallTopPoint(wall.Length, In("42")) }) };
        Assert.Equal("under-wall-top", Assert.Single(Evaluator(NecEdition.Nec2023).Evaluate(box.Build()).Findings).RuleId);
    }

    [Fact]
    public void CutInBox_InMidBay_IsSilent()
    {
        OneBox box = Switch(Under("5/8", true).WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Measured)), "48", Edge.Top);
        AssertSilent(box with { Box = box.Box.WithKind(BoxKind.CutIn).WithMounting(new Mounting(MountingMethod.CutIn)).WithAt(In("56")) });
    }

    // It is somewhere under a ceiling: in no plate, and whether it meets a seam nobody can say.
    [Fact]
    public void AlarmUnderACeilingOfUnknownHeight_OnAStud_IsSilent()
    {
        Storey storey = new Storey("ground").WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Measured))
            .WithBoards(new BoardLayout().WithFrom(BoardOrigin.Bottom).WithWidths(new[] { In("48"), In("48") }));
        OneBox box = new OneBox { Storey = storey }.At(BoxHeight.ToCenter(-In("8"), Datum.FinishedCeiling));
        AssertSilent(box with { Box = box.Box.WithPurpose(BoxPurpose.Alarm).WithDevices(new[] { DeviceKind.SmokeAlarm }).WithMounting(new Mounting(MountingMethod.Stud)).WithAt(In("17-7/8")) });
    }

    // Under the sill stand short studs, which nobody lists among the studs.
    [Fact]
    public void ReceptacleUnderAWindow_WhereFullStudsAreListed_IsSilent()
    {
        OneBox box = new OneBox
        {
            Wall = wall => wall.WithStuds(new StudLayout().WithFaces(new[] { In("15-1/4"), In("79-1/4"), In("95-1/4") }).WithKnown(StudKnowledge.Measured))
                .WithOpenings(new[] { new Opening("window", OpeningKind.Window, In("30"), In("66")).WithSill(new Level(In("30"), Datum.Subfloor)).WithHead(new Level(In("80"), Datum.Subfloor)) }),
        }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor));
        AssertSilent(box with { Box = box.Box.WithMounting(new Mounting(MountingMethod.Stud)).WithAt(In("49-7/8")) });
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData("disposal", null)]
    [InlineData(null, BoxSurface.Cabinet)]
    public void DisposalReceptacle_InTheSinkBase_IsSilent(string? dedicated, BoxSurface? surface)
    {
        OneBox box = new()
        {
            Wall = wall => wall.WithCounters(new[] { new Counter("counter", CounterKind.Kitchen, Distance.Zero, wall.Length).WithTop(new Level(In("36"), Datum.FinishedFloor)).WithDepth(In("25.5")) })
                .WithBoxes(Enumerable.Range(0, 3).Select(i => new DeviceBox("counter" + i, BoxPurpose.Counter).WithDevices(new[] { DeviceKind.GfciReceptacle })
                    .WithAt(Distance.FromInches(24 + (48 * i))).WithHeight(BoxHeight.ToTop(In("48"), Datum.Subfloor))).ToArray()),
        };
        AssertSilent((box with { Box = box.Box.WithPurpose(BoxPurpose.SinkBase).WithDevices(new[] { DeviceKind.SplitReceptacle }).WithDedicated(dedicated).WithSurface(surface) })
            .At(BoxHeight.ToCenter(In("18"), Datum.Subfloor)));
    }

    [Fact]
    public void ReceptacleUnderADesk_IsSilent() => AssertSilent(new OneBox
    {
        Room = room => room.WithKind(RoomKind.Office),
        Wall = wall => wall.WithCounters(new[] { new Counter("desk", CounterKind.Desk, Distance.Zero, wall.Length).WithTop(new Level(In("30"), Datum.FinishedFloor)) }),
    }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor)));

    [Fact]
    public void LowDryerReceptacle_UnderAReachDocument_IsSilent()
    {
        foreach (RuleSet reach in new[] { RuleSets.Ada2010, RuleSets.FairHousing, RuleSets.TypeA2009, RuleSets.TypeB2009, RuleSets.California })
        {
            OneBox box = new OneBox { Room = room => room.WithKind(RoomKind.Laundry), Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice + reach }.At(BoxHeight.ToCenter(In("10"), Datum.Subfloor));
            Assert.Empty((box with { Box = box.Box.WithPurpose(BoxPurpose.Dryer).WithDevices(new[] { DeviceKind.DryerReceptacle }) }).Evaluate().Findings);
            Assert.Empty((box with { Box = box.Box.WithPurpose(BoxPurpose.Dryer).WithDevices(new[] { DeviceKind.SingleReceptacle }).WithDedicated("gas dryer") }).Evaluate().Findings);
        }
    }

    [Fact]
    public void GarageReceptacleAt48ToTheBottom_WhereNoBoardIsStated_IsSilent()
    {
        OneBox box = new OneBox { Storey = Under("5/8", false), Room = room => room.WithKind(RoomKind.Garage) }.At(BoxHeight.ToBottom(In("48"), Datum.Subfloor));
        AssertSilent(box with { Box = box.Box.WithPurpose(BoxPurpose.Garage) });
    }

    // Half of a receptacle's operable part is 1.31 in (from memory): 15 + 1.31 above a floor of 3/4 in.
    [Fact]
    public void ReceptacleAt16ToTheTop_InAHouseThatNoReachDocumentReaches_IsSilent() => AssertSilent(new OneBox { Room = room => room.WithFloor(OneBox.Floor(In("3/4"))) }.At(BoxHeight.ToTop(In("16"), Datum.Subfloor)));

    private static OneBox Switch(Storey storey, string inches, Edge edge)
    {
        OneBox box = new OneBox { Storey = storey }.At(BoxHeight.To(edge, In(inches), Datum.Subfloor));
        return box with { Box = box.Box.WithPurpose(BoxPurpose.Switch).WithDevices(new[] { DeviceKind.Switch }) };
    }

    private static Storey Under(string ceiling, bool boardsStated) => new Storey("ground").WithCeiling(new Ceiling().WithFraming(In("97-1/8")).WithBoard(In(ceiling)))
        .WithBoards(boardsStated ? new BoardLayout().WithWidths(new[] { In("48"), In("48") }) : null);

    private static void AssertSilent(OneBox box) => AssertSilent(box.Build());

    private static void AssertSilent(Dwelling dwelling)
    {
        foreach (NecEdition edition in Editions)
        {
            Evaluation evaluation = Evaluator(edition).Evaluate(dwelling);
            Assert.True(evaluation.IsClean, string.Join("\n", evaluation.Findings.Select(finding => finding.RuleId + ": " + finding.Message)));
        }
    }

    private static LayoutEvaluator Evaluator(NecEdition edition) => new(RuleSets.UnitedStatesDwelling(edition) + RuleSets.RoughInPractice);
}
