namespace BoxHeights;

/// <summary>The flight that climbs along a wall: where the line of its nosings is, above the subfloor of the wall's own room.</summary>
internal sealed class ResolvedStair
{
    private readonly StairGeometry low;
    private readonly StairGeometry high;
    private readonly Distance subfloor;

    /// <summary>Binds a flight to a wall.</summary>
    /// <param name="low">The flight with the thinnest floors that may be.</param>
    /// <param name="high">The flight with the thickest.</param>
    /// <param name="subfloor">The subfloor of the wall's room above the one at the flight's foot.</param>
    public ResolvedStair(StairGeometry low, StairGeometry high, Distance subfloor)
    {
        this.low = low;
        this.high = high;
        this.subfloor = subfloor;
    }

    public StairFlight Flight => low.Flight;

    /// <summary>A tread's nosing along the wall, and the finished top of the tread above the room's subfloor, rounded once to the grid.</summary>
    /// <param name="tread">The tread, from 1 at the foot; the last is the landing.</param>
    /// <param name="along">Its nosing.</param>
    /// <param name="aboveSubfloor">Its top.</param>
    /// <returns>False where no nosings are.</returns>
    public bool TryTread(int tread, out ExactDistance along, out DistanceRange aboveSubfloor)
    {
        bool known = low.TryNosingAlong(tread, out along);
        aboveSubfloor = known ? new DistanceRange(low.TreadHeight(tread).RoundNearest(), high.TreadHeight(tread).RoundNearest()) - subfloor : default;
        return known;
    }

    /// <summary>The line of the nosings at a place along the wall, rounded once to the grid, above the room's subfloor.</summary>
    /// <returns>False where no nosings are.</returns>
    public bool TryNosing(Distance along, out DistanceRange aboveSubfloor)
    {
        aboveSubfloor = default;
        if (!low.TryNosingLine(along, out ExactDistance from) || !high.TryNosingLine(along, out ExactDistance to))
        {
            return false;
        }

        aboveSubfloor = new DistanceRange(from.RoundNearest(), to.RoundNearest()) - subfloor;
        return true;
    }

    /// <summary>The levels of a place on the wall: those of its room, and the nosings there.</summary>
    public Levels At(Levels levels, Distance along) => TryNosing(along, out DistanceRange nosing) ? levels.With(Datum.Nosing, nosing, Datum.Subfloor) : levels;
}
