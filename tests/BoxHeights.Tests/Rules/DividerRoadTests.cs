using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>Sides of islands that divide a room, by a second road: walked inch by inch, with what stands on them and lies before them.</summary>
public sealed class DividerRoadTests
{
    private static readonly LayoutEvaluator Walls = new(SpacingCaseTests.Only("us", "wall-outlets", 2023));

    // One to three sides of an island in the middle of a room whose walls are all doors.
    [Fact]
    public void Sides_OfARandomIsland_LackWhatAWalkFinds()
    {
        int lacking = 0;
        int whole = 0;
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []), seed =>
        {
            Random random = new(seed);
            int wide = random.Next(20, 240);
            int deep = random.Next(20, 90);
            (int X, int Y)[] corners = [(100, 100), (100, 100 + deep), (100 + wide, 100 + deep), (100 + wide, 100)];
            int first = random.Next(4);
            (int X, int Y)[] line = Enumerable.Range(first, 2 + random.Next(3)).Select(i => corners[i % 4]).ToArray();

            // On the island's outline, within it, and in the floor somewhere before it.
            List<(int X, int Y, bool InFloor)> boxes = [];
            for (int i = random.Next(5); i > 0; i--)
            {
                bool inFloor = random.Next(2) == 0;
                int side = random.Next(4);
                int x = side % 2 == 0 ? 100 + random.Next(wide + 1) : side == 1 ? 100 : 100 + wide;
                int y = side % 2 == 1 ? 100 + random.Next(deep + 1) : side == 0 ? 100 : 100 + deep;
                int off = inFloor ? 1 + random.Next(22) : -random.Next(2);
                boxes.Add((x + (side == 1 ? -off : side == 3 ? off : 0), y + (side == 0 ? -off : side == 2 ? off : 0), inFloor));
            }

            int walked = Walk(line, boxes);
            lacking += walked > 0 ? 1 : 0;
            whole += walked == 0 ? 1 : 0;
            string island = "island 100 100 " + Join(100 + wide, 100 + deep) + " line " + string.Join(' ', (random.Next(2) == 0 ? line : line.AsEnumerable().Reverse()).Select(point => Join(point.X, point.Y)));
            string[] doors = ["500 door:0:500", "400 door:0:400", "500 door:0:500", "400 door:0:400"];
            Evaluation evaluation = Walls.Evaluate(RoomSketch.House("great-room", doors, [island], boxes.Select(box => (box.InFloor ? "floor " : "on-island ") + Join(box.X, box.Y) + (box.InFloor ? "" : " 16"))));
            Assert.True(walked == evaluation.Findings.Sum(finding => finding.Measured.AsDistance().Ticks / Distance.FromInches(1).Ticks),
                island + " boxes " + string.Join(" ", boxes) + ": " + walked + " walked; " + string.Join("; ", evaluation.Findings.Select(finding => finding.Message)));
        }).Check(Tries.Always(1500));
        Assert.True(lacking > 200 && whole > 100, lacking + " lack some, " + whole + " nothing");
    }

    /// <summary>How many inches of the sides aren't reached, by the middle of each.</summary>
    private static int Walk((int X, int Y)[] line, List<(int X, int Y, bool InFloor)> boxes)
    {
        List<int> outlets = [];
        int start = 0;
        for (int i = 1; i < line.Length; i++)
        {
            // The corners are listed so that the island lies at one's left; so what is before a side is at its right.
            (int dx, int dy) = (Math.Sign(line[i].X - line[i - 1].X), Math.Sign(line[i].Y - line[i - 1].Y));
            int length = Math.Abs(line[i].X - line[i - 1].X) + Math.Abs(line[i].Y - line[i - 1].Y);
            foreach ((int x, int y, bool inFloor) in boxes)
            {
                int along = ((x - line[i - 1].X) * dx) + ((y - line[i - 1].Y) * dy);
                int before = ((y - line[i - 1].Y) * dx) - ((x - line[i - 1].X) * dy);
                if (along >= 0 && along <= length && before >= 0 && before <= 18)
                {
                    outlets.Add(2 * (start + along));
                }
            }

            start += length;
        }

        return start < 24 ? 0 : Enumerable.Range(0, start).Count(inch => outlets.TrueForAll(at => Math.Abs((2 * inch) + 1 - at) > 2 * 72));
    }

    private static string Join(params int[] numbers) => string.Join(' ', numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)));
}
