using Xunit;

namespace BoxHeights.Tests.Framing;

/// <summary>Where a pocket door slides into the wall. A frame for a door of 80 in is 84-1/2 in high, and twice its leaf and 1 in wide: common practice, from memory.</summary>
public sealed class DoorPocketTests
{
    private static readonly Opening Door = new Opening("d", OpeningKind.PocketDoor, In("60"), In("91")).WithLeaf(In("30")).WithPocketOn(WallEnd.Right);

    // Frame of 61 in from the strike side at 60 in: the doorway is as described, the rest of it is pocket.
    [Fact]
    public void TryOf_ADoorway_IsTheRestOfItsFrame()
    {
        Assert.True(DoorPocket.TryOf(Door, UsualMeasures.Generic, out DoorPocket pocket));
        Assert.Equal((In("91"), In("121"), Level.Parse("84-1/2 in above subfloor")), (pocket.Left, pocket.Right, pocket.Top));

        // However wide the doorway, the leaf has to have room.
        Assert.True(DoorPocket.TryOf(Door.WithRight(In("92")), UsualMeasures.Generic, out pocket));
        Assert.Equal((In("92"), In("122")), (pocket.Left, pocket.Right));
        Level head = Level.Parse("98-1/2 in above finished floor");
        Assert.True(DoorPocket.TryOf(Door.WithHead(head), UsualMeasures.Generic, out pocket));
        Assert.Equal(head, pocket.Top);
    }

    // Taken for a leaf of 31 in, the frame is 63 in wide.
    [Fact]
    public void TryOf_ADoorwayWithoutALeaf_TakesItForTheLeaf()
    {
        Assert.True(DoorPocket.TryOf(Door.WithLeaf(null), UsualMeasures.Generic, out DoorPocket pocket));
        Assert.Equal((In("91"), In("123")), (pocket.Left, pocket.Right));
    }

    [Fact]
    public void TryOf_WhatHasNoPocketOrDoesntSayWhere_IsNone()
    {
        Assert.False(DoorPocket.TryOf(Door.WithKind(OpeningKind.BarnDoor), UsualMeasures.Generic, out _));
        Assert.False(DoorPocket.TryOf(Door.WithPocketOn(null), UsualMeasures.Generic, out _));
        Assert.False(DoorPocket.TryOf(Door.WithRight(Door.Left), UsualMeasures.Generic, out _));
        Assert.True(DoorPocket.TryOf(Door.WithRight(Door.Left + Distance.FromTicks(1)), UsualMeasures.Generic, out _));
    }
}
