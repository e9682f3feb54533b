using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;

namespace BoxHeights.Tests.Rules;

/// <summary>
/// Sets what a case says of a described thing by the name of its property: "kind=four-square", "casing=2-1/4", "cables=14-2+12-2". Lengths are in the case's
/// unit, levels above the finished floor unless "@subfloor" or another datum follows, heights "top@48@subfloor"; "+" stands between items, "_" for a space.
/// </summary>
internal static class NamedProperties
{
    public static T Set<T>(T thing, IEnumerable<string> settings, bool metric)
        where T : class
    {
        foreach (string[] pair in settings.Select(setting => setting.Split('=')))
        {
            PropertyInfo property = typeof(T).GetProperties().Single(one => Alike(one.Name, pair[0]));
            thing = (T)typeof(T).GetMethod("With" + property.Name, [property.PropertyType])!.Invoke(thing, [Value(property.PropertyType, pair[1], metric)])!;
        }

        return thing;
    }

    private static object Value(Type asked, string text, bool metric)
    {
        Type type = Nullable.GetUnderlyingType(asked) ?? asked;
        string[] parts = text.Split('@');
        if (type.IsGenericType)
        {
            Type item = type.GetGenericArguments()[0];
            object[] items = text.Split('+').Select(one => Value(item, one, metric)).ToArray();
            Array array = Array.CreateInstance(item, items.Length);
            items.CopyTo(array, 0);
            return Activator.CreateInstance(type, array)!;
        }

        Distance Here(string number) => RoomSketch.Measure(number, metric);
        return type == typeof(string) ? text.Replace('_', ' ')
            : type == typeof(bool) || type == typeof(int) || type == typeof(decimal) ? Convert.ChangeType(text, type, CultureInfo.InvariantCulture)
            : type.IsEnum ? Enum.GetValues(type).Cast<object>().Single(one => Alike(one.ToString()!, text))
            : type == typeof(Distance) ? Here(text)
            : type == typeof(BoxSize) && text.Split('x') is { } sides ? sides.Length == 2 ? new BoxSize(Here(sides[0]), Here(sides[1])) : new BoxSize(Here(sides[0]), Here(sides[1]), Here(sides[2]))
            : type == typeof(Level) ? new Level(Here(parts[0]), parts.Length == 1 ? Datum.FinishedFloor : (Datum)Value(typeof(Datum), parts[1], metric))
            : type == typeof(BoxHeight) ? BoxHeight.To((Edge)Value(typeof(Edge), parts[0], metric), Here(parts[1]), parts.Length == 2 ? Datum.FinishedFloor : (Datum)Value(typeof(Datum), parts[2], metric))
            : type.GetMethod("Parse", [typeof(string)]) is { } parse ? parse.Invoke(null, [text.Replace('_', ' ')])!
            : Activator.CreateInstance(type, text)!;
    }

    private static bool Alike(string name, string written) => string.Equals(name, written.Replace("-", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
}
