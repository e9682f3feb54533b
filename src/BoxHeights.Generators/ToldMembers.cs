using System.Collections.Generic;
using System.Linq;
using Microsoft.CodeAnalysis;

namespace BoxHeights.Generators;

/// <summary>The constructor of what callers are told: it takes every property that nothing sets later, in their order, and then what its base takes.</summary>
internal static class ToldMembers
{
    internal static IEnumerable<string> Constructor(INamedTypeSymbol type, GeneratorAttributeSyntaxContext found)
    {
        IPropertySymbol[] told = [.. type.GetMembers().OfType<IFieldSymbol>().Select(field => field.AssociatedSymbol).OfType<IPropertySymbol>().Where(one => one is { IsStatic: false, SetMethod: null })];
        IParameterSymbol[] passed = type.IsValueType ? [] : [.. DescribedMembers.Above(type).Parameters];
        string parameters = string.Join(", ", told.Select(one => DescribedMembers.Typed(one.Type, DescribedMembers.Camel(one.Name))).Concat(passed.Select(one => DescribedMembers.Typed(one.Type, one.Name))));
        yield return "    " + (type.IsAbstract ? "private protected " : "internal ") + type.Name + "(" + parameters + ")" + (passed.Length == 0 ? "" : " : base(" + string.Join(", ", passed.Select(one => DescribedMembers.Escaped(one.Name))) + ")");
        yield return "    {";
        foreach (IPropertySymbol one in told)
        {
            yield return "        this." + one.Name + " = " + DescribedMembers.Escaped(DescribedMembers.Camel(one.Name)) + ";";
        }

        yield return "    }";
    }

    /// <summary>Of a record that says itself what it is, no print of all its members; one with a base would have to show callers that.</summary>
    internal static IEnumerable<string> Print(INamedTypeSymbol type) => type is { IsRecord: true, IsSealed: true, BaseType.SpecialType: SpecialType.System_Object } && DescribedMembers.SaysItself(type) ? DescribedMembers.Unprinted() : [];
}
