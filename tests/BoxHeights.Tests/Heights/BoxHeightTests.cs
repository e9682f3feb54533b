using System;
using FsCheck;
using FsCheck.Fluent;
using Xunit;

namespace BoxHeights.Tests.Heights;

public class BoxHeightTests
{
    private static readonly BoxSize Tall358 = Box("3-5/8 in");

    // Worked by hand for a box 3-5/8 in tall: asked for, and where bottom, center and top then lie above the subfloor.
    [Theory]
    [InlineData("48 in to top above finished floor", "3/4 in", "45-1/8 in", "46-15/16 in", "48-3/4 in")]
    [InlineData("48 in to top above subfloor", "3/4 in", "44-3/8 in", "46-3/16 in", "48 in")]
    [InlineData("48 in to bottom above finished floor", "1/2 in", "48-1/2 in", "50-5/16 in", "52-1/8 in")]
    [InlineData("16 in to center above subfloor", "0 in", "14-3/16 in", "16 in", "17-13/16 in")]
    [InlineData("13 in to bottom above subfloor", "0 in", "13 in", "14-13/16 in", "16-5/8 in")]
    [InlineData("60 in to center above finished floor", "3/4 in", "58-15/16 in", "60-3/4 in", "62-9/16 in")]
    public void AtEdge_AndFrom_WorkedExample_GiveTheseHeights(string asked, string floor, string bottom, string center, string top)
    {
        FloorBuildup buildup = FloorBuildup.Of(new FloorLayer("floor", Distance.Parse(floor)));
        BoxHeight height = BoxHeight.Parse(asked).From(Datum.Subfloor, buildup);
        Assert.Equal(BoxHeight.ToBottom(Distance.Parse(bottom), Datum.Subfloor), height.AtEdge(Edge.Bottom, Tall358));
        Assert.Equal(BoxHeight.ToCenter(Distance.Parse(center), Datum.Subfloor), height.AtEdge(Edge.Center, Tall358));
        Assert.Equal(BoxHeight.ToTop(Distance.Parse(top), Datum.Subfloor), height.AtEdge(Edge.Top, Tall358));
        Assert.Equal(new Elevation(Distance.Parse(top)), height.AtEdge(Edge.Top, Tall358).Resolve(Levels.Default));
    }

    // "46 to the center is 48 to the top" is said on site; it holds for a box 4 in tall and for no other.
    [Theory]
    [InlineData("3-5/8 in", "47-13/16 in")]
    [InlineData("3-3/4 in", "47-7/8 in")]
    [InlineData("4 in", "48 in")]
    public void AtEdge_CenterAt46_TopDependsOnTheBox(string boxHeight, string top) =>
        Assert.Equal(
            BoxHeight.ToTop(Distance.Parse(top), Datum.Subfloor),
            BoxHeight.ToCenter(Distance.FromInches(46), Datum.Subfloor).AtEdge(Edge.Top, Box(boxHeight)));

    [Fact]
    public void AtEdge_ThereAndBack_IsTheSameHeight() =>
        Prop.ForAll(Arb.From(HeightGen.HeightsWithEdge), Arb.From(HeightGen.Boxes), Arb.From(Gen.Elements(HeightGen.Edges)), (height, box, edge) =>
            height.AtEdge(edge, box).AtEdge(height.Edge!.Value, box) == height).Check(Tries.Always(100));

    [Fact]
    public void AtEdge_BottomAndTop_LieTheWholeBoxApart() =>
        Prop.ForAll(Arb.From(HeightGen.HeightsWithEdge), Arb.From(HeightGen.Boxes), (height, box) =>
            height.AtEdge(Edge.Top, box).Value - height.AtEdge(Edge.Bottom, box).Value == box.Height).Check(Tries.Always(100));

    [Fact]
    public void AtEdge_RangingBox_UsesTheNominalHeight()
    {
        BoxSize ranging = Tall358.Ranging(Tall358.Width, new DistanceRange(Distance.FromInches(3), Distance.FromInches(4)));
        BoxHeight top = BoxHeight.ToTop(Distance.FromInches(48), Datum.Subfloor);
        Assert.Equal(top.AtEdge(Edge.Bottom, Tall358), top.AtEdge(Edge.Bottom, ranging));
    }

    [Fact]
    public void AtEdge_SizeNotStated_ThrowsOnlyWhereItIsNeeded()
    {
        BoxHeight top = BoxHeight.ToTop(Distance.FromInches(48), Datum.Subfloor);
        Assert.Equal(top, top.AtEdge(Edge.Top, default(BoxSize)));
        Assert.Equal("box", Assert.Throws<ArgumentException>(() => top.AtEdge(Edge.Center, default(BoxSize))).ParamName);
        Assert.Equal("plate", Assert.Throws<ArgumentException>(() => top.AtEdge(Edge.Center, default(PlateSize))).ParamName);
    }

    [Fact]
    public void AtEdge_EdgeUnstated_ThrowsUntilItIsReadAsOne()
    {
        BoxHeight drawn = BoxHeight.EdgeUnstated(Distance.FromInches(48), Datum.FinishedFloor);
        Assert.Null(drawn.Edge);
        Assert.Throws<InvalidOperationException>(() => drawn.AtEdge(Edge.Center, Tall358));
        Assert.Throws<InvalidOperationException>(() => drawn.AtEdge(Edge.Center, new PlateSize(Tall358.Width, Tall358.Height)));
        Assert.Throws<InvalidOperationException>(() => drawn.Resolve(Levels.Default.With(FloorBuildup.Of())));
        Assert.False(drawn.TryResolve(Levels.Default.With(FloorBuildup.Of()), out _));
        Assert.Equal(BoxHeight.ToBottom(Distance.FromInches(48), Datum.FinishedFloor), drawn.ReadAs(Edge.Bottom));
        Assert.Equal(drawn.ReadAs(Edge.Top), drawn.ReadAs(Edge.Top).ReadAs(Edge.Bottom));
    }

    [Fact]
    public void From_EdgeUnstated_KeepsItUnstated()
    {
        FloorBuildup floor = FloorBuildup.Of(new FloorLayer("oak", Distance.FromInches(0, 3, 4)));
        Assert.Equal(
            BoxHeight.EdgeUnstated(Distance.FromInches(48, 3, 4), Datum.Subfloor),
            BoxHeight.EdgeUnstated(Distance.FromInches(48), Datum.FinishedFloor).From(Datum.Subfloor, floor));
    }

    [Fact]
    public void From_ThereAndBack_IsTheSameHeight() =>
        Prop.ForAll(Arb.From(HeightGen.Heights), Arb.From(HeightGen.ExactLevels), Arb.From(Gen.Elements(HeightGen.Datums)), (height, levels, datum) =>
            height.From(datum, levels).From(height.Datum, levels) == height).Check(Tries.Always(100));

    [Fact]
    public void From_AnyDatum_ResolvesToTheSameElevation() =>
        Prop.ForAll(Arb.From(HeightGen.HeightsWithEdge), Arb.From(HeightGen.ExactLevels), Arb.From(Gen.Elements(HeightGen.Datums)), (height, levels, datum) =>
            height.From(datum, levels).Resolve(levels) == height.Resolve(levels)).Check(Tries.Always(100));

    [Fact]
    public void From_BottomPlate_IsTheThicknessOfTheStockLess()
    {
        BoxHeight top = BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor);
        Assert.Equal(BoxHeight.ToTop(Distance.FromInches(14, 1, 2), Datum.BottomPlate), top.From(Datum.BottomPlate, FloorBuildup.NotChosen));
    }

    [Fact]
    public void From_FloorNotChosen_ThrowsNamingFloorAndRange()
    {
        BoxHeight height = BoxHeight.ToTop(Distance.FromInches(48), Datum.FinishedFloor);
        string message = Assert.Throws<InvalidOperationException>(() => height.From(Datum.Subfloor, FloorBuildup.NotChosen)).Message;
        Assert.Contains("finished floor", message, StringComparison.Ordinal);
        Assert.Contains("0 in to 1-1/4 in", message, StringComparison.Ordinal);
        Levels levels = Levels.Default.With(FloorBuildup.NotChosen);
        Assert.Equal(message, Assert.Throws<InvalidOperationException>(() => height.Resolve(levels)).Message);
        Assert.True(height.TryResolve(levels, out DistanceRange range));
        Assert.Equal(new DistanceRange(Distance.FromInches(48), Distance.FromInches(49, 1, 4)), range);
    }

    [Fact]
    public void Resolve_DatumNotKnown_ThrowsNamingIt()
    {
        BoxHeight height = BoxHeight.ToCenter(Distance.FromInches(8), Datum.Countertop);
        Levels levels = Levels.Default.With(Datum.Countertop, Distance.FromInches(36), Datum.FinishedFloor);
        Assert.Contains("finished floor", Assert.Throws<InvalidOperationException>(() => height.Resolve(levels)).Message, StringComparison.Ordinal);
        Assert.Contains("countertop", Assert.Throws<InvalidOperationException>(() => height.Resolve(Levels.Default)).Message, StringComparison.Ordinal);
        Assert.False(height.TryResolve(levels, out _));
        Assert.Equal(BoxHeight.ToCenter(Distance.FromInches(44), Datum.FinishedFloor), height.From(Datum.FinishedFloor, levels));
    }

    [Fact]
    public void AtEdge_Plate_GoesOnlyOverTheCenter()
    {
        PlateSize plate = new(Distance.FromInches(2, 3, 4), Distance.FromInches(4, 1, 2));
        BoxHeight center = BoxHeight.ToCenter(Distance.FromInches(44), Datum.Subfloor);
        BoxHeight plateTop = center.AtEdge(Edge.Top, plate);
        Assert.Equal(BoxHeight.ToTop(Distance.FromInches(46, 1, 4), Datum.Subfloor), plateTop);
        Assert.Equal(center, plateTop.AtEdge(Edge.Center, plate));
        Assert.Equal(BoxHeight.ToBottom(Distance.FromInches(41, 3, 4), Datum.Subfloor), center.AtEdge(Edge.Bottom, plate));
        Assert.Throws<InvalidOperationException>(() => plateTop.AtEdge(Edge.Bottom, plate));
        Assert.Throws<InvalidOperationException>(() => plateTop.AtEdge(Edge.Top, plate));
    }

    // A 4 in splash on a 36 in counter and 1/4 in clear: the plate's bottom at 40-1/4, so the 4-1/2 in plate's center at 42-1/2.
    [Fact]
    public void FromPlate_EdgeOfThePlate_GivesTheBoxesCenter()
    {
        PlateSize plate = new(Distance.FromInches(2, 3, 4), Distance.FromInches(4, 1, 2));
        Assert.Equal(
            BoxHeight.ToCenter(Distance.FromInches(42, 1, 2), Datum.FinishedFloor),
            BoxHeight.FromPlate(Edge.Bottom, Distance.FromInches(40, 1, 4), plate, Datum.FinishedFloor));
        Assert.Equal(
            BoxHeight.ToCenter(Distance.FromInches(38), Datum.FinishedFloor),
            BoxHeight.FromPlate(Edge.Top, Distance.FromInches(40, 1, 4), plate, Datum.FinishedFloor));
        Assert.Equal("plate", Assert.Throws<ArgumentException>(() => BoxHeight.FromPlate(Edge.Top, Distance.Zero, default, Datum.Subfloor)).ParamName);
    }

    [Fact]
    public void Default_IsZeroToBottomAboveSubfloor()
    {
        Assert.Equal(BoxHeight.ToBottom(Distance.Zero, Datum.Subfloor), default);
        Assert.Equal(Edge.Bottom, default(BoxHeight).Edge);
    }

    [Fact]
    public void Equality_OtherEdgeDatumOrValue_Differs()
    {
        BoxHeight height = BoxHeight.ToBottom(Distance.FromInches(16), Datum.Subfloor);
        Assert.True(height == BoxHeight.ToBottom(Distance.FromInches(16), Datum.Subfloor));
        Assert.Equal(height.GetHashCode(), BoxHeight.ToBottom(Distance.FromInches(16), Datum.Subfloor).GetHashCode());
        Assert.True(height != BoxHeight.ToTop(Distance.FromInches(16), Datum.Subfloor));
        Assert.True(height != BoxHeight.EdgeUnstated(Distance.FromInches(16), Datum.Subfloor));
        Assert.True(height != BoxHeight.ToBottom(Distance.FromInches(16), Datum.FinishedFloor));
        Assert.True(height != height.WithValue(Distance.FromInches(17)));
        Assert.Equal(Edge.Bottom, height.WithValue(Distance.FromInches(17)).Edge);
        Assert.False(height.Equals("16 in"));
        Assert.False(typeof(IComparable).IsAssignableFrom(typeof(BoxHeight)) || typeof(IComparable<BoxHeight>).IsAssignableFrom(typeof(BoxHeight)));
    }

    [Fact]
    public void Factories_NoSuchEdgeOrDatum_Throw()
    {
        Assert.Equal("edge", Assert.Throws<ArgumentOutOfRangeException>(() => BoxHeight.To((Edge)3, Distance.Zero, Datum.Subfloor)).ParamName);
        Assert.Equal("datum", Assert.Throws<ArgumentOutOfRangeException>(() => BoxHeight.ToTop(Distance.Zero, (Datum)15)).ParamName);
        Assert.Equal("datum", Assert.Throws<ArgumentOutOfRangeException>(() => new Level(Distance.Zero, (Datum)(-1))).ParamName);
        Assert.Throws<ArgumentNullException>(() => default(BoxHeight).From(Datum.Subfloor, (Levels)null!));
        Assert.Throws<ArgumentNullException>(() => default(BoxHeight).From(Datum.Subfloor, (FloorBuildup)null!));
        Assert.Throws<ArgumentNullException>(() => default(BoxHeight).Resolve(null!));
    }

    [Fact]
    public void AtEdge_BeyondTheLargestDistance_Overflows() =>
        Assert.Throws<OverflowException>(() => BoxHeight.ToBottom(Distance.MaxValue, Datum.Subfloor).AtEdge(Edge.Top, Tall358));

    private static BoxSize Box(string height) => new(Distance.FromInches(2, 1, 4), Distance.Parse(height));
}
