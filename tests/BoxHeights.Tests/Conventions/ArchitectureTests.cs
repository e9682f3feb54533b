#if !NETSTANDARD_ASSET
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Xunit;

namespace BoxHeights.Tests.Conventions;

/// <summary>Imports between the rooms of src/BoxHeights run one way. The compiler says what each name means.</summary>
public sealed class ArchitectureTests
{
    private static readonly Dictionary<string, string[]> MayUse = new(StringComparer.Ordinal)
    {
        ["Measures"] = [],
        ["Boxes"] = ["Measures"],
        ["Heights"] = ["Measures", "Boxes"],
        ["Layout"] = ["Measures", "Boxes", "Heights"],
        ["Wordings"] = ["Measures", "Heights", "Layout"],
        ["Framing"] = ["Measures", "Boxes", "Heights", "Layout"],
        ["Resolving"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing"],
        ["Rules"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Resolving"],
        ["Views"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Resolving", "Rules"],
        ["Standards"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Rules"],
        ["Planning"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Resolving", "Rules", "Standards"],
        ["Output"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Resolving", "Rules"],
        ["Pictures"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Rules", "Views", "Output"],
        ["Booklets"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Rules", "Views", "Output", "Pictures"],
        ["Interop"] = ["Measures", "Boxes", "Heights", "Layout", "Wordings", "Framing", "Resolving", "Rules", "Views", "Standards", "Planning", "Output", "Pictures", "Booklets"],
    };

    /// <summary>The folders inside of Rules, by the files in them: forms know no engine, and nobody knows a form. "Rules" are the files that lie in no folder there.</summary>
    private static readonly Dictionary<string, string[]> InRules = new(StringComparer.Ordinal)
    {
        ["Terms"] = [],
        ["Families"] = ["Terms"],
        ["Forms/Things"] = ["Terms", "Families"],
        ["Forms/Outlets"] = ["Terms", "Families", "Forms/Things"],
        ["Forms/Fill"] = ["Terms", "Families", "Forms/Outlets"],
        ["Forms/Framing"] = ["Terms", "Families", "Forms/Fill"],
        ["Forms/FinishedSurface"] = ["Terms", "Families"],
        ["Forms/Clearances"] = ["Terms", "Families", "Forms/Framing"],
        ["Forms/Heights"] = ["Terms", "Families", "Forms/Things"],
        ["Forms/Zones"] = ["Terms", "Families", "Forms/Things", "Forms/Clearances"],
        ["Forms/Lights"] = ["Terms", "Families", "Forms/Things", "Forms/Outlets"],
        ["Forms/Runs"] = ["Terms", "Families", "Forms/Things", "Forms/Outlets"],
        ["Forms/RequiredOutlets"] = ["Terms", "Families", "Forms/Things", "Forms/Outlets", "Forms/Runs"],
        ["Forms/Stairs"] = ["Terms", "Families"],
        ["Forms/RatedWalls"] = ["Terms", "Families"],
        ["Forms/Circuits"] = ["Terms", "Families"],
        ["Habits"] = ["Terms", "Families"],
        ["Engine"] = ["Terms", "Families", "Habits"],
        ["Results"] = ["Terms", "Families", "Habits", "Engine"],
        ["Mending"] = ["Terms", "Families", "Habits", "Engine", "Results"],
        ["Rules"] = ["Terms", "Families", "Habits", "Engine", "Results", "Mending"],
    };

    private static readonly string Source = Path.Combine(Repository.Root, "src", "BoxHeights");

    private static readonly Lazy<CSharpCompilation> Compiled = new(Compile);

    [Fact]
    public void Rooms_AreThoseOfTheMap()
    {
        string[] folders = Directory.GetDirectories(Source).Select(folder => Path.GetFileName(folder)).Where(name => name is not ("bin" or "obj")).ToArray();
        Assert.Empty(folders.Except(MayUse.Keys));
    }

    [Fact]
    public void Rooms_UseOnlyWhatIsAboveThem() => Assert.Empty(Wrong(MayUse, RoomOf, 1000));

    [Fact]
    public void FoldersOfRules_UseOnlyWhatIsAboveThem()
    {
        Assert.Empty(Files().Select(FolderInRules).Where(folder => folder.Length > 0).Except(InRules.Keys));
        Assert.Empty(Wrong(InRules, FolderInRules, 200));
    }

    [Fact]
    public void Forms_AreNamedInTheirFolderAndInStandardsAlone()
    {
        CSharpCompilation compilation = Compiled.Value;
        Dictionary<string, string> forms = new(StringComparer.Ordinal);
        foreach (SyntaxTree tree in compilation.SyntaxTrees.Where(tree => FolderInRules(tree.FilePath).StartsWith("Forms/", StringComparison.Ordinal)))
        {
            foreach (TypeDeclarationSyntax type in tree.GetRoot().DescendantNodes().OfType<TypeDeclarationSyntax>())
            {
                if (compilation.GetSemanticModel(tree).GetDeclaredSymbol(type) is INamedTypeSymbol { IsAbstract: false, BaseType.Name: "PlacementRule" or "LimitRule" or "ProvisionRule" or "SpaceRule" } form)
                {
                    forms[form.Name] = FolderInRules(tree.FilePath);
                }
            }
        }

        Assert.InRange(forms.Count, 15, 60);
        SortedSet<string> wrong = new(StringComparer.Ordinal);
        foreach (SyntaxTree tree in compilation.SyntaxTrees.Where(tree => RoomOf(tree.FilePath) != "Standards"))
        {
            foreach (SimpleNameSyntax name in tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>())
            {
                if (forms.TryGetValue(name.Identifier.ValueText, out string? home) && home != FolderInRules(tree.FilePath)
                    && compilation.GetSemanticModel(tree).GetSymbolInfo(name).Symbol is ITypeSymbol type && type.Name == name.Identifier.ValueText)
                {
                    wrong.Add(Path.GetRelativePath(Source, tree.FilePath) + " names " + type.Name);
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Borders_AreTouchedOnlyInInterop()
    {
        string[] strangers = Files()
            .Where(file => RoomOf(file) != "Interop" && File.ReadAllText(file) is { } text
                && (text.Contains("using UnitsNet", StringComparison.Ordinal) || text.Contains("using Microsoft.Extensions", StringComparison.Ordinal) || text.Contains("System.Text.Json", StringComparison.Ordinal)))
            .ToArray();
        Assert.Empty(strangers);
    }

    /// <summary>Every use of a type of a room by one that may not use it.</summary>
    private static SortedSet<string> Wrong(Dictionary<string, string[]> mayUse, Func<string, string> roomOf, int least)
    {
        CSharpCompilation compilation = Compiled.Value;
        SortedSet<string> wrong = new(StringComparer.Ordinal);
        int seen = 0;
        ILookup<string, string> declared = compilation.SyntaxTrees.SelectMany(tree => Declared(tree, roomOf)).Distinct().ToLookup(pair => pair.Room, pair => pair.Name);
        foreach (SyntaxTree tree in compilation.SyntaxTrees)
        {
            string room = roomOf(tree.FilePath);
            if (room.Length == 0)
            {
                continue;
            }

            // Only names that a forbidden room declares can be wrong: asking what every name means takes most of a minute.
            HashSet<string> suspects = mayUse.Keys.Where(other => other != room && !mayUse[room].Contains(other)).SelectMany(other => declared[other]).ToHashSet();
            SemanticModel model = compilation.GetSemanticModel(tree);
            foreach (SimpleNameSyntax name in tree.GetRoot().DescendantNodes().OfType<SimpleNameSyntax>().Where(name => suspects.Contains(name.Identifier.ValueText)))
            {
                ISymbol? symbol = model.GetSymbolInfo(name).Symbol;
                ITypeSymbol? type = symbol as ITypeSymbol ?? symbol?.ContainingType;
                string[] homes = type?.OriginalDefinition.DeclaringSyntaxReferences.Select(reference => roomOf(reference.SyntaxTree.FilePath)).Distinct().ToArray() ?? [];
                seen += homes.Length;

                // A partial type that has a face in another room is still the type of its own; one of Rules may have it outside.
                if (!homes.Any(home => home.Length == 0 ? mayUse == MayUse || homes.Length == 1 : home == room || mayUse[room].Contains(home)) && homes.Length > 0)
                {
                    wrong.Add(Path.GetRelativePath(Source, tree.FilePath) + " uses " + type!.Name + " of " + string.Concat(homes));
                }
            }
        }

        Assert.True(seen > least, "The compiler resolved only " + seen + " names: the test looks at nothing.");
        return wrong;
    }

    // What a file declares that others could name: types and their members.
    private static IEnumerable<(string Room, string Name)> Declared(SyntaxTree tree, Func<string, string> roomOf)
    {
        string room = roomOf(tree.FilePath);
        return tree.GetRoot().DescendantNodes().Select(node => node switch
        {
            BaseTypeDeclarationSyntax type => type.Identifier.ValueText,
            DelegateDeclarationSyntax type => type.Identifier.ValueText,
            MethodDeclarationSyntax method => method.Identifier.ValueText,
            PropertyDeclarationSyntax property => property.Identifier.ValueText,
            EnumMemberDeclarationSyntax value => value.Identifier.ValueText,
            VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax } field => field.Identifier.ValueText,
            ParameterSyntax { Parent.Parent: TypeDeclarationSyntax } part => part.Identifier.ValueText,
            _ => "",
        }).Where(name => name.Length > 0).Select(name => (room, name));
    }

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
        .Where(file => !file.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            && !file.Contains(Path.DirectorySeparatorChar + "bin" + Path.DirectorySeparatorChar, StringComparison.Ordinal));

    private static string RoomOf(string file)
    {
        string[] parts = Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar);
        return parts.Length > 1 && parts[0] != ".." ? parts[0] : "";
    }

    /// <summary>The folder of a file of Rules: "Forms/Fill"; "Rules" for one in none, empty elsewhere.</summary>
    private static string FolderInRules(string file)
    {
        string[] parts = Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar);
        return parts[0] != "Rules" ? "" : parts.Length == 2 ? "Rules" : string.Join("/", parts.Skip(1).Take(parts.Length - 2));
    }

    private static CSharpCompilation Compile()
    {
        CSharpParseOptions options = new(LanguageVersion.Preview, preprocessorSymbols: ["NET", "NET8_0_OR_GREATER"]);
        CSharpCompilation written = CSharpCompilation.Create(
            "Rooms",
            Files().Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), options, file)),
            CompilerInputs.References,
            // What a name means doesn't depend on null states, and working them out takes most of the time.
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Disable));
        CSharpGeneratorDriver.Create([Generator()], parseOptions: options).RunGeneratorsAndUpdateCompilation(written, out Compilation whole, out _);
        return (CSharpCompilation)whole;
    }

    // What writes members while the library is built writes them here too.
    private static ISourceGenerator Generator()
    {
        string built = Directory.EnumerateFiles(Path.Combine(Source + ".Generators", "bin"), "BoxHeights.Generators.dll", SearchOption.AllDirectories).MaxBy(File.GetLastWriteTimeUtc)!;
        Type type = System.Reflection.Assembly.LoadFrom(built).GetExportedTypes().Single(one => typeof(IIncrementalGenerator).IsAssignableFrom(one));
        return ((IIncrementalGenerator)Activator.CreateInstance(type)!).AsSourceGenerator();
    }
}
#endif
