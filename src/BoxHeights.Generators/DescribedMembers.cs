using System;
using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace BoxHeights.Generators;

/// <summary>The constructor of a record, and its <c>With…</c> methods, for callers whose language knows neither <c>init</c> nor <c>with</c>.</summary>
internal static class DescribedMembers
{
    private static readonly SymbolDisplayFormat Full = SymbolDisplayFormat.FullyQualifiedFormat.AddMiscellaneousOptions(SymbolDisplayMiscellaneousOptions.IncludeNullableReferenceTypeModifier);

    /// <summary>A constructor that takes what its base has to have, and then the properties that are named; none where none is.</summary>
    internal static IEnumerable<string> Constructor(INamedTypeSymbol type, GeneratorAttributeSyntaxContext found)
    {
        IPropertySymbol[] needed = [.. found.Attributes[0].ConstructorArguments[0].Values.Select(name => type.GetMembers((string)name.Value!).OfType<IPropertySymbol>().First())];
        IMethodSymbol above = Above(type);
        IParameterSymbol[] passed = [.. above.Parameters];
        Docs told = Docs.Of(above);
        while (told.AreInherited)
        {
            above = Above(above.ContainingType);
            told = Docs.Of(above);
        }

        if (needed.Length + passed.Length == 0)
        {
            yield break;
        }

        yield return "    /// <summary>Describes one by what it must have.</summary>";
        foreach (string doc in passed.Select(one => Docs.Parameter(one.Name, told.Parameter(one.Name)))
            .Concat(needed.Select(one => Docs.Parameter(Camel(one.Name), Docs.Of(one).Summary)))
            .Concat(told.Exceptions.Concat(needed.SelectMany(one => Docs.Thrown(one, found.SemanticModel.Compilation))).Distinct()))
        {
            yield return doc;
        }

        string parameters = string.Join(", ", passed.Select(one => Typed(one.Type, one.Name)).Concat(needed.Select(one => Typed(one.Type, Camel(one.Name)))));
        yield return "    public " + type.Name + "(" + parameters + ")" + (passed.Length == 0 ? "" : " : base(" + string.Join(", ", passed.Select(one => Escaped(one.Name))) + ")");
        yield return "    {";
        foreach (IPropertySymbol one in needed)
        {
            yield return "        this." + one.Name + " = " + Escaped(Camel(one.Name)) + ";";
        }

        yield return "    }";
    }

    /// <summary>A <c>With…</c> method for each property that can be set when the record is made; of a list a second one, which takes its items one by one.</summary>
    internal static IEnumerable<string> With(INamedTypeSymbol type, GeneratorAttributeSyntaxContext found)
    {
        foreach (IPropertySymbol one in Settable(type))
        {
            string name = Camel(one.Name);
            ITypeSymbol? item = one.Type is INamedTypeSymbol { Name: "Items" } list ? list.TypeArguments[0] : null;
            yield return "";
            yield return "    /// <summary>The same with " + (item is null ? "another" : "other") + " <see cref=\"" + one.Name + "\"/>.</summary>";
            string[] told = [Docs.Parameter(name, Docs.Of(one).Summary), .. Docs.Thrown(one, found.SemanticModel.Compilation).Distinct()];
            foreach (string line in told)
            {
                yield return line;
            }

            yield return "    public " + type.Name + " With" + one.Name + "(" + Typed(one.Type, name) + ") => this with { " + one.Name + " = " + Escaped(name) + " };";
            if (item is not null)
            {
                yield return "";
                yield return "    /// <summary>The same with other <see cref=\"" + one.Name + "\"/>, given one by one; the empty list where none is given, or null.</summary>";
                foreach (string line in item.IsReferenceType ? told.Append("    /// <exception cref=\"System.ArgumentException\">One of them is null.</exception>") : told)
                {
                    yield return line;
                }

                yield return "    public " + type.Name + " With" + one.Name + "(params " + item.ToDisplayString(Full) + "[]? " + Escaped(name) + ") => this with { " + one.Name + " = " + Escaped(name) + " };";
            }
        }
    }

    /// <summary>What is printed of a description that doesn't say that itself: what it has to have, and what else of it is stated.</summary>
    internal static IEnumerable<string> Print(INamedTypeSymbol type, GeneratorAttributeSyntaxContext found)
    {
        if (!SaysItself(type))
        {
            string[] needed = [.. found.Attributes[0].ConstructorArguments[0].Values.Select(name => (string)name.Value!)];
            string[] heads = [.. needed.Where(name => Head(name, true) is not null)];
            string head = string.Join(" + ", heads.Select((name, i) => Head(name, i == 0 || heads[i - 1] == "Id")));
            yield return "";
            yield return "    /// <summary>What it is, and what of it is stated.</summary>";
            yield return "    public override string ToString() => Stated.Line(" + (head.Length == 0 ? "\"\"" : head) + string.Concat(Settable(type).Where(one => !heads.Contains(one.Name)).Select(one => ", (\"" + Words(one.Name) + "\", " + one.Name + (one.Type.SpecialType == SpecialType.System_Boolean ? " ? true : null" : "") + ")")) + ");";
        }

        foreach (string line in Unprinted())
        {
            yield return line;
        }
    }

    /// <summary>How a line begins: ids and kinds say themselves what they are, and two ends belong together.</summary>
    /// <returns>Null for what is told by its name.</returns>
    private static string? Head(string name, bool begins) => name switch
    {
        "Id" => "Id + \": \"",
        "Kind" or "Purpose" or "Name" => name,
        "How" => "Stated.Word(How)",
        "Left" or "From" => (begins ? "" : "\", \" + ") + name,
        "Right" or "To" => "\" to \" + " + name,
        _ => null,
    };

    /// <summary>"first face" of FirstFace.</summary>
    private static string Words(string name) => string.Concat(name.Select((one, i) => i > 0 && char.IsUpper(one) ? " " + char.ToLowerInvariant(one) : char.ToLowerInvariant(one).ToString()));

    private static IEnumerable<IPropertySymbol> Settable(INamedTypeSymbol type) =>
        type.GetMembers().OfType<IPropertySymbol>().Where(one => one is { DeclaredAccessibility: Accessibility.Public, IsStatic: false, SetMethod.IsInitOnly: true });

    /// <summary>Whether a type has words of its own for what it is.</summary>
    internal static bool SaysItself(INamedTypeSymbol type) => type.GetMembers("ToString").OfType<IMethodSymbol>().Any(one => one is { IsImplicitlyDeclared: false, Parameters.IsEmpty: true });

    /// <summary>In place of what the compiler writes to print all members, which nothing prints.</summary>
    internal static IEnumerable<string> Unprinted()
    {
        yield return "";
        yield return "    private bool PrintMembers(global::System.Text.StringBuilder builder) => false;";
    }

    /// <summary>A row in one line, in place of all its members that the compiler would print; none for what is no row.</summary>
    internal static IEnumerable<string> Line(INamedTypeSymbol type)
    {
        for (INamedTypeSymbol? one = type.BaseType; one is not null; one = one.BaseType)
        {
            if (one.Name == "Rule")
            {
                yield return "";
                yield return "    /// <summary>Its id, what it allows and where that comes from.</summary>";
                yield return "    public override string ToString() => this.InOneLine;";
            }
        }
    }

    // The constructor of the base that takes the most, and doesn't copy.
    internal static IMethodSymbol Above(INamedTypeSymbol type) => type.BaseType!.InstanceConstructors
        .Where(one => one.Parameters.Length != 1 || !SymbolEqualityComparer.Default.Equals(one.Parameters[0].Type, one.ContainingType))
        .OrderByDescending(one => one.Parameters.Length)
        .First();

    internal static string Typed(ITypeSymbol type, string name) => type.ToDisplayString(Full) + " " + Escaped(name);

    internal static string Camel(string name) => char.ToLowerInvariant(name[0]) + name.Substring(1);

    internal static string Escaped(string name) => SyntaxFacts.GetKeywordKind(name) == SyntaxKind.None ? name : "@" + name;
}
