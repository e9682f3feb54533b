using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <content>Where a box may go, from where all others are now. The session stays as it is.</content>
public sealed partial class LayoutSession
{
    /// <inheritdoc cref="Evaluation.AllowedFor(string)"/>
    public Items<BandView> AllowedFor(string box)
    {
        int index = Find(box);
        return Whereabouts.Of(state, index).BandsAt(state.AtOf(index));
    }

    /// <inheritdoc cref="Evaluation.AllowedFor(PlacedBox)"/>
    public Items<BandView> AllowedFor(PlacedBox box) => At(box, null).BandsAt(box.Box.At);

    /// <inheritdoc cref="Evaluation.AllowedAt(string, Distance)"/>
    public AllowedView AllowedAt(string box, Distance along) => Whereabouts.Of(state, Find(box)).At(along);

    /// <inheritdoc cref="Evaluation.AllowedAt(PlacedBox, Distance)"/>
    public AllowedView AllowedAt(PlacedBox box, Distance along) => At(box, null).At(along);

    /// <inheritdoc cref="Evaluation.AllowedAlong(string, BoxHeight)"/>
    public AllowedView AllowedAlong(string box, BoxHeight height) => Whereabouts.Of(state, Find(box), height).Along(height.Value);

    /// <inheritdoc cref="Evaluation.AllowedAlong(PlacedBox, BoxHeight)"/>
    public AllowedView AllowedAlong(PlacedBox box, BoxHeight height) => At(box, height).Along(height.Value);

    /// <inheritdoc cref="Evaluation.TryNearest(string, Distance, BoxHeight, out NearestPlace?)"/>
    public bool TryNearest(string box, Distance along, BoxHeight height, [NotNullWhen(true)] out NearestPlace? nearest) =>
        (nearest = Whereabouts.Of(state, Find(box), height).Nearest(along, height)) is not null;

    /// <inheritdoc cref="Evaluation.TryNearest(PlacedBox, Distance, BoxHeight, out NearestPlace?)"/>
    public bool TryNearest(PlacedBox box, Distance along, BoxHeight height, [NotNullWhen(true)] out NearestPlace? nearest) => (nearest = At(box, height).Nearest(along, height)) is not null;

    private Whereabouts At(PlacedBox box, BoxHeight? terms) =>
        Whereabouts.Of(state, box ?? throw new ArgumentNullException(nameof(box)), terms) ?? throw DwellingAddresses.NoSuch(state.Dwelling, "surface", box.Address, nameof(box));
}
