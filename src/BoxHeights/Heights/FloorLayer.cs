using System;

namespace BoxHeights;

/// <summary>One layer of a floor, above the subfloor.</summary>
[Described]
public sealed partial record FloorLayer
{
    private readonly string material;
    private readonly DistanceRange thickness;

    /// <summary>Names a layer.</summary>
    /// <param name="material">What it is, such as "oak strip"; not empty.</param>
    /// <param name="thickness">Zero or more; a range while it isn't known exactly.</param>
    /// <exception cref="ArgumentException">The material is empty, or the thickness may be negative.</exception>
    public FloorLayer(string material, DistanceRange thickness)
    {
        this.material = CheckMaterial(material);
        this.thickness = CheckThickness(thickness);
    }

    /// <summary>What the layer is.</summary>
    /// <exception cref="ArgumentException">Set to an empty text.</exception>
    public string Material
    {
        get => material;
        init => material = CheckMaterial(value);
    }

    /// <summary>How thick the layer is, laid: zero or more.</summary>
    /// <exception cref="ArgumentException">Set to a range that may be negative.</exception>
    public DistanceRange Thickness
    {
        get => thickness;
        init => thickness = CheckThickness(value);
    }

    /// <summary>The layer in words: "tile, 3/8 in".</summary>
    public override string ToString() => Material + ", " + Thickness;

    private static string CheckMaterial(string material) => !string.IsNullOrWhiteSpace(material)
        ? material
        : throw new ArgumentException("A layer says what it is made of.", nameof(material));

    private static DistanceRange CheckThickness(DistanceRange thickness) => thickness.From >= Distance.Zero
        ? thickness
        : throw new ArgumentException("A layer is zero or more thick.", nameof(thickness));
}
