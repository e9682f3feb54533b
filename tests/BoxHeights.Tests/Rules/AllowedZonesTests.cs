using System;
using System.Collections.Generic;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Installation zones of an invented country against a look at single points: a band, a strip beside a door, a strip beside an inside corner. One of them is enough.</summary>
public sealed class AllowedZonesTests
{
    private const int Wide = 4000;
    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);
    private static readonly Distance Tick = Distance.FromTicks(1);

    private static readonly AllowedZones Row = new("zones", "in an installation zone", Severity.Violation, new("Invented wiring rules"))
    {
        Bands = new[] { new LevelBand(Datum.FinishedFloor, Mm(150), Mm(450)), new LevelBand(Datum.FinishedFloor, Mm(1000), Mm(1300)) },
        BesideOpenings = new DistanceRange(Mm(100), Mm(300)),
        Openings = new[] { OpeningKind.Door },
        FromCorners = new DistanceRange(Mm(100), Mm(350)),
        Scope = RuleScope.Walls,
    };

    private static readonly LayoutEvaluator Evaluator = new(new RuleSet([Row]));

    [Fact]
    public void Box_InAnyPlace_IsAllowedAsThePointIs()
    {
        HashSet<bool> seen = [];
        Prop.ForAll(Seeds, seed =>
        {
            Random random = new(seed);
            int left = random.Next(400, 2000);
            int right = left + random.Next(600, 1200);
            bool isDoor = random.Next(3) > 0;
            int at = Near(random, [100, 350, Wide - 100, Wide - 350, left - 100, left - 300, right + 100, right + 300], Wide);
            int height = Near(random, [150, 450, 1000, 1300], 2400);
            bool said = Evaluator.Evaluate(House(Mm(at), Mm(height), new Opening("o", isDoor ? OpeningKind.Door : OpeningKind.Window, Mm(left), Mm(right)))).Findings.Count == 0;
            bool looked = height is (>= 150 and <= 450) or (>= 1000 and <= 1300)
                || at is (>= 100 and <= 350) or (>= Wide - 350 and <= Wide - 100)
                || (isDoor && ((left - at >= 100 && left - at <= 300) || (at - right >= 100 && at - right <= 300)));
            seen.Add(said);
            Assert.True(said == looked, at + " along, " + height + " up, opening " + left + " to " + right);
        }).Check(Tries.Config(1000));
        Assert.Equal(2, seen.Count);
    }

    [Fact]
    public void Edges_AreInsideToTheTick()
    {
        Assert.Empty(Found(Mm(350), Mm(700)));
        Assert.Single(Found(Mm(350) + Tick, Mm(700)));
        Assert.Empty(Found(Mm(2000), Mm(450)));
        Assert.Single(Found(Mm(2000), Mm(450) + Tick));
    }

    // At an outside corner no strip begins; where the walls don't go round, nobody knows what the wall meets.
    [Theory]
    [InlineData(90, 4, null)]
    [InlineData(90, 1, Verdict.Unknown)]
    [InlineData(-90, 1, Verdict.Fails)]
    public void Corners_CountWhereTheyTurnInward(int turn, int walls, Verdict? said)
    {
        List<Wall> all = [];
        for (int i = 0; i < walls; i++)
        {
            all.Add(new Wall("w" + i, Mm(Wide)).WithTurnDegrees(turn).WithBoxes(i > 0 ? default : new[] { SquareRoom.Box("duplex-receptacle", "general", Mm(Wide - 200), Mm(700)) }));
        }

        Room room = new Room("room", RoomKind.Bedroom, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithWalls(all.ToArray());
        Items<Finding> found = Evaluator.Evaluate(new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room })).Findings;
        Assert.Equal(said, found.Count == 0 ? null : found[0].Verdict);
    }

    private static Items<Finding> Found(Distance at, Distance height) => Evaluator.Evaluate(House(at, height)).Findings;

    private static Dwelling House(Distance at, Distance height, params Opening[] openings) =>
        new SquareRoom { Kind = RoomKind.Bedroom, Wide = Mm(Wide), North = [SquareRoom.Box("duplex-receptacle", "general", at, height)], NorthOpenings = openings }.House();

    /// <summary>Often right at an edge or a millimeter beside it.</summary>
    private static int Near(Random random, int[] edges, int most) => random.Next(2) == 0 ? random.Next(80, most - 80) : edges[random.Next(edges.Length)] + random.Next(-1, 2);
}
