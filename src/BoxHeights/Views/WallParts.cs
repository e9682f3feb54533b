using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>Puts what is resolved of a wall into its coordinates. What has a measure larger than anything in a house is left out and named, and the rest goes on.</summary>
internal sealed class WallParts
{
    private readonly ResolvedSurface surface;
    private readonly Wall wall;
    private readonly List<string> leftOut = [];

    public WallParts(ResolvedSurface surface)
    {
        this.surface = surface;
        wall = surface.Wall!;
        Subfloor = LevelOf(Datum.Subfloor) is { } subfloor ? subfloor.From : Distance.Zero;
        Top = Known("its top", () => WallProfile.Of(surface, Subfloor));
        if (!InAHouse.Holds(wall.Length))
        {
            leftOut.Add("its length");
        }
    }

    /// <summary>What isn't put in coordinates, by name.</summary>
    public Items<string> LeftOut => new(leftOut);

    public Distance Subfloor { get; }

    public Items<ProfilePoint> Top { get; }

    public DistanceRange? CeilingFraming => surface.Space.Framing is { } framing ? Known<DistanceRange?>("the ceiling framing", () => framing + Subfloor) : null;

    public DistanceRange? LevelOf(Datum datum) =>
        surface.Space.Levels.TryGet(datum, out DistanceRange up) ? Known<DistanceRange?>("the " + DatumText.Print(datum, below: false), () => up) : null;

    public Items<StudView> Studs() => Known("its studs", () =>
    {
        DistanceRange? plate = LevelOf(Datum.BottomPlate);
        return surface.Framing is not { } framing ? default : framing.Members.Select(member => new StudView(
            member,
            plate,
            member.Top is { } top ? Up(top, member.Left, member.Right) : WallProfile.LowestOver(Top, member.Left, member.Right),
            framing.IsAssumed(member)));
    });

    public BoardView? Boards() => surface.Build!.BoardLayout is { } layout
        ? new(layout, SeamsOf(surface.Boards), surface.Build.AreBoardsInherited, false)
        : null;

    public Items<BoardView> CommonBoards() => surface.CommonBoards.Select(common => new BoardView(common.Layout, SeamsOf(common), false, true));

    public Items<OpeningView> Openings() => Each(wall.Openings, opening => opening.Kind.Name + " " + opening.Id, opening =>
    {
        TrimmedOpening trim = TrimmedOpening.Of(opening, surface.Usual);
        DistanceRange? floor = Subfloor;
        WallArea rough = new(opening.Left, opening.Right, Edge(opening.Sill, opening.Left, opening.Right, floor), Edge(opening.Head, opening.Left, opening.Right, null));
        WallArea casing = new(trim.Left, trim.Right, Edge(trim.Bottom, opening.Left, opening.Right, floor), Edge(trim.Top, opening.Left, opening.Right, null));
        return new OpeningView(opening, At(opening.Id), rough, trim, casing);
    });

    public Items<WallPart<Counter>> Counters() => Each(wall.Counters, counter => "counter " + counter.Id, counter => new WallPart<Counter>(
        counter,
        counter.Id,
        At(counter.Id),
        counter.Kind.Name,
        new(counter.Left, counter.Right, null, counter.Top is null && counter.BaseStandsOn is null ? null : Up(surface.UsualTopOf(counter), counter.Left, counter.Right)),
        counter.Top is null && counter.BaseStandsOn is not null));

    public Items<WallPart<Finish>> Finishes() => Each(wall.Finishes, finish => "finish " + finish.Id, finish =>
        new WallPart<Finish>(finish, finish.Id, At(finish.Id), finish.Kind.Name, Between(finish.Left, finish.Right, finish.Bottom, finish.Top)));

    public Items<WallPart<Covering>> Coverings() => Each(wall.Coverings, covering => covering.Kind.Name + " " + covering.Id, covering =>
        new WallPart<Covering>(covering, covering.Id, At(covering.Id), covering.Kind.Name, Between(covering.Left, covering.Right, covering.Bottom, covering.Top)));

    public Items<WallPart<NoCavity>> WithoutCavity() => Each(wall.NoCavity, part => part.Kind.Name, part =>
        new WallPart<NoCavity>(part, null, surface.Address, part.Kind.Name, Between(part.Left, part.Right, part.Bottom, part.Top)));

    public Items<WallPart<Fixture>> Fixtures() => Each(surface.Fixtures, fixture => fixture.Kind.Name + " " + fixture.Id, fixture =>
    {
        DistanceRange somewhere = new(Distance.Zero, wall.Length);
        (Distance left, Distance right) = (fixture.Left ?? Distance.Zero, fixture.Right ?? wall.Length);
        DistanceRange? top = (fixture.Top ?? fixture.Rim) is { } level ? Up(level, left, right) : null;
        return new WallPart<Fixture>(
            fixture,
            fixture.Id,
            SurfaceAddress.Of(surface.Space.Id, fixture.Id),
            fixture.Kind.Name,
            new(fixture.Left ?? somewhere, fixture.Right ?? somewhere, LevelOf(Datum.FinishedFloor), top));
    });

    public Items<WallPart<Platform>> Platforms() => Each(surface.Platforms, platform => platform.Kind.Name + " " + platform.Id, platform => new WallPart<Platform>(
        platform,
        platform.Id,
        SurfaceAddress.Of(surface.Space.Id, platform.Id),
        platform.Kind.Name,
        new(platform.Left, platform.Right, null, platform.Surface is { } level ? Up(level, platform.Left, platform.Right) : null)));

    public Items<DoorCover> DoorCovers() => surface.DoorCovers.Where(cover => InAHouse.Holds(cover.Left) && InAHouse.Holds(cover.Right));

    public StairView? Stair() => surface.Stair is { } stair ? Known("its stair", () => Treads(stair)) : null;

    private StairView? Treads(ResolvedStair stair)
    {
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

    private Items<DistanceRange> SeamsOf(HungBoards? boards) => boards is null ? default : Known("its board seams", () => boards.Seams.Select(seam => seam + Subfloor));

    private Items<TView> Each<T, TView>(Items<T> parts, Func<T, string> name, Func<T, TView> view)
        where TView : WallPart
    {
        List<TView> known = [];
        foreach (T part in parts)
        {
            if (Known(name(part), () => view(part)) is { } one)
            {
                known.Add(one);
            }
        }

        return new(known);
    }

    /// <summary>What is worked out, if all of it is in a house; else nothing, and its name among what is left out.</summary>
    private T? Known<T>(string name, Func<T> work)
    {
        try
        {
            T found = work();
            if (InAHouse.Holds(found))
            {
                return found;
            }
        }
        catch (OverflowException)
        {
            // Told below.
        }

        if (!leftOut.Contains(name))
        {
            leftOut.Add(name);
        }

        return default;
    }
}
