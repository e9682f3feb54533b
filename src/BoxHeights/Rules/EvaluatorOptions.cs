using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>What an evaluator takes for granted and how its remedies are rounded. Immutable; checked when the evaluator is made.</summary>
public sealed record EvaluatorOptions
{
    /// <summary>The usual ones: generic parts, 1/4 in of slack in height and 1 in along the wall, marks on 1/8 in and 1/4 in. Common practice, no source.</summary>
    public static EvaluatorOptions Default { get; } = new();

    /// <summary>The same for marks in millimeters.</summary>
    public static EvaluatorOptions Metric { get; } = new()
    {
        Units = LengthUnits.Millimeters,
        HeightMargin = Distance.FromMillimeters(6),
        AlongMargin = Distance.FromMillimeters(25),
        HeightStep = Distance.FromMillimeters(1),
        AlongStep = Distance.FromMillimeters(1),
    };

    /// <summary>Sizes of boxes and plates, and operable parts of devices, that a dwelling doesn't state.</summary>
    public PartsCatalog Catalog { get; init; } = PartsCatalog.Generic;

    /// <summary>How marks are printed.</summary>
    public LengthUnits Units { get; init; }

    /// <summary>How far from every limit a remedy keeps in height; not negative.</summary>
    public Distance HeightMargin { get; init; } = Distance.FromInches(0, 1, 4);

    /// <summary>How far from every limit a remedy keeps along the wall; not negative.</summary>
    public Distance AlongMargin { get; init; } = Distance.FromInches(1, 0, 1);

    /// <summary>What heights are rounded to; more than zero.</summary>
    public Distance HeightStep { get; init; } = Distance.FromInches(0, 1, 8);

    /// <summary>What places along a wall are rounded to; more than zero.</summary>
    public Distance AlongStep { get; init; } = Distance.FromInches(0, 1, 4);

    /// <summary>
    /// Whether every box that there will be is described, so that what isn't described is lacking. Otherwise rules that ask for an outlet say nothing of rooms
    /// without any box, and of dwellings that list no outlet of the kind: a drawing of the receptacles alone lacks no lights.
    /// </summary>
    public bool AllBoxesAreDescribed { get; init; }

    /// <summary>The same with another <see cref="AllBoxesAreDescribed"/>.</summary>
    /// <param name="allBoxesAreDescribed">Whether what isn't described is lacking.</param>
    public EvaluatorOptions WithAllBoxesAreDescribed(bool allBoxesAreDescribed) => this with { AllBoxesAreDescribed = allBoxesAreDescribed };

    /// <summary>The same with another <see cref="Catalog"/>.</summary>
    /// <param name="catalog">Sizes and operable parts.</param>
    public EvaluatorOptions WithCatalog(PartsCatalog catalog) => this with { Catalog = catalog };

    /// <summary>The usual ones for a dwelling that is marked in these units.</summary>
    /// <param name="units">Those of <see cref="Dwelling.Units"/>.</param>
    public static EvaluatorOptions For(LengthUnits units) => units == LengthUnits.Millimeters ? Metric : Default;

    internal EvaluatorOptions Checked()
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
        Require(HeightMargin >= Distance.Zero, "HeightMargin is negative");
        Require(AlongMargin >= Distance.Zero, "AlongMargin is negative");
        Require(HeightStep > Distance.Zero, "HeightStep isn't more than zero");
        Require(AlongStep > Distance.Zero, "AlongStep isn't more than zero");
        return faults.Count == 0 ? this : throw new ArgumentException("These options don't do: " + string.Join("; ", faults) + ".", "options");
    }
}
