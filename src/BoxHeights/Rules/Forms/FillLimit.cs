namespace BoxHeights.Rules;

/// <summary>A box holds its conductors: the fill is at most the box's volume. Silent where no cables are described.</summary>
public sealed record FillLimit : LimitRule
{
    /// <summary>Describes the rule.</summary>
    /// <param name="id">The row's id.</param>
    /// <param name="summary">What is allowed, in one plain phrase.</param>
    /// <param name="severity">How much a finding weighs.</param>
    /// <param name="citation">Where the numbers come from.</param>
    /// <param name="grounds">How equipment grounds count.</param>
    public FillLimit(string id, string summary, Severity severity, Citation citation, GroundCounting grounds)
        : base(id, summary, severity, citation) => Grounds = grounds;

    /// <summary>How equipment grounds count.</summary>
    public GroundCounting Grounds { get; init; }

    /// <summary>Whether the molded flap of a plastic box counts as an internal clamp.</summary>
    public bool FlapIsClamp { get; init; }

    /// <inheritdoc/>
    public override string Numbers =>
        "conductors, clamps, devices and grounds after Table 314.16(B) at most the volume of the box; grounds "
        + (Grounds == GroundCounting.AllAsOne ? "all as one" : "up to four as one, each beyond a quarter")
        + (FlapIsClamp ? "; a molded flap counts as a clamp" : "");

    /// <inheritdoc/>
    public override void State(PlacementSite site, LimitStatement statement)
    {
        BoxTraits box = site.Box;
        if (box.Cables.Count == 0)
        {
            return;
        }

        BoxFill least = FillOf(box, false);
        if (box.Volume is not { } volume)
        {
            statement.DependsOn(least.Total, Facts.BoxVolume, least.ToString);
            return;
        }

        // What isn't stated may take room as well: it matters only where it would turn the verdict.
        BoxFill most = FillOf(box, true);
        if (least.Total <= volume && most.Total > volume)
        {
            statement.DependsOn(most.Total, (MayHoldMore(box) ? Facts.Devices : Facts.None) | (MayHaveClamps(box) ? Facts.Clamps : Facts.None), most.ToString);
        }
        else
        {
            statement.Judge(least.Total, QuantitySet.AtMost(volume), least.ToString);
        }
    }

    /// <inheritdoc/>
    public override DeviceBox? Mend(BoxTraits box, PartsCatalog catalog)
    {
        Volume needed = FillOf(box, true).Total;
        foreach (Volume volume in catalog.StandardVolumes(box.Kind, box.Gangs))
        {
            if (volume >= needed)
            {
                return box.Source.WithVolume(volume);
            }
        }

        return null;
    }

    private BoxFill FillOf(BoxTraits box, bool most)
    {
        int yokes = most && box.Devices.Count == 0 && MayHoldMore(box) ? box.Gangs : 0;
        foreach (DeviceKind device in box.Devices)
        {
            yokes += !device.IsOperated || (!device.IsKnown && !most) ? 0 : IsTwoGangsWide(device) ? 2 : 1;
        }

        bool clamps = box.Clamps == CableClamps.Internal || (FlapIsClamp && box.Clamps == CableClamps.Flap) || (most && MayHaveClamps(box));
        return BoxFill.Of(box.Cables, yokes, clamps, Grounds);
    }

    /// <summary>A device box whose devices aren't stated holds some in the end; a device of an unknown kind may sit on a yoke. Junction boxes hold none.</summary>
    private static bool MayHoldMore(BoxTraits box)
    {
        foreach (DeviceKind device in box.Devices)
        {
            if (!device.IsKnown)
            {
                return true;
            }
        }

        return box.Devices.Count == 0 && box.Kind != BoxKind.Octagon && box.Kind != BoxKind.FourSquare && box.Kind != BoxKind.FourElevenSquare
            && box.Kind != BoxKind.Pancake && box.Kind != BoxKind.FanRated;
    }

    /// <summary>A one-gang plastic box holds cables by a flap unless it says otherwise; wider ones, and metal ones, often have clamps inside.</summary>
    private static bool MayHaveClamps(BoxTraits box) =>
        box.Clamps is null && !(box.Gangs == 1 && (box.Kind == BoxKind.NailOn || box.Kind == BoxKind.CutIn));

    /// <summary>Receptacles for ranges and dryers need two gangs, and count for each.</summary>
    private static bool IsTwoGangsWide(DeviceKind device) => device == DeviceKind.RangeReceptacle || device == DeviceKind.DryerReceptacle;
}
