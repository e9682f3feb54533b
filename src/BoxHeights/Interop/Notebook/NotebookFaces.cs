using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.IO;

namespace BoxHeights.Interop;

/// <summary>What a notebook makes to show a type of this library: one face in HTML, one in plain text. It finds the members by their names.</summary>
internal sealed class NotebookFaces
{
    /// <summary>The faces, the preferred one first.</summary>
    [DynamicDependency(DynamicallyAccessedMemberTypes.PublicMethods | DynamicallyAccessedMemberTypes.PublicProperties, typeof(NotebookFace))]
    [SuppressMessage("Performance", "CA1822:Mark members as static", Justification = "A notebook calls it on an instance.")]
    public IEnumerable<object> CreateTypeFormatters() => [new NotebookFace("text/html"), new NotebookFace("text/plain")];
}

/// <summary>Shows a value in one form.</summary>
/// <param name="mimeType">The form.</param>
internal sealed class NotebookFace(string mimeType)
{
    /// <summary>The form that it shows values in.</summary>
    public string MimeType { get; } = mimeType;

    /// <summary>Writes a value.</summary>
    public bool Format(object value, TextWriter writer)
    {
        writer.Write(MimeType == "text/html" ? NotebookHtml.Of(value) : NotebookHtml.Plainly(value));
        return true;
    }
}
