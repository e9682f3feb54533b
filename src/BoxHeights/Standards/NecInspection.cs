using System.Collections.Generic;
using BoxHeights.Rules;

namespace BoxHeights.Standards;

/// <summary>What rough inspections turn up most in wiring with nonmetallic-sheathed cable, editions 2017 to 2023, in the order in which a box is looked over: from its cables to its front.</summary>
/// <remarks>Only what can be seen before there is board: not the gap of 314.21. Numbers are in inches as the document has them: it gives rounded metric figures that don't convert back.</remarks>
internal static class NecInspection
{
    public static RuleSet Rows { get; } = new(Items());

    private static IEnumerable<Rule> Items()
    {
        // 314.17(C) Exception (2017): the box that a cable may enter without a clamp. 300.14: an opening smaller than 8 in either way.
        PlateSize unclamped = new(Inches(2, 1, 4), Inches(4));
        Items<SurfaceBurns> holds = new[] { SurfaceBurns.No };
        int order = 0;
        yield return Item("sheath-inside", "cable sheath runs at least 1/4 in into the box, past the clamp or entry", Inches(0, 1, 4), "314.17");
        yield return Item("secured-near", "each cable fastened within 8 in of the box, measured along its sheath: no clamp holds it", Inches(8), "314.17(C) Exception (2017 numbering)") with { UnclampedUpTo = unclamped, Unclamped = true };
        yield return Item("held-at-box", "each cable held at the box by a clamp or fitting", null, "314.17", Confidence.FromMemory) with { UnclampedUpTo = unclamped, Unclamped = false };
        yield return Item("secured", "each cable secured within 12 in of the box; along the cable is the stricter reading", Inches(12), "334.30") with { UnclampedUpTo = unclamped, Unclamped = false, CutIn = false };
        yield return Item("secured-or-fished", "each cable that isn't fished behind a finished surface secured within 12 in of the box", Inches(12), "334.30", Confidence.FromMemory) with { CutIn = true };
        yield return Item("free-conductor", "every conductor free for at least 6 in from where it leaves the sheath", Inches(6), "300.14");
        yield return Item("out-of-opening", "every conductor long enough to reach at least 3 in outside the opening", Inches(3), "300.14") with { OpeningUnder = Inches(8) };
        yield return Item("hole-edge", "edge of every bored hole at least 1-1/4 in from the nearest edge of the wood, or a steel plate of 1/16 in", Inches(1, 1, 4), "300.4(A)(1)") with { InFraming = true, ElsePlate = true };
        yield return Item("cable-edge", "cable along framing or furring at least 1-1/4 in from the edge that screws go into, or a steel plate, unless it is fished behind a finished surface", Inches(1, 1, 4), "300.4(D)") with { InFraming = true, ElsePlate = true };
        yield return Item("front-behind", "front of the box or ring at most 1/4 in behind the finished surface", BoxSizes.MostBehind, "314.20") with { Surfaces = holds };
        yield return Item("front-flush", "front of the box or ring flush with the finished surface, which burns, or proud of it", Distance.Zero, "314.20") with { Surfaces = new[] { SurfaceBurns.Yes } };
        yield return Item("front-ask", "find out whether the finished surface burns: front of the box or ring flush with it or proud if it does, at most 1/4 in behind it if not", BoxSizes.MostBehind, "314.20") with { Surfaces = new[] { SurfaceBurns.NotKnown } };

        InspectionItem Item(string id, string text, Distance? limit, string section, Confidence confidence = Confidence.Confirmed) =>
            new(id, text, new("NEC (2017 to 2023)", section, confidence), order++) { Limit = limit };
    }

    private static Distance Inches(int whole, int numerator = 0, int denominator = 1) => Distance.FromInches(whole, numerator, denominator);
}
