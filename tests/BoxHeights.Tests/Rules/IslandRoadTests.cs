using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Islands and peninsulas by a second road: their tops counted square inch by square inch and cut inch by inch, as 210.52(C) of 2017 and of 2020 says.</summary>
public sealed class IslandRoadTests
{
    private static readonly LayoutEvaluator Sides = new(SpacingCaseTests.Only("us", "island-outlets", 2017));
    private static readonly LayoutEvaluator Area = new(SpacingCaseTests.Only("us", "island-outlets", 2020));

    private static Arbitrary<int> Seeds { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    [Fact]
    public void Spaces_OfARandomTopIn2017_LackWhatACountFinds() => AssertAgrees(Sides, top => top.LackingSpaces(), 1500);

    [Fact]
    public void Outlets_OfARandomTopIn2020_LackWhatACountFinds() => AssertAgrees(Area, top => top.LackingByArea(), 1500);

    private static void AssertAgrees(LayoutEvaluator evaluator, Func<RandomTop, int> count, int tests)
    {
        int lacking = 0;
        int whole = 0;
        Prop.ForAll(Seeds, seed =>
        {
            RandomTop top = new(seed);
            int counted = count(top);
            lacking += counted;
            whole += counted == 0 ? 1 : 0;
            Evaluation evaluation = evaluator.Evaluate(top.House());
            Assert.True(evaluation.Findings.Count == counted, top + ": " + counted + " counted, " + string.Join("; ", evaluation.Findings.Select(finding => finding.Message)));
        }).Check(Tries.Always(tests));
        Assert.True(lacking > 200 && whole > 200, lacking + " lacking, " + whole + " whole");
    }

    /// <summary>A top in whole inches in a room with a counter along its first wall: an island, or a peninsula that stands out from that counter.</summary>
    private sealed class RandomTop
    {
        private const int CounterFront = 26;

        private readonly bool isPeninsula;
        private readonly int left;
        private readonly int right;
        private readonly int near;
        private readonly int far;
        private readonly (int Left, int Right, int Near, int Far)? sink;
        private readonly List<(int X, int Y)> boxes = [];
        private readonly List<int> onWall = [];

        public RandomTop(int seed)
        {
            Random random = new(seed);
            isPeninsula = random.Next(2) == 0;
            left = random.Next(60, 180);
            right = left + random.Next(6, isPeninsula ? 45 : 120);
            near = !isPeninsula ? random.Next(60, 80) : random.Next(2) == 0 ? 0 : CounterFront;
            far = isPeninsula ? random.Next(40, 150) : near + random.Next(6, 60);
            if (random.Next(2) == 0)
            {
                int x = random.Next(left - 10, right);
                int y = random.Next(near - 10, far);
                sink = (x, x + random.Next(5, 34), y, y + random.Next(5, 34));
            }

            for (int i = random.Next(4); i > 0; i--)
            {
                boxes.Add((random.Next(left - 2, right + 3), random.Next(near - 2, far + 3)));
            }

            for (int i = random.Next(2); i > 0; i--)
            {
                // A box 2-1/4 in wide doesn't fit nearer to the end of a wall of 300 in.
                onWall.Add(Math.Min(298, random.Next(left - 5, right + 6)));
            }
        }

        private int Start => isPeninsula ? 0 : near;

        private bool IsLongAcross => !isPeninsula && right - left >= far - near;

        public Dwelling House()
        {
            List<string> standing = [(isPeninsula ? "peninsula " : "island ") + Join(left, near, right, far)];
            if (sink is { } one)
            {
                standing.Add("in sink " + Join(one.Left, one.Near, one.Right, one.Far));
            }

            string wall = "300 kitchen:20:280" + string.Concat(onWall.Select(at => " cbox:" + at));
            return RoomSketch.House("kitchen", [wall, "200", "300", "200"], standing, boxes.Select(box => "on-island " + Join(box.X, box.Y, 36)));
        }

        public override string ToString() => (isPeninsula ? "peninsula " : "island ") + Join(left, near, right, far) + ", sink " + sink + ", boxes " + string.Join(" ", boxes) + ", wall " + string.Join(" ", onWall);

        public int LackingSpaces()
        {
            (int from, int to, int low, int high) = IsLongAcross ? (left, right, near, far) : (Start, far, left, right);
            int lacking = 0;
            for (int at = from; at < to; at++)
            {
                int end = at;
                while (end < to && !IsCut(end, low, high))
                {
                    end++;
                }

                int length = end - at;
                int across = high - low;
                if (length > 0 && Math.Max(length, across) >= 24 && Math.Min(length, across) >= 12
                    && !Places().Any(place => at <= place && place <= end))
                {
                    lacking++;
                }

                at = end;
            }

            return lacking;
        }

        public int LackingByArea()
        {
            int squares = 0;
            for (int x = left; x < right; x++)
            {
                for (int y = Start; y < far; y++)
                {
                    squares++;
                }
            }

            int needed = 1;
            for (int served = 9 * 144; served < squares; served += 18 * 144)
            {
                needed++;
            }

            int[] places = Places().ToArray();
            return (places.Length < needed ? 1 : 0) + (isPeninsula && places.Length > 0 && !places.Any(place => far - place <= 24) ? 1 : 0);
        }

        /// <summary>Where along the length the boxes are that serve the top.</summary>
        private IEnumerable<int> Places() => boxes.Where(box => left <= box.X && box.X <= right && near <= box.Y && box.Y <= far).Select(box => IsLongAcross ? box.X : box.Y)
            .Concat(onWall.Where(at => isPeninsula && left <= at && at <= right).Select(_ => 0));

        /// <summary>Whether the sink stands in an inch of the length, with less than 12 in of the top behind it.</summary>
        private bool IsCut(int inch, int low, int high)
        {
            if (sink is not { } one)
            {
                return false;
            }

            (int from, int to, int front, int back) = IsLongAcross ? (one.Left, one.Right, one.Near, one.Far) : (one.Near, one.Far, one.Left, one.Right);
            return from <= inch && inch < to && front < high && low < back && Math.Max(front - low, high - back) < 12;
        }

        private static string Join(params int[] numbers) => string.Join(' ', numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)));
    }
}
