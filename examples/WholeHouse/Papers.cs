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
    /// <summary>What was written to a folder, a name a line: when another house is written there, sheets of this one don't stay among its own.</summary>
    public const string List = "papers.txt";

    private const string Marks = "marks-";

    public static IReadOnlyList<(string Name, string Text)> Of(Dwelling dwelling, Evaluation evaluation, MarkSheet marks)
    {
        List<(string Name, string Text)> papers =
        [
            ("causes.txt", evaluation.ToText()),
            ("story-pole.md", StoryPole.For(marks).ToMarkdown()),
            ("punch-list.md", PunchList.For(evaluation).ToMarkdown()),
            ("order.md", OrderList.For(evaluation).ToMarkdown()),
            ("ceilings.md", CeilingPlan.For(evaluation).ToMarkdown()),
            ("cutouts.md", CutoutList.For(evaluation).ToMarkdown()),
            ("booklet.html", Booklet.For(evaluation).ToHtml()),
            ("pre-inspection.md", PreInspection.For(evaluation).ToMarkdown()),
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

    /// <summary>Writes papers to a folder, and takes away those that an earlier call wrote and this one doesn't. Other files there are left alone.</summary>
    /// <exception cref="IOException">The folder or a file in it can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of rights.</exception>
    public static void Write(string folder, IReadOnlyList<(string Name, string Text)> papers)
    {
        Directory.CreateDirectory(folder);
        string list = Path.Combine(folder, List);
        foreach (string stale in File.Exists(list) ? File.ReadAllLines(list).Except(papers.Select(paper => paper.Name), StringComparer.OrdinalIgnoreCase) : [])
        {
            // A line that was never written by this program leads nowhere else.
            if (stale.StartsWith(Marks, StringComparison.Ordinal) && stale.EndsWith(".md", StringComparison.Ordinal) && stale == Path.GetFileName(stale))
            {
                File.Delete(Path.Combine(folder, stale));
            }
        }

        // The list first: what is written after it and then fails is still known to be ours.
        File.WriteAllLines(list, papers.Select(paper => paper.Name));
        foreach ((string name, string text) in papers)
        {
            File.WriteAllText(Path.Combine(folder, name), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
    }

    /// <summary>An id may hold anything but a slash; a file's name that works everywhere may not, nor lead out of its folder.</summary>
    private static string FileName(string id) =>
        Marks + new string(id.Select(one => char.IsAsciiLetterOrDigit(one) || one == '_' ? one : '-').ToArray());
}
