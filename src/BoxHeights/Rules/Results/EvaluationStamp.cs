namespace BoxHeights;

/// <summary>What an evaluation was made with. Keep it beside results that are kept.</summary>
public sealed record EvaluationStamp
{
    /// <summary>The version of this library.</summary>
    internal const string ThisLibrary = "0.1.0";

    internal EvaluationStamp(string rules, string options, string catalog, string library = ThisLibrary)
    {
        Rules = rules;
        Options = options;
        Catalog = catalog;
        Library = library;
    }

    /// <summary>Identifies what the rows go by, however they put it: <see cref="RuleSet.Fingerprint"/>.</summary>
    public string Rules { get; }

    /// <summary>Identifies the options, but for the catalog, as they were for the dwelling.</summary>
    public string Options { get; }

    /// <summary>Identifies the sizes and operable parts that were taken where a dwelling states none.</summary>
    public string Catalog { get; }

    /// <summary>The version of the library.</summary>
    public string Library { get; }

    /// <summary>The stamp in one line.</summary>
    public override string ToString() => "BoxHeights " + Library + ", rules " + Rules + ", options " + Options + ", catalog " + Catalog;
}
