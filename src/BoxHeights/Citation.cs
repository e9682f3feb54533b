using System;

namespace BoxHeights;

/// <summary>How sure it is that a number stands in the document that is cited for it.</summary>
public enum Confidence
{
    /// <summary>Read in the document, or in a source that quotes it.</summary>
    Confirmed = 0,

    /// <summary>Known from memory only: check before relying on it.</summary>
    FromMemory = 1,

    /// <summary>Worked out from other numbers.</summary>
    Derived = 2,

    /// <summary>Common practice of the trade; no document asks for it.</summary>
    CommonPractice = 3,
}

/// <summary>Where a number comes from.</summary>
public sealed record Citation
{
    /// <summary>Names a document and a place in it.</summary>
    /// <param name="document">The document's name, such as "2010 ADA Standards".</param>
    /// <param name="section">The place in it, such as "308.2.1"; empty if the document has no sections.</param>
    /// <param name="confidence">How sure it is.</param>
    /// <exception cref="ArgumentException"><paramref name="document"/> is empty.</exception>
    public Citation(string document, string section = "", Confidence confidence = Confidence.Confirmed)
    {
        Document = string.IsNullOrWhiteSpace(document) ? throw new ArgumentException("A citation names its document.", nameof(document)) : document;
        Section = section ?? throw new ArgumentNullException(nameof(section));
        Confidence = confidence;
    }

    /// <summary>A custom of the trade that no document asks for.</summary>
    public static Citation CommonPractice { get; } = new("common practice, no source", "", Confidence.CommonPractice);

    /// <summary>The document's name, with its edition.</summary>
    public string Document { get; init; }

    /// <summary>The place in the document; empty if it has no sections.</summary>
    public string Section { get; init; }

    /// <summary>How sure it is that the number stands there.</summary>
    public Confidence Confidence { get; init; }

    /// <summary>The document and section, and the confidence where it isn't confirmed.</summary>
    public override string ToString() =>
        (Section.Length == 0 ? Document : Document + " " + Section)
        + (Confidence switch { Confidence.FromMemory => " (from memory: check)", Confidence.Derived => " (derived)", _ => "" });
}
