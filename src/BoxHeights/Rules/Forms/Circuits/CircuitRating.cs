using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A receptacle that has to be on a circuit of so many amperes is fed by conductors that are thick enough for it.</summary>
/// <remarks>Silent where no cable is described; where cables of several sizes enter, it matters which of them feeds the receptacle, unless that is stated.</remarks>
[Row(nameof(Amperes), nameof(Protected))]
public sealed partial record CircuitRating : LimitRule
{
    /// <summary>The circuit's rating in amperes.</summary>
    public int Amperes { get; init; }

    /// <summary>At how many amperes conductors are protected at most, from thin to thick: each size at what the last one says that isn't thicker.</summary>
    public Items<ConductorRating> Protected { get; init; }

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Enough is null)
        {
            yield return "no conductor may be protected at " + Amperes + " A";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => "receptacles on conductors that may be protected at " + Amperes + " A: " + string.Join(", ", Protected);

    /// <inheritdoc/>
    public override Wording ElseDo => $"feed it with {Enough?.ToString():conductor} or thicker from a {Amperes:amperes} A circuit";

    /// <summary>The thinnest conductor that will do; null where none is.</summary>
    private ConductorSize? Enough
    {
        get
        {
            foreach (ConductorRating one in Protected)
            {
                if (one.Amperes >= Amperes)
                {
                    return one.Size;
                }
            }

            return null;
        }
    }

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
                    statement.DependsOn(Quantity.Of(MostAmperes(thin)), MissingFacts.Devices, () => $"perhaps {Fed():fed}");
                }
            }
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<DeviceBox> Mends(BoxTraits box, Quantity measured, PartsCatalog catalog) => [];

    /// <summary>The thinnest and the thickest conductor that may feed a device; null where none is described.</summary>
    private static (ConductorSize Thin, ConductorSize Thick)? Feeding(DeviceBox box, int device)
    {
        if (device < box.Connected.Count && box.Connected[device] != default)
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

    private int MostAmperes(ConductorSize size)
    {
        int most = 0;
        foreach (ConductorRating one in Protected)
        {
            most = one.Size <= size ? one.Amperes : most;
        }

        return most;
    }
}

/// <summary>At how many amperes conductors of a size are protected at most.</summary>
[Described(nameof(Size), nameof(Amperes))]
public sealed partial record ConductorRating
{
    /// <summary>The size.</summary>
    public ConductorSize Size { get; init; }

    /// <summary>The most amperes.</summary>
    public int Amperes { get; init; }

    /// <summary>The size and its amperes: "14 AWG at 15".</summary>
    public override string ToString() => Size + " at " + Amperes;
}
