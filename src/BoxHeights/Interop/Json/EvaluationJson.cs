using System;

namespace BoxHeights.Interop;

/// <summary>Writes what an evaluation says as JSON and reads it back.</summary>
/// <remarks>Findings are told once, causes name them by their places, and rules are listed once for all of them. Texts and limits are those of <see cref="DwellingJson"/>; nothing is found by reflection, so that trimmed and natively compiled programs read and write it.</remarks>
public static class EvaluationJson
{
    private static readonly JsonDocument<EvaluationReport> Document = new(ReportShapes.Report);

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written.</summary>
    public static string Schema => Document.Schema;

    /// <summary>Reads a report.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static EvaluationReport Read(string json) => Document.Read(json);

    /// <summary>Reads a report.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static EvaluationReport Read(ReadOnlySpan<byte> utf8) => Document.Read(utf8);

    /// <summary>Writes a report, indented by two spaces.</summary>
    /// <param name="report">It.</param>
    /// <exception cref="ArgumentNullException"><paramref name="report"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again; the message says where.</exception>
    public static string Write(EvaluationReport report) => Document.Write(report, nameof(report));

    /// <summary>Writes what an evaluation says, with its remedies, indented by two spaces.</summary>
    /// <param name="evaluation">It.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again; the message says where.</exception>
    public static string Write(Evaluation evaluation) => Document.Write(EvaluationReport.Of(evaluation), nameof(evaluation));
}
