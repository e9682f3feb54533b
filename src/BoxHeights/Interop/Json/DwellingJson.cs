using System;
using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Threading;
using System.Threading.Tasks;

namespace BoxHeights.Interop;

/// <summary>Reads a dwelling from JSON and writes it.</summary>
/// <remarks>
/// <para>A member is named as the property, with a small first letter; the turn of a wall is <c>"turn": "90 deg"</c>. Measures are texts that the library
/// reads (<c>"47-3/4 in"</c>, <c>"48 in to top above subfloor"</c>), a range is <c>{ "from": "0 in", "to": "1-1/4 in" }</c>, a point in plan
/// <c>[ "7 ft", "5 ft 9 in" ]</c>, a floor the list of its layers. Only counts are numbers. What isn't stated is left out; <c>null</c> is an error.</para>
/// <para>Reading is strict: unknown and repeated members, comments, commas at an end, wrong capitals and the like are errors that say where and why,
/// all of them at once.
/// A document has at most 16 MB, a text in it 10,000 characters, a list 100,000 items. A byte order mark before it is skipped, and a
/// <c>"$schema"</c> text in its outermost object is read over.</para>
/// </remarks>
public static class DwellingJson
{
    private static readonly JsonDocument<Dwelling> Document = new(DwellingShapes.Dwelling);

    /// <summary>The JSON Schema (draft 2020-12) of what is read and written. It can't say all that reading checks: the words within heights, ends in order.</summary>
    public static string Schema => Document.Schema;

    /// <summary>Reads a dwelling.</summary>
    /// <param name="json">The text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Dwelling Read(string json) => Document.Read(json);

    /// <summary>Reads a dwelling.</summary>
    /// <param name="utf8">The text in UTF-8, with or without a byte order mark.</param>
    /// <exception cref="BoxHeightsJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Dwelling Read(ReadOnlySpan<byte> utf8) => Document.Read(utf8);

    /// <summary>Reads a dwelling.</summary>
    /// <param name="utf8">A stream of the text in UTF-8, read to its end, and left open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="utf8"/> is null.</exception>
    /// <exception cref="BoxHeightsJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Dwelling Read(Stream utf8) => Document.Read(utf8);

    /// <summary>Reads a dwelling, without holding a thread while the text arrives.</summary>
    /// <param name="utf8">A stream of the text in UTF-8, read to its end, and left open.</param>
    /// <param name="cancellationToken">Ends waiting for the text.</param>
    /// <exception cref="ArgumentNullException"><paramref name="utf8"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    /// <exception cref="BoxHeightsJsonException">It is no dwelling; the exception says where and why.</exception>
    public static Task<Dwelling> ReadAsync(Stream utf8, CancellationToken cancellationToken = default) => Document.ReadAsync(utf8, cancellationToken);

    /// <summary>Reads a dwelling, without exceptions.</summary>
    /// <param name="json">The text; null is no dwelling.</param>
    /// <param name="dwelling">The dwelling, or null.</param>
    /// <param name="errors">All that is wrong with the text, as <see cref="BoxHeightsJsonException.Errors"/> gives it; empty where there is a dwelling.</param>
    /// <returns>Whether the text is a dwelling.</returns>
    public static bool TryRead(string? json, [NotNullWhen(true)] out Dwelling? dwelling, out Items<BoxHeightsJsonError> errors)
    {
        try
        {
            dwelling = Read(json ?? "");
            errors = Items<BoxHeightsJsonError>.None;
            return true;
        }
        catch (BoxHeightsJsonException fault)
        {
            dwelling = null;
            errors = fault.Errors;
            return false;
        }
    }

    /// <summary>Writes a dwelling, indented by two spaces, with line feeds. <see cref="Read(string)"/> makes an equal one of the text.</summary>
    /// <remarks>Empty lists, and what goes without saying (<c>false</c>, a turn of 90°), are left out.</remarks>
    /// <param name="dwelling">The dwelling.</param>
    /// <exception cref="ArgumentNullException"><paramref name="dwelling"/> is null.</exception>
    /// <exception cref="ArgumentException">It holds what couldn't be read again: a kind, size or cable that is <c>default</c>, a value that its enumeration
    /// doesn't have, a text or list beyond the limits, half of a surrogate pair. The message says where.</exception>
    public static string Write(Dwelling dwelling) => Document.Write(dwelling, nameof(dwelling));
}
