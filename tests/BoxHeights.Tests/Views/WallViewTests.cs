using System;
using System.Linq;
using BoxHeights.Tests.Rules;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Views;

public sealed class WallViewTests
{
    // The second road: every line of a box from what is stated of it, by hand.
    [Fact]
    public void Boxes_OfAnyHouse_AreWhereTheirHeightsSay() => Prop.ForAll(OrdinaryHouses.Seeds, seed =>
    {
        Dwelling house = OrdinaryHouses.Make(seed.Seed, seed.Rooms);
        Evaluation evaluation = new LayoutEvaluator(RuleSet.Empty).Evaluate(house);
        int looked = 0;
        foreach (Room room in house.Rooms)
        {
            foreach (Wall wall in room.Walls)
            {
                WallView view = evaluation.Wall(room.Id + "/" + wall.Id);
                Assert.Equal(wall.Boxes.Count, view.Boxes.Count);
                foreach (BoxView box in view.Boxes)
                {
                    if (box.Source is not { At: { } at, Measured: null, Height: { Edge: { } edge, Datum: Datum.Subfloor or Datum.FinishedFloor } height, Size: null, OnItsSide: false } source
                        || !PartsCatalog.Generic.TryFindBox(source.Kind ?? BoxKind.NailOn, box.Gangs, out BoxPart? part))
                    {
                        continue;
                    }

                    DistanceRange floor = height.Datum == Datum.Subfloor ? Distance.Zero : (room.Floor ?? FloorBuildup.NotChosen).Thickness;
                    DistanceRange set = floor + (room.SubfloorOffset ?? Distance.Zero) + height.Value;
                    (DistanceRange tall, DistanceRange high) = (part.Size.HeightRange, Half(part.Size.HeightRange));
                    Assert.Equal(edge == Edge.Bottom ? set + high : edge == Edge.Top ? set - high : set, box.Center);
                    Assert.Equal(edge == Edge.Bottom ? set : edge == Edge.Top ? set - tall : set - high, box.Body!.Value.Bottom);
                    Assert.Equal(edge == Edge.Bottom ? set + tall : edge == Edge.Top ? set : set + high, box.Body!.Value.Top);
                    Assert.Equal((at - Half(part.Size.WidthRange), at + Half(part.Size.WidthRange)), (box.Body!.Value.Left, box.Body!.Value.Right));
                    Assert.True(box.IsSizeAssumed);
                    looked++;
                }
            }
        }

        return looked > 10;
    }).Check(Tries.Config(40));

    private static DistanceRange Half(DistanceRange size) => new(Distance.FromTicks(size.From.Ticks / 2), Distance.FromTicks(size.To.Ticks / 2));

    [Fact]
    public void Lines_OfASunkenRoomWithAFloorNotChosen_AreAboveTheStoreysSubfloor()
    {
        OneBox sunken = new OneBox { Room = room => room.WithSubfloorOffset(-In("6")).WithFloor(OneBox.Floor(new(In("3/8"), In("3/4")))), Storey = Storey }.At(BoxHeight.Parse("16 in to bottom above finished floor"));
        WallView wall = Evaluate(sunken with { Wall = wall => wall.WithTop(new[] { new WallTopPoint(In("0"), In("48")), new WallTopPoint(In("48"), In("96")) }) });
        Assert.Equal(-In("6"), wall.Subfloor);
        Assert.Equal(new DistanceRange(-In("5-5/8"), -In("5-1/4")), wall.FinishedFloor);
        Assert.Equal(-In("4-1/2"), wall.BottomPlate!.Value.From);

        // The storey's ceiling is one plane, 97-1/8 in above the storey's subfloor, with 5/8 in of board.
        Assert.Equal(In("96-1/2"), wall.FinishedCeiling!.Value.From);
        Assert.Equal(In("97-1/8"), wall.CeilingFraming!.Value.From);
        Assert.Equal(["0 in: 42 in", "48 in: 90 in", "144 in: 90 in"], wall.Top.Select(point => point.Along + ": " + point.Up));

        // Two boards of 48 in end 1/2 in above the storey's subfloor: on the sunken floor a strip of 6-1/2 in follows. Under the slope nobody knows where hanging starts.
        Assert.Equal([In("48-1/2"), In("1/2")], Evaluate(sunken).Boards!.Seams.Select(seam => seam.From));
        Assert.Empty(wall.Boards!.Seams);
        BoxView box = Assert.Single(wall.Boxes);
        Assert.Equal(new DistanceRange(In("10-3/8"), In("10-3/4")), box.Body!.Value.Bottom);
    }

    // Under the slope from 48 to 96 in over 48 in a stud from 15-1/4 in on ends at 63-1/4 in where its left face is; level beyond, all end alike.
    [Fact]
    public void Studs_UnderASlopedTop_EndWhereItIsLowest()
    {
        WallView wall = Evaluate(new OneBox
        {
            Storey = Storey,
            Wall = wall => wall.WithTop(new[] { new WallTopPoint(In("0"), In("48")), new WallTopPoint(In("48"), In("96")) }),
        });
        Assert.Equal(In("63-1/4"), wall.Studs.Single(stud => stud.Number == 1).Top!.Value.From);
        Assert.Equal(In("96"), wall.Studs.Single(stud => stud.Number == 4).Top!.Value.From);
        Assert.Equal(In("1-1/2"), wall.Studs[0].Bottom!.Value.From);
    }

    [Fact]
    public void Box_WhoseEdgeIsNotStated_MayBeAtAnyOfThem()
    {
        BoxView box = Assert.Single(Evaluate(new OneBox { Storey = Storey }.At(BoxHeight.Parse("48 in above subfloor"))).Boxes);
        DistanceRange tall = PartsCatalog.Generic.Boxes.Single(one => one.Kind == BoxKind.NailOn && one.Gangs == 1).Size.HeightRange;
        Distance half = Half(tall).To;
        Assert.Equal(new DistanceRange(In("48") - half, In("48") + half), box.Center);
        Assert.Equal(In("48") - half - half, box.Body!.Value.Bottom!.Value.From);
        Assert.Equal(In("48") + half + half, box.Body!.Value.Top!.Value.To);
    }

    [Fact]
    public void Box_ThatWasMeasured_IsAsFarOffAsTheTapeMayBe()
    {
        OneBox of = new() { Storey = Storey };
        BoxView box = Assert.Single(Evaluate(of with { Box = of.Box.WithMeasured(new MeasuredHeight(BoxHeight.Parse("48 in to center above subfloor"))) }).Boxes);
        Assert.Equal(new DistanceRange(In("47-7/8"), In("48-1/8")), box.Center);
    }

    [Fact]
    public void Box_OnAStud_TellsWhichAndWhetherItIsAssumed()
    {
        OneBox of = new() { Storey = Storey };
        DeviceBox nailed = of.Box.WithAt(null).WithMounting(new Mounting(MountingMethod.Stud).WithStud(3).WithSide(StudSide.Right)).WithHeight(BoxHeight.Parse("16 in to bottom above subfloor"));
        BoxView known = Assert.Single(Evaluate(of with { Box = nailed }).Boxes);
        Assert.Equal((3, StudSide.Right, false), (known.Stud, known.Side, known.IsAlongAssumed));
        Assert.Equal(In("48-3/4") + Distance.FromTicks(PartsCatalog.Generic.Boxes.Single(one => one.Kind == BoxKind.NailOn && one.Gangs == 1).Size.Width.Ticks / 2), known.Along);
        BoxView found = Assert.Single(Evaluate(of with { Box = nailed.WithAt(known.Along).WithMounting(null) }).Boxes);
        Assert.Equal((3, StudSide.Right), (found.Stud, found.Side));
        BoxView assumed = Assert.Single(Evaluate(of with { Box = nailed, Storey = Storey.WithStuds(Storey.Studs!.WithKnown(StudKnowledge.Assumed)) }).Boxes);
        Assert.True(assumed.IsAlongAssumed);
        Assert.Null(Assert.Single(Evaluate(of with { Box = of.Box.WithHeight(nailed.Height) }).Boxes).Stud);
    }

    [Fact]
    public void Box_ThatCannotBe_IsBrokenAndTellsOnlyWhatIsStated()
    {
        OneBox of = new();
        BoxView box = Assert.Single(Evaluate(of with { Box = of.Box.WithAt(In("143-1/2")).WithHeight(BoxHeight.Parse("48 in to top above subfloor")) }).Boxes);
        Assert.True(box.IsBroken);
        Assert.Equal(In("143-1/2"), box.Along);
        Assert.Null(box.Body);
    }

    [Fact]
    public void Parts_OfAWall_HaveTheirEdgesAndSayWhatIsNotKnown()
    {
        WallView wall = Evaluate(new OneBox
        {
            Storey = Storey,
            Room = room => room.WithFixtures(new[] { new Fixture("tub", FixtureKind.Tub).WithWall("wall").WithLeft(In("100")).WithRim(Level.Parse("15 in above finished floor")) })
                .WithFloor(OneBox.Floor(In("3/4"))),
            Wall = wall => wall
                .WithOpenings(new[]
                {
                    new Opening("door", OpeningKind.Door, In("10"), In("42")).WithLeaf(In("30")).WithCasing(In("2-1/4")).WithReveal(In("1/4")).WithHead(Level.Parse("82-1/2 in above subfloor"))
                        .WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into),
                })
                .WithCounters(new[]
                {
                    new Counter("stated", CounterKind.Kitchen, In("50"), In("80")).WithTop(Level.Parse("36 in above finished floor")),
                    new Counter("usual", CounterKind.Kitchen, In("80"), In("90")).WithBaseStandsOn(Datum.Subfloor),
                    new Counter("unknown", CounterKind.Kitchen, In("90"), In("95")),
                })
                .WithFinishes(new[] { new Finish("splash", FinishKind.Tile, In("50"), In("80")).WithBottom(new(Distance.Zero, Datum.Countertop)).WithTop(Level.Parse("4 in above countertop")) })
                .WithCoverings(new[] { new Covering("upper", CoveringKind.WallCabinet, In("50"), In("80")).WithBottom(Level.Parse("18 in above countertop")) })
                .WithNoCavity(new[] { new NoCavity(NoCavityKind.Duct, In("120"), In("130")) }),
        });
        OpeningView door = Assert.Single(wall.Openings);
        Assert.Equal("along 10 in to 42 in, up 0 in to 82-1/2 in", door.Area.ToString());
        Assert.Equal("along 8-1/2 in to 43-1/2 in, up 0 in to 84 in", door.Casing.ToString());
        Assert.Equal((In("11"), In("41")), (door.Trim.JambLeft, door.Trim.JambRight));
        DoorCover leaf = Assert.Single(wall.DoorCovers);
        Assert.Equal((In("0"), In("11")), (leaf.Left, leaf.Right));
        Assert.Equal(["36-3/4 in", "36 in", ""], wall.Counters.Select(counter => counter.Area.Top.ToString()));
        Assert.Equal([false, true, false], wall.Counters.Select(counter => counter.IsAssumed));
        Assert.Equal("along 50 in to 80 in, up 36-3/4 in to 40-3/4 in", Assert.Single(wall.Finishes).Area.ToString());
        Assert.Equal("along 50 in to 80 in, up 54-3/4 in to 96-1/2 in", Assert.Single(wall.Coverings).Area.ToString());
        Assert.Equal("along 120 in to 130 in, up 0 in to 96-1/2 in", Assert.Single(wall.WithoutCavity).Area.ToString());
        WallPart<Fixture> tub = Assert.Single(wall.Fixtures);
        Assert.Equal("along 100 in to 0 in to 144 in, up 3/4 in to 15-3/4 in", tub.Area.ToString());
        Assert.Equal("room/tub", tub.Address);
        Assert.Equal(["room/wall/door", "room/wall/stated", "room/wall/usual", "room/wall/unknown", "room/wall/splash", "room/wall/upper", "room/tub", "room/wall"], wall.Parts.Select(part => part.Address));
    }

    [Fact]
    public void CommonBoards_WhereNothingIsSaid_AreAssumed()
    {
        WallView wall = Evaluate(new OneBox { Storey = Storey.WithBoards(null) });
        Assert.Null(wall.Boards);
        Assert.Equal([In("48-1/2")], Assert.Single(wall.CommonBoards).Seams.Select(seam => seam.From));
        Assert.True(wall.CommonBoards[0].IsAssumed);
        WallView stated = Evaluate(new OneBox { Storey = Storey });
        Assert.Empty(stated.CommonBoards);
        Assert.True(stated.Boards is { IsInherited: true, IsAssumed: false });
    }

    // A doorway from 60 to 92 in: whatever place is asked for, no stud stands in it, and none nearer stands elsewhere.
    [Fact]
    public void NearestStud_AnyPlace_StandsAndIsTheNearestThatDoes()
    {
        WallView wall = Evaluate(new OneBox
        {
            Storey = Storey,
            Wall = wall => wall.WithOpenings(new[]
            {
                new Opening("door", OpeningKind.Door, In("60"), In("92")).WithHead(Level.Parse("82 in above subfloor")),
                new Opening("window", OpeningKind.Window, In("100"), In("134")).WithSill(Level.Parse("36 in above subfloor")).WithHead(Level.Parse("82 in above subfloor")),
            }),
        });
        foreach (string up in new[] { "16", "48", "90" })
        {
            for (int inch = 0; inch <= 144; inch++)
            {
                StudView found = wall.NearestStud(Distance.FromInches(inch), In(up))!;
                Assert.False(found.Left < In("92") && In("60") < found.Right, inch + ": " + found);
                Assert.True(up == "16" || !(found.Left < In("134") && In("100") < found.Right), inch + ": " + found);
                Assert.True(up != "90" || found.Part != FramingPart.Jack, inch + ": " + found);
                Distance Away(StudView stud) => (Distance.FromInches(inch) - stud.Left - In("3/4")).Abs();
                Assert.DoesNotContain(wall.Studs, stud => Away(stud) < Away(found) && !stud.IsReplaced && (stud.Part is FramingPart.King or FramingPart.Corner or FramingPart.Stud || (up == "16")));
            }
        }

        Assert.Equal(FramingPart.Cripple, wall.NearestStud(In("112"), In("16"))!.Part);
        Assert.Null(Evaluate(new OneBox()).NearestStud(In("40"), In("16")));
    }

    [Fact]
    public void Findings_OfAnyHouse_AreNumberedAsInTheReport() => Prop.ForAll(OrdinaryHouses.Seeds, seed =>
    {
        Dwelling house = OrdinaryHouses.Make(seed.Seed, seed.Rooms).WithBoxes(box => box.WithHeight(box.Height is { } height ? height.WithValue(height.Value + In("3")) : null));
        Evaluation evaluation = new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice).Evaluate(house);
        string text = evaluation.ToText();
        int looked = 0;
        foreach (Room room in house.Rooms)
        {
            foreach (Wall wall in room.Walls)
            {
                string address = room.Id + "/" + wall.Id;
                WallView view = evaluation.Wall(address);
                Assert.Equal(evaluation.For(address).Select(finding => finding.Message).Order(StringComparer.Ordinal), view.Findings.Select(place => place.Finding.Message).Order(StringComparer.Ordinal));
                foreach (FindingPlace place in view.Findings)
                {
                    Cause cause = evaluation.Causes[place.Number - 1];
                    Assert.Contains(place.Finding, cause.Findings);
                    Assert.Contains("\n" + place.Number + ". ", text, StringComparison.Ordinal);
                    Assert.True(place.Box is null || wall.Boxes.Any(box => box.Id == place.Finding.Subject && place.Box.Id == box.Id));
                    looked++;
                }
            }
        }

        return looked > 0;
    }).Check(Tries.Always(3));

    [Fact]
    public void Findings_OfAPartThatCannotBe_AreAtThatPart()
    {
        WallView wall = Evaluate(new OneBox { Wall = wall => wall.WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("130"), In("160")) }) });
        FindingPlace place = Assert.Single(wall.Findings, one => one.Part is not null);
        Assert.Equal("door", place.Part!.Id);
        Assert.Equal(place.Part.Area, Assert.Single(place.Areas));
        Assert.True(wall.HasFaults);
    }

    [Fact]
    public void Wall_ThatIsNotThere_IsRefused()
    {
        Evaluation evaluation = new OneBox().Evaluate();
        Assert.Contains("no wall \"room/wal\"", Assert.Throws<ArgumentException>(() => evaluation.Wall("room/wal")).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => evaluation.Room("rom"));
        Assert.Throws<ArgumentException>(() => evaluation.Face("south"));
        Assert.Throws<ArgumentNullException>(() => evaluation.Wall(null!));
    }

    // Measures that can't be added up are a fault of the description: what they belong to is left out by name, and the rest of the wall is there.
    [Fact]
    public void Wall_BeyondMeasure_TellsTheRest()
    {
        Evaluation evaluation = new OneBox
        {
            Storey = Storey.WithStuds(new StudLayout().WithSpacing(In("16"))),
            Wall = wall => wall.WithLength(Distance.MaxValue).WithOpenings(new[]
            {
                new Opening("door", OpeningKind.Door, In("0"), Distance.MaxValue).WithCasing(In("3")),
                new Opening("window", OpeningKind.Window, In("40"), In("70")).WithHead(new Level(Distance.MaxValue, Datum.FinishedFloor)),
                new Opening("hatch", OpeningKind.Window, In("80"), In("100")).WithHead(new Level(In("80"), Datum.Subfloor)),
            }),
        }.Evaluate();
        Assert.True(evaluation.HasFaults);
        WallView wall = evaluation.Wall(OneBox.WallAddress);
        Assert.Equal("hatch", Assert.Single(wall.Openings).Id);
        Assert.Empty(new[] { "its length", "door door", "window window" }.Except(wall.LeftOut));
        Assert.NotNull(wall.Box(OneBox.Id));
        Assert.Empty(new OneBox().Evaluate().Wall(OneBox.WallAddress).LeftOut);
    }

    [Fact]
    public void Face_WithADeck_HasItsWallsAndWhatOneStandsOn()
    {
        OutsideFace south = new OutsideFace("south").WithWalls(new[] { new Wall("wall", In("200")) })
            .WithPlatforms(new[] { new Platform("deck", PlatformKind.Deck, In("20"), In("120")).WithSurface(Level.Parse("3 in below subfloor")) });
        FaceView face = new LayoutEvaluator(RuleSet.Empty).Evaluate(new OneBox { Storey = Storey.WithGradeBelowSubfloor(In("20")) }.Build().WithOutside(new[] { south })).Face("south");
        WallView wall = Assert.Single(face.Walls);
        Assert.True(wall.IsOutside);
        Assert.Equal(-In("20"), wall.Grade!.Value.From);
        Assert.Equal(-In("3"), Assert.Single(wall.Platforms).Area.Top!.Value.From);
        Assert.Empty(wall.Studs);
    }

    private static Storey Storey => new Storey("ground").WithStuds(new StudLayout().WithSpacing(In("16")).WithKnown(StudKnowledge.Declared))
        .WithBoards(new BoardLayout().WithWidths(new[] { In("48"), In("48") }))
        .WithCeiling(new Ceiling().WithFraming(In("97-1/8")).WithBoard(In("5/8")));

    private static WallView Evaluate(OneBox box) => box.Evaluate().Wall(OneBox.WallAddress);
}
