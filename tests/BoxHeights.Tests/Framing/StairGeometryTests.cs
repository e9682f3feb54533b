using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Numerics;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>Rough and finished stairs and the line of their nosings.</summary>
public sealed class StairGeometryTests
{
    private static readonly Distance ThreeQuarters = CaseFile.Inches("3/4");

    // 105 in from subfloor to subfloor, 14 risers, floors of 3/4 in, treads 1 in thick.
    private static StairFlight Fourteen { get; } = new StairFlight("stair", "low", "high", 14).WithTread(CaseFile.Inches("10")).WithTreadFinish(CaseFile.Inches("1")).WithFirstNosing(CaseFile.Inches("20"));

    private static StairGeometry Even { get; } = new(Fourteen, CaseFile.Inches("105"), ThreeQuarters, ThreeQuarters);

    [Fact]
    public void Notches_FourteenRisers_AreThePublishedOnes()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("stair-rough.csv"))
        {
            int tread = int.Parse(row["tread"], CultureInfo.InvariantCulture);
            Assert.Equal((ExactDistance)CaseFile.Inches(row["notch"]), Even.NotchHeight(tread));
            Assert.Equal((ExactDistance)CaseFile.Inches(row["finished"]), Even.TreadHeight(tread));

            // The second road: risers of 105/14 in from the floor of 3/4 in; a notch lies 1 in under its tread, but for both subfloors.
            Fraction finished = new Fraction(3, 4) + (new Fraction(105, 14) * new Fraction(tread));
            Assert.Equal(CaseFile.Number(row["finished"]), finished);
            Assert.Equal(CaseFile.Number(row["notch"]), tread == 0 ? Fraction.Zero : finished - (tread == 14 ? new Fraction(3, 4) : Fraction.One));
        }
    }

    [Fact]
    public void Risers_RoughOnes_AreUnevenOnPurpose()
    {
        Assert.Equal("7-1/4 in", Even.RoughRiser(1).ToString());
        Assert.All(Enumerable.Range(2, 12), riser => Assert.Equal("7-1/2 in", Even.RoughRiser(riser).ToString()));
        Assert.Equal("7-3/4 in", Even.RoughRiser(14).ToString());
        Assert.Equal(ExactDistance.Zero, Even.RiserVariation);
    }

    // A light 6 in above finished tread 5: 3/4 + 37-1/2 + 6 = 44-1/4 in, 7 in above rough notch 5. Computed.
    // A run of 130 in over 13 treads is 10 in each.
    [Fact]
    public void Tread_StatedOrByTheRun_IsTheSame()
    {
        Assert.Equal((ExactDistance)CaseFile.Inches("10"), Even.Tread);
        Assert.Equal(Even.Tread, new StairGeometry(Fourteen.WithTread(null).WithRun(CaseFile.Inches("130")), CaseFile.Inches("105"), ThreeQuarters, ThreeQuarters).Tread);
        Assert.Null(new StairGeometry(Fourteen.WithTread(null), CaseFile.Inches("105"), ThreeQuarters, ThreeQuarters).Tread);
    }

    [Fact]
    public void TreadHeight_LightAboveIt_IsThePublishedHeight()
    {
        Assert.Equal((ExactDistance)CaseFile.Inches("44-1/4"), Even.TreadHeight(5) + CaseFile.Inches("6"));
        Assert.Equal((ExactDistance)CaseFile.Inches("7"), Even.TreadHeight(5) + CaseFile.Inches("6") - Even.NotchHeight(5));
    }

    // The carriages were cut for 3/4 in; 1-1/4 in of tile at the foot makes riser 1 only 7 in. Computed.
    [Fact]
    public void Variation_OtherFloorThanCutFor_IsTheDifference()
    {
        StairGeometry tiled = new(Fourteen.WithCutForFloorBelow(ThreeQuarters).WithCutForFloorAbove(ThreeQuarters), CaseFile.Inches("105"), CaseFile.Inches("1-1/4"), ThreeQuarters);
        Assert.Equal((ExactDistance)CaseFile.Inches("7"), tiled.FinishedRiser(1));
        Assert.Equal((ExactDistance)CaseFile.Inches("1/2"), tiled.RiserVariation);
    }

    // At 65 in along, 45 in up the flight from a first nosing at 20 in: 41-1/4 in above the lower finished floor; a handrail there is 75-1/4 to 79-1/4 in. Computed.
    [Theory]
    [InlineData(WallEnd.Right, "65")]
    [InlineData(WallEnd.Left, "95")]
    public void NosingLine_FortyFiveInchesUp_IsThePublishedHeight(WallEnd climbs, string along)
    {
        StairGeometry stair = new(Fourteen.WithClimbs(climbs).WithFirstNosing(CaseFile.Inches(climbs == WallEnd.Right ? "20" : "140")), CaseFile.Inches("105"), ThreeQuarters, ThreeQuarters);
        Assert.True(stair.TryNosingLine(CaseFile.Inches(along), out ExactDistance line));
        Assert.Equal((ExactDistance)CaseFile.Inches("41-1/4"), line - ThreeQuarters);
        Assert.Equal(((ExactDistance)CaseFile.Inches("75-1/4"), (ExactDistance)CaseFile.Inches("79-1/4")), (line - ThreeQuarters + CaseFile.Inches("34"), line - ThreeQuarters + CaseFile.Inches("38")));
    }

    [Fact]
    public void NosingLine_BesideTheFlight_IsNotKnown()
    {
        Distance tick = Distance.FromTicks(1);
        Assert.True(Even.TryNosingLine(CaseFile.Inches("20"), out ExactDistance foot));
        Assert.Equal(Even.TreadHeight(1), foot);
        Assert.True(Even.TryNosingLine(CaseFile.Inches("150"), out ExactDistance head));
        Assert.Equal(Even.TreadHeight(14), head);
        Assert.False(Even.TryNosingLine(CaseFile.Inches("20") - tick, out _));
        Assert.False(Even.TryNosingLine(CaseFile.Inches("150") + tick, out _));
        Assert.False(new StairGeometry(Fourteen.WithFirstNosing(null), CaseFile.Inches("105"), ThreeQuarters, ThreeQuarters).TryNosingLine(CaseFile.Inches("50"), out _));
        Assert.Throws<ArgumentOutOfRangeException>(() => Even.TreadHeight(15));
        Assert.Throws<ArgumentOutOfRangeException>(() => Even.FinishedRiser(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new StairGeometry(Fourteen, Distance.Zero, ThreeQuarters, ThreeQuarters));
    }

    [Fact]
    public void Geometry_RandomFlights_IsThatOfFractions() => Prop.ForAll(Flights(), one =>
    {
        (int risers, int rise, int low, int high, int run, int first, bool left) = one;
        StairFlight flight = new StairFlight("s", "a", "b", risers).WithRun(Eighths(run)).WithFirstNosing(Eighths(first)).WithClimbs(left ? WallEnd.Left : WallEnd.Right);
        StairGeometry stair = new(flight, Eighths(rise), Eighths(low), Eighths(high));
        Fraction riser = new(rise + high - low, risers);
        Fraction tread = new(run, risers - 1);
        bool alike = true;
        for (int k = 1; k <= risers; k++)
        {
            alike &= stair.TryNosingAlong(k, out ExactDistance along) && Same(along, new Fraction(first) + (tread * new Fraction(left ? 1 - k : k - 1)));
            alike &= Same(stair.TreadHeight(k), new Fraction(low) + (riser * new Fraction(k)));
            alike &= Same(stair.FinishedRiser(k), riser);
        }

        // The line meets every nosing that lies on the grid, and between it is straight.
        int at = first + ((left ? -1 : 1) * (run / 3));
        alike &= stair.TryNosingLine(Eighths(at), out ExactDistance line)
            && Same(line, new Fraction(low) + riser + (riser * new Fraction(run / 3) / tread));
        return alike && stair.RiserVariation == ExactDistance.Zero;
    }).Check(Tries.Always(100));

    [Fact]
    public void Variation_RandomFloors_IsThatOfAllRisers() => Prop.ForAll(Arb.From(Gen.Choose(0, 20).ArrayOf(4)), Arb.From(Gen.Choose(1, 18)), (n, risers) =>
    {
        StairFlight flight = new StairFlight("s", "a", "b", risers).WithCutForFloorBelow(Eighths(n[0])).WithCutForFloorAbove(Eighths(n[1]));
        StairGeometry stair = new(flight, Eighths(840), Eighths(n[2]), Eighths(n[3]));
        Fraction riser = new(840 + n[1] - n[0], risers);
        Fraction[] all = Enumerable.Range(1, risers).Select(k => riser + new Fraction(k == 1 ? n[0] - n[2] : 0) + new Fraction(k == risers ? n[3] - n[1] : 0)).ToArray();
        return Same(stair.RiserVariation, all.Max() - all.Min());
    }).Check(Tries.Always(100));

    // A flight leads from and to rooms that one walks through: a hall, a foyer, a room that is called after the stair. One whose own wall it is on goes before them, but not on another storey.
    [Fact]
    public void RoomsAt_AStorey_AreItsHallsUnlessTheFlightIsOnAWallOfOneRoom()
    {
        Room[] rooms = [.. RoomKind.Known.SelectMany(kind => new[] { new Room(kind + "-low", kind, "low"), new Room(kind + "-high", kind, "high") })];
        Dwelling house = new Dwelling("house").WithStoreys(new[] { new Storey("low"), new Storey("high") }).WithRooms(rooms);
        string[] RoomsAt(string? wall, string storey) => [.. StairGeometry.RoomsAt(house, Fourteen.WithWall(wall), storey).Select(room => room.Id).Order(StringComparer.Ordinal)];
        Assert.Equal(["foyer-high", "hall-high", "stair-high"], RoomsAt(null, "high"));
        Assert.Equal(["foyer-low", "hall-low", "stair-low"], RoomsAt("bedroom-high/north", "low"));
        Assert.Equal(["bedroom-high"], RoomsAt("bedroom-high/north", "high"));
    }

    // Halls of 1/4 to 3/8 in and of 3/4 in: whichever the flight leads from, 1/4 to 3/4 in lies there. Without a hall none is chosen.
    [Fact]
    public void FloorOn_AStorey_IsThatOfAllItsHalls()
    {
        Room Hall(string id, string storey, DistanceRange floor) => new Room(id, RoomKind.Hall, storey).WithFloor(FloorBuildup.Of(new FloorLayer("floor", floor)));
        Dwelling house = new Dwelling("house").WithStoreys(new[] { new Storey("low"), new Storey("high"), new Storey("attic") })
            .WithRooms(new[] { Hall("a", "low", ThreeQuarters), Hall("b", "low", new DistanceRange(CaseFile.Inches("1/4"), CaseFile.Inches("3/8"))), Hall("c", "high", ThreeQuarters) });
        Assert.Equal(new DistanceRange(CaseFile.Inches("1/4"), ThreeQuarters), StairGeometry.FloorOn(house, Fourteen, "low", UsualMeasures.Generic));
        Assert.Equal(DistanceRange.Exactly(ThreeQuarters), StairGeometry.FloorOn(house, Fourteen, "high", UsualMeasures.Generic));
        Assert.Equal(FloorBuildup.NotChosen.Thickness, StairGeometry.FloorOn(house, Fourteen, "attic", UsualMeasures.Generic));
    }

    // 9 ft, 10 ft and 11 ft from subfloor to subfloor: from one storey up to another all between are added, and down there is no rise.
    [Fact]
    public void TryRise_BetweenStoreys_IsTheSumOfThose()
    {
        int[] feet = [7, 9, 10, 11];
        Storey[] storeys = [.. feet.Select((high, i) => new Storey("s" + i).WithAboveBelow(Distance.FromFeet(high)))];
        Dwelling house = new Dwelling("house").WithStoreys(storeys);
        for (int from = 0; from < 4; from++)
        {
            for (int to = 0; to < 4; to++)
            {
                StairFlight flight = new("s", "s" + from, "s" + to, 14);
                Assert.Equal(to > from, StairGeometry.TryRise(house, flight, out Distance rise));
                Assert.True(to <= from || rise == Distance.FromFeet(feet[(from + 1)..(to + 1)].Sum()), from + " to " + to + ": " + rise);
                Assert.False(StairGeometry.TryRise(house.WithStoreys(storeys.Select(storey => storey.Id == "s" + to ? storey.WithAboveBelow(null) : storey).ToArray()), flight, out _));
            }
        }
    }

    [Fact]
    public void Repeats_TreadsAgainstStuds_AreLeastCommonMultiples()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("stair-repeats.csv"))
        {
            Fraction tread = row["tread"] == "32/3" ? new Fraction(32, 3) : CaseFile.Number(row["tread"]);
            Fraction spacing = CaseFile.Number(row["spacing"]);
            Fraction repeat = CaseFile.Number(row["repeat"]);
            Assert.Equal(repeat, tread * CaseFile.Number(row["treads"]));
            Assert.Equal(repeat, spacing * CaseFile.Number(row["studs"]));
            Assert.True(BigInteger.GreatestCommonDivisor((BigInteger)CaseFile.Number(row["treads"]).ToDecimal(), (BigInteger)CaseFile.Number(row["studs"]).ToDecimal()).IsOne);

            // The library's own treads meet the stud faces alike after so many, and after no fewer.
            int treads = int.Parse(row["treads"], CultureInfo.InvariantCulture);
            StairFlight flight = new StairFlight("s", "a", "b", treads + 1).WithRun(CaseFile.Inches(repeat)).WithFirstNosing(Distance.Zero);
            StairGeometry stair = new(flight, CaseFile.Inches("100"), Distance.Zero, Distance.Zero);
            int[] alike = Enumerable.Range(2, treads).Where(k => stair.TryNosingAlong(k, out ExactDistance along) && along.RatioTo(CaseFile.Inches(row["spacing"])).Denominator == 1).ToArray();
            Assert.Equal([treads + 1], alike);
        }
    }

    /// <summary>Whether an exact length is so many eighths of an inch.</summary>
    internal static bool Same(ExactDistance length, Fraction eighths) =>
        length * new Ratio((long)eighths.Denominator) == (ExactDistance)Distance.FromTicks((long)eighths.Numerator * 254_000);

    private static Arbitrary<(int Risers, int Rise, int Low, int High, int Run, int First, bool Left)> Flights() => Arb.From(
        from risers in Gen.Choose(2, 19)
        from rise in Gen.Choose(300, 1000)
        from low in Gen.Choose(0, 12)
        from high in Gen.Choose(0, 12)
        from run in Gen.Choose(80, 1500)
        from first in Gen.Choose(1500, 3000)
        from left in Gen.Elements(true, false)
        select (risers, rise, low, high, run, first, left));
}
