using System;

namespace BoxHeights;

/// <summary>An evaluator's options for one dwelling: whatever they leave open is settled by the dwelling's units.</summary>
internal sealed class SettledOptions
{
    private SettledOptions(EvaluatorOptions stated, LengthUnits units)
    {
        bool metric = units == LengthUnits.Millimeters;
        Caps = stated;
        Catalog = stated.Catalog;
        OwnKinds = stated.OwnKinds;
        AllBoxesAreDescribed = stated.AllBoxesAreDescribed;
        Units = units;
        Words = stated.Words;
        HeightMargin = stated.HeightMargin ?? (metric ? Distance.FromMillimeters(6m) : Distance.FromInches(0, 1, 4));
        AlongMargin = stated.AlongMargin ?? (metric ? Distance.FromMillimeters(25m) : Distance.FromInches(1, 0, 1));
        HeightStep = stated.HeightStep ?? (metric ? Distance.FromMillimeters(1m) : Distance.FromInches(0, 1, 8));
        AlongStep = stated.AlongStep ?? (metric ? Distance.FromMillimeters(1m) : Distance.FromInches(0, 1, 4));
    }

    /// <summary>The options as they are stated, for how much a description may hold and how much is tried.</summary>
    public EvaluatorOptions Caps { get; }

    public PartsCatalog Catalog { get; }

    public bool AllBoxesAreDescribed { get; }

    public Items<string> OwnKinds { get; }

    public LengthUnits Units { get; }

    public WordingFormatter Words { get; }

    public Distance HeightMargin { get; }

    public Distance AlongMargin { get; }

    public Distance HeightStep { get; }

    public Distance AlongStep { get; }

    /// <summary>Identifies them, but for the catalog.</summary>
    public string Fingerprint => Stamp.Of(string.Join("|", Units, HeightMargin, AlongMargin, HeightStep, AlongStep, AllBoxesAreDescribed, OwnKinds) + StatedCaps);

    /// <summary>The caps, where any is stated otherwise than usual.</summary>
    private string StatedCaps
    {
        get
        {
            string usual = CapsOf(EvaluatorOptions.Default);
            string stated = CapsOf(Caps);
            return stated == usual ? "" : "|" + stated;

            static string CapsOf(EvaluatorOptions one) =>
                FormattableString.Invariant($"{one.MostBoxesOnASurface}|{one.MostPartsOfAWall}|{one.MostPartsOfARoom}|{one.MostPartsOfADwelling}|{one.MostTriesForACause}");
        }
    }

    /// <summary>The options as they are for a dwelling.</summary>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public static SettledOptions Of(EvaluatorOptions stated, Dwelling dwelling) =>
        new(stated, stated.Units ?? (dwelling ?? throw new ArgumentNullException(nameof(dwelling))).Units);

    /// <summary>The usual options for a dwelling.</summary>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    public static SettledOptions Usual(Dwelling dwelling) => Of(EvaluatorOptions.Default, dwelling);
}
