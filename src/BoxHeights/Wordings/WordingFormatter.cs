using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text;

namespace BoxHeights;

/// <summary>Puts wordings into a language: English as it is, another where it is derived from or given a catalog of templates.</summary>
/// <remarks>Safe to share between threads where what is derived from it is.</remarks>
public class WordingFormatter
{
    /// <summary>English, as the library writes it.</summary>
    public static WordingFormatter English { get; } = new();

    /// <summary>A formatter for a catalog of templates: by each English template the same sentence in another language, with the same places in any order. What it lacks stays English.</summary>
    /// <param name="templates">The catalog; it isn't copied.</param>
    /// <exception cref="ArgumentNullException">The catalog is null.</exception>
    /// <exception cref="ArgumentException">A sentence is null, has a brace that isn't closed, has a place that its English template hasn't, or lacks one that it has: a measure or a name would be lost without a word.</exception>
    public static WordingFormatter From(IReadOnlyDictionary<string, string> templates)
    {
        foreach (KeyValuePair<string, string> one in templates ?? throw new ArgumentNullException(nameof(templates)))
        {
            if (MistakeIn(one.Value, one.Key) is { } mistake)
            {
                throw new ArgumentException("The catalog's sentence for \"" + one.Key + "\" " + mistake + ".", nameof(templates));
            }
        }

        return new CatalogFormatter(templates);
    }

    /// <summary>A wording in this language.</summary>
    /// <param name="wording">The wording.</param>
    /// <exception cref="ArgumentNullException">The wording is null.</exception>
    /// <exception cref="FormatException">A template of this language has a place that the English one doesn't, or a brace that isn't closed.</exception>
    public string Format(Wording wording)
    {
        string template = TemplateFor(wording ?? throw new ArgumentNullException(nameof(wording)));
        StringBuilder said = new();
        foreach ((string before, string? name) in template == wording.Template ? wording.Parts : Split(template))
        {
            said.Append(before).Append(name is null ? "" : Argument(name, wording.ValueOf(name) ?? throw new FormatException("\"" + template + "\" has a place " + name + " that \"" + wording.Template + "\" hasn't.")));
        }

        string text = said.ToString();
        return wording.Units is { } units ? BothUnits.Of(text, units) : text;
    }

    /// <summary>The same language, with every quantity in some units.</summary>
    internal WordingFormatter In(LengthUnits units) => new FormatterInUnits(this, units);

    /// <summary>The sentence of this language for a wording, with the names of its places in braces. The arguments are there to choose by: one box or several.</summary>
    /// <param name="wording">The wording.</param>
    protected virtual string TemplateFor(Wording wording) => (wording ?? throw new ArgumentNullException(nameof(wording))).Template;

    /// <summary>A quantity in this language: "48-1/2 in" unless overridden. <see cref="PrintedQuantity.In"/> gives it in other units, rounded as it has to be.</summary>
    /// <param name="quantity">The quantity.</param>
    protected virtual string Format(PrintedQuantity quantity) => quantity.ToString();

    /// <summary>What it is; catalogs say how many sentences they have.</summary>
    public override string ToString() => "wordings as they are written";

    /// <summary>The words up to each place and the place's name, and last the words behind them.</summary>
    internal static IEnumerable<(string Before, string? Name)> Split(string template)
    {
        int from = 0;
        for (int open = template.IndexOf('{'); open >= 0; open = template.IndexOf('{', from))
        {
            int close = template.IndexOf('}', open);
            if (close < 0)
            {
                throw new FormatException("A brace isn't closed in \"" + template + "\".");
            }

            yield return (template.Substring(from, open - from), template.Substring(open + 1, close - open - 1));
            from = close + 1;
        }

        yield return (template.Substring(from), null);
    }

    private static string? MistakeIn(string? sentence, string english)
    {
        if (sentence is null)
        {
            return "is null";
        }

        try
        {
            HashSet<string> own = PlacesOf(sentence);
            HashSet<string> asked = PlacesOf(english);
            own.SymmetricExceptWith(asked);
            foreach (string place in own)
            {
                return asked.Contains(place) ? "lacks the place {" + place + "}" : "has a place {" + place + "} that the English one hasn't";
            }

            return null;
        }
        catch (FormatException unclosed)
        {
            return "can't be read: " + unclosed.Message.TrimEnd('.');
        }
    }

    private static HashSet<string> PlacesOf(string template)
    {
        HashSet<string> places = new(StringComparer.Ordinal);
        foreach ((_, string? name) in Split(template))
        {
            places.UnionWith(name is null ? [] : [name]);
        }

        return places;
    }

    private string Argument(string name, object value) => value switch
    {
        Wording wording => Format(wording),
        PrintedQuantity quantity => Format(quantity),
        int number => number.ToString(CultureInfo.InvariantCulture),
        string text => text,
        _ => throw new FormatException("What stands in the place " + name + " is a " + value.GetType().Name + ": it has to be a Wording, a PrintedQuantity, an int or a string."),
    };

    private sealed class FormatterInUnits(WordingFormatter language, LengthUnits units) : WordingFormatter
    {
        protected override string TemplateFor(Wording wording) => language.TemplateFor(wording);

        protected override string Format(PrintedQuantity quantity) => language.Format(quantity.In(units));
    }

    private sealed class CatalogFormatter(IReadOnlyDictionary<string, string> templates) : WordingFormatter
    {
        public override string ToString() => "a catalog of " + templates.Count.ToString(CultureInfo.InvariantCulture) + " templates";

        protected override string TemplateFor(Wording wording) => templates.TryGetValue(wording.Template, out string? own) ? own : wording.Template;
    }
}
