using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Boxes in each other's way, on one face and across a wall, and boxes deeper than their wall.</summary>
public sealed class BoxAgainstBoxTests
{
    private static readonly LayoutEvaluator Practice = new(new RuleSet([RuleSets.RoughInPractice.Row("next-box"), RuleSets.RoughInPractice.Row("back-to-back")]));

    [Fact]
    public void Depth_OfEachCase_HasItsVerdict()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("box-depths.csv"))
        {
            OneBox box = new OneBox
            {
                Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"),
                Wall = wall => wall.WithCavity(CaseFile.Inches(row["cavity"])).WithBoards(row["board"].Length == 0 ? null : new BoardLayout().WithThickness(CaseFile.Inches(row["board"]))),
            }.At(BoxHeight.Parse("16 in to top above subfloor"));
            DeviceBox one = box.Box.WithKind(new BoxKind(row["kind"]));
            one = row["volume"].Length == 0 ? one : one.WithVolume(Volume.FromCubicInches(decimal.Parse(row["volume"], System.Globalization.CultureInfo.InvariantCulture)));
            one = row["depth"].Length == 0 ? one : one.WithSize(new BoxSize(CaseFile.Inches("2-1/4"), CaseFile.Inches("3-3/4"), CaseFile.Inches(row["depth"])));
            Assert.True(row["verdict"] == ((box with { Box = one }).Check()?.Verdict.ToString() ?? ""), row["id"]);
        }
    }

    [Fact]
    public void Depth_OneTickOverTheWall_Fails()
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(In(1.5m)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) };
        Verdict Deep(Distance depth) => (box with { Box = box.Box.WithSize(new BoxSize(In(4), In(4), depth)) }).At(BoxHeight.Parse("16 in to top above subfloor")).Verdict();
        Assert.Equal((Verdict.Passes, Verdict.Fails), (Deep(In(2)), Deep(In(2) + Tick)));
        Finding finding = Assert.Single((box with { Box = box.Box.WithSize(new BoxSize(In(4), In(4), In(2.125m))) }).At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate().Findings);
        Assert.Contains("reaching 1-5/8 in behind the face of the studs", finding.Message, StringComparison.Ordinal);
    }

    // NEC Table 314.16(A): a 4 in square box of 21.0 in³ is 1-1/2 in deep, one of 18.0 in³ 1-1/4 in. The roomiest that the wall takes is offered, in nothing shallower than both none.
    [Theory]
    [InlineData("2-1/8", 30.3)]
    [InlineData("1-1/2", 21.0)]
    [InlineData("1-1/4", 18.0)]
    [InlineData("1-1/8", null)]
    public void Depth_OverTheWall_IsMendedByTheRoomiestSquareBoxThatFits(string cavity, double? cubicInches)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(CaseFile.Inches(cavity)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) };
        box = (box with { Box = box.Box.WithKind(BoxKind.NailOn).WithVolume(Volume.FromCubicInches(18)) }).At(BoxHeight.Parse("16 in to top above subfloor"));
        Remedy remedy = Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies);
        if (cubicInches is { } room)
        {
            ResizeBox mended = Assert.IsType<ResizeBox>(remedy);
            Assert.Equal((BoxKind.FourSquare, Volume.FromCubicInches((decimal)room)), (mended.Kind!.Value, mended.Volume));
            Assert.Null(mended.Size);
        }
        else
        {
            Assert.IsType<NoneFound>(remedy);
        }
    }

    // 30.3 in³ tell 2-1/8 in whatever ring is on the box, and 18.0 with a ring of 3 aren't the box of 21.0: NEC Table 314.16(A). A square box is flush with the studs behind its ring.
    [Theory]
    [InlineData(30.3, 3.5, "2-1/8", Verdict.Passes)]
    [InlineData(30.3, 3.5, "2", Verdict.Fails)]
    [InlineData(18.0, 3.0, "1-1/4", Verdict.Passes)]
    public void Depth_OfABoxWithARing_IsTheBoxes(double cubicInches, double ring, string cavity, Verdict expected)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(CaseFile.Inches(cavity)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) };
        box = box with { Box = box.Box.WithKind(BoxKind.FourSquare).WithVolume(Volume.FromCubicInches((decimal)cubicInches)).WithExtension(Volume.FromCubicInches((decimal)ring)) };
        Assert.Equal(expected, box.At(BoxHeight.Parse("16 in to top above subfloor")).Verdict());
    }

    // A square box that is too deep itself, whether its depth is stated or told by its volume.
    [Theory]
    [InlineData(null)]
    [InlineData("2-1/8")]
    public void Depth_OfASquareBoxOverTheWall_IsMendedByAShallowerOne(string? depth)
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(In(1.5m)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) };
        DeviceBox square = box.Box.WithKind(BoxKind.FourSquare).WithVolume(Volume.FromCubicInches(30.3m));
        box = (box with { Box = depth is null ? square : square.WithSize(new BoxSize(In(4), In(4), CaseFile.Inches(depth))) }).At(BoxHeight.Parse("16 in to top above subfloor"));
        Remedy remedy = Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies);
        Assert.StartsWith("take a four-square box of 21 in3, 1-1/2 in deep, with a ring for", remedy.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Depth_OfACutInBoxOverTheWall_HasNoSquareBoxInItsPlace()
    {
        OneBox box = new() { Rules = OneBox.Only(RuleSets.RoughInPractice, "cavity-depth"), Wall = wall => wall.WithCavity(In(1.5m)).WithBoards(new BoardLayout().WithThickness(In(0.5m))) };
        box = (box with { Box = box.Box.WithKind(BoxKind.CutIn).WithSize(new BoxSize(In(2.25m), In(3.75m), In(2.5m))) }).At(BoxHeight.Parse("16 in to top above subfloor"));
        Assert.Contains("shallower", Assert.IsType<NoneFound>(Assert.Single(Assert.Single(box.Evaluate().Findings).Remedies)).Text, StringComparison.Ordinal);
    }

    // 3-1/2 in of cavity and 1/2 in of board on each side are 4-1/2 in from face to face: two boxes of 2-1/4 in, and none deeper.
    [Fact]
    public void BackToBack_InAWallOfFourAndAHalf_TwoOfTwoAndAQuarterFit()
    {
        Assert.Empty(Practice.Evaluate(TwoFaces(In(2.25m), In(2.25m))).Findings);
        Finding finding = Assert.Single(Practice.Evaluate(TwoFaces(In(2.25m) + Tick, In(2.25m))).Findings);
        Assert.Equal(("back-to-back", Verdict.Fails, Severity.Advice, "B"), (finding.RuleId, finding.Verdict, finding.Severity, finding.Subject));
        Assert.Contains("back to back with A", finding.Message, StringComparison.Ordinal);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(finding.Remedies));
        Assert.NotNull(move.Along);
        Assert.Empty(Practice.Evaluate(move.ApplyTo(TwoFaces(In(2.25m) + Tick, In(2.25m)))).Findings);
    }

    // No stud is known that would say where it may go: beside the box behind it, 2-1/4 in away and a margin of 1 in, since no usual height is far enough above or below.
    [Theory]
    [InlineData(84)]
    [InlineData(83)]
    public void BackToBack_WhereNoStudsAreKnown_IsMendedBesideTheOther(int at)
    {
        Dwelling house = TwoFaces(In(2.75m), In(2.75m), In(3.5m), at: at);
        house = house.WithStoreys(house.Storeys.Select(storey => storey.WithStuds(null)));
        LayoutEvaluator practice = new(RuleSets.RoughInPractice);
        Evaluation evaluation = practice.Evaluate(house);
        MoveBoxes move = Assert.IsType<MoveBoxes>(Assert.Single(Assert.Single(evaluation.Findings).Remedies));
        Assert.InRange((move.Along!.Value - In(84)).Abs(), In(2.25m), In(4.5m));
        Assert.True(practice.Evaluate(move.ApplyTo(house)).IsClean);
    }

    // A wall is as deep on one face as on the other: where they say different things, the narrower holds, whichever room comes first.
    [Fact]
    public void BackToBack_FacesThatDisagree_AreAsDeepAsTheNarrower()
    {
        Dwelling house = TwoFaces(In(2.75m), In(2.75m), In(5.5m));
        Dwelling Deep(Dwelling one) => one.WithRooms(one.Rooms.Select(room => room.Id == "two" ? room.WithWalls(room.Walls.Select(wall => wall.WithCavity(In(3.5m)))) : room));
        Assert.Empty(Practice.Evaluate(house).Findings);
        Assert.Equal("back-to-back", Assert.Single(Practice.Evaluate(Deep(house)).Findings).RuleId);
        Assert.Equal("back-to-back", Assert.Single(Practice.Evaluate(Deep(house.WithRooms(new Items<Room>(house.Rooms.Reverse())))).Findings).RuleId);
    }

    // Plastic bodies are 2-3/4 to 3-5/8 in deep (from memory): 5-1/2 in at least for two.
    [Theory]
    [InlineData("3-1/2 in", null, null, Verdict.Fails)]
    [InlineData("5-1/2 in", null, null, null)] // 5-1/2 to 7-1/4 in against 6-1/2 in: no depth is stated, nothing is said
    [InlineData("5-1/2 in", "3-1/2 in", null, Verdict.Unknown)] // 6-1/4 to 7-1/8 in: it depends on the other box
    [InlineData("5-1/2 in", "2-3/4 in", null, null)]
    [InlineData(null, "4 in", "4 in", null)]
    public void BackToBack_OfGenericDepths_SaysWhatIsSure(string? cavity, string? depth, string? other, Verdict? outcome)
    {
        Dwelling dwelling = TwoFaces(depth is null ? null : Distance.Parse(depth), other is null ? null : Distance.Parse(other), cavity is null ? null : Distance.Parse(cavity));
        Finding? finding = Practice.Evaluate(dwelling).Findings.SingleOrDefault();
        Assert.Equal(outcome, finding?.Verdict);
        Assert.Equal(outcome == Verdict.Unknown ? MissingFacts.BoxSize : MissingFacts.None, finding?.Needs ?? MissingFacts.None);
    }

    // The face is 144 in long: a place of 60 in on it is one of 84 in on the other, less what that starts further right.
    [Theory]
    [InlineData(144, 0, 84, true)]
    [InlineData(144, null, 84, true)]
    [InlineData(144, 0, 60, false)]
    [InlineData(100, 12, 52, true)]
    [InlineData(100, -12, 28, true)]
    [InlineData(100, null, 52, false)]
    public void BackToBack_LiesWhereTheFacesRunAgainstEachOther(int length, int? offset, int at, bool meet)
    {
        Dwelling dwelling = TwoFaces(In(3), In(3), In(3.5m), length, offset, at);
        Assert.Equal(meet, Practice.Evaluate(dwelling).Findings.Count == 1);

        // Said from the other side: this face's right end lies at (offset + its length − the other's) on the other.
        Dwelling turned = dwelling.WithRooms(dwelling.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => room.Id == "one"
            ? wall.WithBackOf(null).WithBackOffset(null)
            : wall.WithBackOf("one/wall").WithBackOffset(offset is { } off ? In(off + length - 144) : null)))));
        Assert.Equal(DwellingGen.Lines(Practice.Evaluate(dwelling).Findings), DwellingGen.Lines(Practice.Evaluate(turned).Findings));
    }

    [Fact]
    public void OneFace_BoxesOnBothSidesOfAStud_AreClear()
    {
        // Studs at 64 in: boxes at 62-1/8 and 65-7/8 in have plates 1 in apart.
        Assert.Empty(Practice.Evaluate(OneFace(Box("A", 62.125m, 16), Box("B", 65.875m, 16))).Findings);
    }

    // Plates of 2-3/4 by 4-1/2 in side by side touch at 2-3/4 in, over one another at 4-1/2 in; without plates bodies of 2-1/4 by 3-3/4 in do.
    [Theory]
    [InlineData(true, 2.75, 0)]
    [InlineData(true, 0, 4.5)]
    [InlineData(false, 2.25, 0)]
    [InlineData(false, 0, 3.75)]
    public void OneFace_Touching_IsFineAndATickLessIsNot(bool plated, decimal aside, decimal up)
    {
        DeviceBox Second(Distance along, Distance over) => Box("B", 0, 0).WithAt(In(60 + aside) - along).WithHeight(BoxHeight.ToTop(In(16 + up) - over, Datum.Subfloor));
        Evaluation With(DeviceBox second)
        {
            Items<DeviceKind> devices = plated ? new[] { DeviceKind.DuplexReceptacle } : new[] { DeviceKind.Luminaire };
            return Practice.Evaluate(OneFace(Box("A", 60, 16).WithDevices(devices), second.WithDevices(devices)));
        }

        Assert.Empty(With(Second(Distance.Zero, Distance.Zero)).Findings);
        Finding finding = Assert.Single(With(Second(aside > 0 ? Tick : Distance.Zero, up > 0 ? Tick : Distance.Zero)).Findings);
        Assert.Equal(("next-box", "B"), (finding.RuleId, finding.Subject));
        Assert.Contains("in the way of A", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void OneFace_FloorNotChosen_MattersOnlyBetweenDifferentDatums()
    {
        DeviceBox low = Box("A", 60, 16);
        BoxHeight over = BoxHeight.ToTop(In(20), Datum.FinishedFloor);
        Assert.Empty(Practice.Evaluate(OneFace(low.WithHeight(BoxHeight.ToTop(In(15.5m), Datum.FinishedFloor)), Box("B", 60, 0).WithHeight(over))).Findings);
        Finding finding = Assert.Single(Practice.Evaluate(OneFace(low, Box("B", 60, 0).WithHeight(over))).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.FloorFinish), (finding.Verdict, finding.Needs));
    }

    [Fact]
    public void Pair_OfWhichOneStays_ReportsTheOther()
    {
        Assert.Equal("A", Assert.Single(Practice.Evaluate(OneFace(Box("A", 60, 16), Box("B", 61, 16).WithPinned(true))).Findings).Subject);
        Assert.Equal("A", Assert.Single(Practice.Evaluate(OneFace(Box("A", 60, 16), Box("B", 61, 16).WithExisting(true))).Findings).Subject);
        Assert.Empty(Practice.Evaluate(OneFace(Box("A", 60, 16).WithExisting(true), Box("B", 61, 16).WithExisting(true))).Findings);
        Assert.Empty(Practice.Evaluate(OneFace(Box("A", 60, 16), Box("B", 61, 16).WithSurface(BoxSurface.Cabinet))).Findings);
    }

    [Fact]
    public void Session_AsBoxesMove_SaysWhatAnEvaluationSays()
    {
        LayoutSession session = Practice.Open(TwoFaces(In(3), In(3)));
        Assert.Single(session.Findings);
        Assert.Single(session.Move("B", In(40), BoxHeight.ToTop(In(16), Datum.Subfloor)).Cleared);
        Assert.Single(session.Move("A", In(104), BoxHeight.ToTop(In(16), Datum.Subfloor)).Appeared);
    }

    /// <summary>Brute force over both faces: every pair of bodies (and plates) as rectangles in eighths of an inch on one drawing, seen from the first room.</summary>
    [Fact]
    public void Findings_OnRandomWalls_AreThePairsOfRectanglesThatOverlap() => Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1)), seed =>
    {
        Random random = new(seed);
        int length = random.Next(600, 1300);
        int offset = random.Next(-60, 200);
        Spot[] spots = Enumerable.Range(0, random.Next(2, 7)).Select(i => new Spot("b" + i, random.Next(2) == 0, random.Next(9, 500), random.Next(100, 160), random.Next(14, 30))).ToArray();
        Dwelling dwelling = House(
            new Wall("wall", Eighths(1200)).WithBackOf("two/wall").WithBackOffset(Eighths(offset)).WithCavity(In(3.5m)).WithBoxes(Boxes(spots, false)),
            new Wall("wall", Eighths(length)).WithBoxes(Boxes(spots, true)));
        HashSet<string> expected = [];
        foreach (Spot one in spots)
        {
            foreach (Spot other in spots.Where(other => string.CompareOrdinal(other.Id, one.Id) < 0))
            {
                int aside = Math.Abs(X(one) - X(other));
                int up = Math.Abs(one.Center - other.Center);
                if (one.IsBehind == other.IsBehind ? (aside < 18 && up < 30) || (aside < 22 && up < 36) : aside < 18 && up < 30 && one.Depth + other.Depth > 36)
                {
                    expected.Add((one.IsBehind == other.IsBehind ? "next-box " : "back-to-back ") + one.Id);
                }
            }
        }

        int X(Spot spot) => spot.IsBehind ? offset + length - spot.At : spot.At;
        return expected.SetEquals(Practice.Evaluate(dwelling).Findings.Select(finding => finding.RuleId + " " + finding.Subject));
    }).Check(Tries.Always(500));

    private static Distance Tick => Distance.FromTicks(1);

    private static DeviceBox[] Boxes(Spot[] spots, bool behind) => spots.Where(spot => spot.IsBehind == behind).Select(spot => Box(spot.Id, 0, 0)
        .WithSize(new BoxSize(Eighths(18), Eighths(30), Eighths(spot.Depth))).WithAt(Eighths(spot.At)).WithHeight(BoxHeight.ToCenter(Eighths(spot.Center), Datum.Subfloor))).ToArray();

    private static DeviceBox Box(string id, decimal at, decimal top) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle })
        .WithSize(new BoxSize(In(2.25m), In(3.75m))).WithAt(In(at)).WithHeight(BoxHeight.ToTop(In(top), Datum.Subfloor));

    private static Dwelling OneFace(params DeviceBox[] boxes) => House(new Wall("wall", In(144)).WithBoxes(boxes), new Wall("wall", In(144)));

    /// <summary>Box A at 60 in on a face of 144 in, box B behind it; 1/2 in of board on both sides.</summary>
    private static Dwelling TwoFaces(Distance? depth, Distance? other, Distance? cavity, int length = 144, int? offset = 0, int at = 84)
    {
        DeviceBox Deep(string id, decimal along, Distance? deep) => deep is { } known
            ? Box(id, along, 16).WithSize(new BoxSize(In(2.25m), In(3.75m), known))
            : Box(id, along, 16).WithSize(null);
        return House(
            new Wall("wall", In(144)).WithBackOf("two/wall").WithBackOffset(offset is { } off ? In(off) : null).WithCavity(cavity).WithBoxes(new[] { Deep("A", 60, depth) }),
            new Wall("wall", In(length)).WithBoxes(new[] { Deep("B", at, other) }));
    }

    private static Dwelling TwoFaces(Distance depth, Distance other) => TwoFaces(depth, other, In(3.5m));

    private static Dwelling House(Wall one, Wall two) => new Dwelling("test")
        .WithStoreys(new[] { new Storey("first").WithBoards(new BoardLayout().WithThickness(In(0.5m))).WithStuds(new StudLayout().WithSpacing(In(16)).WithKnown(StudKnowledge.Declared)) })
        .WithRooms(new[] { new Room("one", RoomKind.Bedroom, "first").WithWalls(new[] { one }), new Room("two", RoomKind.Bedroom, "first").WithWalls(new[] { two }) });

    private readonly record struct Spot(string Id, bool IsBehind, int At, int Center, int Depth);
}
