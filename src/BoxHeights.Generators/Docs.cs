using System.Collections.Generic;
using System.Linq;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BoxHeights.Generators;

/// <summary>What a member's documentation says; nothing where the compiler reads none.</summary>
internal readonly struct Docs
{
    private readonly XElement? read;

    private Docs(XElement? read) => this.read = read;

    internal bool AreInherited => read?.Element("inheritdoc") is not null;

    internal string Summary => Inside(read?.Element("summary"));

    // Of a method that others call: what it throws over its own parameters is no word about theirs.
    internal IEnumerable<string> Exceptions => read?.Elements("exception").Where(one => !one.Descendants("paramref").Any()).Select(one => Exception((string?)one.Attribute("cref"), Inside(one))) ?? [];

    internal static Docs Of(ISymbol? symbol)
    {
        string? xml = symbol?.GetDocumentationCommentXml();
        return new(string.IsNullOrEmpty(xml) ? null : XElement.Parse(xml));
    }

    /// <summary>What setting a property throws: what it says itself, and what the methods say that check it.</summary>
    internal static IEnumerable<string> Thrown(IPropertySymbol property, Compilation compilation) => (property.SetMethod?.DeclaringSyntaxReferences ?? [])
        .SelectMany(setter => setter.GetSyntax().DescendantNodes().OfType<InvocationExpressionSyntax>())
        .SelectMany(call => Of(compilation.GetSemanticModel(call.SyntaxTree).GetSymbolInfo(call).Symbol).Exceptions)
        .Concat(Of(property).Exceptions);

    internal static string Parameter(string name, string says) => "    /// <param name=\"" + name + "\">" + says + "</param>";

    internal string Parameter(string name) => Inside(read?.Elements("param").FirstOrDefault(one => (string?)one.Attribute("name") == name));

    private static string Exception(string? type, string says) => "    /// <exception cref=\"" + type + "\">" + says + "</exception>";

    private static string Inside(XElement? element) => element is null ? "" : Regex.Replace(string.Concat(element.Nodes()), @"\s+", " ").Trim();
}
