#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Microsoft.CodeAnalysis;

namespace BoxHeights.Tests.Conventions;

/// <summary>What this process can refer to, read once for all tests that compile something.</summary>
internal static class CompilerInputs
{
    private static readonly Lazy<MetadataReference[]> Read = new(() =>
    [
        .. ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => !Path.GetFileName(path).StartsWith("BoxHeights", StringComparison.Ordinal)).Select(path => MetadataReference.CreateFromFile(path)),
    ]);

    /// <summary>Everything but this repository's own.</summary>
    public static IEnumerable<MetadataReference> References => Read.Value;
}
#endif
