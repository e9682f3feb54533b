using System;
using System.Collections.Generic;
using System.Numerics;

namespace BoxHeights.Rules;

/// <summary>In any part, of a given area, of a face of a rated wall the openings of all metal boxes together are at most so large.</summary>
/// <remarks>
/// A part is a strip of the wall from subfloor to ceiling framing that is no larger than that area; a box counts where it lies in it with its whole width. Of a wall
/// that is smaller, all boxes count. Where the ceiling's height or a box's place isn't known it matters only if it turns the verdict.
/// </remarks>
[Row(nameof(Most), nameof(Of))]
public sealed partial record RatedTotal : SpaceRule
{
    private static readonly Wording NoWallHeight = $"how high its walls are isn't stated";

    /// <summary>The largest area of all openings, itself allowed.</summary>
    public Quantity Most { get; init; }

    /// <summary>The part of the wall that they are counted in.</summary>
    public Quantity Of { get; init; }

    /// <summary>Whether the openings of the whole face are held against its whole area instead, in the same proportion.</summary>
    public bool InProportion { get; init; }

    /// <inheritdoc/>
    public override bool LooksAtOwnBoxesOnly => true;

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Room;

    /// <inheritdoc/>
    public override string Numbers => "openings of metal boxes of at most " + Most + (InProportion ? " for each " + Of + " of a rated face, in proportion" : " in any strip of " + Of + " of a rated face");

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Room is not { } room)
        {
            return;
        }

        foreach (Wall wall in room.Walls)
        {
            if (wall.Rated && !wall.Open)
            {
                Judge(space, wall, SurfaceAddress.Of(room.Id, wall.Id), statement);
            }
        }
    }

    private void Judge(SpaceView space, Wall wall, string address, SpaceStatement statement)
    {
        Openings openings = new(space, address);
        if (openings.All == 0 || (openings.All <= Most.Raw && !InProportion))
        {
            statement.Meets(address, address);
            return;
        }

        FaceArea? lowest = FaceArea.Of(wall, space.Framing?.From);
        FaceArea? highest = FaceArea.Of(wall, space.Framing?.To);

        if (InProportion && lowest is null)
        {
            statement.NotJudged(NoWallHeight, address);
            return;
        }

        // The higher the wall, the shorter the strip.
        Strip sure = highest is null ? default : InProportion ? openings.InProportion(wall, highest, Of) : openings.Worst(highest, Of);
        Strip possible = lowest is null ? new(0, wall.Length.Ticks, openings.All, openings.Count)
            : InProportion ? openings.InProportion(wall, lowest, Of)
            : openings.Worst(lowest, Of).With(openings.Unplaced, openings.UnplacedCount);
        if (sure.Area > Most.Raw)
        {
            Finds(Verdict.Fails, sure, MissingFacts.None);
        }
        else if (possible.Area > Most.Raw)
        {
            bool known = wall.Top.Count > 0 || space.Framing is { IsExact: true };
            Finds(Verdict.Unknown, possible, (known ? MissingFacts.None : MissingFacts.Ceiling) | (openings.Unplaced > 0 && !InProportion ? MissingFacts.Along : MissingFacts.None));
        }
        else
        {
            statement.Meets(address, address);
        }

        void Finds(Verdict verdict, Strip strip, MissingFacts needs)
        {
            Quantity area = new(QuantityKind.Area, strip.Area);
            LengthUnits units = space.Units;
            statement.Finds(address, address, verdict, area, QuantitySet.AtMost(Most), () => InProportion ? $"{Boxes():boxes} open {Printed.Exactly(area, units):area} for each {Printed.Exactly(Of, units):wall}" : (Wording)$"{Boxes():boxes} open {Printed.Exactly(area, units):area}",
                () => $"take fewer or smaller boxes there, or some that are listed for the wall", needs);

            Wording Boxes() => (needs & MissingFacts.Along) != 0 ? $"{strip.Count:count} metal boxes"
                : (Wording)$"{strip.Count:count} metal boxes from {Printed.Of(Distance.FromTicks(strip.Left), units):left} to {Printed.Of(Distance.FromTicks(strip.Right), units):right} along it";
        }
    }

    /// <summary>A strip of the wall and what boxes open in it.</summary>
    private readonly struct Strip(long left, long right, long area, int count)
    {
        public long Left { get; } = left;

        public long Right { get; } = right;

        public long Area { get; } = area;

        public int Count { get; } = count;

        public Strip With(long more, int boxes) => new(Left, Right, checked(Area + more), Count + boxes);
    }

    /// <summary>What the metal boxes of a face open.</summary>
    private sealed class Openings
    {
        private readonly List<(long Left, long Right, long Area)> placed = [];

        public Openings(SpaceView space, string address)
        {
            foreach (SpaceBox box in space.Boxes)
            {
                if (box.Address != address || !box.Traits.IsRecessed || !RatedOpening.IsOfSteel(box.Traits))
                {
                    continue;
                }

                Count++;
                long area = RatedOpening.AreaOf(box.Traits).Raw;
                All = checked(All + area);
                if (box.Along is { } along)
                {
                    placed.Add(((along - box.Traits.Size.HalfWidth).Ticks, (along + box.Traits.Size.HalfWidth).Ticks, area));
                }
                else
                {
                    Unplaced += area;
                    UnplacedCount++;
                }
            }

            placed.Sort((one, other) => one.Right.CompareTo(other.Right));
        }

        public int Count { get; }

        public long All { get; }

        /// <summary>What boxes open of which it isn't known where they are along the wall.</summary>
        public long Unplaced { get; }

        public int UnplacedCount { get; }

        /// <summary>The strip that holds the most, of those that begin at the left side of a box and end at the right side of one.</summary>
        public Strip Worst(FaceArea face, Quantity of)
        {
            Strip worst = default;
            foreach ((long left, _, _) in placed)
            {
                int ends = LastWithin(face, left, of);
                long area = 0;
                int count = 0;
                for (int i = 0; i <= ends; i++)
                {
                    if (placed[i].Left >= left)
                    {
                        area += placed[i].Area;
                        count++;
                    }
                }

                worst = area > worst.Area ? new(left, placed[ends].Right, area, count) : worst;
            }

            return worst;
        }

        /// <summary>What is opened of the whole face, brought to the area that the limit is given for, and rounded up: a fraction of a tick over is over.</summary>
        public Strip InProportion(Wall wall, FaceArea face, Quantity of)
        {
            (BigInteger area, BigInteger per) = face.Between(0, wall.Length.Ticks);
            BigInteger brought = area.IsZero ? BigInteger.Zero : ((new BigInteger(All) * of.Raw * per) + area - 1) / area;
            return new(0, wall.Length.Ticks, brought > long.MaxValue ? throw new OverflowException() : (long)brought, Count);
        }

        /// <summary>The last box, in the order of right sides, up to which a strip from a place is no larger than an area.</summary>
        private int LastWithin(FaceArea face, long left, Quantity of)
        {
            int within = -1;
            int beyond = placed.Count;
            while (beyond - within > 1)
            {
                int middle = within + ((beyond - within) / 2);
                (BigInteger area, BigInteger per) = face.Between(left, placed[middle].Right);
                (within, beyond) = area <= of.Raw * per ? (middle, beyond) : (within, middle);
            }

            return within;
        }
    }
}
