using System.IO;
using System.Runtime.CompilerServices;

namespace BoxHeights.Tests;

/// <summary>Finds the repository that these tests were compiled from.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", ".."));

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine(Root, Path.Combine(path))).Replace("\r\n", "\n", System.StringComparison.Ordinal);

    private static string Here([CallerFilePath] string file = "") => file;
}
