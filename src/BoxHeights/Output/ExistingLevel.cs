using System;

namespace BoxHeights;

/// <summary>An existing box that isn't at the height that the others share.</summary>
[Told]
public sealed partial record LevelOutlier
{
    /// <summary>The box.</summary>
    public string BoxId { get; }

    /// <summary>From the shared level up to the box's center; negative where the box is low.</summary>
    public Distance Offset { get; }

    /// <summary>The box, and how far off it is.</summary>
    public override string ToString() => BoxId + ": " + Offset;
}

/// <summary>The height that existing boxes share, for new ones to match. It says what is there, not that it is right: nothing here is an approval.</summary>
public sealed record ExistingLevel
{
    private readonly LengthUnits units;

    internal ExistingLevel(BoxHeight height, Items<string> sharing, Items<LevelOutlier> outliers, Items<LeftOutBox> notCompared, LengthUnits units)
    {
        Height = height;
        Sharing = sharing;
        Outliers = outliers;
        NotCompared = notCompared;
        this.units = units;
    }

    /// <summary>The height to match, to the edge that the box it was read from is given by.</summary>
    public BoxHeight Height { get; }

    /// <summary>The boxes at that height, within the tolerance.</summary>
    public Items<string> Sharing { get; }

    /// <summary>The boxes that aren't.</summary>
    public Items<LevelOutlier> Outliers { get; }

    /// <summary>Existing boxes of the purpose whose centers can't be told, and why.</summary>
    public Items<LeftOutBox> NotCompared { get; }

    /// <summary>How many boxes were compared.</summary>
    public int Compared => Sharing.Count + Outliers.Count;

    /// <summary>What to do, in words: "match 18-3/4 in to top above subfloor (5 of 6; W1 is 1/2 low)".</summary>
    public override string ToString()
    {
        string rest = Outliers.Count == 0 ? "" : "; " + string.Join(", ", Outliers.Select(outlier => outlier.BoxId + " is " + Printed.HighOrLow(outlier.Offset, units)));
        string unknown = NotCompared.Count == 0 ? "" : "; not compared: " + string.Join(", ", NotCompared.Select(box => box.BoxId));
        return FormattableString.Invariant($"match {Printed.Of(Height, units)} ({Sharing.Count} of {Compared}") + rest + unknown + ")";
    }
}
