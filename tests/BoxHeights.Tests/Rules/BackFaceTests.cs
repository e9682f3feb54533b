using System;
using System.Collections.Generic;
using BoxHeights.Tests.Standards;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Two faces are one wall whichever of them says so, and an opening goes through both.</summary>
public sealed class BackFaceTests
{
    private static readonly LayoutEvaluator All = new(RuleSets.OfAHouse);

    // NFPA 72 keeps an alarm 36 in from the door of a bath with a tub or shower; here it is 12 in off, in the hall.
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void Alarm_BesideABathDoor_IsFoundWhicheverFaceSaysWhatIsBehindIt(bool hallSays, bool bathSays)
    {
        Finding finding = Assert.Single(Alarms(Alarm(hallSays, bathSays, true, true, In("36") - Tick)));
        Assert.Equal(("A", Verdict.Fails), (finding.Subject, finding.Verdict));
        Assert.Empty(Alarms(Alarm(hallSays, bathSays, true, true, In("36"))));
    }

    [Theory]
    [InlineData(true, false, true)]
    [InlineData(false, true, true)]
    [InlineData(true, false, false)]
    [InlineData(false, true, false)]
    public void Alarm_BesideADoorThatOneFaceDescribes_IsFound(bool hallHas, bool bathHas, bool hallSays)
    {
        Assert.Equal("A", Assert.Single(Alarms(Alarm(hallSays, !hallSays, hallHas, bathHas, In("36") - Tick))).Subject);
        Assert.Empty(Alarms(Alarm(hallSays, !hallSays, hallHas, bathHas, In("36"))));
    }

    // A long wall has two rooms behind it: only the door that leads to the bath counts.
    [Theory]
    [InlineData("bath", 1)]
    [InlineData("bedroom", 0)]
    public void Alarm_OnAWallWithTwoRoomsBehindIt_MindsTheDoorOfTheBathAlone(string left, int found)
    {
        string right = left == "bath" ? "bedroom" : "bath";
        Room Behind(string id, Distance offset) => new Room(id, new RoomKind(id == "bath" ? "bathroom" : id), "ground")
            .WithFixtures(id == "bath" ? new[] { new Fixture("tub", FixtureKind.Tub) } : Items<Fixture>.None)
            .WithWalls(new[] { new Wall("wall", In("120")).WithBackOf("square/north").WithBackOffset(offset).WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("45"), In("75")) }) });

        // Its doors are at 45 to 75 and at 165 to 195 in.
        SquareRoom hall = new() { Kind = RoomKind.Hall, Wide = In("240"), North = [SquareRoom.Box("smoke-alarm", "alarm", In("75") + In("12"), In("88"))] };
        Assert.Equal(found, Alarms(hall.House(Behind(left, -In("120")), Behind(right, Distance.Zero))).Count);
    }

    // The door of the bath's wall is in the bedroom's wall too: no receptacle is asked for in it, and none goes there.
    [Fact]
    public void Opening_OfTheOtherFace_IsWhereABoxOfThisFaceCannotGo()
    {
        RuleSet rules = new([RuleSets.RoughInPractice.Row("trim-clearance")]);
        Dwelling House(Distance at, bool said) => new SquareRoom
        {
            Kind = RoomKind.Bedroom,
            Wide = In("144"),
            North = [SquareRoom.Box("duplex-receptacle", "general", at, In("16"))],
            NorthIsBackOf = said ? "other/wall" : null,
        }.House(new Room("other", RoomKind.Hall, "ground").WithWalls(new[] { new Wall("wall", In("144")).WithOpenings(new[] { new Opening("door", OpeningKind.Door, In("20"), In("52")).WithSwing(DoorSwing.Into).WithHinge(WallEnd.Left) }) }));

        // Seen from the bedroom the door is from 144 - 52 = 92 to 124 in; a plate is 2-3/4 in wide.
        Distance touching = In("92") - In("1.375");
        Assert.True(new LayoutEvaluator(rules).Evaluate(House(touching, true)).IsClean);
        Assert.Equal("trim-clearance", Assert.Single(new LayoutEvaluator(rules).Evaluate(House(touching + Tick, true)).Findings).RuleId);
        Assert.True(new LayoutEvaluator(rules).Evaluate(House(touching + Tick, false)).IsClean);
    }

    [Fact]
    public void Dwelling_OfAnEvaluation_IsTheOneThatWasGiven()
    {
        Dwelling house = Alarm(true, false, true, false, In("36"));
        Assert.Same(house, All.Evaluate(house).Dwelling);
    }

    // A door drawn from the bath's side: hinges and swing turn round, a head above the bath's raised floor is higher above the hall's subfloor.
    [Fact]
    public void Opening_SeenFromTheOtherFace_IsTurnedAndMeasuredFromItsFloor()
    {
        Opening door = new Opening("door", OpeningKind.Door, In("20"), In("50")).WithHinge(WallEnd.Left).WithSwing(DoorSwing.Into).WithLeaf(In("28")).WithCasing(In("2.25"))
            .WithHead(new Level(In("82"), Datum.Subfloor));
        Room bath = new Room("bath", RoomKind.Bathroom, "ground").WithSubfloorOffset(In("2")).WithWalls(new[] { new Wall("wall", In("100")).WithBackOf("hall/wall").WithBackOffset(In("12")).WithOpenings(new[] { door }) });
        Room hall = new Room("hall", RoomKind.Hall, "ground").WithWalls(new[] { new Wall("wall", In("144")) });
        Dwelling house = new Dwelling("case").WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { bath, hall });
        Opening seen = Assert.Single(Resolver.Resolve(house, PartsCatalog.Generic).Dwelling.Rooms[1].Walls[0].Openings);

        // The hall's right end lies at 12 in on the bath's wall: its place y is 12 + 144 - y there.
        Opening expected = new Opening("door", OpeningKind.Door, In("106"), In("136")).WithHinge(WallEnd.Right).WithSwing(DoorSwing.Away).WithLeaf(In("28")).WithHead(new Level(In("84"), Datum.Subfloor));
        Assert.Equal(expected, seen);
    }

    // Whichever face says which is behind it, houses and houses with a mistake are judged alike.
    [Fact]
    public void BackOf_SaidOnEitherSideOrOnBoth_IsTheSame() => Prop.ForAll(OrdinaryHouses.Seeds, one =>
    {
        Dwelling house = OrdinaryHouses.Make(one.Seed, one.Rooms);
        foreach (Dwelling some in Mistaken(house, one.Seed))
        {
            string[] expected = DwellingGen.Lines(All.Evaluate(Said(some, true, true)).Findings);
            Assert.Equal(expected, DwellingGen.Lines(All.Evaluate(Said(some, true, false)).Findings));
            Assert.Equal(expected, DwellingGen.Lines(All.Evaluate(Said(some, false, true)).Findings));
        }
    }).Check(Tries.Config(200));

    /// <summary>The house, and the house with boxes along its shared walls shifted.</summary>
    private static IEnumerable<Dwelling> Mistaken(Dwelling house, int seed)
    {
        yield return house;
        Random random = new(seed);
        yield return house.WithBoxes(box => box.At is { } at && random.Next(3) == 0 ? box.WithMounting(null).WithAt(Distance.Max(In("3"), at - In("" + random.Next(1, 12)))) : box);
    }

    private static Dwelling Said(Dwelling house, bool first, bool second)
    {
        Dictionary<string, (string Other, Distance Offset)> pairs = [];
        foreach (Room room in house.Rooms)
        {
            foreach (Wall wall in room.Walls.Where(wall => wall.BackOf is not null))
            {
                // The houses' shared walls are of one length: right ends lie at left ends.
                string own = room.Id + "/" + wall.Id;
                if (first)
                {
                    pairs[own] = (wall.BackOf!, Distance.Zero);
                }

                if (second)
                {
                    pairs[wall.BackOf!] = (own, Distance.Zero);
                }
            }
        }

        return house.WithRooms(house.Rooms.Select(room => room.WithWalls(room.Walls.Select(wall => pairs.TryGetValue(room.Id + "/" + wall.Id, out (string Other, Distance Offset) pair)
            ? wall.WithBackOf(pair.Other).WithBackOffset(pair.Offset)
            : wall.WithBackOf(null).WithBackOffset(null)))));
    }

    private static Items<Finding> Alarms(Dwelling house) =>
        new(new LayoutEvaluator(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023)).Evaluate(house).Findings.Where(finding => finding.RuleId.StartsWith("alarm-bath-door", StringComparison.Ordinal)));

    /// <summary>An alarm in a hall beside a door of 30 in in the middle of a wall of 240 in, with a bath behind it.</summary>
    private static Dwelling Alarm(bool hallSays, bool bathSays, bool hallHas, bool bathHas, Distance off)
    {
        Opening[] Door(bool has) => has ? [new Opening("door", OpeningKind.Door, In("105"), In("135"))] : [];
        SquareRoom hall = new()
        {
            Kind = RoomKind.Hall,
            Wide = In("240"),
            North = [SquareRoom.Box("smoke-alarm", "alarm", In("135") + off, In("88")).WithId("A")],
            NorthOpenings = Door(hallHas),
            NorthIsBackOf = hallSays ? "bath/wall" : null,
        };
        Room bath = new Room("bath", RoomKind.Bathroom, "ground").WithFixtures(new[] { new Fixture("tub", FixtureKind.Tub) })
            .WithWalls(new[] { new Wall("wall", In("240")).WithOpenings(Door(bathHas)).WithBackOf(bathSays ? "square/north" : null) });
        return hall.House(bath);
    }

    private static Distance Tick => Distance.FromTicks(1);
}
