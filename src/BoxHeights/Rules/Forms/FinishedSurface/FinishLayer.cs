using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>What a box opens through, from the framing out to a finished surface: the board, and a finish on it where the box's opening meets one.</summary>
internal sealed class FinishLayer
{
    private readonly Func<Wording> text;

    private FinishLayer(LimitZone zone, Distance nearest, Distance? deepest, bool? burns, Func<Wording> text)
    {
        Zone = zone;
        Nearest = nearest;
        Deepest = deepest;
        Burns = burns;
        this.text = text;
    }

    /// <summary>Where on the surface the box meets it.</summary>
    public LimitZone Zone { get; }

    /// <summary>From the framing to the finished surface, at the least.</summary>
    public Distance Nearest { get; }

    /// <summary>The same at the most; null where nobody says how thick the finish is.</summary>
    public Distance? Deepest { get; }

    /// <summary>Whether the finished surface burns; null where that isn't stated.</summary>
    public bool? Burns { get; }

    /// <summary>What lies there, in words.</summary>
    public Wording Text => text();

    /// <summary>The bare board, which lies everywhere, and every finish on it; none where the board's thickness isn't stated. What clads an outside face isn't board.</summary>
    public static List<FinishLayer> Of(PlacementSite site)
    {
        List<FinishLayer> layers = [];
        if (site.IsOutside || site.BoardThickness is not { } board)
        {
            return layers;
        }

        Wording Board() => $"{Printed.Exactly(board, site.Units):board} of board";
        layers.Add(new(default, board.From, board.To, false, Board));
        foreach (Finish finish in site.Surface.Wall?.Finishes ?? default)
        {
            DistanceRange bed = finish.Bed ?? new DistanceRange(Distance.Zero, finish.IsSetInMortar ? site.Usual.MostBed : Distance.Zero);
            DistanceRange under = board + bed;
            layers.Add(new(
                ZoneOf(site, finish),
                under.From + (finish.Thickness?.From ?? Distance.Zero),
                finish.Thickness is { } thickness ? under.To + thickness.To : null,
                finish.Burns,
                () => Finished(finish)));

            Wording Finished(Finish it)
            {
                Wording kind = Wording.Term(it.Kind.Name);
                Wording said = it.Thickness is { } known ? $"{Printed.Exactly(known, site.Units):thickness} of {kind:finish}" : kind;
                return bed == Distance.Zero ? $"{Board():board} and {said:finish}" : (Wording)$"{Board():board} and {Printed.Exactly(bed, site.Units):bed} of bed under {said:finish}";
            }
        }

        return layers;
    }

    /// <summary>The finished surface that a box at a place has to come out to; null where it isn't known exactly.</summary>
    public static Distance? SurfaceAt(PlacementSite site, in Place place)
    {
        Distance? surface = null;
        foreach (FinishLayer layer in Of(site))
        {
            bool? meets = layer.Zone.Holds(place);
            if (meets == false)
            {
                continue;
            }

            if (meets is null || layer.Deepest != layer.Nearest)
            {
                return null;
            }

            surface = surface is { } other && other > layer.Nearest ? other : layer.Nearest;
        }

        return surface;
    }

    /// <summary>Where the box's opening meets a finish; one that only touches its edge doesn't.</summary>
    private static LimitZone ZoneOf(PlacementSite site, Finish finish)
    {
        Distance reach = site.Box.Size.HalfWidth - Distance.FromTicks(1);
        AllowedHeights over = finish.Top is { } top ? site.AtLeast(TargetLine.BoxBottom, top, finish.Left, finish.Right) : AllowedHeights.Nothing;
        AllowedHeights under = finish.Bottom is { } bottom ? site.AtMost(TargetLine.BoxTop, bottom, finish.Left, finish.Right) : AllowedHeights.Nothing;
        return new(finish.Left - reach, finish.Right + reach, over | under);
    }
}
