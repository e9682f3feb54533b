using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using BoxHeights.Tests.Cases;
using FsCheck;
using FsCheck.Fluent;
using Fractions;
using Xunit;

namespace BoxHeights.Tests.Planning;

/// <summary>Stair lights on as many studs as there can be, against brute force over phases in exact fractions.</summary>
public sealed class StairLightPlannerTests
{
    [Fact]
    public void Plan_PublishedFlights_AreOnAsManyStuds()
    {
        foreach (Dictionary<string, string> row in CaseFile.Table("stair-lights.csv"))
        {
            int Whole(string name) => int.Parse(row[name], CultureInfo.InvariantCulture);
            string[] phase = row["phase"].Split('/');
            Ratio on = new(int.Parse(phase[0], CultureInfo.InvariantCulture), phase.Length > 1 ? int.Parse(phase[1], CultureInfo.InvariantCulture) : 1);
            StairFlight flight = new StairFlight("s", "a", "b", Whole("risers")).WithTread(CaseFile.Inches(row["tread"])).WithFirstNosing(CaseFile.Inches(row["first"]))
                .WithLights(new StairLights(Whole("every")).WithStartTread(Whole("start")).WithPhase(on));
            StudPositions studs = StudPositions.Along(new StudLayout().WithSpacing(CaseFile.Inches(row["spacing"])), CaseFile.Inches(row["wall"]));
            StairLightPlan plan = StairLightPlanner.Plan(flight, studs, new StairLightOptions().WithBoxWidth(CaseFile.Inches(row["box"])).WithAdjustment(CaseFile.Inches(row["adjust"])));

            string[] places = row["exact places"].Split(' ');
            Assert.Equal(places.Select(place => (ExactDistance)CaseFile.Inches(place)), plan.Lights.Select(light => light.Exact));
            Assert.Equal(Whole("on studs"), plan.OnStuds);

            // The second road: what is left of each place above whole spacings, and how far that is from a flank.
            Fraction spacing = CaseFile.Number(row["spacing"]);
            Fraction flank = new Fraction(3, 4) + (CaseFile.Number(row["box"]) / new Fraction(2));
            string[] residues = row["residues"].Split(' ');
            string[] shifts = row["shifts"].Split(' ');
            int near = 0;
            for (int i = 0; i < places.Length; i++)
            {
                Fraction rest = CaseFile.Number(places[i]) - (spacing * Floor(CaseFile.Number(places[i]) / spacing));
                Fraction shift = new[] { rest - flank, rest + flank, rest - (spacing - flank), rest - (spacing + flank) }.Select(one => one.Abs()).Min();
                Assert.Equal(CaseFile.Number(residues[i]), rest);
                Assert.Equal(CaseFile.Number(shifts[i]), shift);
                near += shift <= CaseFile.Number(row["adjust"]) ? 1 : 0;
            }

            Assert.Equal(Whole("on studs"), near);
        }
    }

    // S-1 of the case file with four lights, on treads 1, 3, 5 and 7: 5-1/8, 1-1/8, 7/8 and 3-1/8 in from a stud.
    [Theory]
    [InlineData("3-1/8", "blocking at tread 1")]
    [InlineData("1-1/4", "blocking at treads 1, 7")]
    public void Plan_LightsThatNoStudIsNear_NamesTheTreadsToBlock(string adjust, string told)
    {
        StairFlight flight = new StairFlight("s", "a", "b", 8).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("20")).WithLights(new StairLights(2).WithStartTread(1).WithPhase(new Ratio(1, 2)));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")), new StairLightOptions().WithBoxWidth(CaseFile.Inches("2-1/4")).WithAdjustment(CaseFile.Inches(adjust)));
        Assert.Contains(told, plan.Reasons);
    }

    // A flight of one riser has no tread between its floors, whether a first tread is asked for or not.
    [Theory]
    [InlineData(1, null, 1)]
    [InlineData(3, 3, 3)]
    public void Plan_WithoutATreadToLight_SaysWhich(int risers, int? start, int tread)
    {
        StairFlight flight = new StairFlight("s", "a", "b", risers).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("2"));
        flight = start is { } stated ? flight.WithLights(new StairLights(2).WithStartTread(stated)) : flight;
        Assert.Contains("has no tread " + tread + " below", Assert.Throws<System.ArgumentException>(() => StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")))).Message, System.StringComparison.Ordinal);
    }

    // Studs are centered on every 16 in: a light left of its stud's center is on the left side of it.
    [Fact]
    public void Plan_ALightOnAStud_SaysOnWhichSideOfIt()
    {
        StairFlight flight = new StairFlight("s", "a", "b", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("2")).WithLights(new StairLights(2).WithStartTread(1));
        StairPathLight[] onStuds = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")), Everywhere).Lights.Where(light => !light.NeedsBlocking).ToArray();
        Assert.Contains(onStuds, light => light.Side == StudSide.Left);
        Assert.Contains(onStuds, light => light.Side == StudSide.Right);
        Assert.All(onStuds, light =>
        {
            Distance middle = CaseFile.Inches("16") * light.Stud!.Value;
            string side = light.Center < middle ? "left" : "right";
            Assert.Equal(side, light.Side.ToString()!.ToLowerInvariant());
            Assert.StartsWith("on stud " + light.Stud + ", " + side + " side", light.Reason, System.StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Plan_FreePhase_SplitsTheErrorEvenly()
    {
        // Steps of 20 in on 16 in centers: with flanks 1-7/8 in off centers two of every four lights can be on studs, 1/8 in off at best. Computed.
        StairFlight flight = new StairFlight("s", "a", "b", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("2")).WithLights(new StairLights(2).WithStartTread(1));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")), Everywhere);
        Assert.Equal(4, plan.OnStuds);
        Assert.All(plan.Lights.Where(light => !light.NeedsBlocking), light => Assert.Equal((ExactDistance)CaseFile.Inches("1/8"), light.Shift.Abs()));
        Assert.Contains(plan.Reasons, reason => reason == "blocking at treads 1, 7, 9");
    }

    [Fact]
    public void Plan_TreadsOfThreeInThirtyTwo_CanAllBeOnStuds()
    {
        // Three treads of 10-2/3 in are two spacings: every third light is on the same face of every second stud. Computed.
        StairFlight flight = new StairFlight("s", "a", "b", 13).WithRun(CaseFile.Inches("128")).WithFirstNosing(CaseFile.Inches("20"));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("200")), Everywhere);
        Assert.Equal((3, 4, 4), (plan.Every, plan.OnStuds, plan.Lights.Count));
        Assert.All(plan.Lights, light => Assert.Equal(ExactDistance.Zero, light.Shift));
    }

    [Fact]
    public void Plan_RandomFlights_NoPhaseOfTheGridDoesBetter() => Prop.ForAll(Flights(), one =>
    {
        StairLightOptions options = Everywhere.WithAdjustment(Eighths(one.Adjust));
        StairLightPlan plan = StairLightPlanner.Plan(one.Flight, Studs(Eighths(one.Wall)), options.WithFewestTreads(one.Every).WithMostTreads(one.Every));
        Fraction tread = new(one.Run, one.Flight.Risers - 1);
        Fraction found = tread * new Fraction(plan.Phase.Numerator, plan.Phase.Denominator);
        int best = 0;
        for (int step = 0; step <= 96; step++)
        {
            best = Math.Max(best, Count(one, tread, tread * new Fraction(step, 96), plan.StartTread));
        }

        // What it claims is so, and neither a grid of phases nor the ends of any light's reach hold more.
        int claimed = Count(one, tread, found, plan.StartTread);
        return claimed == plan.OnStuds && Ends(one, tread, plan.StartTread).All(phase => Count(one, tread, phase, plan.StartTread) <= claimed) && best <= claimed;
    }).Check(Tries.Always(60));

    /// <summary>The phases that the reasons speak of, counted in fractions: either end and the middle, where a light comes into or out of reach of a flank or is on it, and where two are as far off.</summary>
    [Fact]
    public void Plan_RandomFlights_TriesEveryPhaseAtWhichAnythingChanges() => Prop.ForAll(Flights(), one =>
    {
        Fraction tread = new(one.Run, one.Flight.Risers - 1), reach = new(one.Adjust), half = new(1, 2);
        Fraction[] exact = [.. from place in Places(one, tread, 1) from flank in Flanks(one) select Toward(one) * (flank - place)];
        IEnumerable<Fraction> phases = exact.SelectMany(phase => new[] { phase - reach, phase, phase + reach })
            .Concat(from a in exact from b in exact where a < b && b - a <= reach + reach select (a + b) * half)
            .Where(phase => phase > Fraction.Zero && phase < tread).Concat(new[] { Fraction.Zero, tread * half, tread });
        StairLightPlan plan = StairLightPlanner.Plan(one.Flight.WithLights(new StairLights(one.Every).WithStartTread(1)), Studs(Eighths(one.Wall)), Everywhere.WithAdjustment(Eighths(one.Adjust)));
        return plan.PhasesTried == phases.Select(phase => phase.Reduce()).Distinct().Count();
    }).Check(Tries.Always(60));

    /// <summary>As many lights as are asked for, wherever some interval and first tread give them, and of those that do the largest share on studs.</summary>
    [Fact]
    public void Plan_RandomFlights_HaveAsManyLightsAsAreAskedFor() => Prop.ForAll(Flights(), one =>
    {
        int treads = one.Flight.Risers - 1;
        StairLightPlan Plan(StairFlight flight, StairLightOptions options) => StairLightPlanner.Plan(flight, Studs(Eighths(one.Wall)), options);
        ILookup<int, (int Every, int Start)> ways = (from every in Enumerable.Range(1, treads + 1) from start in Enumerable.Range(1, Math.Min(every, treads)) select (every, start))
            .ToLookup(way => Enumerable.Range(1, treads).Count(tread => tread >= way.start && (tread - way.start) % way.every == 0));
        for (int count = 1; count <= treads + 1; count++)
        {
            StairLightOptions options = Everywhere.WithCount(count);
            if (!ways.Contains(count))
            {
                Assert.Contains(count + " lights", Assert.Throws<ArgumentException>(() => Plan(one.Flight, options)).Message, StringComparison.Ordinal);
                continue;
            }

            StairLightPlan plan = Plan(one.Flight, options);
            Assert.Equal(count, plan.Lights.Count);
            Assert.Equal(ways[count].Max(way => Plan(one.Flight.WithLights(new StairLights(way.Every).WithStartTread(way.Start)), Everywhere).OnStuds), plan.OnStuds);
        }
    }).Check(Tries.Always(10));

    // Every 16 in a box beside a stud has its center 1-7/8 in past 16, 32, 48 in. From tread 1 the lights are at 9-7/8 and so on, 8 in before that; from tread 2 they are there. Computed.
    [Fact]
    public void Plan_FirstTreadNotStated_IsChosen()
    {
        StairFlight flight = new StairFlight("s", "a", "b", 9).WithTread(CaseFile.Inches("8")).WithFirstNosing(CaseFile.Inches("9-7/8"));
        StairLightOptions options = new StairLightOptions().WithLowestPhase(Ratio.Zero).WithHighestPhase(Ratio.Zero).WithFewestTreads(2).WithMostTreads(2).WithAdjustment(CaseFile.Inches("1/8"));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")), options);
        Assert.Equal((2, 4, 4), (plan.StartTread, plan.OnStuds, plan.Lights.Count));
        Assert.Equal(0, StairLightPlanner.Plan(flight.WithLights(new StairLights(2).WithStartTread(1)), Studs(CaseFile.Inches("160")), options).OnStuds);
    }

    // A stud stands from 63-1/4 to 64-3/4 in: a box 2-1/4 in wide is clear of it up to 62-1/8, and 1 in of adjustment ends at 63-1/8.
    [Theory]
    [InlineData("62", "62-1/8", false)]
    [InlineData("63-1/8", "62-1/8", false)]
    [InlineData("63-9/64", "62-1/8", true)]
    [InlineData("63-15/16", "62-1/8", true)]
    [InlineData("64-1/16", "65-7/8", true)]
    [InlineData("64-7/8", "65-7/8", false)]
    [InlineData("72", "72", false)]
    public void Plan_PlaceInAStud_IsSetBesideIt(string place, string center, bool isDisplaced)
    {
        StairFlight flight = new StairFlight("s", "a", "b", 2).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches(place)).WithLights(new StairLights(1).WithPhase(Ratio.Zero));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("160")));
        Assert.Equal((CaseFile.Inches(center), isDisplaced), (plan.Lights[0].Center, plan.Lights[0].IsDisplaced));
        Assert.Equal(isDisplaced, plan.Reasons.Any(reason => reason == "a stud stands in the way at tread 1: off the place that the others have on their treads, or move the stud"));
        Assert.Equal(isDisplaced || center == "72" ? 0 : 1, plan.OnStuds);
    }

    /// <summary>The second road over ordinary stairs, in eighths of an inch: no box in a stud, and no first tread, interval or phase of a fine grid with a larger share on studs.</summary>
    [Fact]
    public void Plan_OrdinaryStairs_NoLightIsInAStudAndNoOtherPlanIsOnMore()
    {
        int stairs = 0;
        foreach (int spacing in new[] { 128, 192 })
        {
            foreach (int risers in new[] { 13, 14, 15, 16 })
            {
                foreach (int tread in new[] { 80, 82, 84, 88 })
                {
                    foreach (int first in new[] { 60, 97, 164, 211, 240, 289 })
                    {
                        stairs++;
                        int wall = first + (tread * risers) + 400;
                        StairFlight flight = new StairFlight("s", "a", "b", risers).WithTread(Eighths(tread)).WithFirstNosing(Eighths(first));
                        StudPositions studs = StudPositions.Along(new StudLayout().WithSpacing(Eighths(spacing)), Eighths(wall));
                        foreach (StairLights? stated in new[] { null, new StairLights(2).WithPhase(new Ratio(1, 2)), new StairLights(2).WithStartTread(1).WithPhase(new Ratio(1, 2)) })
                        {
                            StairLightPlan plan = StairLightPlanner.Plan(flight.WithLights(stated), studs);
                            Assert.All(plan.Lights, light => Assert.All(Enumerable.Range(1, studs.Count), stud =>
                                Assert.True((light.Center - Eighths(stud * spacing)).Abs() >= Eighths(15), $"{spacing} {risers} {tread} {first}: {light}")));
                            (long on, long of) = Best(spacing, risers, tread, first, wall, stated);
                            Assert.True(plan.OnStuds * of >= on * plan.Lights.Count, $"{spacing} {risers} {tread} {first}: {plan.OnStuds} of {plan.Lights.Count}, where {on} of {of} can be");
                        }
                    }
                }
            }
        }

        Assert.Equal(192, stairs);
    }

    /// <summary>The largest share within 1 in of a flank, by counting at every phase of a grid.</summary>
    private static (long On, long Of) Best(int spacing, int risers, int tread, int first, int wall, StairLights? stated)
    {
        (long On, long Of) best = (0, 1);
        for (int every = stated?.Every ?? 2; every <= (stated?.Every ?? 3); every++)
        {
            for (int start = stated?.StartTread ?? 1; start <= (stated?.StartTread ?? every); start++)
            {
                for (int step = stated is null ? 16 : 32; step <= (stated is null ? 48 : 32); step++)
                {
                    // In 64ths of eighths.
                    (long on, long of) = (0, 0);
                    for (int k = start; k < risers; k += every)
                    {
                        long at = (64L * (first + (tread * (k - 1)))) + (tread * step);
                        bool near = false;
                        for (int stud = 1; (stud * spacing) + 6 <= wall - 12; stud++)
                        {
                            near |= Math.Abs(Math.Abs(at - (64L * stud * spacing)) - (64 * 15)) <= 64 * 8;
                        }

                        (on, of) = (on + (near ? 1 : 0), of + 1);
                    }

                    best = on * best.Of > best.On * of ? (on, of) : best;
                }
            }
        }

        return best;
    }

    [Fact]
    public void Plan_Mirrored_IsTheMirroredPlan() => Prop.ForAll(Flights(), one =>
    {
        Distance wall = Eighths(one.Wall);
        StairLightPlan plan = StairLightPlanner.Plan(one.Flight, Studs(wall), Everywhere);
        StudPositions mirrored = StudPositions.Along(new StudLayout().WithSpacing(CaseFile.Inches("16")).WithFrom(WallEnd.Right), wall);
        StairFlight other = one.Flight.WithFirstNosing(wall - one.Flight.FirstNosing!.Value).WithClimbs(one.Flight.Climbs == WallEnd.Left ? WallEnd.Right : WallEnd.Left);
        StairLightPlan mirror = StairLightPlanner.Plan(other, mirrored, Everywhere);
        return plan.Every == mirror.Every && plan.Phase == mirror.Phase
            && plan.Lights.Zip(mirror.Lights).All(pair => pair.First.Exact == (ExactDistance)wall - pair.Second.Exact && pair.First.NeedsBlocking == pair.Second.NeedsBlocking
                && (pair.First.NeedsBlocking || pair.First.Center == wall - pair.Second.Center));
    }).Check(Tries.Always(40));

    [Fact]
    public void Plan_LightsPutOnTheFlight_AreOnePhaseAndOneHeight()
    {
        StairFlight flight = new StairFlight("s", "low", "high", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("20")).WithWall("hall/stair").WithTreadFinish(CaseFile.Inches("1"));
        StairLightPlan plan = StairLightPlanner.Plan(flight, Studs(CaseFile.Inches("170")));
        StairGeometry stair = new(flight, CaseFile.Inches("105"), CaseFile.Inches("3/4"), CaseFile.Inches("3/4"));
        DeviceBox[] boxes = plan.Lights.Select(light => new DeviceBox("L" + light.Tread, BoxPurpose.Light).WithDevices(new[] { DeviceKind.Luminaire }).WithAt(light.Center)
            .WithHeight(BoxHeight.ToCenter(StairLightPlan.HeightOf(light, stair, CaseFile.Inches("6")), Datum.Subfloor))).ToArray();
        Dwelling house = Rules.StairRuleTests.House(flight.WithLights(plan.ToLights()), boxes);
        Assert.Empty(new LayoutEvaluator(RuleSets.RoughInPractice).Evaluate(house).Findings);
    }

    [Fact]
    public void Plan_WithoutWhatItNeeds_SaysSo()
    {
        StudPositions studs = Studs(CaseFile.Inches("160"));
        StairFlight flight = new StairFlight("s", "a", "b", 14).WithTread(CaseFile.Inches("10")).WithFirstNosing(CaseFile.Inches("20"));
        Assert.Throws<ArgumentNullException>(() => StairLightPlanner.Plan(null!, studs));
        Assert.Throws<ArgumentNullException>(() => StairLightPlanner.Plan(flight, null!));
        Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(flight.WithFirstNosing(null), studs));
        Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(flight.WithTread(null), studs));
        Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(flight.WithLights(new StairLights(2).WithStartTread(14)), studs));
        Assert.Contains("leave no phase", Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(flight, studs, new StairLightOptions().WithLowestPhase(new Ratio(7, 8)))).Message, StringComparison.Ordinal);
        Assert.Contains("leave no interval", Assert.Throws<ArgumentException>(() => StairLightPlanner.Plan(flight, studs, new StairLightOptions().WithFewestTreads(3).WithMostTreads(2))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new StairLightOptions().WithLowestPhase(new Ratio(9, 8)));

        // A wall without studs: every light is blocked.
        StairLightPlan bare = StairLightPlanner.Plan(flight, StudPositions.Along(new StudLayout(), CaseFile.Inches("160")));
        Assert.Equal(0, bare.OnStuds);
    }

    private static StairLightOptions Everywhere { get; } = new StairLightOptions().WithLowestPhase(Ratio.Zero).WithHighestPhase(new Ratio(1));

    private static StudPositions Studs(Distance wall) => StudPositions.Along(new StudLayout().WithSpacing(CaseFile.Inches("16")), wall);

    private static Fraction Floor(Fraction value) => new(System.Numerics.BigInteger.Divide(value.Numerator, value.Denominator));

    /// <summary>A flight in eighths of an inch, and how far a box may be shifted.</summary>
    private sealed record Case(StairFlight Flight, int Run, int First, int Wall, int Every, int Adjust);

    /// <summary>How many lights are within reach of a stud's flank at a phase, in eighths: studs stand at 16 in on center, and a box 2-1/4 in wide has its center 1-7/8 in off.</summary>
    private static int Count(Case one, Fraction tread, Fraction phase, int start)
    {
        int count = 0;
        foreach (Fraction center in Places(one, tread, start).Select(place => place + (Toward(one) * phase)))
        {
            count += Flanks(one).Any(flank => (center - flank).Abs() <= new Fraction(one.Adjust)) ? 1 : 0;
        }

        return count;
    }

    private static Fraction Toward(Case one) => new(one.Flight.Climbs == WallEnd.Left ? -1 : 1);

    private static IEnumerable<Fraction> Places(Case one, Fraction tread, int start)
    {
        for (int k = start; k < one.Flight.Risers; k += one.Every)
        {
            yield return new Fraction(one.First) + (Toward(one) * tread * new Fraction(k - 1));
        }
    }

    /// <summary>Every phase, in eighths along the tread, at which some light is just within reach of some flank.</summary>
    private static IEnumerable<Fraction> Ends(Case one, Fraction tread, int start) =>
        from place in Places(one, tread, start)
        from flank in Flanks(one)
        from reach in new[] { -one.Adjust, one.Adjust }
        let phase = Toward(one) * (flank + new Fraction(reach) - place)
        where phase >= Fraction.Zero && phase <= tread
        select phase;

    /// <summary>Of each stud that stands clear of the one in the far corner.</summary>
    private static IEnumerable<Fraction> Flanks(Case one)
    {
        for (int stud = 1; (stud * 128) + 6 <= one.Wall - 12; stud++)
        {
            yield return new Fraction((stud * 128) - 15);
            yield return new Fraction((stud * 128) + 15);
        }
    }

    private static Arbitrary<Case> Flights() => Arb.From(
        from risers in Gen.Choose(4, 16)
        from tread in Gen.Choose(72, 96)
        from odd in Gen.Choose(0, 7)
        from first in Gen.Choose(0, 200)
        from every in Gen.Choose(1, 3)
        from adjust in Gen.Choose(0, 12)
        from left in Gen.Elements(true, false)
        let run = (tread * (risers - 1)) + odd
        let wall = first + run + 240
        let start = left ? wall - first : first
        select new Case(new StairFlight("s", "a", "b", risers).WithRun(Eighths(run)).WithFirstNosing(Eighths(start)).WithClimbs(left ? WallEnd.Left : WallEnd.Right), run, start, wall, every, adjust));
}
