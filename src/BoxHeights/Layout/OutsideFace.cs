namespace BoxHeights;

/// <summary>A face of the building, seen from outside.</summary>
public sealed record OutsideFace
{
    /// <summary>Describes an outside face by what it must have.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    /// <exception cref="System.ArgumentException">A value is meaningless on its own: an empty id, a negative size.</exception>
    public OutsideFace(string id)
    {
        Id = id;
    }

    /// <summary>The name it is addressed by; not empty, without "/".</summary>
    public string Id { get; init => field = Valid.Id(value, nameof(Id)); }

    /// <summary>The id of the storey whose subfloor its heights are taken from; the lowest unless stated.</summary>
    public string? Storey { get; init; }

    /// <summary>Whether it is no part of this work: nothing is asked of it, and its boxes are there to be reckoned with only.</summary>
    public bool Untouched { get; init; }

    /// <summary>Its wall faces, left to right.</summary>
    public Items<Wall> Walls { get; init; }

    /// <summary>Decks, porches and balconies before it.</summary>
    public Items<Platform> Platforms { get; init; }

    /// <summary>Equipment that stands before it: the outdoor unit of an air conditioner or a heat pump.</summary>
    public Items<Fixture> Fixtures { get; init; }

    /// <summary>The same with another <see cref="Id"/>.</summary>
    /// <param name="id">The name it is addressed by; not empty, without "/".</param>
    public OutsideFace WithId(string id) => this with { Id = id };

    /// <summary>The same with another <see cref="Storey"/>.</summary>
    /// <param name="storey">The id of the storey whose subfloor its heights are taken from; the lowest unless stated.</param>
    public OutsideFace WithStorey(string? storey) => this with { Storey = storey };

    /// <summary>The same with another <see cref="Untouched"/>.</summary>
    /// <param name="untouched">Whether it is no part of this work: nothing is asked of it, and its boxes are there to be reckoned with only.</param>
    public OutsideFace WithUntouched(bool untouched) => this with { Untouched = untouched };

    /// <summary>The same with another <see cref="Walls"/>.</summary>
    /// <param name="walls">Its wall faces, left to right.</param>
    public OutsideFace WithWalls(Items<Wall> walls) => this with { Walls = walls };

    /// <summary>The same with another <see cref="Platforms"/>.</summary>
    /// <param name="platforms">Decks, porches and balconies before it.</param>
    public OutsideFace WithPlatforms(Items<Platform> platforms) => this with { Platforms = platforms };

    /// <summary>The same with another <see cref="Fixtures"/>.</summary>
    /// <param name="fixtures">Equipment that stands before it: the outdoor unit of an air conditioner or a heat pump.</param>
    public OutsideFace WithFixtures(Items<Fixture> fixtures) => this with { Fixtures = fixtures };
}
