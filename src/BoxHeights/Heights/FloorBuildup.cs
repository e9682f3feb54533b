using System;

namespace BoxHeights;

/// <summary>What lies on the subfloor: the layers from it up to the finished floor.</summary>
[Described(nameof(Layers))]
public sealed partial record FloorBuildup
{
    /// <summary>The finish isn't chosen yet: anything from 0 to 1-1/4 in.</summary>
    /// <remarks>Common practice, no source: from a sealed slab to strip flooring or tile on a bed, as <see cref="UsualMeasures.Floor"/> has it. A thicker floor has to be said.</remarks>
    public static FloorBuildup NotChosen { get; } =
        OfAnyIn(UsualMeasures.Generic.Floor);

    /// <summary>The layers, from the subfloor up.</summary>
    public Items<FloorLayer> Layers { get; init; }

    /// <summary>All layers together; a range if one of them is.</summary>
    /// <exception cref="OverflowException">The layers together are too thick to count.</exception>
    public DistanceRange Thickness
    {
        get
        {
            DistanceRange sum = default;
            foreach (FloorLayer layer in Layers)
            {
                sum += layer.Thickness;
            }

            return sum;
        }
    }

    /// <summary>A floor of these layers.</summary>
    /// <param name="layers">From the subfloor up.</param>
    /// <exception cref="ArgumentException">One of them is null.</exception>
    public static FloorBuildup Of(params FloorLayer[] layers) => new(layers);

    /// <summary>One that isn't chosen yet, in a house with such usual measures.</summary>
    internal static FloorBuildup NotChosenIn(UsualMeasures usual) => usual.Floor == UsualMeasures.Generic.Floor ? NotChosen : OfAnyIn(usual.Floor);

    private static FloorBuildup OfAnyIn(DistanceRange thickness) => Of(new FloorLayer("not chosen", thickness));

    /// <summary>The layers in words, from the subfloor up: "mortar, 3/8 in + tile, 3/8 in"; "bare subfloor" if there are none.</summary>
    public override string ToString() => Layers.Count == 0 ? "bare subfloor" : string.Join(" + ", Layers);
}
