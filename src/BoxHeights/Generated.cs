using System;
using System.Diagnostics;

namespace BoxHeights;

/// <summary>Of a record that callers describe something with: src/BoxHeights.Generators writes its constructor, a <c>With…</c> method for each property, and the line that it prints unless it does so itself.</summary>
[Conditional("GENERATING"), AttributeUsage(AttributeTargets.Class)]
internal sealed class DescribedAttribute(params string[] needed) : Attribute
{
    /// <summary>The properties that it must have, in the order of the constructor; without any there is no constructor but the usual one.</summary>
    internal string[] Needed { get; } = needed;
}

/// <summary>Of a form of rows: src/BoxHeights.Generators writes its constructor, and the line that a row prints.</summary>
[Conditional("GENERATING"), AttributeUsage(AttributeTargets.Class)]
internal sealed class RowAttribute(params string[] needed) : Attribute
{
    /// <summary>The properties that it must have besides what each row has, in the order of the constructor.</summary>
    internal string[] Needed { get; } = needed;
}

/// <summary>Of what callers are told: src/BoxHeights.Generators writes its constructor, of every property that is set in it alone, in their order, and then what its base takes.</summary>
[Conditional("GENERATING"), AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
internal sealed class ToldAttribute : Attribute;

/// <summary>Of a struct: one of the kinds known here. src/BoxHeights.Generators writes a static member for each, and all that an open list of kinds has.</summary>
[Conditional("GENERATING"), AttributeUsage(AttributeTargets.Struct, AllowMultiple = true)]
internal sealed class KindAttribute(string name, string? summary = null) : Attribute
{
    /// <summary>Lower-case words joined by hyphens; the member is named after it.</summary>
    internal string Name { get; } = name;

    /// <summary>What it is, where its name doesn't say that; it may hold tags of documentation.</summary>
    internal string? Summary { get; } = summary;
}
