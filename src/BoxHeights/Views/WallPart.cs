namespace BoxHeights;

/// <summary>Something described on a wall, or before it, with its edges in the wall's coordinates.</summary>
public abstract class WallPart
{
    private protected WallPart(string? id, string address, string kind, in WallArea area, bool isAssumed)
    {
        Id = id;
        Address = address;
        Kind = kind;
        Area = area;
        IsAssumed = isAssumed;
    }

    /// <summary>Its id on its wall or in its room; null for what has none.</summary>
    public string? Id { get; }

    /// <summary>Its address, by which findings name it; its wall's where it has no id.</summary>
    public string Address { get; }

    /// <summary>What it is, by its kind's name.</summary>
    public string Kind { get; }

    /// <summary>Where it is.</summary>
    public WallArea Area { get; }

    /// <summary>Whether an edge of it isn't stated, and is where such an edge usually is.</summary>
    public bool IsAssumed { get; }

    /// <summary>What it is, its name and where.</summary>
    public override string ToString() => Kind + (Id is null ? "" : " \"" + Id + "\"") + ", " + Area;
}

/// <summary>A counter. Its top is its upper edge; what is under it isn't described, so that it has no lower one.</summary>
public sealed class CounterView : WallPart
{
    internal CounterView(Counter source, string address, in WallArea area, bool isAssumed)
        : base(source.Id, address, source.Kind.Name, area, isAssumed) => Source = source;

    /// <summary>The counter as it is described.</summary>
    public Counter Source { get; }
}

/// <summary>A finish on the wall: tile, a splash, wainscot.</summary>
public sealed class FinishView : WallPart
{
    internal FinishView(Finish source, string address, in WallArea area)
        : base(source.Id, address, source.Kind.Name, area, false) => Source = source;

    /// <summary>The finish as it is described.</summary>
    public Finish Source { get; }
}

/// <summary>Something that covers the wall: a cabinet, a mirror.</summary>
public sealed class CoveringView : WallPart
{
    internal CoveringView(Covering source, string address, in WallArea area)
        : base(source.Id, address, source.Kind.Name, area, false) => Source = source;

    /// <summary>The covering as it is described.</summary>
    public Covering Source { get; }
}

/// <summary>A fixture, an appliance or a piece of furniture that stands against the wall. An end along the wall that isn't stated may be anywhere on it.</summary>
public sealed class FixtureView : WallPart
{
    internal FixtureView(Fixture source, string address, in WallArea area)
        : base(source.Id, address, source.Kind.Name, area, false) => Source = source;

    /// <summary>The fixture as it is described.</summary>
    public Fixture Source { get; }
}

/// <summary>A part of the wall without a cavity for a box.</summary>
public sealed class NoCavityView : WallPart
{
    internal NoCavityView(NoCavity source, string address, in WallArea area)
        : base(null, address, source.Kind.Name, area, false) => Source = source;

    /// <summary>The part as it is described.</summary>
    public NoCavity Source { get; }
}

/// <summary>A deck, porch or balcony before an outside wall. Its upper edge is what one walks on.</summary>
public sealed class PlatformView : WallPart
{
    internal PlatformView(Platform source, string address, in WallArea area)
        : base(source.Id, address, source.Kind.Name, area, false) => Source = source;

    /// <summary>The platform as it is described.</summary>
    public Platform Source { get; }
}

/// <summary>An opening between its rough faces, with what is put around it. Its casing starts where its jambs are, as <see cref="TrimmedOpening"/> says.</summary>
public sealed class OpeningView : WallPart
{
    internal OpeningView(Opening source, string address, in WallArea area, TrimmedOpening trim, in WallArea casing)
        : base(source.Id, address, source.Kind.Name, area, false)
    {
        Source = source;
        Trim = trim;
        Casing = casing;
    }

    /// <summary>The opening as it is described.</summary>
    public Opening Source { get; }

    /// <summary>Its jambs, its casing along the wall, its doorway and its pocket.</summary>
    public TrimmedOpening Trim { get; }

    /// <summary>The outer edge of its casing; the rough opening's where it has none.</summary>
    public WallArea Casing { get; }
}
