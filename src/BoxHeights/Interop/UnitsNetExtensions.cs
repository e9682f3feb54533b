using System;
using UnitsNet;
using UnitsNet.Units;

namespace BoxHeights.Interop;

/// <summary>The border to UnitsNet: its lengths and volumes are doubles with a unit, so coming in they are rounded to the nearest tick.</summary>
public static class UnitsNetExtensions
{
    /// <summary>A length as a distance: through its own unit's inches or millimeters, rounded to the nearest tick of 12.5 nm.</summary>
    /// <param name="length">The length.</param>
    /// <exception cref="ArgumentException">It isn't a finite number.</exception>
    /// <exception cref="OverflowException">It is too long to be a distance.</exception>
    public static Distance ToDistance(this Length length) => IsImperial(length.Unit)
        ? Distance.FromInchesRounded(length.Unit == LengthUnit.Inch ? length.Value : length.Inches)
        : Distance.FromMillimetersRounded(length.Unit == LengthUnit.Millimeter ? length.Value : length.Millimeters);

    /// <summary>A distance as a length in millimeters, the nearest double.</summary>
    /// <param name="distance">The distance.</param>
    public static Length ToLength(this Distance distance) => Length.FromMillimeters((double)distance.Millimeters);

    /// <summary>A volume of UnitsNet as a volume of this library, rounded to the nearest picoliter.</summary>
    /// <param name="volume">The volume.</param>
    /// <exception cref="ArgumentException">It isn't a finite number.</exception>
    public static Volume ToVolume(this UnitsNet.Volume volume)
    {
        double picoliters = volume.CubicMillimeters * 1e6;
        return double.IsNaN(picoliters) || Math.Abs(picoliters) >= long.MaxValue
            ? throw new ArgumentException("The volume isn't a number that can be held.", nameof(volume))
            : Volume.FromPicoliters((long)Math.Round(picoliters));
    }

    /// <summary>A volume as a volume of UnitsNet in cubic inches, the nearest double.</summary>
    /// <param name="volume">The volume.</param>
    public static UnitsNet.Volume ToUnitsNet(this Volume volume) => UnitsNet.Volume.FromCubicInches((double)volume.CubicInches);

    private static bool IsImperial(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Foot or LengthUnit.Yard;
}
