using System;

namespace BoxHeights.Interop;

/// <summary>Writes a plan of lights beside a flight as JSON and reads it back.</summary>
/// <remarks>Texts and limits are those of <see cref="DwellingJson"/>; nothing is found by reflection, so that trimmed and natively compiled programs read and write it.</remarks>
public static class StairLightPlanJson
{
    private static readonly JsonDocument<StairLightPlan> Document = new(PlanShapes.StairLights);

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written.</summary>
    public static string Schema => Document.Schema;

    /// <summary>Reads a plan of lights beside a flight.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static StairLightPlan Read(string json) => Document.Read(json);

    /// <summary>Reads a plan of lights beside a flight.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="BoxHeightsJsonException">It is none; the exception says where and why.</exception>
    public static StairLightPlan Read(ReadOnlySpan<byte> utf8) => Document.Read(utf8);

    /// <summary>Writes a plan of lights beside a flight, indented by two spaces.</summary>
    /// <param name="plan">It.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again; the message says where.</exception>
    public static string Write(StairLightPlan plan) => Document.Write(plan, nameof(plan));
}
