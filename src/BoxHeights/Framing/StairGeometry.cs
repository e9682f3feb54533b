using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A flight of stairs in exact numbers: rough and finished risers, treads and the sloped line of its nosings.</summary>
/// <remarks>
/// <para>Heights are above the subfloor at its foot, and places along its wall are from that wall's left end. Carriages are cut so that all finished risers are
/// alike with the floors that they are cut for: a rough notch lies one tread finish below its tread, so that the first rough riser is lower or higher than the others on
/// purpose, and the last one too. If other floors are laid than those, the first and the last finished riser differ.</para>
/// <para>Nosing k (1 … n) is at the edge of tread k; nosing n is the upper floor's edge. A riser of 105 in over 16, or a tread of 10-2/3 in, is held as a quotient and
/// never rounded here.</para>
/// </remarks>
public sealed class StairGeometry
{
    private readonly Ratio oneOfAll;
    private readonly Distance between;
    private readonly Distance below;
    private readonly Distance above;
    private readonly Distance cutBelow;
    private readonly Distance finish;
    private readonly ExactDistance? tread;

    /// <summary>Works out a flight.</summary>
    /// <param name="flight">The flight.</param>
    /// <param name="subfloorToSubfloor">From the subfloor at its foot to the one at its head; more than zero.</param>
    /// <param name="floorBelow">The finish floor that is laid at its foot; zero or more.</param>
    /// <param name="floorAbove">The finish floor that is laid at its head; zero or more.</param>
    /// <exception cref="ArgumentNullException"><paramref name="flight"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The storey isn't more than zero high, or a floor is negative.</exception>
    public StairGeometry(StairFlight flight, Distance subfloorToSubfloor, Distance floorBelow, Distance floorAbove)
    {
        Flight = flight ?? throw new ArgumentNullException(nameof(flight));
        between = Guard.Positive(subfloorToSubfloor, nameof(subfloorToSubfloor));
        below = Guard.NotNegative(floorBelow, nameof(floorBelow));
        above = Guard.NotNegative(floorAbove, nameof(floorAbove));
        cutBelow = flight.CutForFloorBelow ?? floorBelow;
        finish = flight.TreadFinish ?? Distance.Zero;
        oneOfAll = new(1, flight.Risers);
        TotalRise = between + (flight.CutForFloorAbove ?? floorAbove) - cutBelow;
        tread = TreadOf(flight);
    }

    /// <summary>The flight and its risers.</summary>
    public override string ToString() => Flight.Id + ": " + Flight.Risers + " risers";

    /// <summary>The flight.</summary>
    public StairFlight Flight { get; }

    /// <summary>From the subfloor at its foot to the one at its head.</summary>
    public Distance SubfloorToSubfloor => between;

    /// <summary>From the finished floor at its foot to the one at its head, as its carriages are cut.</summary>
    public Distance TotalRise { get; }

    /// <summary>The height that every finished riser has with the floors that the carriages are cut for.</summary>
    public ExactDistance Riser => (ExactDistance)TotalRise * oneOfAll;

    /// <summary>From nosing to nosing; null where neither tread nor run is stated.</summary>
    public ExactDistance? Tread => tread;

    /// <summary>The largest finished riser less the smallest, with the floors that are laid.</summary>
    public ExactDistance RiserVariation
    {
        get
        {
            ExactDistance least = FinishedRiser(1);
            ExactDistance most = least;
            foreach (int riser in Flight.Risers > 2 ? new[] { 2, Flight.Risers } : new[] { Flight.Risers })
            {
                ExactDistance one = FinishedRiser(riser);
                least = one < least ? one : least;
                most = one > most ? one : most;
            }

            return most - least;
        }
    }

    /// <summary>A flight's tread from its run or its tread; null where neither is stated.</summary>
    /// <param name="flight">The flight.</param>
    /// <exception cref="ArgumentNullException"><paramref name="flight"/> is null.</exception>
    internal static ExactDistance? TreadOf(StairFlight flight) => flight is null ? throw new ArgumentNullException(nameof(flight))
        : flight is { Run: { } run, Risers: > 1 } ? new ExactDistance(run, flight.Risers - 1)
        : flight.Tread is { } tread ? (ExactDistance)tread
        : null;

    /// <summary>How high a tread's finished surface lies.</summary>
    /// <param name="tread">1 to the number of risers, which is the floor above; 0 is the floor below.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such tread.</exception>
    public ExactDistance TreadHeight(int tread) => Checked(tread, 0) == 0 ? below : tread == Flight.Risers ? between + above : Pitched(tread);

    /// <summary>How high a rough notch of the carriage lies, which carries a tread.</summary>
    /// <param name="tread">1 to the number of risers, which is the subfloor above; 0 is the subfloor below.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such tread.</exception>
    public ExactDistance NotchHeight(int tread) => Checked(tread, 0) == 0 ? Distance.Zero : tread == Flight.Risers ? between : Pitched(tread) - finish;

    /// <summary>The height of a finished riser with the floors that are laid.</summary>
    /// <param name="riser">1 to the number of risers, from the foot up.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such riser.</exception>
    public ExactDistance FinishedRiser(int riser) => TreadHeight(Checked(riser, 1)) - TreadHeight(riser - 1);

    /// <summary>The height of a rough riser: from notch to notch.</summary>
    /// <param name="riser">1 to the number of risers, from the foot up.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such riser.</exception>
    public ExactDistance RoughRiser(int riser) => NotchHeight(Checked(riser, 1)) - NotchHeight(riser - 1);

    /// <summary>Where a nosing is along the wall.</summary>
    /// <param name="nosing">1 to the number of risers.</param>
    /// <param name="along">The place found.</param>
    /// <returns>False where the first nosing, or tread and run, aren't stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such nosing.</exception>
    public bool TryNosingAlong(int nosing, out ExactDistance along)
    {
        int treads = Checked(nosing, 1) - 1;
        bool known = StairRun.TryOf(Flight, out StairRun? run);
        along = known ? run!.Along(run.Tread * new Ratio(treads)) : default;
        return known;
    }

    /// <summary>How high the sloped line of the nosings is at a place along the wall.</summary>
    /// <param name="along">From the wall's left end.</param>
    /// <param name="height">The height above the subfloor at its foot.</param>
    /// <returns>False before the first nosing and beyond the last, and where first nosing, tread and run aren't stated.</returns>
    public bool TryNosingLine(Distance along, out ExactDistance height)
    {
        height = default;
        if (!StairRun.TryOf(Flight, out StairRun? run))
        {
            return false;
        }

        ExactDistance up = run!.Up(along);
        if (up < ExactDistance.Zero || up > run.Tread * new Ratio(Flight.Risers - 1))
        {
            return false;
        }

        height = (ExactDistance)cutBelow + Riser + (Riser * up.RatioTo(run.Tread));
        return true;
    }

    private ExactDistance Pitched(int tread) => (ExactDistance)cutBelow + (Riser * new Ratio(tread));

    private int Checked(int number, int least) => number >= least && number <= Flight.Risers
        ? number
        : throw new ArgumentOutOfRangeException(nameof(number), number, "The flight has " + Flight.Risers + " risers.");

    /// <summary>The flights that are possible where floors are known as ranges: with the thinnest and with the thickest. Every height of a tread and of the nosings lies between theirs.</summary>
    /// <returns>False where a storey between doesn't say how high it is.</returns>
    internal static bool TryEnds(Dwelling dwelling, StairFlight flight, UsualMeasures usual, out StairGeometry? low, out StairGeometry? high)
    {
        low = null;
        high = null;
        if (!TryRise(dwelling, flight, out Distance rise))
        {
            return false;
        }

        DistanceRange floorBelow = FloorOn(dwelling, flight, flight.From, usual);
        DistanceRange floorAbove = FloorOn(dwelling, flight, flight.To, usual);
        low = new(flight, rise, floorBelow.From, floorAbove.From);
        high = new(flight, rise, floorBelow.To, floorAbove.To);
        return true;
    }

    /// <summary>What lies on the subfloor where a flight starts or ends: the floor of the room that its wall is in, else that of the halls of the storey, else none is chosen.</summary>
    internal static DistanceRange FloorOn(Dwelling dwelling, StairFlight flight, string storey, UsualMeasures usual)
    {
        List<Room> rooms = RoomsAt(dwelling, flight, storey);
        DistanceRange? all = null;
        foreach (Room room in rooms)
        {
            DistanceRange one = room.Floor?.Thickness ?? usual.Floor;
            all = all is { } some ? new DistanceRange(Distance.Min(some.From, one.From), Distance.Max(some.To, one.To)) : one;
        }

        return all ?? usual.Floor;
    }

    /// <summary>The rooms of a storey that a flight leads from or to: the one that its wall is in, where that is on this storey, else its halls.</summary>
    internal static List<Room> RoomsAt(Dwelling dwelling, StairFlight flight, string storey)
    {
        List<Room> halls = [];
        foreach (Room room in dwelling.Rooms)
        {
            if (room.Storey != storey)
            {
                continue;
            }

            if (flight.Wall is { } wall && SurfaceAddress.Read(wall).IsPartOf(room.Id))
            {
                return [room];
            }

            if (room.Kind == RoomKind.Hall || room.Kind == RoomKind.Stair || room.Kind == RoomKind.Foyer)
            {
                halls.Add(room);
            }
        }

        return halls;
    }

    /// <summary>From the subfloor at a flight's foot to the one at its head.</summary>
    /// <returns>False where a storey between doesn't say how high it is.</returns>
    internal static bool TryRise(Dwelling dwelling, StairFlight flight, out Distance rise)
    {
        rise = Distance.Zero;
        bool counting = false;
        foreach (Storey storey in dwelling.Storeys)
        {
            if (counting)
            {
                if (storey.AboveBelow is not { } height)
                {
                    return false;
                }

                rise += height;
            }

            if (counting && storey.Id == flight.To)
            {
                return rise > Distance.Zero;
            }

            counting |= storey.Id == flight.From;
        }

        return false;
    }
}
