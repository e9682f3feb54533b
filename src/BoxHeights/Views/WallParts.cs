using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Puts what is resolved of a wall into its coordinates.</summary>
internal sealed class WallParts
{
    private readonly ResolvedSurface surface;
    private readonly Wall wall;

    public WallParts(ResolvedSurface surface)
    {
        this.surface = surface;
        wall = surface.Wall!;
        Subfloor = LevelOf(Datum.Subfloor) is { } subfloor ? subfloor.From : Distance.Zero;
        Top = WallProfile.Of(surface, Subfloor);
    }

    public Distance Subfloor { get; }

    public Items<ProfilePoint> Top { get; }

    public DistanceRange? LevelOf(Datum datum) => surface.Space.Levels.TryGet(datum, out DistanceRange up) ? up : null;

    public Items<StudView> Studs()
    {
        if (surface.Framing is not { } framing)
        {
            return default;
        }

        DistanceRange? plate = LevelOf(Datum.BottomPlate);
        return framing.Members.Select(member => new StudView(
            member,
            member.Bottom is { } bottom ? Up(bottom, member.Left, member.Right) : plate,
            member.Top is { } top ? Up(top, member.Left, member.Right) : WallProfile.LowestOver(Top, member.Left, member.Right),
            framing.IsAssumed(member)));
    }

    public BoardView? Boards() => surface.Build!.BoardLayout is { } layout
        ? new(layout, SeamsOf(surface.Boards), surface.Build.AreBoardsInherited, false)
        : null;

    public Items<BoardView> CommonBoards() => surface.Space.BoardWall is { } high
        ? HungBoards.Common(high).Select(common => new BoardView(common.Layout, SeamsOf(common), false, true))
        : default;

    public Items<OpeningView> Openings() => wall.Openings.Select(opening =>
    {
        TrimmedOpening trim = TrimmedOpening.Of(opening);
        DistanceRange? floor = Subfloor;
        WallArea rough = new(opening.Left, opening.Right, Edge(opening.Sill, opening.Left, opening.Right, floor), Edge(opening.Head, opening.Left, opening.Right, null));
        WallArea casing = new(trim.Left, trim.Right, Edge(trim.Bottom, opening.Left, opening.Right, floor), Edge(trim.Top, opening.Left, opening.Right, null));
        return new OpeningView(opening, At(opening.Id), rough, trim, casing);
    });

    public Items<CounterView> Counters() => wall.Counters.Select(counter => new CounterView(
        counter,
        At(counter.Id),
        new(counter.Left, counter.Right, null, counter.Top is null && counter.BaseStandsOn is null ? null : Up(ResolvedSurface.UsualTopOf(counter), counter.Left, counter.Right)),
        counter.Top is null && counter.BaseStandsOn is not null));

    public Items<FinishView> Finishes() => wall.Finishes.Select(finish =>
        new FinishView(finish, At(finish.Id), Between(finish.Left, finish.Right, finish.Bottom, finish.Top)));

    public Items<CoveringView> Coverings() => wall.Coverings.Select(covering =>
        new CoveringView(covering, At(covering.Id), Between(covering.Left, covering.Right, covering.Bottom, covering.Top)));

    public Items<NoCavityView> WithoutCavity() => wall.NoCavity.Select(part =>
        new NoCavityView(part, surface.Address, Between(part.Left, part.Right, part.Bottom, part.Top)));

    public Items<FixtureView> Fixtures() => surface.Fixtures.Select(fixture =>
    {
        DistanceRange somewhere = new(Distance.Zero, wall.Length);
        (Distance left, Distance right) = (fixture.Left ?? Distance.Zero, fixture.Right ?? wall.Length);
        DistanceRange? top = (fixture.Top ?? fixture.Rim) is { } level ? Up(level, left, right) : null;
        return new FixtureView(
            fixture,
            SurfaceAddress.Of(surface.Space.Id, fixture.Id),
            new(fixture.Left ?? somewhere, fixture.Right ?? somewhere, LevelOf(Datum.FinishedFloor), top));
    });

    public Items<PlatformView> Platforms() => surface.Platforms.Select(platform => new PlatformView(
        platform,
        SurfaceAddress.Of(surface.Space.Id, platform.Id),
        new(platform.Left, platform.Right, null, platform.Surface is { } level ? Up(level, platform.Left, platform.Right) : null)));

    public StairView? Stair()
    {
        if (surface.Stair is not { } stair)
        {
            return null;
        }

        List<StairTread> treads = [];
        for (int tread = 1; tread <= stair.Flight.Risers; tread++)
        {
            if (stair.TryTread(tread, out ExactDistance along, out DistanceRange up))
            {
                treads.Add(new(tread, along, up + Subfloor));
            }
        }

        return treads.Count == 0 ? null : new(stair.Flight, new(treads));
    }

    private string At(string id) => SurfaceAddress.Of(surface.Address, id);

    private DistanceRange? Up(Level level, Distance left, Distance right) => surface.UpOf(level, left, right);

    private DistanceRange? Edge(Level? level, Distance left, Distance right, DistanceRange? unlessStated) => level is { } stated ? Up(stated, left, right) : unlessStated;

    /// <summary>From the floor to the ceiling, unless stated.</summary>
    private WallArea Between(Distance left, Distance right, Level? bottom, Level? top) =>
        new(left, right, Edge(bottom, left, right, Subfloor), Edge(top, left, right, LevelOf(Datum.FinishedCeiling)));

    private Items<DistanceRange> SeamsOf(HungBoards? boards) => boards is null ? default : boards.Seams.Select(seam => seam + Subfloor);
}
