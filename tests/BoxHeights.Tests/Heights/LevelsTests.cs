using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Heights;

public class LevelsTests
{
    private static readonly DistanceRange Floor = new(Distance.Zero, Distance.FromInches(1, 1, 4));
    private static readonly Levels Kitchen = Levels.Default
        .With(Datum.Countertop, Distance.FromInches(36), Datum.FinishedFloor)
        .With(Datum.SplashTop, Distance.FromInches(4), Datum.Countertop)
        .With(Datum.CabinetUnderside, Distance.FromInches(54), Datum.FinishedFloor);

    [Fact]
    public void Default_KnowsSubfloorAndPlateOnly()
    {
        foreach (Datum datum in HeightGen.Datums)
        {
            bool known = Levels.Default.TryGet(datum, out DistanceRange height);
            Assert.Equal(datum is Datum.Subfloor or Datum.BottomPlate, known);
            Assert.Equal(datum == Datum.BottomPlate ? Distance.FromInches(1, 1, 2) : Distance.Zero, height.To);
        }
    }

    [Fact]
    public void TryOffset_BothOnAFloorNotChosen_IsExact()
    {
        Levels levels = Kitchen.With(FloorBuildup.NotChosen);
        Assert.True(levels.TryOffset(Datum.FinishedFloor, Datum.Countertop, out DistanceRange up, out Datum? because));
        Assert.Equal((DistanceRange)Distance.FromInches(36), up);
        Assert.Null(because);
        Assert.True(levels.TryOffset(Datum.SplashTop, Datum.CabinetUnderside, out DistanceRange between));
        Assert.Equal((DistanceRange)Distance.FromInches(14), between);
    }

    [Fact]
    public void TryOffset_OverAFloorNotChosen_IsARangeBecauseOfTheFloor()
    {
        Levels levels = Kitchen.With(FloorBuildup.NotChosen);
        Assert.True(levels.TryOffset(Datum.Subfloor, Datum.SplashTop, out DistanceRange up, out Datum? because));
        Assert.Equal(new DistanceRange(Distance.FromInches(40), Distance.FromInches(41, 1, 4)), up);
        Assert.Equal(Datum.FinishedFloor, because);
        Assert.True(levels.TryOffset(Datum.SplashTop, Datum.BottomPlate, out DistanceRange down, out because));
        Assert.Equal(new DistanceRange(Distance.FromInches(-39.75m), Distance.FromInches(-38.5m)), down);
        Assert.Equal(Datum.FinishedFloor, because);
    }

    [Fact]
    public void TryOffset_FloorNotKnownAtAll_StillGivesWhatHangsOnIt()
    {
        Assert.True(Kitchen.TryOffset(Datum.FinishedFloor, Datum.SplashTop, out DistanceRange up));
        Assert.Equal((DistanceRange)Distance.FromInches(40), up);
        Assert.False(Kitchen.TryOffset(Datum.Subfloor, Datum.SplashTop, out _, out Datum? missing));
        Assert.Equal(Datum.FinishedFloor, missing);
        Assert.False(Kitchen.TryOffset(Datum.SplashTop, Datum.Subfloor, out _, out missing));
        Assert.Equal(Datum.FinishedFloor, missing);
        Assert.False(Kitchen.TryGet(Datum.Countertop, out _, out missing));
        Assert.Equal(Datum.FinishedFloor, missing);
        Assert.False(Kitchen.TryOffset(Datum.Rim, Datum.Grade, out _));
    }

    [Fact]
    public void TryOffset_SeveralRanges_NamesTheFirstFromTheTargetDown()
    {
        Levels levels = Kitchen.With(FloorBuildup.NotChosen).With(Datum.Grade, Floor, Datum.Subfloor).With(Datum.SplashTop, Floor, Datum.Countertop);
        Assert.True(levels.TryOffset(Datum.Grade, Datum.SplashTop, out DistanceRange up, out Datum? because));
        Assert.Equal(Datum.SplashTop, because);
        Assert.Equal(new DistanceRange(Distance.FromInches(34, 3, 4), Distance.FromInches(38, 1, 2)), up);
        Assert.True(levels.TryOffset(Datum.SplashTop, Datum.Grade, out _, out because));
        Assert.Equal(Datum.Grade, because);
        Assert.True(levels.TryOffset(Datum.Subfloor, Datum.Countertop, out _, out because));
        Assert.Equal(Datum.FinishedFloor, because);
    }

    [Fact]
    public void Offset_NotKnown_ThrowsNamingTheDatum()
    {
        Assert.Contains("finished floor", Assert.Throws<InvalidOperationException>(() => Kitchen.Offset(Datum.Subfloor, Datum.Countertop)).Message, StringComparison.Ordinal);
        Assert.Contains("grade", Assert.Throws<InvalidOperationException>(() => Kitchen.Offset(Datum.Subfloor, Datum.Grade)).Message, StringComparison.Ordinal);
        Assert.Equal((DistanceRange)Distance.FromInches(4), Kitchen.Offset(Datum.Countertop, Datum.SplashTop));
        Assert.Equal((DistanceRange)Distance.FromInches(-4), Kitchen.Offset(Datum.SplashTop, Datum.Countertop));
    }

    [Fact]
    public void WithSubfloorAt_SunkenRoom_LeavesTheStoreysLinesWhereTheyAre()
    {
        Levels levels = Levels.Default
            .With(Datum.LevelLine, Distance.FromInches(48), Datum.Subfloor)
            .With(Datum.Grade, new DistanceRange(Distance.FromInches(-24), Distance.FromInches(-8)), Datum.Subfloor)
            .WithSubfloorAt(new Elevation(Distance.FromInches(-6)))
            .With(Datum.WalkingSurface, Distance.FromInches(-7), Datum.Subfloor)
            .With(FloorBuildup.Of(new FloorLayer("tile", Distance.FromInches(1))));
        Assert.Equal((DistanceRange)Distance.FromInches(54), levels.Offset(Datum.Subfloor, Datum.LevelLine));
        Assert.Equal((DistanceRange)Distance.FromInches(53), levels.Offset(Datum.FinishedFloor, Datum.LevelLine));
        Assert.Equal(new DistanceRange(Distance.FromInches(-18), Distance.FromInches(-2)), levels.Offset(Datum.Subfloor, Datum.Grade));
        Assert.True(levels.TryGet(Datum.WalkingSurface, out DistanceRange porch));
        Assert.Equal((DistanceRange)Distance.FromInches(-7), porch);
        Assert.True(levels.TryGet(Datum.BottomPlate, out DistanceRange plate));
        Assert.Equal((DistanceRange)Distance.FromInches(-4.5m), plate);
        Assert.Equal(new Elevation(Distance.FromInches(10)), BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor).Resolve(levels));
    }

    [Fact]
    public void With_DatumOnItself_Throws()
    {
        Assert.Throws<ArgumentException>(() => Levels.Default.With(Datum.Rim, Floor, Datum.Rim));
        string message = Assert.Throws<ArgumentException>(() => Kitchen.With(Datum.FinishedFloor, Floor, Datum.SplashTop)).Message;
        Assert.Contains("splash top", message, StringComparison.Ordinal);
        Assert.Contains("finished floor", message, StringComparison.Ordinal);
        Assert.Equal("datum", Assert.Throws<ArgumentException>(() => Kitchen.With(Datum.Subfloor, Floor, Datum.Grade)).ParamName);
        Assert.Throws<ArgumentOutOfRangeException>(() => Kitchen.With((Datum)15, Floor, Datum.Subfloor));
        Assert.Throws<ArgumentOutOfRangeException>(() => Kitchen.With(Datum.Rim, Floor, (Datum)(-1)));
        Assert.Throws<ArgumentNullException>(() => Kitchen.With(null!));
    }

    [Fact]
    public void With_PlacedBefore_ReplacesItHereOnly()
    {
        Levels changed = Kitchen.With(Datum.Countertop, Distance.FromInches(34), Datum.Subfloor);
        Assert.Equal((DistanceRange)Distance.FromInches(34), changed.Offset(Datum.Subfloor, Datum.Countertop));
        Assert.False(Kitchen.TryGet(Datum.Countertop, out _));
    }

    [Fact]
    public void Equality_SamePlaces_IsEqual()
    {
        Levels again = Kitchen.With(Datum.Countertop, Floor, Datum.Subfloor).With(Datum.Countertop, Distance.FromInches(36), Datum.FinishedFloor);
        Assert.Equal(Kitchen, again);
        Assert.Equal(Kitchen.GetHashCode(), again.GetHashCode());
        Assert.NotEqual(Kitchen, Kitchen.With(FloorBuildup.NotChosen));
        Assert.NotEqual(Kitchen, Kitchen.With(Datum.Countertop, Distance.FromInches(36), Datum.Subfloor));
        Assert.False(Kitchen.Equals(null));
    }

    // The second road: settle every range at one end or the other, add up plain numbers, and take the least and the most.
    [Fact]
    public void TryOffset_AnyTree_SpansExactlyWhatTheEndsGive()
    {
        Prop.ForAll(Arb.From(HeightGen.Placements(HeightGen.Ranges)), Arb.From(Gen.Elements(HeightGen.Datums)), Arb.From(Gen.Elements(HeightGen.Datums)), (placements, from, to) =>
        {
            Levels levels = Levels.Default;
            Dictionary<Datum, (DistanceRange Offset, Datum? Above)> last = new()
            {
                [Datum.Subfloor] = (Distance.Zero, null),
                [Datum.BottomPlate] = (Distance.FromInches(1, 1, 2), Datum.Subfloor),
            };
            foreach ((Datum datum, DistanceRange offset, Datum above) in placements)
            {
                levels = levels.With(datum, offset, above);
                last[datum] = (offset, above);
            }

            List<Datum> loose = last.Where(pair => !pair.Value.Offset.IsExact).Select(pair => pair.Key).ToList();
            if (loose.Count > 10)
            {
                return true;
            }

            // A datum without a place floats: set it at two heights far apart, and what depends on it shows.
            long least = long.MaxValue;
            long most = long.MinValue;
            bool floats = false;
            for (int ends = 0; ends < 1 << loose.Count; ends++)
            {
                long settled = Height(to, ends, 0) - Height(from, ends, 0);
                floats |= settled != Height(to, ends, 1) - Height(from, ends, 1);
                least = Math.Min(least, settled);
                most = Math.Max(most, settled);
            }

            bool known = levels.TryOffset(from, to, out DistanceRange found, out Datum? because);
            return known == !floats
                && (!known || (found.From.Ticks == least && found.To.Ticks == most && (because is null) == found.IsExact));

            // Each floating datum moves by its own power of three, so that two of them never move alike.
            long Height(Datum datum, int ends, int world)
            {
                if (!last.TryGetValue(datum, out (DistanceRange Offset, Datum? Above) place))
                {
                    return world * (long)Math.Pow(3, (int)datum);
                }

                int index = loose.IndexOf(datum);
                Distance offset = index >= 0 && (ends & (1 << index)) != 0 ? place.Offset.To : place.Offset.From;
                return offset.Ticks + (place.Above is { } above ? Height(above, ends, world) : 0);
            }
        }).Check(Tries.Always(100));
    }
}
