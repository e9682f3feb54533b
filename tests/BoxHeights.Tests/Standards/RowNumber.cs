using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using BoxHeights.Rules;

namespace BoxHeights.Tests.Standards;

/// <summary>One number of a row, found in what it is made of, whatever form it has: lengths, volumes and counts, in lists and in the records that it holds.</summary>
internal sealed class RowNumber
{
    // What a row says of itself, where it comes from, and sizes that name a conductor are no numbers that it limits anything by.
    private static readonly Type[] Names = [typeof(string), typeof(Citation), typeof(Items<Reading>), typeof(ConductorSize), typeof(CableType)];

    private const BindingFlags Any = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    private readonly Func<object, decimal, object> move;

    private readonly string text;

    private readonly bool isMeasure;

    private RowNumber(string name, string text, bool isMeasure, Func<object, decimal, object> move)
    {
        Name = name;
        this.text = text;
        this.isMeasure = isMeasure;
        this.move = move;
    }

    /// <summary>Where it stands: the property's name, or the way to it.</summary>
    public string Name { get; }

    public override string ToString() => text;

    /// <summary>The row with this number so many steps more or less: sixteenths of an inch, quarters of a cubic inch; a hundredth of an area and one of what is counted, however many.</summary>
    public Rule Moved(Rule row, decimal steps) => (Rule)move(row, steps);

    /// <summary>The numbers that a row tells in its <see cref="Rule.Numbers"/>, and what measures it has besides: the heights of what it adds, limits that its sentence tells.</summary>
    public static IEnumerable<RowNumber> Of(Rule row) => Within(row, "").Where(number => number.isMeasure || number.Moved(row, 1).Numbers != row.Numbers);

    private static IEnumerable<RowNumber> Within(object whole, string path)
    {
        if (whole is Array list)
        {
            return Enumerable.Range(0, list.Length).SelectMany(i => Part(list.GetValue(i)!, path + "[" + i + "]", (part, changed) =>
            {
                Array copy = (Array)((Array)part).Clone();
                copy.SetValue(changed, i);
                return copy;
            }, part => ((Array)part).GetValue(i)!));
        }

        return Fields(whole.GetType()).SelectMany(field => field.GetValue(whole) is { } value
            ? Part(value, field.Name[0] == '<' ? (path.Length == 0 ? "" : path + ".") + PropertyOf(field) : path, (part, changed) => With(part, field, changed), part => field.GetValue(part)!)
            : []);
    }

    private static IEnumerable<RowNumber> Part(object value, string path, Func<object, object, object> put, Func<object, object> take)
    {
        if (value is Distance unbounded && unbounded == Distance.MaxValue)
        {
            return [];
        }

        Func<object, decimal, object>? leaf = value switch
        {
            Distance => (old, steps) => (Distance)old + Distance.FromInches(steps / 16),
            Volume => (old, steps) => (Volume)old + Volume.FromCubicInches(steps / 4),
            Quantity => (old, steps) => new Quantity(((Quantity)old).Kind, ((Quantity)old).Raw + (Math.Sign(steps) * ((Quantity)old).Raw / 100)),
            int => (old, steps) => (int)old + Math.Sign(steps),
            _ => null,
        };
        if (leaf is not null)
        {
            return [new(path, path + " " + value, value is Distance length && length != Distance.Zero, (whole, steps) => put(whole, leaf(take(whole), steps)))];
        }

        Type type = value.GetType();
        return type.IsEnum || type == typeof(bool) || Names.Contains(type) || type.IsPrimitive && path.Length == 0
            ? []
            : type.IsPrimitive || type == typeof(decimal) ? throw new NotSupportedException(path + " is a number of a kind that nobody moves here.")
            : Within(value, path).Select(inner => new RowNumber(inner.Name, inner.text, inner.isMeasure, (whole, steps) => put(whole, inner.move(take(whole), steps))));
    }

    private static object With(object whole, FieldInfo field, object value)
    {
        object copy = typeof(object).GetMethod("MemberwiseClone", BindingFlags.Instance | BindingFlags.NonPublic)!.Invoke(whole, null)!;
        if (field.DeclaringType!.GetProperty(PropertyOf(field), Any)?.SetMethod is { } set)
        {
            _ = set.Invoke(copy, BindingFlags.DoNotWrapExceptions, null, [value], null);
        }
        else
        {
            field.SetValue(copy, value);
        }

        return copy;
    }

    /// <summary>What a record is made of: its properties' fields, and the array of a list. What else it keeps it has worked out from those.</summary>
    private static IEnumerable<FieldInfo> Fields(Type? type) => type is null || type == typeof(object) || type == typeof(ValueType)
        ? []
        : Fields(type.BaseType).Concat(type.GetFields(Any | BindingFlags.DeclaredOnly).Where(field => field.FieldType.IsArray ? type.Name == "Items`1" : field.Name[0] == '<'));

    private static string PropertyOf(FieldInfo field) => field.Name.Split('<', '>') is [_, var name, _] ? name : "";
}
