using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What an evaluator takes for granted and how its remedies are rounded. Immutable; checked when the evaluator is made.</summary>
/// <remarks>
/// Units, slack and steps that aren't stated follow each dwelling's own <see cref="Dwelling.Units"/>: one evaluator marks a house in inches on the tape's fractions and
/// the next in whole millimeters. What is stated here holds for every dwelling.
/// </remarks>
[Described]
public sealed partial record EvaluatorOptions
{
    /// <summary>The usual ones: generic parts, and all else as each dwelling is marked.</summary>
    public static EvaluatorOptions Default { get; } = new();

    /// <summary>Sizes of boxes and plates, and operable parts of devices, that a dwelling doesn't state.</summary>
    public PartsCatalog Catalog { get; init; } = PartsCatalog.Generic;

    /// <summary>The units in which measures are printed, and those of the usual slack and steps; null for the dwelling's own.</summary>
    public LengthUnits? Units { get; init; }

    /// <summary>Puts findings, remedies and reports into a language; English unless stated.</summary>
    public WordingFormatter Words { get; init; } = WordingFormatter.English;

    /// <summary>How far from every limit a remedy keeps in height; not negative. Null for 1/4 in, or 6 mm in millimeters: common practice, no source.</summary>
    public Distance? HeightMargin { get; init; }

    /// <summary>How far from every limit a remedy keeps along the wall; not negative. Null for 1 in, or 25 mm in millimeters: common practice, no source.</summary>
    public Distance? AlongMargin { get; init; }

    /// <summary>What heights are rounded to; more than zero. Null for 1/8 in, or 1 mm in millimeters: common practice, no source.</summary>
    public Distance? HeightStep { get; init; }

    /// <summary>What places along a wall are rounded to; more than zero. Null for 1/4 in, or 1 mm in millimeters: common practice, no source.</summary>
    public Distance? AlongStep { get; init; }

    /// <summary>Whether every box that there will be is described, so that what the description lacks, the house lacks.</summary>
    /// <remarks>Otherwise rules that ask for an outlet pass over rooms without any box, and over dwellings that list no outlet of the kind: a drawing of the receptacles alone lacks no lights.</remarks>
    public bool AllBoxesAreDescribed { get; init; }

    /// <summary>Names of kinds of one's own, of rooms, fixtures or whatever else, which are then taken for known. Those of a row's scope or of the catalog are known already.</summary>
    public Items<string> OwnKinds { get; init; }

    /// <summary>So many boxes may be on one wall, ceiling or floor; with more nothing is judged, and a finding says so. More than zero.</summary>
    public int MostBoxesOnASurface { get; init; } = 10_000;

    /// <summary>So many openings, counters, interruptions, coverings, finishes and corners of its top a wall may have; with more nothing is judged, and a finding says so. More than zero.</summary>
    public int MostPartsOfAWall { get; init; } = 10_000;

    /// <summary>So many walls, boxes, fixtures and parts of walls a room or outside face may have; with more nothing is judged, and a finding says so. More than zero.</summary>
    public int MostPartsOfARoom { get; init; } = 20_000;

    /// <summary>So many storeys, flights, rooms, faces and parts of them a dwelling may have; with more nothing is judged, and a finding says so. More than zero.</summary>
    public int MostPartsOfADwelling { get; init; } = 200_000;

    /// <summary>So many remedies are tried out for one cause; what is left after that says so. More than zero.</summary>
    public int MostTriesForACause { get; init; } = 2_000;

    /// <exception cref="ArgumentException">They don't do; the message says all that is wrong with them.</exception>
    internal EvaluatorOptions Checked() =>
        Faults() is { Count: > 0 } faults ? throw new ArgumentException("These options don't do: " + string.Join("; ", faults) + ".", "options") : this;

    /// <summary>All that is wrong with them.</summary>
    internal List<string> Faults()
    {
        List<string> faults = [];
        void Require(bool good, string fault)
        {
            if (!good)
            {
                faults.Add(fault);
            }
        }

        Require(Catalog is not null, "Catalog is null");
        Require(Words is not null, "Words is null");
        Require(Units is null or LengthUnits.Inches or LengthUnits.Millimeters, "Units is neither inches nor millimeters");
        Require(HeightMargin is not { } height || height >= Distance.Zero, "HeightMargin is negative");
        Require(AlongMargin is not { } along || along >= Distance.Zero, "AlongMargin is negative");
        Require(HeightStep is not { } up || up > Distance.Zero, "HeightStep isn't more than zero");
        Require(AlongStep is not { } aside || aside > Distance.Zero, "AlongStep isn't more than zero");
        Require(MostBoxesOnASurface > 0, "MostBoxesOnASurface isn't more than zero");
        Require(MostPartsOfAWall > 0, "MostPartsOfAWall isn't more than zero");
        Require(MostPartsOfARoom > 0, "MostPartsOfARoom isn't more than zero");
        Require(MostPartsOfADwelling > 0, "MostPartsOfADwelling isn't more than zero");
        Require(MostTriesForACause > 0, "MostTriesForACause isn't more than zero");
        return faults;
    }
}
