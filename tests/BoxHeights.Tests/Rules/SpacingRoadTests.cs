using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Spacing by a second road: random rooms walked inch by inch.</summary>
public sealed class SpacingRoadTests
{
    private static readonly LayoutEvaluator Walls = new(SpacingCaseTests.Only("us", "wall-outlets", 2023));
    private static readonly LayoutEvaluator Counters = new(SpacingCaseTests.Only("us", "counter-outlets", 2020));

    private static Arbitrary<int> Seeds { get; } = Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []);

    [Fact]
    public void Walls_OfRandomRooms_LackWhatAWalkFinds()
    {
        int lacking = 0;
        int whole = 0;
        Prop.ForAll(Seeds, seed =>
        {
            RandomRoom room = new(seed, false);
            int[] walked = room.Walk(72, 24);
            lacking += walked.Length;
            whole += walked.Length == 0 ? 1 : 0;
            Assert.Equal(walked, Lacking(Walls.Evaluate(room.House())));
        }).Check(Tries.Always(1500));
        Assert.True(lacking > 300 && whole > 100, "the rooms show too little: " + lacking + " runs that lack, " + whole + " rooms that don't");
    }

    [Fact]
    public void Counters_OfRandomRooms_LackWhatAWalkFinds()
    {
        int lacking = 0;
        int whole = 0;
        Prop.ForAll(Seeds, seed =>
        {
            RandomRoom room = new(seed, true);
            int[] walked = room.Walk(24, 12);
            lacking += walked.Length;
            whole += walked.Length == 0 ? 1 : 0;
            Assert.Equal(walked, Lacking(Counters.Evaluate(room.House())));
        }).Check(Tries.Always(1500));
        Assert.True(lacking > 300 && whole > 100, "the rooms show too little: " + lacking + " runs that lack, " + whole + " rooms that don't");
    }

    [Fact]
    public void Rooms_InAMirror_LackTheSame() => Prop.ForAll(Seeds, seed =>
    {
        RandomRoom room = new(seed, seed % 2 == 0);
        LayoutEvaluator evaluator = seed % 2 == 0 ? Counters : Walls;
        Assert.Equal(Lacking(evaluator.Evaluate(room.House())), Lacking(evaluator.Evaluate(Mirror.Of(room.House()))));
    }).Check(Tries.Always(300));

    [Fact]
    public void Remedy_OfARandomRoom_ClosesTheRun()
    {
        int closed = 0;
        Prop.ForAll(Seeds, seed =>
        {
            RandomRoom room = new(seed, seed % 2 == 0);
            LayoutEvaluator evaluator = seed % 2 == 0 ? Counters : Walls;
            Dwelling house = room.House();
            foreach (Finding finding in evaluator.Evaluate(house).Findings)
            {
                if (finding.Remedies.OfType<AddBox>().FirstOrDefault() is { } add)
                {
                    closed++;
                    Assert.DoesNotContain(evaluator.Evaluate(add.ApplyTo(house)).Findings, left => left.Subject == finding.Subject);
                }
            }
        }).Check(Tries.Always(200));
        Assert.True(closed > 50, "only " + closed + " remedies were offered");
    }

    private static int[] Lacking(Evaluation evaluation)
    {
        Assert.All(evaluation.Findings, finding => Assert.Equal(Verdict.Fails, finding.Verdict));
        return evaluation.Findings.Select(finding => (int)(finding.Measured.AsDistance().Ticks / Distance.FromInches(1).Ticks)).Order().ToArray();
    }

    /// <summary>A room of whole inches: what is on each inch of its walls, and boxes between two inches.</summary>
    private sealed class RandomRoom
    {
        private static readonly (int Length, int Turn)[][] Shapes =
        [
            [(144, 90), (100, 90), (144, 90), (100, 90)],
            [(300, 90), (220, 90), (300, 90), (220, 90)],
            [(70, -90), (60, 90), (60, 90), (60, -90), (70, 90), (150, 90), (200, 90), (150, 90)],
            [(240, 90), (96, 90), (120, -90), (96, 90), (120, 90), (192, 90)],
            [(80, 90), (31, 90), (80, 90), (31, 90)],
            [(200, 90), (150, 90), (200, 90)],
            [(400, 90)],
        ];

        private readonly bool counters;
        private readonly (int Length, int Turn)[] shape;
        private readonly bool[][] free;
        private readonly List<string>[] tokens;
        private readonly List<(int Wall, int At)> boxes = [];

        public RandomRoom(int seed, bool counters)
        {
            this.counters = counters;
            Random random = new(seed);
            shape = Shapes[random.Next(Shapes.Length)];
            free = shape.Select(wall => Enumerable.Repeat(!counters, wall.Length).ToArray()).ToArray();
            tokens = shape.Select(_ => new List<string>()).ToArray();
            int many = random.Next(1, 9);
            for (int i = 0; i < shape.Length; i++)
            {
                if (counters)
                {
                    Counter(random, i);
                }
                else
                {
                    Openings(random, i);
                }

                for (int at = 2 + random.Next(30 * many); at <= shape[i].Length - 2; at += 5 + random.Next((counters ? 12 : 30) * many))
                {
                    boxes.Add((i, at));
                    tokens[i].Add((counters ? "cbox:" : "box:") + at);
                }
            }
        }

        private bool Closes => shape.Length > 3;

        public Dwelling House() => RoomSketch.House(counters ? "kitchen" : "bedroom", shape.Select((wall, i) => wall.Length + " turn:" + wall.Turn + " " + string.Join(' ', tokens[i])));

        /// <summary>How many inches of each run are out of reach, least first.</summary>
        public int[] Walk(int reach, int shortest)
        {
            List<(int Wall, int Inch)> order = shape.SelectMany((wall, i) => Enumerable.Range(0, wall.Length).Select(inch => (i, inch))).ToList();
            int first = order.FindIndex(one => !free[one.Wall][one.Inch]);
            bool loop = Closes && first < 0;
            if (Closes && first > 0)
            {
                order = [.. order.Skip(first), .. order.Take(first)];
            }

            List<int> lacking = [];
            for (int start = 0; start < order.Count;)
            {
                if (!free[order[start].Wall][order[start].Inch])
                {
                    start++;
                    continue;
                }

                int end = start;
                while (end < order.Count && free[order[end].Wall][order[end].Inch])
                {
                    end++;
                }

                int lacks = end - start >= shortest ? Out(order.GetRange(start, end - start), reach, loop) : 0;
                if (lacks > 0)
                {
                    lacking.Add(lacks);
                }

                start = end;
            }

            return lacking.Order().ToArray();
        }

        private int Out(List<(int Wall, int Inch)> run, int reach, bool loop)
        {
            // Twice the inches, so that the middle of an inch is whole.
            List<int> outlets = [];
            foreach ((int wall, int at) in boxes)
            {
                int after = run.IndexOf((wall, at));
                int before = run.IndexOf((wall, at - 1));
                if (after >= 0 || before >= 0)
                {
                    outlets.Add(2 * (after >= 0 ? after : before + 1));
                }
            }

            for (int k = 0; k < run.Count && !Closes; k++)
            {
                bool looseEnd = (run[k].Wall == 0 && run[k].Inch == 0) || (run[k].Wall == shape.Length - 1 && run[k].Inch == shape[^1].Length - 1);
                if (looseEnd)
                {
                    outlets.Add(2 * (run[k].Inch == 0 ? k : k + 1));
                }
            }

            int all = 2 * run.Count;
            return Enumerable.Range(0, run.Count).Count(k => outlets.TrueForAll(at =>
            {
                int off = Math.Abs((2 * k) + 1 - at);
                return (loop ? Math.Min(off, all - off) : off) > 2 * reach;
            }));
        }

        private void Openings(Random random, int wall)
        {
            int at = random.Next(60);
            while (true)
            {
                int wide = random.Next(20, 70);
                if (at + wide > shape[wall].Length)
                {
                    return;
                }

                (string kind, bool breaks) = random.Next(9) switch
                {
                    0 => ("window", false),
                    1 => ("tall-cabinet", true),
                    2 => ("cased", true),
                    3 => ("wall-cabinet", false),
                    4 => ("bifold-door", true),
                    5 => ("fireplace", true),
                    6 => ("desk", false),
                    7 => ("sliding-door", true),
                    _ => ("door", true),
                };

                // One walks through a sliding door beside the panel that its leaf stands before.
                int leaf = kind == "sliding-door" ? random.Next(wide / 2, wide + 1) : wide;
                bool left = random.Next(2) == 0;
                tokens[wall].Add(kind + ":" + at + ":" + (at + wide) + (kind == "sliding-door" ? ":" + leaf + (left ? ":left" : ":right") : ""));
                for (int inch = left ? at + wide - leaf : at; inch < (left ? at + wide : at + leaf) && breaks; inch++)
                {
                    free[wall][inch] = false;
                }

                at += wide + random.Next(3) switch { 0 => 0, 1 => random.Next(40), _ => random.Next(200) };
            }
        }

        private void Counter(Random random, int wall)
        {
            int length = shape[wall].Length;
            int left = random.Next(3) switch { 0 => 0, _ => 30 + random.Next(40) };
            int right = random.Next(3) switch { 0 => length, _ => left + random.Next(5, 100) };
            if (random.Next(4) == 0 || left >= right || (right != length && right > length - 30))
            {
                return;
            }

            tokens[wall].Add("kitchen:" + left + ":" + right);
            for (int inch = left; inch < right; inch++)
            {
                free[wall][inch] = true;
            }

            for (int at = left + random.Next(1, 60); at + 24 < right; at += 24 + random.Next(1, 80))
            {
                int behind = random.Next(9, 15);
                string kind = random.Next(3) switch { 0 => "sink", 1 => "range", _ => "cooktop" };
                tokens[wall].Add(kind + ":" + at + ":" + (at + 24) + (kind == "range" ? "" : ":" + behind));
                for (int inch = at; inch < at + 24 && (kind == "range" || behind < 12); inch++)
                {
                    free[wall][inch] = false;
                }
            }
        }
    }
}
