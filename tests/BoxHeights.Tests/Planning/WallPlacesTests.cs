using System;
using System.Linq;
using BoxHeights.Rules;
using Xunit;
using static BoxHeights.Tests.Cases.CaseFile;

namespace BoxHeights.Tests.Planning;

/// <summary>The places that a wall offers, against the evaluator's own answer place by place.</summary>
public sealed class WallPlacesTests
{
    private const string Probe = "probe";

    private static readonly RuleSet Rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;

    private static readonly Distance Margin = Distance.FromInches(1m);
    private static readonly Distance Step = Distance.FromInches(0.25m);

    [Fact]
    public void Clear_WallWithEverything_IsWhereTheEvaluatorFindsNothing()
    {
        // At 16 in to the top: under the window, beside the door and the tall cabinet. At 44 in: beside the window and the mirror too.
        foreach (decimal height in new[] { 16m, 44m })
        {
            Dwelling house = House(height, wall => wall);
            StatedSite site = Site(house);
            DistanceSet clear = site.Places.ClearAt(Distance.FromInches(height));
            LayoutEvaluator evaluator = new(Rules);
            int good = 0, bad = 0;
            for (decimal at = 2; at <= 238; at += 0.5m)
            {
                Distance along = Distance.FromInches(at);
                bool isClean = !evaluator.Evaluate(house.WithBoxes(box => box.WithAt(along))).Findings.Any(finding => !Rules.Row(finding.RuleId).YieldsWhenForced);
                Assert.True(isClean == clear.Contains(along), height + " in to the top at " + at + ": the evaluator says " + isClean);
                good += isClean ? 1 : 0;
                bad += isClean ? 0 : 1;
            }

            Assert.InRange(good, 50, 450);
            Assert.InRange(bad, 50, 450);
        }
    }

    [Fact]
    public void All_NailedBox_IsOnStudFacesThatAreClear()
    {
        StatedSite site = Site(House(16m, wall => wall.WithStuds(Studs(StudKnowledge.Declared)).WithOpenings(Items<Opening>.None).WithCoverings(Items<Covering>.None)));
        Distance[] places = [.. Clear(site, Inches("16")).Select(one => one.At)];

        // First face at 15-1/4, 1-1/2 thick, centers of boxes 2-1/4 wide 1-1/8 off either face.
        Assert.Equal([Inches("14-1/8"), Inches("17-7/8"), Inches("30-1/8"), Inches("33-7/8")], places.Take(4));
        Assert.Equal(28, places.Length);
    }

    [Fact]
    public void All_NarrowBay_HasRoomForOneOrNone()
    {
        // Faces at 20, 23-3/4 (a bay of 2-1/4: one box), 27 (a bay of 1-3/4: none).
        StudLayout studs = new StudLayout().WithFaces(new[] { Inches("20"), Inches("23-3/4"), Inches("27") }).WithKnown(StudKnowledge.Measured);
        StatedSite site = Site(House(16m, wall => wall.WithStuds(studs).WithOpenings(Items<Opening>.None).WithCoverings(Items<Covering>.None)));
        Assert.Equal([Inches("18-7/8"), Inches("22-5/8"), Inches("29-5/8")], Clear(site, Inches("16")).Select(one => one.At));
    }

    [Fact]
    public void All_BarBox_IsOnStepsWithAMarginWhereThereIsRoom()
    {
        Dwelling house = House(16m, wall => wall).WithBoxes(box => box.WithMounting(new(MountingMethod.Bar)));
        StatedSite site = Site(house);
        DistanceSet clear = site.Places.ClearAt(Inches("16"));
        RunCandidate[] places = [.. Clear(site, Inches("16"))];
        Assert.All(places, one => Assert.True(clear.Contains(one.At) && one.At.RoundDown(Step) == one.At));
        Assert.All(places, one => Assert.True(clear.Margin(one.At) >= Margin || Enumerable.Range(0, clear.Count).Any(i => clear[i].Contains(one.At) && clear[i].Width < Margin + Margin)));
        Assert.InRange(places.Length, 100, 900);
    }

    // However far apart the steps are, each of them on the wall is looked at, the last before its right end as well.
    [Theory]
    [InlineData("9")]
    [InlineData("11")]
    [InlineData("118")]
    [InlineData("237")]
    public void All_BarBoxOnABareWall_AreTheStepsThatHaveAMargin(string step)
    {
        StatedSite site = Site(House(16m, wall => wall.WithOpenings(Items<Opening>.None).WithCoverings(Items<Covering>.None)).WithBoxes(box => box.WithMounting(new(MountingMethod.Bar))));
        DistanceSet roomy = site.Places.ClearAt(Inches("16")).Shrink(Margin);
        Distance[] expected = [.. Enumerable.Range(0, 1000).Select(n => Inches(step) * n).Where(roomy.Contains)];
        WallPlaces places = new(site, false, Margin, Inches(step));
        Assert.Equal(expected, places.All.Where(places.ClearAt(Inches("16")).Contains));
        Assert.NotEmpty(expected);
    }

    [Fact]
    public void NearestTo_AnyWish_IsTheOrderOfASort()
    {
        Distance[] places = [Inches("4"), Inches("8"), Inches("9"), Inches("16")];
        foreach (decimal wish in new[] { 0m, 4, 6, 8.5m, 12, 12.5m, 16, 20 })
        {
            Distance at = Distance.FromInches(wish);
            Assert.Equal(places.OrderBy(place => (place - at).Abs()).ThenBy(place => place), WallPlaces.NearestTo(at, places, WallEnd.Left));
            Assert.Equal(places.OrderBy(place => (place - at).Abs()).ThenByDescending(place => place), WallPlaces.NearestTo(at, places, WallEnd.Right));
        }
    }

    [Fact]
    public void All_BehindABed_IsALastResort()
    {
        StatedSite site = Site(House(16m, wall => wall.WithStuds(Studs(StudKnowledge.Declared)), new Fixture("bed", FixtureKind.Bed).WithWall("wall").WithLeft(Inches("150")).WithRight(Inches("210"))));
        RunCandidate[] places = [.. Clear(site, Inches("16"))];
        Assert.Equal(places.Where(one => one.At >= Inches("150") && one.At <= Inches("210")), places.Where(one => one.Rank == CandidateRank.LastResort));
        Assert.InRange(places.Count(one => one.Rank == CandidateRank.LastResort), 4, 10);
    }

    [Fact]
    public void Plan_OfAWall_EvaluatesWithoutFindings()
    {
        foreach (MountingMethod how in new[] { MountingMethod.Stud, MountingMethod.Bar })
        {
            Dwelling house = House(16m, wall => wall.WithStuds(Studs(StudKnowledge.Declared))).WithBoxes(box => box.WithMounting(new(how)));
            RunToPlan run = new RunToPlan(new(Inches("60"), Inches("240"))) with { Candidates = new(Clear(Site(house), Inches("16")).Where(one => one.At >= Inches("60"))) };
            RunPlan plan = new RunPlanner(RunAims.Walls).Plan(run);
            Assert.True(plan.HasSlack());
            Assert.Equal(2, plan.Positions.Count);
            DeviceBox probe = house.FindBox(Probe)!.Box;
            DeviceBox[] boxes = [.. plan.Positions.Select((one, i) => probe.WithId("b" + i).WithAt(one.At))];
            Evaluation evaluation = new LayoutEvaluator(Rules).Evaluate(house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithBoxes(boxes))))));
            Assert.Equal(2, evaluation.Dwelling.PlacedBoxes().Count);
            Assert.Empty(evaluation.Findings);
        }
    }

    /// <summary>The places of a wall that are clear at a height.</summary>
    private static RunCandidate[] Clear(StatedSite site, Distance reading)
    {
        WallPlaces places = new(site, false, Margin, Step);
        return [.. places.All.Where(places.ClearAt(reading).Contains).Select(at => new RunCandidate(at, places.RankOf(at)))];
    }

    private static StudLayout Studs(StudKnowledge known) => new StudLayout().WithSpacing(Inches("16")).WithKnown(known);

    private static StatedSite Site(Dwelling house) => new LayoutState(house, new CompiledRules(Rules), SettledOptions.Usual(house)).SitesOf(0)[0];

    /// <summary>A bedroom wall of 20 ft: a door from 16 to 48, a window from 72 to 108, a tall cabinet from 130 to 146, a mirror from 180 to 204.</summary>
    private static Dwelling House(decimal top, Func<Wall, Wall> change, params Fixture[] fixtures)
    {
        Wall wall = new Wall("wall", Inches("240"))
            .WithOpenings(new[]
            {
                new Opening("door", OpeningKind.Door, Inches("16"), Inches("48")).WithLeaf(Inches("30")).WithCasing(Inches("2-1/4")).WithReveal(Inches("3/16")).WithHead(new Level(Inches("82-1/2"), Datum.Subfloor)),
                new Opening("window", OpeningKind.Window, Inches("72"), Inches("108")).WithCasing(Inches("2-1/4")).WithReveal(Inches("3/16")).WithStool(Inches("3/4"))
                    .WithSill(new Level(Inches("36"), Datum.Subfloor)).WithHead(new Level(Inches("80"), Datum.Subfloor)),
            })
            .WithCoverings(new[]
            {
                new Covering("closet", CoveringKind.TallCabinet, Inches("130"), Inches("146")).WithOpenInside(false),
                new Covering("mirror", CoveringKind.Mirror, Inches("180"), Inches("204")).WithBottom(new Level(Inches("30"), Datum.Subfloor)).WithTop(new Level(Inches("76"), Datum.Subfloor)),
            })
            .WithBoxes(new[]
            {
                new DeviceBox(Probe, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithAt(Inches("60")).WithHeight(BoxHeight.ToTop(Distance.FromInches(top), Datum.Subfloor)),
            });
        DwellingBuilder house = new("case");
        house.Add(new Storey("main"));
        house.Room("room", RoomKind.Bedroom, "main").With(one => one.WithFixtures(fixtures)).Wall("wall", wall.Length).With(_ => change(wall));
        return house.Build();
    }
}
