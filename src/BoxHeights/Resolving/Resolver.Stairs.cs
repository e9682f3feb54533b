using System;

namespace BoxHeights;

/// <content>Flights: which wall each climbs along, and what can't be about them.</content>
internal sealed partial class Resolver
{
    private void Flights(Dwelling dwelling)
    {
        foreach (StairFlight flight in dwelling.Flights)
        {
            Treads(flight);
            Refers(storeys.ContainsKey(flight.From), flight.Id, "from", flight.From, "storey");
            Refers(storeys.ContainsKey(flight.To), flight.Id, "to", flight.To, "storey");
            Upward(dwelling, flight);
            if (flight.Wall is { } wall)
            {
                Refers(addresses.Contains(wall), flight.Id, "wall", wall, "wall");
                if (flight.FirstNosing is { } first && faces.Find(face => face.Address == wall) is { } beside && first > beside.Length)
                {
                    Fault(LayoutFaultKind.OutsideItsWall, flight.Id, $"its first nosing is at {Text(first):along} along \"{wall:wall}\", but the wall is {Text(beside.Length):length} long");
                }
            }
        }
    }

    /// <summary>A flight starts from the lower storey; steps within one storey lead from it to itself.</summary>
    private void Upward(Dwelling dwelling, StairFlight flight)
    {
        foreach (Storey storey in storeys.ContainsKey(flight.From) ? dwelling.Storeys : default)
        {
            if (storey.Id == flight.From)
            {
                return;
            }

            if (storey.Id == flight.To)
            {
                Contradicts(flight.Id, $"it starts from \"{flight.From:from}\", which is listed above \"{flight.To:to}\": storeys are listed lowest first, and a flight starts from the lower one");
            }
        }
    }

    /// <summary>Where two flights name one wall, it isn't known whose nosings a height there is taken from.</summary>
    private void Stairs(Dwelling dwelling, StairFlight flight)
    {
        if (flight.Wall is { } wall)
        {
            stairs[wall] = !stairs.ContainsKey(wall) && StairGeometry.TryEnds(dwelling, flight, catalog.UsualMeasures, out StairGeometry? low, out StairGeometry? high) ? (low!, high!) : null;
        }
    }

    /// <summary>A flight along a wall of the storey that it starts from or leads to.</summary>
    private ResolvedStair? StairOn(string address, ResolvedSpace space)
    {
        if (!stairs.TryGetValue(address, out (StairGeometry Low, StairGeometry High)? ends) || ends is not { } flight
            || !space.Levels.TryGet(Datum.Subfloor, out DistanceRange subfloor))
        {
            return null;
        }

        return space.StoreyId == flight.Low.Flight.From ? new(flight.Low, flight.High, subfloor.From)
            : space.StoreyId == flight.Low.Flight.To ? new(flight.Low, flight.High, subfloor.From + flight.Low.SubfloorToSubfloor)
            : null;
    }

    /// <summary>A tread and a run that are both stated give one number of treads.</summary>
    private void Treads(StairFlight flight)
    {
        OfAHouse(flight.Tread, flight.Id, "its tread");
        OfAHouse(flight.Run, flight.Id, "its run");
        if (flight is { Tread: { } tread, Run: { } run } && ResolvedBox.IsWithinReason(tread) && ResolvedBox.IsWithinReason(run)
            && Math.Abs((tread.Ticks * (decimal)(flight.Risers - 1)) - run.Ticks) > DrawingTolerance.GapAcross.Ticks)
        {
            Contradicts(flight.Id, $"{flight.Risers:risers} risers with treads of {Text(tread):tread} don't make a run of {Text(run):run}");
        }
    }
}
