using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Tests.Cases;
using BoxHeights.Tests.Rules;
using Xunit;

namespace BoxHeights.Tests.Resolving;

/// <content>What nobody can mean: each at its limit, where it is none, and beyond it, where it is named. All of it is worked out by hand for the house here: a room 97-1/8 in to its framing, with 1/2 in of floor.</content>
public sealed partial class ResolverTests
{
    private static readonly Dictionary<string, Func<string, Dwelling>> Nonsense = new()
    {
        ["head"] = head => House(wall => wall.Add(Door().WithHead(Above(head)))),
        ["counter top"] = top => House(wall => wall.Add(Counter("part", "60", "100").WithTop(Above(top)))),
        ["counter top on the floor"] = top => House(wall => wall.Add(Counter("part", "60", "100").WithTop(new Level(CaseFile.Inches(top), Datum.FinishedFloor)))),
        ["overhang"] = far => House(wall => wall.Add(Deep().WithOverhang(CaseFile.Inches(far)))),
        ["knee space"] = far => House(wall => wall.Add(Deep().WithKneeSpace(CaseFile.Inches(far)))),
        ["behind a sink"] = far => House(wall => wall.Add(Deep().WithInterruptions(new CounterInterruption(InterruptionKind.Sink, CaseFile.Inches("70"), CaseFile.Inches("90")).WithBehind(CaseFile.Inches(far))))),
        ["sink"] = right => House(wall => wall.Add(Deep().WithInterruptions(new CounterInterruption(InterruptionKind.Sink, CaseFile.Inches("70"), CaseFile.Inches(right))))),
        ["thickness"] = thick => House(wall => wall.Add(Deep().WithThickness(CaseFile.Inches(thick)))),
        ["counter at a door"] = left => House(wall => wall.Add(Door()).Add(Counter("part", left, "140"))),
        ["counter at a window"] = left => House(wall => wall.Add(Door().WithKind(OpeningKind.Window).WithSill(Above("30"))).Add(Counter("part", left, "140"))),
        ["finish"] = bottom => House(wall => wall.Add(new Finish("part", FinishKind.Tile, CaseFile.Inches("60"), CaseFile.Inches("100")).WithBottom(Above(bottom)).WithTop(Above("98")))),
        ["cabinet"] = bottom => House(wall => wall.Add(new Covering("part", CoveringKind.WallCabinet, CaseFile.Inches("60"), CaseFile.Inches("100")).WithBottom(Above(bottom)))),
        ["duct"] = top => House(wall => wall.Add(new NoCavity(NoCavityKind.Duct, CaseFile.Inches("60"), CaseFile.Inches("70")).WithBottom(Above("20")).WithTop(Above(top)))),
        ["slope"] = along => House(wall => wall.With(one => one.WithTop(new WallTopPoint(CaseFile.Inches("0"), CaseFile.Inches("96")), new WallTopPoint(CaseFile.Inches(along), CaseFile.Inches("120"))))),
        ["studs"] = thick => House(wall => wall.With(one => one.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithThickness(CaseFile.Inches(thick))))),
        ["usual studs"] = apart => House(wall => wall.With(one => one.WithStuds(new StudLayout().WithSpacing(CaseFile.Inches(apart))))),
        ["level line"] = high => OnStorey(storey => storey.WithLevelLine(Above(high))),
        ["strapping"] = thick => OnStorey(storey => storey.WithCeiling(storey.Ceiling!.WithStrapping(CaseFile.Inches(thick)))),
        ["floor"] = thick => InRoom(room => room.WithFloor(OneBox.Floor(CaseFile.Inches(thick))).WithWalls(default)),
        ["fixture"] = top => InRoom(room => room.WithFixtures(new Fixture("part", FixtureKind.Refrigerator).WithTop(Above(top)))),
        ["things alike"] = id => InRoom(room => room.WithFixtures(new Fixture("part", FixtureKind.Refrigerator)).WithFreestanding(new Freestanding(id, FreestandingKind.Island))),
        ["outline"] = right => InRoom(room => room.WithFreestanding(new Freestanding("part", FreestandingKind.Island).WithCorners(At("10", "10"), At("50", "10"), At(right, "60"), At("30", "60")))),
        ["devices"] = depths => House(wall => wall.Add(Box("part", "60").WithDeviceDepths(depths.Split(' ').Select(CaseFile.Inches).ToArray()))),
        ["gangs of each"] = gangs => House(wall => wall.Add(Box("part", "60").WithDeviceGangs(gangs.Split(' ').Select(int.Parse).ToArray()))),
        ["gangs"] = gangs => House(wall => wall.Add(Box("part", "72").WithGangs(int.Parse(gangs)))),
        ["edge unstated"] = high => House(wall => wall.Add(Box("part", "60").WithHeight(BoxHeight.EdgeUnstated(CaseFile.Inches(high), Datum.Subfloor)))),
        ["first nosing"] = along => OnStorey(storey => storey).WithStoreys(new Storey("ground"), new Storey("upper")).WithFlights(new StairFlight("part", "ground", "upper", 14).WithWall("room/wall").WithFirstNosing(CaseFile.Inches(along))),
        ["flight"] = to => OnStorey(storey => storey).WithStoreys(new Storey("cellar"), new Storey("ground"), new Storey("upper")).WithFlights(new StairFlight("part", "ground", to, 14)),
    };

    // A box of 80 gangs, 1-13/16 in apart, is 143-3/16 in wide at the least, and one of 81 is 145. With an unstated edge the lowest reading is to the bottom, the highest to the top.
    [Theory]
    [InlineData("head", "1", "0", "isn't above the subfloor")]
    [InlineData("counter top", "97-1/8", "97-3/16", "but the ceiling framing is at 97-1/8 in")]
    [InlineData("counter top on the floor", "-7/16", "-1/2", "isn't above the subfloor")]
    [InlineData("overhang", "25", "25-1/16", "the overhang is 25-1/16 in")]
    [InlineData("knee space", "25", "25-1/16", "the knee space is 25-1/16 in")]
    [InlineData("behind a sink", "25", "25-1/16", "the counter behind its sink is 25-1/16 in")]
    [InlineData("sink", "71", "70", "this sink runs from 70 in to 70 in")]
    [InlineData("thickness", "36-1/2", "36-9/16", "it is 36-9/16 in thick")]
    [InlineData("counter at a door", "99", "98-15/16", "across the door \"door\" from 60 in to 100 in")]
    [InlineData("finish", "97-1/16", "97-1/8", "its bottom is at 97-1/8 in")]
    [InlineData("cabinet", "97-1/16", "97-1/8", "its bottom is at 97-1/8 in")]
    [InlineData("duct", "20-1/16", "20", "the bottom of its duct, 20 in above subfloor")]
    [InlineData("slope", "144", "145", "a point of its top is at 145 in")]
    [InlineData("studs", "15-15/16", "16", "16 in thick, but stand 16 in on center")]
    [InlineData("usual studs", "2", "1-1/2", "1-1/2 in thick")]
    [InlineData("level line", "1/16", "0", "give it above the subfloor")]
    [InlineData("level line", "97-1/8", "97-3/16", "its level line is 97-3/16 in above the subfloor")]
    [InlineData("strapping", "96", "96-5/8", "reaches down to its subfloor")]
    [InlineData("floor", "96-9/16", "96-5/8", "which reaches its ceiling, 96-5/8 in above the subfloor")]
    [InlineData("fixture", "97-1/8", "97-3/16", "its top is at 97-3/16 in")]
    [InlineData("things alike", "island", "part", "have the same id")]
    [InlineData("outline", "60", "0", "cross: give its corners in order")]
    [InlineData("devices", "1", "1 1", "it states the depths of 2 devices, but has 1")]
    [InlineData("gangs of each", "1", "1 1", "it states the gangs of 2 devices, but has 1")]
    [InlineData("gangs", "80", "81", "a box of 81 gangs, at least 145 in wide")]
    [InlineData("edge unstated", "0", "-1/16", "it doesn't lie between the subfloor and the ceiling framing")]
    [InlineData("edge unstated", "97-1/8", "97-3/16", "it doesn't lie between the subfloor and the ceiling framing")]
    [InlineData("first nosing", "144", "144-1/16", "its first nosing is at 144-1/16 in along")]
    [InlineData("flight", "ground", "cellar", "storeys are listed lowest first")]
    public void Contradiction_OneStepBeyondWhatCanBe_IsNamed(string what, string most, string beyond, string words)
    {
        Evaluation within = Evaluator.Evaluate(Nonsense[what](most));
        Assert.DoesNotContain(within.Findings, finding => finding.Fault is not null);
        Evaluation fails = Evaluator.Evaluate(Nonsense[what](beyond));
        Finding fault = Assert.Single(fails.Findings, finding => finding.Fault is not null);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        Assert.Contains(fault.Message, fails.ToText(), StringComparison.Ordinal);
        Assert.NotEmpty(Booklet.For(fails).ToHtml());
        Assert.NotEmpty(MarkSheet.For(fails).ToMarkdown());
    }

    // A counter under a window isn't across it; a box overhead may have any gangs.
    [Fact]
    public void Contradiction_WhatOnlyLooksLikeOne_IsNotNamed() =>
        Assert.DoesNotContain(Evaluator.Evaluate(Nonsense["counter at a window"]("70")).Findings, finding => finding.Fault is not null);

    // A reversed counter whose top isn't stated: what would be assumed of it is asked of every box on its wall.
    [Fact]
    public void NoExtent_ReversedCounterWithoutTop_IsToldInAllPapers()
    {
        Evaluation evaluation = Evaluator.Evaluate(House(wall => wall.Add(Counter("part", "80", "40"))));
        Assert.Contains("room/wall/part: this counter runs from 80 in to 40 in", evaluation.ToText(), StringComparison.Ordinal);
        Assert.NotEmpty(evaluation.Judgements);
    }

    [Fact]
    public void Corners_ThatAreNoOutline_Throw()
    {
        Fixture tub = new("tub", FixtureKind.Tub);
        Freestanding island = new("island", FreestandingKind.Island);
        Assert.Contains("Plan has one corner;", Assert.Throws<ArgumentException>(() => tub.WithPlan(At("1", "1"))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => tub.WithPlan(At("1", "1"), At("2", "1"), At("3", "1")));
        Assert.Contains("has no extent", Assert.Throws<ArgumentException>(() => tub.WithPlan(At("1", "1"), At("1", "9"))).Message, StringComparison.Ordinal);
        Assert.Contains("Corners has 2 corners;", Assert.Throws<ArgumentException>(() => island.WithCorners(At("1", "1"), At("2", "2"))).Message, StringComparison.Ordinal);
        Assert.Equal(2, tub.WithPlan(At("1", "1"), At("2", "2")).Plan.Count);
        Assert.Empty(island.WithCorners().Corners);
    }

    private static Level Above(string inches) => new(CaseFile.Inches(inches), Datum.Subfloor);

    private static PlanPoint At(string right, string into) => new(CaseFile.Inches(right), CaseFile.Inches(into));

    private static Opening Door() => new("door", OpeningKind.Door, CaseFile.Inches("60"), CaseFile.Inches("100"));

    private static Counter Deep() => Counter("part", "60", "100").WithDepth(CaseFile.Inches("25")).WithTop(new Level(CaseFile.Inches("36"), Datum.FinishedFloor));

    private static Dwelling OnStorey(Func<Storey, Storey> change) => House(_ => { }) is var house ? house.WithStoreys(house.Storeys.Select(change)) : house;

    private static Dwelling InRoom(Func<Room, Room> change) => House(_ => { }) is var house ? house.WithRooms(house.Rooms.Select(change)) : house;
}
