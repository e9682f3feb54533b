using System.Globalization;

namespace BoxHeights.Rules;

/// <summary>One line of a fill calculation: so many allowances of a volume, and the paragraph that asks for them.</summary>
public sealed record FillLine
{
    internal FillLine(Wording what, int quarters, Volume allowance, string paragraph)
    {
        Wording = what;
        Quarters = quarters;
        Allowance = allowance;
        Paragraph = paragraph;
        Volume = allowance.MultiplyQuarters(quarters);
    }

    /// <summary>What takes the room.</summary>
    public string What => Wording.ToString();

    /// <summary>The same as data.</summary>
    public Wording Wording { get; }

    /// <summary>How many quarters of an allowance it takes.</summary>
    public int Quarters { get; }

    /// <summary>The allowance of one.</summary>
    public Volume Allowance { get; }

    /// <summary>The paragraph of the document that asks for it.</summary>
    public string Paragraph { get; }

    /// <summary>The volume taken.</summary>
    public Volume Volume { get; }

    /// <summary>The line as count × allowance = volume.</summary>
    public override string ToString() => ToString(LengthUnits.Inches);

    /// <summary>The line as count × allowance = volume: in cubic inches, or in cubic centimeters to a tenth.</summary>
    /// <param name="units">The units that the dwelling is marked in.</param>
    public string ToString(LengthUnits units) => Worded(units).ToString();

    internal Wording Worded(LengthUnits units) =>
        $"{Wording:what} {(Quarters / 4m).ToString("0.##", CultureInfo.InvariantCulture):count} × {Printed.Of(Allowance, units):allowance} = {Printed.Of(Volume, units):volume}";
}
