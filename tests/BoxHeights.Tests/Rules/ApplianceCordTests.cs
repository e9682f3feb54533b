using System;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>NEC 210.50(C): within 6 ft of the appliance, as its cord goes, which is through no wall; and where a washer asks for one at all.</summary>
public sealed class ApplianceCordTests
{
    private static readonly LayoutEvaluator Washers = new(OneBox.Only(RuleSets.UnitedStatesOutlets(NecEdition.Nec2023), "washer-receptacle"));

    // On the wall that runs to the inner corner; the washer against the one that starts there, so that its cord goes along both.
    [Theory]
    [InlineData("30", "42", true)]
    [InlineData("30", "42-1/128", false)]
    [InlineData("41", "31", true)]
    [InlineData("72", "1", false)]
    public void Washer_RoundACorner_IsAsFarAsItsCordGoes(string toTheCorner, string fromTheCorner, bool near)
    {
        Dwelling house = Bent(false, CaseFile.Inches(toTheCorner), CaseFile.Inches(fromTheCorner));
        Assert.Equal(near ? [] : [Verdict.Fails], Washers.Evaluate(house).Findings.Select(finding => finding.Verdict));
    }

    [Fact]
    public void Washer_InARandomPlaceOfABentRoom_IsReachedWhereAWalkFindsAWay()
    {
        int near = 0;
        int far = 0;
        int round = 0;
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []), seed =>
        {
            Random random = new(seed);
            bool onNorth = random.Next(3) > 0;
            int at = onNorth ? random.Next(-50, 50) : random.Next(2, 80);
            int left = random.Next(1, 50);
            double cord = Cord(at, onNorth ? -40 : 0, left, out bool bends);
            if (Math.Abs(cord - 72) < 0.01)
            {
                return;
            }

            near += cord < 72 ? 1 : 0;
            far += cord > 72 ? 1 : 0;
            round += bends ? 1 : 0;
            Evaluation evaluation = Washers.Evaluate(Bent(onNorth, Distance.FromInches(at), Distance.FromInches(left)));
            Assert.True(evaluation.IsClean == cord < 72 && !evaluation.HasUnknowns,
                FormattableString.Invariant($"{onNorth} {at} to the corner, {left} from it, cord {cord}: ") + string.Join("; ", evaluation.Findings.Select(finding => finding.Message)));
        }).Check(Tries.Always(600));
        Assert.True(near > 100 && far > 100 && round > 100 && round < 550, near + " near, " + far + " far, " + round + " round the corner");
    }

    // 210.52(F) asks for a receptacle wherever a washer is meant to be; any that is near will do.
    [Theory]
    [InlineData("bathroom", 113, "bath", 1)]
    [InlineData("bathroom", 112, "bath", 0)]
    [InlineData("garage", 50, "garage", 0)]
    [InlineData("bedroom", 130, "general", 0)]
    public void Washer_InARoomOfAnotherKind_AsksForOneNearIt(string kind, int at, string purpose, int lacking)
    {
        SquareRoom room = new()
        {
            Kind = new RoomKind(kind),
            Fixtures = [SquareRoom.Against("washer", FixtureKind.Washer, "north", CaseFile.Inches("10"), CaseFile.Inches("40"), CaseFile.Inches("28"))],
            North = [SquareRoom.Box("gfci-receptacle", purpose, Distance.FromInches(at), CaseFile.Inches("44"))],
        };
        Assert.Equal(lacking, Washers.Evaluate(room.House()).Findings.Count);
    }

    /// <summary>The way from the receptacle to the washer's nearest point in sight, or round the inner corner; the line is looked along in small steps.</summary>
    private static double Cord(int boxX, int boxY, int left, out bool bends)
    {
        // The inner corner is the origin: no room is right of it and below it. The washer stands against the wall that goes down from there, 30 in wide and 28 in out.
        double best = Math.Sqrt((boxX * boxX) + (boxY * boxY)) + left;
        bends = true;
        for (int across = 0; across <= 28 * 4; across++)
        {
            for (int down = 0; down <= 30 * 4; down++)
            {
                (double x, double y) = (-across / 4.0, left + (down / 4.0));
                double straight = Math.Sqrt(((boxX - x) * (boxX - x)) + ((boxY - y) * (boxY - y)));
                if (straight < best && Enumerable.Range(1, 199).All(step => boxX + ((x - boxX) * step / 200.0) <= 1e-9 || boxY + ((y - boxY) * step / 200.0) <= 1e-9))
                {
                    best = straight;
                    bends = false;
                }
            }
        }

        return best;
    }

    /// <summary>
    /// A room like an L: 200 in along the north, 40 in down, back 120 in to the inner corner, 90 in down from there, 80 in, and 130 in up. The near side of the washer
    /// is so far from the inner corner on the wall that starts there, and a laundry receptacle so far to the right of the corner, on the wall that runs to it or north.
    /// </summary>
    private static Dwelling Bent(bool onNorth, Distance toTheCorner, Distance fromTheCorner)
    {
        Distance In(int inches) => Distance.FromInches(inches);
        DeviceBox box = SquareRoom.Box("duplex-receptacle", "laundry", onNorth ? In(80) + toTheCorner : In(120) - toTheCorner, In(44));
        Room room = new Room("bent", RoomKind.Laundry, "ground").WithFloor(OneBox.Floor(Distance.Zero)).WithWalls(new[]
        {
            new Wall("north", In(200)).WithBoxes(onNorth ? new[] { box } : default(Items<DeviceBox>)), new Wall("east", In(40)),
            new Wall("inner", In(120)).WithTurnDegrees(-90m).WithBoxes(onNorth ? default(Items<DeviceBox>) : new[] { box }),
            new Wall("shank", In(90)), new Wall("foot", In(80)), new Wall("west", In(130)),
        }).WithFixtures(new[] { SquareRoom.Against("washer", FixtureKind.Washer, "shank", fromTheCorner, fromTheCorner + In(30), In(28)) });
        return new Dwelling("case").WithStoreys(new[] { SquareRoom.Storey }).WithRooms(new[] { room });
    }
}
