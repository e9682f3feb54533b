using System;
using System.IO;

namespace BoxHeights.Tests;

/// <summary>Finds the repository that the tests run in: the nearest folder above them that holds the solution.</summary>
internal static class Repository
{
    public static string Root { get; } = Above(AppContext.BaseDirectory);

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine(Root, Path.Combine(path))).Replace("\r\n", "\n", StringComparison.Ordinal);

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "BoxHeights.sln")) ? folder : Above(Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("No folder above the tests holds the solution."));
}
