namespace BoxHeights;

/// <summary>Why a text isn't a measure.</summary>
internal enum TextFault
{
    None,
    Empty,
    NumberExpected,
    LengthUnitExpected,
    VolumeUnitExpected,
    InchUnitExpected,
    Comma,
    DigitAfterPointExpected,
    ZeroDenominator,
    ImproperFraction,
    TooManyDigits,
    OffGrid,
    TooLarge,
    FeetWithPart,
    WrongOrder,
    Trailing,
}

/// <summary>Faults in words.</summary>
internal static class TextFaults
{
    internal static string Reason(this TextFault fault) => fault switch
    {
        TextFault.Empty => "there is nothing to read",
        TextFault.NumberExpected => "a number is expected",
        TextFault.LengthUnitExpected => "add a unit: in, ft, mm, cm or m",
        TextFault.VolumeUnitExpected => "say in3 or cm3",
        TextFault.InchUnitExpected => "say in for the inches after the feet",
        TextFault.Comma => "there is a comma: decimals take a point, and thousands are not separated",
        TextFault.DigitAfterPointExpected => "a digit is expected after the point",
        TextFault.ZeroDenominator => "a fraction is not over 0",
        TextFault.ImproperFraction => "the fraction beside a whole number is less than 1",
        TextFault.TooManyDigits => "there are too many digits",
        TextFault.OffGrid => "the number is between two steps of the exact grid (ParseRounded takes the nearest where there is one)",
        TextFault.TooLarge => "the number is beyond the scale",
        TextFault.FeetWithPart => "feet before inches are a whole number",
        TextFault.WrongOrder => "the first end is above the second",
        _ => "something follows that is not part of it",
    };
}
