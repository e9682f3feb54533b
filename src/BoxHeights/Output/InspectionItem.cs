using System;
using System.Collections.Generic;

namespace BoxHeights;

/// <summary>A thing that inspectors look at before a wall is closed, and the boxes that it is looked at. All of them are rows of one table.</summary>
/// <remarks>Numbers are in inches as the document has them: it gives rounded metric figures that don't convert back.</remarks>
internal sealed class InspectionItem
{
    private readonly Func<InspectedBox, bool> appliesTo;

    private InspectionItem(string id, Distance? limit, string text, Citation citation, Func<InspectedBox, bool> appliesTo)
    {
        Id = id;
        Limit = limit;
        Text = limit is { } number ? text.Replace("#", number.ToString("in")) : text;
        Citation = citation;
        this.appliesTo = appliesTo;
    }

    /// <summary>In the order in which a box is looked over, from its cables to its front. A # in a text stands for the limit.</summary>
    public static Items<InspectionItem> All { get; } = new InspectionItem[]
    {
        new("sheath-inside", Inches(0, 1, 4), "cable sheath runs at least # into the box, past the clamp or entry", Nec("314.17"), _ => true),
        new("secured-near", Inches(8), "each cable fastened within # of the box, measured along its sheath: no clamp holds it", Nec("314.17(C) Exception (2017 numbering)"), box => box.MayEnterUnclamped),
        new("held-at-box", null, "each cable held at the box by a clamp or fitting", Nec("314.17", Confidence.FromMemory), box => !box.MayEnterUnclamped),
        new("secured", Inches(12), "each cable secured within # of the box; along the cable is the stricter reading", Nec("334.30"), box => !box.MayEnterUnclamped && !box.IsCutIn),
        new("secured-or-fished", Inches(12), "each cable that isn't fished behind a finished surface secured within # of the box", Nec("334.30", Confidence.FromMemory), box => box.IsCutIn),
        new("free-conductor", Inches(6), "every conductor free for at least # from where it leaves the sheath", Nec("300.14"), _ => true),
        new("out-of-opening", Inches(3), "every conductor long enough to reach at least # outside the opening", Nec("300.14"), box => box.HasSmallOpening),
        new("hole-edge", Inches(1, 1, 4), "edge of every bored hole at least # from the nearest edge of the wood, or a steel plate of 1/16 in", Nec("300.4(A)(1)"), box => box.IsInFraming),
        new("cable-edge", Inches(1, 1, 4), "cable along framing or furring at least # from the edge that screws go into, or a steel plate, unless it is fished behind a finished surface", Nec("300.4(D)"), box => box.IsInFraming),
        new("front-behind", Setback, "front of the box or ring at most # behind the finished surface", Nec("314.20"), box => !box.IsOnFace && box.Burns == SurfaceBurns.No),
        new("front-flush", Inches(0), "front of the box or ring flush with the finished surface, which burns, or proud of it", Nec("314.20"), box => !box.IsOnFace && box.Burns == SurfaceBurns.Yes),
        new("front-ask", Setback, "find out whether the finished surface burns: front of the box or ring flush with it or proud if it does, at most # behind it if not", Nec("314.20"), box => !box.IsOnFace && box.Burns == SurfaceBurns.NotKnown),
        new("board-gap", Inches(0, 1, 8), "gap in board or plaster around the box at most #", Nec("314.21"), box => !box.IsOnFace && box.Burns != SurfaceBurns.Yes),
    };

    private static Distance Setback => Inches(0, 1, 4);

    public string Id { get; }

    public Distance? Limit { get; }

    public string Text { get; }

    public Citation Citation { get; }

    public static IEnumerable<InspectionItem> For(InspectedBox box)
    {
        foreach (InspectionItem item in All)
        {
            if (item.appliesTo(box))
            {
                yield return item;
            }
        }
    }

    private static Distance Inches(int whole, int numerator = 0, int denominator = 1) => Distance.FromInches(whole, numerator, denominator);

    private static Citation Nec(string section, Confidence confidence = Confidence.Confirmed) => new("NEC (2017 to 2023)", section, confidence);
}
