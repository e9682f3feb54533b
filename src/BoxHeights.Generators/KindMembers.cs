using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;

namespace BoxHeights.Generators;

/// <summary>An open list of kinds: a value for each that is known, one's own by name, and the list of those that are known.</summary>
internal static class KindMembers
{
    internal static IEnumerable<string> Of(INamedTypeSymbol type, GeneratorAttributeSyntaxContext found)
    {
        List<string> known = [];
        List<string> names = [];
        foreach (AttributeData kind in found.Attributes)
        {
            string name = (string)kind.ConstructorArguments[0].Value!;
            string member = string.Concat(name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word.Substring(1)));
            known.Add(member);
            names.Add('"' + name + '"');
            yield return "    /// <summary>" + (kind.ConstructorArguments[1].Value ?? "<c>" + name + "</c>") + "</summary>";
            yield return "    public static " + type.Name + " " + member + " => new() { Stated = \"" + name + "\" };";
            yield return "";
        }

        yield return $$"""
                /// <summary>The kinds known here, in their order.</summary>
                public static Items<{{type.Name}}> Known { get; } = new[] { {{string.Join(", ", known)}} };

                /// <summary>Their names, without making the kinds: the first evaluation in a process looks every name up.</summary>
                internal static string[] KnownNames() => new[] { {{string.Join(", ", names)}} };

                /// <summary>A kind by its name: one of those known here, or one of your own.</summary>
                /// <param name="name">Lower-case words of letters and digits, joined by single hyphens.</param>
                /// <exception cref="System.ArgumentNullException"><paramref name="name"/> is null.</exception>
                /// <exception cref="System.ArgumentException"><paramref name="name"/> is empty or of another form.</exception>
                public {{type.Name}}(string name) => Stated = KindName.Check(name, nameof(name));

                /// <summary>The kind's name; empty for <c>default</c>.</summary>
                public string Name => Stated ?? "";

                private string? Stated { get; init; }

                /// <summary>The kind's name.</summary>
                public override string ToString() => Name;
            """;
    }
}
