using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>A box is in one zone at least of several: in a band of heights all along the wall, or in an upright strip beside an opening or an inside corner. Edges are inside.</summary>
/// <remarks>Installation zones, in which cables run and boxes are set. Strips are as high as the wall, and taken from rough openings and from the corner of the framing to the box's center.</remarks>
[Row]
public sealed partial record AllowedZones : PlacementRule
{
    /// <summary>Bands of heights, each from one level to another above the same datum.</summary>
    public Items<LevelBand> Bands { get; init; }

    /// <summary>How far beside an opening a strip begins and ends; null for no such strips.</summary>
    public DistanceRange? BesideOpenings { get; init; }

    /// <summary>The openings that have strips beside them; all where none is named.</summary>
    public Items<OpeningKind> Openings { get; init; }

    /// <summary>How far from an inside corner a strip begins and ends; null for no such strips.</summary>
    public DistanceRange? FromCorners { get; init; }

    /// <summary>The line of the box that is at least as high as a band's lower edge.</summary>
    public TargetLine LowLine { get; init; } = TargetLine.Center;

    /// <summary>The line of the box that is at most as high as a band's upper edge.</summary>
    public TargetLine HighLine { get; init; } = TargetLine.Center;

    /// <inheritdoc/>
    public override Items<string> KindsNamed => Openings.Select(kind => kind.Name);

    /// <inheritdoc/>
    protected override IEnumerable<string> Mistakes()
    {
        if (Bands.Count == 0 && BesideOpenings is null && FromCorners is null)
        {
            yield return "it names no zone";
        }
    }

    /// <inheritdoc/>
    public override string Numbers => string.Join(", or ", Parts());

    /// <inheritdoc/>
    public override void State(PlacementSite site, PlacementStatement statement)
    {
        if (site.Surface.Wall is not { } wall)
        {
            return;
        }

        AllowedHeights bands = AllowedHeights.Nothing;
        foreach (LevelBand band in Bands)
        {
            bands |= site.AtLeast(LowLine, band.Low, band.Datum) & site.AtMost(HighLine, band.High, band.Datum);
        }

        HeightsAlong zones = new(bands);
        foreach ((Distance left, Distance right, bool isSure) in FromCorners is { } corners ? InsideCorners.Strips(site, corners.From, corners.To) : [])
        {
            zones.Add(left, right, isSure ? AllowedHeights.Anything : AllowedHeights.Anything.If(MissingFacts.PlanPlace));
        }

        foreach (Opening opening in BesideOpenings is null ? default : wall.Openings)
        {
            if (Openings.Count == 0 || Openings.Contains(opening.Kind))
            {
                DistanceRange beside = BesideOpenings!.Value;
                zones.Add(opening.Left - beside.To, opening.Left - beside.From, AllowedHeights.Anything);
                zones.Add(opening.Right + beside.From, opening.Right + beside.To, AllowedHeights.Anything);
            }
        }

        foreach ((Distance from, Distance to, AllowedHeights here) in zones.Pieces())
        {
            statement.Within(from, to, here);
        }
    }

    private IEnumerable<string> Parts()
    {
        foreach (LevelBand band in Bands)
        {
            yield return LowLine.Words() + " at least " + band.Low + ", " + HighLine.Words() + " at most " + band.High + " " + DatumText.Print(band.Datum, false);
        }

        if (BesideOpenings is { } beside)
        {
            yield return beside.From + " to " + beside.To + " beside " + (Openings.Count == 0 ? "openings" : Openings.ToString());
        }

        if (FromCorners is { } corners)
        {
            yield return corners.From + " to " + corners.To + " from inside corners";
        }
    }
}

/// <summary>Heights between two levels above one datum, both included.</summary>
public sealed record LevelBand
{
    /// <summary>Describes a band.</summary>
    /// <param name="datum">What it is measured from.</param>
    /// <param name="low">Its lower edge.</param>
    /// <param name="high">Its upper edge, not below the lower one.</param>
    /// <exception cref="ArgumentException"><paramref name="high"/> is below <paramref name="low"/>.</exception>
    public LevelBand(Datum datum, Distance low, Distance high)
    {
        Datum = datum;
        Low = low;
        High = high >= low ? high : throw new ArgumentException("The band ends below where it begins.", nameof(high));
    }

    /// <summary>What it is measured from.</summary>
    public Datum Datum { get; }

    /// <summary>Its lower edge.</summary>
    public Distance Low { get; }

    /// <summary>Its upper edge.</summary>
    public Distance High { get; }

    /// <summary>The band in words.</summary>
    public override string ToString() => Low + " to " + High + " " + DatumText.Print(Datum, false);
}
