global using static BoxHeights.Tests.Lengths;
using BoxHeights.Tests.Cases;

namespace BoxHeights.Tests;

/// <summary>Lengths as tests write them, in every file by these names.</summary>
internal static class Lengths
{
    public static Distance In(decimal inches) => Distance.FromInches(inches);

    /// <summary>Inches as a case writes them: "47-3/4".</summary>
    public static Distance In(string inches) => CaseFile.Inches(inches);

    public static Distance Eighths(int eighths) => Distance.FromInches(eighths / 8m);

    public static Distance Mm(decimal millimeters) => Distance.FromMillimeters(millimeters);
}
