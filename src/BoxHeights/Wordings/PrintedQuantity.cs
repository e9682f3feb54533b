using System;

namespace BoxHeights;

/// <summary>Which way a quantity goes that can't be shown exactly.</summary>
public enum Rounding
{
    /// <summary>To the nearest: what was measured.</summary>
    Nearest = 0,

    /// <summary>Down: a limit that isn't to be passed.</summary>
    Down = 1,

    /// <summary>Up: a limit that is to be reached, and what something is off by.</summary>
    Up = 2,

    /// <summary>Not at all: it is shown exactly, in millimeters where inches can't.</summary>
    None = 3,
}

/// <summary>A quantity as it is told on site: in units, and rounded to what a tape shows in the direction that keeps it safe.</summary>
/// <param name="Quantity">The exact amount.</param>
/// <param name="Units">The units in which it is told.</param>
/// <param name="Rounding">Which way it is rounded.</param>
public readonly record struct PrintedQuantity(Quantity Quantity, LengthUnits Units, Rounding Rounding)
{
    /// <summary>The same amount in other units, rounded in the same direction.</summary>
    /// <param name="units">The units.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no such units.</exception>
    public PrintedQuantity In(LengthUnits units) => this with
    {
        Units = units is LengthUnits.Inches or LengthUnits.Millimeters ? units : throw new ArgumentOutOfRangeException(nameof(units), units, "There are no such units."),
    };

    /// <summary>As it is printed: "48-1/2 in".</summary>
    public static implicit operator string(PrintedQuantity printed) => printed.ToString();

    /// <summary>As it is printed: "48-1/2 in".</summary>
    public override string ToString() => Printed.Text(this);
}
