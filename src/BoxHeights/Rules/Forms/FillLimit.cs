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
    public override void State(BoxTraits box, LimitStatement statement)
    {
        if (box.Cables.Count == 0)
        {
            return;
        }

        BoxFill fill = FillOf(box);
        if (box.Volume is { } volume)
        {
            statement.Judge(fill.Total, QuantitySet.AtMost(volume), fill.ToString);
        }
        else
        {
            statement.DependsOn(fill.Total, Facts.BoxVolume, fill.ToString);
        }
    }

    /// <inheritdoc/>
    public override DeviceBox? Mend(BoxTraits box, PartsCatalog catalog)
    {
        Volume needed = FillOf(box).Total;
        foreach (Volume volume in catalog.StandardVolumes(box.Kind, box.Gangs))
        {
            if (volume >= needed)
            {
                return box.Source.WithVolume(volume);
            }
        }

        return null;
    }

    private BoxFill FillOf(BoxTraits box)
    {
        int yokes = 0;
        foreach (DeviceKind device in box.Devices)
        {
            yokes += device.IsSwitch || device.IsReceptacle ? 1 : 0;
        }

        bool clamps = box.Clamps == CableClamps.Internal || (FlapIsClamp && box.Clamps == CableClamps.Flap);
        return BoxFill.Of(box.Cables, yokes, clamps, Grounds);
    }
}
