#if !NETSTANDARD_ASSET
using System;
using System.Linq;
using BoxHeights.Tests.Conventions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Xunit;

namespace BoxHeights.Tests;

/// <summary>Each sample of the README compiles as it is pasted; the plug-in's by C# 7.3, within a method, and the rule by C# 9.</summary>
public class ReadmeSampleTests
{
    private static readonly string[] Samples = Repository.Read("README.md").Split("```").Where((_, index) => index % 2 == 1)
        .Where(block => block.StartsWith("cs\n", StringComparison.Ordinal) || block.StartsWith("csharp\n", StringComparison.Ordinal))
        .Select(block => block[(block.IndexOf('\n', StringComparison.Ordinal) + 1)..]).ToArray();

    private static readonly MetadataReference Library = MetadataReference.CreateFromFile(typeof(Distance).Assembly.Location);

    [Fact]
    public void Samples_AreEight() => Assert.Equal(8, Samples.Length);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Sample_AsPasted_Compiles(int sample)
    {
        // What begins with #: is for the SDK, not for the compiler.
        string code = string.Join('\n', Samples[sample].Split('\n').Where(line => !line.StartsWith("#:", StringComparison.Ordinal)));
        bool isRule = code.Contains(": PlacementRule", StringComparison.Ordinal);
        bool isPlugIn = code.Contains("From the host", StringComparison.Ordinal);
        if (isPlugIn)
        {
            string[] lines = code.Split('\n');
            code = string.Join('\n', lines.Where(line => line.StartsWith("using ", StringComparison.Ordinal))) + "\nclass Pasted { static void Run() {\n"
                + string.Join('\n', lines.Where(line => !line.StartsWith("using ", StringComparison.Ordinal))) + "\n} }";
        }

        CSharpCompilation compilation = CSharpCompilation.Create(
            "Pasted",
            [CSharpSyntaxTree.ParseText(code, new CSharpParseOptions(isPlugIn ? LanguageVersion.CSharp7_3 : isRule ? LanguageVersion.CSharp9 : LanguageVersion.Preview))],
            CompilerInputs.References.Append(Library),
            new CSharpCompilationOptions(isPlugIn || isRule ? OutputKind.DynamicallyLinkedLibrary : OutputKind.ConsoleApplication));
        Assert.Empty(compilation.GetDiagnostics().Where(one => one.Severity >= DiagnosticSeverity.Warning).Select(one => one.ToString()));
    }
}
#endif
