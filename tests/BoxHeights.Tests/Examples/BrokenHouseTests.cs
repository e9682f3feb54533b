#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.Linq;
using Xunit;

namespace BoxHeights.Tests.Examples;

/// <summary>Whoever reads only the first ten lines of a report has read what matters most: how much is found, what is wrong with the description, what couldn't be judged, and the first cause.</summary>
public sealed class BrokenHouseTests
{
    private static readonly LayoutEvaluator Evaluator = new(WholeHouseTests.Rules);

    private static IReadOnlyDictionary<string, (Func<Dwelling, Dwelling> Break, string[] Named)> Copies { get; } = new Dictionary<string, (Func<Dwelling, Dwelling>, string[])>(StringComparer.Ordinal)
    {
        ["a wall too long"] = (house => OfWall(house, "kitchen", "north", wall => wall.WithLength(wall.Length + In(66))), ["FAULT  kitchen: it doesn't close", "Not judged"]),
        ["a kind spelled wrong"] = (house => OfRoom(house, "bed-1", room => room.WithKind(new RoomKind("bedrom"))), ["bed-1", "\"bedrom\"", "bedroom"]),
        ["a light without a place"] = (house => OfRoom(house, "dining", room => room.WithOverhead(room.Overhead.Select(box => box.WithPlan(null)))), ["FAULT  C4", "it isn't said where it is"]),
        ["a tub without a place"] = (house => OfRoom(house, "hall-bath", room => room.WithFixtures(room.Fixtures.Select(tub => tub.WithPlan(Items<PlanPoint>.None)))), ["FAULT  hall-bath/tub", "it isn't said where it stands"]),
        ["a storey that isn't there"] = (house => OfRoom(house, "study", room => room.WithStorey("frist")), ["study", "\"frist\""]),
        ["an id that is there twice"] = (house => house.WithBoxes(box => box.Id == "L2" ? box.WithId("L1") : box), ["L1"]),
        ["a sill above its head"] = (
            house => house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => wall.WithOpenings(wall.Openings.Select(one => one is { Sill: not null, Head: not null } ? one.WithSill(one.Head).WithHead(one.Sill) : one)))))),
            ["Mend the description first", "FAULT"]),
        ["three at once"] = (
            house => Copies!["a wall too long"].Break(Copies["a light without a place"].Break(Copies["a tub without a place"].Break(house))),
            ["Mend the description first, since all else may change with it: C4, hall-bath/tub, kitchen."]),
        ["a room without its counters' tops"] = (house => OfWall(house, "kitchen", "north", wall => wall.WithCounters(wall.Counters.Select(one => one.WithTop(null)))), [" unknown", "Not judged here"]),
        ["floors that nobody chose"] = (house => house.WithRooms(house.Rooms.Select(room => room.WithFloor(null))), ["Not judged here"]),
        ["nothing but rooms"] = (
            house => house.WithOutside(Items<OutsideFace>.None).WithFlights(Items<StairFlight>.None).WithRooms(house.Rooms.Select(room => room.WithOverhead(Items<DeviceBox>.None).WithInFloor(Items<DeviceBox>.None)
                .WithWalls(room.Walls.Select(wall => wall.WithBoxes(Items<DeviceBox>.None))))),
            ["Not judged here", "no box is described there"]),
    };

    public static TheoryData<string> Names
    {
        get
        {
            TheoryData<string> names = [];
            foreach (string name in Copies.Keys)
            {
                names.Add(name);
            }

            return names;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void FirstTenLines_OfABrokenCopy_TellWhatMattersMost(string name)
    {
        (Func<Dwelling, Dwelling> change, string[] named) = Copies[name];
        Evaluation evaluation = Evaluator.Evaluate(change(WholeHouseTests.House));
        string top = Top(evaluation);
        Assert.All(named, words => Assert.True(top.Contains(words, StringComparison.Ordinal), words + " isn't in:\n" + top));
        AssertTellsWhatMatters(evaluation, top);
    }

    [Fact]
    public void FirstTenLines_OfTheHouseItself_TellWhatMattersMost()
    {
        string top = Top(WholeHouseTests.Judged);
        Assert.DoesNotContain("Mend the description", top, StringComparison.Ordinal);
        Assert.Contains("VIOLATION  K8", top, StringComparison.Ordinal);
        AssertTellsWhatMatters(WholeHouseTests.Judged, top);
    }

    /// <summary>How much is found, by weight; that something couldn't be judged, if so; and the first cause with what it is about.</summary>
    private static void AssertTellsWhatMatters(Evaluation evaluation, string top)
    {
        string first = top.Split('\n')[0];
        Assert.Contains(evaluation.Findings.Count == 0 ? "nothing was judged" : evaluation.Findings.Count + " finding", first, StringComparison.Ordinal);
        Assert.True(!evaluation.HasFaults || first.Contains("fault", StringComparison.Ordinal) || first.Contains("violation", StringComparison.Ordinal), first);
        Assert.True(evaluation.NotJudged.Count == 0 || top.Contains("Not judged here", StringComparison.Ordinal) || top.Contains("NOT JUDGED", StringComparison.Ordinal), top);
        Assert.True(evaluation.Causes.Count == 0 || top.Contains("\n1. ", StringComparison.Ordinal), top);
        string[] broken = [.. evaluation.Findings.Where(finding => finding.Fault is { Kind: not LayoutFaultKind.UnknownKind }).Select(finding => finding.Subject).Distinct().Order(StringComparer.Ordinal)];
        Assert.All(broken.Take(6), subject => Assert.True(top.Contains(subject, StringComparison.Ordinal), subject + " isn't in:\n" + top));
        Assert.True(broken.Length <= 6 || top.Contains(" and " + (broken.Length - 6) + " more", StringComparison.Ordinal), top);
    }

    private static string Top(Evaluation evaluation) => string.Join("\n", evaluation.ToText().Split('\n').Take(10));

    private static Dwelling OfRoom(Dwelling house, string id, Func<Room, Room> change) => house.WithRooms(house.Rooms.Select(room => room.Id == id ? change(room) : room));

    private static Dwelling OfWall(Dwelling house, string room, string id, Func<Wall, Wall> change) =>
        OfRoom(house, room, one => one.WithWalls(one.Walls.Select(wall => wall.Id == id ? change(wall) : wall)));
}
#endif
