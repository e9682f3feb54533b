using System;
using System.IO;
using System.Text;
using BoxHeights;
using BoxHeights.Interop;

namespace WholeHouse;

/// <summary>Judges a house described in JSON, prints what is wrong and the marks for the helper, and writes the crew's papers if asked.</summary>
internal static class Program
{
    private const int Done = 0;
    private const int NotDone = 2;

    public static int Main(string[] args)
    {
        // Marks are read on paper and in terminals alike: one line ending and one encoding wherever it runs.
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return Run(args, Console.Out, Console.Error);
    }

    /// <summary>Findings are the program's purpose, not its failure: it ends with 0 whether there are any or not.</summary>
    private static int Run(string[] args, TextWriter output, TextWriter error)
    {
        Request request;
        try
        {
            request = Request.Parse(args);
        }
        catch (ArgumentException bad)
        {
            error.WriteLine(bad.Message + " " + Request.Usage);
            return NotDone;
        }

        if (request.Help)
        {
            output.WriteLine(Request.Usage);
            return Done;
        }

        if (TryRead(request.File, error) is not { } dwelling)
        {
            return NotDone;
        }

        if (request.Plan)
        {
            RoomPlan plan = new RoughInPlanner(request.Rules).Plan(BareHouse.Of(dwelling));
            output.Write(plan.ToText());
            output.Write("\n");
            dwelling = plan.Dwelling;
        }

        Evaluation evaluation = new LayoutEvaluator(request.Rules).Evaluate(dwelling);
        MarkSheet marks = MarkSheet.For(evaluation);
        output.Write(evaluation.ToText());
        output.Write("\n");
        output.Write(marks.ToMarkdown());
        return request.Folder is not { } folder || TryWrite(folder, dwelling, evaluation, marks, error) ? Done : NotDone;
    }

    private static Dwelling? TryRead(string file, TextWriter error)
    {
        try
        {
            return DwellingJson.Read(File.ReadAllText(file));
        }
        catch (BoxHeightsJsonException bad)
        {
            error.WriteLine(file + " isn't a dwelling:\n" + bad.Message);
        }
        catch (Exception unreadable) when (unreadable is IOException or UnauthorizedAccessException)
        {
            error.WriteLine(file + " can't be read: " + unreadable.Message);
        }

        return null;
    }

    private static bool TryWrite(string folder, Dwelling dwelling, Evaluation evaluation, MarkSheet marks, TextWriter error)
    {
        try
        {
            Papers.Write(folder, Papers.Of(dwelling, evaluation, marks));
            return true;
        }
        catch (Exception unwritable) when (unwritable is IOException or UnauthorizedAccessException)
        {
            error.WriteLine(folder + " can't be written: " + unwritable.Message);
            return false;
        }
    }
}
