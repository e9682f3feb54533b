using System.IO;
using BoxHeights.PlugIn;
using Xunit;

namespace BoxHeights.Tests;

/// <summary>The house that the .NET Framework console builds from the same source and judges against the same lines.</summary>
public class PlugInHouseTests
{
    [Fact]
    public void Findings_OfTheHouseBuiltInOldCSharp()
    {
        using Stream? stream = typeof(PlugInHouseTests).Assembly.GetManifestResourceStream("expected-findings.txt");
        Assert.NotNull(stream);
        using StreamReader reader = new(stream);
        Assert.Equal(reader.ReadToEnd(), string.Join("\n", PlugInHouse.Lines()) + "\n");
    }
}
