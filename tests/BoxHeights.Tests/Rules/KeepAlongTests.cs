using System;
using System.Collections.Generic;
using System.Linq;
using BoxHeights.Rules;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Where a box may go without leaving anything out of reach that it alone serves: every inch of its wall tried, the room walked again for each.</summary>
public sealed class KeepAlongTests
{
    private static readonly LayoutEvaluator Walls = new(SpacingCaseTests.Only("us", "wall-outlets", 2023));

    [Fact]
    public void Keep_OfABoxInARandomRoom_IsWhereAWalkFindsNothingWorse()
    {
        int inside = 0;
        int outside = 0;
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []), seed =>
        {
            Random random = new(seed);
            int wide = random.Next(40, 260);
            int deep = random.Next(40, 200);
            int[] lengths = [wide, deep, wide, deep];
            Walk walk = new(lengths);
            string[] walls = new string[4];
            for (int wall = 0; wall < 4; wall++)
            {
                walls[wall] = lengths[wall].ToString(System.Globalization.CultureInfo.InvariantCulture);
                if (random.Next(3) == 0)
                {
                    int left = random.Next(0, lengths[wall] - 30);
                    walls[wall] += " door:" + left + ":" + (left + 30);
                    walk.Block(wall, left, left + 30);
                }

                for (int at = random.Next(4, 200); at < lengths[wall] - 3; at += random.Next(5, 200))
                {
                    if (walk.IsWall(wall, at))
                    {
                        walls[wall] += " box:" + at;
                        walk.Boxes.Add((wall, at));
                    }
                }
            }

            LayoutState state = Walls.StateOf(RoomSketch.House("bedroom", walls));
            for (int box = 0; box < walk.Boxes.Count; box++)
            {
                DistanceSet keep = state.Spaces.KeepOf(box);
                foreach (int place in walk.OwnStretch(box))
                {
                    bool expected = walk.IsNoWorseAt(box, place);
                    inside += expected ? 1 : 0;
                    outside += expected ? 0 : 1;
                    Assert.True(keep.Contains(Distance.FromInches(place)) == expected, string.Join(" | ", walls) + ": box " + box + " at " + place + ", keep " + keep);
                }
            }
        }).Check(Tries.Config(150));
        Assert.True(inside > Tries.Of(3000) && outside > Tries.Of(3000), inside + " places inside, " + outside + " outside");
    }

    // From the door at 50 in to that at 170: the box at 100 has to reach both, so that it may stand from 98 to 122.
    [Theory]
    [InlineData("98", 0, true)]
    [InlineData("98", -1, false)]
    [InlineData("122", 0, true)]
    [InlineData("122", 1, false)]
    public void Keep_OfTheOnlyBoxOfAWall_EndsWhereAnEndIsOutOfReach(string place, int ticks, bool kept)
    {
        LayoutState state = Walls.StateOf(RoomSketch.House("bedroom", ["300 door:0:50 box:100 door:170:300"]));
        Assert.Equal(kept, state.Spaces.KeepOf(0).Contains(RoomSketch.Measure(place, false) + Distance.FromTicks(ticks)));
    }

    [Fact]
    public void Keep_OfABoxThatOthersStandInFor_IsAnywhere()
    {
        LayoutState state = Walls.StateOf(RoomSketch.House("bedroom", ["300 door:0:50 box:100 box:110 door:170:300"]));
        Assert.Equal(DistanceSet.All, state.Spaces.KeepOf(0));
        Assert.Equal(DistanceSet.All, Walls.StateOf(RoomSketch.House("bedroom", ["300 door:0:50 box:100:70 door:170:300"])).Spaces.KeepOf(0));
    }

    /// <summary>Four walls in whole inches.</summary>
    private sealed class Walk(int[] lengths)
    {
        private readonly bool[] blocked = new bool[lengths.Sum()];
        private List<int>? counts;

        public List<(int Wall, int At)> Boxes { get; } = [];

        public void Block(int wall, int left, int right) => Array.Fill(blocked, true, Start(wall) + left, right - left);

        /// <summary>Whether there is wall on both sides of a place between two inches.</summary>
        public bool IsWall(int wall, int at) => !blocked[Start(wall) + at] && !blocked[Start(wall) + at - 1];

        public IEnumerable<int> OwnStretch(int box)
        {
            (int wall, int at) = Boxes[box];
            int left = at;
            int right = at;
            while (left > 0 && !blocked[Start(wall) + left - 1])
            {
                left--;
            }

            while (right < lengths[wall] && !blocked[Start(wall) + right])
            {
                right++;
            }

            return Enumerable.Range(left, right - left + 1);
        }

        public bool IsNoWorseAt(int box, int place)
        {
            List<(int Wall, int At)> moved = [.. Boxes];
            moved[box] = (moved[box].Wall, place);
            bool[] after = Reached(moved);
            return (counts ??= Counting()).TrueForAll(inch => after[inch]);
        }

        /// <summary>The inches that are reached from where the boxes are, and count: of walls of 2 ft or more.</summary>
        private List<int> Counting()
        {
            bool[] before = Reached(Boxes);
            return [.. Enumerable.Range(0, blocked.Length).Where(inch => before[inch] && !blocked[inch] && RunLength(inch) >= 24)];
        }

        private int Start(int wall) => lengths.Take(wall).Sum();

        /// <summary>Walks from each box 72 in to either side, as far as there is wall.</summary>
        private bool[] Reached(List<(int Wall, int At)> boxes)
        {
            bool[] reached = new bool[blocked.Length];
            foreach ((int wall, int at) in boxes)
            {
                for (int gone = 0; gone < 72 && !blocked[Around(Start(wall) + at + gone)]; gone++)
                {
                    reached[Around(Start(wall) + at + gone)] = true;
                }

                for (int gone = 1; gone <= 72 && !blocked[Around(Start(wall) + at - gone)]; gone++)
                {
                    reached[Around(Start(wall) + at - gone)] = true;
                }
            }

            return reached;
        }

        private int RunLength(int inch)
        {
            int length = 0;
            foreach (int step in new[] { 1, -1 })
            {
                for (int at = inch; length <= blocked.Length && !blocked[Around(at)]; at += step)
                {
                    length++;
                }
            }

            return length - 1;
        }

        private int Around(int inch) => ((inch % blocked.Length) + blocked.Length) % blocked.Length;
    }
}
