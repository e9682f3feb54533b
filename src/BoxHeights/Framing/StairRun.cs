namespace BoxHeights;

/// <summary>Where the treads of a flight lie along its wall: the first nosing, the tread, and the end that it climbs toward.</summary>
internal sealed class StairRun
{
    private readonly Distance first;
    private readonly Ratio toward;

    private StairRun(Distance first, ExactDistance tread, WallEnd climbs)
    {
        this.first = first;
        Tread = tread;
        toward = new(climbs == WallEnd.Right ? 1 : -1);
    }

    /// <summary>From nosing to nosing.</summary>
    public ExactDistance Tread { get; }

    public static bool TryOf(StairFlight flight, out StairRun? run)
    {
        run = flight.FirstNosing is { } first && StairGeometry.TreadOf(flight) is { } tread ? new(first, tread, flight.Climbs ?? WallEnd.Right) : null;
        return run is not null;
    }

    /// <summary>The place along the wall that is so far up the flight from its first nosing, measured level.</summary>
    public ExactDistance Along(ExactDistance up) => first + (up * toward);

    /// <summary>How far up the flight from its first nosing a place along the wall is, measured level.</summary>
    public ExactDistance Up(ExactDistance along) => (along - first) * toward;

    /// <summary>How far behind the nosing of its own tread something is that is so far up the flight: zero to less than a tread.</summary>
    public ExactDistance OnTread(ExactDistance up) => up - (Tread * new Ratio(Whole(up.RatioTo(Tread))));

    /// <summary>How far up from the nearest like place on a tread something is: half a tread at most, negative where it is farther down.</summary>
    public ExactDistance OffPlace(ExactDistance up, ExactDistance place)
    {
        ExactDistance off = OnTread(up - place);
        return off + off > Tread ? off - Tread : off;
    }

    private static long Whole(Ratio ratio) => (ratio.Numerator - Grid.Above(ratio.Numerator, ratio.Denominator)) / ratio.Denominator;
}
