using System;
using System.Diagnostics.CodeAnalysis;

namespace BoxHeights.Interop;

/// <summary>Tells notebooks which class shows a type: they look for an attribute of this name, whoever declares it, so that nothing of theirs is needed.</summary>
/// <param name="formatterSourceType">A class with a constructor without arguments and a method <c>CreateTypeFormatters</c>.</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
[method: DynamicDependency(DynamicallyAccessedMemberTypes.PublicProperties, typeof(TypeFormatterSourceAttribute))]
internal sealed class TypeFormatterSourceAttribute(
    [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicParameterlessConstructor | DynamicallyAccessedMemberTypes.PublicMethods)] Type formatterSourceType) : Attribute
{
    /// <summary>The class that shows the type.</summary>
    [DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicParameterlessConstructor | DynamicallyAccessedMemberTypes.PublicMethods)]
    public Type FormatterSourceType { get; } = formatterSourceType;
}
