using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Runtime.Versioning;
using Xunit;

namespace BoxHeights.Tests.Conventions;

/// <summary>What holds for every public type, looked up by reflection.</summary>
public sealed partial class ConventionTests
{
    private static readonly Assembly Library = typeof(Distance).Assembly;
    private static readonly Type[] Public = Library.GetExportedTypes();

    // Records that a caller describes a house with.
    private static readonly Type[] Described = Public.Where(type => type.Namespace == "BoxHeights" && IsRecord(type) && type.GetProperties().Any(IsInit)
        && !type.IsAbstract && type != typeof(Citation) && type.Name is not (nameof(MarkRow) or nameof(PlacedBox))).ToArray();

    [Fact]
    public void Described_AreManyRecords() => Assert.InRange(Described.Length, 20, 60);

    [Fact]
    public void Records_EachMember_HasAWithMethodForCSharp73()
    {
        string[] missing = Described
            .SelectMany(type => type.GetProperties().Where(IsInit), (type, property) => (type, property))
            .Where(pair => pair.type.GetMethod("With" + pair.property.Name, [pair.property.PropertyType])?.ReturnType != pair.type)
            .Select(pair => pair.type.Name + "." + pair.property.Name)
            .ToArray();
        Assert.Empty(missing);
    }

    // A number that a host casts is no hinge: it throws where it is given, and doesn't count as none of them later. An evaluator tells all that is wrong with its options at once.
    [Fact]
    public void Records_EachEnum_TakesItsValuesAndNoOther()
    {
        (Type Type, PropertyInfo Property, Type Enum)[] all = Described.SelectMany(type => type.GetProperties().Where(IsInit), (type, property) => (type, property, Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType))
            .Where(one => one.Item3.IsEnum && one.type != typeof(EvaluatorOptions)).ToArray();
        Assert.True(all.Length > 20);
        List<string> taken = [];
        foreach ((Type type, PropertyInfo property, Type one) in all)
        {
            object blank = System.Runtime.CompilerServices.RuntimeHelpers.GetUninitializedObject(type);
            object With(object value) => type.GetMethod("With" + property.Name, [property.PropertyType])!.Invoke(blank, [value])!;
            foreach (object value in Enum.GetValues(one))
            {
                Assert.Equal(value, property.GetValue(With(value)));
            }

            foreach (int wrong in new[] { -1, 1 << 20 })
            {
                if (Record.Exception(() => With(Enum.ToObject(one, wrong)))?.InnerException is not ArgumentOutOfRangeException thrown || thrown.ParamName != property.Name)
                {
                    taken.Add(type.Name + "." + property.Name + " = " + wrong);
                }
            }
        }

        Assert.Equal([], taken);
    }

    [Fact]
    public void Records_EachList_IsGivenItemByItemToo()
    {
        (Type Type, PropertyInfo Property)[] lists = Described.SelectMany(type => type.GetProperties().Where(IsInit), (type, property) => (type, property))
            .Where(pair => pair.property.PropertyType is { IsGenericType: true } list && list.GetGenericTypeDefinition() == typeof(Items<>)).ToArray();
        Assert.True(lists.Length > 20);
        Assert.Empty(lists
            .Where(pair => pair.Type.GetMethod("With" + pair.Property.Name, [pair.Property.PropertyType.GenericTypeArguments[0].MakeArrayType()])?.GetParameters()[0].IsDefined(typeof(ParamArrayAttribute), false) != true)
            .Select(pair => pair.Type.Name + "." + pair.Property.Name));
    }

#if !NETSTANDARD_ASSET
    // A record's copy method has another return type on netstandard2.0: without this the package can't be packed.
    [Fact]
    public void AbstractRecords_OfAnAbstractRecord_AreAllowedForInThePackage()
    {
        string[] missing = Public.Where(type => type.IsAbstract && IsRecord(type) && IsRecord(type.BaseType!))
            .Where(type => !Repository.Read("src", "BoxHeights", "CompatibilitySuppressions.xml").Contains("M:" + type.FullName + ".{Clone}$", StringComparison.Ordinal))
            .Select(type => type.Name).ToArray();
        Assert.Empty(missing);
    }
#endif

    [Fact]
    public void Namespaces_AreTheThreeOfTheMap() =>
        Assert.Equal(["BoxHeights", "BoxHeights.Interop", "BoxHeights.Rules"], Public.Select(type => type.Namespace!).Distinct().OrderBy(name => name, StringComparer.Ordinal));

    [Fact]
    public void Structs_AreReadOnly()
    {
        string[] writable = Public
            .Where(type => type is { IsValueType: true, IsEnum: false, IsNested: false } && !type.GetCustomAttributesData().Any(a => a.AttributeType.Name == "IsReadOnlyAttribute"))
            .Select(type => type.Name)
            .ToArray();
        Assert.Empty(writable);
    }

    [Fact]
    public void Known_OfEachOpenKind_ListsEveryOneThatIsNamed()
    {
        Type[] kinds = Public.Where(type => type.GetProperty("Known", BindingFlags.Public | BindingFlags.Static) is not null).ToArray();
        Assert.InRange(kinds.Length, 15, 40);
        foreach (Type kind in kinds)
        {
            object[] known = ((System.Collections.IEnumerable)kind.GetProperty("Known")!.GetValue(null)!).Cast<object>().ToArray();
            object[] named = kind.GetProperties(BindingFlags.Public | BindingFlags.Static).Where(property => property.PropertyType == kind).Select(property => property.GetValue(null)!).ToArray();
            Assert.Equal(named, known);
        }
    }

    [Fact]
    public void Fields_AreNeverPublicExceptConstants()
    {
        string[] open = Public.Where(type => !type.IsEnum)
            .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsLiteral)
            .Select(field => field.DeclaringType!.Name + "." + field.Name)
            .ToArray();
        Assert.Empty(open);
    }

    [Fact]
    public void Statics_NeverChange()
    {
        string[] changing = Library.GetTypes()
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsLiteral && !field.IsInitOnly && !field.Name.Contains('<', StringComparison.Ordinal) && field.DeclaringType!.Name[0] != '<')
            .Select(field => field.DeclaringType!.Name + "." + field.Name)
            .ToArray();
        Assert.Empty(changing);
    }

    [Fact]
    public void Heights_HaveNoOrder() => Assert.DoesNotContain(typeof(IComparable<BoxHeight>), typeof(BoxHeight).GetInterfaces());

    [Fact]
    public void Zero_IsBottomAndSubfloor()
    {
        Assert.Equal(Edge.Bottom, default);
        Assert.Equal(Datum.Subfloor, default);
    }

    [Fact]
    public void Assembly_IsTheOneThisProjectTests()
    {
        string framework = Library.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName;
#if NETSTANDARD_ASSET
        Assert.Equal(".NETStandard,Version=v2.0", framework);
#else
        Assert.StartsWith(".NETCoreApp", framework, StringComparison.Ordinal);
#endif
    }

    [Fact]
    public void Assembly_NeedsOnlyTheCard()
    {
        HashSet<string> allowed = ["netstandard", "UnitsNet", "Microsoft.Extensions.DependencyInjection.Abstractions"];
        string[] others = Library.GetReferencedAssemblies().Select(name => name.Name!).Where(name => !allowed.Contains(name) && !name.StartsWith("System.", StringComparison.Ordinal)).ToArray();
        Assert.Empty(others);
    }

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null;

    private static bool IsInit(PropertyInfo property) =>
        property.SetMethod is { IsPublic: true } setter && setter.ReturnParameter.GetRequiredCustomModifiers().Any(modifier => modifier.Name == "IsExternalInit");
}
