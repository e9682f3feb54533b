using BoxHeights.Tests.Cases;
using Xunit;

namespace BoxHeights.Tests.Framing;

public sealed class WallBuildTests
{
    private static readonly StudLayout Usual = new StudLayout().WithSpacing(CaseFile.Inches("16"));

    private static readonly Storey Ground = new Storey("ground").WithStuds(Usual).WithBoards(new BoardLayout().WithWidths(new[] { CaseFile.Inches("48"), CaseFile.Inches("48") }))
        .WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("97-1/8")).WithBoard(CaseFile.Inches("5/8")));

    private static readonly Room Kitchen = new("kitchen", RoomKind.Kitchen, "ground");

    [Fact]
    public void Of_AWallThatSaysNothing_TakesItsStoreys()
    {
        WallBuild build = Of(Wall, Kitchen, Ground);
        Assert.Same(Usual, build.StudLayout);
        Assert.True(build.AreStudsInherited && build.AreBoardsInherited);
        Assert.Equal(CaseFile.Inches("48-1/2"), build.Boards!.Seams[0].From);
        Assert.Equal(10, build.Framing!.Members.Count);
    }

    [Fact]
    public void Of_AWallThatSaysItsOwn_TakesThat()
    {
        StudLayout own = Usual.WithSpacing(CaseFile.Inches("24"));
        BoardLayout upright = new BoardLayout().WithHung(BoardDirection.Vertical);
        WallBuild build = Of(Wall.WithStuds(own).WithBoards(upright), Kitchen, Ground);
        Assert.Same(own, build.StudLayout);
        Assert.Same(upright, build.BoardLayout);
        Assert.False(build.AreStudsInherited || build.AreBoardsInherited);
    }

    // Board that is counted from a ceiling nobody has told has no seams yet; the room's own ceiling goes before the storey's.
    [Fact]
    public void Of_ARoomWithItsOwnCeiling_CountsSeamsFromThat()
    {
        Room own = Kitchen.WithCeiling(new Ceiling().WithFraming(CaseFile.Inches("98-1/8")).WithBoard(CaseFile.Inches("5/8")));
        Assert.Equal(CaseFile.Inches("49-1/2"), Of(Wall, own, Ground).Boards!.Seams[0].From);
        Assert.Null(Of(Wall, Kitchen, Ground.WithCeiling(null)).Boards);
        Assert.Same(own.Ceiling, WallBuild.CeilingOver(own, Ground));
        Assert.Same(Ground.Ceiling, WallBuild.CeilingOver(Kitchen, Ground));
        Assert.Null(WallBuild.CeilingOver(Kitchen, null));
    }

    // A storey's studs are pulled from an end as one sees it from inside.
    [Fact]
    public void Build_OfAnOutsideWallThatSaysNothing_HasNone()
    {
        WallBuild build = new(Wall, null, null, UsualMeasures.Generic);
        Assert.Null(build.StudLayout);
        Assert.Null(build.Boards);
        Assert.False(build.AreStudsInherited);
    }

    [Fact]
    public void Of_MoreStudsThanCanBeCounted_HasNone()
    {
        WallBuild build = Of(Wall.WithStuds(Usual.WithSpacing(Distance.FromTicks(1))), Kitchen, Ground);
        Assert.True(build.HasTooManyStuds);
        Assert.Null(build.Studs);
        Assert.Null(build.Framing);
    }

    private static WallBuild Of(Wall wall, Room room, Storey storey) =>
        new(wall, storey, WallBuild.CeilingOver(room, storey) is { } ceiling && HungBoards.TryBoardWall(ceiling, out DistanceRange boardWall) ? boardWall : null, UsualMeasures.Generic);

    private static Wall Wall => new("north", CaseFile.Inches("144"));
}
