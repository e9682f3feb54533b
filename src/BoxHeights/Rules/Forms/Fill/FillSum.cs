using System;
using System.Collections.Generic;

namespace BoxHeights.Rules;

/// <summary>The sum of what is in a box, after a document. Most boxes are asked for their total alone, so lines are written down only where there is a list for them.</summary>
internal struct FillSum
{
    private static readonly Wording IsolatedGrounds = $"isolated grounds";
    private static readonly Wording EquipmentGrounds = $"equipment grounds";
    private static readonly Wording PlasticBarriers = $"nonmetallic barriers";
    private static readonly Wording MetalBarriers = $"metal barriers";
    private static readonly Wording TerminalBlocks = $"terminal blocks";
    private static readonly Wording Hickey = $"hickey";
    private static readonly Wording LuminaireStud = $"luminaire stud";
    private static readonly Wording Clamps = $"internal clamps";

    private readonly FillContents contents;
    private readonly List<FillLine>? lines;
    private Volume total;

    private FillSum(FillContents contents, List<FillLine>? lines)
    {
        this.contents = contents;
        this.lines = lines;
    }

    /// <summary>Adds up what is in a box.</summary>
    /// <param name="contents">What is in it.</param>
    /// <param name="counting">How things count.</param>
    /// <param name="lines">Takes the lines of the sum; null where only the total is wanted.</param>
    public static Volume Of(FillContents contents, FillCounting counting, List<FillLine>? lines)
    {
        FillSum sum = new(contents, lines);
        sum.Add(counting);
        return sum.total;
    }

    private void Add(FillCounting counting)
    {
        for (int place = 1; place < ConductorSize.Count; place++)
        {
            ConductorSize size = ConductorSize.At(place);
            if (contents.ConductorsOf(size) is > 0 and var count)
            {
                Take(lines is null ? null : (Wording)$"{size.ToString():size} conductors", 4 * count, counting.AllowanceOf(size), counting.Paragraphs.Conductors);
            }
        }

        Take(Clamps, contents.HasClamps ? 4 : 0, counting.AllowanceOf(contents.Largest), counting.Paragraphs.Clamps);

        // Of studs and hickeys each type counts once, however many there are.
        Take(LuminaireStud, 4 * Math.Min(1, contents.CountOf(BoxFitting.LuminaireStud)), counting.AllowanceOf(contents.Largest), counting.Paragraphs.Fittings);
        Take(Hickey, 4 * Math.Min(1, contents.CountOf(BoxFitting.Hickey)), counting.AllowanceOf(contents.Largest), counting.Paragraphs.Fittings);
        for (int place = 1; place < ConductorSize.Count; place++)
        {
            ConductorSize size = ConductorSize.At(place);
            if (contents.YokesOn(size) is > 0 and var count)
            {
                Take(lines is null ? null : count == 1 ? $"device on {size.ToString():size}" : (Wording)$"devices on {size.ToString():size}", 4 * counting.ForADevice * count, counting.AllowanceOf(size), counting.Paragraphs.Devices);
            }
        }

        AddGrounds(counting);
        if (counting.CountsTerminalBlocks)
        {
            Take(TerminalBlocks, 4 * contents.CountOf(BoxFitting.TerminalBlock), counting.AllowanceOf(contents.OnTerminals), counting.Paragraphs.TerminalBlocks);
        }

        Take(MetalBarriers, 4 * contents.CountOf(BoxFitting.MetalBarrier), counting.MetalBarrier, counting.Paragraphs.Barriers);
        Take(PlasticBarriers, 4 * contents.CountOf(BoxFitting.PlasticBarrier), counting.PlasticBarrier, counting.Paragraphs.Barriers);
    }

    private void AddGrounds(FillCounting counting)
    {
        if (counting.Grounds == GroundCounting.QuarterBeyondFour)
        {
            ConductorSize largest = contents.LargestGround > contents.LargestIsolatedGround ? contents.LargestGround : contents.LargestIsolatedGround;
            int count = contents.Grounds + contents.IsolatedGrounds;
            Take(EquipmentGrounds, count == 0 ? 0 : Math.Max(4, count), counting.AllowanceOf(largest), counting.Paragraphs.Grounds);
            return;
        }

        Take(EquipmentGrounds, 4 * Math.Min(1, contents.Grounds), counting.AllowanceOf(contents.LargestGround), counting.Paragraphs.Grounds);
        Take(IsolatedGrounds, 4 * Math.Min(1, contents.IsolatedGrounds), counting.AllowanceOf(contents.LargestIsolatedGround), counting.Paragraphs.Grounds);
    }

    private void Take(Wording? what, int quarters, Volume allowance, string paragraph)
    {
        if (quarters > 0)
        {
            total += allowance.MultiplyQuarters(quarters);
            lines?.Add(new(what!, quarters, allowance, paragraph));
        }
    }
}
