using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Rules;

/// <summary>The length of a passage along its middle, by a second road: the middle is drawn first, and the walls half a width to either side of it.</summary>
public sealed class PassageMiddleTests
{
    [Fact]
    public void Middle_OfWallsDrawnAroundIt_IsWhatWasDrawn()
    {
        int bent = 0;
        Prop.ForAll(Arb.From(Gen.Choose(1, int.MaxValue - 1), _ => []), seed =>
        {
            Random random = new(seed);
            int legs = random.Next(1, 6);
            bent += legs > 2 ? 1 : 0;

            // In quarter inches: each leg longer than all the widths together, so that its sides stay longer than nothing.
            int[] middle = Enumerable.Range(0, legs).Select(_ => 800 + (2 * random.Next(400))).ToArray();
            int[] width = Enumerable.Range(0, legs).Select(_ => 120 + (4 * random.Next(30))).ToArray();
            int[] turn = Enumerable.Range(0, legs - 1).Select(_ => random.Next(2) == 0 ? 1 : -1).ToArray();
            List<(int Length, int Turn)> left = [];
            List<(int Length, int Turn)> right = [];
            for (int leg = 0; leg < legs; leg++)
            {
                // Outside a corner a side reaches half the next leg's width further, inside it ends as much sooner.
                int before = leg > 0 ? turn[leg - 1] * width[leg - 1] / 2 : 0;
                int after = leg < legs - 1 ? turn[leg] * width[leg + 1] / 2 : 0;
                left.Add((middle[leg] + before + after, leg < legs - 1 ? 90 * turn[leg] : 90));
                right.Insert(0, (middle[leg] - before - after, leg > 0 ? -90 * turn[leg - 1] : 90));
            }

            List<(int Length, int Turn)> all = [.. left, (width[^1], 90), .. right, (width[0], 90)];
            int first = random.Next(all.Count);
            Room room = new Room("hall", RoomKind.Hall, "ground").WithWalls(all.Skip(first).Concat(all.Take(first))
                .Select((wall, i) => new Wall("w" + i, Distance.FromInches(wall.Length / 4m)).WithTurnDegrees(wall.Turn)).ToArray());
            Assert.True(new WallPlan(room).TryMiddle(out Distance found), string.Join(" ", all));
            Assert.Equal(Distance.FromInches(middle.Sum() / 4m), found);
        }).Check(Tries.Always(1000));
        Assert.True(bent > 300, bent + " of three legs or more");
    }
}
