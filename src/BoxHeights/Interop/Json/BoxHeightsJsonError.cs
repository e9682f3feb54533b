using System;
using System.Globalization;

namespace BoxHeights.Interop;

/// <summary>Why a text isn't the document that was asked for, and where it stops being one.</summary>
[Told]
public sealed partial record BoxHeightsJsonError
{
    /// <summary>The place in the document, as <c>$.rooms[0].walls[1].boxes[0].height</c>; <c>$</c> is the document itself.</summary>
    public string Path { get; }

    /// <summary>The line, counted from 1; a line ends at a line feed.</summary>
    public int Line { get; }

    /// <summary>The column, counted from 1 in UTF-16 characters, as editors count.</summary>
    public int Column { get; }

    /// <summary>What was expected there and what was found.</summary>
    public string Reason { get; }

    /// <summary>Place and reason in one line: "$.name, line 1, column 2: …".</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Path}, line {Line}, column {Column}: {Reason}");
}

/// <summary>Thrown for a text that isn't the document that was asked for.</summary>
public sealed class BoxHeightsJsonException : FormatException
{
    internal BoxHeightsJsonException(params BoxHeightsJsonError[] errors)
        : base(string.Join("\n", (object[])errors)) => Errors = errors;

    /// <summary>All that is wrong with the text, in the order in which it is found: one at least.</summary>
    /// <remarks>The first 100 are kept, up to where the text stops being JSON. What a record as a whole asks for is checked once its members are right.</remarks>
    public Items<BoxHeightsJsonError> Errors { get; }

    /// <summary>The first of <see cref="Errors"/>.</summary>
    public BoxHeightsJsonError Error => Errors[0];

    /// <inheritdoc cref="BoxHeightsJsonError.Path"/>
    public string Path => Error.Path;

    /// <inheritdoc cref="BoxHeightsJsonError.Line"/>
    public int Line => Error.Line;

    /// <inheritdoc cref="BoxHeightsJsonError.Column"/>
    public int Column => Error.Column;

    /// <inheritdoc cref="BoxHeightsJsonError.Reason"/>
    public string Reason => Error.Reason;
}
