using System;
using System.Collections.Generic;
using System.Runtime.CompilerServices;
using System.Text;

namespace BoxHeights;

/// <summary>A sentence or phrase as data: a template with named places, and what stands in them. Written in English; put into any language by a <see cref="WordingFormatter"/>.</summary>
/// <remarks>
/// An interpolated string makes one: <c>Wording said = $"{box} is {off} too low";</c> has the template "{box} is {off} too low". A place is called as its expression is,
/// or as the text after a colon: <c>{boxes.Count:count}</c>. The template is the key by which a language's catalog finds its own sentence, as in message catalogs of
/// programs everywhere. Compilers older than C# 10 use <c>Wording.Of</c>.
/// </remarks>
[InterpolatedStringHandler]
public sealed class Wording : IEquatable<Wording>
{
    private readonly (string Before, string Name, object Value)[] places;
    private int count;
    private string tail = "";

    /// <summary>For the compiler, which calls it for an interpolated string.</summary>
    /// <param name="literalLength">Not needed.</param>
    /// <param name="formattedCount">How many places there are.</param>
    public Wording(int literalLength, int formattedCount) => places = formattedCount == 0 ? [] : new (string, string, object)[formattedCount];

    private Wording(string text)
        : this(0, 0) => tail = text;

    /// <summary>Nothing to say.</summary>
    public static Wording None { get; } = new("");

    /// <summary>The English sentence with the names of its places in braces.</summary>
    public string Template
    {
        get
        {
            if (count == 0)
            {
                return tail;
            }

            StringBuilder text = new();
            foreach ((string before, string name, _) in places)
            {
                text.Append(before).Append('{').Append(name).Append('}');
            }

            return text.Append(tail).ToString();
        }
    }

    /// <summary>What stands in the places, in their English order: a <see cref="Wording"/>, a <see cref="PrintedQuantity"/>, an int, or a string, which is a name and not to be translated.</summary>
    public Items<WordingArgument> Arguments => new(Array.ConvertAll(places, place => new WordingArgument(place.Name, place.Value)));

    /// <summary>Whether it says nothing.</summary>
    public bool IsEmpty => count == 0 && tail.Length == 0;

    /// <summary>The units in which the measures among its own words are told as well; null where it has none, or they are told as they are.</summary>
    internal LengthUnits? Units { get; private init; }

    /// <summary>A wording from its parts, for compilers that have no interpolated string handlers.</summary>
    /// <param name="template">The English sentence with the names of its places in braces: "{box} is too low".</param>
    /// <param name="arguments">What stands in the places: wordings, quantities as printed, ints, and strings, which are names.</param>
    /// <exception cref="ArgumentNullException">The template is null.</exception>
    /// <exception cref="FormatException">A brace isn't closed, or a place has no argument of its name.</exception>
    public static Wording Of(string template, params (string Name, object Value)[] arguments)
    {
        Wording made = new(0, template is null ? throw new ArgumentNullException(nameof(template)) : template.Split('{').Length - 1);
        foreach ((string before, string? name) in WordingFormatter.Split(template))
        {
            if (name is null)
            {
                made.tail = before;
                break;
            }

            int at = Array.FindIndex(arguments ?? [], one => one.Name == name);
            made.tail = before;
            made.Append(at >= 0 ? arguments![at].Value : throw new FormatException("\"" + template + "\" has no argument " + name + "."), name);
        }

        return made;
    }

    /// <summary>The words of a row, with their measures in these units too.</summary>
    internal static Wording OfRow(string text, LengthUnits units) => new(text) { Units = units };

    /// <summary>One thing and another.</summary>
    internal static Wording And(IEnumerable<Wording> all) => Joined(all, (first, next) => $"{first} and {next}");

    /// <summary>One thing or another.</summary>
    internal static Wording Or(IEnumerable<Wording> all) => Joined(all, (first, next) => $"{first} or {next}");

    /// <summary>One thing after another, with commas.</summary>
    internal static Wording Listed(IEnumerable<Wording> all) => Joined(all, (first, next) => $"{first}, {next}");

    /// <summary>One thing after another, with semicolons.</summary>
    internal static Wording Apart(IEnumerable<Wording> all) => Joined(all, (first, next) => $"{first}; {next}");

    /// <summary>A name, by itself.</summary>
    internal static Wording Name(string name) => $"{name}";

    /// <summary>A term out of a list of words, such as the name of a datum.</summary>
    internal static Wording Term(string word) => new(word);

    /// <summary>For the compiler: words between places.</summary>
    /// <param name="value">The words.</param>
    public void AppendLiteral(string value) => tail += value;

    /// <summary>For the compiler: a name, which no language changes.</summary>
    /// <param name="value">The name.</param>
    /// <param name="format">What the place is called; the expression where it says nothing.</param>
    /// <param name="expression">The expression.</param>
    public void AppendFormatted(string? value, string? format = null, [CallerArgumentExpression(nameof(value))] string expression = "") => Append(value ?? "", format ?? expression);

    /// <summary>For the compiler: a number.</summary>
    /// <param name="value">The number.</param>
    /// <param name="format">What the place is called; the expression where it says nothing.</param>
    /// <param name="expression">The expression.</param>
    public void AppendFormatted(int value, string? format = null, [CallerArgumentExpression(nameof(value))] string expression = "") => Append(value, format ?? expression);

    /// <summary>For the compiler: words of their own.</summary>
    /// <param name="value">The words.</param>
    /// <param name="format">What the place is called; the expression where it says nothing.</param>
    /// <param name="expression">The expression.</param>
    public void AppendFormatted(Wording? value, string? format = null, [CallerArgumentExpression(nameof(value))] string expression = "") => Append(value ?? None, format ?? expression);

    /// <summary>For the compiler: a quantity as it is printed.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="format">What the place is called; the expression where it says nothing.</param>
    /// <param name="expression">The expression.</param>
    public void AppendFormatted(PrintedQuantity value, string? format = null, [CallerArgumentExpression(nameof(value))] string expression = "") => Append(value, format ?? expression);

    /// <summary>For the compiler: names one after another, separated by commas.</summary>
    /// <param name="value">The names.</param>
    /// <param name="format">What the place is called; the expression where it says nothing.</param>
    /// <param name="expression">The expression.</param>
    public void AppendFormatted(Items<string> value, string? format = null, [CallerArgumentExpression(nameof(value))] string expression = "") => Append(value.ToString(), format ?? expression);

    /// <summary>It in English.</summary>
    public override string ToString() => WordingFormatter.English.Format(this);

    /// <summary>Whether another says the same of the same.</summary>
    public bool Equals(Wording? other)
    {
        if (other is null || tail != other.tail || count != other.count || Units != other.Units)
        {
            return false;
        }

        for (int i = 0; i < count; i++)
        {
            if (!places[i].Equals(other.places[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Wording);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Template);

    /// <summary>The words up to each place and the place's name, and last the words behind them: as they were written, whatever braces a name or a row's own words hold.</summary>
    internal IEnumerable<(string Before, string? Name)> Parts
    {
        get
        {
            for (int i = 0; i < count; i++)
            {
                yield return (places[i].Before, places[i].Name);
            }

            yield return (tail, null);
        }
    }

    /// <summary>What stands in a place; null where there is none of the name.</summary>
    internal object? ValueOf(string name)
    {
        foreach ((_, string own, object value) in places)
        {
            if (own == name)
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>Half and half: a thousand parts that each hold all before them would be printed again and again, a thousand calls deep.</summary>
    private static Wording Joined(IEnumerable<Wording> all, Func<Wording, Wording, Wording> join)
    {
        List<Wording> parts = [.. all];
        return parts.Count == 0 ? None : Part(0, parts.Count);

        Wording Part(int from, int count) => count == 1 ? parts[from] : join(Part(from, count - (count / 2)), Part(from + count - (count / 2), count / 2));
    }

    private void Append(object value, string name)
    {
        places[count++] = (tail, name, value);
        tail = "";
    }
}

/// <summary>What stands in a place of a wording.</summary>
[Told]
public sealed partial record WordingArgument
{
    /// <summary>What the place is called.</summary>
    public string Name { get; }

    /// <summary>A <see cref="Wording"/>, a <see cref="PrintedQuantity"/>, an int, or a string, which is a name and not to be translated.</summary>
    public object Value { get; }

    /// <summary>The place, and what stands in it.</summary>
    public override string ToString() => Name + ": " + Value;
}
