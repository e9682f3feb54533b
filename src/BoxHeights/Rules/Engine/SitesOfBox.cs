namespace BoxHeights.Rules;

/// <summary>What is stated for a box: one site, three where its edge isn't stated, none where a fault keeps it from being judged.</summary>
internal readonly struct SitesOfBox
{
    // Nearly every box has one: an array for each was 32 bytes a box.
    private readonly StatedSite? only;
    private readonly StatedSite[]? some;

    public SitesOfBox(StatedSite only) => this.only = only;

    /// <summary>One for each edge that may be meant.</summary>
    public SitesOfBox(StatedSite[] some)
    {
        only = some.Length == 1 ? some[0] : null;
        this.some = some.Length == 1 ? null : some;
    }

    public int Length => only is not null ? 1 : some is null ? 0 : some.Length;

    public StatedSite this[int edge] => only ?? some![edge];

    public bool Are(in SitesOfBox other) => ReferenceEquals(only, other.only) && ReferenceEquals(some, other.some);

    public Enumerator GetEnumerator() => new(this);

    /// <summary>Walks through them without allocating.</summary>
    public struct Enumerator(SitesOfBox sites)
    {
        private int edge = -1;

        public readonly StatedSite Current => sites[edge];

        public bool MoveNext() => ++edge < sites.Length;
    }
}
