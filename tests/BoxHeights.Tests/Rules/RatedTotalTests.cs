using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Fractions;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>IBC 714.4.2 (2018), exception 1: steel boxes open 100 in² at most of any 100 ft² of a wall that is declared rated.</summary>
public sealed class RatedTotalTests
{
    private static RuleSet Rows => OneBox.Only(RuleSets.UnitedStatesDwelling(NecEdition.Nec2023), "rated-total");
    private static RuleSet InProportion => Rows.WithReading("rated-total", "in-proportion");
    private static readonly Arbitrary<int> Seeds = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);
    private static readonly Distance Tick = Distance.FromTicks(1);

    // Five boxes of 16 in² and one of 20 in² open 100 in²; 120 in under a ceiling of 96 in are 80 ft².
    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void Openings_OneTickUnderAtAndOver100SquareInches_TurnThere(int ticks, bool good)
    {
        DeviceBox last = Square("last", In("110")).WithSize(new BoxSize(In("5") + Distance.FromTicks(2 * ticks), In("4")));
        Assert.Equal(good, Evaluate(House([.. Squares(5, In("20")), last], In("120"), In("96"))).IsClean);
    }

    [Fact]
    public void Finding_SaysWhereAndHowMuchIsOpen()
    {
        Finding finding = Assert.Single(Evaluate(House(Squares(7, In("10")), In("120"), In("96"))).Findings);
        Assert.Equal((Verdict.Fails, Severity.Violation, "room/wall"), (finding.Verdict, finding.Severity, finding.Subject));
        Assert.Contains("7 metal boxes from 8 in to 72 in along it open 112 in2", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Openings_OfWallsThatAreNotRatedOrOfOtherBoxes_AreNotCounted()
    {
        DeviceBox[] seven = Squares(7, In("10"));
        Assert.False(Evaluate(House(seven, In("120"), In("96"))).IsClean);
        Assert.True(Evaluate(House(seven, In("120"), In("96"), wall => wall.WithRated(false))).IsClean);
        Assert.True(Evaluate(House([.. seven.Select(box => box.WithKind(BoxKind.NailOn))], In("120"), In("96"))).IsClean);
        Assert.True(Evaluate(House([seven[0].WithFireProtection(FireProtection.Listed), .. seven.Skip(1)], In("120"), In("96"))).IsClean);
        Assert.True(Evaluate(House([seven[0].WithMounting(new Mounting(MountingMethod.Surface)), .. seven.Skip(1)], In("120"), In("96"))).IsClean);
    }

    // Under 96 in a strip of 100 ft² is 150 in long: seven boxes 4 in wide are in one if the outer two are 146 in from center to center, and not if they are a tick more.
    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]
    public void Strip_OfALongWall_EndsAt100SquareFeet(int ticks, bool good)
    {
        DeviceBox[] boxes = [.. Squares(6, In("10")), Square("last", In("156") + Distance.FromTicks(ticks))];
        Assert.Equal(good, Evaluate(House(boxes, In("400"), In("96"))).IsClean);
    }

    // A slope from 96 in to 120 in over 240 in: from 2 in to x lie 96 (x − 2) + (x² − 4) / 20 in² under it, which is 14,400 in² at x = 141.56 in.
    [Fact]
    public void Strip_UnderASlope_IsAsLongAsItsOwnHeight()
    {
        Wall Sloped(Wall wall) => wall.WithTop(new[] { new WallTopPoint(Distance.Zero, In("96")), new WallTopPoint(In("240"), In("120")) });

        // The last box ends 2 in right of its center.
        Assert.False(Evaluate(House([.. Squares(6, In("4")), Square("last", In("139"))], In("240"), null, Sloped)).IsClean);
        Assert.True(Evaluate(House([.. Squares(6, In("4")), Square("last", In("140"))], In("240"), null, Sloped)).IsClean);
    }

    [Fact]
    public void Height_NotKnown_MattersOnlyWhereItTurnsTheVerdict()
    {
        DeviceBox[] boxes = [.. Squares(6, In("10")), Square("last", In("156"))];
        Finding unstated = Assert.Single(Evaluate(House(boxes, In("400"), null)).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.Ceiling), (unstated.Verdict, unstated.Needs));
        Finding between = Assert.Single(Evaluate(House(boxes, In("400"), new DistanceRange(In("96"), In("97")))).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.Ceiling), (between.Verdict, between.Needs));
        Assert.Equal(Verdict.Fails, Assert.Single(Evaluate(House(boxes, In("400"), new DistanceRange(In("95"), In("96")))).Findings).Verdict);
        Assert.True(Evaluate(House(boxes, In("400"), new DistanceRange(In("96") + Tick, In("97")))).IsClean);
        Assert.True(Evaluate(House(boxes.Skip(1).ToArray(), In("400"), null)).IsClean);
    }

    [Fact]
    public void Place_NotKnown_MattersOnlyWhereItTurnsTheVerdict()
    {
        Finding finding = Assert.Single(Evaluate(House([.. Squares(6, In("10")), Square("last", null)], In("400"), In("96"))).Findings);
        Assert.Equal((Verdict.Unknown, MissingFacts.Along), (finding.Verdict, finding.Needs));
        Assert.Contains("7 metal boxes open 112 in2", finding.Message, StringComparison.Ordinal);
        Assert.True(Evaluate(House([.. Squares(5, In("10")), Square("last", null)], In("400"), In("96"))).IsClean);
    }

    // 60 in under 96 in are 40 ft²: in proportion 40 in² and no more; two boxes of 16 in² and one of 8 in².
    [Theory]
    [InlineData(-1, true)]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void InProportion_OfASmallWall_AllowsLess(int ticks, bool good)
    {
        DeviceBox last = Square("last", In("50")).WithSize(new BoxSize(In("2") + Distance.FromTicks(2 * ticks), In("4")));
        Dwelling house = House([.. Squares(2, In("10")), last], In("60"), In("96"));
        Assert.True(Evaluate(house).IsClean);
        Assert.Equal(good, new LayoutEvaluator(InProportion).Evaluate(house).IsClean);
    }

    [Fact]
    public void InProportion_HeightNotStated_IsNotChecked()
    {
        Evaluation evaluation = new LayoutEvaluator(InProportion).Evaluate(House(Squares(2, In("10")), In("60"), null));
        Assert.Equal("how high its walls are isn't stated", Assert.Single(evaluation.Findings).NotJudgedBecause);
        Assert.Contains("rated-total: how high its walls are isn't stated (" + evaluation.Findings[0].Subject + ")", evaluation.NotJudged);
    }

    // Every set of boxes that a strip of 100 ft² holds whole, tried one by one; the area under a slope summed in fractions over whole inches.
    [Fact]
    public void Judge_AnyWall_AgreesWithEverySetOfBoxes() => Prop.ForAll(Seeds, seed =>
    {
        Random random = new(seed);
        int length = random.Next(60, 500);
        (int low, int high) = (random.Next(80, 130), random.Next(80, 130));
        int bend = random.Next(1, length);
        (int At, int Wide, int Tall)[] boxes = Enumerable.Range(0, random.Next(1, 11)).Select(_ => (random.Next(4, length - 4), 2 * random.Next(1, 4), random.Next(2, 7))).ToArray();
        bool over = false;
        for (int set = 1; set < 1 << boxes.Length; set++)
        {
            (int At, int Wide, int Tall)[] some = boxes.Where((_, i) => (set & (1 << i)) != 0).ToArray();
            over |= some.Sum(box => box.Wide * box.Tall) > 100 && Under(some.Min(box => box.At - (box.Wide / 2)), some.Max(box => box.At + (box.Wide / 2))) <= new Fraction(14_400);
        }

        Fraction Under(int left, int right)
        {
            Fraction area = Fraction.Zero;
            for (int x = left; x < right; x++)
            {
                area += (Height(x) + Height(x + 1)) / 2;
            }

            return area;
        }

        Fraction Height(int x) => x >= bend ? new Fraction(high) : low + new Fraction((high - low) * x, bend);
        Dwelling house = House(boxes.Select((box, i) => Square("b" + i, Inches(box.At)).WithSize(new BoxSize(Inches(box.Wide), Inches(box.Tall)))).ToArray(), Inches(length), null, wall => wall
            .WithTop(new[] { new WallTopPoint(Distance.Zero, Inches(low)), new WallTopPoint(Inches(bend), Inches(high)), new WallTopPoint(Inches(length), Inches(high)) }));
        Evaluation evaluation = Evaluate(house);
        Assert.True(over == evaluation.Findings.Count > 0, seed.ToString(CultureInfo.InvariantCulture));
        return true;
    }).Check(Tries.Always(150));

    // A session says of a box that is moved what a fresh evaluation says of it there.
    [Fact]
    public void Move_OfABoxOutOfTheStrip_ClearsTheFinding()
    {
        LayoutSession session = new LayoutEvaluator(Rows).Open(House([.. Squares(6, In("10")), Square("last", In("156"))], In("400"), In("96")));
        Assert.Single(session.Findings);
        Assert.Single(session.Move("last", In("160"), BoxHeight.Parse("16 in to top above subfloor")).Cleared);
        Assert.Single(session.Move("last", In("150"), BoxHeight.Parse("16 in to top above subfloor")).Appeared);
    }

    private static Evaluation Evaluate(Dwelling house) => new LayoutEvaluator(Rows).Evaluate(house);

    /// <summary>Boxes of 4 in by 4 in, 10 in from center to center.</summary>
    private static DeviceBox[] Squares(int count, Distance first) => Enumerable.Range(0, count).Select(i => Square("s" + i, first + (In("10") * i))).ToArray();

    private static DeviceBox Square(string id, Distance? at) => new DeviceBox(id, BoxPurpose.General).WithDevices(new[] { DeviceKind.DuplexReceptacle }).WithKind(BoxKind.FourSquare).WithAt(at)
        .WithHeight(BoxHeight.Parse("16 in to top above subfloor"));

    private static Dwelling House(IReadOnlyList<DeviceBox> boxes, Distance length, DistanceRange? height, Func<Wall, Wall>? change = null)
    {
        Wall wall = new Wall("wall", length).WithRated(true).WithBoxes(boxes.ToArray());
        Room room = new Room("room", RoomKind.Bedroom, "ground").WithCeiling(new Ceiling().WithFraming(height)).WithWalls(new[] { change is null ? wall : change(wall) });
        return new Dwelling("case").WithStoreys(new[] { new Storey("ground") }).WithRooms(new[] { room });
    }

    private static Distance Inches(int inches) => Distance.FromInches(inches);
}
