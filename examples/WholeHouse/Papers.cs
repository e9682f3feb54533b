using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using BoxHeights;

namespace WholeHouse;

/// <summary>The papers of a house, each with the name of its file: what a crew pins up, carries along and ticks off.</summary>
internal static class Papers
{
    public static IReadOnlyList<(string Name, string Text)> Of(Dwelling dwelling, Evaluation evaluation, MarkSheet marks)
    {
        List<(string Name, string Text)> papers =
        [
            ("causes.txt", evaluation.ToText()),
            ("story-pole.md", StoryPole.For(marks.ToDwelling()).ToMarkdown()),
            ("punch-list.md", PunchList.For(dwelling).ToMarkdown()),
            ("pre-inspection.md", PreInspection.For(dwelling).ToMarkdown()),
        ];
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (string id in dwelling.Rooms.Select(room => room.Id).Concat(dwelling.Outside.Select(face => face.Id)))
        {
            string name = FileName(id);
            for (int copy = 2; !taken.Add(name); copy++)
            {
                name = FileName(id) + "-" + copy;
            }

            papers.Add((name + ".md", marks.ForRoom(id).ToMarkdown()));
        }

        return papers;
    }

    /// <exception cref="IOException">The folder or a file in it can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of rights.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, string Text)> papers)
    {
        Directory.CreateDirectory(folder);
        foreach ((string name, string text) in papers)
        {
            File.WriteAllText(Path.Combine(folder, name), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
    }

    /// <summary>An id may hold anything but a slash; a file's name that works everywhere may not, nor lead out of its folder.</summary>
    private static string FileName(string id) =>
        "marks-" + new string(id.Select(one => char.IsAsciiLetterOrDigit(one) || one == '_' ? one : '-').ToArray());
}
