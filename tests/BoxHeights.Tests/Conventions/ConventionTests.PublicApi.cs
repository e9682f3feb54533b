#if !NETSTANDARD_ASSET
using System;
using System.IO;
using PublicApiGenerator;
using Xunit;

namespace BoxHeights.Tests.Conventions;

public sealed partial class ConventionTests
{
    // What callers may name is kept as text, so that a change of it is seen in the diff.
    [Fact]
    public void PublicApi_FileInTheRepository_IsTheSame()
    {
        string path = Path.Combine(Repository.Root, "src", "BoxHeights", "PublicApi.txt");
        string found = Library.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false, ExcludeAttributes = ["System.Diagnostics.DebuggerDisplayAttribute"] }).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("BOXHEIGHTS_WRITE") == "api")
        {
            File.WriteAllText(path, found);
        }

        Assert.True(
            found == (File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : ""),
            "src/BoxHeights/PublicApi.txt is out of date: run this test with BOXHEIGHTS_WRITE=api, and look at what changes.");
    }
}
#endif
