using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights;

/// <content>Where a box may go: one that is described, or one that isn't there yet.</content>
public sealed partial class Evaluation
{
    /// <summary>Where along its wall and how high the center of a box may be, as far as placement rules say: what groups and rooms ask of it together isn't in it.</summary>
    /// <remarks>
    /// Heights level with old boxes are allowed where a rule takes them. Rules that let the box off for the sake of others in its room, and habits that firmer rules leave no room for,
    /// limit nothing; what others over the same counter let it off isn't in it, but in <see cref="AllowedAt(string, Distance)"/>.
    /// </remarks>
    /// <param name="box">The id of the box.</param>
    /// <returns>The stretches of its wall from left to right; none for a box on a ceiling or floor, and one of which the edge that its height is to isn't stated.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such box.</exception>
    public Items<BandView> AllowedFor(string box)
    {
        lock (state.Gate)
        {
            int index = IndexOf(box);
            return Whereabouts.Of(state, index).BandsAt(state.AtOf(index));
        }
    }

    /// <summary>The same for a box that isn't there yet.</summary>
    /// <param name="box">The box and its surface. Its height is one in whose terms it is to be set.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public Items<BandView> AllowedFor(PlacedBox box)
    {
        lock (state.Gate)
        {
            return At(box, null).BandsAt(box.Box.At);
        }
    }

    /// <summary>The heights that rules allow a box at a place along its wall: each rule's, and all together. A point on a drawing costs microseconds.</summary>
    /// <param name="box">The id of the box.</param>
    /// <param name="along">Its center from the wall's left end; for one in a ceiling or floor it says nothing.</param>
    /// <returns>Readings of the stick that sets the box, to the edge and from the datum of its own height; to its center above the subfloor where it has none.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such box.</exception>
    public AllowedView AllowedAt(string box, Distance along)
    {
        lock (state.Gate)
        {
            return Whereabouts.Of(state, IndexOf(box)).At(along);
        }
    }

    /// <summary>The same for a box that isn't there yet.</summary>
    /// <param name="box">The box and its surface.</param>
    /// <param name="along">Its center from the wall's left end.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public AllowedView AllowedAt(PlacedBox box, Distance along)
    {
        lock (state.Gate)
        {
            return At(box, null).At(along);
        }
    }

    /// <summary>The places along its wall that rules allow a box at a height: each rule's, and all together.</summary>
    /// <param name="box">The id of the box.</param>
    /// <param name="height">The height, in any terms.</param>
    /// <returns>Centers from the wall's left end. On a wall along a stair only places at multiples of <see cref="EvaluatorOptions.AlongStep"/> are asked about, since each is another.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such box.</exception>
    public AllowedView AllowedAlong(string box, BoxHeight height)
    {
        lock (state.Gate)
        {
            return Whereabouts.Of(state, IndexOf(box), height).Along(height.Value);
        }
    }

    /// <summary>The same for a box that isn't there yet.</summary>
    /// <param name="box">The box and its surface.</param>
    /// <param name="height">The height, in any terms.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public AllowedView AllowedAlong(PlacedBox box, BoxHeight height)
    {
        lock (state.Gate)
        {
            return At(box, height).Along(height.Value);
        }
    }

    /// <summary>Finds the place nearest to one at which every rule is content with a box, rounded to what is marked.</summary>
    /// <remarks>With the slack that remedies keep where there is such a place, and beside a stud for a box that is nailed to one.</remarks>
    /// <param name="box">The id of the box.</param>
    /// <param name="along">The place, such as that of a pointer.</param>
    /// <param name="height">The height, in the terms in which it is to be set.</param>
    /// <param name="nearest">The nearest in a straight line.</param>
    /// <returns>False where there is none on the whole wall.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such box.</exception>
    public bool TryNearest(string box, Distance along, BoxHeight height, [NotNullWhen(true)] out NearestPlace? nearest)
    {
        lock (state.Gate)
        {
            return (nearest = Whereabouts.Of(state, IndexOf(box), height).Nearest(along, height)) is not null;
        }
    }

    /// <summary>The same for a box that isn't there yet.</summary>
    /// <param name="box">The box and its surface.</param>
    /// <param name="along">The place, such as that of a pointer.</param>
    /// <param name="height">The height, in the terms in which it is to be set.</param>
    /// <param name="nearest">The nearest in a straight line.</param>
    /// <returns>False where there is none on the whole wall.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The dwelling has no such surface.</exception>
    public bool TryNearest(PlacedBox box, Distance along, BoxHeight height, [NotNullWhen(true)] out NearestPlace? nearest)
    {
        lock (state.Gate)
        {
            return (nearest = At(box, height).Nearest(along, height)) is not null;
        }
    }

    private Whereabouts At(PlacedBox box, BoxHeight? terms) =>
        Whereabouts.Of(state, box ?? throw new ArgumentNullException(nameof(box)), terms) ?? throw NoSuch("surface", box.Address, nameof(box));

    private int IndexOf(string box) => state.Boxes.FindIndex(one => one.Source.Id == (box ?? throw new ArgumentNullException(nameof(box)))) is >= 0 and var index
        ? index
        : throw NoSuch("box", box, nameof(box));
}
