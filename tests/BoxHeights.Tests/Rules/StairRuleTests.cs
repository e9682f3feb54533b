using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Framing;
using FsCheck;
using FsCheck.Fluent;
using Fractions;
using BoxHeights.Tests.Output;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Rows about flights, and heights taken from the line of the nosings.</summary>
public sealed class StairRuleTests
{
    private static RuleSet Code => RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.UnitedStatesOutlets(NecEdition.Nec2023);

    private static readonly bool[] EitherWay = [false, true];

    private static Distance Tick => Distance.FromTicks(1);

    // 105 in, 14 risers of 7-1/2 in, floors of 3/4 in; first nosing at 20 in, treads of 10 in.
    private static StairFlight Stair { get; } = new StairFlight("main", "low", "high", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("20")).WithWall("hall/stair");

    /// <summary>A hall with the stair's wall below, a landing above; switches at both unless boxes are given for the landing.</summary>
    internal static Dwelling House(StairFlight flight, DeviceBox[] onStairWall, DeviceBox[]? onLanding = null, FloorBuildup? below = null)
    {
        FloorBuildup floor = FloorBuildup.Of(new FloorLayer("oak", CaseFile.Inches("3/4")));
        return new Dwelling("stairs").WithStoreys(new[] { new Storey("low"), new Storey("high").WithAboveBelow(CaseFile.Inches("105")) })
            .WithRooms(new[]
            {
                new Room("hall", RoomKind.Hall, "low").WithFloor(below ?? floor).WithWalls(new[]
                {
                    new Wall("stair", CaseFile.Inches("170")).WithBoxes(onStairWall),
                    new Wall("end", CaseFile.Inches("60")).WithBoxes(new[] { Switch("foot") }),
                }),
                new Room("landing", RoomKind.Hall, "high").WithFloor(floor).WithWalls(new[] { new Wall("side", CaseFile.Inches("90")).WithBoxes(onLanding ?? [Switch("head")]) }),
            })
            .WithFlights(new[] { flight });
    }

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(1, true)]
    public void Switches_AtTheNumberOfRisers_AreAskedForAtEachLevel(int more, bool asked)
    {
        int risers = int.Parse(TrimmedOpeningTests.Limit("stair-switches"), System.Globalization.CultureInfo.InvariantCulture) + more;
        DeviceBox receptacle = new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        Evaluation evaluation = new LayoutEvaluator(Code).Evaluate(House(Stair.WithRisers(risers), [], [receptacle]));
        Assert.Equal(asked ? ["main on high"] : [], evaluation.Findings.Where(finding => finding.RuleId == "stair-switches").Select(finding => finding.Subject));
        Assert.Empty(new LayoutEvaluator(Code).Evaluate(House(Stair.WithRisers(risers), [])).Findings);
    }

    [Fact]
    public void Switches_WhoseDevicesArentStated_AreTakenAtTheirWord()
    {
        Dwelling house = House(Stair, []).WithBoxes(box => box.WithDevices(default));
        Assert.Empty(new LayoutEvaluator(Code).Evaluate(house).Findings);
        Assert.Equal(2, new LayoutEvaluator(Code).Evaluate(house.WithBoxes(box => box.WithPurpose(BoxPurpose.Thermostat))).Findings.Count(finding => finding.RuleId == "stair-switches"));
    }

    [Fact]
    public void Switches_OnlyAtTheTop_AreMendedByOneAtTheFoot()
    {
        Dwelling house = House(Stair, [], null);
        house = house.WithBoxes(box => box.Id == "foot" ? box.WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithPurpose(BoxPurpose.General).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) : box);
        Finding finding = Assert.Single(new LayoutEvaluator(Code).Evaluate(house).Findings);
        Assert.Equal(("stair-switches", Severity.Violation, "main on low"), (finding.RuleId, finding.Severity, finding.Subject));
        AddBox cure = Assert.IsType<AddBox>(finding.Remedies[0]);
        Assert.Equal(CaseFile.Inches("8"), cure.Placed[0].Box.At);
        Assert.True(new LayoutEvaluator(Code).Evaluate(cure.ApplyTo(house)).IsClean);
    }

    // Where its treads end isn't known: not on the stair's own wall, but where the next one has room.
    [Theory]
    [InlineData(true, "hall/stair")]
    [InlineData(false, "hall/end")]
    public void Switches_OfAFlightWhoseTreadsArentStated_GoToAnotherWall(bool stated, string wall)
    {
        Dwelling house = House(stated ? Stair : Stair.WithTread(null), []).WithBoxes(box => box.Id == "foot" ? box.WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithPurpose(BoxPurpose.General).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) : box);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(new LayoutEvaluator(Code).Evaluate(house).Findings, one => one.RuleId == "stair-switches").Remedies[0]);
        Assert.Equal(wall, cure.Placed[0].Address);
        Assert.True(new LayoutEvaluator(Code).Evaluate(cure.ApplyTo(house)).IsClean);
    }

    [Fact]
    public void Switches_ElsewhereOnTheLevel_AreDisputed()
    {
        DeviceBox receptacle = new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        Dwelling house = House(Stair, [], [receptacle]);
        house = house.WithRooms(new Items<Room>(house.Rooms.Append(new Room("study", RoomKind.Office, "high").WithWalls(new[] { new Wall("w", CaseFile.Inches("100")).WithBoxes(new[] { Switch("study-switch") }) }))));
        Finding finding = Assert.Single(new LayoutEvaluator(Code).Evaluate(house).Findings, one => one.RuleId == "stair-switches");
        Assert.Equal(["anywhere-on-that-floor"], finding.DisputedBy);
    }

    [Fact]
    public void Switches_ElsewhereOnOneLevel_AreDisputedThoughTheOtherIsntDescribed()
    {
        DeviceBox receptacle = new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("16 in to top above subfloor"));
        Dwelling house = House(Stair, [], [receptacle]);
        house = house.WithRooms(new Items<Room>(house.Rooms.Select(room => room.Storey == "low" ? room.WithWalls(room.Walls.Select(wall => wall.WithBoxes(default)).ToArray()) : room)
            .Append(new Room("study", RoomKind.Office, "high").WithWalls(new[] { new Wall("w", CaseFile.Inches("100")).WithBoxes(new[] { Switch("study-switch") }) }))));
        Evaluation evaluation = new LayoutEvaluator(Code).Evaluate(house);
        Assert.Equal(["anywhere-on-that-floor"], Assert.Single(evaluation.Findings, one => one.RuleId == "stair-switches").DisputedBy);
        Assert.Contains(evaluation.NotJudged, line => line.Contains("no room with boxes is described at the stair on \"low\"", System.StringComparison.Ordinal));
    }

    // The landing's only wall is 90 in long; a door from 20 to 52 in swings over what is left of it.
    [Theory]
    [InlineData(false, "12")]
    [InlineData(true, "58")]
    public void Switches_OnlyAtTheFoot_AreMendedByOneInTheUpperHall(bool withDoor, string at)
    {
        Dwelling house = House(Stair, [], []);
        house = house.WithRooms(house.Rooms.Select(room => room.Storey == "low" ? room : room.WithWalls(room.Walls.Select(wall => wall
            .WithOpenings(withDoor ? new[] { new Opening("d", OpeningKind.Door, CaseFile.Inches("20"), CaseFile.Inches("52")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithLeaf(CaseFile.Inches("30")) } : [])
            .WithBoxes(new[] { new DeviceBox("R", BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(CaseFile.Inches("80")).WithHeight(BoxHeight.Parse("16 in to top above subfloor")) })).ToArray())).ToArray());
        Finding finding = Assert.Single(new LayoutEvaluator(Code).Evaluate(house).Findings, one => one.RuleId == "stair-switches");
        Assert.Equal("main on high", finding.Subject);
        AddBox cure = Assert.IsType<AddBox>(Assert.Single(finding.Remedies));
        Assert.Equal(("landing/side", CaseFile.Inches(at)), (cure.Placed[0].Address, cure.Placed[0].Box.At));
        Assert.True(new LayoutEvaluator(Code).Evaluate(cure.ApplyTo(house)).IsClean);
    }

    [Fact]
    public void Switches_LevelWithoutBoxes_IsNotJudged()
    {
        Evaluation evaluation = new LayoutEvaluator(Code).Evaluate(House(Stair, [], []));
        Assert.Empty(evaluation.Findings);
        Assert.Contains(evaluation.NotJudged, line => line.ToString()!.Contains("no room with boxes is described at the stair on \"high\"", System.StringComparison.Ordinal));
    }

    // Cut for 3/4 in at the foot: with x laid there the first riser is x − 3/4 lower, or higher, than the others.
    [Theory]
    [InlineData(0, null)]
    [InlineData(1, Verdict.Fails)]
    public void Risers_OneTickAroundTheLimit_ChangeThere(int ticks, Verdict? outcome)
    {
        Distance limit = CaseFile.Inches(TrimmedOpeningTests.Limit("riser-variation"));
        foreach (int sign in new[] { 1, -1 })
        {
            Distance laid = CaseFile.Inches("3/4") + (sign * (limit + (ticks * Tick)));
            Assert.Equal(outcome, Risers(laid));
        }
    }

    [Fact]
    public void Risers_FloorStillOpen_AreUnknownOnlyWhereItMatters()
    {
        Distance limit = CaseFile.Inches(TrimmedOpeningTests.Limit("riser-variation"));
        Distance cut = CaseFile.Inches("3/4");
        Assert.Null(Risers(new DistanceRange(cut - limit, cut + limit)));
        Assert.Equal(Verdict.Unknown, Risers(new DistanceRange(cut, cut + limit + Tick)));
        Assert.Equal(Verdict.Fails, Risers(new DistanceRange(cut + limit + Tick, cut + limit + limit)));
    }

    [Fact]
    public void Risers_NotSaidWhatTheyAreCutFor_AreNotJudged() =>
        Assert.Empty(new LayoutEvaluator(Code).Evaluate(House(Stair, [], null, FloorBuildup.Of(new FloorLayer("tile", CaseFile.Inches("2"))))).Findings);

    // 45 in up the flight the nosings are at 41-1/4 + 3/4 = 42 in above the subfloor; a plate 4-1/2 in tall, its box 3-3/4 in.
    [Fact]
    public void Handrail_PlateWithinItsBand_IsANote()
    {
        Distance line = CaseFile.Inches("42");
        Distance low = CaseFile.Inches(TrimmedOpeningTests.Limit("clear-of-handrail low")) + line - CaseFile.Inches("2-1/4");
        Distance high = CaseFile.Inches(TrimmedOpeningTests.Limit("clear-of-handrail high")) + line + CaseFile.Inches("2-1/4");
        Assert.Empty(Notes(BoxHeight.ToCenter(low, Datum.Subfloor)));
        Assert.Equal(["clear-of-handrail"], Notes(BoxHeight.ToCenter(low + Tick, Datum.Subfloor)));
        Assert.Equal(["clear-of-handrail"], Notes(BoxHeight.ToCenter(high - Tick, Datum.Subfloor)));
        Assert.Empty(Notes(BoxHeight.ToCenter(high, Datum.Subfloor)));
        Assert.Equal(["clear-of-handrail"], Notes(BoxHeight.Parse("36 in to center above nosing")));
        Assert.Empty(Notes(BoxHeight.ToCenter(high - line, Datum.Nosing)));
    }

    [Fact]
    public void Lamp_BetweenLowAndHigh_IsANote()
    {
        DeviceBox Lamp(BoxHeight height) => new DeviceBox("L", BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithAt(CaseFile.Inches("65")).WithHeight(height);
        string[] Of(Distance aboveNosing) => Findings(House(Stair, [Lamp(BoxHeight.ToCenter(aboveNosing, Datum.Nosing))]), "stair-lamp");
        Distance low = CaseFile.Inches(TrimmedOpeningTests.Limit("stair-lamp low"));
        Distance high = CaseFile.Inches(TrimmedOpeningTests.Limit("stair-lamp high"));
        Assert.Empty(Of(low));
        Assert.Equal(["L"], Of(low + Tick));
        Assert.Equal(["L"], Of(high - Tick));
        Assert.Empty(Of(high));
        Assert.Empty(Findings(House(Stair.WithWall(null), [Lamp(BoxHeight.Parse("66 in to center above subfloor"))]), "stair-lamp"));
    }

    [Fact]
    public void Nosing_AsADatum_IsMarkedAboveTheSubfloor()
    {
        DeviceBox box = Switch("S").WithAt(CaseFile.Inches("65")).WithHeight(BoxHeight.Parse("60 in to center above nosing"));
        MarkRow row = Assert.Single(Sheets.For(House(Stair, [box]), RuleSet.Empty).Rows, one => one.BoxId == "S");
        Assert.Equal(BoxHeight.ToCenter(CaseFile.Inches("102"), Datum.Subfloor), row.Mark);
    }

    [Fact]
    public void PathLights_OffPhaseOrHeight_AreFoundBeyondTheTolerance()
    {
        Distance along = CaseFile.Inches(TrimmedOpeningTests.Limit("stair-path-lights along"));
        Distance height = CaseFile.Inches(TrimmedOpeningTests.Limit("stair-path-lights height"));
        Assert.Empty(Lights(default, default));
        foreach (int sign in new[] { 1, -1 })
        {
            Assert.Empty(Lights(sign * along, default));
            Assert.Equal(["L5"], Lights(sign * (along + Tick), default));
            Assert.Empty(Lights(default, sign * height));
            Assert.Equal(["L5"], Lights(default, sign * (height + Tick)));
        }

        // A light that is a whole tread off is on another tread, at its own height: nothing is wrong with its phase.
        Assert.Empty(Lights(CaseFile.Inches("10"), CaseFile.Inches("7-1/2")));
    }

    [Fact]
    public void PathLights_OffTheirPlaceOrHeight_AreSetRightByTheirRemedy() => Prop.ForAll(Arb.From(Gen.Choose(-32, 32).ArrayOf(2)), n =>
    {
        LayoutEvaluator evaluator = new(new RuleSet([RuleSets.RoughInPractice.Row("stair-path-lights")!]));
        foreach (bool mirrored in EitherWay)
        {
            Dwelling house = Lit(Eighths(n[0]), Eighths(n[1] / 6), mirrored);
            foreach (Finding finding in evaluator.Evaluate(house).Findings)
            {
                MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(finding.Remedies));
                Assert.Equal("L5", Assert.Single(move.Ids));
                Assert.Equal(Datum.Nosing, move.Height.Datum);
                Assert.Empty(evaluator.Evaluate(move.ApplyTo(house)).Findings);

                // The middle of tread 5 is 20 + 45 in from the wall's end; a light that is on its place stays there.
                Distance middle = CaseFile.Inches("65");
                Assert.Equal(System.Math.Abs(n[0]) <= 8 ? null : mirrored ? CaseFile.Inches("170") - middle : middle, move.Along);
            }
        }
    }).Check(Tries.Always(100));

    [Fact]
    public void PathLights_Pinned_AreOfferedNothingAndSayWhy()
    {
        Dwelling house = Lit(CaseFile.Inches("3"), default, false).WithBoxes(box => box.WithPinned(true));
        Finding finding = Assert.Single(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).Findings, finding => finding.RuleId == "stair-path-lights");
        Assert.IsType<NoneFound>(Assert.Single(finding.Remedies));
    }

    // 15 in and 38 in up the flight, treads of 10 in: at 5 and at 8 on their treads.
    [Fact]
    public void PathLights_TwoThatDiffer_AreFoundAlikeInAnyOrder()
    {
        DeviceBox Light(string id, string at) => new DeviceBox(id, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithAt(CaseFile.Inches(at)).WithHeight(BoxHeight.Parse("8 in to center above nosing"));
        DeviceBox[] lights = [Light("low", "35"), Light("high", "58")];
        Assert.Equal(["high"], Findings(House(Stair, lights), "stair-path-lights"));
        Assert.Equal(["high"], Findings(House(Stair, [lights[1], lights[0]]), "stair-path-lights"));
    }

    [Fact]
    public void PathLights_Mirrored_AreFoundAlike() => Prop.ForAll(Arb.From(Gen.Choose(-24, 24).ArrayOf(2)), n =>
    {
        // In eighths: 1 in along and 1/4 in of height, those of the others, are allowed.
        Distance across = Eighths(n[0]);
        Distance up = Eighths(n[1] / 6);
        bool off = System.Math.Abs(n[0]) > 8 || System.Math.Abs(n[1] / 6) > 2;
        return Lights(across, up).SequenceEqual(off ? ["L5"] : []) && Lights(across, up, mirrored: true).SequenceEqual(off ? ["L5"] : []);
    }).Check(Tries.Always(100));

    private static DeviceBox Switch(string id) =>
        new DeviceBox(id, BoxPurpose.Switch).WithDevices(new[] { DeviceKind.ThreeWaySwitch }).WithAt(CaseFile.Inches("30")).WithHeight(BoxHeight.Parse("48 in to top above subfloor"));

    private static string[] Lights(Distance shift, Distance up, bool mirrored = false) => Findings(Lit(shift, up, mirrored), "stair-path-lights");

    /// <summary>Lights 6 in above the middle of treads 1, 3, 5 …, the third of them shifted.</summary>
    private static Dwelling Lit(Distance shift, Distance up, bool mirrored)
    {
        Distance wall = CaseFile.Inches("170");
        DeviceBox[] boxes = Enumerable.Range(0, 5).Select(light => 1 + (2 * light)).Select(tread =>
        {
            Fraction at = new Fraction(20) + (new Fraction(10) * (new Fraction(tread - 1) + new Fraction(1, 2)));
            Fraction high = new Fraction(3, 4) + (new Fraction(15, 2) * new Fraction(tread)) + new Fraction(6);
            Distance along = CaseFile.Inches(at) + (tread == 5 ? shift : Distance.Zero);
            return new DeviceBox("L" + tread, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithAt(mirrored ? wall - along : along)
                .WithHeight(BoxHeight.ToCenter(CaseFile.Inches(high) + (tread == 5 ? up : Distance.Zero), Datum.Subfloor));
        }).ToArray();
        StairFlight flight = mirrored ? Stair.WithFirstNosing(wall - CaseFile.Inches("20")).WithClimbs(WallEnd.Left) : Stair;
        return House(flight, boxes);
    }

    private static string[] Findings(Dwelling house, string rule) =>
        new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).Findings.Where(finding => finding.RuleId == rule).Select(finding => finding.Subject).ToArray();

    private static string[] Notes(BoxHeight height)
    {
        RuleSet row = new([RuleSets.RoughInPractice.Row("clear-of-handrail")!]);
        return new LayoutEvaluator(row).Evaluate(House(Stair, [Switch("S").WithAt(CaseFile.Inches("65")).WithHeight(height)])).Findings.Select(finding => finding.RuleId).ToArray();
    }

    private static Verdict? Risers(DistanceRange laid)
    {
        Dwelling house = House(Stair.WithCutForFloorBelow(CaseFile.Inches("3/4")), [], null, FloorBuildup.Of(new FloorLayer("tile", laid)));
        return new LayoutEvaluator(Code).Evaluate(house).Findings.SingleOrDefault(finding => finding.RuleId == "riser-variation")?.Verdict;
    }
}
