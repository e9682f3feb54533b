using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A receptacle that has to be on a circuit of so many amperes is fed by conductors that are thick enough for it.</summary>
/// <remarks>Silent where no cable is described; where cables of several sizes enter, it matters which of them feeds the receptacle, unless that is stated.</remarks>
public sealed record CircuitRating : LimitRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is asked for, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where it is asked for.</param>
    /// <param name="amperes">The circuit's rating.</param>
    public CircuitRating(string id, string summary, Severity severity, Citation citation, int amperes)
        : base(id, summary, severity, citation) => Amperes = amperes;

    /// <summary>The circuit's rating in amperes.</summary>
    public int Amperes { get; init; }

    /// <inheritdoc/>
    public override string Numbers => "receptacles on conductors that may be protected at " + Amperes + " A: 14 AWG at 15, 12 AWG at 20, 10 AWG at 30";

    /// <inheritdoc/>
    public override string ElseDo => "feed it with 12 AWG or thicker from a " + Amperes + " A circuit";

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        for (int i = 0; i < site.Box.Devices.Count; i++)
        {
            if (Scope.Devices.Contains(site.Box.Devices[i]) && Feeding(site.Box.Source, i) is { } feeding)
            {
                (ConductorSize thin, ConductorSize thick) = feeding;
                Wording Fed() => $"fed by {thin.ToString():conductor}, which is protected at {MostAmperes(thin):amperes} A at most";
                if (MostAmperes(thin) >= Amperes || MostAmperes(thick) < Amperes)
                {
                    statement.Judge(Quantity.Of(MostAmperes(thin)), QuantitySet.AtLeast(Amperes), Fed);
                }
                else
                {
                    statement.DependsOn(Quantity.Of(MostAmperes(thin)), Facts.Devices, () => $"perhaps {Fed():fed}");
                }
            }
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];

    /// <summary>The thinnest and the thickest conductor that may feed a device; null where none is described.</summary>
    private static (ConductorSize Thin, ConductorSize Thick)? Feeding(DeviceBox box, int device)
    {
        if (device < box.Connected.Count)
        {
            return (box.Connected[device], box.Connected[device]);
        }

        (ConductorSize Thin, ConductorSize Thick)? all = null;
        foreach (CableType cable in box.Cables)
        {
            all = all is not { } some ? (cable.Size, cable.Size) : (cable.Size < some.Thin ? cable.Size : some.Thin, cable.Size > some.Thick ? cable.Size : some.Thick);
        }

        return all;
    }

    /// <summary>NEC 240.4(D) for small copper conductors, from memory; thicker ones serve any circuit of a dwelling's receptacles.</summary>
    private static int MostAmperes(ConductorSize size) => size.Awg switch { 18 => 7, 16 => 10, 14 => 15, 12 => 20, _ => 30 };
}
