using System;

namespace BoxHeights.Rules;

/// <summary>A flight of so many risers or more has an outlet of a kind on each of the two storeys that it joins.</summary>
/// <remarks>A storey of which no box is described isn't judged, nor is a dwelling that lists no such outlet at all.</remarks>
public sealed record FlightOutlet : SpaceRule
{
    /// <summary>Describes what is required.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is required, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is required.</param>
    /// <param name="outlet">What counts.</param>
    /// <param name="fewestRisers">The row speaks of flights of so many risers or more.</param>
    public FlightOutlet(string id, string summary, Severity severity, Citation citation, CountedOutlet outlet, int fewestRisers)
        : base(id, summary, severity, citation)
    {
        Outlet = outlet ?? throw new ArgumentNullException(nameof(outlet));
        FewestRisers = fewestRisers;
    }

    /// <summary>What counts.</summary>
    public CountedOutlet Outlet { get; init; }

    /// <summary>The row speaks of flights of so many risers or more.</summary>
    public int FewestRisers { get; init; }

    /// <inheritdoc/>
    public override SpaceKind Subject => SpaceKind.Flight;

    /// <inheritdoc/>
    public override string Numbers => "at " + FewestRisers + " risers or more, at least 1 " + Outlet.Numbers + " on either storey";

    /// <inheritdoc/>
    public override void Judge(SpaceView space, SpaceStatement statement)
    {
        if (space.Flight is not { } flight || flight.Risers < FewestRisers || !RoomOutlet.IsDescribed(space, Outlet, statement))
        {
            return;
        }

        Judge(space, flight, flight.From, statement);
        if (flight.From != flight.To)
        {
            Judge(space, flight, flight.To, statement);
        }
    }

    private void Judge(SpaceView space, StairFlight flight, string storey, SpaceStatement statement)
    {
        bool isDescribed = false;
        foreach (SpaceBox box in space.Boxes)
        {
            if (StoreyOf(space.Dwelling, box.SpaceId) != storey)
            {
                continue;
            }

            isDescribed = true;
            if (Outlet.Of(box, out _) != Verdict.Fails)
            {
                return;
            }
        }

        if (!isDescribed)
        {
            statement.NotJudged("no box is described on a storey that it leads to");
            return;
        }

        Finds(statement, flight, storey);
    }

    private void Finds(SpaceStatement statement, StairFlight flight, string storey) =>
        statement.Finds(flight.Id + " " + storey, flight.Wall ?? flight.Id, Verdict.Fails, Quantity.Of(0), QuantitySet.AtLeast(1), () => "no " + Outlet.Name + " on the storey " + storey);

    private static string? StoreyOf(Dwelling dwelling, string id)
    {
        foreach (Room room in dwelling.Rooms)
        {
            if (room.Id == id)
            {
                return room.Storey;
            }
        }

        return null;
    }
}
