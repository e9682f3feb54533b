using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Plates under the top of half walls and sloped walls.</summary>
public sealed class WallTopTests
{
    private static readonly RuleSet Row = OneBox.Only(RuleSets.RoughInPractice, "under-wall-top");

    private static Distance Tick => Distance.FromTicks(1);

    // A standard plate is 4-1/2 in tall, a jumbo one 5-1/4 in: half of it under the top. By hand, common practice, no source.
    [Theory]
    [InlineData("standard", "40 in", "37-3/4 in")]
    [InlineData("jumbo", "40 in", "37-3/8 in")]
    [InlineData("standard", "42 in", "39-3/4 in")]
    public void HalfWall_HighestCenter_IsHalfAPlateUnderItsTop(string plate, string top, string center)
    {
        OneBox box = On([(0, Eighths(top)), (1152, Eighths(top))]);
        box = box with { Box = box.Box.WithPlate(new PlateKind(plate)) };
        Distance limit = Distance.Parse(center);
        Assert.Equal(Verdict.Passes, box.At(BoxHeight.ToCenter(limit, Datum.Subfloor)).Verdict());
        Assert.Equal(Verdict.Fails, box.At(BoxHeight.ToCenter(limit + Tick, Datum.Subfloor)).Verdict());
    }

    // The plate is 2-3/4 in wide: from a step 1-3/8 in to its left it is all under the higher part.
    [Fact]
    public void Step_BesideThePlate_DoesNotCountUntilThePlateReachesIt()
    {
        OneBox box = On([(0, 320), (400, 320), (400, 768), (1152, 768)]).At(BoxHeight.ToTop(Distance.Parse("48 in"), Datum.Subfloor));
        Distance clear = Distance.Parse("51-3/8 in");
        Assert.Equal(Verdict.Passes, (box with { Box = box.Box.WithAt(clear) }).Verdict());
        Assert.Equal(Verdict.Fails, (box with { Box = box.Box.WithAt(clear - Tick) }).Verdict());
    }

    [Fact]
    public void Wall_WithoutAStatedTop_HasNothingSaidOfIt() =>
        Assert.Null(new OneBox { Rules = Row }.At(BoxHeight.Parse("96 in to top above subfloor")).Check());

    [Fact]
    public void Box_WithoutAPlateOfKnownSize_IsJudgedByItsOwnTop()
    {
        OneBox box = On([(0, 320), (1152, 320)]);
        box = box with { Box = box.Box.WithGangs(11).WithSize(new BoxSize(Distance.Parse("20 in"), Distance.Parse("4 in"))) };
        Assert.Equal(Verdict.Passes, box.At(BoxHeight.Parse("40 in to top above subfloor")).Verdict());
        Assert.Equal(Verdict.Fails, box.At(BoxHeight.ToTop(Distance.Parse("40 in") + Tick, Datum.Subfloor)).Verdict());
    }

    [Fact]
    public void Points_OutOfOrder_AreAFaultOfTheWall()
    {
        LayoutFault fault = Assert.Single(On([(0, 320), (600, 320), (500, 400)]).At(BoxHeight.Parse("16 in to top above subfloor")).Evaluate().Findings, one => one.Fault is not null).Fault!;
        Assert.Equal((LayoutFaultKind.NoExtent, OneBox.WallAddress), (fault.Kind, fault.Subject));
    }

    // 100 ft long and 50 in high at its end, so that a slab is 5 in long and rises by 5/24 in: a plate that has 1/4 in of air above it passes.
    [Fact]
    public void Slope_LongerThanTwentyFeet_IsJudgedWithinOneWiderSlab()
    {
        OneBox box = On([(0, 0), (9600, 400)]) with { Wall = wall => wall.WithLength(Distance.FromInches(1200m)).WithTop(Points([(0, 0), (9600, 400)])) };

        // The plate's left edge is at 1,000 in: the slope is 1000/24 in high there.
        box = box with { Box = box.Box.WithAt(Distance.Parse("1001-3/8 in")) };
        Distance touching = Distance.FromTicks(1000 * Distance.FromInches(1m).Ticks / 24) - Distance.Parse("2-1/4 in");
        Assert.Equal(Verdict.Fails, box.At(BoxHeight.ToCenter(touching + Tick, Datum.Subfloor)).Verdict());
        Assert.Equal(Verdict.Passes, box.At(BoxHeight.ToCenter(touching - Distance.Parse("1/4 in"), Datum.Subfloor)).Verdict());
    }

    /// <summary>Brute force: the plate's upper edge against each stretch of the polyline that it reaches into, in whole eighths of an inch.</summary>
    [Fact]
    public void Verdict_UnderRandomTops_IsThatOfTheRectangleUnderThePolyline()
    {
        Arbitrary<int[]> numbers = Arb.From(Gen.Choose(0, 1100).ArrayOf(10));
        Prop.ForAll(numbers, n =>
        {
            // Every other house has a level stretch, every third a step.
            int[] along = n.Take(4).Order().ToArray();
            int[] up = n.Skip(4).Take(4).Select(one => one / 2).ToArray();
            up[1] = n[0] % 2 == 0 ? up[0] : up[1];
            along[2] = n[1] % 3 == 0 ? along[1] : along[2];
            (int Along, int Up)[] top = along.Zip(up).ToArray();
            // The box itself lies on the wall: 9 eighths is half its width.
            int at = 9 + n[8];
            int center = 20 + (n[9] / 2);
            OneBox box = On(top);
            box = (box with { Box = box.Box.WithAt(Distance.FromInches(at / 8m)) }).At(BoxHeight.ToCenter(Distance.FromInches(center / 8m), Datum.Subfloor));
            bool passes = box.Check() is not { Verdict: Verdict.Fails };
            return passes ? Fits(top, at, center + 18, slack: false) : !Fits(top, at, center + 18, slack: true);
        }).Check(Tries.Always(1500));
    }

    /// <summary>Whether a plate 22 eighths wide is under the top; with slack, whether it stays so if raised by what each slope rises in an inch, and an eighth.</summary>
    private static bool Fits((int Along, int Up)[] top, int at, int plateTop, bool slack)
    {
        for (int i = 1; i < top.Length; i++)
        {
            (int left, int start) = top[i - 1];
            (int right, int end) = top[i];
            int from = Math.Max(left, at - 11);
            int to = Math.Min(right, at + 11);
            if (from >= to)
            {
                continue;
            }

            int run = right - left;
            long more = slack && start != end ? (8L * Math.Abs(end - start)) + run : 0;
            foreach (int place in new[] { from, to })
            {
                // Both sides times the run, so that they are whole.
                if (((long)(plateTop - start) * run) + more > (long)(end - start) * (place - left))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static int Eighths(string inches) => (int)(Distance.Parse(inches).Inches * 8);

    private static OneBox On((int Along, int Up)[] top) => new() { Rules = Row, Wall = wall => wall.WithTop(Points(top)) };

    private static Items<WallTopPoint> Points((int Along, int Up)[] top) =>
        new(top.Select(point => new WallTopPoint(Distance.FromInches(point.Along / 8m), Distance.FromInches(point.Up / 8m))));
}
