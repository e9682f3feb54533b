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

/// <summary>The same with what is described: a counter, a finish, a fixture.</summary>
/// <typeparam name="T">What it is.</typeparam>
public class WallPart<T> : WallPart
    where T : class
{
    internal WallPart(T source, string? id, string address, string kind, in WallArea area, bool isAssumed = false)
        : base(id, address, kind, area, isAssumed) => Source = source;

    /// <summary>The thing as it is described.</summary>
    public T Source { get; }
}

/// <summary>An opening between its rough faces, with what is put around it. Its casing starts where its jambs are, as <see cref="TrimmedOpening"/> says.</summary>
public sealed class OpeningView : WallPart<Opening>
{
    internal OpeningView(Opening source, string address, in WallArea area, TrimmedOpening trim, in WallArea casing)
        : base(source, source.Id, address, source.Kind.Name, area)
    {
        Trim = trim;
        Casing = casing;
    }

    /// <summary>Its jambs, its casing along the wall, its doorway and its pocket.</summary>
    public TrimmedOpening Trim { get; }

    /// <summary>The outer edge of its casing; the rough opening's where it has none.</summary>
    public WallArea Casing { get; }
}
