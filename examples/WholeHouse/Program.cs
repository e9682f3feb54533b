using System;
using System.IO;
using System.Text;
using BoxHeights;
using BoxHeights.Interop;

namespace WholeHouse;

/// <summary>Judges a house described in JSON, then prints the marks for the helper.</summary>
internal static class Program
{
    private const int Read = 0;
    private const int NotRead = 2;
    private const string Usage = "Usage: WholeHouse [file.json] [--rules ada]";

    public static int Main(string[] args)
    {
        // Marks are read on paper and in terminals alike: one line ending and one encoding wherever it runs.
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return Run(args, Console.Out, Console.Error);
    }

    private static int Run(string[] args, TextWriter output, TextWriter error)
    {
        RuleSet rules = RuleSets.UnitedStatesDwelling(NecEdition.Nec2023) + RuleSets.RoughInPractice;
        string? file = null;
        for (int i = 0; i < args.Length; i++)
        {
            if (args[i] == "--rules" && i + 1 < args.Length && args[i + 1] == "ada")
            {
                rules += RuleSets.Ada2010;
                i++;
            }
            else if (file is null && !args[i].StartsWith('-'))
            {
                file = args[i];
            }
            else
            {
                error.WriteLine("\"" + args[i] + "\" isn't understood here. " + Usage);
                return NotRead;
            }
        }

        return TryRead(file ?? Path.Combine(AppContext.BaseDirectory, "house.json"), error) is { } dwelling
            ? Report(dwelling, rules, output)
            : NotRead;
    }

    private static Dwelling? TryRead(string file, TextWriter error)
    {
        try
        {
            return DwellingJson.Read(File.ReadAllText(file));
        }
        catch (BoxHeightsJsonException bad)
        {
            error.WriteLine(file + ", line " + bad.Line + ", column " + bad.Column + ": " + bad.Path + ": " + bad.Reason);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            error.WriteLine(file + " can't be read: " + unreadable.Message);
        }

        return null;
    }

    /// <summary>Findings are the program's purpose, not its failure: it ends with 0 whether there are any or not.</summary>
    private static int Report(Dwelling dwelling, RuleSet rules, TextWriter output)
    {
        output.Write(new LayoutEvaluator(rules).Evaluate(dwelling).ToText());
        output.Write("\n");
        output.Write(MarkSheet.For(dwelling, rules).ToMarkdown());
        return Read;
    }
}
